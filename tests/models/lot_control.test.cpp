#include "gritwright/models/lot_control.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>

#include "gritwright/models/bag_verdict.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Grading bag(double finer_percent, double half_percent) {
  return {{{aperture_mm(1), passing_percent(finer_percent / 2)},
           {aperture_mm(2), passing_percent(finer_percent)},
           {aperture_mm(4), passing_percent(half_percent)},
           {aperture_mm(6.3), passing_percent(98)},
           {aperture_mm(8), passing_percent(100)}},
          {},
          {}};
}

const Band wanted{aperture_mm(2), aperture_mm(6.3)};

GrainProperties pumice() {
  GrainProperties grain;
  grain.bulk_density = bulk_g_l(600);
  grain.particle_density = particle_g_l(1140);
  grain.skeletal_density = skeletal_g_l(2350);
  return grain;
}

}  // namespace

TEST_CASE("The factors are those of the published tables for pairs", "[lot_control][published]") {
  // NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2: individuals at mean ± 2.66 mean moving range (3/1.128); moving ranges
  // up to D4 = 3.267 times their mean. Both follow from the range of two normal values: d2 = 2/sqrt(pi), d3 = sqrt(2 - d2^2).
  const double d2 = 2 / std::sqrt(std::numbers::pi), d3 = std::sqrt(2 - d2 * d2);
  CHECK_THAT(individuals_factor, WithinAbs(3 / d2, 0.005));
  CHECK_THAT(moving_range_factor, WithinAbs(1 + 3 * d3 / d2, 0.0005));
}

TEST_CASE("The usual range follows mean and mean moving range", "[lot_control][published]") {
  // The flow rates of the handbook's example, 6.3.2.2: mean 50.81, mean moving range 1.8778, limits 45.8 and 55.8.
  const std::vector<double> flow{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
  const UsualRange usual = *usual_range(flow);
  CHECK_THAT(usual.mean, WithinAbs(50.81, 0.005));
  CHECK_THAT(usual.mean_moving_range, WithinAbs(1.8778, 0.0001));
  CHECK_THAT(usual.low, WithinAbs(45.8155, 0.01));
  CHECK_THAT(usual.high, WithinAbs(55.8041, 0.01));
  CHECK_THAT(usual.most_moving_range, WithinAbs(3.267 * 1.8778, 0.001));
}

TEST_CASE("Steady lots hardly ever fall outside, and a handful of lots tells nothing", "[lot_control][law]") {
  CHECK_FALSE(usual_range(std::vector<double>{1, 2, 3}));
  std::mt19937_64 random(5);
  std::normal_distribution<double> steady(3, 0.2);
  std::vector<double> lots;
  for (int i = 0; i < 2000; ++i) lots.push_back(steady(random));
  const UsualRange usual = *usual_range(lots);
  int outside = 0;
  for (int i = 0; i < 20000; ++i) outside += usual.holds(steady(random)) ? 0 : 1;
  CHECK(outside < 0.006 * 20000);  // three deviations: 0.27 %
  CHECK(outside > 0);
}

TEST_CASE("A dusty lot is pointed out and a usual one is not", "[lot_control]") {
  std::vector<LotFigures> earlier;
  for (const double dust : {4.0, 5.0, 4.4, 5.2, 4.6}) earlier.push_back(lot_figures(bag(dust, 60), wanted, pumice()));
  CHECK(unusual(lot_figures(bag(4.8, 60), wanted, pumice()), earlier).empty());
  const auto findings = unusual(lot_figures(bag(14, 66), wanted, pumice()), earlier);
  REQUIRE_FALSE(findings.empty());
  CHECK(findings.front().figure == LotFigure::dust);
  CHECK(findings.front().outside);
  CHECK(findings.front().jump);
  CHECK_THAT(findings.front().value, WithinAbs(0.14, 1e-9));
}

TEST_CASE("What a finer lot changes in a mix is less air and more water", "[lot_control][law]") {
  Mix mix;
  mix.components = {{"pumice", Parts(2), pumice(), bag(4, 50), {}}, {"grit", Parts(1), pumice(), bag(2, 40), {}}};
  const auto same = lot_change(mix, 0, bag(4, 50), {}, depth_cm(7));
  REQUIRE(same);
  CHECK(same->air_before == same->air_after);
  const auto finer = lot_change(mix, 0, bag(20, 85), {}, depth_cm(7));
  REQUIRE(finer);
  CHECK(finer->air_after < finer->air_before);
  CHECK(finer->capacity_after > finer->capacity_before);
  CHECK_FALSE(lot_change(mix, 0, bag(20, 85), {}, {}));
}

TEST_CASE("A lot without densities is judged by its grading alone", "[lot_control]") {
  const LotFigures figures = lot_figures(bag(5, 60), wanted);
  CHECK(figures.dust);
  CHECK(figures.d50_mm);
  CHECK(figures.usable);
  CHECK_FALSE(figures.air);
}

TEST_CASE("What was lost is no dust of a lot, as in its verdict", "[lot_control][law]") {
  const MassShare lost(0.03);
  const auto judged = judge(bag(5, 60), wanted, {}, {}, {}, lost).value;
  REQUIRE(judged);
  CHECK(lot_figures(bag(5, 60), wanted, {}, lost).dust == judged->finer.value());
  CHECK_THAT(*lot_figures(bag(5, 60), wanted).dust - *lot_figures(bag(5, 60), wanted, {}, lost).dust, WithinAbs(0.03, 1e-12));
}
