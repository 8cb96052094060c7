#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/models/kept_pot_tests.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "mix_learning.hpp"

namespace gritwright::desktop {

/// The pot a test names; empty where it names none.
[[nodiscard]] std::optional<Container> container_of(const OpenWorkbook& workbook, const PotTest& test);

/// "M-03" and 2 of "M-03/2"; the stem is the same for all versions of a mix.
[[nodiscard]] std::pair<std::string, int> stem_and_version(const std::string& id);

/// The tests that hold for a version of a mix: its own and those of other versions with the same recipe in substance, oldest first.
[[nodiscard]] std::vector<KeptPotTest> kept_pot_tests(const OpenWorkbook& workbook, const Stored<MixVersion>& version);

/// What pot tests taught about each mix of the record, newest first. A test counts in one of them only: versions of a mix with the same
/// recipe share their tests. A version whose constants came without their tests stands by itself.
[[nodiscard]] std::vector<MixCalibration> calibrations_of(const OpenWorkbook& workbook);

/// The same, worked out again only when mixes, pot tests or pots changed.
class CalibrationKeeper {
 public:
  [[nodiscard]] const std::vector<MixCalibration>& of(const OpenWorkbook& workbook);

 private:
  std::optional<std::int64_t> seen_revision_;
  std::vector<MixCalibration> calibrations_;
};

/// One test of the record beside what was foretold of it.
struct ComparedTest {
  std::string test;
  std::string mix;
  PredictedAndMeasured air;
};
/// All pot tests that measured the drained air, oldest first.
[[nodiscard]] std::vector<ComparedTest> compared_tests(const OpenWorkbook& workbook);

}  // namespace gritwright::desktop
