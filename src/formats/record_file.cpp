#include "gritwright/formats/record_file.hpp"

#include <utility>

#include "record_fields.hpp"
#include "record_reading.hpp"

namespace gritwright {

namespace {

using RecordFields =
    std::tuple<fields::OwnMaterialFields, fields::BagFields, fields::BinFields, fields::FractionFields, fields::SieveSetFields,
               fields::RecordedSieveTestFields, fields::MixVersionFields, fields::RecordedContainerFields, fields::TreeFields,
               fields::KeptRootMassPlanFields, fields::RepottingDayFields, fields::BatchFields, fields::PotTestFields,
               fields::StockEntryFields, fields::LogEntryFields, fields::SpeciesProfileFields>;
static_assert(std::tuple_size_v<RecordFields> == std::variant_size_v<Record>);

template <std::size_t i = 0>
void read_fields(RecordReader& reader, std::size_t index, Record& record) {
  if constexpr (i < std::variant_size_v<Record>) {
    if (index != i) return read_fields<i + 1>(reader, index, record);
    std::tuple_element_t<i, RecordFields>{}(reader, record.emplace<i>());
  }
}

template <std::size_t i = 0>
void write_fields(RecordWriter& writer, const Record& record) {
  if constexpr (i < std::variant_size_v<Record>) {
    if (record.index() != i) return write_fields<i + 1>(writer, record);
    std::tuple_element_t<i, RecordFields>{}(writer, std::get<i>(record));
  }
}

Result<Record> placed(Result<Record> record, const std::string& file_name) {
  if (record) return record;
  return placed_in(record.problems(), file_name);
}

}  // namespace

Result<Record> read_record_value(RecordKind kind, const JsonValue& value) {
  Problems problems;
  Record record;
  JsonObject object(value, "", problems);
  object.format(record_format(kind));
  RecordReader reader(object, problems);
  read_fields(reader, static_cast<std::size_t>(kind), record);
  object.finish();
  if (!problems.empty()) return problems;
  return record;
}

std::string record_format(RecordKind kind) {
  // A mix, a container and a sieve test have files of their own; in a workbook they stand inside a record.
  switch (kind) {
    case RecordKind::mix: return "gritwright/mix-version/1";
    case RecordKind::container: return "gritwright/recorded-container/1";
    case RecordKind::sieve_test: return "gritwright/recorded-sieve-test/1";
    case RecordKind::material: return "gritwright/own-material/1";
    case RecordKind::root_mass_plan: return "gritwright/kept-root-mass-plan/1";
    case RecordKind::repotting_day: return "gritwright/recorded-repotting-day/1";
    case RecordKind::pot_test: return "gritwright/recorded-pot-test/1";
    default: return "gritwright/" + std::string(kind_name(kind)) + "/1";
  }
}

std::string write_record(const Record& record) {
  RecordWriter writer;
  writer.json()["format"] = record_format(kind_of_record(record));
  write_fields(writer, record);
  // A broken sign in a name must not lose the record: it is replaced, not thrown at.
  return writer.json().dump(-1, ' ', false, nlohmann::detail::error_handler_t::replace);
}

Result<Record> read_record(RecordKind kind, std::string_view text, std::string file_name) {
  const Result<JsonValue> root = parse_json(text);
  if (!root) return placed_in(root.problems(), file_name);
  return placed(read_record_value(kind, *root), file_name);
}

Result<Record> read_record(std::string_view text, std::string file_name) {
  const Result<JsonValue> root = parse_json(text);
  if (!root) return placed_in(root.problems(), file_name);
  const auto format = root->members.find("format");
  if (format != root->members.end())
    for (const RecordKind kind : record_kinds)
      if (format->second.text == record_format(kind)) return placed(read_record_value(kind, *root), file_name);
  return placed(read_record_value(RecordKind::bag, *root), file_name);
}

}  // namespace gritwright
