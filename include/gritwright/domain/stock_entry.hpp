#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

enum class StockReason { received, screened_into, screened_out_of, used, returned, spilt, thrown_out, counted };

/// One line of the stock ledger, in dry grain. A count that disagrees is a line with the difference, never an overwrite.
struct StockEntry {
  RecordRef holder;  ///< bag, bin, fraction or batch
  StockReason reason = StockReason::received;
  Mass change{};     ///< dry grain; negative for what went away
  std::optional<LooseVolume> measured;     ///< litres by jug, where that was how it was measured
  std::optional<BulkDensity> density_used; ///< that turned the litres into mass
  std::optional<Mass> counted;             ///< what a count found; `change` is then the difference to the books
  std::optional<RecordRef> other;          ///< where it went to or came from
  std::string day;
  std::string note;
  friend bool operator==(const StockEntry&, const StockEntry&) = default;
};

/// A holder that is no grain; litres without the density that was used; a change with the wrong sign; a day that is none.
[[nodiscard]] Problems check(const StockEntry& entry);

}  // namespace gritwright
