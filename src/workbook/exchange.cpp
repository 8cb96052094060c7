#include "gritwright/workbook/exchange.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

#include "gritwright/formats/record_csv.hpp"
#include "gritwright/formats/record_file.hpp"
#include "inside.hpp"
#include "record_index.hpp"

namespace gritwright {

namespace {

/// Tells records apart, not enemies: two sums of FNV-1a over the record's JSON, from different starts. Source: RFC 9923 (the 64-bit
/// prime and offset).
std::string fingerprint_of(const std::string& body) {
  constexpr std::uint64_t prime = 0x100000001b3;
  std::uint64_t one = 0xcbf29ce484222325;
  std::uint64_t two = one ^ 0x9e3779b97f4a7c15;
  for (const char sign : body) {
    one = (one ^ static_cast<unsigned char>(sign)) * prime;
    two = (two ^ static_cast<unsigned char>(sign)) * prime;
  }
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (const std::uint64_t sum : {one, two})
    for (int shift = 60; shift >= 0; shift -= 4) text += digits[sum >> shift & 15U];
  return text;
}

Problem placed_problem(const char* code, const IdentifiedRecord& record, Facts facts = {}) {
  facts["kind"] = std::string(kind_name(record.ref.kind));
  facts["id"] = record.ref.id;
  return {code, record.from, std::move(facts)};
}

/// Lines of log and ledger get their numbers by themselves, so another record has other lines under the same.
bool numbers_itself(RecordKind kind) { return kind == RecordKind::log_entry || kind == RecordKind::stock_entry; }

/// Whether two lines under one number are one line that was corrected since: a log entry that another day was given, a ledger's line
/// whose grams were put right or that moved with its repotting day.
bool is_same_line(const Record& one, const Record& other) {
  if (const auto *a = std::get_if<LogEntry>(&one), *b = std::get_if<LogEntry>(&other); a != nullptr && b != nullptr)
    return !a->written.empty() && a->written == b->written && a->text == b->text;
  const auto *a = std::get_if<StockEntry>(&one), *b = std::get_if<StockEntry>(&other);
  if (a == nullptr || b == nullptr || a->holder != b->holder || a->reason != b->reason || a->other != b->other) return false;
  return a->day == b->day || (a->other && a->other->kind == RecordKind::repotting_day);
}

class Previewer {
 public:
  Previewer(OpenWorkbook::Inside& inside, const ImportOptions& options) : inside_(inside), options_(options) {}

  ImportPreview run(std::vector<IdentifiedRecord> records) {
    for (const IdentifiedRecord& record : records) count_in(record);
    for (IdentifiedRecord& record : records) take(std::move(record));
    tell_lines(std::move(renumbered_), "import.renumbered-more");
    tell_lines(std::move(kept_), "import.line-kept-more");
    look_for_materials();
    look_for_names();
    return std::move(preview_);
  }

 private:
  /// A line that is here under its own number stands for no other of the file; and what gets a number gets none of the file's.
  void count_in(const IdentifiedRecord& record) {
    if (!numbers_itself(record.ref.kind) || record.ref.id.empty()) return;
    if (const auto counted = counted_id(record.ref.id)) highest_[record.ref.kind] = std::max(highest_[record.ref.kind], counted->second);
    if (!has_lines_.contains(record.ref.kind)) {
      Query any = inside_.query("SELECT 1 FROM record WHERE kind = ?1 AND body IS NOT NULL LIMIT 1");
      has_lines_[record.ref.kind] = any.with(std::string(kind_name(record.ref.kind))).step();
    }
    if (!has_lines_[record.ref.kind]) return;
    const auto row = inside_.row(record.ref);
    if (row && row->body && is_same(record, *row->body, write_record(record.record))) stood_for_.insert(row->number);
  }

  void take(IdentifiedRecord record) {
    complete(record);
    for (Problem& problem : check(record.record)) {
      Place place = record.from;
      place.pointer += problem.where.pointer;
      preview_.problems.push_back({problem.code, std::move(place), std::move(problem.facts)});
    }
    ImportLine line;
    const std::string body = write_record(record.record);
    if (record.ref.id.empty()) {
      line.arrival = is_here_somewhere(record, body) ? Arrival::already_there : Arrival::added;
    } else {
      const RecordRef key{record.ref.kind, small_letters(record.ref.id)};
      if (!ids_.insert(key).second) preview_.problems.push_back(placed_problem("import.id-twice", record));
      line.arrival = arrival_of(record, body);
      if (numbers_itself(record.ref.kind)) line.arrival = arrival_of_line(record, body, line.arrival);
      if (line.arrival == Arrival::differs && !options_.replace) preview_.problems.push_back(placed_problem("import.id-differs", record));
    }
    line.title = index_of(record.ref, record.record).title;
    line.record = std::move(record);
    preview_.lines.push_back(std::move(line));
  }

  /// What a list has no columns for stays as it is here.
  void complete(IdentifiedRecord& record) {
    if (record.listed.empty() || record.ref.id.empty()) return;
    const auto row = inside_.row(record.ref);
    if (!row || !(row->body || row->gone)) {
      append(preview_.problems, record.unless_here);
      return;
    }
    const Result<Record> here = read_record(record.ref.kind, row->body ? *row->body : *row->gone, ref_text(record.ref));
    if (!here) return;
    Result<Record> whole = with_listed(*here, record);
    for (const Problem& problem : whole.problems()) preview_.problems.push_back({problem.code, record.from, problem.facts});
    if (whole) record.record = std::move(whole).value();
  }

  /// What an earlier version wrote in other words is the same all the same.
  static bool is_same(const IdentifiedRecord& record, const std::string& stored, const std::string& body) {
    if (stored == body) return true;
    const Result<Record> here = read_record(record.ref.kind, stored, ref_text(record.ref));
    return here && *here == record.record;
  }

  Arrival arrival_of(const IdentifiedRecord& record, const std::string& body) {
    const auto row = inside_.row(record.ref);
    if (!row) return Arrival::added;
    if (row->body) return is_same(record, *row->body, body) ? Arrival::already_there : Arrival::differs;
    return row->gone && is_same(record, *row->gone, body) ? Arrival::comes_back : Arrival::differs;
  }

  /// Nobody chose the number of a line, so it gives way: the line is here under another, or comes in under the next free one.
  Arrival arrival_of_line(IdentifiedRecord& record, const std::string& body, Arrival by_number) {
    if (by_number == Arrival::already_there || by_number == Arrival::comes_back) return by_number;
    if (has_lines_[record.ref.kind] && is_here_somewhere(record, body)) return Arrival::already_there;
    if (by_number == Arrival::added) return by_number;
    const auto row = inside_.row(record.ref);
    const Result<Record> here = read_record(record.ref.kind, row->body.value_or(""), ref_text(record.ref));
    if (here && is_same_line(*here, record.record)) {
      kept_.push_back({"import.line-kept", Level::warning, record.ref.id, {{"kind", std::string(kind_name(record.ref.kind))}}});
      return Arrival::already_there;
    }
    const std::string number = inside_.free_id(record.ref.kind, {}, highest_[record.ref.kind]);
    const auto counted = counted_id(number);
    highest_[record.ref.kind] = counted ? counted->second : highest_[record.ref.kind] + 1;
    renumbered_.push_back({"import.renumbered", Level::note, record.ref.id, {{"id", record.ref.id}, {"to", number}}});
    record.ref.id = number;
    return Arrival::added;
  }

  /// Whether the same record is here under any number, or what came in with it before. The same record twice in one file is two
  /// records; each stands for one of those here.
  bool is_here_somewhere(const IdentifiedRecord& record, const std::string& body) {
    Query found = inside_.query(
        "SELECT r.number FROM record r WHERE r.kind = ?1 AND r.day = ?4 AND r.body = ?2 UNION"
        " SELECT r.number FROM imported i JOIN record r ON r.number = i.record WHERE i.fingerprint = ?3 AND r.kind = ?1 AND r.body IS NOT NULL");
    found.with(std::string(kind_name(record.ref.kind)), body, fingerprint_of(body), index_of(record.ref, record.record).day);
    while (found.step())
      if (stood_for_.insert(found.whole(0)).second) return true;
    return false;
  }

  /// Of many alike the first say enough.
  void tell_lines(Notes notes, const char* code_of_more) {
    constexpr std::size_t most_named = 5;
    const std::size_t more = notes.size() - std::min(notes.size(), most_named);
    if (more > 0) {
      const Level level = notes.front().level;
      notes.resize(most_named);
      notes.push_back({code_of_more, level, "", {{"count", static_cast<double>(more)}}});
    }
    append(preview_.notes, std::move(notes));
  }

  /// A material of the grower's own is welcome, and a slip of the pen would pass for one: it is told where it comes in first.
  void look_for_materials() {
    if (options_.catalogue == nullptr) return;
    std::set<std::string> known;
    for (const ImportLine& line : preview_.lines)
      if (const auto* own = std::get_if<OwnMaterial>(&line.record.record)) known.insert(small_letters(own->name));
    for (const ImportLine& line : preview_.lines) {
      if (line.arrival == Arrival::already_there) continue;
      const std::string* name = material_of(line.record.record);
      if (name == nullptr || name->empty() || options_.catalogue->find(*name) != nullptr || !known.insert(small_letters(*name)).second) continue;
      Query used = inside_.query("SELECT 1 FROM record WHERE body IS NOT NULL AND (kind = 'bag' AND subject = ?1 OR kind = 'material' AND title = ?1) LIMIT 1");
      if (used.with(*name).step()) continue;
      std::string nearest;
      for (const std::string& like : options_.catalogue->nearest(*name)) nearest.append(nearest.empty() ? "" : ", ").append(like);
      preview_.notes.push_back({"import.material-unknown", Level::warning, line.record.ref.id.empty() ? line.title : line.record.ref.id,
                                {{"name", *name}, {"nearest", nearest}}});
    }
  }

  static const std::string* material_of(const Record& record) {
    if (const auto* bag = std::get_if<Bag>(&record)) return &bag->material;
    if (const auto* bin = std::get_if<Bin>(&record)) return &bin->material;
    if (const auto* fraction = std::get_if<Fraction>(&record)) return &fraction->material;
    return nullptr;
  }

  /// A record that names what is nowhere is kept, but the grower is told.
  void look_for_names() {
    for (const ImportLine& line : preview_.lines) {
      std::set<std::string> unknown;
      for (const Link& link : index_of(line.record.ref, line.record.record).links) {
        const RecordRef& other = link.from == line.record.ref ? link.to : link.from;
        if (other == line.record.ref || ids_.contains({other.kind, small_letters(other.id)}) || inside_.row(other)) continue;
        unknown.insert(ref_text(other));
      }
      for (const std::string& name : unknown)
        preview_.notes.push_back({"import.names-unknown", Level::warning, line.record.ref.id, {{"text", name}}});
    }
  }

  OpenWorkbook::Inside& inside_;
  const ImportOptions& options_;
  ImportPreview preview_;
  std::set<RecordRef> ids_;
  std::set<std::int64_t> stood_for_;            ///< records here that one of the file is
  std::map<RecordKind, std::int64_t> highest_;  ///< number of a line, in the file or given to one of it
  std::map<RecordKind, bool> has_lines_;        ///< whether any line of log or ledger is here
  Notes renumbered_;
  Notes kept_;
};

}  // namespace

std::size_t ImportPreview::count(Arrival arrival) const {
  return static_cast<std::size_t>(std::ranges::count(lines, arrival, &ImportLine::arrival));
}

ImportPreview preview_import(const OpenWorkbook& workbook, std::vector<IdentifiedRecord> records, const ImportOptions& options) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] { return Previewer(inside, options).run(std::move(records)); });
}

Result<Imported> import_records(OpenWorkbook& workbook, const std::vector<IdentifiedRecord>& records, const std::string& label,
                                const ImportOptions& options) {
  OpenWorkbook::Inside& inside = workbook.inside();
  // Another program may import the same file at the same moment; whoever comes second looks again.
  constexpr int most_attempts = 20;
  for (int attempt = 1;; ++attempt) {
    Change change;
    change.label = label;
    Footing footing{workbook.revision(), {}};
    Imported imported{preview_import(workbook, records, options), {}};
    if (!imported.preview.problems.empty()) return imported.preview.problems;
    auto in_file = records.begin();
    for (const ImportLine& line : imported.preview.lines) {
      const bool known_by_content = (in_file++)->ref.id != line.record.ref.id || line.record.ref.id.empty();
      if (line.arrival == Arrival::already_there) continue;
      Edit edit{line.record.ref, 0, line.record.record};
      footing.fingerprints.push_back(known_by_content ? fingerprint_of(write_record(line.record.record)) : std::string());
      if (line.arrival != Arrival::added)
        if (const auto row = inside.read([&] { return inside.row(line.record.ref); })) edit.based_on = row->revision;
      change.edits.push_back(std::move(edit));
    }
    if (change.edits.empty()) return imported;
    const Result<Applied> applied = inside.apply(std::move(change), footing);
    if (applied) {
      imported.step = applied->step;
      auto revision = applied->revisions.begin();
      for (ImportLine& line : imported.preview.lines)
        if (line.arrival != Arrival::already_there) line.record.ref = revision++->first;
      return imported;
    }
    if (applied.problems().front().code != "workbook.changed-meanwhile" || attempt == most_attempts) return applied.problems();
  }
}

Problems export_workbook(const OpenWorkbook& workbook, std::ostream& out, const std::string& note) {
  OpenWorkbook::Inside& inside = workbook.inside();
  ExchangeWriter writer(out, note);
  // One statement sees one moment, whatever is written meanwhile.
  Problems left_out = inside.read([&] {
    return inside.for_each_record({}, "export.left-out", [&](const RecordRef& ref, const Record& record, const Query&) { writer.add(ref, record); });
  });
  writer.finish();
  return left_out;
}

RecordsToExport records_to_export(const OpenWorkbook& workbook, RecordKind kind) {
  OpenWorkbook::Inside& inside = workbook.inside();
  RecordsToExport all;
  all.left_out = inside.read([&] {
    return inside.for_each_record(kind, "export.left-out", [&](const RecordRef& ref, Record record, const Query&) { all.records.push_back({ref, std::move(record), {}}); });
  });
  return all;
}

}  // namespace gritwright
