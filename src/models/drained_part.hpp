#pragma once
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

/// The part of a pot that the mix fills, by its lowest point.
struct DrainedPart {
  double from_cm = 0;  ///< height of that point above the floor
  double head_cm = 0;  ///< suction there, before the clamp at 0: negative under free water
};

/// Suction at a height of a pot without bottom layer, on its lowest edge; saucer, wick and tilt regarded.
[[nodiscard]] double head_at_height_cm(const Container& container, double height_cm);

/// With a known bottom layer the part above it, which drains until the layer lets go no more; else the whole pot.
[[nodiscard]] DrainedPart drained_part(const PotGeometry& pot, const Retention* layer);

}  // namespace gritwright
