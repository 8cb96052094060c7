#include "gritwright/models/sieving_spread.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>
#include <variant>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

/// A class of less than one grain in the sample could be anything; a factor of e either way is wide enough.
constexpr double widest_class_deviation = 1;

/// Deviation of what is rounded to steps of 1.
const double rounding_deviation = 1 / std::sqrt(12.0);

}  // namespace

SievedSample sample_of(const SieveTest& test, const SieveAnalysis& analysis) {
  SievedSample sample;
  sample.lost = lost_share(analysis);
  if (analysis.base) {
    sample.dry = *analysis.base;
    sample.resolution = test.resolution * (1 / (1 + test.moisture.value()));
    sample.weighings = std::holds_alternative<GrossTare>(test.pan) ? 2 : 1;
  } else if (test.bulk_density) {
    Mass sum{};
    const auto add = [&](const Retained& retained) {
      if (const auto* litres = std::get_if<LooseVolume>(&retained)) sum += *litres * *test.bulk_density;
    };
    for (const SieveRow& row : test.rows) add(row.retained);
    add(test.pan);
    if (sum > Mass{}) sample.dry = sum;
  }
  return sample;
}

SievedSample taken_together(std::span<const SievedSample> samples, const PooledTests& pooled) {
  SievedSample together{Mass{}, {}, lost_share(pooled), 0, 1};
  double weights = 0, squares = 0;
  for (const SievedSample& sample : samples) {
    together.dry += sample.dry;
    together.resolution = std::max(together.resolution, sample.resolution);
    together.weighings += sample.weighings;
    const double weight = pooled.base ? in_kg(sample.dry) : 1;
    weights += weight;
    squares += weight * weight;
  }
  double apart = 1;
  for (const Agreement& sieve : pooled.agreement) apart = std::max(apart, (sieve.most - sieve.least).value() / sieve.limit.value());
  together.operators = apart * std::sqrt(squares) / weights;
  return together;
}

SievingSpread sieving_spread(const GrainSizes& sizes, std::optional<ParticleDensity> density, const SievedSample& sample) {
  SievingSpread spread;
  const std::vector<SizeClass> classes = size_classes(sizes);
  if (classes.size() == 1) {
    spread.class_masses = {0};
    return spread;
  }
  const double grain_g_l = density ? in_g_l(*density) : 1000;
  const double weighing_g = in_g(sample.resolution) * rounding_deviation * std::sqrt(static_cast<double>(sample.weighings));
  for (const SizeClass& each : classes) {
    const double size_m = in_mm(each.size) / 1000;
    const double grain_kg = std::numbers::pi / 6 * grain_g_l * size_m * size_m * size_m;
    const double class_kg = each.share.value() * in_kg(sample.dry);
    spread.class_masses.push_back(std::min(widest_class_deviation, std::hypot(std::sqrt(grain_kg / class_kg), weighing_g / 1000 / class_kg)));
  }
  spread.operators = sample.operators;
  spread.lost = sample.lost.value();
  return spread;
}

}  // namespace gritwright
