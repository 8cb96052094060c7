#include "recipe_answer.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/mix_in_pot.hpp"

namespace gritwright::recipe_search {

namespace {

/// A limit counts as reached within so many points.
constexpr double at_the_limit_points = 1e-6;
constexpr double nearly_used_up = 0.99;

/// The wish with its limits moved inward by an amount in its own unit (outward if negative).
PlainWish moved(PlainWish wish, double inward) {
  if (wish.kind == PlainWish::Kind::limits) {
    for (double& low : wish.low_percent) low += inward;
    for (double& high : wish.high_percent) high -= inward;
  } else if (wish.kind == PlainWish::Kind::price) {
    // The scale of a miss is a share of the limit, so a limit may not fall to nothing.
    constexpr double least_price = 1e-9;
    if (std::isfinite(wish.least)) wish.least = std::max(least_price, wish.least + inward);
    if (std::isfinite(wish.most)) wish.most = std::max(least_price, wish.most - inward);
  } else {
    wish.least += inward;
    wish.most -= inward;
  }
  return wish;
}

double unit_per_point(const PlainWish& wish) {
  if (wish.kind == PlainWish::Kind::price) {
    constexpr double price_share_per_point = 0.05;
    return price_share_per_point * (std::isfinite(wish.most) ? wish.most : wish.least);
  }
  return 1 / wish.points_per_unit;
}

Miss miss_of(const Ground& ground, const PlainWish& wish, const FigureRanges& figures) {
  const double points = ground.missed(wish, figures).low;
  if (points <= no_violation) return {};
  if (wish.kind != PlainWish::Kind::price) return {points / wish.points_per_unit, points};
  if (!figures.price) return {infinite, infinite};
  const double price = figures.price->low;
  return {price < wish.least ? wish.least - price : price - wish.most, points};
}

bool binds(const Ground& ground, const PlainWish& wish, const FigureRanges& figures) {
  return ground.missed(moved(wish, at_the_limit_points * unit_per_point(wish)), figures).low > 0;
}

/// Scores of a few recipes when one wish is moved.
class MovedRanking {
 public:
  MovedRanking(const Ground& ground, const std::vector<FigureRanges>& figures) : ground_(ground), figures_(figures) {
    for (const FigureRanges& each : figures_) base_.push_back(ground_.rate(each, Strictness::as_wished));
    for (const PlainWish& wish : ground_.wishes()) {
      std::vector<double>& missed_as_is = squares_.emplace_back();
      for (const FigureRanges& each : figures_) missed_as_is.push_back(square_missed(wish, each));
    }
  }

  /// Which recipe comes first with the wish moved inward.
  [[nodiscard]] std::size_t first(std::size_t wish, double inward) const {
    const PlainWish& as_is = ground_.wishes()[wish];
    const PlainWish other = moved(as_is, inward);
    std::size_t best = 0;
    FigureKey best_key{infinite, infinite};
    for (std::size_t i = 0; i < figures_.size(); ++i) {
      const double square = square_missed(other, figures_[i]);
      double score = base_[i].score.low;
      if (as_is.hard) {
        if (square > 0) score = infinite;
      } else if (as_is.weight > 0) {
        score += as_is.weight * (square - squares_[wish][i]);
      }
      const FigureKey key = figure_key(score, figures_[i].price ? figures_[i].price->low : infinite);
      if (key < best_key) {
        best = i;
        best_key = key;
      }
    }
    return best;
  }

 private:
  [[nodiscard]] double square_missed(const PlainWish& wish, const FigureRanges& figures) const {
    const double points = ground_.missed(wish, figures).low;
    return points <= no_violation ? 0 : points * points;
  }

  const Ground& ground_;
  const std::vector<FigureRanges>& figures_;
  std::vector<Rating> base_;
  std::vector<std::vector<double>> squares_;  ///< by wish, of each recipe as things stand
};

/// Limits the right way up and not below nothing.
bool possible(const PlainWish& wish) {
  for (std::size_t i = 0; i < wish.low_percent.size(); ++i)
    if (wish.low_percent[i] > wish.high_percent[i] || wish.high_percent[i] < 0) return false;
  return wish.least <= wish.most && wish.most >= 0;
}

/// The least move in one direction that puts another recipe first, to a ten-thousandth of a point.
std::optional<double> least_move(const Ground& ground, const MovedRanking& ranking, std::size_t wish, double direction) {
  constexpr double step_points = 0.5, farthest_points = 60, exactness_points = 1e-4;
  const double unit = unit_per_point(ground.wishes()[wish]);
  for (int step = 1; step * step_points <= farthest_points; ++step) {
    const double points = step * step_points;
    if (!possible(moved(ground.wishes()[wish], direction * points * unit))) break;
    if (ranking.first(wish, direction * points * unit) == 0) continue;
    double stays = points - step_points, changes = points;
    while (changes - stays > exactness_points) {
      const double middle = (stays + changes) / 2;
      (ranking.first(wish, direction * middle * unit) == 0 ? stays : changes) = middle;
    }
    return changes * unit;
  }
  return std::nullopt;
}

std::vector<double> parts_of(const Ground& ground, const std::vector<Dose>& doses) {
  std::vector<double> parts(ground.size(), 0);
  for (const Dose& dose : doses) parts[ground.input_place(dose.candidate)] = dose.parts;
  return parts;
}

/// A known recipe in a trade-off picture.
struct Spot {
  double across;
  double up;
  std::size_t recipe;
};

/// Leaves those that nothing beats in both; `sign` turns a figure that should be small.
std::vector<TradeOff> not_beaten(const Ground& ground, const std::vector<std::vector<Dose>>& recipes, std::vector<Spot> spots, double sign_across,
                                 double sign_up) {
  std::ranges::sort(spots, [&](const Spot& a, const Spot& b) {
    if (a.across != b.across) return sign_across * a.across > sign_across * b.across;
    if (a.up != b.up) return sign_up * a.up > sign_up * b.up;
    return a.recipe < b.recipe;
  });
  std::vector<TradeOff> kept;
  for (const Spot& each : spots)
    if (kept.empty() || sign_up * each.up > sign_up * kept.back().up) kept.push_back({parts_of(ground, recipes[each.recipe]), each.across, each.up});
  return kept;
}

}  // namespace

RatedRecipe rated(const Ground& ground, const std::vector<Dose>& doses, Strictness strictness) {
  const DesignProblem& problem = ground.problem();
  RatedRecipe recipe;
  recipe.parts = parts_of(ground, doses);
  Mix mix;
  mix.water = problem.water;
  mix.settling = problem.settling;
  for (std::size_t i = 0; i < problem.candidates.size(); ++i) {
    mix.components.push_back(problem.candidates[i].component);
    mix.components.back().parts = Parts(recipe.parts[i]);
  }
  if (auto state = mix_state(mix)) recipe.mix = std::move(state).value();
  std::vector<PotWater> in_pots;
  const FigureRanges figures = ground.exact(doses, &in_pots);
  std::size_t place = 0;
  for (const auto& [name, container] : problem.pots) {
    if (place < in_pots.size()) recipe.pots.emplace(name, in_pots[place++]);
    else if (auto water = mix_in_pot(recipe.mix, problem.water, PotGeometry(container))) recipe.pots.emplace(name, *std::move(water));
  }
  recipe.score = ground.rate(figures, strictness).score.low;
  if (figures.price) recipe.price = PricePerLitre(figures.price->low);
  for (std::size_t i = 0; i < ground.wishes().size(); ++i) {
    recipe.misses.push_back(miss_of(ground, ground.wishes()[i], figures));
    if (binds(ground, ground.wishes()[i], figures)) recipe.binding.push_back(i);
  }
  if (problem.need && recipe.mix.poured) {
    const double volume_l = in_l(recipe.mix.poured->volume);
    for (std::size_t i = 0; i < problem.candidates.size(); ++i) {
      const auto& stock = problem.candidates[i].stock;
      const double wanted_l = in_l(*problem.need) * recipe.parts[i] / volume_l;
      if (stock && recipe.parts[i] > 0 && wanted_l >= nearly_used_up * in_l(*stock)) recipe.used_up.push_back(i);
    }
  }
  return recipe;
}

std::vector<WishRoom> rooms(const Ground& ground, const std::vector<std::vector<Dose>>& recipes) {
  if (recipes.size() < 2) return {};
  std::vector<FigureRanges> figures(recipes.size());
  MixEvaluator::Workspace workspace;
  RecipeFigures scratch;
  for (std::size_t i = 0; i < recipes.size(); ++i) ground.evaluate(recipes[i], workspace, scratch, figures[i]);
  const MovedRanking ranking(ground, figures);
  std::vector<WishRoom> rooms;
  for (std::size_t i = 0; i < ground.wishes().size(); ++i) {
    const PlainWish& wish = ground.wishes()[i];
    if (wish.kind == PlainWish::Kind::nearest) continue;
    rooms.push_back({i, least_move(ground, ranking, i, 1), least_move(ground, ranking, i, -1)});
  }
  return rooms;
}

TradeOffs trade_offs(const Ground& ground, const std::vector<std::vector<Dose>>& known, Strictness strictness) {
  TradeOffs pictures;
  std::vector<Spot> water, price;
  MixEvaluator::Workspace workspace;
  RecipeFigures scratch;
  FigureRanges figures;
  for (std::size_t i = 0; i < known.size(); ++i) {
    ground.evaluate(known[i], workspace, scratch, figures);
    const Rating rating = ground.rate(figures, strictness);
    if (rating.broken != 0 || !rating.within_stock) continue;
    const auto middle = [](const Range& range) { return (range.low + range.high) / 2; };
    if (figures.has_volumes && !figures.air.empty()) water.push_back({middle(figures.air.front()), middle(figures.capacity.front()), i});
    if (figures.price && std::isfinite(rating.score.low)) price.push_back({middle(*figures.price), rating.score.low, i});
  }
  pictures.air_and_water = not_beaten(ground, known, std::move(water), 1, 1);
  pictures.price_and_fit = not_beaten(ground, known, std::move(price), -1, -1);
  return pictures;
}

}  // namespace gritwright::recipe_search
