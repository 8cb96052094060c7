#include "convex_body.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gritwright {

namespace {

/// Corners of the cut face in order around their middle; those that coincide are kept once.
std::vector<Point3> around(std::vector<Point3> points, Point3 normal) {
  Point3 middle;
  for (const Point3& p : points) middle = middle + p;
  middle = 1.0 / static_cast<double>(points.size()) * middle;
  const Point3 helper = std::abs(normal.z) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
  Point3 u = cross(normal, helper);
  u = 1 / std::sqrt(dot(u, u)) * u;
  const Point3 v = cross(normal, u);
  struct Placed {
    double angle;
    Point3 point;
  };
  std::vector<Placed> placed;
  placed.reserve(points.size());
  for (const Point3& p : points) placed.push_back({std::atan2(dot(p - middle, v), dot(p - middle, u)), p});
  std::ranges::sort(placed, {}, &Placed::angle);
  std::vector<Point3> ring;
  for (const Placed& next : placed) {
    if (!ring.empty()) {
      const Point3 step = next.point - ring.back();
      if (dot(step, step) < 1e-18) continue;
    }
    ring.push_back(next.point);
  }
  return ring;
}

}  // namespace

void ConvexBody::add_face(const std::vector<Point3>& corners) {
  corners_.insert(corners_.end(), corners.begin(), corners.end());
  ends_.push_back(corners_.size());
}

bool ConvexBody::all_within(const HalfSpace& half) const {
  return std::ranges::all_of(corners_, [&](const Point3& p) { return half.beyond(p) <= 1e-12; });
}

ConvexBody ConvexBody::within(const HalfSpace& half) const& { return all_within(half) ? *this : cut(half); }
ConvexBody ConvexBody::within(const HalfSpace& half) && { return all_within(half) ? std::move(*this) : cut(half); }

ConvexBody ConvexBody::cut(const HalfSpace& half) const {
  ConvexBody rest;
  if (std::ranges::all_of(corners_, [&](const Point3& p) { return half.beyond(p) > 1e-12; })) return rest;
  rest.corners_.reserve(corners_.size());
  std::vector<Point3> opening;
  std::size_t begin = 0;
  for (const std::size_t end : ends_) {
    const std::size_t before = rest.corners_.size();
    double beyond_next = half.beyond(corners_[begin]);
    for (std::size_t i = begin; i < end; ++i) {
      const Point3& here = corners_[i];
      const Point3& next = corners_[i + 1 == end ? begin : i + 1];
      const double beyond_here = beyond_next;
      beyond_next = half.beyond(next);
      if (beyond_here <= 0) rest.corners_.push_back(here);
      if ((beyond_here <= 0) != (beyond_next <= 0)) {
        const Point3 crossing = here + beyond_here / (beyond_here - beyond_next) * (next - here);
        rest.corners_.push_back(crossing);
        opening.push_back(crossing);
      }
    }
    if (rest.corners_.size() > before) rest.ends_.push_back(rest.corners_.size());
    begin = end;
  }
  if (opening.size() >= 3) rest.add_face(around(std::move(opening), half.normal));
  return rest;
}

double ConvexBody::farthest(Point3 direction) const {
  double most = dot(direction, corners_.front());
  for (const Point3& p : corners_) most = std::max(most, dot(direction, p));
  return most;
}

}  // namespace gritwright
