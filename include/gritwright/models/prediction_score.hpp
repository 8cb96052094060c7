#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// One figure of one pot test, foretold before the test's own data were used and then measured; shares of the volume.
struct PredictedAndMeasured {
  Porosity predicted;
  Porosity measured;
  Aperture characteristic_size;  ///< d_c of the mix
  friend bool operator==(const PredictedAndMeasured&, const PredictedAndMeasured&) = default;
};

/// How predictions fared: bias = mean of predicted - measured, rmse = root of the mean square of it.
struct PredictionScore {
  std::size_t count = 0;
  double bias = 0;
  double rmse = 0;
};

/// All, and apart those up to `coarse_from_mm` and above it. Absent where there is none.
struct PredictionScores {
  std::optional<PredictionScore> all;
  std::optional<PredictionScore> fine;
  std::optional<PredictionScore> coarse;
};

/// The retention constants stand on sands up to this size; above it they are carried over by similitude. Source: water.md.
inline constexpr double coarse_from_mm = 2;

[[nodiscard]] PredictionScores score(std::span<const PredictedAndMeasured> pairs);

/// Constants one mix was calibrated to, for pooling: how much of the mix is the material, by envelope volume, 0..1.
struct CalibratedMix {
  RetentionConstants constants;
  EnvelopeShare share;
};

/// The constants of a material from the mixes it is part of: k by its geometric mean, w and f by their means, each mix weighing
/// by its share of the material. Empty without a share above 0.
[[nodiscard]] std::optional<RetentionConstants> pooled_constants(std::span<const CalibratedMix> mixes);

}  // namespace gritwright
