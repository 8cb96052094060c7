#include "gritwright/models/root_views.hpp"

#include <catch2/catch.hpp>
#include <algorithm>
#include <numbers>

#include "root_plan_cases.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;
using Catch::Matchers::WithinAbs;

namespace {

double low_of(const ViewOutline& outline, Length ViewPoint::*along) {
  return in_cm((*std::ranges::min_element(outline, {}, [&](const ViewPoint& p) { return in_cm(p.*along); })).*along);
}
double high_of(const ViewOutline& outline, Length ViewPoint::*along) {
  return in_cm((*std::ranges::max_element(outline, {}, [&](const ViewPoint& p) { return in_cm(p.*along); })).*along);
}

}  // namespace

TEST_CASE("The side view has block, cut and soil where the plan puts them", "[root_views]") {
  // Block 20 x 14 x 9 in a pot of 30 x 20 x 8: from -1 to 8 cm, 2 cm off below; .6 cm more are worked.
  RootMassPlan plan = box_in(20, 14, 9, straight_pot(30, 20, 8));
  plan.pot.bottom_layer = BottomLayer{depth_cm(0.5), {}};
  plan.below_clearance = length_cm(0.5);
  plan.pot.mound = Mound{depth_cm(1), MoundForm::cone};
  plan.pose.trunk_base = depth_cm(9);
  const auto answer = answer_of(plan);
  const auto views = root_views(plan, answer.plans.front());
  const RootView& side = views.side;
  CHECK_THAT(low_of(side.before, &ViewPoint::across), WithinAbs(-10, 1e-9));
  CHECK_THAT(high_of(side.before, &ViewPoint::along) - low_of(side.before, &ViewPoint::along), WithinAbs(9, 1e-9));
  CHECK_THAT(low_of(side.kept, &ViewPoint::along), WithinAbs(1, 0.02));
  CHECK_THAT(high_of(side.kept, &ViewPoint::along), WithinAbs(8, 0.02));
  CHECK_THAT(in_cm(side.trunk_base.along), WithinAbs(in_cm(answer.plans.front().trunk_base), 1e-9));
  REQUIRE(side.layers.size() == 1);
  CHECK_THAT(high_of(side.layers.front(), &ViewPoint::along), WithinAbs(0.5, 1e-9));
  CHECK_THAT(high_of(side.soil, &ViewPoint::along), WithinAbs(9, 1e-9));
  CHECK_THAT(in_cm(side.soil.front().along), WithinAbs(8, 1e-9));
  // The wall runs from one rim to the other.
  CHECK_THAT(in_cm(side.pot.front().front().along), WithinAbs(8, 1e-9));
  CHECK_THAT(in_cm(side.pot.front().back().along), WithinAbs(8, 1e-9));
  CHECK(side.cuts.size() == answer.plans.front().cuts.size());
  for (const ViewRun& run : side.untouched) CHECK(in_cm(run.to) > in_cm(run.from));
}

TEST_CASE("The top view shows the wall at each height and what is kept inside it", "[root_views]") {
  Container pot = straight_pot(30, 24, 8, Shape::oval);
  pot.base = section(26, 20);
  RootMassPlan plan = box_in(30, 20, 6, pot);
  const auto answer = answer_of(plan);
  const auto views = root_views(plan, answer.plans.front());
  const RootView& top = views.top;
  REQUIRE(top.pot.size() == 4);
  CHECK_THAT(high_of(top.pot.front(), &ViewPoint::across), WithinAbs(15, 1e-9));
  CHECK_THAT(high_of(top.pot.back(), &ViewPoint::along), WithinAbs(10, 1e-9));
  for (const ViewPoint& p : top.kept) {
    const double u = in_cm(p.across) / 14;
    const double v = in_cm(p.along) / 11;
    CHECK(u * u + v * v <= 1.02);
  }
  CHECK_THAT(high_of(top.before, &ViewPoint::across), WithinAbs(15, 1e-9));
}

TEST_CASE("A shoulder is drawn from the rim to the root mass", "[root_views]") {
  RootMassPlan plan = box_in(20, 14, 8, straight_pot(30, 20, 8));
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(7)};
  permit(plan, Face::top, 0);
  const auto answer = answer_of(plan);
  REQUIRE(in_cm(answer.plans.front().shoulder) > 0);
  const auto views = root_views(plan, answer.plans.front());
  REQUIRE(views.side.shoulder.size() == 2);
  CHECK_THAT(in_cm(views.side.shoulder[1][0].across), WithinAbs(15, 1e-9));
  CHECK_THAT(in_cm(views.side.shoulder[1][1].along), WithinAbs(9, 0.02));
}

TEST_CASE("A plan in stages is drawn in the old pot with this year's cut", "[root_views]") {
  // The worked case of a conifer in a pot of 5 cm: of 9 cm of height 3.15 come off below this year.
  RootMassPlan plan = box_in(20, 14, 9, straight_pot(30, 20, 5));
  plan.group = SpeciesGroup::conifer;
  plan.untouched_least.reset();
  plan.removed_most.reset();
  plan.block = AsPresentPot{straight_pot(20, 14, 9)};
  permit(plan, Face::top, 0);
  const WorkedPlan worked = answer_of(plan).plans.front();
  REQUIRE_FALSE(worked.fits);
  const RootView side = root_views(plan, worked).side;
  REQUIRE_FALSE(side.pot.empty());
  CHECK_THAT(high_of(side.pot.front(), &ViewPoint::across), WithinAbs(10, 1e-9));
  CHECK_THAT(low_of(side.before, &ViewPoint::along), WithinAbs(0, 1e-9));
  CHECK_THAT(low_of(side.kept, &ViewPoint::along), WithinAbs(9 * worked.removed_share, 0.02));
  CHECK_THAT(high_of(side.kept, &ViewPoint::along), WithinAbs(9, 1e-9));
  plan.block = BlockBox{BlockForm::box, length_cm(20), length_cm(14), length_cm(9), {}};
  CHECK(root_views(plan, answer_of(plan).plans.front()).side.pot.empty());
}

TEST_CASE("What was stopped at the bench is drawn as it was cut", "[root_views]") {
  RootMassPlan plan = box_in(20, 14, 9, straight_pot(30, 20, 8));
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
  plan.pose.trunk_base = depth_cm(9);
  plan.stopped = {{Direction::up, length_cm(1)}};
  const WorkedPlan worked = answer_of(plan).plans.front();
  REQUIRE(worked.cut_planes.size() == 1);
  // In the tree frame: 8 of 9 cm are left.
  CHECK_THAT(worked.cut_planes.front().up, WithinAbs(1, 1e-12));
  CHECK_THAT(in_cm(worked.cut_planes.front().offset), WithinAbs(8, 1e-9));
  const auto views = root_views(plan, worked);
  CHECK_THAT(high_of(views.side.kept, &ViewPoint::along), WithinAbs(8, 0.02));
}
