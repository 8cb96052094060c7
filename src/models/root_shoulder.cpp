#include "root_shoulder.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace gritwright {

namespace {

constexpr double column_cm = 0.5;

/// Columns of the pot's plan, and how far the kept root mass stands over the soil in each.
class ShoulderColumns {
 public:
  explicit ShoulderColumns(const Outline& rim)
      : right_(half_count(rim.reach_x_cm(0))), back_(half_count(rim.reach_y_cm(0))), over_(static_cast<std::size_t>(4 * right_ * back_)), top_(over_.size()) {}

  struct At {
    int right, back;
  };
  [[nodiscard]] bool has(At at) const { return at.right >= 0 && at.right < 2 * right_ && at.back >= 0 && at.back < 2 * back_; }
  [[nodiscard]] At at(double x, double y) const {
    return {static_cast<int>(std::floor(x / column_cm)) + right_, static_cast<int>(std::floor(y / column_cm)) + back_};
  }
  [[nodiscard]] double& over(At at) { return over_[index(at)]; }
  /// The highest kept point of a column that stands over the soil.
  [[nodiscard]] Point3& top(At at) { return top_[index(at)]; }
  /// 0 outside the pot.
  [[nodiscard]] double over(At at) const { return has(at) ? over_[index(at)] : 0; }
  [[nodiscard]] double x(At at) const { return (at.right - right_ + 0.5) * column_cm; }
  [[nodiscard]] double y(At at) const { return (at.back - back_ + 0.5) * column_cm; }

  template <class Take>
  void each(Take take) const {
    for (int back = 0; back < 2 * back_; ++back)
      for (int right = 0; right < 2 * right_; ++right) take(At{right, back});
  }

  /// Amid columns that stand nearly as high it is one of those that holds up the slope outside.
  [[nodiscard]] bool at_the_edge(At at) const {
    const double nearly = over(at) - steepest_shoulder * column_cm / 2;
    for (const At beside : {At{at.right + 1, at.back}, At{at.right - 1, at.back}, At{at.right, at.back + 1}, At{at.right, at.back - 1}})
      if (over(beside) < nearly) return true;
    return false;
  }

 private:
  [[nodiscard]] static int half_count(double reach) { return std::max(1, static_cast<int>(std::ceil(reach / column_cm))); }
  [[nodiscard]] std::size_t index(At at) const { return static_cast<std::size_t>(at.back) * static_cast<std::size_t>(2 * right_) + static_cast<std::size_t>(at.right); }

  int right_;
  int back_;
  std::vector<double> over_;
  std::vector<Point3> top_;
};

bool keeps_at(const RootBlockBody& block, const Cutting& cutting, const Point3& in_pot) {
  for (const HalfSpace& plane : cutting.planes)
    if (plane.beyond(in_pot) > 0) return false;
  return (cutting.space == nullptr || cutting.space->holds(in_pot, cutting.rise_cm)) && block.contains(cutting.placement.to_tree(in_pot));
}

/// Height of the kept root mass straight above a kept point of it.
double surface_cm(const RootBlockBody& block, const Cutting& cutting, Point3 at) {
  constexpr double exactness_cm = 1e-4;
  double low = at.z, step = column_cm / 2;
  while (step > exactness_cm) {
    while (keeps_at(block, cutting, {at.x, at.y, low + step})) low += step;
    step /= 2;
  }
  return low;
}

}  // namespace

double shoulder_sphagnum_cm3(const PlanGround& ground, const AllowedSpace& space, const Cutting& cutting, const PointShares& counted) {
  const Outline rim = space.outlines().at(space.outlines().rim_cm());
  ShoulderColumns columns(rim);
  const std::vector<Point3>& points = ground.fine().points();
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (counted.of_points[i] == 0) continue;
    const Point3 p = cutting.placement.to_pot(points[i]);
    const double over = p.z - space.soil_cm(p.x, p.y);
    const auto at = columns.at(p.x, p.y);
    if (over <= 0 || !columns.has(at) || over <= columns.over(at)) continue;
    columns.over(at) = over;
    columns.top(at) = p;
  }
  std::vector<ShoulderColumns::At> edge;
  columns.each([&](auto at) {
    if (columns.over(at) <= 0) return;
    const Point3 top = columns.top(at);
    columns.over(at) += surface_cm(ground.block, cutting, top) - top.z;
  });
  columns.each([&](auto at) {
    if (std::as_const(columns).over(at) > 0 && columns.at_the_edge(at)) edge.push_back(at);
  });
  double volume = 0;
  columns.each([&](auto at) {
    const double x = columns.x(at);
    const double y = columns.y(at);
    if (!rim.holds(x, y, 0)) return;
    // A mound's soil lies at unlike heights, so the slope goes by true heights.
    const double own = columns.over(at), soil = space.soil_cm(x, y);
    double height = own;
    for (const auto& from : edge) {
      // To the nearest of the column, not to its middle.
      const double dx = std::max(0.0, std::abs(columns.x(from) - x) - column_cm / 2);
      const double dy = std::max(0.0, std::abs(columns.y(from) - y) - column_cm / 2);
      height = std::max(height, columns.over(from) + space.soil_cm(columns.x(from), columns.y(from)) - soil - steepest_shoulder * std::sqrt(dx * dx + dy * dy));
    }
    volume += (height - own) * column_cm * column_cm;
  });
  return volume;
}

}  // namespace gritwright
