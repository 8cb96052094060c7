#include "root_points.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>
#include <optional>
#include <utility>

namespace gritwright {

namespace {

constexpr double point_hair_cm = 1e-7;

bool lies_beyond(const std::vector<HalfSpace>& planes, const Point3& in_pot) {
  for (const HalfSpace& plane : planes)
    if (plane.beyond(in_pot) > 0) return true;
  return false;
}

bool keeps(const Cutting& cutting, const Point3& in_pot) {
  if (lies_beyond(cutting.planes, in_pot)) return false;
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
    // In a corner a wall may lean more than along the sides.
    corner_level_cm_ = working_cm * std::hypot(1, std::numbers::sqrt2 * cutting.space->steepest_lean());
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

  /// Surfaces that something may be removed beyond, as bits: planes, then up, down and the wall.
  using Surfaces = std::uint32_t;
  static constexpr Surfaces all_surfaces = ~Surfaces{0};

  /// True if something removed lies within the working depth of a kept point; only surfaces `among` these are asked.
  [[nodiscard]] bool touched(const Point3& p, Surfaces among) const {
    for (Surfaces left = among >> first_plane; left != 0; left &= left - 1) {
      const auto first = static_cast<std::size_t>(std::countr_zero(left));
      const std::size_t end = std::min(first == last_plane ? cutting_.planes.size() : first + 1, cutting_.planes.size());
      for (std::size_t i = first; i < end; ++i) {
        const HalfSpace& plane = cutting_.planes[i];
        if (reaches({-plane.beyond(p), plane.normal}, p)) return true;
      }
    }
    if (cutting_.space == nullptr) return false;
    const AllowedSpace& space = *cutting_.space;
    if (has(among, up_bit) && crosses(Direction::up) && reaches({space.highest_cm() + cutting_.rise_cm - p.z, {0, 0, 1}}, p)) return true;
    if (has(among, down_bit) && crosses(Direction::down) && reaches({p.z - space.lowest_cm(), {0, 0, -1}}, p)) return true;
    return has(among, wall_bit) && wall_crossed_ && !space.in_core(p, level_cm_) && near_wall(p);
  }

  /// Those surfaces that a kept point of a clump around `p` can be within the working depth of.
  [[nodiscard]] Surfaces near(const Point3& p, const ClumpReach& reach) const {
    Surfaces found = 0;
    for (std::size_t i = 0; i < cutting_.planes.size(); ++i) {
      const HalfSpace& plane = cutting_.planes[i];
      if (plane.beyond(p) + reach.most * std::sqrt(dot(plane.normal, plane.normal)) > -working_cm_) found |= plane_bit(i);
    }
    if (cutting_.space == nullptr) return found;
    const AllowedSpace& space = *cutting_.space;
    if (crosses(Direction::up) && space.highest_cm() + cutting_.rise_cm - p.z - reach.up <= working_cm_) found |= up_bit;
    if (crosses(Direction::down) && p.z - reach.up - space.lowest_cm() <= working_cm_) found |= down_bit;
    if (wall_crossed_ && !space.holds_all_sideways(reach.around(p), corner_level_cm_)) found |= wall_bit;
    return found;
  }

 private:
  static constexpr Surfaces up_bit = 1;
  static constexpr Surfaces down_bit = 2;
  static constexpr Surfaces wall_bit = 4;
  static constexpr int first_plane = 3;
  /// More planes than bits share the last one.
  static constexpr std::size_t last_plane = 28;
  [[nodiscard]] static Surfaces plane_bit(std::size_t index) { return Surfaces{1} << (first_plane + std::min(index, last_plane)); }
  [[nodiscard]] static bool has(Surfaces surfaces, Surfaces bit) { return (surfaces & bit) != 0; }

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
  double corner_level_cm_ = 0;
  std::array<bool, 6> crossed_{};
  bool wall_crossed_ = false;
};

constexpr int clump_cells = 2;  // each way

/// The cells of 5 mm of a wider one.
void add_small_cells(std::vector<Cell>& cells, const Cell& wide, int cells_wide) {
  for (int up = 0; up < cells_wide; ++up)
    for (int back = 0; back < cells_wide; ++back)
      for (int right = 0; right < cells_wide; ++right) cells.push_back({wide.right * cells_wide + right, wide.back * cells_wide + back, wide.up * cells_wide + up});
}

}  // namespace

/// The grid over the block's box, with a rim of empty cells around it.
class CellGrid {
 public:
  CellGrid(const RootBlockBody& block, double wide_cm)
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
  /// To the next cell to the back, to the front, up and down.
  [[nodiscard]] std::array<std::ptrdiff_t, 4> steps_across() const {
    const auto back = static_cast<std::ptrdiff_t>(row());
    const std::ptrdiff_t up = back * (back_ + 2);
    return {back, -back, up, -up};
  }

 private:
  [[nodiscard]] std::size_t row() const { return static_cast<std::size_t>(right_) + 2; }
  [[nodiscard]] int cells(double extent_cm) const { return std::max(1, static_cast<int>(std::ceil(extent_cm / wide_cm_ - 1e-9))); }
  [[nodiscard]] int place(double from_low_cm, int count) const { return std::clamp(static_cast<int>(from_low_cm / wide_cm_), 0, count - 1); }

  double wide_cm_;
  Point3 low_;
  int right_, back_, up_;
};

/// What is known of the grid's cells while the untouched part is looked for.
struct CellSearch {
  enum State : std::uint8_t { unasked, held, empty, reached };
  explicit CellSearch(const CellGrid& cells) : grid(cells), state(room().state), points(room().points), frontier(room().frontier) {
    state.assign(grid.size(), unasked);
    points.assign(grid.size(), 0);
    frontier.clear();
  }

  /// The cell with untouched points nearest to a point; of several as near the first.
  [[nodiscard]] std::optional<std::size_t> nearest(const Point3& to) const {
    std::optional<std::size_t> found;
    double least = std::numeric_limits<double>::infinity();
    const int middle = grid.cell_of(to).up;
    for (int step = 0; step < 2 * grid.up(); ++step) {
      // From the level of the point away from it, up and down in turn.
      Cell cell{0, 0, middle + (step % 2 == 0 ? -step / 2 : (step + 1) / 2)};
      if (cell.up < 0 || cell.up >= grid.up()) continue;
      for (cell.back = 0; cell.back < grid.back(); ++cell.back) {
        cell.right = 0;
        const Point3 row = grid.centre(cell) - to;
        if (row.y * row.y + row.z * row.z > least) continue;
        for (std::size_t i = grid.index(cell); cell.right < grid.right(); ++i, ++cell.right) {
          if (points[i] == 0) continue;
          const Point3 away = grid.centre(cell) - to;
          const double distance = dot(away, away);
          if (distance > least || (distance == least && i > *found)) continue;
          least = distance;
          found = i;
        }
      }
    }
    return found;
  }

  CellGrid grid;
  std::vector<std::uint8_t>& state;
  std::vector<std::uint32_t>& points;    ///< untouched ones of a cell
  std::vector<std::uint32_t>& frontier;

 private:
  /// A plan searches a hundred times; the memory stays with its thread.
  struct Room {
    std::vector<std::uint8_t> state;
    std::vector<std::uint32_t> points, frontier;
  };
  [[nodiscard]] static Room& room() {
    thread_local Room kept;
    return kept;
  }
};

RootPoints::RootPoints(const RootBlockBody& block, std::size_t count, int cells_wide) : block_(block), cells_wide_(cells_wide) {
  const double box = block.length_cm() * block.width_cm() * block.height_cm();
  const double wide_cm = cells_wide * cell_cm;
  per_cell_ = static_cast<double>(count) * wide_cm * wide_cm * wide_cm / box;
  gather_clumps(count);
}

void RootPoints::gather_clumps(std::size_t count) {
  const CellGrid grid(block_, cells_wide_ * cell_cm);
  const auto clumps_along = [](int cells) { return static_cast<std::size_t>((cells + clump_cells - 1) / clump_cells); };
  const std::size_t back = clumps_along(grid.back());
  const std::size_t up = clumps_along(grid.up());
  // The points come from left to right: clumps in that order are filled where memory was touched last.
  const auto clump_of = [&](const Cell& cell) {
    return (static_cast<std::size_t>(cell.right / clump_cells) * back + static_cast<std::size_t>(cell.back / clump_cells)) * up +
           static_cast<std::size_t>(cell.up / clump_cells);
  };
  struct Placed {
    std::uint32_t index, clump, cell;
  };
  std::vector<Placed> placed;
  placed.reserve(count);
  std::vector<std::size_t> end(clumps_along(grid.right()) * back * up);
  block_.each_point(count, [&](std::size_t index, const Point3& p) {
    const Cell cell = grid.cell_of(p);
    const std::size_t clump = clump_of(cell);
    placed.push_back({static_cast<std::uint32_t>(index), static_cast<std::uint32_t>(clump), static_cast<std::uint32_t>(grid.index(cell))});
    ++end[clump];
  });
  std::size_t begin = 0;
  const double clump_cm = clump_cells * cells_wide_ * cell_cm;
  half_clump_ = 0.5 * clump_cm * Point3{1, 1, 1};
  const Point3 low{-block_.length_cm() / 2, -block_.width_cm() / 2, 0};
  for (std::size_t clump = 0; clump < end.size(); ++clump) {
    const std::size_t in_clump = end[clump];
    end[clump] = begin;
    if (in_clump == 0) continue;
    const std::size_t level = clump % up, column = clump / up;
    const std::size_t rightwards = column / back, backwards = column % back;
    const Point3 at{static_cast<double>(rightwards), static_cast<double>(backwards), static_cast<double>(level)};
    clumps_.push_back({begin, begin + in_clump, low + clump_cm * at + half_clump_});
    begin += in_clump;
  }
  points_.resize(placed.size());
  cell_of_point_.resize(placed.size());
  for (const Placed& point : placed) {
    const std::size_t to = end[point.clump]++;
    points_[to] = block_.point(point.index, count);
    cell_of_point_[to] = point.cell;
  }
}

ClumpReach RootPoints::reach_of(const Placement& placement) const {
  const auto along = [&](const Point3& direction) {
    const Point3 in_tree = placement.turned_back(direction);
    return std::abs(in_tree.x) * half_clump_.x + std::abs(in_tree.y) * half_clump_.y + std::abs(in_tree.z) * half_clump_.z;
  };
  return {along({1, 0, 0}), along({0, 1, 0}), along({0, 0, 1}), std::sqrt(dot(half_clump_, half_clump_))};
}

bool RootPoints::space_holds(const Cutting& cutting, const Point3& middle, const ClumpReach& reach) {
  return middle.z - reach.up >= cutting.space->lowest_cm() && middle.z + reach.up <= cutting.space->highest_cm() + cutting.rise_cm &&
         cutting.space->holds_all_sideways(reach.around(middle), 0);
}

bool RootPoints::space_misses(const Cutting& cutting, const Point3& middle, const ClumpReach& reach) {
  return middle.z + reach.up < cutting.space->lowest_cm() - point_hair_cm || middle.z - reach.up > cutting.space->highest_cm() + cutting.rise_cm + point_hair_cm ||
         cutting.space->misses_all_sideways(reach.around(middle));
}

PointShares RootPoints::shares(const Cutting& cutting) const {
  PointShares shares;
  shares.of_points.resize(points_.size());
  shares.of_clumps.reserve(clumps_.size());
  std::size_t kept = 0;
  std::size_t over = 0;
  const ClumpReach reach = reach_of(cutting.placement);
  std::vector<double> most_beyond;
  for (const HalfSpace& plane : cutting.planes) most_beyond.push_back(reach.most * std::sqrt(dot(plane.normal, plane.normal)));
  std::vector<HalfSpace> crossing;
  const auto count_clump = [&](const Clump& clump) -> std::uint32_t {
    const Point3 middle = cutting.placement.to_pot(clump.middle);
    crossing.clear();
    for (std::size_t i = 0; i < cutting.planes.size(); ++i) {
      const double beyond = cutting.planes[i].beyond(middle);
      if (beyond > most_beyond[i]) return 0;
      if (beyond >= -most_beyond[i]) crossing.push_back(cutting.planes[i]);
    }
    const bool in_space = cutting.space == nullptr || space_holds(cutting, middle, reach);
    if (!in_space && space_misses(cutting, middle, reach)) return 0;
    const bool may_be_over = cutting.space != nullptr && middle.z + reach.up > cutting.space->highest_cm();
    if (crossing.empty() && in_space && !may_be_over) {
      std::fill(shares.of_points.begin() + static_cast<std::ptrdiff_t>(clump.begin), shares.of_points.begin() + static_cast<std::ptrdiff_t>(clump.end), std::uint8_t{1});
      return static_cast<std::uint32_t>(clump.end - clump.begin);
    }
    std::uint32_t of_clump = 0;
    for (std::size_t i = clump.begin; i < clump.end; ++i) {
      const Point3 in_pot = cutting.placement.to_pot(points_[i]);
      if (lies_beyond(crossing, in_pot) || !(in_space || cutting.space->holds(in_pot, cutting.rise_cm))) continue;
      shares.of_points[i] = 1;
      ++of_clump;
      if (may_be_over && in_pot.z > cutting.space->highest_cm() && in_pot.z > cutting.space->soil_cm(in_pot.x, in_pot.y)) ++over;
    }
    return of_clump;
  };
  for (const Clump& clump : clumps_) {
    shares.of_clumps.push_back(count_clump(clump));
    kept += shares.of_clumps.back();
  }
  const double all = static_cast<double>(points_.size());
  shares.kept = static_cast<double>(kept) / all;
  shares.kept_under_soil = static_cast<double>(kept - over) / all;
  return shares;
}

double RootPoints::share_outside(const Cutting& cutting) const {
  const ClumpReach reach = reach_of(cutting.placement);
  std::size_t outside = 0;
  for (const Clump& clump : clumps_) {
    const Point3 middle = cutting.placement.to_pot(clump.middle);
    if (space_holds(cutting, middle, reach)) continue;
    if (std::ranges::any_of(cutting.planes, [&](const HalfSpace& plane) { return plane.beyond(middle) > reach.most * std::sqrt(dot(plane.normal, plane.normal)); })) continue;
    const bool all_outside = space_misses(cutting, middle, reach);
    for (std::size_t i = clump.begin; i < clump.end; ++i) {
      const Point3 in_pot = cutting.placement.to_pot(points_[i]);
      if (!lies_beyond(cutting.planes, in_pot) && (all_outside || !cutting.space->holds(in_pot, cutting.rise_cm))) ++outside;
    }
  }
  return static_cast<double>(outside) / static_cast<double>(points_.size());
}

std::vector<double> RootPoints::kept_by_height(const Cutting& cutting, const PointShares& shares, double top_cm, int slices) const {
  std::vector<std::size_t> counts(static_cast<std::size_t>(slices));
  for (std::size_t i = 0; i < points_.size(); ++i) {
    if (shares.of_points[i] == 0) continue;
    const double height = cutting.placement.to_pot(points_[i]).z;
    if (height >= 0 && height < top_cm) ++counts[static_cast<std::size_t>(height / top_cm * slices)];
  }
  std::vector<double> of_slices;
  for (const std::size_t count : counts) of_slices.push_back(static_cast<double>(count) / static_cast<double>(points_.size()));
  return of_slices;
}

std::size_t RootPoints::search_untouched(CellSearch& search, const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                         const Point3& trunk_base, std::optional<std::size_t> enough) const {
  const CellGrid& grid = search.grid;
  auto& state = search.state;
  const TouchTest test(block_, cutting, working_cm);
  const auto is_combed = [&](const Point3& p) {
    return std::ranges::any_of(combed, [&](const CombedFace& face) { return block_.depth_behind(face.face, p) <= in_cm(face.depth); });
  };
  const ClumpReach reach = reach_of(cutting.placement);
  const auto may_be_combed = [&](const Clump& clump) {
    return std::ranges::any_of(combed, [&](const CombedFace& face) {
      const double half = std::abs(dot(RootBlockBody::outward(face.face), half_clump_));
      return block_.depth_behind(face.face, clump.middle) - half <= in_cm(face.depth);
    });
  };
  std::size_t held = 0;
  for (std::size_t k = 0; k < clumps_.size(); ++k) {
    if (shares.of_clumps[k] == 0) continue;
    const Clump& clump = clumps_[k];
    const bool combing = may_be_combed(clump);
    const auto surfaces = test.near(cutting.placement.to_pot(clump.middle), reach);
    if (!combing && surfaces == 0 && shares.of_clumps[k] == clump.end - clump.begin) {
      for (std::size_t i = clump.begin; i < clump.end; ++i) ++search.points[cell_of_point_[i]];
      held += shares.of_clumps[k];
      continue;
    }
    for (std::size_t i = clump.begin; i < clump.end; ++i) {
      if (shares.of_points[i] == 0) continue;
      if (combing && is_combed(points_[i])) continue;
      if (surfaces != 0 && test.touched(cutting.placement.to_pot(points_[i]), surfaces)) continue;
      ++search.points[cell_of_point_[i]];
      ++held;
    }
  }
  if (enough && held < *enough) return held;
  const auto start = search.nearest(trunk_base);
  if (!start) return 0;
  // Where the points lie thinner than the cells, a cell without a point asks its centre.
  const bool ask_centres = per_cell_ < 3;
  const auto centre_untouched = [&](std::size_t index) {
    const Cell asked = grid.cell(index);
    if (grid.in_rim(asked)) return false;
    const Point3 centre = grid.centre(asked);
    const Point3 in_pot = cutting.placement.to_pot(centre);
    return block_.contains(centre) && !is_combed(centre) && keeps(cutting, in_pot) && !test.touched(in_pot, TouchTest::all_surfaces);
  };
  const auto is_held = [&](std::size_t index) {
    if (state[index] == CellSearch::unasked)
      state[index] = search.points[index] > 0 || (ask_centres && centre_untouched(index)) ? CellSearch::held : CellSearch::empty;
    return state[index] == CellSearch::held;
  };
  // From a cell to the whole run it lies in, and to the runs beside that.
  std::size_t counted = 0;
  search.frontier.push_back(static_cast<std::uint32_t>(*start));
  while (!search.frontier.empty() && !(enough && counted >= *enough)) {
    std::size_t low = search.frontier.back();
    search.frontier.pop_back();
    if (!is_held(low)) continue;
    std::size_t high = low;
    while (is_held(low - 1)) --low;
    while (is_held(high + 1)) ++high;
    for (std::size_t i = low; i <= high; ++i) {
      state[i] = CellSearch::reached;
      counted += search.points[i];
    }
    for (const std::ptrdiff_t step : grid.steps_across()) {
      const std::size_t beside = low + static_cast<std::size_t>(step);
      bool in_run = false;
      for (std::size_t i = beside; i <= beside + (high - low); ++i) {
        const bool open = is_held(i);
        if (open && !in_run) search.frontier.push_back(static_cast<std::uint32_t>(i));
        in_run = open;
      }
    }
  }
  return counted;
}

CountedUntouched RootPoints::untouched(const Cutting& cutting, const PointShares& shares, double working_cm,
                                    const std::vector<CombedFace>& combed, const Point3& trunk_base, bool list_cells) const {
  CellSearch search(CellGrid(block_, cells_wide_ * cell_cm));
  const std::size_t counted = search_untouched(search, cutting, shares, working_cm, combed, trunk_base, std::nullopt);
  CountedUntouched part;
  part.share = static_cast<double>(counted) / static_cast<double>(points_.size());
  if (!list_cells) return part;
  part.cells.reserve(counted);
  Cell wide;
  for (wide.up = 0; wide.up < search.grid.up(); ++wide.up) {
    for (wide.back = 0; wide.back < search.grid.back(); ++wide.back) {
      wide.right = 0;
      for (std::size_t index = search.grid.index(wide); wide.right < search.grid.right(); ++index, ++wide.right)
        if (search.state[index] == CellSearch::reached) add_small_cells(part.cells, wide, cells_wide_);
    }
  }
  return part;
}

bool RootPoints::leaves_untouched(double least, const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                  const Point3& trunk_base) const {
  const auto is_enough = [&](std::size_t points) { return static_cast<double>(points) / static_cast<double>(points_.size()) >= least; };
  std::size_t enough = static_cast<std::size_t>(std::clamp(least, 0.0, 1.0) * static_cast<double>(points_.size()));
  // The product may be rounded either way.
  while (enough > 0 && is_enough(enough - 1)) --enough;
  while (enough <= points_.size() && !is_enough(enough)) ++enough;
  CellSearch search(CellGrid(block_, cells_wide_ * cell_cm));
  return search_untouched(search, cutting, shares, working_cm, combed, trunk_base, enough) >= enough;
}

}  // namespace gritwright
