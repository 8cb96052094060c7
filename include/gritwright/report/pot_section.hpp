#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/report/explanations.hpp"

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

/// The pot's inside from above at one height, closed: across its length and along its width from the middle.
struct PotRing {
  Depth height;
  std::vector<std::pair<Length, Length>> points;
};

/// Rings at rim, fill line and floor, for a picture from above to scale. Source: docs/science/containers.md.
[[nodiscard]] std::vector<PotRing> pot_rings(const PotGeometry& pot);

/// How far the water fill lies from the volume by the lengths, as a share of it; 0 without a water fill.
[[nodiscard]] double water_fill_difference(const PotGeometry& pot);

/// Volumes of a pot. Keys volume, by_lengths, difference, main_mix.
[[nodiscard]] std::vector<Explanation> explain_holding(const PotGeometry& pot);

/// `water` null while there is no mix. Source: docs/science/water.md, docs/science/containers.md.
[[nodiscard]] PotSection pot_section(const PotGeometry& pot, const PotWater* water);

}  // namespace gritwright
