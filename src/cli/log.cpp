#include <stdlib.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <system_error>

#include "gritwright/formats/csv_text.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/report/text_table.hpp"
#include "gritwright/workbook/search.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "log_request.hpp"

namespace gritwright::cli {

namespace {

/// Ids and texts are judged by the action, which knows the workbook.
std::string any_text(const std::string&) { return {}; }

std::string or_dash(const std::string& text) { return text.empty() ? "–" : text; }

/// A folder of this program's own, as long as it is needed.
class PassingFolder {
 public:
  PassingFolder() {
    std::error_code unknown;
    std::string name = (std::filesystem::temp_directory_path(unknown) / "gritwright-XXXXXX").string();
    if (::mkdtemp(name.data()) != nullptr) path_ = name;
  }
  ~PassingFolder() {
    std::error_code ignored;
    if (!path_.empty()) std::filesystem::remove_all(path_, ignored);
  }
  PassingFolder(const PassingFolder&) = delete;
  PassingFolder& operator=(const PassingFolder&) = delete;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

class LogVerb final : public Verb {
 public:
  std::string name() const override { return "log"; }
  std::string summary() const override { return "The record: add, list, show, trace, export, import, check"; }
  void declare(CLI::App& app) override {
    LogRequest& ask = request_;
    required_choice(app, "ACTION", ask.action, "add TEXT, list [KIND], show ID..., trace ID, export [ID...], import FILE, check",
                    {"add", "list", "show", "trace", "export", "import", "check"});
    repeatable(app, "WHAT", ask.operands, "Text, numbers (K-07 or bag:K-07), a kind or a file, as the action wants", any_text);
    argument(app, "--workbook", ask.workbook, "The file of the record; without it the one in your data folder");
    flag(app, "--read-only", ask.read_only, "Open for reading only, also what a newer version wrote");
    flag(app, "--csv", ask.csv, "Answer as CSV (list, trace, export)");
    argument(app, "--day", ask.day, "add: when it happened, like 2026-03-14");
    repeatable(app, "--about", ask.about, "add: what it is about (repeatable)", any_text);
    flag(app, "--observation", ask.observation, "add: something seen, not done");
    argument(app, "--kind", ask.kind, "list, export, import: the kind of record");
    argument(app, "--words", ask.words, "list: words or numbers to find, by their beginning");
    argument(app, "--from", ask.from_day, "list: from this day on");
    argument(app, "--to", ask.to_day, "list: up to this day");
    argument(app, "--material", ask.material, "list: of this material, or about it");
    argument(app, "--tree", ask.tree, "list: this tree and all that is linked to it");
    counted(app, "--limit", ask.limit, "list: at most so many lines (200)", 1, 1'000'000);
    flag(app, "--back", ask.back, "trace: where the grain came from");
    flag(app, "--shared", ask.shared, "trace: what the trees named share; without names, the sick ones");
    flag(app, "--preview", ask.preview, "import: say what would be added and add nothing");
    flag(app, "--replace", ask.replace, "import: let records with the same number take the place of those here");
    argument(app, "--output", ask.output, "export: write to this file");
    flag(app, "--mend", ask.mend, "check: draw lists, search and links anew where they disagree with the records");
  }

  Exit run(const CommonOptions& options, Streams streams) override {
    if (request_.action == "check") return log_check(request_, options, streams);
    const bool writes = request_.action == "add" || (request_.action == "import" && !request_.preview);
    std::filesystem::path file = workbook_file(request_);
    OpeningOptions opening = opening_options(request_, writes);
    std::optional<PassingFolder> passing;
    std::error_code unknown;
    // What would come into a record that is not there yet is what would come into an empty one.
    const bool is_there = std::filesystem::symlink_status(file, unknown).type() != std::filesystem::file_type::not_found;
    if (request_.action == "import" && request_.preview && !is_there) passing.emplace();
    if (passing && !passing->path().empty()) {
      file = passing->path() / "empty.gritwright";
      opening.create = true;
      opening.access = Access::write;
      opening.placement = Placement::local;
    }
    auto opened = OpenWorkbook::open(file, std::move(opening));
    if (!opened) return refuse(as_not_begun(opened.problems(), request_), streams.err);
    OpenWorkbook workbook = std::move(opened).value();
    LogCall call{request_, options, streams, workbook};
    Exit exit = Exit::done;
    try {
      exit = act(call);
    } catch (const WorkbookTrouble& trouble) {
      return refuse({trouble.problem()}, streams.err);
    }
    append(call.notes, workbook.take_notes());
    if (!call.notes.empty()) streams.err << notes_text(call.notes, options.units).substr(1);
    return exit == Exit::done ? exit_for(call.notes, options) : exit;
  }

 private:
  Exit act(LogCall& call) const {
    if (request_.action == "add") return log_add(call);
    if (request_.action == "list") return log_list(call);
    if (request_.action == "show") return log_show(call);
    if (request_.action == "trace") return log_trace(call);
    if (request_.action == "export") return log_export(call);
    return log_import(call);
  }

  LogRequest request_;
};

/// Litres in stock. Not known where a record that they follow from can't be read, which is added to `unreadable`.
std::optional<LooseVolume> litres_as_far_as_read(const OpenWorkbook& workbook, const RecordRef& holder, Problems& unreadable) {
  try {
    return litres_in_stock(workbook, holder);
  } catch (const WorkbookTrouble& trouble) {
    if (trouble.problem().code != "workbook.record-unreadable") throw;
    unreadable.push_back(trouble.problem());
    return std::nullopt;
  }
}

Json line_json(const OpenWorkbook& workbook, const RecordLine& line, Problems& unreadable) {
  Json json{{"kind", kind_name(line.ref.kind)},
            {"id", line.ref.id},
            {"title", line.title},
            {"subject", line.subject.empty() ? Json(nullptr) : Json(line.subject)},
            {"day", line.day.empty() ? Json(nullptr) : Json(line.day)}};
  json["stock_g"] = line.stock ? Json(in_g(*line.stock)) : Json(nullptr);
  if (line.ref.kind == RecordKind::bag || line.ref.kind == RecordKind::fraction || line.ref.kind == RecordKind::bin) {
    const auto litres = litres_as_far_as_read(workbook, line.ref, unreadable);
    json["stock_l"] = litres ? Json(in_l(*litres)) : Json(nullptr);
    json["sieve_tests"] = line.sieve_tests;
  }
  return json;
}

/// How many numbers an array of nothing else holds, however deep; empty where it holds anything else.
std::optional<std::size_t> numbers_within(const Json& array) {
  std::size_t count = 0;
  for (const Json& item : array) {
    const auto more = item.is_array() ? numbers_within(item) : item.is_number() ? std::optional<std::size_t>(1) : std::nullopt;
    if (!more) return std::nullopt;
    count += *more;
  }
  return count;
}

/// "key: value" for every value of a record, with dots for depth.
void flatten(const Json& json, const std::string& key, std::string& text) {
  if (json.is_object()) {
    for (const auto& [name, value] : json.items())
      if (!(key.empty() && name == "format")) flatten(value, key.empty() ? name : key + "." + name, text);
  } else if (json.is_array()) {
    constexpr std::size_t most_read = 24;  // more are a picture, not figures to read
    if (const auto count = numbers_within(json); count && *count > most_read) {
      text.append("  ").append(key).append(": ").append(std::to_string(*count)).append(" numbers, all of them with --json\n");
      return;
    }
    std::size_t index = 0;
    for (const Json& item : json) flatten(item, key + "." + std::to_string(++index), text);
  } else {
    text += "  " + key + ": " + (json.is_string() ? json.get<std::string>() : json.dump()) + '\n';
  }
}

}  // namespace

Problems as_not_begun(Problems problems, const LogRequest& request) {
  if (!request.workbook.empty()) return problems;
  for (Problem& problem : problems)
    if (problem.code == "file.missing") problem.code = "workbook.none-yet";
  return problems;
}

Result<RecordRef> ref_asked_for(const OpenWorkbook& workbook, const std::string& text) {
  if (const auto named = ref_named(text)) {
    const auto found = workbook.find_even_deleted(*named);
    if (found) return found->ref;
    return Problem{"workbook.not-there", {}, {{"kind", std::string(kind_name(named->kind))}, {"id", named->id}}};
  }
  std::vector<RecordRef> found;
  for (const RecordKind kind : record_kinds)
    if (const auto record = workbook.find_even_deleted({kind, text})) found.push_back(record->ref);
  if (found.size() == 1) return found.front();
  if (found.empty()) return Problem{"workbook.not-there", {}, {{"kind", std::string("record")}, {"id", text}}};
  std::string choices;
  for (const RecordRef& ref : found) choices += (choices.empty() ? "" : " or ") + ref_text(ref);
  return Problem{"workbook.id-ambiguous", {}, {{"id", text}, {"text", choices}}};
}

namespace {

/// Another program may have written something since, so the newest entry need not be ours.
std::string newest_with(const OpenWorkbook& workbook, const std::string& text) {
  constexpr std::size_t most_written_since = 1000;
  for (const RecordLine& line : workbook.list(RecordKind::log_entry, {.subject = {}, .from_day = {}, .to_day = {}, .about = {}, .limit = most_written_since})) {
    const auto found = workbook.find(Id<LogEntry>{line.ref.id});
    if (found && found->record.text == text) return line.ref.id;
  }
  return {};
}

/// What is wrong with an option has no place in a file.
Problems of_option(Problems problems) {
  for (Problem& problem : problems) problem.where = {};
  return problems;
}

}  // namespace

Exit log_add(LogCall& call) {
  const LogRequest& ask = call.request;
  if (ask.operands.size() != 1) {
    call.streams.err << "log add wants the text of the entry, in quotes\n";
    return Exit::wrong_usage;
  }
  Problems problems;
  LogEntry entry;
  entry.text = ask.operands.front();
  entry.day = ask.day;
  entry.sort = ask.observation ? LogSort::observation : LogSort::event;
  for (const std::string& about : ask.about) {
    const auto ref = ref_asked_for(call.workbook, about);
    append(problems, ref.problems());
    if (ref) entry.about.push_back(*ref);
  }
  LogEntry judged = entry;
  // The workbook fills in today.
  if (judged.day.empty()) judged.day = "2000-01-01";
  append(problems, of_option(check(judged)));
  if (!problems.empty()) return refuse(problems, call.streams.err);
  const std::string text = entry.text;
  Change change;
  change.label = "log entry";
  change.log = std::move(entry);
  const auto applied = call.workbook.apply(std::move(change));
  if (!applied) return refuse(applied.problems(), call.streams.err);
  const std::string id = newest_with(call.workbook, text);
  if (call.options.json)
    call.streams.out << Json{{"added", "log-entry:" + id}}.dump(2) << '\n';
  else
    call.streams.out << "Added " << id << ".\n";
  return Exit::done;
}

Exit log_list(LogCall& call) {
  const LogRequest& ask = call.request;
  SearchQuery query;
  query.words = ask.words;
  query.limit = std::size_t{ask.limit} + 1;
  Problems problems;
  const auto day = [&](const std::string& text, std::optional<std::string>& value) {
    if (text.empty()) return;
    value = text;
    append(problems, of_option(check(LogEntry{text, {}, LogSort::event, "-", {}})));
  };
  day(ask.from_day, query.from_day);
  day(ask.to_day, query.to_day);
  if (!ask.material.empty()) query.material = ask.material;
  if (!ask.tree.empty()) query.tree = Id<Tree>{ask.tree};
  const std::string kind = !ask.operands.empty() ? ask.operands.front() : ask.kind;
  if (!kind.empty()) {
    const auto named = kind_named(kind);
    if (named)
      query.kinds = {*named};
    else
      problems.push_back({"record.unknown-kind", {}, {{"text", kind}}});
  } else if (ask.words.empty() && ask.tree.empty() && ask.material.empty()) {
    query.kinds = {RecordKind::log_entry};
  }
  if (!problems.empty()) return refuse(problems, call.streams.err);
  std::vector<RecordLine> lines = search(call.workbook, query);
  if (lines.size() > ask.limit) {
    lines.resize(ask.limit);
    call.streams.err << "The newest " << ask.limit << " are shown; there are more: narrow the list, or ask for more with --limit.\n";
  }
  Problems unreadable;
  const auto done = [&] { return unreadable.empty() ? Exit::done : refuse(unreadable, call.streams.err); };
  if (call.options.json) {
    Json json{{"records", Json::array()}};
    for (const RecordLine& line : lines) json["records"].push_back(line_json(call.workbook, line, unreadable));
    call.streams.out << json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
    return done();
  }
  if (call.request.csv) {
    call.streams.out << csv_row({"kind", "id", "day", "title", "subject", "stock_g", "sieve_tests"});
    for (const RecordLine& line : lines)
      call.streams.out << csv_row({std::string(kind_name(line.ref.kind)), line.ref.id, line.day, line.title, line.subject,
                                   line.stock ? Json(in_g(*line.stock)).dump() : "", std::to_string(line.sieve_tests)});
    return Exit::done;
  }
  if (lines.empty()) {
    call.streams.out << "Nothing found.\n";
    return Exit::done;
  }
  std::vector<std::vector<std::string>> rows;
  for (const RecordLine& line : lines) {
    const auto litres = line.stock ? litres_as_far_as_read(call.workbook, line.ref, unreadable) : std::nullopt;
    rows.push_back({ref_text(line.ref), or_dash(line.day), mass_text(line.stock, call.options.units),
                    volume_text(litres ? std::optional(in_l(*litres)) : std::nullopt, call.options.units), or_dash(line.title)});
  }
  call.streams.out << text_table({"record", "day", "in stock", "loose", "what"}, rows, LastColumn::words);
  return done();
}

Exit log_show(LogCall& call) {
  if (call.request.operands.empty()) {
    call.streams.err << "log show wants the number of a record, like K-07\n";
    return Exit::wrong_usage;
  }
  Problems problems;
  std::string text;
  Json all = Json::array();
  for (const std::string& asked : call.request.operands) {
    const auto ref = ref_asked_for(call.workbook, asked);
    append(problems, ref.problems());
    if (!ref) continue;
    const auto found = call.workbook.find_even_deleted(*ref);
    const bool deleted = !call.workbook.find(*ref);
    Json json = Json::parse(write_identified_record(*ref, found->record));
    std::vector<RecordLine> entries;
    if (ref->kind != RecordKind::log_entry)
      entries = call.workbook.list(RecordKind::log_entry, {.subject = {}, .from_day = {}, .to_day = {}, .about = *ref, .limit = 20});
    text += (text.empty() ? "" : "\n") + ref_text(*ref) + (deleted ? " (removed)" : "") + '\n';
    flatten(json["record"], "", text);
    if (const auto stock = call.workbook.stock_of(*ref)) {
      const auto litres = litres_in_stock(call.workbook, *ref);
      text += "In stock: " + mass_text(*stock, call.options.units) + " dry, " +
              volume_text(litres ? std::optional(in_l(*litres)) : std::nullopt, call.options.units) + " loose\n";
      json["stock_g"] = in_g(*stock);
      json["stock_l"] = litres ? Json(in_l(*litres)) : Json(nullptr);
    }
    if (!entries.empty()) text += "Log:\n";
    for (const RecordLine& entry : entries) text += "  " + entry.day + "  " + entry.title + '\n';
    json["deleted"] = deleted;
    all.push_back(std::move(json));
  }
  if (!problems.empty()) return refuse(problems, call.streams.err);
  if (call.options.json)
    call.streams.out << Json{{"records", all}}.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
  else
    call.streams.out << text;
  return Exit::done;
}

std::unique_ptr<Verb> log_verb() { return std::make_unique<LogVerb>(); }

}  // namespace gritwright::cli
