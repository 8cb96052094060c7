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

/// Free shares that a search proposes.
struct FreeProposal {
  double least_score = 0;  ///< as far as the fast evaluator knows it; infinite where they surely break a hard wish or the stock
  std::vector<Dose> doses;
};
/// Free shares of the same candidates as `near`, improved from it.
[[nodiscard]] FreeProposal free_shares_near(const Ground& ground, const std::vector<Dose>& near, Strictness strictness);
/// The least score of the proposals by the full model, which is asked only where one may still be the best. Empty where none keeps the
/// hard wishes.
[[nodiscard]] std::optional<double> least_free_score(const Ground& ground, std::vector<FreeProposal> proposals, Strictness strictness);

/// What a wish on gradings or shares asks of the mass shares of all candidates, in percent of the mass and a multiple of the
/// share; empty for the other wishes.
[[nodiscard]] std::vector<LinearRow> linear_rows(const BoundTables& tables, const PlainWish& wish);

/// Hard wishes out of reach, and sets of up to three hard wishes on gradings and shares that no free shares hold together; minimal
/// by inclusion among free shares. Empty sets of a stopped search are not the last word.
[[nodiscard]] std::vector<std::vector<std::size_t>> linear_contradictions(const BoundTables& tables, const std::stop_token& stop);

}  // namespace gritwright::recipe_search
