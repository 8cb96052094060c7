#include "gritwright/domain/container.hpp"

#include <catch2/catch.hpp>
#include <limits>
#include <set>

using namespace gritwright;

namespace {

Container tray() {
  Container container;
  container.shape = Shape::rectangular;
  container.rim = {length_cm(28), length_cm(20)};
  container.base = Section{length_cm(24), length_cm(16)};
  container.depth = depth_cm(6);
  return container;
}

std::set<std::string> codes(const Container& container) {
  std::set<std::string> found;
  for (const Problem& problem : check(container)) found.insert(problem.code);
  return found;
}

using Codes = std::set<std::string>;

}  // namespace

TEST_CASE("A container with plausible lengths passes", "[container]") { CHECK(check(tray()).empty()); }

TEST_CASE("A container refuses lengths that leave no room, all at once", "[container][refuses]") {
  Container container = tray();
  container.depth = depth_cm(0);
  container.rim.width = length_cm(-2);
  container.base->length = length_cm(0);
  const Problems problems = check(container);
  REQUIRE(problems.size() == 3);
  CHECK(problems[0].where.pointer == "/depth_cm");
  CHECK(problems[1].where.pointer == "/rim/width_cm");
  CHECK(problems[2].where.pointer == "/base/length_cm");
}

TEST_CASE("A container refuses sizes no container has, which would overflow its volume", "[container][refuses][regression]") {
  Container container = tray();
  container.rim.length = length_cm(1e300);
  container.base->width = length_cm(1e-12);
  container.water_fill = pot_ml(1e300);
  CHECK(codes(container) == Codes{"container.length-too-large", "container.length-too-small", "container.volume-out-of-range"});
  Container soft = tray();
  soft.shape = Shape::superellipse;
  soft.exponent = 1e12;
  CHECK(codes(soft) == Codes{"container.exponent-too-large"});
}

TEST_CASE("A container refuses a fill line under the floor", "[container][refuses]") {
  Container container = tray();
  container.freeboard = depth_cm(6);
  CHECK(codes(container) == Codes{"container.fill-line-below-floor"});
  container.freeboard = depth_cm(-1);
  CHECK(codes(container) == Codes{"container.length-negative"});
}

TEST_CASE("A drum refuses a missing middle and walls that meet", "[container][refuses]") {
  Container drum = tray();
  drum.shape = Shape::drum;
  drum.rim = drum.base.emplace(Section{length_cm(26), length_cm(26)});
  CHECK(codes(drum) == Codes{"container.middle-missing"});
  drum.middle = Section{length_cm(30), length_cm(30)};
  CHECK(check(drum).empty());
  drum.base = Section{length_cm(60), length_cm(60)};
  drum.middle = Section{length_cm(15), length_cm(15)};
  CHECK(codes(drum) == Codes{"container.walls-close"});
}

TEST_CASE("A soft-cornered rectangle refuses a missing or hollow exponent", "[container][refuses]") {
  Container soft = tray();
  soft.shape = Shape::superellipse;
  CHECK(codes(soft) == Codes{"container.exponent-missing"});
  soft.exponent = 0.5;
  CHECK(codes(soft) == Codes{"container.exponent-too-small"});
  soft.exponent = std::numeric_limits<double>::quiet_NaN();
  CHECK(codes(soft) == Codes{"container.exponent-too-small"});
}

TEST_CASE("Corner and fillet radii are refused where they don't fit the shape", "[container][refuses]") {
  Container container = tray();
  container.corner_radius = length_cm(9);
  container.fillet_radius = length_cm(5);
  CHECK(codes(container) == Codes{"container.corner-too-large", "container.fillet-too-large"});
  container.shape = Shape::oval;
  container.fillet_radius = length_cm(1);
  CHECK(codes(container) == Codes{"container.corner-without-rectangle"});
  container.shape = Shape::bowl;
  container.corner_radius = length_cm(0);
  CHECK(codes(container) == Codes{"container.fillet-without-floor-edge"});
}

TEST_CASE("A table of areas must rise from the floor to the rim", "[container][refuses]") {
  Container table;
  table.shape = Shape::profile;
  table.depth = depth_cm(6);
  CHECK(codes(table) == Codes{"container.profile-too-few"});
  table.areas = {{depth_cm(1), area_cm2(100)}, {depth_cm(4), area_cm2(120)}, {depth_cm(4), area_cm2(-1)}};
  CHECK(codes(table) == Codes{"container.area-not-positive", "container.profile-below-rim", "container.profile-not-from-floor",
                              "container.profile-not-rising"});
  table.areas = {{depth_cm(0), area_cm2(100)}, {depth_cm(4), area_cm2(100)}, {depth_cm(4.005), area_cm2(300)}, {depth_cm(6), area_cm2(120)}};
  CHECK(codes(table) == Codes{"container.length-too-small"});
  table.areas[2].height = depth_cm(4.01);
  CHECK(check(table).empty());
  table.areas = {{depth_cm(0), area_cm2(0)}, {depth_cm(6), area_cm2(120)}};
  CHECK(check(table).empty());
}

TEST_CASE("The grain of a bottom layer is checked in its place", "[container][refuses]") {
  Container container = tray();
  Component grain;
  grain.sizes = SingleSize{aperture_mm(-3)};
  grain.grain.bulk_density = bulk_g_l(800);
  container.bottom_layer = BottomLayer{depth_cm(1), grain};
  const Problems problems = check(container);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().where.pointer == "/bottom_layer/component/class_mm");
}

TEST_CASE("What stands in and under the pot is checked too", "[container][refuses]") {
  Container container = tray();
  container.saucer = depth_cm(-1);
  container.tilt.angle = angle_deg(75);
  container.water_fill = pot_ml(0);
  container.bottom_layer = BottomLayer{depth_cm(5), std::nullopt};
  container.top_dressing = depth_cm(1);
  CHECK(codes(container) == Codes{"container.layers-fill-the-pot", "container.length-negative", "container.tilt-out-of-range",
                                  "container.volume-not-positive"});
}
