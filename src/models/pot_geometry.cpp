#include "gritwright/models/pot_geometry.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/tanh_sinh.hpp>
#include <boost/math/special_functions/ellint_2.hpp>
#include <cmath>
#include <numbers>

namespace gritwright {

namespace {

using std::numbers::pi;
using std::numbers::sqrt2;
using std::numbers::sqrt3;

const Section& base_of(const Container& container) { return container.base ? *container.base : container.rim; }

/// Area of the section over length × width.
double area_share(const Container& container) {
  switch (container.shape) {
    case Shape::oval:
    case Shape::round:
    case Shape::drum:
    case Shape::bowl: return pi / 4;
    case Shape::hexagonal: return sqrt3 / 2;
    case Shape::octagonal: return 2 * (sqrt2 - 1);
    case Shape::superellipse: return superellipse_share(*container.exponent);
    case Shape::rectangular:
    case Shape::profile: break;
  }
  return 1;
}

double ellipse_perimeter_cm(double length_cm, double width_cm) {
  const double major = std::max(length_cm, width_cm) / 2;
  const double minor = std::min(length_cm, width_cm) / 2;
  const double eccentricity = std::sqrt(1 - (minor / major) * (minor / major));
  return 4 * major * boost::math::ellint_2(eccentricity);
}

/// Half of a quarter's arc: from the end of axis `a` = 0 to the point of equal parameter, where the slope is still finite.
double superellipse_arc_cm(double a, double b, double exponent) {
  const double diagonal = std::pow(0.5, 1 / exponent);
  const auto speed = [&](double t) {
    return std::hypot(a, b * std::pow(t, exponent - 1) * std::pow(1 - std::pow(t, exponent), 1 / exponent - 1));
  };
  return boost::math::quadrature::tanh_sinh<double>().integrate(speed, 0.0, diagonal);
}

double superellipse_perimeter_cm(double length_cm, double width_cm, double exponent) {
  const double a = length_cm / 2;
  const double b = width_cm / 2;
  return 4 * (superellipse_arc_cm(a, b, exponent) + superellipse_arc_cm(b, a, exponent));
}

double floor_perimeter_cm(const Container& container) {
  const double length = in_cm(base_of(container).length);
  const double width = in_cm(base_of(container).width);
  switch (container.shape) {
    case Shape::rectangular: return 2 * (length + width) - (8 - 2 * pi) * in_cm(container.corner_radius);
    case Shape::hexagonal: return 6 * length / sqrt3;
    case Shape::octagonal: return 8 * (sqrt2 - 1) * length;
    case Shape::superellipse: return superellipse_perimeter_cm(length, width, *container.exponent);
    default: return ellipse_perimeter_cm(length, width);
  }
}

/// Both walls tapered: share·L(z)·W(z), less the rounded corners.
AreaProfile tapered(const Container& container) {
  const double depth = in_cm(container.depth);
  const double length = in_cm(base_of(container).length);
  const double width = in_cm(base_of(container).width);
  const double length_slope = (in_cm(container.rim.length) - length) / depth;
  const double width_slope = (in_cm(container.rim.width) - width) / depth;
  const double share = area_share(container);
  const double corner = in_cm(container.corner_radius);
  return AreaProfile({{0,
                       depth,
                       {share * length * width - (4 - pi) * corner * corner,
                        share * (length * width_slope + width * length_slope), share * length_slope * width_slope, 0}}});
}

/// The quadratic through the areas of base, middle and rim, so that the volume is Simpson's.
AreaProfile drum(const Container& container) {
  const auto disc = [](const Section& section) { return pi / 4 * in_cm(section.length) * in_cm(section.width); };
  const double depth = in_cm(container.depth);
  const double base = disc(base_of(container));
  const double middle = disc(*container.middle);
  const double rim = disc(container.rim);
  return AreaProfile({{0, depth, {base, (4 * middle - 3 * base - rim) / depth, 2 * (base - 2 * middle + rim) / (depth * depth), 0}}});
}

/// Lower half of an ellipsoid.
AreaProfile bowl(const Container& container) {
  const double depth = in_cm(container.depth);
  const double rim = pi / 4 * in_cm(container.rim.length) * in_cm(container.rim.width);
  return AreaProfile({{0, depth, {0, 2 * rim / depth, -rim / (depth * depth), 0}}});
}

AreaProfile from_table(const Container& container) {
  std::vector<double> heights_cm;
  std::vector<double> areas_cm2;
  for (const AreaAtHeight& row : container.areas) {
    heights_cm.push_back(in_cm(row.height));
    areas_cm2.push_back(in_cm2(row.area));
  }
  // A table that ends a rounding error short of the rim still reaches it.
  heights_cm.back() = std::max(heights_cm.back(), in_cm(container.depth));
  return monotone_profile(heights_cm, areas_cm2).below(in_cm(container.depth));
}

AreaProfile without_fillet(const Container& container) {
  switch (container.shape) {
    case Shape::drum: return drum(container);
    case Shape::bowl: return bowl(container);
    case Shape::profile: return from_table(container);
    default: return tapered(container);
  }
}

/// How far a fillet of radius 1 stands in from the wall at height `u`.
double fillet_inset(double u) { return 1 - std::sqrt(u * (2 - u)); }

/// The quadratic in u - low with the same first three moments as the fillet's inset between two heights, so that volumes are
/// exact although the inset is no polynomial.
std::array<double, 3> fillet_piece(double low, double high) {
  const double width = high - low;
  std::array<double, 3> legendre{};
  // With u = s^2 the root at the floor vanishes and Gauss' rule converges.
  for (int order = 0; order < 3; ++order) {
    const auto integrand = [&](double s) {
      const double u = s * s;
      const double x = 2 * (u - low) / width - 1;
      const double polynomial = order == 0 ? 1 : order == 1 ? x : (3 * x * x - 1) / 2;
      return fillet_inset(u) * polynomial * 2 * s;
    };
    const double integral = boost::math::quadrature::gauss<double, 30>::integrate(integrand, std::sqrt(low), std::sqrt(high));
    legendre[static_cast<std::size_t>(order)] = (2 * order + 1) / width * integral;
  }
  const auto [l0, l1, l2] = legendre;
  return {l0 - l1 + l2, (2 * l1 - 6 * l2) / width, 6 * l2 / (width * width)};
}

AreaProfile with_fillet(const AreaProfile& walls, double radius_cm, double perimeter_cm) {
  constexpr int steps = 6;
  const AreaProfile::Piece& wall = walls.pieces().front();
  std::vector<AreaProfile::Piece> pieces;
  for (int i = 0; i < steps; ++i) {
    // Denser at the floor, where the inset is steep.
    const double low = static_cast<double>(i * i) / (steps * steps);
    const double high = static_cast<double>((i + 1) * (i + 1)) / (steps * steps);
    const std::array<double, 3> inset = fillet_piece(low, high);
    const double from = radius_cm * low;
    const auto& c = wall.coefficients;
    pieces.push_back({from,
                      i + 1 == steps ? radius_cm : radius_cm * high,
                      {c[0] + from * (c[1] + from * c[2]) - perimeter_cm * radius_cm * inset[0],
                       c[1] + 2 * c[2] * from - perimeter_cm * inset[1], c[2] - perimeter_cm / radius_cm * inset[2], 0}});
  }
  if (radius_cm < wall.to_cm) {
    const auto& c = wall.coefficients;
    pieces.push_back({radius_cm, wall.to_cm, {c[0] + radius_cm * (c[1] + radius_cm * c[2]), c[1] + 2 * c[2] * radius_cm, c[2], 0}});
  }
  return AreaProfile(std::move(pieces));
}

AreaProfile by_lengths(const Container& container) {
  AreaProfile walls = without_fillet(container);
  const double radius = in_cm(container.fillet_radius);
  return radius > 0 ? with_fillet(walls, radius, floor_perimeter_cm(container)) : walls;
}

double mound_share(MoundForm form) {
  switch (form) {
    case MoundForm::cone: return 1.0 / 3;
    case MoundForm::ellipsoid: return 2.0 / 3;
    case MoundForm::paraboloid: break;
  }
  return 1.0 / 2;
}

double blend(Length low, Length high, double along) { return in_cm(low) + (in_cm(high) - in_cm(low)) * along; }

}  // namespace

double superellipse_share(double exponent) {
  const double side = std::tgamma(1 + 1 / exponent);
  return side * side / std::tgamma(1 + 2 / exponent);
}

PotGeometry::PotGeometry(const Container& container)
    : container_(container), filled_depth_(container.depth - container.freeboard), profile_(by_lengths(container)) {
  const double fill_line = in_cm(filled_depth_);
  volume_by_lengths_ = pot_ml(profile_.volume_cm3(0, fill_line));
  volume_ = volume_by_lengths_;
  if (container.water_fill) {
    const double scale = *container.water_fill / volume_by_lengths_;
    profile_ = profile_.scaled(scale);
    length_scale_ = std::sqrt(scale);
    volume_ = *container.water_fill;
  }
  if (container.mound) {
    mound_volume_ = pot_ml(mound_share(container.mound->form) * profile_.area_cm2(fill_line) * in_cm(container.mound->rise));
  }
  if (container.bottom_layer) bottom_layer_volume_ = volume_below(container.bottom_layer->thickness);
  if (container.top_dressing) {
    top_dressing_volume_ = pot_ml(profile_.volume_cm3(fill_line - in_cm(*container.top_dressing), fill_line));
  }
}

Area PotGeometry::area_at(Depth height) const {
  const double z = in_cm(height);
  const double radius = in_cm(container_.fillet_radius);
  if (!(radius > 0 && z < radius)) return area_cm2(profile_.area_cm2(z));
  // The profile's pieces meet the fillet's moments, not its areas.
  const double wall = without_fillet(container_).area_cm2(z);
  return area_cm2((wall - floor_perimeter_cm(container_) * radius * fillet_inset(std::max(0.0, z) / radius)) * length_scale_ * length_scale_);
}

PotVolume PotGeometry::volume_below(Depth height) const { return pot_ml(profile_.volume_cm3(0, in_cm(height))); }

Section PotGeometry::section_at(Depth height) const {
  const double along = std::clamp(height / container_.depth, 0.0, 1.0);
  switch (container_.shape) {
    case Shape::profile: {
      const Length side = length_cm(std::sqrt(in_cm2(area_at(height))));
      return {side, side};
    }
    case Shape::drum: {
      const Length diameter = length_cm(std::sqrt(drum(container_).area_cm2(in_cm(height)) * 4 / pi) * length_scale_);
      return {diameter, diameter};
    }
    case Shape::bowl: {
      const double share = std::sqrt(along * (2 - along)) * length_scale_;
      return {container_.rim.length * share, container_.rim.width * share};
    }
    default: break;
  }
  const Section& base = base_of(container_);
  return {length_cm(blend(base.length, container_.rim.length, along) * length_scale_),
          length_cm(blend(base.width, container_.rim.width, along) * length_scale_)};
}

}  // namespace gritwright
