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

Result<IncomingRecords> incoming(const std::string& text, const std::string& name, const std::string& kind) {
  const auto named = kind_named(kind);
  if (!kind.empty() && !named) return Problem{"record.unknown-kind", {}, {{"text", kind}}};
  CatalogueFolder catalogue;
  if (text.find("\"material\"") != std::string::npos) {
    if (const auto folder = catalogue_folder())
      if (auto content = read_catalogue(*folder)) catalogue = std::move(content).value();
  }
  return read_incoming(text, name, named, ComponentSources{&catalogue.catalogue, {}});
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
    std::vector<IdentifiedRecord> records;
    for (StoredRecord& stored : call.workbook.all_of(*kind)) records.push_back({stored.ref, std::move(stored.record), {}});
    if (ask.csv) {
      text << write_records_csv(*kind, records);
    } else {
      ExchangeWriter writer(text);
      for (const IdentifiedRecord& record : records) writer.add(record.ref, record.record);
      writer.finish();
    }
    return write_out(call, text.str());
  }
  if (ask.operands.empty()) {
    export_workbook(call.workbook, text);
    return write_out(call, text.str());
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
  auto read = incoming(*text, shown_name(path), call.request.kind);
  if (!read) return refuse(read.problems(), call.streams.err);
  const ImportOptions options{call.request.replace};
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

Exit log_check(const LogRequest& request, const CommonOptions& options, Streams streams) {
  const fs::path file = workbook_file(request);
  Problems problems = as_not_begun(check_file(file), request);
  Notes notes;
  fs::path backup_folder = default_backup_folder(file);
  if (problems.empty()) {
    OpeningOptions opening = opening_options(request, false);
    opening.access = Access::read_only;
    auto opened = OpenWorkbook::open(file, std::move(opening));
    problems = opened.problems();
    if (opened) {
      OpenWorkbook workbook = std::move(opened).value();
      backup_folder = workbook.backup_folder();
      try {
        problems = check_content(workbook);
        if (problems.empty()) notes = check_sense(workbook);
      } catch (const WorkbookTrouble& trouble) {
        problems.push_back(trouble.problem());
      }
      append(notes, workbook.take_notes());
    }
  }
  std::vector<BackupFile> backups = backups_of(file, backup_folder);
  Json list = Json::array();
  std::optional<BackupFile> newest_good;
  for (const BackupFile& backup : backups) {
    const bool good = check_file(backup.file).empty();
    if (good && !newest_good) newest_good = backup;
    list.push_back({{"file", backup.file.string()}, {"day", backup.day}, {"good", good}});
  }
  if (options.json) {
    Json json{{"problems", Json::array()}, {"notes", to_json(notes)}, {"backups", list}};
    for (const Problem& problem : problems)
      json["problems"].push_back({{"code", problem.code}, {"place", place_text(problem.where)}, {"text", sentence(problem)}});
    json["newest_good_backup"] = newest_good ? Json(newest_good->file.string()) : Json(nullptr);
    streams.out << json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
  } else {
    if (problems.empty()) streams.out << (notes.empty() ? "The record is intact.\n" : "The file is intact.\n");
    streams.out << notes_text(notes, options.units);
    const auto good = std::ranges::count_if(list, [](const Json& backup) { return backup["good"].get<bool>(); });
    streams.out << backups.size() << (backups.size() == 1 ? " backup, " : " backups, ") << good << " intact";
    if (newest_good) streams.out << "; the newest intact one is of " << newest_good->day << ": " << newest_good->file.string();
    streams.out << '\n';
    if (!problems.empty() && newest_good) streams.out << "Choose it in the window, gritwright-desktop: it takes the record's place, and the file as it is now is kept.\n";
  }
  if (!problems.empty()) return refuse(problems, streams.err);
  return exit_for(notes, options);
}

}  // namespace gritwright::cli
