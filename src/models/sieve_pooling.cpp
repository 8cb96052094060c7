#include "gritwright/models/sieve_pooling.hpp"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

struct RepeatabilityRow {
  double from_percent;
  double deviation_percent;
};

/// ASTM C136-14, Table 2, coarse aggregate, single operator, 1s by percent passing.
constexpr std::array repeatability_table{
    RepeatabilityRow{95, 0.32}, RepeatabilityRow{85, 0.81}, RepeatabilityRow{80, 1.34}, RepeatabilityRow{60, 2.25},
    RepeatabilityRow{20, 1.32}, RepeatabilityRow{15, 0.96}, RepeatabilityRow{10, 1.00}, RepeatabilityRow{5, 0.75},
    RepeatabilityRow{2, 0.53},  RepeatabilityRow{0, 0.27},
};

/// Range of 2, 3, ... repeats that is exceeded once in twenty, in standard deviations: 2 from the standard, the rest quantiles of
/// the studentized range for a known deviation.
constexpr std::array range_factors{2.83, 3.31, 3.63, 3.86, 4.03, 4.17, 4.29, 4.39, 4.47};

/// How often the range of `repeats` normal values, in their deviation, stays below `range`: n times the integral over the least value x
/// of phi(x) (Phi(x + range) - Phi(x))^(n - 1). Equal steps are exact for a curve that dies away on both sides.
double share_of_ranges_below(double range, std::size_t repeats) {
  constexpr double step = 0.1;
  constexpr int steps_out = 90;
  const auto below = [](double score) { return 0.5 * std::erfc(-score / std::numbers::sqrt2); };
  double sum = 0;
  for (int out = -steps_out; out <= steps_out; ++out) {
    const double least = out * step;
    sum += std::exp(-least * least / 2) * std::pow(below(least + range) - below(least), static_cast<double>(repeats - 1));
  }
  return static_cast<double>(repeats) * sum * step * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

double range_factor(std::size_t repeats) {
  if (repeats < 2) return range_factors.front();
  if (repeats - 2 < range_factors.size()) return range_factors[repeats - 2];
  constexpr double widest = 16;  // of more repeats than grains
  std::uintmax_t steps = 60;
  const auto ends = boost::math::tools::toms748_solve([&](double range) { return share_of_ranges_below(range, repeats) - 0.95; }, range_factors.back(), widest,
                                                      boost::math::tools::eps_tolerance<double>(30), steps);
  return ends.first;
}

std::vector<Aperture> common_sieves(std::span<const SieveAnalysis> tests) {
  std::vector<Aperture> sieves;
  for (const SieveAnalysis& test : tests) {
    for (const GradingPoint& point : test.grading.points) sieves.push_back(point.aperture);
  }
  std::ranges::sort(sieves);
  // 4.75 typed in two tests may differ in the last bit.
  const auto repeated = std::ranges::unique(sieves, [](Aperture a, Aperture b) { return std::abs(b / a - 1) < 1e-9; });
  sieves.erase(repeated.begin(), repeated.end());
  return sieves;
}

std::optional<Passing> passing_near(const Grading& grading, Aperture aperture) {
  for (const GradingPoint& point : grading.points) {
    if (std::abs(point.aperture / aperture - 1) < 1e-9) return point.passing;
  }
  return GradingCurve(grading).passing_at(aperture);
}

/// What of a test lay under `sieve`: what passes there but for what was lost.
double share_under(const SieveAnalysis& test, Aperture sieve) {
  const double lost = test.grading.points.front().passing.value() - test.pan.value();
  return std::max(0.0, passing_near(test.grading, sieve)->value() - lost);
}

/// Mass-weighted mean mass of grains spread evenly over log size: (pi/6) rho times the mean of d^3.
Mass mean_grain(Aperture lower, Aperture upper, ParticleDensity density) {
  const double lower_m = in_mm(lower) / 1000;
  const double upper_m = in_mm(upper) / 1000;
  const double cube_m3 = lower_m < upper_m ? (std::pow(upper_m, 3) - std::pow(lower_m, 3)) / (3 * std::log(upper_m / lower_m))
                                           : std::pow(upper_m, 3);
  return mass_kg(std::numbers::pi / 6 * in_g_l(density) * cube_m3);
}

}  // namespace

Passing repeatability(Passing passing) {
  const auto row = std::ranges::find_if(repeatability_table,
                                        [&](const RepeatabilityRow& r) { return in_percent(passing) >= r.from_percent; });
  return passing_percent(row == repeatability_table.end() ? repeatability_table.back().deviation_percent : row->deviation_percent);
}

Passing repeat_limit(Passing passing, std::size_t tests) {
  return repeatability(passing) * range_factor(tests);
}

MassShare lost_share(const PooledTests& pooled) {
  return MassShare(std::max(0.0, pooled.grading.points.front().passing.value() - pooled.pan.value()));
}

Result<PooledTests> pool(std::span<const SieveAnalysis> tests) {
  if (tests.empty()) return Problem{"sieve-tests.none", {}, {}};
  PooledTests pooled;
  const bool weighed = std::ranges::all_of(tests, [](const SieveAnalysis& test) { return test.base.has_value(); });
  const auto weight = [&](const SieveAnalysis& test) { return weighed ? in_kg(*test.base) : 1; };
  double total = 0;
  for (const SieveAnalysis& test : tests) total += weight(test);
  if (weighed) pooled.base = mass_kg(total);
  else if (tests.size() > 1) pooled.notes.push_back({"sieve-tests.weighted-equally", Level::note, "", {}});

  for (const Aperture& sieve : common_sieves(tests)) {
    double mean = 0;
    Passing least(1);
    Passing most(0);
    bool covered = true;
    for (const SieveAnalysis& test : tests) {
      const auto passing = passing_near(test.grading, sieve);
      if (!passing) {
        covered = false;
        break;
      }
      mean += passing->value() * weight(test) / total;
      least = std::min(least, *passing);
      most = std::max(most, *passing);
    }
    if (!covered) continue;
    // A mean lies between its terms but for rounding; the ends 0 and 1 must stay exact for the curve to close.
    const Passing pooled_passing = std::clamp(Passing(mean), least, most);
    pooled.grading.points.push_back({sieve, pooled_passing});
    if (tests.size() < 2) continue;
    pooled.agreement.push_back({sieve, pooled_passing, least, most, repeat_limit(pooled_passing, tests.size())});
  }
  if (pooled.grading.points.empty()) return Problem{"sieve-tests.no-common-range", {}, {}};
  double pan = 0;
  for (const SieveAnalysis& test : tests) pan += share_under(test, pooled.grading.points.front().aperture) * weight(test) / total;
  pooled.pan = MassShare(pan);
  std::ranges::reverse(pooled.agreement);
  for (const Agreement& sieve : pooled.agreement) {
    if (sieve.within()) continue;
    pooled.notes.push_back({"sieve-tests.disagree", Level::warning, "",
                            {{"aperture_mm", in_mm(sieve.aperture)},
                             {"least_percent", in_percent(sieve.least)},
                             {"most_percent", in_percent(sieve.most)},
                             {"limit_points", in_percent(sieve.limit)}}});
  }
  return pooled;
}

MassShare sampling_deviation(std::span<const GrainClass> classes, std::size_t index, Mass sample) {
  const double p = classes[index].share.value();
  double others_kg = 0;
  for (std::size_t j = 0; j < classes.size(); ++j) {
    if (j != index) others_kg += classes[j].share.value() * in_kg(classes[j].mean_grain);
  }
  const double variance = (p * (1 - p) * (1 - p) * in_kg(classes[index].mean_grain) + p * p * others_kg) / in_kg(sample);
  return MassShare(std::sqrt(variance));
}

std::optional<MassShare> sampling_deviation(const Grading& grading, const Band& band, ParticleDensity density, Mass sample) {
  const auto share = band_share(grading, band);
  if (!share) return std::nullopt;
  // Grain mass per class, the band's own classes first: the edges are the sieves and the band's ends.
  std::vector<Aperture> edges{band.from, band.to};
  for (const GradingPoint& point : grading.points) edges.push_back(point.aperture);
  Grading closed = grading;
  if (closed.points.back().passing.value() < 1) {
    const Aperture top = top_size(grading);
    closed.points.push_back({top, Passing(1)});
    edges.push_back(top);
  }
  std::ranges::sort(edges);
  const GradingCurve curve(closed);
  double inside_kg = 0;
  double outside_kg = 0;
  const Passing pan = closed.points.front().passing;
  const Aperture finest = closed.points.front().aperture;
  // The pan's grain is no larger than the finest sieve.
  (band.from < finest ? inside_kg : outside_kg) += pan.value() * in_kg(mean_grain(finest / 2, finest, density));
  for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
    if (edges[i] < finest || edges[i] == edges[i + 1]) continue;
    const double mass = curve.passing_at(edges[i + 1])->value() - curve.passing_at(edges[i])->value();
    const bool inside = edges[i] >= band.from && edges[i + 1] <= band.to;
    (inside ? inside_kg : outside_kg) += mass * in_kg(mean_grain(edges[i], edges[i + 1], density));
  }
  const double p = share->value();
  const std::array classes{GrainClass{*share, mass_kg(p > 0 ? inside_kg / p : 0)},
                           GrainClass{MassShare(1 - p), mass_kg(p < 1 ? outside_kg / (1 - p) : 0)}};
  return sampling_deviation(classes, 0, sample);
}

}  // namespace gritwright
