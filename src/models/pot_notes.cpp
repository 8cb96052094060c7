#include "gritwright/models/pot_notes.hpp"

namespace gritwright {

Notes notes_on_water_fill(const PotGeometry& pot) {
  constexpr double least = 0.5;
  constexpr double most = 1.5;
  const double share = pot.volume() / pot.volume_by_lengths();
  if (!pot.container().water_fill || (share >= least && share <= most)) return {};
  return {{"container.water-fill-far-off", Level::warning, "", {{"volume_ml", in_ml(pot.volume())}, {"lengths_ml", in_ml(pot.volume_by_lengths())}, {"percent", 100 * share}}}};
}

}  // namespace gritwright
