#pragma once
#include <optional>
#include <string>

#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// Whether a mix, a fraction or a bin of the record has grain of this bag: what it is made of can't be another material any more.
[[nodiscard]] bool has_grain_elsewhere(const OpenWorkbook& workbook, const RecordRef& bag);

/// A bag that was received as another material than it is: the bag and its sieve tests, in one step. Empty where it is that material.
[[nodiscard]] std::optional<Change> corrected_material(const OpenWorkbook& workbook, const Stored<Bag>& bag, const std::string& material);

}  // namespace gritwright::desktop
