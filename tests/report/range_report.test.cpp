#include "gritwright/report/range_report.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace gritwright;

TEST_CASE("A range of shares has a decimal where whole percents would lie beside their figure or be the same at both ends", "[range_report]") {
  CHECK(percent_range_decimals({0.0051, 0.0052, 0.014}, 0.0052) == 1);  // 0.5 % would stand beside 1 to 1 %
  CHECK(percent_range_decimals({0.0051, 0.0052, 0.024}, 0.0052) == 1);  // or beside 1 to 2 %
  CHECK(percent_range_decimals({0.9912, 0.9931, 0.9944}, 0.9931) == 1);
  CHECK(percent_range_decimals({0.0031, 0.0052, 0.014}, 0.0052) == 0);  // 0 to 1 %
  CHECK(percent_range_decimals({0.664, 0.672, 0.689}, 0.672) == 0);
}

TEST_CASE("A share between two others is read between them", "[range_report][law]") {
  const auto read = [](double share, int decimals) { return std::stod(percent_text(share, decimals)); };
  for (int low = 0; low <= 1000; low += 7) {
    for (int width = 0; width <= 60; width += 3) {
      for (int within = 0; within <= width; ++within) {
        const Range range{low / 1000.3, (low + within) / 1000.3, (low + width) / 1000.3};
        const int decimals = percent_range_decimals(range, range.median);
        CHECK(read(range.low, decimals) <= read(range.median, 1));
        CHECK(read(range.median, 1) <= read(range.high, decimals));
      }
    }
  }
}
