#include "gritwright/models/root_plan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>
#include <vector>

#include "root_cautions.hpp"
#include "root_earlier.hpp"
#include "root_ladder.hpp"
#include "root_shoulder.hpp"

namespace gritwright {

namespace {

constexpr std::size_t full_points = largest_point_set;
constexpr std::size_t coarse_points = 12500;
constexpr int full_facets = 64;
constexpr int live_facets = 16;
constexpr int slices_listed = 24;
constexpr std::array stops_listed_cm{0.0, 3.0, 6.0, 9.0};

PotVolume volume_of(const PlanGround& ground, double share) { return pot_ml(ground.block.volume_cm3() * share); }

Depth soil_at(const AllowedSpace& space, const PoseNumbers& pose) { return depth_cm(space.soil_cm(pose.x_cm, pose.y_cm)); }

Notes no_room(const AllowedSpace& space) {
  if (space.lowest_cm() < space.highest_cm()) return {};
  return {{"root-plan.no-room", Level::warning, "", {{"lowest_cm", space.lowest_cm()}, {"highest_cm", space.highest_cm()}}}};
}

/// V(fill line) + mound - layers - kept root mass under the soil - trunk and stones.
PotVolume main_mix(const AllowedSpace& space, PotVolume kept_under_soil, PotVolume displaced) {
  // Where stones are told to take up more than there is, that is a caution's matter.
  return std::max(pot_ml(0), space.geometry().main_mix_volume() - kept_under_soil - displaced);
}

CutPlane in_tree_frame(const Placement& posed, const HalfSpace& plane) {
  const HalfSpace in_tree = posed.to_tree(plane);
  return {in_tree.normal.x, in_tree.normal.y, in_tree.normal.z, length_cm(in_tree.offset)};
}

class Planner {
 public:
  Planner(const RootMassPlan& plan, PlanDetail detail)
      : plan_(plan),
        ground_(plan, detail == PlanDetail::full ? full_points : coarse_points, coarse_points,
                detail == PlanDetail::full ? full_facets : live_facets),
        space_(plan.pot, plan.side_clearance, plan.below_clearance) {
    find_earlier();
    for (const StoppedCut& stop : plan.stopped) given_stops_.push_back({face_of(stop.direction), stop.direction, in_cm(stop.depth)});
    std::vector<std::size_t> order(plan.free_pots.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return in_ml(PotGeometry(plan.free_pots[i]).volume()); });
    for (const std::size_t i : order) {
      AllowedSpace space(plan.free_pots[i], plan.side_clearance, plan.below_clearance);
      if (space.lowest_cm() < space.highest_cm()) free_.push_back({i, std::move(space)});
    }
  }

  [[nodiscard]] const PlanGround& ground() const { return ground_; }
  [[nodiscard]] const AllowedSpace& space() const { return space_; }

  /// With further stops: the plan, in the first pot that will do, or what can be done this year.
  [[nodiscard]] WorkedPlan work(const std::string& name, const std::vector<Stop>& further) const {
    std::vector<Stop> stops = given_stops_;
    for (const Stop& stop : further) {
      const auto same = std::ranges::find(stops, stop.direction, &Stop::direction);
      if (same == stops.end()) stops.push_back(stop);
    }
    const Climb first = climb(ground_, space_, stops);
    if (first.fits) return finished(name, first, space_, nullptr);
    for (const FreePot& pot : free_) {
      const Climb other = climb(ground_, pot.space, stops);
      if (other.fits) return finished(name, other, pot.space, &pot);
    }
    return staged(name, first);
  }

  /// The old face nearest to a direction at the pose as given.
  [[nodiscard]] Face face_of(Direction direction) const {
    return nearest_face(placement(ground_, given_pose(ground_, space_)), direction);
  }

 private:
  struct FreePot {
    std::size_t index;
    AllowedSpace space;
  };

  [[nodiscard]] WorkedPlan described(const std::string& name, const Climb& climb, const AllowedSpace& space) const {
    WorkedPlan worked;
    const PoseNumbers& pose = climb.at.pose;
    worked.name = name;
    worked.right = length_cm(pose.x_cm);
    worked.back = length_cm(pose.y_cm);
    worked.turn = angle_deg(pose.turn_deg);
    worked.tip = angle_deg(pose.tip_deg);
    worked.tip_toward = angle_deg(pose.tip_toward_deg);
    worked.trunk_base = depth_cm(pose.z_cm);
    worked.soil_line = soil_at(space, pose);
    worked.combed = plan_.combed;
    worked.rungs = climb.rungs;
    worked.fits = climb.fits;
    const Placement posed = placement(ground_, pose);
    for (const CutNumbers& cut : climb.at.cuts)
      worked.cuts.push_back({nearest_face(posed, cut.direction), cut.direction, length_cm(cut.depth_cm)});
    for (const HalfSpace& plane : climb.at.planes) worked.cut_planes.push_back(in_tree_frame(posed, plane));
    worked.rise = depth_cm(climb.at.rise_cm);
    return worked;
  }

  void tell_corners(WorkedPlan& worked, const Placement& posed, const std::array<ShavedNumbers, 6>& shaved) const {
    const double in_all = std::accumulate(shaved.begin(), shaved.end(), 0.0, [](double sum, const ShavedNumbers& one) { return sum + one.share; });
    if (in_all <= least_told_share) return;
    for (const Direction direction : directions) {
      const ShavedNumbers& one = shaved[static_cast<std::size_t>(direction)];
      if (one.share > 0) worked.shaved.push_back({nearest_face(posed, direction), direction, length_cm(one.depth_cm), one.share});
    }
    auto place = worked.rungs.begin();
    while (place != worked.rungs.end() && (*place == Rung::shifted || *place == Rung::turned || *place == Rung::cut)) ++place;
    worked.rungs.insert(place, Rung::corners);
  }

  void take(WorkedPlan& worked, const Cutting& cut, const CountedPoints& counted) const {
    const double kept = kept_share(ground_, cut, counted.shares);
    worked.removed_share = 1 - kept;
    worked.kept = volume_of(ground_, kept);
    worked.kept_under_soil = counted.shares.kept > 0 ? worked.kept * (counted.shares.kept_under_soil / counted.shares.kept) : PotVolume{};
    if (plan_.bare_root) return;
    worked.untouched_share = counted.untouched.share;
    // A row of the stop table draws nothing.
    if (worked.name.empty()) return;
    worked.untouched.reserve(counted.untouched.cells.size());
    for (const Cell& cell : counted.untouched.cells) worked.untouched.push_back({cell.right, cell.back, cell.up});
    if (earlier_) worked.other_half = meets_earlier(worked);
  }

  /// Of the root mass as it stands today; the untouched cells tell what stays so now.
  [[nodiscard]] OtherHalf meets_earlier(const WorkedPlan& worked) const {
    OtherHalf half;
    half.left_before = earlier_share_;
    half.toward = earlier_face_;
    if (worked.untouched.empty()) {
      half.worked_again = 1 - earlier_share_;
      return half;
    }
    const Point3 low{-ground_.block.length_cm() / 2, -ground_.block.width_cm() / 2, 0};
    const auto again = std::ranges::count_if(worked.untouched, [&](const UntouchedCell& cell) {
      return earlier_->holds(low + cell_cm * Point3{cell.right + 0.5, cell.back + 0.5, cell.up + 0.5});
    });
    half.left_again = worked.untouched_share * static_cast<double>(again) / static_cast<double>(worked.untouched.size());
    half.worked_again = std::max(0.0, 1 - earlier_share_ - (worked.untouched_share - half.left_again));
    return half;
  }

  /// How much of today's block was left untouched the time before, and toward which face that lies.
  void find_earlier() {
    if (!plan_.untouched_last_time || plan_.bare_root) return;
    earlier_.emplace(*plan_.untouched_last_time, ground_.trunk_base);
    std::size_t held = 0;
    Point3 sum{0, 0, 0};
    for (const Point3& p : ground_.coarse.points()) {
      if (!earlier_->holds(p)) continue;
      ++held;
      sum = sum + p;
    }
    if (held == 0) return;
    earlier_share_ = static_cast<double>(held) / static_cast<double>(ground_.coarse.points().size());
    const Point3 middle = 1 / static_cast<double>(held) * sum - Point3{0, 0, ground_.block.height_cm() / 2};
    const Point3 aside{middle.x / ground_.block.length_cm(), middle.y / ground_.block.width_cm(), middle.z / ground_.block.height_cm()};
    // The half that is worked is one of the sides: the bottom is worked each time, and what is left always lies below the trunk base.
    // Only where it lies in the middle, as near as its cells tell, is there no such side.
    const bool in_the_middle = std::hypot(middle.x, middle.y) < cell_cm;
    earlier_face_ = *std::ranges::max_element(faces, {}, [&](Face face) {
      const bool side = face != Face::top && face != Face::bottom;
      return side || in_the_middle ? dot(aside, RootBlockBody::outward(face)) : -std::numeric_limits<double>::infinity();
    });
  }

  void slice(WorkedPlan& worked, const Cutting& cut, const PointShares& counted, double top_cm) const {
    const std::vector<double> shares = ground_.fine().kept_by_height(cut, counted, top_cm, slices_listed);
    const double thickness_cm = top_cm / slices_listed;
    const double volume_cm3 = counted.kept > 0 ? in_ml(worked.kept) / counted.kept : 0;
    for (int i = 0; i < slices_listed; ++i)
      worked.kept_by_height.push_back({depth_cm((i + 0.5) * thickness_cm), area_cm2(volume_cm3 * shares[static_cast<std::size_t>(i)] / thickness_cm)});
  }

  [[nodiscard]] WorkedPlan finished(const std::string& name, const Climb& climb, const AllowedSpace& space, const FreePot* pot) const {
    WorkedPlan worked = described(name, climb, space);
    const Cutting cut = cutting(ground_, space, climb.at);
    std::optional<CountedPoints> only_now;
    if (!climb.counted) only_now = count(ground_, cut, !name.empty());
    const CountedPoints& counted = climb.counted ? *climb.counted : *only_now;
    take(worked, cut, counted);
    // A row of the stop table tells no steps.
    if (!name.empty()) tell_corners(worked, cut.placement, shaved_corners(ground_, space, climb.at));
    if (climb.at.rise_cm > 0) {
      double over = 0;
      for (const Point3& p : climb.at.remaining.corners())
        if (p.z > space.highest_cm()) over = std::max(over, p.z - space.soil_cm(p.x, p.y));
      worked.shoulder = depth_cm(over);
      if (!name.empty()) worked.sphagnum = pot_ml(shoulder_sphagnum_cm3(ground_, space, cut, counted.shares));
    }
    if (pot != nullptr) {
      worked.other_pot = plan_.free_pots[pot->index].name;
      worked.other_pot_index = pot->index;
      worked.rungs.push_back(Rung::other_pot);
    }
    // Without its ground a root mass takes up next to nothing; how much is not known.
    if (plan_.bare_root) worked.kept_under_soil = PotVolume{};
    if (!name.empty() && !plan_.bare_root) slice(worked, cut, counted.shares, space.highest_cm());
    worked.fill = main_mix(space, worked.kept_under_soil, plan_.displaced);
    worked.cautions = cautions_for(plan_, worked, space, ground_);
    return worked;
  }

  /// This year's part: as much of each cut as the group bears, and where it bears them all, of the corners; back into the old pot.
  [[nodiscard]] WorkedPlan staged(const std::string& name, const Climb& climb) const {
    WorkedPlan worked = described(name, climb, space_);
    const Placement posed = placement(ground_, climb.at.pose);
    const ConvexBody body = posed.to_pot(ground_.facets);
    const auto cut_by = [&](double part) {
      Cutting cut{posed, nullptr, 0, {}};
      for (const CutNumbers& whole : climb.at.cuts) {
        const Point3 out = along(whole.direction);
        if (part * whole.depth_cm >= least_workable_cm) cut.planes.push_back({out, body.farthest(out) - part * whole.depth_cm});
      }
      return cut;
    };
    const double part = part_borne(cut_by);
    Cutting this_year = cut_by(part);
    const std::size_t first_corner = this_year.planes.size();
    // What permission or space forbid is not told where corners may go.
    if (part == 1 && climb.limits_broken) {
      const std::vector<CornerCut> corners = corner_cuts(space_, climb.at);
      const auto with_corners = [&](double deep) {
        Cutting cut = cut_by(1);
        for (const CornerCut& corner : corners) cut.planes.push_back({corner.plane.normal, corner.plane.offset + (1 - deep) * corner.depth_cm});
        return cut;
      };
      const double corner_part = corners.empty() ? 0 : part_borne(with_corners);
      if (corner_part > 0) this_year = with_corners(corner_part);
    }
    for (PlannedCut& cut : worked.cuts) cut.depth = cut.depth * part;
    std::erase_if(worked.cuts, [](const PlannedCut& cut) { return in_cm(cut.depth) < least_workable_cm; });
    if (worked.cuts.empty()) std::erase(worked.rungs, Rung::cut);
    worked.cut_planes.clear();
    for (const HalfSpace& plane : this_year.planes) worked.cut_planes.push_back(in_tree_frame(posed, plane));
    if (this_year.planes.size() > first_corner) tell_corners(worked, posed, corners_taken(ground_, space_, this_year, first_corner));
    take(worked, this_year, count(ground_, this_year, !name.empty()));
    worked.kept_under_soil = worked.kept;
    // What comes off is what its old pot lacks afterwards.
    worked.fill = volume_of(ground_, worked.removed_share);
    worked.fits = false;
    worked.rungs.push_back(Rung::staging);
    worked.rest_after_years = plan_.interval_years ? plan_.interval_years : group_defaults(plan_.group).interval_least_years;
    worked.cautions = cautions_for(plan_, worked, space_, ground_);
    append(worked.cautions, why_not(climb));
    return worked;
  }

  /// The largest part of something to cut that the group bears, found by halving.
  template <class CutBy>
  [[nodiscard]] double part_borne(const CutBy& cut_by) const {
    if (bears(cut_by(1))) return 1;
    double low = 0;
    double high = 1;
    for (int i = 0; i < 8; ++i) {
      const double middle = (low + high) / 2;
      (bears(cut_by(middle)) ? low : high) = middle;
    }
    return low;
  }

  [[nodiscard]] bool bears(const Cutting& cut) const {
    if (plan_.bare_root) return true;
    const PointShares shares = ground_.coarse.shares(cut);
    if (ground_.removed_most && 1 - kept_share(ground_, cut, shares) > *ground_.removed_most) return false;
    return !ground_.untouched_least ||
           ground_.coarse.leaves_untouched(*ground_.untouched_least, cut, shares, ground_.working_cm, plan_.combed, ground_.trunk_base);
  }

  /// Stages spread a loss over years; they don't make a root mass fit that would lose most of itself.
  [[nodiscard]] Notes never_by_stages(const Climb& climb) const {
    const double in_all = 1 - ground_.coarse.shares(cutting(ground_, space_, climb.at)).kept;
    if (keeps_most(in_all, never_advised_removed)) return {};
    return {{"root-plan.larger-than-any-plan", Level::warning, "", {{"percent", in_all * 100}}}};
  }

  [[nodiscard]] Notes why_not(const Climb& climb) const {
    Notes notes;
    for (const Direction direction : directions) {
      const double rest = climb.at.rest_cm[static_cast<std::size_t>(direction)];
      if (rest > 1e-6)
        notes.push_back({"root-plan.still-too-large", Level::warning, direction_name(direction), {{"excess_cm", rest}}});
    }
    if (climb.shoulder_too_steep) notes.push_back({"root-plan.shoulder-too-steep", Level::note, "", {}});
    if (climb.at.corners_forbidden) notes.push_back({"root-plan.corner-forbidden", Level::warning, "", {}});
    if (climb.limits_broken) notes.push_back({"root-plan.more-than-group-bears", Level::warning, "", {}});
    if (climb.limits_broken) append(notes, never_by_stages(climb));
    return notes;
  }

  const RootMassPlan& plan_;
  PlanGround ground_;
  AllowedSpace space_;
  std::optional<EarlierPart> earlier_;
  double earlier_share_ = 0;
  Face earlier_face_ = Face::top;
  std::vector<Stop> given_stops_;
  std::vector<FreePot> free_;
};

/// The largest of the cuts; where there is none, the corners of the direction in which they go deepest.
std::optional<PlannedCut> largest_cut(const WorkedPlan& plan, const std::vector<StoppedCut>& stopped) {
  // What was stopped already was cut; it can't prove impossible any more.
  const auto open = [&](Direction direction) { return std::ranges::find(stopped, direction, &StoppedCut::direction) == stopped.end(); };
  std::optional<PlannedCut> largest;
  for (const PlannedCut& cut : plan.cuts)
    if (open(cut.direction) && (!largest || cut.depth > largest->depth)) largest = cut;
  if (largest) return largest;
  // Their depths are those of counted points: a millimetre decides nothing.
  constexpr double counted_cm = 0.1;
  for (const ShavedCorners& corners : plan.shaved)
    if (open(corners.direction) && (!largest || in_cm(corners.depth) > in_cm(largest->depth) + counted_cm))
      largest = PlannedCut{corners.face, corners.direction, corners.depth};
  return largest;
}

/// B and C, in the order in which cuts prove impossible.
std::vector<WorkedPlan> fallbacks_of(const WorkedPlan& first, const Planner& planner, const RootMassPlan& plan) {
  std::vector<WorkedPlan> fallbacks;
  std::vector<Stop> impossible;
  for (const char* name : {"B", "C"}) {
    const std::optional<PlannedCut> cut = largest_cut(fallbacks.empty() ? first : fallbacks.back(), plan.stopped);
    if (!cut) break;
    impossible.push_back({cut->face, cut->direction, 0});
    fallbacks.push_back(planner.work(name, impossible));
  }
  return fallbacks;
}

StopRow row_of(double stops_at_cm, const WorkedPlan& plan) {
  StopRow row;
  row.stops_at = length_cm(stops_at_cm);
  const auto below = std::ranges::find(plan.cuts, Direction::down, &PlannedCut::direction);
  if (below != plan.cuts.end()) row.below = below->depth;
  row.trunk_base = plan.trunk_base;
  row.untouched_share = plan.untouched_share;
  row.fill = plan.fill;
  row.fits = plan.fits;
  return row;
}

/// Where the stop table takes a row from.
enum class RowSource { plan_a, plan_b, own };

RowSource source_of(double stops_at_cm, const PlannedCut& upper, const PlannedCut& largest) {
  // Whoever gets farther than the plan asks stops where it ends.
  if (stops_at_cm >= in_cm(upper.depth) - 1e-9) return RowSource::plan_a;
  // Plan B is the one whose upper cut proves impossible, if that is the largest.
  return stops_at_cm == 0 && largest.direction == Direction::up ? RowSource::plan_b : RowSource::own;
}

/// Plans B and C and the stop table: each row, and the two plans one after the other, is a slice of its own.
void add_what_else(RootPlanAnswer& answer, const Planner& planner, const RootMassPlan& plan, const SliceRunner& runner) {
  const WorkedPlan& first = answer.plans.front();
  const std::optional<PlannedCut> largest = largest_cut(first, plan.stopped);
  if (!largest) return;
  // The table is for the time before the cut; where it came to an end is known now.
  const bool stopped = std::ranges::find(plan.stopped, Direction::up, &StoppedCut::direction) != plan.stopped.end();
  const auto upper = std::ranges::find(first.cuts, Direction::up, &PlannedCut::direction);
  std::vector<RowSource> sources;
  if (!stopped && upper != first.cuts.end())
    for (const double stops_at : stops_listed_cm) sources.push_back(source_of(stops_at, *upper, *largest));
  std::vector<WorkedPlan> own(sources.size());
  std::vector<WorkedPlan> fallbacks;
  runner(1 + sources.size(), [&](std::size_t slice) {
    if (slice == 0) {
      fallbacks = fallbacks_of(first, planner, plan);
    } else if (sources[slice - 1] == RowSource::own) {
      own[slice - 1] = planner.work("", {{planner.face_of(Direction::up), Direction::up, stops_listed_cm[slice - 1]}});
    }
  });
  for (std::size_t i = 0; i < sources.size(); ++i) {
    answer.stop_table.push_back(row_of(stops_listed_cm[i], sources[i] == RowSource::plan_a ? first : sources[i] == RowSource::plan_b ? fallbacks.front() : own[i]));
    answer.stop_table.back().far_enough = sources[i] == RowSource::plan_a;
  }
  for (WorkedPlan& fallback : fallbacks) answer.plans.push_back(std::move(fallback));
}

std::vector<Limitation> limitations_at(const PlanGround& ground, const AllowedSpace& space, const PoseNumbers& pose) {
  const auto excess = excesses(space, placement(ground, pose).to_pot(ground.facets));
  std::vector<Limitation> limitations;
  for (const Direction direction : directions) {
    const double cm = excess[static_cast<std::size_t>(direction)];
    if (cm > 1e-7) limitations.push_back({direction, length_cm(cm)});
  }
  std::ranges::stable_sort(limitations, [](const Limitation& a, const Limitation& b) {
    return in_cm(a.excess) > in_cm(b.excess) + 1e-9;
  });
  return limitations;
}

/// Share of the block still outside after each straight cut has taken its excess.
double corners_share(const PlanGround& ground, const AllowedSpace& space, const PoseNumbers& pose,
                     const std::vector<Limitation>& limitations) {
  const Placement posed = placement(ground, pose);
  const ConvexBody body = posed.to_pot(ground.facets);
  Cutting straight{posed, &space, 0, {}};
  for (const Limitation& limitation : limitations) {
    const Point3 out = along(limitation.direction);
    straight.planes.push_back({out, body.farthest(out) - in_cm(limitation.excess)});
  }
  return ground.fine().share_outside(straight);
}

PoseNumbers pose_with_trunk_free(const PlanGround& ground, const AllowedSpace& space) {
  PoseNumbers pose = given_pose(ground, space);
  pose.z_cm = std::max(pose.z_cm, space.soil_cm(pose.x_cm, pose.y_cm) + in_cm(ground.plan.trunk_height_least));
  return pose;
}

/// A larger pot of the same kind: rim, base and middle by as much, the floor lower.
Container grown(const Container& pot, double length, double width, double depth) {
  Container larger = pot;
  const auto grow = [&](Section& section) {
    section.length = section.length + length_cm(length);
    section.width = section.width + length_cm(width);
  };
  grow(larger.rim);
  if (larger.base) grow(*larger.base);
  if (larger.middle) grow(*larger.middle);
  larger.depth = larger.depth + depth_cm(depth);
  larger.water_fill.reset();
  return larger;
}

}  // namespace

Result<RootPlanAnswer> work_out(const RootMassPlan& plan, PlanDetail detail) { return work_out(plan, detail, run_in_order); }

Result<RootPlanAnswer> work_out(const RootMassPlan& plan, PlanDetail detail, const SliceRunner& runner) {
  if (Problems problems = check(plan); !problems.empty()) return problems;
  const Planner planner(plan, detail);
  if (const Notes notes = no_room(planner.space()); !notes.empty())
    return problem_at(notes.front().code, "/pot", notes.front().facts);
  RootPlanAnswer answer;
  answer.block_volume = pot_ml(planner.ground().block.volume_cm3());
  const PoseNumbers pose = pose_with_trunk_free(planner.ground(), planner.space());
  answer.limitations = limitations_at(planner.ground(), planner.space(), pose);
  answer.corners_share = corners_share(planner.ground(), planner.space(), pose, answer.limitations);
  answer.plans.push_back(planner.work("A", {}));
  if (detail == PlanDetail::full) add_what_else(answer, planner, plan, runner);
  answer.notes = notes_for(plan, planner.space());
  return answer;
}

std::optional<PotGrowth> smallest_fitting_growth(const RootMassPlan& plan) {
  using Way = std::array<double, 3>;
  const auto fits = [&](const PlanGround& ground, const Way& way, int mm) {
    const double cm = mm / 10.0;
    const AllowedSpace space(grown(plan.pot, way[0] * cm, way[1] * cm, way[2] * cm), plan.side_clearance, plan.below_clearance);
    return space.lowest_cm() < space.highest_cm() && climb(ground, space, {}).fits;
  };
  const PlanGround ground(plan, coarse_points, coarse_points, live_facets);
  // A table of areas has no lengths to grow.
  if (plan.pot.shape == Shape::profile || fits(ground, {1, 1, 1}, 0)) return std::nullopt;
  const bool one_width = plan.pot.shape == Shape::round || plan.pot.shape == Shape::drum || plan.pot.shape == Shape::hexagonal ||
                         plan.pot.shape == Shape::octagonal;
  std::vector<Way> ways{{0, 0, 1}};
  if (one_width) {
    ways.push_back({1, 1, 0});
  } else {
    ways.push_back({1, 0, 0});
    ways.push_back({0, 1, 0});
  }
  constexpr int most_mm = 300;
  std::optional<Way> best;
  int best_mm = 0;
  const auto consider = [&](const Way& way) {
    int high = best ? best_mm - 1 : most_mm;
    if (high < 1 || !fits(ground, way, high)) return;
    for (int low = 0; high - low > 1;) {
      const int middle = (low + high) / 2;
      (fits(ground, way, middle) ? high : low) = middle;
    }
    best = way;
    best_mm = high;
  };
  for (const Way& way : ways) consider(way);
  if (!best) consider({1, 1, 1});
  if (!best) return std::nullopt;
  // Told to the millimetre, and never less than what plan A, counted in full, fits into.
  const PlanGround whole(plan, full_points, coarse_points, full_facets);
  int too_small_mm = 0;
  for (int step = 1; !fits(whole, *best, best_mm); step *= 2) {
    if (best_mm == most_mm) return std::nullopt;
    too_small_mm = best_mm;
    best_mm = std::min(most_mm, best_mm + step);
  }
  while (best_mm - too_small_mm > 1) {
    const int smaller_mm = too_small_mm > 0 ? (too_small_mm + best_mm) / 2 : best_mm - 1;
    if (!fits(whole, *best, smaller_mm)) too_small_mm = smaller_mm;
    else best_mm = smaller_mm;
  }
  const double cm = best_mm / 10.0;
  return PotGrowth{length_cm((*best)[0] * cm), length_cm((*best)[1] * cm), length_cm((*best)[2] * cm)};
}

FitAtPose fit_at_pose(const RootMassPlan& plan) {
  const PlanGround ground(plan, full_points, 1, full_facets);
  const AllowedSpace space(plan.pot, plan.side_clearance, plan.below_clearance);
  const PoseNumbers pose = given_pose(ground, space);
  const OutsideShares shares = outside_shares(ground, space, pose);
  return {limitations_at(ground, space, pose), shares.outside, shares.not_permitted};
}

std::span<const StopRow> told_stops(const RootPlanAnswer& answer) {
  if (std::ranges::none_of(answer.plans, &WorkedPlan::fits)) return {};
  const auto enough = std::ranges::find(answer.stop_table, true, &StopRow::far_enough);
  return {answer.stop_table.begin(), enough == answer.stop_table.end() ? enough : enough + 1};
}

}  // namespace gritwright
