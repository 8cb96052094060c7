#include <catch2/catch.hpp>
#include <string>

#include "run.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::string example_day = std::string(GRITWRIGHT_SOURCE_DIR) + "/docs/file-format/examples/day.json";
const std::string season_example = std::string(GRITWRIGHT_SOURCE_DIR) + "/docs/file-format/examples/season.json";

/// An invented day of one grain, with whatever else.
std::string day(const std::string& trees, const std::string& more = "") {
  return R"({"format":"gritwright/day/1","mixes":{"m":{"components":[{"name":"g","parts":1,"bulk_density_g_l":700,"particle_density_g_l":1300,"class_mm":4}],
    "settling":0.08,"spill":0.05}},)" +
         more + R"("trees":[)" + trees + "]}";
}
const std::string two_trees = R"({"name":"a","mix":"m","fill_ml":3000,"worse_fill_ml":[3400]},{"name":"b","mix":"m","fill_ml":1600,"worse_fill_ml":[2200]})";

}  // namespace

TEST_CASE("batch adds up the litres of a day", "[cli][batch]") {
  const Answer answer = run({"batch", "-", "--json"}, day(two_trees, R"("stock":[{"bag":"K-07","component":"g","stock_l":4,"yield":0.8,"bag_l":5,"price":9}],)"));
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  const auto& mix = json["mixes"][0];
  CHECK(mix["name"] == "m");
  // By hand: (3.0 + 1.6 + .4 + .6)/(.92 · .95).
  CHECK_THAT(mix["needed_l"].get<double>(), WithinAbs(6.407323, 1e-6));
  CHECK_THAT(mix["components"][0]["loose_l"].get<double>(), WithinAbs(6.407323, 1e-6));
  CHECK_THAT(mix["components"][0]["mass_kg"].get<double>(), WithinAbs(6.407323 * 0.7, 1e-6));
  CHECK(json["raw"][0]["bag"] == "K-07");
  CHECK_THAT(json["raw"][0]["screen_l"].get<double>(), WithinAbs(4, 1e-9));
  CHECK_THAT(json["raw"][0]["yield"].get<double>(), WithinAbs(0.8, 1e-12));
  // 6.407323 - 3.2 = 3.207323 L of ready grain, 4.009 L raw: one bag of 5 L.
  CHECK(json["buy"][0]["bags"] == 1);
  CHECK(json["buy"][0]["cost"] == 9);
  CHECK(json["lifts"][0]["what"] == "a");
  CHECK(json["lifts"][0]["complete"] == false);
  CHECK_FALSE(json["lifts"][0]["missing"].empty());
}

TEST_CASE("batch gives its example's figures in text and JSON, with what stands behind them", "[cli][batch]") {
  const Answer text = run({"batch", example_day, "--explain"});
  REQUIRE(text.exit == Exit::done);
  for (const char* word : {"sheet revision 2", "1. T-02", "batch 1 of 1", "To screen", "Lifts", "at least", "(1 - settling)(1 - spill)"})
    CHECK(text.out.find(word) != std::string::npos);
  CHECK(run({"batch", example_day, "--units", "us"}).out.find(" qt") != std::string::npos);
  const auto json = run({"batch", example_day, "--json", "--explain"}).json();
  CHECK_FALSE(json["explanations"].empty());
  CHECK(json["sheet_revision"] == 2);
  CHECK(json["trees"][0]["name"] == "T-02");
}

TEST_CASE("batch warns of two trees in one pot and adds them up all the same", "[cli][batch]") {
  const std::string pots = R"("pots":{"oval":{"format":"gritwright/container/1","shape":"oval","rim":{"length_cm":30,"width_cm":20},"depth_cm":6}},)";
  const auto trees = [](const std::string& second) { return R"({"name":"a","mix":"m","pot":"oval","fill_ml":3000},{"name":"b","mix":"m","fill_ml":1600)" + second + "}"; };
  const std::string shared = day(trees(R"(,"pot":"oval")"), pots);
  const Answer answer = run({"batch", "-"}, shared);
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  CHECK(answer.out.find("one and the same pot is planned for a, b") != std::string::npos);
  CHECK(run({"batch", "-", "--strict"}, shared).exit == Exit::strict_warnings);
  CHECK(run({"batch", "-"}, day(trees(""), pots)).out.find("one and the same pot") == std::string::npos);
}

TEST_CASE("batch reads a season: what is due, by day, and which bag several days want", "[cli][batch]") {
  const Answer answer = run({"batch", season_example, "--json"});
  INFO(answer.err);
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK(json["due"].size() == 5);
  CHECK(json["days"].size() == 3);
  CHECK(json["days"][2]["date"].is_null());
  CHECK(json["reservations"][0]["bag"] == "A-11");
  CHECK(json["reservations"][0]["runs_out"] == true);
  double needed_l = 0, of_days_l = 0;
  for (const auto& mix : json["mixes"]) needed_l += mix["needed_l"].get<double>();
  for (const auto& each : json["days"])
    for (const auto& mix : each["mixes"]) of_days_l += mix["needed_l"].get<double>();
  CHECK_THAT(needed_l, WithinRel(of_days_l, 1e-12));
  CHECK(run({"batch", season_example}).out.find("Wanted by more than one day") != std::string::npos);
  // Grain promised to another day is a warning.
  CHECK(run({"batch", season_example, "--strict"}).exit == Exit::strict_warnings);
}

TEST_CASE("batch refuses days that cannot be, each fault at its place", "[cli][batch][refuses]") {
  const auto refused = [](const std::string& input, const std::string& place) {
    const Answer answer = run({"batch", "-", "--json"}, input);
    INFO(answer.err);
    CHECK(answer.exit == Exit::input_refused);
    CHECK(answer.out.empty());
    CHECK(answer.err.find(place) != std::string::npos);
  };
  refused(R"({"format":"gritwright/mix/1"})", "#/format");
  refused(day(R"({"name":"a","mix":"n","fill_ml":1})"), "#/trees/0/mix");
  refused(day(R"({"name":"a","mix":"m"})"), "#/trees/0");
  refused(day(R"({"name":"a","mix":"m","fill_ml":-1})"), "#/trees/0/fill_ml");
  refused(day(R"({"name":"a","mix":"m","fill_ml":1,"colour":1})"), "#/trees/0/colour");
  refused(day(R"({"name":"a","mix":"m","fill_ml":1,"group":"shrub"})"), "#/trees/0/group");
  refused(day(R"({"name":"a","mix":"m","fill_ml":1,"worse_fill_ml":["x"]})"), "#/trees/0/worse_fill_ml/0");
  refused(day(R"({"name":"a","mix":"m","fill_ml":1,"interval_years":1.5})"), "#/trees/0/interval_years");
  refused(day(two_trees, R"("stock":[{"bag":"K","stock_l":-1}],)"), "#/stock/0/stock_l");
  refused(day(two_trees, R"("stock":[{"bag":"K","from_mm":2}],)"), "#/stock/0");
  refused(day(two_trees, R"("stock":[{"bag":"K","currency":"EUR"}],)"), "#/stock/0");
  refused(day(two_trees, R"("order":["height"],)"), "#/order/0");
  refused(day(two_trees, R"("checklist":[{"text":"wet","when":"noon"}],)"), "#/checklist/0/when");
  refused(day(two_trees, R"("spill":1,)"), "#/spill");
  refused(day(two_trees, R"("tub_l":0,)"), "#/tub_l");
  refused(day(two_trees, R"("until":"2026-06-30",)"), "#/until");
  refused(R"({"format":"gritwright/season/1","trees":[]})", "until");
  refused(R"({"format":"gritwright/day/1"})", "trees");
  // Two faults, two lines.
  const Answer both = run({"batch", "-"}, day(R"({"name":"a","mix":"n","fill_ml":-1})"));
  CHECK(both.err.find("#/trees/0/mix") != std::string::npos);
  CHECK(both.err.find("#/trees/0/fill_ml") != std::string::npos);
  CHECK(run({"batch", "no such file"}).exit == Exit::file_trouble);
  CHECK(run({"batch"}).exit == Exit::wrong_usage);
}
