#include "gritwright/models/saturation_kernel.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>

#include "gritwright/models/pot_water.hpp"
#include "support/random_pots.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("The kernel of a pot gives the capacity of the full chain", "[saturation_kernel][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 60; ++i) {
    Container container = random.container();
    if (random.chance(0.3)) container.saucer = depth_cm(random.between(0, 4));
    if (random.chance(0.3)) container.wick = depth_cm(random.between(0, 20));
    if (i % 15 == 0) container.tilt.angle = angle_deg(random.between(2, 40));
    REQUIRE(check(container).empty());
    const PotGeometry pot(container);
    RetentionInput input = random.mix();
    input.constants.n = RetentionConstants{}.n;
    const SaturationKernel kernel = SaturationKernel::for_pot(pot, input.constants.n);
    std::vector<double> log_sizes;
    std::vector<double> shares;
    for (const GradingPoint& point : input.envelope_grading) {
      log_sizes.push_back(std::log(in_mm(point.aperture)));
      shares.push_back(point.passing.value());
    }
    const double mean = kernel.mean(equal_volume_log_sizes(log_sizes, shares), input.constants.k_cm_mm, input.constants.spread);
    const Retention mix(input);
    CHECK_THAT(mix.curve().water_for_saturation(mean).value(), WithinAbs(container_capacity(mix.curve(), pot).value(), 5e-8));
  }
}

TEST_CASE("Kernels of a column and of one head agree with the curve, in the table and beyond", "[saturation_kernel][law]") {
  const SaturationKernel column = SaturationKernel::for_column(depth_cm(6), 6);
  const SaturationKernel head = SaturationKernel::at_head(depth_cm(50), 6);
  for (double log_alpha = -12; log_alpha < 9; log_alpha += 0.173) {
    const RetentionCurve curve(0, 1, {std::exp(log_alpha)}, 6);
    CHECK_THAT(column.at(log_alpha), WithinAbs(curve.mean_saturation(AreaProfile::column(6), 0, 6, 0), 1e-8));
    CHECK_THAT(head.at(log_alpha), WithinAbs(curve.saturation(50), 1e-8));
  }
}

TEST_CASE("Stretch by stretch the hundred classes are the same, and so is their mean", "[saturation_kernel][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 200; ++i) {
    Container container = random.container();
    const double n = random.chance(0.5) ? RetentionConstants{}.n : random.between(1.3, 12);
    const SaturationKernel pot = SaturationKernel::for_pot(PotGeometry(container), n);
    const SaturationKernel head = SaturationKernel::at_head(depth_cm(1), n);
    std::vector<double> log_sizes;
    std::vector<double> shares;
    const RetentionInput input = random.mix();
    for (const GradingPoint& point : input.envelope_grading) {
      log_sizes.push_back(std::log(in_mm(point.aperture)));
      shares.push_back(point.passing.value());
    }
    const LogSizes all = equal_volume_log_sizes(log_sizes, shares);
    for (const double k : {2.0, 9.5, 40.0}) {
      for (const double spread : {0.0, 0.7, 1.0}) {
        INFO("case " << i << ", n " << n << ", k " << k << ", b " << spread);
        const SizeRuns runs(log_sizes, shares, spread, n);
        CHECK_THAT(runs.log_mean(), WithinAbs(std::accumulate(all.begin(), all.end(), 0.0) / static_cast<double>(all.size()), 1e-9));
        CHECK_THAT(pot.mean(runs, k), WithinAbs(pot.mean(all, k, spread), 1e-8));
        CHECK_THAT(head.mean(runs, k / 7), WithinAbs(head.mean(all, k / 7, spread), 1e-8));
      }
    }
  }
}
