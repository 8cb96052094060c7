#include "gritwright/models/root_history.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "root_plan_cases.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;
using Catch::Matchers::WithinAbs;

namespace {

double volume_cm3(const UntouchedPart& part) {
  double total = 0;
  for (const TreeBox& box : part.boxes)
    total += in_cm(box.right_to - box.right_from) * in_cm(box.back_to - box.back_from) * in_cm(box.up_to - box.up_from);
  return total;
}

/// A pine of 20 x 14 x 8 in a pot of 30 x 20 x 9, its left half combed.
RootMassPlan left_half_combed() {
  RootMassPlan plan = box_in(20, 14, 8, straight_pot(30, 20, 9));
  plan.group = SpeciesGroup::conifer;
  plan.combed = {{Face::left, length_cm(10)}};
  return plan;
}

}  // namespace

TEST_CASE("History tells what was cut, combed and left, and the part left is kept in the tree frame", "[root_history]") {
  const RootMassPlan plan = left_half_combed();
  const WorkedPlan worked = answer_of(plan).plans.front();
  REQUIRE(worked.cuts.empty());
  const Repotting done = repotting_by(plan, worked);
  CHECK(done.plan_name == "A");
  CHECK_FALSE(done.bare_rooted);
  REQUIRE(done.combed.size() == 1);
  CHECK(done.combed.front().face == "left");
  REQUIRE(done.untouched);
  // Half of the root mass, and all of it on the right.
  CHECK_THAT(done.untouched_share->value(), WithinAbs(0.5, 1e-3));
  CHECK_THAT(volume_cm3(*done.untouched), WithinAbs(20 * 14 * 8 / 2.0, 1e-6));
  for (const TreeBox& box : done.untouched->boxes) CHECK(in_cm(box.right_from) >= -1e-9);
  // Cells of 5 mm that lie flush are told as one box.
  CHECK(done.untouched->boxes.size() == 1);
  CHECK_THAT(in_cm(done.untouched->base_up), WithinAbs(8, 1e-9));
}

TEST_CASE("Joined boxes hold as much as the cells they come from, whatever the shape", "[root_history][law]") {
  RootMassPlan plan = box_in(26, 20, 9, straight_pot(24, 20, 8, Shape::oval));
  for (const BlockForm form : {BlockForm::elliptic, BlockForm::rounded}) {
    plan.block = BlockBox{form, length_cm(26), length_cm(20), length_cm(9), form == BlockForm::rounded ? std::optional(3.5) : std::nullopt};
    plan.pose.tip = angle_deg(7);
    const WorkedPlan worked = answer_of(plan).plans.front();
    REQUIRE_FALSE(worked.untouched.empty());
    const Repotting done = repotting_by(plan, worked);
    CHECK_THAT(volume_cm3(*done.untouched), WithinAbs(static_cast<double>(worked.untouched.size()) * 0.125, 1e-6));
    CHECK(done.untouched->boxes.size() * 4 < worked.untouched.size());
  }
}

TEST_CASE("What was left last time is known when the other half comes", "[root_history]") {
  const RootMassPlan first = left_half_combed();
  RootMassPlan second = left_half_combed();
  second.untouched_last_time = repotting_by(first, answer_of(first).plans.front()).untouched;

  const WorkedPlan same_half = answer_of(second).plans.front();
  REQUIRE(same_half.other_half);
  CHECK_THAT(same_half.other_half->left_before, WithinAbs(0.5, 0.01));
  CHECK_THAT(same_half.other_half->left_again, WithinAbs(0.5, 0.01));
  CHECK_THAT(same_half.other_half->worked_again, WithinAbs(0.5, 0.01));
  CHECK(same_half.other_half->toward == Face::right);
  CHECK(told(same_half.cautions, "root-plan.worked-again"));
  CHECK(told(same_half.cautions, "root-plan.left-again"));

  second.combed = {{Face::right, length_cm(10)}};
  const WorkedPlan other = answer_of(second).plans.front();
  CHECK_THAT(other.other_half->left_again, WithinAbs(0, 0.01));
  CHECK_THAT(other.other_half->worked_again, WithinAbs(0, 0.01));
  CHECK_FALSE(told(other.cautions, "root-plan.worked-again"));
  CHECK_FALSE(told(other.cautions, "root-plan.left-again"));
}

TEST_CASE("A tree set with a new front carries its untouched part round with it", "[root_history]") {
  // Turned by a quarter, the old right looks to the back: there the other half lies when the next plan is made.
  RootMassPlan first = left_half_combed();
  first.block = BlockBox{BlockForm::box, length_cm(14), length_cm(14), length_cm(8), {}};
  first.combed = {{Face::left, length_cm(7)}};
  first.pose.turn = angle_deg(90);
  const WorkedPlan done = answer_of(first).plans.front();
  REQUIRE(done.cuts.empty());
  RootMassPlan second = first;
  second.pose.turn = {};
  second.untouched_last_time = repotting_by(first, done).untouched;
  CHECK(answer_of(second).plans.front().other_half->toward == Face::back);
}

TEST_CASE("Bare-rooting leaves no untouched part, and stages leave it where it stood", "[root_history]") {
  RootMassPlan bare = left_half_combed();
  bare.group = SpeciesGroup::deciduous_developing;
  bare.bare_root = true;
  const Repotting washed = repotting_by(bare, answer_of(bare).plans.front());
  CHECK(washed.bare_rooted);
  CHECK_FALSE(washed.untouched);
  CHECK_FALSE(washed.untouched_share);

  RootMassPlan high = box_in(20, 14, 9, straight_pot(30, 20, 5));
  high.group = SpeciesGroup::conifer;
  high.untouched_least.reset();
  high.removed_most.reset();
  high.pose.turn = angle_deg(30);
  permit(high, Face::top, 0);
  const WorkedPlan staged = answer_of(high).plans.front();
  REQUIRE_FALSE(staged.fits);
  const Repotting done = repotting_by(high, staged);
  REQUIRE(done.untouched);
  CHECK(in_deg(done.untouched->turn) == 0);
  const TrunkBase after = trunk_base_after(high, staged);
  CHECK_THAT(in_cm(after.up), WithinAbs(9, 1e-9));
}

TEST_CASE("History tells the corners that were rounded off, apart from the cuts", "[root_history][corners]") {
  RootMassPlan plan = box_in(24, 18, 5, straight_pot(24, 18, 7, Shape::oval));
  plan.side_clearance = Length{};
  const Repotting done = repotting_by(plan, answer_of(plan).plans.front());
  REQUIRE(done.cut.size() == 4);
  CHECK(done.cut.front().face == "right corners");
  CHECK_THAT(in_cm(done.cut.front().depth), WithinAbs(3.0255, 0.05));
}
