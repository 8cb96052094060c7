#include "root_earlier.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gritwright {

namespace {

constexpr std::size_t most_cells = 4'000'000;  // 5 mm cells of half a cubic metre; no root mass is larger

Placement set_then(const UntouchedPart& part, const Point3& trunk_base) {
  return {in_deg(part.turn), in_deg(part.tip), in_deg(part.tip_toward), {in_cm(part.base_right), in_cm(part.base_back), in_cm(part.base_up)}, trunk_base};
}

}  // namespace

EarlierPart::EarlierPart(const UntouchedPart& part, const Point3& trunk_base) : placement_(set_then(part, trunk_base)) {
  constexpr double far = std::numeric_limits<double>::infinity();
  low_ = {far, far, far};
  Point3 high{-far, -far, -far};
  for (const TreeBox& box : part.boxes) {
    low_ = {std::min(low_.x, in_cm(box.right_from)), std::min(low_.y, in_cm(box.back_from)), std::min(low_.z, in_cm(box.up_from))};
    high = {std::max(high.x, in_cm(box.right_to)), std::max(high.y, in_cm(box.back_to)), std::max(high.z, in_cm(box.up_to))};
  }
  const auto cells = [](double extent_cm) { return static_cast<int>(std::lround(std::ceil(extent_cm / cell_cm - 1e-6))); };
  if (part.boxes.empty() || (high.x - low_.x) * (high.y - low_.y) * (high.z - low_.z) / (cell_cm * cell_cm * cell_cm) > static_cast<double>(most_cells)) return;
  right_ = cells(high.x - low_.x);
  back_ = cells(high.y - low_.y);
  up_ = cells(high.z - low_.z);
  cells_.resize(static_cast<std::size_t>(right_) * static_cast<std::size_t>(back_) * static_cast<std::size_t>(up_));
  const auto from = [](double at_cm, double low_cm) { return static_cast<int>(std::lround((at_cm - low_cm) / cell_cm)); };
  for (const TreeBox& box : part.boxes)
    for (int z = from(in_cm(box.up_from), low_.z); z < std::min(up_, from(in_cm(box.up_to), low_.z)); ++z)
      for (int y = from(in_cm(box.back_from), low_.y); y < std::min(back_, from(in_cm(box.back_to), low_.y)); ++y)
        for (int x = from(in_cm(box.right_from), low_.x); x < std::min(right_, from(in_cm(box.right_to), low_.x)); ++x)
          cells_[cell_at(x, y, z)] = true;
}

bool EarlierPart::holds(const Point3& in_tree_now) const {
  if (cells_.empty()) return false;
  const Point3 p = placement_.to_tree(in_tree_now) - low_;
  if (p.x < 0 || p.y < 0 || p.z < 0) return false;
  const int x = static_cast<int>(p.x / cell_cm);
  const int y = static_cast<int>(p.y / cell_cm);
  const int z = static_cast<int>(p.z / cell_cm);
  return x < right_ && y < back_ && z < up_ && cells_[cell_at(x, y, z)];
}

}  // namespace gritwright
