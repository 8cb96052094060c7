#pragma once
#include <string_view>

#include "gritwright/result.hpp"

namespace gritwright {

/// What a measured value can be, in whatever unit it is written: 0, or a magnitude between these two. Beyond them its square or
/// cube would leave what a double holds.
inline constexpr double smallest_measured = 1e-15;
inline constexpr double largest_measured = 1e15;

/// The code of the problem with a finite number that no measurement gives (number.too-large, number.too-small); empty for others.
[[nodiscard]] std::string_view beyond_measure(double value);

enum class DecimalMark { point, point_or_comma };

/// The number `text` spells from its first to its last sign, whatever the locale; no unit, no thousands mark, no leading plus.
/// Errors: number.missing (empty), number.not-a-number (rubbish, "nan", "inf", "12g3"), number.too-large ("1e999"), number.too-small ("1e-999"),
/// number.decimal-comma (a comma where only a point may stand). The place is left to the caller.
[[nodiscard]] Result<double> parse_number(std::string_view text, DecimalMark mark = DecimalMark::point);

/// The power of ten that the last written digit stands for, with its sign turned: 1 for "12.5", 0 for "12", -1 for "1.5e2".
/// Precondition: `number` was taken by parse_number, or by a JSON parser, whose decimal mark may be the locale's.
[[nodiscard]] int written_decimals(std::string_view number);

}  // namespace gritwright
