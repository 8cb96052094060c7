#pragma once
// Counting: which of the block's points are kept, and which of those stay untouched. Plain numbers in cm, shares of the block.

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "gritwright/domain/root_mass_plan.hpp"
#include "root_block.hpp"
#include "root_space.hpp"

namespace gritwright {

/// What bounds the kept root mass at one pose.
struct Cutting {
  Placement placement;
  const AllowedSpace* space = nullptr;  ///< null: only the planes count
  double rise_cm = 0;                   ///< of a shoulder over the fill line
  std::vector<HalfSpace> planes;        ///< straight cuts, pot frame
};

struct PointShares {
  double kept = 0;
  double kept_under_soil = 0;  ///< part of it below the soil surface
  std::vector<std::uint8_t> of_points;  ///< 1 for every point that is kept
  std::vector<std::uint32_t> of_clumps;  ///< how many of each clump are kept
};

/// Cells of 5 mm in the tree frame, counted from the low corner of the block's box.
struct Cell {
  int right = 0;
  int back = 0;
  int up = 0;
  friend bool operator==(const Cell&, const Cell&) = default;
};

struct CountedUntouched {
  double share = 0;
  std::vector<Cell> cells;
};

inline constexpr double cell_cm = 0.5;

/// What is known of the cells while the untouched part is looked for.
struct CellSearch;

/// How far a clump of points reaches from its middle once it is posed: along the pot's axes, and along any direction at most.
struct ClumpReach {
  double right, back, up;
  double most;
  [[nodiscard]] AllowedSpace::Around around(const Point3& middle) const { return {middle, right, back, up}; }
};

class RootPoints {
 public:
  /// `block` must outlive this. Cells of `cells_wide` times 5 mm for what is connected; those reported are 5 mm.
  RootPoints(const RootBlockBody& block, std::size_t count, int cells_wide);

  [[nodiscard]] PointShares shares(const Cutting& cutting) const;

  /// Share of the block that the planes leave and the space does not hold.
  [[nodiscard]] double share_outside(const Cutting& cutting) const;

  /// `shares` are those of this cutting. Share of the block that is kept in each of `slices` equal slices from the floor to `top_cm`.
  [[nodiscard]] std::vector<double> kept_by_height(const Cutting& cutting, const PointShares& shares, double top_cm, int slices) const;

  /// `shares` are those of this cutting. Points of the kept part farther than `working_cm` from everything removed and deeper than combed behind every combed face;
  /// of these the face-connected part nearest to `trunk_base`; its cells are listed where they are asked for.
  [[nodiscard]] CountedUntouched untouched(const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                        const Point3& trunk_base, bool list_cells) const;

  /// True if as much of the block stays untouched, without counting further than that.
  [[nodiscard]] bool leaves_untouched(double least, const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                      const Point3& trunk_base) const;

  /// In no order that means anything.
  [[nodiscard]] const std::vector<Point3>& points() const { return points_; }

  /// Calls `take(in_tree, in_pot)` for every point that the space does not hold; its planes don't count.
  template <class Take>
  void each_outside(const Cutting& cutting, Take take) const {
    const ClumpReach reach = reach_of(cutting.placement);
    for (const Clump& clump : clumps_) {
      const Point3 middle = cutting.placement.to_pot(clump.middle);
      if (space_holds(cutting, middle, reach)) continue;
      const bool all_outside = space_misses(cutting, middle, reach);
      for (std::size_t i = clump.begin; i < clump.end; ++i) {
        const Point3 in_pot = cutting.placement.to_pot(points_[i]);
        if (all_outside || !cutting.space->holds(in_pot, cutting.rise_cm)) take(points_[i], in_pot);
      }
    }
  }

 private:
  /// The points of a few neighbouring cells: most clumps are wholly kept, or wholly untouched, and need no look at each point.
  struct Clump {
    std::size_t begin, end;  ///< in `points_`
    Point3 middle;
  };
  void gather_clumps(std::size_t count);
  [[nodiscard]] ClumpReach reach_of(const Placement& placement) const;
  /// True only where the space holds all points of a clump.
  [[nodiscard]] static bool space_holds(const Cutting& cutting, const Point3& middle, const ClumpReach& reach);
  /// True only where it holds none.
  [[nodiscard]] static bool space_misses(const Cutting& cutting, const Point3& middle, const ClumpReach& reach);
  /// How many points stay untouched and hang together, up to `enough`; what is reached stays marked in the search.
  [[nodiscard]] std::size_t search_untouched(CellSearch& search, const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                             const Point3& trunk_base, std::optional<std::size_t> enough) const;

  const RootBlockBody& block_;
  std::vector<Point3> points_;
  std::vector<std::uint32_t> cell_of_point_;  // in the grid
  std::vector<Clump> clumps_;
  Point3 half_clump_;  // half its sides, tree frame
  int cells_wide_;
  double per_cell_ = 0;
};

}  // namespace gritwright
