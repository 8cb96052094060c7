#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <string>

#include "run.hpp"
#include "support/paths.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

TEST_CASE("pot gives the prismatoid's volume and eleven equal heights", "[cli][pot][published]") {
  // Prismatoid formula: rim 40 x 30, base 34 x 22, h 6 cm: 5796 cm3.
  const Answer answer = run({"pot", "-", "--json"}, R"({"format":"gritwright/container/1","shape":"rectangular",
    "rim":{"length_cm":40,"width_cm":30},"base":{"length_cm":34,"width_cm":22},"depth_cm":6})");
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK_THAT(json["volume_ml"].get<double>(), WithinAbs(5796, 1e-6));
  REQUIRE(json["area_cm2"].size() == 11);
  CHECK_THAT(json["area_cm2"][0]["area"].get<double>(), WithinAbs(34 * 22, 1e-9));
  CHECK_THAT(json["area_cm2"][10]["area"].get<double>(), WithinAbs(40 * 30, 1e-9));
}

TEST_CASE("pot refuses a container without depth or with its fill line under the floor", "[cli][pot][refuses]") {
  const std::string start = R"({"format":"gritwright/container/1","shape":"round","rim":{"diameter_cm":20},)";
  CHECK(run({"pot", "-"}, start + R"("depth_cm":0})").exit == Exit::input_refused);
  const Answer buried = run({"pot", "-"}, start + R"("depth_cm":5,"freeboard_cm":6})");
  CHECK(buried.exit == Exit::input_refused);
  CHECK(buried.err.find("#/freeboard_cm") != std::string::npos);
}

TEST_CASE("pot with a mix gives the water by height", "[cli][pot][law]") {
  const std::string folder = std::string(GRITWRIGHT_SOURCE_DIR) + "/demo-data/";
  const Answer answer = run({"pot", folder + "containers/tray_01.json", "--mix", folder + "mixes/pines.json", "--json"});
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  REQUIRE(json["water"].size() == 11);
  for (std::size_t i = 1; i < 11; ++i) CHECK(json["water"][i]["theta"].get<double>() <= json["water"][i - 1]["theta"].get<double>());
}

TEST_CASE("The litres measured out shrink, spill and settle to the volume of the pot", "[cli][pot][law]") {
  const std::string pot = R"({"format":"gritwright/container/1","shape":"rectangular","rim":{"length_cm":40,"width_cm":30},
    "base":{"length_cm":34,"width_cm":22},"depth_cm":6})";
  const std::string components = R"("components":[
    {"name":"a","parts":2,"bulk_density_g_l":450,"particle_density_g_l":900,"class_mm":7.5},
    {"name":"b","parts":1,"bulk_density_g_l":750,"particle_density_g_l":1350,"class_mm":1.5}])";
  const std::string mix = std::filesystem::temp_directory_path() / ("gritwright_fill_" + std::to_string(::getpid()) + ".json");
  std::ofstream(mix) << R"({"format":"gritwright/mix/1",)" << components << R"(,"settling":0.08,"spill":0.07})";
  const Answer answer = run({"pot", "-", "--mix", mix, "--json"}, pot);
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  const double shrinkage = run({"mix", mix, "--json"}).json()["shrinkage_percent"].get<double>() / 100;
  std::filesystem::remove(mix);
  double loose_l = 0;
  for (const auto& component : json["measure_out"]) loose_l += component["loose_l"].get<double>();
  CHECK(shrinkage > 0.05);
  CHECK_THAT(loose_l * 1000 * (1 - shrinkage) * (1 - 0.07) * (1 - 0.08), WithinAbs(json["volume_ml"].get<double>(), 1e-6));
  CHECK_THAT(json["measure_out"][0]["loose_l"].get<double>() / json["measure_out"][1]["loose_l"].get<double>(), WithinAbs(2, 1e-9));
}

TEST_CASE("pot tells a water fill that its lengths can't hold, and counts it all the same", "[cli][pot]") {
  const std::string slip = R"({"format":"gritwright/container/1","shape":"rectangular","rim":{"length_cm":30,"width_cm":20},"depth_cm":7,"water_fill_ml":3})";
  const Answer answer = run({"pot", "-", "--json"}, slip);
  REQUIRE(answer.exit == Exit::done);
  CHECK_THAT(answer.json()["volume_ml"].get<double>(), WithinAbs(3, 1e-12));
  CHECK(answer.json()["notes"][0]["code"] == "container.water-fill-far-off");
  CHECK(run({"pot", "-"}, slip).out.find("4200 mL that the lengths hold") != std::string::npos);
  CHECK(run({"pot", "-", "--strict"}, slip).exit == Exit::strict_warnings);
}

TEST_CASE("What the litres measured out were reckoned by is told, also of two components of one name", "[cli][pot][law]") {
  const std::string pot = R"({"format":"gritwright/container/1","shape":"rectangular","rim":{"length_cm":40,"width_cm":30},"depth_cm":6})";
  const std::string mix = std::filesystem::temp_directory_path() / ("gritwright_names_" + std::to_string(::getpid()) + ".json");
  std::ofstream(mix) << R"({"format":"gritwright/mix/1","components":[
    {"name":"grit","parts":2,"bulk_density_g_l":450,"particle_density_g_l":900,"class_mm":7.5},
    {"name":"grit","parts":1,"bulk_density_g_l":750,"particle_density_g_l":1350,"class_mm":1.5}],"settling":0.08,"spill":0.07})";
  const Answer answer = run({"pot", "-", "--mix", mix, "--json", "--explain"}, pot);
  std::filesystem::remove(mix);
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  for (const auto& explanation : json["explanations"]) {
    if (explanation["figure"] != "measure_out") continue;
    const auto& inputs = explanation["inputs"];
    CHECK(inputs["volume"] == "7.20 L");
    CHECK(inputs["settling"] == "8.0 %");
    CHECK(inputs["spill"] == "7.0 %");
    CHECK(inputs["share of grit"] == "66.7 %");
    CHECK(inputs["share of grit (2)"] == "33.3 %");
    return;
  }
  FAIL("no explanation of the litres measured out");
}
