#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/record.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// The columns of a list of `kind`, the id first. Bags, sieve tests, containers and trees can be read back.
[[nodiscard]] std::vector<std::string> csv_columns(RecordKind kind);

/// UTF-8 with a heading; a sieve test has one row for each sieve and the pan. Cells that a spreadsheet would run are made harmless.
/// What has no column (histories, bottom layers, root-mass plans) stays in the JSON form.
[[nodiscard]] std::string write_records_csv(RecordKind kind, const std::vector<IdentifiedRecord>& records);

/// `here` with what a row of a list says of it. What the list has no columns for stays; what a row says of a day in a history takes that
/// day's place or goes in among the others. Errors: those of reading the record that comes of it.
[[nodiscard]] Result<Record> with_listed(const Record& here, const IdentifiedRecord& row);

/// What a list holds: the rows that are whole, and the problems of all others, each with line and column.
struct CsvRecords {
  RecordKind kind = RecordKind::bag;
  std::vector<IdentifiedRecord> records;
  Problems problems;
};

/// True for a list whose heading has a column of `kind` that no other list has.
[[nodiscard]] std::optional<RecordKind> kind_of_csv(std::string_view text);

/// Reads a list of bags, containers, sieve tests or trees. Columns may stand in any order, most may be missing; a column that is not
/// known is refused. A file with one sieve test (aperture_mm, retained_g) is a list of one. Each record is also held against what a
/// record of its kind must fulfil. Errors of the whole file fail it; faults of rows come back beside the good ones.
[[nodiscard]] Result<CsvRecords> read_records_csv(RecordKind kind, std::string_view text, const std::string& file_name);

}  // namespace gritwright
