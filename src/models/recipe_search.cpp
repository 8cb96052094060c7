#include "gritwright/models/recipe_search.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/grading_curve.hpp"
#include "recipe_answer.hpp"
#include "recipe_contradictions.hpp"
#include "recipe_free_search.hpp"
#include "recipe_large_search.hpp"
#include "recipe_least_score.hpp"
#include "recipe_reach.hpp"
#include "recipe_whole_search.hpp"

namespace gritwright {

using namespace recipe_search;

namespace {

constexpr std::size_t wanted_recipes = 10;
/// A trade-off picture needs no more.
constexpr std::size_t most_known = 5000;
/// Coarse recipes of the whole space that a trade-off picture looks at besides.
constexpr std::uint64_t surveyed = 4000;

/// Every size a wish reads, with its place in the file.
struct SizeAsked {
  Aperture size;
  std::string pointer;
};

std::vector<SizeAsked> sizes_asked(const DesignProblem& problem) {
  std::vector<SizeAsked> sizes;
  for (std::size_t i = 0; i < problem.wishes.size(); ++i) {
    const std::string wish = "/wishes/" + std::to_string(i);
    const WishFigure& figure = problem.wishes[i].figure;
    if (const auto* band = std::get_if<PassingLimits>(&figure))
      for (std::size_t j = 0; j < band->limits.size(); ++j)
        sizes.push_back({band->limits[j].aperture, wish + "/limits/" + std::to_string(j) + "/aperture_mm"});
    if (const auto* grading = std::get_if<NearestGrading>(&figure))
      for (std::size_t j = 0; j < grading->points.size(); ++j)
        sizes.push_back({grading->points[j].aperture, wish + "/nearest/" + std::to_string(j) + "/aperture_mm"});
    if (const auto* share = std::get_if<BandShare>(&figure)) {
      if (in_mm(share->from) > 0) sizes.push_back({share->from, wish + "/band/from_mm"});
      sizes.push_back({share->to, wish + "/band/to_mm"});
    }
    if (const auto* finer = std::get_if<FinerShare>(&figure)) sizes.push_back({finer->size, wish + "/finer_than_mm"});
  }
  return sizes;
}

bool tested_at(const Candidate& candidate, Aperture size) {
  return GradingCurve(candidate.component.sizes).passing_at(size).has_value();
}

/// Notes on figures that stand on an assumption or are missing.
Notes notes_on_candidates(const DesignProblem& problem) {
  Notes notes;
  const auto sizes = sizes_asked(problem);
  for (const Candidate& candidate : problem.candidates) {
    for (const SizeAsked& asked : sizes) {
      if (tested_at(candidate, asked.size)) continue;
      notes.push_back({"design.size-assumed", Level::note, candidate.component.name, {{"aperture_mm", in_mm(asked.size)}}});
      break;
    }
    if (problem.need && candidate.stock && !candidate.component.grain.particle_density)
      notes.push_back({"design.stock-not-checked", Level::warning, candidate.component.name, {}});
  }
  return notes;
}

Notes notes_out_of_reach(const BoundTables& tables) {
  const std::uint64_t out = out_of_reach(tables);
  Notes notes;
  for (std::size_t i = 0; i < tables.ground().wishes().size(); ++i)
    if ((out >> i & 1U) != 0)
      notes.push_back({"design.wish-out-of-reach", Level::warning, "/wishes/" + std::to_string(i), {{"wish", static_cast<double>(i)}}});
  return notes;
}

/// Builds the answer of one problem.
class Designer {
 public:
  Designer(const DesignProblem& problem, const SearchControl& control)
      : problem_(problem),
        control_(control),
        ground_(problem),
        tables_(ground_),
        space_(recipe_count(static_cast<int>(ground_.size()), problem.form.components, problem.form.total)),
        too_large_(space_ > largest_walk) {
    control.runner(2, [this](std::size_t task) { task == 0 ? ground_.prepare_evaluator() : tables_.tabulate(); });
  }

  DesignAnswer run() {
    answer_.notes = notes_on_candidates(problem_);
    append(answer_.notes, notes_out_of_reach(tables_));
    if (problem_.form.whole)
      whole();
    else
      free();
    return std::move(answer_);
  }

 private:
  void whole() {
    const WholeSearchResult found = best_whole(Strictness::as_wished, wanted_recipes, 1);
    answer_.examined = found.examined;
    answer_.excluded = found.excluded;
    answer_.proven = found.proven;
    answer_.stopped = found.stopped;
    std::vector<std::vector<Dose>> doses;
    for (const WholeRecipe& recipe : found.recipes) doses.push_back(doses_of(recipe));
    list(doses, Strictness::as_wished, found.worked_out);
    if (doses.empty()) {
      if (!found.stopped) whole_without_solution();
      return;
    }
    if (!found.proven) tell_gap();
    std::vector<std::vector<Dose>> known = doses;
    for (const WholeRecipe& recipe : in_order(found.pool))
      if (known.size() < most_known) known.push_back(doses_of(recipe));
    const std::size_t listed_or_kept = known.size();
    survey(known);
    // What is told besides is worked out side by side.
    const double score = answer_.recipes.front().score;
    std::vector<std::vector<Dose>> starts;
    if (std::isfinite(score) && score > 0) starts = first_of_each_set(doses);
    std::vector<FreeProposal> proposals(starts.size());
    tell_of(std::move(known), listed_or_kept, starts.size(), [&](std::size_t i) { proposals[i] = free_shares_near(ground_, starts[i], Strictness::as_wished); });
    if (std::isfinite(score)) answer_.rounding_cost = score - std::min(score, least_free_score(ground_, std::move(proposals), Strictness::as_wished).value_or(score));
  }

  /// Of recipes of the same candidates the first: free shares lead from the others to the same place.
  static std::vector<std::vector<Dose>> first_of_each_set(const std::vector<std::vector<Dose>>& recipes) {
    std::vector<std::vector<Dose>> first;
    for (const std::vector<Dose>& recipe : recipes)
      if (std::ranges::none_of(first, [&](const std::vector<Dose>& other) { return std::ranges::equal(other, recipe, {}, &Dose::candidate, &Dose::candidate); }))
        first.push_back(recipe);
    return first;
  }

  /// Pictures and room of the wishes, and `count` other tasks beside them. The first `found` recipes hold what is hard.
  void tell_of(std::vector<std::vector<Dose>> recipes, std::size_t found, std::size_t count, const std::function<void(std::size_t)>& task) {
    KnownRecipes known(ground_, std::move(recipes), found);
    control_.runner(count + known.slices(), [&](std::size_t i) { i < count ? task(i) : known.work_out(i - count); });
    TradeOffs pictures = known.trade_offs();
    answer_.air_and_water = std::move(pictures.air_and_water);
    answer_.price_and_fit = std::move(pictures.price_and_fit);
    answer_.room.resize(known.wishes().size());
    control_.runner(known.wishes().size(), [&](std::size_t i) { answer_.room[i] = known.room(known.wishes()[i]); });
  }

  /// Each recipe once, in the order of what is known of them.
  [[nodiscard]] std::vector<WholeRecipe> in_order(std::vector<Entry> pool) const {
    std::ranges::sort(pool, [&](const Entry& a, const Entry& b) {
      if (const auto order = a.high <=> b.high; order != 0) return order < 0;
      return comes_before(a.recipe, b.recipe, ground_.name_ranks());
    });
    std::vector<WholeRecipe> recipes;
    for (const Entry& entry : pool)
      if (recipes.empty() || !(recipes.back() == entry.recipe)) recipes.push_back(entry.recipe);
    return recipes;
  }

  /// Adds recipes of a few parts from everywhere, so that a picture shows more than the neighbourhood of the best.
  void survey(std::vector<std::vector<Dose>>& known) const {
    const RecipeForm coarse = smaller_form(problem_.form, ground_.size(), surveyed);
    const std::vector<PartPatterns> patterns = part_patterns(coarse.components, coarse.total);
    SubsetWalk walk(static_cast<int>(ground_.size()), coarse.components, 0, 1);
    while (walk.next()) {
      const auto subset = walk.subset();
      const PartPatterns& parts = patterns[subset.size() - 1];
      for (std::size_t pattern = 0; pattern < parts.size(); ++pattern) {
        std::vector<Dose>& doses = known.emplace_back();
        for (std::size_t j = 0; j < subset.size(); ++j) doses.push_back({subset[j], parts.row(static_cast<int>(j))[pattern]});
      }
    }
  }

  /// The space walked whole or, where it is too large for that, searched without proof.
  WholeSearchResult best_whole(Strictness strictness, std::size_t wanted, int stage) {
    return (too_large_ ? search_large : search_whole)(tables_, problem_.form, strictness, wanted, control_, stage);
  }

  void tell_gap() {
    answer_.gap = std::max(0.0, answer_.recipes.front().score - least_score(tables_));
    if (!too_large_) return;
    if (*answer_.gap > 0)
      answer_.notes.push_back(
          {"design.not-proven", Level::note, {}, {{"recipes", static_cast<double>(space_)}, {"gap", *answer_.gap}}});
    else
      answer_.notes.push_back({"design.score-proven", Level::note, {}, {{"recipes", static_cast<double>(space_)}}});
  }

  void whole_without_solution() {
    const WholeSearchResult nearest = best_whole(Strictness::all_soft, 1, 2);
    answer_.stopped = answer_.stopped || nearest.stopped;
    if (!nearest.recipes.empty()) answer_.nearest = rated(ground_, doses_of(nearest.recipes.front()), Strictness::all_soft);
    if (nearest.recipes.empty() && !nearest.stopped && !too_large_) {
      answer_.notes.push_back({"design.nothing-within-stock", Level::warning, {}, {}});
      return;
    }
    // Every combination is one of free shares, so what these cannot hold no whole parts can.
    answer_.contradictions = linear_contradictions(tables_, control_.stop);
    answer_.contradictions_complete = false;
    if (too_large_) {
      answer_.notes.push_back({"design.contradictions-linear-only", Level::note, {}, {}});
      return;
    }
    Contradictions found = find_contradictions(tables_, problem_.form, control_);
    if (found.complete) {
      answer_.contradictions = std::move(found.sets);
      answer_.contradictions_complete = true;
    } else {
      answer_.notes.push_back(
          {"design.contradictions-incomplete", Level::warning, {}, {{"seconds", contradictions_limit_s}}});
    }
  }

  void free() {
    const FreeSearchResult found = search_free(tables_, problem_.form, Strictness::as_wished, wanted_recipes, control_);
    answer_.examined = found.examined;
    answer_.stopped = found.stopped;
    std::vector<std::vector<Dose>> doses;
    for (const FreeRecipe& recipe : found.recipes) doses.push_back(recipe.doses);
    list(doses, Strictness::as_wished, {});
    tell_of(doses, doses.size(), 0, [](std::size_t) {});
    answer_.notes.push_back({"design.free-shares-not-proven", Level::note, {}, {}});
    if (!doses.empty()) return;
    const FreeSearchResult nearest = search_free(tables_, problem_.form, Strictness::all_soft, 1, control_);
    if (!nearest.recipes.empty()) answer_.nearest = rated(ground_, nearest.recipes.front().doses, Strictness::all_soft);
    answer_.contradictions = linear_contradictions(tables_, control_.stop);
    answer_.contradictions_complete = false;
    answer_.notes.push_back({"design.contradictions-linear-only", Level::note, {}, {}});
  }

  void list(const std::vector<std::vector<Dose>>& doses, Strictness strictness, const std::vector<std::shared_ptr<const WorkedOut>>& known) {
    answer_.recipes.resize(doses.size());
    control_.runner(doses.size(), [&](std::size_t i) { answer_.recipes[i] = rated(ground_, doses[i], strictness, i < known.size() ? known[i].get() : nullptr); });
  }

  const DesignProblem& problem_;
  const SearchControl& control_;
  Ground ground_;
  BoundTables tables_;
  std::uint64_t space_;
  bool too_large_;
  DesignAnswer answer_;
};

}  // namespace

RecipeRater::RecipeRater(const DesignProblem& problem) : ground_(std::make_unique<const Ground>(problem)) {}
RecipeRater::~RecipeRater() = default;

RatedRecipe RecipeRater::rate(std::span<const double> parts, bool hard_as_soft) const {
  std::vector<Dose> doses;
  for (std::size_t k = 0; k < ground_->size(); ++k)
    if (parts[ground_->input_place(k)] > 0) doses.push_back({k, parts[ground_->input_place(k)]});
  return rated(*ground_, doses, hard_as_soft ? Strictness::all_soft : Strictness::as_wished);
}

void run_in_order(std::size_t count, const std::function<void(std::size_t)>& slice) {
  for (std::size_t i = 0; i < count; ++i) slice(i);
}

Problems check_tested_sizes(const DesignProblem& problem) {
  Problems problems;
  for (const SizeAsked& asked : sizes_asked(problem)) {
    const bool tested = std::ranges::any_of(problem.candidates, [&](const Candidate& each) { return tested_at(each, asked.size); });
    if (!tested)
      problems.push_back(problem_at("design.size-not-tested", asked.pointer, {{"aperture_mm", in_mm(asked.size)}}));
  }
  return problems;
}

Notes wishes_out_of_reach(const DesignProblem& problem) {
  const Ground ground(problem);
  BoundTables tables(ground);
  if (asks_for_most_water(ground)) tables.tabulate();
  return notes_out_of_reach(tables);
}

Result<DesignAnswer> design(const DesignProblem& problem, const SearchControl& control) {
  if (Problems problems = check(problem); !problems.empty()) return problems;
  if (Problems problems = check_tested_sizes(problem); !problems.empty()) return problems;
  return Designer(problem, control).run();
}

}  // namespace gritwright
