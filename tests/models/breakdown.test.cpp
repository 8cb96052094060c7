#include "gritwright/models/breakdown.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "gritwright/models/packing.hpp"
#include "support/random_mix.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Grading bag() {
  return {{{aperture_mm(0.25), passing_percent(0)},
           {aperture_mm(0.5), passing_percent(1)},
           {aperture_mm(1), passing_percent(3)},
           {aperture_mm(2), passing_percent(10)},
           {aperture_mm(4), passing_percent(65)},
           {aperture_mm(6.3), passing_percent(97)},
           {aperture_mm(8), passing_percent(100)}},
          {},
          {}};
}

double passing(const GrainSizes& sizes, std::size_t i) { return std::get<Grading>(sizes).points[i].passing.value(); }

CatalogueFigure years(double value, std::optional<double> low, std::optional<double> high) {
  CatalogueFigure figure;
  figure.value = value;
  figure.low = low;
  figure.high = high;
  return figure;
}

}  // namespace

TEST_CASE("A class alone keeps what Poisson's law leaves unbroken", "[breakdown][law]") {
  const Grading one{{{aperture_mm(2), passing_percent(0)}, {aperture_mm(4), passing_percent(100)}}, {}, {}};
  for (const double breakages : {0.1, 0.7, 2.0})
    CHECK_THAT(passing(aged_grain(one, breakages, 1, Fines::staying).sizes, 0), WithinAbs(1 - std::exp(-breakages), 1e-12));
}

TEST_CASE("Few breakages leave fines by the power of their size", "[breakdown][published]") {
  // Gaudin's and Schuhmann's distribution (Schuhmann 1940, from memory): the fine end of broken grain is a straight line of slope m
  // in log passing over log size.
  for (const double modulus : {0.5, 1.0, 1.7}) {
    Grading one{{{aperture_mm(0.25), Passing(0)}, {aperture_mm(0.5), Passing(0)}, {aperture_mm(1), Passing(0)}, {aperture_mm(4), Passing(0)},
                 {aperture_mm(5), Passing(1)}}, {}, {}};
    const GrainSizes aged = aged_grain(one, 1e-4, modulus, Fines::staying).sizes;
    CHECK_THAT(std::log2(passing(aged, 2) / passing(aged, 1)), WithinRel(modulus, 0.001));
    CHECK_THAT(std::log2(passing(aged, 1) / passing(aged, 0)), WithinRel(modulus, 0.001));
  }
}

TEST_CASE("Breaking goes on where it stopped, makes every sieve pass more, and keeps the mass", "[breakdown][law]") {
  RandomMixes mixes(77);
  int looked_at = 0;
  for (int i = 0; i < 200; ++i) {
    for (const Component& component : mixes.next().components) {
      if (!std::holds_alternative<Grading>(component.sizes)) continue;
      const GrainSizes half = aged_grain(component.sizes, 0.4, 1.2, Fines::staying).sizes;
      const GrainSizes whole = aged_grain(component.sizes, 0.9, 1.2, Fines::staying).sizes;
      const GrainSizes in_two = aged_grain(half, 0.5, 1.2, Fines::staying).sizes;
      CHECK(check(std::get<Grading>(whole)).empty());
      for (std::size_t p = 0; p < std::get<Grading>(whole).points.size(); ++p) {
        CHECK_THAT(passing(in_two, p), WithinAbs(passing(whole, p), 1e-9));
        CHECK(passing(half, p) >= passing(component.sizes, p) - 1e-12);
        CHECK(passing(whole, p) >= passing(half, p) - 1e-12);
      }
      ++looked_at;
    }
  }
  CHECK(looked_at > 200);
}

TEST_CASE("Washed-down fines are what crumbled, and what was there before stays", "[breakdown][law]") {
  const AgedGrain stays = aged_grain(bag(), 0.6, 1, Fines::staying), washed = aged_grain(bag(), 0.6, 1, Fines::washed_down);
  CHECK(stays.washed_down == 0);
  CHECK(washed.washed_down > 0);
  // Finer than 1 mm: 3 % before, and the same mass afterwards.
  CHECK_THAT(passing(washed.sizes, 2) * (1 - washed.washed_down), WithinAbs(0.03, 1e-9));
  CHECK_THAT(passing(stays.sizes, 2), WithinAbs(0.03 + washed.washed_down, 1e-9));
}

TEST_CASE("Grain of one size is new as it was and crumbles to sieves of its own", "[breakdown]") {
  const GrainSizes single = SingleSize{aperture_mm(4)};
  CHECK(aged_grain(single, 0, 1, Fines::staying).sizes == single);
  const GrainSizes aged = aged_grain(single, 0.3, 1, Fines::staying).sizes;
  const auto classes = size_classes(aged);
  CHECK_THAT(in_mm(classes.front().size), WithinAbs(4, 1e-9));
  CHECK_THAT(classes.front().share.value(), WithinAbs(std::exp(-0.3), 1e-9));
}

TEST_CASE("Half of the grain has broken after the years it lasts, more slowly or faster within its range", "[breakdown]") {
  Material material;
  CHECK_FALSE(typical_breakdown(material));
  material.durability_years = years(2, 1, 4);
  const Breakdown breakdown = *typical_breakdown(material);
  CHECK_THAT(std::exp(-2 * breakdown.per_season), WithinAbs(0.5, 1e-12));
  CHECK_THAT(breakdown.spread.at(1.6448536), WithinRel(2.0, 1e-6));
  CHECK_THAT(breakdown.spread.at(-1.6448536), WithinRel(0.5, 1e-6));
  material.durability_years = years(20, 10, {});
  CHECK_THAT(typical_breakdown(material)->spread.at(-1.6448536), WithinRel(0.5, 1e-6));
}

TEST_CASE("A crumble test gives rate and modulus back", "[breakdown][law]") {
  for (const double breakages : {0.05, 0.3, 1.0}) {
    for (const double modulus : {0.6, 1.0, 1.8}) {
      const CrumbleTest test{bag(), std::get<Grading>(aged_grain(bag(), breakages, modulus, Fines::staying).sizes), 10};
      REQUIRE(check(test).empty());
      const CrumbleResult result = crumble_result(test);
      CHECK_THAT(result.breakages_per_round * 10, WithinRel(breakages, 0.01));
      CHECK_THAT(result.modulus, WithinRel(modulus, 0.02));
      CHECK(result.notes.empty());
      CHECK_THAT(measured_breakdown(result).per_season, WithinRel(breakages, 0.01));
      CHECK(measured_breakdown(Crumbling{result.breakages_per_round, result.modulus, rounds_per_season}) == measured_breakdown(result));
    }
  }
}

TEST_CASE("A crumble test is refused without rounds or sieves, and questioned where grain grew", "[breakdown][refuses]") {
  const Grading above{{{aperture_mm(11), passing_percent(10)}, {aperture_mm(16), passing_percent(100)}}, {}, {}};
  const Problems problems = check(CrumbleTest{bag(), above, 0});
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].code == "crumble.no-rounds");
  CHECK(problems[1].code == "crumble.no-common-sieves");
  Grading coarser = bag();
  coarser.points[4].passing = passing_percent(55);
  const CrumbleResult result = crumble_result({bag(), coarser, 10});
  REQUIRE_FALSE(result.notes.empty());
  CHECK(result.notes.front().code == "crumble.coarser-after");
}
