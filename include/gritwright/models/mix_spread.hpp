#pragma once
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/calibration.hpp"
#include "gritwright/models/retention_spread.hpp"

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
  /// Standard deviation of ln(mass) of each class of size_classes(), from the chance of sampling (Gy).
  std::vector<double> class_masses;
  double sieving = 0;  ///< how many operator deviations of astm-c136-14 Table 2 the passing moves by at a score of 1
  friend bool operator==(const ComponentSpread&, const ComponentSpread&) = default;
};

/// Everything about a mix in its pot that is not known for certain.
struct MixSpread {
  std::vector<ComponentSpread> components;
  double packing_voids = 0;  ///< deviation of the packing model's voids for a mix of equal parts
  FactorSpread settling;
  RetentionSpread retention;
  std::optional<CalibratedBelief> belief;  ///< from pot tests of this mix; takes the place of `retention` for k, w and f
  double pot_length_cm = 0;                ///< deviation of each inside length
  double water_fill = 0;                   ///< deviation of ln(volume) where a water fill gave it
};

/// Deviations where a figure was measured by the guided protocols, as factors; our assumptions.
inline constexpr double measured_density_deviation = 0.02;
inline constexpr double measured_absorption_deviation = 0.05;

/// The usual spread: wide for what is typical (the catalogue's ranges where it has them), narrow for what was measured. `sample` is
/// the dry mass a grading rests on.
[[nodiscard]] MixSpread usual_spread(const Mix& mix, const Catalogue* catalogue = nullptr, Mass sample = mass_g(300));

/// Standard deviations of ln(mass) by class: each class is a number of grains drawn by chance, so its variance is the mean grain
/// mass over the mass of the class; that is Gy's model before the shares are divided by their sum. Absent density: 1000 g/L.
[[nodiscard]] std::vector<double> class_mass_deviations(const GrainSizes& sizes, std::optional<ParticleDensity> density, Mass sample);

}  // namespace gritwright
