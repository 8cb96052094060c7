#include "tilted_body.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <numbers>

namespace gritwright {

namespace {

using std::numbers::pi;
using std::numbers::sqrt2;

/// A horizontal section seen across the tilt: how wide it is at a share of the way from the low edge to the high one.
class Chord {
 public:
  Chord(const PotGeometry& pot, double extent_cm, double across_cm)
      : container_(pot.container()), corner_(in_cm(pot.corner_radius())), extent_(extent_cm), across_(across_cm) {}

  /// Relative width at `share` of the extent, 0..1.
  [[nodiscard]] double at(double share) const {
    const double from_edge = std::min(share, 1 - share);
    const double from_middle = 1 - 2 * from_edge;
    switch (container_.shape) {
      case Shape::rectangular: {
        const double inside = corner_ - from_edge * extent_;
        return inside > 0 ? across_ - 2 * (corner_ - std::sqrt(std::max(0.0, corner_ * corner_ - inside * inside))) : across_;
      }
      case Shape::hexagonal: return 1 + 2 * from_edge;
      case Shape::octagonal: return std::min(1 + from_edge * 2 * (1 + sqrt2), 1 + sqrt2);
      case Shape::superellipse: {
        const double exponent = *container_.exponent;
        return std::pow(std::max(0.0, 1 - std::pow(from_middle, exponent)), 1 / exponent);
      }
      default: return std::sqrt(std::max(0.0, 1 - from_middle * from_middle));
    }
  }

  /// Where the width has a kink, besides edges and middle.
  [[nodiscard]] double kink() const {
    if (container_.shape == Shape::octagonal) return 1 / (2 + sqrt2);
    if (container_.shape == Shape::rectangular) return std::min(0.5, corner_ / extent_);
    return 0;
  }

 private:
  const Container& container_;
  double corner_;
  double extent_;
  double across_;
};

/// A bare table of areas has no sections: a round one of that area stands for it.
Section section_for_tilt(const PotGeometry& pot, Depth height) {
  Section section = pot.section_at(height);
  if (pot.container().shape != Shape::profile) return section;
  const double to_disc = 2 / std::sqrt(pi);
  return {section.length * to_disc, section.width * to_disc};
}

using Rule = boost::math::quadrature::gauss<double, 7>;

/// Calls visit(point, weight) for Gauss' rule between two ends.
template <class Visit>
void for_gauss_points(double from, double to, Visit visit) {
  const double middle = (from + to) / 2;
  const double half = (to - from) / 2;
  for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
    const double offset = half * Rule::abscissa()[i];
    visit(middle + offset, Rule::weights()[i] * half);
    if (offset != 0) visit(middle - offset, Rule::weights()[i] * half);
  }
}

/// Ends of panels from 0 to 1: the given points, and ever shorter panels on both sides of `wet`, where the air sets in.
std::vector<double> panel_ends(std::initializer_list<double> points, double wet) {
  std::vector<double> ends(points);
  ends.insert(ends.end(), {0, wet, 1});
  for (double step : {1.0 / 64, 1.0 / 16, 1.0 / 4}) ends.insert(ends.end(), {wet - step, wet + step});
  for (double& end : ends) end = std::clamp(end, 0.0, 1.0);
  std::ranges::sort(ends);
  ends.erase(std::unique(ends.begin(), ends.end(), [](double a, double b) { return b - a < 1e-9; }), ends.end());
  return ends;
}

}  // namespace

std::vector<WeightedHead> tilted_heads(const PotGeometry& pot, double from_cm, double to_cm, double interface_head_cm) {
  const Container& container = pot.container();
  const double cosine = std::cos(container.tilt.angle.value());
  const double sine = std::sin(container.tilt.angle.value());
  // Turned about the length, the pot rises along its width.
  const bool about_length = container.tilt.axis == TiltAxis::length;
  const auto extent = [&](const Section& section) { return in_cm(about_length ? section.width : section.length); };
  const auto across = [&](const Section& section) { return in_cm(about_length ? section.length : section.width); };
  const double floor_half = extent(section_for_tilt(pot, Depth{})) / 2;
  const double volume = pot.profile().volume_cm3(from_cm, to_cm);
  std::vector<WeightedHead> heads;

  const auto add_section = [&](double height, double share_of_volume) {
    const Section section = section_for_tilt(pot, depth_cm(height));
    const double width = extent(section);
    const double low_edge = floor_half - width / 2;
    const Chord chord(pot, width, across(section));
    const std::size_t first = heads.size();
    double weights = 0;
    const double low_head = interface_head_cm + (height - from_cm) * cosine + low_edge * sine;
    const std::vector<double> ends = panel_ends({chord.kink(), 0.5, 1 - chord.kink()}, -low_head / (width * sine));
    // share = (1 - cos phi)/2 takes the roots at the edges away.
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
      for_gauss_points(std::acos(1 - 2 * ends[i]), std::acos(1 - 2 * ends[i + 1]), [&](double phi, double weight) {
        const double share = (1 - std::cos(phi)) / 2;
        const double mass = weight * chord.at(share) * std::sin(phi);
        heads.push_back({low_head + share * width * sine, mass});
        weights += mass;
      });
    }
    for (std::size_t i = first; i < heads.size(); ++i) heads[i].share *= share_of_volume / weights;
  };

  for (const AreaProfile::Piece& piece : pot.profile().pieces()) {
    const double low = std::max(from_cm, piece.from_cm);
    const double high = std::min(to_cm, piece.to_cm);
    if (high <= low) continue;
    const double wet = (from_cm - interface_head_cm / cosine - low) / (high - low);
    const bool thin = high - low < (to_cm - from_cm) / 8;
    const std::vector<double> ends = thin ? std::vector<double>{0, 1} : panel_ends({0.5}, wet);
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
      for_gauss_points(low + ends[i] * (high - low), low + ends[i + 1] * (high - low),
                       [&](double height, double weight) { add_section(height, weight * pot.profile().area_cm2(height) / volume); });
    }
  }
  return heads;
}

double tilted_mean_saturation(const RetentionCurve& curve, const PotGeometry& pot, double from_cm, double to_cm,
                              double interface_head_cm) {
  double sum = 0;
  for (const WeightedHead& point : tilted_heads(pot, from_cm, to_cm, interface_head_cm)) {
    sum += point.share * curve.saturation(point.head_cm);
  }
  return sum;
}

}  // namespace gritwright
