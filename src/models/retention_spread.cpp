#include "gritwright/models/retention_spread.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

namespace {

double log_odds(double share) { return std::log(share / (1 - share)); }

constexpr double score_of_tenth = 1.2815515655446004;  // standard normal, 90 %

/// log odds = middle + scale·(exp(skew·score) - 1).
struct ShiftedLognormal {
  double middle;
  double skew;
  double scale;
};

/// The curve through the flooded fills that 10, 50 and 90 % of the soils stay below. Source: water.md (UNSODA 2.0).
ShiftedLognormal flooded_fills() {
  const double low = log_odds(0.69), middle = log_odds(0.84), high = log_odds(0.98);
  const double skew = std::log((high - middle) / (middle - low)) / score_of_tenth;
  return {middle, skew, (high - middle) / std::expm1(skew * score_of_tenth)};
}

}  // namespace

double flooded_fill_at(double median, double score) {
  if (median <= 0 || median >= 1) return median;
  static const ShiftedLognormal usual = flooded_fills();
  const double odds = log_odds(median) + usual.scale * std::expm1(usual.skew * score);
  return 1 / (1 + std::exp(-odds));
}

RetentionConstants constants_at(const RetentionConstants& median, const RetentionSpread& spread, const RetentionScores& scores) {
  RetentionConstants constants = median;
  constants.k_cm_mm *= std::exp(spread.log_k * scores.k);
  constants.grain_fill = std::clamp(median.grain_fill + spread.grain_fill * scores.grain_fill, 0.0, 1.0);
  constants.residual = std::max(0.0, median.residual + spread.residual * scores.residual);
  if (spread.flooded_fill) constants.flooded_fill = flooded_fill_at(median.flooded_fill, scores.flooded_fill);
  return constants;
}

}  // namespace gritwright
