#include "gritwright/models/day_litres.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <numeric>
#include <string>

#include "support/random_day.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Component grain(const std::string& name, double parts, double bulk_g_per_l, double particle_g_per_l, double skeletal_g_per_l, double size_mm) {
  Component made;
  made.name = name;
  made.parts = Parts(parts);
  made.grain.bulk_density = bulk_g_l(bulk_g_per_l);
  made.grain.particle_density = particle_g_l(particle_g_per_l);
  made.grain.skeletal_density = skeletal_g_l(skeletal_g_per_l);
  made.sizes = SingleSize{aperture_mm(size_mm)};
  return made;
}

DayMix mix_of(const std::string& name, std::vector<Component> components, double settling = 0, double spill = 0) {
  DayMix made;
  made.name = made.mix.name = name;
  made.mix.components = std::move(components);
  made.mix.settling = Settling(settling);
  made.mix.spill = Spill(spill);
  return made;
}

PlannedTree tree_of(const std::string& name, const std::string& mix, double fill_ml, std::vector<double> worse_ml = {}) {
  PlannedTree made;
  made.name = name;
  made.mix = mix;
  made.fill = pot_ml(fill_ml);
  for (const double worse : worse_ml) made.worse_fills.push_back(pot_ml(worse));
  return made;
}

GrainSupply bag_of(const std::string& bag, const std::string& component, double stock_l) {
  GrainSupply made;
  made.bag = bag;
  made.component = component;
  made.material = "stone";
  made.stock = loose_l(stock_l);
  made.yield = ScreenYield(0.8);
  return made;
}

/// One grain alone, so that litres in are litres out.
PlannedDay plain_day() {
  PlannedDay day;
  day.mixes.push_back(mix_of("m", {grain("g", 1, 700, 1300, 2600, 4)}, 0.08, 0.05));
  day.trees = {tree_of("T-01", "m", 3000, {3400, 3300}), tree_of("T-02", "m", 1000, {1600}), tree_of("T-03", "m", 600, {500, 700})};
  return day;
}

const Note* note_of(const Notes& notes, const std::string& code) {
  const auto found = std::ranges::find(notes, code, &Note::code);
  return found == notes.end() ? nullptr : &*found;
}

double sum_l(const std::vector<LooseVolume>& volumes) {
  return std::accumulate(volumes.begin(), volumes.end(), 0.0, [](double sum, const LooseVolume& volume) { return sum + in_l(volume); });
}

}  // namespace

TEST_CASE("A day covers every plan and the two largest differences to a worse plan", "[day_litres]") {
  const auto answer = work_out(plain_day());
  REQUIRE(answer);
  const MixOfDay& mix = answer->mixes.front();
  // By hand: 3.0 + 1.0 + .6 = 4.6 L; differences .4, .6 and .1 L, the two largest 1.0 L; 5.6/(.92 · .95) = 6.407323 L.
  CHECK_THAT(in_ml(mix.fill), WithinAbs(4600, 1e-6));
  CHECK_THAT(in_ml(mix.reserve), WithinAbs(1000, 1e-6));
  CHECK(mix.reserve_trees == std::vector<std::size_t>{1, 0});
  CHECK_THAT(in_l(mix.needed), WithinAbs(6.407323, 1e-6));
  CHECK_THAT(in_l(mix.components.front().loose), WithinAbs(6.407323, 1e-6));
  CHECK_THAT(in_kg(*mix.components.front().dry_mass), WithinAbs(6.407323 * 0.7, 1e-6));
  REQUIRE(mix.left_over);
  CHECK_THAT(in_l(*mix.left_over), WithinAbs(1 / (0.92 * 0.95), 1e-6));
}

TEST_CASE("A day of the two grains of the packing check takes what that check's shrinkage asks for", "[day_litres]") {
  // docs/science/packing.md, 1 L + 1 L of 7.5 and 1.5 mm grain: shrinkage 13.82 %. 5 L/(.92 · .93) = 5.84385 L, half of it over .8618.
  PlannedDay day;
  day.mixes.push_back(mix_of("m", {grain("coarse", 1, 450, 900, 2350, 7.5), grain("fine", 1, 750, 1350, 2650, 1.5)}, 0.08, 0.07));
  day.trees = {tree_of("T-01", "m", 5000)};
  const auto answer = work_out(day);
  REQUIRE(answer);
  for (const GrainLitres& each : answer->mixes.front().components) CHECK_THAT(in_l(each.loose), WithinAbs(3.3905, 0.001));
}

TEST_CASE("Component litres less shrinkage, settling and spill are the fill and the reserve", "[day_litres][law]") {
  RandomDays days(20260314);
  for (int run = 0; run < 150; ++run) {
    const auto answer = work_out(days.next());
    REQUIRE(answer);
    for (const MixOfDay& mix : answer->mixes) {
      REQUIRE(mix.shrinkage);
      double loose_sum_l = 0;
      for (const GrainLitres& each : mix.components) loose_sum_l += in_l(each.loose);
      const double returned_l = loose_sum_l * (1 - mix.shrinkage->value()) * (1 - mix.settling.value()) * (1 - mix.spill.value());
      CHECK_THAT(returned_l * 1000, WithinAbs(in_ml(mix.fill + mix.reserve), 1e-6));
    }
  }
}

TEST_CASE("Totals are the sums of their parts", "[day_litres][law]") {
  RandomDays days(7);
  for (int run = 0; run < 100; ++run) {
    const PlannedDay day = days.next();
    const auto answer = work_out(day);
    REQUIRE(answer);
    double fills_ml = 0, mixes_ml = 0;
    for (const TreeOfDay& tree : answer->trees) fills_ml += in_ml(tree.fill);
    std::map<std::string, double> loose_sums, ready_sums, had;
    for (const MixOfDay& mix : answer->mixes) {
      mixes_ml += in_ml(mix.fill);
      for (const GrainLitres& each : mix.components) {
        loose_sums[each.name] += in_l(each.loose);
        ready_sums[each.name] += in_l(each.ready);
      }
    }
    CHECK_THAT(mixes_ml, WithinAbs(fills_ml, 1e-6));
    for (const GrainLitres& each : answer->components) {
      CHECK_THAT(in_l(each.loose), WithinAbs(loose_sums[each.name], 1e-9));
      CHECK_THAT(in_l(each.ready), WithinAbs(ready_sums[each.name], 1e-9));
    }
    for (const GrainTaken& taken : answer->taken) had[taken.component] += in_l(taken.ready);
    double short_l = 0, ready_l = 0, had_l = 0;
    for (const GrainToBuy& purchase : answer->buy) short_l += in_l(purchase.short_of);
    for (const auto& [name, litres] : ready_sums) ready_l += litres;
    for (const auto& [name, litres] : had) had_l += litres;
    CHECK_THAT(had_l + short_l, WithinAbs(ready_l, 1e-6));
  }
}

TEST_CASE("Rounding to scoops, tubs and bags never leaves the day short", "[day_litres][law]") {
  RandomDays days(99);
  for (int run = 0; run < 200; ++run) {
    const PlannedDay day = days.next();
    const auto answer = work_out(day);
    REQUIRE(answer);
    for (const MixOfDay& mix : answer->mixes) {
      if (!mix.batches) continue;
      double scooped_l = 0;
      for (const TreeOfDay& tree : answer->trees)
        if (tree.scoops && day.trees[tree.tree].mix == mix.name) scooped_l += *tree.scoops * in_l(*day.scoop);
      const double reserve_l = in_ml(mix.reserve) / 1000 / (1 - mix.settling.value()) / (1 - mix.spill.value());
      CHECK(in_l(mix.batches->made) >= in_l(mix.needed) - 1e-9);
      CHECK(in_l(mix.batches->made) >= scooped_l + reserve_l - 1e-6);
      CHECK(in_l(*mix.left_over) >= reserve_l - 1e-6);
      for (std::size_t k = 0; k < mix.components.size(); ++k) CHECK(mix.components[k].ready >= mix.components[k].loose * (1 - 1e-9));
      for (const TubBatch& batch : mix.batches->batches)
        if (day.tub) {
          CHECK(sum_l(batch.loose) <= in_l(*day.tub) + 1e-9);
          CHECK(in_l(batch.made) <= in_l(*day.tub) + 1e-9);
        }
    }
    for (const TreeOfDay& tree : answer->trees)
      if (tree.scoops) CHECK(*tree.scoops * in_l(*day.scoop) >= in_l(tree.poured) - 1e-9);
    for (const GrainToBuy& purchase : answer->buy)
      if (purchase.bags) {
        CHECK(*purchase.bags * in_l(*purchase.bag_volume) * purchase.yield.value() >= in_l(purchase.short_of) - 1e-9);
        CHECK((*purchase.bags - 1) * in_l(*purchase.bag_volume) * purchase.yield.value() < in_l(purchase.short_of));
      }
  }
}

TEST_CASE("No more is taken from a bag than is there and not promised", "[day_litres][law]") {
  RandomDays days(5);
  for (int run = 0; run < 100; ++run) {
    const PlannedDay day = days.next();
    const auto answer = work_out(day);
    REQUIRE(answer);
    for (std::size_t i = 0; i < day.shelf.size(); ++i) {
      const double free_l = std::max(0.0, in_l(*day.shelf[i].stock) - in_l(day.shelf[i].reserved.value_or(LooseVolume{})));
      const double taken_l = in_l(answer->shelf[i].taken.value_or(LooseVolume{}));
      CHECK(taken_l <= free_l + 1e-9);
      CHECK_THAT(in_l(*answer->shelf[i].left), WithinAbs(free_l - taken_l, 1e-9));
    }
  }
}

TEST_CASE("Raw grain is what is needed over the bag's measured yield", "[day_litres]") {
  PlannedDay day = plain_day();
  day.shelf = {bag_of("K-07", "g", 100)};
  const auto answer = work_out(day);
  REQUIRE(answer);
  REQUIRE(answer->taken.size() == 1);
  CHECK_THAT(in_l(answer->taken[0].raw), WithinAbs(6.407323 / 0.8, 1e-6));
  CHECK_FALSE(answer->taken[0].typical_yield);
  CHECK(answer->buy.empty());
}

TEST_CASE("A bag without a measured yield is taken at the typical one, and that is said", "[day_litres]") {
  PlannedDay day = plain_day();
  day.shelf = {bag_of("K-07", "g", 100)};
  day.shelf[0].yield.reset();
  const auto answer = work_out(day);
  REQUIRE(answer);
  CHECK(answer->taken[0].typical_yield);
  CHECK(answer->taken[0].yield == typical_yield);
  REQUIRE(note_of(answer->notes, "day.typical-yield") != nullptr);
  CHECK(note_of(answer->notes, "day.typical-yield")->where == "K-07");
}

TEST_CASE("Moss is lost to no screen unless a yield was typed for it", "[day_litres][regression]") {
  PlannedDay day = plain_day();
  day.trees.front().layers = {{"sphagnum", pot_ml(3496), bulk_g_l(25)}};
  GrainSupply moss;
  moss.bag = moss.material = "sphagnum";
  moss.stock = loose_l(50);
  day.shelf = {moss};
  const auto taken = [&] {
    const auto answer = work_out(day);
    REQUIRE(answer);
    REQUIRE(answer->taken.size() == 1);
    return answer->taken.front();
  };
  CHECK_FALSE(has_yield(moss));
  CHECK_FALSE(taken().yield);
  // 3496 mL/(.92 . .95) = 4 L ready, and as many off the shelf; 5 L where a fifth is lost.
  CHECK_THAT(in_l(taken().raw), WithinAbs(4, 1e-9));
  day.shelf.front().yield = ScreenYield(0.8);
  CHECK(taken().yield == ScreenYield(0.8));
  CHECK_THAT(in_l(taken().raw), WithinAbs(5, 1e-9));
}

TEST_CASE("A batch that has to do without a grain of its recipe says so", "[day_litres]") {
  PlannedDay day;
  // 1.7 : 3 : .5 in a tub of 3 L by scoops of .4 L: 1 + 2 + 0 is nearer than any batch that holds all three, and 9.6 points off.
  day.mixes.push_back(mix_of("m", {grain("a", 1.7, 500, 950, 2400, 6), grain("b", 3, 700, 1300, 2500, 2), grain("c", 0.5, 300, 600, 2300, 3)}));
  day.trees = {tree_of("t", "m", 4800)};
  day.tub = loose_l(3);
  day.scoop = loose_l(0.4);
  const auto answer = work_out(day);
  REQUIRE(answer);
  const auto& batches = answer->mixes.front().batches->batches;
  REQUIRE(std::ranges::any_of(batches, [](const TubBatch& batch) { return batch.scoops.back() == 0; }));
  const auto without = std::ranges::count_if(batches, [](const TubBatch& batch) { return batch.scoops.back() == 0; });
  const Note* lacks = note_of(answer->notes, "day.batch-lacks-grain");
  REQUIRE(lacks != nullptr);
  CHECK(lacks->where == "m");
  CHECK(lacks->facts == Facts{{"grain", std::string("c")}, {"without", static_cast<double>(without)}, {"batches", static_cast<double>(batches.size())}});
  CHECK(note_of(answer->notes, "day.batch-off-recipe") != nullptr);
}

TEST_CASE("A bag's own grading gives its yield through real screens", "[day_litres]") {
  GrainSupply supply = bag_of("K-07", "g", 100);
  supply.yield.reset();
  supply.bulk_density = bulk_g_l(700);
  supply.particle_density = particle_g_l(1300);
  supply.grading = Grading{{{aperture_mm(1), passing_percent(5)}, {aperture_mm(2), passing_percent(30)}, {aperture_mm(4), passing_percent(80)},
                            {aperture_mm(8), passing_percent(100)}}, {}, {}};
  CHECK_FALSE(known_yield(supply));
  supply.keeps = SizeBand{aperture_mm(2), aperture_mm(4)};
  const auto yield = known_yield(supply);
  REQUIRE(yield);
  // Half of the mass lies between the sieves; narrower grain lies looser, so its litres are a little more.
  CHECK(yield->value() > 0.42);
  CHECK(yield->value() < 0.65);
  supply.yield = ScreenYield(0.33);
  CHECK(known_yield(supply) == ScreenYield(0.33));
}

TEST_CASE("Grain that is ready goes first, then the shelf's order, and the rest is bought in whole bags", "[day_litres]") {
  PlannedDay day = plain_day();
  day.shelf = {bag_of("K-07", "g", 2), bag_of("tub", "g", 1)};
  day.shelf[1].screened = true;
  day.shelf[1].yield.reset();
  day.shelf[0].bag_volume = loose_l(3);
  day.shelf[0].price = Price{12.5, "EUR"};
  const auto answer = work_out(day);
  REQUIRE(answer);
  REQUIRE(answer->taken.size() == 2);
  CHECK(answer->taken[0].supply == 1);
  CHECK_THAT(in_l(answer->taken[1].ready), WithinAbs(1.6, 1e-9));
  REQUIRE(answer->buy.size() == 1);
  const GrainToBuy& buy = answer->buy[0];
  CHECK_THAT(in_l(buy.short_of), WithinAbs(6.407323 - 1 - 1.6, 1e-6));
  // 3.807323/.8 = 4.759 L of raw grain: two bags of three litres.
  CHECK(buy.bags == 2);
  CHECK_THAT(buy.cost->amount, WithinAbs(25, 1e-9));
  CHECK_THAT(in_l(*buy.left_over), WithinAbs(6 - 3.807323 / 0.8, 1e-5));
  CHECK_FALSE(buy.typical_yield);
}

TEST_CASE("What a bag to buy costs is told by bags of its size only", "[day_litres]") {
  PlannedDay day = plain_day();
  day.shelf = {bag_of("K-06", "g", 1), bag_of("K-07", "g", 1)};
  for (GrainSupply& supply : day.shelf) {
    supply.material = "grit";
    supply.bag_volume = loose_l(3);
  }
  day.shelf[0].price = Price{12.5, "EUR"};
  const auto same = work_out(day);
  REQUIRE(same);
  REQUIRE(same->buy.size() == 1);
  REQUIRE(same->buy[0].cost);
  CHECK_THAT(same->buy[0].cost->amount, WithinAbs(12.5 * *same->buy[0].bags, 1e-9));
  day.shelf[1].bag_volume = loose_l(6);
  const auto larger = work_out(day);
  REQUIRE(larger);
  CHECK(larger->buy[0].bag_volume == loose_l(6));
  CHECK_FALSE(larger->buy[0].cost);
}

TEST_CASE("Another lot of the material is taken only where no bag is named for the component", "[day_litres]") {
  PlannedDay day = plain_day();
  day.mixes[0].mix.components[0].material = "stone";
  day.shelf = {bag_of("K-07", "", 100), bag_of("g", "", 0.5)};
  const auto named = work_out(day);
  REQUIRE(named);
  REQUIRE(named->taken.size() == 1);
  CHECK(named->taken[0].supply == 1);
  day.shelf.pop_back();
  const auto other = work_out(day);
  REQUIRE(other);
  REQUIRE(other->taken.size() == 1);
  CHECK(other->taken[0].supply == 0);
}

TEST_CASE("Grain promised to other days is not taken, and where that makes the day short it is said", "[day_litres]") {
  PlannedDay day = plain_day();
  day.shelf = {bag_of("K-07", "g", 10)};
  day.shelf[0].reserved = loose_l(9);
  const auto answer = work_out(day);
  REQUIRE(answer);
  CHECK_THAT(in_l(answer->taken[0].raw), WithinAbs(1, 1e-9));
  REQUIRE(note_of(answer->notes, "day.promised-elsewhere") != nullptr);
  CHECK(note_of(answer->notes, "day.promised-elsewhere")->level == Level::warning);
  day.shelf[0].reserved = loose_l(12);
  const auto beyond = work_out(day);
  REQUIRE(beyond);
  CHECK(beyond->taken.empty());
}

TEST_CASE("Without a plan all the pot holds is counted, and a layer is taken out of it", "[day_litres]") {
  PlannedDay day = plain_day();
  Container pot;
  pot.rim = {length_cm(30), length_cm(20)};
  pot.depth = depth_cm(6);
  pot.freeboard = depth_cm(0.5);
  pot.bottom_layer = BottomLayer{depth_cm(1), grain("coarse", 1, 800, 1500, 2600, 8)};
  pot.mass = mass_kg(2);
  day.pots.emplace("tray", pot);
  day.trees = {tree_of("T-01", "m", 1)};
  day.trees[0].fill.reset();
  day.trees[0].pot = "tray";
  const auto answer = work_out(day);
  REQUIRE(answer);
  CHECK(answer->trees[0].whole_pot);
  CHECK_THAT(in_ml(answer->trees[0].fill), WithinAbs(30 * 20 * 4.5, 1e-6));
  const auto layer = std::ranges::find(answer->components, "coarse", &GrainLitres::name);
  REQUIRE(layer != answer->components.end());
  CHECK_THAT(in_l(layer->loose), WithinAbs(0.6 / (0.92 * 0.95), 1e-9));
  CHECK(note_of(answer->notes, "day.whole-pot") != nullptr);
}

TEST_CASE("Layers stand with their litres at each tree, and the totals, the shelf and what to buy are their sums", "[day_litres]") {
  PlannedDay day = plain_day();
  Container pot;
  pot.rim = {length_cm(30), length_cm(20)};
  pot.depth = depth_cm(6);
  pot.bottom_layer = BottomLayer{depth_cm(1), grain("coarse", 1, 800, 1500, 2600, 8)};
  pot.top_dressing = depth_cm(0.5);
  day.pots.emplace("tray", pot);
  for (PlannedTree& tree : day.trees) {
    tree.pot = "tray";
    tree.top_dressing = "K-09";
  }
  day.trees[1].layers = {{"sphagnum", pot_ml(874), bulk_g_l(25)}};
  GrainSupply dressing = bag_of("K-09", "", 0.5);
  dressing.bulk_density = bulk_g_l(600);
  dressing.screened = true;
  dressing.yield.reset();
  day.shelf = {dressing};
  const auto answer = work_out(day);
  REQUIRE(answer);
  REQUIRE(answer->trees[0].layers.size() == 2);
  REQUIRE(answer->trees[1].layers.size() == 3);
  // 874 mL/(.92 . .95) = 1 L of moss of 25 g; 30 . 20 . 1 = 600 mL below and 300 on top of each.
  const double losses = 0.92 * 0.95;
  CHECK(answer->trees[1].layers[0].name == "sphagnum");
  CHECK_THAT(in_l(answer->trees[1].layers[0].loose), WithinAbs(1, 1e-9));
  CHECK_THAT(in_g(*answer->trees[1].layers[0].dry_mass), WithinAbs(25, 1e-9));
  const auto total_l = [&](const std::string& name) {
    const auto found = std::ranges::find(answer->components, name, &GrainLitres::name);
    return found == answer->components.end() ? -1 : in_l(found->loose);
  };
  CHECK_THAT(total_l("sphagnum"), WithinAbs(1, 1e-9));
  CHECK_THAT(total_l("coarse"), WithinAbs(3 * 0.6 / losses, 1e-9));
  CHECK_THAT(total_l("K-09"), WithinAbs(3 * 0.3 / losses, 1e-9));
  const auto taken = std::ranges::find(answer->taken, "K-09", &GrainTaken::component);
  REQUIRE(taken != answer->taken.end());
  CHECK_THAT(in_l(taken->raw), WithinAbs(0.5, 1e-9));
  for (const char* material : {"sphagnum", "coarse", "stone"}) {
    INFO(material);
    CHECK(std::ranges::find(answer->buy, material, &GrainToBuy::material) != answer->buy.end());
  }
  // Moss is torn, not screened: what is short is what is bought.
  const auto moss = std::ranges::find(answer->buy, "sphagnum", &GrainToBuy::material);
  REQUIRE(moss != answer->buy.end());
  CHECK_THAT(in_l(moss->raw), WithinAbs(1, 1e-9));
  CHECK_FALSE(moss->typical_yield);
}

TEST_CASE("A full pot is mix with its water, root mass, tree and pot, and what was not weighed makes it at least that", "[day_litres]") {
  PlannedDay day = plain_day();
  Container pot;
  pot.rim = {length_cm(30), length_cm(20)};
  pot.depth = depth_cm(6);
  day.pots.emplace("tray", pot);
  day.trees = {tree_of("T-01", "m", 2000)};
  day.trees[0].pot = "tray";
  const auto unweighed = work_out(day);
  REQUIRE(unweighed);
  const Lift& least = unweighed->lifts.front();
  CHECK_FALSE(least.complete);
  CHECK(least.missing == std::vector<std::string>{"pot", "root-mass", "tree"});
  // 2 L of settled grain, 700/.92 g/L, and at most all its voids full of water.
  CHECK(in_kg(least.mass) > 2 * 0.7 / 0.92);
  CHECK(in_kg(least.mass) < 2 * (0.7 / 0.92 + 1));

  day.pots.at("tray").mass = mass_kg(3);
  day.trees[0].kept_root_mass = mass_kg(9);
  day.trees[0].mass = mass_kg(5);
  const auto weighed = work_out(day);
  REQUIRE(weighed);
  CHECK(weighed->lifts.front().complete);
  CHECK_THAT(in_kg(weighed->lifts.front().mass), WithinAbs(in_kg(least.mass) + 17, 1e-9));
  CHECK(note_of(weighed->notes, "day.heavy-lift") != nullptr);
  CHECK(note_of(unweighed->notes, "day.heavy-lift-at-least") == nullptr);
}

// 1 L of pot that a layer fills holds 1/(1 - s) L of its loose grain: what the day takes for it, less what is spilt.
TEST_CASE("A layer weighs in the full pot what its litres weighed loose, less what was spilt", "[day_litres][law]") {
  PlannedDay day = plain_day();
  Container pot;
  pot.rim = {length_cm(30), length_cm(20)};
  pot.depth = depth_cm(6);
  pot.bottom_layer = BottomLayer{depth_cm(1), grain("coarse", 1, 800, 1500, 2600, 8)};
  day.pots.emplace("tray", pot);
  day.trees = {tree_of("T-01", "m", 2000)};
  day.trees[0].pot = "tray";
  const auto with_moss_of = [&](double g_l) {
    day.trees[0].layers = {{"sphagnum", pot_ml(874), bulk_g_l(g_l)}};
    return work_out(day).value();
  };
  const DayAnswer light = with_moss_of(25);
  const DayAnswer heavy = with_moss_of(50);
  CHECK_THAT(in_g(heavy.lifts.front().mass) - in_g(light.lifts.front().mass), WithinAbs(0.874 * 25 / 0.92, 1e-9));
  CHECK_THAT(in_g(light.lifts.front().mass), WithinAbs(in_g(heavy.lifts.front().mass) - in_g(*light.trees[0].layers[0].dry_mass) * 0.95, 1e-9));
  // The bottom layer too: denser grain with the same voids and water in the same place.
  day.pots.at("tray").bottom_layer->component->grain.bulk_density = bulk_g_l(1000);
  day.pots.at("tray").bottom_layer->component->grain.particle_density = particle_g_l(1875);
  day.pots.at("tray").bottom_layer->component->grain.skeletal_density = skeletal_g_l(3250);
  const DayAnswer denser = with_moss_of(50);
  CHECK_THAT(in_g(denser.lifts.front().mass) - in_g(heavy.lifts.front().mass), WithinAbs(0.6 * 200 / 0.92, 1e-6));
}

TEST_CASE("The work goes by buds, the farthest first, then by mix and helper", "[day_litres]") {
  PlannedDay day = plain_day();
  day.mixes.push_back(mix_of("n", {grain("h", 1, 700, 1300, 2600, 4)}));
  day.trees = {tree_of("a", "n", 100), tree_of("b", "m", 100), tree_of("c", "m", 100), tree_of("d", "m", 100), tree_of("e", "m", 100)};
  day.trees[1].bud = "swelling";
  day.trees[2].bud = "Opening";
  day.trees[3].bud = "swelling";
  day.trees[1].helper = "second";
  day.trees[3].helper = "first";
  const auto names = [&] {
    const auto answer = work_out(day);
    REQUIRE(answer);
    std::string text;
    for (const std::size_t place : answer->order) text += day.trees[answer->trees[place].tree].name;
    return text;
  };
  CHECK(names() == "cdbea");
  day.order = {WorkKey::name};
  CHECK(names() == "abcde");
}

TEST_CASE("A mix edited or deleted after planning keeps its version and says so", "[day_litres]") {
  PlannedDay day = plain_day();
  const auto before = work_out(day);
  day.mixes[0].version = 2;
  day.mixes[0].newest_version = 3;
  const auto edited = work_out(day);
  REQUIRE(edited);
  REQUIRE(note_of(edited->notes, "day.mix-edited") != nullptr);
  CHECK(edited->mixes[0].needed == before->mixes[0].needed);
  day.mixes[0].deleted = true;
  CHECK(note_of(work_out(day)->notes, "day.mix-deleted") != nullptr);
}

TEST_CASE("Litres used before stand in where settling and spill are not given", "[day_litres]") {
  PlannedDay day = plain_day();
  day.mixes[0].mix.settling.reset();
  day.mixes[0].mix.spill.reset();
  const auto nothing_learnt = work_out(day);
  REQUIRE(nothing_learnt);
  CHECK_THAT(in_l(nothing_learnt->mixes[0].needed), WithinAbs(5.6, 1e-9));
  CHECK(note_of(nothing_learnt->notes, "day.no-settling") != nullptr);
  day.filled_before = {{pot_ml(900), mixed_l(1)}};
  day.emptied_before = {{mixed_l(10), mixed_l(8), mixed_l(0)}};
  const auto learnt = work_out(day);
  REQUIRE(learnt);
  CHECK_THAT(in_l(learnt->mixes[0].needed), WithinAbs(5.6 / (0.9 * 0.8), 1e-9));
  CHECK(note_of(learnt->notes, "day.settling-learnt") != nullptr);
}

TEST_CASE("A mix of unknown particle density has no component litres and says which grain it is", "[day_litres]") {
  PlannedDay day = plain_day();
  day.mixes[0].mix.components[0].grain.particle_density.reset();
  day.mixes[0].mix.components[0].grain.skeletal_density.reset();
  const auto answer = work_out(day);
  REQUIRE(answer);
  CHECK_FALSE(answer->mixes[0].shrinkage);
  CHECK(answer->mixes[0].components.empty());
  CHECK_FALSE(answer->lifts.front().complete);
  CHECK_FALSE(answer->notes.empty());
}

TEST_CASE("A day outside a tree's window is said, also where the window runs over the turn of the year", "[day_litres]") {
  PlannedDay day = plain_day();
  const auto outside = [&](const char* on, const char* opens, const char* closes) {
    day.day = on;
    day.trees[0].window_opens = opens;
    day.trees[0].window_closes = closes;
    return note_of(work_out(day)->notes, "day.outside-window") != nullptr;
  };
  CHECK_FALSE(outside("2026-03-14", "03-01", "04-10"));
  CHECK(outside("2026-02-14", "03-01", "04-10"));
  CHECK(outside("2026-05-14", "03-01", "04-10"));
  CHECK_FALSE(outside("2026-01-14", "11-01", "02-10"));
  CHECK(outside("2026-06-14", "11-01", "02-10"));
}

TEST_CASE("Trees of one day that are planned into the same pot are named with it, and their litres still count", "[day_litres]") {
  PlannedDay day = plain_day();
  Container pot;
  pot.rim = {length_cm(30), length_cm(20)};
  pot.depth = depth_cm(6);
  day.pots.emplace("oval", pot);
  day.pots.emplace("tray", pot);
  const auto apart = work_out(day);
  day.trees[0].pot = "oval";
  day.trees[1].pot = "tray";
  CHECK(note_of(work_out(day)->notes, "day.pot-shared") == nullptr);
  day.trees[2].pot = "oval";
  const auto answer = work_out(day);
  REQUIRE(answer);
  const Note* note = note_of(answer->notes, "day.pot-shared");
  REQUIRE(note != nullptr);
  CHECK(*note == Note{"day.pot-shared", Level::warning, "oval", {{"trees", std::string("T-01, T-03")}}});
  CHECK(std::ranges::count(answer->notes, note->code, &Note::code) == 1);
  CHECK(answer->mixes[0].needed == apart->mixes[0].needed);
}
