#include "gritwright/report/root_plan_sheet.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <string>

#include "gritwright/report/root_plan_report.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

/// An invented box of 26 x 18 x 10 cm into a shallow tray.
RootMassPlan invented_plan() {
  RootMassPlan plan;
  plan.name = "T-01";
  plan.group = SpeciesGroup::deciduous_developing;
  plan.block = BlockBox{BlockForm::box, length_cm(26), length_cm(18), length_cm(10), {}};
  plan.pot.name = "tray";
  plan.pot.rim = {length_cm(36), length_cm(26)};
  plan.pot.base = Section{length_cm(34), length_cm(24)};
  plan.pot.depth = depth_cm(8);
  plan.pot.freeboard = depth_cm(0.5);
  return plan;
}

RootPlanAnswer answered(const RootMassPlan& plan) {
  auto answer = work_out(plan);
  REQUIRE(answer);
  return *answer;
}

double least_x(const DrawnLine& line) {
  double least = 1e9;
  for (const DrawnPoint& point : line.points) least = std::min(least, point.x_mm);
  return least;
}
double most_x(const DrawnLine& line) {
  double most = -1e9;
  for (const DrawnPoint& point : line.points) most = std::max(most, point.x_mm);
  return most;
}
double least_y(const DrawnLine& line) {
  double least = 1e9;
  for (const DrawnPoint& point : line.points) least = std::min(least, point.y_mm);
  return least;
}
double most_y(const DrawnLine& line) {
  double most = -1e9;
  for (const DrawnPoint& point : line.points) most = std::max(most, point.y_mm);
  return most;
}
const DrawnLine& first_of(const PrintDrawing& drawing, Ink ink) {
  const auto found = std::ranges::find(drawing.lines, ink, &DrawnLine::ink);
  REQUIRE(found != drawing.lines.end());
  return *found;
}

}  // namespace

TEST_CASE("The root-plan sheet has every plan with its cuts by both names, the stop table and cautions", "[root_plan_sheet]") {
  RootMassPlan plan = invented_plan();
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};  // old ground is heaped over the trunk base
  const RootPlanAnswer answer = answered(plan);
  REQUIRE_FALSE(answer.stop_table.empty());
  const PrintDocument sheet = root_plan_sheet(plan, answer, UnitSystem::metric);
  CHECK(sheet.title == "T-01");
  std::size_t plans = 0, stops = 0;
  for (const PrintSection& section : sheet.sections) {
    if (section.title.starts_with("Plan ")) {
      const WorkedPlan& worked = answer.plans[plans++];
      const auto& ticks = std::get<PrintTicks>(section.blocks.front());
      CHECK(ticks.lines.size() >= worked.cuts.size() + 1);
      for (std::size_t i = 0; i < worked.cuts.size(); ++i) {
        CHECK(ticks.lines[i].find("old " + face_name(worked.cuts[i].face)) != std::string::npos);
        CHECK(ticks.lines[i].find(direction_name(worked.cuts[i].direction)) != std::string::npos);
      }
    }
    if (section.title.starts_with("If the cut")) stops = std::get<PrintTable>(section.blocks.front()).rows.size();
  }
  CHECK(plans == answer.plans.size());
  CHECK(stops == told_stops(answer).size());
}

TEST_CASE("Pictures of a root-mass plan are to scale", "[root_plan_sheet]") {
  const RootMassPlan plan = invented_plan();
  const WorkedPlan worked = answered(plan).plans.front();
  const PrintDrawing front = root_drawing(plan, worked, RootSide::front);
  const DrawnLine& block = first_of(front, Ink::hatched);
  const DrawnLine& wall = first_of(front, Ink::outline);
  // 26 cm of root mass beside 36 cm of rim, and 10 cm of height beside 8 cm of depth.
  CHECK_THAT((most_x(block) - least_x(block)) / (most_x(wall) - least_x(wall)), WithinAbs(26.0 / 36, 1e-6));
  CHECK_THAT((most_y(block) - least_y(block)) / (most_y(wall) - least_y(wall)), WithinAbs(10.0 / 8, 1e-6));
  const PrintDrawing top = root_drawing(plan, worked, RootSide::top);
  const DrawnLine& above = first_of(top, Ink::hatched);
  CHECK_THAT((most_y(above) - least_y(above)) / (most_x(above) - least_x(above)), WithinAbs(18.0 / 26, 1e-6));
  for (const PrintDrawing& each : {front, top})
    for (const DrawnLine& line : each.lines)
      for (const DrawnPoint& point : line.points) {
        CHECK(point.x_mm >= 0);
        CHECK(point.x_mm <= each.width_mm);
        CHECK(point.y_mm >= 0);
        CHECK(point.y_mm <= each.height_mm);
      }
}

TEST_CASE("What a picture keeps ends where the cuts do", "[root_plan_sheet]") {
  const RootMassPlan plan = invented_plan();
  const WorkedPlan worked = answered(plan).plans.front();
  double taken_cm = 0;
  for (const PlannedCut& cut : worked.cuts)
    if (cut.direction == Direction::up || cut.direction == Direction::down) taken_cm += in_cm(cut.depth);
  REQUIRE(taken_cm > 0);
  const PrintDrawing front = root_drawing(plan, worked, RootSide::front);
  const DrawnLine& before = first_of(front, Ink::hatched);
  const DrawnLine& after = first_of(front, Ink::grey);
  const double kept_share = (most_y(after) - least_y(after)) / (most_y(before) - least_y(before));
  CHECK_THAT(kept_share, WithinAbs((10 - taken_cm) / 10, 1e-6));
}

TEST_CASE("A tipped root mass is drawn tipped", "[root_plan_sheet]") {
  RootMassPlan plan = invented_plan();
  WorkedPlan worked = answered(plan).plans.front();
  worked.tip = angle_deg(90);
  worked.tip_toward = Angle{};
  const PrintDrawing front = root_drawing(plan, worked, RootSide::front);
  const DrawnLine& block = first_of(front, Ink::hatched);
  // On its side 26 cm stand upright and 10 cm lie along.
  CHECK_THAT((most_x(block) - least_x(block)) / (most_y(block) - least_y(block)), WithinAbs(10.0 / 26, 1e-6));
}

TEST_CASE("The sheet tells the corners to round off, each by both names, and never that such a root mass fits as it is", "[root_plan_sheet]") {
  RootMassPlan plan = invented_plan();
  plan.block = BlockBox{BlockForm::box, length_cm(24), length_cm(18), length_cm(5), {}};
  plan.pot = {};
  plan.pot.shape = Shape::oval;
  plan.pot.rim = {length_cm(24), length_cm(18)};
  plan.pot.depth = depth_cm(7);
  plan.side_clearance = Length{};
  plan.below_clearance = length_cm(1);
  const RootPlanAnswer answer = answered(plan);
  REQUIRE(answer.plans.front().cuts.empty());
  const PrintDocument sheet = root_plan_sheet(plan, answer, UnitSystem::metric);
  const std::string limits = std::get<PrintText>(sheet.sections.front().blocks.front()).text;
  CHECK(limits.starts_with("After straight cuts 21."));
  const auto& ticks = std::get<PrintTicks>(sheet.sections[1].blocks.front());
  REQUIRE(ticks.lines.size() == 2);
  CHECK(ticks.lines.front().starts_with("Round off the corners along the wall, 21."));
  CHECK(ticks.lines.front().find("old front (now front) up to 3.0 cm deep") != std::string::npos);
}

TEST_CASE("The sheet of a tree that goes back into its old pot tells no soil line of the new one and no cuts to its height", "[root_plan_sheet]") {
  RootMassPlan plan = invented_plan();
  plan.group = SpeciesGroup::conifer;
  plan.block = BlockBox{BlockForm::box, length_cm(20), length_cm(14), length_cm(9), {}};
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
  plan.pot.depth = depth_cm(5);
  const RootPlanAnswer answer = answered(plan);
  REQUIRE(std::ranges::none_of(answer.plans, &WorkedPlan::fits));
  REQUIRE_FALSE(answer.stop_table.empty());
  const PrintDocument sheet = root_plan_sheet(plan, answer, UnitSystem::metric);
  bool told = false;
  for (const PrintSection& section : sheet.sections) {
    CHECK_FALSE(section.title.starts_with("If the cut"));
    if (!section.title.starts_with("Plan ")) continue;
    for (const PrintBlock& block : section.blocks) {
      if (const auto* table = std::get_if<PrintTable>(&block)) {
        told = true;
        CHECK(table->heading == std::vector<std::string>{"untouched", "taken off", "new mix for what comes off"});
        REQUIRE(table->rows.size() == 1);
        CHECK(table->rows.front().size() == table->heading.size());
      }
    }
  }
  CHECK(told);
}

TEST_CASE("Each of the plans is explained by what itself keeps, not by what plan A keeps", "[root_plan_sheet][regression]") {
  RootMassPlan plan = invented_plan();
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
  const RootPlanAnswer answer = answered(plan);
  REQUIRE(answer.plans.size() >= 2);
  for (std::size_t which = 0; which < answer.plans.size(); ++which) {
    const auto list = explain(plan, answer, which);
    const auto removed = std::ranges::find(list, std::string("removed"), &Explanation::figure);
    REQUIRE(removed != list.end());
    double kept_ml = 0;
    const std::string& kept = removed->inputs.front().second;
    std::from_chars(kept.data(), kept.data() + kept.size(), kept_ml);
    INFO(kept);
    CHECK_THAT(kept_ml, WithinAbs(in_ml(answer.plans[which].kept), 0.5));
  }
  CHECK(std::abs(in_ml(answer.plans[0].kept) - in_ml(answer.plans[1].kept)) > 1);
}
