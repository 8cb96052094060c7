#include "gritwright/models/grading_curve.hpp"

#include <catch2/catch.hpp>
#include <cmath>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {
Grading two_points() { return {{{aperture_mm(1), passing_percent(20)}, {aperture_mm(4), passing_percent(80)}}, {}, {}}; }
}  // namespace

TEST_CASE("A grading curve is linear in the logarithm of size between sieves", "[grading_curve][law]") {
  const GradingCurve curve(two_points());
  CHECK_THAT(in_percent(curve.passing_at(aperture_mm(2)).value()), WithinAbs(50, 1e-12));
  CHECK_THAT(in_mm(curve.size_at(Passing(0.5)).value()), WithinAbs(2, 1e-12));
}

TEST_CASE("A grading curve is never extrapolated", "[grading_curve][law]") {
  const GradingCurve curve(two_points());
  CHECK_FALSE(curve.passing_at(aperture_mm(0.9)));
  CHECK_FALSE(curve.passing_at(aperture_mm(4.1)));
  CHECK_FALSE(curve.size_at(Passing(0.1)));
  CHECK_FALSE(curve.size_at(Passing(0.9)));
}

TEST_CASE("Grain of one size passes all or nothing", "[grading_curve][law]") {
  const GradingCurve curve(SingleSize{aperture_mm(4)});
  CHECK(curve.passing_at(aperture_mm(3.99)) == Passing(0));
  CHECK(curve.passing_at(aperture_mm(4)) == Passing(1));
  CHECK(curve.size_at(Passing(0.3)) == aperture_mm(4));
}
