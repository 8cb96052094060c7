#include <algorithm>
#include <array>
#include <limits>
#include <map>
#include <string>
#include <vector>

#include "gritwright/formats/number.hpp"
#include "sieve_test_formats.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

struct Cell {
  std::string text;
  int column = 1;  ///< 1-based, where the cell starts in its line
};

struct Line {
  std::string_view text;
  int number = 1;
};

std::vector<Line> lines_of(std::string_view text) {
  std::vector<Line> lines;
  int number = 1;
  while (!text.empty()) {
    const auto end = text.find('\n');
    std::string_view line = text.substr(0, end);
    if (line.ends_with('\r')) line.remove_suffix(1);
    lines.push_back({line, number++});
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return lines;
}

/// Cells of one line; a cell may stand in double quotes with the separator inside.
std::vector<Cell> cells_of(std::string_view line, char separator) {
  std::vector<Cell> cells;
  std::string cell;
  std::size_t start = 0;
  bool quoted = false;
  for (std::size_t i = 0; i <= line.size(); ++i) {
    const bool ends = i == line.size() || (line[i] == separator && !quoted);
    if (ends) {
      cells.push_back({std::string(trimmed(cell)), static_cast<int>(start) + 1});
      cell.clear();
      start = i + 1;
    } else if (line[i] == '"') {
      quoted = !quoted;
    } else {
      cell += line[i];
    }
  }
  while (!cells.empty() && cells.back().text.empty()) cells.pop_back();
  return cells;
}

constexpr const char* pan_prefix = "/pan_";
constexpr std::array columns{"aperture_mm", "retained_g", "gross_g", "tare_g", "retained_l", "crumbs_percent"};

std::string known_columns() {
  std::string all;
  for (const char* column : columns) all.append(all.empty() ? "" : ", ").append(column);
  return all;
}

class SieveCsvReader {
 public:
  explicit SieveCsvReader(std::string_view text) : lines_(lines_of(text)) {}

  Result<SieveTest> read() {
    const std::size_t header = find_header();
    if (header == lines_.size()) return Problem{"csv.no-header", place(1, 1), {}};
    read_header(lines_[header]);
    if (lines_.size() > most_sieve_rows) {
      report("sieve-test.too-many-rows", lines_[header].number, 1, {{"limit", static_cast<double>(most_sieve_rows)}});
      return problems_;
    }
    for (std::size_t i = 0; i < header; ++i) read_remark(lines_[i]);
    if (header_stands_)
      for (std::size_t i = header + 1; i < lines_.size(); ++i) read_row(lines_[i]);
    if (header_stands_ && !pan_line_) {
      report("sieve-test.no-pan", lines_.back().number, 1);
      unread("/pan_g");
    }
    if (!resolution_given_) test_.resolution = written_.resolution();
    check_record();
    if (!problems_.empty()) return problems_;
    return test_;
  }

 private:
  static Place place(int line, int column) {
    Place where;
    where.line = line;
    where.column = column;
    return where;
  }
  void report(const char* code, int line, int column, Facts facts = {}) {
    problems_.push_back({code, place(line, column), std::move(facts)});
  }

  /// Notes that what stands at `pointer` of the JSON form could not be read; the fault itself was told.
  void unread(const std::string& pointer) { told_.push_back(problem_at("number.not-a-number", pointer)); }

  /// The domain names the keys of the JSON form; here each stands at a cell or a remark.
  void check_record() {
    if (!header_stands_) return;
    for (Problem& problem : check_what_was_read(test_, told_)) {
      const auto found = places_.find(problem.where.pointer);
      problem.where = found == places_.end() ? place(first_row_line_, 1) : found->second;
      problems_.push_back(std::move(problem));
    }
  }

  static bool is_remark(std::string_view line) {
    line = trimmed(line);
    return line.starts_with('#') || line.starts_with("\"#");
  }
  std::size_t find_header() const {
    std::size_t i = 0;
    // A spreadsheet fills a remark or a blank line with separators.
    while (i < lines_.size() && (is_remark(lines_[i].text) || lines_[i].text.find_first_not_of(" \t,;\"") == std::string_view::npos)) ++i;
    return i;
  }

  void read_header(const Line& line) {
    separator_ = line.text.find(';') != std::string_view::npos ? ';' : line.text.find('\t') != std::string_view::npos ? '\t' : ',';
    mark_ = separator_ == ',' ? DecimalMark::point : DecimalMark::point_or_comma;
    const std::vector<Cell> cells = cells_of(line.text, separator_);
    width_ = cells.size();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const std::string name = in_small_letters(cells[i].text);
      if (std::ranges::find(columns, name) == columns.end())
        report("csv.unknown-column", line.number, cells[i].column, {{"column", cells[i].text}, {"known", known_columns()}});
      else if (!column_.emplace(name, i).second)
        report("csv.duplicate-column", line.number, cells[i].column, {{"column", cells[i].text}});
    }
    const bool gross = column_.contains("gross_g"), tare = column_.contains("tare_g");
    const int ways = int{column_.contains("retained_g")} + int{gross || tare} + int{column_.contains("retained_l")};
    if (!column_.contains("aperture_mm")) report("csv.missing-column", line.number, 1, {{"column", std::string("aperture_mm")}});
    if (ways == 0) report("csv.missing-column", line.number, 1, {{"column", std::string("retained_g")}});
    if (ways > 1) report("sieve-test.measured-twice", line.number, 1);
    if (gross != tare) report("csv.missing-column", line.number, 1, {{"column", std::string(gross ? "tare_g" : "gross_g")}});
    header_stands_ = problems_.empty();
  }

  void read_remark(const Line& line) {
    std::string_view text = trimmed(line.text);
    while (!text.empty() && (text.back() == separator_ || text.back() == '"' || text.back() == ' ')) text.remove_suffix(1);
    text.remove_prefix(std::min(text.find_first_not_of("\"# \t"), text.size()));
    const auto colon = text.find(':');
    if (text.empty() || colon == std::string_view::npos) return;
    const std::string key(trimmed(text.substr(0, colon)));
    const std::string value(trimmed(text.substr(colon + 1)));
    const int column = static_cast<int>(text.data() - line.text.data()) + 1;
    if (!remarks_.emplace(key, line.number).second) {
      report("key.duplicate", line.number, column, {{"key", key}});
      return;
    }
    const int value_column = column + static_cast<int>(colon) + 1;
    places_.emplace('/' + key, place(line.number, value_column));
    take_remark(key, value, line.number, value_column);
  }

  void take_remark(const std::string& key, const std::string& value, int line, int column) {
    const auto numeric = [&]() {
      const auto read = number({value, column}, line);
      if (!read) unread('/' + key);
      return read;
    };
    const auto weighed = [&]() {
      const auto mass = numeric();
      if (mass) written_.saw(written_decimals(value));
      return mass;
    };
    if (key == "material") {
      test_.material = value;
    } else if (key == "lot") {
      test_.lot = value;
    } else if (key == "date") {
      test_.date = value;
      if (!is_iso_day(value)) report("date.not-a-day", line, column, {{"text", value}});
    } else if (key == "basis") {
      if (value == "recovered")
        test_.basis = PercentBasis::recovered;
      else if (value != "original")
        report("sieve-test.unknown-basis", line, column, {{"text", value}});
    } else if (key == "dry_mass_g") {
      if (const auto mass = weighed()) test_.dry_mass = mass_g(*mass);
    } else if (key == "washed_dry_mass_g") {
      if (const auto mass = weighed()) test_.washed_dry_mass = mass_g(*mass);
    } else if (key == "moisture_percent") {
      if (const auto percent = numeric()) test_.moisture = Moisture(*percent / 100);
    } else if (key == "sieve_diameter_mm") {
      if (const auto diameter = numeric()) test_.sieve_diameter = length_mm(*diameter);
    } else if (key == "resolution_g") {
      resolution_given_ = true;
      if (const auto mass = numeric()) test_.resolution = mass_g(*mass);
    } else if (key == "particle_density_g_l") {
      if (const auto density = numeric()) test_.particle_density = particle_g_l(*density);
    } else if (key == "bulk_density_g_l") {
      if (const auto density = numeric()) test_.bulk_density = bulk_g_l(*density);
    } else {
      report("key.unknown", line, column, {{"key", key}});
    }
  }

  std::optional<double> number(const Cell& cell, int line) {
    const Result<double> value = parse_number(cell.text, mark_);
    if (value) return *value;
    for (const Problem& problem : value.problems()) report(problem.code.c_str(), line, cell.column, problem.facts);
    return std::nullopt;
  }
  std::optional<double> number_in(const std::vector<Cell>& cells, const char* column, int line) {
    const std::size_t index = column_.at(column);
    if (index < cells.size()) return number(cells[index], line);
    report("number.missing", line, cells.back().column, {{"column", std::string(column)}});
    return std::nullopt;
  }
  std::optional<double> weighing(const std::vector<Cell>& cells, const char* column, int line) {
    const auto value = number_in(cells, column, line);
    if (value) written_.saw(written_decimals(cells[column_.at(column)].text));
    return value;
  }

  /// What stayed on one sieve or in the pan, 0 where it can't be read. `prefix` is the row's in the JSON form.
  Retained retained_in(const std::vector<Cell>& cells, int line, const std::string& prefix) {
    if (column_.contains("retained_l")) {
      const auto volume = number_in(cells, "retained_l", line);
      if (!volume) unread(prefix + json_key("retained_l", prefix));
      return loose_l(volume.value_or(0));
    }
    if (column_.contains("gross_g")) {
      const auto gross = weighing(cells, "gross_g", line);
      const auto tare = weighing(cells, "tare_g", line);
      if (!gross) unread(prefix + "gross_g");
      if (!tare) unread(prefix + "tare_g");
      return GrossTare{mass_g(gross.value_or(tare.value_or(0))), mass_g(tare.value_or(0))};
    }
    const auto mass = weighing(cells, "retained_g", line);
    if (!mass) unread(prefix + json_key("retained_g", prefix));
    return mass_g(mass.value_or(0));
  }

  MassShare crumbs_in(const std::vector<Cell>& cells, int line, const std::string& prefix) {
    const auto column = column_.find("crumbs_percent");
    if (column == column_.end() || column->second >= cells.size() || cells[column->second].text.empty()) return MassShare(0);
    const auto percent = number(cells[column->second], line);
    if (!percent) unread(prefix + "crumbs_percent");
    return MassShare(percent.value_or(0) / 100);
  }

  void read_row(const Line& line) {
    const std::vector<Cell> cells = cells_of(line.text, separator_);
    if (cells.empty()) return;
    const std::size_t aperture_column = column_.at("aperture_mm");
    const bool is_pan = aperture_column < cells.size() && in_small_letters(cells[aperture_column].text) == "pan";
    if (cells.size() > width_) {
      report("csv.too-many-cells", line.number, cells[width_].column,
             {{"found", static_cast<double>(cells.size())}, {"expected", static_cast<double>(width_)}});
      unread(is_pan ? "/pan_g" : "/retained");
      if (is_pan) pan_line_ = line.number;
      return;
    }
    if (pan_line_) {
      report("csv.row-after-pan", line.number, 1, {{"pan_line", static_cast<double>(*pan_line_)}});
      return;
    }
    first_row_line_ = std::min(first_row_line_, line.number);
    if (is_pan) {
      pan_line_ = line.number;
      test_.pan = retained_in(cells, line.number, pan_prefix);
      test_.pan_crumbs = crumbs_in(cells, line.number, pan_prefix);
      remember_places(cells, line.number, pan_prefix);
      return;
    }
    const std::string prefix = "/retained/" + std::to_string(test_.rows.size()) + '/';
    const auto aperture = number_in(cells, "aperture_mm", line.number);
    if (!aperture) unread(prefix + "aperture_mm");
    const Retained retained = retained_in(cells, line.number, prefix);
    test_.rows.push_back({aperture_mm(aperture.value_or(0)), retained, crumbs_in(cells, line.number, prefix)});
    remember_places(cells, line.number, prefix);
  }

  static std::string json_key(const std::string& column, const std::string& prefix) {
    const bool in_pan = prefix == pan_prefix;
    if (column == "retained_g") return in_pan ? "g" : "mass_g";
    return column == "retained_l" && in_pan ? "l" : column;
  }

  void remember_places(const std::vector<Cell>& cells, int line, const std::string& prefix) {
    for (const auto& [column, index] : column_)
      if (index < cells.size()) places_.emplace(prefix + json_key(column, prefix), place(line, cells[index].column));
  }

  std::vector<Line> lines_;
  char separator_ = ',';
  DecimalMark mark_ = DecimalMark::point;
  std::size_t width_ = 0;
  std::map<std::string, std::size_t> column_;
  std::map<std::string, int> remarks_;
  std::map<std::string, Place> places_;  ///< by the pointer of the JSON form
  Problems told_;                        ///< what of the JSON form could not be read
  int first_row_line_ = std::numeric_limits<int>::max();
  bool header_stands_ = false;
  bool resolution_given_ = false;
  std::optional<int> pan_line_;
  WrittenResolution written_;
  SieveTest test_;
  Problems problems_;
};

}  // namespace

Result<SieveTest> read_sieve_test_csv(std::string_view text) { return SieveCsvReader(without_byte_order_mark(text)).read(); }

}  // namespace gritwright
