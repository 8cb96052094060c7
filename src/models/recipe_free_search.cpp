#include "recipe_free_search.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numeric>

#include "gritwright/models/free_shares.hpp"
#include "recipe_reach.hpp"

namespace gritwright::recipe_search {

namespace {

/// Limits are tightened by so many points for the method, so that what it calls met is met when worked out again.
constexpr double tightened_points = 1e-7;
/// The method stumbles over large values: it sees points as shares of 1.
constexpr double share_per_point = 0.01;
/// Shares below this are left out of a recipe: nobody scoops a hundred-thousandth.
constexpr double least_share = 1e-5;
constexpr double ten_points = 0.1;
constexpr double rounding = 1e-9;
/// What the solver calls missed by less may be its own rounding.
constexpr double sure_excess = 1e-6;

std::vector<Dose> doses_from(const std::vector<std::size_t>& candidates, std::span<const double> shares) {
  double sum = 0;
  for (const double share : shares) sum += share >= least_share ? share : 0;
  std::vector<Dose> doses;
  for (std::size_t k = 0; k < candidates.size(); ++k)
    if (shares[k] >= least_share) doses.push_back({candidates[k], shares[k] / sum});
  return doses;
}

bool distinct_shares(const std::vector<Dose>& a, const std::vector<Dose>& b) {
  const auto share = [](const std::vector<Dose>& doses, std::size_t candidate) {
    for (const Dose& dose : doses)
      if (dose.candidate == candidate) return dose.parts;
    return 0.0;
  };
  const auto apart = [&](const Dose& dose) { return std::abs(share(a, dose.candidate) - share(b, dose.candidate)) >= ten_points - rounding; };
  return std::ranges::any_of(a, apart) || std::ranges::any_of(b, apart);
}

/// How many limits a hard wish puts on shares.
std::size_t limit_count(const PlainWish& wish) {
  if (wish.kind == PlainWish::Kind::limits || wish.kind == PlainWish::Kind::nearest) return wish.apertures.size();
  return 1;
}

/// What free shares are to make small: the score within hard wishes and stock, or the price within all wishes and stock.
enum class Aim { score, price };

/// The smooth problem over a few candidates.
class OverCandidates {
 public:
  OverCandidates(const Ground& ground, std::vector<std::size_t> candidates, Strictness strictness, Aim aim = Aim::score)
      : ground_(ground), candidates_(std::move(candidates)), strictness_(strictness), aim_(aim) {
    for (const PlainWish& wish : ground_.wishes()) constraints_ += is_limit(wish) ? limit_count(wish) : 0;
    stock_at_ = constraints_;
    if (ground_.checks_stock())
      for (const std::size_t each : candidates_) constraints_ += ground_.candidate(each).stock ? 1 : 0;
  }

  [[nodiscard]] std::vector<double> improved(std::vector<double> start) {
    const SmoothShares problem{[this](std::span<const double> x, std::span<double> outside) { return at(x, outside); }, constraints_};
    return improve_shares(problem, std::move(start));
  }
  [[nodiscard]] const std::vector<std::size_t>& candidates() const { return candidates_; }

 private:
  [[nodiscard]] bool is_limit(const PlainWish& wish) const {
    return aim_ == Aim::price ? wish.hard || wish.weight > 0 : wish.hard && strictness_ == Strictness::as_wished;
  }

  double at(std::span<const double> x, std::span<double> outside) {
    doses_.clear();
    double sum = 0;
    for (const double share : x) sum += std::max(share, 0.0);
    for (std::size_t k = 0; k < x.size(); ++k) {
      constexpr double nothing = 1e-12;
      if (x[k] > nothing) doses_.push_back({candidates_[k], x[k] / sum});
    }
    ground_.evaluate(doses_, workspace_, scratch_, figures_);
    for (auto* list : {&figures_.passing_percent, &figures_.capacity, &figures_.air, &figures_.available, &figures_.wet_g_l})
      for (Range& range : *list) range = middle(range);
    if (figures_.price) figures_.price = middle(*figures_.price);
    if (figures_.exchange_meq_l) figures_.exchange_meq_l = middle(*figures_.exchange_meq_l);
    double score = 0;
    std::size_t next = 0;
    for (const PlainWish& wish : ground_.wishes()) {
      if (is_limit(wish)) {
        next = limits_of(wish, outside, next);
      } else if (wish.weight > 0) {
        const double missed = ground_.missed(wish, figures_).low;
        score += wish.weight * missed * missed;
      }
    }
    next = stock_at_;
    if (ground_.checks_stock()) {
      for (std::size_t k = 0; k < x.size(); ++k) {
        const auto& stock = ground_.candidate(candidates_[k]).stock;
        if (!stock) continue;
        const double wanted_l = in_l(*ground_.problem().need) * x[k] / sum / (scratch_.has_volumes ? scratch_.volume_l : 0);
        outside[next++] = wanted_l - in_l(*stock);
      }
    }
    for (double& each : outside) each *= share_per_point;
    if (aim_ == Aim::price) return figures_.price ? figures_.price->low : infinite;
    return score * share_per_point * share_per_point;
  }

  static Range middle(const Range& range) { return {(range.low + range.high) / 2, (range.low + range.high) / 2}; }

  std::size_t limits_of(const PlainWish& wish, std::span<double> outside, std::size_t next) {
    const auto signed_points = [](double value, double low, double high) { return std::max(low - value, value - high) + tightened_points; };
    if (wish.kind == PlainWish::Kind::limits || wish.kind == PlainWish::Kind::nearest) {
      for (std::size_t i = 0; i < wish.apertures.size(); ++i)
        outside[next++] = signed_points(figures_.passing_percent[wish.apertures[i]].low, wish.low_percent[i], wish.high_percent[i]);
      return next;
    }
    // Inside its limits a wish has no slope of its own; the distance to the nearer limit gives one.
    const auto figure = figure_of(wish);
    if (!figure) {
      outside[next++] = infinite;
      return next;
    }
    const double scale = wish.kind == PlainWish::Kind::price ? 20 / (std::isfinite(wish.most) ? wish.most : wish.least) : wish.points_per_unit;
    outside[next++] = scale * std::max(wish.least - *figure, *figure - wish.most) + tightened_points;
    return next;
  }

  [[nodiscard]] std::optional<double> figure_of(const PlainWish& wish) const {
    using Kind = PlainWish::Kind;
    switch (wish.kind) {
      case Kind::finer: return figures_.passing_percent[wish.apertures[0]].low;
      case Kind::band:
        return figures_.passing_percent[wish.apertures[0]].low -
               (wish.apertures.size() > 1 ? figures_.passing_percent[wish.apertures[1]].low : 0);
      case Kind::share: return figures_.named_share[wish.place].low;
      case Kind::price: return figures_.price ? std::optional(figures_.price->low) : std::nullopt;
      case Kind::exchange: return figures_.exchange_meq_l ? std::optional(figures_.exchange_meq_l->low) : std::nullopt;
      default: break;
    }
    if (!figures_.has_volumes) return std::nullopt;
    if (wish.kind == Kind::capacity) return figures_.capacity[wish.place].low;
    if (wish.kind == Kind::air) return figures_.air[wish.place].low;
    if (wish.kind == Kind::available) return figures_.available[wish.place].low;
    return figures_.wet_g_l[wish.place].low;
  }

  const Ground& ground_;
  std::vector<std::size_t> candidates_;
  Strictness strictness_;
  Aim aim_;
  std::size_t constraints_ = 0;
  std::size_t stock_at_ = 0;
  std::vector<Dose> doses_;
  MixEvaluator::Workspace workspace_;
  RecipeFigures scratch_;
  FigureRanges figures_;
};

std::optional<FreeRecipe> free_recipe(const Ground& ground, std::vector<Dose> doses, Strictness strictness) {
  if (doses.empty()) return std::nullopt;
  const FigureRanges figures = ground.worked_out(doses, WaterAsked::rated).figures;
  const Rating rating = ground.rate(figures, strictness);
  if (rating.broken != 0 || !rating.within_stock) return std::nullopt;
  return FreeRecipe{figure_key(rating.score.low, figures.price ? figures.price->low : infinite), rating.score.low, std::move(doses)};
}

}  // namespace

std::vector<LinearRow> linear_rows(const BoundTables& tables, const PlainWish& wish) {
  const std::size_t count = tables.ground().size();
  const auto percent = [&](std::size_t aperture) {
    std::vector<double> row(count);
    for (std::size_t k = 0; k < count; ++k) row[k] = 100 * tables.grain(k).passing_g[aperture] / tables.grain(k).mass_g;
    return row;
  };
  std::vector<LinearRow> rows;
  if (wish.kind == PlainWish::Kind::limits || wish.kind == PlainWish::Kind::nearest) {
    for (std::size_t i = 0; i < wish.apertures.size(); ++i)
      rows.push_back({percent(wish.apertures[i]), wish.low_percent[i], wish.high_percent[i]});
  } else if (wish.kind == PlainWish::Kind::finer || wish.kind == PlainWish::Kind::band) {
    LinearRow row{percent(wish.apertures[0]), wish.least, wish.most};
    if (wish.apertures.size() > 1) {
      const std::vector<double> below = percent(wish.apertures[1]);
      for (std::size_t k = 0; k < count; ++k) row.coefficients[k] -= below[k];
    }
    rows.push_back(std::move(row));
  } else if (wish.kind == PlainWish::Kind::share) {
    // A share of the loose volume by mass shares a: sum over the named of a/rho against sum over all of a/rho.
    const auto side = [&](double limit) {
      std::vector<double> row(count);
      for (std::size_t k = 0; k < count; ++k)
        row[k] = 1000 * (((wish.candidates >> k & 1U) != 0 ? 1 : 0) - limit) / tables.grain(k).mass_g;
      return row;
    };
    if (std::isfinite(wish.least)) rows.push_back({side(wish.least), 0, infinite});
    if (std::isfinite(wish.most)) rows.push_back({side(wish.most), -infinite, 0});
  }
  return rows;
}

namespace {

/// Loose shares that keep every hard wish on gradings and shares, if free shares of all candidates can.
std::optional<std::vector<double>> linear_start(const BoundTables& tables) {
  const std::size_t count = tables.ground().size();
  LinearShares problem{std::vector<double>(count, 0), {}};
  for (std::size_t k = 0; k < count; ++k)
    problem.cost[k] = tables.grain(k).priced ? tables.grain(k).price / tables.grain(k).mass_g : 0;
  for (const PlainWish& wish : tables.ground().wishes())
    if (wish.hard)
      for (LinearRow& row : linear_rows(tables, wish)) problem.rows.push_back(std::move(row));
  auto mass_shares = least_cost_shares(problem);
  if (!mass_shares) return std::nullopt;
  for (std::size_t k = 0; k < count; ++k) (*mass_shares)[k] /= tables.grain(k).mass_g;
  const double sum = std::accumulate(mass_shares->begin(), mass_shares->end(), 0.0);
  for (double& share : *mass_shares) share /= sum;
  return mass_shares;
}

class FreeSearch {
 public:
  FreeSearch(const BoundTables& tables, const RecipeForm& form, Strictness strictness, const SearchControl& control)
      : tables_(tables), ground_(tables.ground()), form_(form), strictness_(strictness), control_(control) {}

  FreeSearchResult run(std::size_t wanted) {
    from_whole_recipes(wanted);
    from_all_candidates();
    with_one_more();
    result_.recipes = distinct_best(wanted);
    result_.stopped = control_.stop.stop_requested();
    return std::move(result_);
  }

 private:
  void propose(const std::vector<std::size_t>& candidates, std::vector<double> start) {
    if (control_.stop.stop_requested()) return;
    const std::vector<double> better = OverCandidates(ground_, candidates, strictness_).improved(start);
    look_at(candidates, start);
    // Among shares that miss nothing the cheapest come first.
    if (look_at(candidates, better) == 0 && ground_.has_prices())
      look_at(candidates, OverCandidates(ground_, candidates, strictness_, Aim::price).improved(better));
  }

  /// The score worked out by the full model; infinite where a hard wish, the stock or the form excludes the shares.
  double look_at(const std::vector<std::size_t>& candidates, const std::vector<double>& shares) {
    ++result_.examined;
    auto doses = doses_from(candidates, shares);
    if (doses.size() > static_cast<std::size_t>(form_.components)) return infinite;
    auto recipe = free_recipe(ground_, std::move(doses), strictness_);
    if (!recipe) return infinite;
    found_.push_back(*std::move(recipe));
    return found_.back().score;
  }

  /// Coarse whole parts find the candidates that go together.
  void from_whole_recipes(std::size_t wanted) {
    RecipeForm coarse = form_;
    constexpr std::uint64_t enough = 3000000;
    coarse.total = std::max(form_.total, form_.components);
    while (coarse.components > 2 && recipe_count(static_cast<int>(ground_.size()), coarse.components, coarse.components + 2) > enough)
      --coarse.components;
    while (coarse.total > coarse.components + 2 &&
           recipe_count(static_cast<int>(ground_.size()), coarse.components, coarse.total) > enough)
      --coarse.total;
    auto starts = search_whole(tables_, coarse, strictness_, 2 * wanted, control_, 1).recipes;
    // Where whole parts keep no hard wish, those nearest to it may lead to shares that do.
    if (starts.empty() && strictness_ == Strictness::as_wished)
      starts = search_whole(tables_, coarse, Strictness::all_soft, 2 * wanted, control_, 1).recipes;
    for (const WholeRecipe& recipe : starts) {
      std::vector<std::size_t> candidates;
      std::vector<double> shares;
      for (std::size_t j = 0; j < recipe.count; ++j) {
        candidates.push_back(recipe.candidates[j]);
        shares.push_back(static_cast<double>(recipe.parts[j]) / recipe.total());
      }
      propose(candidates, shares);
    }
  }

  void from_all_candidates() {
    std::vector<std::size_t> all(ground_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    const auto linear = linear_start(tables_);
    if (all.size() <= static_cast<std::size_t>(form_.components)) {
      propose(all, std::vector<double>(all.size(), 1.0 / static_cast<double>(all.size())));
      if (linear) propose(all, *linear);
    } else if (linear) {
      std::vector<std::size_t> candidates;
      std::vector<double> shares;
      for (std::size_t k = 0; k < all.size(); ++k) {
        if ((*linear)[k] < least_share) continue;
        candidates.push_back(k);
        shares.push_back((*linear)[k]);
      }
      propose(candidates, shares);
    }
  }

  /// Lets each further candidate into the best recipe as long as one of them helps.
  void with_one_more() {
    for (int added = 0; added < form_.components && !found_.empty() && !control_.stop.stop_requested(); ++added) {
      const FreeRecipe best = *std::ranges::min_element(found_, before);
      if (best.doses.size() >= static_cast<std::size_t>(form_.components) || best.score == 0) return;
      const std::size_t known = found_.size();
      for (std::size_t more = 0; more < ground_.size(); ++more) {
        if (std::ranges::any_of(best.doses, [&](const Dose& dose) { return dose.candidate == more; })) continue;
        constexpr double first_share = 0.05;
        std::vector<Dose> doses = best.doses;
        for (Dose& dose : doses) dose.parts *= 1 - first_share;
        doses.push_back({more, first_share});
        std::ranges::sort(doses, {}, &Dose::candidate);
        std::vector<std::size_t> candidates;
        std::vector<double> shares;
        for (const Dose& dose : doses) {
          candidates.push_back(dose.candidate);
          shares.push_back(dose.parts);
        }
        propose(candidates, shares);
      }
      const bool helped = std::any_of(found_.begin() + static_cast<std::ptrdiff_t>(known), found_.end(),
                                      [&](const FreeRecipe& recipe) { return recipe.key < best.key; });
      if (!helped) return;
    }
  }

  /// Names come first as candidates do; what is left has no order of its own but must not depend on the way it was found.
  static bool before(const FreeRecipe& a, const FreeRecipe& b) {
    if (const auto order = a.key <=> b.key; order != 0) return order < 0;
    if (a.doses.size() != b.doses.size()) return a.doses.size() < b.doses.size();
    for (std::size_t i = 0; i < a.doses.size(); ++i)
      if (a.doses[i].candidate != b.doses[i].candidate) return a.doses[i].candidate < b.doses[i].candidate;
    for (std::size_t i = 0; i < a.doses.size(); ++i)
      if (a.doses[i].parts != b.doses[i].parts) return a.doses[i].parts > b.doses[i].parts;
    return false;
  }

  std::vector<FreeRecipe> distinct_best(std::size_t wanted) {
    std::ranges::stable_sort(found_, before);
    std::vector<FreeRecipe> best;
    for (const FreeRecipe& recipe : found_) {
      if (best.size() == wanted) break;
      if (std::ranges::all_of(best, [&](const FreeRecipe& better) { return distinct_shares(better.doses, recipe.doses); }))
        best.push_back(recipe);
    }
    return best;
  }

  const BoundTables& tables_;
  const Ground& ground_;
  RecipeForm form_;
  Strictness strictness_;
  const SearchControl& control_;
  std::vector<FreeRecipe> found_;
  FreeSearchResult result_;
};

}  // namespace

FreeSearchResult search_free(const BoundTables& tables, const RecipeForm& form, Strictness strictness, std::size_t wanted,
                             const SearchControl& control) {
  return FreeSearch(tables, form, strictness, control).run(wanted);
}

FreeProposal free_shares_near(const Ground& ground, const std::vector<Dose>& near, Strictness strictness) {
  std::vector<std::size_t> candidates;
  std::vector<double> shares;
  for (const Dose& dose : near) {
    candidates.push_back(dose.candidate);
    shares.push_back(dose.parts);
  }
  OverCandidates over(ground, candidates, strictness);
  FreeProposal proposal{infinite, doses_from(candidates, over.improved(shares))};
  if (proposal.doses.empty()) return proposal;
  MixEvaluator::Workspace workspace;
  RecipeFigures scratch;
  FigureRanges figures;
  ground.evaluate(proposal.doses, workspace, scratch, figures);
  const Rating rating = ground.rate(figures, strictness);
  if (rating.broken == 0 && rating.within_stock) proposal.least_score = rating.score.low;
  return proposal;
}

std::optional<double> least_free_score(const Ground& ground, std::vector<FreeProposal> proposals, Strictness strictness) {
  std::ranges::stable_sort(proposals, {}, &FreeProposal::least_score);
  double least = infinite;
  for (FreeProposal& proposal : proposals) {
    if (!(proposal.least_score < least)) break;
    if (const auto recipe = free_recipe(ground, std::move(proposal.doses), strictness)) least = std::min(least, recipe->score);
  }
  return std::isfinite(least) ? std::optional(least) : std::nullopt;
}

std::vector<std::vector<std::size_t>> linear_contradictions(const BoundTables& tables, const std::stop_token& stop) {
  const auto& wishes = tables.ground().wishes();
  const std::uint64_t out = out_of_reach(tables);
  std::vector<std::vector<std::size_t>> found;
  std::vector<std::size_t> linear;
  std::vector<std::vector<LinearRow>> rows;
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    if (!wishes[i].hard) continue;
    if ((out >> i & 1U) != 0) {
      found.push_back({i});
      continue;
    }
    auto of_wish = linear_rows(tables, wishes[i]);
    if (of_wish.empty()) continue;
    linear.push_back(i);
    rows.push_back(std::move(of_wish));
  }
  const auto try_set = [&](const std::vector<std::size_t>& places) {
    if (stop.stop_requested()) return;
    std::vector<std::size_t> set;
    std::vector<LinearRow> all_rows;
    for (const std::size_t place : places) {
      set.push_back(linear[place]);
      all_rows.insert(all_rows.end(), rows[place].begin(), rows[place].end());
    }
    for (const auto& known : found)
      if (std::ranges::includes(set, known)) return;
    const auto excess = least_excess(all_rows);
    if (excess && *excess > sure_excess) found.push_back(std::move(set));
  };
  const std::size_t count = linear.size();
  for (std::size_t a = 0; a < count; ++a) try_set({a});
  for (std::size_t a = 0; a < count; ++a)
    for (std::size_t b = a + 1; b < count; ++b) try_set({a, b});
  for (std::size_t a = 0; a < count; ++a)
    for (std::size_t b = a + 1; b < count; ++b)
      for (std::size_t c = b + 1; c < count; ++c) try_set({a, b, c});
  return found;
}

}  // namespace gritwright::recipe_search
