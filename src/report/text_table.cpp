#include "gritwright/report/text_table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace gritwright {

namespace {

// Columns line up by what is seen: bytes that continue a UTF-8 character take no place.
std::size_t shown_width(const std::string& text) {
  return static_cast<std::size_t>(
      std::ranges::count_if(text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }));
}

std::string padded(std::string text, std::size_t width, bool flush_left) {
  // A typed line end or a terminal's control sign would break the row.
  std::ranges::replace_if(text, [](char sign) { return (sign >= 0 && sign < ' ') || sign == '\x7F'; }, ' ');
  const std::string space(width - shown_width(text), ' ');
  return flush_left ? text + space : space + text;
}

}  // namespace

std::string figure(std::optional<double> value, int decimals) {
  if (!value) return "–";
  std::string text = fmt::format("{:.{}f}", *value, decimals);
  if (text.starts_with('-') && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
  return text;
}

std::string text_table(const std::vector<std::string>& heading, const std::vector<std::vector<std::string>>& rows, LastColumn last) {
  std::vector<std::size_t> widths;
  for (std::size_t column = 0; column < heading.size(); ++column) {
    std::size_t width = shown_width(heading[column]);
    for (const auto& row : rows) width = std::max(width, shown_width(row.at(column)));
    widths.push_back(width);
  }
  std::string text;
  const auto add = [&](const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t column = 0; column < widths.size(); ++column) {
      const bool is_words = column == 0 || (last == LastColumn::words && column + 1 == widths.size());
      line += (column == 0 ? "" : "  ") + padded(cells[column], widths[column], is_words);
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + '\n';
  };
  add(heading);
  for (const auto& row : rows) add(row);
  return text;
}

}  // namespace gritwright
