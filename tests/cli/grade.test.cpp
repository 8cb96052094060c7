#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

TEST_CASE("grade gives the published passing of Das's worked example", "[cli][grade][published]") {
  // B. M. Das, Principles of Geotechnical Engineering, ch. 2: printed to 0.1; 12/729 = 1.65 was printed 1.7.
  const Answer answer = run({"grade", fixture("published/das_sand.csv"), "--json"});
  REQUIRE(answer.exit == Exit::done);
  const auto passing = answer.json()["passing"];
  const std::vector<double> printed{100, 94.5, 86.3, 74.1, 54.9, 38.1, 9.3, 1.7};
  REQUIRE(passing.size() == printed.size());
  for (std::size_t i = 0; i < printed.size(); ++i) CHECK_THAT(passing[i]["percent"].get<double>(), WithinAbs(printed[i], 0.06));
}

TEST_CASE("grade gives the percentiles and size groups of a published pine bark", "[cli][grade][published]") {
  // Boyer et al. 2012, Int. J. Agronomy 978528, Table 2; D values derived log-linearly from it; groups printed 30.0/38.0/32.0
  // with other inner sieves, so to .45.
  const Answer answer = run({"grade", fixture("published/boyer_2012_pine_bark.csv"), "--json", "--band", "3.35-12.5", "--band",
                             "1-3.35", "--band", "0-1"});
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK_THAT(json["d_mm"]["d10"].get<double>(), WithinAbs(0.256, 5e-4));
  CHECK_THAT(json["d_mm"]["d50"].get<double>(), WithinAbs(1.860, 5e-4));
  CHECK_THAT(json["d_mm"]["d90"].get<double>(), WithinAbs(5.72, 5e-3));
  CHECK_THAT(json["bands"][0]["percent"].get<double>(), WithinAbs(30.0, 0.45));
  CHECK_THAT(json["bands"][1]["percent"].get<double>(), WithinAbs(38.0, 0.45));
  CHECK_THAT(json["bands"][2]["percent"].get<double>(), WithinAbs(32.0, 0.45));
}

TEST_CASE("grade never extrapolates: a percentile outside the sieves is null", "[cli][grade][law]") {
  const Answer answer = run({"grade", "-", "--json"}, "aperture_mm,retained_g\n4,0\n2,50\npan,50\n");
  REQUIRE(answer.exit == Exit::done);
  CHECK(answer.json()["d_mm"]["d10"].is_null());
  CHECK(answer.json()["cu"].is_null());
}

TEST_CASE("Warnings end with 1 under --strict only", "[cli][grade]") {
  const std::string small = "# particle_density_g_l: 2650\naperture_mm,retained_g\n4,0\n2,50\npan,1\n";
  CHECK(run({"grade", "-"}, small).exit == Exit::done);
  CHECK(run({"grade", "-", "--strict"}, small).exit == Exit::strict_warnings);
}

TEST_CASE("JSON answers are metric and in point decimals, also with US text units", "[cli][grade]") {
  const std::string file = fixture("published/das_sand.csv");
  CHECK(run({"grade", file, "--json", "--units", "us"}).out == run({"grade", file, "--json"}).out);
  CHECK(run({"grade", file, "--units", "us"}).out.find("No. 10") != std::string::npos);
}

TEST_CASE("--explain adds formula, inputs and source", "[cli][grade]") {
  const Answer answer = run({"grade", fixture("published/das_sand.csv"), "--json", "--explain"});
  const auto explanations = answer.json()["explanations"];
  REQUIRE(explanations.size() >= 3);
  for (const auto& explanation : explanations) {
    CHECK_FALSE(explanation["formula"].get<std::string>().empty());
    CHECK_FALSE(explanation["source"].get<std::string>().empty());
  }
}

TEST_CASE("--laboratory adds the laboratory figures, and only then", "[cli][grade][published]") {
  // 1000 g over a stack with an empty pan, published exercise: fineness modulus 2.60.
  const std::string stack = "aperture_mm,retained_g\n4.75,0\n2.36,100\n1.18,150\n0.6,200\n0.3,350\n0.15,200\npan,0\n";
  const Answer answer = run({"grade", "-", "--json", "--laboratory"}, stack);
  REQUIRE(answer.exit == Exit::done);
  CHECK_THAT(answer.json()["laboratory"]["fineness_modulus"].get<double>(), WithinAbs(2.60, 1e-9));
  CHECK_FALSE(run({"grade", "-", "--json"}, stack).json().contains("laboratory"));
}

TEST_CASE("grade judges the bag for each wanted band, and gives no verdict without one", "[cli][grade]") {
  const std::string clean = "aperture_mm,retained_g\n8,0\n6.3,5\n2,193\npan,2\n";
  const auto judged = run({"grade", "-", "--json", "--band", "2-6.3"}, clean).json();
  CHECK(judged["verdict"][0]["verdict"] == "take");
  CHECK(run({"grade", "-", "--json"}, clean).json()["verdict"].is_null());
  const std::string dusty = "aperture_mm,retained_g\n8,0\n6.3,5\n2,155\n1,30\npan,10\n";
  const auto screened = run({"grade", "-", "--json", "--band", "2-6.3"}, dusty).json();
  CHECK(screened["verdict"][0]["verdict"] == "take_after_screening");
  CHECK(screened["verdict"][0]["screen_at_mm"][0] == 2.0);
}

TEST_CASE("A wanted band means the sieves there are, and the verdict names them", "[cli][grade][regression]") {
  const std::string dusty = "aperture_mm,retained_g\n8,0\n6.3,5\n2,155\n1,30\npan,10\n";
  const auto json = run({"grade", "-", "--json", "--band", "2-6"}, dusty).json();
  CHECK(json["bands"][0]["to_mm"] == 6.0);
  CHECK(json["verdict"][0]["to_mm"] == 6.3);
  CHECK(json["verdict"][0]["screen_at_mm"][0] == 2.0);
  CHECK(run({"grade", "-", "--band", "2-6"}, dusty).out.find("for 2 mm to 6.3 mm") != std::string::npos);
}

TEST_CASE("Lost mass stands in a row of its own, not in the pan", "[cli][grade][regression]") {
  const std::string lost = "# dry_mass_g: 1000\n# particle_density_g_l: 900\naperture_mm,retained_g\n4,0\n2,960\npan,5\n";
  const std::string text = run({"grade", "-", "--band", "2-4"}, lost).out;
  CHECK(text.find("finer than the finest sieve") == std::string::npos);
  CHECK(text.find("verdict: take for") != std::string::npos);
  const auto verdict = run({"grade", "-", "--json", "--band", "2-4"}, lost).json()["verdict"][0];
  CHECK_THAT(verdict["finer_percent"].get<double>(), WithinAbs(0.5, 1e-9));
}
