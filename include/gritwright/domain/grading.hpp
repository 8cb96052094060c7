#pragma once
#include <optional>
#include <variant>
#include <vector>

#include "gritwright/units.hpp"

namespace gritwright {

/// One point of a grading curve: the share of the mass finer than `aperture`.
struct GradingPoint {
  Aperture aperture;
  Passing passing;
  friend bool operator==(const GradingPoint&, const GradingPoint&) = default;
};

/// A grading as measured: points in rising aperture, passing never falling, 0..1 (checked by `check(Grading)`).
struct Grading {
  std::vector<GradingPoint> points;
  /// Size that stands for the grain in the pan; half the finest sieve where it is not given.
  std::optional<Aperture> pan_size;
  /// Upper end of the class above the coarsest sieve; the next coarser R20/3 sieve where it is not given.
  std::optional<Aperture> top_size;
  friend bool operator==(const Grading&, const Grading&) = default;
};

/// Grain of one size: its curve is a step.
struct SingleSize {
  Aperture size;
  friend bool operator==(const SingleSize&, const SingleSize&) = default;
};

using GrainSizes = std::variant<Grading, SingleSize>;

}  // namespace gritwright
