#include "gritwright/models/normal_scores.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("Scores have the quantiles of the standard normal", "[normal_scores][published]") {
  // Standard normal table: 95 % 1.6449, 97.5 % 1.9600, 90 % 1.2816.
  CHECK_THAT(normal_score(0.95), WithinAbs(1.6449, 5e-5));
  CHECK_THAT(normal_score(0.975), WithinAbs(1.9600, 5e-5));
  CHECK_THAT(normal_score(0.1), WithinAbs(-1.2816, 5e-5));
  CHECK_THAT(normal_score(0.5), WithinAbs(0, 1e-15));
}

TEST_CASE("Every axis is standard normal and no two go together", "[normal_scores][law]") {
  constexpr std::size_t axes = 90, points = 4096;
  const NormalScores scores(axes, 2026);
  std::vector<double> rows(axes * points);
  scores.fill(0, rows);
  for (std::size_t a = 0; a < axes; ++a) {
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i < points; ++i) sum += rows[i * axes + a], squares += rows[i * axes + a] * rows[i * axes + a];
    CHECK_THAT(sum / points, WithinAbs(0, 0.002));
    CHECK_THAT(squares / points, WithinAbs(1, 0.005));
    for (std::size_t b = 0; b < a; ++b) {
      double product = 0;
      for (std::size_t i = 0; i < points; ++i) product += rows[i * axes + a] * rows[i * axes + b];
      CHECK(std::abs(product / points) < 0.1);
    }
  }
}

TEST_CASE("Points are the same however they are cut into slices", "[normal_scores][law]") {
  constexpr std::size_t axes = 7;
  const NormalScores scores(axes, 5);
  std::vector<double> whole(axes * 100), part(axes * 60);
  scores.fill(0, whole);
  scores.fill(40, part);
  CHECK(std::equal(part.begin(), part.end(), whole.begin() + 40 * axes));
  std::vector<double> other(axes * 100);
  NormalScores(axes, 6).fill(0, other);
  CHECK(other != whole);
}
