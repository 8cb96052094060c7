#include "pot_test_records.hpp"

namespace gritwright::desktop {

std::optional<Container> container_of(const OpenWorkbook& workbook, const PotTest& test) {
  const auto stored = test.container ? workbook.find(*test.container) : std::nullopt;
  return stored ? std::optional(stored->record.container) : std::nullopt;
}

std::vector<KeptPotTest> kept_pot_tests(const OpenWorkbook& workbook, const Id<MixVersion>& mix) {
  std::vector<KeptPotTest> tests;
  for (const auto& stored : workbook.all<PotTest>()) {
    if (stored.record.mix != mix) continue;
    if (auto test = kept_pot_test(stored.record, container_of(workbook, stored.record))) tests.push_back(std::move(*test));
  }
  return tests;
}

std::vector<ComparedTest> compared_tests(const OpenWorkbook& workbook) {
  std::vector<ComparedTest> compared;
  for (const auto& stored : workbook.all<PotTest>()) {
    if (!stored.record.mix) continue;
    const auto version = workbook.find(*stored.record.mix);
    const auto test = version ? kept_pot_test(stored.record, container_of(workbook, stored.record)) : std::nullopt;
    if (!test) continue;
    const auto tested = tested_mix(version->record.mix, {&*test, 1});
    if (tested && !tested->air.empty()) compared.push_back({stored.id.text, version->id.text, tested->air.front()});
  }
  return compared;
}

}  // namespace gritwright::desktop
