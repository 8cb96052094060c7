#include "root_block.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace gritwright {

namespace {

using std::numbers::pi;

double radical_inverse(std::uint32_t index, std::uint32_t base) {
  double value = 0;
  double digit = 1;
  for (; index > 0; index /= base) {
    digit /= base;
    value += digit * static_cast<double>(index % base);
  }
  return value;
}

constexpr int power_steps = 2048;

/// What a chord of t^n over one step can be off, for n >= 2: h^2/8 times the largest second derivative.
double power_error(double n) { return n * (n - 1) / (8.0 * power_steps * power_steps); }

/// Share of its box that a superellipsoid fills.
double rounded_share(double n) {
  const double g = std::tgamma(1 + 1 / n);
  return g * g * g / std::tgamma(1 + 3 / n);
}

using Ring = std::vector<Point3>;

ConvexBody from_rings(const std::vector<Ring>& rings) {
  ConvexBody body;
  std::vector<std::vector<ConvexBody::Corner>> corners;
  for (const Ring& ring : rings) {
    corners.emplace_back();
    for (const Point3& p : ring) corners.back().push_back(body.add_corner(p));
  }
  body.add_face(corners.front());
  body.add_face(corners.back());
  for (std::size_t k = 0; k + 1 < corners.size(); ++k) {
    const auto& low = corners[k];
    const auto& high = corners[k + 1];
    for (std::size_t i = 0; i < low.size(); ++i) {
      const std::size_t next = (i + 1) % low.size();
      body.add_face({low[i], low[next], high[next], high[i]});
    }
  }
  return body;
}

Ring ring_at(const Outline& outline, double height, int per_quadrant) {
  Ring ring;
  for (const auto& [x, y] : outline.points(per_quadrant)) ring.push_back({x, y, height});
  return ring;
}

}  // namespace

const std::vector<RootBlockBody::Radical>& RootBlockBody::radicals() {
  static const std::vector<Radical> table = [] {
    std::vector<Radical> built;
    built.reserve(largest_point_set);
    for (std::uint32_t i = 0; i < largest_point_set; ++i) built.push_back({radical_inverse(i, 2), radical_inverse(i, 3)});
    return built;
  }();
  return table;
}

RootBlockBody::RootBlockBody(const RootBlock& block) {
  if (const auto* present = std::get_if<AsPresentPot>(&block)) {
    const PotGeometry pot(present->pot);
    form_ = Form::pot;
    outlines_ = std::make_shared<PotOutlines>(pot);
    height_cm_ = in_cm(pot.filled_depth());
    volume_cm3_ = in_ml(pot.volume());
    constexpr int steps = 256;
    for (int i = 0; i <= steps; ++i) {
      const Outline outline = outlines_->at(height_cm_ * i / steps);
      length_cm_ = std::max(length_cm_, 2 * outline.reach_x_cm(0));
      width_cm_ = std::max(width_cm_, 2 * outline.reach_y_cm(0));
    }
    return;
  }
  const auto& box = std::get<BlockBox>(block);
  length_cm_ = in_cm(box.length);
  width_cm_ = in_cm(box.width);
  height_cm_ = in_cm(box.height);
  volume_cm3_ = length_cm_ * width_cm_ * height_cm_;
  switch (box.form) {
    case BlockForm::box: break;
    case BlockForm::elliptic:
      form_ = Form::elliptic;
      volume_cm3_ *= pi / 4;
      break;
    case BlockForm::rounded:
      form_ = Form::rounded;
      exponent_ = *box.exponent;
      inner_box_ = std::pow(1.0 / 3, 1 / exponent_) - 1e-12;
      volume_cm3_ *= rounded_share(exponent_);
      if (exponent_ < 2) break;
      powers_.reserve(power_steps + 1);
      for (int i = 0; i <= power_steps; ++i) powers_.push_back(std::pow(static_cast<double>(i) / power_steps, exponent_));
      break;
  }
}

bool RootBlockBody::contains(const Point3& p) const {
  const double u = std::abs(2 * p.x / length_cm_);
  const double v = std::abs(2 * p.y / width_cm_);
  if (p.z < 0 || p.z > height_cm_ || u > 1 || v > 1) return false;
  switch (form_) {
    case Form::box: return true;
    case Form::elliptic: return u * u + v * v <= 1;
    case Form::rounded: {
      const double w = std::abs(2 * p.z / height_cm_ - 1);
      // Ellipsoid and box within spare the powers.
      if (exponent_ >= 2 && u * u + v * v + w * w <= 1) return true;
      if (u <= inner_box_ && v <= inner_box_ && w <= inner_box_) return true;
      if (!powers_.empty()) {
        const double sum = tabled_power(u) + tabled_power(v) + tabled_power(w);
        if (std::abs(sum - 1) > 3 * power_error(exponent_)) return sum < 1;
      }
      return std::pow(u, exponent_) + std::pow(v, exponent_) + std::pow(w, exponent_) <= 1;
    }
    case Form::pot: break;
  }
  return outlines_->at(p.z).holds(p.x, p.y, 0);
}

bool RootBlockBody::may_meet_disc(const Point3& p, const Point3& normal, double level_cm) const {
  const auto spread = [&](double along) { return level_cm * std::sqrt(std::max(0.0, 1 - along * along)); };
  if (std::abs(p.x) - spread(normal.x) > length_cm_ / 2 || std::abs(p.y) - spread(normal.y) > width_cm_ / 2) return false;
  if (p.z + spread(normal.z) < 0 || p.z - spread(normal.z) > height_cm_) return false;
  // What says how far out a point lies bends upward, so nowhere on the disc is it less than its slope at the middle allows.
  double beyond = -1;
  Point3 slope;
  const auto add = [&](double t, double half, double exponent, double& slope_along) {
    const double power = exponent == 2 ? t * t : t <= 1 ? tabled_power(t) : std::pow(t, exponent);
    beyond += power;
    slope_along = t > 0 ? exponent * power / t / half : 0;
  };
  if (form_ == Form::elliptic) {
    add(std::abs(p.x) / (length_cm_ / 2), length_cm_ / 2, 2, slope.x);
    add(std::abs(p.y) / (width_cm_ / 2), width_cm_ / 2, 2, slope.y);
  } else if (form_ == Form::rounded && !powers_.empty()) {
    add(std::abs(p.x) / (length_cm_ / 2), length_cm_ / 2, exponent_, slope.x);
    add(std::abs(p.y) / (width_cm_ / 2), width_cm_ / 2, exponent_, slope.y);
    add(std::abs(p.z - height_cm_ / 2) / (height_cm_ / 2), height_cm_ / 2, exponent_, slope.z);
  } else {
    return true;
  }
  slope = {std::copysign(slope.x, p.x), std::copysign(slope.y, p.y), std::copysign(slope.z, p.z - height_cm_ / 2)};
  const double square_on = dot(slope, normal);
  const double hair = form_ == Form::rounded ? 3 * power_error(exponent_) : 0;
  return beyond - hair <= level_cm * std::sqrt(std::max(0.0, dot(slope, slope) - square_on * square_on)) * (1 + 1e-4);
}

double RootBlockBody::tabled_power(double t) const {
  const double place = t * power_steps;
  const auto step = std::min(static_cast<std::size_t>(place), powers_.size() - 2);
  return powers_[step] + (place - static_cast<double>(step)) * (powers_[step + 1] - powers_[step]);
}

double RootBlockBody::depth_behind(Face face, const Point3& p) const {
  switch (face) {
    case Face::right: return length_cm_ / 2 - p.x;
    case Face::left: return length_cm_ / 2 + p.x;
    case Face::back: return width_cm_ / 2 - p.y;
    case Face::front: return width_cm_ / 2 + p.y;
    case Face::top: return height_cm_ - p.z;
    case Face::bottom: break;
  }
  return p.z;
}

Point3 RootBlockBody::outward(Face face) {
  switch (face) {
    case Face::right: return {1, 0, 0};
    case Face::left: return {-1, 0, 0};
    case Face::back: return {0, 1, 0};
    case Face::front: return {0, -1, 0};
    case Face::top: return {0, 0, 1};
    case Face::bottom: break;
  }
  return {0, 0, -1};
}

HalfSpace RootBlockBody::deeper_than(Face face, double depth_cm) const {
  // depth = depth at the origin - outward·p
  return {outward(face), depth_behind(face, {}) - depth_cm};
}

ConvexBody RootBlockBody::facets(int per_quadrant) const {
  std::vector<Ring> rings;
  if (form_ == Form::rounded) {
    // Curved both ways it needs many facets, and coarser ones do as well.
    per_quadrant = std::max(8, per_quadrant / 4);
    // Corner powers as for a superellipse; the poles are kept small rather than pointed so that every facet has an area.
    const double power = 2 / exponent_;
    const int levels = std::max(8, per_quadrant / 2);
    Outline outline{Outline::Kind::superellipse, 1, 1, 0, exponent_, nullptr};
    for (int k = 0; k <= 2 * levels; ++k) {
      const double angle = pi / 2 * (static_cast<double>(k) / levels - 1);
      const bool pole = k == 0 || k == 2 * levels;
      const double rise = pole ? 1 : std::pow(std::abs(std::sin(angle)), power);
      const double reach = pole ? 1e-9 : k == levels ? 1 : std::pow(std::cos(angle), power);
      outline.half_length_cm = length_cm_ / 2 * reach;
      outline.half_width_cm = width_cm_ / 2 * reach;
      rings.push_back(ring_at(outline, height_cm_ / 2 * (1 + std::copysign(k == levels ? 0 : rise, angle)), per_quadrant));
    }
    return from_rings(rings);
  }
  if (form_ == Form::pot) {
    std::vector<double> heights{0, height_cm_};
    const int steps = outlines_->straight_walls() ? 0 : 24;
    for (int i = 1; i < steps; ++i) heights.push_back(height_cm_ * i * i / (steps * steps));
    for (int i = 1; i <= 6 && outlines_->at(0).inset_cm > 0; ++i) {
      const double height = outlines_->at(0).inset_cm * i * i / 36;
      if (height < height_cm_) heights.push_back(height);
    }
    std::ranges::sort(heights);
    for (const double height : heights) rings.push_back(ring_at(outlines_->at(std::max(height, 1e-6)), height, per_quadrant));
    return from_rings(rings);
  }
  Outline outline;
  outline.kind = form_ == Form::box ? Outline::Kind::rectangle : Outline::Kind::ellipse;
  outline.half_length_cm = length_cm_ / 2;
  outline.half_width_cm = width_cm_ / 2;
  return from_rings({ring_at(outline, 0, per_quadrant), ring_at(outline, height_cm_, per_quadrant)});
}

std::vector<Point3> RootBlockBody::points(std::size_t count) const {
  std::vector<Point3> inside;
  inside.reserve(count);
  each_point(count, [&](std::size_t, const Point3& p) { inside.push_back(p); });
  return inside;
}

}  // namespace gritwright
