#include "gritwright/models/prediction_score.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/mix_state.hpp"

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

MaterialShares material_shares(const Mix& mix) {
  MaterialShares shares;
  const auto state = mix_state(mix);
  if (!state || !state->envelope_shares) return shares;
  for (std::size_t k = 0; k < mix.components.size(); ++k) {
    if (const auto& material = mix.components[k].material) shares[*material] += (*state->envelope_shares)[k].value();
  }
  return shares;
}

std::optional<PooledForMix> pooled_for(const MaterialShares& mix, std::span<const TestedShares> tested, const RetentionConstants& usual) {
  PooledForMix pooled;
  std::vector<CalibratedMix> of_mix;
  std::vector<bool> used(tested.size());
  for (const auto& [material, share] : mix) {
    std::vector<CalibratedMix> with;
    double weight = 0;
    for (std::size_t i = 0; i < tested.size(); ++i) {
      const auto found = tested[i].materials.find(material);
      if (found == tested[i].materials.end() || !(found->second > 0)) continue;
      with.push_back({tested[i].constants, EnvelopeShare(found->second)});
      weight += found->second;
      used[i] = used[i] || share > 0;
    }
    const auto constants = share > 0 ? pooled_constants(with) : std::nullopt;
    if (!constants) continue;
    const double known = share * std::min(1.0, weight);
    of_mix.push_back({*constants, EnvelopeShare(known)});
    pooled.known += known;
    pooled.materials.push_back(material);
  }
  if (of_mix.empty()) return std::nullopt;
  of_mix.insert(of_mix.begin(), {usual, EnvelopeShare(std::max(0.0, 1 - pooled.known))});
  pooled.constants = *pooled_constants(of_mix);
  for (std::size_t i = 0; i < tested.size(); ++i) {
    if (used[i]) pooled.mixes.push_back(i);
  }
  return pooled;
}

}  // namespace gritwright
