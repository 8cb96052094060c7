#include "gritwright/report/pot_section.hpp"

#include <algorithm>

namespace gritwright {

namespace {

constexpr int steps = 24;  // a curved wall looks smooth with these

PotSlice slice_of(const PotWater& water, const WaterAtHeight& at) {
  PotSlice slice;
  slice.height = at.height;
  slice.water = at.water;
  slice.trapped_air = water.trapped_air;
  // A wick dries a pot below theta(0) everywhere, a saucer never wets it above: the share that drained is not negative.
  slice.free_air = Porosity(std::max(0.0, water.theta_0.value() - at.water.value()));
  slice.grain = Porosity(1 - slice.water.value() - slice.trapped_air.value() - slice.free_air.value());
  return slice;
}

}  // namespace

PotSection pot_section(const PotGeometry& pot, const PotWater* water) {
  PotSection section;
  section.rim = pot.container().depth;
  section.fill_line = pot.filled_depth();
  for (int i = 0; i <= steps; ++i) {
    const Depth height = depth_cm(in_cm(section.rim) * i / steps);
    section.widths.push_back({height, pot.section_at(height).length});
  }
  if (water == nullptr) return section;
  section.perched = depth_cm(std::min(in_cm(water->perched_height), in_cm(section.fill_line)));
  for (const WaterAtHeight& at : water->water_by_height) section.slices.push_back(slice_of(*water, at));
  return section;
}

}  // namespace gritwright
