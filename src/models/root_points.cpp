#include "root_points.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>
#include <optional>
#include <utility>

namespace gritwright {

namespace {

constexpr double point_hair_cm = 1e-7;

bool keeps(const Cutting& cutting, const Point3& in_pot) {
  for (const HalfSpace& plane : cutting.planes)
    if (plane.beyond(in_pot) > 0) return false;
  return cutting.space == nullptr || cutting.space->holds(in_pot, cutting.rise_cm);
}

/// A surface near a point: distance along its normal, and the normal, pointing to what is removed.
struct NearSurface {
  double distance_cm;
  Point3 normal;
};

class TouchTest {
 public:
  TouchTest(const RootBlockBody& block, const Cutting& cutting, double working_cm)
      : block_(block), cutting_(cutting), working_cm_(working_cm) {
    if (cutting.space == nullptr) return;
    level_cm_ = working_cm * std::hypot(1, cutting.space->steepest_lean());
    // A surface that the block's box does not cross takes nothing off.
    crossed_.fill(false);
    for (const double x : {-0.5, 0.5}) {
      for (const double y : {-0.5, 0.5}) {
        for (const double z : {0.0, 1.0}) {
          const Point3 corner = cutting.placement.to_pot(Point3{x * block.length_cm(), y * block.width_cm(), z * block.height_cm()});
          // Under the floor the wall goes on as steeply as it leans anywhere: what joins such a corner to the others may cross it.
          const double under = std::max(0.0, cutting.space->lowest_cm() - corner.z);
          const double drawn_in = under * cutting.space->steepest_lean();
          const Point3 beside{corner.x, corner.y, corner.z + under};
          for (const Direction direction : directions) {
            const bool sideways = direction != Direction::up && direction != Direction::down;
            const double rise = direction == Direction::up ? cutting.rise_cm : sideways ? -drawn_in : 0;
            if (cutting.space->excess_cm(direction, sideways ? beside : corner) > rise + point_hair_cm)
              crossed_[static_cast<std::size_t>(direction)] = true;
          }
          if (!cutting.space->holds_sideways(beside, drawn_in - point_hair_cm)) wall_crossed_ = true;
        }
      }
    }
  }

  /// True if something removed lies within the working depth of a kept point.
  [[nodiscard]] bool touched(const Point3& p) const {
    for (const HalfSpace& plane : cutting_.planes)
      if (reaches({-plane.beyond(p), plane.normal}, p)) return true;
    if (cutting_.space == nullptr) return false;
    const AllowedSpace& space = *cutting_.space;
    if (crosses(Direction::up) && reaches({space.highest_cm() + cutting_.rise_cm - p.z, {0, 0, 1}}, p)) return true;
    if (crosses(Direction::down) && reaches({p.z - space.lowest_cm(), {0, 0, -1}}, p)) return true;
    return wall_crossed_ && !space.in_core(p, level_cm_) && near_wall(p);
  }

  /// True only where no point that is kept of a clump around `p` can be touched: how far that reaches level, up, and at most.
  [[nodiscard]] bool clear_of_all(const Point3& p, double level_cm, double up_cm, double most_cm) const {
    for (const HalfSpace& plane : cutting_.planes)
      if (plane.beyond(p) + most_cm * std::sqrt(dot(plane.normal, plane.normal)) > -working_cm_) return false;
    if (cutting_.space == nullptr) return true;
    const AllowedSpace& space = *cutting_.space;
    if (crosses(Direction::up) && space.highest_cm() + cutting_.rise_cm - p.z - up_cm <= working_cm_) return false;
    if (crosses(Direction::down) && p.z - up_cm - space.lowest_cm() <= working_cm_) return false;
    return !wall_crossed_ || space.in_core(p, level_cm_ + level_cm);
  }

 private:
  [[nodiscard]] bool crosses(Direction direction) const { return crossed_[static_cast<std::size_t>(direction)]; }

  /// Is any of the block left beyond the surface, within the working depth of the point?
  [[nodiscard]] bool reaches(const NearSurface& surface, const Point3& p) const {
    if (surface.distance_cm > working_cm_) return false;
    const double out = std::max(0.0, surface.distance_cm) + point_hair_cm;
    const Point3 foot = cutting_.placement.to_tree(p + out * surface.normal);
    if (block_.contains(foot)) return true;
    const double level = std::sqrt(std::max(0.0, working_cm_ * working_cm_ - out * out));
    if (level <= 0) return false;
    const Point3 normal = cutting_.placement.turned_back(surface.normal);
    if (!block_.may_meet_disc(foot, normal, level)) return false;
    const Point3 helper = std::abs(normal.z) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
    Point3 u = cross(normal, helper);
    u = 1 / std::sqrt(dot(u, u)) * u;
    const Point3 v = cross(normal, u);
    constexpr int spokes = 16;
    static const auto turn = [] {
      std::array<std::array<double, 2>, spokes> table{};
      for (int k = 0; k < spokes; ++k)
        table[static_cast<std::size_t>(k)] = {std::cos(2 * std::numbers::pi * k / spokes), std::sin(2 * std::numbers::pi * k / spokes)};
      return table;
    }();
    for (const double share : {1.0, 0.5}) {
      for (const auto& [c, s] : turn)
        if (block_.contains(foot + level * share * (c * u + s * v))) return true;
    }
    return false;
  }

  [[nodiscard]] bool near_wall(const Point3& p) const {
    const AllowedSpace& space = *cutting_.space;
    const double height = std::min(p.z, space.highest_cm());
    const Outline outline = space.outlines().at(height);
    const double side = space.side_clearance_cm();
    if (outline.kind == Outline::Kind::rectangle && outline.corner_cm <= side) {
      for (const Direction direction : {Direction::right, Direction::left, Direction::back, Direction::front}) {
        if (!crosses(direction)) continue;
        const Point3 out = along(direction);
        const double reach = space.reach_cm(direction, height);
        constexpr double step = 1e-4;
        const double slope = p.z >= space.highest_cm() ? 0 : (space.reach_cm(direction, height + step) - reach) / step;
        const double norm = std::hypot(1, slope);
        if (reaches({(reach - dot(out, p)) / norm, 1 / norm * (out - Point3{0, 0, slope})}, p)) return true;
      }
      return false;
    }
    if (outline.curved()) return near_smooth_wall(p, outline, height);
    if (space.holds_sideways(p, level_cm_)) return false;
    const auto inside = [&](const Point3& q) { return space.outlines().at(std::min(q.z, space.highest_cm())).depth_inside_cm(q.x, q.y) - side; };
    if (near_curve(p, inside)) return true;
    const auto mouth = space.outlines().mouth_above(height);
    return mouth && near_curve(p, [&](const Point3& q) { return mouth->depth_inside_cm(q.x, q.y) - mouth_inset_cm; });
  }

  [[nodiscard]] bool near_smooth_wall(const Point3& p, const Outline& outline, double height) const {
    const AllowedSpace& space = *cutting_.space;
    constexpr double step = 1e-3;
    if (const auto wall = outline.nearest_within(p.x, p.y, space.side_clearance_cm() + level_cm_)) {
      double lean = 0;
      if (p.z + step <= space.highest_cm()) {
        // The line that touches the outline goes out as the outline's lengths grow under the place where it touches.
        const Outline above = space.outlines().at(height + step);
        const double to_curve = wall->depth_cm + outline.inset_cm;
        const auto growth = [](double half_above_cm, double half_cm) { return half_cm > 0 ? half_above_cm / half_cm - 1 : 0.0; };
        lean = (wall->right * (p.x + to_curve * wall->right) * growth(above.half_length_cm, outline.half_length_cm) +
                wall->back * (p.y + to_curve * wall->back) * growth(above.half_width_cm, outline.half_width_cm) -
                (above.inset_cm - outline.inset_cm)) / step;
      }
      const double norm = std::sqrt(1 + lean * lean);
      if (reaches({(wall->depth_cm - space.side_clearance_cm()) / norm, 1 / norm * Point3{wall->right, wall->back, -lean}}, p)) return true;
    }
    const auto mouth = space.outlines().mouth_above(height);
    if (!mouth) return false;
    const auto lip = mouth->nearest_within(p.x, p.y, mouth_inset_cm + level_cm_);
    return lip && reaches({lip->depth_cm - mouth_inset_cm, {lip->right, lip->back, 0}}, p);
  }

  template <class Inside>
  [[nodiscard]] bool near_curve(const Point3& p, const Inside& inside) const {
    constexpr double step = 1e-3;
    const double here = inside(p);
    if (here > level_cm_) return false;
    const Point3 outward{(here - inside(p + Point3{step, 0, 0})) / step, (here - inside(p + Point3{0, step, 0})) / step,
                         (here - inside(p + Point3{0, 0, step})) / step};
    const double steepness = std::sqrt(dot(outward, outward));
    if (steepness < 1e-6) return false;
    return reaches({here / steepness, 1 / steepness * outward}, p);
  }

  const RootBlockBody& block_;
  const Cutting& cutting_;
  double working_cm_;
  double level_cm_ = 0;
  std::array<bool, 6> crossed_{};
  bool wall_crossed_ = false;
};

/// The grid over the block's box, with a rim of empty cells around it.
class Grid {
 public:
  Grid(const RootBlockBody& block, double wide_cm)
      : wide_cm_(wide_cm), low_{-block.length_cm() / 2, -block.width_cm() / 2, 0},
        right_(cells(block.length_cm())), back_(cells(block.width_cm())), up_(cells(block.height_cm())) {}

  [[nodiscard]] int right() const { return right_; }
  [[nodiscard]] int back() const { return back_; }
  [[nodiscard]] int up() const { return up_; }
  [[nodiscard]] std::size_t size() const { return row() * static_cast<std::size_t>(back_ + 2) * static_cast<std::size_t>(up_ + 2); }
  [[nodiscard]] Cell cell_of(const Point3& p) const { return {place(p.x - low_.x, right_), place(p.y - low_.y, back_), place(p.z - low_.z, up_)}; }
  [[nodiscard]] std::size_t index(const Cell& cell) const {
    return (static_cast<std::size_t>(cell.up + 1) * static_cast<std::size_t>(back_ + 2) + static_cast<std::size_t>(cell.back + 1)) * row() +
           static_cast<std::size_t>(cell.right + 1);
  }
  [[nodiscard]] Cell cell(std::size_t index) const {
    const std::size_t of_level = index / row();
    return {static_cast<int>(index % row()) - 1, static_cast<int>(of_level % static_cast<std::size_t>(back_ + 2)) - 1,
            static_cast<int>(of_level / static_cast<std::size_t>(back_ + 2)) - 1};
  }
  [[nodiscard]] Point3 centre(const Cell& cell) const {
    return low_ + Point3{(cell.right + 0.5) * wide_cm_, (cell.back + 0.5) * wide_cm_, (cell.up + 0.5) * wide_cm_};
  }
  [[nodiscard]] bool in_rim(const Cell& cell) const {
    return cell.right < 0 || cell.right >= right_ || cell.back < 0 || cell.back >= back_ || cell.up < 0 || cell.up >= up_;
  }
  /// To the next cell to the right, to the back and up.
  [[nodiscard]] std::array<std::ptrdiff_t, 3> steps() const {
    return {1, static_cast<std::ptrdiff_t>(row()), static_cast<std::ptrdiff_t>(row()) * (back_ + 2)};
  }

 private:
  [[nodiscard]] std::size_t row() const { return static_cast<std::size_t>(right_ + 2); }
  [[nodiscard]] int cells(double extent_cm) const { return std::max(1, static_cast<int>(std::ceil(extent_cm / wide_cm_ - 1e-9))); }
  [[nodiscard]] int place(double from_low_cm, int count) const { return std::clamp(static_cast<int>(from_low_cm / wide_cm_), 0, count - 1); }

  double wide_cm_;
  Point3 low_;
  int right_, back_, up_;
};

constexpr int clump_cells = 2;  // each way

}  // namespace

RootPoints::RootPoints(const RootBlockBody& block, std::size_t count, int cells_wide)
    : block_(block), points_(block.points(count)), cells_wide_(cells_wide) {
  const double box = block.length_cm() * block.width_cm() * block.height_cm();
  const double wide_cm = cells_wide * cell_cm;
  per_cell_ = static_cast<double>(count) * wide_cm * wide_cm * wide_cm / box;
  gather_clumps();
}

void RootPoints::gather_clumps() {
  const Grid grid(block_, cells_wide_ * cell_cm);
  const auto clumps_along = [](int cells) { return static_cast<std::size_t>((cells + clump_cells - 1) / clump_cells); };
  const std::size_t right = clumps_along(grid.right());
  const std::size_t back = clumps_along(grid.back());
  std::vector<std::uint32_t> clump_of_point;
  clump_of_point.reserve(points_.size());
  std::vector<std::size_t> end(right * back * clumps_along(grid.up()));
  for (const Point3& p : points_) {
    const Cell cell = grid.cell_of(p);
    const std::size_t clump = (static_cast<std::size_t>(cell.up / clump_cells) * back + static_cast<std::size_t>(cell.back / clump_cells)) * right +
                              static_cast<std::size_t>(cell.right / clump_cells);
    clump_of_point.push_back(static_cast<std::uint32_t>(clump));
    ++end[clump];
  }
  std::size_t begin = 0;
  const double clump_cm = clump_cells * cells_wide_ * cell_cm;
  half_clump_ = 0.5 * clump_cm * Point3{1, 1, 1};
  const Point3 low{-block_.length_cm() / 2, -block_.width_cm() / 2, 0};
  for (std::size_t clump = 0; clump < end.size(); ++clump) {
    const std::size_t count = end[clump];
    end[clump] = begin;
    if (count == 0) continue;
    const Point3 at{static_cast<double>(clump % right), static_cast<double>(clump / right % back), static_cast<double>(clump / right / back)};
    clumps_.push_back({begin, begin + count, low + clump_cm * at + half_clump_});
    begin += count;
  }
  std::vector<Point3> gathered(points_.size());
  cell_of_point_.resize(points_.size());
  for (std::size_t i = 0; i < points_.size(); ++i) {
    const std::size_t to = end[clump_of_point[i]]++;
    gathered[to] = points_[i];
    cell_of_point_[to] = static_cast<std::uint32_t>(grid.index(grid.cell_of(points_[i])));
  }
  points_ = std::move(gathered);
}

RootPoints::Spread RootPoints::spread_of(const Placement& placement) const {
  const auto along = [&](const Point3& direction) {
    const Point3 in_tree = placement.turned_back(direction);
    return std::abs(in_tree.x) * half_clump_.x + std::abs(in_tree.y) * half_clump_.y + std::abs(in_tree.z) * half_clump_.z;
  };
  const double right = along({1, 0, 0});
  const double back = along({0, 1, 0});
  return {std::sqrt(right * right + back * back), along({0, 0, 1}), std::sqrt(dot(half_clump_, half_clump_))};
}

bool RootPoints::space_holds(const Cutting& cutting, const Point3& middle, const Spread& spread) {
  const AllowedSpace& space = *cutting.space;
  return middle.z - spread.up >= space.lowest_cm() && middle.z + spread.up <= space.highest_cm() + cutting.rise_cm &&
         space.in_core(middle, spread.level);
}

PointShares RootPoints::shares(const Cutting& cutting) const {
  PointShares shares;
  shares.of_points.resize(points_.size());
  std::size_t kept = 0;
  std::size_t over = 0;
  const Spread spread = spread_of(cutting.placement);
  for (const Clump& clump : clumps_) {
    const Point3 middle = cutting.placement.to_pot(clump.middle);
    bool all_cut = false;
    bool all_kept = cutting.space == nullptr || space_holds(cutting, middle, spread);
    for (const HalfSpace& plane : cutting.planes) {
      const double beyond = plane.beyond(middle);
      const double reach = spread.most * std::sqrt(dot(plane.normal, plane.normal));
      all_cut = all_cut || beyond > reach;
      all_kept = all_kept && beyond < -reach;
    }
    if (all_cut) continue;
    const bool may_be_over = cutting.space != nullptr && middle.z + spread.up > cutting.space->highest_cm();
    if (all_kept && !may_be_over) {
      std::fill(shares.of_points.begin() + static_cast<std::ptrdiff_t>(clump.begin), shares.of_points.begin() + static_cast<std::ptrdiff_t>(clump.end), std::uint8_t{1});
      kept += clump.end - clump.begin;
      continue;
    }
    for (std::size_t i = clump.begin; i < clump.end; ++i) {
      const Point3 in_pot = cutting.placement.to_pot(points_[i]);
      if (!all_kept && !keeps(cutting, in_pot)) continue;
      shares.of_points[i] = 1;
      ++kept;
      if (may_be_over && in_pot.z > cutting.space->highest_cm() && in_pot.z > cutting.space->soil_cm(in_pot.x, in_pot.y)) ++over;
    }
  }
  const double all = static_cast<double>(points_.size());
  shares.kept = static_cast<double>(kept) / all;
  shares.kept_under_soil = static_cast<double>(kept - over) / all;
  return shares;
}

std::vector<double> RootPoints::kept_by_height(const Cutting& cutting, double top_cm, int slices) const {
  std::vector<double> shares(static_cast<std::size_t>(slices));
  const double each = 1 / static_cast<double>(points_.size());
  for (const Point3& p : points_) {
    const Point3 in_pot = cutting.placement.to_pot(p);
    if (in_pot.z < 0 || in_pot.z >= top_cm || !keeps(cutting, in_pot)) continue;
    shares[static_cast<std::size_t>(in_pot.z / top_cm * slices)] += each;
  }
  return shares;
}

CountedUntouched RootPoints::untouched(const Cutting& cutting, const PointShares& shares, double working_cm,
                                    const std::vector<CombedFace>& combed, const Point3& trunk_base, bool list_cells) const {
  enum State : std::uint8_t { unknown, held, empty, reached };
  const TouchTest test(block_, cutting, working_cm);
  const auto is_combed = [&](const Point3& p) {
    return std::ranges::any_of(combed, [&](const CombedFace& face) { return block_.depth_behind(face.face, p) <= in_cm(face.depth); });
  };
  const Spread spread = spread_of(cutting.placement);
  const auto wholly_untouched = [&](const Clump& clump) {
    for (const CombedFace& face : combed) {
      const Point3 out = RootBlockBody::outward(face.face);
      const double half = std::abs(dot(out, half_clump_));
      if (block_.depth_behind(face.face, clump.middle) - half <= in_cm(face.depth)) return false;
    }
    return test.clear_of_all(cutting.placement.to_pot(clump.middle), spread.level, spread.up, spread.most);
  };
  const Grid grid(block_, cells_wide_ * cell_cm);
  std::vector<std::uint8_t> state(grid.size(), unknown);
  std::vector<std::uint32_t> in_cell(grid.size());
  for (const Clump& clump : clumps_) {
    const bool whole = wholly_untouched(clump);
    for (std::size_t i = clump.begin; i < clump.end; ++i) {
      if (shares.of_points[i] == 0) continue;
      if (!whole && (is_combed(points_[i]) || test.touched(cutting.placement.to_pot(points_[i])))) continue;
      state[cell_of_point_[i]] = held;
      ++in_cell[cell_of_point_[i]];
    }
  }
  std::optional<std::size_t> start;
  double nearest = std::numeric_limits<double>::infinity();
  Cell cell;
  for (cell.up = 0; cell.up < grid.up(); ++cell.up) {
    for (cell.back = 0; cell.back < grid.back(); ++cell.back) {
      cell.right = 0;
      for (std::size_t i = grid.index(cell); cell.right < grid.right(); ++i, ++cell.right) {
        if (state[i] != held) continue;
        const Point3 away = grid.centre(cell) - trunk_base;
        if (dot(away, away) >= nearest) continue;
        nearest = dot(away, away);
        start = i;
      }
    }
  }
  if (!start) return {};
  // Where the points lie thinner than the cells, a cell without a point asks its centre.
  const bool ask_centres = per_cell_ < 3;
  const auto centre_untouched = [&](std::size_t index) {
    const Cell asked = grid.cell(index);
    if (grid.in_rim(asked)) return false;
    const Point3 centre = grid.centre(asked);
    const Point3 in_pot = cutting.placement.to_pot(centre);
    return block_.contains(centre) && !is_combed(centre) && keeps(cutting, in_pot) && !test.touched(in_pot);
  };
  const auto steps = grid.steps();
  std::size_t counted = 0;
  std::vector<std::size_t> frontier{*start};
  std::vector<std::size_t> found;
  state[*start] = reached;
  while (!frontier.empty()) {
    const std::size_t here = frontier.back();
    frontier.pop_back();
    if (list_cells) found.push_back(here);
    counted += in_cell[here];
    for (const std::ptrdiff_t step : steps) {
      for (const std::size_t next : {here + static_cast<std::size_t>(step), here - static_cast<std::size_t>(step)}) {
        if (state[next] == unknown && ask_centres) state[next] = centre_untouched(next) ? held : empty;
        if (state[next] != held) continue;
        state[next] = reached;
        frontier.push_back(next);
      }
    }
  }
  CountedUntouched part;
  part.cells.reserve(found.size() * static_cast<std::size_t>(cells_wide_ * cells_wide_ * cells_wide_));
  for (const std::size_t index : found) {
    const Cell wide = grid.cell(index);
    for (int up = 0; up < cells_wide_; ++up)
      for (int back = 0; back < cells_wide_; ++back)
        for (int right = 0; right < cells_wide_; ++right)
          part.cells.push_back({wide.right * cells_wide_ + right, wide.back * cells_wide_ + back, wide.up * cells_wide_ + up});
  }
  part.share = static_cast<double>(counted) / static_cast<double>(points_.size());
  return part;
}

}  // namespace gritwright
