#pragma once
// Where a root mass may lie in its new pot, and how a posed one exceeds that. Plain numbers in cm, pot frame: origin inside the
// floor's centre, x right, y back, z up.

#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "convex_body.hpp"
#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/pot_outline.hpp"

namespace gritwright {

/// Unit vector of a direction.
[[nodiscard]] Point3 along(Direction direction);
[[nodiscard]] Direction opposite(Direction direction);
[[nodiscard]] inline bool sideways(Direction direction) { return direction != Direction::up && direction != Direction::down; }

/// How far the parallel outline under a lip stands in from the mouth.
inline constexpr double mouth_inset_cm = 0.5;

/// A shoulder's rise over its run at most: tan 35 degrees.
inline constexpr double steepest_shoulder = 0.70020753820970977945;

class AllowedSpace {
 public:
  /// Precondition: check(pot) is empty.
  AllowedSpace(const Container& pot, std::optional<Length> side_clearance, std::optional<Length> below_clearance);

  [[nodiscard]] double lowest_cm() const { return lowest_cm_; }
  /// The fill line.
  [[nodiscard]] double highest_cm() const { return highest_cm_; }
  [[nodiscard]] double side_clearance_cm() const { return side_cm_; }
  [[nodiscard]] const PotOutlines& outlines() const { return outlines_; }
  [[nodiscard]] const PotGeometry& geometry() const { return geometry_; }

  /// Between lowest and highest level, far enough from the wall, and narrow enough for a turned-in mouth. `rise_cm` is what a
  /// shoulder adds on top.
  [[nodiscard]] bool holds(const Point3& p, double rise_cm) const;

  /// The same, `more_cm` farther from wall and mouth; heights do not count.
  [[nodiscard]] bool holds_sideways(const Point3& p, double more_cm) const;

  /// True for points that, wherever they stand between lowest and highest level, are that much farther from wall and mouth; asked
  /// first, since most points need no look at their own height.
  [[nodiscard]] bool in_core(const Point3& p, double more_cm) const;

  /// A box around a point, by how far it reaches along the axes.
  struct Around {
    Point3 middle;
    double right = 0;
    double back = 0;
    double up = 0;
  };
  /// True only if every point of the box that is not under the lowest level is that much farther from wall and mouth.
  [[nodiscard]] bool holds_all_sideways(const Around& box, double more_cm) const;
  /// True only if no point of the box lies in the space, heights aside.
  [[nodiscard]] bool misses_all_sideways(const Around& box) const;

  /// Farthest the space reaches in a sideways direction at a height (above the fill line as there).
  [[nodiscard]] double reach_cm(Direction direction, double height_cm) const;

  /// To the right and to the back at once.
  [[nodiscard]] std::pair<double, double> reaches_cm(double height_cm) const {
    const double height = std::min(height_cm, highest_cm_);
    if (!even_reach_ || height < lowest_cm_) return curved_reaches_cm(height);
    const double below = highest_cm_ - height;
    return {even_reach_->right_cm - even_reach_->right_slope * below, even_reach_->back_cm - even_reach_->back_slope * below};
  }

  /// How far a point lies beyond the space's extreme in a direction; negative: short of it.
  [[nodiscard]] double excess_cm(Direction direction, const Point3& p) const;
  /// The same in every direction.
  [[nodiscard]] std::array<double, 6> excesses_cm(const Point3& p) const;

  /// Height of the soil surface over the fill line, from the mound.
  [[nodiscard]] double mound_cm(double x_cm, double y_cm) const;
  /// Height of the soil surface.
  [[nodiscard]] double soil_cm(double x_cm, double y_cm) const { return highest_cm_ + mound_cm(x_cm, y_cm); }

  /// How high the root mass may stand over the soil at a point: the level distance to the inner rim times tan 35 degrees.
  [[nodiscard]] double shoulder_limit_cm(double x_cm, double y_cm) const;

  /// The plane along a level direction of length 1 that leans as the wall does and takes nothing of the space; its normal has length 1.
  [[nodiscard]] HalfSpace touching_plane(double right, double back) const;

  /// Planes that follow the wall in a direction, `rest_cm` farther out: what a cut along the wall leaves.
  [[nodiscard]] std::vector<HalfSpace> wall_planes(Direction direction, double rest_cm) const;

  /// Steepest the wall (or its parallel outline) leans between lowest and highest level, as run over rise.
  [[nodiscard]] double steepest_lean() const { return lean_; }

 private:
  PotGeometry geometry_;
  PotOutlines outlines_;
  double lowest_cm_ = 0;
  double highest_cm_ = 0;
  double side_cm_ = 0;
  struct Core {
    double half_length_cm = 0;
    double half_width_cm = 0;
    double inset_cm = 0;
    bool square = false;
    std::vector<std::pair<double, double>> corners;  ///< of rectangles within a soft-cornered outline, as shares of its half lengths
  };
  [[nodiscard]] Core core_of_all_heights() const;
  void find_farthest_reach();
  [[nodiscard]] std::pair<double, double> curved_reaches_cm(double height_cm) const;
  /// Of straight walls between two heights.
  [[nodiscard]] Outline narrowest_between(double low_cm, double high_cm) const;
  [[nodiscard]] Outline widest_between(double low_cm, double high_cm) const;

  double lean_ = 0;
  Core core_;
  /// Reach at the fill line and its change by height, where that is the same everywhere between lowest and highest level.
  struct EvenReach {
    double right_cm, back_cm, right_slope, back_slope;
  };
  std::optional<EvenReach> even_reach_;
  bool even_square_ = false;  ///< even reach, and corners that the parallel outline does not have
  std::pair<double, double> farthest_reach_;  ///< right and back, at any height
  Outline rim_;
  Outline surface_;
};

/// Side clearance: 5 % of the inside length, kept within 5-20 mm; below: 15 % of the depth, kept within 5-15 mm.
[[nodiscard]] double default_side_clearance_cm(const Container& pot);
[[nodiscard]] double default_below_clearance_cm(const Container& pot);

/// A pose in numbers: takes points of the tree frame to the pot frame and back.
class Placement {
 public:
  /// Angles in degrees; `trunk_base` in the tree frame goes to `place`.
  Placement(double turn_deg, double tip_deg, double tip_toward_deg, Point3 trunk_base, Point3 place);

  [[nodiscard]] Point3 to_pot(const Point3& p) const { return place_ + rotated(p - trunk_base_); }
  [[nodiscard]] Point3 to_tree(const Point3& p) const { return trunk_base_ + turned_back(p - place_); }
  [[nodiscard]] Point3 rotated(const Point3& v) const { return {dot(rows_[0], v), dot(rows_[1], v), dot(rows_[2], v)}; }
  [[nodiscard]] Point3 turned_back(const Point3& v) const { return v.x * rows_[0] + v.y * rows_[1] + v.z * rows_[2]; }
  /// A half space of the tree frame in the pot frame, and back.
  [[nodiscard]] HalfSpace to_pot(const HalfSpace& half) const;
  [[nodiscard]] HalfSpace to_tree(const HalfSpace& half) const;
  [[nodiscard]] ConvexBody to_pot(ConvexBody body) const;
  [[nodiscard]] const Point3& place() const { return place_; }

 private:
  std::array<Point3, 3> rows_;
  Point3 trunk_base_;
  Point3 place_;
};

}  // namespace gritwright
