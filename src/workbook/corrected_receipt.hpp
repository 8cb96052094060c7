#pragma once
#include <optional>

#include "gritwright/domain/bag.hpp"
#include "inside.hpp"

namespace gritwright {

/// The edit by which the entry of what came in with a bag says what the bag `now` says. Empty where that is the same dry mass or is not
/// known, where nothing or more than once came in, and once somebody counted what is left. Called inside a read or a transaction.
[[nodiscard]] std::optional<Edit> corrected_receipt(OpenWorkbook::Inside& inside, const RecordRef& bag, const Bag& was, const Bag& now);

}  // namespace gritwright
