// Corners that a curved wall leaves no room for. The box of 24 x 18 x 5 in an oval of 24 x 18, clearance 0, is worked by hand: a point of the
// quarter x, y > 0 counts for the right where x - 12 > y - 9. That line meets the ellipse at x = 8.9745, y = 5.9745 (225 x^2 - 864 x = 10368).
#include <catch2/catch.hpp>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <tuple>

#include "root_plan_cases.hpp"
#include "support/random_pots.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double counted = 0.001;          // of the point set
constexpr double meets_right_cm = 8.9745305;
constexpr double corner_deep_cm = 12 - meets_right_cm;  // and 9 - 5.9745: equal excess is equal depth

RootMassPlan box_in_oval() {
  RootMassPlan plan = box_in(24, 18, 5, straight_pot(24, 18, 7, Shape::oval));
  plan.side_clearance = Length{};
  return plan;
}

RootMassPlan in_pot_grown_by(RootMassPlan plan, const PotGrowth& growth, double less_cm) {
  const auto grow = [&](Length& length, Length by) {
    if (in_cm(by) > 0) length = length + by - length_cm(less_cm);
  };
  for (Section* section : {&plan.pot.rim, plan.pot.base ? &*plan.pot.base : nullptr}) {
    if (section == nullptr) continue;
    grow(section->length, growth.length);
    grow(section->width, growth.width);
  }
  Length depth = plan.pot.depth.quantity();
  grow(depth, growth.depth);
  plan.pot.depth = Depth(depth);
  return plan;
}

}  // namespace

TEST_CASE("A box cut by planes alone has its exact volume", "[root_plan]") {
  // Rim 24 x 18, floor 22 x 16, 7 deep, filled to 6.5: at 1 cm the space reaches 10.14 and 7.14, so that 20 x 14 x 8 loses 2.5 cm below.
  Container pot = straight_pot(24, 18, 7);
  pot.base = section(22, 16);
  pot.freeboard = depth_cm(0.5);
  RootMassPlan plan = box_in(20, 14, 8, pot);
  const WorkedPlan worked = answer_of(plan).plans.front();
  REQUIRE(worked.fits);
  CHECK(worked.shaved.empty());
  CHECK_THAT(worked.removed_share, WithinAbs(2.5 / 8, 1e-12));
  CHECK_THAT(in_ml(worked.kept), WithinAbs(20 * 14 * 5.5, 1e-9));
  CHECK_THAT(in_ml(worked.kept_under_soil), WithinAbs(20 * 14 * 5.5, 1e-9));
}

TEST_CASE("Corners go as far as every face gives, and no farther", "[root_plan][corners][refuses]") {
  RootMassPlan plan = box_in_oval();
  permit_all(plan, corner_deep_cm + 0.005);
  CHECK(answer_of(plan).plans.front().fits);
  permit_all(plan, corner_deep_cm - 0.005);
  const WorkedPlan refused = answer_of(plan).plans.front();
  CHECK_FALSE(refused.fits);
  CHECK(told(refused.cautions, "root-plan.corner-forbidden"));
  // Right and left may give nothing: there is nowhere to move.
  for (const Face face : faces) plan.permission[static_cast<std::size_t>(face)].reset();
  permit(plan, Face::right, 0);
  permit(plan, Face::left, 0);
  const WorkedPlan held = answer_of(plan).plans.front();
  CHECK_FALSE(held.fits);
  CHECK(told(held.cautions, "root-plan.corner-forbidden"));
}

TEST_CASE("The smallest growth of an oval around a box that gives nothing holds its corners", "[root_plan][corners]") {
  // All lengths alike: (12/(12 + g/2))^2 + (9/(9 + g/2))^2 = 1 at g = 8.598.
  RootMassPlan plan = box_in_oval();
  permit_all(plan, 0);
  const auto growth = smallest_fitting_growth(plan);
  REQUIRE(growth);
  CHECK_THAT(in_cm(growth->length), WithinAbs(8.6, 1e-9));
  CHECK_THAT(in_cm(growth->width), WithinAbs(8.6, 1e-9));
  const WorkedPlan worked = answer_of(in_pot_grown_by(plan, *growth, 0)).plans.front();
  CHECK(worked.fits);
  CHECK_THAT(worked.removed_share, WithinAbs(0, 1e-12));
}

TEST_CASE("A pot grown by what is told fits, and one grown by 2 mm less does not", "[root_plan][corners][law]") {
  test::RandomPots random(Catch::rngSeed());
  constexpr std::array shapes{Shape::rectangular, Shape::oval, Shape::round, Shape::hexagonal};
  int grown = 0;
  for (int i = 0; i < 16; ++i) {
    const double length = random.between(16, 28);
    const double width = random.between(12, 20);
    const Shape shape = shapes[static_cast<std::size_t>(i) % shapes.size()];
    const bool as_wide = shape == Shape::round || shape == Shape::hexagonal;
    RootMassPlan plan = box_in(length, width, random.between(4, 7), straight_pot(length, as_wide ? length : width, 7, shape));
    permit_all(plan, random.chance(0.5) ? 0 : random.between(0, 1));
    if (random.chance(0.5)) plan.pose.tip = angle_deg(random.between(0, 15));
    plan.tip_least = plan.pose.tip;
    const auto growth = smallest_fitting_growth(plan);
    if (!growth) continue;
    INFO("seed " << Catch::rngSeed() << " plan " << i);
    CHECK(answer_of(in_pot_grown_by(plan, *growth, 0)).plans.front().fits);
    if (std::max({in_cm(growth->length), in_cm(growth->width), in_cm(growth->depth)}) < 0.2) continue;
    CHECK_FALSE(answer_of(in_pot_grown_by(plan, *growth, 0.2)).plans.front().fits);
    ++grown;
  }
  CHECK(grown > 4);
}
