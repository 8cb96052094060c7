#pragma once
#include <optional>
#include <string>
#include <vector>

namespace gritwright {

/// What `convert` makes of a value that may be unknown.
template <class Value, class Convert>
[[nodiscard]] std::optional<double> number(const std::optional<Value>& value, Convert convert) {
  return value ? std::optional<double>(convert(*value)) : std::nullopt;
}

/// A figure with `decimals`, a point, and a dash where there is none. Never "-0".
[[nodiscard]] std::string figure(std::optional<double> value, int decimals);

enum class LastColumn {
  figures,  ///< flush right like those before it
  words     ///< flush left, so that a long text makes its own line long and no other
};

/// A table in text: a heading line, then rows; the first column flush left, the others flush right.
[[nodiscard]] std::string text_table(const std::vector<std::string>& heading, const std::vector<std::vector<std::string>>& rows,
                                     LastColumn last = LastColumn::figures);

}  // namespace gritwright
