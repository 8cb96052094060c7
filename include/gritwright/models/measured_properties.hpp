#pragma once
// What a grower measures at the bench with a balance and a jug. Implausible results are questioned by a note, never refused; the
// preconditions are what makes a figure impossible. Formulas and sources: docs/science/calibration.md.

#include <optional>
#include <span>

#include "gritwright/domain/grading.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// A jug filled loosely and struck off; then, if the grower goes on, worked in with a stick and topped with nothing.
struct JugReading {
  Mass jug;     ///< empty
  Mass filled;  ///< with the grain
  LooseVolume volume;
  Moisture moisture{};                     ///< of the grain as it was weighed
  std::optional<LooseVolume> worked_in;    ///< what the same grain fills afterwards
};

struct MeasuredBulk {
  BulkDensity loose;                      ///< dry
  std::optional<BulkDensity> worked_in;   ///< dry
  std::optional<Settling> settling;       ///< 1 - worked in / loose volume
  Notes notes;
};

/// Codes: jug.not-filled, jug.volume-missing, jug.swells (worked in takes up more room than loose).
[[nodiscard]] Problems check(const JugReading& reading);
/// Precondition: check(reading) is empty. `particle_density` where it is known, for a question about the voids.
[[nodiscard]] MeasuredBulk measured_bulk(const JugReading& reading, std::optional<ParticleDensity> particle_density = {});

/// 1 - loose / worked-in density; absent where the worked-in density is the lower, which no working in does.
[[nodiscard]] std::optional<Settling> settling_of(BulkDensity loose, BulkDensity worked_in);

/// How one component of a mix settles by itself, where a jug test of its bag says so.
struct GrainSettling {
  LooseVolume loose;
  std::optional<Settling> measured;
};

/// The settling of a mix that has no jug test of its own: its grains', each by its loose litres; one without a test settles as usual.
/// Absent where no grain has a test. Our assumption: docs/science/calibration.md.
[[nodiscard]] std::optional<Settling> settling_of_grains(std::span<const GrainSettling> grains, Settling usual);

/// Grain soaked for a day and dabbed dry, put under water in a jug that is filled to a mark, then dried.
struct DisplacementReading {
  Mass soaked;               ///< surface-dry
  Mass jug_with_water;       ///< filled to the mark, without grain
  Mass jug_with_both;        ///< with the grain, filled to the same mark
  std::optional<Mass> dry;   ///< the same grain; absent: only what needs no drying
};

struct MeasuredGrain {
  std::optional<ParticleDensity> particle_density;   ///< dry mass over what the soaked grain displaces
  std::optional<WaterAbsorption> water_absorption;   ///< (soaked - dry)/dry
  ParticleDensity soaked_density;                    ///< mass of the soaked grain over the same volume
  Notes notes;
};

/// Codes: displacement.weighs-nothing, displacement.dry-above-soaked, displacement.displaces-nothing.
[[nodiscard]] Problems check(const DisplacementReading& reading);
/// 1 g of water is 1 mL. Precondition: check(reading) is empty. `skeletal_density` and the dry bulk density `loose` where they are known, for questions about
/// the pores and the voids. Source: form of astm-c127, from memory.
[[nodiscard]] MeasuredGrain measured_grain(const DisplacementReading& reading, std::optional<SkeletalDensity> skeletal_density = {},
                                           std::optional<BulkDensity> loose = {});

/// Absorption alone: grain soaked for 24 h and dabbed dry, then dried. Precondition: 0 < dry <= soaked.
struct MeasuredAbsorption {
  WaterAbsorption value;
  Notes notes;
};
[[nodiscard]] MeasuredAbsorption measured_absorption(Mass soaked, Mass dry, std::optional<ParticleDensity> particle_density = {},
                                                     std::optional<SkeletalDensity> skeletal_density = {});

/// Two results of one thing: the mean, and a question where they lie more than `usual` (a share of it) apart.
struct RepeatedFigure {
  double mean = 0;
  double apart = 0;  ///< difference over mean
  Notes notes;
};
[[nodiscard]] RepeatedFigure repeated(double first, double second, double usual = 0.03);

/// One more minute of shaking after the stack was weighed: what still fell through, of the whole specimen. Thorough below 0.5 %.
/// Source: astm-c136-19.
struct SieveThoroughness {
  MassShare still_passing;
  bool thorough = false;
  Notes notes;
};
/// Precondition: specimen > 0, 0 <= fallen <= specimen.
[[nodiscard]] SieveThoroughness sieve_thoroughness(Mass specimen, Mass fallen);

}  // namespace gritwright
