#pragma once
#include <map>
#include <string>
#include <vector>

#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// Trees by the pot they stand in: those alive whose last repotting went there.
[[nodiscard]] std::map<std::string, std::vector<std::string>> trees_by_pot(const OpenWorkbook& workbook);

/// Pots that no tree stands in and that were not given away, oldest first.
[[nodiscard]] std::vector<Stored<RecordedContainer>> free_pots(const OpenWorkbook& workbook);

}  // namespace gritwright::desktop
