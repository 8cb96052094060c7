#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/result.hpp"

namespace gritwright {

/// One cell as a spreadsheet may open it: a text that begins with = + - @, a tab or a carriage return gets an apostrophe in front,
/// unless it is a plain number; quoted where it must be.
[[nodiscard]] std::string csv_cell(std::string_view text);

/// A line of cells, with its end.
[[nodiscard]] std::string csv_row(const std::vector<std::string>& cells);

struct CsvCell {
  std::string text;  ///< trimmed, without quotes and without the apostrophe that csv_cell puts in front
  int column = 1;    ///< 1-based, in bytes, where the cell starts in its line
};
struct CsvRow {
  int line = 1;  ///< 1-based, where the row starts
  std::vector<CsvCell> cells;
};
struct CsvTable {
  char separator = ',';  ///< with ; and tab, decimals may have a comma
  CsvRow heading;
  std::vector<CsvRow> rows;  ///< without empty ones
};

/// Reads any table: comma, semicolon or tab as the heading has it; quotes with doubled quotes and line ends inside; a byte order
/// mark and CRLF. Errors: those of a text that is none, csv.no-header, csv.duplicate-column, csv.too-many-cells, csv.quote-open.
[[nodiscard]] Result<CsvTable> read_csv(std::string_view text, const std::string& file_name);

}  // namespace gritwright
