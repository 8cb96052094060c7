#include "gritwright/report/day_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <utility>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

using Rows = std::vector<std::vector<std::string>>;

/// In the order of bud_rank.
constexpr std::array<std::string_view, 5> bud_words{GRITWRIGHT_TEXT("dormant"), GRITWRIGHT_TEXT("swelling"), GRITWRIGHT_TEXT("green tips"), GRITWRIGHT_TEXT("opening"),
                                                    GRITWRIGHT_TEXT("in leaf")};

constexpr double kg_per_pound = 0.45359237;

std::string kilograms_text(std::optional<Mass> mass, UnitSystem units) {
  if (!mass) return figure({}, 1);
  return units == UnitSystem::us ? figure(in_kg(*mass) / kg_per_pound, 1) + " lb" : figure(in_kg(*mass), 1) + " kg";
}

std::string loose_text(std::optional<LooseVolume> volume, UnitSystem units) {
  return volume_text(volume ? std::optional(in_l(*volume)) : std::nullopt, units);
}
std::string mixed_text(std::optional<MixedVolume> volume, UnitSystem units) {
  return volume_text(volume ? std::optional(in_l(*volume)) : std::nullopt, units);
}
std::string pot_text(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }

std::string section(const std::string& title, const std::vector<std::string>& heading, const Rows& rows) {
  return rows.empty() ? "" : '\n' + title + '\n' + text_table(heading, rows);
}

std::string yield_text(const std::optional<ScreenYield>& yield, bool typical) {
  return yield ? percent_text(yield->value(), 0) + (typical ? " typical" : "") : "-";
}

std::string mixes_table(const std::vector<MixOfDay>& mixes, UnitSystem units) {
  Rows rows;
  for (const MixOfDay& mix : mixes)
    rows.push_back({mix.name, pot_text(mix.fill, units), pot_text(mix.reserve, units), mixed_text(mix.needed, units),
                    mix.batches ? mixed_text(mix.batches->made, units) : figure({}, 0), mixed_text(mix.left_over, units)});
  return section("Mixes", {"mix", "in the pots", "reserve", "to mix", "made", "left over"}, rows);
}

std::string grain_table(const std::vector<GrainLitres>& components, UnitSystem units) {
  Rows rows;
  for (const GrainLitres& grain : components)
    rows.push_back({grain.name, loose_text(grain.loose, units), loose_text(grain.ready, units), kilograms_text(grain.dry_mass, units)});
  return section("Grain", {"grain", "loose", "to have ready", "dry"}, rows);
}

std::string batches_text(const std::vector<MixOfDay>& mixes, UnitSystem units) {
  std::string text;
  for (const MixOfDay& mix : mixes) {
    if (!mix.batches) continue;
    Rows rows;
    for (std::size_t b = 0; b < mix.batches->batches.size(); ++b) {
      const TubBatch& batch = mix.batches->batches[b];
      std::vector<std::string> row{fmt::format("batch {} of {}", b + 1, mix.batches->batches.size())};
      for (std::size_t k = 0; k < batch.loose.size(); ++k)
        row.push_back(batch.scoops.empty() ? loose_text(batch.loose[k], units) : batch.scoops[k] == 1 ? "1 scoop" : fmt::format("{} scoops", batch.scoops[k]));
      row.push_back(mixed_text(batch.made, units));
      rows.push_back(std::move(row));
    }
    std::vector<std::string> heading{""};
    for (const GrainLitres& grain : mix.components) heading.push_back(grain.name);
    heading.emplace_back("gives");
    text += section("Batches of " + mix.name, heading, rows);
  }
  return text;
}

std::string shelf_tables(const PlannedDay& day, const std::vector<GrainTaken>& taken, UnitSystem units) {
  Rows raw, ready;
  for (const GrainTaken& grain : taken) {
    const std::string& bag = day.shelf[grain.supply].bag;
    if (grain.yield)
      raw.push_back({bag, grain.component, loose_text(grain.raw, units), yield_text(grain.yield, grain.typical_yield), loose_text(grain.ready, units)});
    else
      ready.push_back({bag, grain.component, loose_text(grain.raw, units)});
  }
  return section("To screen", {"bag", "for", "raw", "usable", "gives"}, raw) + section("Ready to use", {"bag", "for", "take"}, ready);
}

std::string buying_table(const std::vector<GrainToBuy>& buy, UnitSystem units) {
  Rows rows;
  for (const GrainToBuy& purchase : buy)
    rows.push_back({purchase.material, loose_text(purchase.short_of, units), loose_text(purchase.raw, units),
                    yield_text(purchase.yield, purchase.typical_yield), loose_text(purchase.bag_volume, units), purchase_text(purchase, units),
                    purchase.cost ? figure(purchase.cost->amount, 2) + (purchase.cost->currency.empty() ? "" : " " + purchase.cost->currency)
                                  : figure({}, 2)});
  return section("To buy", {"material", "short of", "raw", "usable", "bag", "buy", "price"}, rows);
}

std::string lifts_table(const std::vector<Lift>& lifts, UnitSystem units) {
  Rows rows;
  for (const Lift& lift : lifts) rows.push_back({lift_name(lift), lift_mass_text(lift, units)});
  return section("Lifts, full and wet", {"what", "mass"}, rows);
}

std::string layers_text(const TreeOfDay& tree, UnitSystem units) {
  std::string text;
  for (const GrainLitres& layer : tree.layers) text += (text.empty() ? "" : ", ") + layer.name + " " + loose_text(layer.loose, units);
  return text;
}

std::string working_order_table(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  const bool layers = std::ranges::any_of(answer.trees, [](const TreeOfDay& tree) { return !tree.layers.empty(); });
  Rows rows;
  for (std::size_t place = 0; place < answer.order.size(); ++place) {
    const TreeOfDay& tree = answer.trees[answer.order[place]];
    const PlannedTree& planned = day.trees[tree.tree];
    rows.push_back({fmt::format("{}. {}", place + 1, planned.name), planned.mix, planned.pot, tree.whole_pot ? "-" : planned.plan, planned.bud,
                    planned.helper, pot_text(tree.fill, units), mixed_text(tree.poured, units), scoops_text(tree.scoops)});
    if (layers) rows.back().push_back(layers_text(tree, units));
  }
  std::vector<std::string> heading{"tree", "mix", "pot", "plan", "buds", "helper", "in the pot", "to pour", "scoops"};
  if (layers) heading.emplace_back("layers");
  return text_table(heading, rows);
}

std::string litres(double value) { return volume_text(value, UnitSystem::metric); }

Explanation needed(const MixOfDay& mix) {
  return {"needed_l", GRITWRIGHT_TEXT("(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan"),
          {{GRITWRIGHT_TEXT("mix"), mix.name},
           {GRITWRIGHT_TEXT("fill"), litres(in_ml(mix.fill) / 1000)},
           {GRITWRIGHT_TEXT("reserve"), litres(in_ml(mix.reserve) / 1000)},
           {GRITWRIGHT_TEXT("settling"), percent_text(mix.settling.value())},
           {GRITWRIGHT_TEXT("spill"), percent_text(mix.spill.value())}},
          "docs/science/repotting-day.md"};
}

void explain_components(std::vector<Explanation>& list, const MixOfDay& mix) {
  for (const GrainLitres& grain : mix.components)
    list.push_back({"loose_l", GRITWRIGHT_TEXT("needed x loose share / (1 - shrinkage)"),
                    {{GRITWRIGHT_TEXT("component"), grain.name},
                     {GRITWRIGHT_TEXT("needed"), litres(in_l(mix.needed))},
                     {GRITWRIGHT_TEXT("shrinkage"), percent_text(mix.shrinkage ? std::optional(mix.shrinkage->value()) : std::nullopt)},
                     {GRITWRIGHT_TEXT("gives"), litres(in_l(grain.loose))}},
                    "docs/science/packing.md"});
}

void explain_grain(std::vector<Explanation>& list, const PlannedDay& day, const std::vector<GrainTaken>& taken) {
  for (const GrainTaken& grain : taken)
    if (grain.yield)
      list.push_back({"screen_l", GRITWRIGHT_TEXT("ready / yield"),
                      {{GRITWRIGHT_TEXT("bag"), day.shelf[grain.supply].bag},
                       {GRITWRIGHT_TEXT("ready"), litres(in_l(grain.ready))},
                       {GRITWRIGHT_TEXT("yield"), yield_text(grain.yield, grain.typical_yield)}},
                      grain.typical_yield ? GRITWRIGHT_TEXT("common practice, no source") : GRITWRIGHT_TEXT("measured")});
}

void explain_purchases(std::vector<Explanation>& list, const std::vector<GrainToBuy>& buy) {
  for (const GrainToBuy& purchase : buy)
    list.push_back({"bags", GRITWRIGHT_TEXT("raw litres / litres of a bag, rounded up; raw = short / yield"),
                    {{GRITWRIGHT_TEXT("material"), purchase.material},
                     {GRITWRIGHT_TEXT("short"), litres(in_l(purchase.short_of))},
                     {GRITWRIGHT_TEXT("yield"), yield_text(purchase.yield, purchase.typical_yield)},
                     {GRITWRIGHT_TEXT("bag"), loose_text(purchase.bag_volume, UnitSystem::metric)}},
                    purchase.typical_yield ? GRITWRIGHT_TEXT("common practice, no source") : GRITWRIGHT_TEXT("measured")});
}

Explanation lifting() {
  return {"mass_kg", GRITWRIGHT_TEXT("wet mix + kept root mass + tree + pot + layers; wet mix = fill x (litre weight + 1000 g/L x water held)"),
          {{GRITWRIGHT_TEXT("a part not weighed"), GRITWRIGHT_TEXT("left out, and the mass is said as at least")}},
          "docs/science/repotting-day.md"};
}

}  // namespace

std::string lift_name(const Lift& lift, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  if (lift.sort == LiftSort::tub) return words(GRITWRIGHT_TEXT("tub of {mix}"), {{"mix", lift.what}});
  return lift.pot.empty() ? lift.what : words(GRITWRIGHT_TEXT("{tree} in {pot}"), {{"tree", lift.what}, {"pot", lift.pot}});
}

std::string lift_mass_text(const Lift& lift, UnitSystem units, const Translate& translate) {
  const std::string mass = kilograms_text(lift.mass, units);
  return lift.complete ? mass : Words{translate, units}(GRITWRIGHT_TEXT("at least {mass}"), {{"mass", mass}});
}

std::string purchase_text(const GrainToBuy& purchase, UnitSystem units, const Translate& translate) {
  if (!purchase.bags) return loose_text(purchase.raw, units);
  return Words{translate, units}.counted(static_cast<std::size_t>(*purchase.bags), GRITWRIGHT_TEXT("1 bag"), GRITWRIGHT_TEXT("{count} bags"));
}

std::span<const std::string_view> bud_states() { return bud_words; }

std::string bud_text(const std::string& bud, const Translate& translate) {
  const auto rank = bud_rank(bud);
  return rank ? Words{translate, UnitSystem::metric}(bud_words.at(static_cast<std::size_t>(*rank))) : bud;
}

std::string day_text(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  std::string title = day.name.empty() ? "Repotting day" : day.name;
  if (day.day) title += ", " + *day.day;
  return title + fmt::format(", sheet revision {}\n\n", day.sheet_revision) + working_order_table(day, answer, units) + mixes_table(answer.mixes, units) +
         batches_text(answer.mixes, units) + grain_table(answer.components, units) + shelf_tables(day, answer.taken, units) +
         buying_table(answer.buy, units) + lifts_table(answer.lifts, units);
}

std::string season_text(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units) {
  const std::map<Due, std::string> words{
      {Due::not_yet, "not yet"}, {Due::may_be, "may be, look at it"}, {Due::due, "due"}, {Due::unknown, "not known"}};
  Rows rows;
  for (const DueTree& tree : answer.trees) {
    const PlannedTree& planned = season.ground.trees[tree.tree];
    rows.push_back({planned.name, words.at(tree.due), tree.from.value_or("-"), planned.day.value_or("-"), planned.mix});
  }
  std::string text = "Season until " + season.until + "\n\n" + text_table({"tree", "due", "from", "planned for", "mix"}, rows) +
                     mixes_table(answer.mixes, units) + grain_table(answer.components, units) + buying_table(answer.buy, units);
  Rows claims;
  for (const Reservation& reservation : answer.reservations)
    for (const Claim& claim : reservation.claims)
      claims.push_back({season.ground.shelf[reservation.supply].bag, claim.day.value_or("no day yet"), loose_text(claim.wanted, units),
                        loose_text(claim.gets, units)});
  text += section("Wanted by more than one day", {"bag", "day", "wants", "gets"}, claims);
  for (const DayOfSeason& day : answer.days)
    text += '\n' + day.day.value_or("No day yet") + '\n' + mixes_table(day.answer.mixes, units) + shelf_tables(day.plan, day.answer.taken, units) +
            lifts_table(day.answer.lifts, units);
  return text;
}

std::vector<Explanation> explain(const PlannedDay& day, const DayAnswer& answer) {
  std::vector<Explanation> list;
  for (const MixOfDay& mix : answer.mixes) {
    list.push_back(needed(mix));
    explain_components(list, mix);
  }
  explain_grain(list, day, answer.taken);
  explain_purchases(list, answer.buy);
  list.push_back(lifting());
  return list;
}

std::vector<Explanation> explain(const PlannedSeason&, const SeasonAnswer& answer) {
  std::vector<Explanation> list;
  for (const MixOfDay& mix : answer.mixes) {
    list.push_back(needed(mix));
    explain_components(list, mix);
  }
  for (const DayOfSeason& day : answer.days) explain_grain(list, day.plan, day.answer.taken);
  explain_purchases(list, answer.buy);
  list.push_back(lifting());
  return list;
}

}  // namespace gritwright
