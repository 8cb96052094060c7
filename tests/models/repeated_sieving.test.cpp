#include "gritwright/models/repeated_sieving.hpp"

#include <catch2/catch.hpp>
#include <cstddef>
#include <vector>

#include "gritwright/units.hpp"

using namespace gritwright;

namespace {

SieveTest weighed(const std::vector<double>& grams, double pan_g, double sample_g) {
  const double openings[] = {4, 2, 1};
  SieveTest test;
  for (std::size_t i = 0; i < grams.size(); ++i) test.rows.push_back({aperture_mm(openings[i]), mass_g(grams[i]), {}});
  test.pan = mass_g(pan_g);
  test.dry_mass = mass_g(sample_g);
  return test;
}

}  // namespace

TEST_CASE("Weights that went over pounds and back are the same weighings; a moved digit or another crumb share is not", "[repeated_sieving]") {
  const SieveTest kept = weighed({100, 250, 98}, 52, 500);
  SieveTest over_pounds = kept;
  for (SieveRow& row : over_pounds.rows) row.retained = mass_g(in_g(std::get<Mass>(row.retained)) / 453.59237 * 453.59237);
  CHECK(same_weighings(kept, over_pounds));
  CHECK_FALSE(same_weighings(kept, weighed({100, 250, 98.1}, 52, 500)));
  SieveTest crumbs = kept;
  crumbs.pan_crumbs = MassShare(0.1);
  CHECK_FALSE(same_weighings(kept, crumbs));
}

TEST_CASE("Moisture, a washed mass and the width of the sieves are of the sample, not of its weighings", "[repeated_sieving]") {
  const SieveTest kept = weighed({100, 250, 98}, 52, 500);
  SieveTest damp = kept;
  damp.moisture = Moisture(0.1);
  SieveTest wide = kept;
  wide.sieve_diameter = length_mm(200);
  SieveTest washed = kept;
  washed.washed_dry_mass = mass_g(480);
  for (const SieveTest& other : {damp, wide, washed}) {
    CHECK(same_weighings(kept, other));
    CHECK_FALSE(same_sieving(kept, other));
    CHECK(same_sieving(other, other));
  }
}

TEST_CASE("A test with less than half of its weights changed is one put right; a second sample of the bag is not", "[repeated_sieving]") {
  const SieveTest kept = weighed({100, 250, 98}, 52, 500);
  CHECK(is_put_right(kept, weighed({100, 250, 89}, 52, 500)));
  CHECK(is_put_right(kept, weighed({100, 250, 98}, 25, 473)));
  CHECK_FALSE(is_put_right(kept, weighed({91, 233, 88}, 60, 480)));
  CHECK_FALSE(is_put_right(kept, weighed({91, 233, 88}, 60, 500)));
}

TEST_CASE("Sieves on which nothing stayed don't make two samples one test", "[repeated_sieving]") {
  CHECK_FALSE(is_put_right(weighed({0, 0, 98}, 52, 150), weighed({0, 0, 91}, 49, 140)));
}

TEST_CASE("A tare that was forgotten is put right; net weights are no gross ones", "[repeated_sieving]") {
  SieveTest kept = weighed({0, 0, 0}, 0, 500);
  const double gross[] = {350, 500, 348};
  for (std::size_t i = 0; i < kept.rows.size(); ++i) kept.rows[i].retained = GrossTare{mass_g(gross[i]), mass_g(0)};
  kept.pan = GrossTare{mass_g(302), mass_g(0)};
  SieveTest tared = kept;
  for (SieveRow& row : tared.rows) std::get<GrossTare>(row.retained).tare = mass_g(250);
  std::get<GrossTare>(tared.pan).tare = mass_g(250);
  CHECK_FALSE(same_weighings(kept, tared));
  CHECK(is_put_right(kept, tared));
  CHECK_FALSE(is_put_right(kept, weighed({350, 500, 348}, 302, 480)));
}
