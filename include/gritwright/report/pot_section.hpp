#pragma once
#include <optional>
#include <vector>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/pot_water.hpp"

namespace gritwright {

/// What fills a pot at one height. The four shares add up to 1.
struct PotSlice {
  Depth height;         ///< from the floor
  Porosity grain;       ///< solid grain and pores no water enters
  Porosity water;
  Porosity trapped_air; ///< gas a flood does not reach
  Porosity free_air;    ///< what drains: theta(0) - theta(height)
};

/// One width of the pot's inside.
struct PotWidth {
  Depth height;
  Length length;  ///< along the pot's length
};

/// A pot cut along its length, for a picture to scale and its table.
struct PotSection {
  std::vector<PotWidth> widths;  ///< floor to rim, rising
  Depth rim;
  Depth fill_line;
  std::optional<Depth> perched;  ///< at most the fill line
  std::vector<PotSlice> slices;  ///< floor to fill line, rising; empty while there is no mix
};

/// `water` null while there is no mix. Source: docs/science/water.md, docs/science/containers.md.
[[nodiscard]] PotSection pot_section(const PotGeometry& pot, const PotWater* water);

}  // namespace gritwright
