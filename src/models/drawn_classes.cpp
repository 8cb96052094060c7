#include "drawn_classes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "gritwright/models/packing.hpp"

namespace gritwright {

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

void DrawnClasses::draw(const Scores& scores, std::span<double> drawn) const {
  double sum = 0;
  for (std::size_t i = 0; i < shares_.size(); ++i) sum += drawn[i] = shares_[i] * std::exp(deviations_[i] * scores.classes[i]);
  double moved_sum = 0;
  for (std::size_t i = 0; i < shares_.size(); ++i)
    moved_sum += drawn[i] = std::max(0.0, drawn[i] / sum + moves_[i] * scores.operators);
  if (lost_ > 0 && scores.lost > 0) {
    // Twice the chance above one half: none of the loss was more than dust in half the cases, any part of it in the others.
    const double no_dust = lost_ * std::erf(scores.lost / std::numbers::sqrt2) * moved_sum;
    const double taken = std::min(no_dust, drawn[shares_.size() - 1]);
    drawn[shares_.size() - 1] -= taken;
    moved_sum -= taken;
  }
  for (std::size_t i = 0; i < shares_.size(); ++i) drawn[i] /= moved_sum;
}

}  // namespace gritwright
