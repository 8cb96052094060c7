#pragma once
// What no recipe of the candidates falls below. Proofs: docs/science/recipe-search.md.

#include "recipe_bounds.hpp"

namespace gritwright::recipe_search {

/// No recipe of the candidates, of whatever form, scores less.
[[nodiscard]] double least_score(const BoundTables& tables);

}  // namespace gritwright::recipe_search
