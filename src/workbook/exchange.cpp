#include "gritwright/workbook/exchange.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <unordered_set>
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

class Previewer {
 public:
  Previewer(OpenWorkbook::Inside& inside, const ImportOptions& options) : inside_(inside), options_(options) {}

  ImportPreview run(std::vector<IdentifiedRecord> records) {
    for (IdentifiedRecord& record : records) take(std::move(record));
    look_for_names();
    return std::move(preview_);
  }

 private:
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
      line.arrival = here_without_id(record.ref.kind, body) ? Arrival::already_there : Arrival::added;
    } else {
      const RecordRef key{record.ref.kind, lower(record.ref.id)};
      if (!ids_.insert(key).second) preview_.problems.push_back(placed_problem("import.id-twice", record));
      line.arrival = arrival_of(record, body);
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

  Arrival arrival_of(const IdentifiedRecord& record, const std::string& body) {
    Query found = inside_.query("SELECT body, gone FROM record WHERE kind = ?1 AND id = ?2");
    found.with(std::string(kind_name(record.ref.kind)), record.ref.id);
    if (!found.step()) return Arrival::added;
    if (found.is_null(0)) return found.text(1) == body ? Arrival::comes_back : Arrival::differs;
    return found.text(0) == body ? Arrival::already_there : Arrival::differs;
  }

  /// The same record twice in one file is two records; each stands for one of those here.
  bool here_without_id(RecordKind kind, const std::string& body) {
    const std::string kind_text(kind_name(kind));
    auto& counts = taken_[{kind, body}];
    Query found = inside_.query(
        "SELECT count(*) FROM (SELECT r.number FROM record r WHERE r.kind = ?1 AND r.body = ?2 UNION"
        " SELECT r.number FROM imported i JOIN record r ON r.number = i.record WHERE i.fingerprint = ?3 AND r.kind = ?1 AND r.body IS NOT NULL)");
    found.with(kind_text, body, fingerprint_of(body)).step();
    return counts++ < found.whole(0);
  }

  /// A record that names what is nowhere is kept, but the grower is told.
  void look_for_names() {
    for (const ImportLine& line : preview_.lines) {
      std::set<std::string> unknown;
      for (const Link& link : index_of(line.record.ref, line.record.record).links) {
        const RecordRef& other = link.from == line.record.ref ? link.to : link.from;
        if (other == line.record.ref || ids_.contains({other.kind, lower(other.id)}) || inside_.row(other)) continue;
        unknown.insert(ref_text(other));
      }
      for (const std::string& name : unknown)
        preview_.notes.push_back({"import.names-unknown", Level::warning, line.record.ref.id, {{"text", name}}});
    }
  }

  static std::string lower(std::string text) {
    for (char& sign : text)
      if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    return text;
  }

  OpenWorkbook::Inside& inside_;
  const ImportOptions& options_;
  ImportPreview preview_;
  std::set<RecordRef> ids_;
  std::map<std::pair<RecordKind, std::string>, std::int64_t> taken_;
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
    for (const ImportLine& line : imported.preview.lines) {
      if (line.arrival == Arrival::already_there) continue;
      Edit edit{line.record.ref, 0, line.record.record};
      footing.fingerprints.push_back(line.record.ref.id.empty() ? fingerprint_of(write_record(line.record.record)) : std::string());
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

void export_workbook(const OpenWorkbook& workbook, std::ostream& out, const std::string& note) {
  OpenWorkbook::Inside& inside = workbook.inside();
  ExchangeWriter writer(out, note);
  // One statement sees one moment, whatever is written meanwhile.
  inside.read([&] {
    Query found = inside.query("SELECT kind, id, body FROM record WHERE body IS NOT NULL ORDER BY number");
    while (found.step()) {
      const auto kind = kind_named(found.text(0));
      if (!kind) continue;
      const RecordRef ref{*kind, found.text(1)};
      const Result<Record> record = read_record(*kind, found.text(2), ref_text(ref));
      if (!record) throw WorkbookTrouble({"workbook.record-unreadable", {}, {{"kind", found.text(0)}, {"id", ref.id}}});
      writer.add(ref, *record);
    }
  });
  writer.finish();
}

}  // namespace gritwright
