#include "recipe_answer.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/mix_state.hpp"

namespace gritwright::recipe_search {

namespace {

/// A limit counts as reached within so many points.
constexpr double at_the_limit_points = 1e-6;
constexpr double nearly_used_up = 0.99;
constexpr std::size_t recipes_of_slice = 128;

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
  MovedRanking(const Ground& ground, const std::vector<FigureRanges>& figures, const PlainWish& wish) : ground_(ground), figures_(figures), wish_(wish) {
    for (const FigureRanges& each : figures_) {
      base_.push_back(ground_.rate(each, Strictness::as_wished).score.low);
      squares_.push_back(square_missed(wish_, each));
      with_wish_held_.push_back(wish_.hard ? base_.back() : base_.back() - wish_.weight * squares_.back());
    }
  }

  /// Whether the first recipe still comes first with the wish moved inward.
  [[nodiscard]] bool keeps_first(double inward) const {
    const PlainWish other = moved(wish_, inward);
    const FigureKey first = key(0, other);
    // A stricter wish makes no score less, a looser one takes away no more than what the wish costs now.
    const std::vector<double>& at_least = inward > 0 ? base_ : with_wish_held_;
    for (std::size_t i = 1; i < figures_.size(); ++i)
      if (!score_lies_beyond(at_least[i], first) && key(i, other) < first) return false;
    return true;
  }

 private:
  [[nodiscard]] FigureKey key(std::size_t i, const PlainWish& other) const {
    double score = base_[i];
    if (wish_.hard || wish_.weight > 0) {
      const double square = square_missed(other, figures_[i]);
      if (wish_.hard) {
        if (square > 0) score = infinite;
      } else {
        score += wish_.weight * (square - squares_[i]);
      }
    }
    return figure_key(score, figures_[i].price ? figures_[i].price->low : infinite);
  }

  [[nodiscard]] double square_missed(const PlainWish& wish, const FigureRanges& figures) const {
    const double points = ground_.missed(wish, figures).low;
    return points <= no_violation ? 0 : points * points;
  }

  const Ground& ground_;
  const std::vector<FigureRanges>& figures_;
  const PlainWish& wish_;
  std::vector<double> base_;
  std::vector<double> squares_;  ///< as things stand
  std::vector<double> with_wish_held_;
};

/// Limits the right way up and not below nothing.
bool possible(const PlainWish& wish) {
  for (std::size_t i = 0; i < wish.low_percent.size(); ++i)
    if (wish.low_percent[i] > wish.high_percent[i] || wish.high_percent[i] < 0) return false;
  return wish.least <= wish.most && wish.most >= 0;
}

/// The least move in one direction that puts another recipe first, to a ten-thousandth of a point.
std::optional<double> least_move(const MovedRanking& ranking, const PlainWish& wish, double direction) {
  constexpr double step_points = 0.5, farthest_points = 60, exactness_points = 1e-4;
  const double unit = unit_per_point(wish);
  for (int step = 1; step * step_points <= farthest_points; ++step) {
    const double points = step * step_points;
    if (!possible(moved(wish, direction * points * unit))) break;
    if (ranking.keeps_first(direction * points * unit)) continue;
    double stays = points - step_points, changes = points;
    while (changes - stays > exactness_points) {
      const double middle = (stays + changes) / 2;
      (ranking.keeps_first(direction * middle * unit) ? stays : changes) = middle;
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

/// The state of the dosed candidates as one of all candidates in the order of the problem; what is not in the mix has no share.
MixState with_all_candidates(const Ground& ground, const std::vector<Dose>& doses, MixState state, double grain_fill) {
  const auto spread = [&](auto& list, const auto& of_others) {
    auto all = of_others;
    for (std::size_t i = 0; i < doses.size(); ++i) all[ground.input_place(doses[i].candidate)] = list[i];
    list = std::move(all);
  };
  const std::size_t count = ground.size();
  spread(state.mass_shares, std::vector<MassShare>(count));
  spread(state.loose_shares, std::vector<LooseShare>(count));
  if (state.envelope_shares) spread(*state.envelope_shares, std::vector<EnvelopeShare>(count));
  std::vector<std::optional<PackingDensity>> betas(count);
  std::vector<std::optional<GrainPores>> pores(count);
  for (std::size_t k = 0; k < count; ++k) {
    betas[ground.input_place(k)] = ground.class_beta_of(k);
    pores[ground.input_place(k)] = grain_pores(ground.candidate(k).component.grain, grain_fill);
  }
  spread(state.class_betas, betas);
  spread(state.grain_pores, pores);
  return state;
}

}  // namespace

RatedRecipe rated(const Ground& ground, const std::vector<Dose>& doses, Strictness strictness, const WorkedOut* known) {
  const DesignProblem& problem = ground.problem();
  std::optional<WorkedOut> here;
  if (known == nullptr) known = &here.emplace(ground.worked_out(doses));
  const FigureRanges& figures = known->figures;
  RatedRecipe recipe;
  recipe.parts = parts_of(ground, doses);
  recipe.water = known->water;
  if (known->state) recipe.mix = with_all_candidates(ground, doses, *known->state, known->water.grain_fill);
  for (std::size_t place = 0; place < ground.pots().size(); ++place) {
    if (!known->state || !known->state->settled) break;
    const std::string& name = ground.pot_names()[place];
    if (place < known->in_pots.size()) recipe.pots.emplace(name, known->in_pots[place]);
    else recipe.pots.emplace(name, ground.water_in(ground.pots()[place], *known));
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

KnownRecipes::KnownRecipes(const Ground& ground, std::vector<std::vector<Dose>> recipes, std::size_t found)
    : ground_(ground), recipes_(std::move(recipes)), rivals_(std::min(found, most_rivals)), standings_(recipes_.size()), water_(recipes_.size()), price_(recipes_.size()) {
  for (std::size_t i = 0; i < ground_.wishes().size() && recipes_.size() > 1; ++i)
    if (ground_.wishes()[i].kind != PlainWish::Kind::nearest) wishes_.push_back(i);
}

std::size_t KnownRecipes::slices() const { return (recipes_.size() + recipes_of_slice - 1) / recipes_of_slice; }

void KnownRecipes::work_out(std::size_t slice) {
  MixEvaluator::Workspace workspace;
  RecipeFigures scratch;
  FigureRanges figures;
  const auto middle = [](const Range& range) { return (range.low + range.high) / 2; };
  const std::size_t end = std::min(recipes_.size(), (slice + 1) * recipes_of_slice);
  for (std::size_t i = slice * recipes_of_slice; i < end; ++i) {
    ground_.evaluate(recipes_[i], workspace, scratch, figures);
    if (i < rivals_.size()) rivals_[i] = figures;
    const Rating rating = ground_.rate(figures, Strictness::as_wished);
    standings_[i] = {rating.score.low, rating.broken, rating.within_stock};
    if (rating.broken != 0 || !rating.within_stock) continue;
    if (figures.has_volumes && !figures.air.empty()) water_[i] = {middle(figures.air.front()), middle(figures.capacity.front()), true};
    if (figures.price && std::isfinite(rating.score.low)) price_[i] = {middle(*figures.price), rating.score.low, true};
  }
}

/// The best of the recipes that a hard wish alone excludes.
std::vector<FigureRanges> KnownRecipes::breaking_only(std::size_t wish) const {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < recipes_.size(); ++i)
    if (standings_[i].broken == std::uint64_t{1} << wish && standings_[i].within_stock) places.push_back(i);
  std::ranges::stable_sort(places, {}, [&](std::size_t i) { return standings_[i].score; });
  if (places.size() > most_rivals) places.resize(most_rivals);
  std::vector<FigureRanges> figures(places.size());
  MixEvaluator::Workspace workspace;
  RecipeFigures scratch;
  for (std::size_t i = 0; i < places.size(); ++i) ground_.evaluate(recipes_[places[i]], workspace, scratch, figures[i]);
  return figures;
}

WishRoom KnownRecipes::room(std::size_t wish) const {
  const PlainWish& as_is = ground_.wishes()[wish];
  if (!as_is.hard && !(as_is.weight > 0)) return {wish, {}, {}};
  const MovedRanking ranking(ground_, rivals_, as_is);
  WishRoom room{wish, least_move(ranking, as_is, 1), {}};
  if (as_is.hard) {
    std::vector<FigureRanges> let_in = rivals_;
    const std::vector<FigureRanges> others = breaking_only(wish);
    let_in.insert(let_in.end(), others.begin(), others.end());
    room.looser = least_move(MovedRanking(ground_, let_in, as_is), as_is, -1);
  } else {
    room.looser = least_move(ranking, as_is, -1);
  }
  return room;
}

/// `sign` turns a figure that should be small.
std::vector<TradeOff> KnownRecipes::not_beaten(const std::vector<Spot>& spots, double sign_across, double sign_up) const {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < spots.size(); ++i)
    if (spots[i].shown) shown.push_back(i);
  std::ranges::sort(shown, [&](std::size_t a, std::size_t b) {
    if (spots[a].across != spots[b].across) return sign_across * spots[a].across > sign_across * spots[b].across;
    if (spots[a].up != spots[b].up) return sign_up * spots[a].up > sign_up * spots[b].up;
    return a < b;
  });
  std::vector<TradeOff> kept;
  for (const std::size_t i : shown)
    if (kept.empty() || sign_up * spots[i].up > sign_up * kept.back().up) kept.push_back({parts_of(ground_, recipes_[i]), spots[i].across, spots[i].up});
  return kept;
}

TradeOffs KnownRecipes::trade_offs() const { return {not_beaten(water_, 1, 1), not_beaten(price_, -1, -1)}; }

}  // namespace gritwright::recipe_search
