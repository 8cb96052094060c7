#include "gritwright/report/recall_report.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "gritwright/report/text_table.hpp"

namespace gritwright {

namespace {

std::string or_dash(const std::string& text) { return text.empty() ? "–" : text; }

std::string way_text(const RecallRow& row) {
  std::string text;
  for (const RecordRef& ref : row.way) {
    if (!text.empty()) text += " > ";
    text += ref.id;
  }
  return text;
}

std::string name_text(const RecallRow& row) {
  std::string text = or_dash(row.name);
  if (!row.species.empty() && row.name.find(row.species) == std::string::npos) text += ", " + row.species;
  if (row.deleted) text += " (removed)";
  return text;
}

std::string trees_section(const RecallList& list, Standing standing, std::string_view heading) {
  std::vector<std::vector<std::string>> rows;
  for (const RecallRow& row : list.trees) {
    if (row.standing != standing) continue;
    const std::string day = standing == Standing::was ? or_dash(row.day) + " to " + row.until : or_dash(row.day);
    rows.push_back({row.ref.id, name_text(row), row.condition ? condition_name(*row.condition) : "–", day, or_dash(row.container), or_dash(row.mix),
                    row.certain ? "yes" : "may", way_text(row)});
  }
  if (rows.empty()) return {};
  return '\n' + std::string(heading) + ":\n" +
         text_table({"tree", "name", "condition", "potted", "pot", "mix", "contains it", "way"}, rows, LastColumn::words);
}

std::string trait_text(TraitSort sort) {
  switch (sort) {
    case TraitSort::lot: return "lot";
    case TraitSort::mix: return "mix";
    case TraitSort::depth: return "depth";
    case TraitSort::day: return "day of repotting";
    case TraitSort::plan: return "plan";
    case TraitSort::removed_share: return "taken off";
  }
  return {};
}

std::string of(std::size_t count, std::size_t among) {
  return among == 0 ? "–" : std::to_string(count) + " of " + std::to_string(among);
}

}  // namespace

std::string recall_text(const RecallList& list, UnitSystem units) {
  std::string text = list.of.id + (list.title.empty() ? "" : ": " + list.title) + '\n';
  if (list.trees.empty()) text += "\nNo tree stands in it, as far as it was written down.\n";
  text += trees_section(list, Standing::now, "Trees that stand in it");
  text += trees_section(list, Standing::may_remain, "Trees repotted since, where some may remain");
  text += trees_section(list, Standing::was, "Trees that stood in it");
  std::vector<std::vector<std::string>> rows;
  for (const RecallRow& row : list.holders) {
    if (row.ref == list.of && !row.stock) continue;
    rows.push_back({row.ref.id, name_text(row), or_dash(row.day), or_dash(row.until), mass_text(row.stock, units), row.certain ? "yes" : "may",
                    way_text(row)});
  }
  if (!rows.empty()) text += "\nWhere it went or lies:\n" + text_table({"no.", "name", "since", "until", "in stock", "contains it", "way"}, rows, LastColumn::words);
  return text;
}

std::string shared_text(const SharedTraits& shared) {
  std::string text = "Trees:";
  for (const RecordRef& tree : shared.trees) text += ' ' + tree.id;
  text += "\n\n";
  std::vector<std::vector<std::string>> rows;
  for (const SharedTrait& trait : shared.traits) {
    // With several trees, what only one of them has is not shared.
    if (shared.trees.size() > 1 && trait.count < 2) continue;
    std::string count = of(trait.count, trait.among);
    if (trait.uncertain > 0) count += ", " + std::to_string(trait.uncertain) + " may";
    rows.push_back({trait_text(trait.sort), trait.title.empty() ? trait.value : trait.value + " " + trait.title, count,
                    of(trait.others, trait.others_among)});
  }
  text += rows.empty() ? "They share nothing that was written down.\n" : text_table({"trait", "value", "these trees", "all others"}, rows);
  return text +
         "\nFew trees prove nothing: what they share may be chance. Look first at the drain hole, whether the trunk stands too deep, at a\n"
         "loose tie, the smell of the root mass, and how it was watered.\n";
}

}  // namespace gritwright
