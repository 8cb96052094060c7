#include <catch2/catch.hpp>

#include "gritwright/report/quantity_text.hpp"
#include "run.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

namespace {
// Invented bag; bulk and particle density as typical for pumice, from memory.
const std::string bag =
    "# bulk_density_g_l: 600\n# particle_density_g_l: 1000\naperture_mm,retained_g\n"
    "9.5,0\n6.3,220\n4,300\n2,380\n1,70\npan,30\n";
}  // namespace

TEST_CASE("screen loses no mass and fills more litres apart than together", "[cli][screen][law]") {
  const Answer answer = run({"screen", "-", "--json", "--at", "6.3", "--at", "2"}, bag);
  REQUIRE(answer.exit == Exit::done);
  const auto fractions = answer.json()["fractions"];
  REQUIRE(fractions.size() == 3);
  double mass_percent = 0;
  double litres = 0;
  for (const auto& fraction : fractions) {
    mass_percent += fraction["mass_percent"].get<double>();
    litres += fraction["loose_l_per_l"].get<double>();
    CHECK(fraction["passing"].size() > 2);
  }
  CHECK_THAT(mass_percent, WithinAbs(100, 1e-9));
  CHECK(litres > 1);
  CHECK(litres < 1.2);
  CHECK(fractions[0]["to_mm"].is_null());
  CHECK(fractions[2]["from_mm"].is_null());
}

TEST_CASE("Beside quarts what comes of a bag is a share, not quarts of a litre", "[cli][screen]") {
  const std::string screened = run({"screen", "-", "--at", "6.3", "--at", "2", "--units", "us"}, bag).out;
  CHECK(screened.find("of the volume screened") != std::string::npos);
  CHECK(screened.find(" qt") == std::string::npos);
  const auto judged = run({"grade", "-", "--json", "--band", "2-6.3"}, bag).json();
  const std::string text = run({"grade", "-", "--band", "2-6.3", "--units", "us"}, bag).out;
  CHECK(text.find("usable " + gritwright::percent_text(judged["verdict"][0]["usable_l_per_l"].get<double>()) + " of the bag") != std::string::npos);
}

TEST_CASE("screen refuses openings that are repeated, zero or no number", "[cli][screen][refuses]") {
  CHECK(run({"screen", "-", "--at", "2", "--at", "2"}, bag).exit == Exit::input_refused);
  const Answer zero = run({"screen", "-", "--at", "0"}, bag);
  CHECK(zero.exit == Exit::wrong_usage);
  CHECK(zero.err.find("--at") != std::string::npos);
  CHECK(run({"screen", "-", "--at", "-2"}, bag).exit == Exit::wrong_usage);
  CHECK(run({"screen", "-", "--at", "2", "--sharpness", "0"}, bag).exit == Exit::wrong_usage);
  const Answer comma = run({"screen", "-", "--at", "2,5"}, bag);
  CHECK(comma.exit == Exit::wrong_usage);
  CHECK(comma.err.find("column") == std::string::npos);
  CHECK(run({"screen", "-", "--at", "2mm"}, bag).exit == Exit::wrong_usage);
  CHECK(run({"screen", "-"}, bag).exit == Exit::wrong_usage);
}
