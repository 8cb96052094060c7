#include "recipe_bounds.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/pot_water.hpp"
#include "size_order.hpp"

namespace gritwright::recipe_search {

namespace {

// Room for rounding in sums of a few dozen products, and the error of the series for the powers.
constexpr double bound_percent_error = 1e-9;
constexpr double bound_relative_error = 1e-9;
constexpr int pore_classes = 100;
// Steps of the saturation tables in ln alpha, over n.
constexpr double step_times_n = 0.06;
constexpr std::size_t rows = 5;

const double log_base_coarser = std::log(2.6);
const double log_base_finer = std::log(3.8);

/// e^x - 1 for 0 <= x <= 1.4 within 1e-11: the series at half the way, squared.
inline double exponential_less_one(double x) {
  const double y = x / 2;
  double sum = 1.0 / 479001600;
  sum = sum * y + 1.0 / 39916800;
  sum = sum * y + 1.0 / 3628800;
  sum = sum * y + 1.0 / 362880;
  sum = sum * y + 1.0 / 40320;
  sum = sum * y + 1.0 / 5040;
  sum = sum * y + 1.0 / 720;
  sum = sum * y + 1.0 / 120;
  sum = sum * y + 1.0 / 24;
  sum = sum * y + 1.0 / 6;
  sum = sum * y + 0.5;
  const double half = (sum * y + 1) * y;  // e^y - 1
  return half * (half + 2);
}

/// The share of a curve's grain between two sizes, log-uniform.
struct CurveStretch {
  double share;
  double log_from;
  double log_to;
};

std::vector<CurveStretch> stretches(const GrainSizes& sizes) {
  std::vector<CurveStretch> all;
  const std::vector<GradingPoint> curve = closed_grading(sizes);
  for (std::size_t i = 1; i < curve.size(); ++i) {
    const double share = curve[i].passing.value() - curve[i - 1].passing.value();
    if (share > 0) all.push_back({share, log_mm(curve[i - 1].aperture), log_mm(curve[i].aperture)});
  }
  return all;
}

/// A falling function given at equal steps, linear between, with its integral.
class Falling {
 public:
  Falling(double first, double step, std::vector<double> values) : first_(first), step_(step), values_(std::move(values)) {
    integrals_.push_back(0);
    for (std::size_t i = 1; i < values_.size(); ++i) integrals_.push_back(integrals_.back() + step_ * (values_[i - 1] + values_[i]) / 2);
  }

  [[nodiscard]] double at(double x) const {
    const auto [node, along] = place(x);
    return values_[node] + along * (values_[node + 1] - values_[node]);
  }

  [[nodiscard]] double mean(double from, double to) const {
    constexpr double point = 1e-9;
    if (to - from < point) return at(from);
    return (integral(to) - integral(from)) / (to - from);
  }

  [[nodiscard]] double steepest() const {
    double fall = 0;
    for (std::size_t i = 1; i < values_.size(); ++i) fall = std::max(fall, (values_[i - 1] - values_[i]) / step_);
    return fall;
  }

 private:
  struct Spot {
    std::size_t node;
    double along;
  };
  [[nodiscard]] Spot place(double x) const {
    const double position = std::clamp((x - first_) / step_, 0.0, static_cast<double>(values_.size() - 1));
    const auto node = std::min(static_cast<std::size_t>(position), values_.size() - 2);
    return {node, position - static_cast<double>(node)};
  }
  [[nodiscard]] double integral(double x) const {
    const auto [node, along] = place(x);
    const double rise = values_[node + 1] - values_[node];
    return integrals_[node] + step_ * along * (values_[node] + along * rise / 2);
  }

  double first_;
  double step_;
  std::vector<double> values_;
  std::vector<double> integrals_;
};

}  // namespace

BoundTables::BoundTables(const Ground& ground) : ground_(ground) {
  std::vector<Aperture> sizes;
  for (std::size_t k = 0; k < ground.size(); ++k)
    for (const SizeClass& each : size_classes(ground.candidate(k).component.sizes)) sizes.push_back(each.size);
  std::ranges::sort(sizes, std::ranges::greater{});
  for (const Aperture& size : sizes)
    if (class_sizes_.empty() || !equal_sizes(class_sizes_.back(), size)) class_sizes_.push_back(size);
  grains_.resize(ground.size());
  most_flooded_fill_ = ground.problem().water.flooded_fill;
  double most_grain_fill = ground.problem().water.grain_fill;
  for (std::size_t k = 0; k < ground.size(); ++k) {
    const RetentionConstants water = learnt_constants(ground.candidate(k), ground.problem().water);
    most_flooded_fill_ = std::max(most_flooded_fill_, water.flooded_fill);
    most_grain_fill = std::max(most_grain_fill, water.grain_fill);
  }
  for (std::size_t k = 0; k < ground.size(); ++k) describe(k, most_grain_fill);
}

void BoundTables::tabulate() {
  if (ground_.asks_for_volumes()) describe_classes();
  if (ground_.asks_for_water()) tabulate_saturation();
}

void BoundTables::describe(std::size_t candidate, double most_grain_fill) {
  const Candidate& from = ground_.candidate(candidate);
  const Component& component = from.component;
  Grain& grain = grains_[candidate];
  grain.mass_g = in_g_l(dry_bulk_density(component.grain));
  const std::vector<GradingPoint> curve = closed_grading(component.sizes);
  for (const Aperture& aperture : ground_.apertures()) grain.passing_g.push_back(grain.mass_g * share_passing(curve, aperture));
  if (from.price) {
    grain.priced = true;
    grain.price = from.price->value();
  }
  if (component.grain.cation_exchange) {
    grain.exchange_known = true;
    grain.exchange_meq = grain.mass_g * component.grain.cation_exchange->value() / 100;
  }
  const auto own = own_packing_density(component.grain);
  if (!own) return;
  grain.has_volumes = true;
  grain.envelope_l = own->value();
  const GrainPores pores = *grain_pores(component.grain, ground_.problem().water.grain_fill);
  grain.open_l = grain.envelope_l * pores.open.value();
  grain.water_l = grain.envelope_l * pores.water.value();
  if (!component.grain.water_absorption) grain.filled_l = grain.open_l;
  grain.most_water_l = grain.water_l + (most_grain_fill - ground_.problem().water.grain_fill) * grain.filled_l;
  const RetentionConstants water = learnt_constants(from, ground_.problem().water);
  grain.log_k_l = grain.envelope_l * std::log(water.k_cm_mm);
  grain.flooded_l = grain.envelope_l * water.flooded_fill;
  grain.grain_fill_l = grain.envelope_l * water.grain_fill;
  const auto all = stretches(component.sizes);
  grain.log_least = all.front().log_from;
  grain.log_greatest = all.back().log_to;
  for (const CurveStretch& each : all) grain.log_size += grain.envelope_l * each.share * (each.log_from + each.log_to) / 2;

  const std::vector<SizeClass> classes = size_classes(component.sizes);
  const double beta = ground_.class_beta_of(candidate)->value();
  for (const SizeClass& each : classes) {
    const auto found = std::ranges::find_if(class_sizes_, [&](const Aperture& size) { return equal_sizes(size, each.size); });
    grain.classes.push_back(static_cast<std::size_t>(found - class_sizes_.begin()));
    grain.envelope_by_class.push_back(grain.envelope_l * each.share.value());
    grain.volume_by_class.push_back(grain.envelope_by_class.back() / beta);
    grain.additive_l += grain.volume_by_class.back();
  }
}

void BoundTables::describe_classes() {
  const std::size_t count = class_sizes_.size();
  for (Grain& grain : grains_) {
    for (auto* row : {&grain.unwedged, &grain.wedged_coarser, &grain.wedged_finer, &grain.coarser, &grain.finer}) row->assign(count, 0);
    for (std::size_t each = 0; each < grain.classes.size(); ++each) {
      const std::size_t j = grain.classes[each];
      const double envelope = grain.envelope_by_class[each], volume = grain.volume_by_class[each];
      for (std::size_t i = 0; i < count; ++i) {
        grain.unwedged[i] += volume;
        if (i == j) continue;
        const double ratio = j < i ? class_sizes_[i] / class_sizes_[j] : class_sizes_[j] / class_sizes_[i];
        const double apart = 1 - std::pow(ratio, 6);
        const double effect = j < i ? occupying_effect(ratio) * (volume - envelope) : filling_effect(ratio) * volume;
        grain.unwedged[i] -= effect;
        (j < i ? grain.wedged_coarser : grain.wedged_finer)[i] += effect * wedging_effect(ratio);
        (j < i ? grain.coarser : grain.finer)[i] += apart * envelope;
      }
    }
  }
}

void BoundTables::tabulate_saturation() {
  const RetentionConstants& water = ground_.problem().water;
  const double tilt = 1 - water.spread;
  double least = infinite, greatest = -infinite, mean_least = infinite, mean_greatest = -infinite, log_k_least = infinite, log_k_greatest = -infinite;
  for (const Grain& grain : grains_) {
    if (!grain.has_volumes) continue;
    least = std::min(least, grain.log_least);
    greatest = std::max(greatest, grain.log_greatest);
    mean_least = std::min(mean_least, grain.log_size / grain.envelope_l);
    mean_greatest = std::max(mean_greatest, grain.log_size / grain.envelope_l);
    log_k_least = std::min(log_k_least, grain.log_k_l / grain.envelope_l);
    log_k_greatest = std::max(log_k_greatest, grain.log_k_l / grain.envelope_l);
  }
  if (!(least <= greatest)) return;
  const double step = step_times_n / water.n;
  // Every pore has a size between the mean and its grain's, so ln alpha stays in this range.
  const double first = least - log_k_greatest - step;
  const auto count = static_cast<std::size_t>((greatest - least + log_k_greatest - log_k_least) / step) + 5;
  std::vector<Falling> falling;
  std::vector<std::vector<double>> values(ground_.pots().size());
  if (ground_.asks_for_available()) values.emplace_back();
  for (std::size_t i = 0; i < count; ++i) {
    const RetentionCurve one_size(0, 1, {std::exp(first + static_cast<double>(i) * step)}, water.n);
    std::size_t column = 0;
    for (const PotToFill& pot : ground_.pots())
      values[column++].push_back(container_capacity(one_size, pot.pot, pot.layer ? &*pot.layer : nullptr).value());
    if (ground_.asks_for_available()) values[column].push_back(one_size.water_at(depth_cm(50)).value());
  }
  for (auto& column : values) falling.emplace_back(first, step, std::move(column));
  columns_ = falling.size();

  // Linear interpolation of S errs by at most step² n²/8, once along ln alpha and once along its shift with the mean and k.
  saturation_error_ = 2 * step * step * water.n * water.n / 8;
  for (const Falling& each : falling) steepest_ = std::max(steepest_, each.steepest());
  steepest_ += step * water.n * water.n;

  shift_first_ = tilt * mean_least - log_k_greatest;
  nodes_ = static_cast<std::size_t>((tilt * mean_greatest - log_k_least - shift_first_) / step) + 3;
  nodes_per_log_ = 1 / step;
  last_node_ = static_cast<double>(nodes_ - 1);
  saturation_.resize(grains_.size() * columns_ * nodes_);
  for (std::size_t k = 0; k < grains_.size(); ++k) {
    if (!grains_[k].has_volumes) continue;
    const auto all = stretches(ground_.candidate(k).component.sizes);
    for (std::size_t node = 0; node < nodes_; ++node) {
      const double shift = shift_first_ + static_cast<double>(node) * step;
      for (std::size_t column = 0; column < columns_; ++column) {
        double mean = 0;
        for (const CurveStretch& each : all)
          mean += each.share * falling[column].mean(shift + water.spread * each.log_from, shift + water.spread * each.log_to);
        saturation_[(k * columns_ + column) * nodes_ + node] = mean;
      }
    }
  }
}

// The mid-quantile rule of the hundred classes, on the mean size and on the saturation, both of which only fall or rise.
double BoundTables::mean_saturation_error(double log_size_range) const {
  const double mean_off = log_size_range / (2 * pore_classes);
  return saturation_error_ + 1.0 / (2 * pore_classes) + (1 - ground_.problem().water.spread) * steepest_ * mean_off;
}

std::vector<AirAndWater> air_and_water(const Ground& ground, Strictness strictness) {
  struct Most {
    double least = -infinite;
    double weight = 0;
  };
  std::vector<AirAndWater> pairs;
  for (std::size_t pot = 0; pot < ground.pots().size(); ++pot) {
    Most air, water;
    for (const PlainWish& wish : ground.wishes()) {
      const bool hard = wish.hard && strictness == Strictness::as_wished;
      if (wish.place != pot || !std::isfinite(wish.least) || (!hard && wish.weight == 0)) continue;
      if (wish.kind != PlainWish::Kind::air && wish.kind != PlainWish::Kind::capacity) continue;
      Most& most = wish.kind == PlainWish::Kind::air ? air : water;
      if (wish.least > most.least) most = {wish.least, hard ? infinite : wish.weight};
    }
    // Shared out so that it costs least, what is missing costs by the harmonic sum of the weights.
    const double together = air.least + water.least;
    if (std::isfinite(together)) pairs.push_back({together, 1 / (1 / air.weight + 1 / water.weight)});
  }
  return pairs;
}

SubsetBounds::SubsetBounds(const BoundTables& tables, Strictness strictness)
    : tables_(tables),
      ground_(tables.ground()),
      strictness_(strictness),
      log_usual_k_(std::log(ground_.problem().water.k_cm_mm)),
      air_and_water_(air_and_water(ground_, strictness)) {
  figures_.passing_percent.resize(ground_.apertures().size());
  std::size_t named = 0;
  for (const PlainWish& wish : ground_.wishes()) named += wish.kind == PlainWish::Kind::share ? 1 : 0;
  figures_.named_share.resize(named);
  const std::size_t pots = ground_.asks_for_water() ? ground_.pots().size() : 0;
  for (auto* list : {&figures_.capacity, &figures_.air, &figures_.available, &figures_.wet_g_l}) list->resize(pots);
}

void SubsetBounds::choose(std::span<const std::uint8_t> candidates) {
  count_ = std::min(candidates.size(), chosen_.size());
  litres_ = {};
  for (std::size_t j = 0; j < count_; ++j) {
    const BoundTables::Grain& grain = tables_.grain(candidates[j]);
    chosen_[j] = candidates[j];
    litres_[j] = {grain.envelope_l, grain.additive_l, grain.water_l, 0};
  }
  classes_gathered_ = false;
  has_volumes_ = std::ranges::all_of(candidates, [&](std::uint8_t each) { return tables_.grain(each).has_volumes; });
}

void SubsetBounds::bound_gradings(const PartPatterns& patterns, std::size_t from, std::size_t count) {
  switch (count_) {
    case 1: return bound_gradings_of<1>(patterns, from, count);
    case 2: return bound_gradings_of<2>(patterns, from, count);
    case 3: return bound_gradings_of<3>(patterns, from, count);
    case 4: return bound_gradings_of<4>(patterns, from, count);
    case 5: return bound_gradings_of<5>(patterns, from, count);
    default: return bound_gradings_of<6>(patterns, from, count);
  }
}

template <std::size_t candidates>
void SubsetBounds::bound_gradings_of(const PartPatterns& patterns, std::size_t from, std::size_t count) {
  using Numbers = std::array<double, candidates>;
  std::array<const double*, candidates> parts;
  Numbers mass;
  for (std::size_t j = 0; j < candidates; ++j) {
    parts[j] = patterns.row(static_cast<int>(j)).data() + from;
    mass[j] = tables_.grain(chosen_[j]).mass_g;
  }
  const auto sum = [&parts](const Numbers& of, std::size_t p) {
    double all = parts[0][p] * of[0];
    for (std::size_t j = 1; j < candidates; ++j) all += parts[j][p] * of[j];
    return all;
  };
  double* const per_gram = per_gram_.data();
  double* const squares = squares_.data();
  double* const scores = scores_.data();
#pragma omp simd
  for (std::size_t p = 0; p < count; ++p) per_gram[p] = 100 / sum(mass, p);
  // Percentages are linear in the grams that pass.
  const auto add_squares = [&](const Numbers& grams, double low, double high, double each) {
    low -= bound_percent_error;
    high += bound_percent_error;
#pragma omp simd
    for (std::size_t p = 0; p < count; ++p) {
      const double percent = sum(grams, p) * per_gram[p];
      const double off = std::max(std::max(low - percent, percent - high), 0.0);
      squares[p] += each * off * off;
    }
  };
  const auto passing = [&](std::size_t aperture) {
    Numbers grams;
    for (std::size_t j = 0; j < candidates; ++j) grams[j] = tables_.grain(chosen_[j]).passing_g[aperture];
    return grams;
  };
  std::fill_n(scores, count, 0.0);
  std::fill_n(broken_.data(), count, std::uint64_t{0});
  for (std::size_t w = 0; w < ground_.wishes().size(); ++w) {
    const PlainWish& wish = ground_.wishes()[w];
    if (wish.of_volumes()) continue;
    std::fill_n(squares, count, 0.0);
    switch (wish.kind) {
      case PlainWish::Kind::limits:
      case PlainWish::Kind::nearest: {
        const double each = 1 / static_cast<double>(wish.apertures.size());
        for (std::size_t i = 0; i < wish.apertures.size(); ++i) add_squares(passing(wish.apertures[i]), wish.low_percent[i], wish.high_percent[i], each);
        break;
      }
      case PlainWish::Kind::finer:
      case PlainWish::Kind::band: {
        Numbers grams = passing(wish.apertures[0]);
        if (wish.apertures.size() > 1) {
          const Numbers below = passing(wish.apertures[1]);
          for (std::size_t j = 0; j < candidates; ++j) grams[j] -= below[j];
        }
        add_squares(grams, wish.least, wish.most, 1);
        break;
      }
      default: {
        Numbers named;
        for (std::size_t j = 0; j < candidates; ++j) named[j] = (wish.candidates >> chosen_[j] & 1U) != 0 ? 1 : 0;
        const double* const totals = patterns.totals().data() + from;
        const double least = wish.least, most = wish.most;
#pragma omp simd
        for (std::size_t p = 0; p < count; ++p) {
          const double share = sum(named, p) / totals[p];
          const double off = 100 * std::max(std::max(least - share, share - most), 0.0);
          squares[p] = off * off;
        }
      }
    }
    if (wish.hard && strictness_ == Strictness::as_wished) {
      const std::uint64_t bit = std::uint64_t{1} << w;
      for (std::size_t p = 0; p < count; ++p) broken_[p] |= squares[p] > no_violation * no_violation ? bit : 0;
    } else {
      const double weight = wish.weight;
#pragma omp simd
      for (std::size_t p = 0; p < count; ++p) scores[p] += weight * squares[p];
    }
  }
}

void SubsetBounds::gather_classes() {
  std::vector<char> present(tables_.class_count(), 0);
  for (std::size_t j = 0; j < count_; ++j)
    for (const std::size_t each : tables_.grain(chosen_[j]).classes) present[each] = 1;
  classes_.clear();
  for (std::size_t i = 0; i < present.size(); ++i)
    if (present[i] != 0) classes_.push_back(i);
  const std::size_t columns = classes_.size();
  coefficients_.resize(count_ * rows * columns);
  sums_.resize(rows * columns);
  double* to = coefficients_.data();
  for (std::size_t j = 0; j < count_; ++j) {
    const BoundTables::Grain& grain = tables_.grain(chosen_[j]);
    for (const auto* row : {&grain.unwedged, &grain.wedged_coarser, &grain.wedged_finer, &grain.coarser, &grain.finer})
      for (const std::size_t each : classes_) *to++ = (*row)[each];
  }
  classes_gathered_ = true;
}

double SubsetBounds::specific_volume(std::span<const double> parts, double envelope_l) {
  if (!classes_gathered_) gather_classes();
  const std::size_t columns = classes_.size(), all = rows * columns;
  double* const sums = sums_.data();
  for (std::size_t i = 0; i < all; ++i) sums[i] = 0;
  for (std::size_t j = 0; j < count_; ++j) {
    const double* const coefficients = coefficients_.data() + j * all;
    const double share = parts[j] / envelope_l;
    for (std::size_t i = 0; i < all; ++i) sums[i] += share * coefficients[i];
  }
  // In place, so that the compiler takes several classes at once.
  double* const coarser = sums + 3 * columns;
  double* const finer = sums + 4 * columns;
  const double of_coarser = log_base_coarser, of_finer = log_base_finer;
  for (std::size_t i = 0; i < columns; ++i) coarser[i] = exponential_less_one(of_coarser * coarser[i]);
  for (std::size_t i = 0; i < columns; ++i) finer[i] = exponential_less_one(of_finer * finer[i]);
  double largest = 0;
  for (std::size_t i = 0; i < columns; ++i)
    largest = std::max(largest, sums[i] + coarser[i] * sums[columns + i] + finer[i] * sums[2 * columns + i]);
  return largest;
}

SubsetBounds::Constants SubsetBounds::constants(std::span<const double> parts, double envelope_l) const {
  const RetentionConstants& water = ground_.problem().water;
  Constants constants{log_usual_k_, water.flooded_fill, 0};
  for (std::size_t j = 0; j < count_; ++j) constants.water_l += parts[j] * tables_.grain(chosen_[j]).water_l;
  if (!ground_.has_learnt()) return constants;
  double filled_l = 0, log_k_l = 0, flooded_l = 0, grain_fill_l = 0;
  for (std::size_t j = 0; j < count_; ++j) {
    const BoundTables::Grain& grain = tables_.grain(chosen_[j]);
    filled_l += parts[j] * grain.filled_l;
    log_k_l += parts[j] * grain.log_k_l;
    flooded_l += parts[j] * grain.flooded_l;
    grain_fill_l += parts[j] * grain.grain_fill_l;
  }
  constants.log_k = log_k_l / envelope_l;
  constants.flooded_fill = flooded_l / envelope_l;
  constants.water_l += (grain_fill_l / envelope_l - water.grain_fill) * filled_l;
  return constants;
}

double SubsetBounds::least_for_want_of_room(const std::array<double, 6>& parts) const {
  if (air_and_water_.empty() || !has_volumes_) return 0;
  std::array<double, 4> all{};
  for (std::size_t j = 0; j < parts.size(); ++j) {
    for (std::size_t i = 0; i < all.size(); ++i) all[i] += parts[j] * litres_[j][i];
  }
  const double envelope_l = all[0], additive_l = all[1];
  double water_l = all[2];
  double flooded_fill = ground_.problem().water.flooded_fill;
  if (ground_.has_learnt()) {
    const Constants of = constants({parts.data(), count_}, envelope_l);
    water_l = of.water_l;
    flooded_fill = of.flooded_fill;
  }
  const double room = most_room(envelope_l / additive_l, water_l / envelope_l, flooded_fill);
  double cost = 0;
  for (const AirAndWater& pair : air_and_water_) cost += pair.least_cost(room);
  return cost;
}

const FigureRanges& SubsetBounds::bound_figures(std::span<const double> parts) {
  double loose_l = 0, mass_g = 0;
  for (std::size_t j = 0; j < count_; ++j) {
    loose_l += parts[j];
    mass_g += parts[j] * tables_.grain(chosen_[j]).mass_g;
  }
  for (std::size_t a = 0; a < figures_.passing_percent.size(); ++a) {
    double passing_g = 0;
    for (std::size_t j = 0; j < count_; ++j) passing_g += parts[j] * tables_.grain(chosen_[j]).passing_g[a];
    const double percent = 100 * passing_g / mass_g;
    figures_.passing_percent[a] = {percent - bound_percent_error, percent + bound_percent_error};
  }
  for (const PlainWish& wish : ground_.wishes()) {
    if (wish.kind != PlainWish::Kind::share) continue;
    double named = 0;
    for (std::size_t j = 0; j < count_; ++j)
      if ((wish.candidates >> chosen_[j] & 1U) != 0) named += parts[j];
    figures_.named_share[wish.place] = {named / loose_l, named / loose_l};
  }
  return bound_volumes(parts);
}

const FigureRanges& SubsetBounds::bound_volumes(std::span<const double> parts) {
  figures_.has_volumes = has_volumes_ && ground_.asks_for_volumes();
  figures_.price.reset();
  figures_.exchange_meq_l.reset();
  figures_.most_over_stock_l = {-infinite, -infinite};
  double envelope_l = 0, money = 0, exchange_meq = 0;
  bool priced = true, exchange_known = true;
  for (std::size_t j = 0; j < count_; ++j) {
    const BoundTables::Grain& grain = tables_.grain(chosen_[j]);
    envelope_l += parts[j] * grain.envelope_l;
    money += parts[j] * grain.price;
    exchange_meq += parts[j] * grain.exchange_meq;
    priced = priced && grain.priced;
    exchange_known = exchange_known && grain.exchange_known;
  }
  const double specific = figures_.has_volumes ? specific_volume(parts, envelope_l) : 0;
  const double volume_l = envelope_l * specific;
  if (ground_.checks_stock()) {
    const double need_l = in_l(*ground_.problem().need);
    for (std::size_t j = 0; j < count_; ++j) {
      const auto& stock = ground_.candidate(chosen_[j]).stock;
      if (!stock) continue;
      const double wanted_l = need_l * parts[j] / volume_l;
      Range& over = figures_.most_over_stock_l;
      over.low = figures_.has_volumes ? std::max(over.low, wanted_l * (1 - bound_relative_error) - in_l(*stock)) : infinite;
      over.high = figures_.has_volumes ? std::max(over.high, wanted_l * (1 + bound_relative_error) - in_l(*stock)) : infinite;
    }
  }
  if (!figures_.has_volumes) return figures_;
  if (priced) figures_.price = Range{money / volume_l * (1 - bound_relative_error), money / volume_l * (1 + bound_relative_error)};
  const double packing = 1 / specific / (1 - ground_.problem().settling.value());
  if (exchange_known) {
    const double exchange = packing * exchange_meq / envelope_l;
    figures_.exchange_meq_l = Range{exchange * (1 - bound_relative_error), exchange * (1 + bound_relative_error)};
  }
  if (ground_.asks_for_water()) bound_water(parts, envelope_l, specific);
  return figures_;
}

void SubsetBounds::bound_water(std::span<const double> parts, double envelope_l, double specific_volume) {
  const RetentionConstants& water = ground_.problem().water;
  double log_size = 0, mass_g = 0, log_least = infinite, log_greatest = -infinite;
  for (std::size_t j = 0; j < count_; ++j) {
    const BoundTables::Grain& grain = tables_.grain(chosen_[j]);
    log_size += parts[j] * grain.log_size;
    mass_g += parts[j] * grain.mass_g;
    log_least = std::min(log_least, grain.log_least);
    log_greatest = std::max(log_greatest, grain.log_greatest);
  }
  const Constants of = constants(parts, envelope_l);
  const double shift = (1 - water.spread) * log_size / envelope_l - of.log_k;
  const double packing = 1 / specific_volume / (1 - ground_.problem().settling.value());
  // Voids so small that a flood fills less of them than the residual share hold that throughout.
  const double saturated = of.flooded_fill * (1 - packing);
  const double residual = std::min(water.residual, saturated);
  const double drains = saturated - residual;
  const double grain_water = packing * of.water_l / envelope_l;
  const double bulk_g_l = packing * mass_g / envelope_l;
  const double error = tables_.mean_saturation_error(log_greatest - log_least);
  const auto saturation = [&](std::size_t column) {
    double mean = 0;
    for (std::size_t j = 0; j < count_; ++j)
      mean += parts[j] * tables_.grain(chosen_[j]).envelope_l * tables_.saturation(chosen_[j], column, shift);
    mean /= envelope_l;
    return Range{std::max(0.0, mean - error), std::min(1.0, mean + error)};
  };
  const auto spread_out = [](double a, double b) {
    constexpr double rounding = 1e-8;
    return Range{std::min(a, b) - rounding, std::max(a, b) + rounding};
  };
  Range at_50;
  const std::size_t pots = ground_.pots().size();
  if (ground_.asks_for_available()) at_50 = saturation(pots);
  for (std::size_t pot = 0; pot < pots; ++pot) {
    const Range mean = saturation(pot);
    const Range held = spread_out(drains * mean.low, drains * mean.high);
    figures_.capacity[pot] = {residual + held.low + grain_water, residual + held.high + grain_water};
    figures_.air[pot] = spread_out(drains * (1 - mean.low), drains * (1 - mean.high));
    if (ground_.asks_for_available())
      figures_.available[pot] = spread_out(drains * (mean.low - at_50.high), drains * (mean.high - at_50.low));
    figures_.wet_g_l[pot] = {bulk_g_l + 1000 * figures_.capacity[pot].low, bulk_g_l + 1000 * figures_.capacity[pot].high};
  }
}

}  // namespace gritwright::recipe_search
