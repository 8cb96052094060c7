#include "drawn_classes.hpp"

#include <algorithm>
#include <array>
#include <cmath>

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

DrawnClasses::DrawnClasses(std::vector<double> shares, std::vector<double> deviations, double sieving)
    : shares_(std::move(shares)), deviations_(std::move(deviations)) {
  double passing = 1;
  for (double share : shares_) {
    const double above = operator_deviation(passing);
    passing -= share;
    moves_.push_back(sieving * (above - operator_deviation(passing)));
  }
}

void DrawnClasses::draw(std::span<const double> scores, double sieving_score, std::span<double> drawn) const {
  double sum = 0;
  for (std::size_t i = 0; i < shares_.size(); ++i) sum += drawn[i] = shares_[i] * std::exp(deviations_[i] * scores[i]);
  double moved_sum = 0;
  for (std::size_t i = 0; i < shares_.size(); ++i)
    moved_sum += drawn[i] = std::max(0.0, drawn[i] / sum + moves_[i] * sieving_score);
  for (std::size_t i = 0; i < shares_.size(); ++i) drawn[i] /= moved_sum;
}

}  // namespace gritwright
