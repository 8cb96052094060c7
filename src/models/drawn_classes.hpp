#pragma once
#include <span>
#include <vector>

#include "gritwright/models/mix_spread.hpp"

namespace gritwright {

/// The size classes of one graded grain, coarse to fine, as chance and the operator could have shown them.
class DrawnClasses {
 public:
  /// `deviations` of ln(mass) by class; `sieving` in operator deviations.
  DrawnClasses(std::vector<double> shares, std::vector<double> deviations, double sieving);

  [[nodiscard]] std::size_t size() const { return shares_.size(); }

  /// Shares for one score a class and one for the operator; they sum to 1. `drawn` has a place for each class.
  void draw(std::span<const double> scores, double sieving_score, std::span<double> drawn) const;

 private:
  std::vector<double> shares_;
  std::vector<double> deviations_;
  std::vector<double> moves_;  ///< change of each share at a sieving score of 1
};

/// The operator's standard deviation at a share passing, 0..1: astm-c136-14 Table 2 as a line through the middles of its rows, so
/// that neighbouring sieves can't cross; 0 at 0 and 1.
[[nodiscard]] double operator_deviation(double passing);

}  // namespace gritwright
