#include "gritwright/models/root_mix.hpp"

#include <algorithm>

#include "gritwright/models/pot_geometry.hpp"

namespace gritwright {

const Container& pot_of(const RootMassPlan& plan, const WorkedPlan& worked) {
  return worked.other_pot_index ? plan.free_pots[*worked.other_pot_index] : plan.pot;
}

double new_mix_share(const RootMassPlan& plan, const WorkedPlan& worked) {
  const PotGeometry pot(pot_of(plan, worked));
  return std::clamp(in_ml(worked.fill) / (in_ml(pot.volume()) + in_ml(pot.mound_volume())), 0.0, 1.0);
}

Container pot_without_root_mass(const RootMassPlan& plan, const WorkedPlan& worked) {
  const Container& whole = pot_of(plan, worked);
  const PotGeometry geometry(whole);
  Container rest;
  rest.name = whole.name;
  rest.shape = Shape::profile;
  rest.saucer = whole.saucer;
  rest.wick = whole.wick;
  rest.tilt = whole.tilt;
  rest.bottom_layer = whole.bottom_layer;
  rest.top_dressing = whole.top_dressing;
  rest.depth = geometry.filled_depth();
  // A table needs some area everywhere; a hair of it weighs nothing.
  constexpr double least_cm2 = 1e-3;
  const auto add = [&](Depth height, Area kept) {
    rest.areas.push_back({height, area_cm2(std::max(least_cm2, in_cm2(geometry.area_at(height)) - in_cm2(kept)))});
  };
  if (worked.kept_by_height.empty()) {
    add(Depth{}, Area{});
    add(rest.depth, Area{});
    return rest;
  }
  add(Depth{}, worked.kept_by_height.front().area);
  for (const AreaAtHeight& kept : worked.kept_by_height) add(kept.height, kept.area);
  add(rest.depth, worked.kept_by_height.back().area);
  return rest;
}

}  // namespace gritwright
