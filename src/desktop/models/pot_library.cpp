#include "pot_library.hpp"

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

std::optional<Id<RecordedContainer>> pot_in_library(const OpenWorkbook& workbook, const Container& pot) {
  for (const auto& one : workbook.all<RecordedContainer>()) {
    if (one.record.container == pot) return one.id;
  }
  return std::nullopt;
}

}  // namespace gritwright::desktop
