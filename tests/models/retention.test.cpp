#include "gritwright/models/retention.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "gritwright/models/pot_geometry.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

struct ShareFinerThan {
  double size_mm;
  double share;
};

std::vector<GradingPoint> points(std::initializer_list<ShareFinerThan> rows) {
  std::vector<GradingPoint> result;
  for (const ShareFinerThan& row : rows) result.push_back({aperture_mm(row.size_mm), Passing(row.share)});
  return result;
}

/// Sand grains without inner pores; the pan at half the finest sieve.
RetentionInput soil(double porosity, std::initializer_list<ShareFinerThan> rows) {
  RetentionInput input;
  input.envelope_grading = with_pan_step(points(rows));
  input.voids_between_grains = Porosity(porosity);
  return input;
}

RetentionInput one_class(double size_mm) {
  RetentionInput input;
  input.envelope_grading = points({{size_mm / 1.25, 0}, {size_mm * 1.25, 1}});
  input.voids_between_grains = Porosity(0.45);
  return input;
}

AreaProfile round_frustum(double height, double bottom_radius, double top_radius) {
  Container container;
  container.shape = Shape::round;
  container.rim = {length_cm(2 * top_radius), length_cm(2 * top_radius)};
  container.base = Section{length_cm(2 * bottom_radius), length_cm(2 * bottom_radius)};
  container.depth = depth_cm(height);
  return PotGeometry(container).profile();
}

AreaProfile rectangular(double height, Section base, Section rim) {
  Container container;
  container.rim = rim;
  container.base = base;
  container.depth = depth_cm(height);
  return PotGeometry(container).profile();
}

double capacity(const RetentionCurve& curve, const AreaProfile& body) {
  return curve.water_for_saturation(curve.mean_saturation(body, 0, body.top_cm(), 0)).value();
}

double capacity(const RetentionCurve& curve, double height) { return capacity(curve, AreaProfile::column(height)); }

}  // namespace

TEST_CASE("The capacity of straight walls follows the closed form for n = 2", "[retention][law]") {
  // Integral of van Genuchten's curve with m = 1/2 (van Genuchten 1980): .05 + .45·asinh(aH)/(aH); six digits, hence 5e-7.
  const RetentionCurve curve(0.05, 0.5, {0.2}, 2);
  CHECK_THAT(capacity(curve, 5), WithinAbs(0.446618, 5e-7));
  CHECK_THAT(capacity(curve, 10), WithinAbs(0.374818, 5e-7));
  CHECK_THAT(capacity(curve, 15), WithinAbs(0.322767, 5e-7));
}

TEST_CASE("A pot that widens upward holds a smaller water share", "[retention][reference][rounds]") {
  // Worked with an independent quadrature for the n = 2 curve above; six digits.
  const RetentionCurve curve(0.05, 0.5, {0.2}, 2);
  CHECK_THAT(round_frustum(10, 4, 6).volume_cm3(0, 10), WithinAbs(795.870, 5e-4));
  CHECK_THAT(capacity(curve, round_frustum(10, 4, 6)), WithinAbs(0.356423, 5e-7));
  CHECK_THAT(capacity(curve, round_frustum(10, 6, 4)), WithinAbs(0.393294, 5e-7));
  const auto section = [](double length, double width) { return Section{length_cm(length), length_cm(width)}; };
  CHECK_THAT(capacity(curve, rectangular(6, section(24, 16), section(28, 20))), WithinAbs(0.425407, 5e-7));
  CHECK_THAT(capacity(curve, rectangular(6, section(26, 18), section(26, 18))), WithinAbs(0.430990, 5e-7));
}

TEST_CASE("A curve that is nearly a step gives the water below the step", "[retention][law]") {
  // .5 below 3 cm and .05 above, H 8, worked by hand: cylinder .21875, frustum of radius 4 to 6 cm .177811. A very steep curve
  // stands for the step; 2e-3 is what its finite steepness leaves.
  const RetentionCurve curve(0.05, 0.5, {1.0 / 3}, 400);
  CHECK_THAT(capacity(curve, 8), WithinAbs(0.21875, 2e-3));
  CHECK_THAT(capacity(curve, round_frustum(8, 4, 6)), WithinAbs(0.177811, 2e-3));
  // The bodies themselves carry the step exactly.
  for (const auto& [body, expected] : {std::pair(AreaProfile::column(8), 0.21875), std::pair(round_frustum(8, 4, 6), 0.177811)}) {
    const double below = body.volume_cm3(0, 3) / body.volume_cm3(0, 8);
    CHECK_THAT(0.05 + 0.45 * below, WithinAbs(expected, 5e-7));
  }
}

TEST_CASE("A narrow class of solid grain holds the water of the worked table", "[retention][reference]") {
  // Worked with an independent implementation: one class d/1.25 to 1.25 d, voids .45; per cent to one decimal, hence .05.
  const double heights[] = {3, 5, 8, 12, 20};
  const double fine[] = {37.5, 34.3, 25.9, 19.1, 13.3};
  const double coarse[] = {35.5, 27.2, 19.1, 14.3, 10.4};
  for (std::size_t i = 0; i < 5; ++i) {
    INFO("height " << heights[i]);
    CHECK_THAT(100 * capacity(Retention(one_class(2)).curve(), heights[i]), WithinAbs(fine[i], 0.05001));
    CHECK_THAT(100 * capacity(Retention(one_class(3)).curve(), heights[i]), WithinAbs(coarse[i], 0.05001));
  }
}

TEST_CASE("The chain meets the measured retention of clean sands", "[retention][published]") {
  // UNSODA 2.0 (Nemes, Schaap, Leij & Wösten 2001), soils 1054, 1053 and 3332: grading, porosity and theta at 10, 20 and 50 cm of
  // suction. ±.05 is the chain's score over 29 such sands; the third column is the chain's own figure, to its three digits.
  struct Soil {
    const char* code;
    RetentionInput input;
    double measured[3];
    double chain[3];
  };
  const Soil soils[] = {
      {"1054", soil(0.419, {{0.125, 0.032}, {0.25, 0.065}, {0.5, 0.302}, {1, 0.859}, {2, 1}}), {0.300, 0.105, 0.037}, {0.306, 0.150, 0.059}},
      {"1053", soil(0.419, {{0.125, 0.058}, {0.25, 0.105}, {0.5, 0.366}, {1, 0.886}, {2, 1}}), {0.297, 0.142, 0.050}, {0.317, 0.173, 0.069}},
      {"3332", soil(0.430, {{0.125, 0.046}, {0.2, 0.088}, {0.5, 0.868}, {2, 1}}), {0.354, 0.299, 0.077}, {0.351, 0.301, 0.091}},
  };
  const double heads[] = {10, 20, 50};
  for (const Soil& row : soils) {
    const Retention chain(row.input);
    for (std::size_t i = 0; i < 3; ++i) {
      INFO("UNSODA " << row.code << " at " << heads[i] << " cm");
      const double theta = chain.water_at(depth_cm(heads[i])).value();
      CHECK_THAT(theta, WithinAbs(row.measured[i], 0.05));
      CHECK_THAT(theta, WithinAbs(row.chain[i], 0.00051));
    }
  }
}

TEST_CASE("The documented miss stays as far off as the page says", "[retention][published]") {
  // UNSODA 4810 (porosity .481): measured .346 over 0-30 cm, the chain gives .300; five hundredths short, kept as a miss.
  const Retention chain(soil(0.481, {{0.1, 0.02}, {0.25, 0.13}, {0.5, 0.48}, {1, 0.99}, {2, 1}}));
  const double computed = capacity(chain.curve(), 30);
  CHECK_THAT(computed, WithinAbs(0.300, 0.00051));
  CHECK(0.346 - computed > 0.04);
}

TEST_CASE("The sand of the published parameter table drains as computed from it", "[retention][published]") {
  // Carsel & Parrish 1988, Table of mean van Genuchten parameters, sand: .045, .43, .145/cm, 2.68; four digits.
  const RetentionCurve sand(0.045, 0.43, {0.145}, 2.68);
  CHECK_THAT(capacity(sand, 5), WithinAbs(0.4067, 5.1e-5));
  CHECK_THAT(capacity(sand, 10), WithinAbs(0.3429, 5.1e-5));
  CHECK_THAT(capacity(sand, 15), WithinAbs(0.2865, 5.1e-5));
  CHECK_THAT(capacity(sand, 20), WithinAbs(0.2455, 5.1e-5));
}

TEST_CASE("The pan is a step at its own size or at half the last sieve", "[retention][law]") {
  const auto sizes = [](std::optional<Aperture> pan) { return equal_volume_sizes(with_pan_step(points({{1, 0.2}, {2, 1}}), pan)); };
  CHECK_THAT(in_mm(sizes(std::nullopt).front()), WithinAbs(0.5, 1e-12));
  CHECK_THAT(in_mm(sizes(std::nullopt)[19]), WithinAbs(0.5, 1e-12));
  CHECK(sizes(std::nullopt)[20] > aperture_mm(1));
  CHECK_THAT(in_mm(sizes(aperture_mm(0.3))[19]), WithinAbs(0.3, 1e-12));
  CHECK(with_pan_step(points({{1, 0}, {2, 1}})) == points({{1, 0}, {2, 1}}));
}

TEST_CASE("Classes rise and their geometric mean is that of the log-linear grading", "[retention][law]") {
  const std::vector<Aperture> sizes = equal_volume_sizes(points({{1, 0}, {4, 1}}));
  REQUIRE(sizes.size() == 100);
  CHECK(std::is_sorted(sizes.begin(), sizes.end()));
  CHECK_THAT(in_mm(geometric_mean(sizes)), WithinAbs(2, 1e-12));
}

TEST_CASE("The wet zone of one size reaches about .7 k/d", "[retention][law]") {
  // House rule of docs/science/water.md, "about"; 5 %.
  RetentionInput single;
  single.envelope_grading = points({{3, 0}, {3, 1}});
  single.voids_between_grains = Porosity(0.45);
  const Retention chain(single);
  CHECK_THAT(in_cm(chain.perched_height()), WithinAbs(0.7 * 9.5 / 3, 0.05 * 0.7 * 9.5 / 3));
  CHECK_THAT(chain.curve().saturation(in_cm(chain.perched_height())), WithinAbs(0.9, 1e-9));
}

TEST_CASE("Biases of the chain are said where they apply and only there", "[retention][law]") {
  const auto codes = [](const RetentionInput& input) {
    const Retention chain(input);
    std::vector<std::string> found;
    for (const Note& note : chain.notes()) found.push_back(note.code);
    return found;
  };
  using Codes = std::vector<std::string>;
  CHECK(codes(one_class(1.5)) == Codes{"water.new-mix"});
  CHECK(codes(one_class(4)) == Codes{"water.above-two-mm", "water.new-mix"});
  CHECK(codes(one_class(2)) == Codes{"water.new-mix"});
  CHECK(codes(one_class(8)) == Codes{"water.above-two-mm", "water.new-mix"});
  CHECK(codes(one_class(15.1)) == Codes{"water.above-two-mm", "water.above-range", "water.one-grain-perched", "water.new-mix"});
  CHECK(codes(one_class(10)) == Codes{"water.above-two-mm", "water.one-grain-perched", "water.new-mix"});
  RetentionInput calibrated = one_class(4);
  calibrated.constants.k_cm_mm = 8;
  CHECK(codes(calibrated) == Codes{"water.new-mix"});
  RetentionInput fines = one_class(1.5);
  fines.finer_than_pan_sieve = Passing(0.031);
  fines.organic_or_fibrous = true;
  CHECK(codes(fines) == Codes{"water.fines-clog", "water.organic", "water.new-mix"});
  RetentionInput gap = one_class(1);
  gap.envelope_grading = points({{0.2, 0}, {0.3, 0.3}, {1.5, 0.3}, {2, 1}});
  CHECK(codes(gap) == Codes{"water.gap-graded", "water.new-mix"});
  gap.envelope_grading = points({{0.2, 0}, {0.3, 0.2}, {1.5, 0.2}, {2, 1}});
  CHECK(codes(gap) == Codes{"water.new-mix"});
  gap.envelope_grading = points({{0.02, 0}, {0.2, 0.3}, {2, 1}});
  CHECK(codes(gap) == Codes{"water.dusty", "water.new-mix"});
}
