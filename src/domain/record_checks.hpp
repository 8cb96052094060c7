#pragma once
// What the checks of several records share.

#include <optional>
#include <string>
#include <string_view>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

[[nodiscard]] inline Problem problem_at(const char* code, std::string pointer, Facts facts = {}) {
  Place place;
  place.pointer = std::move(pointer);
  return {code, std::move(place), std::move(facts)};
}

/// True for a day of the calendar like "2026-03-14".
[[nodiscard]] bool is_calendar_day(std::string_view text);

inline void check_day(Problems& problems, const std::string& pointer, const std::string& day) {
  if (!is_calendar_day(day)) problems.push_back(problem_at("date.not-a-day", pointer, {{"text", day}}));
}
inline void check_day(Problems& problems, const std::string& pointer, const std::optional<std::string>& day) {
  if (day) check_day(problems, pointer, *day);
}
inline void check_name(Problems& problems, const std::string& pointer, const std::string& name) {
  if (name.find_first_not_of(" \t\n\r") == std::string::npos) problems.push_back(problem_at("record.no-name", pointer));
}
/// An amount that was given must be above 0.
template <class T>
void check_amount(Problems& problems, const std::string& pointer, const std::optional<T>& amount) {
  if (amount && !(*amount > T{})) problems.push_back(problem_at("record.amount-not-positive", pointer));
}
/// A share of a mix that is lost leaves some of it.
template <class Share>
void check_lost_share(Problems& problems, const char* code, const std::string& pointer, const std::optional<Share>& lost) {
  if (lost && !(lost->value() >= 0 && lost->value() < 1)) problems.push_back(problem_at(code, pointer, {{"share", lost->value()}}));
}
/// Bags, bins, fractions and batches hold grain.
[[nodiscard]] inline bool holds_grain(const RecordRef& ref) {
  return ref.kind == RecordKind::bag || ref.kind == RecordKind::bin || ref.kind == RecordKind::fraction ||
         ref.kind == RecordKind::batch;
}
inline void check_grain(Problems& problems, const std::string& pointer, const RecordRef& ref) {
  if (!holds_grain(ref) || ref.id.empty()) problems.push_back(problem_at("record.not-grain", pointer, {{"text", ref_text(ref)}}));
}
[[nodiscard]] inline std::string item(const char* list, std::size_t index, const char* key = "") {
  return std::string(list) + "/" + std::to_string(index) + key;
}

}  // namespace gritwright
