// Interpolation and screening against SciPy, which shares no line with this project.
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/screening.hpp"
#include "support/reference.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("SciPy reads the same passing and the same size off 300 random curves", "[grading_curve][reference][peer]") {
  std::mt19937 random(20261127);
  std::uniform_real_distribution<double> unit(0, 1);
  reference::Rows cases;
  std::vector<Grading> gradings;
  for (int round = 0; round < 300; ++round) {
    Grading grading;
    const int points = 2 + static_cast<int>(unit(random) * 10);
    double mm = 0.03 + unit(random);
    double passing = 0.2 * unit(random);
    for (int i = 0; i < points; ++i) {
      grading.points.push_back({aperture_mm(mm), Passing(passing)});
      mm *= 1.1 + unit(random);
      passing += (1 - passing) * (0.02 + 0.5 * unit(random));
    }
    const double low_mm = in_mm(grading.points.front().aperture);
    const double high_mm = in_mm(grading.points.back().aperture);
    const double low = grading.points.front().passing.value();
    const double high = grading.points.back().passing.value();
    const double size_mm = low_mm * std::pow(high_mm / low_mm, 0.001 + 0.998 * unit(random));
    const double share = low + (high - low) * (0.001 + 0.998 * unit(random));
    std::vector<double> row{size_mm, share, static_cast<double>(points)};
    for (const GradingPoint& point : grading.points) {
      row.push_back(in_mm(point.aperture));
      row.push_back(point.passing.value());
    }
    cases.push_back(row);
    gradings.push_back(grading);
  }
  const reference::Rows answers = reference::answers("grading_curve.py", cases);
  for (std::size_t i = 0; i < cases.size(); ++i) {
    CAPTURE(i);
    const GradingCurve curve(gradings[i]);
    REQUIRE_THAT(curve.passing_at(aperture_mm(cases[i][0]))->value(), WithinAbs(answers[i][0], 1e-12));
    REQUIRE_THAT(in_mm(*curve.size_at(Passing(cases[i][1]))), WithinRel(answers[i][1], 1e-11));
  }
}

TEST_CASE("SciPy's quadrature finds the same shares on 300 random screens", "[screening][reference][peer]") {
  std::mt19937 random(20261128);
  std::uniform_real_distribution<double> unit(0, 1);
  reference::Rows cases;
  for (int round = 0; round < 300; ++round) {
    const double lower = 0.2 + 6 * unit(random);
    std::vector<double> row{lower, lower * (1.1 + unit(random)), 4 + 36 * unit(random)};
    const double fine = lower * (0.7 + 1.2 * unit(random));
    if (round % 2 == 0) row.push_back(fine * (1.05 + unit(random)));
    row.push_back(fine);
    cases.push_back(row);
  }
  const reference::Rows answers = reference::answers("screening.py", cases);
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const std::vector<double>& row = cases[i];
    CAPTURE(i);
    const Grading one_class{{{aperture_mm(row[0]), Passing(0)}, {aperture_mm(row[1]), Passing(1)}}, {}, {}};
    std::vector<Aperture> openings;
    for (std::size_t k = 3; k < row.size(); ++k) openings.push_back(aperture_mm(row[k]));
    const auto screening = screen(one_class, openings, {row[2]});
    REQUIRE(screening.ok());
    REQUIRE_THAT(screening->fractions[openings.size() - 1].share.value(), WithinAbs(answers[i][0], 1e-9));
  }
}
