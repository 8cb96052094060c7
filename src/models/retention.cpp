#include "gritwright/models/retention.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>

#include "gritwright/models/saturation_kernel.hpp"
#include "size_order.hpp"

namespace gritwright {

namespace {

using Coefficients = std::array<double, 4>;

/// The same cubic about a new origin: p(t) with t = u + shift, by powers of u.
Coefficients moved(const Coefficients& c, double shift) {
  return {c[0] + shift * (c[1] + shift * (c[2] + shift * c[3])), c[1] + shift * (2 * c[2] + shift * 3 * c[3]),
          c[2] + 3 * shift * c[3], c[3]};
}

int degree_of(const Coefficients& c) {
  int degree = 3;
  while (degree > 0 && c[static_cast<std::size_t>(degree)] == 0) --degree;
  return degree;
}

/// A stretch of the body above free water: area by powers of the head.
struct Stretch {
  double head_from_cm;
  double head_to_cm;
  Coefficients area_by_head;
  int degree;

  /// A thin stretch high up has steep powers of the head that nearly cancel; there the moments would lose digits.
  [[nodiscard]] bool cancels() const { return degree > 1 && head_to_cm - head_from_cm < 0.15 * head_to_cm; }
};

/// Integral of area·S over a thin stretch by Gauss' rule, which is exact to rounding on so short a way.
double thin_integral(const MomentTable& table, double alpha_per_cm, const Stretch& stretch) {
  const auto integrand = [&](double head) {
    const Coefficients& c = stretch.area_by_head;
    return (c[0] + head * (c[1] + head * (c[2] + head * c[3]))) * table.saturation(alpha_per_cm * head);
  };
  return boost::math::quadrature::gauss<double, 10>::integrate(integrand, stretch.head_from_cm, stretch.head_to_cm);
}

/// J_m(h) = integral of u^m·S(alpha u) from 0 to h = h^(m+1)·M_m(alpha h).
Coefficients moment_integrals(const MomentTable& table, double log_alpha, double head_cm, int degree) {
  if (head_cm <= 0) return {};
  Coefficients integrals = table.at_log(log_alpha + std::log(head_cm), degree);
  double power = head_cm;
  for (int m = 0; m <= degree; ++m, power *= head_cm) integrals[static_cast<std::size_t>(m)] *= power;
  return integrals;
}

std::vector<double> alphas_per_cm(const std::vector<Aperture>& sizes, Aperture mean, const RetentionConstants& constants) {
  std::vector<double> alphas;
  alphas.reserve(sizes.size());
  const double log_mean = log_mm(mean);
  for (const Aperture& size : sizes) {
    alphas.push_back(std::exp(log_mean + constants.spread * (log_mm(size) - log_mean)) / constants.k_cm_mm);
  }
  return alphas;
}

RetentionCurve chain_curve(const RetentionInput& input, const std::vector<Aperture>& sizes, Aperture mean) {
  const double saturated = input.constants.flooded_fill * input.voids_between_grains.value();
  // Voids so small that the residual share would exceed what a flood fills hold that share throughout.
  const double residual = std::min(input.constants.residual, saturated);
  return {residual, saturated, alphas_per_cm(sizes, mean, input.constants), input.constants.n, input.grain_water.value()};
}

constexpr double retention_rounding = 1e-9;

/// Finer share below the widest jump in size, where the mean sizes of the two parts lie more than fivefold apart.
std::optional<double> gap_graded_fines(const std::vector<Aperture>& sizes) {
  std::size_t split = 0;
  double widest = std::log(1.5);  // neighbouring classes of a continuous grading lie closer than that
  for (std::size_t j = 1; j < sizes.size(); ++j) {
    const double jump = log_mm(sizes[j]) - log_mm(sizes[j - 1]);
    if (jump > widest) {
      widest = jump;
      split = j;
    }
  }
  if (split == 0) return std::nullopt;
  const auto middle = sizes.begin() + static_cast<std::ptrdiff_t>(split);
  const double ratio = geometric_mean({middle, sizes.end()}) / geometric_mean({sizes.begin(), middle});
  if (ratio <= 5 * (1 + retention_rounding)) return std::nullopt;
  return static_cast<double>(split) / static_cast<double>(sizes.size());
}

Notes bias_notes(const RetentionInput& input, const std::vector<Aperture>& sizes, Aperture mean) {
  Notes notes;
  const double mean_mm = in_mm(mean);
  // A mean of logarithms misses the size itself by binary rounding.
  const auto above = [&](double limit_mm) { return mean_mm > limit_mm * (1 + retention_rounding); };
  const RetentionConstants usual;
  if (input.constants.k_cm_mm == usual.k_cm_mm && above(2)) {
    notes.push_back({"water.above-two-mm", Level::note, "", {{"size_mm", mean_mm}}});
  }
  if (above(15)) notes.push_back({"water.above-range", Level::warning, "", {{"size_mm", mean_mm}}});
  if (above(8)) notes.push_back({"water.one-grain-perched", Level::note, "", {{"size_mm", mean_mm}}});
  if (input.finer_than_pan_sieve.value() > 0.03 * (1 + retention_rounding)) {
    notes.push_back({"water.fines-clog", Level::warning, "", {{"fines_percent", in_percent(input.finer_than_pan_sieve)}}});
  }
  // The literature's limit is "25-30 % or more"; the lower one warns earlier.
  if (const auto fines = gap_graded_fines(sizes); fines && *fines >= 0.25) {
    notes.push_back({"water.gap-graded", Level::warning, "", {{"fines_percent", *fines * 100}}});
  }
  if (in_mm(sizes[sizes.size() / 10]) < 0.1) notes.push_back({"water.dusty", Level::warning, "", {{"size_mm", in_mm(sizes[sizes.size() / 10])}}});
  if (input.organic_or_fibrous) notes.push_back({"water.organic", Level::warning, "", {}});
  notes.push_back({"water.new-mix", Level::note, "", {}});
  return notes;
}

}  // namespace

RetentionCurve::RetentionCurve(double residual, double saturated, const std::vector<double>& alphas_per_cm, double n,
                               double grain_water)
    : RetentionCurve(residual, saturated, alphas_per_cm, MomentTable::for_shape(n), grain_water) {}

RetentionCurve::RetentionCurve(double residual, double saturated, const std::vector<double>& alphas_per_cm,
                               std::shared_ptr<const MomentTable> table, double grain_water)
    : residual_(residual), saturated_(saturated), grain_water_(grain_water), table_(std::move(table)) {
  const double share = 1 / static_cast<double>(alphas_per_cm.size());
  for (double alpha : alphas_per_cm) {
    if (!classes_.empty() && classes_.back().alpha_per_cm == alpha) {
      classes_.back().share += share;
    } else {
      classes_.push_back({alpha, std::log(alpha), share});
    }
  }
}

double RetentionCurve::saturation(double head_cm) const {
  if (head_cm <= 0) return 1;
  // As the table's saturation, by the logarithms that are at hand: a power costs twice an exponential.
  const double n = table_->n(), exponent = 1 / n - 1, log_head = std::log(head_cm);
  double sum = 0;
  for (const PoreClass& pores : classes_) sum += pores.share * std::pow(1 + std::exp(n * (pores.log_alpha + log_head)), exponent);
  return sum;
}

Porosity RetentionCurve::water_for_saturation(double saturation) const {
  return Porosity(residual_ + (saturated_ - residual_) * saturation + grain_water_);
}

Porosity RetentionCurve::water_at(Depth head) const { return water_for_saturation(saturation(in_cm(head))); }

double RetentionCurve::mean_saturation(const AreaProfile& body, double from_cm, double to_cm, double free_water_cm) const {
  double saturated_volume = 0;
  std::vector<Stretch> stretches;
  for (const AreaProfile::Piece& piece : body.pieces()) {
    const double low = std::max(from_cm, piece.from_cm);
    const double high = std::min(to_cm, piece.to_cm);
    if (high <= low) continue;
    const double water_line = std::clamp(free_water_cm, low, high);
    saturated_volume += body.volume_cm3(low, water_line);
    if (water_line == high) continue;
    const Coefficients by_head = moved(piece.coefficients, free_water_cm - piece.from_cm);
    stretches.push_back({water_line - free_water_cm, high - free_water_cm, by_head, degree_of(piece.coefficients)});
  }
  if (stretches.empty()) return 1;
  int degree = 0;
  for (const Stretch& stretch : stretches) degree = std::max(degree, stretch.degree);

  double sum = 0;
  for (const PoreClass& pores : classes_) {
    Coefficients lower = moment_integrals(*table_, pores.log_alpha, stretches.front().head_from_cm, degree);
    double water = 0;
    for (const Stretch& stretch : stretches) {
      const Coefficients upper = moment_integrals(*table_, pores.log_alpha, stretch.head_to_cm, degree);
      if (stretch.cancels()) {
        water += thin_integral(*table_, pores.alpha_per_cm, stretch);
      } else {
        for (std::size_t m = 0; m <= static_cast<std::size_t>(stretch.degree); ++m) water += stretch.area_by_head[m] * (upper[m] - lower[m]);
      }
      lower = upper;
    }
    sum += pores.share * water;
  }
  return (saturated_volume + sum) / body.volume_cm3(from_cm, to_cm);
}

Depth RetentionCurve::head_at(double saturation_wanted) const {
  double low = 0, high = 1;
  while (saturation(high) > saturation_wanted) {
    low = high;
    high *= 2;
  }
  const auto excess = [&](double head) { return saturation(head) - saturation_wanted; };
  std::uintmax_t steps = 100;
  const auto [low_end, high_end] =
      boost::math::tools::toms748_solve(excess, low, high, boost::math::tools::eps_tolerance<double>(40), steps);
  return depth_cm((low_end + high_end) / 2);
}

std::vector<GradingPoint> with_pan_step(std::vector<GradingPoint> points, std::optional<Aperture> pan_size) {
  if (points.empty() || points.front().passing <= Passing(0)) return points;
  const GradingPoint finest = points.front();
  const Aperture pan = pan_size.value_or(finest.aperture / 2);
  points.insert(points.begin(), {{pan, Passing(0)}, {pan, finest.passing}});
  return points;
}

std::vector<Aperture> equal_volume_sizes(const std::vector<GradingPoint>& grading) {
  std::vector<double> log_sizes_mm;
  std::vector<double> shares_finer;
  for (const GradingPoint& point : grading) {
    log_sizes_mm.push_back(log_mm(point.aperture));
    shares_finer.push_back(point.passing.value());
  }
  std::vector<Aperture> sizes;
  for (double log_size : equal_volume_log_sizes(log_sizes_mm, shares_finer)) sizes.push_back(aperture_mm(std::exp(log_size)));
  return sizes;
}

Aperture geometric_mean(const std::vector<Aperture>& sizes) {
  double sum = 0;
  for (const Aperture& size : sizes) sum += log_mm(size);
  return aperture_mm(std::exp(sum / static_cast<double>(sizes.size())));
}

Retention::Retention(RetentionInput input)
    : input_(std::move(input)),
      sizes_(equal_volume_sizes(input_.envelope_grading)),
      characteristic_size_(geometric_mean(sizes_)),
      curve_(chain_curve(input_, sizes_, characteristic_size_)),
      notes_(bias_notes(input_, sizes_, characteristic_size_)) {}

}  // namespace gritwright
