#pragma once
#include "gritwright/models/recipe_search.hpp"
#include "json_out.hpp"

namespace gritwright::cli {

/// The answer of a search: recipes, contradictions, the nearest recipe, counts and proof, room of the wishes, trade-offs.
[[nodiscard]] Json design_json(const DesignProblem& problem, const DesignAnswer& answer);

}  // namespace gritwright::cli
