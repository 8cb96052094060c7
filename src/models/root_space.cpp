#include "root_space.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

namespace {

// A water fill changes lengths, a profile has none but those of its area.
double inside_length_cm(const Container& pot) {
  const PotGeometry geometry(pot);
  return 2 * PotOutlines(geometry).at(in_cm(pot.depth)).half_length_cm;
}

}  // namespace

Point3 along(Direction direction) {
  switch (direction) {
    case Direction::right: return {1, 0, 0};
    case Direction::left: return {-1, 0, 0};
    case Direction::back: return {0, 1, 0};
    case Direction::front: return {0, -1, 0};
    case Direction::up: return {0, 0, 1};
    case Direction::down: break;
  }
  return {0, 0, -1};
}

Direction opposite(Direction direction) {
  switch (direction) {
    case Direction::right: return Direction::left;
    case Direction::left: return Direction::right;
    case Direction::back: return Direction::front;
    case Direction::front: return Direction::back;
    case Direction::up: return Direction::down;
    case Direction::down: break;
  }
  return Direction::up;
}

double default_side_clearance_cm(const Container& pot) { return std::clamp(0.05 * inside_length_cm(pot), 0.5, 2.0); }
double default_below_clearance_cm(const Container& pot) { return std::clamp(0.15 * in_cm(pot.depth), 0.5, 1.5); }

AllowedSpace::AllowedSpace(const Container& pot, std::optional<Length> side_clearance, std::optional<Length> below_clearance)
    : geometry_(pot), outlines_(geometry_) {
  const double layer = pot.bottom_layer ? in_cm(pot.bottom_layer->thickness) : 0;
  lowest_cm_ = layer + (below_clearance ? in_cm(*below_clearance) : default_below_clearance_cm(pot));
  highest_cm_ = in_cm(geometry_.filled_depth());
  side_cm_ = side_clearance ? in_cm(*side_clearance) : default_side_clearance_cm(pot);
  rim_ = outlines_.at(outlines_.rim_cm());
  surface_ = outlines_.at(highest_cm_);
  core_ = core_of_all_heights();
  const Outline lowest = outlines_.at(lowest_cm_);
  if (outlines_.straight_walls() && !outlines_.turned_in() && lowest.inset_cm == 0 && highest_cm_ > lowest_cm_) {
    const double right = surface_.reach_x_cm(side_cm_);
    const double back = surface_.reach_y_cm(side_cm_);
    const double tall = highest_cm_ - lowest_cm_;
    even_reach_ = {right, back, (right - lowest.reach_x_cm(side_cm_)) / tall, (back - lowest.reach_y_cm(side_cm_)) / tall};
    even_square_ = surface_.kind == Outline::Kind::rectangle && surface_.corner_cm <= side_cm_;
  }
  find_farthest_reach();
  constexpr int steps = 32;
  const double step = (highest_cm_ - lowest_cm_) / steps;
  for (int i = 0; i < steps && step > 0; ++i) {
    for (const Direction direction : {Direction::right, Direction::back}) {
      const double low = reach_cm(direction, lowest_cm_ + step * i);
      const double high = reach_cm(direction, lowest_cm_ + step * (i + 1));
      lean_ = std::max(lean_, std::abs(high - low) / step);
    }
  }
}

void AllowedSpace::find_farthest_reach() {
  constexpr int steps = 64;
  auto& [right, back] = farthest_reach_;
  double widest_step = 0;
  std::pair<double, double> before;
  for (int i = 0; i <= steps; ++i) {
    const Outline wall = outlines_.at(lowest_cm_ + (highest_cm_ - lowest_cm_) * i / steps);
    const std::pair<double, double> here{wall.reach_x_cm(side_cm_), wall.reach_y_cm(side_cm_)};
    if (i == 0) farthest_reach_ = before = here;
    right = std::max(right, here.first);
    back = std::max(back, here.second);
    widest_step = std::max({widest_step, std::abs(here.first - before.first), std::abs(here.second - before.second)});
    before = here;
  }
  // Between two looks it goes out no farther than from one look to the next and back.
  right += widest_step;
  back += widest_step;
}

AllowedSpace::Core AllowedSpace::core_of_all_heights() const {
  constexpr int steps = 64;
  Core core;
  core.square = surface_.kind == Outline::Kind::rectangle;
  core.half_length_cm = surface_.half_length_cm;
  core.half_width_cm = surface_.half_width_cm;
  core.inset_cm = std::max(side_cm_, outlines_.turned_in() ? mouth_inset_cm : 0.0);
  // Between two looks a wall leans no more than from one look to the next and back.
  double widest_step = 0;
  double deepest_inset = 0;
  Outline before = outlines_.at(lowest_cm_);
  for (int i = 0; i <= steps; ++i) {
    const double height = lowest_cm_ + (highest_cm_ - lowest_cm_) * i / steps;
    const Outline here = outlines_.at(height);
    const Outline narrow = outlines_.mouth_above(height).value_or(here);
    core.half_length_cm = std::min({core.half_length_cm, here.half_length_cm, narrow.half_length_cm});
    core.half_width_cm = std::min({core.half_width_cm, here.half_width_cm, narrow.half_width_cm});
    core.square = core.square && here.corner_cm <= side_cm_;
    deepest_inset = std::max(deepest_inset, here.inset_cm);
    widest_step = std::max({widest_step, std::abs(here.half_length_cm - before.half_length_cm), std::abs(here.half_width_cm - before.half_width_cm)});
    before = here;
  }
  core.inset_cm += deepest_inset + widest_step;
  if (surface_.kind == Outline::Kind::superellipse) {
    for (const double share : {0.97, 0.93, 0.87, 0.8}) {
      const double other = std::pow(1 - std::pow(share, surface_.exponent), 1 / surface_.exponent);
      core.corners.emplace_back(share, other);
      core.corners.emplace_back(other, share);
    }
  }
  // A superellipse of a small exponent holds no ellipse of its own lengths.
  if (surface_.kind == Outline::Kind::superellipse && surface_.exponent < 2) core.half_length_cm = core.half_width_cm = 0;
  return core;
}

bool AllowedSpace::in_core(const Point3& p, double more_cm) const {
  const double inset = core_.inset_cm + more_cm;
  if (core_.square) return std::abs(p.x) <= core_.half_length_cm - inset && std::abs(p.y) <= core_.half_width_cm - inset;
  const double share = 1 - inset / std::min(core_.half_length_cm, core_.half_width_cm);
  if (!(share > 0)) return false;
  const double u = p.x / core_.half_length_cm;
  const double v = p.y / core_.half_width_cm;
  if (u * u + v * v <= share * share) return true;
  return std::ranges::any_of(core_.corners, [&](const auto& corner) {
    return std::abs(u) <= share * corner.first && std::abs(v) <= share * corner.second;
  });
}

Outline AllowedSpace::narrowest_between(double low_cm, double high_cm) const {
  const Outline low = outlines_.at(std::clamp(low_cm, lowest_cm_, highest_cm_));
  Outline both = outlines_.at(std::clamp(high_cm, lowest_cm_, highest_cm_));
  both.half_length_cm = std::min(both.half_length_cm, low.half_length_cm);
  both.half_width_cm = std::min(both.half_width_cm, low.half_width_cm);
  return both;
}

Outline AllowedSpace::widest_between(double low_cm, double high_cm) const {
  const Outline low = outlines_.at(std::clamp(low_cm, lowest_cm_, highest_cm_));
  Outline both = outlines_.at(std::clamp(high_cm, lowest_cm_, highest_cm_));
  both.half_length_cm = std::max(both.half_length_cm, low.half_length_cm);
  both.half_width_cm = std::max(both.half_width_cm, low.half_width_cm);
  return both;
}

bool AllowedSpace::holds_all_sideways(const Around& box, double more_cm) const {
  constexpr double hair_cm = 1e-9;
  const double level = std::sqrt(box.right * box.right + box.back * box.back);
  if (!even_reach_) return in_core(box.middle, more_cm + level);
  // An outline is symmetric and convex: with its outermost corner it holds the box.
  return narrowest_between(box.middle.z - box.up, box.middle.z + box.up)
      .holds(std::abs(box.middle.x) + box.right, std::abs(box.middle.y) + box.back, side_cm_ + more_cm + hair_cm);
}

bool AllowedSpace::misses_all_sideways(const Around& box) const {
  constexpr double hair_cm = 1e-9;
  const double right = std::max(0.0, std::abs(box.middle.x) - box.right);
  const double back = std::max(0.0, std::abs(box.middle.y) - box.back);
  if (right > farthest_reach_.first + hair_cm || back > farthest_reach_.second + hair_cm) return true;
  return even_reach_ && !widest_between(box.middle.z - box.up, box.middle.z + box.up).holds(right, back, side_cm_ - hair_cm);
}

bool AllowedSpace::holds_sideways(const Point3& p, double more_cm) const {
  if (even_square_ && p.z >= lowest_cm_ && side_cm_ + more_cm >= surface_.corner_cm) {
    const auto [half_length, half_width] = outlines_.half_sides_cm(std::min(p.z, highest_cm_));
    return std::abs(p.x) <= half_length - (side_cm_ + more_cm) && std::abs(p.y) <= half_width - (side_cm_ + more_cm);
  }
  // With straight walls a look at its own height costs no more.
  if (!even_reach_ && p.z >= lowest_cm_ && in_core(p, std::max(0.0, more_cm))) return true;
  const double height = std::min(p.z, highest_cm_);
  if (!outlines_.at(height).holds(p.x, p.y, side_cm_ + more_cm)) return false;
  if (!outlines_.turned_in()) return true;
  const auto mouth = outlines_.mouth_above(height);
  return !mouth || mouth->holds(p.x, p.y, mouth_inset_cm + more_cm);
}

bool AllowedSpace::holds(const Point3& p, double rise_cm) const {
  return p.z >= lowest_cm_ && p.z <= highest_cm_ + rise_cm && holds_sideways(p, 0);
}

double AllowedSpace::reach_cm(Direction direction, double height_cm) const {
  const auto [right, back] = reaches_cm(height_cm);
  return direction == Direction::right || direction == Direction::left ? right : back;
}

std::pair<double, double> AllowedSpace::curved_reaches_cm(double height_cm) const {
  const Outline wall = outlines_.at(height_cm);
  double right = wall.reach_x_cm(side_cm_);
  double back = wall.reach_y_cm(side_cm_);
  if (const auto mouth = outlines_.mouth_above(height_cm)) {
    right = std::min(right, mouth->reach_x_cm(mouth_inset_cm));
    back = std::min(back, mouth->reach_y_cm(mouth_inset_cm));
  }
  return {right, back};
}

double AllowedSpace::excess_cm(Direction direction, const Point3& p) const {
  if (direction == Direction::up) return p.z - highest_cm_;
  if (direction == Direction::down) return lowest_cm_ - p.z;
  return dot(along(direction), p) - reach_cm(direction, p.z);
}

std::array<double, 6> AllowedSpace::excesses_cm(const Point3& p) const {
  const auto [right, back] = reaches_cm(p.z);
  return {p.x - right, -p.x - right, p.y - back, -p.y - back, p.z - highest_cm_, lowest_cm_ - p.z};
}

double AllowedSpace::mound_cm(double x_cm, double y_cm) const {
  const auto& mound = geometry_.container().mound;
  if (!mound) return 0;
  const double out = surface_.gauge(x_cm, y_cm);
  if (out >= 1) return 0;
  const double rise = in_cm(mound->rise);
  switch (mound->form) {
    case MoundForm::cone: return rise * (1 - out);
    case MoundForm::ellipsoid: return rise * std::sqrt(1 - out * out);
    case MoundForm::paraboloid: break;
  }
  return rise * (1 - out * out);
}

double AllowedSpace::shoulder_limit_cm(double x_cm, double y_cm) const {
  return steepest_shoulder * rim_.depth_inside_cm(x_cm, y_cm);
}

std::vector<HalfSpace> AllowedSpace::wall_planes(Direction direction, double rest_cm) const {
  // The reach bulges outward, so chords between neighbouring heights, taken as planes, keep what a smooth cut would keep but for
  // a hair; a single plane is exact for a straight wall.
  const int steps = outlines_.straight_walls() && !outlines_.turned_in() && outlines_.at(lowest_cm_).inset_cm == 0 ? 1 : 16;
  std::vector<HalfSpace> planes;
  const Point3 out = along(direction);
  const double step = (highest_cm_ - lowest_cm_) / steps;
  for (int i = 0; i < steps; ++i) {
    const double height = lowest_cm_ + step * i;
    const double low = reach_cm(direction, height);
    const double slope = (reach_cm(direction, height + step) - low) / step;
    planes.push_back({out - Point3{0, 0, slope}, low - slope * height + rest_cm});
  }
  return planes;
}

HalfSpace AllowedSpace::touching_plane(double right, double back) const {
  const auto reach = [&](double height) {
    const double wall = outlines_.at(height).reach_toward_cm(right, back, side_cm_);
    const auto mouth = outlines_.mouth_above(height);
    return mouth ? std::min(wall, mouth->reach_toward_cm(right, back, mouth_inset_cm)) : wall;
  };
  constexpr int steps = 32;
  const double slope = (reach(highest_cm_) - reach(lowest_cm_)) / (highest_cm_ - lowest_cm_);
  double offset = reach(lowest_cm_) - slope * lowest_cm_;
  for (int i = 1; i <= steps; ++i) {
    const double height = lowest_cm_ + (highest_cm_ - lowest_cm_) * i / steps;
    offset = std::max(offset, reach(height) - slope * height);
  }
  const double norm = std::hypot(1, slope);
  return {1 / norm * Point3{right, back, -slope}, offset / norm};
}

Placement::Placement(double turn_deg, double tip_deg, double tip_toward_deg, Point3 trunk_base, Point3 place)
    : trunk_base_(trunk_base), place_(place) {
  const double turn = turn_deg * degrees_to_radians;
  const double tip = tip_deg * degrees_to_radians;
  const double toward = tip_toward_deg * degrees_to_radians;
  // Quarter turns come out exact, so that an untipped block stays square to the pot.
  const auto tidy = [](double value) { return std::abs(value) < 1e-15 ? 0.0 : value; };
  const double ct = tidy(std::cos(turn));
  const double st = tidy(std::sin(turn));
  const double c = tidy(std::cos(tip));
  const double s = tidy(std::sin(tip));
  const Point3 axis{-tidy(std::sin(toward)), tidy(std::cos(toward)), 0};
  // Rodrigues' rotation about the level axis square to the bearing, after the turn.
  const auto tipped = [&](Point3 v) { return c * v + s * cross(axis, v) + (1 - c) * dot(axis, v) * axis; };
  const Point3 x = tipped({ct, st, 0});
  const Point3 y = tipped({-st, ct, 0});
  const Point3 z = tipped({0, 0, 1});
  rows_ = {Point3{x.x, y.x, z.x}, Point3{x.y, y.y, z.y}, Point3{x.z, y.z, z.z}};
}

HalfSpace Placement::to_pot(const HalfSpace& half) const {
  const Point3 normal = rotated(half.normal);
  return {normal, half.offset + dot(normal, place_) - dot(half.normal, trunk_base_)};
}

HalfSpace Placement::to_tree(const HalfSpace& half) const {
  const Point3 normal = turned_back(half.normal);
  return {normal, half.offset + dot(normal, trunk_base_) - dot(half.normal, place_)};
}

ConvexBody Placement::to_pot(ConvexBody body) const {
  for (Point3& p : body.corners()) p = to_pot(p);
  return body;
}

}  // namespace gritwright
