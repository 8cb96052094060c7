#pragma once
// What is told about the recipes found: figures, misses, what binds, room of the wishes, trade-offs.

#include <vector>

#include "gritwright/models/recipe_search.hpp"
#include "recipe_ground.hpp"
#include "recipe_order.hpp"

namespace gritwright::recipe_search {

/// A recipe with all its figures; doses in the ground's numbering. `known` is the recipe worked out, where a search has it already.
[[nodiscard]] RatedRecipe rated(const Ground& ground, const std::vector<Dose>& doses, Strictness strictness, const WorkedOut* known = nullptr);

/// Recipes that may take the first place when a wish moves.
inline constexpr std::size_t most_rivals = 150;

struct TradeOffs {
  std::vector<TradeOff> air_and_water;
  std::vector<TradeOff> price_and_fit;
};

/// What the recipes that were looked at show together. The first `found` hold every hard wish, the very first is the best.
class KnownRecipes {
 public:
  KnownRecipes(const Ground& ground, std::vector<std::vector<Dose>> recipes, std::size_t found);

  /// Their figures are worked out in so many slices, in whatever order, on whatever threads; before anything below is asked.
  [[nodiscard]] std::size_t slices() const;
  void work_out(std::size_t slice);

  /// Wishes that can move.
  [[nodiscard]] const std::vector<std::size_t>& wishes() const { return wishes_; }
  /// How far a wish may move before another of the first recipes comes first or, where it is hard, one that breaks nothing else.
  [[nodiscard]] WishRoom room(std::size_t wish) const;
  /// The recipes that no other of them beats in both figures.
  [[nodiscard]] TradeOffs trade_offs() const;

 private:
  /// A recipe in a trade-off picture.
  struct Spot {
    double across = 0;
    double up = 0;
    bool shown = false;
  };
  struct Standing {
    double score = 0;
    std::uint64_t broken = 0;
    bool within_stock = true;
  };
  [[nodiscard]] std::vector<FigureRanges> breaking_only(std::size_t wish) const;
  [[nodiscard]] std::vector<TradeOff> not_beaten(const std::vector<Spot>& spots, double sign_across, double sign_up) const;

  const Ground& ground_;
  std::vector<std::vector<Dose>> recipes_;
  std::vector<std::size_t> wishes_;
  std::vector<FigureRanges> rivals_;  ///< the first recipes
  std::vector<Standing> standings_;   ///< by recipe
  std::vector<Spot> water_;           ///< by recipe
  std::vector<Spot> price_;
};

}  // namespace gritwright::recipe_search
