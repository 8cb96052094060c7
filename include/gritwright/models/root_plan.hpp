#pragma once
// The root-mass plan worked out: what limits the fit, what comes off where, what stays untouched, and the mix that fills the rest.
// Definitions: docs/science/root-mass-plan.md.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/slice_runner.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// How far the posed root mass sticks out of the allowed space in a direction.
struct Limitation {
  Direction direction = Direction::up;
  Length excess{};
};

/// A cut from the farthest point along `direction`; `face` is the old face nearest to it.
struct PlannedCut {
  Face face = Face::top;
  Direction direction = Direction::up;
  Length depth{};
};

/// What comes off besides the planned cuts: corners for which the pot has no room. A point counts for the direction it exceeds most.
struct ShavedCorners {
  Face face = Face::top;  ///< the old face nearest to `direction`
  Direction direction = Direction::up;
  Length depth{};    ///< of the deepest point, behind the old faces that look along `direction`: the one it lies least deep behind
  double share = 0;  ///< of the block's volume, 0..1
};

/// What the plan had to do, in the ladder's order; corners are rounded off with the cuts.
enum class Rung { shifted, turned, cut, corners, tipped_less, sunk, raised, shoulder, other_pot, staging };

/// A straight cut in the tree frame: what lies farther than `offset` along the normal is taken off.
struct CutPlane {
  double right = 0;  ///< the normal, of length 1
  double back = 0;
  double up = 0;
  Length offset{};
};

/// A cell of 5 mm of the untouched part in the tree frame, counted from the low corner of the block's box.
struct UntouchedCell {
  int right = 0;
  int back = 0;
  int up = 0;
};

/// How a plan meets what was left untouched the time before, as shares of the block's volume, 0..1.
struct OtherHalf {
  double left_before = 0;   ///< of today's block
  double left_again = 0;    ///< untouched then and now
  double worked_again = 0;  ///< worked then and now
  Face toward = Face::top;  ///< the old face before which most of it lies
};

/// Corners of no more than this share of the block are not told: a root mass is not measured so finely.
inline constexpr double least_told_share = 5e-4;

struct WorkedPlan {
  std::string name;  ///< "A", "B", "C"
  Length right{};    ///< where the trunk base stands in the pot
  Length back{};
  Angle turn{};
  Angle tip{};
  Angle tip_toward{};
  Depth trunk_base{};  ///< above the floor
  Depth soil_line{};   ///< soil surface at the trunk, above the floor
  Depth shoulder{};    ///< how far the root mass stands over the soil surface
  std::vector<PlannedCut> cuts;
  std::vector<ShavedCorners> shaved;  ///< empty where that is no more than `least_told_share` in all
  std::vector<CombedFace> combed;
  double untouched_share = 0;  ///< of the block's volume, 0..1
  double removed_share = 0;
  std::optional<OtherHalf> other_half;  ///< where it is known what was left untouched the time before
  PotVolume kept{};
  PotVolume kept_under_soil{};
  PotVolume fill{};            ///< main mix as it lies, before settling and spill; without a shoulder's sphagnum
  PotVolume sphagnum{};        ///< that builds the shoulder up, as it lies
  bool fits = true;            ///< false: staging; the cuts are this year's and the tree goes back into its old pot
  std::vector<Rung> rungs;
  std::optional<std::string> other_pot;    ///< of the free pots
  std::optional<std::size_t> other_pot_index;
  std::optional<int> rest_after_years;     ///< staging
  std::vector<UntouchedCell> untouched;    ///< for pictures and for the record
  std::vector<CutPlane> cut_planes;        ///< straight cuts and those that were stopped; the others follow the allowed space
  Depth rise{};                            ///< of the root mass over the fill line, where there is a shoulder
  std::vector<AreaAtHeight> kept_by_height;  ///< kept root mass in its pot by the middles of equal slices up to the fill line; empty for staging
  Notes cautions;
};

/// If the upper cut comes to an end at `stops_at`.
struct StopRow {
  Length stops_at{};
  bool far_enough = false;  ///< plan A cuts no deeper, so the row is plan A's
  Length below{};  ///< what the cut from below then takes
  Depth trunk_base{};
  double untouched_share = 0;
  PotVolume fill{};
  bool fits = true;
};

struct RootPlanAnswer {
  std::vector<Limitation> limitations;  ///< at the pose as given, largest first
  double corners_share = 0;             ///< of the block, outside the allowed space after straight cuts
  std::vector<WorkedPlan> plans;        ///< A; B and C where there is a cut that may prove impossible
  std::vector<StopRow> stop_table;      ///< empty where nothing sticks out upward
  PotVolume block_volume{};
  Notes notes;
};

/// How finely to count. `live` is for dragging the pose: the same rules over fewer points, plan A alone.
enum class PlanDetail { full, live };

/// Plans A, B, C and the stop table. Fails with the problems of check(plan) and where the layers and clearances leave no room.
/// Source: docs/science/root-mass-plan.md.
[[nodiscard]] Result<RootPlanAnswer> work_out(const RootMassPlan& plan, PlanDetail detail = PlanDetail::full);
/// The same to the last bit on several threads: what follows plan A is worked out in slices.
[[nodiscard]] Result<RootPlanAnswer> work_out(const RootMassPlan& plan, PlanDetail detail, const SliceRunner& runner);

/// The smallest growth of the pot with which plan A fits, in whole millimetres: of one length alone where that is enough, else of all alike.
struct PotGrowth {
  Length length{};
  Length width{};
  Length depth{};
};
/// Empty where plan A fits already, or where no pot up to 30 cm larger will do.
[[nodiscard]] std::optional<PotGrowth> smallest_fitting_growth(const RootMassPlan& plan);

/// At the pose as given, without any shift: what a straight cut in each direction would have to take, and the share of the block
/// that lies outside the allowed space and that the permission does not let go. Precondition: check(plan) is empty.
struct FitAtPose {
  std::vector<Limitation> limitations;
  double outside_share = 0;
  double outside_not_permitted_share = 0;
};
[[nodiscard]] FitAtPose fit_at_pose(const RootMassPlan& plan);

/// The rows of the stop table up to the first that is far enough: those after it say the same. None where no plan fits: what goes back into
/// its old pot is not cut to the height of the new one.
[[nodiscard]] std::span<const StopRow> told_stops(const RootPlanAnswer& answer);

}  // namespace gritwright
