#include "gritwright/models/blended_grading.hpp"

#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <utility>

#include "gritwright/models/grading_curve.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Grading grading(const std::vector<std::pair<double, double>>& aperture_and_percent) {
  Grading made;
  for (const auto& [mm, percent] : aperture_and_percent) made.points.push_back({aperture_mm(mm), passing_percent(percent)});
  return made;
}

GradingPoint point(double mm, double percent) { return {aperture_mm(mm), passing_percent(percent)}; }

}  // namespace

TEST_CASE("A whole curve has its pan as a step and its top class ended", "[blended_grading][law]") {
  const std::vector<GradingPoint> curve = closed_grading(grading({{1, 5}, {4, 80}}));
  CHECK(curve == std::vector{point(0.5, 0), point(0.5, 5), point(1, 5), point(4, 80), point(5.6, 100)});

  Grading with_ends = grading({{1, 5}, {4, 80}});
  with_ends.pan_size = aperture_mm(1);
  with_ends.top_size = aperture_mm(9);
  CHECK(closed_grading(with_ends) == std::vector{point(1, 0), point(1, 5), point(4, 80), point(9, 100)});

  CHECK(closed_grading(SingleSize{aperture_mm(4)}) == std::vector{point(4, 0), point(4, 100)});
  CHECK(closed_grading(grading({{1, 0}, {4, 100}})) == std::vector{point(1, 0), point(4, 100)});
}

TEST_CASE("A blend reads every curve on its own and keeps the steps of single sizes", "[blended_grading][law]") {
  const std::array curves{closed_grading(grading({{1, 0}, {4, 100}})), closed_grading(SingleSize{aperture_mm(2)})};
  const std::vector<GradingPoint> blend = blended_grading(curves, std::array{3.0, 1.0});
  REQUIRE(blend.size() == 4);
  CHECK(blend[0] == point(1, 0));
  CHECK_THAT(in_percent(blend[1].passing), WithinAbs(37.5, 1e-12));  // half of three quarters: 2 is the middle of 1 and 4
  CHECK_THAT(in_percent(blend[2].passing), WithinAbs(62.5, 1e-12));
  CHECK(blend[1].aperture == blend[2].aperture);
  CHECK(blend[3] == point(4, 100));
}

TEST_CASE("A blend of one curve is that curve", "[blended_grading][law]") {
  const std::array curves{closed_grading(grading({{0.5, 2}, {1, 5}, {4, 80}, {8, 100}})), closed_grading(SingleSize{aperture_mm(2)})};
  CHECK(blended_grading(curves, std::array{0.7, 0.0}) == curves[0]);
}
