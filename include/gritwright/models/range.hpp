#pragma once
#include <cstddef>
#include <cstdint>
#include <span>

namespace gritwright {

/// 5, 50 and 95 % of a figure.
struct Range {
  double low = 0;
  double median = 0;
  double high = 0;
  friend bool operator==(const Range&, const Range&) = default;
};

/// 5, 50 and 95 % of values in any order, by linear interpolation between neighbours. Precondition: not empty.
[[nodiscard]] Range range_of(std::span<const double> values);

/// How many draws, and which.
struct SampleSize {
  std::size_t draws = 4096;  ///< powers of two sample best
  std::uint64_t seed = 1;
};

/// Standard normal: 95 % lie below.
inline constexpr double score_of_95_percent = 1.6448536269514722;

}  // namespace gritwright
