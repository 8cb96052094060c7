#include "recipe_large_search.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

namespace gritwright::recipe_search {

namespace {

/// A smaller space of this size is walked in a fraction of a second.
constexpr std::uint64_t small_walk = 1000000;
/// Starts for each recipe that is wanted.
constexpr std::size_t starts_for_each = 3;

/// Parts of every candidate.
using Parts40 = std::array<int, most_candidates>;

Parts40 spread_out(const WholeRecipe& recipe) {
  Parts40 parts{};
  for (std::size_t i = 0; i < recipe.count; ++i) parts[recipe.candidates[i]] = recipe.parts[i];
  return parts;
}

/// The recipe without a common divisor; empty where the form does not allow it.
std::optional<WholeRecipe> recipe_of(const Parts40& parts, const RecipeForm& form) {
  int divisor = 0, total = 0, count = 0;
  for (const int part : parts) {
    divisor = std::gcd(divisor, part);
    total += part;
    count += part > 0 ? 1 : 0;
  }
  if (count == 0 || count > form.components || total / divisor > form.total) return std::nullopt;
  WholeRecipe recipe;
  for (std::size_t k = 0; k < parts.size(); ++k) {
    if (parts[k] == 0) continue;
    recipe.candidates[recipe.count] = static_cast<std::uint8_t>(k);
    recipe.parts[recipe.count++] = static_cast<std::uint8_t>(parts[k] / divisor);
  }
  return recipe;
}

class Improver {
 public:
  Improver(const BoundTables& tables, const RecipeForm& form, Strictness strictness, const SearchControl& control)
      : ground_(tables.ground()), form_(form), strictness_(strictness), control_(control), bounds_(tables, strictness) {}

  /// Takes the best single change as long as there is one; every recipe on the way is kept.
  void improve(WholeRecipe recipe) {
    auto best = entry(recipe);
    while (best && !control_.stop.stop_requested()) {
      std::optional<Entry> better;
      for (const WholeRecipe& near : neighbours(best->recipe)) {
        const auto other = entry(near, better ? better->high : best->high);
        if (other && before(*other, better ? *better : *best)) better = other;
      }
      if (!better) return;
      best = better;
    }
  }

  [[nodiscard]] std::uint64_t examined() const { return examined_; }
  [[nodiscard]] std::vector<Entry> take() && { return std::move(found_); }

 private:
  [[nodiscard]] bool before(const Entry& a, const Entry& b) const {
    if (const auto order = a.high <=> b.high; order != 0) return order < 0;
    return comes_before(a.recipe, b.recipe, ground_.name_ranks());
  }

  /// Empty where a hard wish or the stock excludes the recipe, or a bound says that it lies behind `limit`.
  std::optional<Entry> entry(const WholeRecipe& recipe, std::optional<FigureKey> limit = {}) {
    std::array<double, 6> parts{};
    for (std::size_t i = 0; i < recipe.count; ++i) parts[i] = recipe.parts[i];
    bounds_.choose({recipe.candidates.data(), recipe.count});
    const FigureRanges& bound = bounds_.bound_figures({parts.data(), recipe.count});
    const Rating least = ground_.rate(bound, strictness_);
    if (ground_.asks_for_volumes() &&
        (least.broken != 0 || !least.within_stock || (limit && score_lies_beyond(least.score.low, *limit))))
      return std::nullopt;
    ++examined_;
    ground_.evaluate(doses_of(recipe), workspace_, scratch_, figures_);
    const Rating rating = ground_.rate(figures_, strictness_);
    if (rating.broken != 0 || !rating.within_stock) return std::nullopt;
    std::optional<Entry> made = Entry{figure_key(rating.score.low, figures_.price ? figures_.price->low : infinite),
                                      figure_key(rating.score.high, figures_.price ? figures_.price->high : infinite), false, recipe};
    if (rating.doubtful != 0 || rating.stock_doubtful) made = exact_entry(ground_, recipe, strictness_);
    if (made) found_.push_back(*made);
    return made;
  }

  /// One part more or less, a candidate more or another in its place, in the recipe as it is, doubled and tripled.
  [[nodiscard]] std::vector<WholeRecipe> neighbours(const WholeRecipe& recipe) const {
    std::vector<WholeRecipe> list;
    const auto add = [&](const Parts40& parts) {
      if (const auto made = recipe_of(parts, form_)) list.push_back(*made);
    };
    for (int times = 1; times <= 3; ++times) {
      Parts40 parts = spread_out(recipe);
      for (int& part : parts) part *= times;
      for (std::size_t from = 0; from < ground_.size(); ++from) {
        if (parts[from] == 0) continue;
        for (const int change : {-1, 1}) {
          parts[from] += change;
          add(parts);
          parts[from] -= change;
        }
        for (std::size_t to = 0; to < ground_.size(); ++to) {
          if (to == from) continue;
          parts[from] -= 1;
          parts[to] += 1;
          add(parts);
          parts[from] += 1;
          parts[to] -= 1;
          if (parts[to] == 0 && times == 1) {
            std::swap(parts[from], parts[to]);
            add(parts);
            std::swap(parts[from], parts[to]);
          }
        }
      }
      for (std::size_t more = 0; more < ground_.size(); ++more) {
        if (parts[more] != 0) continue;
        parts[more] = 1;
        add(parts);
        parts[more] = 0;
      }
    }
    return list;
  }

  const Ground& ground_;
  RecipeForm form_;
  Strictness strictness_;
  const SearchControl& control_;
  SubsetBounds bounds_;
  MixEvaluator::Workspace workspace_;
  RecipeFigures scratch_;
  FigureRanges figures_;
  std::vector<Entry> found_;
  std::uint64_t examined_ = 0;
};

}  // namespace

RecipeForm smaller_form(RecipeForm form, std::size_t candidates, std::uint64_t recipes) {
  const auto count = [&] { return recipe_count(static_cast<int>(candidates), form.components, form.total); };
  while (form.total > 8 && count() > recipes) --form.total;
  while (form.components > 2 && count() > recipes) --form.components;
  while (form.total > form.components && count() > recipes) --form.total;
  return form;
}

WholeSearchResult search_large(const BoundTables& tables, const RecipeForm& form, Strictness strictness, std::size_t wanted,
                               const SearchControl& control, int stage) {
  const Ground& ground = tables.ground();
  WholeSearchResult result;
  const auto walk_small = [&](Strictness how) {
    const WholeSearchResult small =
        search_whole(tables, smaller_form(form, ground.size(), small_walk), how, starts_for_each * wanted, control, stage);
    result.stopped = result.stopped || small.stopped;
    result.examined += small.examined;
    result.excluded += small.excluded;
    return small.recipes;
  };
  const auto improve_all = [&](const std::vector<WholeRecipe>& starts, Strictness how) {
    std::vector<std::vector<Entry>> found(starts.size());
    std::vector<std::uint64_t> examined(starts.size(), 0);
    control.runner(starts.size(), [&](std::size_t i) {
      Improver improver(tables, form, how, control);
      improver.improve(starts[i]);
      examined[i] = improver.examined();
      found[i] = std::move(improver).take();
    });
    std::vector<Entry> all;
    for (std::size_t i = 0; i < found.size(); ++i) {
      all.insert(all.end(), found[i].begin(), found[i].end());
      result.examined += examined[i];
    }
    return all;
  };

  std::vector<WholeRecipe> starts = walk_small(strictness);
  if (starts.empty() && strictness == Strictness::as_wished) {
    // Few parts keep no hard wish; on the way from what comes nearest, more parts may.
    std::vector<Entry> nearest = improve_all(walk_small(Strictness::all_soft), Strictness::all_soft);
    std::erase_if(nearest, [&](const Entry& entry) { return !exact_entry(ground, entry.recipe, strictness); });
    for (const Entry& entry : distinct_first(std::move(nearest), starts_for_each * wanted, ground.name_ranks())) starts.push_back(entry.recipe);
  }
  result.pool = improve_all(starts, strictness);
  std::vector<Entry> exact;
  for (const Entry& entry : distinct_first(result.pool, 2 * wanted, ground.name_ranks()))
    if (const auto known = exact_entry(ground, entry.recipe, strictness)) exact.push_back(*known);
  for (const Entry& entry : distinct_first(exact, wanted, ground.name_ranks())) result.recipes.push_back(entry.recipe);
  result.stopped = result.stopped || control.stop.stop_requested();
  return result;
}

}  // namespace gritwright::recipe_search
