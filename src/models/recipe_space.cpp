#include "gritwright/models/recipe_space.hpp"

#include <algorithm>
#include <numeric>

namespace gritwright {

namespace {

/// Ways to write totals up to `total` as an ordered sum of `components` positive numbers: C(total, components).
std::uint64_t compositions_up_to(int total, int components) { return subset_count(total, components); }

/// Moebius function of 1..20.
int moebius(int number) {
  int sign = 1;
  for (int prime = 2; prime <= number; ++prime) {
    if (number % prime != 0) continue;
    number /= prime;
    if (number % prime == 0) return 0;
    sign = -sign;
  }
  return sign;
}

}  // namespace

int WholeRecipe::total() const { return std::accumulate(parts.begin(), parts.begin() + count, 0); }

PartPatterns::PartPatterns(int components, int total) : components_(components) {
  std::array<int, 6> parts{};
  const auto place = [&](const auto& self, int at, int left, int divisor) -> void {
    if (at == components_) {
      if (divisor != 1) return;
      for (int i = 0; i < components_; ++i) rows_[static_cast<std::size_t>(i)].push_back(parts[static_cast<std::size_t>(i)]);
      totals_.push_back(total - left);
      return;
    }
    for (int here = 1; here <= left - (components_ - at - 1); ++here) {
      parts[static_cast<std::size_t>(at)] = here;
      self(self, at + 1, left - here, std::gcd(divisor, here));
    }
  };
  place(place, 0, total, 0);
  size_ = totals_.size();
}

std::uint64_t subset_count(int candidates, int chosen) {
  if (chosen > candidates) return 0;
  std::uint64_t count = 1;
  for (int i = 1; i <= chosen; ++i) count = count * static_cast<std::uint64_t>(candidates - chosen + i) / static_cast<std::uint64_t>(i);
  return count;
}

std::array<std::uint8_t, 6> subset_at(int candidates, int chosen, std::uint64_t index) {
  std::array<std::uint8_t, 6> subset{};
  int next = 0;
  for (int i = 0; i < chosen; ++i) {
    for (;; ++next) {
      const std::uint64_t with_next = subset_count(candidates - next - 1, chosen - i - 1);
      if (index < with_next) break;
      index -= with_next;
    }
    subset[static_cast<std::size_t>(i)] = static_cast<std::uint8_t>(next++);
  }
  return subset;
}

std::uint64_t recipe_count(int candidates, int components, int total) {
  std::uint64_t count = 0;
  for (int chosen = 1; chosen <= std::min({candidates, components, total}); ++chosen) {
    // Ways without a common divisor, by inclusion and exclusion over the divisor.
    std::int64_t ways = 0;
    for (int divisor = 1; divisor <= total; ++divisor)
      ways += moebius(divisor) * static_cast<std::int64_t>(compositions_up_to(total / divisor, chosen));
    count += subset_count(candidates, chosen) * static_cast<std::uint64_t>(ways);
  }
  return count;
}

}  // namespace gritwright
