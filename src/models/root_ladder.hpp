#pragma once
// One plan for one pot: the rungs from shifting to the shoulder. Plain numbers in cm and degrees.

#include <array>
#include <optional>
#include <vector>

#include "gritwright/models/root_plan.hpp"
#include "root_block.hpp"
#include "root_points.hpp"
#include "root_space.hpp"

namespace gritwright {

/// A saw or a root hook takes no less off: thinner cuts are left out where nothing needs them.
inline constexpr double least_workable_cm = 0.1;

struct PoseNumbers {
  double turn_deg = 0;
  double tip_deg = 0;
  double tip_toward_deg = 0;
  double x_cm = 0;
  double y_cm = 0;
  double z_cm = 0;
};

struct CutNumbers {
  Direction direction;
  double depth_cm;
};

/// What is given for all plans of one tree.
struct PlanGround {
  const RootMassPlan& plan;
  RootBlockBody block;
  Point3 trunk_base;
  double working_cm;
  std::optional<double> untouched_least;
  std::optional<double> removed_most;
  int per_quadrant;
  ConvexBody facets;
  RootPoints coarse;

  // The point sets refer to the block beside them.
  PlanGround(const PlanGround&) = delete;
  PlanGround& operator=(const PlanGround&) = delete;

  PlanGround(const RootMassPlan& plan, std::size_t fine_points, std::size_t coarse_points, int per_quadrant);

  /// What the plan reports is counted by these.
  [[nodiscard]] const RootPoints& fine() const { return finer_ ? *finer_ : coarse; }

 private:
  std::optional<RootPoints> finer_;
};

/// Whether a share keeps to its limit, both as they are told, to a tenth of a percent: one that reads like its limit breaks nothing,
/// and what points count is no finer. No limit is always kept.
[[nodiscard]] bool keeps_most(double share, std::optional<double> most);
[[nodiscard]] bool keeps_least(double share, std::optional<double> least);

/// Old faces whose cut proves impossible beyond a depth: nothing more comes off along the direction nearest to them.
struct Stop {
  Face face;
  Direction direction;
  double depth_cm;
};

/// A pose with its cuts, and what they could not give.
struct Settled {
  PoseNumbers pose;
  std::vector<CutNumbers> cuts;
  std::array<double, 6> rest_cm{};
  std::vector<HalfSpace> planes;  ///< pot frame: straight cuts and what was cut before a stop
  ConvexBody remaining;           ///< pot frame, after the cuts
  double rise_cm = 0;             ///< of a shoulder over the fill line
  bool corners_forbidden = false;  ///< a corner would have to be shaved where that is not permitted
  [[nodiscard]] double rest_total() const;
};

/// Shares by the fine points.
struct CountedPoints {
  PointShares shares;
  CountedUntouched untouched;
};

/// A straight cut across a corner: at its full depth it touches the space, level between two sideways directions.
struct CornerCut {
  HalfSpace plane;  ///< pot frame
  double depth_cm;  ///< from the farthest point of what the planned cuts leave
};

struct Climb {
  Settled at;
  std::optional<CountedPoints> counted;  ///< of `at`, where it was needed
  bool fits = false;
  bool limits_broken = false;
  bool shoulder_too_steep = false;
  std::vector<Rung> rungs;
};

/// The posed block at the pose as given.
[[nodiscard]] PoseNumbers given_pose(const PlanGround& ground, const AllowedSpace& space);
[[nodiscard]] Placement placement(const PlanGround& ground, const PoseNumbers& pose);

/// Excess of a posed body in each direction; a direction in which nothing can be measured has none.
[[nodiscard]] std::array<double, 6> excesses(const AllowedSpace& space, const ConvexBody& posed);

/// The old face nearest to a direction.
[[nodiscard]] Face nearest_face(const Placement& placement, Direction direction);

/// Share of the block that lies outside the space, and of it what the permission does not let go.
struct OutsideShares {
  double outside = 0;
  double not_permitted = 0;
};
[[nodiscard]] OutsideShares outside_shares(const PlanGround& ground, const AllowedSpace& space, const PoseNumbers& pose);

/// What the space has no room for besides the planned cuts, by the direction that each point exceeds most: share of the block, and depth
/// of the deepest point behind the old faces that look that way.
struct ShavedNumbers {
  double share = 0;
  double depth_cm = 0;
};
[[nodiscard]] std::array<ShavedNumbers, 6> shaved_corners(const PlanGround& ground, const AllowedSpace& space, const Settled& settled);

/// Of each quarter the corner that sticks out farthest beyond the planned cuts, where that is a workable cut.
[[nodiscard]] std::vector<CornerCut> corner_cuts(const AllowedSpace& space, const Settled& settled);

/// What the planes take that the cuts before them leave, told as shaved corners are. `first_corner`: of the cutting's planes.
[[nodiscard]] std::array<ShavedNumbers, 6> corners_taken(const PlanGround& ground, const AllowedSpace& space, const Cutting& cut, std::size_t first_corner);

/// Up to the shoulder; the other pots and staging are the caller's.
[[nodiscard]] Climb climb(const PlanGround& ground, const AllowedSpace& space, const std::vector<Stop>& stops);

/// Share of the block that is kept: exact where a box is cut by nothing but planes, else as counted.
[[nodiscard]] double kept_share(const PlanGround& ground, const Cutting& cut, const PointShares& counted);

/// The untouched cells are listed where they are asked for.
[[nodiscard]] CountedPoints count(const PlanGround& ground, const Cutting& cut, bool list_cells);

[[nodiscard]] Cutting cutting(const PlanGround& ground, const AllowedSpace& space, const Settled& settled);

}  // namespace gritwright
