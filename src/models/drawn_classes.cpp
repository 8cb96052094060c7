#include "drawn_classes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "draw_lanes.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

// Above one half twice what is above it of the chance of a score.
double no_dust_in_lost(double lost) { return lost > 0 ? std::erf(lost / std::numbers::sqrt2) : 0; }

double operator_deviation(double passing) {
  struct Knot {
    double percent;
    double deviation;
  };
  static constexpr std::array<Knot, 12> knots{{{0, 0},
                                               {1, 0.27},
                                               {3.5, 0.53},
                                               {7.5, 0.75},
                                               {12.5, 1.00},
                                               {17.5, 0.96},
                                               {40, 1.32},
                                               {70, 2.25},
                                               {82.5, 1.34},
                                               {90, 0.81},
                                               {97.5, 0.32},
                                               {100, 0}}};
  const double percent = std::clamp(100 * passing, 0.0, 100.0);
  const auto upper = std::ranges::lower_bound(knots, percent, {}, &Knot::percent);
  if (upper == knots.begin()) return 0;
  const auto lower = upper - 1;
  return std::lerp(lower->deviation, upper->deviation, (percent - lower->percent) / (upper->percent - lower->percent)) / 100;
}

DrawnClasses::DrawnClasses(const GrainSizes& sizes, const SievingSpread& spread) : deviations_(spread.class_masses) {
  for (const SizeClass& each : size_classes(sizes)) shares_.push_back(each.share.value());
  double passing = 1;
  for (double share : shares_) {
    const double above = operator_deviation(passing);
    passing -= share;
    moves_.push_back(spread.operators * (above - operator_deviation(passing)));
  }
  lost_ = std::min(spread.lost, shares_.back());
}

template <std::size_t abreast>
void DrawnClasses::draw_rows(const double* classes, const double* operators, const double* lost, double* drawn) const {
  std::array<double, abreast> sum{}, moved_sum{};
  for (std::size_t i = 0; i < shares_.size(); ++i) {
    double* const row = drawn + i * abreast;
    for (std::size_t lane = 0; lane < abreast; ++lane) row[lane] = deviations_[i] * classes[i * abreast + lane];
    raise_e<abreast>(row);
    for (std::size_t lane = 0; lane < abreast; ++lane) sum[lane] += row[lane] *= shares_[i];
  }
  for (double& each : sum) each = 1 / each;
  for (std::size_t i = 0; i < shares_.size(); ++i) {
    double* const row = drawn + i * abreast;
    for (std::size_t lane = 0; lane < abreast; ++lane)
      moved_sum[lane] += row[lane] = std::max(0.0, row[lane] * sum[lane] + moves_[i] * operators[lane]);
  }
  if (lost_ > 0) {
    double* const finest = drawn + (shares_.size() - 1) * abreast;
    for (std::size_t lane = 0; lane < abreast; ++lane) {
      if (!(lost[lane] > 0)) continue;
      const double no_dust = lost_ * no_dust_in_lost(lost[lane]) * moved_sum[lane];
      const double taken = std::min(no_dust, finest[lane]);
      finest[lane] -= taken;
      moved_sum[lane] -= taken;
    }
  }
  for (double& each : moved_sum) each = 1 / each;
  for (std::size_t i = 0; i < shares_.size(); ++i)
    for (std::size_t lane = 0; lane < abreast; ++lane) drawn[i * abreast + lane] *= moved_sum[lane];
}

void DrawnClasses::draw(const Scores& scores, std::span<double> drawn) const { draw_rows<1>(scores.classes.data(), &scores.operators, &scores.lost, drawn.data()); }

void DrawnClasses::draw_abreast(const double* classes, const double* operators, const double* lost, double* drawn) const {
  draw_rows<draws_abreast>(classes, operators, lost, drawn);
}

}  // namespace gritwright
