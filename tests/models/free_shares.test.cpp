#include "gritwright/models/free_shares.hpp"

#include <catch2/catch.hpp>
#include <numeric>
#include <random>

#include "support/reference.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

double dot(const std::vector<double>& a, const std::vector<double>& b) { return std::inner_product(a.begin(), a.end(), b.begin(), 0.0); }

/// Percent passing of a random curve, rising.
std::vector<double> curve(std::mt19937_64& random, std::size_t sieves) {
  std::uniform_real_distribution<double> percent(0, 100);
  std::vector<double> made(sieves);
  for (double& each : made) each = percent(random);
  std::sort(made.begin(), made.end());
  return made;
}

}  // namespace

TEST_CASE("Linear problems over shares cost what HiGHS finds", "[free_shares][published]") {
  std::mt19937_64 random(Catch::rngSeed());
  std::uniform_real_distribution<double> unit(0, 1);
  reference::Rows cases;
  std::vector<LinearShares> problems;
  for (int run = 0; run < 500; ++run) {
    const std::size_t count = 2 + static_cast<std::size_t>(unit(random) * 12), sieves = 1 + static_cast<std::size_t>(unit(random) * 6);
    LinearShares problem;
    std::vector<std::vector<double>> curves;
    for (std::size_t k = 0; k < count; ++k) {
      problem.cost.push_back(unit(random) * 3);
      curves.push_back(curve(random, sieves));
    }
    std::vector<double> row{static_cast<double>(count), static_cast<double>(sieves)};
    row.insert(row.end(), problem.cost.begin(), problem.cost.end());
    for (std::size_t i = 0; i < sieves; ++i) {
      LinearRow limit;
      for (std::size_t k = 0; k < count; ++k) limit.coefficients.push_back(curves[k][i]);
      const double middle = 100 * unit(random);
      limit.low = std::max(0.0, middle - 30 * unit(random));
      limit.high = std::min(100.0, middle + 30 * unit(random));
      row.insert(row.end(), limit.coefficients.begin(), limit.coefficients.end());
      row.push_back(limit.low);
      row.push_back(limit.high);
      problem.rows.push_back(limit);
    }
    cases.push_back(row);
    problems.push_back(problem);
  }
  const auto answers = reference::answers("linear_shares.py", cases);
  int solved = 0;
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const auto shares = least_cost_shares(problems[i]);
    REQUIRE(shares.has_value() == (answers[i][0] == 1));
    const auto excess = least_excess(problems[i].rows);
    REQUIRE(excess);
    CHECK((*excess < 1e-9) == shares.has_value());
    if (!shares) continue;
    ++solved;
    CHECK_THAT(dot(*shares, problems[i].cost), WithinAbs(answers[i][1], 1e-6));
    CHECK_THAT(std::accumulate(shares->begin(), shares->end(), 0.0), WithinAbs(1, 1e-12));
  }
  CHECK(solved > 100);
}

TEST_CASE("The nearest shares are as near as SciPy's least squares", "[free_shares][published][peer]") {
  std::mt19937_64 random(Catch::rngSeed());
  std::uniform_real_distribution<double> unit(0, 1);
  reference::Rows cases;
  std::vector<std::pair<std::vector<std::vector<double>>, std::vector<double>>> problems;
  for (int run = 0; run < 500; ++run) {
    const std::size_t count = 2 + static_cast<std::size_t>(unit(random) * 6), sieves = 4 + static_cast<std::size_t>(unit(random) * 6);
    std::vector<std::vector<double>> curves;
    std::vector<double> row{static_cast<double>(count), static_cast<double>(sieves)};
    for (std::size_t k = 0; k < count; ++k) {
      curves.push_back(curve(random, sieves));
      row.insert(row.end(), curves.back().begin(), curves.back().end());
    }
    const auto target = curve(random, sieves);
    row.insert(row.end(), target.begin(), target.end());
    cases.push_back(row);
    problems.emplace_back(curves, target);
  }
  const auto answers = reference::answers("nearest_shares.py", cases);
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const auto& [curves, target] = problems[i];
    const auto shares = nearest_shares(curves, target);
    double squares = 0;
    for (std::size_t s = 0; s < target.size(); ++s) {
      double value = 0;
      for (std::size_t k = 0; k < curves.size(); ++k) value += shares[k] * curves[k][s];
      squares += (value - target[s]) * (value - target[s]);
    }
    INFO("case " << i);
    // Relative to the size of the sum: 1e-6 of it or of one squared point.
    CHECK(squares <= answers[i][0] + 1e-6 * std::max(1.0, answers[i][0]));
    CHECK(squares >= answers[i][0] - 1e-6 * std::max(1.0, answers[i][0]));
  }
}
