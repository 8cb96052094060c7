#pragma once
#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// What an open workbook says of itself: SQLite's integrity check, records that can't be read, indexes and ledger that disagree with
/// the records (file.damaged, workbook.record-unreadable, workbook.index-differs).
[[nodiscard]] Problems check_content(const OpenWorkbook& workbook);

/// Draws lists, search, links and ledger anew from the records, which stay as they are; of a record that can't be read they stay too.
/// Errors: those that stand in the way of any change, as `OpenWorkbook::apply` has them.
[[nodiscard]] Result<Done> index_again(OpenWorkbook& workbook);

/// What is not wrong with the file but with what was written down: records that would be refused today (workbook.record-at-odds),
/// names of records that never were (import.names-unknown), stock below nothing (stock.below-zero).
[[nodiscard]] Notes check_sense(const OpenWorkbook& workbook);

}  // namespace gritwright
