#include "gritwright/models/pot_geometry.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Section sides(double length, double width) { return {length_cm(length), length_cm(width)}; }

Container pot(Shape shape, Section rim, Section base, double depth) {
  Container container;
  container.shape = shape;
  container.rim = rim;
  container.base = base;
  container.depth = depth_cm(depth);
  return container;
}

double volume_ml(const Container& container) {
  REQUIRE(check(container).empty());
  return in_ml(PotGeometry(container).volume());
}

}  // namespace

TEST_CASE("Every shape holds the volume of its closed formula", "[pot_geometry][published]") {
  // Prismatoid and frustum formulas of solid geometry (textbook), worked by hand for these lengths.
  CHECK_THAT(volume_ml(pot(Shape::rectangular, sides(40, 30), sides(34, 22), 6)), WithinAbs(5796, 1e-6));
  CHECK_THAT(volume_ml(pot(Shape::oval, sides(40, 30), sides(34, 22), 6)), WithinAbs(4552.17, 0.005));
  CHECK_THAT(volume_ml(pot(Shape::round, sides(30, 30), sides(24, 24), 6)), WithinAbs(3449.47, 0.005));
  CHECK_THAT(volume_ml(pot(Shape::hexagonal, sides(30, 30), sides(24, 24), 6)),
             WithinRel(std::numbers::sqrt3 / 2 * 6 / 3 * (900 + 720 + 576), 1e-12));
  CHECK_THAT(volume_ml(pot(Shape::octagonal, sides(30, 30), sides(24, 24), 6)),
             WithinRel(2 * (std::numbers::sqrt2 - 1) * 6 / 3 * (900 + 720 + 576), 1e-12));
  CHECK_THAT(volume_ml(pot(Shape::rectangular, sides(28, 20), sides(24, 16), 6)), WithinAbs(2816, 1e-6));
  CHECK_THAT(volume_ml(pot(Shape::round, sides(12, 12), sides(8, 8), 10)), WithinAbs(795.870, 0.0005));
  Container bowl = pot(Shape::bowl, sides(30, 20), sides(30, 20), 8);
  bowl.base.reset();
  CHECK_THAT(volume_ml(bowl), WithinRel(2.0 / 3 * std::numbers::pi / 4 * 30 * 20 * 8, 1e-12));
}

TEST_CASE("A drum's volume is Simpson's rule over its three diameters", "[pot_geometry][published]") {
  Container drum = pot(Shape::drum, sides(26, 26), sides(26, 26), 8);
  drum.middle = sides(30, 30);
  CHECK_THAT(volume_ml(drum), WithinAbs(5185.7, 0.05));
}

TEST_CASE("The quadratic of areas is not the wall of parabolic radius", "[pot_geometry][reference]") {
  // Worked by hand: the integral of pi r(z)^2, r the parabola through 13, 15 and 13 cm, is .26 % less.
  Container drum = pot(Shape::drum, sides(26, 26), sides(26, 26), 8);
  drum.middle = sides(30, 30);
  double parabolic_ml = 0;
  constexpr int slices = 20'000;
  for (int i = 0; i < slices; ++i) {
    const double t = (i + 0.5) / slices;
    const double radius_cm = 13 + 8 * t * (1 - t);
    parabolic_ml += std::numbers::pi * radius_cm * radius_cm * 8 / slices;
  }
  CHECK_THAT(parabolic_ml, WithinAbs(5172.3, 0.05));
  CHECK_THAT(volume_ml(drum) / parabolic_ml - 1, WithinAbs(0.0026, 0.00005));
}

TEST_CASE("Neither the mean of two areas nor the frustum of similar sections is a tapered rectangle", "[pot_geometry][reference]") {
  const double ours_ml = volume_ml(pot(Shape::rectangular, sides(40, 30), sides(34, 22), 6));
  const double rim = 40 * 30, base = 34 * 22;
  CHECK_THAT(100 * (6 * (rim + base) / 2 / ours_ml - 1), WithinAbs(0.83, 0.005));
  CHECK_THAT(100 * (6 * (rim + std::sqrt(rim * base) + base) / 3 / ours_ml - 1), WithinAbs(-0.09, 0.005));
}

TEST_CASE("A soft-cornered rectangle fills the share of a superellipse", "[pot_geometry][published]") {
  // Area of the superellipse, Gamma(1+1/n)^2/Gamma(1+2/n), to three digits.
  CHECK_THAT(superellipse_share(2), WithinAbs(0.785, 0.0005));
  CHECK_THAT(superellipse_share(2.5), WithinAbs(0.845, 0.0005));
  CHECK_THAT(superellipse_share(3), WithinAbs(0.883, 0.0005));
  CHECK_THAT(superellipse_share(4), WithinAbs(0.927, 0.0005));
  CHECK_THAT(superellipse_share(6), WithinAbs(0.964, 0.0005));
  Container soft = pot(Shape::superellipse, sides(40, 30), sides(34, 22), 6);
  soft.exponent = 2;
  CHECK_THAT(volume_ml(soft), WithinAbs(4552.17, 0.005));
}

TEST_CASE("The area inside a fillet is the wall's less the fillet's own strip", "[pot_geometry][law]") {
  Container round = pot(Shape::round, sides(10, 10), sides(10, 10), 5);
  round.fillet_radius = length_cm(2.5);
  const PotGeometry geometry(round);
  CHECK_THAT(in_cm2(geometry.area_at(depth_cm(0))), WithinAbs(0, 1e-9));
  // A quarter circle of radius r stands r - sqrt(r^2 - (r - z)^2) in from the wall.
  const double inset = 2.5 - std::sqrt(2.5 * 2.5 - 1.5 * 1.5);
  CHECK_THAT(in_cm2(geometry.area_at(depth_cm(1))), WithinRel(std::numbers::pi * (25 - 10 * inset), 1e-12));
}

TEST_CASE("Rounded corners and a floor fillet take their share away", "[pot_geometry][law]") {
  Container plain = pot(Shape::rectangular, sides(40, 30), sides(34, 22), 6);
  Container rounded = plain;
  rounded.corner_radius = length_cm(3);
  CHECK_THAT(volume_ml(plain) - volume_ml(rounded), WithinRel((4 - std::numbers::pi) * 9 * 6, 1e-10));
  Container filleted = plain;
  filleted.fillet_radius = length_cm(1.5);
  const double strip = 1 - std::numbers::pi / 4;
  CHECK_THAT(volume_ml(plain) - volume_ml(filleted), WithinRel(strip * 2.25 * 2 * (34 + 22), 1e-8));
  Container round = pot(Shape::round, sides(30, 30), sides(24, 24), 6);
  Container round_filleted = round;
  round_filleted.fillet_radius = length_cm(1);
  CHECK_THAT(volume_ml(round) - volume_ml(round_filleted), WithinRel(strip * std::numbers::pi * 24, 1e-8));
}

TEST_CASE("The fill line cuts the volume and a mound adds to it", "[pot_geometry][law]") {
  Container tapered = pot(Shape::rectangular, sides(28, 20), sides(24, 16), 6);
  tapered.freeboard = depth_cm(1.5);
  const PotGeometry at_three_quarters(tapered);
  CHECK_THAT(in_cm(at_three_quarters.filled_depth()), WithinAbs(4.5, 1e-12));
  CHECK_THAT(in_cm2(at_three_quarters.area_at(depth_cm(4.5))), WithinAbs(27 * 19, 1e-9));
  CHECK_THAT(in_ml(at_three_quarters.volume()), WithinRel(4.5 / 6 * (24 * 16 + 4 * 25.5 * 17.5 + 27 * 19), 1e-12));
  CHECK(in_ml(at_three_quarters.mound_volume()) == 0);
  tapered.mound = Mound{depth_cm(2), MoundForm::paraboloid};
  CHECK_THAT(in_ml(PotGeometry(tapered).mound_volume()), WithinRel(27 * 19 * 2 / 2.0, 1e-12));
  tapered.mound->form = MoundForm::cone;
  CHECK_THAT(in_ml(PotGeometry(tapered).mound_volume()), WithinRel(27 * 19 * 2 / 3.0, 1e-12));
  tapered.mound->form = MoundForm::ellipsoid;
  CHECK_THAT(in_ml(PotGeometry(tapered).mound_volume()), WithinRel(27 * 19 * 4 / 3.0, 1e-12));
  CHECK_THAT(in_ml(PotGeometry(tapered).volume()), WithinRel(in_ml(at_three_quarters.volume()), 1e-12));
}

TEST_CASE("A water fill overrides the lengths and scales every area", "[pot_geometry][law]") {
  Container tapered = pot(Shape::oval, sides(40, 30), sides(34, 22), 6);
  const PotGeometry by_lengths(tapered);
  tapered.water_fill = pot_ml(in_ml(by_lengths.volume()) * 0.96);
  const PotGeometry filled(tapered);
  CHECK(filled.volume() == *tapered.water_fill);
  CHECK(filled.volume_by_lengths() == by_lengths.volume());
  CHECK_THAT(in_cm2(filled.area_at(depth_cm(2))), WithinRel(0.96 * in_cm2(by_lengths.area_at(depth_cm(2))), 1e-12));
  const Section middle = filled.section_at(depth_cm(3));
  CHECK_THAT(std::numbers::pi / 4 * in_cm(middle.length) * in_cm(middle.width), WithinRel(in_cm2(filled.area_at(depth_cm(3))), 1e-12));
}

TEST_CASE("A table of areas is interpolated without overshoot", "[pot_geometry][law]") {
  Container table;
  table.shape = Shape::profile;
  table.depth = depth_cm(8);
  for (const auto& [height, area] : {std::pair(0.0, 200.0), std::pair(2.0, 400.0), std::pair(5.0, 410.0), std::pair(8.0, 380.0)}) {
    table.areas.push_back({depth_cm(height), area_cm2(area)});
  }
  REQUIRE(check(table).empty());
  const PotGeometry geometry(table);
  double highest = 0;
  for (int i = 0; i <= 800; ++i) {
    const double height = i / 100.0;
    const double area = in_cm2(geometry.area_at(depth_cm(height)));
    highest = std::max(highest, area);
    if (height <= 2) CHECK(area >= 200 - 1e-9);
  }
  CHECK(highest <= 410 + 1e-9);
  CHECK_THAT(in_cm2(geometry.area_at(depth_cm(5))), WithinAbs(410, 1e-9));
}

TEST_CASE("Bottom layer, mix and top dressing add up to the fill", "[pot_geometry][law]") {
  Container layered = pot(Shape::round, sides(30, 30), sides(24, 24), 6);
  layered.bottom_layer = BottomLayer{depth_cm(1), std::nullopt};
  layered.top_dressing = depth_cm(0.4);
  const PotGeometry geometry(layered);
  CHECK_THAT(in_ml(geometry.bottom_layer_volume()), WithinRel(std::numbers::pi / 12 * (25 * 25 + 25 * 24 + 24 * 24), 1e-12));
  CHECK_THAT(in_ml(geometry.main_mix_volume() + geometry.bottom_layer_volume() + geometry.top_dressing_volume()),
             WithinRel(in_ml(geometry.volume()), 1e-12));
}
