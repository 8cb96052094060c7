#pragma once
#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/slice_runner.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// How far a search has come. `stage` 1: recipes, 2: the nearest recipe, 3: contradictions.
struct SearchProgress {
  int stage = 1;
  std::uint64_t covered = 0;  ///< recipes examined or excluded in this stage
  std::uint64_t whole = 0;
};

/// What a search is run with. The answer is the same for every runner.
struct SearchControl {
  SliceRunner runner = run_in_order;
  std::stop_token stop;                                  ///< a stopped search gives what it has, unproven
  std::function<void(const SearchProgress&)> progress;   ///< may be called from the runner's threads
  std::function<bool()> contradictions_time_is_up;       ///< asked from the runner's threads; empty: no limit
};

/// What the search for contradictions may take; the caller has the clock.
inline constexpr double contradictions_limit_s = 15;

/// By how much a recipe misses a wish.
struct Miss {
  double amount = 0;     ///< in the wish's own unit; infinite where a figure is not defined
  double violation = 0;  ///< in points, as the score counts it
};

/// A recipe with its figures.
struct RatedRecipe {
  std::vector<double> parts;   ///< one for each candidate, 0 included; whole numbers, or shares of the loose volume
  MixState mix;                ///< of all candidates with these parts
  RetentionConstants water;    ///< the problem's, or blended of what was learnt of the candidates
  std::map<std::string, PotWater> pots;       ///< empty where a particle density is missing
  std::optional<PricePerLitre> price;         ///< of a mixed litre
  double score = 0;
  std::vector<Miss> misses;                   ///< one for each wish
  std::vector<std::size_t> binding;           ///< wishes that are missed, or met right at a limit
  std::vector<std::size_t> used_up;           ///< candidates whose stock the recipe needs whole, within 1 %
};

/// How far the limits of a wish may move, in its own unit, before another of the best recipes found comes first. Empty: as far
/// as limits can go, or 60 points.
struct WishRoom {
  std::size_t wish = 0;
  std::optional<double> stricter;
  std::optional<double> looser;
};

/// One recipe of a trade-off picture: nothing known beats it in both figures.
struct TradeOff {
  std::vector<double> parts;
  double across = 0;
  double up = 0;
};

struct DesignAnswer {
  std::vector<RatedRecipe> recipes;  ///< up to ten, best first, each distinct from those before it
  /// Sets of hard wishes (by their places) that no recipe within stock holds together; only where there is no recipe. Complete:
  /// all that are minimal; else some that are sure.
  std::vector<std::vector<std::size_t>> contradictions;
  bool contradictions_complete = true;
  std::optional<RatedRecipe> nearest;  ///< only where there is no recipe
  std::uint64_t examined = 0;          ///< recipes whose figures were worked out
  std::uint64_t excluded = 0;          ///< recipes that a bound excludes
  bool proven = false;                 ///< examined + excluded is the whole space
  std::optional<double> gap;           ///< unproven: by how much the best score may be too high; 0: no recipe scores less
  std::vector<WishRoom> room;
  std::optional<double> rounding_cost;  ///< score of the best whole recipe less that of the best free shares found near those listed; empty where a figure is not defined
  std::vector<TradeOff> air_and_water;  ///< share of air across, of water up, in the first pot
  std::vector<TradeOff> price_and_fit;  ///< price across, score up
  bool stopped = false;
  Notes notes;
};

namespace recipe_search {
class Ground;
}

/// Rates one recipe after another by the full model. What a search tells of a recipe are these very numbers, to the last digit and
/// in whatever order the candidates stand.
class RecipeRater {
 public:
  /// Precondition: check(problem) is empty.
  explicit RecipeRater(const DesignProblem& problem);
  ~RecipeRater();
  RecipeRater(const RecipeRater&) = delete;
  RecipeRater& operator=(const RecipeRater&) = delete;

  /// `parts`: one for each candidate, some above 0. Counting hard wishes as soft ones, with their weight, is how a nearest recipe is
  /// found.
  [[nodiscard]] RatedRecipe rate(std::span<const double> parts, bool hard_as_soft = false) const;

 private:
  std::unique_ptr<const recipe_search::Ground> ground_;
};

/// Sizes in wishes that no candidate was tested at. Codes design.size-not-tested.
[[nodiscard]] Problems check_tested_sizes(const DesignProblem& problem);

/// Hard wishes that no candidate alone touches and therefore no recipe does: the figure of a mix lies between those of its
/// components. Source: docs/science/recipe-search.md.
[[nodiscard]] Notes wishes_out_of_reach(const DesignProblem& problem);

/// Searches recipes. Fails with the problems of check(problem) and check_tested_sizes(problem).
[[nodiscard]] Result<DesignAnswer> design(const DesignProblem& problem, const SearchControl& control = {});

}  // namespace gritwright
