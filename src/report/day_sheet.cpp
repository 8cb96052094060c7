#include "gritwright/report/day_sheet.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <initializer_list>
#include <iterator>
#include <map>
#include <set>
#include <string_view>

#include "gritwright/domain/grain_words.hpp"
#include "gritwright/report/day_report.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

std::string litres(LooseVolume volume, UnitSystem units) { return volume_text(in_l(volume), units); }
std::string litres(MixedVolume volume, UnitSystem units) { return volume_text(in_l(volume), units); }
std::string litres(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }

std::string day_title(const PlannedDay& day, const Words& words) { return day.name.empty() ? words(GRITWRIGHT_TEXT("Repotting day")) : day.name; }
std::string foot_of(const PlannedDay& day, const Words& words) {
  const std::string revision = std::to_string(day.sheet_revision);
  if (!day.day) return words(GRITWRIGHT_TEXT("{title}, sheet revision {revision}"), {{"title", day_title(day, words)}, {"revision", revision}});
  return words(GRITWRIGHT_TEXT("{title}, {day}, sheet revision {revision}"), {{"title", day_title(day, words)}, {"day", *day.day}, {"revision", revision}});
}
std::string mix_with_version(const PlannedDay& day, const std::string& name, const Words& words) {
  const auto mix = std::ranges::find(day.mixes, name, &DayMix::name);
  if (mix == day.mixes.end() || !mix->version) return name;
  return words(GRITWRIGHT_TEXT("{mix} version {version}"), {{"mix", name}, {"version", fmt::format("{}", *mix->version)}});
}

std::string band_text(const SizeBand& band, const Words& words) {
  return words(GRITWRIGHT_TEXT("{from} to {to}"), {{"from", size_text(band.from, words.units)}, {"to", size_text(band.to, words.units)}});
}
std::string as_typical(const std::string& figure, bool typical, const Words& words) {
  return typical ? words(GRITWRIGHT_TEXT("{figure} typical"), {{"figure", figure}}) : figure;
}
std::string price_text(const Price& price) { return figure(price.amount, 2) + (price.currency.empty() ? "" : " " + price.currency); }

/// "sphagnum 1.20 L, A-12 0.40 L"; nothing where there are none.
std::string printed_layers(const TreeOfDay& tree, const Words& words) {
  std::vector<std::string> layers;
  for (const GrainLitres& layer : tree.layers) layers.push_back(fmt::format("{} {}", words(layer.name), litres(layer.loose, words.units)));
  return words.list(layers);
}

/// A grain by its name, and what it is where that says only where it comes from: "A-01/2, akadama".
std::string grain_words(const std::string& name, const std::string& material, const Words& words) {
  const std::string of = words(material);
  const auto lower = [](std::string text) {
    for (char& sign : text) {
      if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    }
    return text;
  };
  const std::string shown = words(name);
  const bool says_it = material.empty() || lower(name).find(lower(material)) != std::string::npos || lower(shown).find(lower(of)) != std::string::npos;
  return says_it ? shown : words.list({shown, of});
}

std::string screening_line(const PlannedDay& day, const GrainTaken& taken, const Words& words) {
  const GrainSupply& supply = day.shelf[taken.supply];
  const std::string raw = litres(taken.raw, words.units);
  // A mix can name its grain by the bag.
  const std::string component = taken.component == supply.bag && !supply.material.empty() ? words(supply.material) : taken.component;
  if (!taken.yield) return words(GRITWRIGHT_TEXT("Set out {raw} of {bag} for {component}"), {{"raw", raw}, {"bag", supply.bag}, {"component", component}});
  const std::string_view line = supply.keeps ? GRITWRIGHT_TEXT("Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})")
                                             : GRITWRIGHT_TEXT("Screen {raw} of {bag} for {component}, gives {ready} ({yield})");
  std::string yield = percent_text(taken.yield->value(), 0);
  if (taken.typical_yield) yield = words(GRITWRIGHT_TEXT("{yield}, typical: measure"), {{"yield", yield}});
  return words(line, {{"raw", raw}, {"bag", supply.bag}, {"band", supply.keeps ? band_text(*supply.keeps, words) : ""}, {"component", component},
                      {"ready", litres(taken.ready, words.units)}, {"yield", yield}});
}

std::string buying_line(const GrainToBuy& purchase, const Words& words) {
  const std::string_view line = !purchase.bag_volume   ? GRITWRIGHT_TEXT("Buy {bags} of {material}, short of {short} ready")
                                : purchase.typical_bag ? GRITWRIGHT_TEXT("Buy {bags} of {material} of {volume} (typical), short of {short} ready")
                                                       : GRITWRIGHT_TEXT("Buy {bags} of {material} of {volume}, short of {short} ready");
  std::string text = words(line, {{"bags", purchase_text(purchase, words.units, words.translate)}, {"material", words(purchase.material)},
                                  {"volume", purchase.bag_volume ? litres(*purchase.bag_volume, words.units) : ""}, {"short", litres(purchase.short_of, words.units)}});
  return purchase.cost ? words(GRITWRIGHT_TEXT("{line}, price {price}"), {{"line", text}, {"price", price_text(*purchase.cost)}}) : text;
}

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

PrintTable trees_table(const PlannedDay& day, const DayAnswer& answer, const Words& words) {
  PrintTable table{words.each({"", GRITWRIGHT_TEXT("tree"), GRITWRIGHT_TEXT("mix"), GRITWRIGHT_TEXT("pot"), GRITWRIGHT_TEXT("plan"), GRITWRIGHT_TEXT("buds"), GRITWRIGHT_TEXT("helper"), GRITWRIGHT_TEXT("pour"), GRITWRIGHT_TEXT("scoops"), GRITWRIGHT_TEXT("layers"), GRITWRIGHT_TEXT("done: plan, litres, note")}),
                   {},
                   {false, false, false, false, false, false, false, true, true, false, false}};
  for (std::size_t place = 0; place < answer.order.size(); ++place) {
    const TreeOfDay& tree = answer.trees[answer.order[place]];
    const PlannedTree& planned = day.trees[tree.tree];
    table.rows.push_back({fmt::format("{}", place + 1), planned.species.empty() ? planned.name : words.list({planned.name, planned.species}),
                          mix_with_version(day, planned.mix, words), planned.pot, tree.whole_pot ? "-" : planned.plan, bud_text(planned.bud, words.translate), planned.helper,
                          litres(tree.poured, words.units), scoops_text(tree.scoops), printed_layers(tree, words), planned.note});
  }
  table.written_by_hand = static_cast<int>(table.heading.size()) - 1;
  leave_out_empty_columns(table);
  return table;
}

PrintTable batch_table(const MixOfDay& mix, const TubBatch& batch, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("grain"), GRITWRIGHT_TEXT("scoops"), GRITWRIGHT_TEXT("litres")}),
                   {},
                   {false, true, true}};
  if (words.units == UnitSystem::us) table.heading[2] = words(GRITWRIGHT_TEXT("quarts"));
  for (std::size_t k = 0; k < batch.loose.size(); ++k)
    table.rows.push_back({grain_words(mix.components[k].name, mix.components[k].material, words), batch.scoops.empty() ? "–" : std::to_string(batch.scoops[k]), litres(batch.loose[k], words.units)});
  return table;
}

PrintSection mixes_section(const std::vector<MixOfDay>& mixes, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("mix"), GRITWRIGHT_TEXT("in the pots"), GRITWRIGHT_TEXT("reserve"), GRITWRIGHT_TEXT("to mix"), GRITWRIGHT_TEXT("batches"), GRITWRIGHT_TEXT("made"), GRITWRIGHT_TEXT("left over")}),
                   {},
                   {false, true, true, true, true, true, true}};
  for (const MixOfDay& mix : mixes)
    table.rows.push_back({mix.name, litres(mix.fill, words.units), litres(mix.reserve, words.units), litres(mix.needed, words.units),
                          mix.batches ? std::to_string(mix.batches->batches.size()) : "–", mix.batches ? litres(mix.batches->made, words.units) : "–",
                          mix.left_over ? litres(*mix.left_over, words.units) : "–"});
  return {words(GRITWRIGHT_TEXT("Mixes")), {table, PrintText{words(GRITWRIGHT_TEXT("The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own."))}}};
}

PrintSection grain_section(const std::vector<GrainLitres>& components, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("grain"), GRITWRIGHT_TEXT("loose"), GRITWRIGHT_TEXT("to have ready")}),
                   {},
                   {false, true, true}};
  for (const GrainLitres& grain : components) table.rows.push_back({words(grain.name), litres(grain.loose, words.units), litres(grain.ready, words.units)});
  return {words(GRITWRIGHT_TEXT("Grain")), {table}};
}

PrintSection shelf_section(const PlannedDay& day, const DayAnswer& answer, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("bag"), GRITWRIGHT_TEXT("fraction"), GRITWRIGHT_TEXT("for"), GRITWRIGHT_TEXT("raw"), GRITWRIGHT_TEXT("usable"), GRITWRIGHT_TEXT("ready")}),
                   {},
                   {false, false, false, true, true, true}};
  for (const GrainTaken& taken : answer.taken) {
    const GrainSupply& supply = day.shelf[taken.supply];
    table.rows.push_back({supply.bag, supply.keeps ? band_text(*supply.keeps, words) : "–",
                          taken.component, litres(taken.raw, words.units),
                          taken.yield ? as_typical(percent_text(taken.yield->value(), 0), taken.typical_yield, words) : words(GRITWRIGHT_TEXT("ready")),
                          litres(taken.ready, words.units)});
  }
  return {words(GRITWRIGHT_TEXT("From the shelf")), {table}};
}

PrintSection buying_section(const std::vector<GrainToBuy>& buy, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("material"), GRITWRIGHT_TEXT("short of"), GRITWRIGHT_TEXT("raw"), GRITWRIGHT_TEXT("usable"), GRITWRIGHT_TEXT("one bag"), GRITWRIGHT_TEXT("buy"), GRITWRIGHT_TEXT("price")}),
                   {},
                   {false, true, true, true, true, true, true}};
  for (const GrainToBuy& purchase : buy) {
    table.rows.push_back({words(purchase.material), litres(purchase.short_of, words.units), litres(purchase.raw, words.units),
                          as_typical(percent_text(purchase.yield.value(), 0), purchase.typical_yield, words),
                          purchase.bag_volume ? as_typical(litres(*purchase.bag_volume, words.units), purchase.typical_bag, words) : "–",
                          purchase_text(purchase, words.units, words.translate), purchase.cost ? price_text(*purchase.cost) : "–"});
  }
  return {words(GRITWRIGHT_TEXT("To buy")), {table}};
}

PrintSection due_section(const PlannedSeason& season, const SeasonAnswer& answer, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("tree"), GRITWRIGHT_TEXT("due"), GRITWRIGHT_TEXT("from"), GRITWRIGHT_TEXT("mix"), GRITWRIGHT_TEXT("day")}),
                   {},
                   {false, false, false, false, false}};
  for (const DueTree& due : answer.trees) {
    if (!due.counted) continue;
    const PlannedTree& tree = season.ground.trees[due.tree];
    table.rows.push_back({tree.name, words(due.due == Due::due ? GRITWRIGHT_TEXT("due") : GRITWRIGHT_TEXT("may be: look at it")), due.from.value_or("–"), tree.mix, tree.day ? *tree.day : words(GRITWRIGHT_TEXT("none yet"))});
  }
  return {words(GRITWRIGHT_TEXT("Trees due by {day}"), {{"day", season.until}}), {table}};
}

PrintSection reservations_section(const PlannedSeason& season, const SeasonAnswer& answer, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("bag"), GRITWRIGHT_TEXT("day"), GRITWRIGHT_TEXT("wants"), GRITWRIGHT_TEXT("gets")}),
                   {},
                   {false, false, true, true}};
  for (const Reservation& reservation : answer.reservations)
    for (const Claim& claim : reservation.claims)
      table.rows.push_back({season.ground.shelf[reservation.supply].bag, claim.day ? *claim.day : words(GRITWRIGHT_TEXT("no day yet")), litres(claim.wanted, words.units), litres(claim.gets, words.units)});
  return {words(GRITWRIGHT_TEXT("Bags that several days want")), {table}};
}

PrintSection lifts_section(const DayAnswer& answer, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("full and wet"), GRITWRIGHT_TEXT("mass")}),
                   {},
                   {false, true}};
  for (const Lift& lift : answer.lifts) {
    const std::string name = lift_name(lift, words.translate);
    table.rows.push_back({lift.mass > heavy_lift ? words(GRITWRIGHT_TEXT("{lift}: two people or a trolley"), {{"lift", name}}) : name, lift_mass_text(lift, words.units, words.translate)});
  }
  PrintSection section{words(GRITWRIGHT_TEXT("Lifts")), {std::move(table)}};
  // How wet the mix is, is by pot tests.
  for (const Note& note : answer.notes)
    if (note.code == "mix.calibrated-by-tests" || note.code == "mix.pooled-from-tests")
      section.blocks.emplace_back(PrintText{words.labelled(note.where, sentence(note, words.translate, words.units))});
  return section;
}

PrintSection notes_section(const Notes& notes, const Words& words) {
  PrintSection section{words(GRITWRIGHT_TEXT("Notes")), {}};
  // What concerns the grain's own figures belongs to the mix, not on the sheet in the tub.
  for (const Note& note : notes)
    if (note.level == Level::warning || note.code.starts_with("day.") || note.code.starts_with("season."))
      section.blocks.emplace_back(PrintText{words.labelled(note.where, sentence(note, words.translate, words.units)), note.level == Level::warning});
  return section;
}

/// Whether any grain of the day goes by one of these words.
bool any_speaks_of(const PlannedDay& day, const DayAnswer& answer, std::initializer_list<GrainWord> words) {
  const auto holds = [&](const std::string& name) { return std::ranges::any_of(words, [&](GrainWord word) { return speaks_of(name, word); }); };
  return std::ranges::any_of(answer.components, [&](const GrainLitres& grain) { return holds(grain.name) || holds(grain.material); }) ||
         std::ranges::any_of(day.shelf, [&](const GrainSupply& supply) { return holds(supply.material); });
}

}  // namespace

std::vector<std::string> day_cautions(const PlannedDay& day, const DayAnswer& answer, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  std::vector<std::string> lines{
      words(GRITWRIGHT_TEXT("Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at "
      "least); clean with a wet cloth or an H-class vacuum, never a broom.")),
      words(GRITWRIGHT_TEXT("Lifting: from about 16 kg use two people or a trolley, less at arm's length. \"At least\" means that not all of it was weighed."))};
  const auto has = [&](std::initializer_list<GrainWord> grains) { return any_speaks_of(day, answer, grains); };
  if (has({GrainWord::moss}))
    lines.push_back(words(GRITWRIGHT_TEXT("Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.")));
  if (has({GrainWord::bark, GrainWord::peat, GrainWord::coir, GrainWord::compost}))
    lines.push_back(words(GRITWRIGHT_TEXT("Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.")));
  if (has({GrainWord::vermiculite})) lines.push_back(words(GRITWRIGHT_TEXT("Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.")));
  if (has({GrainWord::perlite})) lines.push_back(words(GRITWRIGHT_TEXT("Perlite: wet it before pouring.")));
  lines.push_back(words(GRITWRIGHT_TEXT("General information; the products' safety sheets, local codes and qualified advice prevail.")));
  return lines;
}

DayChecklist day_checklist(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  DayChecklist list;
  for (const GrainToBuy& purchase : answer.buy) list.buy.push_back(buying_line(purchase, words));
  for (const GrainTaken& taken : answer.taken) list.evening.push_back(screening_line(day, taken, words));
  std::set<std::string> pots;
  for (const PlannedTree& tree : day.trees) pots.insert(tree.pot.empty() ? words(GRITWRIGHT_TEXT("pot of {tree}"), {{"tree", tree.name}}) : tree.pot);
  list.evening.push_back(words(GRITWRIGHT_TEXT("Wet the grain, so that it is damp and makes no dust")));
  list.evening.push_back(words.counted(pots.size(), GRITWRIGHT_TEXT("Cut mesh and wire for 1 pot"), GRITWRIGHT_TEXT("Cut mesh and wire for {count} pots")));
  list.evening.push_back(words(GRITWRIGHT_TEXT("Set out cutters, hooks, sticks, sealing paste, disinfectant")));
  for (const MixOfDay& mix : answer.mixes)
    if (mix.batches && !mix.batches->batches.empty())
      list.morning.push_back(words(GRITWRIGHT_TEXT("Mix {batches} of {mix}, {litres} in all"),
                                   {{"batches", words.counted(mix.batches->batches.size(), GRITWRIGHT_TEXT("1 batch"), GRITWRIGHT_TEXT("{count} batches"))},
                                    {"mix", mix_with_version(day, mix.name, words)},
                                    {"litres", litres(mix.batches->made, units)}}));
  for (const ChecklistLine& line : day.checklist) (line.evening_before ? list.evening : list.morning).push_back(line.text);
  list.each_tree = words.each({GRITWRIGHT_TEXT("Mesh over the holes, wire for the tie-down, bottom layer"),
                               GRITWRIGHT_TEXT("Tie the tree down, work the mix in, leave no hollows"),
                               GRITWRIGHT_TEXT("Water until the outflow runs clear"),
                               GRITWRIGHT_TEXT("Disinfect the tools before the next tree"),
                               GRITWRIGHT_TEXT("Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks")});
  return list;
}

PrintDocument day_sheet(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  PrintDocument sheet;
  sheet.title = day_title(day, words);
  const std::string trees = words.counted(day.trees.size(), GRITWRIGHT_TEXT("1 tree"), GRITWRIGHT_TEXT("{count} trees"));
  sheet.subtitle = words(GRITWRIGHT_TEXT("{title}, sheet revision {revision}"), {{"title", day.day ? words.list({*day.day, trees}) : trees}, {"revision", std::to_string(day.sheet_revision)}});
  sheet.foot = foot_of(day, words);
  const DayChecklist list = day_checklist(day, answer, units, translate);
  // Whether it is the day for its trees is read first.
  const auto of_window = [](const Note& note) { return note.code == "day.outside-window"; };
  Notes first;
  std::ranges::copy_if(answer.notes, std::back_inserter(first), of_window);
  if (PrintSection notes = notes_section(first, words); !notes.blocks.empty()) sheet.sections.push_back(std::move(notes));
  if (!list.buy.empty()) sheet.sections.push_back(tick_section(words(GRITWRIGHT_TEXT("To buy")), list.buy));
  sheet.sections.push_back(tick_section(words(GRITWRIGHT_TEXT("The evening before")), list.evening));
  if (!list.morning.empty()) sheet.sections.push_back(tick_section(words(GRITWRIGHT_TEXT("In the morning")), list.morning));
  sheet.sections.push_back({words(GRITWRIGHT_TEXT("Trees in working order")), {trees_table(day, answer, words)}});
  sheet.sections.push_back(tick_section(words(GRITWRIGHT_TEXT("For each tree")), list.each_tree));
  sheet.sections.push_back(mixes_section(answer.mixes, words));
  if (!answer.components.empty()) sheet.sections.push_back(grain_section(answer.components, words));
  if (!answer.taken.empty()) sheet.sections.push_back(shelf_section(day, answer, words));
  sheet.sections.push_back(lifts_section(answer, words));
  PrintSection cautions{words(GRITWRIGHT_TEXT("Take care")), {}};
  for (const std::string& line : day_cautions(day, answer, translate)) cautions.blocks.emplace_back(PrintText{line});
  sheet.sections.push_back(std::move(cautions));
  Notes others;
  std::ranges::remove_copy_if(answer.notes, std::back_inserter(others), of_window);
  if (PrintSection notes = notes_section(others, words); !notes.blocks.empty()) sheet.sections.push_back(std::move(notes));
  return sheet;
}

DaySections day_sections(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  DaySections sections;
  sections.litres = {mixes_section(answer.mixes, words)};
  if (!answer.components.empty()) sections.litres.push_back(grain_section(answer.components, words));
  // First: it has to be done days before.
  if (!answer.buy.empty()) sections.shelf.push_back(buying_section(answer.buy, words));
  if (!answer.taken.empty()) {
    sections.shelf.push_back(shelf_section(day, answer, words));
    const bool of_bags = std::ranges::any_of(answer.taken, [&](const GrainTaken& taken) { return day.shelf[taken.supply].bag_volume.has_value(); });
    if (of_bags) sections.shelf.back().blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("What lies on the shelf is counted by its dry mass and its litre weight, so that a bag can give more or fewer litres than are printed on it."))});
  }
  sections.batches = batch_cards(day, answer, units, translate).sections;
  for (PrintSection& card : sections.batches) std::erase_if(card.blocks, [](const PrintBlock& block) { return std::holds_alternative<PrintTicks>(block); });
  sections.lifts = {lifts_section(answer, words)};
  if (PrintSection notes = notes_section(answer.notes, words); !notes.blocks.empty()) sections.notes.push_back(std::move(notes));
  return sections;
}

PrintDocument season_sheet(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  PrintDocument sheet;
  sheet.title = words(GRITWRIGHT_TEXT("The season"));
  const auto due = static_cast<std::size_t>(std::ranges::count_if(answer.trees, &DueTree::counted));
  sheet.subtitle = words(GRITWRIGHT_TEXT("{trees} due by {day}"), {{"trees", words.counted(due, GRITWRIGHT_TEXT("1 tree"), GRITWRIGHT_TEXT("{count} trees"))}, {"day", season.until}});
  sheet.foot = words.list({sheet.title, sheet.subtitle});
  sheet.sections.push_back(due_section(season, answer, words));
  PrintSection mixes = mixes_section(answer.mixes, words);
  // Batches and what they leave belong to one day.
  auto& table = std::get<PrintTable>(mixes.blocks.front());
  table.heading.resize(4);
  table.numbers.resize(4);
  for (auto& row : table.rows) row.resize(4);
  mixes.blocks.resize(1);
  sheet.sections.push_back(std::move(mixes));
  if (!answer.components.empty()) sheet.sections.push_back(grain_section(answer.components, words));
  if (!answer.buy.empty()) sheet.sections.push_back(buying_section(answer.buy, words));
  if (!answer.reservations.empty()) sheet.sections.push_back(reservations_section(season, answer, words));
  if (PrintSection notes = notes_section(answer.notes, words); !notes.blocks.empty()) sheet.sections.push_back(std::move(notes));
  return sheet;
}

PrintDocument batch_cards(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  PrintDocument cards;
  cards.title = words(GRITWRIGHT_TEXT("Batch cards"));
  cards.subtitle = foot_of(day, words);
  cards.foot = foot_of(day, words);
  for (const MixOfDay& mix : answer.mixes) {
    if (!mix.batches) continue;
    std::vector<std::string> trees;
    for (const std::size_t place : answer.order) {
      const TreeOfDay& tree = answer.trees[place];
      const PlannedTree& planned = day.trees[tree.tree];
      if (planned.mix != mix.name) continue;
      trees.push_back(fmt::format("{} {}", planned.name, tree.scoops ? words(GRITWRIGHT_TEXT("{count} scoops"), {{"count", scoops_text(tree.scoops)}}) : litres(tree.poured, units)));
    }
    for (std::size_t b = 0; b < mix.batches->batches.size(); ++b) {
      const TubBatch& batch = mix.batches->batches[b];
      PrintSection card{words(GRITWRIGHT_TEXT("{mix}, batch {number} of {count}"),
                              {{"mix", mix_with_version(day, mix.name, words)}, {"number", std::to_string(b + 1)}, {"count", std::to_string(mix.batches->batches.size())}}),
                        {}};
      card.blocks.emplace_back(batch_table(mix, batch, words));
      card.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("Gives {litres} of mix"), {{"litres", litres(batch.made, units)}}), true});
      for (const Note& note : answer.notes)
        if (note.where == mix.name && note.code.starts_with("day.batch-")) card.blocks.emplace_back(PrintText{sentence(note, translate, units), true});
      if (day.scoop && !batch.scoops.empty()) card.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("One scoop is {litres}, struck off level."), {{"litres", litres(*day.scoop, units)}})});
      card.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("For {trees}"), {{"trees", words.long_list(trees)}})});
      card.blocks.emplace_back(PrintTicks{words.each({GRITWRIGHT_TEXT("mixed, at"), GRITWRIGHT_TEXT("made ________, left over ________")})});
      cards.sections.push_back(std::move(card));
    }
  }
  return cards;
}

LabelSheet pot_labels(const PlannedDay& day, const DayAnswer& answer, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  LabelSheet sheet;
  sheet.foot = foot_of(day, words);
  std::map<std::string, std::set<std::string>> bags_of;  // by component
  for (const GrainTaken& taken : answer.taken) bags_of[taken.component].insert(day.shelf[taken.supply].bag);
  for (const std::size_t place : answer.order) {
    const TreeOfDay& tree = answer.trees[place];
    const PlannedTree& planned = day.trees[tree.tree];
    PrintLabel label{planned.name, {}};
    if (!planned.species.empty()) label.lines.push_back(planned.species);
    std::vector<std::string> planted;
    if (day.day) planted.push_back(*day.day);
    if (!planned.pot.empty()) planted.push_back(planned.pot);
    if (!tree.whole_pot) planted.push_back(words(GRITWRIGHT_TEXT("plan {plan}"), {{"plan", planned.plan}}));
    if (!planted.empty()) label.lines.push_back(words.list(planted));
    label.lines.push_back(mix_with_version(day, planned.mix, words));
    std::vector<std::string> grain;
    for (const MixOfDay& mix : answer.mixes) {
      if (mix.name != planned.mix) continue;
      for (const GrainLitres& component : mix.components) {
        std::vector<std::string> bags;
        for (const std::string& bag : bags_of[component.name])
          if (bag != component.name) bags.push_back(bag);
        const std::string named = grain_words(component.name, component.material, words);
        grain.push_back(bags.empty() ? named : fmt::format("{} ({})", named, words.list(bags)));
      }
    }
    if (!grain.empty()) label.lines.push_back(words.list(grain));
    sheet.labels.push_back(std::move(label));
  }
  return sheet;
}

}  // namespace gritwright
