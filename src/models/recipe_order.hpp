#pragma once
// The order of recipes and what counts as another recipe: pure functions on figures that are known or known to lie in a range.

#include <compare>
#include <cstdint>
#include <vector>

#include "gritwright/models/recipe_space.hpp"

namespace gritwright::recipe_search {

/// Scores and prices are put on a grid, so that what lies that close ties, and ties stay ties through any chain of them.
inline constexpr double cells_per_unit = 1e9;

/// The part of the order that figures decide: score, then price, unpriced after priced.
struct FigureKey {
  double score_cell = 0;
  double price_cell = 0;  ///< infinite where there is no price
  friend auto operator<=>(const FigureKey&, const FigureKey&) = default;
};

[[nodiscard]] FigureKey figure_key(double score, double price);

/// Cells up to which a score by itself does not lie beyond a key's. An infinite one does not lie beyond another; one right between two cells
/// counts as not beyond.
[[nodiscard]] inline double farthest_score_cell(const FigureKey& key) { return key.score_cell + 0.5; }
[[nodiscard]] inline bool score_lies_beyond(double score, double farthest_cell) { return score * cells_per_unit > farthest_cell; }
[[nodiscard]] inline bool score_lies_beyond(double score, const FigureKey& key) { return score_lies_beyond(score, farthest_score_cell(key)); }

/// The rest of the order: fewer components, names, smaller total, larger parts in the order of the names. Candidates are numbered
/// in the order of their names; `name_ranks` are equal for equal names.
[[nodiscard]] bool comes_before(const WholeRecipe& a, const WholeRecipe& b, const std::vector<int>& name_ranks);

/// Some candidate's share of the loose volume differs by 10 points or more.
[[nodiscard]] bool distinct(const WholeRecipe& a, const WholeRecipe& b);

/// A recipe with what is known of its place in the order.
struct Entry {
  FigureKey low;
  FigureKey high;
  bool doubtful = false;  ///< a hard wish or the stock may still exclude it
  WholeRecipe recipe;
};

/// The first `count` entries by their upper keys of which each is distinct from those before it.
[[nodiscard]] std::vector<Entry> distinct_first(std::vector<Entry> entries, std::size_t count, const std::vector<int>& name_ranks);

}  // namespace gritwright::recipe_search
