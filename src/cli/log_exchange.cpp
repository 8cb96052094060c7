#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/incoming_records.hpp"
#include "gritwright/formats/record_csv.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"
#include "gritwright/workbook/backups.hpp"
#include "gritwright/workbook/default_workbook.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "log_request.hpp"

namespace gritwright::cli {

namespace {

namespace fs = std::filesystem;

std::string arrival_text(Arrival arrival) {
  switch (arrival) {
    case Arrival::added: return "new";
    case Arrival::already_there: return "already there";
    case Arrival::comes_back: return "comes back";
    case Arrival::differs: return "replaces";
  }
  return {};
}

/// The catalogue where `text` names materials and it is there.
std::optional<Catalogue> catalogue_for(const std::string& text) {
  if (text.find("material") == std::string::npos) return std::nullopt;
  const auto folder = catalogue_folder();
  if (!folder) return std::nullopt;
  auto content = read_catalogue(*folder);
  if (!content) return std::nullopt;
  return std::move(content).value().catalogue;
}

Result<IncomingRecords> incoming(const std::string& text, const std::string& name, const std::string& kind, const Catalogue* catalogue) {
  const auto named = kind_named(kind);
  if (!kind.empty() && !named) return Problem{"record.unknown-kind", {}, {{"text", kind}}};
  return read_incoming(text, name, named, ComponentSources{catalogue, {}});
}

void tell(const LogCall& call, const ImportPreview& preview, bool done) {
  const auto added = preview.count(Arrival::added) + preview.count(Arrival::comes_back);
  const auto there = preview.count(Arrival::already_there);
  const auto replaced = preview.count(Arrival::differs);
  if (call.options.json) {
    Json json{{"done", done}, {"added", added}, {"already_there", there}, {"replaced", replaced}, {"records", Json::array()}};
    for (const ImportLine& line : preview.lines)
      json["records"].push_back({{"kind", kind_name(line.record.ref.kind)},
                                 {"id", line.record.ref.id.empty() ? Json(nullptr) : Json(line.record.ref.id)},
                                 {"title", line.title},
                                 {"what", arrival_text(line.arrival)}});
    json["notes"] = to_json(preview.notes);
    call.streams.out << json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
    return;
  }
  if (!done) {
    std::vector<std::vector<std::string>> rows;
    for (const ImportLine& line : preview.lines)
      rows.push_back({std::string(kind_name(line.record.ref.kind)), line.record.ref.id.empty() ? "–" : line.record.ref.id,
                      arrival_text(line.arrival), line.title});
    call.streams.out << text_table({"kind", "id", "would be", "what"}, rows, LastColumn::words) << '\n';
  }
  call.streams.out << added << (done ? " added, " : " to add, ") << there << " already there";
  if (replaced > 0) call.streams.out << ", " << replaced << (done ? " replaced" : " to replace");
  call.streams.out << ".\n";
}

Exit refuse_import(const LogCall& call, const Problems& problems) {
  const Exit exit = refuse(problems, call.streams.err);
  if (std::ranges::find(problems, "import.id-differs", &Problem::code) != problems.end())
    call.streams.err << "Give it an id of its own in the file, or let it take the place of the one here with --replace (undone in one step in the window).\n";
  return exit;
}

/// Writes beside the target and renames, so that nobody finds half a file.
Exit write_out(const LogCall& call, const std::string& text) {
  const std::string& target = call.request.output;
  if (target.empty() || target == "-") {
    call.streams.out << text;
    return Exit::done;
  }
  const std::string partial = target + ".partial";
  {
    std::ofstream file(partial, std::ios::binary | std::ios::trunc);
    file << text;
    file.flush();
    if (!file) {
      std::error_code ignored;
      fs::remove(partial, ignored);
      return refuse({Problem{"file.write-failed", {target, {}, {}, ""}, {}}}, call.streams.err);
    }
  }
  std::error_code trouble;
  fs::rename(partial, target, trouble);
  if (trouble) return refuse({Problem{"file.write-failed", {target, {}, {}, ""}, {}}}, call.streams.err);
  return Exit::done;
}

/// The same, and tells what could not be written with it.
Exit write_what_is_left(const LogCall& call, const std::string& text, const Problems& left_out) {
  const Exit written = write_out(call, text);
  return written != Exit::done || left_out.empty() ? written : refuse(left_out, call.streams.err);
}

}  // namespace

std::string workbook_file(const LogRequest& request) {
  return request.workbook.empty() ? default_workbook_file().string() : request.workbook;
}

OpeningOptions opening_options(const LogRequest& request, bool create) {
  OpeningOptions options;
  options.clock = [] { return std::chrono::system_clock::now(); };
  options.access = request.read_only ? Access::read_only : Access::write;
  options.create = create;
  return options;
}

Exit log_export(LogCall& call) {
  std::ostringstream text;
  const LogRequest& ask = call.request;
  if (ask.csv || !ask.kind.empty()) {
    const auto kind = kind_named(ask.kind);
    if (!kind) return refuse({Problem{"record.unknown-kind", {}, {{"text", ask.kind}}}}, call.streams.err);
    const RecordsToExport all = records_to_export(call.workbook, *kind);
    if (ask.csv) {
      text << write_records_csv(*kind, all.records);
    } else {
      ExchangeWriter writer(text);
      for (const IdentifiedRecord& record : all.records) writer.add(record.ref, record.record);
      writer.finish();
    }
    return write_what_is_left(call, text.str(), all.left_out);
  }
  if (ask.operands.empty()) {
    const Problems left_out = export_workbook(call.workbook, text);
    return write_what_is_left(call, text.str(), left_out);
  }
  Problems problems;
  std::vector<StoredRecord> records;
  for (const std::string& asked : ask.operands) {
    const auto ref = ref_asked_for(call.workbook, asked);
    append(problems, ref.problems());
    if (ref) records.push_back(*call.workbook.find_even_deleted(*ref));
  }
  if (!problems.empty()) return refuse(problems, call.streams.err);
  if (records.size() == 1) return write_out(call, write_identified_record(records.front().ref, records.front().record));
  ExchangeWriter writer(text);
  for (const StoredRecord& record : records) writer.add(record.ref, record.record);
  writer.finish();
  return write_out(call, text.str());
}

Exit log_import(LogCall& call) {
  if (call.request.operands.size() != 1) {
    call.streams.err << "log import wants one file, or - for standard input\n";
    return Exit::wrong_usage;
  }
  const std::string& path = call.request.operands.front();
  const auto text = read_long_input(path, call.streams.in, largest_exchange_mb);
  if (!text) return refuse(text.problems(), call.streams.err);
  const std::optional<Catalogue> catalogue = catalogue_for(*text);
  auto read = incoming(*text, shown_name(path), call.request.kind, catalogue ? &*catalogue : nullptr);
  if (!read) return refuse(read.problems(), call.streams.err);
  const ImportOptions options{call.request.replace, catalogue ? &*catalogue : nullptr};
  const IncomingRecords records = std::move(read).value();
  if (call.request.preview || !records.problems.empty()) {
    const ImportPreview preview = preview_import(call.workbook, records.records, options);
    Problems problems = records.problems;
    append(problems, preview.problems);
    if (call.request.preview) tell(call, preview, false);
    call.notes = preview.notes;
    return problems.empty() ? Exit::done : refuse_import(call, problems);
  }
  const auto imported = import_records(call.workbook, records.records, "import of " + fs::path(shown_name(path)).filename().string(), options);
  if (!imported) return refuse_import(call, imported.problems());
  tell(call, imported->preview, true);
  call.notes = imported->preview.notes;
  return Exit::done;
}

namespace {

struct Checked {
  Problems problems;
  Notes at_odds;  ///< what was written down
  Notes notes;    ///< of opening
  fs::path backup_folder;
  [[nodiscard]] bool has(const char* code) const { return std::ranges::find(problems, code, &Problem::code) != problems.end(); }
};

Checked checked(const LogRequest& request, const fs::path& file) {
  Checked found{as_not_begun(check_file(file), request), {}, {}, default_backup_folder(file)};
  if (!found.problems.empty()) return found;
  OpeningOptions opening = opening_options(request, false);
  opening.access = Access::read_only;
  auto opened = OpenWorkbook::open(file, std::move(opening));
  found.problems = opened.problems();
  if (!opened) return found;
  OpenWorkbook workbook = std::move(opened).value();
  found.backup_folder = workbook.backup_folder();
  try {
    found.problems = check_content(workbook);
    if (found.problems.empty()) found.at_odds = check_sense(workbook);
  } catch (const WorkbookTrouble& trouble) {
    found.problems.push_back(trouble.problem());
  }
  found.notes = workbook.take_notes();
  return found;
}

Problems mend(const LogRequest& request, const fs::path& file) {
  auto opened = OpenWorkbook::open(file, opening_options(request, false));
  if (!opened) return opened.problems();
  OpenWorkbook workbook = std::move(opened).value();
  return index_again(workbook).problems();
}

}  // namespace

Exit log_check(const LogRequest& request, const CommonOptions& options, Streams streams) {
  const fs::path file = workbook_file(request);
  Checked found = checked(request, file);
  const bool mends = request.mend && found.has("workbook.index-differs");
  if (mends) {
    const Problems hindered = mend(request, file);
    found = checked(request, file);
    append(found.problems, hindered);
  }
  const Problems& problems = found.problems;
  Notes notes = found.at_odds;
  append(notes, found.notes);
  std::vector<BackupFile> backups = backups_of(file, found.backup_folder);
  Json list = Json::array();
  std::optional<BackupFile> newest_good;
  for (const BackupFile& backup : backups) {
    const bool good = check_file(backup.file).empty();
    if (good && !newest_good) newest_good = backup;
    list.push_back({{"file", backup.file.string()}, {"day", backup.day}, {"good", good}});
  }
  const bool is_mended = mends && !found.has("workbook.index-differs");
  if (options.json) {
    Json json{{"problems", Json::array()}, {"mended", is_mended}, {"notes", to_json(notes)}, {"backups", list}};
    for (const Problem& problem : problems)
      json["problems"].push_back({{"code", problem.code}, {"place", place_text(problem.where)}, {"text", sentence(problem)}});
    json["newest_good_backup"] = newest_good ? Json(newest_good->file.string()) : Json(nullptr);
    streams.out << json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
  } else {
    if (is_mended) streams.out << "Lists, search and links were drawn anew from the records.\n";
    const std::size_t odd = found.at_odds.size();
    if (problems.empty() && odd == 0) streams.out << "The record is intact.\n";
    if (problems.empty() && odd > 0) streams.out << "The file is intact; " << odd << (odd == 1 ? " thing in it needs" : " things in it need") << " a correction:\n";
    streams.out << notes_text(notes, options.units);
    const auto good = std::ranges::count_if(list, [](const Json& backup) { return backup["good"].get<bool>(); });
    streams.out << backups.size() << (backups.size() == 1 ? " backup, " : " backups, ") << good << " intact";
    if (newest_good) streams.out << "; the newest intact one is of " << newest_good->day << ": " << newest_good->file.string();
    streams.out << '\n';
    // A backup takes the place of all: it is no cure for one record, or for lists that are drawn anew.
    const bool is_damaged = std::ranges::any_of(problems, [](const Problem& problem) {
      return problem.code != "workbook.index-differs" && problem.code != "workbook.record-unreadable";
    });
    if (is_damaged && newest_good)
      streams.out << "Choose it in the window, gritwright-desktop: it takes the record's place, and the file as it is now is kept.\n";
    else if (found.has("workbook.record-unreadable") && newest_good)
      streams.out << "What can't be read is taken from it with: gritwright log export KIND:ID --workbook BACKUP --output FILE, then gritwright log import FILE --replace\n";
  }
  if (!problems.empty()) return refuse(problems, streams.err);
  return exit_for(notes, options);
}

}  // namespace gritwright::cli
