#pragma once
#include <cmath>

namespace gritwright {

/// Wedging grows with the share YL of coarser grain as 2.6^YL - 1 and with the share YS of finer grain as 3.8^YS - 1. Source:
/// kwan-chan-wong-2013.
inline constexpr double base_coarser = 2.6;
inline constexpr double base_finer = 3.8;
inline const double log_base_coarser = std::log(base_coarser);
inline const double log_base_finer = std::log(base_finer);

/// Grows from 0 to 1 as the sizes part, so that cutting a class in two leaves the wedging as it was.
[[nodiscard]] inline double apartness(double size_ratio) { return 1 - std::pow(size_ratio, 6); }

}  // namespace gritwright
