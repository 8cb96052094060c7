#include "recipe_least_score.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "recipe_free_search.hpp"
#include "recipe_set_bounds.hpp"

namespace gritwright::recipe_search {

namespace {

// The method that proposes a place for the tangent stumbles over large values: it sees points as shares of 1.
constexpr double score_share_per_point = 0.01;

bool counts(const PlainWish& wish) { return !wish.hard && wish.weight > 0; }

/// What soft wishes on gradings cost by mass shares: a convex function, and its tangents.
class GradingCost {
 public:
  explicit GradingCost(const BoundTables& tables) : count_(tables.ground().size()) {
    for (const PlainWish& wish : tables.ground().wishes()) {
      if (!counts(wish) || !wish.of_grading()) continue;
      auto rows = linear_rows(tables, wish);
      for (LinearRow& row : rows) terms_.push_back({std::move(row), wish.weight / static_cast<double>(rows.size())});
    }
  }

  [[nodiscard]] double at(std::span<const double> shares) const {
    double sum = 0;
    for (const Term& term : terms_) sum += term.weight * off(term.row, shares) * off(term.row, shares);
    return sum;
  }

  /// The tangent's least value over all shares, which it has at a single candidate.
  [[nodiscard]] double least_of_tangent(std::span<const double> shares) const {
    std::vector<double> slope(count_, 0);
    for (const Term& term : terms_)
      for (std::size_t k = 0; k < count_; ++k) slope[k] += 2 * term.weight * off(term.row, shares) * term.row.coefficients[k];
    return at(shares) + *std::ranges::min_element(slope) - std::inner_product(shares.begin(), shares.end(), slope.begin(), 0.0);
  }

  [[nodiscard]] double least() const {
    if (terms_.empty()) return 0;
    const SmoothShares problem{[this](std::span<const double> shares, std::span<double>) { return at(shares) * score_share_per_point * score_share_per_point; }, 0};
    const std::vector<double> equal(count_, 1.0 / static_cast<double>(count_));
    return std::max(0.0, least_of_tangent(improve_shares(problem, equal)));
  }

 private:
  struct Term {
    LinearRow row;
    double weight;
  };
  static double off(const LinearRow& row, std::span<const double> shares) {
    const double value = std::inner_product(shares.begin(), shares.end(), row.coefficients.begin(), 0.0);
    return value > row.high ? value - row.high : std::min(0.0, value - row.low);
  }

  std::size_t count_;
  std::vector<Term> terms_;
};

/// What soft wishes for air and for water in the same pot cost where the room of no mix is enough for both.
double least_for_want_of_room(const BoundTables& tables) {
  double least_packing = 1, most_grain_water = 0;
  for (std::size_t k = 0; k < tables.ground().size(); ++k) {
    const BoundTables::Grain& grain = tables.grain(k);
    if (!grain.has_volumes) continue;
    most_grain_water = std::max(most_grain_water, grain.most_water_l / grain.envelope_l);
    least_packing = std::min(least_packing, grain.envelope_l / grain.additive_l);
  }
  const double room = most_room(least_packing, most_grain_water, tables.most_flooded_fill());
  double cost = 0;
  for (const AirAndWater& pair : air_and_water(tables.ground(), Strictness::as_wished)) cost += pair.least_cost(room);
  return cost;
}

}  // namespace

double least_score(const BoundTables& tables) {
  std::vector<std::uint8_t> everything(tables.ground().size());
  std::iota(everything.begin(), everything.end(), std::uint8_t{0});
  const double by_extremes = SetBounds(tables, Strictness::as_wished).of_shares(everything, Taken::some).least_score;
  return std::max(by_extremes, GradingCost(tables).least() + least_for_want_of_room(tables));
}

}  // namespace gritwright::recipe_search
