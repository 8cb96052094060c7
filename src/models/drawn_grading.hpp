#pragma once
#include <span>
#include <vector>

#include "drawn_classes.hpp"
#include "gritwright/domain/grading.hpp"

namespace gritwright {

/// A grading as it could have come out. Classes that are empty stay empty.
class DrawnGrading {
 public:
  /// Precondition: `spread` is for this grading.
  DrawnGrading(Grading nominal, const SievingSpread& spread) : nominal_(std::move(nominal)), classes_(nominal_, spread), shares_(classes_.size()) {}

  /// Of DrawnClasses::Scores::classes.
  [[nodiscard]] std::size_t classes() const { return classes_.size(); }

  [[nodiscard]] Grading draw(const DrawnClasses::Scores& scores);

 private:
  Grading nominal_;
  DrawnClasses classes_;
  std::vector<double> shares_;
};

}  // namespace gritwright
