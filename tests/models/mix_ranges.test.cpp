#include "gritwright/models/mix_ranges.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <numbers>
#include <numeric>
#include <random>
#include <thread>
#include <utility>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/grading_ranges.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/normal_scores.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "support/random_mix.hpp"
#include "support/random_pots.hpp"
#include "support/reference.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Nothing is uncertain.
MixSpread certain(const Mix& mix) {
  MixSpread spread;
  for (const Component& component : mix.components) {
    ComponentSpread one;
    one.grading.class_masses.assign(size_classes(component.sizes).size(), 0);
    spread.components.push_back(one);
  }
  spread.retention = {0, 0, 0, false};
  return spread;
}

Component single_size(const std::string& name, double size_mm, double bulk, double particle, double parts = 1) {
  Component component;
  component.name = name;
  component.parts = Parts(parts);
  component.grain.bulk_density = bulk_g_l(bulk);
  component.grain.particle_density = particle_g_l(particle);
  component.grain.skeletal_density = skeletal_g_l(2400);
  component.sizes = SingleSize{aperture_mm(size_mm)};
  return component;
}

/// The invented grain of the chain's worked check, with a bit of everything.
Component graded(const std::string& name, double scale, double parts = 1) {
  Component component = single_size(name, 1, 540, 1000, parts);
  component.sizes = Grading{{{aperture_mm(1 * scale), passing_percent(5)},
                             {aperture_mm(2 * scale), passing_percent(25)},
                             {aperture_mm(3.35 * scale), passing_percent(60)},
                             {aperture_mm(4.75 * scale), passing_percent(90)},
                             {aperture_mm(6.3 * scale), passing_percent(100)}},
                            aperture_mm(0.5 * scale),
                            {}};
  return component;
}

Mix mix_of(std::vector<Component> components, double settling = 0.08) {
  Mix mix;
  mix.components = std::move(components);
  mix.settling = Settling(settling);
  return mix;
}

Container tray() {
  Container container;
  container.rim = {length_cm(28), length_cm(20)};
  container.base = Section{length_cm(24), length_cm(16)};
  container.depth = depth_cm(6);
  return container;
}

double deviation(const std::vector<double>& values) {
  const auto count = static_cast<double>(values.size());
  const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
  double squares = 0;
  for (const double value : values) squares += (value - mean) * (value - mean);
  return std::sqrt(squares / count);
}

double half_width(const Range& range) { return (range.high - range.low) / 2; }

constexpr SampleSize many{65536, 7};

}  // namespace

TEST_CASE("Without anything uncertain every draw is the plain estimate", "[mix_ranges][law]") {
  RandomMixes mixes(11);
  test::RandomPots pots(12);
  for (int i = 0; i < 60; ++i) {
    const Mix mix = mixes.next();
    const auto state = mix_state(mix);
    if (!state) continue;
    const PotGeometry pot(pots.container());
    const auto water = mix_in_pot(*state, mix.water, pot);
    const MixRanges ranges = UncertainMix(mix, certain(mix), pot).ranges({2, 1});
    const auto same = [&](MixFigure figure, double value) {
      INFO("case " << i << ", figure " << static_cast<int>(figure));
      REQUIRE(ranges.of(figure));
      CHECK_THAT(ranges.of(figure)->low, WithinAbs(value, 1e-6 * std::max(1.0, std::abs(value))));
      CHECK_THAT(ranges.of(figure)->high, WithinAbs(value, 1e-6 * std::max(1.0, std::abs(value))));
    };
    same(MixFigure::packing_density, state->poured->packing_density.value());
    same(MixFigure::volume_l, in_l(state->poured->volume));
    same(MixFigure::shrinkage, state->shrinkage->value());
    same(MixFigure::bulk_density_g_l, in_g_l(state->settled->bulk_density));
    same(MixFigure::particle_density_g_l, in_g_l(*state->particle_density));
    if (state->skeletal_density) same(MixFigure::skeletal_density_g_l, in_g_l(*state->skeletal_density));
    same(MixFigure::voids_between_grains, state->settled->voids_between_grains.value());
    same(MixFigure::voids_in_grains, state->settled->voids_in_grains.value());
    same(MixFigure::total_porosity, state->settled->total_porosity.value());
    same(MixFigure::grain_water, state->settled->grain_water.value());
    same(MixFigure::pot_volume_ml, in_ml(pot.volume()));
    same(MixFigure::depth_cm, in_cm(water->filled_depth));
    same(MixFigure::container_capacity, water->container_capacity.value());
    same(MixFigure::air_filled_porosity, water->air_filled_porosity.value());
    same(MixFigure::trapped_air, water->trapped_air.value());
    same(MixFigure::total_air, water->total_air.value());
    same(MixFigure::theta_0, water->theta_0.value());
    same(MixFigure::theta_10, water->theta_10.value());
    same(MixFigure::theta_50, water->theta_50.value());
    same(MixFigure::easily_available, water->easily_available.value());
    same(MixFigure::available_in_pot, water->available_in_pot.value());
    same(MixFigure::wet_mass_g, in_g(wet_mass(*water->mix_volume, state->settled->bulk_density, water->container_capacity)));
    const MixedVolume mixed = mixed_volume_to_fill(pot.main_mix_volume(), mix);
    same(MixFigure::mixed_l, in_l(mixed));
    const auto litres = component_volumes(mixed, *state);
    for (std::size_t k = 0; k < mix.components.size(); ++k) {
      CHECK_THAT(ranges.mass_shares[k].median, WithinAbs(state->mass_shares[k].value(), 1e-9));
      CHECK_THAT(ranges.envelope_shares[k]->median, WithinAbs((*state->envelope_shares)[k].value(), 1e-9));
      CHECK_THAT(ranges.class_betas[k]->median, WithinAbs(state->class_betas[k]->value(), 1e-9));
      CHECK_THAT(ranges.measure_out_l[k]->median, WithinAbs(in_l((*litres)[k]), 1e-6));
    }
    REQUIRE(ranges.passing.size() == state->passing.size());
    for (std::size_t p = 0; p < state->passing.size(); ++p) {
      CHECK_THAT(ranges.passing[p].median, WithinAbs(state->passing[p].passing.value(), 1e-9));
      CHECK_THAT(ranges.envelope_passing[p]->median, WithinAbs((*state->envelope_passing)[p].passing.value(), 1e-9));
    }
    for (std::size_t h = 0; h < water->water_by_height.size(); ++h)
      CHECK_THAT(ranges.water_by_height[h]->median, WithinAbs(water->water_by_height[h].water.value(), 1e-6));
    CHECK_THAT(ranges.perched_height_cm->median, WithinAbs(in_cm(water->perched_height), 1e-4));
  }
}

TEST_CASE("A draw is the plain estimate of the mix as it was drawn", "[mix_ranges][law]") {
  // The single size is coarser than all of the graded grain, so that the graded grain's own curve can be read off the drawn mix.
  const Mix mix = mix_of({graded("graded", 1, 2), single_size("coarse", 12, 610, 1150, 1)});
  MixSpread spread = certain(mix);
  spread.components[0].grading = usual_spread(mix).components[0].grading;
  for (double& deviation : spread.components[0].grading.class_masses) deviation *= 5;
  const PotGeometry pot(tray());
  const UncertainMix uncertain(mix, spread, pot);
  const std::vector<double> all = uncertain.draws_of(MixFigure::packing_density, {64, 3});
  CHECK(std::ranges::max(all) - std::ranges::min(all) > 0.01);
  for (std::uint64_t seed = 1; seed <= 25; ++seed) {
    INFO("seed " << seed);
    const MixRanges ranges = uncertain.ranges({1, seed});
    Mix drawn = mix;
    auto& points = std::get<Grading>(drawn.components[0].sizes).points;
    REQUIRE(ranges.passing.size() == points.size() + 1);
    for (std::size_t i = 0; i + 1 < points.size(); ++i) points[i].passing = Passing(ranges.passing[i].median / ranges.mass_shares[0].median);
    const auto state = mix_state(drawn);
    const auto water = mix_in_pot(*state, drawn.water, pot);
    const auto drawn_as = [&](MixFigure figure, double value, double room) { CHECK_THAT(ranges.of(figure)->median, WithinAbs(value, room)); };
    drawn_as(MixFigure::packing_density, state->poured->packing_density.value(), 1e-9);
    drawn_as(MixFigure::container_capacity, water->container_capacity.value(), 1e-6);
    drawn_as(MixFigure::air_filled_porosity, water->air_filled_porosity.value(), 1e-6);
    drawn_as(MixFigure::theta_10, water->theta_10.value(), 1e-6);
    drawn_as(MixFigure::theta_50, water->theta_50.value(), 1e-6);
    CHECK_THAT(ranges.class_betas[0]->median, WithinAbs(state->class_betas[0]->value(), 1e-9));
    for (std::size_t h = 0; h < water->water_by_height.size(); ++h) CHECK_THAT(ranges.water_by_height[h]->median, WithinAbs(water->water_by_height[h].water.value(), 1e-6));
    CHECK_THAT(ranges.perched_height_cm->median, WithinAbs(in_cm(water->perched_height), 1e-4));
  }
}

TEST_CASE("Linear cases spread as the propagation of errors says", "[mix_ranges][law]") {
  const Mix two = mix_of({single_size("coarse", 6, 600, 1200), single_size("fine", 2, 700, 1300)});

  SECTION("a depth of straight walls, by one length") {
    MixSpread spread = certain(two);
    spread.pot.length_cm = 0.1;
    const Range depth = *UncertainMix(two, spread, depth_cm(8)).ranges(many).of(MixFigure::depth_cm);
    CHECK_THAT(depth.median, WithinAbs(8, 1e-3));
    CHECK_THAT(half_width(depth), WithinRel(score_of_95_percent * 0.1, 0.01));
  }
  SECTION("a tray's volume, by three lengths, small against the tray") {
    MixSpread spread = certain(two);
    spread.pot.length_cm = 0.02;
    const PotGeometry pot(tray());
    const Range volume = *UncertainMix(two, spread, pot).ranges(many).of(MixFigure::pot_volume_ml);
    const double relative = 0.02 * std::sqrt(1 / (28.0 * 28) + 1 / (20.0 * 20) + 1 / (6.0 * 6));
    CHECK_THAT(half_width(volume), WithinRel(score_of_95_percent * relative * in_ml(pot.volume()), 0.01));
  }
  SECTION("the packing model's voids, settled") {
    MixSpread spread = certain(two);
    spread.packing_voids = 0.005;
    const auto state = mix_state(two);
    const double larger = std::max((*state->envelope_shares)[0].value(), (*state->envelope_shares)[1].value());
    const Range voids = *UncertainMix(two, spread, {}).ranges(many).of(MixFigure::voids_between_grains);
    CHECK_THAT(half_width(voids), WithinRel(score_of_95_percent * 0.005 * 2 * (1 - larger) / 0.92, 0.01));
  }
  SECTION("a mass share, by two bulk densities") {
    MixSpread spread = certain(two);
    for (ComponentSpread& component : spread.components) component.bulk_density = {0.01, 0.01};
    const Range share = UncertainMix(two, spread, {}).ranges(many).mass_shares[0];
    const double p = 600.0 / 1300;
    CHECK_THAT(half_width(share), WithinRel(score_of_95_percent * 0.01 * std::sqrt(2.0) * p * (1 - p), 0.01));
  }
  SECTION("the flooded water, by the grain fill and the voids together") {
    MixSpread spread = certain(two);
    spread.retention.grain_fill = 0.02;
    spread.packing_voids = 0.003;
    const auto state = mix_state(two);
    const double open = state->settled->open_voids_in_grains.value();
    const double packing = state->settled->packing_density.value();
    const double larger = std::max((*state->envelope_shares)[0].value(), (*state->envelope_shares)[1].value());
    const double by_voids = 0.003 * 2 * (1 - larger) / 0.92 * (two.water.flooded_fill - two.water.grain_fill * open / packing);
    const Range flooded = *UncertainMix(two, spread, depth_cm(6)).ranges(many).of(MixFigure::theta_0);
    CHECK_THAT(half_width(flooded), WithinRel(score_of_95_percent * std::hypot(0.02 * open, by_voids), 0.01));
  }
}

TEST_CASE("A pot by itself has the litres of the mix in it, narrower where water measured them", "[mix_ranges][law]") {
  const Mix two = mix_of({single_size("coarse", 6, 600, 1200), single_size("fine", 2, 700, 1300)});
  Container container = tray();
  container.bottom_layer = BottomLayer{depth_cm(1), {}};
  const PotGeometry pot(container);
  const PotRanges alone = pot_ranges(pot);
  const Range filled = *UncertainMix(two, usual_spread(two), pot).ranges().of(MixFigure::pot_volume_ml);
  CHECK_THAT(alone.volume_ml.low, WithinRel(filled.low, 1e-3));
  CHECK_THAT(alone.volume_ml.high, WithinRel(filled.high, 1e-3));
  CHECK(alone.by_lengths_ml == alone.volume_ml);
  CHECK_THAT(alone.main_mix_ml.high / alone.volume_ml.high, WithinRel(pot.main_mix_volume() / pot.volume(), 1e-12));
  container.water_fill = pot.volume();
  const PotRanges measured = pot_ranges(PotGeometry(container));
  CHECK(measured.by_lengths_ml.high == alone.volume_ml.high);
  CHECK_THAT(half_width(measured.volume_ml), WithinRel(score_of_95_percent * 0.01 * measured.volume_ml.median, 0.01));
  CHECK(half_width(measured.volume_ml) < half_width(alone.volume_ml));
}

TEST_CASE("The sampling of grain spreads a share as Gy's model does", "[mix_ranges][published]") {
  // docs/science/grading.md: share .30 of 7.7 mm, the rest 3 mm, 1 g/cm3, 300 g: 1.096 points.
  Component bag = single_size("bag", 1, 500, 1000);
  bag.grain.skeletal_density.reset();
  // Sieves whose middles are the two sizes.
  const double middle = std::sqrt(7.7 * 3.0);
  bag.sizes = Grading{{{aperture_mm(3 * 3 / middle), passing_percent(0)},
                       {aperture_mm(middle), passing_percent(70)},
                       {aperture_mm(7.7 * 7.7 / middle), passing_percent(100)}},
                      {},
                      {}};
  const Mix mix = mix_of({bag}, 0);
  MixSpread spread = certain(mix);
  spread.components[0].grading = sieving_spread(bag.sizes, bag.grain.particle_density, {mass_g(300), {}, {}, 1});
  spread.components[0].grading.operators = 0;
  const MixRanges ranges = UncertainMix(mix, spread, {}).ranges(many);
  CHECK_THAT(100 * half_width(ranges.passing[1]) / score_of_95_percent, WithinRel(1.096, 0.01));
  const std::vector<GrainClass> classes{{MassShare(0.3), mass_g(std::numbers::pi / 6 * 7.7 * 7.7 * 7.7 / 1000)},
                                        {MassShare(0.7), mass_g(std::numbers::pi / 6 * 27.0 / 1000)}};
  CHECK_THAT(100 * sampling_deviation(classes, 0, mass_g(300)).value(), WithinAbs(1.096, 0.0005));
}

TEST_CASE("Quantiles agree with a million plain draws of NumPy", "[mix_ranges][published][peer]") {
  // Two single sizes and one graded bag; rows: parts, settling, deviations of bulk density (down, up), of the own packing,
  // of the voids, settling (down, up), ln k, w, theta_r, and whether f scatters.
  const std::vector<std::vector<double>> cases{
      {1, 1, 0, 0.08, 0.10, 0.06, 0.05, 0.009, 0.29, 0.30, 0.24, 0.15, 0.015, 1, 6},
      {2, 1, 0, 0.00, 0.02, 0.02, 0.02, 0.009, 0.00, 0.00, 0.24, 0.15, 0.015, 1, 4},
      {1, 3, 0, 0.08, 0.15, 0.20, 0.05, 0.009, 0.29, 0.30, 0.08, 0.08, 0.015, 0, 12},
      {0, 0, 1, 0.08, 0.08, 0.08, 0.05, 0.009, 0.29, 0.30, 0.24, 0.15, 0.015, 1, 8},
      {0, 2, 1, 0.05, 0.10, 0.15, 0.05, 0.009, 0.29, 0.30, 0.24, 0.15, 0.015, 1, 5}};
  const auto theirs = reference::answers("mix_ranges.py", cases);
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const std::vector<double>& c = cases[i];
    std::vector<Component> components;
    if (c[0] > 0) components.push_back(single_size("coarse", 6, 600, 1200, c[0]));
    if (c[1] > 0) components.push_back(single_size("fine", 2, 450, 900, c[1]));
    if (c[2] > 0) components.push_back(graded("graded", 1, c[2]));
    const Mix mix = mix_of(components, c[3]);
    MixSpread spread = certain(mix);
    for (ComponentSpread& component : spread.components) {
      component.bulk_density = {c[4], c[5]};
      component.particle_by_packing = true;
      component.particle_density = {c[6], c[6]};
    }
    spread.packing_voids = c[7];
    spread.settling = {c[8], c[9]};
    spread.retention = {c[10], c[11], c[12], c[13] > 0};
    const MixRanges ours = UncertainMix(mix, spread, depth_cm(c[14])).ranges({1U << 16U, 3});
    std::size_t at = 0;
    for (const MixFigure figure : {MixFigure::bulk_density_g_l, MixFigure::voids_between_grains, MixFigure::container_capacity,
                                   MixFigure::air_filled_porosity, MixFigure::theta_50}) {
      const Range range = *ours.of(figure);
      const double room = 0.01 * (theirs[i][at + 2] - theirs[i][at]);
      INFO("case " << i + 1 << ", figure " << static_cast<int>(figure));
      CHECK_THAT(range.low, WithinAbs(theirs[i][at], room));
      CHECK_THAT(range.median, WithinAbs(theirs[i][at + 1], room));
      CHECK_THAT(range.high, WithinAbs(theirs[i][at + 2], room));
      at += 3;
    }
  }
}

TEST_CASE("Quantiles lie between neighbours, however few values there are", "[mix_ranges][law]") {
  std::vector<double> one{3}, two{10, 0}, eleven{10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0};
  CHECK(range_of(one) == Range{3, 3, 3});
  CHECK(range_of(two) == Range{0.5, 5, 9.5});
  CHECK(range_of(eleven) == Range{0.5, 5, 9.5});
}

TEST_CASE("Quantiles of thousands of values are those of the sorted list, however they are spread", "[mix_ranges][law]") {
  std::mt19937_64 random(Catch::rngSeed());
  std::lognormal_distribution<double> skewed(0, 2);
  std::uniform_int_distribution<int> few(0, 3);
  const auto check_range = [&](std::size_t count, const std::function<double()>& draw) {
    std::vector<double> values(count);
    std::ranges::generate(values, draw);
    const Range range = range_of(values);
    std::ranges::sort(values);
    const auto at = [&](double share) {
      const double place = share * static_cast<double>(count - 1);
      const auto below = static_cast<std::size_t>(place);
      return std::lerp(values[below], values[std::min(below + 1, count - 1)], place - std::floor(place));
    };
    CHECK(range == Range{at(0.05), at(0.5), at(0.95)});
  };
  for (const std::size_t count : {std::size_t{511}, std::size_t{512}, std::size_t{3000}, std::size_t{4096}}) {
    check_range(count, [&] { return skewed(random); });
    check_range(count, [&] { return -skewed(random); });
    check_range(count, [&] { return few(random); });
    check_range(count, [] { return 0.7; });
    // One value far away puts all others into one bucket.
    check_range(count, [&, first = true]() mutable { return std::exchange(first, false) ? 1e12 : skewed(random); });
  }
}

TEST_CASE("A factor is e to the power of its score, to the last digits", "[mix_ranges][law]") {
  // Grain of one size alone: its bulk density has one axis of the scores to itself; which one is the chain's own affair.
  const Mix mix = mix_of({single_size("bag", 4, 700, 1400)}, 0);
  MixSpread spread = certain(mix);
  spread.components[0].bulk_density = {0.11, 0.23};
  constexpr SampleSize size{600, 9};
  const std::vector<double> bulk = UncertainMix(mix, spread, {}).draws_of(MixFigure::bulk_density_g_l, size);
  REQUIRE(bulk.size() == size.draws);
  constexpr std::size_t axes = 40;  // more than the chain has: an axis is the same however many there are
  std::vector<double> scores(axes * size.draws);
  NormalScores(axes, size.seed).fill(0, scores);
  const auto agrees = [&](std::size_t axis) {
    for (std::size_t i = 0; i < size.draws; ++i) {
      const double score = scores[i * axes + axis];
      if (std::abs(bulk[i] / (700 * std::exp(score * (score < 0 ? 0.11 : 0.23))) - 1) > 4e-15) return false;
    }
    return true;
  };
  bool one_agrees = false;
  for (std::size_t axis = 0; axis < axes; ++axis) one_agrees = one_agrees || agrees(axis);
  CHECK(one_agrees);
}

TEST_CASE("A seed gives the same ranges with one thread and with many", "[mix_ranges][law]") {
  const Mix mix = mix_of({graded("a", 1), graded("b", 0.5, 2), single_size("c", 4, 600, 1100)});
  const UncertainMix uncertain(mix, usual_spread(mix), PotGeometry(tray()));
  const SliceRunner threads = [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    std::vector<std::jthread> all;
    for (std::size_t t = 0; t < 3; ++t)
      all.emplace_back([&, t] {
        for (std::size_t i = t; i < count; i += 3) slice(i);
      });
  };
  const SampleSize size{3000, 42};
  const MixRanges one = uncertain.ranges(size), three = uncertain.ranges(size, threads);
  CHECK(one.figures == three.figures);
  CHECK(one.passing == three.passing);
  CHECK(one.water_by_height == three.water_by_height);
  CHECK(uncertain.draws_of(MixFigure::air_filled_porosity, size) == uncertain.draws_of(MixFigure::air_filled_porosity, size, threads));
  CHECK(one.figures != uncertain.ranges({3000, 43}).figures);
}

TEST_CASE("A smaller sample is the beginning of the larger one", "[mix_ranges][law]") {
  const Mix mix = mix_of({graded("a", 1), graded("b", 0.5, 2)});
  const UncertainMix uncertain(mix, usual_spread(mix), depth_cm(6));
  const std::vector<double> large = uncertain.draws_of(MixFigure::air_filled_porosity, {1024, 5});
  std::vector<double> small = uncertain.draws_of(MixFigure::air_filled_porosity, {256, 5});
  CHECK(std::equal(small.begin(), small.end(), large.begin()));
  // However many are left over where draws are worked out side by side.
  for (const std::size_t draws : {std::size_t{1}, std::size_t{15}, std::size_t{37}, std::size_t{300}}) {
    const std::vector<double> some = uncertain.draws_of(MixFigure::theta_50, {draws, 5}), all = uncertain.draws_of(MixFigure::theta_50, {1024, 5});
    CHECK(some.size() == draws);
    CHECK(std::equal(some.begin(), some.end(), all.begin()));
  }
  const auto live = uncertain.air_and_water({256, 5});
  REQUIRE(live);
  CHECK(live->air == range_of(small));
}

TEST_CASE("No source by itself spreads a figure more than all together", "[mix_ranges][law][rounds]") {
  RandomMixes mixes(21);
  int looked_at = 0;
  for (int i = 0; i < 6; ++i) {
    const Mix mix = mixes.next();
    if (!mix_state(mix)) continue;
    const MixSpread all = usual_spread(mix), none = certain(mix);
    std::vector<MixSpread> alone;
    const auto only = [&](auto keep) {
      MixSpread spread = none;
      keep(spread);
      alone.push_back(spread);
    };
    only([&](MixSpread& s) { s.retention = all.retention; });
    only([&](MixSpread& s) { s.packing_voids = all.packing_voids; });
    only([&](MixSpread& s) { s.settling = all.settling; });
    only([&](MixSpread& s) { s.pot = all.pot; });
    for (std::size_t k = 0; k < mix.components.size(); ++k) {
      only([&](MixSpread& s) { s.components[k].bulk_density = all.components[k].bulk_density; });
      only([&](MixSpread& s) { s.components[k].particle_density = all.components[k].particle_density; });
      only([&](MixSpread& s) { s.components[k].grading.class_masses = all.components[k].grading.class_masses; });
      only([&](MixSpread& s) { s.components[k].grading.operators = all.components[k].grading.operators; });
    }
    for (const MixFigure figure : {MixFigure::air_filled_porosity, MixFigure::container_capacity, MixFigure::bulk_density_g_l}) {
      const double together = deviation(UncertainMix(mix, all, depth_cm(7)).draws_of(figure));
      for (const MixSpread& spread : alone) {
        CHECK(deviation(UncertainMix(mix, spread, depth_cm(7)).draws_of(figure)) <= together * 1.02);
        ++looked_at;
      }
    }
  }
  CHECK(looked_at > 60);
}

TEST_CASE("Shares of the variance are those of a linear case, and the rest is small", "[mix_ranges][law]") {
  const Mix two = mix_of({single_size("coarse", 6, 600, 1200), single_size("fine", 2, 700, 1300)}, 0);
  MixSpread spread = certain(two);
  spread.retention.grain_fill = 0.03;
  spread.packing_voids = 0.004;
  const UncertainMix uncertain(two, spread, depth_cm(6));
  const auto shares = uncertain.sensitivity(MixFigure::theta_0);
  const auto state = mix_state(two);
  const double open = state->settled->open_voids_in_grains.value(), packing = state->settled->packing_density.value();
  const double larger = std::max((*state->envelope_shares)[0].value(), (*state->envelope_shares)[1].value());
  const double by_fill = 0.03 * open;
  const double by_voids = 0.004 * 2 * (1 - larger) * (two.water.flooded_fill - two.water.grain_fill * open / packing);
  const double all = by_fill * by_fill + by_voids * by_voids;
  REQUIRE(shares.size() == 2);
  CHECK(shares[0].source.kind == UncertaintySource::Kind::grain_fill);
  CHECK_THAT(shares[0].share, WithinAbs(by_fill * by_fill / all, 0.01));
  CHECK(shares[1].source.kind == UncertaintySource::Kind::packing_model);
  CHECK_THAT(shares[1].share, WithinAbs(by_voids * by_voids / all, 0.01));
}

TEST_CASE("First-order shares never add up to more than the whole", "[mix_ranges][law]") {
  RandomMixes mixes(31);
  for (int i = 0; i < 15; ++i) {
    const Mix mix = mixes.next();
    if (!mix_state(mix)) continue;
    const auto shares = UncertainMix(mix, usual_spread(mix), depth_cm(6)).sensitivity(MixFigure::air_filled_porosity);
    REQUIRE_FALSE(shares.empty());
    double sum = 0;
    for (const SourceShare& share : shares) sum += share.share;
    CHECK(sum < 1.05);
    CHECK(sum > 0.6);
    CHECK(std::ranges::is_sorted(shares, std::ranges::greater{}, &SourceShare::share));
  }
}

TEST_CASE("Measuring a wide source narrows the range, and the pot test stands once", "[mix_ranges][law]") {
  const Mix mix = mix_of({graded("pumice", 1), graded("akadama", 0.6)});
  MixSpread spread = usual_spread(mix);
  spread.components[0].bulk_density = factor_within(600, 480, 880);
  spread.retention = {0.08, 0.05, 0.01, false};
  const UncertainMix uncertain(mix, spread, depth_cm(6));
  const auto narrowings = uncertain.what_would_narrow(MixFigure::air_filled_porosity);
  REQUIRE_FALSE(narrowings.empty());
  bool weighs_pumice = false;
  int pot_tests = 0;
  for (const Narrowing& narrowing : narrowings) {
    CHECK(narrowing.half_range_then < narrowing.half_range_now);
    using Kind = UncertaintySource::Kind;
    weighs_pumice = weighs_pumice || narrowing.source == UncertaintySource{Kind::bulk_density, 0};
    const Kind kind = narrowing.source.kind;
    pot_tests += kind == Kind::capillary_constant || kind == Kind::grain_fill || kind == Kind::flooded_fill ? 1 : 0;
  }
  CHECK(weighs_pumice);
  CHECK(pot_tests <= 1);
}

namespace {

using FinerThan = std::vector<std::pair<double, double>>;

Mix sand_of(double porosity, const FinerThan& finer) {
  Component sand = single_size("sand", 1, 2650 * (1 - porosity), 2650);
  sand.grain.skeletal_density.reset();
  Grading grading;
  for (const auto& [mm, share] : finer) grading.points.push_back({aperture_mm(mm), Passing(share)});
  sand.sizes = grading;
  return mix_of({sand}, 0);
}

}  // namespace

TEST_CASE("The documented miss is missed by its estimate and held by its range", "[mix_ranges][published]") {
  // UNSODA 2.0, 4810 (porosity .481): measured .346 over 0-30 cm.
  const Mix mix = sand_of(0.481, {{0.1, 0.02}, {0.25, 0.13}, {0.5, 0.48}, {1, 0.99}, {2, 1}});
  const auto state = mix_state(mix);
  CHECK(mix_in_column(*state, mix.water, depth_cm(30))->container_capacity.value() < 0.346 - 0.04);
  const Range capacity = *UncertainMix(mix, usual_spread(mix), depth_cm(30)).ranges().of(MixFigure::container_capacity);
  CHECK(capacity.low < 0.346);
  CHECK(capacity.high > 0.346);
}

TEST_CASE("Clean sands of the data base lie inside the range", "[mix_ranges][published]") {
  // UNSODA 2.0, codes as in docs/science/water.md: porosity, finer-than share by mm, measured theta at 10, 20, 50 cm.
  struct Soil {
    int code;
    double porosity;
    FinerThan finer;
    std::array<double, 3> measured;
  };
  const std::vector<Soil> soils{
      {1054, 0.419, {{0.125, 0.032}, {0.25, 0.065}, {0.5, 0.302}, {1, 0.859}, {2, 1}}, {0.300, 0.105, 0.037}},
      {1053, 0.419, {{0.125, 0.058}, {0.25, 0.105}, {0.5, 0.366}, {1, 0.886}, {2, 1}}, {0.297, 0.142, 0.050}},
      {3332, 0.430, {{0.125, 0.046}, {0.2, 0.088}, {0.5, 0.868}, {2, 1}}, {0.354, 0.299, 0.077}}};
  for (const Soil& soil : soils) {
    const Mix mix = sand_of(soil.porosity, soil.finer);
    const MixRanges ranges = UncertainMix(mix, usual_spread(mix), depth_cm(50)).ranges();
    const std::array<std::size_t, 3> heights{2, 4, 10};
    for (std::size_t i = 0; i < heights.size(); ++i) {
      INFO("UNSODA " << soil.code << ", point " << i << ": " << ranges.water_by_height[heights[i]]->low << " to "
                     << ranges.water_by_height[heights[i]]->high << ", measured " << soil.measured[i]);
      CHECK(soil.measured[i] >= ranges.water_by_height[heights[i]]->low);
      CHECK(soil.measured[i] <= ranges.water_by_height[heights[i]]->high);
    }
  }
}

namespace {

/// Two graded components: the blend's middle size lies between its sieves.
Mix two_gradings() {
  Component fine = single_size("fine", 2, 450, 900);
  fine.grain.skeletal_density.reset();
  Grading grading;
  for (const auto& [mm, share] : FinerThan{{1, 0.04}, {2, 0.3}, {4, 0.9}, {8, 1}}) grading.points.push_back({aperture_mm(mm), Passing(share)});
  fine.sizes = grading;
  Component coarse = fine;
  coarse.name = "coarse";
  grading.points.clear();
  for (const auto& [mm, share] : FinerThan{{1, 0.01}, {2, 0.06}, {4, 0.45}, {8, 1}}) grading.points.push_back({aperture_mm(mm), Passing(share)});
  coarse.sizes = grading;
  return mix_of({fine, coarse}, 0);
}

BlendRanges blend_of(const Mix& mix, const MixSpread& spread, const Band& band) {
  const auto state = mix_state(mix);
  const UncertainMix uncertain(mix, spread, depth_cm(6));
  return blend_ranges(Grading{state->passing, {}, {}}, uncertain.passing_draws(), std::vector{band});
}

}  // namespace

TEST_CASE("Sizes and bands of a blend without doubt are the blend's own", "[grading_ranges][law]") {
  const Mix mix = two_gradings();
  const Band band{aperture_mm(2), aperture_mm(6)};
  const BlendRanges ranges = blend_of(mix, certain(mix), band);
  const Grading nominal{mix_state(mix)->passing, {}, {}};
  for (std::size_t i = 0; i < reported_percentiles.size(); ++i) {
    const auto size = percentile(nominal, reported_percentiles[i]);
    REQUIRE(ranges.percentiles_mm[i].has_value() == size.has_value());
    if (!size) continue;
    CHECK_THAT(ranges.percentiles_mm[i]->low.value(), WithinRel(in_mm(*size), 1e-9));
    CHECK_THAT(ranges.percentiles_mm[i]->high.value(), WithinRel(in_mm(*size), 1e-9));
  }
  CHECK_THAT(ranges.bands[0]->median, WithinAbs(band_share(nominal, band)->value(), 1e-12));
  CHECK_THAT(ranges.uniformity->median.value(), WithinRel(*uniformity(nominal), 1e-9));
}

TEST_CASE("A blend's middle size is small where much passes: its range and the ribbon's tell the same", "[grading_ranges][law]") {
  const Mix mix = two_gradings();
  const MixSpread spread = usual_spread(mix);
  const BlendRanges ranges = blend_of(mix, spread, {aperture_mm(2), aperture_mm(6)});
  const auto middle = std::ranges::find(reported_percentiles, 50) - reported_percentiles.begin();
  const OpenRange half = *ranges.percentiles_mm[static_cast<std::size_t>(middle)];
  CHECK(half.low < half.median);
  CHECK(half.median < half.high);
  // At most 5 % of the draws pass half at a size below the low end, counted draw by draw.
  const Grading nominal{mix_state(mix)->passing, {}, {}};
  int below = 0, above = 0, all = 0;
  for (const auto& passing : UncertainMix(mix, spread, depth_cm(6)).passing_draws()) {
    Grading drawn = nominal;
    for (std::size_t i = 0; i < passing.size(); ++i) drawn.points[i].passing = Passing(passing[i]);
    const auto [low, high] = std::pair(GradingCurve(drawn).passing_at(aperture_mm(*half.low)), GradingCurve(drawn).passing_at(aperture_mm(*half.high)));
    below += low->value() > 0.5;
    above += high->value() < 0.5;
    ++all;
  }
  CHECK_THAT(below / static_cast<double>(all), WithinAbs(0.05, 0.002));
  CHECK_THAT(above / static_cast<double>(all), WithinAbs(0.05, 0.002));
}

TEST_CASE("A mix set up after another has the ranges it has by itself", "[mix_ranges][law]") {
  const Mix mix = two_gradings();
  Mix other = mix;
  other.components[0].parts = Parts(3);
  const UncertainMix first(mix, usual_spread(mix), depth_cm(7));
  const SampleSize small{256, 1};
  const auto same_as_alone = [&](double deep_cm) {
    const UncertainMix after(other, usual_spread(other), depth_cm(deep_cm), first);
    const auto [ranges, passing] = after.ranges_and_passing(small);
    CHECK(ranges.figures == UncertainMix(other, usual_spread(other), depth_cm(deep_cm)).ranges(small).figures);
    CHECK(passing == after.passing_draws(small));
  };
  same_as_alone(7);
  same_as_alone(4);
  other.water.k_cm_mm = 12;
  same_as_alone(7);
  other.water.n = 4;
  same_as_alone(7);
}
