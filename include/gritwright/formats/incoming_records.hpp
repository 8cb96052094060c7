#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/formats/exchange_file.hpp"

namespace gritwright {

/// The records of a file, and the problems of the rows that are none.
struct IncomingRecords {
  std::vector<IdentifiedRecord> records;
  Problems problems;
};

/// Reads what another program or workbook gives: JSON as `read_exchange` does, else a list as `read_records_csv` does, of `kind` or of
/// what its columns say. Errors: theirs, and import.no-kind where a list's columns don't tell what it holds.
[[nodiscard]] Result<IncomingRecords> read_incoming(std::string_view text, const std::string& file_name, std::optional<RecordKind> kind = {},
                                                    const ComponentSources& sources = {});

}  // namespace gritwright
