#include "root_ladder.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>
#include <variant>

namespace gritwright {

namespace {

constexpr double hair_cm = 1e-7;
constexpr double nowhere_cm = -1e6;
constexpr double farthest_step_cm = 5;

std::size_t at(Direction direction) { return static_cast<std::size_t>(direction); }
std::size_t at(Face face) { return static_cast<std::size_t>(face); }

/// A stop as it was cut: a plane fixed to the tree.
struct TreeStop {
  Stop stop;
  HalfSpace plane;
};

/// Faces that look along a direction: outward normal within 90 degrees of it.
std::vector<Face> faces_along(const Placement& placement, Direction direction) {
  std::vector<Face> looking;
  for (const Face face : faces)
    if (dot(placement.rotated(RootBlockBody::outward(face)), along(direction)) > 1e-9) looking.push_back(face);
  return looking;
}

/// Where one tree may be cut at one pose.
class Permission {
 public:
  Permission(const PlanGround& ground, const Placement& placement, const std::vector<TreeStop>& stops)
      : ground_(ground), placement_(placement) {
    for (const Direction direction : directions) {
      looking_[at(direction)] = faces_along(placement, direction);
      const Face nearest = nearest_face(placement, direction);
      for (const TreeStop& stop : stops) stopped_[at(direction)] = stopped_[at(direction)] || stop.stop.face == nearest;
      unlimited_[at(direction)] = !stopped_[at(direction)] && std::ranges::any_of(looking_[at(direction)], [&](Face face) {
        return !ground.plan.permission[at(face)].has_value();
      });
    }
  }

  [[nodiscard]] bool unlimited(Direction direction) const { return unlimited_[at(direction)]; }
  [[nodiscard]] bool unlimited() const { return std::ranges::all_of(unlimited_, [](bool free) { return free; }); }

  /// What a cut along the direction must leave, of a posed body.
  [[nodiscard]] ConvexBody core(const ConvexBody& body, Direction direction) const {
    if (unlimited(direction)) return {};
    if (stopped_[at(direction)]) return body;
    ConvexBody core = body;
    for (const Face face : looking_[at(direction)])
      core = std::move(core).within(placement_.to_pot(ground_.block.deeper_than(face, in_cm(*ground_.plan.permission[at(face)]))));
    return core;
  }

  /// May a cut along the direction take this point of the tree frame?
  [[nodiscard]] bool lets_go(const Point3& in_tree, Direction direction) const {
    if (unlimited(direction)) return true;
    if (stopped_[at(direction)]) return false;
    return std::ranges::any_of(looking_[at(direction)], [&](Face face) {
      return ground_.block.depth_behind(face, in_tree) <= in_cm(*ground_.plan.permission[at(face)]) + hair_cm;
    });
  }

 private:
  const PlanGround& ground_;
  const Placement& placement_;
  std::array<std::vector<Face>, 6> looking_;
  std::array<bool, 6> stopped_{};
  std::array<bool, 6> unlimited_{};
};

/// The direction a shaved point counts for, and whether that lets it go.
struct ShavedPoint {
  Direction direction = Direction::up;
  bool let_go = true;
  double over_next_cm = 0;  ///< how far it must move until another sideways direction counts
};

ShavedPoint shaved(const AllowedSpace& space, const Permission& permission, const Point3& in_tree, const Point3& in_pot, double rise_cm) {
  ShavedPoint answer;
  double most = -std::numeric_limits<double>::infinity();
  double next = most;
  bool beyond_any = false;
  const std::array<double, 6> beyond = space.excesses_cm(in_pot);
  for (const Direction direction : directions) {
    const double excess = beyond[at(direction)] - (direction == Direction::up ? rise_cm : 0);
    // A point between lowest and highest level is shaved off sideways whatever its height.
    if (!sideways(direction) && excess <= 0) continue;
    // What lies beyond several extremes goes with any cut that may take it.
    if (excess > hair_cm) {
      beyond_any = true;
      if (permission.lets_go(in_tree, direction)) return answer;
    }
    if (excess > most) {
      next = most;
      most = excess;
      answer.direction = direction;
    } else {
      next = std::max(next, excess);
    }
  }
  answer.let_go = !beyond_any && permission.lets_go(in_tree, answer.direction);
  answer.over_next_cm = most - next + hair_cm;
  return answer;
}

/// Does a cut along the direction have to shave something off what must stay, once the root mass is moved back from it by so much? Told by
/// the corners of that part, so that nothing is too thin to be seen.
bool shaves_what_stays(const AllowedSpace& space, const ConvexBody& core, Direction direction, double back_cm) {
  constexpr double hair_share = 1e-5;
  const Point3 out = along(direction);
  ConvexBody part = core;
  for (Point3& p : part.corners()) p = p - back_cm * out;
  const auto sticks_out = [&](const Point3& p) {
    return !space.holds_sideways({(1 - hair_share) * p.x, (1 - hair_share) * p.y, std::max(p.z, space.lowest_cm())}, 0);
  };
  if (std::ranges::none_of(part.corners(), sticks_out)) return false;
  // Only where no other direction is exceeded more.
  const double low = space.lowest_cm();
  const double high = space.highest_cm();
  for (const Direction other : directions) {
    if (!sideways(other) || other == direction) continue;
    const auto farther = [&](double height) { return space.reach_cm(direction, height) - space.reach_cm(other, height); };
    const double slope = (farther(high) - farther(low)) / (high - low);
    part = std::move(part).within({along(other) - out + Point3{0, 0, slope}, slope * low - farther(low)});
  }
  return std::ranges::any_of(part.corners(), sticks_out);
}

double room_for_what_stays(const AllowedSpace& space, const ConvexBody& core, Direction direction) {
  if (core.empty() || !shaves_what_stays(space, core, direction, 0)) return 0;
  constexpr int halvings = 14;
  double near = 0;
  double far = farthest_step_cm;
  if (shaves_what_stays(space, core, direction, far)) return far;
  for (int i = 0; i < halvings; ++i) {
    const double middle = (near + far) / 2;
    (shaves_what_stays(space, core, direction, middle) ? near : far) = middle;
  }
  return far;
}

bool cut_away(const std::vector<HalfSpace>& planes, const Point3& p) {
  return std::ranges::any_of(planes, [&](const HalfSpace& plane) { return plane.beyond(p) > -hair_cm; });
}

/// How far the root mass would have to move back from each sideways direction so that no corner is shaved where that is forbidden.
std::array<double, 6> corner_needs(const AllowedSpace& space, const Permission& permission, const Placement& placement,
                                   const Settled& settled, const RootPoints& points) {
  std::array<double, 6> needs{};
  points.each_outside({placement, &space, settled.rise_cm, {}}, [&](const Point3& in_tree, const Point3& p) {
    if (cut_away(settled.planes, p)) return;
    const ShavedPoint shave = shaved(space, permission, in_tree, p, settled.rise_cm);
    if (shave.let_go) return;
    double& need = needs[at(shave.direction)];
    if (!sideways(shave.direction)) {
      need = std::max(need, space.excess_cm(shave.direction, p));
      return;
    }
    double far = std::min(shave.over_next_cm, farthest_step_cm);
    if (far <= need) return;
    const Point3 back = along(opposite(shave.direction));
    const auto comes_in = [&](double cm) { return space.holds_sideways(p + cm * back, 0); };
    if (comes_in(far)) {
      constexpr int halvings = 20;
      // The space is convex at one height: what is inside already by then asks for no more, to the exactness of the halving.
      if (comes_in(need - far / (1 << halvings))) return;
      double near = 0;
      for (int i = 0; i < halvings; ++i) {
        const double middle = (near + far) / 2;
        (comes_in(middle) ? far : near) = middle;
      }
    }
    need = std::max(need, far);
  });
  for (const Direction direction : directions) {
    if (!sideways(direction) || permission.unlimited(direction)) continue;
    // What stands in a shoulder may pass several extremes; the points tell of that.
    const ConvexBody core = permission.core(settled.remaining, direction).within({{0, 0, 1}, space.highest_cm()});
    double& need = needs[at(direction)];
    need = std::max(need, room_for_what_stays(space, core, direction));
  }
  return needs;
}

class Ladder {
 public:
  Ladder(const PlanGround& ground, const AllowedSpace& space, const std::vector<Stop>& stops) : ground_(ground), space_(space) {
    const Placement posed = placement(ground, given_pose(ground, space));
    const ConvexBody body = posed.to_pot(ground.facets);
    for (const Stop& stop : stops) {
      const Point3 out = along(stop.direction);
      stops_.push_back({stop, posed.to_tree(HalfSpace{out, body.farthest(out) - stop.depth_cm})});
    }
  }

  Climb climb() {
    Climb result;
    PoseNumbers pose = given_pose(ground_, space_);
    if (pose.z_cm < trunk_limit_cm(pose) - hair_cm) {
      pose.z_cm = trunk_limit_cm(pose);
      result.rungs.push_back(Rung::raised);
    }
    const PoseNumbers start = pose;
    turn(pose, result);
    result.at = settle(pose);
    if (std::hypot(result.at.pose.x_cm - start.x_cm, result.at.pose.y_cm - start.y_cm) > hair_cm)
      result.rungs.insert(result.rungs.begin(), Rung::shifted);
    bool within = false;
    if (fits(result.at)) within = bears_counted(result);
    if (!within) tip_less(result, within);
    if (!within && fits(result.at)) {
      hold_top(result, within);
    } else if (!within) {
      sink(result);
      shoulder(result);
      if (fits(result.at)) within = bears_counted(result);
    }
    result.fits = fits(result.at) && within;
    result.limits_broken = fits(result.at) && !within;
    if (!result.at.cuts.empty()) {
      auto place = result.rungs.begin();
      while (place != result.rungs.end() && (*place == Rung::shifted || *place == Rung::turned)) ++place;
      result.rungs.insert(place, Rung::cut);
    }
    return result;
  }

 private:
  [[nodiscard]] double trunk_limit_cm(const PoseNumbers& pose) const {
    return space_.soil_cm(pose.x_cm, pose.y_cm) + in_cm(ground_.plan.trunk_height_least);
  }

  [[nodiscard]] static bool fits(const Settled& settled) { return settled.rest_total() <= 1e-6 && !settled.corners_forbidden; }

  [[nodiscard]] bool bears(const Settled& settled, const RootPoints& points) const {
    if (ground_.plan.bare_root) return true;
    const Cutting cut = cutting(ground_, space_, settled);
    const PointShares shares = points.shares(cut);
    if (ground_.removed_most && 1 - kept_share(ground_, cut, shares) > *ground_.removed_most + 1e-9) return false;
    return !ground_.untouched_least ||
           points.leaves_untouched(*ground_.untouched_least - 1e-9, cut, shares, ground_.working_cm, ground_.plan.combed, ground_.trunk_base);
  }

  /// The same by the fine points, which the plan then reports.
  [[nodiscard]] bool bears_counted(Climb& result) const {
    if (ground_.plan.bare_root) return true;
    const Cutting cut = cutting(ground_, space_, result.at);
    PointShares shares = ground_.fine().shares(cut);
    if (!keeps_most(1 - kept_share(ground_, cut, shares), ground_.removed_most)) return false;
    CountedUntouched untouched = ground_.fine().untouched(cut, shares, ground_.working_cm, ground_.plan.combed, ground_.trunk_base, true);
    result.counted = CountedPoints{std::move(shares), std::move(untouched)};
    return keeps_least(result.counted->untouched.share, ground_.untouched_least);
  }

  /// Takes up the room on the side opposite to an excess.
  void shift_to_room(PoseNumbers& pose) const {
    const auto excess = excesses(space_, placement(ground_, pose).to_pot(ground_.facets));
    const auto shift = [&](Direction ahead, Direction behind) {
      const double sticks_out = excess[at(ahead)];
      const double room = -excess[at(behind)];
      return sticks_out > hair_cm && room > hair_cm ? std::min(sticks_out, room) : 0.0;
    };
    pose.x_cm += shift(Direction::left, Direction::right) - shift(Direction::right, Direction::left);
    pose.y_cm += shift(Direction::front, Direction::back) - shift(Direction::back, Direction::front);
  }

  void turn(PoseNumbers& pose, Climb& result) const {
    const double most = in_deg(ground_.plan.turn_most);
    if (most <= 0) return;
    const auto sticks_out = [&](PoseNumbers tried) {
      shift_to_room(tried);
      double total = 0;
      const auto excess = excesses(space_, placement(ground_, tried).to_pot(ground_.facets));
      for (const Direction direction : directions)
        if (sideways(direction)) total += std::max(0.0, excess[at(direction)]);
      return total;
    };
    double best = sticks_out(pose);
    double best_turn = 0;
    const auto consider = [&](double turn_deg) {
      PoseNumbers tried = pose;
      tried.turn_deg += turn_deg;
      const double total = sticks_out(tried);
      if (total >= best - 1e-6) return;
      best = total;
      best_turn = turn_deg;
    };
    for (double step = 1; step <= most + 1e-9 && best > hair_cm; step += 1) {
      consider(step);
      consider(-step);
    }
    if (best > hair_cm) {
      consider(most);
      consider(-most);
    }
    if (best_turn == 0) return;
    pose.turn_deg += best_turn;
    result.rungs.push_back(Rung::turned);
  }

  [[nodiscard]] std::optional<Direction> next_cut(const std::array<double, 6>& excess, const std::array<bool, 6>& done) const {
    for (const Direction direction : ground_.plan.cut_order)
      if (!done[at(direction)] && excess[at(direction)] > hair_cm) return direction;
    std::optional<Direction> largest;
    for (const Direction direction : directions) {
      if (done[at(direction)] || excess[at(direction)] <= hair_cm) continue;
      // A hair decides nothing: equal excesses keep the order right, left, back, front, up, down.
      if (!largest || excess[at(direction)] > excess[at(*largest)] + hair_cm) largest = direction;
    }
    return largest;
  }

  [[nodiscard]] Settled cut_at(const PoseNumbers& pose, double hold_up_cm) const {
    Settled settled;
    settled.pose = pose;
    const Placement placed = placement(ground_, pose);
    const Permission permission(ground_, placed, stops_);
    ConvexBody body = placed.to_pot(ground_.facets);
    for (const TreeStop& stop : stops_) {
      const HalfSpace plane = placed.to_pot(stop.plane);
      if (stop.stop.depth_cm <= 0) continue;
      settled.planes.push_back(plane);
      body = std::move(body).within(plane);
      settled.cuts.push_back({stop.stop.direction, stop.stop.depth_cm});
    }
    std::array<bool, 6> done{};
    for (;;) {
      if (body.empty()) break;
      const auto excess = excesses(space_, body);
      const auto next = next_cut(excess, done);
      if (!next) break;
      const Direction direction = *next;
      done[at(direction)] = true;
      const ConvexBody core = permission.core(body, direction);
      const Point3 out = along(direction);
      const double farthest = body.farthest(out);
      const bool straight = ground_.plan.cut_style == CutStyle::straight || !sideways(direction);
      double give = excess[at(direction)];
      if (!core.empty()) {
        give = straight ? std::min(give, farthest - core.farthest(out))
                        : give - std::max(0.0, excesses(space_, core)[at(direction)]);
        give = std::max(0.0, give);
      }
      if (direction == Direction::up) give = std::min(give, hold_up_cm);
      const double rest = excess[at(direction)] - give;
      settled.rest_cm[at(direction)] = rest > hair_cm ? rest : 0;
      if (give <= hair_cm) continue;
      settled.cuts.push_back({direction, give});
      if (straight) {
        const HalfSpace plane{out, farthest - give};
        if (sideways(direction)) settled.planes.push_back(plane);
        body = std::move(body).within(plane);
      } else {
        for (const HalfSpace& plane : space_.wall_planes(direction, rest)) body = std::move(body).within(plane);
      }
    }
    settled.remaining = std::move(body);
    return settled;
  }

  /// Moves away from what can't give until nothing is left to move for.
  [[nodiscard]] Settled settle(PoseNumbers pose, double hold_up_cm = std::numeric_limits<double>::infinity(),
                               const RootPoints* points = nullptr) const {
    if (points == nullptr) points = &ground_.coarse;
    shift_to_room(pose);
    Settled settled = cut_at(pose, hold_up_cm);
    for (int round = 0; round < 12; ++round) {
      std::array<double, 6> needs = settled.rest_cm;
      const bool at_rest = needs[at(Direction::right)] + needs[at(Direction::left)] + needs[at(Direction::back)] +
                               needs[at(Direction::front)] + needs[at(Direction::down)] <= hair_cm;
      if (at_rest) {
        const Placement placed = placement(ground_, pose);
        const Permission permission(ground_, placed, stops_);
        if (permission.unlimited()) break;
        Settled shouldered = settled;
        shouldered.rise_cm = settled.rest_cm[at(Direction::up)];
        needs = corner_needs(space_, permission, placed, shouldered, *points);
        settled.corners_forbidden = std::ranges::any_of(needs, [](double need) { return need > hair_cm; });
        if (!settled.corners_forbidden) break;
      }
      if (!give_way(pose, needs)) break;
      pose.z_cm = std::max(pose.z_cm, trunk_limit_cm(pose));
      settled = cut_at(pose, hold_up_cm);
      settled.corners_forbidden = at_rest;
    }
    return settled;
  }

  /// True if the pose was moved.
  [[nodiscard]] static bool give_way(PoseNumbers& pose, const std::array<double, 6>& needs) {
    const PoseNumbers before = pose;
    const auto away = [&](Direction ahead, Direction behind) {
      const double from_ahead = needs[at(ahead)] > hair_cm ? needs[at(ahead)] : 0;
      const double from_behind = needs[at(behind)] > hair_cm ? needs[at(behind)] : 0;
      return from_ahead > 0 && from_behind > 0 ? 0.0 : from_behind - from_ahead;
    };
    pose.x_cm += away(Direction::right, Direction::left);
    pose.y_cm += away(Direction::back, Direction::front);
    if (needs[at(Direction::down)] > hair_cm) pose.z_cm += needs[at(Direction::down)];
    return pose.x_cm != before.x_cm || pose.y_cm != before.y_cm || pose.z_cm != before.z_cm;
  }

  /// The largest smaller tip that will do; where none will, the one that leaves least over.
  void tip_less(Climb& result, bool& within) const {
    const double given = result.at.pose.tip_deg;
    const double least = ground_.plan.tip_least ? in_deg(*ground_.plan.tip_least) : 0;
    if (given <= least + 1e-9) return;
    const PoseNumbers start = given_with_turn(result.at.pose);
    const auto good = [&](double tip_deg, Settled& settled) {
      PoseNumbers pose = start;
      pose.tip_deg = tip_deg;
      pose.z_cm = std::max(pose.z_cm, trunk_limit_cm(pose));
      settled = settle(pose);
      return fits(settled) && bears(settled, ground_.coarse);
    };
    Settled best = result.at;
    bool found = false;
    double above = given;
    for (double tip_deg = std::max(least, given - 1);; tip_deg = std::max(least, tip_deg - 1)) {
      Settled tried;
      if (good(tip_deg, tried)) {
        double low = tip_deg;
        best = tried;
        for (int i = 0; i < 6; ++i) {
          const double middle = (low + above) / 2;
          if (good(middle, tried)) {
            low = middle;
            best = tried;
          } else {
            above = middle;
          }
        }
        found = true;
        break;
      }
      if (!tried.corners_forbidden && tried.rest_total() < best.rest_total() - 1e-6) best = tried;
      if (tip_deg <= least) break;
      above = tip_deg;
    }
    if (best.pose.tip_deg < given) {
      result.rungs.push_back(Rung::tipped_less);
      result.at = std::move(best);
      result.counted.reset();
    }
    if (found) within = bears_counted(result);
  }

  /// The pose as given, with the turn the second rung chose.
  [[nodiscard]] PoseNumbers given_with_turn(const PoseNumbers& reached) const {
    PoseNumbers pose = given_pose(ground_, space_);
    pose.turn_deg = reached.turn_deg;
    return pose;
  }

  void sink(Climb& result) const {
    const double rest = result.at.rest_cm[at(Direction::up)];
    const double room = result.at.pose.z_cm - trunk_limit_cm(result.at.pose);
    if (rest <= hair_cm || room <= hair_cm) return;
    PoseNumbers pose = result.at.pose;
    pose.z_cm -= std::min(rest, room);
    const Settled sunk = settle(pose);
    if (sunk.rest_total() >= result.at.rest_total() - 1e-9) return;
    result.at = sunk;
    result.counted.reset();
    result.rungs.push_back(Rung::sunk);
  }

  /// True if what stands over the soil keeps to the slope of a shoulder.
  [[nodiscard]] bool gentle(const Settled& settled) const {
    return std::ranges::all_of(settled.remaining.corners(), [&](const Point3& p) {
      const double over = p.z - space_.soil_cm(p.x, p.y);
      return p.z <= space_.highest_cm() + hair_cm || over <= hair_cm || over <= space_.shoulder_limit_cm(p.x, p.y) + 1e-6;
    });
  }

  void shoulder(Climb& result) const {
    Settled& settled = result.at;
    const double rise = settled.rest_cm[at(Direction::up)];
    if (rise <= hair_cm || settled.rest_total() > rise + 1e-6 || settled.corners_forbidden) return;
    if (!gentle(settled)) {
      result.shoulder_too_steep = true;
      return;
    }
    settled.rise_cm = rise;
    settled.rest_cm[at(Direction::up)] = 0;
    result.counted.reset();
    result.rungs.push_back(Rung::shoulder);
  }

  /// Everything fits, but the group does not bear so much: leave more standing as a shoulder.
  void hold_top(Climb& result, bool& within) const {
    const auto up = std::ranges::find(result.at.cuts, Direction::up, &CutNumbers::direction);
    if (up == result.at.cuts.end()) return;
    const auto good = [&](double hold_cm, Settled& settled) {
      settled = settle(result.at.pose, hold_cm);
      const double rise = settled.rest_cm[at(Direction::up)];
      if (settled.rest_total() > rise + 1e-6 || settled.corners_forbidden || !gentle(settled)) return false;
      settled.rise_cm = rise;
      settled.rest_cm[at(Direction::up)] = 0;
      return bears(settled, ground_.coarse);
    };
    Settled best;
    if (!good(0, best)) return;
    double low = 0;
    double high = up->depth_cm;
    for (int i = 0; i < 7; ++i) {
      Settled tried;
      const double middle = (low + high) / 2;
      if (good(middle, tried)) {
        low = middle;
        best = tried;
      } else {
        high = middle;
      }
    }
    const auto left = std::ranges::find(best.cuts, Direction::up, &CutNumbers::direction);
    // Nothing at all needs to come off there, and so little can't.
    if (left != best.cuts.end() && left->depth_cm < least_workable_cm) good(0, best);
    result.at = std::move(best);
    result.counted.reset();
    result.rungs.push_back(Rung::shoulder);
    within = bears_counted(result);
  }

  const PlanGround& ground_;
  const AllowedSpace& space_;
  std::vector<TreeStop> stops_;
};

}  // namespace

PlanGround::PlanGround(const RootMassPlan& given, std::size_t fine_points, std::size_t coarse_points, int facets_per_quadrant)
    : plan(given),
      block(given.block),
      trunk_base{0, 0, block.height_cm()},
      working_cm(given.working_depth ? in_cm(*given.working_depth) : std::clamp(0.03 * block.length_cm(), 0.3, 2.0)),
      untouched_least(given.untouched_least ? given.untouched_least : group_defaults(given.group).untouched_least),
      removed_most(given.removed_most ? given.removed_most : group_defaults(given.group).removed_most),
      per_quadrant(facets_per_quadrant),
      facets(block.facets(facets_per_quadrant)),
      coarse(block, coarse_points, 2) {
  if (fine_points > coarse_points) finer_.emplace(block, fine_points, 1);
  if (given.trunk_base) trunk_base = {in_cm(given.trunk_base->right), in_cm(given.trunk_base->back), in_cm(given.trunk_base->up)};
}

namespace {

double as_told(double share) { return std::round(share * 1000); }

}  // namespace

bool keeps_most(double share, std::optional<double> most) { return !most || as_told(share) <= as_told(*most); }

bool keeps_least(double share, std::optional<double> least) { return !least || as_told(share) >= as_told(*least); }

double Settled::rest_total() const {
  double total = 0;
  for (const double rest : rest_cm) total += rest;
  return total;
}

PoseNumbers given_pose(const PlanGround& ground, const AllowedSpace& space) {
  const Pose& pose = ground.plan.pose;
  PoseNumbers numbers{in_deg(pose.turn), in_deg(pose.tip), in_deg(pose.tip_toward), 0, 0, 0};
  // The middle of the box comes to stand over the middle of the pot.
  const Placement posed(numbers.turn_deg, numbers.tip_deg, numbers.tip_toward_deg, ground.trunk_base, {});
  const Point3 middle = posed.to_pot(Point3{0, 0, ground.block.height_cm() / 2});
  numbers.x_cm = pose.right ? in_cm(*pose.right) : -middle.x;
  numbers.y_cm = pose.back ? in_cm(*pose.back) : -middle.y;
  numbers.z_cm = pose.trunk_base ? in_cm(*pose.trunk_base)
                                 : space.soil_cm(numbers.x_cm, numbers.y_cm) + in_cm(ground.plan.trunk_height_least);
  return numbers;
}

Placement placement(const PlanGround& ground, const PoseNumbers& pose) {
  return {pose.turn_deg, pose.tip_deg, pose.tip_toward_deg, ground.trunk_base, {pose.x_cm, pose.y_cm, pose.z_cm}};
}

std::array<double, 6> excesses(const AllowedSpace& space, const ConvexBody& posed) {
  if (posed.empty()) {
    std::array<double, 6> nothing{};
    nothing.fill(nowhere_cm);
    return nothing;
  }
  const double low = space.lowest_cm();
  const double high = space.highest_cm();
  double top = nowhere_cm;
  double underside = -nowhere_cm;
  double right = nowhere_cm, left = nowhere_cm, back = nowhere_cm, front = nowhere_cm;
  for (const Point3& p : posed.corners()) {
    if (p.z > top) top = p.z;
    if (p.z < underside) underside = p.z;
    if (p.z < low || p.z > high) continue;
    const auto [reach_x, reach_y] = space.reaches_cm(p.z);
    if (p.x - reach_x > right) right = p.x - reach_x;
    if (-p.x - reach_x > left) left = -p.x - reach_x;
    if (p.y - reach_y > back) back = p.y - reach_y;
    if (-p.y - reach_y > front) front = -p.y - reach_y;
  }
  std::array<double, 6> most{right, left, back, front, top - high, low - underside};
  posed.edges_at(low, high, [&](const Point3& p) {
    const auto [reach_x, reach_y] = space.reaches_cm(p.z);
    most[0] = std::max(most[0], p.x - reach_x);
    most[1] = std::max(most[1], -p.x - reach_x);
    most[2] = std::max(most[2], p.y - reach_y);
    most[3] = std::max(most[3], -p.y - reach_y);
  });
  return most;
}

Face nearest_face(const Placement& placement, Direction direction) {
  Face nearest = Face::top;
  double best = -2;
  for (const Face face : faces) {
    const double agrees = dot(placement.rotated(RootBlockBody::outward(face)), along(direction));
    if (agrees <= best + 1e-9) continue;
    best = agrees;
    nearest = face;
  }
  return nearest;
}

OutsideShares outside_shares(const PlanGround& ground, const AllowedSpace& space, const PoseNumbers& pose) {
  const Placement placed = placement(ground, pose);
  const Permission permission(ground, placed, {});
  std::size_t outside = 0;
  std::size_t not_permitted = 0;
  for (const Point3& in_tree : ground.fine().points()) {
    const Point3 p = placed.to_pot(in_tree);
    if (space.holds(p, 0)) continue;
    ++outside;
    if (!shaved(space, permission, in_tree, p, 0).let_go) ++not_permitted;
  }
  const double all = static_cast<double>(ground.fine().points().size());
  return {static_cast<double>(outside) / all, static_cast<double>(not_permitted) / all};
}

namespace {

/// Adds up shaved points.
class ShavedSum {
 public:
  ShavedSum(const PlanGround& ground, const Placement& placement) : ground_(ground), each_(1 / static_cast<double>(ground.fine().points().size())) {
    for (const Direction direction : directions) looking_[at(direction)] = faces_along(placement, direction);
  }
  void add(const Point3& in_tree, Direction direction) {
    double depth_cm = std::numeric_limits<double>::infinity();
    for (const Face face : looking_[at(direction)]) depth_cm = std::min(depth_cm, ground_.block.depth_behind(face, in_tree));
    ShavedNumbers& sum = sums_[at(direction)];
    sum.share += each_;
    sum.depth_cm = std::max(sum.depth_cm, depth_cm);
  }
  [[nodiscard]] const std::array<ShavedNumbers, 6>& sums() const { return sums_; }

 private:
  const PlanGround& ground_;
  double each_;
  std::array<std::vector<Face>, 6> looking_;
  std::array<ShavedNumbers, 6> sums_;
};

Direction most_exceeded_sideways(const std::array<double, 6>& beyond) {
  Direction most = Direction::right;
  for (const Direction direction : directions)
    if (sideways(direction) && beyond[at(direction)] > beyond[at(most)]) most = direction;
  return most;
}

}  // namespace

std::array<ShavedNumbers, 6> shaved_corners(const PlanGround& ground, const AllowedSpace& space, const Settled& settled) {
  const Cutting cut = cutting(ground, space, settled);
  std::array<bool, 6> is_cut{};
  for (const CutNumbers& planned : settled.cuts) is_cut[at(planned.direction)] = true;
  ShavedSum sum(ground, cut.placement);
  ground.fine().each_outside(cut, [&](const Point3& in_tree, const Point3& p) {
    if (std::ranges::any_of(cut.planes, [&](const HalfSpace& plane) { return plane.beyond(p) > 0; })) return;
    // What stands over the space or under it goes with the cuts from above and below.
    if (p.z > space.highest_cm() + cut.rise_cm || p.z < space.lowest_cm()) return;
    const std::array<double, 6> beyond = space.excesses_cm(p);
    for (const Direction direction : directions)
      if (sideways(direction) && is_cut[at(direction)] && beyond[at(direction)] > 0) return;
    sum.add(in_tree, most_exceeded_sideways(beyond));
  });
  return sum.sums();
}

std::vector<CornerCut> corner_cuts(const AllowedSpace& space, const Settled& settled) {
  std::vector<CornerCut> cuts;
  if (settled.remaining.empty()) return cuts;
  constexpr int bearings = 30;  // of a quarter
  for (int quarter = 0; quarter < 4; ++quarter) {
    CornerCut deepest{{}, least_workable_cm};
    for (int i = 1; i < bearings; ++i) {
      const double bearing = std::numbers::pi / 2 * (quarter + static_cast<double>(i) / bearings);
      const HalfSpace plane = space.touching_plane(std::cos(bearing), std::sin(bearing));
      const double depth_cm = settled.remaining.farthest(plane.normal) - plane.offset;
      if (depth_cm > deepest.depth_cm + hair_cm) deepest = {plane, depth_cm};
    }
    if (deepest.depth_cm > least_workable_cm) cuts.push_back(deepest);
  }
  return cuts;
}

std::array<ShavedNumbers, 6> corners_taken(const PlanGround& ground, const AllowedSpace& space, const Cutting& cut, std::size_t first_corner) {
  ShavedSum sum(ground, cut.placement);
  const auto corners = cut.planes.begin() + static_cast<std::ptrdiff_t>(first_corner);
  const auto takes = [](const Point3& p) { return [p](const HalfSpace& plane) { return plane.beyond(p) > 0; }; };
  for (const Point3& in_tree : ground.fine().points()) {
    const Point3 p = cut.placement.to_pot(in_tree);
    if (std::any_of(cut.planes.begin(), corners, takes(p)) || std::none_of(corners, cut.planes.end(), takes(p))) continue;
    sum.add(in_tree, most_exceeded_sideways(space.excesses_cm(p)));
  }
  return sum.sums();
}

Climb climb(const PlanGround& ground, const AllowedSpace& space, const std::vector<Stop>& stops) {
  return Ladder(ground, space, stops).climb();
}

double kept_share(const PlanGround& ground, const Cutting& cut, const PointShares& counted) {
  const auto* block = std::get_if<BlockBox>(&ground.plan.block);
  if (block == nullptr || block->form != BlockForm::box) return counted.kept;
  ConvexBody body = cut.placement.to_pot(ground.facets);
  for (const HalfSpace& plane : cut.planes) body = std::move(body).within(plane);
  if (cut.space != nullptr) {
    const AllowedSpace& space = *cut.space;
    if (!space.outlines().straight_walls() || space.outlines().turned_in() || space.outlines().at(space.lowest_cm()).inset_cm != 0) return counted.kept;
    body = std::move(body).within({{0, 0, 1}, space.highest_cm() + cut.rise_cm}).within({{0, 0, -1}, -space.lowest_cm()});
    for (const Direction direction : directions)
      if (sideways(direction))
        for (const HalfSpace& plane : space.wall_planes(direction, 0)) body = std::move(body).within(plane);
    constexpr double hair_share = 1e-9;
    const bool no_corner_shaved = std::ranges::all_of(body.corners(), [&](const Point3& p) {
      return space.holds_sideways({(1 - hair_share) * p.x, (1 - hair_share) * p.y, p.z}, 0);
    });
    if (!no_corner_shaved) return counted.kept;
  }
  // What nothing was taken off is whole: a last bit less would be litres of new mix to weigh.
  constexpr double rounding = 1e-12;
  const double share = body.volume_cm3() / ground.block.volume_cm3();
  return share > 1 - rounding ? 1 : share;
}

CountedPoints count(const PlanGround& ground, const Cutting& cut, bool list_cells) {
  CountedPoints counted{ground.fine().shares(cut), {}};
  counted.untouched = ground.fine().untouched(cut, counted.shares, ground.working_cm, ground.plan.combed, ground.trunk_base, list_cells);
  return counted;
}

Cutting cutting(const PlanGround& ground, const AllowedSpace& space, const Settled& settled) {
  return {placement(ground, settled.pose), &space, settled.rise_cm, settled.planes};
}

}  // namespace gritwright
