#pragma once
// What was left untouched the time before, as the plan's own tree frame sees it. Plain numbers in cm.

#include <cstddef>
#include <vector>

#include "gritwright/domain/untouched_part.hpp"
#include "root_points.hpp"
#include "root_space.hpp"

namespace gritwright {

class EarlierPart {
 public:
  /// `trunk_base` is where it lies today: the point that both frames share.
  EarlierPart(const UntouchedPart& part, const Point3& trunk_base);

  [[nodiscard]] bool holds(const Point3& in_tree_now) const;

 private:
  [[nodiscard]] std::size_t cell_at(int x, int y, int z) const {
    const auto at = [](int index) { return static_cast<std::size_t>(index); };
    return (at(z) * at(back_) + at(y)) * at(right_) + at(x);
  }

  Placement placement_;  ///< from the frame of then to that of today
  Point3 low_;
  int right_ = 0;
  int back_ = 0;
  int up_ = 0;
  std::vector<bool> cells_;  ///< over the boxes' own box, of `cell_cm`
};

}  // namespace gritwright
