#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/mix_version.hpp"
#include "gritwright/domain/pot_weighings.hpp"
#include "gritwright/domain/recorded_container.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// The grower's own saturate-and-drain test of a mix in a pot of known shape. Without a balance: water poured in until a shiny
/// film stands, and water caught.
struct PotTest {
  std::optional<Id<MixVersion>> mix;
  std::optional<Id<RecordedContainer>> container;
  std::optional<std::string> day;
  std::optional<PotVolume> volume;  ///< of the mix in the pot; absent: the container's
  std::optional<Depth> filled_depth;
  std::optional<PotWeighings> weighed;
  std::optional<PotVolume> water_poured;
  std::optional<PotVolume> water_caught;
  std::optional<WaterAbsorption> water_absorption;  ///< of the mix, 24 h soak, surface-dry
  std::optional<RetentionConstants> fitted;         ///< what was learnt from it
  std::string note;
  friend bool operator==(const PotTest&, const PotTest&) = default;
};

/// Weighings out of order (tare < dry <= drained <= flooded), more water caught than poured, volumes not above 0.
[[nodiscard]] Problems check(const PotTest& test);

}  // namespace gritwright
