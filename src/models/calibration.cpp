#include "gritwright/models/calibration.hpp"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <limits>
#include <numbers>

#include "gritwright/models/normal_scores.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright {

namespace {

constexpr double water_g_per_ml = 1;
constexpr std::size_t rows_of_k = 241;
/// Depths this close say the same thing twice.
constexpr double least_depth_ratio = 1.2;

double normal_share_below(double score) { return 0.5 * std::erfc(-score / std::numbers::sqrt2); }

/// One test as the chain sees it: theta_0 = f·voids + fixed + by_fill·w and CC by the mean saturation of its pot.
struct Terms {
  const SaturationKernel* pot = nullptr;
  LogSizes sizes{};
  double depth_cm = 0;
  double voids = 0;
  double fixed_grain_water = 0;
  double grain_water_by_fill = 0;
  std::optional<double> flooded;
  std::optional<double> capacity;
};

/// The capacity for one k is a straight line over the grain fill.
struct Line {
  double at_no_fill = 0;
  double slope = 0;
};

double sum_of_squares(const std::vector<Line>& lines, const std::vector<Terms>& terms, double grain_fill) {
  double sum = 0;
  for (std::size_t i = 0; i < terms.size(); ++i) {
    const double miss = lines[i].at_no_fill + lines[i].slope * grain_fill - *terms[i].capacity;
    sum += miss * miss;
  }
  return sum;
}

bool state_has_volumes(const MixState& state) { return state.settled && state.envelope_grading && state.envelope_shares && state.particle_density; }

LogSizes tested_sizes(const MixState& state) {
  std::vector<double> log_sizes, shares;
  for (const GradingPoint& point : *state.envelope_grading) {
    log_sizes.push_back(std::log(in_mm(point.aperture)));
    shares.push_back(point.passing.value());
  }
  return equal_volume_log_sizes(log_sizes, shares);
}

/// f as the flooded weights give it, for every grain fill.
struct FloodedFill {
  double at_no_grain_fill = 0;
  double by_grain_fill = 0;
  [[nodiscard]] double at(double grain_fill) const { return at_no_grain_fill + by_grain_fill * grain_fill; }
};

/// Normal equations of w and f: symmetric 2 x 2 and its right side.
struct NormalEquations {
  double ww = 0, wf = 0, ff = 0, w = 0, f = 0;
  double squares = 0;  ///< of what is to be met, each over its deviation

  /// A line by_fill·w + by_flooded·f that should come out as `wanted`, good to `deviation`.
  void add(double by_fill, double by_flooded, double wanted, double deviation) {
    const double weight = 1 / (deviation * deviation);
    ww += weight * by_fill * by_fill;
    wf += weight * by_fill * by_flooded;
    ff += weight * by_flooded * by_flooded;
    w += weight * by_fill * wanted;
    f += weight * by_flooded * wanted;
    squares += weight * wanted * wanted;
  }
};

class Fit {
 public:
  Fit(const Mix& mix, const MixState& state, std::span<const CalibrationTest> tests, const CalibrationPrior& prior)
      : prior_(prior), constants_(prior.constants) {
    for (const CalibrationTest& test : tests) {
      const auto then = test.of ? mix_state(*test.of) : Result<MixState>(state);
      if (then && state_has_volumes(*then)) add(test.of ? *test.of : mix, *then, test);
      else add(mix, state, test);
    }
    gather_flooded_fill();
  }

  Calibration run() {
    Calibration answer;
    answer.flooded_fill_measured = flooded_fill_.has_value();
    if (!weighed_.empty())
      answer.method = solve_within_pores();
    else if (flooded_fill_)
      constants_.flooded_fill = fill_at(constants_.grain_fill);
    if (!weighed_.empty() || flooded_fill_) answer.belief = belief_that_holds_constants();
    question_fill();
    answer.constants = constants_;
    for (const Terms& test : all_) answer.tests.push_back(taken_of(test));
    answer.notes = std::move(notes_);
    return answer;
  }

 private:
  void add(const Mix& mix, const MixState& state, const CalibrationTest& test) {
    double packing = 1 - state.settled->voids_between_grains.value();
    if (test.measured.bulk_density) {
      const double measured = in_g_l(*test.measured.bulk_density) / in_g_l(*state.particle_density);
      // Grain can't lie that densely or loosely: then one of the densities is wrong, and the predicted voids are the better guess.
      if (measured > 0.25 && measured < 0.85)
        packing = measured;
      else
        notes_.push_back({"calibration.voids-implausible", Level::warning, "", {{"voids_percent", 100 * (1 - measured)}}});
    }
    Terms terms;
    terms.pot = &test.pot;
    terms.sizes = tested_sizes(state);
    terms.depth_cm = in_cm(test.filled_depth);
    terms.voids = 1 - packing;
    for (std::size_t k = 0; k < mix.components.size(); ++k) {
      const double grains = packing * (*state.envelope_shares)[k].value();
      if (!(grains > 0)) continue;
      const GrainPores& pores = *state.grain_pores[k];
      if (mix.components[k].grain.water_absorption)
        terms.fixed_grain_water += grains * pores.water.value();
      else
        terms.grain_water_by_fill += grains * pores.open.value();
    }
    if (test.measured.theta_0) terms.flooded = test.measured.theta_0->value();
    if (test.measured.container_capacity) terms.capacity = test.measured.container_capacity->value();
    all_.push_back(terms);
    if (terms.capacity) weighed_.push_back(terms);
  }

  [[nodiscard]] CalibratedTest taken_of(const Terms& test) const {
    const auto share = [](const std::optional<double>& value) { return value ? std::optional(Porosity(*value)) : std::nullopt; };
    return {depth_cm(test.depth_cm), share(test.flooded), share(test.capacity), Porosity(test.voids), Porosity(test.fixed_grain_water + test.grain_water_by_fill * constants_.grain_fill)};
  }

  /// f = (theta_0 - water in the grains)/voids, over all tests that were weighed flooded.
  void gather_flooded_fill() {
    FloodedFill fill;
    double count = 0;
    for (const Terms& test : all_) {
      if (!test.flooded) continue;
      fill.at_no_grain_fill += (*test.flooded - test.fixed_grain_water) / test.voids;
      fill.by_grain_fill -= test.grain_water_by_fill / test.voids;
      count += 1;
    }
    if (count == 0) return;
    fill.at_no_grain_fill /= count;
    fill.by_grain_fill /= count;
    flooded_fill_ = weighed_fill_ = fill;
  }

  [[nodiscard]] double fill_at(double grain_fill) const {
    return std::clamp(flooded_fill_->at(grain_fill), 0.0, 1.0);
  }

  [[nodiscard]] std::vector<Line> lines_at(double log_k) const {
    std::vector<Line> lines;
    for (const Terms& test : weighed_) {
      const double saturation = test.pot->mean(test.sizes, std::exp(log_k), constants_.spread);
      const double fill = flooded_fill_ ? flooded_fill_->at_no_grain_fill : constants_.flooded_fill;
      const double fill_slope = flooded_fill_ ? flooded_fill_->by_grain_fill : 0;
      lines.push_back({constants_.residual * (1 - saturation) + test.fixed_grain_water + test.voids * fill * saturation,
                       test.grain_water_by_fill + test.voids * fill_slope * saturation});
    }
    return lines;
  }

  /// Best grain fill for one k and what it costs; with or without the prior.
  struct Best {
    double grain_fill = 0;
    double cost = 0;
  };
  [[nodiscard]] Best best_at(double log_k, bool with_prior) const {
    const std::vector<Line> lines = lines_at(log_k);
    const double data = 1 / (prior_.capacity_deviation * prior_.capacity_deviation);
    const double belief = with_prior ? 1 / (prior_.grain_fill_deviation * prior_.grain_fill_deviation) : 0;
    double weight = belief, pull = belief * prior_.constants.grain_fill;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      weight += data * lines[i].slope * lines[i].slope;
      pull += data * lines[i].slope * (*weighed_[i].capacity - lines[i].at_no_fill);
    }
    Best best;
    best.grain_fill = std::clamp(weight > 0 ? pull / weight : prior_.constants.grain_fill, 0.0, 1.0);
    best.cost = data * sum_of_squares(lines, weighed_, best.grain_fill);
    if (with_prior) {
      const double off = best.grain_fill - prior_.constants.grain_fill;
      const double log_off = (log_k - std::log(prior_.constants.k_cm_mm)) / prior_.log_k_deviation;
      best.cost += belief * off * off + log_off * log_off;
    }
    return best;
  }

  /// The k of least cost: a row of k first, since the cost may have more than one valley, then Brent's search in the lowest.
  [[nodiscard]] double least_cost_log_k(bool with_prior) const {
    std::size_t least = 0;
    double least_cost = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < rows_of_k; ++i) {
      const double cost = best_at(log_k_of(i), with_prior).cost;
      if (cost < least_cost) least_cost = cost, least = i;
    }
    const double low = log_k_of(least == 0 ? 0 : least - 1), high = log_k_of(std::min(least + 1, rows_of_k - 1));
    return boost::math::tools::brent_find_minima([&](double log_k) { return best_at(log_k, with_prior).cost; }, low, high, 40).first;
  }

  [[nodiscard]] static double log_k_of(std::size_t row) {
    static const double low = std::log(least_k_cm_mm), high = std::log(greatest_k_cm_mm);
    return low + (high - low) * static_cast<double>(row) / (rows_of_k - 1);
  }

  [[nodiscard]] bool grain_water_known() const {
    return std::ranges::none_of(weighed_, [](const Terms& test) { return test.grain_water_by_fill > 0; });
  }

  [[nodiscard]] bool has_two_depths() const {
    const auto [least, most] = std::ranges::minmax_element(weighed_, {}, &Terms::depth_cm);
    return most->depth_cm >= least_depth_ratio * least->depth_cm;
  }

  void take(double log_k, double grain_fill) {
    constants_.k_cm_mm = std::exp(log_k);
    constants_.grain_fill = grain_fill;
    if (flooded_fill_) constants_.flooded_fill = fill_at(grain_fill);
  }

  /// Pores take up no more than themselves: where more was weighed, k and w follow from full ones.
  CalibrationMethod solve_within_pores() {
    const Notes before = notes_;
    const CalibrationMethod method = solve();
    if (!flooded_fill_ || flooded_fill_->at(constants_.grain_fill) <= 1) return method;
    flooded_fill_ = FloodedFill{1, 0};
    notes_ = before;
    return solve();
  }

  CalibrationMethod solve() {
    if (grain_water_known()) {
      take(weighed_.size() == 1 ? bisected_log_k() : least_cost_log_k(false), constants_.grain_fill);
      return CalibrationMethod::k_by_capacity;
    }
    if (weighed_.size() > 1 && has_two_depths()) {
      const double log_k = least_cost_log_k(false);
      const Best best = best_at(log_k, false);
      // Beyond three deviations of the prior the scatter of the weighings, not the mix, has set k and w.
      const bool plausible =
          std::abs(log_k - std::log(prior_.constants.k_cm_mm)) < 3 * prior_.log_k_deviation &&
          std::abs(best.grain_fill - prior_.constants.grain_fill) < 3 * prior_.grain_fill_deviation && best.grain_fill > 0 &&
          best.grain_fill < 1;
      if (plausible) {
        take(log_k, best.grain_fill);
        return CalibrationMethod::k_and_w_by_depths;
      }
      notes_.push_back({"calibration.depths-disagree", Level::note, "", {{"k_cm_mm", std::exp(log_k)}, {"grain_fill", best.grain_fill}}});
    }
    const double log_k = least_cost_log_k(true);
    take(log_k, best_at(log_k, true).grain_fill);
    return CalibrationMethod::weighed_by_prior;
  }

  /// Capacity rises with k, so the root lies between the ends or beyond one of them.
  double bisected_log_k() {
    const double wanted = *weighed_.front().capacity;
    const auto excess = [&](double log_k) { return lines_at(log_k).front().at_no_fill - wanted; };
    const double low = log_k_of(0), high = log_k_of(rows_of_k - 1);
    if (excess(low) >= 0 || excess(high) <= 0) {
      const bool too_dry = excess(low) >= 0;
      notes_.push_back({"calibration.capacity-out-of-reach",
                        Level::warning,
                        "",
                        {{"capacity_percent", 100 * wanted}, {"k_cm_mm", too_dry ? least_k_cm_mm : greatest_k_cm_mm}}});
      return too_dry ? low : high;
    }
    const auto [from, to] = boost::math::tools::bisect(excess, low, high, boost::math::tools::eps_tolerance<double>(40));
    return (from + to) / 2;
  }

  /// For one k everything is linear in w and f, so that their belief is normal and its weight known in closed form.
  [[nodiscard]] CalibratedBelief::Row believed_at(double log_k, double widened, double& cost) const {
    const RetentionConstants& usual = prior_.constants;
    NormalEquations sum;
    sum.add(1, 0, usual.grain_fill, widened * prior_.grain_fill_deviation);
    sum.add(0, 1, usual.flooded_fill, widened * prior_.flooded_fill_deviation);
    for (const Terms& test : all_) {
      if (test.capacity) {
        const double saturation = test.pot->mean(test.sizes, std::exp(log_k), usual.spread);
        sum.add(test.grain_water_by_fill, test.voids * saturation,
                *test.capacity - usual.residual * (1 - saturation) - test.fixed_grain_water, widened * prior_.capacity_deviation);
      }
      if (test.flooded)
        sum.add(test.grain_water_by_fill, test.voids, *test.flooded - test.fixed_grain_water, widened * prior_.flooded_deviation);
    }
    const double determinant = sum.ww * sum.ff - sum.wf * sum.wf;
    CalibratedBelief::Row row;
    row.log_k = log_k;
    row.grain_fill = (sum.ff * sum.w - sum.wf * sum.f) / determinant;
    row.grain_fill_deviation = std::sqrt(sum.ff / determinant);
    row.flooded_fill = (sum.ww * sum.f - sum.wf * sum.w) / determinant;
    row.flooded_by_grain_fill = -sum.wf / sum.ff;
    row.flooded_fill_deviation = 1 / std::sqrt(sum.ff);
    const double log_off = (log_k - std::log(usual.k_cm_mm)) / (widened * prior_.log_k_deviation);
    const double misses = sum.squares - sum.w * row.grain_fill - sum.f * row.flooded_fill;
    // Summed over w: the share of its normal curve that lies in 0..1.
    const double inside = normal_share_below((1 - row.grain_fill) / row.grain_fill_deviation) -
                          normal_share_below(-row.grain_fill / row.grain_fill_deviation);
    cost = misses + log_off * log_off + std::log(determinant) - 2 * std::log(inside);
    return row;
  }

  /// Every deviation times `widened`, on a row of k that reaches past the ends of the search where the fit lies there.
  [[nodiscard]] CalibratedBelief belief(double widened) const {
    CalibratedBelief belief;
    belief.constants = constants_;
    const double low = std::log(std::min(least_k_cm_mm, constants_.k_cm_mm / 2)), high = std::log(std::max(greatest_k_cm_mm, 2 * constants_.k_cm_mm));
    std::vector<double> costs(rows_of_k);
    for (std::size_t i = 0; i < rows_of_k; ++i)
      belief.rows.push_back(believed_at(std::lerp(low, high, static_cast<double>(i) / (rows_of_k - 1)), widened, costs[i]));
    const double least = *std::ranges::min_element(costs);
    double sum = 0;
    for (std::size_t i = 0; i < rows_of_k; ++i) belief.rows[i].cumulative = sum += std::exp(-0.5 * (costs[i] - least));
    for (CalibratedBelief::Row& row : belief.rows) row.cumulative /= sum;
    return belief;
  }

  /// The fit takes a test at its word, the belief weighs it against what is usual. Where the two are far apart the test or the
  /// usual values deserve less trust than they claim: all deviations grow until the belief's 90 % hold the fit.
  CalibratedBelief belief_that_holds_constants() {
    double widened = 1;
    CalibratedBelief found = belief(widened);
    constexpr double step = 1.25, most = 30;
    while (widened < most && !holds_constants(found)) found = belief(widened *= step);
    if (widened > 1) notes_.push_back({"calibration.belief-widened", Level::warning, "", {{"factor", widened}}});
    return found;
  }

  /// k, w and f, and the water and air of every tested pot, within 5 to 95 % of what is believed of them.
  [[nodiscard]] bool holds_constants(const CalibratedBelief& belief) const {
    const std::vector<double> own = figures_of(constants_);
    std::vector<std::size_t> below(own.size()), above(own.size());
    constexpr std::size_t steps = 20;
    const auto score_of = [](std::size_t step) { return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * (static_cast<double>(step) + 0.5) / steps); };
    const RetentionSpread certain{0, 0, 0, false};
    for (std::size_t i = 0; i < steps; ++i) {
      for (std::size_t j = 0; j < steps; ++j) {
        const std::vector<double> drawn = figures_of(constants_at(belief, certain, {score_of(i), score_of(j), score_of((7 * i + 11 * j) % steps), 0}));
        for (std::size_t figure = 0; figure < own.size(); ++figure) {
          const double rounding = 1e-9 * std::abs(own[figure]);
          below[figure] += drawn[figure] <= own[figure] + rounding;
          above[figure] += drawn[figure] >= own[figure] - rounding;
        }
      }
    }
    // One step of the grid more than 5 %, so that a sample of the belief comes to the same.
    constexpr std::size_t least = steps * steps / 20 + steps / 2;
    return std::ranges::all_of(below, [](std::size_t count) { return count > least; }) && std::ranges::all_of(above, [](std::size_t count) { return count > least; });
  }

  [[nodiscard]] std::vector<double> figures_of(const RetentionConstants& constants) const {
    std::vector<double> figures{constants.k_cm_mm, constants.grain_fill, constants.flooded_fill};
    for (const Terms& test : all_) {
      const double saturation = test.pot->mean(test.sizes, constants.k_cm_mm, constants.spread);
      const double saturated = constants.flooded_fill * test.voids;
      const double dry = std::min(constants.residual, saturated);
      figures.push_back(dry + (saturated - dry) * saturation + test.fixed_grain_water + test.grain_water_by_fill * constants.grain_fill);
      figures.push_back((saturated - dry) * (1 - saturation));
    }
    return figures;
  }

  void question_fill() {
    if (!weighed_fill_) return;
    const double fill = weighed_fill_->at(constants_.grain_fill);
    if (fill > 1) notes_.push_back({"calibration.more-water-than-voids", Level::warning, "", {{"percent", 100 * fill}}});
    if (fill < 0.5) notes_.push_back({"calibration.little-flooded", Level::warning, "", {{"percent", 100 * fill}}});
  }

  const CalibrationPrior& prior_;
  RetentionConstants constants_;
  std::vector<Terms> all_;
  std::vector<Terms> weighed_;  // with a capacity
  std::optional<FloodedFill> weighed_fill_;
  std::optional<FloodedFill> flooded_fill_;  // as weighed, or full pores
  Notes notes_;
};

void question(MeasuredPorosities& measured) {
  const auto doubt = [&](const char* code, double share) {
    measured.notes.push_back({code, Level::warning, "", {{"percent", 100 * share}}});
  };
  if (measured.theta_0 && (*measured.theta_0 > Porosity(0.95) || *measured.theta_0 < Porosity(0.2)))
    doubt("pot-test.porosity-implausible", measured.theta_0->value());
  if (measured.air_filled_porosity && (*measured.air_filled_porosity > Porosity(0.6) || *measured.air_filled_porosity < Porosity(0.01)))
    doubt("pot-test.air-implausible", measured.air_filled_porosity->value());
  if (measured.container_capacity && (*measured.container_capacity > Porosity(0.85) || *measured.container_capacity < Porosity(0.05)))
    doubt("pot-test.capacity-implausible", measured.container_capacity->value());
  if (measured.bulk_density && (in_g_l(*measured.bulk_density) < 30 || in_g_l(*measured.bulk_density) > 2000))
    measured.notes.push_back({"pot-test.bulk-density-implausible", Level::warning, "", {{"density_g_l", in_g_l(*measured.bulk_density)}}});
}

}  // namespace

MeasuredPorosities measured_porosities(const PotReading& reading) {
  MeasuredPorosities measured;
  const double volume_ml = in_ml(reading.volume);
  if (const auto* weighed = std::get_if<PotWeighings>(&reading.water)) {
    const auto share = [&](Mass wetter, Mass drier) { return Porosity((in_g(wetter) - in_g(drier)) / water_g_per_ml / volume_ml); };
    measured.bulk_density = bulk_g_l(1000 * (in_g(weighed->dry) - in_g(weighed->tare)) / volume_ml);
    if (weighed->flooded) measured.theta_0 = share(*weighed->flooded, weighed->dry);
    if (weighed->drained) measured.container_capacity = share(*weighed->drained, weighed->dry);
    if (weighed->flooded && weighed->drained) measured.air_filled_porosity = share(*weighed->flooded, *weighed->drained);
  } else {
    const auto& water = std::get<PouredWater>(reading.water);
    measured.theta_0 = Porosity(in_ml(water.poured) / volume_ml);
    if (water.caught) {
      measured.air_filled_porosity = Porosity(in_ml(*water.caught) / volume_ml);
      measured.container_capacity = *measured.theta_0 - *measured.air_filled_porosity;
    }
  }
  question(measured);
  return measured;
}

RetentionConstants constants_at(const CalibratedBelief& belief, const RetentionSpread& spread, const RetentionScores& scores) {
  RetentionConstants constants = constants_at(belief.constants, spread, scores);
  const double wanted = normal_share_below(scores.k);
  const auto& rows = belief.rows;
  const auto upper = std::ranges::lower_bound(rows, wanted, {}, &CalibratedBelief::Row::cumulative);
  CalibratedBelief::Row row = upper == rows.end() ? rows.back() : *upper;
  if (upper != rows.begin() && upper != rows.end()) {
    const auto lower = upper - 1;
    const double way = (wanted - lower->cumulative) / (upper->cumulative - lower->cumulative);
    const auto between = [&](double CalibratedBelief::Row::*member) { row.*member = std::lerp((*lower).*member, (*upper).*member, way); };
    between(&CalibratedBelief::Row::grain_fill);
    between(&CalibratedBelief::Row::grain_fill_deviation);
    between(&CalibratedBelief::Row::flooded_fill);
    between(&CalibratedBelief::Row::flooded_by_grain_fill);
    between(&CalibratedBelief::Row::flooded_fill_deviation);
    // A row's weight stands for the stretch of k about it, so its cumulative weight is reached half a step past it.
    row.log_k = std::lerp(lower->log_k, upper->log_k, way) + (upper->log_k - lower->log_k) / 2;
  }
  constants.k_cm_mm = std::exp(row.log_k);
  constants.grain_fill = std::clamp(row.grain_fill + row.grain_fill_deviation * scores.grain_fill, 0.0, 1.0);
  constants.flooded_fill = std::clamp(row.flooded_fill + row.flooded_by_grain_fill * (constants.grain_fill - row.grain_fill) +
                                          row.flooded_fill_deviation * scores.flooded_fill,
                                      0.0, 1.0);
  return constants;
}

ConstantsRange constants_range(const CalibratedBelief& belief, const RetentionSpread& spread) {
  const SampleSize size;
  constexpr std::size_t axes = 3;
  std::vector<double> scores(axes * size.draws);
  NormalScores(axes, size.seed).fill(0, scores);
  std::vector<double> k, grain_fill, flooded_fill;
  for (std::size_t i = 0; i < size.draws; ++i) {
    const double* const of = scores.data() + axes * i;
    const RetentionConstants at = constants_at(belief, spread, {of[0], of[1], of[2], 0});
    k.push_back(at.k_cm_mm);
    grain_fill.push_back(at.grain_fill);
    flooded_fill.push_back(at.flooded_fill);
  }
  const Range of_k = range_of(k), of_grain_fill = range_of(grain_fill), of_flooded_fill = range_of(flooded_fill);
  const auto row = [&](double Range::*share) {
    RetentionConstants constants = belief.constants;
    constants.k_cm_mm = of_k.*share;
    constants.grain_fill = of_grain_fill.*share;
    constants.flooded_fill = of_flooded_fill.*share;
    return constants;
  };
  return {row(&Range::low), row(&Range::median), row(&Range::high)};
}

std::optional<Calibration> calibrate(const Mix& mix, const MixState& state, std::span<const CalibrationTest> tests,
                                     const CalibrationPrior& prior) {
  if (!state_has_volumes(state)) return std::nullopt;
  return Fit(mix, state, tests, prior).run();
}

}  // namespace gritwright
