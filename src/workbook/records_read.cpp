#include "records_read.hpp"

#include <utility>

#include "gritwright/formats/record_file.hpp"
#include "inside.hpp"

namespace gritwright {

namespace {

// Some tens of megabytes. A workbook of many seasons, read from end to end, begins anew.
constexpr std::size_t most_records_kept = 20'000;

}  // namespace

Record RecordsRead::of(const RecordRef& ref, const std::string& body) {
  const auto found = kept_.find(ref);
  // The text is compared and not its revision: a change that fails gives its revision back.
  if (found != kept_.end() && found->second.body == body) return found->second.record;
  Result<Record> read = read_record(ref.kind, body, ref_text(ref));
  if (!read) throw WorkbookTrouble({"workbook.record-unreadable", {}, {{"kind", std::string(kind_name(ref.kind))}, {"id", ref.id}}});
  if (kept_.size() >= most_records_kept) kept_.clear();
  return kept_.insert_or_assign(ref, Kept{body, std::move(read).value()}).first->second.record;
}

}  // namespace gritwright
