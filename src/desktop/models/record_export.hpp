#pragma once
#include <QString>
#include <optional>

#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

struct WrittenRecords {
  Problems left_out;  ///< export.left-out, of each that can't be read
};

/// Writes all records of `kind` as a list (CSV), or without one the whole record as JSON, so that the file is there whole or not at all.
/// Error: file.write-failed.
[[nodiscard]] Result<WrittenRecords> write_records(const OpenWorkbook& workbook, const QString& path, std::optional<RecordKind> kind);

}  // namespace gritwright::desktop
