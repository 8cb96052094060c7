#pragma once
#include <optional>
#include <vector>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

/// Water share theta at a height above the floor, along the pot's own axis.
struct WaterAtHeight {
  Depth height;
  Porosity water;
};

/// What a coarse bottom layer does: the mix drains only until the suction where it rests on the layer reaches `interface_head`.
struct BottomLayerWater {
  Depth interface_head;
  Porosity layer_capacity;           ///< water share of the layer itself
  Porosity capacity_without;         ///< the mix's capacity if it filled the pot down to the floor
  Porosity air_without;              ///< and its air-filled porosity
  std::optional<PotVolume> water_with;     ///< water in the whole pot, layer included
  std::optional<PotVolume> water_without;  ///< water in the whole pot filled with mix alone
};

/// Air and water of a mix in one pot after flooding and free draining. Shares of the mix's bulk volume between floor (or bottom
/// layer) and fill line; they belong to this depth and shape. Source: docs/science/water.md.
struct PotWater {
  Depth filled_depth;
  Porosity container_capacity;    ///< CC, mean theta over the body
  Porosity air_filled_porosity;   ///< theta(0) - CC, the share that drains
  Porosity trapped_air;           ///< total_air - air_filled_porosity: what a flood does not reach
  Porosity total_air;             ///< all open voids - CC
  Porosity theta_0;
  Porosity theta_10;              ///< at a suction of 10 cm of water
  Porosity theta_50;
  Porosity theta_100;
  Porosity easily_available;      ///< theta(10) - theta(50)
  Porosity water_buffering;       ///< theta(50) - theta(100)
  Porosity available_in_pot;      ///< CC - theta(50); negative where a wick dries the pot below that
  Depth perched_height;           ///< from the floor; above the fill line where the whole pot stays wet
  std::optional<PotVolume> mix_volume;  ///< of the main mix, mound included; unknown for a bare depth
  std::optional<BottomLayerWater> bottom_layer;
  std::vector<WaterAtHeight> water_by_height;  ///< at 11 equal steps from floor to fill line, in the middle of the pot
  Notes notes;
};

/// Saucer, wick, tilt and bottom layer as the container has them. `layer` is the chain of the layer's grain; without it a layer
/// is left out of account and a note says so.
[[nodiscard]] PotWater pot_water(const Retention& mix, const PotGeometry& pot, const Retention* layer = nullptr);

/// Straight walls of a given depth, free draining: for a depth without a container.
[[nodiscard]] PotWater column_water(const Retention& mix, Depth depth);

/// Container capacity alone, for searches that ask it thousands of times; equals pot_water's.
[[nodiscard]] Porosity container_capacity(const RetentionCurve& curve, const PotGeometry& pot, const Retention* layer = nullptr);

/// Dry mix plus the water it holds, at 1 g/mL: volume·(bulk density + 1000 g/L·CC).
[[nodiscard]] Mass wet_mass(PotVolume mix_volume, BulkDensity bulk_density, Porosity container_capacity);

/// Hydraulic conductivity when saturated, as the power of ten of cm/s it lies in: both formulas over-predict about twofold, so
/// more digits would be false. Hazen's K = 100·d10[cm]^2.
[[nodiscard]] int conductivity_power_hazen(Aperture d10);

/// Kozeny and Carman's K = (rho g/mu)·p^3 d^2/(180 (1 - p)^2), water at 20 °C; 0 < p < 1.
[[nodiscard]] int conductivity_power_kozeny_carman(Aperture size, Porosity voids_between_grains);

}  // namespace gritwright
