// Kept, removed and untouched shares of plan A against a count of our own making in NumPy, on cases that change from run to run.
#include <catch2/catch.hpp>
#include <cmath>
#include <iostream>
#include <utility>
#include <vector>

#include "root_plan_cases.hpp"
#include "support/random_pots.hpp"
#include "support/reference.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;

namespace {

constexpr double tolerance = 0.003;

struct CountedCase {
  RootMassPlan plan;
  int block = 0;  ///< as the script numbers them
  int pot = 0;
};

CountedCase random_case(test::RandomPots& random, int block, int pot) {
  CountedCase one;
  one.block = block;
  one.pot = pot;
  const double length = random.between(20, 36);
  const double width = random.between(16, length);
  const double height = random.between(6, 12);
  const double taper = random.between(0.8, 1);
  Container into = straight_pot(random.between(24, 40), 0, random.between(5, 10));
  into.rim.width = length_cm(random.between(18, in_cm(into.rim.length)));
  const double pot_taper = random.between(0.8, 1);
  into.base = section(in_cm(into.rim.length) * pot_taper, in_cm(into.rim.width) * pot_taper);
  into.freeboard = depth_cm(0.5);
  if (pot == 1) into.shape = Shape::oval;
  if (pot == 2) {
    into.shape = Shape::superellipse;
    into.exponent = random.between(2.5, 5);
  }
  if (pot == 3) {
    into.shape = Shape::drum;
    into.rim = into.base.emplace(section(26, 26));
    into.middle = section(random.between(26.5, 31), 0);
    into.middle->width = into.middle->length;
  }
  one.plan = box_in(length, width, height, into);
  if (block == 1) one.plan.block = BlockBox{BlockForm::elliptic, length_cm(length), length_cm(width), length_cm(height), {}};
  if (block == 2)
    one.plan.block = BlockBox{BlockForm::rounded, length_cm(length), length_cm(width), length_cm(height), random.between(2.5, 5)};
  if (block >= 3) {
    Container present = straight_pot(length, width, height, block == 3 ? Shape::oval : Shape::rectangular);
    present.base = section(length * taper, width * taper);
    one.plan.block = AsPresentPot{present};
  }
  one.plan.trunk_base = TreePoint{length_cm(random.between(-3, 3)), length_cm(random.between(-2, 2)), length_cm(height * random.between(0.8, 1))};
  one.plan.pose.turn = angle_deg(random.between(-180, 180));
  one.plan.pose.tip = angle_deg(random.between(0, 25));
  one.plan.pose.tip_toward = angle_deg(random.between(0, 360));
  // The pose stays as it was given, so that any pose is met.
  one.plan.tip_least = one.plan.pose.tip;
  if (random.chance(0.5)) one.plan.combed = {{Face::left, length_cm(random.between(0, length / 3))}};
  return one;
}

std::vector<double> row_of(const CountedCase& one, const WorkedPlan& worked) {
  const RootMassPlan& plan = one.plan;
  std::vector<double> row{static_cast<double>(one.block)};
  if (const auto* box = std::get_if<BlockBox>(&plan.block)) {
    row.insert(row.end(), {in_cm(box->length), in_cm(box->width), in_cm(box->height), box->exponent.value_or(2), 0, 0});
  } else {
    const Container& pot = std::get<AsPresentPot>(plan.block).pot;
    row.insert(row.end(), {in_cm(pot.rim.length), in_cm(pot.rim.width), in_cm(pot.depth), 2, in_cm(pot.base->length), in_cm(pot.base->width)});
  }
  const Container& pot = plan.pot;
  row.insert(row.end(), {static_cast<double>(one.pot), in_cm(pot.rim.length), in_cm(pot.rim.width), in_cm(pot.base->length),
                         in_cm(pot.base->width), pot.middle ? in_cm(pot.middle->length) : 0, pot.exponent.value_or(2), in_cm(pot.depth),
                         in_cm(*plan.below_clearance), in_cm(pot.depth - pot.freeboard), in_cm(*plan.side_clearance)});
  row.insert(row.end(), {in_cm(plan.trunk_base->right), in_cm(plan.trunk_base->back), in_cm(plan.trunk_base->up)});
  row.insert(row.end(), {in_deg(worked.turn), in_deg(worked.tip), in_deg(worked.tip_toward)});
  row.insert(row.end(), {in_cm(worked.right), in_cm(worked.back), in_cm(worked.trunk_base)});
  row.push_back(in_cm(*plan.working_depth));
  for (const Face face : faces) {
    double combed = 0;
    for (const CombedFace& each : plan.combed)
      if (each.face == face) combed = in_cm(each.depth);
    row.push_back(combed);
  }
  return row;
}

void check_against_count(std::vector<CountedCase> cases) {
  std::vector<WorkedPlan> plans;
  reference::Rows rows;
  for (const CountedCase& one : cases) {
    const RootPlanAnswer answer = answer_of(one.plan);
    const WorkedPlan& worked = answer.plans.front();
    // With every face reducible nothing but the allowed space bounds what is kept.
    REQUIRE(worked.fits);
    REQUIRE(in_cm(worked.shoulder) == 0);
    rows.push_back(row_of(one, worked));
    plans.push_back(worked);
  }
  const reference::Rows counted = reference::answers("root_plan.py", rows);
  double largest = 0;
  for (std::size_t i = 0; i < plans.size(); ++i) {
    INFO("seed " << Catch::rngSeed() << ", block " << rows[i][0] << ", pot " << rows[i][7]);
    REQUIRE(counted[i].size() == 3);
    CHECK(std::abs(1 - plans[i].removed_share - counted[i][0]) < tolerance);
    CHECK(std::abs(plans[i].removed_share - counted[i][1]) < tolerance);
    CHECK(std::abs(plans[i].untouched_share - counted[i][2]) < tolerance);
    largest = std::max({largest, std::abs(plans[i].removed_share - counted[i][1]), std::abs(plans[i].untouched_share - counted[i][2])});
  }
  std::cout << plans.size() << " root masses, largest difference of a share " << largest << '\n';
}

}  // namespace

TEST_CASE("Kept, removed and untouched shares agree with a point count in NumPy at any pose", "[root_plan][law][peer]") {
  test::RandomPots random(Catch::rngSeed());
  std::vector<CountedCase> cases;
  const int first_pot = static_cast<int>(random.between(0, 3.99));
  for (int block = 0; block < 5; ++block) {
    // Each block meets two kinds of pot, others in another run.
    for (int turn = 0; turn < 2; ++turn) {
      cases.push_back(random_case(random, block, (first_pot + block + 2 * turn) % 4));
      cases.back().plan.working_depth = length_cm(random.between(0.6, 1.5));
    }
  }
  check_against_count(std::move(cases));
}

TEST_CASE("A wall that cuts a tipped root mass touches it though its corners stand under the floor", "[root_plan][regression]") {
  Container present = straight_pot(26.8, 26.8, 6.064, Shape::oval);
  present.base = section(26.6, 26.6);
  CountedCase one;
  one.block = 3;
  Container into = straight_pot(32.04, 29.62, 7.333);
  into.base = section(25.82, 23.88);
  into.freeboard = depth_cm(0.5);
  one.plan = box_in(26.8, 26.8, 6.064, into);
  one.plan.block = AsPresentPot{present};
  one.plan.trunk_base = TreePoint{length_cm(0.51), length_cm(1.39), length_cm(5.885)};
  one.plan.pose = {};
  one.plan.pose.turn = angle_deg(160.2);
  one.plan.pose.tip = angle_deg(22.74);
  one.plan.pose.tip_toward = angle_deg(126.3);
  one.plan.tip_least = one.plan.pose.tip;
  one.plan.working_depth = length_cm(1.311);
  check_against_count({one});
}
