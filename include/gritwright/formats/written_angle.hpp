#pragma once
#include <cmath>

#include "gritwright/units.hpp"

namespace gritwright {

/// Degrees to a billionth: 60 that was typed is written as 60, without the noise of the way to radians and back.
[[nodiscard]] inline double written_deg(Angle value) {
  constexpr double per_degree = 1e9;
  return std::round(in_deg(value) * per_degree) / per_degree + 0.0;
}

}  // namespace gritwright
