#pragma once
#include <string_view>

#include "gritwright/result.hpp"

namespace gritwright {

enum class DecimalMark { point, point_or_comma };

/// The number `text` spells from its first to its last sign, whatever the locale; no unit, no thousands mark, no leading plus.
/// Errors: number.missing (empty), number.not-a-number (rubbish, "nan", "inf", "12g3"), number.too-large ("1e999"),
/// number.decimal-comma (a comma where only a point may stand). The place is left to the caller.
[[nodiscard]] Result<double> parse_number(std::string_view text, DecimalMark mark = DecimalMark::point);

}  // namespace gritwright
