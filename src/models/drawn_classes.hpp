#pragma once
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/models/sieving_spread.hpp"

namespace gritwright {

/// The size classes of one graded grain, coarse to fine, as chance, the balance and the operator could have shown them.
class DrawnClasses {
 public:
  /// Precondition: `spread` is for these sizes.
  DrawnClasses(const GrainSizes& sizes, const SievingSpread& spread);

  [[nodiscard]] std::size_t size() const { return shares_.size(); }

  /// Standard normal scores of one draw; `classes` has one for each.
  struct Scores {
    std::span<const double> classes;
    double operators = 0;
    double lost = 0;
  };

  /// Shares that sum to 1. `drawn` has a place for each class.
  void draw(const Scores& scores, std::span<double> drawn) const;

  /// The same of draws_abreast draws: a row of scores and a row of shares for each class, a row for the operators and one for what was lost.
  void draw_abreast(const double* classes, const double* operators, const double* lost, double* drawn) const;

 private:
  template <std::size_t abreast>
  void draw_rows(const double* classes, const double* operators, const double* lost, double* drawn) const;

  std::vector<double> shares_;
  std::vector<double> deviations_;
  std::vector<double> moves_;  ///< change of each share at an operators' score of 1
  double lost_ = 0;
};

/// How much of what was lost was no dust but grain of all sizes, at a score of `lost`: none in half the cases, any part in the others. 0..1
[[nodiscard]] double no_dust_in_lost(double lost);

/// The operator's standard deviation at a share passing, 0..1: astm-c136-14 Table 2 as a line through the middles of its rows, so
/// that neighbouring sieves can't cross; 0 at 0 and 1.
[[nodiscard]] double operator_deviation(double passing);

}  // namespace gritwright
