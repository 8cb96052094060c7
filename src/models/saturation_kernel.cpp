#include "gritwright/models/saturation_kernel.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

#include "draw_lanes.hpp"
#include "drained_part.hpp"
#include "gritwright/models/moment_table.hpp"
#include "tilted_body.hpp"

namespace gritwright {

namespace {

constexpr int intervals = 4096;
const double kernel_log_least = std::log(1e-4);
const double kernel_log_greatest = std::log(1e3);
const double kernel_log_step = (kernel_log_greatest - kernel_log_least) / intervals;

/// Of an interval: one place stands for all, where differences of integrals would lose their digits.
constexpr double hardly_apart = 0.05;

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

SizeRuns::SizeRuns(std::span<const double> log_sizes_mm, std::span<const double> shares_finer, double spread, double n) : spread_(spread) {
  constexpr double classes = std::tuple_size_v<LogSizes>;
  constexpr double widest_step = 0.5;  // in ln alpha over n: what the sum leaves out is below 1e-8 then
  const double longest_step = widest_step / n / kernel_log_step;
  const std::size_t last = shares_finer.size() - 1;
  std::size_t upper = 0;
  std::size_t done = 0;
  while (done < runs_.size()) {
    const double share = (static_cast<double>(done) + 0.5) / classes;
    while (upper < last && shares_finer[upper] < share) ++upper;
    std::size_t count = 1;
    if (upper == 0 || shares_finer[upper] <= share) {
      // Below the first point, right at one, or beyond the last: all of that size.
      if (upper == last) count = runs_.size() - done;
      add(log_sizes_mm[upper], 0, count, longest_step);
    } else {
      const double slope = (log_sizes_mm[upper] - log_sizes_mm[upper - 1]) / (shares_finer[upper] - shares_finer[upper - 1]);
      // The classes whose middle lies below the point; one right at it begins the next stretch.
      const double end = std::ceil(shares_finer[upper] * classes - 0.5);
      count = std::clamp<std::size_t>(static_cast<std::size_t>(std::max(0.0, end)), done + 1, runs_.size()) - done;
      add(log_sizes_mm[upper - 1] + (share - shares_finer[upper - 1]) * slope, slope / classes, count, longest_step);
    }
    done += count;
  }
}

void SizeRuns::add(double first_log_mm, double step_log_mm, std::size_t count, double longest_step) {
  constexpr std::size_t few = 4;
  Run& run = runs_[count_++];
  run.count = count;
  run.first = spread_ * first_log_mm / kernel_log_step;
  run.step = spread_ * step_log_mm / kernel_log_step;
  run.by_ends = count >= few && run.step * static_cast<double>(count) >= hardly_apart && run.step <= longest_step;
  if (run.by_ends) {
    run.per_step = 1 / run.step;
    run.by_slope = run.step / 24;
    run.by_third = 42.0 / 5760 * run.step * run.step * run.step;
  }
  const auto all = static_cast<double>(count);
  log_mean_ += (all * first_log_mm + step_log_mm * all * (all - 1) / 2) / static_cast<double>(std::tuple_size_v<LogSizes>);
}

namespace {

/// Every so many-th place of a table is worked out and the ones between follow from six of them, within 1e-9: the function is smooth over 1/n
/// of ln alpha.
int places_apart(double n) { return n <= 8 ? 4 : n <= 12 ? 2 : 1; }

/// Weights of the values at -2 ... 3 for a place 0..1 (Lagrange).
std::array<double, 6> weights_at(double place) {
  std::array<double, 6> weights{};
  for (std::size_t at = 0; at < weights.size(); ++at) {
    const int i = static_cast<int>(at) - 2;
    double weight = 1;
    for (int j = -2; j <= 3; ++j)
      if (j != i) weight *= (place - j) / (i - j);
    weights[at] = weight;
  }
  return weights;
}

}  // namespace

SaturationKernel::SaturationKernel(std::function<double(double)> by_log_alpha, double n) : exact_(std::move(by_log_alpha)) {
  const int apart = places_apart(n);
  // From -1 to intervals + 1, and a stencil's arms beyond.
  const int stretches = (intervals + 2 + apart - 1) / apart;
  std::vector<double> worked_out;
  worked_out.reserve(static_cast<std::size_t>(stretches) + 6);
  for (int i = -2; i <= stretches + 3; ++i) worked_out.push_back(exact_(kernel_log_least + (i * apart - 1) * kernel_log_step));
  std::vector<std::array<double, 6>> weights;
  for (int i = 0; i < apart; ++i) weights.push_back(weights_at(static_cast<double>(i) / apart));
  std::vector<double> values;
  values.reserve(intervals + 3);
  for (std::size_t i = 0; i < intervals + 3; ++i) {
    const double* const near = worked_out.data() + i / weights.size();
    const std::array<double, 6>& w = weights[i % weights.size()];
    values.push_back(i % weights.size() == 0 ? near[2] : w[0] * near[0] + w[1] * near[1] + w[2] * near[2] + w[3] * near[3] + w[4] * near[4] + w[5] * near[5]);
  }
  cubics_.reserve(intervals);
  integrals_.reserve(intervals);
  double integral = 0;
  for (std::size_t i = 0; i < intervals; ++i) {
    cubics_.push_back(cubic_through(values[i], values[i + 1], values[i + 2], values[i + 3]));
    integrals_.push_back(integral);
    const std::array<double, 4>& c = cubics_.back();
    integral += c[0] + c[2] / 2 + c[1] / 3 + c[3] / 4;
  }
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
    }, n);
  }
  return SaturationKernel([body = pot.profile(), bottom, top, free_water = bottom - bottom_head, table](double log_alpha) {
    return RetentionCurve(0, 1, {std::exp(log_alpha)}, table).mean_saturation(body, bottom, top, free_water);
  }, n);
}

SaturationKernel SaturationKernel::for_column(Depth depth, double n) {
  return SaturationKernel([log_depth = std::log(in_cm(depth)), table = MomentTable::for_shape(n)](double log_alpha) {
    return table->at_log(log_alpha + log_depth, 0)[0];
  }, n);
}

SaturationKernel SaturationKernel::at_head(Depth head, double n) {
  return SaturationKernel([head_cm = in_cm(head), table = MomentTable::for_shape(n)](double log_alpha) {
    return table->saturation(std::exp(log_alpha) * head_cm);
  }, n);
}

std::shared_ptr<const SaturationKernel> SaturationKernel::by_head(double n) {
  static const double usual_n = RetentionConstants{}.n;
  static const auto usual = std::make_shared<const SaturationKernel>(at_head(depth_cm(1), usual_n));
  return n == usual_n ? usual : std::make_shared<const SaturationKernel>(at_head(depth_cm(1), n));
}

// A call for each of a hundred sizes would cost more than the look-up.
[[gnu::always_inline]] inline double SaturationKernel::in_table(double position) const {
  const int index = static_cast<int>(position);
  const double u = position - index;
  const std::array<double, 4>& c = cubics_[static_cast<std::size_t>(index)];
  return (c[0] + u * c[2]) + (u * u) * (c[1] + u * c[3]);
}

/// Sum over the classes of a run that begins half a step before its first class and ends half a step after its last, all within the table.
[[gnu::always_inline]] inline double SaturationKernel::run_in_table(const SizeRuns::Run& run, double low, double high, double offset) const {
  const auto count = static_cast<double>(run.count);
  if (run.by_ends) {
    // The integral over the steps, less what the middles of steps are off by; both ends at once.
    const Pair position = Pair{low, high} + offset;
    const int from = static_cast<int>(position[0]), to = static_cast<int>(position[1]);
    const std::array<double, 4>& a = cubics_[static_cast<std::size_t>(from)];
    const std::array<double, 4>& b = cubics_[static_cast<std::size_t>(to)];
    const Pair u = position - Pair{static_cast<double>(from), static_cast<double>(to)};
    const Pair constant{a[0], b[0]}, square{a[1], b[1]}, linear{a[2], b[2]}, cube{a[3], b[3]};
    const Pair before{integrals_[static_cast<std::size_t>(from)], integrals_[static_cast<std::size_t>(to)]};
    const Pair integral = before + u * (constant + u * (linear * 0.5 + u * (square * (1.0 / 3) + u * (cube * 0.25))));
    const Pair slope = linear + u * (square * 2.0 + u * (cube * 3.0));
    const Pair ends = integral * run.per_step - slope * run.by_slope + cube * run.by_third;
    return ends[1] - ends[0];
  }
  const double first = run.first + offset;
  if (run.step * count < hardly_apart) return count * in_table(first + run.step * (count - 1) / 2);
  double sum = 0;
  for (std::size_t j = 0; j < run.count; ++j) sum += in_table(first + run.step * static_cast<double>(j));
  return sum;
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

void SaturationKernel::means(const SizeRuns& sizes, std::span<const double> log_k, std::span<double> means) const {
  constexpr double per_class = 1.0 / static_cast<double>(std::tuple_size_v<LogSizes>);
  const double shift = (1 - sizes.spread_) * sizes.log_mean_ - kernel_log_least;
  const auto offset_of = [&, per_step = 1 / kernel_log_step](double each) { return (shift - each) * per_step; };
  const auto [least, most] = std::ranges::minmax(log_k);
  const double leftmost = offset_of(most), rightmost = offset_of(least);
  std::ranges::fill(means, 0.0);
  for (const SizeRuns::Run& run : std::span(sizes.runs_).first(sizes.count_)) {
    const double low = run.first - run.step / 2, high = low + run.step * static_cast<double>(run.count);
    const bool all_in_table = low + leftmost >= 0 && high + rightmost < intervals;
    for (std::size_t i = 0; i < log_k.size(); ++i) {
      const double offset = offset_of(log_k[i]);
      if (all_in_table || (low + offset >= 0 && high + offset < intervals)) {
        means[i] += run_in_table(run, low, high, offset);
      } else {
        for (std::size_t j = 0; j < run.count; ++j) means[i] += at((run.first + offset + run.step * static_cast<double>(j)) * kernel_log_step + kernel_log_least);
      }
    }
  }
  for (double& mean : means) mean *= per_class;
}

double SaturationKernel::mean(const SizeRuns& sizes, double k_cm_mm) const {
  const double log_k = std::log(k_cm_mm);
  double mean = 0;
  means(sizes, {&log_k, 1}, {&mean, 1});
  return mean;
}

}  // namespace gritwright
