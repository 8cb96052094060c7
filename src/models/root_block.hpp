#pragma once
// The root mass in its own frame (tree frame): inside or not, its facets, its volume, and the fixed set of points that stands
// for it. Plain numbers in cm.

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

#include "convex_body.hpp"
#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/pot_outline.hpp"

namespace gritwright {

inline constexpr std::size_t largest_point_set = 100000;

class RootBlockBody {
 public:
  /// Precondition: the block passed check().
  explicit RootBlockBody(const RootBlock& block);

  [[nodiscard]] double length_cm() const { return length_cm_; }
  [[nodiscard]] double width_cm() const { return width_cm_; }
  [[nodiscard]] double height_cm() const { return height_cm_; }
  [[nodiscard]] double volume_cm3() const { return volume_cm3_; }

  [[nodiscard]] bool contains(const Point3& p) const;

  /// False only where no point of the block lies within `level_cm` of `p` in the plane through it that is square to `normal`, of length 1.
  [[nodiscard]] bool may_meet_disc(const Point3& p, const Point3& normal, double level_cm) const;

  /// How deep a point lies behind a face of the block's box, square to it.
  [[nodiscard]] double depth_behind(Face face, const Point3& p) const;
  /// Outward normal of a face.
  [[nodiscard]] static Point3 outward(Face face);
  /// Half space of the points that lie deeper than `depth_cm` behind a face.
  [[nodiscard]] HalfSpace deeper_than(Face face, double depth_cm) const;

  /// Facets; `per_quadrant` for curves.
  [[nodiscard]] ConvexBody facets(int per_quadrant) const;

  /// Those of Hammersley's `count` points over the box that lie in the block; at most `largest_point_set`.
  [[nodiscard]] std::vector<Point3> points(std::size_t count) const;

  /// Calls `take(index, p)` for each of them in their order.
  template <class Take>
  void each_point(std::size_t count, Take take) const {
    const std::vector<Radical>& table = radicals();
    for (std::size_t i = 0; i < count; ++i) {
      const Point3 p = point_of(table[i], i, count);
      if (contains(p)) take(i, p);
    }
  }
  /// One of them by its index.
  [[nodiscard]] Point3 point(std::size_t index, std::size_t count) const { return point_of(radicals()[index], index, count); }

 private:
  enum class Form { box, elliptic, rounded, pot };

  /// Base 2 and base 3 coordinates of Hammersley's points do not depend on how many there are.
  struct Radical {
    double base2;
    double base3;
  };
  [[nodiscard]] static const std::vector<Radical>& radicals();
  [[nodiscard]] Point3 point_of(const Radical& radical, std::size_t index, std::size_t count) const {
    return {length_cm_ * ((static_cast<double>(index) + 0.5) / static_cast<double>(count) - 0.5), width_cm_ * (radical.base2 - 0.5), height_cm_ * radical.base3};
  }

  /// t^n of a rounded block, 0 <= t <= 1, from the table; only away from the surface is that good enough to decide by.
  [[nodiscard]] double tabled_power(double t) const;

  Form form_ = Form::box;
  double length_cm_ = 0;
  double width_cm_ = 0;
  double height_cm_ = 0;
  double exponent_ = 2;
  double inner_box_ = 0;  // half side of the box within a rounded block, as a share of its half lengths
  std::vector<double> powers_;  // empty unless rounded with an exponent of at least 2
  double volume_cm3_ = 0;
  std::shared_ptr<const PotOutlines> outlines_;
};

}  // namespace gritwright
