#pragma once
#include "gritwright/domain/material.hpp"
#include "models/record_book.hpp"

namespace gritwright::desktop {

/// Fills an empty record with the invented nursery of demo-data. What could not be read is returned.
[[nodiscard]] Problems fill_with_demonstration(RecordBook& book, const Catalogue& catalogue);

}  // namespace gritwright::desktop
