#include "gritwright/formats/exchange_file.hpp"

#include <nlohmann/json.hpp>
#include <ostream>
#include <utility>

#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "json_document.hpp"
#include "long_lists.hpp"
#include "record_reading.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

constexpr const char* workbook_format = "gritwright/workbook/1";
constexpr const char* record_format_name = "gritwright/record/1";
/// A file with more faults than this is of another kind, or was spoiled by a program; the first ones tell enough.
constexpr std::size_t most_problems = 1'000;

std::string quoted(const std::string& text) {
  return nlohmann::json(text).dump(-1, ' ', false, nlohmann::detail::error_handler_t::replace);
}

/// `{"kind":..,"id":..,"record":{..}}`; other keys are refused by `finish`.
std::optional<IdentifiedRecord> identified(JsonObject& object, Problems& problems) {
  const auto kind_text = object.required_text("kind");
  const auto id = object.required_text("id");
  const JsonValue* body = object.take("record");
  object.finish();
  if (body == nullptr && object.is_object()) object.report("key.missing", object.pointer(), {{"key", std::string("record")}});
  if (id && id->empty()) object.report("record.no-name", object.at("id"));
  const auto kind = kind_text ? kind_named(*kind_text) : std::nullopt;
  if (kind_text && !kind) object.report("record.unknown-kind", object.at("kind"), {{"text", *kind_text}});
  if (!kind || !id || body == nullptr) return std::nullopt;
  Result<Record> record = read_record_value(*kind, *body);
  if (!record) {
    append(problems, under(record.problems(), object.at("record")));
    return std::nullopt;
  }
  return IdentifiedRecord{{*kind, *id}, std::move(record).value(), {}};
}

std::vector<IdentifiedRecord> one(RecordKind kind, Record record, const std::string& file_name) {
  Place from;
  from.file = file_name;
  return {{{kind, {}}, std::move(record), std::move(from)}};
}

/// A file of another command, as the record that keeps it.
Result<std::vector<IdentifiedRecord>> read_kin(const std::string& format, std::string_view text, const std::string& file_name,
                                               const ComponentSources& sources) {
  if (format == "gritwright/container/1") {
    Result<ContainerFile> file = read_container(text, file_name, sources);
    if (!file) return file.problems();
    return one(RecordKind::container, RecordedContainer{file->container, {}, {}, false, {}}, file_name);
  }
  if (format == "gritwright/mix/1") {
    Result<MixFile> file = read_mix(text, file_name, sources);
    if (!file) return file.problems();
    MixVersion version;
    version.mix = file->mix;
    return one(RecordKind::mix, std::move(version), file_name);
  }
  Result<SieveTest> test = read_sieve_test(text, file_name);
  if (!test) return test.problems();
  RecordedSieveTest recorded;
  recorded.test = std::move(test).value();
  return one(RecordKind::sieve_test, std::move(recorded), file_name);
}

bool is_kin(const std::string& format) {
  return format == "gritwright/container/1" || format == "gritwright/mix/1" || format == "gritwright/sieve-test/1";
}

}  // namespace

ExchangeWriter::ExchangeWriter(std::ostream& out, const std::string& note) : out_(out) {
  out_ << "{\"format\":" << quoted(workbook_format);
  if (!note.empty()) out_ << ",\"note\":" << quoted(note);
  out_ << ",\"records\":[";
}

void ExchangeWriter::add(const RecordRef& ref, const Record& record) {
  out_ << (first_ ? "\n" : ",\n") << "{\"kind\":" << quoted(std::string(kind_name(ref.kind))) << ",\"id\":" << quoted(ref.id)
       << ",\"record\":" << write_record(record) << '}';
  first_ = false;
}

void ExchangeWriter::finish() { out_ << "\n]}\n"; }

std::string write_identified_record(const RecordRef& ref, const Record& record) {
  nlohmann::ordered_json json{{"format", record_format_name}, {"kind", kind_name(ref.kind)}, {"id", ref.id}};
  json["record"] = nlohmann::ordered_json::parse(write_record(record));
  return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + '\n';
}

Result<std::vector<IdentifiedRecord>> read_exchange(std::string_view text, const std::string& file_name, const ComponentSources& sources) {
  std::vector<IdentifiedRecord> records;
  Problems problems;
  const auto take = [&](std::size_t index, const JsonValue& item) {
    if (problems.size() >= most_problems) return;
    const std::string pointer = "/records/" + std::to_string(index);
    JsonObject object(item, pointer, problems);
    if (auto read = identified(object, problems)) {
      read->from.file = file_name;
      read->from.pointer = pointer;
      records.push_back(*std::move(read));
    }
  };
  const Result<JsonValue> root = parse_json_list(text, "records", largest_exchange_mb, take);
  if (!root) return placed_in(root.problems(), file_name);
  const auto named = root->members.find("format");
  const std::string format = named == root->members.end() ? std::string() : named->second.text;
  if (is_kin(format)) return read_kin(format, text, file_name, sources);
  if (format == workbook_format) {
    JsonObject object(*root, "", problems);
    object.format(workbook_format);
    object.text("note");
    (void)object.required_array("records");
    object.finish();
    if (!problems.empty()) return placed_in(std::move(problems), file_name);
    return records;
  }
  if (format == record_format_name) {
    JsonObject object(*root, "", problems);
    object.format(record_format_name);
    auto read = identified(object, problems);
    if (!problems.empty() || !read) return placed_in(std::move(problems), file_name);
    read->from.file = file_name;
    return std::vector{*std::move(read)};
  }
  for (const RecordKind kind : record_kinds) {
    if (format != record_format(kind)) continue;
    Result<Record> record = read_record(kind, text, file_name);
    if (!record) return record.problems();
    return one(kind, std::move(record).value(), file_name);
  }
  Place place;
  place.file = file_name;
  place.pointer = "/format";
  return Problem{"format.unknown", std::move(place), {{"found", format}, {"expected", std::string(workbook_format)}}};
}

}  // namespace gritwright
