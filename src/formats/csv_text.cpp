#include "gritwright/formats/csv_text.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "gritwright/formats/number.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

/// Signs at which a spreadsheet takes a cell for a formula.
constexpr std::string_view formula_signs = "=+-@\t\r";

/// An apostrophe in front of a formula sign, or of such an apostrophe, is the guard that csv_cell writes.
bool is_guarded(std::string_view text) {
  return text.size() > 1 && text[0] == '\'' && (text[1] == '\'' || formula_signs.find(text[1]) != std::string_view::npos);
}

std::string without_guard(std::string_view text) {
  if (is_guarded(text)) text.remove_prefix(1);
  return std::string(text);
}

bool is_blank(const CsvRow& row) {
  return std::ranges::all_of(row.cells, [](const CsvCell& cell) { return cell.text.empty(); });
}

class Splitter {
 public:
  Splitter(std::string_view text, char separator, std::string file_name)
      : text_(text), separator_(separator), file_name_(std::move(file_name)) {}

  Problems problems;

  std::vector<CsvRow> rows() {
    std::vector<CsvRow> rows;
    while (offset_ < text_.size()) {
      CsvRow row = next();
      if (!is_blank(row)) rows.push_back(std::move(row));
    }
    return rows;
  }

 private:
  CsvRow next() {
    CsvRow row;
    row.line = line_;
    for (bool more = true; more;) {
      row.cells.push_back(cell(more));
    }
    return row;
  }

  CsvCell cell(bool& more) {
    CsvCell cell;
    cell.column = static_cast<int>(offset_ - line_start_) + 1;
    const std::size_t first = std::min(text_.find_first_not_of(' ', offset_), text_.size());
    if (first < text_.size() && text_[first] == '"') {
      offset_ = first + 1;
      quoted(cell);
    }
    const std::size_t end = std::min(text_.find_first_of(std::string{separator_, '\n'}, offset_), text_.size());
    cell.text += trimmed(text_.substr(offset_, end - offset_));
    cell.text = without_guard(cell.text);
    more = end < text_.size() && text_[end] == separator_;
    offset_ = std::min(end + 1, text_.size());
    if (!more) {
      ++line_;
      line_start_ = offset_;
    }
    return cell;
  }

  void quoted(CsvCell& cell) {
    const int opened_line = line_;
    for (; offset_ < text_.size(); ++offset_) {
      const char sign = text_[offset_];
      if (sign == '"') {
        if (offset_ + 1 == text_.size() || text_[offset_ + 1] != '"') {
          ++offset_;
          return;
        }
        ++offset_;
      } else if (sign == '\n') {
        ++line_;
        line_start_ = offset_ + 1;
      }
      cell.text += sign;
    }
    Place place;
    place.file = file_name_;
    place.line = opened_line;
    place.column = cell.column;
    problems.push_back({"csv.quote-open", std::move(place), {}});
  }

  std::string_view text_;
  char separator_;
  std::string file_name_;
  std::size_t offset_ = 0;
  std::size_t line_start_ = 0;
  int line_ = 1;
};

char separator_of(std::string_view heading) {
  if (heading.find(';') != std::string_view::npos) return ';';
  return heading.find('\t') != std::string_view::npos ? '\t' : ',';
}

}  // namespace

std::string csv_cell(std::string_view text) {
  const bool risky = !text.empty() && formula_signs.find(text.front()) != std::string_view::npos && !parse_number(text).ok();
  std::string cell(risky || is_guarded(text) ? "'" : "");
  cell += text;
  const bool blank_at_end = !cell.empty() && (cell.front() == ' ' || cell.back() == ' ');
  if (!blank_at_end && cell.find_first_of(",;\"\n\r\t") == std::string::npos) return cell;
  std::string quoted = "\"";
  for (const char sign : cell) {
    if (sign == '"') quoted += '"';
    quoted += sign;
  }
  return quoted + '"';
}

std::string csv_row(const std::vector<std::string>& cells) {
  std::string row;
  for (const std::string& cell : cells) {
    if (&cell != &cells.front()) row += ',';
    row += csv_cell(cell);
  }
  row += "\r\n";
  return row;
}

Result<CsvTable> read_csv(std::string_view text, const std::string& file_name) {
  if (Problems problems = check_text(text); !problems.empty()) return placed_in(std::move(problems), file_name);
  text = without_byte_order_mark(text);
  const std::size_t start = text.find_first_not_of(" \t\r\n,;");
  CsvTable table;
  table.separator = separator_of(text.substr(std::min(start, text.size()), text.find('\n', start) - std::min(start, text.size())));
  Splitter splitter(text, table.separator, file_name);
  std::vector<CsvRow> rows = splitter.rows();
  Problems problems = std::move(splitter.problems);
  const auto report = [&](const char* code, int line, int column, Facts facts) {
    Place place;
    place.file = file_name;
    place.line = line;
    place.column = column;
    problems.push_back({code, std::move(place), std::move(facts)});
  };
  if (rows.empty()) {
    report("csv.no-header", 1, 1, {});
    return problems;
  }
  table.heading = std::move(rows.front());
  rows.erase(rows.begin());
  while (table.heading.cells.back().text.empty()) table.heading.cells.pop_back();
  std::set<std::string> names;
  for (const CsvCell& cell : table.heading.cells)
    if (!names.insert(cell.text).second) report("csv.duplicate-column", table.heading.line, cell.column, {{"column", cell.text}});
  for (CsvRow& row : rows) {
    while (!row.cells.empty() && row.cells.back().text.empty()) row.cells.pop_back();
    if (row.cells.size() > table.heading.cells.size())
      report("csv.too-many-cells", row.line, row.cells[table.heading.cells.size()].column,
             {{"found", static_cast<double>(row.cells.size())}, {"expected", static_cast<double>(table.heading.cells.size())}});
  }
  if (!problems.empty()) return problems;
  table.rows = std::move(rows);
  return table;
}

}  // namespace gritwright
