#pragma once
// Counting: which of the block's points are kept, and which of those stay untouched. Plain numbers in cm, shares of the block.

#include <cstdint>
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

class RootPoints {
 public:
  /// `block` must outlive this. Cells of `cells_wide` times 5 mm for what is connected; those reported are 5 mm.
  RootPoints(const RootBlockBody& block, std::size_t count, int cells_wide);

  [[nodiscard]] PointShares shares(const Cutting& cutting) const;

  /// Share of the block that is kept in each of `slices` equal slices from the floor to `top_cm`.
  [[nodiscard]] std::vector<double> kept_by_height(const Cutting& cutting, double top_cm, int slices) const;

  /// `shares` are those of this cutting. Points of the kept part farther than `working_cm` from everything removed and deeper than combed behind every combed face;
  /// of these the face-connected part nearest to `trunk_base`.
  [[nodiscard]] CountedUntouched untouched(const Cutting& cutting, const PointShares& shares, double working_cm, const std::vector<CombedFace>& combed,
                                        const Point3& trunk_base) const;

  [[nodiscard]] const std::vector<Point3>& points() const { return points_; }

 private:
  void add_cells(std::vector<Cell>& cells, const Cell& wide) const;

  const RootBlockBody& block_;
  std::vector<Point3> points_;
  int cells_wide_;
  double per_cell_ = 0;
};

}  // namespace gritwright
