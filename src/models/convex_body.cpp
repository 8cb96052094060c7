#include "convex_body.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace gritwright {

namespace {

/// Corners of the cut face in order around their middle; those that coincide are kept once.
std::vector<ConvexBody::Corner> around(const std::vector<ConvexBody::Corner>& opening, const std::vector<Point3>& corners, Point3 normal) {
  Point3 middle;
  for (const ConvexBody::Corner corner : opening) middle = middle + corners[corner];
  middle = 1.0 / static_cast<double>(opening.size()) * middle;
  const Point3 helper = std::abs(normal.z) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
  Point3 u = cross(normal, helper);
  u = 1 / std::sqrt(dot(u, u)) * u;
  const Point3 v = cross(normal, u);
  struct Placed {
    double angle;
    ConvexBody::Corner corner;
  };
  std::vector<Placed> placed;
  placed.reserve(opening.size());
  for (const ConvexBody::Corner corner : opening) {
    const Point3 out = corners[corner] - middle;
    placed.push_back({std::atan2(dot(out, v), dot(out, u)), corner});
  }
  std::ranges::sort(placed, {}, &Placed::angle);
  std::vector<ConvexBody::Corner> ring;
  for (const Placed& next : placed) {
    if (!ring.empty()) {
      const Point3 step = corners[next.corner] - corners[ring.back()];
      if (dot(step, step) < 1e-18) continue;
    }
    ring.push_back(next.corner);
  }
  return ring;
}

}  // namespace

ConvexBody::Corner ConvexBody::add_corner(const Point3& p) {
  corners_.push_back(p);
  return static_cast<Corner>(corners_.size() - 1);
}

void ConvexBody::add_face(const std::vector<Corner>& corners) {
  loops_.insert(loops_.end(), corners.begin(), corners.end());
  ends_.push_back(loops_.size());
}

double ConvexBody::volume_cm3() const {
  if (corners_.empty()) return 0;
  Point3 middle;
  for (const Point3& p : corners_) middle = middle + p;
  middle = 1.0 / static_cast<double>(corners_.size()) * middle;
  // Pyramids from the middle, whichever way round their base is told.
  double sixfold = 0;
  std::size_t begin = 0;
  for (const std::size_t end : ends_) {
    for (std::size_t i = begin + 1; i + 1 < end; ++i) {
      const Point3 first = corners_[loops_[begin]] - middle;
      sixfold += std::abs(dot(first, cross(corners_[loops_[i]] - middle, corners_[loops_[i + 1]] - middle)));
    }
    begin = end;
  }
  return sixfold / 6;
}

bool ConvexBody::all_within(const HalfSpace& half) const {
  return std::ranges::all_of(corners_, [&](const Point3& p) { return half.beyond(p) <= 1e-12; });
}

ConvexBody ConvexBody::within(const HalfSpace& half) const& { return all_within(half) ? *this : cut(half); }
ConvexBody ConvexBody::within(const HalfSpace& half) && { return all_within(half) ? std::move(*this) : cut(half); }

ConvexBody ConvexBody::cut(const HalfSpace& half) const {
  constexpr Corner gone = std::numeric_limits<Corner>::max();
  ConvexBody rest;
  std::vector<double> beyond(corners_.size());
  std::vector<Corner> kept(corners_.size(), gone);
  bool all_beyond = true;
  rest.corners_.resize(corners_.size());
  Corner count = 0;
  for (std::size_t i = 0; i < corners_.size(); ++i) {
    beyond[i] = half.beyond(corners_[i]);
    all_beyond = all_beyond && beyond[i] > 1e-12;
    if (beyond[i] > 0) continue;
    rest.corners_[count] = corners_[i];
    kept[i] = count++;
  }
  rest.corners_.resize(count);
  if (all_beyond) return {};
  rest.loops_.reserve(loops_.size());
  rest.ends_.reserve(ends_.size() + 1);
  // An edge that crosses the plane belongs to two faces; the corner it leaves is one.
  struct Crossing {
    Corner inside, outside, corner;
  };
  std::vector<Crossing> crossings;
  std::vector<Corner> opening;
  const auto crossing_of = [&](Corner inside, Corner outside) {
    // The other face is most often one of the last.
    for (std::size_t i = crossings.size(); i-- > 0;)
      if (crossings[i].inside == inside && crossings[i].outside == outside) return crossings[i].corner;
    const Point3& p = corners_[inside];
    const Corner corner = rest.add_corner(p + beyond[inside] / (beyond[inside] - beyond[outside]) * (corners_[outside] - p));
    crossings.push_back({inside, outside, corner});
    opening.push_back(corner);
    return corner;
  };
  std::size_t begin = 0;
  for (const std::size_t end : ends_) {
    const std::size_t before = rest.loops_.size();
    // Most faces lie on one side of the plane.
    const bool first_kept = kept[loops_[begin]] != gone;
    std::size_t same = begin + 1;
    while (same < end && (kept[loops_[same]] != gone) == first_kept) ++same;
    if (same < end) {
      for (std::size_t i = begin; i < end; ++i) {
        const Corner here = loops_[i];
        const Corner next = loops_[i + 1 == end ? begin : i + 1];
        if (kept[here] != gone) rest.loops_.push_back(kept[here]);
        if ((kept[here] == gone) == (kept[next] == gone)) continue;
        rest.loops_.push_back(kept[here] != gone ? crossing_of(here, next) : crossing_of(next, here));
      }
    } else if (first_kept) {
      for (std::size_t i = begin; i < end; ++i) rest.loops_.push_back(kept[loops_[i]]);
    }
    if (rest.loops_.size() > before) rest.ends_.push_back(rest.loops_.size());
    begin = end;
  }
  if (opening.size() >= 3) rest.add_face(around(opening, rest.corners_, half.normal));
  return rest;
}

double ConvexBody::farthest(Point3 direction) const {
  double most = dot(direction, corners_.front());
  for (const Point3& p : corners_) most = std::max(most, dot(direction, p));
  return most;
}

}  // namespace gritwright
