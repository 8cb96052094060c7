#pragma once
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/pot_water.hpp"

namespace gritwright {

/// What full pots and tubs weigh. A mix in a pot is worked out once.
class DayLifts {
 public:
  /// `states` in the order of the day's mixes; absent where a mix could not be worked out.
  DayLifts(const PlannedDay& day, const std::vector<std::optional<MixState>>& states, const std::map<std::string, PotGeometry>& pots);

  /// Wet mix + kept root mass + tree + pot + layers, as far as they are known.
  [[nodiscard]] Lift of_tree(std::size_t tree, std::size_t mix, PotVolume fill);

  /// The heaviest batch of a mix, its grain soaked; the tub itself is never known.
  [[nodiscard]] std::optional<Lift> of_tub(std::size_t mix, const MixOfDay& made) const;

 private:
  const std::optional<PotWater>& water(std::size_t mix, const std::string& pot);
  void add_mix(Lift& lift, std::size_t mix, const PotWater* water, PotVolume fill) const;
  /// Layers settle as the tree's mix does, as their litres are counted.
  void add_pot_and_layers(Lift& lift, const PlannedTree& tree, std::size_t mix, const PotWater* water) const;

  const PlannedDay& day_;
  const std::vector<std::optional<MixState>>& states_;
  const std::map<std::string, PotGeometry>& pots_;
  std::map<std::pair<std::size_t, std::string>, std::optional<PotWater>> known_;
};

}  // namespace gritwright
