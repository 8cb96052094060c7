#include "gritwright/models/range.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <vector>

namespace gritwright {

namespace {

/// Two neighbours in rising order and how far between them a quantile lies.
struct QuantilePlace {
  std::size_t below = 0;
  std::size_t above = 0;
  double way = 0;
};

QuantilePlace place_of(double share, std::size_t count) {
  const double place = share * static_cast<double>(count - 1);
  const auto below = static_cast<std::size_t>(place);
  return {below, std::min(below + 1, count - 1), place - std::floor(place)};
}

using Ranks = std::array<std::size_t, 6>;

/// The values of those ranks. Sorting a few buckets is an eighth of the work of three partial sorts of thousands of values.
std::array<double, 6> values_of_ranks(std::span<const double> values, const Ranks& ranks) {
  constexpr std::size_t buckets = 512;
  std::array<double, 6> found{};
  const auto [least, most] = std::ranges::minmax(values);
  const double scale = (buckets - 1) / (most - least);
  if (values.size() < buckets || !(scale > 0) || !std::isfinite(scale)) {
    std::vector<double> sorted(values.begin(), values.end());
    std::ranges::sort(sorted);
    for (std::size_t i = 0; i < ranks.size(); ++i) found[i] = sorted[ranks[i]];
    return found;
  }
  std::vector<std::uint16_t> bucket_of(values.size());
  std::array<std::size_t, buckets + 1> before{};
  for (std::size_t i = 0; i < values.size(); ++i) {
    bucket_of[i] = static_cast<std::uint16_t>((values[i] - least) * scale);
    ++before[bucket_of[i] + std::size_t{1}];
  }
  for (std::size_t bucket = 0; bucket < buckets; ++bucket) before[bucket + 1] += before[bucket];
  std::array<std::size_t, 6> wanted_bucket{};
  std::array<bool, buckets> wanted{};
  for (std::size_t i = 0; i < ranks.size(); ++i) {
    wanted_bucket[i] = static_cast<std::size_t>(std::ranges::upper_bound(before, ranks[i]) - before.begin()) - 1;
    wanted[wanted_bucket[i]] = true;
  }
  std::vector<double> gathered;
  for (std::size_t i = 0; i < values.size(); ++i)
    if (wanted[bucket_of[i]]) gathered.push_back(values[i]);
  std::ranges::sort(gathered);
  std::size_t first = 0;  // of the bucket among those gathered
  for (std::size_t bucket = 0; bucket < buckets; ++bucket) {
    if (!wanted[bucket]) continue;
    for (std::size_t i = 0; i < ranks.size(); ++i)
      if (wanted_bucket[i] == bucket) found[i] = gathered[first + ranks[i] - before[bucket]];
    first += before[bucket + 1] - before[bucket];
  }
  return found;
}

}  // namespace

Range range_of(std::span<const double> values) {
  const std::array places{place_of(0.05, values.size()), place_of(0.5, values.size()), place_of(0.95, values.size())};
  const auto found = values_of_ranks(values, {places[0].below, places[0].above, places[1].below, places[1].above, places[2].below, places[2].above});
  return {std::lerp(found[0], found[1], places[0].way), std::lerp(found[2], found[3], places[1].way), std::lerp(found[4], found[5], places[2].way)};
}

}  // namespace gritwright
