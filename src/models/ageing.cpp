#include "gritwright/models/ageing.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/normal_scores.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

/// Packing density of crumbled fines by themselves; our assumption (broken grain of one size .47-.48, of many sizes more).
constexpr double packing_of_fines = 0.55;
constexpr std::size_t most_rates = 64;  // with 16 the upper end moved by 4 points from sample to sample
constexpr std::size_t least_draws_of_a_rate = 16;
constexpr int areas_of_profile = 5;  // more change the air by a ten-thousandth and take as much longer

/// The packing density the aged grain has with the class beta the new grain had.
double aged_packing(const GrainSizes& sizes, PackingDensity beta) {
  std::vector<PackingClass> classes;
  for (const SizeClass& each : size_classes(sizes)) classes.push_back({each.size, each.share, beta});
  return packing_density(classes).value();
}

Depth height_of(const PotGeometry& pot, double share_of_volume) {
  double low = 0, high = in_cm(pot.filled_depth());
  for (int step = 0; step < 24; ++step) {  // to a millionth of the depth
    const double middle = (low + high) / 2;
    (pot.volume_below(depth_cm(middle)) / pot.volume() < share_of_volume ? low : high) = middle;
  }
  return depth_cm((low + high) / 2);
}

bool is_plain(const UncertainMix::Pot& pot) {
  const auto* const whole = std::get_if<PotGeometry>(&pot);
  return whole == nullptr || (!whole->container().bottom_layer && !(whole->container().tilt.angle.value() > 0));
}

/// Straight walls between floor and rim, so that the part above a height is a pot of the same kind.
bool is_tapered(const Container& pot) { return pot.shape != Shape::profile && pot.shape != Shape::drum && pot.shape != Shape::bowl; }

/// The pot between two heights, as a container of its own. Empty where its area does not follow from its lengths alone.
std::optional<Container> part_between(const PotGeometry& whole, double from_cm, double to_cm) {
  Container part = whole.container();
  const bool cut_below = from_cm > 0;
  if (part.water_fill || part.shape == Shape::profile) return std::nullopt;
  if (cut_below && (!is_tapered(part) || in_cm(part.fillet_radius) > from_cm)) return std::nullopt;
  if (cut_below) {
    part.base = whole.section_at(depth_cm(from_cm));
    part.depth = part.depth - depth_cm(from_cm);
    part.fillet_radius = Length{};
  }
  part.freeboard = whole.container().depth - depth_cm(to_cm);
  part.mound.reset();
  part.bottom_layer.reset();
  part.top_dressing.reset();
  part.tilt = {};
  return part;
}

/// What is left of the pot above the clogged part: drains into it as into a wick.
UncertainMix::Pot pot_above(const UncertainMix::Pot& pot, double from_share, double to_share) {
  double from_cm = 0, to_cm = 0, head_cm = 0;
  Container rest;
  if (const auto* depth = std::get_if<Depth>(&pot)) {
    if (!(from_share > 0)) return *depth * to_share;
    from_cm = in_cm(*depth) * from_share;
    to_cm = in_cm(*depth) * to_share;
    rest.shape = Shape::profile;
    rest.areas = {{depth_cm(0), area_cm2(100)}, {depth_cm(to_cm - from_cm), area_cm2(100)}};
    rest.depth = rest.areas.back().height;
  } else {
    const PotGeometry& whole = std::get<PotGeometry>(pot);
    from_cm = from_share > 0 ? in_cm(height_of(whole, from_share)) : 0;
    to_cm = in_cm(height_of(whole, to_share));
    head_cm = in_cm(whole.container().wick) - in_cm(whole.container().saucer);
    if (auto part = part_between(whole, from_cm, to_cm)) {
      rest = std::move(*part);
    } else {
      rest.shape = Shape::profile;
      for (int i = 0; i < areas_of_profile; ++i) {
        const double along = static_cast<double>(i) / (areas_of_profile - 1);
        rest.areas.push_back({depth_cm((to_cm - from_cm) * along), whole.area_at(depth_cm(from_cm + (to_cm - from_cm) * along))});
      }
      rest.depth = rest.areas.back().height;
    }
  }
  head_cm += from_cm;
  rest.wick = head_cm >= 0 ? depth_cm(head_cm) : Depth{};
  rest.saucer = head_cm < 0 ? depth_cm(-head_cm) : Depth{};
  return PotGeometry(rest);
}

double root_mean_square(const std::vector<double>& values) {
  double squares = 0;
  for (const double value : values) squares += value * value;
  return std::sqrt(squares / static_cast<double>(values.size()));
}

/// Sizes known by a large sample when new are as well known when they have broken.
MixSpread spread_of_aged(MixSpread spread, const Mix& fresh, const Mix& aged) {
  for (std::size_t k = 0; k < aged.components.size(); ++k) {
    if (aged.components[k].sizes == fresh.components[k].sizes) continue;
    SievingSpread& grading = spread.components[k].grading;
    const double usual = root_mean_square(sieving_spread(fresh.components[k].sizes, fresh.components[k].grain.particle_density).class_masses);
    const double known = usual > 0 ? root_mean_square(grading.class_masses) / usual : 1;
    grading.class_masses = sieving_spread(aged.components[k].sizes, aged.components[k].grain.particle_density).class_masses;
    for (double& deviation : grading.class_masses) deviation *= known;
  }
  return spread;
}

/// Air of one season, one fate of the fines and one set of rates. `fresh` is the new mix, whose tables it shares.
std::vector<double> air_draws(const Mix& mix, const MixSpread& spread, const UncertainMix::Pot& pot, const UncertainMix& fresh,
                              std::span<const std::optional<Breakdown>> breakdowns, int season, Fines fines, std::span<const double> rates, const SampleSize& size) {
  const auto aged = aged_mix(mix, breakdowns, season, fines, rates);
  // Clogged up to the top: nothing drains.
  if (aged->clogged > 1 - 1e-6) return std::vector<double>(size.draws, 0);
  const double to = aged->volume_ratio, from = aged->clogged * to;
  const bool as_it_was = !(from > 0) && to == 1 && is_plain(pot);
  const UncertainMix uncertain(aged->mix, spread_of_aged(spread, mix, aged->mix), as_it_was ? pot : pot_above(pot, from, std::min(1.0, to)), fresh);
  std::vector<double> air = uncertain.draws_of(MixFigure::air_filled_porosity, size);
  for (double& each : air) each *= 1 - aged->clogged;
  return air;
}

}  // namespace

std::optional<AgedMix> aged_mix(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, double seasons, Fines fines,
                                std::span<const double> rates) {
  const auto before = mix_state(mix);
  if (!before || !before->settled) return std::nullopt;
  AgedMix aged{mix, 1, 0};
  double washed_l = 0;
  for (std::size_t k = 0; k < mix.components.size(); ++k) {
    Component& component = aged.mix.components[k];
    if (!breakdowns[k] || !(component.parts.value() > 0)) continue;
    const double breakages = breakdowns[k]->per_season * seasons * (rates.empty() ? 1 : rates[k]);
    const AgedGrain grain = aged_grain(component.sizes, breakages, breakdowns[k]->modulus, fines);
    const double dry_g_l = in_g_l(dry_bulk_density(component.grain)), particle_g_l = in_g_l(*component.grain.particle_density);
    const double mass_g = component.parts.value() * dry_g_l;
    washed_l += mass_g * grain.washed_down / particle_g_l;
    const double packing = aged_packing(grain.sizes, *before->class_betas[k]);
    component.sizes = grain.sizes;
    component.grain.bulk_density = bulk_g_l(packing * particle_g_l);
    component.grain.bulk_moisture = Moisture{};
    component.parts = Parts(mass_g * (1 - grain.washed_down) / (packing * particle_g_l));
  }
  const auto after = mix_state(aged.mix);
  if (!after || !after->settled) {
    // Nothing is left above the floor.
    if (washed_l > 0) return AgedMix{mix, 1, 1};
    return std::nullopt;
  }
  aged.volume_ratio = after->settled->volume / before->settled->volume;
  const double layer_l = washed_l / (packing_of_fines * after->settled->voids_between_grains.value());
  aged.clogged = std::min(1.0, layer_l / in_l(after->settled->volume));
  return aged;
}

std::optional<AirOverYears> air_over_years(const Mix& mix, const MixSpread& spread, const UncertainMix::Pot& pot,
                                           std::span<const std::optional<Breakdown>> breakdowns, int seasons, Porosity limit,
                                           const SampleSize& size, const SliceRunner& runner) {
  if (std::holds_alternative<std::monostate>(pot) || !aged_mix(mix, breakdowns, 0, Fines::staying)) return std::nullopt;
  const std::size_t count = mix.components.size();
  const std::size_t rate_points = std::clamp<std::size_t>(size.draws / least_draws_of_a_rate, 1, most_rates);
  std::vector<double> scores(rate_points * count);
  NormalScores(count, size.seed).fill(0, scores);
  const std::size_t draws_of_each = std::max<std::size_t>(1, size.draws / rate_points);
  // The new mix is drawn as it is everywhere else, so that it has the same range.
  const UncertainMix fresh(mix, spread, is_plain(pot) ? pot : pot_above(pot, 0, 1));

  constexpr std::array fates{Fines::staying, Fines::washed_down};
  const auto years = static_cast<std::size_t>(seasons);
  std::vector<std::vector<double>> draws(years * fates.size() * rate_points);
  runner(draws.size(), [&](std::size_t slice) {
    const std::size_t point = slice % rate_points, fate = slice / rate_points % fates.size();
    const auto season = static_cast<int>(slice / rate_points / fates.size()) + 1;
    std::vector<double> rates(count, 1);
    for (std::size_t k = 0; k < count; ++k)
      if (breakdowns[k]) rates[k] = breakdowns[k]->spread.at(scores[point * count + k]);
    draws[slice] = air_draws(mix, spread, pot, fresh, breakdowns, season, fates[fate], rates, SampleSize{draws_of_each, size.seed + static_cast<decltype(size.seed)>(point)});
  });

  AirOverYears answer;
  for (std::size_t season = 0; season <= years; ++season) {
    std::array<Range, fates.size()> ranges;
    if (season == 0) ranges.fill(range_of(fresh.draws_of(MixFigure::air_filled_porosity, size, runner)));
    for (std::size_t fate = 0; season > 0 && fate < fates.size(); ++fate) {
      std::vector<double> all;
      for (std::size_t point = 0; point < rate_points; ++point) {
        const auto& some = draws[((season - 1) * fates.size() + fate) * rate_points + point];
        all.insert(all.end(), some.begin(), some.end());
      }
      ranges[fate] = range_of(all);
    }
    const auto aged = aged_mix(mix, breakdowns, static_cast<double>(season), Fines::staying);
    answer.seasons.push_back({static_cast<int>(season), ranges[0], ranges[1], mix_state(aged->mix)->passing});
    const auto note_first = [&](std::optional<int>& first, const Range& range) {
      if (!first && range.median < limit.value()) first = static_cast<int>(season);
    };
    note_first(answer.likely_below_staying, ranges[0]);
    note_first(answer.likely_below_washed_down, ranges[1]);
  }
  const auto hint = [&](const std::optional<int>& season, const char* code) {
    if (season && *season > 0) answer.notes.push_back({code, Level::note, "", {{"percent", 100 * limit.value()}, {"season", double(*season)}}});
  };
  if (answer.likely_below_staying == 0)
    answer.notes.push_back({"ageing.below-when-new", Level::note, "", {{"percent", 100 * limit.value()}}});
  hint(answer.likely_below_staying, "ageing.below-staying");
  hint(answer.likely_below_washed_down, "ageing.below-washed-down");
  for (std::size_t k = 0; k < count; ++k) {
    if (!breakdowns[k] && mix.components[k].parts.value() > 0)
      answer.notes.push_back({"ageing.no-durability", Level::note, mix.components[k].name, {}});
  }
  if (!is_plain(pot)) answer.notes.push_back({"ageing.plain-pot", Level::note, "", {}});
  answer.notes.push_back({"ageing.estimate", Level::note, "", {}});
  return answer;
}

}  // namespace gritwright
