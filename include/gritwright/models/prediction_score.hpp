#pragma once
#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
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

/// Share of the envelope volume of a mix by catalogue or own material, 0..1; what names none is left out. Empty without volumes.
using MaterialShares = std::map<std::string, double>;
[[nodiscard]] MaterialShares material_shares(const Mix& mix);

/// A mix with pot tests of its own.
struct TestedShares {
  RetentionConstants constants;  ///< as calibrated
  MaterialShares materials;
  friend bool operator==(const TestedShares&, const TestedShares&) = default;
};

/// Constants for a mix that has no test of its own.
struct PooledForMix {
  RetentionConstants constants;
  double known = 0;                    ///< how much they rest on tests, 0..1; the rest is as usual
  std::vector<std::size_t> mixes;      ///< of the tested ones, in their order, those that share a material
  std::vector<std::string> materials;  ///< the shared ones
};

/// Each material of the mix brings its pooled constants by its share, the rest `usual`; a material whose tested mixes hold less than
/// one whole of it counts for so much less. Absent where no tested mix shares a material. Source: docs/science/calibration.md.
[[nodiscard]] std::optional<PooledForMix> pooled_for(const MaterialShares& mix, std::span<const TestedShares> tested, const RetentionConstants& usual = {});

}  // namespace gritwright
