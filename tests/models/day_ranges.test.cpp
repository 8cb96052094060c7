#include "gritwright/models/day_ranges.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "gritwright/models/packing.hpp"
#include "gritwright/models/slice_threads.hpp"

using namespace gritwright;
using Catch::Matchers::WithinRel;

namespace {

Component grain(const std::string& name, double parts, double size_mm) {
  Component made;
  made.name = name;
  made.parts = Parts(parts);
  made.grain.bulk_density = bulk_g_l(700);
  made.grain.particle_density = particle_g_l(1300);
  made.grain.skeletal_density = skeletal_g_l(2600);
  made.sizes = SingleSize{aperture_mm(size_mm)};
  return made;
}

PlannedTree tree_of(const std::string& name, double fill_ml) {
  PlannedTree made;
  made.name = name;
  made.mix = "m";
  made.fill = pot_ml(fill_ml);
  return made;
}

/// Invented: two grains, three trees without pots, one bag to screen.
PlannedDay uncertain_day() {
  PlannedDay day;
  DayMix mix;
  mix.name = mix.mix.name = "m";
  mix.mix.components = {grain("coarse", 1, 6), grain("fine", 1, 2)};
  mix.mix.settling = Settling(0.08);
  mix.mix.spill = Spill(0.05);
  day.mixes = {mix};
  day.trees = {tree_of("T-01", 3000), tree_of("T-02", 1000), tree_of("T-03", 600)};
  GrainSupply bag;
  bag.bag = "B-01";
  bag.component = "coarse";
  bag.material = "stone";
  bag.stock = loose_l(2);
  bag.bag_volume = loose_l(1);
  day.shelf = {bag};
  return day;
}

std::vector<MixSpread> certain(const PlannedDay& day) {
  std::vector<MixSpread> spreads;
  for (const DayMix& mix : day.mixes) {
    MixSpread spread;
    for (const Component& component : mix.mix.components) {
      ComponentSpread one;
      one.grading.class_masses.assign(size_classes(component.sizes).size(), 0);
      spread.components.push_back(one);
    }
    spread.retention = {0, 0, 0, false};
    spreads.push_back(spread);
  }
  return spreads;
}

std::vector<MixSpread> usual(const PlannedDay& day) {
  std::vector<MixSpread> spreads;
  for (const DayMix& mix : day.mixes) spreads.push_back(usual_spread(mix.mix));
  return spreads;
}

double half(const Range& range) { return (range.high - range.low) / 2; }

}  // namespace

TEST_CASE("Litres of a day spread by its fills, each tree by itself", "[day_ranges][law]") {
  const PlannedDay day = uncertain_day();
  const DayRanges ranges = day_ranges(day, certain(day), {4096, 1});
  const double needed_l = in_l(work_out(day)->mixes[0].needed);
  // Three per cent of each fill, added up by squares.
  const double relative = 0.03 * std::sqrt(3.0 * 3 + 1 * 1 + 0.6 * 0.6) / 4.6;
  CHECK_THAT(ranges.mixes[0].needed_l.median, WithinRel(needed_l, 0.002));
  CHECK_THAT(half(ranges.mixes[0].needed_l), WithinRel(score_of_95_percent * relative * needed_l, 0.02));
}

TEST_CASE("The packing model's error moves the grain and not the mixed litres", "[day_ranges][law][rounds]") {
  const PlannedDay day = uncertain_day();
  std::vector<MixSpread> spreads = certain(day);
  spreads[0].packing_voids = 0.02;
  const DayRanges without = day_ranges(day, certain(day), {4096, 1}), with = day_ranges(day, spreads, {4096, 1});
  CHECK_THAT(half(with.mixes[0].needed_l), WithinRel(half(without.mixes[0].needed_l), 0.01));
  CHECK(half(with.mixes[0].components[0].loose_l) > 1.3 * half(without.mixes[0].components[0].loose_l));
}

TEST_CASE("What a screening yields is typical until it is measured, and then known", "[day_ranges][law]") {
  PlannedDay day = uncertain_day();
  day.shelf[0].stock = loose_l(50);
  const double ready_l = in_l(work_out(day)->taken[0].ready);
  const Range typical = day_ranges(day, certain(day), {4096, 1}).taken[0].raw_l;
  CHECK_THAT(typical.low, WithinRel(ready_l / 0.9, 0.02));
  CHECK_THAT(typical.high, WithinRel(ready_l / 0.67, 0.02));
  day.shelf[0].yield = ScreenYield(0.75);
  CHECK(half(day_ranges(day, certain(day), {4096, 1}).taken[0].raw_l) < 0.5 * half(typical));
}

TEST_CASE("The range of moss is its litres, for it is lost to no screen, unless a yield was typed for it", "[day_ranges][regression]") {
  PlannedDay day = uncertain_day();
  for (PlannedTree& tree : day.trees) tree.fill = pot_ml(500);
  GrainSupply moss;
  moss.bag = moss.component = moss.material = "sphagnum";
  moss.stock = loose_l(50);
  day.shelf = {moss};
  day.trees.front().layers = {{"sphagnum", pot_ml(4000), {}}};
  const auto raw_l = [&] { return day_ranges(day, certain(day), {1024, 1}).taken[0].raw_l; };
  const double litres = in_l(work_out(day)->taken[0].raw);
  CHECK_THAT(raw_l().low, WithinRel(litres, 1e-9));
  CHECK_THAT(raw_l().high, WithinRel(litres, 1e-9));
  day.shelf[0].yield = ScreenYield(0.8);
  CHECK(raw_l().high > 1.02 * litres / 0.8);
}

TEST_CASE("Every figure of a day lies in its range, bags are whole and a chance is told", "[day_ranges][law]") {
  const PlannedDay day = uncertain_day();
  const DayAnswer answer = work_out(day).value();
  const DayRanges ranges = day_ranges(day, usual(day), {1024, 1});
  REQUIRE(ranges.mixes.size() == answer.mixes.size());
  REQUIRE(ranges.components.size() == answer.components.size());
  REQUIRE(ranges.taken.size() == answer.taken.size());
  REQUIRE(ranges.buy.size() == answer.buy.size());
  REQUIRE(ranges.lifts_kg.size() == answer.lifts.size());
  const auto holds = [](const Range& range, double value) {
    CHECK(range.low <= value);
    CHECK(range.high >= value);
  };
  holds(ranges.mixes[0].needed_l, in_l(answer.mixes[0].needed));
  for (std::size_t i = 0; i < answer.components.size(); ++i) {
    holds(ranges.components[i].loose_l, in_l(answer.components[i].loose));
    holds(*ranges.components[i].mass_kg, in_kg(*answer.components[i].dry_mass));
  }
  for (std::size_t i = 0; i < answer.buy.size(); ++i) {
    holds(ranges.buy[i].raw_l, in_l(answer.buy[i].raw));
    CHECK(ranges.buy[i].chance > 0.5);
    if (!answer.buy[i].bags) continue;
    holds(*ranges.buy[i].bags, *answer.buy[i].bags);
    CHECK(ranges.buy[i].bags->median == std::round(ranges.buy[i].bags->median));
  }
  for (std::size_t i = 0; i < answer.lifts.size(); ++i) holds(ranges.lifts_kg[i], in_kg(answer.lifts[i].mass));
}

TEST_CASE("What may run short is told with its chance", "[day_ranges]") {
  PlannedDay day = uncertain_day();
  for (const char* name : {"coarse", "fine"}) {
    day.shelf.push_back(day.shelf[0]);
    day.shelf.back().bag = name;
    day.shelf.back().material = name;
    day.shelf.back().component = name;
    day.shelf.back().screened = true;
  }
  day.shelf.erase(day.shelf.begin());
  const double coarse_l = in_l(work_out(uncertain_day())->components[0].loose);
  day.shelf[0].stock = loose_l(1.02 * coarse_l);
  day.shelf[1].stock = loose_l(50);
  const DayAnswer answer = work_out(day).value();
  REQUIRE(answer.buy.empty());
  const DayRanges ranges = day_ranges(day, usual(day), {1024, 1});
  REQUIRE(ranges.may_buy.size() == 1);
  CHECK(ranges.may_buy[0].material == "coarse");
  CHECK(ranges.may_buy[0].chance > 0.05);
  CHECK(ranges.may_buy[0].chance < 0.6);
}

TEST_CASE("A season of one day has that day's litres, in any order of slices and on any threads", "[day_ranges][law]") {
  PlannedSeason season{uncertain_day(), "2026-12-31"};
  for (PlannedTree& tree : season.ground.trees) tree.day = "2026-03-14";
  PlannedDay day = season.ground;
  const SliceRunner backward = [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    for (std::size_t i = count; i-- > 0;) slice(i);
  };
  const auto spreads = usual(day);
  const DayRanges of_season = season_ranges(season, spreads, {600, 4}), of_day = day_ranges(day, spreads, {600, 4}),
                  other = day_ranges(day, spreads, {600, 4}, backward), threads = season_ranges(season, spreads, {600, 4}, slice_threads(3));
  CHECK(of_season.mixes[0].needed_l == of_day.mixes[0].needed_l);
  CHECK(threads.mixes[0].needed_l == of_season.mixes[0].needed_l);
  CHECK(other.mixes[0].needed_l == of_day.mixes[0].needed_l);
  CHECK(other.components[1].loose_l == of_day.components[1].loose_l);
  CHECK(of_season.components[1].loose_l == of_day.components[1].loose_l);
}
