#pragma once
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"

namespace gritwright {

/// Percent passing over size, linear in log10(size) between the measured points and never extrapolated. Source: sieving.md.
class GradingCurve {
 public:
  /// Precondition: check(grading) is empty.
  explicit GradingCurve(const Grading& grading);
  explicit GradingCurve(const SingleSize& size);
  explicit GradingCurve(const GrainSizes& sizes);

  /// Share finer than `aperture`. Empty below the finest point unless nothing passes it, and above the coarsest unless all does.
  [[nodiscard]] std::optional<Passing> passing_at(Aperture aperture) const;

  /// The size that `passing` of the mass is finer than (D50 for 0.5). Empty outside the measured range. On a flat stretch the
  /// finer end.
  [[nodiscard]] std::optional<Aperture> size_at(Passing passing) const;

  /// Points in rising aperture; a single size has two points at the same aperture (0, then 1).
  [[nodiscard]] const std::vector<GradingPoint>& points() const { return points_; }

 private:
  std::vector<GradingPoint> points_;
};

}  // namespace gritwright
