#include "gritwright/domain/fraction.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace gritwright;

TEST_CASE("A fraction whose predicted litre weight is nothing or less is refused at its place", "[fraction][refuses]") {
  Fraction fraction;
  fraction.source = {RecordKind::bag, "P-02"};
  fraction.from = aperture_mm(2);
  fraction.bulk_density_ratio = BulkDensityRatio(0.95);
  CHECK(check(fraction).empty());
  for (const double ratio : {0.0, -0.5}) {
    fraction.bulk_density_ratio = BulkDensityRatio(ratio);
    const Problems problems = check(fraction);
    REQUIRE(problems.size() == 1);
    CHECK(problems.front().code == "record.amount-not-positive");
    CHECK(problems.front().where.pointer == "/bulk_density_ratio");
  }
}
