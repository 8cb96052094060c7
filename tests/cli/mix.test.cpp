#include <catch2/catch.hpp>

#include "run.hpp"
#include "support/paths.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

namespace {

// Bookkeeping case of docs/science/packing.md (invented inputs).
const std::string two_sizes = R"({"format":"gritwright/mix/1","components":[
  {"name":"a","parts":1,"bulk_density_g_l":450,"particle_density_g_l":900,"skeletal_density_g_l":2350,"water_absorption":0.40,"class_mm":7.5},
  {"name":"b","parts":1,"bulk_density_g_l":750,"particle_density_g_l":1350,"skeletal_density_g_l":2650,"water_absorption":0.25,"class_mm":1.5}]})";

std::string boyer_mix(const std::string& file, const std::string& densities) {
  return R"({"format":"gritwright/mix/1","components":[{"name":"x","parts":1,)" + densities + R"("sieve_test":")" +
         fixture("published/" + file) + R"("}]})";
}

}  // namespace

TEST_CASE("mix gives the figures of the two-size bookkeeping case", "[cli][mix][law]") {
  const Answer answer = run({"mix", "-", "--json"}, two_sizes);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK_THAT(json["envelope_shares"][0].get<double>(), WithinAbs(0.473684, 1e-6));
  CHECK_THAT(json["packing_density"].get<double>(), WithinAbs(0.612403, 1e-6));
  CHECK_THAT(json["volume_l"].get<double>(), WithinAbs(1.72363, 1e-5));
  CHECK_THAT(json["shrinkage_percent"].get<double>(), WithinAbs(13.82, 5e-3));
  CHECK_THAT(json["bulk_density_g_l"].get<double>(), WithinAbs(696.205, 1e-3));
  CHECK_THAT(json["particle_density_g_l"].get<double>(), WithinAbs(1136.842, 1e-3));
  CHECK_THAT(json["skeletal_density_g_l"].get<double>(), WithinAbs(2528.934, 1e-3));
  CHECK_THAT(json["voids_between_grains"].get<double>(), WithinAbs(0.387597, 1e-6));
  CHECK_THAT(json["voids_in_grains"].get<double>(), WithinAbs(0.337107, 1e-6));
  CHECK_THAT(json["total_porosity"].get<double>(), WithinAbs(0.724704, 1e-6));
  CHECK_THAT(json["grain_water"].get<double>(), WithinAbs(0.213213, 1e-6));
  CHECK(json["cec_meq_l"].is_null());
  CHECK_FALSE(json.contains("pot"));
}

TEST_CASE("mix at a depth has no volume and no wet mass, and a shallower pot holds more water", "[cli][mix][law]") {
  const auto deep = run({"mix", "-", "--json", "--depth-cm", "12"}, two_sizes).json()["pot"];
  const auto shallow = run({"mix", "-", "--json", "--depth-cm", "4"}, two_sizes).json()["pot"];
  CHECK(deep["volume_ml"].is_null());
  CHECK(deep["wet_mass_g"].is_null());
  CHECK(shallow["container_capacity"].get<double>() > deep["container_capacity"].get<double>());
  CHECK_THAT(deep["air_filled_porosity"].get<double>() + deep["container_capacity"].get<double>(),
             WithinAbs(deep["theta_0"].get<double>(), 1e-12));
}

TEST_CASE("mix in a container tells the pot's volume and the wet mass in words too", "[cli][mix]") {
  const std::string demo = GRITWRIGHT_SOURCE_DIR "/demo-data/";
  const std::string text = run({"mix", demo + "mixes/pines.json", "--pot", demo + "containers/tray_01.json"}).out;
  CHECK(text.find("volume to the fill line ") != std::string::npos);
  CHECK(text.find(" wet\n") != std::string::npos);
  CHECK(run({"mix", "-", "--depth-cm", "6"}, two_sizes).out.find(" wet\n") == std::string::npos);
}

TEST_CASE("A published bark runs from its sieve test through a mix into a pot", "[cli][mix][published]") {
  // Boyer et al. 2012: bulk density .18 g/mL; particle and skeletal density typical, from memory.
  const std::string mix = boyer_mix("boyer_2012_pine_bark.csv",
                                    R"("bulk_density_g_l":180,"particle_density_g_l":450,"skeletal_density_g_l":1450,"open_share":0.63,)");
  const Answer answer = run({"mix", "-", "--json", "--depth-cm", "7.6"}, mix);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK_THAT(json["bulk_density_g_l"].get<double>(), WithinAbs(180, 1e-9));
  CHECK_THAT(json["shrinkage_percent"].get<double>(), WithinAbs(0, 1e-9));
  CHECK(json["pot"]["air_filled_porosity"].get<double>() >= 0);
  CHECK(json["pot"]["total_air"].get<double>() >= json["pot"]["air_filled_porosity"].get<double>());
}

TEST_CASE("Peat and chip without a particle density get shares and grading, null porosities and a note", "[cli][mix]") {
  // Boyer et al. 2012, Tables 1 and 2: bulk densities .11, .22 and .19 g/mL.
  const std::vector<std::pair<std::string, std::string>> substrates{
      {"boyer_2012_peat.csv", "110"}, {"boyer_2012_pine_chip_0.48_cm.csv", "220"}, {"boyer_2012_pine_chip_0.95_cm.csv", "190"}};
  for (const auto& [file, density] : substrates) {
    INFO(file);
    const Answer answer = run({"mix", "-", "--json", "--depth-cm", "7.6"}, boyer_mix(file, "\"bulk_density_g_l\":" + density + ","));
    REQUIRE(answer.exit == Exit::done);
    const auto json = answer.json();
    CHECK_THAT(json["mass_shares"][0].get<double>(), WithinAbs(1, 1e-12));
    CHECK(json["passing"].size() == 12);
    for (const char* key : {"envelope_shares", "packing_density", "total_porosity", "voids_between_grains", "grain_water", "pot"}) {
      INFO(key);
      CHECK(json[key].is_null());
    }
    CHECK_FALSE(json["notes"].empty());
  }
}

TEST_CASE("mix refuses parts that are all zero, an unknown material and bulk above particle density", "[cli][mix][refuses]") {
  const auto with = [](const std::string& component) {
    return R"({"format":"gritwright/mix/1","components":[)" + component + "]}";
  };
  CHECK(run({"mix", "-"}, with(R"({"name":"a","parts":0,"bulk_density_g_l":450,"class_mm":4})")).exit == Exit::input_refused);
  const Answer unknown = run({"mix", "-"}, with(R"({"name":"a","parts":1,"material":"akadma","class_mm":4})"));
  CHECK(unknown.exit == Exit::input_refused);
  CHECK(unknown.err.find("akadama") != std::string::npos);
  const Answer upside_down =
      run({"mix", "-"}, with(R"({"name":"a","parts":1,"bulk_density_g_l":950,"particle_density_g_l":900,"class_mm":4})"));
  CHECK(upside_down.exit == Exit::input_refused);
  CHECK(upside_down.err.find("#/components/0/") != std::string::npos);
  CHECK(run({"mix", "-", "--depth-cm", "0"}, two_sizes).exit == Exit::wrong_usage);
}

TEST_CASE("Typical figures are spoken of only where one is used", "[cli][mix][regression]") {
  const auto told = [](const std::string& keys) {
    const std::string text = R"({"format":"gritwright/mix/1","components":[{"material":"akadama","parts":1,"class_mm":4,)" + keys + "}]}";
    const auto answer = run({"mix", "-", "--json"}, text).json();
    for (const auto& note : answer["notes"])
      if (note["code"] == "mix.typical-figures") return true;
    return false;
  };
  const std::string most = R"("particle_density_g_l":850,"skeletal_density_g_l":2710,"open_share":0.97,"water_absorption":0.75,"cec_meq_100g":19.5)";
  CHECK(told(most));
  CHECK_FALSE(told(R"("bulk_density_g_l":481,)" + most));
}
