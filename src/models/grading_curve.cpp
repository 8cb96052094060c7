#include "gritwright/models/grading_curve.hpp"

#include <algorithm>
#include <cmath>

#include "size_order.hpp"

namespace gritwright {

namespace {

std::vector<GradingPoint> step_at(Aperture size) { return {{size, Passing(0)}, {size, Passing(1)}}; }

}  // namespace

GradingCurve::GradingCurve(const Grading& grading) : points_(grading.points) {}

GradingCurve::GradingCurve(const SingleSize& size) : points_(step_at(size.size)) {}

GradingCurve::GradingCurve(const GrainSizes& sizes)
    : points_(std::holds_alternative<Grading>(sizes) ? std::get<Grading>(sizes).points
                                                     : step_at(std::get<SingleSize>(sizes).size)) {}

std::optional<Passing> GradingCurve::passing_at(Aperture aperture) const {
  if (points_.empty()) return std::nullopt;
  if (aperture < points_.front().aperture) {
    return points_.front().passing == Passing(0) ? std::optional(Passing(0)) : std::nullopt;
  }
  if (aperture > points_.back().aperture) {
    return points_.back().passing == Passing(1) ? std::optional(Passing(1)) : std::nullopt;
  }
  // What lies exactly on a step counts as passing: the last point at this aperture.
  const auto upper = std::ranges::upper_bound(points_, aperture, {}, &GradingPoint::aperture);
  const auto lower = std::prev(upper);
  if (lower->aperture == aperture || upper == points_.end()) return lower->passing;
  const double along = (log_mm(aperture) - log_mm(lower->aperture)) / (log_mm(upper->aperture) - log_mm(lower->aperture));
  return lower->passing + (upper->passing - lower->passing) * along;
}

std::optional<Aperture> GradingCurve::size_at(Passing passing) const {
  if (points_.empty() || passing < points_.front().passing || passing > points_.back().passing) return std::nullopt;
  const auto upper = std::ranges::lower_bound(points_, passing, {}, &GradingPoint::passing);
  if (upper->passing == passing || upper == points_.begin()) return upper->aperture;
  const auto lower = std::prev(upper);
  const double along = (passing.value() - lower->passing.value()) / (upper->passing.value() - lower->passing.value());
  return aperture_mm(std::exp(log_mm(lower->aperture) + along * (log_mm(upper->aperture) - log_mm(lower->aperture))));
}

}  // namespace gritwright
