#include "gritwright/models/range.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

Range range_of(std::span<double> values) {
  // The middle first: the other two then lie in a half each.
  auto from = values.begin(), to = values.end();
  const auto quantile = [&](double share) {
    const double place = share * static_cast<double>(values.size() - 1);
    const auto below = values.begin() + static_cast<std::ptrdiff_t>(place);
    std::nth_element(from, below, to);
    const double next = below + 1 == to ? *below : *std::min_element(below + 1, to);
    return std::lerp(*below, next, place - std::floor(place));
  };
  Range range;
  range.median = quantile(0.5);
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) / 2);
  if (values.size() > 2) to = middle + 1;
  range.low = quantile(0.05);
  from = middle, to = values.end();
  range.high = quantile(0.95);
  return range;
}

}  // namespace gritwright
