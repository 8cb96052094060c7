#pragma once
#include "gritwright/domain/container.hpp"
#include "gritwright/models/area_profile.hpp"

namespace gritwright {

/// Share of length × width that a superellipse of `exponent` fills: .785 for 2 (an ellipse), 1 for a rectangle's limit.
[[nodiscard]] double superellipse_share(double exponent);

/// The inside of a container: area, section and volume by height. Source: docs/science/containers.md.
class PotGeometry {
 public:
  /// Precondition: check(container) is empty.
  explicit PotGeometry(const Container& container);

  /// Floor to fill line.
  [[nodiscard]] Depth filled_depth() const { return filled_depth_; }

  /// Horizontal inside area at a height from the floor; above the rim that of the rim. A water fill scales it.
  [[nodiscard]] Area area_at(Depth height) const;

  /// Length and width of the section at a height; for round shapes the diameter twice. Before fillet and corner rounding,
  /// scaled so that a water fill changes both alike. A profile gives the square root of its area twice.
  [[nodiscard]] Section section_at(Depth height) const;

  /// Radius of a rectangle's rounded corners, scaled like the sections.
  [[nodiscard]] Length corner_radius() const { return container_.corner_radius * length_scale_; }

  /// Volume to the fill line, without mound; equals the water fill where there is one.
  [[nodiscard]] PotVolume volume() const { return volume_; }

  /// The volume to the fill line that the inside lengths give, whatever the water fill says.
  [[nodiscard]] PotVolume volume_by_lengths() const { return volume_by_lengths_; }

  /// Volume below a height, at most the rim's.
  [[nodiscard]] PotVolume volume_below(Depth height) const;

  /// Volume of the mound above the fill line: a half (paraboloid), a third (cone), two thirds (ellipsoid) of area × rise.
  [[nodiscard]] PotVolume mound_volume() const { return mound_volume_; }

  /// Volume of the coarse bottom layer, and of the top dressing just below the fill line; 0 without one.
  [[nodiscard]] PotVolume bottom_layer_volume() const { return bottom_layer_volume_; }
  [[nodiscard]] PotVolume top_dressing_volume() const { return top_dressing_volume_; }

  /// What the main mix fills: volume to the fill line, plus mound, less bottom layer and top dressing.
  [[nodiscard]] PotVolume main_mix_volume() const {
    return volume_ + mound_volume_ - bottom_layer_volume_ - top_dressing_volume_;
  }

  /// Floor to rim, water fill included.
  [[nodiscard]] const AreaProfile& profile() const { return profile_; }

  [[nodiscard]] const Container& container() const { return container_; }

 private:
  Container container_;
  Depth filled_depth_;
  AreaProfile profile_;
  double length_scale_ = 1;
  PotVolume volume_;
  PotVolume volume_by_lengths_;
  PotVolume mound_volume_;
  PotVolume bottom_layer_volume_;
  PotVolume top_dressing_volume_;
};

}  // namespace gritwright
