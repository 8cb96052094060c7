#pragma once
// The search over whole parts: every recipe is examined or excluded by a bound. Proofs: docs/science/recipe-search.md.

#include <atomic>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "gritwright/models/recipe_search.hpp"
#include "recipe_bounds.hpp"
#include "recipe_order.hpp"

namespace gritwright::recipe_search {

struct WholeSearchResult {
  std::vector<WholeRecipe> recipes;  ///< distinct, best first
  std::vector<std::shared_ptr<const WorkedOut>> worked_out;  ///< of each of them where the search had to know; may be shorter
  std::vector<Entry> pool;           ///< everything found that is not beyond the last recipe's neighbourhood
  std::uint64_t examined = 0;
  std::uint64_t excluded = 0;
  bool proven = false;
  bool stopped = false;
};

/// Counts what slices have covered and tells the caller.
class ProgressCounter {
 public:
  ProgressCounter(const SearchControl& control, int stage, std::uint64_t whole) : control_(control), stage_(stage), whole_(whole) {}
  void add(std::uint64_t covered) {
    const std::uint64_t sum = covered_.fetch_add(covered) + covered;
    if (control_.progress) control_.progress({stage_, sum, whole_});
  }

 private:
  const SearchControl& control_;
  int stage_;
  std::uint64_t whole_;
  std::atomic<std::uint64_t> covered_{0};
};

/// One numbered part of the subsets of up to `components` candidates: every `slices`-th one, small subsets first.
class SubsetWalk {
 public:
  SubsetWalk(int candidates, int components, std::size_t slice, std::size_t slices);
  /// False at the end.
  bool next();
  [[nodiscard]] std::span<const std::uint8_t> subset() const { return {subset_.data(), static_cast<std::size_t>(chosen_)}; }
  /// The same with zeros behind it.
  [[nodiscard]] const std::array<std::uint8_t, 6>& places() const { return subset_; }

 private:
  int candidates_;
  int components_;
  std::uint64_t slices_;
  int chosen_ = 1;
  std::uint64_t index_;
  bool begun_ = false;
  std::array<std::uint8_t, 6> subset_{};
};

/// The patterns for 1..components candidates; those for `c` at c - 1.
[[nodiscard]] std::vector<PartPatterns> part_patterns(int components, int total);

/// The `wanted` first distinct recipes of the whole space.
[[nodiscard]] WholeSearchResult search_whole(const BoundTables& tables, const RecipeForm& form, Strictness strictness,
                                             std::size_t wanted, const SearchControl& control, int stage);

/// A recipe's exact place in the order; empty where a hard wish or the stock excludes it.
[[nodiscard]] std::optional<Entry> exact_entry(const Ground& ground, const WholeRecipe& recipe, Strictness strictness);

}  // namespace gritwright::recipe_search
