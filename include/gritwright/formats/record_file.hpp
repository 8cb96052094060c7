#pragma once
#include <string>
#include <string_view>

#include "gritwright/domain/record.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// The format a record of `kind` is written in now ("gritwright/bag/1").
[[nodiscard]] std::string record_format(RecordKind kind);

/// One line of JSON with its format in front. What is absent or at its default is left out.
[[nodiscard]] std::string write_record(const Record& record);

/// Reads a record of `kind`. Only the form is judged: a half-typed record is a record; `check(Record)` judges what it says.
/// Errors: those of the strict JSON door, format.unknown, record.unknown-word, record.not-whole, record.not-a-reference,
/// date.not-a-day.
[[nodiscard]] Result<Record> read_record(RecordKind kind, std::string_view text, std::string file_name);

/// The same for a record whose format says what it is.
[[nodiscard]] Result<Record> read_record(std::string_view text, std::string file_name);

}  // namespace gritwright
