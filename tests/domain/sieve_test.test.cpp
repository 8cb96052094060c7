#include "gritwright/domain/sieve_test.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>
#include <limits>

using namespace gritwright;

namespace {

SieveTest sound() {
  SieveTest test;
  test.rows = {{aperture_mm(4.75), mass_g(10)}, {aperture_mm(2.36), mass_g(50)}};
  test.pan = mass_g(40);
  test.dry_mass = mass_g(100);
  test.resolution = mass_g(0.1);
  return test;
}

/// The one problem of a sound test after `fault`, as "code at place".
std::string refusal(const std::function<void(SieveTest&)>& fault) {
  SieveTest test = sound();
  fault(test);
  const Problems problems = check(test);
  REQUIRE(problems.size() == 1);
  return problems.front().code + " at " + problems.front().where.pointer;
}

}  // namespace

TEST_CASE("A sound sieve test is taken", "[sieve_test][law]") { CHECK(check(sound()).empty()); }

TEST_CASE("A sieve test refuses openings out of order", "[sieve_test][refuses]") {
  CHECK(refusal([](SieveTest& t) { t.rows[1].aperture = aperture_mm(4.75); }) == "sieve-test.aperture-repeated at /retained/1/aperture_mm");
  CHECK(refusal([](SieveTest& t) { t.rows[1].aperture = aperture_mm(9.5); }) == "sieve-test.aperture-not-falling at /retained/1/aperture_mm");
  CHECK(refusal([](SieveTest& t) { t.rows[1].aperture = aperture_mm(0); }) == "sieve-test.aperture-not-positive at /retained/1/aperture_mm");
  CHECK(refusal([](SieveTest& t) { t.rows[1].aperture = aperture_mm(-2); }) == "sieve-test.aperture-not-positive at /retained/1/aperture_mm");
  CHECK(refusal([](SieveTest& t) { t.rows.clear(); }) == "sieve-test.no-rows at /retained");
}

TEST_CASE("A sieve test refuses amounts that can't be", "[sieve_test][refuses]") {
  CHECK(refusal([](SieveTest& t) { t.rows[0].retained = mass_g(-1); }) == "sieve-test.mass-negative at /retained/0/mass_g");
  CHECK(refusal([](SieveTest& t) { t.rows[0].retained = mass_g(std::numeric_limits<double>::infinity()); }) == "sieve-test.mass-negative at /retained/0/mass_g");
  CHECK(refusal([](SieveTest& t) { t.pan = mass_g(-1); }) == "sieve-test.mass-negative at /pan_g");
  CHECK(refusal([](SieveTest& t) { t.pan = GrossTare{mass_g(2), mass_g(3)}; }) == "sieve-test.tare-above-gross at /pan_tare_g");
  CHECK(refusal([](SieveTest& t) { t.pan = loose_l(1); }) == "sieve-test.mixed-measures at /retained");
  CHECK(refusal([](SieveTest& t) { t.rows[1].crumbs = MassShare(1.2); }) == "sieve-test.crumbs-range at /retained/1/crumbs_percent");
  CHECK(refusal([](SieveTest& t) { t.moisture = Moisture(-0.1); }) == "sieve-test.moisture-range at /moisture_percent");
  CHECK(refusal([](SieveTest& t) { t.dry_mass = mass_g(0); }) == "sieve-test.sample-not-positive at /dry_mass_g");
  CHECK(refusal([](SieveTest& t) { t.sieve_diameter = length_mm(0); }) == "sieve-test.diameter-too-small at /sieve_diameter_mm");
  CHECK(refusal([](SieveTest& t) { t.particle_density = particle_g_l(0); }) == "sieve-test.density-not-positive at /particle_density_g_l");
  CHECK(refusal([](SieveTest& t) { t.resolution = mass_g(-1); }) == "sieve-test.resolution-negative at /resolution_g");
  CHECK(refusal([](SieveTest& t) {
          t.particle_density = particle_g_l(900);
          t.bulk_density = bulk_g_l(1000);
        }) == "sieve-test.bulk-above-particle at /bulk_density_g_l");
  CHECK(refusal([](SieveTest& t) {
          t.dry_mass.reset();
          for (SieveRow& row : t.rows) row.retained = mass_g(0);
          t.pan = mass_g(0);
        }) == "sieve-test.nothing-retained at /retained");
}

TEST_CASE("A sieve test refuses pans that together outweigh the sample", "[sieve_test][refuses]") {
  CHECK(refusal([](SieveTest& t) { t.dry_mass = mass_g(99.6); }) == "sieve-test.sum-above-sample at /retained");
  SieveTest explained = sound();
  explained.dry_mass = mass_g(99.7);  // three weighings, 0.1 g each
  CHECK(check(explained).empty());
}

TEST_CASE("Washing can't add mass and needs the mass before it", "[sieve_test][refuses]") {
  CHECK(refusal([](SieveTest& t) { t.washed_dry_mass = mass_g(101); }) == "sieve-test.washed-above-dry at /washed_dry_mass_g");
  CHECK(refusal([](SieveTest& t) {
          t.washed_dry_mass = mass_g(100);
          t.dry_mass.reset();
        }) == "sieve-test.washed-without-dry at /washed_dry_mass_g");
}

TEST_CASE("All faults of a sieve test are told at once", "[sieve_test][refuses]") {
  SieveTest test = sound();
  test.rows[0].retained = mass_g(-1);
  test.rows[1].aperture = aperture_mm(9.5);
  test.moisture = Moisture(-1);
  CHECK(check(test).size() == 3);
}
