#include "gritwright/models/pot_outline.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>

namespace gritwright {

/// The first quadrant of a superellipse of half lengths 1, n >= 2, and t^n.
struct SoftOutline {
  /// A point with the line that touches the outline there.
  struct Touch {
    double u, v;
    double along_u, along_v;  ///< its normal of length 1, before the lengths stretch it
  };
  double exponent;
  std::vector<Touch> touches;  ///< from the right to the back
  std::vector<double> powers;
  double power_error = 0;
  std::vector<std::size_t> by_share;  ///< the first touch whose v/(u + v) is no less, for even steps of that

  explicit SoftOutline(double n) : exponent(n) {
    place_touches();
    for (std::size_t at = 0, step = 0; step <= share_steps; ++step) {
      while (touches[at].v * share_steps < static_cast<double>(step) * (touches[at].u + touches[at].v) && at + 1 < touches.size()) ++at;
      by_share.push_back(at);
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

  /// The outline of half lengths a and b seen from a point of the first quadrant.
  struct From {
    double x, y, a, b;
  };
  /// The nearest of it. The search ends as soon as anything is nearer than `near_enough_cm`, and leaves out what is not nearer than
  /// `farthest_cm`; if nothing is, the answer is some line no nearer than that.
  [[nodiscard]] Outline::Nearest nearest(const From& from, double near_enough_cm, double farthest_cm) const;

 private:
  static constexpr std::size_t share_steps = 256;
  /// The touch about where a line from the middle through a point inside meets the outline.
  [[nodiscard]] std::size_t ahead_of(const From& from) const {
    const double u = from.x * from.b;
    const double v = from.y * from.a;
    return u + v > 0 ? by_share[static_cast<std::size_t>(v / (u + v) * share_steps)] : 0;
  }

  /// Steps of the normal resolve the corner, steps of a coordinate the flat sides; the second half mirrors the first.
  void place_touches() {
    constexpr int normals = 128;
    constexpr int coordinates = 256;
    std::vector<double> angles{0};
    for (int i = 1; i <= normals; ++i) angles.push_back(std::numbers::pi / 4 * i / normals);
    const double diagonal = std::pow(0.5, 1 / exponent);
    for (int i = 1; i < coordinates; ++i) {
      const double v = diagonal * i / coordinates;
      angles.push_back(std::atan(std::pow(v, exponent - 1) / std::pow(1 - std::pow(v, exponent), 1 - 1 / exponent)));
    }
    std::ranges::sort(angles);
    const auto same = std::unique(angles.begin(), angles.end(), [](double a, double b) { return b - a <= 1e-9 * b; });
    angles.erase(same, angles.end());
    const double q = exponent / (exponent - 1);
    for (const double angle : angles) {
      const double in_u = std::pow(std::cos(angle), q);
      const double in_v = std::pow(std::sin(angle), q);
      touches.push_back({std::pow(in_u / (in_u + in_v), 1 / exponent), std::pow(in_v / (in_u + in_v), 1 / exponent), std::cos(angle), std::sin(angle)});
    }
    for (std::size_t i = touches.size() - 1; i-- > 0;)
      touches.push_back({touches[i].v, touches[i].u, touches[i].along_v, touches[i].along_u});
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

double long_by(double x, double y) { return std::sqrt(x * x + y * y); }

/// Of a point of the first quadrant inside the ellipse, by the centres of curvature.
Outline::Nearest nearest_on_ellipse(double x, double y, double a, double b) {
  double tx = 1 / sqrt2;
  double ty = 1 / sqrt2;
  for (int i = 0; i < 6; ++i) {
    const double centre_x = (a * a - b * b) * tx * tx * tx / a;
    const double centre_y = (b * b - a * a) * ty * ty * ty / b;
    const double radius = long_by(a * tx - centre_x, b * ty - centre_y);
    const double away = long_by(x - centre_x, y - centre_y);
    if (away < 1e-12) break;
    tx = std::clamp(((x - centre_x) * radius / away + centre_x) / a, 0.0, 1.0);
    ty = std::clamp(((y - centre_y) * radius / away + centre_y) / b, 0.0, 1.0);
    const double length = long_by(tx, ty);
    tx /= length;
    ty /= length;
  }
  const double steep = long_by(tx / a, ty / b);
  return {long_by(x - a * tx, y - b * ty), tx / a / steep, ty / b / steep};
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

/// Inside a convex outline the distance to it is the least distance to a line that touches it. For exponents below 2, which leave
/// the gap a single least value in the quadrant; at larger ones the flat sides and the corner each may have one.
Outline::Nearest nearest_on_pointed_outline(double x, double y, double a, double b, double n) {
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

/// A touch of a soft outline, seen from a point.
struct SeenTouch {
  std::size_t at = 0;
  double dx = 0, dy = 0;  // from the point
  double right = 0, back = 0;
  double gap_cm = 0;  // to the touching line
  [[nodiscard]] double slope() const { return dy * right - dx * back; }
};

SeenTouch seen_touch(const SoftOutline& soft, const SoftOutline::From& from, std::size_t at) {
  const SoftOutline::Touch& touch = soft.touches[at];
  SeenTouch line;
  line.at = at;
  line.dx = from.a * touch.u - from.x;
  line.dy = from.b * touch.v - from.y;
  const double right = touch.along_u * from.b;
  const double back = touch.along_v * from.a;
  const double length = long_by(right, back);
  line.right = right / length;
  line.back = back / length;
  line.gap_cm = line.dx * line.right + line.dy * line.back;
  return line;
}

/// Between two neighbouring touches the outline is as good as a cubic of one coordinate; the place on it that looks at the point.
Outline::Nearest nearest_between(const SoftOutline& soft, const SoftOutline::From& from, const SeenTouch& low, const SeenTouch& high) {
  const SoftOutline::Touch& first = soft.touches[low.at];
  const SoftOutline::Touch& second = soft.touches[high.at];
  const bool beside = first.u + second.u >= first.v + second.v;  // on the right side, by v; else on the back side, by u
  const double t0 = beside ? first.v : second.u;
  const double t1 = beside ? second.v : first.u;
  const double f0 = beside ? first.u : second.v;
  const double f1 = beside ? second.u : first.v;
  const double m0 = beside ? -first.along_v / first.along_u : -second.along_u / second.along_v;
  const double m1 = beside ? -second.along_v / second.along_u : -first.along_u / first.along_v;
  const double across = beside ? from.a : from.b;
  const double length = beside ? from.b : from.a;
  const double across_point = beside ? from.x : from.y;
  const double along_point = beside ? from.y : from.x;
  const double h = t1 - t0;
  const double bend = 3 * (f1 - f0) / h - 2 * m0 - m1;
  const double twist = m0 + m1 - 2 * (f1 - f0) / h;
  double k = low.slope() / (low.slope() - high.slope());
  if (!beside) k = 1 - k;
  double out = 0;
  double f_slope = 0;
  for (int i = 0; i < 4; ++i) {
    f_slope = m0 + k * (2 * bend + 3 * twist * k);
    out = across * (f0 + h * k * (m0 + k * (bend + twist * k))) - across_point;
    const double fall = out * across * f_slope + length * (length * (t0 + h * k) - along_point);
    const double steep = across * across * f_slope * f_slope + out * across * (2 * bend + 6 * twist * k) / h + length * length;
    if (!(steep > 0)) break;
    const double next = std::clamp(k - fall / steep / h, 0.0, 1.0);
    if (std::abs(next - k) < 1e-9) break;
    k = next;
  }
  f_slope = m0 + k * (2 * bend + 3 * twist * k);
  out = across * (f0 + h * k * (m0 + k * (bend + twist * k))) - across_point;
  const double norm = std::hypot(length, across * f_slope);
  const double over = length / norm;
  const double beyond = -across * f_slope / norm;
  const double gap = out * over + (length * (t0 + h * k) - along_point) * beyond;
  return beside ? Outline::Nearest{gap, over, beyond} : Outline::Nearest{gap, beyond, over};
}

/// Is any of the outline between two touches nearer? It lies beyond their chord.
bool chord_nearer(const SeenTouch& low, const SeenTouch& high, double than_cm) {
  const double twice_area = low.dx * high.dy - high.dx * low.dy;
  if (twice_area <= 0) return true;
  const double along_x = high.dx - low.dx;
  const double along_y = high.dy - low.dy;
  return than_cm > 0 && twice_area * twice_area < than_cm * than_cm * (along_x * along_x + along_y * along_y);
}

/// A plan asks for the outlines of one pot many times.
std::shared_ptr<const SoftOutline> soft_outline(double exponent) {
  thread_local std::shared_ptr<const SoftOutline> last;
  if (last == nullptr || last->exponent != exponent) last = std::make_shared<const SoftOutline>(exponent);
  return last;
}

}  // namespace

Outline::Nearest SoftOutline::nearest(const From& from, double near_enough_cm, double farthest_cm) const {
  // Several parts of the outline may be about as far: none is left out before its chord is too far.
  constexpr double hair_cm = 1e-10;
  Outline::Nearest best{std::numeric_limits<double>::infinity(), 0, 0};
  const auto take = [&](const SeenTouch& line) {
    if (line.gap_cm < best.depth_cm) best = {line.gap_cm, line.right, line.back};
  };
  const auto open = [&](const SeenTouch& low, const SeenTouch& high) {
    return chord_nearer(low, high, std::min(best.depth_cm - hair_cm, farthest_cm));
  };
  if (near_enough_cm > 0) {
    // Most points that are too near are so ahead.
    take(seen_touch(*this, from, ahead_of(from)));
    if (best.depth_cm < near_enough_cm) return best;
  }
  constexpr std::size_t coarse_steps = 16;
  std::array<SeenTouch, coarse_steps + 1> coarse;
  for (std::size_t i = 0; i <= coarse_steps; ++i) {
    coarse[i] = seen_touch(*this, from, i * (touches.size() - 1) / coarse_steps);
    take(coarse[i]);
    if (best.depth_cm < near_enough_cm) return best;
  }
  struct Part {
    SeenTouch low, high;
  };
  std::array<Part, 32> waiting;  // one for each halving, and one more
  for (std::size_t i = 0; i < coarse_steps; ++i) {
    if (!open(coarse[i], coarse[i + 1])) continue;
    std::size_t count = 0;
    waiting[count++] = {coarse[i], coarse[i + 1]};
    while (count > 0) {
      const Part part = waiting[--count];
      if (!open(part.low, part.high)) continue;
      if (part.high.at - part.low.at == 1) {
        if (!(part.low.slope() < 0 && part.high.slope() > 0)) continue;
        const Outline::Nearest between = nearest_between(*this, from, part.low, part.high);
        if (between.depth_cm < best.depth_cm) best = between;
      } else {
        const SeenTouch middle = seen_touch(*this, from, (part.low.at + part.high.at) / 2);
        take(middle);
        // The half toward which the gap falls is looked at first.
        const bool ahead = middle.slope() < 0;
        waiting[count++] = ahead ? Part{part.low, middle} : Part{middle, part.high};
        waiting[count++] = ahead ? Part{middle, part.high} : Part{part.low, middle};
      }
      if (best.depth_cm < near_enough_cm) return best;
    }
  }
  return best;
}

double Outline::gauge(double x_cm, double y_cm) const {
  const double x = std::abs(x_cm);
  const double y = std::abs(y_cm);
  switch (kind) {
    case Kind::rectangle: return std::max(x / half_length_cm, y / half_width_cm);
    case Kind::ellipse: return long_by(x / half_length_cm, y / half_width_cm);
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
  if (soft != nullptr) return soft->nearest({x, y, half_length_cm, half_width_cm}, 0, std::numeric_limits<double>::infinity());
  const double outside = gauge(x, y);
  if (outside > 1) {
    const double u = x / half_length_cm / half_length_cm;
    const double v = y / half_width_cm / half_width_cm;
    return {(1 - outside) * std::min(half_length_cm, half_width_cm), u / std::hypot(u, v), v / std::hypot(u, v)};
  }
  if (kind == Kind::ellipse) return nearest_on_ellipse(x, y, half_length_cm, half_width_cm);
  return nearest_on_pointed_outline(x, y, half_length_cm, half_width_cm, exponent);
}

Outline::Nearest Outline::nearest(double x_cm, double y_cm) const {
  Nearest found = curve_depth(x_cm, y_cm);
  found.depth_cm -= inset_cm;
  found.right = std::copysign(found.right, x_cm);
  found.back = std::copysign(found.back, y_cm);
  return found;
}

std::optional<Outline::Nearest> Outline::nearest_within(double x_cm, double y_cm, double limit_cm) const {
  const double all = limit_cm + inset_cm;
  const double a = half_length_cm;
  const double b = half_width_cm;
  Nearest found;
  if (soft != nullptr && a > 0 && b > 0) {
    found = soft->nearest({std::abs(x_cm), std::abs(y_cm), a, b}, 0, all);
    if (found.depth_cm > all) return std::nullopt;
    return Nearest{found.depth_cm - inset_cm, std::copysign(found.right, x_cm), std::copysign(found.back, y_cm)};
  }
  // An outline scaled down by as much lies within.
  if (kind == Kind::ellipse && a > 0 && b > 0) {
    const double share = 1 - all / std::min(a, b);
    const double u = x_cm / a;
    const double v = y_cm / b;
    if (share > 0 && u * u + v * v < share * share) return std::nullopt;
  }
  found = nearest(x_cm, y_cm);
  return found.depth_cm <= limit_cm ? std::optional(found) : std::nullopt;
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
  const double most = kind == Kind::ellipse || exponent <= 2 ? std::max(half_length_cm, half_width_cm) : long_by(half_length_cm, half_width_cm);
  if (least <= 0) return false;
  if (soft != nullptr) {
    const double sum = soft->power(x / half_length_cm) + soft->power(y / half_width_cm);
    const double hair = 4 * soft->power_error;
    if (all < least && sum <= soft->power(1 - all / least) - hair) return true;
    if (all < most && sum > soft->power(1 - all / most) + hair) return false;
    return soft->nearest({x, y, half_length_cm, half_width_cm}, all, all).depth_cm >= all;
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

double Outline::reach_toward_cm(double right, double back, double inset) const {
  const double c = std::abs(right);
  const double s = std::abs(back);
  const double all = inset + inset_cm;
  switch (kind) {
    case Kind::rectangle: {
      const double corner = std::max(corner_cm, all);
      return (half_length_cm - corner) * c + (half_width_cm - corner) * s + corner - all;
    }
    case Kind::hexagon:
    case Kind::octagon: {
      double most = 0;
      for (const auto& [x, y] : points(1)) most = std::max(most, x * right + y * back);
      return most - inset;
    }
    case Kind::ellipse: return long_by(half_length_cm * c, half_width_cm * s) - all;
    case Kind::superellipse: break;
  }
  return superellipse_support(c, s, half_length_cm, half_width_cm, conjugate(exponent)).reach - all;
}

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
      if (pattern_.exponent >= least_tabled_exponent) soft_ = soft_outline(pattern_.exponent);
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
