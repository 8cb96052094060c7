#include <catch2/catch.hpp>

#include "run.hpp"
#include "support/paths.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

namespace {

std::string example(const std::string& name) { return std::string(GRITWRIGHT_SOURCE_DIR) + "/docs/file-format/examples/" + name; }

}  // namespace

TEST_CASE("calibrate tells what was measured of a mix it does not know", "[cli][calibrate]") {
  const Answer answer = run({"calibrate", "-", "--json"}, R"({"format":"gritwright/pot-test/1","volume_ml":1000,
    "tare_g":120,"dry_g":720,"flooded_g":1290,"drained_g":1035})");
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK_THAT(json["bulk_density_g_l"].get<double>(), WithinAbs(600, 1e-9));
  CHECK_THAT(json["theta_0"].get<double>(), WithinAbs(0.57, 1e-9));
  CHECK_THAT(json["air_filled_porosity"].get<double>(), WithinAbs(0.255, 1e-9));
  CHECK_THAT(json["container_capacity"].get<double>(), WithinAbs(0.315, 1e-9));
  CHECK(json["k_cm_mm"].is_null());
  CHECK(json["predicted"].is_null());
}

TEST_CASE("calibrate compares the drained air with the predicted air and fits the constants", "[cli][calibrate]") {
  const Answer answer = run({"calibrate", example("pot_test.json"), "--json"});
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK(json["k_cm_mm"].get<double>() > 2);
  CHECK(json["flooded_fill"].get<double>() <= 1);
  const auto& predicted = json["predicted"];
  CHECK(predicted["air_filled_porosity"].get<double>() <= predicted["total_air"].get<double>());
  CHECK_THAT(json["score"]["all"]["bias"].get<double>(),
             WithinAbs(predicted["air_filled_porosity"].get<double>() - json["air_filled_porosity"].get<double>(), 1e-12));
  CHECK(json["range"]["k_cm_mm"]["low"].get<double>() < json["range"]["k_cm_mm"]["high"].get<double>());
}

TEST_CASE("A mix that is given the fitted constants foretells its own test", "[cli][calibrate][roundtrip]") {
  const auto fitted = run({"calibrate", example("pot_test.json"), "--json"}).json();
  const std::string grain = R"({"name":"grain","parts":1,"bulk_density_g_l":600,"particle_density_g_l":1100,"skeletal_density_g_l":2350,
    "water_absorption":0.3,"grading":[{"aperture_mm":6.3,"passing":100},{"aperture_mm":4,"passing":45},{"aperture_mm":2,"passing":0}]})";
  const std::string mix = R"({"format":"gritwright/mix/1","components":[)" + grain + R"(],"water":{"k_cm_mm":)" +
                          fitted["k_cm_mm"].dump() + R"(,"flooded_fill":)" + fitted["flooded_fill"].dump() + "}}";
  const auto pot = run({"mix", "-", "--depth-cm", "7.5", "--json"}, mix).json()["pot"];
  CHECK_THAT(pot["container_capacity"].get<double>(), WithinAbs(0.315, 1e-6));
  CHECK_THAT(pot["air_filled_porosity"].get<double>(), WithinAbs(0.255, 1e-6));
}

TEST_CASE("calibrate takes the mix and the pot from files of their own", "[cli][calibrate]") {
  const Answer answer = run({"calibrate", example("pot_test_two_depths.json"), "--mix", example("mix.json"), "--json"});
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK(json["tests"].size() == 2);
  CHECK(json["air_filled_porosity"].is_null());
  CHECK(json["score"]["all"]["count"] == 2);
}

TEST_CASE("calibrate refuses weights out of order and names them", "[cli][calibrate][refuses]") {
  const Answer answer = run({"calibrate", "-"}, R"({"format":"gritwright/pot-test/1","volume_ml":1000,
    "tare_g":120,"dry_g":720,"flooded_g":1000,"drained_g":1035})");
  CHECK(answer.exit == Exit::input_refused);
  CHECK(answer.err.find("#/flooded_g") != std::string::npos);
}

TEST_CASE("calibrate takes the volume from the container of --pot, and refuses a test that has none", "[cli][calibrate][regression]") {
  const std::string test = R"({"format":"gritwright/pot-test/1","tare_g":120,"dry_g":720,"flooded_g":1290,"drained_g":1035})";
  const Answer answer = run({"calibrate", "-", "--json", "--pot", example("container.json")}, test);
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const double volume_ml = run({"pot", example("container.json"), "--json"}).json()["volume_ml"];
  CHECK_THAT(answer.json()["bulk_density_g_l"].get<double>(), WithinAbs(600 / (volume_ml / 1000), 1e-9));
  const Answer without = run({"calibrate", "-"}, test);
  CHECK(without.exit == Exit::input_refused);
  CHECK(without.err.starts_with("standard input#: "));
}

TEST_CASE("A pot test without volume or container is refused at its place", "[cli][refuses]") {
  const Answer answer = run({"calibrate", "-"}, R"({"format":"gritwright/pot-test/1","depth_cm":6,"dry_g":700,"drained_g":900})");
  CHECK(answer.exit == Exit::input_refused);
  CHECK(answer.err.find("volume_ml") != std::string::npos);
}

TEST_CASE("What a calibration says it starts from is the mix's own constants where it has some", "[cli][calibrate][regression]") {
  const Answer answer = run({"calibrate", "-", "--json", "--explain"}, R"({"format":"gritwright/pot-test/1","volume_ml":1000,"depth_cm":6,"tare_g":120,"dry_g":720,
    "flooded_g":1290,"drained_g":1035,"mix":{"format":"gritwright/mix/1","water":{"k_cm_mm":14,"grain_fill":0.5},"components":[{"name":"pumice","parts":1,
    "bulk_density_g_l":600,"particle_density_g_l":1100,"skeletal_density_g_l":2350,
    "grading":[{"aperture_mm":6.3,"passing":100},{"aperture_mm":4,"passing":45},{"aperture_mm":2,"passing":0}]}]}})");
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  std::string of_k;
  const auto explanations = answer.json()["explanations"];
  for (const auto& explanation : explanations) {
    if (explanation["figure"] == "k_cm_mm") of_k += explanation.dump();
  }
  INFO(of_k);
  CHECK(of_k.find("14 cm mm") != std::string::npos);
}

TEST_CASE("The flooded fill of a calibration follows from what is listed behind it", "[cli][calibrate][law]") {
  const auto json = run({"calibrate", example("pot_test.json"), "--json", "--explain"}).json();
  int explained = 0;
  for (const auto& explanation : json["explanations"]) {
    if (explanation["figure"] != "flooded_fill") continue;
    const auto percent = [&](const char* name) { return std::stoi(explanation["inputs"][name].get<std::string>()); };  // a point is none of the locale's everywhere
    const double fill = (percent("theta_0") - percent("water in grains")) / static_cast<double>(percent("voids between grains"));
    CHECK_THAT(fill, WithinAbs(json["flooded_fill"].get<double>(), 0.06));
    ++explained;
  }
  CHECK(explained == 1);
}
