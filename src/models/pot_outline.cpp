#include "gritwright/models/pot_outline.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>

namespace gritwright {

/// Points of the first quadrant by the normals of a circle, and t^n. Only away from the outline is the table good enough to decide by.
struct SoftOutline {
  struct Touch {
    double u, v;              ///< the point
    double along_u, along_v;  ///< its normal, before the lengths stretch it
  };
  std::array<Touch, 17> touches{};
  std::vector<double> powers;
  double power_error = 0;

  explicit SoftOutline(double n) {
    for (std::size_t i = 0; i < touches.size(); ++i) {
      const double angle = std::numbers::pi / 2 * static_cast<double>(i) / static_cast<double>(touches.size() - 1);
      const double c = i + 1 == touches.size() ? 0 : std::cos(angle);
      const double s = std::sin(angle);
      const double in_u = std::pow(c, n / (n - 1));
      const double in_v = std::pow(s, n / (n - 1));
      touches[i] = {std::pow(in_u / (in_u + in_v), 1 / n), std::pow(in_v / (in_u + in_v), 1 / n), c, s};
    }
    constexpr int steps = 1024;
    for (int i = 0; i <= steps; ++i) powers.push_back(std::pow(static_cast<double>(i) / steps, n));
    // Of a chord of a curve that bends upward, n >= 2.
    power_error = n * (n - 1) / (8.0 * steps * steps);
  }
  [[nodiscard]] double power(double t) const {
    const double place = t * static_cast<double>(powers.size() - 1);
    const auto step = std::min(static_cast<std::size_t>(place), powers.size() - 2);
    return powers[step] + (place - static_cast<double>(step)) * (powers[step + 1] - powers[step]);
  }
};

namespace {

using std::numbers::pi;
using std::numbers::sqrt2;
using std::numbers::sqrt3;

constexpr int profile_steps = 512;
constexpr int support_angles = 17;
constexpr double least_tabled_exponent = 2;

double square(double value) { return value * value; }

/// Largest projection of (x, y), folded into the first quadrant, on the flats' normals.
double hexagon_reach(double x, double y) { return std::max(y, sqrt3 / 2 * x + y / 2); }
double octagon_reach(double x, double y) { return std::max({x, y, (x + y) / sqrt2}); }

/// Of a point of the first quadrant inside the ellipse, by the centres of curvature.
Outline::Nearest nearest_on_ellipse(double x, double y, double a, double b) {
  double tx = 1 / sqrt2;
  double ty = 1 / sqrt2;
  for (int i = 0; i < 6; ++i) {
    const double centre_x = (a * a - b * b) * tx * tx * tx / a;
    const double centre_y = (b * b - a * a) * ty * ty * ty / b;
    const double radius = std::hypot(a * tx - centre_x, b * ty - centre_y);
    const double away = std::hypot(x - centre_x, y - centre_y);
    if (away < 1e-12) break;
    tx = std::clamp(((x - centre_x) * radius / away + centre_x) / a, 0.0, 1.0);
    ty = std::clamp(((y - centre_y) * radius / away + centre_y) / b, 0.0, 1.0);
    const double length = std::hypot(tx, ty);
    tx /= length;
    ty /= length;
  }
  const double steep = std::hypot(tx / a, ty / b);
  return {std::hypot(x - a * tx, y - b * ty), tx / a / steep, ty / b / steep};
}

/// Support of a superellipse and its change with the angle, by the conjugate exponent.
struct Support {
  double reach;
  double slope;
};
Support superellipse_support(double c, double s, double a, double b, double q) {
  const double u = a * c;
  const double v = b * s;
  const bool lengthwise = u >= v;
  const double large = lengthwise ? u : v;
  const double power = std::pow((lengthwise ? v : u) / large, q);
  const double sum = 1 + power;
  const double reach = large * std::pow(sum, 1 / q);
  if (c <= 0 || s <= 0) return {reach, 0};
  const double of_u = lengthwise ? 1 : power;
  const double of_v = lengthwise ? power : 1;
  return {reach, reach * (of_v * c / s - of_u * s / c) / sum};
}

double conjugate(double n) { return n > 1 + 1e-9 ? n / (n - 1) : 1e9; }

/// Inside a convex outline the distance to it is the least distance to a line that touches it.
Outline::Nearest nearest_on_superellipse(double x, double y, double a, double b, double n) {
  static const auto angles = [] {
    std::array<std::pair<double, double>, support_angles> table;
    for (int i = 0; i < support_angles; ++i) {
      const double angle = pi / 2 * i / (support_angles - 1);
      table[static_cast<std::size_t>(i)] = {i + 1 == support_angles ? 0.0 : std::cos(angle), std::sin(angle)};
    }
    return table;
  }();
  const double q = conjugate(n);
  Outline::Nearest best{std::numeric_limits<double>::infinity(), 0, 0};
  double best_slope = 0;
  int best_index = 0;
  const auto look = [&](double c, double s) {
    const Support support = superellipse_support(c, s, a, b, q);
    const double gap = support.reach - x * c - y * s;
    const double slope = support.slope + x * s - y * c;
    if (gap < best.depth_cm) {
      best = {gap, c, s};
      best_slope = slope;
      return std::pair{true, slope};
    }
    return std::pair{false, slope};
  };
  for (int i = 0; i < support_angles; ++i)
    if (look(angles[static_cast<std::size_t>(i)].first, angles[static_cast<std::size_t>(i)].second).first) best_index = i;
  // Between the best angle and its neighbour on the falling side the slope changes its sign.
  const double step = pi / 2 / (support_angles - 1);
  double low = std::max(0.0, step * (best_slope > 0 ? best_index - 1 : best_index));
  double high = std::min(pi / 2, step * (best_slope > 0 ? best_index : best_index + 1));
  for (int i = 0; i < 16; ++i) {
    const double middle = (low + high) / 2;
    (look(std::cos(middle), std::sin(middle)).second > 0 ? high : low) = middle;
  }
  return best;
}

/// The same from the tables: the touching lines need no powers, and few steps lead from the best of them to the nearest.
Outline::Nearest nearest_by_table(double x, double y, double a, double b, double n, const SoftOutline& soft) {
  struct Line {
    double gap, slope, c, s;
  };
  const auto line = [&](std::size_t i) {
    const SoftOutline::Touch& touch = soft.touches[i];
    const double along_x = touch.along_u / a;
    const double along_y = touch.along_v / b;
    const double long_by = std::sqrt(along_x * along_x + along_y * along_y);
    const double c = along_x / long_by;
    const double s = along_y / long_by;
    const double dx = a * touch.u - x;
    const double dy = b * touch.v - y;
    return Line{dx * c + dy * s, dy * c - dx * s, c, s};
  };
  std::size_t best = 0;
  Line low = line(0);
  for (std::size_t i = 1; i < soft.touches.size(); ++i) {
    const Line here = line(i);
    if (here.gap >= low.gap) continue;
    low = here;
    best = i;
  }
  Outline::Nearest nearest{low.gap, low.c, low.s};
  // Where the gap still falls there is a neighbour beyond, on whose side it rises.
  const bool falls_ahead = low.slope < 0;
  if (falls_ahead ? best + 1 == soft.touches.size() : best == 0 || low.slope == 0) return nearest;
  const Line other = line(falls_ahead ? best + 1 : best - 1);
  double from = std::atan2(low.s, low.c);
  double from_slope = low.slope;
  double to = std::atan2(other.s, other.c);
  double to_slope = other.slope;
  if ((from_slope < 0) == (to_slope < 0)) return nearest_on_superellipse(x, y, a, b, n);
  const double q = conjugate(n);
  constexpr double flat_cm = 1e-7;
  for (int i = 0; i < 12; ++i) {
    const double middle = (from * to_slope - to * from_slope) / (to_slope - from_slope);
    const double c = std::cos(middle);
    const double s = std::sin(middle);
    const Support support = superellipse_support(c, s, a, b, q);
    const double gap = support.reach - x * c - y * s;
    const double slope = support.slope + x * s - y * c;
    if (gap < nearest.depth_cm) nearest = {gap, c, s};
    if (std::abs(slope) < flat_cm) break;
    // The end that stays is weighed down, so that it can't stay for long (the Illinois rule).
    if ((slope < 0) == (to_slope < 0)) {
      from_slope /= 2;
    } else {
      from = to;
      from_slope = to_slope;
    }
    to = middle;
    to_slope = slope;
  }
  return nearest;
}

}  // namespace

double Outline::gauge(double x_cm, double y_cm) const {
  const double x = std::abs(x_cm);
  const double y = std::abs(y_cm);
  switch (kind) {
    case Kind::rectangle: return std::max(x / half_length_cm, y / half_width_cm);
    case Kind::ellipse: return std::hypot(x / half_length_cm, y / half_width_cm);
    case Kind::hexagon: return hexagon_reach(x, y) / half_length_cm;
    case Kind::octagon: return octagon_reach(x, y) / half_length_cm;
    case Kind::superellipse: break;
  }
  return std::pow(std::pow(x / half_length_cm, exponent) + std::pow(y / half_width_cm, exponent), 1 / exponent);
}

Outline::Nearest Outline::curve_depth(double x_cm, double y_cm) const {
  const double x = std::abs(x_cm);
  const double y = std::abs(y_cm);
  if (half_length_cm <= 0 || half_width_cm <= 0) return {-std::hypot(x, y), 1, 0};
  if (kind == Kind::ellipse && half_length_cm == half_width_cm) {
    const double out = std::hypot(x, y);
    return out > 0 ? Nearest{half_length_cm - out, x / out, y / out} : Nearest{half_length_cm, 1, 0};
  }
  const double outside = gauge(x, y);
  if (outside > 1) {
    const double u = x / half_length_cm / half_length_cm;
    const double v = y / half_width_cm / half_width_cm;
    return {(1 - outside) * std::min(half_length_cm, half_width_cm), u / std::hypot(u, v), v / std::hypot(u, v)};
  }
  if (kind == Kind::ellipse) return nearest_on_ellipse(x, y, half_length_cm, half_width_cm);
  if (soft != nullptr) return nearest_by_table(x, y, half_length_cm, half_width_cm, exponent, *soft);
  return nearest_on_superellipse(x, y, half_length_cm, half_width_cm, exponent);
}

Outline::Nearest Outline::nearest(double x_cm, double y_cm) const {
  Nearest found = curve_depth(x_cm, y_cm);
  found.depth_cm -= inset_cm;
  found.right = std::copysign(found.right, x_cm);
  found.back = std::copysign(found.back, y_cm);
  return found;
}

double Outline::support_cm(double right, double back) const {
  const double c = std::abs(right);
  const double s = std::abs(back);
  const double reach = kind == Kind::ellipse ? std::hypot(half_length_cm * c, half_width_cm * s)
                                             : superellipse_support(c, s, half_length_cm, half_width_cm, conjugate(exponent)).reach;
  return reach - inset_cm;
}

double Outline::depth_inside_cm(double x_cm, double y_cm) const {
  const double x = std::abs(x_cm);
  const double y = std::abs(y_cm);
  double depth = 0;
  switch (kind) {
    case Kind::rectangle: {
      const double beyond_x = x - (half_length_cm - corner_cm);
      const double beyond_y = y - (half_width_cm - corner_cm);
      depth = corner_cm - std::hypot(std::max(beyond_x, 0.0), std::max(beyond_y, 0.0)) -
              std::min(std::max(beyond_x, beyond_y), 0.0);
      break;
    }
    case Kind::hexagon: depth = half_length_cm - hexagon_reach(x, y); break;
    case Kind::octagon: depth = half_length_cm - octagon_reach(x, y); break;
    case Kind::ellipse:
    case Kind::superellipse: depth = curve_depth(x, y).depth_cm; break;
  }
  return depth - inset_cm;
}

bool Outline::holds(double x_cm, double y_cm, double inset) const {
  const double x = std::abs(x_cm);
  const double y = std::abs(y_cm);
  const double all = inset + inset_cm;
  if (kind == Kind::rectangle && all >= corner_cm) return x <= half_length_cm - all && y <= half_width_cm - all;
  if (kind != Kind::ellipse && kind != Kind::superellipse) return depth_inside_cm(x, y) >= inset;
  if (x > half_length_cm - all || y > half_width_cm - all) return false;
  const double least = exponent >= 2 || kind == Kind::ellipse ? std::min(half_length_cm, half_width_cm)
                                                               : half_length_cm * half_width_cm / std::hypot(half_length_cm, half_width_cm);
  const double most = kind == Kind::ellipse || exponent <= 2 ? std::max(half_length_cm, half_width_cm) : std::hypot(half_length_cm, half_width_cm);
  if (least <= 0) return false;
  if (soft != nullptr) {
    const double sum = soft->power(x / half_length_cm) + soft->power(y / half_width_cm);
    const double hair = 4 * soft->power_error;
    if (all < least && sum <= soft->power(1 - all / least) - hair) return true;
    if (all < most && sum > soft->power(1 - all / most) + hair) return false;
  }
  const double here = gauge(x, y);
  if (here <= 1 - all / least) return true;
  if (here > 1 - all / most) return false;
  // The line that touches the scaled outline at the point, moved out to touch the outline itself, is never nearer than the outline.
  const double n = kind == Kind::ellipse ? 2 : exponent;
  const double u = std::pow(x / half_length_cm / here, n - 1) / half_length_cm;
  const double v = std::pow(y / half_width_cm / here, n - 1) / half_width_cm;
  if ((1 - here) / std::hypot(u, v) < all - 1e-9) return false;
  return curve_depth(x, y).depth_cm >= all;
}

double Outline::reach_x_cm(double inset) const {
  const double all = inset + inset_cm;
  if (kind == Kind::hexagon) return (half_length_cm - all) * 2 / sqrt3;
  return half_length_cm - all;
}

double Outline::reach_y_cm(double inset) const { return half_width_cm - inset - inset_cm; }

std::vector<std::pair<double, double>> Outline::points(int per_quadrant) const {
  std::vector<std::pair<double, double>> ring;
  const double a = half_length_cm - inset_cm;
  const double b = half_width_cm - inset_cm;
  const auto regular = [&](int corners, double first_angle) {
    const double radius = a / std::cos(pi / corners);
    for (int i = 0; i < corners; ++i) {
      const double angle = first_angle + 2 * pi * i / corners;
      ring.emplace_back(radius * std::cos(angle), radius * std::sin(angle));
    }
  };
  switch (kind) {
    case Kind::hexagon: regular(6, 0); return ring;
    case Kind::octagon: regular(8, pi / 8); return ring;
    case Kind::rectangle: {
      const double corner = std::max(0.0, corner_cm - inset_cm);
      const int steps = corner_cm > 0 ? 8 : 0;
      for (int quadrant = 0; quadrant < 4; ++quadrant) {
        const double sx = quadrant == 0 || quadrant == 3 ? 1 : -1;
        const double sy = quadrant < 2 ? 1 : -1;
        for (int i = 0; i <= steps; ++i) {
          const double angle = pi / 2 * (quadrant + (steps > 0 ? static_cast<double>(i) / steps : 0.5));
          const double out_x = steps > 0 ? corner * std::cos(angle) : sx * corner;
          const double out_y = steps > 0 ? corner * std::sin(angle) : sy * corner;
          ring.emplace_back(sx * (a - corner) + out_x, sy * (b - corner) + out_y);
        }
      }
      return ring;
    }
    case Kind::ellipse:
    case Kind::superellipse: break;
  }
  const double power = kind == Kind::ellipse ? 1 : 2 / exponent;
  for (int i = 0; i < 4 * per_quadrant; ++i) {
    const double angle = pi / 2 * i / per_quadrant;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    // On the axes the power would lift a rounding error.
    const bool on_axis = i % per_quadrant == 0;
    const bool on_x = i % (2 * per_quadrant) == 0;
    const double u = on_axis ? (on_x ? 1 : 0) : std::pow(std::abs(c), power);
    const double v = on_axis ? (on_x ? 0 : 1) : std::pow(std::abs(s), power);
    ring.emplace_back(std::copysign(a * u, c), std::copysign(b * v, s));
  }
  return ring;
}

PotOutlines::PotOutlines(const PotGeometry& pot)
    : depth_cm_(in_cm(pot.container().depth)), fillet_cm_(in_cm(pot.container().fillet_radius)), shape_(pot.container().shape) {
  const Container& container = pot.container();
  const Section floor = pot.section_at(Depth{});
  const Section middle = pot.section_at(container.depth * 0.5);
  const Section rim = pot.section_at(container.depth);
  length_floor_ = in_cm(floor.length) / 2;
  width_floor_ = in_cm(floor.width) / 2;
  length_rim_ = in_cm(rim.length) / 2;
  width_rim_ = in_cm(rim.width) / 2;
  pattern_.kind = Outline::Kind::ellipse;
  straight_ = true;
  turned_in_ = length_floor_ > length_rim_ + 1e-9 || width_floor_ > width_rim_ + 1e-9;
  switch (shape_) {
    case Shape::rectangular:
      pattern_.kind = Outline::Kind::rectangle;
      pattern_.corner_cm = in_cm(container.corner_radius);
      break;
    case Shape::hexagonal: pattern_.kind = Outline::Kind::hexagon; break;
    case Shape::octagonal: pattern_.kind = Outline::Kind::octagon; break;
    case Shape::superellipse:
      pattern_.kind = Outline::Kind::superellipse;
      pattern_.exponent = *container.exponent;
      if (pattern_.exponent >= least_tabled_exponent) soft_ = std::make_shared<const SoftOutline>(pattern_.exponent);
      pattern_.soft = soft_.get();
      break;
    case Shape::drum: {
      const double low = square(length_floor_);
      const double mid = square(in_cm(middle.length) / 2);
      const double high = square(length_rim_);
      square_ = {low, (4 * mid - 3 * low - high) / depth_cm_, 2 * (low - 2 * mid + high) / square(depth_cm_)};
      turned_in_ = std::max(low, mid) > high + 1e-9;
      straight_ = false;
      break;
    }
    case Shape::bowl: straight_ = false; break;
    case Shape::profile: {
      straight_ = false;
      for (int i = 0; i <= profile_steps; ++i)
        radius_.push_back(std::sqrt(std::max(0.0, pot.profile().area_cm2(depth_cm_ * i / profile_steps)) / pi));
      narrow_above_ = radius_;
      for (std::size_t i = narrow_above_.size() - 1; i-- > 0;) narrow_above_[i] = std::min(narrow_above_[i], narrow_above_[i + 1]);
      for (std::size_t i = 0; i < radius_.size(); ++i) turned_in_ = turned_in_ || radius_[i] > narrow_above_[i] + 1e-6;
      break;
    }
    case Shape::oval:
    case Shape::round: break;
  }
}

std::pair<double, double> PotOutlines::half_sides_cm(double height_cm) const {
  const double height = std::clamp(height_cm, 0.0, depth_cm_);
  const double along = height / depth_cm_;
  switch (shape_) {
    case Shape::drum: {
      const double radius = std::sqrt(std::max(0.0, square_[0] + height * (square_[1] + height * square_[2])));
      return {radius, radius};
    }
    case Shape::bowl: {
      const double share = std::sqrt(along * (2 - along));
      return {length_rim_ * share, width_rim_ * share};
    }
    case Shape::profile: {
      const double place = along * profile_steps;
      const auto below = std::min(static_cast<std::size_t>(place), static_cast<std::size_t>(profile_steps - 1));
      const double radius = radius_[below] + (place - static_cast<double>(below)) * (radius_[below + 1] - radius_[below]);
      return {radius, radius};
    }
    default: break;
  }
  return {length_floor_ + (length_rim_ - length_floor_) * along, width_floor_ + (width_rim_ - width_floor_) * along};
}

Outline PotOutlines::at(double height_cm) const {
  Outline outline = pattern_;
  std::tie(outline.half_length_cm, outline.half_width_cm) = half_sides_cm(height_cm);
  if (height_cm < fillet_cm_) {
    const double u = std::max(0.0, height_cm) / fillet_cm_;
    outline.inset_cm = fillet_cm_ * (1 - std::sqrt(u * (2 - u)));
  }
  return outline;
}

std::optional<Outline> PotOutlines::mouth_above(double height_cm) const {
  if (!turned_in_ || height_cm >= depth_cm_) return std::nullopt;
  const auto [length, width] = half_sides_cm(height_cm);
  Outline mouth = pattern_;
  if (shape_ == Shape::profile) {
    const auto step = static_cast<std::size_t>(std::clamp(height_cm / depth_cm_, 0.0, 1.0) * profile_steps);
    mouth.half_length_cm = mouth.half_width_cm = narrow_above_[step];
  } else {
    mouth.half_length_cm = length_rim_;
    mouth.half_width_cm = width_rim_;
  }
  const double hair = 1e-9;
  if (length <= mouth.half_length_cm + hair && width <= mouth.half_width_cm + hair) return std::nullopt;
  return mouth;
}

}  // namespace gritwright
