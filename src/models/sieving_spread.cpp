#include "gritwright/models/sieving_spread.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

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
  sample.resolution = test.resolution;
  if (analysis.base) {
    sample.dry = *analysis.base;
  } else if (test.bulk_density) {
    Mass sum{};
    const auto add = [&](const Retained& retained) {
      if (const auto* litres = std::get_if<LooseVolume>(&retained)) sum += *litres * *test.bulk_density;
    };
    for (const SieveRow& row : test.rows) add(row.retained);
    add(test.pan);
    if (sum > Mass{}) sample.dry = sum;
  }
  if (test.basis == PercentBasis::original && analysis.loss) {
    // What washed out is not lost, and a loss can't be more than what passes the finest sieve.
    sample.lost = MassShare(std::clamp(analysis.loss->value(), 0.0, analysis.grading.points.front().passing.value()));
  }
  return sample;
}

SievedSample taken_together(std::span<const SievedSample> samples) {
  SievedSample together{Mass{}, {}, {}, 0};
  Mass lost{};
  for (const SievedSample& sample : samples) {
    together.dry += sample.dry;
    lost += sample.dry * sample.lost.value();
    together.resolution = std::max(together.resolution, sample.resolution);
    together.tests += sample.tests;
  }
  together.lost = MassShare(lost / together.dry);
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
  const double weighing_g = in_g(sample.resolution) * rounding_deviation * std::sqrt(static_cast<double>(sample.tests));
  for (const SizeClass& each : classes) {
    const double size_m = in_mm(each.size) / 1000;
    const double grain_kg = std::numbers::pi / 6 * grain_g_l * size_m * size_m * size_m;
    const double class_kg = each.share.value() * in_kg(sample.dry);
    spread.class_masses.push_back(std::min(widest_class_deviation, std::hypot(std::sqrt(grain_kg / class_kg), weighing_g / 1000 / class_kg)));
  }
  spread.operators = 1 / std::sqrt(static_cast<double>(sample.tests));
  spread.lost = sample.lost.value();
  return spread;
}

}  // namespace gritwright
