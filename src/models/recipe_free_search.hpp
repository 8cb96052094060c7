#pragma once
// The search over free shares: proposals of NLopt's SLSQP from a fixed set of starts, each worked out again by the full model.

#include <optional>
#include <stop_token>
#include <vector>

#include "gritwright/models/free_shares.hpp"
#include "recipe_whole_search.hpp"

namespace gritwright::recipe_search {

struct FreeRecipe {
  FigureKey key;
  double score = 0;
  std::vector<Dose> doses;  ///< shares of the loose volume, sum 1, candidates rising
};

struct FreeSearchResult {
  std::vector<FreeRecipe> recipes;  ///< distinct, best first
  std::uint64_t examined = 0;       ///< proposals worked out
  bool stopped = false;
};

[[nodiscard]] FreeSearchResult search_free(const BoundTables& tables, const RecipeForm& form, Strictness strictness,
                                           std::size_t wanted, const SearchControl& control);

/// The best free recipe found of the same candidates as `near`. Empty where none keeps the hard wishes.
[[nodiscard]] std::optional<FreeRecipe> free_recipe_near(const Ground& ground, const std::vector<Dose>& near, Strictness strictness);

/// What a wish on gradings or shares asks of the mass shares of all candidates, in percent of the mass and a multiple of the
/// share; empty for the other wishes.
[[nodiscard]] std::vector<LinearRow> linear_rows(const BoundTables& tables, const PlainWish& wish);

/// Hard wishes out of reach, and sets of up to three hard wishes on gradings and shares that no free shares hold together; minimal
/// by inclusion among free shares. Empty sets of a stopped search are not the last word.
[[nodiscard]] std::vector<std::vector<std::size_t>> linear_contradictions(const BoundTables& tables, const std::stop_token& stop);

}  // namespace gritwright::recipe_search
