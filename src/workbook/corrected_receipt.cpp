#include "corrected_receipt.hpp"

#include <utility>
#include <variant>

#include "gritwright/formats/record_file.hpp"
#include "gritwright/workbook/stock_ledger.hpp"

namespace gritwright {

std::optional<Edit> corrected_receipt(OpenWorkbook::Inside& inside, const RecordRef& bag, const Bag& was, const Bag& now) {
  const auto dry = dry_mass_received(now);
  if (!dry || dry == dry_mass_received(was)) return std::nullopt;
  Query found = inside.query(
      "SELECT r.id, r.revision, r.body FROM stock s JOIN record r ON r.number = s.number WHERE s.holder_kind = ?1 AND s.holder_id = ?2"
      " AND r.body IS NOT NULL");
  found.with(std::string(kind_name(bag.kind)), bag.id);
  std::optional<Stored<StockEntry>> receipt;
  while (found.step()) {
    const RecordRef ref{RecordKind::stock_entry, found.text(0)};
    const Result<Record> record = read_record(ref.kind, found.text(2), ref_text(ref));
    if (!record) return std::nullopt;
    const auto& entry = std::get<StockEntry>(*record);
    if (entry.reason == StockReason::counted || (receipt && entry.reason == StockReason::received)) return std::nullopt;
    if (entry.reason == StockReason::received) receipt = Stored<StockEntry>{{ref.id}, found.whole(1), entry};
  }
  if (!receipt) return std::nullopt;
  auto corrected = arrival_of(bag, now, receipt->record.day);
  if (!corrected) return std::nullopt;
  corrected->other = receipt->record.other;
  corrected->note = receipt->record.note;
  return Edit{ref_to(receipt->id), receipt->revision, Record(*std::move(corrected))};
}

}  // namespace gritwright
