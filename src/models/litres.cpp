#include "gritwright/models/litres.hpp"

#include <stdexcept>

namespace gritwright {

LooseVolume loose_volume(Mass dry, BulkDensity density) { return LooseVolume(dry / density.quantity()); }

std::optional<LooseVolume> litres_of_one(const Bag& bag, std::optional<BulkDensity> density) {
  const auto received = dry_mass_received(bag);
  if (!received || !density) return bag.volume;
  return loose_volume(*received * (1.0 / bag.count), *density);
}

Settling default_settling(Placing placing) {
  switch (placing) {
    case Placing::poured: return Settling(0);
    case Placing::worked_in: return Settling(0.08);
    case Placing::shaken_hard_rounded: return Settling(0.14);
    case Placing::shaken_hard_angular: return Settling(0.19);
  }
  throw std::logic_error("unknown way of placing a mix");
}

MixedVolume mixed_volume_to_fill(PotVolume fill, Settling settling, Spill spill) {
  return MixedVolume(fill.quantity() / ((1 - settling.value()) * (1 - spill.value())));
}

MixedVolume mixed_volume_to_fill(PotVolume fill, const Mix& mix) { return mixed_volume_to_fill(fill, counted_settling(mix), counted_spill(mix)); }

LooseVolume component_volume(MixedVolume mixed, LooseShare share, Shrinkage shrinkage) {
  return LooseVolume(mixed.quantity() * share.value() / (1 - shrinkage.value()));
}

std::optional<std::vector<LooseVolume>> component_volumes(MixedVolume mixed, const MixState& state) {
  if (!state.shrinkage) return std::nullopt;
  std::vector<LooseVolume> volumes;
  for (const LooseShare share : state.loose_shares) volumes.push_back(component_volume(mixed, share, *state.shrinkage));
  return volumes;
}

std::optional<PricePerLitre> price_per_mixed_l(const MixState& state, std::span<const std::optional<PricePerLitre>> prices) {
  const auto litres = component_volumes(mixed_l(1), state);
  if (!litres) return std::nullopt;
  double price = 0;
  for (std::size_t k = 0; k < litres->size(); ++k) {
    if (!prices[k]) return std::nullopt;
    price += in_l((*litres)[k]) * prices[k]->value();
  }
  return PricePerLitre(price);
}

}  // namespace gritwright
