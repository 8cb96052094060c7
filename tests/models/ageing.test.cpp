#include "gritwright/models/ageing.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/slice_threads.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Component bag(const std::string& name, double bulk, double particle) {
  Component component;
  component.name = name;
  component.parts = Parts(1);
  component.grain.bulk_density = bulk_g_l(bulk);
  component.grain.particle_density = particle_g_l(particle);
  component.grain.skeletal_density = skeletal_g_l(2500);
  component.sizes = Grading{{{aperture_mm(0.5), passing_percent(0)},
                             {aperture_mm(1), passing_percent(1)},
                             {aperture_mm(2), passing_percent(4)},
                             {aperture_mm(4), passing_percent(40)},
                             {aperture_mm(6.3), passing_percent(100)}},
                            {},
                            {}};
  return component;
}

/// Invented: soft grain beside grain that lasts.
Mix mix() {
  Mix mix;
  mix.components = {bag("soft", 480, 900), bag("lasting", 840, 1600)};
  mix.settling = Settling(0.08);
  return mix;
}

const std::vector<std::optional<Breakdown>> half_soft{Breakdown{0.35, 1, {0.4, 0.4}}, std::nullopt};

double air_of(const Mix& aged, Depth depth) {
  return mix_in_column(mix_state(aged).value(), aged.water, depth)->air_filled_porosity.value();
}

bool has(const Notes& notes, const std::string& code) {
  return std::ranges::any_of(notes, [&](const Note& note) { return note.code == code; });
}

}  // namespace

TEST_CASE("Grain that does not break stays the mix it was", "[ageing][law]") {
  const std::vector<std::optional<Breakdown>> none(2);
  const AgedMix aged = *aged_mix(mix(), none, 10, Fines::staying);
  CHECK(aged.mix == mix());
  CHECK(aged.volume_ratio == 1);
  CHECK(aged.clogged == 0);
}

TEST_CASE("Crumbs keep the dry mass and the class betas, and the mix sinks together", "[ageing][law]") {
  const auto before = mix_state(mix()).value();
  const AgedMix aged = *aged_mix(mix(), half_soft, 3, Fines::staying);
  const auto after = mix_state(aged.mix).value();
  const auto mass = [](const MixState& state) { return in_g_l(state.settled->bulk_density) * in_l(state.settled->volume); };
  CHECK_THAT(mass(after), WithinAbs(mass(before), 1e-6));
  for (std::size_t k = 0; k < 2; ++k) CHECK_THAT(after.class_betas[k]->value(), WithinAbs(before.class_betas[k]->value(), 1e-9));
  CHECK(aged.volume_ratio < 1);
  CHECK(aged.volume_ratio > 0.7);
}

TEST_CASE("Washed-down crumbs are missing above and clog the floor", "[ageing][law]") {
  const auto before = mix_state(mix()).value();
  double clogged = 0;
  for (const double seasons : {1.0, 2.0, 4.0}) {
    const AgedMix aged = *aged_mix(mix(), half_soft, seasons, Fines::washed_down);
    const auto after = mix_state(aged.mix).value();
    CHECK(in_g_l(after.settled->bulk_density) * in_l(after.settled->volume) < in_g_l(before.settled->bulk_density) * in_l(before.settled->volume));
    CHECK(aged.clogged > clogged);
    CHECK(aged.clogged <= 1);
    clogged = aged.clogged;
  }
}

TEST_CASE("Air falls from season to season while crumbs stay, its range around it", "[ageing][law]") {
  const Mix the_mix = mix();
  const auto years = *air_over_years(the_mix, usual_spread(the_mix), depth_cm(7), half_soft, 4, least_air_of_old_mix, {1024, 1});
  REQUIRE(years.seasons.size() == 5);
  CHECK(years.seasons[0].staying.low < air_of(the_mix, depth_cm(7)));
  CHECK(years.seasons[0].staying.high > air_of(the_mix, depth_cm(7)));
  for (std::size_t i = 0; i < years.seasons.size(); ++i) {
    const SeasonAir& season = years.seasons[i];
    CHECK(season.season == static_cast<int>(i));
    CHECK(season.staying.low < season.staying.median);
    CHECK(season.staying.median < season.staying.high);
    CHECK(season.washed_down.low <= season.washed_down.median);
    if (i > 0) {
      CHECK(season.staying.median < years.seasons[i - 1].staying.median);
      CHECK(season.washed_down.median < years.seasons[i - 1].washed_down.median);
      CHECK(season.grading.front().passing >= years.seasons[i - 1].grading.front().passing);
    }
  }
  CHECK(has(years.notes, "ageing.estimate"));
  CHECK(has(years.notes, "ageing.no-durability"));
}

TEST_CASE("The season in which the air falls below the limit is named as a hint", "[ageing]") {
  const Mix the_mix = mix();
  const auto spread = usual_spread(the_mix);
  const auto plain = *air_over_years(the_mix, spread, depth_cm(12), half_soft, 5, Porosity(0), {512, 1});
  CHECK_FALSE(plain.likely_below_staying);
  const Porosity between((plain.seasons[2].staying.median + plain.seasons[3].staying.median) / 2);
  const auto hinted = *air_over_years(the_mix, spread, depth_cm(12), half_soft, 5, between, {512, 1});
  CHECK(hinted.likely_below_staying == 3);
  CHECK(has(hinted.notes, "ageing.below-staying"));
  const auto low = *air_over_years(the_mix, spread, depth_cm(12), half_soft, 1, Porosity(0.9), {512, 1});
  CHECK(low.likely_below_staying == 0);
  CHECK(has(low.notes, "ageing.below-when-new"));
}

TEST_CASE("From one sample to another the air of the years stays within a point and a half", "[ageing][law][rounds]") {
  const Mix the_mix = mix();
  const auto spread = usual_spread(the_mix);
  const auto first = *air_over_years(the_mix, spread, depth_cm(7), half_soft, 3, least_air_of_old_mix, {4096, 1});
  for (const unsigned seed : {2u, 3u, 4u, 5u}) {
    const auto again = *air_over_years(the_mix, spread, depth_cm(7), half_soft, 3, least_air_of_old_mix, {4096, seed});
    for (std::size_t season = 1; season < first.seasons.size(); ++season) {
      INFO("seed " << seed << ", season " << season);
      for (const auto part : {&Range::low, &Range::median, &Range::high}) {
        CHECK_THAT(again.seasons[season].staying.*part, WithinAbs(first.seasons[season].staying.*part, 0.015));
        CHECK_THAT(again.seasons[season].washed_down.*part, WithinAbs(first.seasons[season].washed_down.*part, 0.015));
      }
    }
  }
}

TEST_CASE("A pot is followed as well as a depth, the same in any order of slices and on any threads", "[ageing][law]") {
  const Mix the_mix = mix();
  const auto spread = usual_spread(the_mix);
  Container tray;
  tray.rim = {length_cm(28), length_cm(20)};
  tray.depth = depth_cm(7);
  const SliceRunner backward = [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    for (std::size_t i = count; i-- > 0;) slice(i);
  };
  const auto one = *air_over_years(the_mix, spread, PotGeometry(tray), half_soft, 2, least_air_of_old_mix, {512, 3});
  const auto other = *air_over_years(the_mix, spread, PotGeometry(tray), half_soft, 2, least_air_of_old_mix, {512, 3}, backward);
  const auto threads = *air_over_years(the_mix, spread, PotGeometry(tray), half_soft, 2, least_air_of_old_mix, {512, 3}, slice_threads(3));
  const auto column = *air_over_years(the_mix, spread, depth_cm(7), half_soft, 2, least_air_of_old_mix, {512, 3});
  for (std::size_t i = 0; i < one.seasons.size(); ++i) {
    CHECK(one.seasons[i].staying == other.seasons[i].staying);
    CHECK(one.seasons[i].washed_down == other.seasons[i].washed_down);
    CHECK(one.seasons[i].staying == threads.seasons[i].staying);
    CHECK(one.seasons[i].washed_down == threads.seasons[i].washed_down);
    // Straight walls hold what a column of that depth holds.
    CHECK_THAT(one.seasons[i].staying.median, WithinAbs(column.seasons[i].staying.median, 1e-3));
    CHECK_THAT(one.seasons[i].washed_down.median, WithinAbs(column.seasons[i].washed_down.median, 1e-3));
  }
}

TEST_CASE("Without a pot or without volumes nothing is foretold", "[ageing]") {
  Mix bare = mix();
  CHECK_FALSE(air_over_years(bare, usual_spread(bare), {}, half_soft));
  bare.components[1].grain.particle_density.reset();
  bare.components[1].grain.skeletal_density.reset();
  CHECK_FALSE(air_over_years(bare, usual_spread(bare), depth_cm(7), half_soft));
}
