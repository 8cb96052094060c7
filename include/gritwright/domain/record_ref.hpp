#pragma once
#include <array>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "gritwright/id.hpp"

namespace gritwright {

/// Everything a workbook keeps.
enum class RecordKind {
  material,
  bag,
  bin,
  fraction,
  sieve_set,
  sieve_test,
  mix,
  container,
  tree,
  root_mass_plan,
  repotting_day,
  batch,
  pot_test,
  stock_entry,
  log_entry,
  species_profile
};

inline constexpr std::array<RecordKind, 16> record_kinds{
    RecordKind::material, RecordKind::bag,  RecordKind::bin,            RecordKind::fraction,      RecordKind::sieve_set,
    RecordKind::sieve_test, RecordKind::mix, RecordKind::container,     RecordKind::tree,          RecordKind::root_mass_plan,
    RecordKind::repotting_day, RecordKind::batch, RecordKind::pot_test, RecordKind::stock_entry,   RecordKind::log_entry,
    RecordKind::species_profile};

/// As files spell it: "sieve-test".
[[nodiscard]] std::string_view kind_name(RecordKind kind);
[[nodiscard]] std::optional<RecordKind> kind_named(std::string_view name);

/// A record of any kind by its printable id ("K-07").
struct RecordRef {
  RecordKind kind = RecordKind::bag;
  std::string id;
  friend auto operator<=>(const RecordRef&, const RecordRef&) = default;
};

/// "bag:K-07", as files spell a reference.
[[nodiscard]] std::string ref_text(const RecordRef& ref);
[[nodiscard]] std::optional<RecordRef> ref_named(std::string_view text);

}  // namespace gritwright
