#pragma once
#include <optional>

#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"

namespace gritwright {

/// What the retention chain takes from a mix as it lies settled. Empty where a particle density is missing.
[[nodiscard]] std::optional<RetentionInput> retention_input(const MixState& state, const RetentionConstants& constants);

/// The chain of a container's bottom layer by itself, with the constants of the mix. Empty without a layer of known grain.
[[nodiscard]] std::optional<Retention> layer_retention(const Container& container, const RetentionConstants& constants);

/// Air and water of the main mix of a pot, its saucer, wick, tilt and bottom layer included. Empty where a particle density of
/// the mix is missing. Precondition: check(container) is empty.
[[nodiscard]] std::optional<PotWater> mix_in_pot(const MixState& state, const RetentionConstants& constants, const PotGeometry& pot);

/// The same in straight walls of one depth, free draining.
[[nodiscard]] std::optional<PotWater> mix_in_column(const MixState& state, const RetentionConstants& constants, Depth depth);

}  // namespace gritwright
