#pragma once
// What the whole shelf can't reach, known before any search. Proofs: docs/science/recipe-search.md.

#include <cstdint>

#include "recipe_bounds.hpp"

namespace gritwright::recipe_search {

/// Hard wishes that no mix of the candidates holds, whatever its parts. Precondition: the tables are tabulated where such a wish asks for
/// water; see asks_for_most_water.
[[nodiscard]] std::uint64_t out_of_reach(const BoundTables& tables);

/// Whether a hard wish asks for some air or water at least.
[[nodiscard]] bool asks_for_most_water(const Ground& ground);

}  // namespace gritwright::recipe_search
