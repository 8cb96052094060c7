#include "gritwright/models/root_history.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>
#include <vector>

#include "root_block.hpp"
#include "root_points.hpp"

namespace gritwright {

namespace {

Point3 base_of(const RootMassPlan& plan, const RootBlockBody& block) {
  if (!plan.trunk_base) return {0, 0, block.height_cm()};
  return {in_cm(plan.trunk_base->right), in_cm(plan.trunk_base->back), in_cm(plan.trunk_base->up)};
}

/// What is written down for life has no noise of reckoning in it: "-8.9e-16 cm" is no length that was measured, and a record refuses it.
double as_written(double value) {
  constexpr double finest = 1e-7;
  return std::round(value / finest) * finest + 0.0;
}
Length as_written(Length length) { return length_cm(as_written(in_cm(length))); }
Angle as_written(Angle angle) { return angle_deg(as_written(in_deg(angle))); }

/// Cells of one level as rectangles {right from, to, back from, to}: runs, each joined to the same run of the row before.
using Rectangle = std::array<int, 4>;
std::vector<Rectangle> rectangles_of(std::vector<std::pair<int, int>> cells) {
  std::ranges::sort(cells);  // by back, then right
  std::vector<Rectangle> done;
  std::vector<Rectangle> open;
  for (std::size_t i = 0; i < cells.size();) {
    const int back = cells[i].first;
    std::vector<Rectangle> row;
    while (i < cells.size() && cells[i].first == back) {
      if (!row.empty() && row.back()[1] == cells[i].second) ++row.back()[1];
      else row.push_back({cells[i].second, cells[i].second + 1, back, back + 1});
      ++i;
    }
    std::vector<Rectangle> still_open;
    for (Rectangle& run : row) {
      const auto same = std::ranges::find_if(open, [&](const Rectangle& above) { return above[0] == run[0] && above[1] == run[1] && above[3] == back; });
      if (same != open.end()) {
        run[2] = (*same)[2];
        open.erase(same);
      }
      still_open.push_back(run);
    }
    done.insert(done.end(), open.begin(), open.end());
    open = std::move(still_open);
  }
  done.insert(done.end(), open.begin(), open.end());
  return done;
}

/// Cells joined to boxes: the same part with far fewer of them.
std::vector<TreeBox> joined_boxes(const RootBlockBody& block, const std::vector<UntouchedCell>& cells) {
  std::map<int, std::vector<std::pair<int, int>>> levels;
  for (const UntouchedCell& cell : cells) levels[cell.up].emplace_back(cell.back, cell.right);
  std::vector<TreeBox> boxes;
  std::map<Rectangle, std::pair<int, int>> open;  // with its levels, from and to
  const auto close = [&](const Rectangle& rectangle, const std::pair<int, int>& up) {
    const auto right = [&](int cell) { return as_written(length_cm(-block.length_cm() / 2 + cell * cell_cm)); };
    const auto back = [&](int cell) { return as_written(length_cm(-block.width_cm() / 2 + cell * cell_cm)); };
    boxes.push_back({right(rectangle[0]), right(rectangle[1]), back(rectangle[2]), back(rectangle[3]), length_cm(up.first * cell_cm), length_cm(up.second * cell_cm)});
  };
  for (auto& [up, level] : levels) {
    std::map<Rectangle, std::pair<int, int>> now;
    for (const Rectangle& rectangle : rectangles_of(std::move(level))) {
      const auto below = open.find(rectangle);
      const bool joins = below != open.end() && below->second.second == up;
      now.emplace(rectangle, std::pair(joins ? below->second.first : up, up + 1));
      if (joins) open.erase(below);
    }
    for (const auto& [rectangle, range] : open) close(rectangle, range);
    open = std::move(now);
  }
  for (const auto& [rectangle, range] : open) close(rectangle, range);
  return boxes;
}

}  // namespace

TrunkBase trunk_base_after(const RootMassPlan& plan, const WorkedPlan& worked) {
  if (worked.fits) return {as_written(worked.right), as_written(worked.back), as_written(worked.trunk_base.quantity())};
  const Point3 base = base_of(plan, RootBlockBody(plan.block));
  return {as_written(length_cm(base.x)), as_written(length_cm(base.y)), as_written(length_cm(base.z))};
}

Repotting repotting_by(const RootMassPlan& plan, const WorkedPlan& worked) {
  Repotting done;
  done.plan_name = worked.name;
  done.removed_share = RemovedShare(as_written(worked.removed_share));
  done.bare_rooted = plan.bare_root;
  for (const PlannedCut& cut : worked.cuts) done.cut.push_back({face_name(cut.face), as_written(cut.depth)});
  for (const ShavedCorners& corners : worked.shaved) done.cut.push_back({face_name(corners.face) + " corners", as_written(corners.depth)});
  for (const CombedFace& combed : worked.combed) done.combed.push_back({face_name(combed.face), as_written(combed.depth)});
  if (plan.bare_root) return done;
  done.untouched_share = UntouchedShare(as_written(worked.untouched_share));
  if (worked.untouched.empty()) return done;
  const RootBlockBody block(plan.block);
  const Point3 base = base_of(plan, block);
  UntouchedPart part{as_written(length_cm(base.x)), as_written(length_cm(base.y)), as_written(length_cm(base.z)), {}, {}, {}, joined_boxes(block, worked.untouched)};
  if (worked.fits) {
    part.turn = as_written(worked.turn);
    part.tip = as_written(worked.tip);
    part.tip_toward = as_written(worked.tip_toward);
  }
  done.untouched = std::move(part);
  return done;
}

}  // namespace gritwright
