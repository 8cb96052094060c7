#include "gritwright/report/pot_section.hpp"

#include <algorithm>

#include "gritwright/models/pot_outline.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

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

std::vector<PotRing> pot_rings(const PotGeometry& pot) {
  constexpr int steps_of_quadrant = 16;
  const PotOutlines outlines(pot);
  std::vector<PotRing> rings;
  for (const Depth& height : {pot.container().depth, pot.filled_depth(), Depth{}}) {
    PotRing ring{height, {}};
    for (const auto& [across_cm, along_cm] : outlines.at(in_cm(height)).points(steps_of_quadrant)) ring.points.emplace_back(length_cm(across_cm), length_cm(along_cm));
    rings.push_back(std::move(ring));
  }
  return rings;
}

double water_fill_difference(const PotGeometry& pot) { return pot.volume() / pot.volume_by_lengths() - 1; }

std::vector<Explanation> explain_holding(const PotGeometry& pot) {
  const char* page = "docs/science/containers.md";
  const auto ml = [](PotVolume volume) { return figure(in_ml(volume), 0) + " mL"; };
  const std::pair<std::string, std::string> lengths{GRITWRIGHT_TEXT("by the lengths"), ml(pot.volume_by_lengths())};
  const std::pair<std::string, std::string> filled{GRITWRIGHT_TEXT("floor to fill line"), figure(in_cm(pot.filled_depth()), 2) + " cm"};
  std::vector<Explanation> list;
  if (pot.container().water_fill) list.push_back({"volume", GRITWRIGHT_TEXT("water poured or weighed to the fill line; the area at every height is scaled to it"), {{GRITWRIGHT_TEXT("water fill"), ml(pot.volume())}, lengths}, page});
  else list.push_back({"volume", GRITWRIGHT_TEXT("integral of the inside area from the floor to the fill line"), {filled}, page});
  list.push_back({"by_lengths", GRITWRIGHT_TEXT("integral of the inside area from the floor to the fill line"), {filled}, page});
  if (pot.container().water_fill) list.push_back({"difference", GRITWRIGHT_TEXT("water fill / volume by the lengths - 1"), {{GRITWRIGHT_TEXT("water fill"), ml(pot.volume())}, lengths}, page});
  list.push_back({"main_mix", GRITWRIGHT_TEXT("volume + mound - bottom layer - top dressing"),
                  {{GRITWRIGHT_TEXT("volume"), ml(pot.volume())}, {GRITWRIGHT_TEXT("mound"), ml(pot.mound_volume())}, {GRITWRIGHT_TEXT("bottom layer"), ml(pot.bottom_layer_volume())}, {GRITWRIGHT_TEXT("top dressing"), ml(pot.top_dressing_volume())}}, page});
  return list;
}

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
