#include "gritwright/models/root_plan.hpp"

#include <catch2/catch.hpp>
#include <numbers>

#include "root_plan_cases.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("Stones that take up more than the root mass leaves room for are cautioned, and no less than no mix is needed", "[root_plan][regression]") {
  RootMassPlan plan = box_in(20, 14, 5, straight_pot(30, 20, 8));
  plan.displaced = pot_ml(1e12);
  const WorkedPlan worked = answer_of(plan).plans.front();
  CHECK(in_ml(worked.fill) == 0);
  CHECK(told(worked.cautions, "root-plan.no-mix-needed"));
  plan.displaced = pot_ml(100);
  const WorkedPlan usual = answer_of(plan).plans.front();
  CHECK(in_ml(usual.fill) > 0);
  CHECK_FALSE(told(usual.cautions, "root-plan.no-mix-needed"));
}

TEST_CASE("A block that fits needs no cut and leaves the whole of itself untouched", "[root_plan]") {
  const auto answer = answer_of(box_in(20, 14, 6, straight_pot(30, 22, 8)));
  CHECK(answer.limitations.empty());
  REQUIRE(answer.plans.size() == 1);
  const WorkedPlan& plan = answer.plans.front();
  CHECK(plan.fits);
  CHECK(plan.cuts.empty());
  CHECK(plan.rungs.empty());
  CHECK_THAT(plan.removed_share, WithinAbs(0, 1e-12));
  CHECK_THAT(plan.untouched_share, WithinAbs(1, 1e-12));
  CHECK_THAT(in_ml(plan.fill), WithinAbs(30 * 22 * 8 - 20 * 14 * 6, 1e-6));
  CHECK(answer.stop_table.empty());
}

TEST_CASE("Each limitation is the farthest excess at that point's own height, largest first", "[root_plan]") {
  // Pot 30 x 20 x 8, clearances 1 cm: the space reaches 14 and 9 cm from the middle and from 1 to 8 cm up.
  const auto answer = answer_of(box_in(30, 22, 9, straight_pot(30, 20, 8)));
  REQUIRE(answer.limitations.size() == 5);
  CHECK(answer.limitations[0].direction == Direction::back);
  CHECK_THAT(in_cm(answer.limitations[0].excess), WithinAbs(2, 1e-9));
  CHECK(answer.limitations[1].direction == Direction::front);
  CHECK(answer.limitations[2].direction == Direction::down);
  CHECK_THAT(in_cm(answer.limitations[2].excess), WithinAbs(2, 1e-9));
  CHECK(answer.limitations[3].direction == Direction::right);
  CHECK_THAT(in_cm(answer.limitations[3].excess), WithinAbs(1, 1e-9));
  CHECK_THAT(answer.corners_share, WithinAbs(0, 1e-12));
}

TEST_CASE("A box in an oval of its own lengths loses the corners of the oval", "[root_plan][published]") {
  // Area of an ellipse over its rectangle: 1 - pi/4 = 21 %.
  RootMassPlan plan = box_in(24, 18, 5, straight_pot(24, 18, 8, Shape::oval));
  plan.side_clearance = Length{};
  const auto answer = answer_of(plan);
  CHECK(answer.limitations.empty());
  CHECK_THAT(answer.corners_share, WithinAbs(1 - std::numbers::pi / 4, 0.001));
  CHECK_THAT(answer.plans.front().removed_share, WithinAbs(1 - std::numbers::pi / 4, 0.001));
}

TEST_CASE("A rounded block has the volume of a superellipsoid, and a present pot that of the pot", "[root_plan][published]") {
  // G(1+1/n)^3/G(1+3/n) for n 3, 3.5, 4, to three digits.
  for (const auto& [exponent, share] : {std::pair(3.0, 0.712), std::pair(3.5, 0.769), std::pair(4.0, 0.810)}) {
    RootMassPlan plan = box_in(20, 14, 6, straight_pot(30, 22, 8));
    plan.block = BlockBox{BlockForm::rounded, length_cm(20), length_cm(14), length_cm(6), exponent};
    CHECK_THAT(in_ml(answer_of(plan).block_volume) / (20 * 14 * 6), WithinAbs(share, 0.0005));
  }
  RootMassPlan plan = box_in(20, 14, 6, straight_pot(30, 22, 8));
  Container present = straight_pot(20, 14, 6, Shape::oval);
  plan.block = AsPresentPot{present};
  CHECK_THAT(in_ml(answer_of(plan).block_volume), WithinRel(std::numbers::pi / 4 * 20 * 14 * 6, 1e-12));
}

TEST_CASE("In a tapered pot a straight cut takes more than one that follows the wall", "[root_plan]") {
  // Rim 30, floor 26, depth 8, clearance 1: at the block's lowest level 2 cm the space reaches 12.5, at the fill line 14.
  Container pot = straight_pot(30, 30, 8);
  pot.base = section(26, 30);
  RootMassPlan plan = box_in(28, 20, 6, pot);
  const auto along_wall = answer_of(plan).plans.front();
  CHECK_THAT(cut_cm(along_wall, Direction::right), WithinAbs(1.5, 1e-9));
  // A wedge 0 to 1.5 cm wide on both sides: 1.5 of 28.
  CHECK_THAT(along_wall.removed_share, WithinAbs(1.5 / 28, 0.001));
  plan.cut_style = CutStyle::straight;
  const auto straight = answer_of(plan).plans.front();
  CHECK_THAT(cut_cm(straight, Direction::right), WithinAbs(1.5, 1e-9));
  CHECK_THAT(straight.removed_share, WithinAbs(3.0 / 28, 0.001));
}

TEST_CASE("What was combed or lies within the working depth of a cut is not untouched", "[root_plan]") {
  // 3 cm off the bottom; 3 % of 20 cm = 6 mm more are worked. Block 9 cm high.
  RootMassPlan plan = box_in(20, 14, 9, straight_pot(30, 22, 7));
  auto worked = answer_of(plan).plans.front();
  CHECK_THAT(cut_cm(worked, Direction::down), WithinAbs(3, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(3.0 / 9, 0.001));
  CHECK_THAT(worked.untouched_share, WithinAbs(5.4 / 9, 0.001));
  plan.combed = {{Face::left, length_cm(5)}};
  worked = answer_of(plan).plans.front();
  CHECK_THAT(worked.untouched_share, WithinAbs(5.4 / 9 * 15 / 20, 0.001));
}

TEST_CASE("Combing from two sides leaves the slab between them", "[root_plan]") {
  RootMassPlan plan = box_in(20, 14, 6, straight_pot(30, 22, 8));
  plan.combed = {{Face::left, length_cm(10)}, {Face::right, length_cm(4)}};
  const auto worked = answer_of(plan).plans.front();
  CHECK_THAT(worked.untouched_share, WithinAbs(6.0 / 20, 0.001));
}

TEST_CASE("The plan's volumes add up to the pot", "[root_plan][law]") {
  Container pot = straight_pot(30, 22, 8);
  pot.mound = Mound{depth_cm(1), MoundForm::paraboloid};
  pot.bottom_layer = BottomLayer{depth_cm(1), {}};
  pot.freeboard = depth_cm(0.5);
  RootMassPlan plan = box_in(26, 18, 9, pot);
  plan.displaced = pot_ml(120);
  const auto worked = answer_of(plan).plans.front();
  const double mound = 30 * 22 * 1.0 / 2;
  CHECK_THAT(in_ml(worked.fill) + in_ml(worked.kept_under_soil) + 30 * 22 * 1 + 120, WithinAbs(30 * 22 * 7.5 + mound, 1e-6));
}

TEST_CASE("A plan that can't be is refused with every fault at its place", "[root_plan][refuses]") {
  RootMassPlan plan = box_in(-20, 14, 6, straight_pot(30, 22, 8));
  plan.pose.tip = angle_deg(91);
  plan.side_clearance = length_cm(11);
  plan.removed_most = 1.5;
  const auto answer = work_out(plan);
  std::vector<std::string> places;
  for (const Problem& problem : answer.problems()) places.push_back(problem.where.pointer);
  CHECK(places == std::vector<std::string>{"/block/length_cm", "/clearance/side_cm", "/pose/tip_deg", "/limits/removed_most"});
  plan = box_in(20, 14, 6, straight_pot(30, 22, 8));
  plan.group = SpeciesGroup::conifer;
  plan.bare_root = true;
  CHECK(work_out(plan).problems().front().code == "root-plan.conifer-bare-root");
  plan.bare_root = false;
  plan.pot.bottom_layer = BottomLayer{depth_cm(7.5), {}};
  CHECK_FALSE(work_out(plan).ok());
}
