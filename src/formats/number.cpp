#include "gritwright/formats/number.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <system_error>
#include <utility>

namespace gritwright {

namespace {

Problem refused(std::string code, std::string_view text) {
  return Problem{std::move(code), {}, {{"text", std::string(text)}}};
}

bool looks_numeric(std::string_view text) {
  // from_chars would take "nan", "inf" and "infinity".
  return std::ranges::all_of(text, [](char sign) { return std::string_view("0123456789.,eE+-").find(sign) != std::string_view::npos; });
}

/// Whether a number beyond a double's range is so by being small.
bool runs_towards_zero(std::string_view text) {
  const auto exponent = text.find_first_of("eE");
  if (exponent != std::string_view::npos) return text.substr(exponent + 1).starts_with('-');
  return text.substr(text.starts_with('-') ? 1 : 0).starts_with('0') || text.find('.') <= 1;
}

}  // namespace

std::string_view beyond_measure(double value) {
  if (std::abs(value) > largest_measured) return "number.too-large";
  if (value != 0 && std::abs(value) < smallest_measured) return "number.too-small";
  return {};
}

int written_decimals(std::string_view number) {
  const auto exponent = number.find_first_of("eE");
  const std::string_view digits = number.substr(0, exponent);
  const auto mark = digits.find_first_of(".,");
  const int behind_mark = mark == std::string_view::npos ? 0 : static_cast<int>(digits.size() - mark - 1);
  if (exponent == std::string_view::npos) return behind_mark;
  std::string_view power = number.substr(exponent + 1);
  if (power.starts_with('+')) power.remove_prefix(1);
  int ten = 0;
  std::from_chars(power.data(), power.data() + power.size(), ten);
  return behind_mark - std::clamp(ten, -300, 300);
}

Result<double> parse_number(std::string_view text, DecimalMark mark) {
  if (text.empty()) return Problem{"number.missing", {}, {}};
  if (!looks_numeric(text)) return refused("number.not-a-number", text);

  std::string with_point(text);
  const auto commas = std::ranges::count(text, ',');
  if (commas > 0) {
    if (mark == DecimalMark::point) return refused("number.decimal-comma", text);
    if (commas > 1 || text.find('.') != std::string_view::npos) return refused("number.not-a-number", text);
    std::ranges::replace(with_point, ',', '.');
  }

  double value = 0;
  const char* const end = with_point.data() + with_point.size();
  const auto [stopped, error] = std::from_chars(with_point.data(), end, value);
  if (stopped != end || error == std::errc::invalid_argument) return refused("number.not-a-number", text);
  if (error == std::errc::result_out_of_range) return refused(runs_towards_zero(with_point) ? "number.too-small" : "number.too-large", text);
  if (const auto code = beyond_measure(value); !code.empty()) return refused(std::string(code), text);
  return value;
}

}  // namespace gritwright
