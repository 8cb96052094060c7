#include "gritwright/models/saturation_kernel.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

#include "gritwright/models/moment_table.hpp"
#include "drained_part.hpp"
#include "tilted_body.hpp"

namespace gritwright {

namespace {

constexpr int intervals = 4096;
const double kernel_log_least = std::log(1e-4);
const double kernel_log_greatest = std::log(1e3);
const double kernel_log_step = (kernel_log_greatest - kernel_log_least) / intervals;

/// The cubic through values at -1, 0, 1, 2: the factors of 1, u², u, u³, so that two products are made at a time.
std::array<double, 4> cubic_through(double before, double low, double high, double after) {
  const double linear = high - before / 3 - low / 2 - after / 6, square = (before + high) / 2 - low;
  return {low, square, linear, (after - before) / 6 + (low - high) / 2};
}

/// Four running sums side by side: one alone waits for each addition to end before the next begins.
template <class Term>
double sum_of(const LogSizes& sizes, Term term) {
  static_assert(std::tuple_size_v<LogSizes> % 4 == 0);
  std::array<double, 4> sums{};
  for (std::size_t i = 0; i < sizes.size(); i += 4) {
    for (std::size_t lane = 0; lane < 4; ++lane) sums[lane] += term(sizes[i + lane]);
  }
  return (sums[0] + sums[1]) + (sums[2] + sums[3]);
}

}  // namespace

LogSizes equal_volume_log_sizes(std::span<const double> log_sizes_mm, std::span<const double> shares_finer) {
  LogSizes sizes{};
  const std::size_t last = shares_finer.size() - 1;
  std::size_t upper = 0;
  double slope = 0;
  std::size_t slope_of = 0;  // the point the slope leads up to; 0: none yet
  for (std::size_t j = 0; j < sizes.size(); ++j) {
    const double share = (static_cast<double>(j) + 0.5) / static_cast<double>(sizes.size());
    while (upper < last && shares_finer[upper] < share) ++upper;
    if (upper == 0 || shares_finer[upper] <= share) {
      sizes[j] = log_sizes_mm[upper];
      continue;
    }
    if (slope_of != upper) {
      slope = (log_sizes_mm[upper] - log_sizes_mm[upper - 1]) / (shares_finer[upper] - shares_finer[upper - 1]);
      slope_of = upper;
    }
    sizes[j] = log_sizes_mm[upper - 1] + (share - shares_finer[upper - 1]) * slope;
  }
  return sizes;
}

SaturationKernel::SaturationKernel(std::function<double(double)> by_log_alpha) : exact_(std::move(by_log_alpha)) {
  std::vector<double> values;
  values.reserve(intervals + 3);
  for (int i = -1; i <= intervals + 1; ++i) values.push_back(exact_(kernel_log_least + i * kernel_log_step));
  cubics_.reserve(intervals);
  for (std::size_t i = 0; i < intervals; ++i) cubics_.push_back(cubic_through(values[i], values[i + 1], values[i + 2], values[i + 3]));
}

SaturationKernel SaturationKernel::for_pot(const PotGeometry& pot, double n, const Retention* layer) {
  const double top = in_cm(pot.filled_depth());
  const auto [bottom, bottom_head] = drained_part(pot, layer);
  const auto table = MomentTable::for_shape(n);
  if (pot.container().tilt.angle.value() > 0) {
    const auto heads = std::make_shared<const std::vector<WeightedHead>>(tilted_heads(pot, bottom, top, bottom_head));
    return SaturationKernel([heads, table](double log_alpha) {
      const double alpha = std::exp(log_alpha);
      return std::accumulate(heads->begin(), heads->end(), 0.0, [&](double sum, const WeightedHead& point) {
        return sum + point.share * (point.head_cm > 0 ? table->saturation(alpha * point.head_cm) : 1);
      });
    });
  }
  return SaturationKernel([body = pot.profile(), bottom, top, free_water = bottom - bottom_head, table](double log_alpha) {
    return RetentionCurve(0, 1, {std::exp(log_alpha)}, table).mean_saturation(body, bottom, top, free_water);
  });
}

SaturationKernel SaturationKernel::for_column(Depth depth, double n) {
  return SaturationKernel([log_depth = std::log(in_cm(depth)), table = MomentTable::for_shape(n)](double log_alpha) {
    return table->at_log(log_alpha + log_depth, 0)[0];
  });
}

SaturationKernel SaturationKernel::at_head(Depth head, double n) {
  return SaturationKernel([head_cm = in_cm(head), table = MomentTable::for_shape(n)](double log_alpha) {
    return table->saturation(std::exp(log_alpha) * head_cm);
  });
}

// A call for each of a hundred sizes would cost more than the look-up.
[[gnu::always_inline]] inline double SaturationKernel::in_table(double position) const {
  const int index = static_cast<int>(position);
  const double u = position - index;
  const std::array<double, 4>& c = cubics_[static_cast<std::size_t>(index)];
  return (c[0] + u * c[2]) + (u * u) * (c[1] + u * c[3]);
}

double SaturationKernel::at(double log_alpha) const {
  const double position = (log_alpha - kernel_log_least) / kernel_log_step;
  if (!(position >= 0 && position < intervals)) return exact_(log_alpha);
  return in_table(position);
}

double SaturationKernel::mean(const LogSizes& sizes, double k_cm_mm, double spread) const {
  const auto count = static_cast<double>(sizes.size());
  const double log_mean = sum_of(sizes, [](double size) { return size; }) / count;
  const double shift = (1 - spread) * log_mean - std::log(k_cm_mm);
  const double scale = spread / kernel_log_step;
  const double offset = (shift - kernel_log_least) / kernel_log_step;
  // Sizes rise, so the two ends tell whether all of them lie in the table.
  const bool all_in_table = scale * sizes.front() + offset >= 0 && scale * sizes.back() + offset < intervals;
  if (all_in_table) {
    // As in_table, but the two halves of each cubic are summed apart.
    using Pair [[gnu::vector_size(16)]] = double;
    std::array<Pair, 4> sums{};
    for (std::size_t i = 0; i < sizes.size(); i += sums.size()) {
      for (std::size_t lane = 0; lane < sums.size(); ++lane) {
        const double position = scale * sizes[i + lane] + offset;
        const int index = static_cast<int>(position);
        const double u = position - index;
        const std::array<double, 4>& c = cubics_[static_cast<std::size_t>(index)];
        sums[lane] += Pair{1, u * u} * (Pair{c[0], c[1]} + u * Pair{c[2], c[3]});
      }
    }
    const Pair sum = (sums[0] + sums[1]) + (sums[2] + sums[3]);
    return (sum[0] + sum[1]) / count;
  }
  return sum_of(sizes, [&](double size) { return at(spread * size + shift); }) / count;
}

}  // namespace gritwright
