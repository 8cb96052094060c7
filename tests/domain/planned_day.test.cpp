#include "gritwright/domain/planned_day.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>

using namespace gritwright;

namespace {

PlannedDay sound_day() {
  PlannedDay day;
  DayMix mix;
  mix.name = "m";
  Component grain;
  grain.name = "g";
  grain.parts = Parts(1);
  grain.grain.bulk_density = bulk_g_l(700);
  grain.sizes = SingleSize{aperture_mm(4)};
  mix.mix.components = {grain};
  day.mixes = {mix};
  PlannedTree tree;
  tree.name = "T-01";
  tree.mix = "m";
  tree.fill = pot_ml(1000);
  day.trees = {tree};
  GrainSupply bag;
  bag.bag = "K-07";
  day.shelf = {bag};
  day.tub = loose_l(20);
  day.scoop = loose_l(0.5);
  return day;
}

}  // namespace

TEST_CASE("A sound day has no problems", "[planned_day]") { CHECK(check(sound_day()).empty()); }

TEST_CASE("Each fault of a day is refused at its place", "[planned_day][refuses]") {
  struct Fault {
    const char* code;
    const char* pointer;
    std::function<void(PlannedDay&)> spoil;
  };
  const std::vector<Fault> faults{
      {"day.no-trees", "/trees", [](PlannedDay& day) { day.trees.clear(); }},
      {"day.tree-twice", "/trees/1/name", [](PlannedDay& day) { day.trees.push_back(day.trees[0]); }},
      {"record.no-name", "/trees/0/name", [](PlannedDay& day) { day.trees[0].name = " "; }},
      {"day.unknown-mix", "/trees/0/mix", [](PlannedDay& day) { day.trees[0].mix = "n"; }},
      {"day.unknown-pot", "/trees/0/pot", [](PlannedDay& day) { day.trees[0].pot = "tray"; }},
      {"day.no-fill", "/trees/0", [](PlannedDay& day) { day.trees[0].fill.reset(); }},
      {"day.fill-below-zero", "/trees/0/fill_ml", [](PlannedDay& day) { day.trees[0].fill = pot_ml(-1); }},
      {"day.fill-below-zero", "/trees/0/worse_fill_ml/0", [](PlannedDay& day) { day.trees[0].worse_fills = {pot_ml(-1)}; }},
      {"day.fill-below-zero", "/trees/0/layers/0/volume_ml", [](PlannedDay& day) { day.trees[0].layers = {{"moss", pot_ml(-1), {}}}; }},
      {"day.mass-below-zero", "/trees/0/kept_root_mass_kg", [](PlannedDay& day) { day.trees[0].kept_root_mass = mass_kg(-1); }},
      {"day.interval-range", "/trees/0/interval_years", [](PlannedDay& day) { day.trees[0].interval_years = 0; }},
      {"date.not-a-day", "/trees/0/last_repotted", [](PlannedDay& day) { day.trees[0].last_repotted = "2026-02-30"; }},
      {"day.not-a-month-and-day", "/trees/0/window_opens", [](PlannedDay& day) { day.trees[0].window_opens = "02-30"; }},
      {"date.not-a-day", "/date", [](PlannedDay& day) { day.day = "spring"; }},
      {"day.mix-twice", "/mixes/m", [](PlannedDay& day) { day.mixes.push_back(day.mixes[0]); }},
      {"day.version-below-one", "/mixes/m/version", [](PlannedDay& day) { day.mixes[0].version = 0; }},
      {"mix.settling-range", "/mixes/m/settling", [](PlannedDay& day) { day.mixes[0].mix.settling = Settling(1); }},
      {"day.stock-below-zero", "/stock/0/stock_l", [](PlannedDay& day) { day.shelf[0].stock = loose_l(-0.1); }},
      {"day.stock-below-zero", "/stock/0/reserved_l", [](PlannedDay& day) { day.shelf[0].reserved = loose_l(-0.1); }},
      {"day.yield-range", "/stock/0/yield", [](PlannedDay& day) { day.shelf[0].yield = ScreenYield(0); }},
      {"day.yield-range", "/stock/0/yield", [](PlannedDay& day) { day.shelf[0].yield = ScreenYield(1.3); }},
      {"day.yield-of-screened", "/stock/0/yield",
       [](PlannedDay& day) {
         day.shelf[0].screened = true;
         day.shelf[0].yield = ScreenYield(0.8);
       }},
      {"band.upside-down", "/stock/0/to_mm", [](PlannedDay& day) { day.shelf[0].keeps = SizeBand{aperture_mm(6), aperture_mm(2)}; }},
      {"bag.price-negative", "/stock/0/price", [](PlannedDay& day) { day.shelf[0].price = Price{-1, ""}; }},
      {"record.amount-not-positive", "/stock/0/bag_l", [](PlannedDay& day) { day.shelf[0].bag_volume = loose_l(0); }},
      {"record.amount-not-positive", "/tub_l", [](PlannedDay& day) { day.tub = loose_l(0); }},
      {"day.scoop-above-tub", "/scoop_l", [](PlannedDay& day) { day.scoop = loose_l(30); }},
      {"day.vessel-too-small", "/scoop_l", [](PlannedDay& day) { day.scoop = loose_l(1e-9); }},
      {"day.vessel-too-small", "/tub_l", [](PlannedDay& day) { day.tub = loose_l(0.001); }},
      {"day.version-below-one", "/sheet_revision", [](PlannedDay& day) { day.sheet_revision = 0; }},
      {"record.amount-not-positive", "/filled_before/0", [](PlannedDay& day) { day.filled_before = {{pot_ml(0), mixed_l(1)}}; }},
      {"day.more-left-than-made", "/emptied_before/0/left_l", [](PlannedDay& day) { day.emptied_before = {{mixed_l(5), mixed_l(1), mixed_l(5)}}; }},
  };
  for (const Fault& fault : faults) {
    PlannedDay day = sound_day();
    fault.spoil(day);
    const Problems problems = check(day);
    INFO(fault.code << " " << fault.pointer);
    CHECK(std::ranges::any_of(problems, [&](const Problem& problem) { return problem.code == fault.code && problem.where.pointer == fault.pointer; }));
  }
}

TEST_CASE("Several faults of a day are told in one go", "[planned_day][refuses]") {
  PlannedDay day = sound_day();
  day.shelf[0].stock = loose_l(-1);
  day.trees[0].mix = "n";
  day.tub = loose_l(-3);
  CHECK(check(day).size() >= 3);
}

TEST_CASE("A season ends on a day of the calendar", "[planned_day][refuses]") {
  CHECK(check(PlannedSeason{sound_day(), "2026-06-30"}).empty());
  CHECK(check(PlannedSeason{sound_day(), ""}).size() == 1);
}

TEST_CASE("Buds are ranked by the words growers use, whatever their case", "[planned_day]") {
  CHECK(bud_rank("Swelling").value() < bud_rank("green tips").value());
  CHECK(bud_rank("opening").value() < bud_rank("in leaf").value());
  CHECK_FALSE(bud_rank("fat"));
}
