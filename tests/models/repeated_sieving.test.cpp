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

TEST_CASE("Nine digits of a weight that was typed in pounds are the same weighing", "[repeated_sieving]") {
  const SieveTest kept = weighed({0.221 * 453.59237, 0.551 * 453.59237, 98}, 52, 2.21 * 453.59237);
  CHECK(same_weighings(kept, weighed({100.243914, 249.929396, 98}, 52, 1002.43914)));
}

TEST_CASE("Sieves on which nothing stayed don't make two samples one test, weighed with their pans neither", "[repeated_sieving]") {
  CHECK_FALSE(is_put_right(weighed({0, 0, 98}, 52, 150), weighed({0, 0, 91}, 49, 140)));
  const auto with_pans = [](double fine_g, double pan_g) {
    SieveTest test = weighed({0, 0, 0}, 0, 150);
    for (SieveRow& row : test.rows) row.retained = GrossTare{mass_g(250), mass_g(250)};
    test.rows.back().retained = GrossTare{mass_g(250 + fine_g), mass_g(250)};
    test.pan = GrossTare{mass_g(250 + pan_g), mass_g(250)};
    return test;
  };
  CHECK_FALSE(is_put_right(with_pans(98, 52), with_pans(91, 59)));
}

TEST_CASE("A tare that was forgotten is put right, also where the weights were taken for net ones", "[repeated_sieving]") {
  SieveTest kept = weighed({0, 0, 0}, 0, 500);
  const double gross[] = {350, 500, 348};
  for (std::size_t i = 0; i < kept.rows.size(); ++i) kept.rows[i].retained = GrossTare{mass_g(gross[i]), mass_g(0)};
  kept.pan = GrossTare{mass_g(302), mass_g(0)};
  SieveTest tared = kept;
  for (SieveRow& row : tared.rows) std::get<GrossTare>(row.retained).tare = mass_g(250);
  std::get<GrossTare>(tared.pan).tare = mass_g(250);
  CHECK_FALSE(same_weighings(kept, tared));
  CHECK(is_put_right(kept, tared));
  const SieveTest as_net = weighed({350, 500, 348}, 302, 500);
  CHECK(same_weighings(kept, as_net));
  CHECK(is_put_right(as_net, tared));
}

TEST_CASE("Bucket litres are no masses", "[repeated_sieving]") {
  SieveTest litres = weighed({0, 0, 0}, 0, 500);
  const double read[] = {3.5, 5, 3.4};
  for (std::size_t i = 0; i < litres.rows.size(); ++i) litres.rows[i].retained = loose_l(read[i]);
  litres.pan = loose_l(1);
  SieveTest grams = litres;
  for (std::size_t i = 0; i < grams.rows.size(); ++i) grams.rows[i].retained = mass_g(read[i]);
  grams.pan = mass_g(1);
  CHECK_FALSE(same_weighings(litres, grams));
  CHECK_FALSE(is_put_right(litres, grams));
}
