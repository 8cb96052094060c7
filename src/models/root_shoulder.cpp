#include "root_shoulder.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

namespace gritwright {

namespace {

constexpr double column_cm = 1;

/// A column of the pot's plan and how far the kept root mass stands over the soil in it.
struct PlanColumn {
  double x = 0;
  double y = 0;
  double over = 0;
};

}  // namespace

double shoulder_sphagnum_cm3(const PlanGround& ground, const AllowedSpace& space, const Cutting& cutting, const PointShares& counted) {
  const Outline rim = space.outlines().at(space.outlines().rim_cm());
  const auto half_columns = [](double reach) { return static_cast<int>(std::ceil(reach / column_cm)); };
  const int right = half_columns(rim.reach_x_cm(0));
  const int back = half_columns(rim.reach_y_cm(0));
  const int wide = 2 * right;
  std::vector<PlanColumn> columns;
  for (int row = -back; row < back; ++row)
    for (int at = -right; at < right; ++at) columns.push_back({(at + 0.5) * column_cm, (row + 0.5) * column_cm, 0});
  const std::vector<Point3>& points = ground.fine.points();
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (counted.of_points[i] == 0) continue;
    const Point3 p = cutting.placement.to_pot(points[i]);
    const double over = p.z - space.soil_cm(p.x, p.y);
    const int at = static_cast<int>(std::floor(p.x / column_cm)) + right;
    const int row = static_cast<int>(std::floor(p.y / column_cm)) + back;
    if (over <= 0 || at < 0 || at >= wide || row < 0 || row >= 2 * back) continue;
    double& highest = columns[static_cast<std::size_t>(row * wide + at)].over;
    highest = std::max(highest, over);
  }
  std::vector<PlanColumn> raised;
  std::ranges::copy_if(columns, std::back_inserter(raised), [](const PlanColumn& column) { return column.over > 0; });
  double volume = 0;
  for (const PlanColumn& column : columns) {
    if (!rim.holds(column.x, column.y, 0)) continue;
    double height = column.over;
    for (const PlanColumn& from : raised) {
      const double dx = from.x - column.x;
      const double dy = from.y - column.y;
      height = std::max(height, from.over - steepest_shoulder * std::sqrt(dx * dx + dy * dy));
    }
    volume += (height - column.over) * column_cm * column_cm;
  }
  return volume;
}

}  // namespace gritwright
