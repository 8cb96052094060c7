#pragma once
#include <algorithm>
#include <string>

namespace gritwright {

/// The same ISO day some years later; the 29th of February becomes the 28th, which every year has.
[[nodiscard]] inline std::string years_later(const std::string& day, int years) {
  std::string year = std::to_string(std::stoi(day.substr(0, 4)) + years);
  year.insert(0, 4 - std::min<std::size_t>(4, year.size()), '0');
  const std::string rest = day.substr(4);
  return year + (rest == "-02-29" ? "-02-28" : rest);
}

}  // namespace gritwright
