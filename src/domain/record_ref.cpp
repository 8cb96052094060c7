#include "gritwright/domain/record_ref.hpp"

namespace gritwright {

std::string_view kind_name(RecordKind kind) {
  switch (kind) {
    case RecordKind::material: return "material";
    case RecordKind::bag: return "bag";
    case RecordKind::bin: return "bin";
    case RecordKind::fraction: return "fraction";
    case RecordKind::sieve_set: return "sieve-set";
    case RecordKind::sieve_test: return "sieve-test";
    case RecordKind::mix: return "mix";
    case RecordKind::container: return "container";
    case RecordKind::tree: return "tree";
    case RecordKind::root_mass_plan: return "root-mass-plan";
    case RecordKind::repotting_day: return "repotting-day";
    case RecordKind::batch: return "batch";
    case RecordKind::pot_test: return "pot-test";
    case RecordKind::stock_entry: return "stock-entry";
    case RecordKind::log_entry: return "log-entry";
    case RecordKind::species_profile: return "species-profile";
  }
  return "";
}

std::optional<RecordKind> kind_named(std::string_view name) {
  for (const RecordKind kind : record_kinds)
    if (kind_name(kind) == name) return kind;
  return std::nullopt;
}

std::string ref_text(const RecordRef& ref) { return std::string(kind_name(ref.kind)) + ":" + ref.id; }

std::optional<RecordRef> ref_named(std::string_view text) {
  const auto colon = text.find(':');
  if (colon == std::string_view::npos || colon + 1 == text.size()) return std::nullopt;
  const auto kind = kind_named(text.substr(0, colon));
  if (!kind) return std::nullopt;
  return RecordRef{*kind, std::string(text.substr(colon + 1))};
}

}  // namespace gritwright
