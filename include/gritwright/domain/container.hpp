#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/component.hpp"

namespace gritwright {

enum class Shape { rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl, profile };

/// Inside lengths of a horizontal section. Round, drum: length = width = diameter. Hexagonal, octagonal: across flats in both.
struct Section {
  Length length{};
  Length width{};
  friend bool operator==(const Section&, const Section&) = default;
};

/// Area at a height, for a container given as a table.
struct AreaAtHeight {
  Depth height;
  Area area;
  friend bool operator==(const AreaAtHeight&, const AreaAtHeight&) = default;
};

enum class MoundForm { paraboloid, cone, ellipsoid };
struct Mound {
  Depth rise;
  MoundForm form = MoundForm::paraboloid;
  friend bool operator==(const Mound&, const Mound&) = default;
};

struct BottomLayer {
  Depth thickness;
  std::optional<Component> component;
  friend bool operator==(const BottomLayer&, const BottomLayer&) = default;
};

enum class TiltAxis { length, width };
struct Tilt {
  Angle angle{};
  TiltAxis axis = TiltAxis::length;  ///< the plan axis the pot is turned about
  friend bool operator==(const Tilt&, const Tilt&) = default;
};

/// A container by its inside lengths. All heights from the floor; feet and walls never count.
struct Container {
  std::string name;
  Shape shape = Shape::rectangular;
  Section rim;
  std::optional<Section> middle;  ///< drum only, at half the depth
  std::optional<Section> base;    ///< absent: straight walls (bowl, profile: unused)
  Depth depth;                    ///< floor to rim
  Depth freeboard{};              ///< rim to fill line
  std::optional<PotVolume> water_fill;  ///< poured or weighed to the fill line; overrides the formula's volume
  Length corner_radius{};
  Length fillet_radius{};
  std::optional<double> exponent;  ///< superellipse only, >= 1
  std::vector<AreaAtHeight> areas;  ///< profile only, rising height from 0
  Depth saucer{};                  ///< standing water above the floor
  Depth wick{};                    ///< length of a wick, or contact with the ground below the floor
  Tilt tilt;
  std::optional<Mass> mass;
  std::optional<Mound> mound;
  std::optional<BottomLayer> bottom_layer;
  std::optional<Depth> top_dressing;
  friend bool operator==(const Container&, const Container&) = default;
};

/// Every length that leaves no room: zero depth, walls that close, a fill line under the floor, missing lengths, heights of a
/// table that do not rise, layers that fill the pot; radii the shape has no place for; and the bottom layer's component.
/// Pointers are relative to the container ("/rim/width_cm").
[[nodiscard]] Problems check(const Container& container);

}  // namespace gritwright
