#include "gritwright/models/season.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

#include "gritwright/models/placing_experience.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

PlannedTree tree(const std::string& name, double fill_ml, std::optional<std::string> day = {}) {
  PlannedTree made;
  made.name = name;
  made.mix = "m";
  made.fill = pot_ml(fill_ml);
  made.day = std::move(day);
  return made;
}

PlannedSeason season() {
  PlannedSeason made;
  made.until = "2026-06-30";
  DayMix mix;
  mix.name = "m";
  Component grain;
  grain.name = "g";
  grain.parts = Parts(1);
  grain.grain.bulk_density = bulk_g_l(700);
  grain.grain.particle_density = particle_g_l(1300);
  grain.sizes = SingleSize{aperture_mm(4)};
  mix.mix.components = {grain};
  made.ground.mixes = {mix};
  GrainSupply bag;
  bag.bag = "K-07";
  bag.component = "g";
  bag.material = "stone";
  bag.stock = loose_l(10);
  bag.yield = ScreenYield(1);
  bag.bag_volume = loose_l(4);
  made.ground.shelf = {bag};
  return made;
}

}  // namespace

TEST_CASE("Two days that want the same grain are served by date, and the reservation shows it", "[season]") {
  PlannedSeason plan = season();
  plan.ground.trees = {tree("late", 7000, "2026-03-21"), tree("early", 6000, "2026-03-14")};
  const auto answer = work_out(plan);
  REQUIRE(answer);
  REQUIRE(answer->days.size() == 2);
  CHECK(answer->days[0].day == "2026-03-14");
  REQUIRE(answer->reservations.size() == 1);
  const Reservation& reservation = answer->reservations[0];
  CHECK(reservation.runs_out);
  REQUIRE(reservation.claims.size() == 2);
  CHECK_THAT(in_l(reservation.claims[0].gets), WithinAbs(6, 1e-9));
  CHECK_THAT(in_l(reservation.claims[1].wanted), WithinAbs(7, 1e-9));
  CHECK_THAT(in_l(reservation.claims[1].gets), WithinAbs(4, 1e-9));
  REQUIRE(answer->buy.size() == 1);
  CHECK_THAT(in_l(answer->buy[0].short_of), WithinAbs(3, 1e-9));
  CHECK(answer->buy[0].bags == 1);
}

TEST_CASE("What days are short of is bought together", "[season]") {
  PlannedSeason plan = season();
  plan.ground.shelf[0].stock = loose_l(0);
  plan.ground.trees = {tree("a", 1000, "2026-03-14"), tree("b", 1500, "2026-03-21"), tree("c", 1400, "2026-03-28")};
  const auto answer = work_out(plan);
  REQUIRE(answer);
  // Three days of less than a bag each: one bag of 4 L, not three.
  REQUIRE(answer->buy.size() == 1);
  CHECK(answer->buy[0].bags == 1);
  REQUIRE(answer->mixes.size() == 1);
  CHECK_THAT(in_l(answer->mixes[0].needed), WithinAbs(3.9, 1e-9));
}

TEST_CASE("A tree is due by the grower's day, by an interval of its own, or by its group's", "[season]") {
  PlannedTree each = tree("a", 1000);
  const auto due = [&] { return due_by(each, "2026-06-30").due; };
  CHECK(due() == Due::unknown);
  each.last_repotted = "2023-03-10";
  CHECK(due() == Due::unknown);
  each.group = SpeciesGroup::conifer;  // 3 to 5 years
  CHECK(due() == Due::may_be);
  each.last_repotted = "2021-03-10";
  CHECK(due() == Due::due);
  each.last_repotted = "2024-03-10";
  CHECK(due() == Due::not_yet);
  each.interval_years = 2;
  CHECK(due() == Due::due);
  each.due = "2027-03-01";
  CHECK(due() == Due::not_yet);
  each.due = "2026-06-30";
  CHECK(due() == Due::due);
  each.due = "2027-03-01";
  each.day = "2026-03-14";
  CHECK(due() == Due::due);
  each = tree("leap", 1000);
  each.last_repotted = "2024-02-29";
  each.interval_years = 1;
  CHECK(due_by(each, "2026-06-30").from == "2025-02-28");
}

TEST_CASE("Trees that are not due or of unknown age are not counted, and the latter are named", "[season]") {
  PlannedSeason plan = season();
  plan.ground.trees = {tree("a", 1000), tree("b", 2000)};
  plan.ground.trees[1].due = "2028-03-01";
  const auto answer = work_out(plan);
  REQUIRE(answer);
  CHECK(answer->days.empty());
  CHECK(std::ranges::count(answer->notes, "season.due-unknown", &Note::code) == 1);
  CHECK(std::ranges::count(answer->notes, "season.none-due", &Note::code) == 1);
}

TEST_CASE("Litres used teach settling and spill, the median of the last ten", "[placing_experience]") {
  std::vector<FilledTree> trees(3, {pot_ml(500), mixed_l(1)});  // long ago, forgotten
  for (int percent = 1; percent <= 10; ++percent) trees.push_back({pot_ml(1000 - 10 * percent), mixed_l(1)});
  const std::vector<EmptiedBatch> batches{{mixed_l(20), mixed_l(18), mixed_l(0)}, {mixed_l(20), mixed_l(9.5), mixed_l(10)}, {mixed_l(10), mixed_l(9.3), mixed_l(0)}};
  const PlacingExperience learnt = placing_experience(trees, batches);
  REQUIRE(learnt.settlings.size() == 10);
  CHECK_THAT(learnt.settling->value(), WithinAbs(0.055, 1e-12));
  CHECK_THAT(learnt.spill->value(), WithinAbs(0.07, 1e-12));
}

TEST_CASE("Nothing is learnt from nothing, nor from litres that grew on the way", "[placing_experience]") {
  CHECK_FALSE(placing_experience({}, {}).settling);
  const PlacingExperience grown = placing_experience({{pot_ml(1100), mixed_l(1)}}, {});
  CHECK_FALSE(grown.settling);
  CHECK(grown.settlings.size() == 1);
}
