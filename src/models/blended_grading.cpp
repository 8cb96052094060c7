#include "gritwright/models/blended_grading.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

using Curve = std::vector<GradingPoint>;

double between(const GradingPoint& lower, const GradingPoint& upper, Aperture aperture) {
  const double along = std::log(aperture / lower.aperture) / std::log(upper.aperture / lower.aperture);
  return lower.passing.value() + (upper.passing.value() - lower.passing.value()) * along;
}

}  // namespace

std::vector<GradingPoint> closed_grading(const GrainSizes& sizes) {
  if (const auto* single = std::get_if<SingleSize>(&sizes)) return {{single->size, Passing(0)}, {single->size, Passing(1)}};
  const Grading& grading = std::get<Grading>(sizes);
  Curve curve;
  const GradingPoint& finest = grading.points.front();
  if (finest.passing > Passing(0)) {
    const Aperture pan = pan_size(grading);
    curve.push_back({pan, Passing(0)});
    if (pan < finest.aperture) curve.push_back({pan, finest.passing});
  }
  curve.insert(curve.end(), grading.points.begin(), grading.points.end());
  if (curve.back().passing < Passing(1)) curve.push_back({top_size(grading), Passing(1)});
  return curve;
}

double share_finer(std::span<const GradingPoint> closed_curve, Aperture aperture) {
  const auto upper = std::ranges::lower_bound(closed_curve, aperture, {}, &GradingPoint::aperture);
  if (upper == closed_curve.end()) return 1;
  if (upper->aperture == aperture) return upper->passing.value();
  return upper == closed_curve.begin() ? 0 : between(*std::prev(upper), *upper, aperture);
}

double share_passing(std::span<const GradingPoint> closed_curve, Aperture aperture) {
  const auto upper = std::ranges::upper_bound(closed_curve, aperture, {}, &GradingPoint::aperture);
  if (upper == closed_curve.begin()) return 0;
  const auto lower = std::prev(upper);
  if (upper == closed_curve.end()) return 1;
  return lower->aperture == aperture ? lower->passing.value() : between(*lower, *upper, aperture);
}

std::vector<GradingPoint> blended_grading(std::span<const std::vector<GradingPoint>> closed_curves, std::span<const double> weights) {
  double total = 0;
  std::vector<Aperture> apertures;
  for (std::size_t k = 0; k < closed_curves.size(); ++k) {
    if (!(weights[k] > 0)) continue;
    total += weights[k];
    for (const GradingPoint& point : closed_curves[k]) apertures.push_back(point.aperture);
  }
  if (apertures.empty()) throw std::logic_error("a blended grading needs a weight above 0");
  std::ranges::sort(apertures);
  apertures.erase(std::ranges::unique(apertures).begin(), apertures.end());

  Curve blend;
  double reached = 0;
  // Sums may fall short of each other by the last bit; a grading must not.
  const auto add = [&](Aperture aperture, double share) {
    reached = std::clamp(share, reached, 1.0);
    blend.push_back({aperture, Passing(reached)});
  };
  for (const Aperture& aperture : apertures) {
    double before = 0, after = 0;
    for (std::size_t k = 0; k < closed_curves.size(); ++k) {
      if (!(weights[k] > 0)) continue;
      before += weights[k] / total * share_finer(closed_curves[k], aperture);
      after += weights[k] / total * share_passing(closed_curves[k], aperture);
    }
    add(aperture, before);
    if (after > before) add(aperture, after);
  }
  blend.back().passing = Passing(1);
  return blend;
}

}  // namespace gritwright
