#include "gritwright/models/sieve_pooling.hpp"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>
#include <utility>
#include <vector>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

SieveAnalysis tested(const std::vector<std::pair<double, double>>& percent_at_mm, std::optional<double> base_g) {
  SieveAnalysis analysis;
  for (const auto& [mm, percent] : percent_at_mm) analysis.grading.points.push_back({aperture_mm(mm), passing_percent(percent)});
  if (base_g) analysis.base = mass_g(*base_g);
  return analysis;
}

Mass grain(double mm, double g_per_l) { return mass_kg(std::numbers::pi / 6 * g_per_l * std::pow(mm / 1000, 3)); }

}  // namespace

// ASTM C136-14, Table 2, coarse aggregate, single operator.
TEST_CASE("Repeats are judged by the standard's precision table", "[sieve_pooling][published]") {
  const std::vector<std::pair<double, double>> rows{{100, .32}, {95, .32}, {94, .81}, {82, 1.34}, {70, 2.25}, {60, 2.25}, {40, 1.32},
                                                    {20, 1.32}, {17, .96}, {12, 1.00}, {7, .75}, {3, .53}, {1, .27}, {0, .27}};
  for (const auto& [passing, deviation] : rows) {
    CAPTURE(passing);
    CHECK_THAT(in_percent(repeatability(Passing(passing / 100))), WithinAbs(deviation, 1e-9));
  }
  CHECK_THAT(in_percent(repeat_limit(passing_percent(40), 2)), WithinAbs(2.83 * 1.32, 1e-9));
}

// Upper 5 % points of the studentized range for a known deviation, as tables of it have them (from memory).
TEST_CASE("More than ten repeats are judged by their own number", "[sieve_pooling]") {
  for (const auto& [tests, factor] : {std::pair{10U, 4.47}, {11U, 4.55}, {12U, 4.62}, {15U, 4.80}, {20U, 5.01}}) {
    CAPTURE(tests);
    CHECK_THAT(in_percent(repeat_limit(passing_percent(40), tests)) / 1.32, WithinAbs(factor, 0.005));
  }
}

// The range of repeats by simulation: one in twenty exceeds the limit, whatever their number.
TEST_CASE("About one of twenty sets of careful repeats exceeds the limit", "[sieve_pooling][law]") {
  std::mt19937 random(3);
  std::normal_distribution<double> error(0, in_percent(repeatability(passing_percent(40))));
  for (const std::size_t tests : {2U, 3U, 5U, 10U, 11U, 25U}) {
    const double limit = in_percent(repeat_limit(passing_percent(40), tests));
    int beyond = 0;
    constexpr int sets = 40000;
    for (int set = 0; set < sets; ++set) {
      double least = 1e9;
      double most = -1e9;
      for (std::size_t i = 0; i < tests; ++i) {
        const double value = error(random);
        least = std::min(least, value);
        most = std::max(most, value);
      }
      beyond += most - least > limit ? 1 : 0;
    }
    CAPTURE(tests);
    CHECK_THAT(static_cast<double>(beyond) / sets, WithinAbs(0.05, 0.006));
  }
}

TEST_CASE("Pooled tests are weighted by their dry mass", "[sieve_pooling][law]") {
  const std::array tests{tested({{1, 10}, {2, 40}, {4, 100}}, 100), tested({{1, 11}, {2, 42}, {4, 100}}, 300)};
  const auto pooled = pool(tests);
  REQUIRE(pooled.ok());
  CHECK_THAT(in_g(*pooled->base), WithinAbs(400, 1e-9));
  CHECK_THAT(in_percent(pooled->grading.points[0].passing), WithinAbs(10.75, 1e-9));
  CHECK_THAT(in_percent(pooled->grading.points[1].passing), WithinAbs(41.5, 1e-9));
  CHECK(pooled->grading.points[2].passing == Passing(1));
  CHECK(pooled->notes.empty());
}

TEST_CASE("Tests that disagree are warned of at their sieve", "[sieve_pooling][law]") {
  const std::array tests{tested({{1, 10}, {2, 40}, {4, 100}}, 100), tested({{1, 10}, {2, 44}, {4, 100}}, 100)};
  const auto pooled = pool(tests);
  REQUIRE(pooled.ok());
  REQUIRE(pooled->notes.size() == 1);
  CHECK(pooled->notes[0].code == "sieve-tests.disagree");
  CHECK(std::get<double>(pooled->notes[0].facts.at("aperture_mm")) == 2);
}

TEST_CASE("Pooling keeps to the range that all tests cover", "[sieve_pooling][law]") {
  const std::array tests{tested({{1, 10}, {4, 90}}, 100), tested({{0.5, 5}, {2, 50}, {8, 100}}, 100)};
  const auto pooled = pool(tests);
  REQUIRE(pooled.ok());
  REQUIRE(pooled->grading.points.size() == 3);
  CHECK_THAT(in_mm(pooled->grading.points[0].aperture), WithinAbs(1, 1e-12));
  CHECK_THAT(in_percent(pooled->grading.points[1].passing), WithinAbs(50, 1e-9));
  CHECK_THAT(in_mm(pooled->grading.points[2].aperture), WithinAbs(4, 1e-12));
  CHECK(pool(std::array{tested({{1, 10}, {2, 20}}, 1), tested({{4, 10}, {8, 20}}, 1)}).problems().front().code ==
        "sieve-tests.no-common-range");
  CHECK(pool({}).problems().front().code == "sieve-tests.none");
}

TEST_CASE("Tests in litres are pooled equally and it says so", "[sieve_pooling][law]") {
  const std::array tests{tested({{1, 10}, {4, 100}}, 100), tested({{1, 12}, {4, 100}}, {})};
  const auto pooled = pool(tests);
  REQUIRE(pooled.ok());
  CHECK_FALSE(pooled->base);
  CHECK(pooled->notes.front().code == "sieve-tests.weighted-equally");
  CHECK_THAT(in_percent(pooled->grading.points[0].passing), WithinAbs(11, 1e-9));
}

TEST_CASE("A test pooled with itself is that test", "[sieve_pooling][law]") {
  const SieveAnalysis test = tested({{0.3, 1.7}, {1, 13.3}, {2, 47.1}, {4, 100}}, 123);
  CHECK(pool(std::array{test})->grading == test.grading);
  CHECK(pool(std::array{test, test, test})->grading == test.grading);
}

TEST_CASE("The pan of pooled tests is what lay under their finest common sieve, without what was lost", "[sieve_pooling][law]") {
  SieveAnalysis lost = tested({{1, 2}, {2, 50}, {4, 100}}, 300);
  SieveAnalysis whole = tested({{1, 0}, {2, 40}, {4, 100}}, 100);
  CHECK(pool(std::array{lost, whole})->pan == MassShare(0));
  lost.pan = MassShare(0.02);
  CHECK_THAT(pool(std::array{lost, whole})->pan.value(), WithinAbs(0.015, 1e-12));
  // One test goes down to 0.5 mm: what lay on that sieve lay under 1 mm.
  SieveAnalysis finer = tested({{0.5, 3}, {1, 7}, {2, 40}, {4, 100}}, 100);
  finer.pan = MassShare(0.01);
  CHECK_THAT(pool(std::array{lost, finer})->pan.value(), WithinAbs(0.75 * 0.02 + 0.25 * 0.05, 1e-12));
}

// Worked by hand from Gy's model: p .30, d 7.7 mm against 3 mm, 1 g/cm3, 300 g.
TEST_CASE("Chance alone moves a coarse share by about a point in 300 g", "[sieve_pooling][law]") {
  const std::array classes{GrainClass{MassShare(0.3), grain(7.7, 1000)}, GrainClass{MassShare(0.7), grain(3, 1000)}};
  CHECK_THAT(sampling_deviation(classes, 0, mass_g(300)).value() * 100, WithinAbs(1.096, 0.0006));
}

TEST_CASE("Drawing grains one by one spreads as the model says", "[sieve_pooling][law]") {
  std::mt19937 random(11);
  // 2 g and 0.5 g grains, 40 % of the mass in the large ones: by number one grain in seven is large.
  const std::array classes{GrainClass{MassShare(0.4), mass_g(2)}, GrainClass{MassShare(0.6), mass_g(0.5)}};
  std::bernoulli_distribution large((0.4 / 2) / (0.4 / 2 + 0.6 / 0.5));
  double sum = 0;
  double squares = 0;
  constexpr int samples = 4000;
  for (int i = 0; i < samples; ++i) {
    double coarse_g = 0;
    double all_g = 0;
    while (all_g < 400) {
      const bool is_large = large(random);
      all_g += is_large ? 2 : 0.5;
      coarse_g += is_large ? 2 : 0;
    }
    sum += coarse_g / all_g;
    squares += coarse_g / all_g * coarse_g / all_g;
  }
  const double deviation = std::sqrt(squares / samples - sum / samples * sum / samples);
  // 4000 samples know their own deviation to 1.1 %; three times that.
  CHECK_THAT(sampling_deviation(classes, 0, mass_g(400)).value() / deviation, WithinAbs(1, 0.035));
}

TEST_CASE("The spread of a band falls with the root of the sample and is empty outside the sieves", "[sieve_pooling][law]") {
  Grading grading{{{aperture_mm(1), Passing(0.1)}, {aperture_mm(4), Passing(0.8)}}, {}, {}};
  const Band band{aperture_mm(1), aperture_mm(4)};
  const auto small = sampling_deviation(grading, band, particle_g_l(1000), mass_g(100));
  const auto large = sampling_deviation(grading, band, particle_g_l(1000), mass_g(400));
  REQUIRE(small);
  REQUIRE(large);
  CHECK_THAT(small->value() / large->value(), WithinAbs(2, 1e-9));
  CHECK_FALSE(sampling_deviation(grading, {aperture_mm(0.5), aperture_mm(4)}, particle_g_l(1000), mass_g(100)));
}

// 400 g of which 8 g were lost and 100 g of which 1 g: 9 of 500 g.
TEST_CASE("What was lost of pooled tests is the part of their grain that was lost of each", "[sieve_pooling][law]") {
  std::array tests{tested({{1, 5}, {2, 40}, {4, 100}}, 400), tested({{1, 3}, {2, 42}, {4, 100}}, 100)};
  tests[0].pan = MassShare(0.03);
  tests[1].pan = MassShare(0.02);
  CHECK_THAT(lost_share(pool(tests).value()).value(), WithinAbs(9.0 / 500, 1e-12));
  // Nothing was lost, and a gain is no loss.
  tests[0].pan = MassShare(0.05);
  tests[1].pan = MassShare(0.0301);
  CHECK_THAT(lost_share(pool(tests).value()).value(), WithinAbs(0, 1e-12));
  // Of tests whose finest sieves differ, too, where one had grain between them.
  std::array unlike{tested({{1, 5}, {2, 40}, {4, 100}}, 400), tested({{2, 42}, {4, 100}}, 100)};
  unlike[0].pan = MassShare(0.03);
  unlike[1].pan = MassShare(0.41);
  CHECK_THAT(lost_share(pool(unlike).value()).value(), WithinAbs(9.0 / 500, 1e-12));
}
