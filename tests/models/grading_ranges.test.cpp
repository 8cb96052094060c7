#include "gritwright/models/grading_ranges.hpp"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>
#include <span>
#include <variant>

#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "gritwright/models/slice_threads.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Masses in g on the sieves, coarse to fine, and in the pan.
SieveTest test_of(const std::vector<std::pair<double, double>>& rows, double pan_g, double start_g, double resolution_g = 0) {
  SieveTest test;
  for (const auto& [mm, grams] : rows) test.rows.push_back({aperture_mm(mm), mass_g(grams), {}});
  test.pan = mass_g(pan_g);
  test.dry_mass = mass_g(start_g);
  test.resolution = mass_g(resolution_g);
  test.particle_density = particle_g_l(1000);
  return test;
}

SieveTest usual_bag(double scale = 1) {
  return test_of({{8, 12 * scale}, {5.6, 88 * scale}, {4, 140 * scale}, {2.8, 95 * scale}, {2, 40 * scale}, {1, 18 * scale}}, 7 * scale, 400 * scale, 0.1);
}

}  // namespace

TEST_CASE("The figure of a test lies inside its range", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const std::vector<Band> bands{{aperture_mm(2), aperture_mm(5.6)}, {aperture_mm(1), aperture_mm(20)}};
  const GradingRanges ranges = grading_ranges(test, analysis, bands);
  REQUIRE(ranges.passing.size() == analysis.sieves.size());
  for (std::size_t i = 0; i < analysis.sieves.size(); ++i) {
    CHECK(ranges.passing[i].low <= analysis.sieves[i].passing.value());
    CHECK(ranges.passing[i].high >= analysis.sieves[i].passing.value());
    CHECK(ranges.retained[i].low <= analysis.sieves[i].retained.value());
    CHECK(ranges.retained[i].high >= analysis.sieves[i].retained.value());
    CHECK(ranges.passing[i].low >= 0);
    CHECK(ranges.passing[i].high <= 1);
  }
  for (std::size_t i = 0; i < reported_percentiles.size(); ++i) {
    const auto size = percentile(analysis.grading, reported_percentiles[i]);
    CHECK(size.has_value() == ranges.percentiles_mm[i].has_value());
    if (!size) continue;
    if (ranges.percentiles_mm[i]->low) CHECK(*ranges.percentiles_mm[i]->low <= in_mm(*size));
    if (ranges.percentiles_mm[i]->high) CHECK(*ranges.percentiles_mm[i]->high >= in_mm(*size));
  }
  REQUIRE(ranges.bands[0]);
  CHECK(ranges.bands[0]->low < band_share(analysis.grading, bands[0])->value());
  CHECK(ranges.bands[0]->high > band_share(analysis.grading, bands[0])->value());
  CHECK_FALSE(ranges.bands[1]);
}

TEST_CASE("Chance and operator spread the passing as their formulas add up", "[grading_ranges][published]") {
  // Gy's share .30 of 7.7 mm grain beside 3 mm, 1 g/cm3, 300 g: 1.096 points (docs/science/grading.md); the operator's deviation at
  // 70 % passing is 2.25 points in the middle of its row (ASTM C136-14 Table 2).
  const double middle = std::sqrt(7.7 * 3.0);
  SieveTest test = test_of({{7.7 * 7.7 / middle, 0}, {middle, 90}, {9 / middle, 210}}, 0, 300);
  const SieveAnalysis analysis = analyse(test).value();
  const GradingRanges ranges = grading_ranges(test, analysis, {}, {65536, 2});
  const double deviation = (ranges.passing[1].high - ranges.passing[1].low) / 2 / score_of_95_percent;
  CHECK_THAT(100 * deviation, WithinRel(std::hypot(1.096, 2.25), 0.01));
}

TEST_CASE("A larger sample narrows what chance leaves open, and not the operator's part", "[grading_ranges][law]") {
  const auto width = [](const SieveTest& test) {
    const Range range = grading_ranges(test, analyse(test).value()).passing[2];
    return range.high - range.low;
  };
  CHECK(width(usual_bag(4)) < 0.999 * width(usual_bag()));
  CHECK(width(usual_bag(400)) > 0.6 * width(usual_bag(4)));
}

TEST_CASE("What was lost may have been dust or not, so it widens the pan downward", "[grading_ranges][law]") {
  SieveTest test = usual_bag(25);
  test.dry_mass = mass_g(10000 / 0.98);
  const SieveAnalysis analysis = analyse(test).value();
  REQUIRE(analysis.loss->value() > 0.015);
  SieveTest kept = test;
  kept.dry_mass.reset();
  const Range with_loss = grading_ranges(test, analysis).passing.back();
  const Range without = grading_ranges(kept, analyse(kept).value()).passing.back();
  CHECK(with_loss.low < with_loss.median - 0.012);
  CHECK(analysis.sieves.back().passing.value() - with_loss.low > 0.015);
  CHECK(without.high - without.low < with_loss.high - with_loss.low);
}

TEST_CASE("A percentile that may lie beyond the sieves has an open end", "[grading_ranges][law]") {
  // 4.5 % in the pan: D5 is measured, but the next handful may have it below the finest sieve.
  const SieveTest test = test_of({{4, 0}, {2, 150}, {1, 136.5}}, 13.5, 300, 0.1);
  const GradingRanges ranges = grading_ranges(test, analyse(test).value());
  REQUIRE(ranges.percentiles_mm[0]);  // D5
  CHECK_FALSE(ranges.percentiles_mm[0]->low);
  CHECK(ranges.percentiles_mm[0]->high);
  CHECK(ranges.percentiles_mm[5]->low);  // D50
}

TEST_CASE("The range of a percentile has the percentiles of the draws in order, to the last digit", "[grading_ranges][law]") {
  const Grading nominal{{{aperture_mm(1), Passing(0.04)}, {aperture_mm(2), Passing(0.1)}, {aperture_mm(4), Passing(0.55)}, {aperture_mm(6.3), Passing(0.96)}, {aperture_mm(9.5), Passing(1)}}, {}, {}};
  std::vector<std::vector<double>> draws;
  std::mt19937 random(7);
  std::uniform_real_distribution<double> spread(0.9, 1.1);
  for (int i = 0; i < 400; ++i) {
    std::vector<double> drawn;
    for (const GradingPoint& point : nominal.points) drawn.push_back(std::min(1.0, std::max(drawn.empty() ? 0.0 : drawn.back(), point.passing.value() * spread(random))));
    draws.push_back(std::move(drawn));
  }
  // Just on a point of the curve and level with the next.
  draws.push_back({0.05, 0.1, 0.5, 0.9, 1});
  draws.push_back({0.05, 0.5, 0.5, 0.95, 1});
  const BlendRanges ranges = blend_ranges(nominal, draws, {});
  for (std::size_t p = 0; p < reported_percentiles.size(); ++p) {
    const int percent = reported_percentiles[p];
    INFO("D" << percent);
    const bool inside = percentile(nominal, percent).has_value();
    CHECK(ranges.percentiles_mm[p].has_value() == inside);
    if (!inside) continue;
    std::vector<double> sizes;
    for (const std::vector<double>& drawn : draws) {
      Grading grading = nominal;
      for (std::size_t i = 0; i < drawn.size(); ++i) grading.points[i].passing = Passing(drawn[i]);
      const auto size = percentile(grading, percent);
      sizes.push_back(size ? in_mm(*size) : percent < 50 ? -1e9 : 1e9);
    }
    std::ranges::sort(sizes);
    const auto at = [&](double share) { return sizes[static_cast<std::size_t>(std::lround(share * static_cast<double>(sizes.size() - 1)))]; };
    for (const auto& [end, share] : {std::pair{ranges.percentiles_mm[p]->low, 0.05}, {ranges.percentiles_mm[p]->median, 0.5}, {ranges.percentiles_mm[p]->high, 0.95}}) {
      if (std::abs(at(share)) > 1e8) CHECK_FALSE(end.has_value());
      else CHECK(end == std::optional(at(share)));
    }
  }
}

TEST_CASE("A seed gives the same grading ranges in any order of slices and on any threads", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const SliceRunner backward = [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    for (std::size_t i = count; i-- > 0;) slice(i);
  };
  const GradingRanges one = grading_ranges(test, analysis, {}, {2048, 9});
  const GradingRanges other = grading_ranges(test, analysis, {}, {2048, 9}, backward);
  CHECK(one.passing == other.passing);
  CHECK(one.percentiles_mm == other.percentiles_mm);
  const GradingRanges threads = grading_ranges(test, analysis, {}, {2048, 9}, slice_threads(3));
  CHECK(one.passing == threads.passing);
  CHECK(one.percentiles_mm == threads.percentiles_mm);
  CHECK(one.passing != grading_ranges(test, analysis, {}, {2048, 10}).passing);
}

TEST_CASE("A clear verdict holds in nearly every draw and a close one in about half", "[grading_ranges]") {
  const Band wanted{aperture_mm(2), aperture_mm(8)};
  const auto held = [&](const SieveTest& test) {
    const SieveAnalysis analysis = analyse(test).value();
    const auto ranges = verdict_ranges(sieved_grading(test, analysis), wanted, fraction_packing(analysis.grading, {}, {}).of);
    REQUIRE(ranges);
    CHECK(ranges->in_band.low <= ranges->in_band.high);
    CHECK(ranges->usable.high <= 1.3);
    return ranges->holds;
  };
  CHECK(held(test_of({{11.2, 0}, {8, 4}, {5.6, 150}, {4, 150}, {2, 92}, {1, 3}}, 1, 400)) > 0.98);
  const double close = held(test_of({{11.2, 0}, {8, 55}, {5.6, 150}, {4, 120}, {2, 70.5}, {1, 3}}, 1.5, 400));
  CHECK(close > 0.35);
  CHECK(close < 0.65);
}

TEST_CASE("The shares of a verdict lie in their ranges whatever was lost, and what was lost is no dust that was found", "[grading_ranges][law][rounds]") {
  std::mt19937 random(20261129);
  std::uniform_real_distribution<double> grams(5, 300), lost(0, 40);
  for (int round = 0; round < 40; ++round) {
    const double pan = round % 3 == 0 ? 0 : grams(random) / 30;
    std::vector<std::pair<double, double>> pans{{11.2, round % 2 == 0 ? 0 : 10}};
    double sum = pan + pans.front().second;
    for (const double mm : {8.0, 5.6, 4.0, 2.0, 1.0}) {
      pans.emplace_back(mm, grams(random));
      sum += pans.back().second;
    }
    const SieveTest test = test_of(pans, pan, sum + lost(random), 0.1);
    const SieveAnalysis analysis = analyse(test).value();
    const PackingDensityOf packing = fraction_packing(analysis.grading, bulk_g_l(480), particle_g_l(1000)).of;
    for (const Band& wanted : {Band{aperture_mm(2), aperture_mm(8)}, Band{aperture_mm(1), aperture_mm(5.6)}, Band{aperture_mm(0), aperture_mm(4)}}) {
      INFO("round " << round << ", from " << in_mm(wanted.from) << " mm, lost " << lost_share(analysis).value());
      const BagVerdict verdict = judge(analysis.grading, wanted, {}, {}, packing, lost_share(analysis)).value.value();
      const auto ranges = verdict_ranges(sieved_grading(test, analysis), wanted, packing);
      REQUIRE(ranges);
      const auto holds = [](const Range& range, double value) {
        CHECK(range.low <= value + 1e-12);
        CHECK(range.high >= value - 1e-12);
      };
      holds(ranges->in_band, verdict.in_band.value());
      holds(ranges->finer, verdict.finer.value());
      holds(ranges->coarser, verdict.coarser.value());
      holds(ranges->usable, verdict.usable.value());
    }
  }
  // 3 % lost over a pan of half a percent: none of the loss is told as found, and the bag is taken.
  const SieveTest test = test_of({{11.2, 0}, {8, 0}, {5.6, 4000}, {4, 3500}, {2, 2150}}, 50, 10000, 0.1);
  const SieveAnalysis analysis = analyse(test).value();
  const auto ranges = verdict_ranges(sieved_grading(test, analysis), {aperture_mm(2), aperture_mm(8)}, fraction_packing(analysis.grading, {}, {}).of);
  REQUIRE(ranges);
  CHECK(ranges->finer.high < 0.03);
  CHECK(ranges->holds > 0.9);
}

TEST_CASE("Laboratory figures lie in their ranges, and have none where the sieves may not reach", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const LaboratoryFigures figures = laboratory_figures(analysis.grading);
  const LaboratoryRanges ranges = laboratory_ranges(sieved_grading(test, analysis));
  const auto holds = [](const std::optional<Range>& range, const std::optional<double>& value) {
    REQUIRE(range);
    REQUIRE(value);
    CHECK(range->low < *value);
    CHECK(range->high > *value);
  };
  holds(ranges.curvature, figures.curvature);
  holds(ranges.mean_phi, figures.mean_phi);
  // Few grains lie on the coarsest sieve: in some draws D95 is beyond it.
  REQUIRE(figures.sorting_phi);
  CHECK_FALSE(ranges.sorting_phi);
  // The same at the fine end, where 4.75 % are in the pan.
  const SieveTest dusty = test_of({{8, 0}, {4, 200}, {2, 160}, {1, 21}}, 19, 400, 0.1);
  const SieveAnalysis near_the_end = analyse(dusty).value();
  REQUIRE(laboratory_figures(near_the_end.grading).sorting_phi);
  CHECK_FALSE(laboratory_ranges(sieved_grading(dusty, near_the_end)).sorting_phi);
}

TEST_CASE("The fineness modulus has a range where the pan was empty, also when something was lost", "[grading_ranges][law]") {
  const SieveTest test = test_of({{4.75, 0}, {2.36, 240}, {1.18, 153}}, 0, 400, 0.1);
  const SieveAnalysis analysis = analyse(test).value();
  REQUIRE(analysis.loss->value() > 0.01);
  const auto modulus = laboratory_figures(analysis.grading, analysis.pan).fineness_modulus;
  REQUIRE(modulus);
  const auto range = laboratory_ranges(sieved_grading(test, analysis)).fineness_modulus;
  REQUIRE(range);
  CHECK(range->low < *modulus);
  CHECK(range->high > *modulus);
  const SieveTest dusty = test_of({{4.75, 0}, {2.36, 240}, {1.18, 153}}, 2, 400, 0.1);
  CHECK_FALSE(laboratory_ranges(sieved_grading(dusty, analyse(dusty).value())).fineness_modulus);
}

TEST_CASE("What was lost over an empty pan may not have been dust either", "[grading_ranges][law]") {
  const SieveTest test = test_of({{4, 0}, {2, 6000}, {1, 3800}}, 0, 10000, 0.1);
  const Range finest = grading_ranges(test, analyse(test).value()).passing.back();
  CHECK(finest.high > 0.02);
  CHECK(finest.low < 0.005);
}

TEST_CASE("A band that ends beyond the sieves has a range where nominally nothing lies there, whatever a draw leaves beyond", "[grading_ranges][regression]") {
  const Grading nominal{{{aperture_mm(1), Passing(0)}, {aperture_mm(4), Passing(0.5)}, {aperture_mm(8), Passing(1)}}, {}, {}};
  const std::vector<std::vector<double>> draws{{0, 0.4, 1 - 1e-16 * 4}, {0.01, 0.5, 1}, {0, 0.6, 1}};
  const auto ranges = blend_ranges(nominal, draws, std::vector{Band{aperture_mm(0.5), aperture_mm(12)}, Band{aperture_mm(0.5), aperture_mm(4)}});
  REQUIRE(ranges.bands[0]);
  CHECK_THAT(ranges.bands[0]->low, WithinAbs(1, 1e-12));
  CHECK_THAT(ranges.bands[0]->high, WithinAbs(1, 1e-12));
  REQUIRE(ranges.bands[1]);
  CHECK_THAT(ranges.bands[1]->low, WithinAbs(0.4, 0.05));
  CHECK_THAT(ranges.bands[1]->high, WithinAbs(0.6, 0.05));
}

TEST_CASE("What a screening gives and what each way to screen comes to lie in their ranges, the same in any order of slices", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const Band wanted{aperture_mm(2), aperture_mm(5.6)};
  const PackingDensityOf packing = fraction_packing(analysis.grading, bulk_g_l(480), particle_g_l(1000)).of;
  const std::vector<Aperture> openings{aperture_mm(5.6), aperture_mm(2)};
  const auto screened = screen(analysis.grading, openings, {}, packing).value();
  const auto fractions = screening_ranges(sieved_grading(test, analysis), openings, packing);
  REQUIRE(fractions.size() == screened.fractions.size());
  double middles = 0;
  for (std::size_t i = 0; i < fractions.size(); ++i) {
    CHECK(fractions[i].share.low < screened.fractions[i].share.value());
    CHECK(fractions[i].share.high > screened.fractions[i].share.value());
    REQUIRE(fractions[i].loose_per_loose);
    CHECK(fractions[i].loose_per_loose->low < screened.fractions[i].loose_per_loose->value());
    CHECK(fractions[i].loose_per_loose->high > screened.fractions[i].loose_per_loose->value());
    middles += fractions[i].share.median;
  }
  CHECK_THAT(middles, WithinAbs(1, 0.01));
  const auto choices = opening_choices(analysis.grading, wanted, openings);
  REQUIRE(choices.size() == 5);
  const auto ranges = opening_ranges(sieved_grading(test, analysis), wanted, choices);
  REQUIRE(ranges.size() == choices.size());
  for (std::size_t i = 0; i < choices.size(); ++i) {
    CHECK(ranges[i].kept.low <= choices[i].kept.value());
    CHECK(ranges[i].kept.high >= choices[i].kept.value());
    CHECK(ranges[i].usable.low <= choices[i].usable.value());
    CHECK(ranges[i].usable.high >= choices[i].usable.value());
    CHECK(ranges[i].takes >= 0);
    CHECK(ranges[i].takes <= 1 + 1e-9);
  }
  const SliceRunner backward = [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    for (std::size_t i = count; i-- > 0;) slice(i);
  };
  for (const SliceRunner& runner : {backward, slice_threads(3)}) {
    CHECK(screening_ranges(sieved_grading(test, analysis), openings, packing, {}, {512, 1}, runner).front().share == fractions.front().share);
    CHECK(opening_ranges(sieved_grading(test, analysis), wanted, choices, {}, {512, 1}, runner).front().usable == ranges.front().usable);
  }
  CHECK(screening_ranges(sieved_grading(test, analysis), {}, packing).empty());
}

TEST_CASE("Two equal samples taken as one narrow the verdict by the root of two, and change nothing else of it", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const std::array analyses{analysis, analysis};
  const std::array samples{sample_of(test, analysis), sample_of(test, analysis)};
  const SievedGrading one = sieved_grading(test, analysis);
  const SievedGrading both = sieved_grading(pool(analyses).value(), samples, test.particle_density);
  CHECK_THAT(both.sample.lost.value(), WithinAbs(one.sample.lost.value(), 1e-12));
  CHECK(both.pan == one.pan);
  CHECK_THAT(in_g(both.sample.dry), WithinAbs(2 * in_g(one.sample.dry), 1e-9));
  CHECK(both.sample.weighings == 2);
  const Band wanted{aperture_mm(2), aperture_mm(5.6)};
  const PackingDensityOf packing = fraction_packing(analysis.grading, {}, {}).of;
  const auto of_one = verdict_ranges(one, wanted, packing);
  const auto of_both = verdict_ranges(both, wanted, packing);
  REQUIRE(of_one);
  REQUIRE(of_both);
  const auto width = [](const Range& range) { return range.high - range.low; };
  CHECK_THAT(width(of_one->in_band) / width(of_both->in_band), WithinRel(std::numbers::sqrt2, 0.05));
  CHECK_THAT(of_both->in_band.median, WithinAbs(of_one->in_band.median, 0.002));
  const std::vector<Range> passing = curve_ranges(both).passing;
  REQUIRE(passing.size() == both.grading.points.size());
  for (std::size_t i = 0; i < passing.size(); ++i) {
    CHECK(passing[i].low <= both.grading.points[i].passing.value());
    CHECK(passing[i].high >= both.grading.points[i].passing.value());
  }
}

TEST_CASE("What is usable has the range of the fraction that the verdict keeps", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  const SievedGrading sieved = sieved_grading(test, analysis);
  const PackingDensityOf packing = fraction_packing(analysis.grading, {}, {}).of;
  int screened = 0;
  for (const Band& wanted : {Band{aperture_mm(2), aperture_mm(5.6)}, Band{aperture_mm(2), aperture_mm(4)}, Band{aperture_mm(1), aperture_mm(4)}}) {
    const auto reached = judge(analysis.grading, wanted, {}, {}, packing, sieved.sample.lost);
    REQUIRE(reached.value);
    const auto& openings = reached.value->openings;
    const auto of_verdict = verdict_ranges(sieved, wanted, packing);
    REQUIRE(of_verdict);
    if (openings.empty()) continue;
    ++screened;
    const auto fractions = screening_ranges(sieved, openings, packing, {}, {512, 1});
    CHECK(of_verdict->usable == fractions[openings.front() == wanted.to ? 1 : 0].loose_per_loose);
  }
  CHECK(screened > 0);
}

TEST_CASE("Sizes of a graded bag have the ranges that its test gives them", "[grading_ranges][law]") {
  const SieveTest test = usual_bag();
  const SieveAnalysis analysis = analyse(test).value();
  CHECK(curve_ranges(sieved_grading(test, analysis)).percentiles_mm == grading_ranges(test, analysis).percentiles_mm);
}

namespace {

/// The sample of both tests, as the verdict rests on it.
SievedSample together_of(const SieveTest& a, const SieveTest& b) {
  const std::array analyses{analyse(a).value(), analyse(b).value()};
  const std::array samples{sample_of(a, analyses[0]), sample_of(b, analyses[1])};
  return taken_together(samples, pool(analyses).value());
}

}  // namespace

// 400 g of which 8 g were lost and 100 g of which 1 g: 9 of 500 g.
TEST_CASE("Samples taken together weigh what they lost by their mass and keep the coarser balance", "[grading_ranges][law]") {
  const SievedSample together = together_of(test_of({{8, 0}, {4, 200}, {2, 172}}, 20, 400, 0.1), test_of({{8, 0}, {4, 50}, {2, 44}}, 5, 100, 1));
  CHECK_THAT(in_g(together.dry), WithinAbs(500, 1e-9));
  CHECK_THAT(together.lost.value(), WithinAbs(9.0 / 500, 1e-12));
  CHECK(together.resolution == mass_g(1));
  CHECK(together.weighings == 2);
}

// Weights .8 and .2: the operator's deviation is that of a mean, sqrt(.64 + .04).
TEST_CASE("A small sample beside a large one helps by its weight in the pool alone", "[grading_ranges][law]") {
  CHECK_THAT(together_of(usual_bag(), usual_bag(0.25)).operators, WithinAbs(std::sqrt(0.68), 1e-9));
  CHECK_THAT(together_of(usual_bag(), usual_bag()).operators, WithinAbs(1 / std::numbers::sqrt2, 1e-9));
  CHECK(together_of(usual_bag(), usual_bag(0.01)).operators > 0.985);
}

TEST_CASE("Samples that lie apart widen the verdict by as much as they exceed the repeat limit", "[grading_ranges][law]") {
  const SieveTest one = test_of({{8, 0}, {5.6, 600}, {4, 700}, {2, 600}}, 100, 2000, 0.1);
  const SieveTest other = test_of({{8, 0}, {5.6, 800}, {4, 500}, {2, 500}}, 200, 2000, 0.1);
  const std::array analyses{analyse(one).value(), analyse(other).value()};
  const PooledTests pooled = pool(analyses).value();
  double apart = 0;
  for (const Agreement& sieve : pooled.agreement) apart = std::max(apart, (sieve.most - sieve.least).value() / sieve.limit.value());
  REQUIRE(apart > 1.5);
  const std::array samples{sample_of(one, analyses[0]), sample_of(other, analyses[1])};
  const SievedGrading both = sieved_grading(pooled, samples, one.particle_density);
  CHECK_THAT(both.sample.operators, WithinRel(apart / std::numbers::sqrt2, 1e-9));
  const Band wanted{aperture_mm(2), aperture_mm(5.6)};
  const auto packing = fraction_packing(both.grading, {}, {}).of;
  const auto width = [&](const SievedGrading& sieved) {
    const Range range = verdict_ranges(sieved, wanted, packing).value().in_band;
    return range.high - range.low;
  };
  SievedGrading agreeing = both;
  agreeing.sample.operators = 1 / std::numbers::sqrt2;
  CHECK(width(both) > 1.3 * width(agreeing));
}

TEST_CASE("What was lost of a sample with crumbs is a share of the grain without them", "[grading_ranges][law][regression]") {
  SieveTest test = test_of({{8, 0}, {4, 200}, {2, 160}}, 20, 400, 0.1);
  test.rows[1].crumbs = MassShare(0.5);
  const SieveAnalysis analysis = analyse(test).value();
  // 20 g of 400 g less 100 g of crumbs.
  CHECK_THAT(sample_of(test, analysis).lost.value(), WithinAbs(20.0 / 300, 1e-9));
}

TEST_CASE("A tared pan is weighed twice, and the balance errs by less dry grain the damper it is", "[grading_ranges][law]") {
  SieveTest net = test_of({{8, 0}, {4, 200}, {2, 160}}, 38, 400, 0.1);
  SieveTest tared = net;
  for (SieveRow& row : tared.rows) row.retained = GrossTare{std::get<Mass>(row.retained) + mass_g(50), mass_g(50)};
  tared.pan = GrossTare{mass_g(88), mass_g(50)};
  const auto total_width = [](const SieveTest& test) {
    const Range range = grading_ranges(test, analyse(test).value()).total_g.value();
    return range.high - range.low;
  };
  CHECK_THAT(total_width(tared) / total_width(net), WithinAbs(std::numbers::sqrt2, 1e-9));
  SieveTest damp = net;
  damp.moisture = Moisture(0.25);
  CHECK_THAT(total_width(net) / total_width(damp), WithinAbs(1.25, 1e-9));
}
