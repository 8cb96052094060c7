#pragma once
#include <vector>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/range.hpp"

namespace gritwright {

/// How well a pot is known.
struct PotSpread {
  double length_cm = 0;   ///< deviation of each inside length
  double water_fill = 0;  ///< deviation of ln(volume) where a water fill gave it
  friend bool operator==(const PotSpread&, const PotSpread&) = default;
};

/// ±2 mm for nine lengths of ten and 1 % of a water fill; our assumptions.
[[nodiscard]] PotSpread usual_pot_spread();

/// What the errors of a pot's lengths make of it. The section and the depth each are off by themselves; a water fill has its own error.
struct PotFactors {
  double depth = 1;
  double area = 1;
  double volume = 1;
};

/// Standard normal scores of length, width and depth; the first also of a water fill.
struct PotScores {
  double length = 0;
  double width = 0;
  double depth = 0;
};

[[nodiscard]] PotFactors pot_factors(const PotGeometry& pot, const PotSpread& spread, const PotScores& scores);

struct PotRanges {
  Range volume_ml;
  Range depth_cm;
  Range area;           ///< as a factor on every area
  Range main_mix_ml;    ///< without layers
  Range by_lengths_ml;  ///< as if no water fill had been measured
};

/// Of a pot by itself. Source: docs/science/uncertainty.md.
[[nodiscard]] PotRanges pot_ranges(const PotGeometry& pot, const PotSpread& spread = usual_pot_spread(), const SampleSize& size = {});

}  // namespace gritwright
