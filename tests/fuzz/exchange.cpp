#include <algorithm>
#include <string>

#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/formats/record_csv.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = fuzz::text_of(data, size);
  const auto records = read_exchange(text, "input");
  fuzz::must(records || !records.problems().empty());
  const auto list = read_records_csv(kind_of_csv(text).value_or(RecordKind::bag), text, "input");
  fuzz::must(list || !list.problems().empty());
  if (list && !list->records.empty()) {
    const std::string written = write_records_csv(list->kind, list->records);
    const auto again = read_records_csv(list->kind, written, "written");
    // Without ids, what stood apart may stand together now.
    if (std::ranges::none_of(list->records, [](const IdentifiedRecord& record) { return record.ref.id.empty(); }))
      fuzz::must(again.ok() && again->problems.empty() && write_records_csv(again->kind, again->records) == written);
  }
  if (!records) return 0;
  // What was read is written as something that is read and written as the same; a typed fifteenth digit may be rounded on the way.
  for (const IdentifiedRecord& record : *records) {
    const std::string written = write_identified_record(record.ref, record.record);
    const auto again = read_exchange(written, "input");
    if (record.ref.id.empty()) continue;
    fuzz::must(again.ok() && again->size() == 1 && write_identified_record(again->front().ref, again->front().record) == written);
  }
  return 0;
}
