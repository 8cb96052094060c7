#pragma once
#include <optional>
#include <variant>

#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Masses of a saturate-and-drain test, each with the pot's tare.
struct PotWeighings {
  Mass tare{};
  Mass dry{};
  std::optional<Mass> flooded;  ///< flooded slowly from below, weighed sealed
  std::optional<Mass> drained;  ///< half an hour later
  friend bool operator==(const PotWeighings&, const PotWeighings&) = default;
};

/// The test without a balance: all the water a dry mix took until a shiny film stood on it, a day's soak included, and what ran
/// out again.
struct PouredWater {
  PotVolume poured;
  std::optional<PotVolume> caught;
  friend bool operator==(const PouredWater&, const PouredWater&) = default;
};

/// One saturate-and-drain test: what was measured of a mix that fills `volume`.
struct PotReading {
  PotVolume volume;  ///< by the shape or, better, a water fill; > 0
  std::variant<PotWeighings, PouredWater> water;
  friend bool operator==(const PotReading&, const PotReading&) = default;
};

/// Weighings out of order (0 <= tare < dry <= drained <= flooded), more water caught than poured, a volume not above 0. Pointers
/// are "/dry_g", "/caught_ml", "/volume_ml" and so on.
[[nodiscard]] Problems check(const PotReading& reading);

}  // namespace gritwright
