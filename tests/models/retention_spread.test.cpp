#include "gritwright/models/retention_spread.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("The flooded fill goes through the published 10, 50 and 90 %", "[retention_spread]") {
  // docs/science/water.md: trapped air of 29 sands of UNSODA 2.0, f .84, 10-90 % .69-.98.
  CHECK_THAT(flooded_fill_at(0.84, 0), WithinAbs(0.84, 1e-12));
  CHECK_THAT(flooded_fill_at(0.84, -1.2815515655446004), WithinAbs(0.69, 1e-12));
  CHECK_THAT(flooded_fill_at(0.84, 1.2815515655446004), WithinAbs(0.98, 1e-12));
}

TEST_CASE("The flooded fill rises with its score and stays within 0 and 1 for every median", "[retention_spread][law]") {
  for (const double median : {0.0, 0.3, 0.7, 0.84, 0.95, 1.0}) {
    double before = -1;
    for (double score = -5; score <= 5; score += 0.25) {
      const double fill = flooded_fill_at(median, score);
      CHECK(fill >= before);
      CHECK(fill >= 0);
      CHECK(fill <= 1);
      before = fill;
    }
    CHECK_THAT(flooded_fill_at(median, 0), WithinAbs(median, 1e-12));
  }
}

TEST_CASE("Scores of zero leave the constants as they are", "[retention_spread][law]") {
  const RetentionConstants usual;
  const RetentionConstants drawn = constants_at(usual, RetentionSpread{}, {});
  CHECK_THAT(drawn.flooded_fill, WithinAbs(usual.flooded_fill, 1e-12));
  CHECK(drawn.k_cm_mm == usual.k_cm_mm);
  CHECK(drawn.grain_fill == usual.grain_fill);
  CHECK(drawn.residual == usual.residual);
}
