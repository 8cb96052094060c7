#include "gritwright/domain/sieve_series.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <string>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {
double opening(std::string_view name) {
  const auto aperture = aperture_named(name);
  INFO(std::string(name));
  REQUIRE(aperture);
  return in_mm(*aperture);
}
}  // namespace

// ASTM E11-01, Table 1: exact designations.
TEST_CASE("A sieve is known by its number, its fraction of an inch and its opening", "[sieve_series][published]") {
  CHECK_THAT(opening("No. 4"), WithinAbs(4.75, 1e-12));
  CHECK_THAT(opening("#200"), WithinAbs(0.075, 1e-12));
  CHECK_THAT(opening("no 3 1/2"), WithinAbs(5.6, 1e-12));
  CHECK_THAT(opening("3/8 in"), WithinAbs(9.5, 1e-12));
  CHECK_THAT(opening("1 1/2\""), WithinAbs(37.5, 1e-12));
  CHECK_THAT(opening("4,75 mm"), WithinAbs(4.75, 1e-12));
  CHECK_THAT(opening("850 um"), WithinAbs(0.85, 1e-12));
  CHECK_THAT(opening("1/8 inch"), WithinAbs(3.175, 1e-12));  // no standard sieve: 25.4 mm to the inch
}

TEST_CASE("A name that stands for no opening is not guessed at", "[sieve_series][refuses]") {
  for (const char* name : {"", "pan", "No. 9", "-2", "0", "1/0 in", "nan", "1e3 mm", "2 2", "1/4", "inf", "4.75 mm x", "/ in", "8 mesh"}) {
    INFO(name);
    CHECK_FALSE(aperture_named(name));
  }
}

TEST_CASE("Mesh sold by pitch opens by the pitch less the wire", "[sieve_series]") {
  // Common practice, no source: pitch 1/8, 1/4, 1/2 in with the usual wires.
  CHECK_THAT(in_mm(*mesh_opening(length_mm(3.175), length_mm(0.43))), WithinAbs(2.745, 1e-9));
  CHECK_THAT(in_mm(*mesh_opening(length_mm(6.35), length_mm(0.64))), WithinAbs(5.71, 1e-9));
  CHECK_THAT(in_mm(*mesh_opening(length_mm(12.7), length_mm(1.04))), WithinAbs(11.66, 1e-9));
  CHECK_FALSE(mesh_opening(length_mm(1), length_mm(1)));
  CHECK_FALSE(mesh_opening(length_mm(1), length_mm(0)));
}

TEST_CASE("The sieves fall in aperture and the principal ones step by about the square root of two", "[sieve_series][law]") {
  const auto sieves = standard_sieves();
  CHECK(std::ranges::is_sorted(sieves, std::greater{}, &StandardSieve::aperture_mm));
  double coarser = 0;
  for (const StandardSieve& sieve : sieves) {
    if (!sieve.principal) continue;
    if (coarser > 0) CHECK_THAT(coarser / sieve.aperture_mm, WithinAbs(1.41, 0.03));
    coarser = sieve.aperture_mm;
  }
}

TEST_CASE("The next coarser principal sieve goes on beyond the largest one", "[sieve_series][law]") {
  CHECK(next_coarser_principal(aperture_mm(4.75)) == aperture_mm(5.6));
  CHECK(next_coarser_principal(aperture_mm(5.6)) == aperture_mm(8));
  CHECK(next_coarser_principal(aperture_mm(0.01)) == aperture_mm(0.045));
  CHECK_THAT(in_mm(next_coarser_principal(aperture_mm(125))), WithinAbs(125 * std::sqrt(2.0), 1e-9));
}
