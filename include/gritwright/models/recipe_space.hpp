#pragma once
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace gritwright {

/// A recipe of whole parts as searches hold it: candidates rising, parts > 0 without a common divisor (2:2 is 1:1).
struct WholeRecipe {
  std::uint8_t count = 0;
  std::array<std::uint8_t, 6> candidates{};
  std::array<std::uint8_t, 6> parts{};

  [[nodiscard]] int total() const;
  friend bool operator==(const WholeRecipe&, const WholeRecipe&) = default;
};

/// All ways to share out at most `total` whole parts among exactly `components` candidates, each way once: no common divisor.
/// By components, so that kernels run along one row.
class PartPatterns {
 public:
  /// components 1..6, total 1..20.
  PartPatterns(int components, int total);

  [[nodiscard]] int components() const { return components_; }
  [[nodiscard]] std::size_t size() const { return size_; }
  /// Parts of the i-th component in every pattern.
  [[nodiscard]] std::span<const double> row(int i) const { return rows_[static_cast<std::size_t>(i)]; }
  /// All parts of every pattern.
  [[nodiscard]] std::span<const double> totals() const { return totals_; }

 private:
  int components_;
  std::size_t size_ = 0;
  std::array<std::vector<double>, 6> rows_;
  std::vector<double> totals_;
};

/// How many subsets of exactly `chosen` out of `candidates` there are.
[[nodiscard]] std::uint64_t subset_count(int candidates, int chosen);

/// The `index`-th subset of `chosen` out of `candidates` in lexicographic order. Precondition: index < subset_count().
[[nodiscard]] std::array<std::uint8_t, 6> subset_at(int candidates, int chosen, std::uint64_t index);

/// How many recipes there are of 1..`components` candidates with a total up to `total`.
[[nodiscard]] std::uint64_t recipe_count(int candidates, int components, int total);

}  // namespace gritwright
