#include "gritwright/report/day_sheet.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <set>
#include <string_view>

#include "gritwright/report/day_report.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"

namespace gritwright {

namespace {

std::string litres(LooseVolume volume, UnitSystem units) { return volume_text(in_l(volume), units); }
std::string litres(MixedVolume volume, UnitSystem units) { return volume_text(in_l(volume), units); }
std::string litres(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }

std::string day_title(const PlannedDay& day) { return day.name.empty() ? "Repotting day" : day.name; }
std::string foot_of(const PlannedDay& day) {
  return day_title(day) + (day.day ? ", " + *day.day : "") + fmt::format(", sheet revision {}", day.sheet_revision);
}
std::string mix_with_version(const PlannedDay& day, const std::string& name) {
  const auto mix = std::ranges::find(day.mixes, name, &DayMix::name);
  return mix == day.mixes.end() || !mix->version ? name : fmt::format("{} version {}", name, *mix->version);
}

std::string band_text(const std::optional<SizeBand>& band, UnitSystem units) {
  return band ? " at " + size_text(band->from, units) + " to " + size_text(band->to, units) : "";
}

std::string screening_line(const PlannedDay& day, const GrainTaken& taken, UnitSystem units) {
  const GrainSupply& supply = day.shelf[taken.supply];
  if (!taken.yield) return "Set out " + litres(taken.raw, units) + " of " + supply.bag + " for " + taken.component;
  return "Screen " + litres(taken.raw, units) + " of " + supply.bag + band_text(supply.keeps, units) + " for " + taken.component + ", gives " +
         litres(taken.ready, units) + " (" + percent_text(taken.yield->value(), 0) + (taken.typical_yield ? ", typical: measure" : "") + ")";
}

std::string buying_line(const GrainToBuy& purchase, UnitSystem units) {
  std::string line = "Buy " + purchase_text(purchase, units) + " of " + purchase.material;
  if (purchase.bag_volume) line += " of " + litres(*purchase.bag_volume, units) + (purchase.typical_bag ? " (typical)" : "");
  line += ", short of " + litres(purchase.short_of, units) + " ready";
  if (purchase.cost)
    line += ", price " + figure(purchase.cost->amount, 2) + (purchase.cost->currency.empty() ? "" : " " + purchase.cost->currency);
  return line;
}

std::string plural(std::size_t count, const char* one, const char* many) { return fmt::format("{} {}", count, count == 1 ? one : many); }

PrintSection tick_section(std::string title, std::vector<std::string> lines) { return {std::move(title), {PrintTicks{std::move(lines)}}}; }

/// What no tree has takes no room. The first and the last column stay: the number, and the room to write.
void leave_out_empty_columns(PrintTable& table) {
  for (std::size_t column = table.heading.size() - 2; column > 0; --column) {
    const auto empty = [&](const std::vector<std::string>& row) { return row[column].empty() || row[column] == "–"; };
    if (!std::ranges::all_of(table.rows, empty)) continue;
    const auto at = static_cast<std::ptrdiff_t>(column);
    table.heading.erase(table.heading.begin() + at);
    table.numbers.erase(table.numbers.begin() + at);
    for (auto& row : table.rows) row.erase(row.begin() + at);
    --table.written_by_hand;
  }
}

PrintTable trees_table(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  PrintTable table{{"", "Tree", "Mix", "Pot", "Plan", "Buds", "Helper", "Pour", "Scoops", "Done: plan, litres, note"}, {},
                   {false, false, false, false, false, false, false, true, true, false}};
  for (std::size_t place = 0; place < answer.order.size(); ++place) {
    const TreeOfDay& tree = answer.trees[answer.order[place]];
    const PlannedTree& planned = day.trees[tree.tree];
    table.rows.push_back({fmt::format("{}", place + 1), planned.name + (planned.species.empty() ? "" : ", " + planned.species),
                          mix_with_version(day, planned.mix), planned.pot, tree.whole_pot ? "-" : planned.plan, planned.bud, planned.helper,
                          litres(tree.poured, units), figure(tree.scoops, 2), planned.note});
  }
  table.written_by_hand = static_cast<int>(table.heading.size()) - 1;
  leave_out_empty_columns(table);
  return table;
}

PrintTable batch_table(const MixOfDay& mix, const TubBatch& batch, UnitSystem units) {
  PrintTable table{{"Grain", "Scoops", "Litres"}, {}, {false, true, true}};
  if (units == UnitSystem::us) table.heading[2] = "Quarts";
  for (std::size_t k = 0; k < batch.loose.size(); ++k)
    table.rows.push_back({mix.components[k].name, batch.scoops.empty() ? "–" : std::to_string(batch.scoops[k]), litres(batch.loose[k], units)});
  return table;
}

PrintSection mixes_section(const std::vector<MixOfDay>& mixes, UnitSystem units) {
  PrintTable table{{"Mix", "In the pots", "Reserve", "To mix", "Batches", "Made", "Left over"}, {}, {false, true, true, true, true, true, true}};
  for (const MixOfDay& mix : mixes)
    table.rows.push_back({mix.name, litres(mix.fill, units), litres(mix.reserve, units), litres(mix.needed, units),
                          mix.batches ? std::to_string(mix.batches->batches.size()) : "–", mix.batches ? litres(mix.batches->made, units) : "–",
                          mix.left_over ? litres(*mix.left_over, units) : "–"});
  return {"Mixes", {table, PrintText{"The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own."}}};
}

PrintSection grain_section(const std::vector<GrainLitres>& components, UnitSystem units) {
  PrintTable table{{"Grain", "Loose", "To have ready"}, {}, {false, true, true}};
  for (const GrainLitres& grain : components) table.rows.push_back({grain.name, litres(grain.loose, units), litres(grain.ready, units)});
  return {"Grain", {table}};
}

PrintSection shelf_section(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  PrintTable table{{"Bag", "Fraction", "For", "Raw", "Usable", "Ready"}, {}, {false, false, false, true, true, true}};
  for (const GrainTaken& taken : answer.taken) {
    const GrainSupply& supply = day.shelf[taken.supply];
    table.rows.push_back({supply.bag, supply.keeps ? size_text(supply.keeps->from, units) + " to " + size_text(supply.keeps->to, units) : "–",
                          taken.component, litres(taken.raw, units),
                          taken.yield ? percent_text(taken.yield->value(), 0) + (taken.typical_yield ? " typical" : "") : "ready",
                          litres(taken.ready, units)});
  }
  return {"From the shelf", {table}};
}

PrintSection buying_section(const std::vector<GrainToBuy>& buy, UnitSystem units) {
  PrintTable table{{"Material", "Short of", "Raw", "Usable", "One bag", "Buy", "Price"}, {}, {false, true, true, true, true, true, true}};
  for (const GrainToBuy& purchase : buy) {
    const auto typical = [](bool is) { return is ? " typical" : ""; };
    std::string price = figure(purchase.cost ? std::optional(purchase.cost->amount) : std::nullopt, 2);
    if (purchase.cost && !purchase.cost->currency.empty()) price += " " + purchase.cost->currency;
    table.rows.push_back({purchase.material, litres(purchase.short_of, units), litres(purchase.raw, units),
                          percent_text(purchase.yield.value(), 0) + typical(purchase.typical_yield),
                          purchase.bag_volume ? litres(*purchase.bag_volume, units) + typical(purchase.typical_bag) : "–", purchase_text(purchase, units), price});
  }
  return {"To buy", {table}};
}

PrintSection due_section(const PlannedSeason& season, const SeasonAnswer& answer) {
  PrintTable table{{"Tree", "Due", "From", "Mix", "Day"}, {}, {false, false, false, false, false}};
  for (const DueTree& due : answer.trees) {
    if (!due.counted) continue;
    const PlannedTree& tree = season.ground.trees[due.tree];
    table.rows.push_back({tree.name, due.due == Due::due ? "due" : "may be: look at it", due.from.value_or("–"), tree.mix, tree.day.value_or("none yet")});
  }
  return {"Trees due by " + season.until, {table}};
}

PrintSection reservations_section(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units) {
  PrintTable table{{"Bag", "Day", "Wants", "Gets"}, {}, {false, false, true, true}};
  for (const Reservation& reservation : answer.reservations)
    for (const Claim& claim : reservation.claims)
      table.rows.push_back({season.ground.shelf[reservation.supply].bag, claim.day.value_or("no day yet"), litres(claim.wanted, units), litres(claim.gets, units)});
  return {"Bags that several days want", {table}};
}

PrintSection lifts_section(const DayAnswer& answer, UnitSystem units) {
  PrintTable table{{"Full and wet", "Mass"}, {}, {false, true}};
  for (const Lift& lift : answer.lifts)
    table.rows.push_back({lift_name(lift) + (lift.mass > heavy_lift ? ": two people or a trolley" : ""), lift_mass_text(lift, units)});
  return {"Lifts", {table}};
}

PrintSection notes_section(const Notes& notes, UnitSystem units) {
  PrintSection section{"Notes", {}};
  // What concerns the grain's own figures belongs to the mix, not on the sheet in the tub.
  for (const Note& note : notes)
    if (note.level == Level::warning || note.code.starts_with("day.") || note.code.starts_with("season."))
      section.blocks.emplace_back(PrintText{(note.where.empty() ? "" : note.where + ": ") + sentence(note, {}, units), note.level == Level::warning});
  return section;
}

bool names(const PlannedDay& day, const DayAnswer& answer, std::string_view word) {
  const auto holds = [&](std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char sign) { return static_cast<char>(std::tolower(sign)); });
    return text.find(word) != std::string::npos;
  };
  return std::ranges::any_of(answer.components, [&](const GrainLitres& grain) { return holds(grain.name) || holds(grain.material); }) ||
         std::ranges::any_of(day.shelf, [&](const GrainSupply& supply) { return holds(supply.material); });
}

}  // namespace

std::vector<std::string> day_cautions(const PlannedDay& day, const DayAnswer& answer) {
  std::vector<std::string> lines{
      "Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at "
      "least); clean with a wet cloth or an H-class vacuum, never a broom.",
      "Lifting: from about 16 kg use two people or a trolley, less at arm's length. \"At least\" means that not all of it was weighed."};
  if (names(day, answer, "sphagnum") || names(day, answer, "moss"))
    lines.emplace_back("Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.");
  if (names(day, answer, "bark") || names(day, answer, "peat") || names(day, answer, "coir") || names(day, answer, "compost"))
    lines.emplace_back("Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.");
  if (names(day, answer, "vermiculite")) lines.emplace_back("Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.");
  if (names(day, answer, "perlite")) lines.emplace_back("Perlite: wet it before pouring.");
  lines.emplace_back("General information; the products' safety sheets, local codes and qualified advice prevail.");
  return lines;
}

DayChecklist day_checklist(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  DayChecklist list;
  for (const GrainToBuy& purchase : answer.buy) list.buy.push_back(buying_line(purchase, units));
  for (const GrainTaken& taken : answer.taken) list.evening.push_back(screening_line(day, taken, units));
  std::set<std::string> pots;
  for (const PlannedTree& tree : day.trees) pots.insert(tree.pot.empty() ? "pot of " + tree.name : tree.pot);
  list.evening.emplace_back("Wet the grain, so that it is damp and makes no dust");
  list.evening.push_back("Cut mesh and wire for " + plural(pots.size(), "pot", "pots"));
  list.evening.emplace_back("Set out cutters, hooks, sticks, sealing paste, disinfectant");
  for (const MixOfDay& mix : answer.mixes)
    if (mix.batches && !mix.batches->batches.empty())
      list.morning.push_back("Mix " + plural(mix.batches->batches.size(), "batch", "batches") + " of " + mix_with_version(day, mix.name) + ", " +
                             litres(mix.batches->made, units) + " in all");
  for (const ChecklistLine& line : day.checklist) (line.evening_before ? list.evening : list.morning).push_back(line.text);
  list.each_tree = {"Mesh over the holes, wire for the tie-down, bottom layer",
                    "Tie the tree down, work the mix in, leave no hollows",
                    "Water until the outflow runs clear",
                    "Disinfect the tools before the next tree",
                    "Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks"};
  return list;
}

PrintDocument day_sheet(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  PrintDocument sheet;
  sheet.title = day_title(day);
  sheet.subtitle = (day.day ? *day.day + ", " : "") + fmt::format("{}, sheet revision {}", plural(day.trees.size(), "tree", "trees"), day.sheet_revision);
  sheet.foot = foot_of(day);
  const DayChecklist list = day_checklist(day, answer, units);
  if (!list.buy.empty()) sheet.sections.push_back(tick_section("To buy", list.buy));
  sheet.sections.push_back(tick_section("The evening before", list.evening));
  if (!list.morning.empty()) sheet.sections.push_back(tick_section("In the morning", list.morning));
  sheet.sections.push_back({"Trees in working order", {trees_table(day, answer, units)}});
  sheet.sections.push_back(tick_section("For each tree", list.each_tree));
  sheet.sections.push_back(mixes_section(answer.mixes, units));
  if (!answer.components.empty()) sheet.sections.push_back(grain_section(answer.components, units));
  if (!answer.taken.empty()) sheet.sections.push_back(shelf_section(day, answer, units));
  sheet.sections.push_back(lifts_section(answer, units));
  PrintSection cautions{"Take care", {}};
  for (const std::string& line : day_cautions(day, answer)) cautions.blocks.emplace_back(PrintText{line});
  sheet.sections.push_back(std::move(cautions));
  if (PrintSection notes = notes_section(answer.notes, units); !notes.blocks.empty()) sheet.sections.push_back(std::move(notes));
  return sheet;
}

DaySections day_sections(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  DaySections sections;
  sections.litres = {mixes_section(answer.mixes, units)};
  if (!answer.components.empty()) sections.litres.push_back(grain_section(answer.components, units));
  if (!answer.taken.empty()) sections.shelf.push_back(shelf_section(day, answer, units));
  if (!answer.buy.empty()) sections.shelf.push_back(buying_section(answer.buy, units));
  sections.batches = batch_cards(day, answer, units).sections;
  for (PrintSection& card : sections.batches) std::erase_if(card.blocks, [](const PrintBlock& block) { return std::holds_alternative<PrintTicks>(block); });
  sections.lifts = {lifts_section(answer, units)};
  if (PrintSection notes = notes_section(answer.notes, units); !notes.blocks.empty()) sections.notes.push_back(std::move(notes));
  return sections;
}

PrintDocument season_sheet(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units) {
  PrintDocument sheet;
  sheet.title = "The season";
  sheet.subtitle = plural(static_cast<std::size_t>(std::ranges::count_if(answer.trees, &DueTree::counted)), "tree", "trees") + " due by " + season.until;
  sheet.foot = sheet.title + ", " + sheet.subtitle;
  sheet.sections.push_back(due_section(season, answer));
  PrintSection mixes = mixes_section(answer.mixes, units);
  // Batches and what they leave belong to one day.
  auto& table = std::get<PrintTable>(mixes.blocks.front());
  table.heading.resize(4);
  table.numbers.resize(4);
  for (auto& row : table.rows) row.resize(4);
  mixes.blocks.resize(1);
  sheet.sections.push_back(std::move(mixes));
  if (!answer.components.empty()) sheet.sections.push_back(grain_section(answer.components, units));
  if (!answer.buy.empty()) sheet.sections.push_back(buying_section(answer.buy, units));
  if (!answer.reservations.empty()) sheet.sections.push_back(reservations_section(season, answer, units));
  if (PrintSection notes = notes_section(answer.notes, units); !notes.blocks.empty()) sheet.sections.push_back(std::move(notes));
  return sheet;
}

PrintDocument batch_cards(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) {
  PrintDocument cards;
  cards.title = "Batch cards";
  cards.subtitle = foot_of(day);
  cards.foot = foot_of(day);
  for (const MixOfDay& mix : answer.mixes) {
    if (!mix.batches) continue;
    std::string trees;
    for (const std::size_t place : answer.order) {
      const TreeOfDay& tree = answer.trees[place];
      const PlannedTree& planned = day.trees[tree.tree];
      if (planned.mix != mix.name) continue;
      trees += (trees.empty() ? "" : "; ") + planned.name + " " + (tree.scoops ? figure(tree.scoops, 2) + " scoops" : litres(tree.poured, units));
    }
    for (std::size_t b = 0; b < mix.batches->batches.size(); ++b) {
      const TubBatch& batch = mix.batches->batches[b];
      PrintSection card{fmt::format("{}, batch {} of {}", mix_with_version(day, mix.name), b + 1, mix.batches->batches.size()), {}};
      card.blocks.emplace_back(batch_table(mix, batch, units));
      card.blocks.emplace_back(PrintText{"Gives " + litres(batch.made, units) + " of mix", true});
      if (day.scoop && !batch.scoops.empty()) card.blocks.emplace_back(PrintText{"One scoop is " + litres(*day.scoop, units) + ", struck off level."});
      card.blocks.emplace_back(PrintText{"For " + trees});
      card.blocks.emplace_back(PrintTicks{{"mixed, at", "made ________, left over ________"}});
      cards.sections.push_back(std::move(card));
    }
  }
  return cards;
}

LabelSheet pot_labels(const PlannedDay& day, const DayAnswer& answer) {
  LabelSheet sheet;
  sheet.foot = foot_of(day);
  std::map<std::string, std::set<std::string>> bags_of;  // by component
  for (const GrainTaken& taken : answer.taken) bags_of[taken.component].insert(day.shelf[taken.supply].bag);
  for (const std::size_t place : answer.order) {
    const TreeOfDay& tree = answer.trees[place];
    const PlannedTree& planned = day.trees[tree.tree];
    PrintLabel label{planned.name, {}};
    if (!planned.species.empty()) label.lines.push_back(planned.species);
    std::string planted = day.day.value_or("");
    if (!planned.pot.empty()) planted += (planted.empty() ? "" : ", ") + planned.pot;
    if (!tree.whole_pot) planted += (planted.empty() ? "plan " : ", plan ") + planned.plan;
    if (!planted.empty()) label.lines.push_back(planted);
    label.lines.push_back(mix_with_version(day, planned.mix));
    std::string grain;
    for (const MixOfDay& mix : answer.mixes) {
      if (mix.name != planned.mix) continue;
      for (const GrainLitres& component : mix.components) {
        if (!grain.empty()) grain += ", ";
        grain += component.name;
        std::string bags;
        for (const std::string& bag : bags_of[component.name])
          if (bag != component.name) bags += (bags.empty() ? "" : ", ") + bag;
        if (!bags.empty()) grain += " (" + bags + ")";
      }
    }
    if (!grain.empty()) label.lines.push_back(grain);
    sheet.labels.push_back(std::move(label));
  }
  return sheet;
}

}  // namespace gritwright
