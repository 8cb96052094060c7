#include "gritwright/models/running_sieve_test.hpp"

#include <catch2/catch.hpp>

#include "gritwright/models/sieve_analysis.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

SieveTest half_way() {
  SieveTest test;
  test.dry_mass = mass_g(500);
  test.resolution = mass_g(1);
  test.rows = {{aperture_mm(8), mass_g(50), {}}, {aperture_mm(4), GrossTare{mass_g(230), mass_g(30)}, {}}};
  test.pan = mass_g(0);
  return test;
}

}  // namespace

TEST_CASE("What is not yet weighed still lies in the stack", "[running_sieve_test]") {
  SieveTest test = half_way();
  CHECK_THAT(in_g(*weighed_so_far(test, true)), WithinAbs(250, 1e-9));
  CHECK_THAT(in_g(*still_in_the_stack(test)), WithinAbs(250, 1e-9));
  test.washed_dry_mass = mass_g(460);
  CHECK_THAT(in_g(*still_in_the_stack(test)), WithinAbs(210, 1e-9));
  test.dry_mass.reset();
  test.washed_dry_mass.reset();
  CHECK_FALSE(still_in_the_stack(test).has_value());
}

TEST_CASE("The curve so far is the finished test's curve at the same sieves", "[running_sieve_test][law]") {
  SieveTest finished = half_way();
  finished.rows.push_back({aperture_mm(2), mass_g(200), {}});
  finished.pan = mass_g(50);
  SieveTest so_far = half_way();
  so_far.pan = *still_in_the_stack(so_far);
  const auto whole = analyse(finished);
  const auto part = analyse(so_far);
  for (std::size_t i = 0; i < so_far.rows.size(); ++i) {
    CHECK_THAT(part->sieves[i].passing.value(), WithinAbs(whole->sieves[i].passing.value(), 1e-12));
  }
}

TEST_CASE("Buckets of fractions are summed side by side, and not where one of them was weighed", "[running_sieve_test]") {
  SieveTest test = half_way();
  test.rows[0].retained = loose_l(2.5);
  CHECK_FALSE(collected_so_far(test, false).has_value());
  test.rows[1].retained = loose_l(4);
  CHECK_THAT(in_l(*collected_so_far(test, false)), WithinAbs(6.5, 1e-12));
  CHECK_FALSE(collected_so_far(test, true).has_value());
  test.pan = loose_l(0.75);
  CHECK_THAT(in_l(*collected_so_far(test, true)), WithinAbs(7.25, 1e-12));
}

TEST_CASE("Rows that outweigh the sample leave nothing to compute with", "[running_sieve_test][refuses]") {
  SieveTest test = half_way();
  test.dry_mass = mass_g(200);
  CHECK_FALSE(still_in_the_stack(test).has_value());
  test.rows[0].retained = loose_l(1);
  CHECK_FALSE(weighed_so_far(test, false).has_value());
}
