#pragma once
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

/// A point of a body: its suction (at most 0 where saturated) and its share of the body's volume.
struct WeightedHead {
  double head_cm = 0;
  double share = 0;
};

/// Quadrature points of the part of a tilted pot between two heights along its own axis. Head = interface_head_cm +
/// (z - from_cm)·cos a + x·sin a, with x from the lowest floor edge. Means over it are within 1e-5 for sections up to 60 cm.
[[nodiscard]] std::vector<WeightedHead> tilted_heads(const PotGeometry& pot, double from_cm, double to_cm, double interface_head_cm);

/// Mean of Se over those points.
[[nodiscard]] double tilted_mean_saturation(const RetentionCurve& curve, const PotGeometry& pot, double from_cm, double to_cm,
                                            double interface_head_cm);

}  // namespace gritwright
