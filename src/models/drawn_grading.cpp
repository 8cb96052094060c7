#include "drawn_grading.hpp"

#include <algorithm>

namespace gritwright {

Grading DrawnGrading::draw(const DrawnClasses::Scores& scores) {
  classes_.draw(scores, shares_);
  Grading drawn = nominal_;
  std::size_t next = 0;
  double passing = 1;
  const std::vector<GradingPoint>& given = nominal_.points;
  // Coarse to fine, as the classes stand: what lies above the coarsest sieve first.
  for (std::size_t i = given.size(); i-- > 0;) {
    const double coarser = i + 1 == given.size() ? 1 : given[i + 1].passing.value();
    if (coarser - given[i].passing.value() > 0) passing -= shares_[next++];
    const bool nothing_finer = !(given[i].passing.value() > 0);
    drawn.points[i].passing = Passing(nothing_finer ? 0 : std::clamp(passing, 0.0, 1.0));
  }
  return drawn;
}

}  // namespace gritwright
