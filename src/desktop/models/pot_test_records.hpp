#pragma once
#include <vector>

#include "gritwright/models/kept_pot_tests.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// The pot a test names; empty where it names none.
[[nodiscard]] std::optional<Container> container_of(const OpenWorkbook& workbook, const PotTest& test);

/// The tests of a mix that can be compared, oldest first.
[[nodiscard]] std::vector<KeptPotTest> kept_pot_tests(const OpenWorkbook& workbook, const Id<MixVersion>& mix);

/// One test of the record beside what was foretold of it.
struct ComparedTest {
  std::string test;
  std::string mix;
  PredictedAndMeasured air;
};
/// All pot tests that measured the drained air, oldest first.
[[nodiscard]] std::vector<ComparedTest> compared_tests(const OpenWorkbook& workbook);

}  // namespace gritwright::desktop
