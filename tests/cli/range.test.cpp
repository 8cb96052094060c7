#include <unistd.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "run.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

namespace {

// Invented inputs.
const std::string mix = R"({"format":"gritwright/mix/1","settling":0.08,"components":[
  {"material":"pumice","parts":2,"grading":[{"aperture_mm":1,"passing":4},{"aperture_mm":2,"passing":20},{"aperture_mm":4,"passing":75},{"aperture_mm":6.3,"passing":100}]},
  {"material":"akadama","parts":1,"class_mm":4}]})";

const std::string sieving = "# dry_mass_g: 402\naperture_mm,retained_g\n8,12.0\n5.6,88.0\n4,140.0\n2.8,95.0\n2,40.0\n1,18.0\npan,7.0\n";

std::string demo(const std::string& name) { return std::string(GRITWRIGHT_SOURCE_DIR) + "/demo-data/" + name; }

template <class Json>
void encloses(const Json& range, double value) {
  CHECK(range["low"].template get<double>() <= range["median"].template get<double>());
  CHECK(range["median"].template get<double>() <= range["high"].template get<double>());
  CHECK(range["low"].template get<double>() <= value);
  CHECK(range["high"].template get<double>() >= value);
}

}  // namespace

TEST_CASE("mix --range puts a range beside every figure, and the figure lies in it", "[cli][range]") {
  const Answer answer = run({"mix", "-", "--depth-cm", "6", "--json", "--range"}, mix);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  int figures = 0;
  for (const auto& [key, range] : json["range"].items()) {
    INFO(key);
    if (range.is_array()) {
      REQUIRE(range.size() == json[key].size());
      continue;
    }
    encloses(range, json[key].template get<double>());
    ++figures;
  }
  CHECK(figures == 11);
  for (const auto& row : json["passing"]) encloses(row["range"], row["percent"].get<double>());
  for (const auto& row : json["envelope_passing"]) encloses(row["range"], row["percent"].get<double>());
  for (const auto& [key, range] : json["pot"]["range"].items()) {
    INFO(key);
    if (json["pot"][key].is_null()) CHECK(range.is_null());
    else encloses(range, json["pot"][key].template get<double>());
  }
  CHECK_FALSE(json["pot"]["narrowing"].empty());
}

TEST_CASE("A seed gives the same answer again and another one another", "[cli][range][law]") {
  const std::vector<std::string> arguments{"mix", "-", "--depth-cm", "6", "--json", "--range"};
  const auto with_seed = [&](const std::string& seed) {
    auto all = arguments;
    all.insert(all.end(), {"--seed", seed});
    return run(all, mix).out;
  };
  CHECK(run(arguments, mix).out == with_seed("1"));
  CHECK(with_seed("7") == with_seed("7"));
  CHECK(with_seed("7") != with_seed("8"));
}

TEST_CASE("Without --range no range is told, and a seed alone is refused", "[cli][range][refuses]") {
  CHECK_FALSE(run({"mix", "-", "--depth-cm", "6", "--json"}, mix).json().contains("range"));
  CHECK(run({"mix", "-", "--seed", "2"}, mix).exit == Exit::wrong_usage);
  for (const char* seed : {"two", "-1", "1.5", "18446744073709551616"}) CHECK(run({"mix", "-", "--range", "--seed", seed}, mix).exit == Exit::wrong_usage);
}

TEST_CASE("mix --range says in plain words what would narrow it", "[cli][range]") {
  const Answer answer = run({"mix", "-", "--depth-cm", "6", "--range"}, mix);
  REQUIRE(answer.exit == Exit::done);
  CHECK(answer.out.find("what would narrow it most:") != std::string::npos);
  CHECK(answer.out.find("make a pot test of the mix: range of air from ±") != std::string::npos);
}

TEST_CASE("grade --range holds curve, percentiles, bands and verdict", "[cli][range]") {
  const Answer answer = run({"grade", "-", "--band", "2-5.6", "--json", "--range"}, sieving);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  for (const auto& row : json["passing"]) encloses(row["range"], row["percent"].get<double>());
  for (const auto& row : json["retained"]) {
    encloses(row["range"]["percent"], row["percent"].get<double>());
    encloses(row["range"]["cumulative_percent"], row["cumulative_percent"].get<double>());
  }
  for (const auto& row : json["bands"]) encloses(row["range"], row["percent"].get<double>());
  encloses(json["d_mm"]["range"]["d50"], json["d_mm"]["d50"].get<double>());
  encloses(json["range"]["cu"], json["cu"].get<double>());
  encloses(json["range"]["total_g"], json["total_g"].get<double>());
  encloses(json["verdict"][0]["range"]["in_band_percent"], json["verdict"][0]["in_band_percent"].get<double>());
  CHECK(json["verdict"][0]["holds_percent"].get<double>() > 50);
}

TEST_CASE("pot --range spreads the volume by its lengths, and what goes in by all", "[cli][range]") {
  const std::string tray = R"({"format":"gritwright/container/1","shape":"rectangular","rim":{"length_cm":30,"width_cm":20},"depth_cm":6})";
  const auto json = run({"pot", "-", "--json", "--range"}, tray).json();
  encloses(json["range"]["volume_ml"], 3600);
  // Each length is off by up to 2 mm in nine cases of ten: the relative errors add up by squares.
  const double half = 3600 * std::sqrt(std::pow(0.2 / 30, 2) + std::pow(0.2 / 20, 2) + std::pow(0.2 / 6, 2));
  CHECK_THAT((json["range"]["volume_ml"]["high"].get<double>() - json["range"]["volume_ml"]["low"].get<double>()) / 2, WithinAbs(half, 0.02 * half));
  for (const auto& row : json["area_cm2"]) encloses(row["range"], row["area"].get<double>());
}

TEST_CASE("pot --mix --range holds the litres to measure out", "[cli][range]") {
  const auto json = run({"pot", demo("containers/tray_01.json"), "--mix", demo("mixes/pines.json"), "--json", "--range"}, "").json();
  REQUIRE_FALSE(json["measure_out"].empty());
  for (const auto& row : json["measure_out"]) encloses(row["range"], row["loose_l"].get<double>());
  for (const auto& row : json["water"]) encloses(row["range"], row["theta"].get<double>());
}

TEST_CASE("mix --seasons follows the air over the years and wants a pot", "[cli][range][refuses]") {
  const auto json = run({"mix", "-", "--depth-cm", "9", "--json", "--seasons", "3"}, mix).json();
  const auto& seasons = json["pot"]["seasons"];
  REQUIRE(seasons.size() == 4);
  for (std::size_t i = 1; i < seasons.size(); ++i) {
    CHECK(seasons[i]["season"] == i);
    CHECK(seasons[i]["air_crumbs_staying"]["median"].get<double>() < seasons[i - 1]["air_crumbs_staying"]["median"].get<double>());
  }
  CHECK(run({"mix", "-", "--depth-cm", "9", "--seasons", "3"}, mix).out.find("crumbs stay") != std::string::npos);
  CHECK(run({"mix", "-", "--seasons", "3"}, mix).exit == Exit::wrong_usage);
  CHECK(run({"mix", "-", "--depth-cm", "9", "--seasons", "0"}, mix).exit == Exit::wrong_usage);
}

TEST_CASE("mix learns from its pot tests, says so with their day, and knows its air better", "[cli][range]") {
  const auto usual = run({"mix", "-", "--depth-cm", "6", "--json", "--range"}, mix).json();
  // A litre of this mix that holds 2 points less water than was foretold.
  const double dry_g = usual["bulk_density_g_l"].get<double>() / 0.92;
  const double air = usual["pot"]["air_filled_porosity"], water = usual["pot"]["container_capacity"];
  const nlohmann::json weighed{{"date", "2026-03-14"}, {"depth_cm", 6}, {"volume_ml", 1000}, {"tare_g", 100}, {"dry_g", 100 + dry_g},
                               {"flooded_g", 100 + dry_g + 1000 * (air + water)}, {"drained_g", 100 + dry_g + 1000 * (water - 0.02)}};
  const std::string tests = std::filesystem::temp_directory_path() / ("gritwright_pot_test_" + std::to_string(::getpid()) + ".json");
  std::ofstream(tests) << nlohmann::json{{"format", "gritwright/pot-test/1"}, {"tests", nlohmann::json::array({weighed})}};
  const Answer answer = run({"mix", "-", "--depth-cm", "6", "--json", "--range", "--pot-test", tests}, mix);
  std::filesystem::remove(tests);
  REQUIRE(answer.exit == Exit::done);
  const auto learnt = answer.json();
  const auto width = [](const auto& json) {
    const auto& range = json["pot"]["range"]["air_filled_porosity"];
    return range["high"].template get<double>() - range["low"].template get<double>();
  };
  CHECK(width(learnt) < width(usual));
  bool told = false;
  for (const auto& note : learnt["notes"]) told = told || note["code"] == "mix.calibrated" || note["code"] == "mix.calibrated-on";
  CHECK(told);
  CHECK(run({"mix", "-", "--depth-cm", "6", "--pot-test", "nowhere.json"}, mix).exit == Exit::file_trouble);
}

TEST_CASE("batch --range spreads litres, grain, screening, bags and lifts", "[cli][range]") {
  const std::string examples = std::string(GRITWRIGHT_SOURCE_DIR) + "/docs/file-format/examples/";
  const auto json = run({"batch", examples + "day.json", "--json", "--range"}).json();
  for (const auto& one : json["mixes"]) {
    encloses(one["range"]["needed_l"], one["needed_l"].get<double>());
    if (!one["components"].is_array()) continue;
    for (const auto& grain : one["components"]) encloses(grain["range"]["loose_l"], grain["loose_l"].get<double>());
  }
  for (const auto& grain : json["components"]) encloses(grain["range"]["loose_l"], grain["loose_l"].get<double>());
  for (const auto& bag : json["raw"]) encloses(bag["range"]["screen_l"], bag["screen_l"].get<double>());
  for (const auto& purchase : json["buy"]) encloses(purchase["range"]["short_l"], purchase["short_l"].get<double>());
  for (const auto& lift : json["lifts"]) encloses(lift["range"]["mass_kg"], lift["mass_kg"].get<double>());
  CHECK(json["may_buy"].is_array());
  CHECK_FALSE(run({"batch", examples + "day.json", "--json"}).json().contains("may_buy"));
  const auto season = run({"batch", examples + "season.json", "--json", "--range"}).json();
  for (const auto& one : season["mixes"]) encloses(one["range"]["needed_l"], one["needed_l"].get<double>());
}
