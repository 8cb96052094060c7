#include "gritwright/models/root_views.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>
#include <variant>

#include "gritwright/models/root_mix.hpp"
#include "root_earlier.hpp"
#include "root_points.hpp"

namespace gritwright {

namespace {

constexpr std::size_t drawn_points = 40000;
constexpr int wall_steps = 24;
constexpr int curve_steps = 24;

enum class Seen { from_side, from_above };

ViewPoint seen(const Point3& p, Seen view) { return {length_cm(p.x), length_cm(view == Seen::from_side ? p.z : p.y)}; }

/// Convex outline of points, counter-clockwise (Andrew's chain).
ViewOutline hull(std::vector<Point3> points, Seen view) {
  const auto along_of = [&](const Point3& p) { return view == Seen::from_side ? p.z : p.y; };
  std::ranges::sort(points, [&](const Point3& a, const Point3& b) { return a.x != b.x ? a.x < b.x : along_of(a) < along_of(b); });
  if (points.size() < 3) return {};
  std::vector<Point3> chain;
  const auto turn = [&](const Point3& a, const Point3& b, const Point3& c) {
    return (b.x - a.x) * (along_of(c) - along_of(a)) - (along_of(b) - along_of(a)) * (c.x - a.x);
  };
  const auto run = [&](auto begin, auto end) {
    const std::size_t start = chain.size();
    for (auto p = begin; p != end; ++p) {
      while (chain.size() >= start + 2 && turn(chain[chain.size() - 2], chain.back(), *p) <= 0) chain.pop_back();
      chain.push_back(*p);
    }
    chain.pop_back();
  };
  run(points.begin(), points.end());
  run(points.rbegin(), points.rend());
  ViewOutline outline;
  for (const Point3& p : chain) outline.push_back(seen(p, view));
  return outline;
}

ViewOutline ring(const Outline& outline) {
  ViewOutline points;
  for (const auto& [x, y] : outline.points(curve_steps)) points.push_back({length_cm(x), length_cm(y)});
  return points;
}

class Drawing {
 public:
  Drawing(const RootMassPlan& plan, const WorkedPlan& worked)
      : plan_(plan), worked_(worked), block_(plan.block), pot_(drawn_pot(plan, worked)),
        trunk_(plan.trunk_base ? Point3{in_cm(plan.trunk_base->right), in_cm(plan.trunk_base->back), in_cm(plan.trunk_base->up)}
                               : Point3{0, 0, block_.height_cm()}),
        placement_(worked.fits ? Placement(in_deg(worked.turn), in_deg(worked.tip), in_deg(worked.tip_toward), trunk_,
                                           {in_cm(worked.right), in_cm(worked.back), in_cm(worked.trunk_base)})
                               : Placement(0, 0, 0, trunk_, trunk_)) {
    if (pot_ != nullptr) space_.emplace(*pot_, plan.side_clearance, plan.below_clearance);
  }

  [[nodiscard]] RootViews views() const {
    RootViews both;
    for (RootView* view : {&both.side, &both.top}) {
      const Seen how = view == &both.side ? Seen::from_side : Seen::from_above;
      view->before = hull(placement_.to_pot(block_.facets(curve_steps)).corners(), how);
      view->kept = hull(kept(), how);
      view->untouched = untouched(how);
      view->left_before = left_before(how);
      view->trunk_base = seen(placement_.place(), how);
      view->cuts = cuts(how);
    }
    if (pot_ == nullptr) return both;
    add_side(both.side);
    add_top(both.top);
    return both;
  }

 private:
  static const Container* drawn_pot(const RootMassPlan& plan, const WorkedPlan& worked) {
    if (worked.fits) return &pot_of(plan, worked);
    const auto* present = std::get_if<AsPresentPot>(&plan.block);
    return present == nullptr ? nullptr : &present->pot;
  }

  [[nodiscard]] std::vector<Point3> kept() const {
    const double rise = in_cm(worked_.rise);
    std::vector<HalfSpace> planes;
    for (const CutPlane& plane : worked_.cut_planes) planes.push_back({{plane.right, plane.back, plane.up}, in_cm(plane.offset)});
    ConvexBody body = block_.facets(curve_steps);
    for (const HalfSpace& plane : planes) body = std::move(body).within(plane);
    body = placement_.to_pot(std::move(body));
    // In stages nothing but the cuts takes anything off.
    if (!worked_.fits) return body.corners();
    body = std::move(body).within({{0, 0, 1}, space_->highest_cm() + rise}).within({{0, 0, -1}, -space_->lowest_cm()});
    // Corners are exact where the wall leaves them; along the wall the points tell.
    std::vector<Point3> points;
    for (const Point3& corner : body.corners())
      if (space_->holds_sideways(corner, 0)) points.push_back(corner);
    for (const Point3& in_tree : block_.points(drawn_points)) {
      const bool cut_away = std::ranges::any_of(planes, [&](const HalfSpace& plane) { return plane.beyond(in_tree) > 0; });
      const Point3 p = placement_.to_pot(in_tree);
      if (!cut_away && space_->holds(p, rise)) points.push_back(p);
    }
    return points;
  }

  [[nodiscard]] std::vector<ViewRun> runs(const std::vector<Point3>& centres, Seen how) const {
    std::map<int, std::pair<double, double>> rows;
    for (const Point3& p : centres) {
      const double along = how == Seen::from_side ? p.z : p.y;
      const auto [row, fresh] = rows.try_emplace(static_cast<int>(std::floor(along / cell_cm)), p.x, p.x);
      row->second = {std::min(row->second.first, p.x), std::max(row->second.second, p.x)};
    }
    std::vector<ViewRun> found;
    for (const auto& [row, ends] : rows)
      found.push_back({length_cm(ends.first - cell_cm / 2), length_cm(ends.second + cell_cm / 2), length_cm(row * cell_cm)});
    return found;
  }

  [[nodiscard]] std::vector<ViewRun> left_before(Seen how) const {
    if (!plan_.untouched_last_time) return {};
    const EarlierPart earlier(*plan_.untouched_last_time, trunk_);
    std::vector<Point3> held;
    for (const Point3& in_tree : block_.points(drawn_points))
      if (earlier.holds(in_tree)) held.push_back(placement_.to_pot(in_tree));
    return runs(held, how);
  }

  [[nodiscard]] std::vector<ViewRun> untouched(Seen how) const {
    std::vector<Point3> centres;
    const Point3 low{-block_.length_cm() / 2, -block_.width_cm() / 2, 0};
    for (const UntouchedCell& cell : worked_.untouched)
      centres.push_back(placement_.to_pot(low + cell_cm * Point3{cell.right + 0.5, cell.back + 0.5, cell.up + 0.5}));
    return runs(centres, how);
  }

  [[nodiscard]] std::vector<ViewCut> cuts(Seen how) const {
    std::vector<ViewCut> named;
    const ConvexBody body = placement_.to_pot(block_.facets(curve_steps));
    for (const PlannedCut& cut : worked_.cuts) {
      // Back in its old pot the tree stands as its old faces say.
      const Point3 out = worked_.fits ? along(cut.direction) : RootBlockBody::outward(cut.face);
      if (std::abs(how == Seen::from_side ? out.y : out.z) > 0.5) continue;
      const Point3 farthest = *std::ranges::max_element(body.corners(), {}, [&](const Point3& p) { return dot(out, p); });
      named.push_back({cut, seen(farthest, how)});
    }
    return named;
  }

  [[nodiscard]] double half_length_cm(double height_cm) const { return space_->outlines().at(height_cm).reach_x_cm(0); }

  /// Between two heights, closed.
  [[nodiscard]] ViewOutline band(double low, double high) const {
    ViewOutline outline;
    for (int i = 0; i <= wall_steps; ++i) {
      const double z = low + (high - low) * i / wall_steps;
      outline.push_back({length_cm(half_length_cm(z)), length_cm(z)});
    }
    for (int i = wall_steps; i >= 0; --i) {
      const double z = low + (high - low) * i / wall_steps;
      outline.push_back({length_cm(-half_length_cm(z)), length_cm(z)});
    }
    return outline;
  }

  void add_side(RootView& view) const {
    const Container& pot = *pot_;
    ViewOutline wall = band(0, in_cm(pot.depth));
    // From rim to rim: the band begins at the floor on the right.
    std::ranges::rotate(wall, wall.begin() + wall_steps + 1);
    view.pot = {wall};
    const double fill = space_->highest_cm();
    if (pot.bottom_layer) view.layers.push_back(band(0, in_cm(pot.bottom_layer->thickness)));
    if (pot.top_dressing) view.layers.push_back(band(fill - in_cm(*pot.top_dressing), fill));
    const double half = half_length_cm(fill);
    constexpr int steps = 32;
    for (int i = 0; i <= steps; ++i) {
      const double x = -half + 2 * half * i / steps;
      view.soil.push_back({length_cm(x), length_cm(space_->soil_cm(x, 0))});
    }
    if (in_cm(worked_.shoulder) > 0) add_shoulder(view, half);
  }

  /// From the soil at the inner rim up to the highest kept point on either side.
  void add_shoulder(RootView& view, double half_cm) const {
    for (const double side : {-1.0, 1.0}) {
      const auto highest = std::ranges::max_element(view.kept, {}, [&](const ViewPoint& p) {
        return in_cm(p.along) + 1e-3 * side * in_cm(p.across);
      });
      if (highest == view.kept.end()) return;
      const double x = in_cm(highest->across);
      view.shoulder.push_back({{length_cm(side * half_cm), length_cm(space_->soil_cm(side * half_cm, 0))},
                               *highest,
                               {highest->across, length_cm(space_->soil_cm(x, 0))}});
    }
  }

  void add_top(RootView& view) const {
    const double fill = space_->highest_cm();
    for (const double height : {space_->outlines().rim_cm(), fill, fill / 2, 0.0}) view.pot.push_back(ring(space_->outlines().at(height)));
  }

  const RootMassPlan& plan_;
  const WorkedPlan& worked_;
  RootBlockBody block_;
  const Container* pot_;  ///< null: not known
  std::optional<AllowedSpace> space_;
  Point3 trunk_;
  Placement placement_;
};

}  // namespace

RootViews root_views(const RootMassPlan& plan, const WorkedPlan& worked) { return Drawing(plan, worked).views(); }

}  // namespace gritwright
