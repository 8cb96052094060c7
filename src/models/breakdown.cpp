#include "gritwright/models/breakdown.hpp"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <numbers>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

constexpr double unknown_durability_factor = 2;
constexpr double measured_rate_factor = 1.5;
constexpr double least_modulus = 0.2, greatest_modulus = 4;
constexpr double greatest_breakages = 8;
/// A curve that lies lower after crumbling, by more than this, is no crumbling.
constexpr double coarser_by = 0.01;

/// Width of the class that grain of one size gets, and how its fragments are told apart.
const double half_class = std::sqrt(1.2);
constexpr int fragment_sieves = 3;

/// Share of each class of a grading, coarse to fine, empty ones too: above the coarsest sieve, between sieves, the pan.
std::vector<double> class_shares(const Grading& grading) {
  std::vector<double> shares{1 - grading.points.back().passing.value()};
  for (std::size_t i = grading.points.size() - 1; i > 0; --i)
    shares.push_back(grading.points[i].passing.value() - grading.points[i - 1].passing.value());
  shares.push_back(grading.points.front().passing.value());
  return shares;
}

/// One more breakage of everything above the pan.
std::vector<double> broken_once(const std::vector<double>& shares, const std::vector<double>& power_of_sieve) {
  const std::size_t pan = shares.size() - 1;
  std::vector<double> after(shares.size());
  after[pan] = shares[pan];
  for (std::size_t from = 0; from < pan; ++from) {
    // power_of_sieve[i] is (opening the class i stays on)^modulus, 0 for the pan.
    for (std::size_t to = from + 1; to <= pan; ++to)
      after[to] += shares[from] * (power_of_sieve[to - 1] - power_of_sieve[to]) / power_of_sieve[from];
  }
  return after;
}

std::vector<double> broken(const Grading& grading, double breakages, double modulus) {
  std::vector<double> powers;
  for (auto point = grading.points.rbegin(); point != grading.points.rend(); ++point) powers.push_back(std::pow(in_mm(point->aperture), modulus));
  powers.push_back(0);
  std::vector<double> shares = class_shares(grading), sum(shares.size());
  // A grain has broken n times with the chance of Poisson; every class ends in the pan after as many breakages as there are classes.
  double chance = std::exp(-breakages), counted = 0;
  for (std::size_t n = 0; n < sum.size(); ++n) {
    for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += chance * shares[i];
    counted += chance;
    chance *= breakages / static_cast<double>(n + 1);
    shares = broken_once(shares, powers);
  }
  sum.back() += 1 - counted;
  return sum;
}

Grading with_shares(Grading grading, const std::vector<double>& shares) {
  double total = 0;
  for (const double share : shares) total += share;
  double passing = 1;
  for (std::size_t i = grading.points.size(); i-- > 0;) {
    passing -= shares[grading.points.size() - 1 - i] / total;
    // Differences of sums: what is nothing must not come out as a hair.
    grading.points[i].passing = Passing(passing < 1e-12 ? 0 : passing);
  }
  return grading;
}

Grading as_grading(const GrainSizes& sizes) {
  if (const auto* grading = std::get_if<Grading>(&sizes)) return *grading;
  const double size_mm = in_mm(std::get<SingleSize>(sizes).size);
  Grading grading;
  for (int i = fragment_sieves; i > 0; --i) grading.points.push_back({aperture_mm(size_mm / std::pow(2, i)), Passing(0)});
  grading.points.push_back({aperture_mm(size_mm / half_class), Passing(0)});
  grading.points.push_back({aperture_mm(size_mm * half_class), Passing(1)});
  return grading;
}

}  // namespace

std::optional<Breakdown> typical_breakdown(const Material& material) {
  if (!material.durability_years) return std::nullopt;
  const CatalogueFigure& years = *material.durability_years;
  Breakdown breakdown;
  breakdown.per_season = std::numbers::ln2 / years.value;
  const double low = years.low.value_or(years.value / unknown_durability_factor);
  const double high = years.high.value_or(years.value * unknown_durability_factor);
  // Grain that lasts longer breaks more slowly.
  breakdown.spread = factor_within(1 / years.value, 1 / high, 1 / low);
  return breakdown;
}

AgedGrain aged_grain(const GrainSizes& sizes, double breakages, double modulus, Fines fines) {
  if (!(breakages > 0)) return {sizes, 0};
  const Grading grading = as_grading(sizes);
  const std::vector<double> before = class_shares(grading);
  std::vector<double> after = broken(grading, breakages, modulus);
  AgedGrain aged;
  if (fines == Fines::washed_down) {
    const std::size_t pan = after.size() - 1;
    for (std::size_t i = 1; i <= pan; ++i) {
      const Aperture upper = grading.points[grading.points.size() - i].aperture;
      if (i != pan && upper > washes_down_below) continue;
      const double crumbled = std::max(0.0, after[i] - before[i]);
      after[i] -= crumbled;
      aged.washed_down += crumbled;
    }
  }
  if (aged.washed_down > 1 - 1e-9) return {sizes, 1};
  aged.sizes = with_shares(grading, after);
  return aged;
}

Problems check(const CrumbleTest& test) {
  Problems problems;
  const auto wrong = [&](const char* code, const char* pointer) { problems.push_back(problem_at(code, pointer)); };
  if (!(test.rounds > 0)) wrong("crumble.no-rounds", "/rounds");
  std::size_t common = 0;
  const GradingCurve after(test.after);
  for (const GradingPoint& point : test.before.points) common += after.passing_at(point.aperture).has_value() ? 1 : 0;
  if (common < 2) wrong("crumble.no-common-sieves", "/after");
  return problems;
}

CrumbleResult crumble_result(const CrumbleTest& test) {
  const GradingCurve after(test.after);
  std::vector<std::pair<std::size_t, double>> measured;
  for (std::size_t i = 0; i < test.before.points.size(); ++i) {
    if (const auto passing = after.passing_at(test.before.points[i].aperture)) measured.emplace_back(i, passing->value());
  }
  const auto miss = [&](double breakages, double modulus) {
    const Grading fitted = with_shares(test.before, broken(test.before, breakages, modulus));
    double squares = 0;
    for (const auto& [i, passing] : measured) squares += (fitted.points[i].passing.value() - passing) * (fitted.points[i].passing.value() - passing);
    return std::sqrt(squares / static_cast<double>(measured.size()));
  };
  constexpr int bits = 20;
  const auto best_breakages = [&](double modulus) {
    return boost::math::tools::brent_find_minima([&](double breakages) { return miss(breakages, modulus); }, 0.0, greatest_breakages, bits);
  };
  const auto best = boost::math::tools::brent_find_minima([&](double log_modulus) { return best_breakages(std::exp(log_modulus)).second; },
                                                          std::log(least_modulus), std::log(greatest_modulus), bits);
  CrumbleResult result;
  result.modulus = std::exp(best.first);
  const double breakages = best_breakages(result.modulus).first;
  result.breakages_per_round = breakages / test.rounds;
  result.broken = (1 - std::exp(-breakages)) * (1 - test.before.points.front().passing.value());
  result.miss = best.second;
  const bool coarser = std::ranges::any_of(measured, [&](const auto& point) {
    return point.second < test.before.points[point.first].passing.value() - coarser_by;
  });
  if (coarser) result.notes.push_back({"crumble.coarser-after", Level::warning, "", {}});
  if (result.miss > 0.03) result.notes.push_back({"crumble.fits-badly", Level::warning, "", {{"points", 100 * result.miss}}});
  return result;
}

Breakdown measured_breakdown(const CrumbleResult& result, double rounds_in_season) {
  return measured_breakdown(Crumbling{result.breakages_per_round, result.modulus, rounds_in_season});
}

Breakdown measured_breakdown(const Crumbling& kept) {
  return {kept.breakages_per_round * kept.rounds_per_season, kept.modulus, factor_within(1, 1 / measured_rate_factor, measured_rate_factor)};
}

}  // namespace gritwright
