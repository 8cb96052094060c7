#include "root_shoulder.hpp"

#include <algorithm>
#include <array>
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

/// How far the kept root mass reaches from a kept point of it into the direction of length 1 (x, y, z).
double reach_cm(const RootBlockBody& block, const Cutting& cutting, const Point3& from, const Point3& direction) {
  constexpr double exactness_cm = 1e-4;
  double reach = 0, step = column_cm / 2;
  while (step > exactness_cm) {
    const auto kept_at = [&](double far) { return keeps_at(block, cutting, {from.x + far * direction.x, from.y + far * direction.y, from.z + far * direction.z}); };
    while (kept_at(reach + step)) reach += step;
    step /= 2;
  }
  return reach;
}

/// What holds up the slope: the outermost of the kept root mass behind the highest point of a column, as seen from the middle.
Point3 outermost(const RootBlockBody& block, const Cutting& cutting, Point3 top, const Point3& middle) {
  constexpr double below_surface_cm = 1e-3;
  const double x = top.x - middle.x, y = top.y - middle.y, away = std::sqrt(x * x + y * y);
  if (!(away > 0)) return top;
  const double reach = reach_cm(block, cutting, {top.x, top.y, top.z - below_surface_cm}, {x / away, y / away, 0});
  return {top.x + reach * x / away, top.y + reach * y / away, top.z};
}

/// How high the slope from one crest point to the next reaches at (x, y). What lies far from each other is not joined: a part stands higher there.
double slope_cm(const Point3& from, const Point3& next, double x, double y) {
  constexpr double neighbours_cm = 3 * column_cm;
  const double run_x = next.x - from.x, run_y = next.y - from.y, run = run_x * run_x + run_y * run_y;
  const double along = run > 0 && run < neighbours_cm * neighbours_cm ? std::clamp(((x - from.x) * run_x + (y - from.y) * run_y) / run, 0.0, 1.0) : 0;
  const double away_x = x - from.x - along * run_x, away_y = y - from.y - along * run_y;
  return from.z + along * (next.z - from.z) - steepest_shoulder * std::sqrt(away_x * away_x + away_y * away_y);
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
  Point3 middle{0, 0, 0};
  double covered = 0;
  columns.each([&](auto at) {
    if (columns.over(at) <= 0) return;
    Point3& top = columns.top(at);
    const double rise = reach_cm(ground.block, cutting, top, {0, 0, 1});
    columns.over(at) += rise;
    top.z += rise;
    middle.x += top.x;
    middle.y += top.y;
    ++covered;
  });
  if (!(covered > 0)) return 0;
  middle.x /= covered;
  middle.y /= covered;
  std::vector<Point3> crest;
  columns.each([&](auto at) {
    if (std::as_const(columns).over(at) > 0 && columns.at_the_edge(at)) crest.push_back(outermost(ground.block, cutting, columns.top(at), middle));
  });
  std::ranges::sort(crest, {}, [&](const Point3& at) { return std::atan2(at.y - middle.y, at.x - middle.x); });
  double volume = 0;
  columns.each([&](auto at) {
    const double x = columns.x(at);
    const double y = columns.y(at);
    if (!rim.holds(x, y, 0)) return;
    const double soil = space.soil_cm(x, y);
    // A column that the root mass touches with less than its middle is not taken up by it.
    const double over = std::as_const(columns).over(at);
    const bool taken = over > 0 && std::ranges::any_of(std::array{0.001, 0.5, 0.999}, [&](double share) { return keeps_at(ground.block, cutting, {x, y, soil + share * over}); });
    const double own = taken ? over : 0;
    double height = own;
    // A mound's soil lies at unlike heights, so the slope goes by true heights.
    for (std::size_t i = 0; i < crest.size(); ++i)
      height = std::max(height, slope_cm(crest[i], crest[(i + 1) % crest.size()], x, y) - soil);
    volume += (height - own) * column_cm * column_cm;
  });
  return volume;
}

}  // namespace gritwright
