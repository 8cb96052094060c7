#pragma once
#include "gritwright/domain/mix.hpp"

namespace gritwright {

/// How far the retention constants of mixes scatter about the values that are used for them. Source: water.md; the residual's and
/// the grain fill's deviations are assumptions.
struct RetentionSpread {
  double log_k = 0.24;        ///< standard deviation of ln k
  double grain_fill = 0.15;   ///< of w, cut at 0 and 1
  double residual = 0.015;    ///< of theta_r, cut at 0
  bool flooded_fill = true;   ///< whether f scatters: 10-90 % of soils fill 0.69-0.98 of their voids about 0.84
  friend bool operator==(const RetentionSpread&, const RetentionSpread&) = default;
};

/// Independent standard normal scores, one for each constant.
struct RetentionScores {
  double k = 0;
  double grain_fill = 0;
  double flooded_fill = 0;
  double residual = 0;
};

/// The flooded fill at a score, with `median` at 0. The logarithm of its odds is a shifted lognormal through the published
/// 10, 50 and 90 %; another median moves the odds by one factor. 0..1.
[[nodiscard]] double flooded_fill_at(double median, double score);

/// The constants at these scores; all scores 0 give `median` back.
[[nodiscard]] RetentionConstants constants_at(const RetentionConstants& median, const RetentionSpread& spread,
                                              const RetentionScores& scores);

}  // namespace gritwright
