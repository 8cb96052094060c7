#pragma once
// What is told about the recipes found: figures, misses, what binds, room of the wishes, trade-offs.

#include <vector>

#include "gritwright/models/recipe_search.hpp"
#include "recipe_ground.hpp"
#include "recipe_order.hpp"

namespace gritwright::recipe_search {

/// A recipe with all its figures; doses in the ground's numbering.
[[nodiscard]] RatedRecipe rated(const Ground& ground, const std::vector<Dose>& doses, Strictness strictness);

/// How far each wish may move before another of `recipes` comes before the first of them.
[[nodiscard]] std::vector<WishRoom> rooms(const Ground& ground, const std::vector<std::vector<Dose>>& recipes);

struct TradeOffs {
  std::vector<TradeOff> air_and_water;
  std::vector<TradeOff> price_and_fit;
};
/// The recipes of `known` that no other of them beats in both figures.
[[nodiscard]] TradeOffs trade_offs(const Ground& ground, const std::vector<std::vector<Dose>>& known, Strictness strictness);

}  // namespace gritwright::recipe_search
