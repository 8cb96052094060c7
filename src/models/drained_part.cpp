#include "drained_part.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

double head_at_height_cm(const Container& container, double height_cm) {
  // A saucer lifts the free water over the floor; a wick or the ground below lowers it.
  const double free_water_cm = in_cm(container.saucer) - in_cm(container.wick);
  return height_cm * std::cos(container.tilt.angle.value()) - free_water_cm;
}

DrainedPart drained_part(const PotGeometry& pot, const Retention* layer) {
  const Container& container = pot.container();
  if (layer == nullptr || !container.bottom_layer || !(in_cm(container.bottom_layer->thickness) > 0))
    return {0, head_at_height_cm(container, 0)};
  // The layer's pores let go at half their rise, since they fill and empty at different suctions. Source: docs/science/water.md,
  // coarse bottom layer.
  const double thickness_cm = in_cm(container.bottom_layer->thickness);
  const double holds_cm = 0.5 * layer->input().constants.k_cm_mm / in_mm(layer->characteristic_size());
  return {thickness_cm, std::min(head_at_height_cm(container, thickness_cm), holds_cm)};
}

}  // namespace gritwright
