#include "gritwright/models/mix_ranges.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <utility>

#include "draw_slices.hpp"
#include "gritwright/models/normal_scores.hpp"
#include "uncertain_chain.hpp"

namespace gritwright {

namespace {

void copy(std::span<const double> drawn, std::vector<double>& to, std::size_t first) { std::ranges::copy(drawn, to.begin() + static_cast<std::ptrdiff_t>(first)); }

}  // namespace

UncertainMix::UncertainMix(Mix mix, MixSpread spread, Pot pot)
    : chain_(std::make_unique<const Chain>(std::move(mix), std::move(spread), std::move(pot))) {}
UncertainMix::~UncertainMix() = default;
UncertainMix::UncertainMix(UncertainMix&&) noexcept = default;
UncertainMix& UncertainMix::operator=(UncertainMix&&) noexcept = default;

UncertainMix::UncertainMix(Mix mix, MixSpread spread, Pot pot, const UncertainMix& before)
    : chain_(std::make_unique<const Chain>(std::move(mix), std::move(spread), std::move(pot), *before.chain_)) {}

/// Every figure and place of a list over the draws.
std::vector<std::vector<double>> UncertainMix::drawn_columns(const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  std::vector<std::vector<double>> columns(chain.columns(), std::vector<double>(size.draws));
  chain.draw_all(Chain::Detail::lists, size, runner, [&](std::size_t first, std::size_t count, const Chain::Workspace& drawn) {
    for (std::size_t c = 0; c < columns.size(); ++c) copy(drawn.column(c).first(count), columns[c], first);
  });
  return columns;
}

MixRanges UncertainMix::ranges_of(const std::vector<std::vector<double>>& columns) const {
  const Chain& chain = *chain_;
  MixRanges ranges;
  const auto maybe = [&](std::size_t column, bool defined) { return defined ? std::optional(range_of(columns[column])) : std::nullopt; };
  for (std::size_t i = 0; i < Chain::figure_count; ++i) ranges.figures.push_back(maybe(i, chain.defined(static_cast<MixFigure>(i))));
  for (std::size_t k = 0; k < chain.components(); ++k) {
    const bool dosed = chain.mix().components[k].parts.value() > 0;
    ranges.mass_shares.push_back(range_of(columns[chain.mass_shares_at() + k]));
    ranges.envelope_shares.push_back(maybe(chain.envelope_shares_at() + k, chain.has_volumes()));
    ranges.class_betas.push_back(maybe(chain.betas_at() + k, chain.has_volumes() && dosed));
    ranges.measure_out_l.push_back(maybe(chain.measure_out_at() + k, chain.has_volumes() && chain.has_container()));
  }
  for (std::size_t i = 0; i < chain.sieves(); ++i) {
    ranges.passing.push_back(range_of(columns[chain.passing_at() + i]));
    ranges.envelope_passing.push_back(maybe(chain.envelope_passing_at() + i, chain.has_volumes()));
  }
  const bool wet = chain.has_volumes() && chain.has_pot();
  for (std::size_t i = 0; i < Chain::heights; ++i) {
    ranges.water_by_height.push_back(maybe(chain.heights_at() + i, wet && chain.height_in_mix(i)));
    ranges.free_air_by_height.push_back(maybe(chain.drained_at() + i, wet && chain.height_in_mix(i)));
  }
  ranges.perched_height_cm = maybe(chain.perched_at(), wet);
  return ranges;
}

MixRanges UncertainMix::ranges(const SampleSize& size, const SliceRunner& runner) const { return ranges_of(drawn_columns(size, runner)); }

std::pair<MixRanges, std::vector<std::vector<double>>> UncertainMix::ranges_and_passing(const SampleSize& size, const SliceRunner& runner) const {
  const std::vector<std::vector<double>> drawn = drawn_columns(size, runner);
  std::vector<std::vector<double>> passing(size.draws, std::vector<double>(chain_->sieves()));
  for (std::size_t i = 0; i < chain_->sieves(); ++i)
    for (std::size_t draw = 0; draw < size.draws; ++draw) passing[draw][i] = drawn[chain_->passing_at() + i][draw];
  return {ranges_of(drawn), std::move(passing)};
}

std::vector<std::vector<double>> UncertainMix::passing_draws(const SampleSize& size, const SliceRunner& runner) const { return ranges_and_passing(size, runner).second; }

std::vector<double> UncertainMix::draws_of(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  if (!chain.defined(figure)) return {};
  const bool of_heads = figure == MixFigure::theta_10 || figure == MixFigure::theta_50 || figure == MixFigure::easily_available || figure == MixFigure::available_in_pot;
  const Chain::Detail detail = of_heads ? Chain::Detail::figures : Chain::Detail::air_and_water;
  std::vector<double> values(size.draws);
  chain.draw_all(detail, size, runner, [&](std::size_t first, std::size_t count, const Chain::Workspace& drawn) { copy(drawn.column(Chain::at(figure)).first(count), values, first); });
  return values;
}

std::optional<UncertainMix::AirAndWater> UncertainMix::air_and_water(const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  if (!chain.defined(MixFigure::container_capacity)) return std::nullopt;
  std::vector<double> air(size.draws), capacity(size.draws);
  chain.draw_all(Chain::Detail::air_and_water, size, runner, [&](std::size_t first, std::size_t count, const Chain::Workspace& drawn) {
    copy(drawn.column(Chain::at(MixFigure::air_filled_porosity)).first(count), air, first);
    copy(drawn.column(Chain::at(MixFigure::container_capacity)).first(count), capacity, first);
  });
  return AirAndWater{range_of(air), range_of(capacity)};
}

std::vector<SourceShare> UncertainMix::sensitivity(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  using Kind = UncertaintySource::Kind;
  using enum Chain::ChainScore;
  using enum Chain::ComponentScore;
  const Chain& chain = *chain_;
  const std::vector<double> values = draws_of(figure, size, runner);
  if (values.empty()) return {};
  const auto count = static_cast<double>(values.size());
  const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
  const double variance =
      std::accumulate(values.begin(), values.end(), 0.0, [&](double sum, double v) { return sum + (v - mean) * (v - mean); }) / count;
  if (!(variance > 0)) return {};

  const std::size_t axes = chain.dimensions();
  std::vector<std::array<double, 3>> moments(axes);
  std::vector<double> points(axes);
  const NormalScores scores(axes, size.seed);
  for (std::size_t first = 0; first < values.size(); first += draws_in_slice) {
    points.resize(std::min(draws_in_slice, values.size() - first) * axes);
    scores.fill(first, points);
    for (std::size_t i = 0; i < points.size() / axes; ++i) {
      const double off = values[first + i] - mean;
      for (std::size_t axis = 0; axis < axes; ++axis) {
        const double z = points[i * axes + axis];
        // Hermite polynomials of unit variance; what they explain of the figure is the variance of its mean given this score.
        moments[axis][0] += off * z;
        moments[axis][1] += off * (z * z - 1) / std::sqrt(2.0);
        moments[axis][2] += off * (z * z - 3) * z / std::sqrt(6.0);
      }
    }
  }
  std::vector<double> explained;
  for (const auto& axis : moments) {
    double sum = 0;
    for (const double moment : axis) sum += moment * moment / (count * count);
    explained.push_back(sum / variance);
  }

  std::vector<SourceShare> shares;
  const auto add = [&](Kind kind, std::optional<std::size_t> component, std::initializer_list<std::size_t> of) {
    double sum = 0;
    for (const std::size_t axis : of) sum += explained[axis];
    shares.push_back({{kind, component}, sum});
  };
  add(Kind::capillary_constant, {}, {capillary});
  add(Kind::flooded_fill, {}, {flooded});
  add(Kind::grain_fill, {}, {fill});
  add(Kind::packing_model, {}, {voids});
  add(Kind::settling, {}, {settle});
  add(Kind::residual, {}, {residual});
  add(Kind::pot_lengths, {}, {length, width, depth});
  std::size_t axis = first_component;
  for (std::size_t k = 0; k < chain.components(); ++k) {
    const std::size_t classes = chain.spread().components[k].grading.class_masses.size();
    add(Kind::bulk_density, k, {axis + bulk});
    add(Kind::particle_density, k, {axis + particle});
    add(Kind::skeletal_density, k, {axis + skeletal});
    add(Kind::open_share, k, {axis + open});
    add(Kind::water_absorption, k, {axis + absorption});
    double grading = explained[axis + operators] + explained[axis + lost];
    for (std::size_t c = 0; c < classes; ++c) grading += explained[axis + first_class + c];
    shares.push_back({{Kind::grading, k}, grading});
    axis += first_class + classes;
  }
  std::erase_if(shares, [](const SourceShare& share) { return share.share < 0.01; });
  std::ranges::stable_sort(shares, std::ranges::greater{}, &SourceShare::share);
  return shares;
}

namespace {

/// A carefully weighed pot test leaves about this much of k, w and f open.
constexpr RetentionSpread after_pot_test{0.08, 0.08, 0.015, false};

/// The spread after the grower has measured `source`; empty where nothing can be measured.
std::optional<MixSpread> once_measured(const MixSpread& before, const UncertaintySource& source) {
  using Kind = UncertaintySource::Kind;
  MixSpread after = before;
  ComponentSpread* component = source.component ? &after.components[*source.component] : nullptr;
  const auto narrowed = [](FactorSpread& spread, double deviation) {
    spread = {std::min(spread.down, deviation), std::min(spread.up, deviation)};
  };
  switch (source.kind) {
    case Kind::bulk_density: narrowed(component->bulk_density, measured_density_deviation); break;
    case Kind::particle_density:
      component->particle_by_packing = false;
      component->particle_density = {measured_density_deviation, measured_density_deviation};
      break;
    case Kind::water_absorption: narrowed(component->water_absorption, measured_absorption_deviation); break;
    case Kind::grading:
      // Three more sievings of as much grain.
      for (double& deviation : component->grading.class_masses) deviation /= 2;
      component->grading.operators /= 2;
      component->grading.lost /= 2;
      break;
    case Kind::settling: narrowed(after.settling, measured_settling_deviation); break;
    case Kind::capillary_constant:
    case Kind::grain_fill:
    case Kind::flooded_fill:
      if (before.belief) return std::nullopt;
      after.retention = after_pot_test;
      break;
    case Kind::pot_lengths: after.pot.length_cm /= 4; break;
    case Kind::skeletal_density:
    case Kind::open_share:
    case Kind::packing_model:
    case Kind::residual: return std::nullopt;
  }
  return after;
}

double half_range(const UncertainMix& mix, MixFigure figure, const SampleSize& size, const SliceRunner& runner) {
  std::vector<double> values = mix.draws_of(figure, size, runner);
  const Range range = range_of(values);
  return (range.high - range.low) / 2;
}

}  // namespace

std::vector<Narrowing> UncertainMix::what_would_narrow(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  using Kind = UncertaintySource::Kind;
  std::vector<Narrowing> list;
  const std::vector<SourceShare> shares = sensitivity(figure, size, runner);
  if (shares.empty()) return list;
  const double now = half_range(*this, figure, size, runner);
  bool pot_test_named = false;
  for (const SourceShare& share : shares) {
    const bool by_pot_test = share.source.kind == Kind::capillary_constant || share.source.kind == Kind::grain_fill ||
                             share.source.kind == Kind::flooded_fill;
    if (by_pot_test && std::exchange(pot_test_named, true)) continue;
    const auto after = once_measured(chain_->spread(), share.source);
    if (!after) continue;
    const double then = half_range(UncertainMix(chain_->mix(), *after, chain_->pot(), *this), figure, size, runner);
    if (then < 0.99 * now) list.push_back({share.source, share.share, now, then});
  }
  return list;
}

}  // namespace gritwright
