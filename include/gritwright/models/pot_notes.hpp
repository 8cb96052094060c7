#pragma once
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// A warning where the water fill is less than half or more than one and a half times what the lengths hold: no tape is so far off, a
/// unit is. Source: docs/science/containers.md.
[[nodiscard]] Notes notes_on_water_fill(const PotGeometry& pot);

}  // namespace gritwright
