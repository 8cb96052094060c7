#include "gritwright/formats/incoming_records.hpp"

#include <utility>

#include "gritwright/formats/record_csv.hpp"

namespace gritwright {

namespace {

bool looks_like_json(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
  return first != std::string_view::npos && (text[first] == '{' || text[first] == '[');
}

}  // namespace

Result<IncomingRecords> read_incoming(std::string_view text, const std::string& file_name, std::optional<RecordKind> kind,
                                      const ComponentSources& sources) {
  if (looks_like_json(text)) {
    auto records = read_exchange(text, file_name, sources);
    if (!records) return records.problems();
    return IncomingRecords{std::move(records).value(), {}};
  }
  if (!kind) kind = kind_of_csv(text);
  Place place;
  place.file = file_name;
  if (!kind) return Problem{"import.no-kind", std::move(place), {}};
  auto list = read_records_csv(*kind, text, file_name);
  if (!list) return list.problems();
  CsvRecords read = std::move(list).value();
  return IncomingRecords{std::move(read.records), std::move(read.problems)};
}

}  // namespace gritwright
