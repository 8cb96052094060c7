#pragma once
// Spaces too large to walk whole: the best of a smaller space, improved part by part.

#include "recipe_whole_search.hpp"

namespace gritwright::recipe_search {

/// Spaces up to this are walked whole.
inline constexpr std::uint64_t largest_walk = 1000000000;

/// The form with fewer parts and components whose space holds at most `recipes`.
[[nodiscard]] RecipeForm smaller_form(RecipeForm form, std::size_t candidates, std::uint64_t recipes);

/// Good recipes of a large space, never proven: the distinct best of a smaller one, each improved by single changes until none
/// helps.
[[nodiscard]] WholeSearchResult search_large(const BoundTables& tables, const RecipeForm& form, Strictness strictness,
                                             std::size_t wanted, const SearchControl& control, int stage);

}  // namespace gritwright::recipe_search
