#pragma once
// Everything a workbook can hold, as one value.

#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/batch.hpp"
#include "gritwright/domain/bin.hpp"
#include "gritwright/domain/fraction.hpp"
#include "gritwright/domain/log_entry.hpp"
#include "gritwright/domain/mix_version.hpp"
#include "gritwright/domain/own_material.hpp"
#include "gritwright/domain/pot_test.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/recorded_container.hpp"
#include "gritwright/domain/recorded_sieve_test.hpp"
#include "gritwright/domain/repotting_day.hpp"
#include "gritwright/domain/sieve_set.hpp"
#include "gritwright/domain/species_profile.hpp"
#include "gritwright/domain/stock_entry.hpp"
#include "gritwright/domain/tree.hpp"

namespace gritwright {

/// A root-mass plan is kept as the text of its own file format, whose codec belongs to the plan.
struct KeptRootMassPlan {
  std::string name;
  std::optional<Id<Tree>> tree;
  std::optional<std::string> day;
  std::optional<Id<MixVersion>> mix;  ///< that fills the rest of the pot
  std::string plan;  ///< JSON of the plan's file format
  std::string note;
  friend bool operator==(const KeptRootMassPlan&, const KeptRootMassPlan&) = default;
};

using Record = std::variant<OwnMaterial, Bag, Bin, Fraction, SieveSet, RecordedSieveTest, MixVersion, RecordedContainer, Tree,
                            KeptRootMassPlan, RepottingDay, Batch, PotTest, StockEntry, LogEntry,
                            SpeciesProfile>;

/// The kind of a record type, in the order of `Record`.
template <class R>
inline constexpr RecordKind kind_of = [] {
  static_assert(std::variant_size_v<Record> == record_kinds.size());
  return []<std::size_t... I>(std::index_sequence<I...>) {
    RecordKind found = RecordKind::bag;
    ((std::is_same_v<R, std::variant_alternative_t<I, Record>> ? (found = record_kinds[I], 0) : 0), ...);
    return found;
  }(std::make_index_sequence<std::variant_size_v<Record>>{});
}();

[[nodiscard]] inline RecordKind kind_of_record(const Record& record) { return record_kinds[record.index()]; }

template <class R>
[[nodiscard]] RecordRef ref_to(const Id<R>& id) {
  return {kind_of<R>, id.text};
}

/// What `check` finds in the record held.
[[nodiscard]] Problems check(const Record& record);

}  // namespace gritwright
