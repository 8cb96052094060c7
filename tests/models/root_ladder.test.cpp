// The hand-worked cases of docs/science/root-mass-plan.md. Unless a case says otherwise: pot 30 x 20 x 8 cm with straight walls, filled
// to the rim, clearances 1 cm, so that the root mass may reach 14 cm to the sides, 9 cm to back and front, and lie from 1 to 8 cm.
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <tuple>

#include "root_plan_cases.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double share_tolerance = 0.001;  // of the point set

RootMassPlan box_of(double length, double width, double height, double trunk_up) {
  RootMassPlan plan = box_in(length, width, height, straight_pot(30, 20, 8));
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(trunk_up)};
  return plan;
}

WorkedPlan plan_a(const RootMassPlan& plan) { return answer_of(plan).plans.front(); }

}  // namespace

TEST_CASE("A cut of the old top that would leave the base of the trunk bare is warned of", "[root_plan]") {
  RootMassPlan plan = box_in(28, 28, 12.5, straight_pot(40, 30, 8.5));
  plan.trunk_base = TreePoint{{}, {}, length_cm(12)};
  permit_all(plan, 0);
  permit(plan, Face::top, 20);
  const WorkedPlan bared = answer_of(plan).plans.front();
  REQUIRE(cut_cm(bared, Direction::up) > 2);
  CHECK(told(bared.cautions, "root-plan.trunk-base-bared"));
  // What comes off below needs no cut of the top.
  permit(plan, Face::bottom, 20);
  permit(plan, Face::top, 0.5);
  const WorkedPlan from_below = answer_of(plan).plans.front();
  CHECK(cut_cm(from_below, Direction::down) > 2);
  CHECK_FALSE(told(from_below.cautions, "root-plan.trunk-base-bared"));
}

TEST_CASE("Case 1: moving the tree suffices", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(20, 14, 6, 6);
  plan.pose.right = length_cm(6);
  const auto answer = answer_of(plan);
  REQUIRE(answer.limitations.size() == 1);
  CHECK(answer.limitations.front().direction == Direction::right);
  CHECK_THAT(in_cm(answer.limitations.front().excess), WithinAbs(2, 1e-9));
  const WorkedPlan& worked = answer.plans.front();
  CHECK(worked.fits);
  CHECK(worked.rungs == std::vector{Rung::shifted});
  CHECK_THAT(in_cm(worked.right), WithinAbs(4, 1e-9));
  CHECK(worked.cuts.empty());
  CHECK_THAT(in_ml(worked.fill), WithinAbs(30 * 20 * 8 - 20 * 14 * 6, 1e-6));
}

TEST_CASE("Case 2: the top can be reduced", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(20, 14, 7, 6);
  permit(plan, Face::top, 2);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.rungs == std::vector{Rung::cut});
  REQUIRE(worked.cuts.size() == 1);
  CHECK(worked.cuts.front().face == Face::top);
  CHECK(worked.cuts.front().direction == Direction::up);
  CHECK_THAT(in_cm(worked.cuts.front().depth), WithinAbs(1, 1e-9));
  CHECK_THAT(in_cm(worked.trunk_base), WithinAbs(8, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(1.0 / 7, share_tolerance));
  CHECK_THAT(worked.untouched_share, WithinAbs(5.4 / 7, share_tolerance));
  CHECK_THAT(in_ml(worked.fill), WithinAbs(30 * 20 * 8 - 20 * 14 * 6, 5));
}

TEST_CASE("Case 3: the top is immovable, so the tree sinks and the bottom pays", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(20, 14, 8, 8);
  plan.pose.trunk_base = depth_cm(10);
  permit(plan, Face::top, 0);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(worked.rungs == std::vector{Rung::cut, Rung::sunk});
  REQUIRE(worked.cuts.size() == 1);
  CHECK(worked.cuts.front().face == Face::bottom);
  CHECK_THAT(in_cm(worked.cuts.front().depth), WithinAbs(1, 1e-9));
  CHECK_THAT(in_cm(worked.trunk_base), WithinAbs(8, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(1.0 / 8, share_tolerance));
  CHECK_THAT(worked.untouched_share, WithinAbs(6.4 / 8, share_tolerance));
}

TEST_CASE("Case 4: the trunk's limit stops the sinking, so a shoulder", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(20, 14, 8, 7);
  plan.pose.trunk_base = depth_cm(10);
  permit(plan, Face::top, 0);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(worked.rungs == std::vector{Rung::sunk, Rung::shoulder});
  CHECK(worked.cuts.empty());
  CHECK_THAT(in_cm(worked.trunk_base), WithinAbs(8, 1e-9));
  CHECK_THAT(in_cm(worked.shoulder), WithinAbs(1, 1e-9));
  CHECK_THAT(in_cm(worked.soil_line), WithinAbs(8, 1e-9));
  CHECK_THAT(in_ml(worked.fill), WithinAbs(30 * 20 * 8 - 20 * 14 * 7, 5));
}

TEST_CASE("Beside a shoulder no cut is planned that is thinner than can be worked", "[root_plan][ladder]") {
  // The top stands 1 cm over the soil; the group bears a share of the 8 cm of height, the rest stays as a shoulder.
  RootMassPlan plan = box_of(20, 14, 8, 7);
  plan.removed_most = 0.05;
  const WorkedPlan workable = plan_a(plan);
  CHECK(workable.fits);
  CHECK_THAT(cut_cm(workable, Direction::up), WithinAbs(0.4, 1.0 / 128 + 8 * share_tolerance));
  // .005 of 8 cm are .4 mm.
  plan.removed_most = 0.005;
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(worked.cuts.empty());
  CHECK(worked.rungs == std::vector{Rung::shoulder});
  CHECK_THAT(in_cm(worked.shoulder), WithinAbs(1, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(0, 1e-12));
}

TEST_CASE("The sphagnum of a shoulder fills the slope of 35 degrees around the root mass", "[root_plan][ladder]") {
  // docs/science/root-mass-plan.md: around L x W that stands h over the soil, (L + W) h2/tan 35 + pi h3/(3 tan2 35).
  for (const auto& [length, width, over] : {std::tuple{20.0, 14.0, 2.0}, {14.0, 6.0, 2.8}, {20.0, 10.0, 1.0}}) {
    RootMassPlan plan = box_of(length, width, 7, 7 - over);
    permit(plan, Face::top, 0);
    const WorkedPlan worked = plan_a(plan);
    INFO(length << " x " << width << ", " << over << " over the soil");
    REQUIRE(worked.fits);
    REQUIRE_THAT(in_cm(worked.shoulder), WithinAbs(over, 1e-9));
    const double tan = std::tan(35 * std::numbers::pi / 180);
    const double by_hand = (length + width) * over * over / tan + std::numbers::pi * over * over * over / (3 * tan * tan);
    CHECK_THAT(in_ml(worked.sphagnum), Catch::Matchers::WithinRel(by_hand, 0.05));
  }
  CHECK(in_ml(plan_a(box_of(20, 14, 7, 7)).sphagnum) == 0);
}

TEST_CASE("The sphagnum of a shoulder is the same however the root mass is turned", "[root_plan][ladder][regression]") {
  const double tan = std::tan(35 * std::numbers::pi / 180);
  constexpr double over = 1.5;
  const double by_hand = (10 + 7) * over * over / tan + std::numbers::pi * over * over * over / (3 * tan * tan);
  for (const double turn : {0.0, 17.0, 30.0, 45.0}) {
    RootMassPlan plan = box_of(10, 7, 7, 7 - over);
    plan.pose.turn = angle_deg(turn);
    permit(plan, Face::top, 0);
    const WorkedPlan worked = plan_a(plan);
    INFO("turned by " << turn);
    REQUIRE_THAT(in_cm(worked.shoulder), WithinAbs(over, 1e-9));
    CHECK_THAT(in_ml(worked.sphagnum), Catch::Matchers::WithinRel(by_hand, 0.03));
  }
}

TEST_CASE("On a mound the slope of sphagnum goes by true heights, not by heights over the soil", "[root_plan][ladder][regression]") {
  // A pyramid 1 cm high in the middle; the trunk's base at its tip, the top of the box .6 cm above it at z 9.6.
  RootMassPlan plan = box_of(20, 14, 7, 6.4);
  plan.pot.mound = Mound{depth_cm(1), MoundForm::cone};
  permit(plan, Face::top, 0);
  const WorkedPlan worked = plan_a(plan);
  REQUIRE(worked.fits);
  REQUIRE(worked.rungs == std::vector{Rung::shoulder});
  // Summed by hand over squares of half a millimetre: what lies between the soil and 35 degrees down from the box's upper edge.
  const double slope = std::tan(35 * std::numbers::pi / 180);
  constexpr double step = 0.05;
  double by_hand = 0;
  for (double x = -15 + step / 2; x < 15; x += step)
    for (double y = -10 + step / 2; y < 10; y += step) {
      const double away = std::hypot(std::max(0.0, std::abs(x) - 10), std::max(0.0, std::abs(y) - 7));
      const double soil = 8 + 1 - std::max(std::abs(x) / 15, std::abs(y) / 10);
      if (away > 0) by_hand += std::max(0.0, 9.6 - slope * away - soil) * step * step;
    }
  CHECK_THAT(in_ml(worked.sphagnum), Catch::Matchers::WithinRel(by_hand, 0.05));
}

TEST_CASE("Case 5: a shoulder would be too steep, so the tree is tipped less", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(27, 14, 6, 6);
  plan.pose.tip = angle_deg(12);
  permit(plan, Face::top, 1);
  permit(plan, Face::left, 0);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(has(worked, Rung::tipped_less));
  CHECK_FALSE(has(worked, Rung::shoulder));
  const double tip = std::atan(1 / 13.5);
  // The rung halves its steps of a degree six times.
  CHECK_THAT(in_deg(worked.tip), WithinAbs(tip * 180 / std::numbers::pi, 1.0 / 64));
  CHECK(in_deg(worked.tip) <= tip * 180 / std::numbers::pi + 1e-9);
  CHECK_THAT(cut_cm(worked, Direction::up), WithinAbs(13.5 * std::sin(tip), 0.005));
  CHECK_THAT(cut_cm(worked, Direction::down), WithinAbs(0, 1e-9));
  // Tipped 12 degrees the left edge would stand 1.83 cm over the soil at a run of 2.25 cm, which bears 1.57 cm: as it was given 
  // cut nor shoulder would have done.
  plan.tip_least = plan.pose.tip;
  const WorkedPlan steep = plan_a(plan);
  CHECK_FALSE(steep.fits);
  CHECK(told(steep.cautions, "root-plan.shoulder-too-steep"));
}

TEST_CASE("Case 6: a side that limits shifts the tree and its opposite pays", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(30, 14, 6, 6);
  permit(plan, Face::right, 0);
  permit(plan, Face::left, 3);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(worked.rungs == std::vector{Rung::shifted, Rung::cut});
  CHECK_THAT(in_cm(worked.right), WithinAbs(-1, 1e-9));
  REQUIRE(worked.cuts.size() == 1);
  CHECK(worked.cuts.front().face == Face::left);
  CHECK_THAT(in_cm(worked.cuts.front().depth), WithinAbs(2, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(2.0 / 30, share_tolerance));
  CHECK_THAT(worked.untouched_share, WithinAbs(27.1 / 30, share_tolerance));
}

TEST_CASE("Case 7: a turned-in mouth limits although the belly is wide", "[root_plan][ladder]") {
  Container drum;
  drum.shape = Shape::drum;
  drum.rim = section(26, 26);
  drum.middle = section(30, 30);
  drum.base = section(26, 26);
  drum.depth = depth_cm(8);
  drum.freeboard = depth_cm(1);
  RootMassPlan plan = box_in(27, 27, 5, drum);
  plan.block = BlockBox{BlockForm::elliptic, length_cm(27), length_cm(27), length_cm(5), {}};
  const auto answer = answer_of(plan);
  REQUIRE(answer.limitations.size() == 4);
  for (const Limitation& limitation : answer.limitations) CHECK_THAT(in_cm(limitation.excess), WithinAbs(1, 1e-9));
  const WorkedPlan& worked = answer.plans.front();
  CHECK(worked.fits);
  CHECK_THAT(worked.removed_share, WithinAbs(1 - 12.5 * 12.5 / (13.5 * 13.5), share_tolerance));
  // Squared radius 169 + 56 (1 - (z - 4)^2/16), from the floor to 7 cm.
  const double pot = std::numbers::pi * (169 * 7 + 56 * (7 - (27 + 64) / 48.0));
  CHECK_THAT(in_ml(worked.fill), WithinAbs(pot - std::numbers::pi * 12.5 * 12.5 * 5, 4));
  CHECK(told(worked.cautions, "root-plan.turned-in"));
}

TEST_CASE("Case 8: nothing fits, so it goes in stages", "[root_plan][ladder]") {
  RootMassPlan plan = box_in(20, 14, 9, straight_pot(30, 20, 5));
  plan.group = SpeciesGroup::conifer;
  plan.untouched_least.reset();
  plan.removed_most.reset();
  const WorkedPlan worked = plan_a(plan);
  CHECK_FALSE(worked.fits);
  CHECK(worked.rungs == std::vector{Rung::cut, Rung::staging});
  REQUIRE(worked.cuts.size() == 1);
  CHECK(worked.cuts.front().face == Face::bottom);
  // Of the 5 cm needed, as much as 35 % of 9 cm; found to a 256th of it.
  CHECK_THAT(in_cm(worked.cuts.front().depth), WithinAbs(0.35 * 9, 5.0 / 256 + 9 * share_tolerance));
  CHECK_THAT(worked.untouched_share, WithinAbs((9 - 0.35 * 9 - 0.6) / 9, 0.005));
  CHECK(worked.rest_after_years == 3);
  CHECK(told(worked.cautions, "root-plan.staging"));
  CHECK_FALSE(told(worked.cautions, "root-plan.still-too-large"));
}

TEST_CASE("Case 9: the tree is turned no farther than needed", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(27, 17, 6, 6);
  plan.pose.turn = angle_deg(10);
  plan.turn_most = angle_deg(10);
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.rungs == std::vector{Rung::turned});
  CHECK(worked.cuts.empty());
  // At 3 degrees the box still reaches 8.5 cos 3 + 13.5 sin 3 = 9.19 cm back, at 2 degrees 8.97 cm.
  CHECK_THAT(in_deg(worked.turn), WithinAbs(2, 1e-9));
}

TEST_CASE("Case 10: a free pot that fits is taken", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(31, 14, 6, 6);
  permit_all(plan, 0);
  Container small = straight_pot(32, 20, 8);
  small.name = "small";
  Container right = straight_pot(33, 20, 8);
  right.name = "right";
  Container large = straight_pot(40, 30, 8);
  large.name = "large";
  plan.free_pots = {large, small, right};
  const WorkedPlan worked = plan_a(plan);
  CHECK(worked.fits);
  CHECK(worked.rungs.back() == Rung::other_pot);
  CHECK(worked.other_pot == "right");
  CHECK(worked.other_pot_index == 2);
}

TEST_CASE("Case 11: the fall-backs are for when the largest cut, then its successor, proves impossible", "[root_plan][ladder]") {
  // Block 28 x 14 x 9, trunk base 8 up and 9 over the floor: 1 cm over the soil, the top 2 cm over the fill line, the bottom at 1.
  RootMassPlan plan = box_of(28, 14, 9, 8);
  plan.pose.trunk_base = depth_cm(9);
  const auto answer = answer_of(plan);
  REQUIRE(answer.plans.size() == 3);
  CHECK_THAT(cut_cm(answer.plans[0], Direction::up), WithinAbs(2, 1e-9));
  // B: the top stays; the tree sinks 1 cm, the bottom gives 1, and 1 cm stands over the soil: along the side walls a run of 1 cm
  // allows .7 cm, so it needs more than that there.
  CHECK(answer.plans[1].name == "B");
  CHECK_THAT(cut_cm(answer.plans[1], Direction::up), WithinAbs(0, 1e-9));
  // Each row of the stop table is the plan with that stop.
  REQUIRE(answer.stop_table.size() == 4);
  CHECK_THAT(in_cm(answer.stop_table[1].below), WithinAbs(0, 1e-9));
  CHECK_THAT(answer.stop_table[1].untouched_share, WithinAbs(answer.plans[0].untouched_share, 1e-12));
  // Plan A takes 2 cm: who gets 3 cm deep need not look further.
  CHECK_FALSE(answer.stop_table[0].far_enough);
  CHECK(answer.stop_table[1].far_enough);
  REQUIRE(told_stops(answer).size() == 2);
  CHECK_THAT(in_cm(told_stops(answer).back().stops_at), WithinAbs(3, 1e-9));
  plan.stopped = {{Direction::up, Length{}}};
  const WorkedPlan stopped = plan_a(plan);
  CHECK_THAT(in_cm(answer.stop_table[0].trunk_base), WithinAbs(in_cm(stopped.trunk_base), 1e-9));
  CHECK_THAT(in_ml(answer.stop_table[0].fill), WithinAbs(in_ml(stopped.fill), 1e-6));
  CHECK(answer.stop_table[0].fits == stopped.fits);
}

TEST_CASE("Case 12: what was cut before a stop stays cut, and the rest is computed anew", "[root_plan][ladder]") {
  // Block 20 x 14 x 9: the top needs 2 cm and comes to an end after 1. The tree sinks by the other, and the bottom pays it.
  RootMassPlan plan = box_of(20, 14, 9, 8);
  plan.pose.trunk_base = depth_cm(9);
  CHECK_THAT(cut_cm(plan_a(plan), Direction::up), WithinAbs(2, 1e-9));
  CHECK_THAT(cut_cm(plan_a(plan), Direction::down), WithinAbs(0, 1e-9));
  plan.stopped = {{Direction::up, length_cm(1)}};
  const WorkedPlan worked = plan_a(plan);
  CHECK_THAT(cut_cm(worked, Direction::up), WithinAbs(1, 1e-9));
  CHECK_THAT(cut_cm(worked, Direction::down), WithinAbs(1, 1e-9));
  CHECK_THAT(in_cm(worked.trunk_base), WithinAbs(8, 1e-9));
  CHECK_THAT(worked.removed_share, WithinAbs(2.0 / 9, share_tolerance));
}

TEST_CASE("The smallest change of the pot is of the one length that is short", "[root_plan][ladder]") {
  RootMassPlan plan = box_of(31, 14, 6, 6);
  permit_all(plan, 0);
  const auto growth = smallest_fitting_growth(plan);
  REQUIRE(growth);
  CHECK_THAT(in_cm(growth->length), WithinAbs(3, 30.0 / 512 + 1e-6));
  CHECK(in_cm(growth->width) == 0);
  CHECK(in_cm(growth->depth) == 0);
}
