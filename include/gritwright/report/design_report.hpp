#pragma once
#include <string>
#include <vector>

#include "gritwright/models/recipe_search.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// A wish in a few words: "air in a at least 15 %".
[[nodiscard]] std::string wish_text(const Wish& wish, UnitSystem units);

/// The recipes in parts, what they miss, and whether that is proven best; or what contradicts each other and the nearest recipe.
[[nodiscard]] std::string design_text(const DesignProblem& problem, const DesignAnswer& answer, UnitSystem units);

/// How recipes are scored, ordered and proven.
[[nodiscard]] std::vector<Explanation> explain_design();

/// Price of a mixed litre of a recipe of the problem whose price is known. Key price.
[[nodiscard]] Explanation explain_price(const DesignProblem& problem, const RatedRecipe& recipe);

}  // namespace gritwright
