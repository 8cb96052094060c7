#pragma once
// The horizontal outline of a pot's inside by height, for fitting a root mass and for pictures to scale. Plain numbers in cm: these
// are asked a hundred thousand times for one plan.

#include <array>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "gritwright/models/pot_geometry.hpp"

namespace gritwright {

/// Tables of a superellipse of half lengths 1.
struct SoftOutline;

/// One horizontal section: convex, centred, symmetric to both axes (x right, y back). Hexagons and octagons stand with a flat
/// side to the front; a table of areas is taken as round.
struct Outline {
  enum class Kind { rectangle, ellipse, hexagon, octagon, superellipse };
  Kind kind = Kind::rectangle;
  double half_length_cm = 0;  ///< hexagon, octagon: centre to flat
  double half_width_cm = 0;
  double corner_cm = 0;   ///< rectangle: radius of its corners
  double exponent = 2;    ///< superellipse
  const SoftOutline* soft = nullptr;  ///< superellipse of an exponent of at least 2: its tables, kept by the pot's outlines
  double inset_cm = 0;    ///< how far the fillet stands in from the walls at this height

  /// Distance from the point to the outline: positive inside. Outside it is negative and only its sign counts.
  [[nodiscard]] double depth_inside_cm(double x_cm, double y_cm) const;
  /// The same with the direction from the point to the nearest of the outline. Ellipses and superellipses only.
  struct Nearest {
    double depth_cm = 0;
    double right = 0;
    double back = 0;
  };
  [[nodiscard]] Nearest nearest(double x_cm, double y_cm) const;
  /// The same where the outline is no farther than `limit_cm`, else nothing. Faster than the distance.
  [[nodiscard]] std::optional<Nearest> nearest_within(double x_cm, double y_cm, double limit_cm) const;
  [[nodiscard]] bool curved() const { return kind == Kind::ellipse || kind == Kind::superellipse; }
  /// True if the point lies at least `inset` inside. Faster than the distance.
  [[nodiscard]] bool holds(double x_cm, double y_cm, double inset_cm) const;
  /// The farthest that points at least `inset` inside reach to the right (or left), and to the back (or front).
  [[nodiscard]] double reach_x_cm(double inset_cm) const;
  [[nodiscard]] double reach_y_cm(double inset_cm) const;
  /// The same along any level direction of length 1; no less than that where the outline has sharp corners.
  [[nodiscard]] double reach_toward_cm(double right, double back, double inset_cm) const;
  /// 0 in the middle, 1 on the outline (fillet left out), the same on every scaled outline between.
  [[nodiscard]] double gauge(double x_cm, double y_cm) const;
  /// The corner points in order, or `per_quadrant`·4 points of a curve (fillet by its reach).
  [[nodiscard]] std::vector<std::pair<double, double>> points(int per_quadrant) const;

 private:
  [[nodiscard]] Nearest curve_depth(double x_cm, double y_cm) const;
};

/// The outlines of one pot from floor to rim; above the rim that of the rim. A water fill scales them with the lengths.
class PotOutlines {
 public:
  explicit PotOutlines(const PotGeometry& pot);

  [[nodiscard]] Outline at(double height_cm) const;

  /// Half length and half width of the outline at a height, fillet aside.
  [[nodiscard]] std::pair<double, double> half_sides_cm(double height_cm) const;

  /// The narrowest outline above `height_cm`, where the section is wider than that: what a turned-in lip lets through.
  [[nodiscard]] std::optional<Outline> mouth_above(double height_cm) const;

  /// The wall leans in somewhere toward the rim.
  [[nodiscard]] bool turned_in() const { return turned_in_; }
  /// Length and width change evenly with the height (fillet aside).
  [[nodiscard]] bool straight_walls() const { return straight_; }

  [[nodiscard]] double rim_cm() const { return depth_cm_; }

 private:
  std::shared_ptr<const SoftOutline> soft_;
  Outline pattern_;
  double depth_cm_ = 0;
  double fillet_cm_ = 0;
  Shape shape_;
  // Half lengths at floor and rim; drum: the square of the radius is a quadratic of the height.
  double length_floor_ = 0, length_rim_ = 0, width_floor_ = 0, width_rim_ = 0;
  std::array<double, 3> square_{};
  std::vector<double> radius_;       // profile: at equal heights
  std::vector<double> narrow_above_;  // profile: least radius from here up
  bool turned_in_ = false;
  bool straight_ = false;
};

}  // namespace gritwright
