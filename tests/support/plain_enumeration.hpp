#pragma once
// The whole space of recipes one after the other, each rated by the full model; walk, order, distinctness, stock and, a second time, the
// score are written here and share no code with the search.

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <optional>
#include <vector>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/recipe_search.hpp"

namespace gritwright::test {

struct PlainRecipe {
  std::vector<int> parts;
  RatedRecipe rated;
  double score = 0;      ///< as rated
  double own_score = 0;  ///< the same worked out here
  std::optional<double> price;
  std::vector<std::string> names;
  int total = 0;
  std::uint64_t broken = 0;
  bool within_stock = true;
};

class PlainEnumeration {
 public:
  PlainEnumeration(const DesignProblem& problem, bool all_soft) : problem_(problem), all_soft_(all_soft), rater_(problem) {
    std::vector<int> parts(problem.candidates.size(), 0);
    visit(parts, 0, problem.form.total);
    std::stable_sort(recipes_.begin(), recipes_.end(), before);
  }

  [[nodiscard]] std::uint64_t count() const { return recipes_.size(); }
  [[nodiscard]] const std::vector<PlainRecipe>& recipes() const { return recipes_; }

  /// The first recipes that hold everything hard, each 10 points apart from those before it.
  [[nodiscard]] std::vector<PlainRecipe> best(std::size_t wanted) const {
    std::vector<PlainRecipe> list;
    for (const PlainRecipe& recipe : recipes_) {
      if (recipe.broken != 0 || !recipe.within_stock || list.size() == wanted) continue;
      if (std::all_of(list.begin(), list.end(), [&](const PlainRecipe& better) { return apart(better, recipe); })) list.push_back(recipe);
    }
    return list;
  }

  /// Whether some recipe within stock holds every wish of the set.
  [[nodiscard]] bool can_hold(std::uint64_t wishes) const {
    return std::any_of(recipes_.begin(), recipes_.end(),
                       [&](const PlainRecipe& recipe) { return recipe.within_stock && (recipe.broken & wishes) == 0; });
  }

 private:
  static constexpr double never = std::numeric_limits<double>::infinity();

  void visit(std::vector<int>& parts, std::size_t at, int left) {
    if (at == parts.size()) {
      const int total = std::accumulate(parts.begin(), parts.end(), 0);
      const int divisor = std::accumulate(parts.begin(), parts.end(), 0, [](int a, int b) { return std::gcd(a, b); });
      const auto used = std::count_if(parts.begin(), parts.end(), [](int part) { return part > 0; });
      if (divisor == 1 && used <= problem_.form.components && total <= problem_.form.total) recipes_.push_back(rated(parts));
      return;
    }
    for (int part = 0; part <= left; ++part) {
      parts[at] = part;
      visit(parts, at + 1, left - part);
    }
    parts[at] = 0;
  }

  static double passing_percent_at(const std::vector<GradingPoint>& curve, double size_mm) {
    double passing = 0;
    for (std::size_t i = 0; i < curve.size(); ++i) {
      const double here = in_mm(curve[i].aperture);
      if (here <= size_mm * (1 + 1e-12)) {
        passing = curve[i].passing.value();
      } else {
        if (i == 0) return 0;
        const double before = in_mm(curve[i - 1].aperture);
        const double along = (std::log(size_mm) - std::log(before)) / (std::log(here) - std::log(before));
        return 100 * (passing + along * (curve[i].passing.value() - passing));
      }
    }
    return 100 * passing;
  }

  PlainRecipe rated(const std::vector<int>& parts) const {
    PlainRecipe recipe;
    recipe.parts = parts;
    recipe.total = std::accumulate(parts.begin(), parts.end(), 0);
    std::vector<double> of_parts(parts.begin(), parts.end());
    for (std::size_t k = 0; k < parts.size(); ++k)
      if (parts[k] > 0) recipe.names.push_back(problem_.candidates[k].component.name);
    std::sort(recipe.names.begin(), recipe.names.end());
    recipe.rated = rater_.rate(of_parts, all_soft_);
    recipe.score = recipe.rated.score;
    const MixState& state = recipe.rated.mix;
    const std::map<std::string, PotWater>& water = recipe.rated.pots;

    bool priced = state.shrinkage.has_value();
    double money = 0;
    for (std::size_t k = 0; k < parts.size(); ++k) {
      if (parts[k] == 0) continue;
      const Candidate& candidate = problem_.candidates[k];
      const double share = state.loose_shares[k].value();
      priced = priced && candidate.price;
      if (candidate.price && state.shrinkage) money += share * candidate.price->value() / (1 - state.shrinkage->value());
      if (problem_.need && candidate.stock) {
        const double wanted = state.shrinkage ? in_l(*problem_.need) * share / (1 - state.shrinkage->value()) : never;
        if (wanted > in_l(*candidate.stock) + 1e-9) recipe.within_stock = false;
      }
    }
    if (priced) recipe.price = money;

    for (std::size_t w = 0; w < problem_.wishes.size(); ++w) {
      double violation = violation_of(problem_.wishes[w], parts, state, water, recipe.price);
      if (violation <= 1e-9) violation = 0;
      if (problem_.wishes[w].hard && !all_soft_) {
        if (violation > 0) recipe.broken |= std::uint64_t{1} << w;
      } else if (problem_.wishes[w].weight > 0) {
        recipe.own_score += problem_.wishes[w].weight * violation * violation;
      }
    }
    return recipe;
  }

  static double outside(const Wish& wish, double figure) {
    double off = 0;
    if (wish.least) off = std::max(off, *wish.least - figure);
    if (wish.most) off = std::max(off, figure - *wish.most);
    return off;
  }

  double violation_of(const Wish& wish, const std::vector<int>& parts, const MixState& state, const std::map<std::string, PotWater>& water,
                      std::optional<double> price) const {
    const auto passing = [&](Aperture size) { return passing_percent_at(state.grading, in_mm(size)); };
    if (const auto* band = std::get_if<PassingLimits>(&wish.figure)) {
      double squares = 0;
      for (const PassingLimit& limit : band->limits) {
        const double here = passing(limit.aperture);
        if (limit.low && here < in_percent(*limit.low)) squares += std::pow(in_percent(*limit.low) - here, 2);
        if (limit.high && here > in_percent(*limit.high)) squares += std::pow(here - in_percent(*limit.high), 2);
      }
      return std::sqrt(squares / static_cast<double>(band->limits.size()));
    }
    if (const auto* grading = std::get_if<NearestGrading>(&wish.figure)) {
      double squares = 0;
      for (const GradingPoint& point : grading->points) squares += std::pow(passing(point.aperture) - in_percent(point.passing), 2);
      return std::sqrt(squares / static_cast<double>(grading->points.size()));
    }
    if (const auto* band = std::get_if<BandShare>(&wish.figure))
      return outside(wish, passing(band->to) - (in_mm(band->from) > 0 ? passing(band->from) : 0));
    if (const auto* finer = std::get_if<FinerShare>(&wish.figure)) return outside(wish, passing(finer->size));
    if (const auto* share = std::get_if<ShareOf>(&wish.figure)) {
      double named = 0, all = 0;
      for (std::size_t k = 0; k < parts.size(); ++k) {
        all += parts[k];
        if (problem_.candidates[k].component.name == share->name || problem_.candidates[k].family == share->name) named += parts[k];
      }
      return 100 * outside(wish, named / all);
    }
    if (std::holds_alternative<MixPrice>(wish.figure)) {
      if (!price) return never;
      if (wish.least && *price < *wish.least) return (*wish.least - *price) / (0.05 * *wish.least);
      return wish.most && *price > *wish.most ? (*price - *wish.most) / (0.05 * *wish.most) : 0;
    }
    if (!state.settled) return never;
    if (std::holds_alternative<ExchangeCapacity>(wish.figure))
      return state.settled->cation_exchange ? outside(wish, state.settled->cation_exchange->value()) / 5 : never;
    const auto& in_pot = std::get<FigureInPot>(wish.figure);
    const PotWater& here = water.at(in_pot.pot);
    switch (in_pot.figure) {
      case PotFigure::air_filled_porosity: return 100 * outside(wish, here.air_filled_porosity.value());
      case PotFigure::container_capacity: return 100 * outside(wish, here.container_capacity.value());
      case PotFigure::available_in_pot: return 100 * outside(wish, here.available_in_pot.value());
      case PotFigure::wet_mass:
        return outside(wish, in_g_l(state.settled->bulk_density) + 1000 * here.container_capacity.value()) / 20;
    }
    return never;
  }

  static bool before(const PlainRecipe& a, const PlainRecipe& b) {
    const auto differ = [](double x, double y) { return x != y && !(std::abs(x - y) <= 1e-9); };
    if (differ(a.score, b.score)) return a.score < b.score;
    if (a.price.has_value() != b.price.has_value()) return a.price.has_value();
    if (a.price && differ(*a.price, *b.price)) return *a.price < *b.price;
    if (a.names.size() != b.names.size()) return a.names.size() < b.names.size();
    if (a.names != b.names) return a.names < b.names;
    if (a.total != b.total) return a.total < b.total;
    return a.parts > b.parts;
  }

  static bool apart(const PlainRecipe& a, const PlainRecipe& b) {
    for (std::size_t k = 0; k < a.parts.size(); ++k)
      if (std::abs(static_cast<double>(a.parts[k]) / a.total - static_cast<double>(b.parts[k]) / b.total) >= 0.1 - 1e-12) return true;
    return false;
  }

  const DesignProblem& problem_;
  bool all_soft_;
  RecipeRater rater_;
  std::vector<PlainRecipe> recipes_;
};

}  // namespace gritwright::test
