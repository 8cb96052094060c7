#pragma once
// Sizes on the logarithmic axis they are compared and averaged on.

#include <cmath>

#include "gritwright/units.hpp"

namespace gritwright {

/// Share by which two sizes may differ and still be one: binary noise of sizes that were read or computed.
inline constexpr double same_size = 1e-9;

/// Precondition: `coarser` is not finer than `finer`.
[[nodiscard]] inline bool equal_sizes(Aperture coarser, Aperture finer) {
  return in_mm(coarser) - in_mm(finer) <= same_size * in_mm(coarser);
}

[[nodiscard]] inline double log_mm(Aperture size) { return std::log(in_mm(size)); }

}  // namespace gritwright
