#include "gritwright/models/mix_in_pot.hpp"

namespace gritwright {

std::optional<Retention> layer_retention(const Container& container, const RetentionConstants& constants) {
  if (!container.bottom_layer || !container.bottom_layer->component) return std::nullopt;
  Mix layer;
  layer.components = {*container.bottom_layer->component};
  layer.components.front().parts = Parts(1);
  const auto state = mix_state(layer);
  if (!state) return std::nullopt;
  auto input = retention_input(*state, constants);
  return input ? std::optional(Retention(std::move(*input))) : std::nullopt;
}

std::optional<RetentionInput> retention_input(const MixState& state, const RetentionConstants& constants) {
  if (!state.settled || !state.envelope_grading) return std::nullopt;
  RetentionInput input;
  input.envelope_grading = *state.envelope_grading;
  input.voids_between_grains = state.settled->voids_between_grains;
  input.open_voids_in_grains = state.settled->open_voids_in_grains;
  input.grain_water = state.settled->grain_water;
  input.finer_than_pan_sieve = Passing(state.pan_share.value());
  input.organic_or_fibrous = state.organic_or_fibrous;
  input.constants = constants;
  return input;
}

std::optional<PotWater> mix_in_pot(const MixState& state, const RetentionConstants& constants, const PotGeometry& pot) {
  auto input = retention_input(state, constants);
  if (!input) return std::nullopt;
  const Retention retention(std::move(*input));
  const auto layer = layer_retention(pot.container(), constants);
  return pot_water(retention, pot, layer ? &*layer : nullptr);
}

std::optional<PotWater> mix_in_column(const MixState& state, const RetentionConstants& constants, Depth depth) {
  auto input = retention_input(state, constants);
  if (!input) return std::nullopt;
  return column_water(Retention(std::move(*input)), depth);
}

}  // namespace gritwright
