#include "text_door.hpp"

#include <algorithm>
#include <chrono>
#include <optional>
#include <set>
#include <string>

#include "long_lists.hpp"

namespace gritwright {

namespace {

unsigned byte_at(std::string_view text, std::size_t offset) { return static_cast<unsigned char>(text[offset]); }

/// Bytes of the well-formed UTF-8 sequence at `offset`, 0 if there is none (overlong, surrogate, beyond U+10FFFF, cut off).
std::size_t sequence_length(std::string_view text, std::size_t offset) {
  const unsigned lead = byte_at(text, offset);
  if (lead < 0x80) return 1;
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || offset + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byte_at(text, offset + i) & 0xC0U) != 0x80U) return 0;
  const unsigned second = byte_at(text, offset + 1);
  const bool ill_formed = (lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ||
                          (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F);
  return ill_formed ? 0 : length;
}

std::optional<std::size_t> first_byte_not_utf8(std::string_view text) {
  for (std::size_t offset = 0; offset < text.size();) {
    const std::size_t length = sequence_length(text, offset);
    if (length == 0) return offset;
    offset += length;
  }
  return std::nullopt;
}

}  // namespace

Problems check_text(std::string_view text) { return check_long_text(text, largest_text_mb); }

Problems check_long_text(std::string_view text, std::size_t limit_mb) {
  if (text.size() > limit_mb * 1024 * 1024) return {Problem{"file.too-large", {}, {{"limit_mb", static_cast<double>(limit_mb)}}}};
  if (trimmed(without_byte_order_mark(text)).empty()) return {Problem{"file.empty", {}, {}}};
  if (const auto nul = text.find('\0'); nul != std::string_view::npos) return {Problem{"text.nul", place_at(text, nul), {}}};
  if (const auto bad = first_byte_not_utf8(text)) return {Problem{"text.not-utf8", place_at(text, *bad), {}}};
  return {};
}

std::string_view without_byte_order_mark(std::string_view text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  return text;
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n\v\f";
  const auto first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string in_small_letters(std::string_view text) {
  std::string small(text);
  for (char& sign : small)
    if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
  return small;
}

Place place_at(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, offset);
  const auto line_start = before.rfind('\n');
  const std::size_t column = line_start == std::string_view::npos ? offset : offset - line_start - 1;
  Place place;
  place.line = static_cast<int>(std::ranges::count(before, '\n')) + 1;
  place.column = static_cast<int>(column) + 1;
  return place;
}

Problems placed_in(Problems problems, const std::string& file) {
  // A number no measurement gives was told when it was read; what else is wrong with it at its place follows from that.
  std::set<std::string> beyond_measure;
  std::erase_if(problems, [&](const Problem& problem) {
    if (problem.where.file || problem.where.pointer.empty()) return false;
    if (!problem.code.starts_with("number.too-")) return beyond_measure.contains(problem.where.pointer);
    beyond_measure.insert(problem.where.pointer);
    return false;
  });
  for (Problem& problem : problems)
    if (!problem.where.file) problem.where.file = file;
  return problems;
}

bool is_iso_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto digits = [&](std::size_t from, std::size_t count) -> std::optional<int> {
    int value = 0;
    for (const char sign : text.substr(from, count)) {
      if (sign < '0' || sign > '9') return std::nullopt;
      value = value * 10 + (sign - '0');
    }
    return value;
  };
  const auto year = digits(0, 4), month = digits(5, 2), day = digits(8, 2);
  if (!year || !month || !day) return false;
  return std::chrono::year_month_day(std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                                     std::chrono::day(static_cast<unsigned>(*day)))
      .ok();
}

}  // namespace gritwright
