#pragma once
// For searches and samplings that ask the water of one pot thousands of times: what a pot does to one size of pore is a function
// of that size alone, so it is tabulated once per pot; a mix is then a hundred look-ups.

#include <array>
#include <cstddef>
#include <functional>
#include <memory>
#include <span>
#include <tuple>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

/// ln of the sizes (mm) of the chain's hundred equal-volume classes.
using LogSizes = std::array<double, 100>;

/// As equal_volume_sizes, on bare logarithms: ln mm and share finer, both rising, shares from 0 to 1, a step as two points.
[[nodiscard]] LogSizes equal_volume_log_sizes(std::span<const double> log_sizes_mm, std::span<const double> shares_finer);

/// The hundred classes for one b and n, stretch by stretch: between two points of the curve they are evenly spaced in ln alpha, so that
/// sums over them can be taken from the ends of a stretch. For many kernels of one mix.
class SizeRuns {
 public:
  /// Curve as in equal_volume_log_sizes; `spread` is b, `n` the kernels'.
  SizeRuns(std::span<const double> log_sizes_mm, std::span<const double> shares_finer, double spread, double n);

  /// Mean of ln mm, which is ln d_c.
  [[nodiscard]] double log_mean() const { return log_mean_; }

 private:
  friend class SaturationKernel;
  /// In steps of the kernels' tables, for k = 1 and d_c = 1.
  struct Run {
    double first = 0;
    double step = 0;
    std::size_t count = 0;
    bool by_ends = false;      ///< long and fine enough for Euler-Maclaurin's sum
    double per_step = 0;       ///< 1/step
    double by_slope = 0;       ///< step/24
    double by_third = 0;       ///< 42/5760 step^3
  };
  void add(double first_log_mm, double step_log_mm, std::size_t count, double longest_step);

  std::array<Run, std::tuple_size_v<LogSizes>> runs_;
  std::size_t count_ = 0;
  double spread_;
  double log_mean_ = 0;
};

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

  /// The same at 1 cm, worked out once for the default shape: Se at a suction of h cm is that for k/h.
  [[nodiscard]] static std::shared_ptr<const SaturationKernel> by_head(double n);

  /// For ln alpha, alpha in 1/cm.
  [[nodiscard]] double at(double log_alpha) const;

  /// Mean over the hundred classes, ln alpha_j = ln d_c + b (ln d_j - ln d_c) - ln k.
  [[nodiscard]] double mean(const LogSizes& sizes, double k_cm_mm, double spread) const;

  /// The same several times as fast and within 1e-8 of it: a stretch by its integral and the derivatives at its ends (Euler-Maclaurin).
  [[nodiscard]] double mean(const SizeRuns& sizes, double k_cm_mm) const;

  /// The same for several ln k (cm·mm), quicker than one by one; fills `means`, which is as long.
  void means(const SizeRuns& sizes, std::span<const double> log_k, std::span<double> means) const;

 private:
  SaturationKernel(std::function<double(double)> by_log_alpha, double n);
  [[nodiscard]] double in_table(double position) const;
  [[nodiscard]] double run_in_table(const SizeRuns::Run& run, double low, double high, double offset) const;

  std::vector<std::array<double, 4>> cubics_;  // of the way along the interval
  std::vector<double> integrals_;              // of the cubics before each interval
  std::function<double(double)> exact_;        // beyond the table
};

}  // namespace gritwright
