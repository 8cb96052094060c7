#include "gritwright/models/prediction_score.hpp"

#include <cmath>

namespace gritwright {

namespace {

class Sum {
 public:
  void add(const PredictedAndMeasured& pair) {
    const double miss = pair.predicted.value() - pair.measured.value();
    ++count_;
    misses_ += miss;
    squares_ += miss * miss;
  }
  [[nodiscard]] std::optional<PredictionScore> score() const {
    if (count_ == 0) return std::nullopt;
    const auto count = static_cast<double>(count_);
    return PredictionScore{count_, misses_ / count, std::sqrt(squares_ / count)};
  }

 private:
  std::size_t count_ = 0;
  double misses_ = 0;
  double squares_ = 0;
};

}  // namespace

PredictionScores score(std::span<const PredictedAndMeasured> pairs) {
  Sum all, fine, coarse;
  for (const PredictedAndMeasured& pair : pairs) {
    all.add(pair);
    (in_mm(pair.characteristic_size) > coarse_from_mm ? coarse : fine).add(pair);
  }
  return {all.score(), fine.score(), coarse.score()};
}

std::optional<RetentionConstants> pooled_constants(std::span<const CalibratedMix> mixes) {
  double weight = 0, log_k = 0, grain_fill = 0, flooded_fill = 0;
  for (const CalibratedMix& mix : mixes) {
    const double share = mix.share.value();
    weight += share;
    log_k += share * std::log(mix.constants.k_cm_mm);
    grain_fill += share * mix.constants.grain_fill;
    flooded_fill += share * mix.constants.flooded_fill;
  }
  if (!(weight > 0)) return std::nullopt;
  RetentionConstants pooled = mixes.front().constants;
  pooled.k_cm_mm = std::exp(log_k / weight);
  pooled.grain_fill = grain_fill / weight;
  pooled.flooded_fill = flooded_fill / weight;
  return pooled;
}

}  // namespace gritwright
