#pragma once
#include <cmath>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/calibration.hpp"
#include "gritwright/models/pot_ranges.hpp"
#include "gritwright/models/retention_spread.hpp"
#include "gritwright/models/sieving_spread.hpp"

namespace gritwright {

/// A factor with median 1 whose logarithm is normal, with its own deviation to either side.
struct FactorSpread {
  double down = 0;
  double up = 0;
  [[nodiscard]] double at(double score) const { return std::exp(score * (score < 0 ? down : up)); }
  friend bool operator==(const FactorSpread&, const FactorSpread&) = default;
};

/// The factor for a value with a range that holds it in nine cases of ten. 0 < low <= value <= high.
[[nodiscard]] FactorSpread factor_within(double value, double low, double high);

/// How well one component of a mix is known.
struct ComponentSpread {
  FactorSpread bulk_density;
  /// Of the particle density, or, where it is typical, of the component's own packing density bulk/particle: a dense litre goes
  /// with dense grain, and catalogue densities go together as a set.
  FactorSpread particle_density;
  bool particle_by_packing = false;
  FactorSpread skeletal_density;
  double open_share = 0;  ///< standard deviation, cut at 0 and 1
  FactorSpread water_absorption;
  SievingSpread grading;
  friend bool operator==(const ComponentSpread&, const ComponentSpread&) = default;
};

/// Everything about a mix in its pot that is not known for certain.
struct MixSpread {
  std::vector<ComponentSpread> components;
  double packing_voids = 0;  ///< deviation of the packing model's voids for a mix of equal parts
  FactorSpread settling;
  RetentionSpread retention;
  std::optional<CalibratedBelief> belief;  ///< from pot tests of this mix; takes the place of `retention` for k, w and f
  PotSpread pot;
};

/// Deviations where a figure was measured by the guided protocols, as factors; our assumptions.
inline constexpr double measured_density_deviation = 0.02;
inline constexpr double measured_absorption_deviation = 0.05;
inline constexpr double measured_settling_deviation = 0.10;  ///< a jug of the mix itself was worked in
inline constexpr double settling_by_grains_deviation = 0.20; ///< jugs of all its grains were, each by itself

/// The usual spread: wide for what is typical (the catalogue's ranges where it has them), narrow for what was measured. `samples` in
/// component order, where a grading rests on a known sample; else on the usual 300 g.
[[nodiscard]] MixSpread usual_spread(const Mix& mix, const Catalogue* catalogue = nullptr,
                                     std::span<const std::optional<SievedSample>> samples = {});

}  // namespace gritwright
