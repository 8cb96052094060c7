#pragma once
#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// How sharply a screening separates, the exponent s of the partition curve, > 0. No published value for sieving by hand was
/// found: 20 for a thorough shake, 10 for a quick one are our assumptions.
struct Sharpness {
  double value = 20;
  friend bool operator==(const Sharpness&, const Sharpness&) = default;
};
inline constexpr Sharpness thorough_shake{20};
inline constexpr Sharpness quick_shake{10};

/// Share of grain of one size that stays on an opening, G = 1 - exp(-ln 2 (x/a)^s): half at the opening itself. Source: plitt-1971.
[[nodiscard]] MassShare stays_on(Aperture size, Aperture opening, Sharpness sharpness);

/// The same for a class whose mass is spread evenly over log size from `lower` to `upper` (0 < lower < upper), integrated exactly.
[[nodiscard]] MassShare class_stays_on(Aperture lower, Aperture upper, Aperture opening, Sharpness sharpness);

/// What dust and spilling take of a bag that is screened is less. Common practice, no source.
inline constexpr Loss most_usual_screening_loss{0.1};

/// What lies between two openings after screening.
struct ScreenedFraction {
  std::optional<Aperture> from;  ///< the opening it stayed on; absent for what fell through all
  std::optional<Aperture> to;    ///< the opening it fell through; absent for the oversize
  MassShare share;               ///< of the mass screened
  std::optional<Grading> grading;  ///< at the test's sieves and the openings; absent for an empty fraction
  std::optional<LooseShare> loose_per_loose;  ///< loose litres per loose litre screened; absent without packing densities
  std::optional<PackingDensity> packing{};    ///< its own, as poured
};

/// Coarse to fine; the shares add up to 1.
struct Screening {
  std::vector<ScreenedFraction> fractions;
  std::optional<PackingDensity> packing;  ///< of what was screened
  Notes notes;
};

/// The packing density (dry bulk over particle density) grain of the screened kind has when it is so graded.
using PackingDensityOf = std::function<std::optional<PackingDensity>(const Grading&)>;

/// Grain screened at `openings` (any order), coarsest first. The pan falls through every opening. Refuses: no opening, one that is
/// repeated, not positive, or below the finest sieve of a grading with something in its pan; sharpness <= 0. Pointers "/at/0".
/// Precondition: check(grading) is empty and has points. Fractions of one bag together fill more loose litres than the bag did.
[[nodiscard]] Result<Screening> screen(const Grading& grading, std::span<const Aperture> openings, Sharpness sharpness = {},
                                       const PackingDensityOf& packing = {});

/// What one fraction of a certain bag amounts to.
struct FractionAmount {
  std::optional<Mass> dry_mass;         ///< absent where the bag's is
  std::optional<LooseVolume> volume;    ///< absent where the bag's litres or the fraction's packing are not known
};

/// The fractions of so much grain, in the order of the screening: shares of the dry mass, loose litres per loose litre.
[[nodiscard]] std::vector<FractionAmount> fraction_amounts(const Screening& screening, std::optional<Mass> dry_mass,
                                                           std::optional<LooseVolume> volume);

/// Litre weight of a fraction over that of what was screened, phi_fraction/phi_screened, > 0; absent without
/// packing densities. Precondition: `fraction` is of `screening`. Source: docs/science/grading.md.
[[nodiscard]] std::optional<BulkDensityRatio> bulk_density_ratio(const Screening& screening, const ScreenedFraction& fraction);

/// Mass that went in and did not come out, as a share of what went in; negative for a gain. Precondition: `screened` > 0.
[[nodiscard]] Loss screening_loss(Mass screened, std::span<const Mass> weighed);

/// What left the bag for a fraction of this weight: less than it where more was weighed than went in, as that came out of no bag.
[[nodiscard]] Mass out_of_bag(Mass weighed, Loss loss);

}  // namespace gritwright
