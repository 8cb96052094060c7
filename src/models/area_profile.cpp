#include "gritwright/models/area_profile.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace gritwright {

namespace {

using Coefficients = std::array<double, 4>;

double value(const Coefficients& c, double t) { return c[0] + t * (c[1] + t * (c[2] + t * c[3])); }

double integral(const Coefficients& c, double t) { return t * (c[0] + t * (c[1] / 2 + t * (c[2] / 3 + t * c[3] / 4))); }

/// Slope at an inner point: the weighted harmonic mean of the neighbouring secants, 0 at a turning point.
double inner_slope(double width_before, double width_after, double secant_before, double secant_after) {
  if (secant_before * secant_after <= 0) return 0;
  const double weight_before = 2 * width_after + width_before;
  const double weight_after = width_after + 2 * width_before;
  return (weight_before + weight_after) / (weight_before / secant_before + weight_after / secant_after);
}

/// Slope at an end: the three-point formula, held back so that the curve keeps the direction of the first secant.
double end_slope(double width_near, double width_far, double secant_near, double secant_far) {
  const double slope = ((2 * width_near + width_far) * secant_near - width_near * secant_far) / (width_near + width_far);
  if (slope * secant_near <= 0) return 0;
  if (secant_near * secant_far <= 0 && std::abs(slope) > 3 * std::abs(secant_near)) return 3 * secant_near;
  return slope;
}

}  // namespace

AreaProfile::AreaProfile(std::vector<Piece> pieces) : pieces_(std::move(pieces)) {
  if (pieces_.empty()) throw std::logic_error("an area profile needs a piece");
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    const bool rising = pieces_[i].to_cm > pieces_[i].from_cm;
    const bool adjoining = i == 0 || pieces_[i].from_cm == pieces_[i - 1].to_cm;
    if (!rising || !adjoining) throw std::logic_error("the pieces of an area profile must rise and adjoin");
  }
}

AreaProfile AreaProfile::column(double height_cm) { return AreaProfile({{0, height_cm, {1, 0, 0, 0}}}); }

double AreaProfile::area_cm2(double height_cm) const {
  const double height = std::clamp(height_cm, pieces_.front().from_cm, top_cm());
  const auto piece = std::ranges::lower_bound(pieces_, height, {}, &Piece::to_cm);
  return value(piece->coefficients, height - piece->from_cm);
}

double AreaProfile::volume_cm3(double from_cm, double to_cm) const {
  double sum = 0;
  for (const Piece& piece : pieces_) {
    const double low = std::max(from_cm, piece.from_cm);
    const double high = std::min(to_cm, piece.to_cm);
    if (high > low) sum += integral(piece.coefficients, high - piece.from_cm) - integral(piece.coefficients, low - piece.from_cm);
  }
  return sum;
}

AreaProfile AreaProfile::scaled(double factor) const {
  std::vector<Piece> pieces = pieces_;
  for (Piece& piece : pieces) {
    for (double& coefficient : piece.coefficients) coefficient *= factor;
  }
  return AreaProfile(std::move(pieces));
}

AreaProfile AreaProfile::below(double height_cm) const {
  std::vector<Piece> pieces;
  for (const Piece& piece : pieces_) {
    if (piece.from_cm >= height_cm) break;
    pieces.push_back(piece);
    pieces.back().to_cm = std::min(piece.to_cm, height_cm);
  }
  return AreaProfile(std::move(pieces));
}

AreaProfile monotone_profile(const std::vector<double>& heights_cm, const std::vector<double>& areas_cm2) {
  const std::size_t last = heights_cm.size() - 1;
  std::vector<double> width(last);
  std::vector<double> secant(last);
  for (std::size_t i = 0; i < last; ++i) {
    width[i] = heights_cm[i + 1] - heights_cm[i];
    secant[i] = (areas_cm2[i + 1] - areas_cm2[i]) / width[i];
  }
  std::vector<double> slope(last + 1, secant[0]);
  if (last > 1) {
    slope[0] = end_slope(width[0], width[1], secant[0], secant[1]);
    slope[last] = end_slope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
    for (std::size_t i = 1; i < last; ++i) slope[i] = inner_slope(width[i - 1], width[i], secant[i - 1], secant[i]);
  }
  std::vector<AreaProfile::Piece> pieces;
  for (std::size_t i = 0; i < last; ++i) {
    const double curvature = (3 * secant[i] - 2 * slope[i] - slope[i + 1]) / width[i];
    const double twist = (slope[i] + slope[i + 1] - 2 * secant[i]) / (width[i] * width[i]);
    pieces.push_back({heights_cm[i], heights_cm[i + 1], {areas_cm2[i], slope[i], curvature, twist}});
  }
  return AreaProfile(std::move(pieces));
}

}  // namespace gritwright
