#pragma once
#include "gritwright/domain/record.hpp"
#include "gritwright/result.hpp"
#include "json_document.hpp"

namespace gritwright {

/// Reads a record of `kind` from JSON that was parsed already; pointers start at the record.
[[nodiscard]] Result<Record> read_record_value(RecordKind kind, const JsonValue& value);

}  // namespace gritwright
