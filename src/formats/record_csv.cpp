#include "gritwright/formats/record_csv.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <utility>

#include "csv_columns.hpp"
#include "gritwright/formats/csv_text.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

using ListJson = nlohmann::ordered_json;

/// Columns that a sieve and the pan have in their own row.
constexpr std::array<std::string_view, 6> sieve_columns{"aperture_mm", "retained_g", "gross_g", "tare_g", "retained_l", "crumbs_percent"};

constexpr std::string_view retained_place = "/test/retained";
constexpr std::string_view pan_crumbs_place = "/test/pan_crumbs_percent";

struct SectionSides {
  std::string_view length;
  std::string_view width;
};
constexpr std::array sides_of_sections{SectionSides{"/container/rim/length_cm", "/container/rim/width_cm"},
                                       SectionSides{"/container/middle/length_cm", "/container/middle/width_cm"},
                                       SectionSides{"/container/base/length_cm", "/container/base/width_cm"}};

/// A round pot or one of equal sides is measured once: its width is its length.
bool has_one_width(const ListJson& container) {
  const std::string shape = container.value("shape", std::string());
  return shape == "round" || shape == "drum" || shape == "hexagonal" || shape == "octagonal";
}

std::string cell_of(const ListJson& value) {
  if (value.is_string()) return value.get<std::string>();
  if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
  return value.is_null() ? std::string() : value.dump();
}

/// The cell at `pointer`; the last item of a history where the pointer says 0.
std::string cell_at(const ListJson& root, std::string_view pointer) {
  const ListJson* at = &root;
  while (!pointer.empty()) {
    const auto end = pointer.find('/', 1);
    const std::string key(pointer.substr(1, end == std::string_view::npos ? end : end - 1));
    pointer = end == std::string_view::npos ? std::string_view() : pointer.substr(end);
    if (at->is_array()) {
      if (at->empty()) return {};
      at = &at->back();
    } else {
      const auto found = at->find(key);
      if (found == at->end()) return {};
      at = &*found;
    }
  }
  return cell_of(*at);
}

std::string member(const ListJson& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() ? std::string() : cell_of(*found);
}

std::vector<std::string> sieve_cells(const ListJson& row, const std::string& aperture, const std::string& crumbs) {
  return {aperture, member(row, "mass_g"), member(row, "gross_g"), member(row, "tare_g"), member(row, "retained_l"), crumbs};
}

class RowReader {
 public:
  RowReader(RecordKind kind, const CsvTable& table, const std::string& file_name, Problems& problems)
      : kind_(kind), table_(table), file_name_(file_name), problems_(problems) {
    for (const CsvColumn& column : columns_of(kind)) known_.emplace(column.name, &column);
    for (std::size_t i = 0; i < table.heading.cells.size(); ++i) index_.emplace(lower(table.heading.cells[i].text), i);
  }

  /// Refuses columns that are neither the id, nor of the kind, nor `more`.
  void check_heading(std::span<const std::string_view> more) {
    std::string all = "id";
    for (const CsvColumn& column : columns_of(kind_)) all.append(", ").append(column.name);
    for (const std::string_view column : more) all.append(", ").append(column);
    for (const CsvCell& cell : table_.heading.cells) {
      const std::string name = lower(cell.text);
      if (name == "id" || known_.contains(name) || std::ranges::find(more, name) != more.end()) continue;
      report("csv.unknown-column", table_.heading.line, cell.column, {{"column", cell.text}, {"known", all}});
    }
  }

  [[nodiscard]] const CsvCell* cell(const CsvRow& row, std::string_view column) const {
    const auto found = index_.find(std::string(column));
    if (found == index_.end() || found->second >= row.cells.size() || row.cells[found->second].text.empty()) return nullptr;
    return &row.cells[found->second];
  }
  [[nodiscard]] std::string text(const CsvRow& row, std::string_view column) const {
    const CsvCell* found = cell(row, column);
    return found == nullptr ? std::string() : found->text;
  }

  /// The row's cells as the record's JSON. Faults are reported at their cells.
  [[nodiscard]] ListJson json_of(const CsvRow& row, RecordKind kind) {
    ListJson json{{"format", record_format(kind)}};
    for (const auto& [name, column] : known_) {
      const CsvCell* found = cell(row, name);
      if (found == nullptr) continue;
      if (auto value = value_of(*column, *found, row.line)) json[ListJson::json_pointer(std::string(column->pointer))] = *std::move(value);
    }
    return json;
  }

  /// Problems of a record, each put at the cell it concerns.
  void place(Problems found, const CsvRow& row) {
    for (Problem& problem : found) {
      const CsvColumn* best = nullptr;
      for (const auto& [name, column] : known_) {
        if (!index_.contains(name)) continue;
        const bool concerns = column->pointer == problem.where.pointer || column->pointer.starts_with(problem.where.pointer + "/");
        if (concerns && (best == nullptr || index_.at(name) < index_.at(std::string(best->name)))) best = column;
      }
      const std::size_t index = best == nullptr ? 0 : index_.at(std::string(best->name));
      const int column = index < row.cells.size() ? row.cells[index].column : 1;
      report(problem.code.c_str(), row.line, column, std::move(problem.facts));
    }
  }

  void report(const char* code, int line, int column, Facts facts = {}) {
    problems_.push_back({code, where(line, column), std::move(facts)});
  }
  /// The places in a record that the heading names.
  [[nodiscard]] std::vector<std::string_view> listed() const {
    std::vector<std::string_view> places;
    for (const auto& [name, column] : known_)
      if (index_.contains(name)) places.push_back(column->pointer);
    return places;
  }
  [[nodiscard]] bool lists(std::string_view place) const {
    const auto places = listed();
    return std::ranges::find(places, place) != places.end();
  }
  [[nodiscard]] bool has_column(std::string_view name) const { return index_.contains(std::string(name)); }
  [[nodiscard]] Place where(int line, int column) const {
    Place place;
    place.file = file_name_;
    place.line = line;
    place.column = column;
    return place;
  }

  static std::string lower(std::string text) {
    for (char& sign : text)
      if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    return text;
  }

 private:
  std::optional<ListJson> value_of(const CsvColumn& column, const CsvCell& cell, int line) {
    if (column.sort == CsvColumn::Sort::text) return ListJson(cell.text);
    if (column.sort == CsvColumn::Sort::flag) {
      const std::string word = lower(cell.text);
      if (word == "yes" || word == "true" || word == "1") return ListJson(true);
      if (word == "no" || word == "false" || word == "0") return ListJson(false);
      report("record.unknown-word", line, cell.column, {{"text", cell.text}, {"expected", std::string("yes, no")}});
      return std::nullopt;
    }
    const Result<double> value = parse_number(cell.text, table_.separator == ',' ? DecimalMark::point : DecimalMark::point_or_comma);
    if (value) return ListJson(*value);
    report(value.problems().front().code.c_str(), line, cell.column, value.problems().front().facts);
    // Something in its place, so that the rest of the row can be judged too.
    return ListJson(1);
  }

  RecordKind kind_;
  const CsvTable& table_;
  const std::string& file_name_;
  Problems& problems_;
  std::map<std::string, const CsvColumn*, std::less<>> known_;
  std::map<std::string, std::size_t> index_;
};

/// The record with something in the place of what was missing or could not be read, so that the rest of the row can be judged too.
Result<Record> read_without_faults(RecordKind kind, ListJson json, const Problems& faults, const std::string& file_name) {
  for (const Problem& fault : faults) {
    if (fault.code == "key.missing") {
      const auto key = fault.facts.find("key");
      if (key != fault.facts.end()) json[ListJson::json_pointer(fault.where.pointer)][std::get<std::string>(key->second)] = "-";
    } else if (fault.code == "date.not-a-day") {
      json[ListJson::json_pointer(fault.where.pointer)] = "2000-01-01";
    }
  }
  return read_record(kind, json.dump(), file_name);
}

/// One record a row.
CsvRecords read_rows(RecordKind kind, const CsvTable& table, const std::string& file_name) {
  CsvRecords answer{kind, {}, {}};
  RowReader reader(kind, table, file_name, answer.problems);
  reader.check_heading({});
  if (!answer.problems.empty()) return answer;
  for (const CsvRow& row : table.rows) {
    const std::size_t before = answer.problems.size();
    ListJson json = reader.json_of(row, kind);
    Problems unless_here;
    if (kind == RecordKind::container && json.contains("container"))
      for (const auto& [length, width] : sides_of_sections) {
        const ListJson::json_pointer from{std::string(length)};
        const ListJson::json_pointer to{std::string(width)};
        if (!json.contains(from) || json.contains(to)) continue;
        if (!has_one_width(json["container"])) {
          // A pot that is here already may have the width that the list has no column for.
          if (reader.text(row, "id").empty() || reader.lists(width)) continue;
          unless_here.push_back({"key.missing", reader.where(row.line, 1), {{"key", to.back()}}});
        }
        json[to] = json[from];
      }
    Result<Record> record = read_record(kind, json.dump(), file_name);
    reader.place(record.problems(), row);
    if (!record) record = read_without_faults(kind, std::move(json), record.problems(), file_name);
    if (record) reader.place(check(*record), row);
    if (answer.problems.size() > before || !record) continue;
    answer.records.push_back({{kind, reader.text(row, "id")}, std::move(record).value(), reader.where(row.line, 1), reader.listed(), std::move(unless_here)});
  }
  return answer;
}

/// Rows of sieves up to each pan make a test; what concerns the whole test stands in its first row.
class SieveListReader {
 public:
  SieveListReader(const CsvTable& table, const std::string& file_name)
      : table_(table), file_name_(file_name), reader_(RecordKind::sieve_test, table, file_name, answer_.problems) {}

  CsvRecords read() {
    answer_.kind = RecordKind::sieve_test;
    reader_.check_heading(sieve_columns);
    if (!answer_.problems.empty()) return std::move(answer_);
    std::vector<const CsvRow*> group;
    for (const CsvRow& row : table_.rows) {
      group.push_back(&row);
      if (RowReader::lower(reader_.text(row, "aperture_mm")) != "pan") continue;
      read_test(group);
      group.clear();
    }
    if (!group.empty()) reader_.report("sieve-test.no-pan", group.back()->line, 1);
    return std::move(answer_);
  }

 private:
  /// As the text of a file with one test, whose own reader judges it.
  void read_test(const std::vector<const CsvRow*>& group) {
    const CsvRow& first = *group.front();
    std::vector<std::string_view> measured;
    for (const std::string_view column : sieve_columns)
      if (std::ranges::any_of(group, [&](const CsvRow* row) { return reader_.cell(*row, column) != nullptr; })) measured.push_back(column);
    std::string text;
    std::vector<int> lines{0};
    constexpr std::array<std::string_view, 9> keys{"date",         "dry_mass_g", "washed_dry_mass_g",    "moisture_percent", "sieve_diameter_mm",
                                                   "basis",        "resolution_g", "particle_density_g_l", "bulk_density_g_l"};
    for (const std::string_view key : keys) {
      const std::string cell = reader_.text(first, key);
      if (cell.empty() || cell.find('\n') != std::string::npos) continue;
      text += "# " + std::string(key) + ": " + cell + "\n";
      lines.push_back(first.line);
    }
    const auto add_row = [&](auto cell_of_column, int line) {
      for (std::size_t i = 0; i < measured.size(); ++i) text += (i == 0 ? "" : std::string(1, table_.separator)) + cell_of_column(measured[i]);
      text += '\n';
      lines.push_back(line);
    };
    add_row([](std::string_view column) { return std::string(column); }, table_.heading.line);
    for (const CsvRow* row : group) add_row([&](std::string_view column) { return reader_.text(*row, column); }, row->line);

    const std::size_t before = answer_.problems.size();
    Result<SieveTest> test = read_sieve_test(text, file_name_);
    for (const Problem& problem : test.problems()) {
      const auto line = static_cast<std::size_t>(problem.where.line.value_or(1));
      reader_.report(problem.code.c_str(), lines[std::min(line, lines.size() - 1)], 1, problem.facts);
    }
    ListJson rest = reader_.json_of(first, RecordKind::sieve_test);
    rest.erase("test");
    rest["test"]["pan"] = {{"mass_g", 0}};
    Result<Record> record = read_record(RecordKind::sieve_test, rest.dump(), file_name_);
    reader_.place(record.problems(), first);
    if (answer_.problems.size() > before) return;
    Record whole = std::move(record).value();
    auto& recorded = std::get<RecordedSieveTest>(whole);
    recorded.test = std::move(test).value();
    if (const CsvCell* material = reader_.cell(first, "material")) recorded.test.material = material->text;
    if (const CsvCell* lot = reader_.cell(first, "lot")) recorded.test.lot = lot->text;
    reader_.place(check(whole), first);
    if (answer_.problems.size() > before) return;
    IdentifiedRecord read;
    read.ref = {RecordKind::sieve_test, reader_.text(first, "id")};
    read.record = std::move(whole);
    read.from = reader_.where(first.line, 1);
    read.listed = reader_.listed();
    read.listed.insert(read.listed.end(), {retained_place, "/test/pan"});
    if (reader_.has_column("crumbs_percent")) read.listed.push_back(pan_crumbs_place);
    answer_.records.push_back(std::move(read));
  }

  const CsvTable& table_;
  const std::string& file_name_;
  CsvRecords answer_;
  RowReader reader_;
};

/// What stands at `at` in `said`, also that nothing does.
void take_over(ListJson& into, const ListJson& said, const ListJson::json_pointer& at) {
  if (said.contains(at)) {
    into[at] = said.at(at);
    return;
  }
  if (!into.contains(at)) return;
  const ListJson::json_pointer above = at.parent_pointer();
  into.at(above).erase(at.back());
  if (into.at(above).empty() && !above.empty()) into.at(above.parent_pointer()).erase(above.back());
}

void follow_length(ListJson& whole, const ListJson::json_pointer& length, const ListJson::json_pointer& width) {
  if (whole.contains(length))
    whole[width] = whole.at(length);
  else
    take_over(whole, ListJson::object(), width);
}

/// Puts an item with a day into a history, oldest first; of the item of that day only `members` change.
void take_into_history(ListJson& history, const ListJson& item, const std::vector<std::string>& members) {
  const auto day_of_item = [](const ListJson& one) { return one.value("day", std::string()); };
  const std::string day = day_of_item(item);
  for (auto at = history.rbegin(); at != history.rend(); ++at) {
    if (day_of_item(*at) != day) continue;
    for (const std::string& member : members) take_over(*at, item, ListJson::json_pointer("/" + member));
    return;
  }
  const auto later = std::ranges::find_if(history, [&](const ListJson& one) { return day_of_item(one) > day; });
  history.insert(later, item);
}

/// Where a list has no column of crumbs, each sieve keeps those it has here.
void keep_crumbs(ListJson& retained, const ListJson& was) {
  for (ListJson& row : retained) {
    const auto same = std::ranges::find_if(was, [&](const ListJson& one) { return one.at("aperture_mm") == row.at("aperture_mm"); });
    if (same != was.end() && same->contains("crumbs_percent")) row["crumbs_percent"] = same->at("crumbs_percent");
  }
}

/// A file with one test has its own heading and may have remarks.
bool is_one_sieve_test(std::string_view text) {
  const std::string_view body = trimmed(without_byte_order_mark(text));
  if (body.starts_with('#') || body.starts_with("\"#")) return true;
  const Result<CsvTable> heading = read_csv(body.substr(0, body.find('\n')), "");
  return heading.ok() && std::ranges::all_of(heading->heading.cells, [](const CsvCell& cell) {
           return std::ranges::find(sieve_columns, RowReader::lower(cell.text)) != sieve_columns.end();
         });
}

}  // namespace

Result<Record> with_listed(const Record& here, const IdentifiedRecord& row) {
  ListJson whole = ListJson::parse(write_record(here));
  const ListJson was = whole;
  const ListJson said = ListJson::parse(write_record(row.record));
  constexpr std::string_view first_item = "/0/";
  std::map<std::string, std::vector<std::string>> histories;
  for (const std::string_view place : row.listed) {
    const auto item = place.find(first_item);
    if (item == std::string_view::npos)
      take_over(whole, said, ListJson::json_pointer(std::string(place)));
    else
      histories[std::string(place.substr(1, item - 1))].emplace_back(place.substr(item + first_item.size()));
  }
  for (const auto& [name, members] : histories) {
    if (!said.contains(name) || said[name].empty()) continue;
    if (!whole.contains(name)) whole[name] = ListJson::array();
    take_into_history(whole[name], said[name].back(), members);
  }
  const auto lists = [&](std::string_view place) { return std::ranges::find(row.listed, place) != row.listed.end(); };
  const ListJson::json_pointer retained{std::string(retained_place)};
  if (lists(retained_place) && !lists(pan_crumbs_place) && was.contains(retained)) keep_crumbs(whole.at(retained), was.at(retained));
  if (row.ref.kind == RecordKind::container && has_one_width(whole["container"]))
    for (const auto& [length, width] : sides_of_sections)
      if (!lists(width)) follow_length(whole, ListJson::json_pointer(std::string(length)), ListJson::json_pointer(std::string(width)));
  return read_record(row.ref.kind, whole.dump(), row.from.file.value_or(""));
}

std::vector<std::string> csv_columns(RecordKind kind) {
  std::vector<std::string> names{"id"};
  for (const CsvColumn& column : columns_of(kind)) names.emplace_back(column.name);
  if (kind == RecordKind::log_entry) names.emplace_back("about");
  if (kind == RecordKind::sieve_test) names.insert(names.end(), sieve_columns.begin(), sieve_columns.end());
  return names;
}

std::string write_records_csv(RecordKind kind, const std::vector<IdentifiedRecord>& records) {
  std::string text = csv_row(csv_columns(kind));
  for (const IdentifiedRecord& record : records) {
    const ListJson json = ListJson::parse(write_record(record.record));
    std::vector<std::string> cells{record.ref.id};
    for (const CsvColumn& column : columns_of(kind)) {
      cells.push_back(cell_at(json, column.pointer));
      // Left empty it would be read as that of the last digit written.
      if (cells.back().empty() && column.pointer == "/test/resolution_g") cells.back() = "0";
    }
    if (kind == RecordKind::log_entry) {
      std::string about;
      for (const ListJson& ref : json.value("about", ListJson::array())) about += (about.empty() ? "" : " ") + ref.get<std::string>();
      cells.push_back(about);
    }
    if (kind != RecordKind::sieve_test) {
      text += csv_row(cells);
      continue;
    }
    const ListJson& test = json["test"];
    const auto add = [&](const std::vector<std::string>& sieve) {
      std::vector<std::string> row = cells;
      row.insert(row.end(), sieve.begin(), sieve.end());
      text += csv_row(row);
    };
    for (const ListJson& row : test.value("retained", ListJson::array()))
      add(sieve_cells(row, member(row, "aperture_mm"), member(row, "crumbs_percent")));
    add(sieve_cells(test.value("pan", ListJson::object()), "pan", member(test, "pan_crumbs_percent")));
  }
  return text;
}

std::optional<RecordKind> kind_of_csv(std::string_view text) {
  const std::string_view body = trimmed(without_byte_order_mark(text));
  if (body.starts_with('#') || body.starts_with("\"#")) return RecordKind::sieve_test;
  const Result<CsvTable> table = read_csv(body.substr(0, body.find('\n')), "");
  if (!table) return std::nullopt;
  std::set<std::string> names;
  for (const CsvCell& cell : table->heading.cells) names.insert(RowReader::lower(cell.text));
  if (names.contains("aperture_mm")) return RecordKind::sieve_test;
  if (names.contains("shape") || names.contains("depth_cm")) return RecordKind::container;
  if (names.contains("species") || names.contains("condition")) return RecordKind::tree;
  if (names.contains("material")) return RecordKind::bag;
  return std::nullopt;
}

Result<CsvRecords> read_records_csv(RecordKind kind, std::string_view text, const std::string& file_name) {
  if (kind == RecordKind::sieve_test && is_one_sieve_test(text)) {
    CsvRecords answer{kind, {}, {}};
    Result<SieveTest> test = read_sieve_test(text, file_name);
    if (!test) {
      answer.problems = test.problems();
      return answer;
    }
    RecordedSieveTest recorded;
    recorded.test = std::move(test).value();
    Place from;
    from.file = file_name;
    from.line = 1;
    answer.records.push_back({{kind, {}}, std::move(recorded), std::move(from)});
    return answer;
  }
  const Result<CsvTable> table = read_csv(text, file_name);
  if (!table) return table.problems();
  if (kind == RecordKind::sieve_test) return SieveListReader(*table, file_name).read();
  return read_rows(kind, *table, file_name);
}

}  // namespace gritwright
