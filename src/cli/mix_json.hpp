#pragma once
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"
#include "json_out.hpp"

namespace gritwright::cli {

/// The figures of a mix without a pot: volume, shrinkage and packing density as poured, all else settled.
[[nodiscard]] Json mix_json(const MixState& state);

/// The figures of a mix in a pot. `volume` to the fill line and `bulk_density` are unknown for a bare depth.
[[nodiscard]] Json pot_water_json(const PotWater& water, std::optional<PotVolume> volume, BulkDensity bulk_density);

}  // namespace gritwright::cli
