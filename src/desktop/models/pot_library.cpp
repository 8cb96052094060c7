#include "pot_library.hpp"

#include <algorithm>
#include <utility>

#include "sheets_from_records.hpp"
#include "text.hpp"

namespace gritwright::desktop {

std::map<std::string, std::vector<std::string>> trees_by_pot(const OpenWorkbook& workbook) {
  std::map<std::string, std::vector<std::string>> trees;
  for (const Stored<Tree>& tree : workbook.all<Tree>()) {
    const Repotting* last = stands_in(tree.record);
    if (last == nullptr || !last->container || condition_now(tree.record) == Condition::dead) continue;
    trees[last->container->text].push_back(tree.id.text);
  }
  return trees;
}

std::vector<Stored<RecordedContainer>> free_pots(const OpenWorkbook& workbook) {
  const auto used = trees_by_pot(workbook);
  std::vector<Stored<RecordedContainer>> pots = workbook.all<RecordedContainer>();
  std::erase_if(pots, [&](const Stored<RecordedContainer>& pot) { return pot.record.given_away || used.contains(pot.id.text); });
  return pots;
}

std::vector<KeptPot> pots_for_bench(const OpenWorkbook& workbook) {
  constexpr std::size_t most_choices = 200;  // more are no list to choose from
  ListFilter newest;
  newest.limit = most_choices;
  std::vector<KeptPot> pots;
  for (const RecordLine& line : workbook.list(RecordKind::container, newest)) {
    const auto one = workbook.find(Id<RecordedContainer>{line.ref.id});
    if (!one || one->record.given_away) continue;
    pots.push_back({to_qt(one->id.text), to_qt(one->record.container.name), sheet_of(one->record.container)});
  }
  std::ranges::reverse(pots);
  return pots;
}

std::optional<Id<RecordedContainer>> pot_in_library(const OpenWorkbook& workbook, const Container& pot) {
  for (const auto& one : workbook.all<RecordedContainer>()) {
    if (one.record.container == pot) return one.id;
  }
  return std::nullopt;
}

}  // namespace gritwright::desktop
