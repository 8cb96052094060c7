#pragma once
#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <numbers>

namespace gritwright {

/// How many draws are worked out side by side, so that one instruction works on several. Figures stand in rows, one place for each of them; what a
/// draw comes to never hangs on those beside it.
inline constexpr std::size_t draws_abreast = 16;

/// Two figures of neighbouring draws: what every processor this is built for works on at once.
using Pair [[gnu::vector_size(16)]] = double;

[[nodiscard]] inline Pair pair_at(const double* place) {
  Pair pair;
  std::memcpy(&pair, place, sizeof pair);
  return pair;
}

inline void put_pair(const Pair& pair, double* place) { std::memcpy(place, &pair, sizeof pair); }

/// e to these powers, within 3e-16 of it, for -700 <= power <= 700. Plain arithmetic: two at a time, and the same digits on every processor.
[[nodiscard]] inline Pair raised_e(const Pair& power) {
  using Bits [[gnu::vector_size(16)]] = std::int64_t;
  constexpr double rounding = 0x1.8p52;  // what is added to it loses its fraction
  constexpr double ln2_high = 0x1.62e42feep-1, ln2_low = 0x1.a39ef35793c76p-33;  // the first has few digits, so that its multiples are exact
  const Pair rounded = power * std::numbers::log2e + rounding;
  const Pair doublings = rounded - rounding;
  const Pair x = (power - doublings * ln2_high) - doublings * ln2_low;
  const Pair square = x * x;
  // Taylor's series to x^13, even and odd powers apart; |x| <= ln(2)/2.
  const Pair even = 1 + square * (1.0 / 2 + square * (1.0 / 24 + square * (1.0 / 720 + square * (1.0 / 40320 + square * (1.0 / 3628800 + square * (1.0 / 479001600))))));
  const Pair odd = 1 + square * (1.0 / 6 + square * (1.0 / 120 + square * (1.0 / 5040 + square * (1.0 / 362880 + square * (1.0 / 39916800 + square * (1.0 / 6227020800))))));
  const Pair raised = even + x * odd;
  return std::bit_cast<Pair>(std::bit_cast<Bits>(raised) + (std::bit_cast<Bits>(rounded) << 52));
}

/// The same of a row, in place.
template <std::size_t count>
inline void raise_e(double* row) {
  if constexpr (count == 1) {
    *row = raised_e(Pair{*row, 0})[0];
  } else {
    static_assert(count % 2 == 0);
    for (std::size_t i = 0; i < count; i += 2) put_pair(raised_e(pair_at(row + i)), row + i);
  }
}

}  // namespace gritwright
