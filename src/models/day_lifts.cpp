#include "day_lifts.hpp"

#include <algorithm>

#include "gritwright/models/mix_in_pot.hpp"

namespace gritwright {

namespace {

constexpr double water_g_l = 1000;

Mass wet(PotVolume volume, BulkDensity dry, double water_share) {
  return volume.quantity() * bulk_g_l(in_g_l(dry) + water_g_l * water_share).quantity();
}

class LiftSum {
 public:
  explicit LiftSum(Lift& lift) : lift_(lift) {}
  void add(const std::optional<Mass>& mass, const char* what) {
    if (mass)
      lift_.mass += *mass;
    else
      miss(what);
  }
  void miss(const char* what) {
    lift_.complete = false;
    if (std::ranges::find(lift_.missing, what) == lift_.missing.end()) lift_.missing.emplace_back(what);
  }

 private:
  Lift& lift_;
};

}  // namespace

DayLifts::DayLifts(const PlannedDay& day, const std::vector<std::optional<MixState>>& states, const std::map<std::string, PotGeometry>& pots)
    : day_(day), states_(states), pots_(pots) {}

const std::optional<PotWater>& DayLifts::water(std::size_t mix, const std::string& pot) {
  const auto key = std::pair(mix, pot);
  const auto found = known_.find(key);
  if (found != known_.end()) return found->second;
  std::optional<PotWater> water;
  const auto geometry = pots_.find(pot);
  if (geometry != pots_.end() && states_[mix]) water = mix_in_pot(*states_[mix], day_.mixes[mix].mix.water, geometry->second);
  return known_.emplace(key, std::move(water)).first->second;
}

void DayLifts::add_mix(Lift& lift, std::size_t mix, const PotWater* water, PotVolume fill) const {
  LiftSum sum(lift);
  if (!states_[mix] || !states_[mix]->settled) return sum.miss("mix");
  sum.add(wet(fill, states_[mix]->settled->bulk_density, water == nullptr ? 0 : water->container_capacity.value()), "mix");
  if (water == nullptr) sum.miss("water");
}

void DayLifts::add_pot_and_layers(Lift& lift, const PlannedTree& tree, std::size_t mix, const PotWater* water) const {
  LiftSum sum(lift);
  const std::optional<MixState>& state = states_[mix];
  const double settled = state && state->poured && state->settled ? state->settled->bulk_density / state->poured->bulk_density : 1;
  const auto wet_layer = [&](PotVolume volume, BulkDensity loose, double water_share) { return wet(volume, bulk_g_l(in_g_l(loose) * settled), water_share); };
  // A layer above holds at most about what the mix does.
  const double layer_water = water == nullptr ? 0 : water->container_capacity.value();
  for (const GrainLayer& layer : tree.layers)
    sum.add(layer.bulk_density ? std::optional(wet_layer(layer.volume, *layer.bulk_density, layer_water)) : std::nullopt, "layer");
  const auto geometry = pots_.find(tree.pot);
  if (geometry == pots_.end()) return sum.miss("pot");
  const Container& pot = geometry->second.container();
  sum.add(pot.mass, "pot");
  if (pot.bottom_layer) {
    std::optional<Mass> mass;
    if (pot.bottom_layer->component)
      mass = wet_layer(geometry->second.bottom_layer_volume(), dry_bulk_density(pot.bottom_layer->component->grain),
                       water != nullptr && water->bottom_layer ? water->bottom_layer->layer_capacity.value() : layer_water);
    sum.add(mass, "layer");
  }
  if (pot.top_dressing && in_ml(geometry->second.top_dressing_volume()) > 0) {
    const auto grain = std::ranges::find_if(day_.shelf, [&](const GrainSupply& supply) {
      return !tree.top_dressing.empty() && supply.bulk_density &&
             (supply.bag == tree.top_dressing || supply.component == tree.top_dressing || supply.material == tree.top_dressing);
    });
    std::optional<Mass> mass;
    if (grain != day_.shelf.end()) mass = wet_layer(geometry->second.top_dressing_volume(), *grain->bulk_density, layer_water);
    sum.add(mass, "layer");
  }
}

Lift DayLifts::of_tree(std::size_t index, std::size_t mix, PotVolume fill) {
  const PlannedTree& tree = day_.trees[index];
  Lift lift;
  lift.what = tree.name;
  lift.pot = tree.pot;
  lift.index = index;
  const std::optional<PotWater>& in_pot = water(mix, tree.pot);
  const PotWater* known = in_pot ? &*in_pot : nullptr;
  add_mix(lift, mix, known, fill);
  add_pot_and_layers(lift, tree, mix, known);
  LiftSum sum(lift);
  // A pot that is filled with mix alone keeps no root mass.
  if (tree.fill || tree.kept_root_mass) sum.add(tree.kept_root_mass, "root-mass");
  sum.add(tree.mass, "tree");
  return lift;
}

std::optional<Lift> DayLifts::of_tub(std::size_t mix, const MixOfDay& made) const {
  if (!made.batches || !states_[mix] || !states_[mix]->poured) return std::nullopt;
  const PackedState& poured = *states_[mix]->poured;
  double fullest_l = 0;
  for (const TubBatch& batch : made.batches->batches) fullest_l = std::max(fullest_l, in_l(batch.made));
  Lift lift;
  lift.sort = LiftSort::tub;
  lift.what = made.name;
  lift.index = mix;
  lift.mass = wet(pot_ml(fullest_l * 1000), poured.bulk_density, poured.grain_water.value());
  LiftSum(lift).miss("tub");
  return lift;
}

}  // namespace gritwright
