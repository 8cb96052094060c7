#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/models/mix_spread.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// How fast a grain breaks down. Breakages of a grain are counted by Poisson's law, so e^-rate of the mass is still in its own class
/// after a season; fragments of grain from a sieve of opening L are finer than a size x by (x/L)^modulus. Source:
/// docs/science/ageing.md.
struct Breakdown {
  double per_season = 0;  ///< mean breakages of a grain, >= 0
  double modulus = 1;     ///< > 0; smaller: dustier
  FactorSpread spread;    ///< of the rate
  friend bool operator==(const Breakdown&, const Breakdown&) = default;
};

/// By the catalogue: half of the grain has broken after the years it lasts; where it gives no range, half to twice as fast (our
/// assumptions). Absent where the catalogue has no durability.
[[nodiscard]] std::optional<Breakdown> typical_breakdown(const Material& material);

/// What becomes of crumbled grain.
enum class Fines {
  staying,     ///< among the coarser grain
  washed_down  ///< to the floor of the pot
};

/// Crumbled grain finer than this may wash down; our assumption. What fell into the pan always may.
inline constexpr Aperture washes_down_below = aperture_mm(1);

struct AgedGrain {
  GrainSizes sizes;     ///< at the sieves it had; grain of one size gets some
  double washed_down = 0;  ///< share of the mass that crumbled and is not in `sizes`, 0..1
};

/// A grain after so many mean breakages >= 0. Precondition: check(grading) is empty.
[[nodiscard]] AgedGrain aged_grain(const GrainSizes& sizes, double breakages, double modulus, Fines fines);

/// A handful sieved, shaken or frozen and thawed so many rounds, and sieved again.
struct CrumbleTest {
  Grading before;
  Grading after;
  double rounds = 0;
};

struct CrumbleResult {
  double broken = 0;  ///< share of the mass that left its class
  double breakages_per_round = 0;
  double modulus = 1;
  double miss = 0;    ///< root mean square of the passing fitted less measured, as a share
  Notes notes;
};

/// Codes: crumble.no-rounds, crumble.no-common-sieves.
[[nodiscard]] Problems check(const CrumbleTest& test);
/// Least squares over the sieves both tests cover. Precondition: check(test) is empty.
[[nodiscard]] CrumbleResult crumble_result(const CrumbleTest& test);

/// Rounds of freezing and thawing that stand for a season out of doors; our assumption, for the grower to change.
inline constexpr double rounds_per_season = 10;

/// The grower's own test in place of the typical durability; the rate is good to a factor of 1.5 (our assumption).
[[nodiscard]] Breakdown measured_breakdown(const CrumbleResult& result, double rounds_in_season = rounds_per_season);
/// The same of a test that was kept with its bag.
[[nodiscard]] Breakdown measured_breakdown(const Crumbling& kept);

}  // namespace gritwright
