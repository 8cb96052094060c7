#include "recipe_reach.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "recipe_set_bounds.hpp"

namespace gritwright::recipe_search {

namespace {

bool asks_for_most(const PlainWish& wish) { return wish.hard && (wish.kind == PlainWish::Kind::air || wish.kind == PlainWish::Kind::capacity) && std::isfinite(wish.least); }

/// The most of air and of water that any mix of the shelf has in its pots.
class MostWater {
 public:
  explicit MostWater(const BoundTables& tables) : tables_(tables), water_(tables.ground().problem().water) {
    double mean_least = infinite, mean_greatest = -infinite, log_k_least = infinite, log_k_greatest = -infinite, log_least = infinite, log_greatest = -infinite;
    for (std::size_t k = 0; k < tables.ground().size(); ++k) {
      const BoundTables::Grain& grain = tables.grain(k);
      if (!grain.has_volumes) continue;
      known_.push_back(k);
      least_packing_ = std::min(least_packing_, grain.envelope_l / grain.additive_l);
      grain_water_ = std::max(grain_water_, grain.most_water_l / grain.envelope_l);
      mean_least = std::min(mean_least, grain.log_size / grain.envelope_l);
      mean_greatest = std::max(mean_greatest, grain.log_size / grain.envelope_l);
      log_k_least = std::min(log_k_least, grain.log_k_l / grain.envelope_l);
      log_k_greatest = std::max(log_k_greatest, grain.log_k_l / grain.envelope_l);
      log_least = std::min(log_least, grain.log_least);
      log_greatest = std::max(log_greatest, grain.log_greatest);
    }
    const double tilt = 1 - water_.spread;
    finest_ = tilt * mean_least - log_k_greatest;
    coarsest_ = tilt * mean_greatest - log_k_least;
    error_ = tables.mean_saturation_error(log_greatest - log_least);
    least_packing_ = std::min(1.0, least_packing_ / (1 - tables.ground().problem().settling.value()));
  }

  [[nodiscard]] bool is_known() const { return !known_.empty(); }

  [[nodiscard]] double air(std::size_t pot) const {
    double least = 1;
    for (const std::size_t k : known_) least = std::min(least, tables_.saturation(k, pot, coarsest_));
    return drains(least_packing_) * (1 - std::max(0.0, least - error_));
  }

  /// Between its corners the sum is linear in the packing.
  [[nodiscard]] double capacity(std::size_t pot) const {
    double greatest = 0;
    for (const std::size_t k : known_) greatest = std::max(greatest, tables_.saturation(k, pot, finest_));
    greatest = std::min(1.0, greatest + error_);
    const double nothing_drains = 1 - water_.residual / tables_.most_flooded_fill();
    double most = 0;
    for (const double packing : {least_packing_, std::max(least_packing_, nothing_drains), 1.0})
      most = std::max(most, std::min(water_.residual, saturated(packing)) + drains(packing) * greatest + packing * grain_water_);
    return most;
  }

 private:
  [[nodiscard]] double saturated(double packing) const { return tables_.most_flooded_fill() * (1 - packing); }
  [[nodiscard]] double drains(double packing) const { return std::max(0.0, saturated(packing) - water_.residual); }

  const BoundTables& tables_;
  const RetentionConstants& water_;
  std::vector<std::size_t> known_;  ///< candidates whose volumes are known
  double least_packing_ = 1;        ///< settled
  double grain_water_ = 0;          ///< per envelope
  double finest_ = 0;               ///< where in the tables the finest mix lies
  double coarsest_ = 0;
  double error_ = 0;
};

}  // namespace

bool asks_for_most_water(const Ground& ground) { return std::ranges::any_of(ground.wishes(), asks_for_most); }

std::uint64_t out_of_reach(const BoundTables& tables) {
  std::vector<std::uint8_t> everything(tables.ground().size());
  std::iota(everything.begin(), everything.end(), std::uint8_t{0});
  std::uint64_t out = SetBounds(tables, Strictness::as_wished).of_shares(everything, Taken::some).broken;
  if (!asks_for_most_water(tables.ground())) return out;
  const MostWater most(tables);
  if (!most.is_known()) return out;
  constexpr double rounding = 1e-8;
  for (std::size_t i = 0; i < tables.ground().wishes().size(); ++i) {
    const PlainWish& wish = tables.ground().wishes()[i];
    if (!asks_for_most(wish)) continue;
    const double reached = wish.kind == PlainWish::Kind::air ? most.air(wish.place) : most.capacity(wish.place);
    if (reached + rounding < wish.least) out |= std::uint64_t{1} << i;
  }
  return out;
}

}  // namespace gritwright::recipe_search
