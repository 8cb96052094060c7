#include <catch2/catch.hpp>

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

TEST_CASE("pot with a mix gives the water by height and litres that return the fill", "[cli][pot][law]") {
  const std::string folder = std::string(GRITWRIGHT_SOURCE_DIR) + "/demo-data/";
  const Answer answer = run({"pot", folder + "containers/tray_01.json", "--mix", folder + "mixes/pines.json", "--json"});
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  REQUIRE(json["water"].size() == 11);
  for (std::size_t i = 1; i < 11; ++i) CHECK(json["water"][i]["theta"].get<double>() <= json["water"][i - 1]["theta"].get<double>());
  const auto mix = run({"mix", folder + "mixes/pines.json", "--json"}).json();
  double loose_l = 0;
  for (const auto& component : json["measure_out"]) loose_l += component["loose_l"].get<double>();
  CHECK(loose_l * 1000 * (1 - mix["shrinkage_percent"].get<double>() / 100) >= json["volume_ml"].get<double>());
}
