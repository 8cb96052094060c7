#include "gritwright/models/laboratory_figures.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <utility>
#include <vector>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

/// Percent passing at mm, in rising aperture.
Grading laboratory_grading(const std::vector<std::pair<double, double>>& points) {
  Grading grading;
  for (const auto& [mm, percent] : points) grading.points.push_back({aperture_mm(mm), passing_percent(percent)});
  return grading;
}

/// A curve with these sizes (phi) at 5, 16, 25, 50, 75, 84, 95 % coarser.
Grading with_phi_percentiles(const std::vector<double>& phi) {
  const std::vector<double> coarser{5, 16, 25, 50, 75, 84, 95};
  Grading grading;
  for (std::size_t i = phi.size(); i-- > 0;) grading.points.push_back({aperture_mm(std::exp2(-phi[i])), passing_percent(100 - coarser[i])});
  return grading;
}

bool noted(const LaboratoryFigures& figures, const std::string& code) {
  return std::ranges::find(figures.notes, code, &Note::code) != figures.notes.end();
}

}  // namespace

// JoVE science education 16872, fine aggregate of 500 g: cumulative % retained 0 1 12 25 43 75 93; the sum is recomputed.
TEST_CASE("The fineness modulus adds the cumulative percents on the listed sieves", "[laboratory_figures][published]") {
  const auto figures = laboratory_figures(laboratory_grading({{.15, 7}, {.3, 25}, {.6, 57}, {1.18, 75}, {2.36, 88}, {4.75, 99}, {9.5, 100}}));
  CHECK_THAT(figures.fineness_modulus.value(), WithinAbs(2.49, 1e-9));
  CHECK_FALSE(noted(figures, "laboratory.fineness-interpolated"));
}

// A published class exercise, 1000 g: 0 100 150 200 350 200 g and nothing in the pan; printed 2.60.
TEST_CASE("The fineness modulus of a class exercise is the printed one", "[laboratory_figures][published]") {
  const auto figures = laboratory_figures(laboratory_grading({{.15, 0}, {.3, 20}, {.6, 55}, {1.18, 75}, {2.36, 90}, {4.75, 100}}));
  CHECK_THAT(figures.fineness_modulus.value(), WithinAbs(2.60, 1e-9));
}

TEST_CASE("The fineness modulus reads a missing sieve off the curve and says so", "[laboratory_figures][law]") {
  const auto figures = laboratory_figures(laboratory_grading({{.15, 0}, {.3, 20}, {1.2, 60}, {2.36, 90}, {4.75, 100}}));
  CHECK(noted(figures, "laboratory.fineness-interpolated"));
  const double at_0_6 = 40;  // half-way from 0.3 to 1.2 mm on the logarithm
  const double at_1_18 = 20 + 40 * std::log(1.18 / 0.3) / std::log(1.2 / 0.3);
  CHECK_THAT(figures.fineness_modulus.value(), WithinAbs((100 + 80 + (100 - at_0_6) + (100 - at_1_18) + 10) / 100, 1e-9));
}

TEST_CASE("The fineness modulus is not defined when dust is finer than the finest sieve used", "[laboratory_figures][law]") {
  const auto open = laboratory_figures(laboratory_grading({{.3, 2}, {4.75, 100}}));
  CHECK_FALSE(open.fineness_modulus);
  CHECK(noted(open, "laboratory.fineness-needs-finer-sieve"));
  const auto shut = laboratory_figures(laboratory_grading({{2, 0}, {2.36, 0}, {4.75, 100}}));
  CHECK_THAT(shut.fineness_modulus.value(), WithinAbs(5, 1e-9));
}

TEST_CASE("The pan, not what was lost, decides whether a finer sieve is missing", "[laboratory_figures][law]") {
  const Grading lost_some = laboratory_grading({{2, 0.1}, {4, 100}});
  // Four listed sieves below 2 mm hold all; 2.36 mm is read off the curve.
  const double passing_2_36 = 0.001 + 0.999 * std::log(2.36 / 2) / std::log(2.0);
  CHECK_THAT(laboratory_figures(lost_some, MassShare(0)).fineness_modulus.value(), WithinAbs(4 + 1 - passing_2_36, 1e-9));
  CHECK_FALSE(laboratory_figures(laboratory_grading({{2, 0}, {4, 100}}), MassShare(0.003)).fineness_modulus);
}

// Folk, Petrology of Sedimentary Rocks, p. 43: phi 16 1, phi 50 1.5, phi 84 3 give a graphic skewness of +.50, which is twice
// the first term of the inclusive one; the outer percentiles are chosen so that the second term is zero.
TEST_CASE("Skewness agrees with a textbook example", "[laboratory_figures][published]") {
  const auto figures = laboratory_figures(with_phi_percentiles({-1, 1, 1.2, 1.5, 2.5, 3, 4}));
  CHECK_THAT(2 * figures.skewness.value(), WithinAbs(0.50, 1e-9));
  CHECK_THAT(figures.mean_phi.value(), WithinAbs(5.5 / 3, 1e-9));
  CHECK_THAT(figures.median_phi.value(), WithinAbs(1.5, 1e-9));
}

// Folk & Ward 1957: a normal curve has kurtosis 1.00, skewness 0 and its standard deviation as sorting. Normal deviates from
// the usual tables; the formulas' constants 4, 6.6 and 2.44 are rounded, which costs up to 0.5 %.
TEST_CASE("A normal curve has kurtosis one and no skewness", "[laboratory_figures][published]") {
  const auto figures = laboratory_figures(with_phi_percentiles({1 - .5 * 1.6449, 1 - .5 * .9945, 1 - .5 * .6745, 1, 1 + .5 * .6745, 1 + .5 * .9945, 1 + .5 * 1.6449}));
  CHECK_THAT(figures.mean_phi.value(), WithinAbs(1, 1e-9));
  CHECK_THAT(figures.sorting_phi.value(), WithinAbs(0.5, 0.0025));
  CHECK_THAT(figures.skewness.value(), WithinAbs(0, 1e-9));
  CHECK_THAT(figures.kurtosis.value(), WithinAbs(1, 0.005));
  CHECK(figures.curvature);
}

TEST_CASE("Laboratory figures are absent outside the sieves and a note says so", "[laboratory_figures][law]") {
  const auto figures = laboratory_figures(laboratory_grading({{1, 30}, {4, 80}}));
  CHECK_FALSE(figures.curvature);
  CHECK(figures.median_phi);
  CHECK_FALSE(figures.mean_phi);
  CHECK_FALSE(figures.sorting_phi);
  CHECK_FALSE(figures.skewness);
  CHECK_FALSE(figures.kurtosis);
  CHECK(noted(figures, "laboratory.outside-sieves"));
}
