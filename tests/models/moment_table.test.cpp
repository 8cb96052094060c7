#include "gritwright/models/moment_table.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <catch2/catch.hpp>
#include <cmath>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

double by_quadrature(double n, double x, int m) {
  const auto integrand = [&](double t) { return std::pow(t, m) * std::pow(1 + std::pow(x * t, n), -(1 - 1 / n)); };
  // Large x concentrates the integrand at the origin: integrate decade by decade.
  double sum = 0;
  double low = 0;
  for (double high = std::min(1.0, 0.1 / x); low < 1; high = std::min(1.0, high * 10)) {
    sum += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(integrand, low, high, 6, 1e-10);
    low = high;
  }
  return sum;
}

}  // namespace

TEST_CASE("The moment table agrees with adaptive quadrature over seven decades and every shape", "[moment_table][law]") {
  for (double n : {1.05, 1.35, 2.0, 2.68, 3.0, 4.0, 6.0, 12.0, 20.0}) {
    const MomentTable table(n);
    for (double log_x = -4.37; log_x < 5; log_x += 0.913) {
      const double x = std::pow(10, log_x);
      const MomentTable::Moments moments = table.at(x);
      for (int m = 0; m < 4; ++m) {
        INFO("n " << n << " x " << x << " m " << m);
        CHECK_THAT(moments[static_cast<std::size_t>(m)], WithinAbs(by_quadrature(n, x, m), 2.5e-7));
      }
    }
  }
}

TEST_CASE("The default table is shared and its moments run between 0 and their value at saturation", "[moment_table][law]") {
  CHECK(MomentTable::for_shape(6) == MomentTable::for_shape(6));
  const auto table = MomentTable::for_shape(6);
  for (int m = 0; m < 4; ++m) {
    double before = 1.0 / (m + 1);
    CHECK_THAT(table->at(0)[static_cast<std::size_t>(m)], WithinAbs(before, 1e-15));
    for (double x = 1e-4; x < 1e6; x *= 1.7) {
      const double now = table->at(x)[static_cast<std::size_t>(m)];
      CHECK(now <= before + 1e-10);  // the rule that fills the table leaves 2e-11
      CHECK(now > 0);
      before = now;
    }
  }
}
