#pragma once
// For searches and samplings that ask the water of one pot thousands of times: what a pot does to one size of pore is a function
// of that size alone, so it is tabulated once per pot; a mix is then a hundred look-ups.

#include <array>
#include <functional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

/// ln of the sizes (mm) of the chain's hundred equal-volume classes.
using LogSizes = std::array<double, 100>;

/// As equal_volume_sizes, on bare logarithms: ln mm and share finer, both rising, shares from 0 to 1, a step as two points.
[[nodiscard]] LogSizes equal_volume_log_sizes(std::span<const double> log_sizes_mm, std::span<const double> shares_finer);

/// Mean saturation of one thing (a pot, a head) by pore size, within 1e-8 of the exact figure for 1.05 <= n <= 20.
class SaturationKernel {
 public:
  /// The mean over a pot to its fill line, with saucer, wick and tilt; over its part above the bottom layer where the chain of
  /// the layer's grain is given. n > 1.
  [[nodiscard]] static SaturationKernel for_pot(const PotGeometry& pot, double n, const Retention* layer = nullptr);

  /// Straight walls of a depth, draining freely.
  [[nodiscard]] static SaturationKernel for_column(Depth depth, double n);

  /// Se at one suction > 0.
  [[nodiscard]] static SaturationKernel at_head(Depth head, double n);

  /// For ln alpha, alpha in 1/cm.
  [[nodiscard]] double at(double log_alpha) const;

  /// Mean over the hundred classes, ln alpha_j = ln d_c + b (ln d_j - ln d_c) - ln k.
  [[nodiscard]] double mean(const LogSizes& sizes, double k_cm_mm, double spread) const;

 private:
  explicit SaturationKernel(std::function<double(double)> by_log_alpha);
  [[nodiscard]] double in_table(double position) const;

  std::vector<std::array<double, 4>> cubics_;  // of the way along the interval
  std::function<double(double)> exact_;        // beyond the table
};

}  // namespace gritwright
