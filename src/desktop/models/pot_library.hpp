#pragma once
#include <QString>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "bench_state.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// Trees by the pot they stand in: those alive whose last repotting went there.
[[nodiscard]] std::map<std::string, std::vector<std::string>> trees_by_pot(const OpenWorkbook& workbook);

/// Pots that no tree stands in and that were not given away, oldest first.
[[nodiscard]] std::vector<Stored<RecordedContainer>> free_pots(const OpenWorkbook& workbook);

/// A pot of the library as the bench has it.
struct KeptPot {
  QString id;
  QString name;
  PotSheet sheet;
};

/// The newest two hundred pots that were not given away, oldest first.
[[nodiscard]] std::vector<KeptPot> pots_for_bench(const OpenWorkbook& workbook);

/// The pot of the library that equals a plan's: plans hold their pots by value. Empty where it was changed since.
[[nodiscard]] std::optional<Id<RecordedContainer>> pot_in_library(const OpenWorkbook& workbook, const Container& pot);

}  // namespace gritwright::desktop
