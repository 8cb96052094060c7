#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;
using Catch::Matchers::WithinAbs;

namespace {

/// Straight pot 30 x 22 x 7 cm, clearances 1 cm; a box of the group's least trouble.
std::string plan_of(const std::string& block, const std::string& more = "") {
  return R"({"format":"gritwright/root-mass-plan/1","group":"deciduous-developing","block":{"form":"box",)" + block +
         R"(},"clearance":{"side_cm":1,"below_cm":1},"pot":{"shape":"rectangular","rim":{"length_cm":30,"width_cm":22},"depth_cm":7})" + more + "}";
}
const std::string fitting = R"("length_cm":20,"width_cm":14,"height_cm":6)";
const std::string deep = R"("length_cm":20,"width_cm":14,"height_cm":8)";

}  // namespace

TEST_CASE("roots fills the pot around a root mass that fits", "[cli][roots]") {
  const Answer answer = run({"roots", "-", "--json"}, plan_of(fitting));
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  CHECK(json["limitations"].empty());
  CHECK(json["corners_share"] == 0);
  REQUIRE(json["plans"].size() == 1);
  const auto& plan = json["plans"][0];
  CHECK(plan["name"] == "A");
  CHECK(plan["cuts"].empty());
  CHECK_THAT(plan["removed_share"].get<double>(), WithinAbs(0, 1e-12));
  CHECK_THAT(plan["fill_ml"].get<double>(), WithinAbs(30 * 22 * 7 - 20 * 14 * 6, 1e-6));
  CHECK(json["stop_table"].empty());
  CHECK(json["smallest_growth"].is_null());
}

TEST_CASE("roots names every key of its answer", "[cli][roots]") {
  const auto json = run({"roots", "-", "--json", "--explain"}, plan_of(deep, R"(,"permission":{"bottom_cm":1},"pose":{"trunk_base_cm":8})")).json();
  for (const char* key : {"limitations", "corners_share", "plans", "stop_table", "notes", "explanations"}) CHECK(json.contains(key));
  for (const char* key : {"name", "offset_cm", "turn_deg", "tip_deg", "tip_toward_deg", "cuts", "combed", "untouched_share", "removed_share",
                          "trunk_base_cm", "soil_line_cm", "shoulder_cm", "fill_ml", "sphagnum_ml", "cautions"})
    CHECK(json["plans"][0].contains(key));
  REQUIRE_FALSE(json["stop_table"].empty());
  for (const char* key : {"stops_at_cm", "below_cm", "trunk_base_cm", "untouched_share", "fill_ml"}) CHECK(json["stop_table"][0].contains(key));
  CHECK(json["limitations"][0].contains("direction"));
  CHECK(json["limitations"][0].contains("excess_cm"));
  CHECK(json["plans"][0]["cuts"][0].contains("face"));
}

TEST_CASE("roots works out the rest anew where the bench stopped", "[cli][roots]") {
  // Top stands 2 cm over the fill line and can give 2; stopped at 1 the tree sinks by the rest and the bottom pays.
  const std::string input = plan_of(R"("length_cm":20,"width_cm":14,"height_cm":7)", R"(,"trunk_base":{"up_cm":6},"pose":{"trunk_base_cm":8})");
  const auto planned = run({"roots", "-", "--json"}, input).json()["plans"][0];
  CHECK(planned["cuts"][0]["direction"] == "up");
  CHECK_THAT(planned["cuts"][0]["cm"].get<double>(), WithinAbs(2, 1e-6));
  const auto stopped = run({"roots", "-", "--json", "--stopped", "up=1"}, input).json()["plans"][0];
  REQUIRE(stopped["cuts"].size() == 1);
  CHECK_THAT(stopped["cuts"][0]["cm"].get<double>(), WithinAbs(1, 1e-6));
  CHECK_THAT(stopped["trunk_base_cm"].get<double>(), WithinAbs(7, 1e-6));
  CHECK(run({"roots", "-", "--stopped", "up"}, input).exit == Exit::wrong_usage);
}

TEST_CASE("roots exits with 5 where permissions leave no plan, and names the pot that would do", "[cli][roots]") {
  const std::string forbidden = R"(,"permission":{"top_cm":0,"bottom_cm":0,"left_cm":0,"right_cm":0,"front_cm":0,"back_cm":0})";
  const Answer answer = run({"roots", "-", "--json"}, plan_of(R"("length_cm":31,"width_cm":14,"height_cm":6)", forbidden));
  CHECK(answer.exit == Exit::no_solution);
  const auto json = answer.json();
  CHECK(json["plans"][0]["fits"] == false);
  CHECK_THAT(json["smallest_growth"]["length_cm"].get<double>(), WithinAbs(3, 0.1));
}

TEST_CASE("roots exits with 5 where a root mass is larger than any plan can fit, and stages what the group alone does not bear", "[cli][roots]") {
  const Answer hopeless = run({"roots", "-", "--json"}, plan_of(R"("length_cm":100,"width_cm":80,"height_cm":40)"));
  CHECK(hopeless.exit == Exit::no_solution);
  CHECK(hopeless.out.find("root-plan.larger-than-any-plan") != std::string::npos);
  const Answer staged = run({"roots", "-", "--json"}, plan_of(R"("length_cm":20,"width_cm":14,"height_cm":15)"));
  CHECK(staged.exit == Exit::done);
  CHECK(staged.json()["plans"][0]["rungs"].back() == "staging");
  CHECK(run({"roots", "-", "--strict"}, plan_of(R"("length_cm":20,"width_cm":14,"height_cm":15)")).exit == Exit::strict_warnings);
}

TEST_CASE("roots tells what the new mix alone holds, with its share of the pot", "[cli][roots]") {
  const std::string mix = std::string(GRITWRIGHT_SOURCE_DIR) + "/demo-data/mixes/junipers.json";
  const auto json = run({"roots", "-", "--json", "--mix", mix}, plan_of(fitting)).json();
  const auto& filling = json["mix"];
  CHECK_THAT(filling["share_of_pot"].get<double>(), WithinAbs(1 - 20.0 * 14 * 6 / (30 * 22 * 7), 1e-6));
  CHECK(filling["air_filled_porosity"].get<double>() > 0);
  CHECK(filling["measure_out"].size() == 3);
  const Answer text = run({"roots", "-", "--mix", mix}, plan_of(fitting));
  CHECK(text.out.find("new mix only, 64 % of the pot") != std::string::npos);
}

TEST_CASE("roots prints the stop table and both names of each cut", "[cli][roots]") {
  const Answer answer = run({"roots", "-"}, plan_of(R"("length_cm":20,"width_cm":14,"height_cm":7)", R"(,"trunk_base":{"up_cm":6},"pose":{"trunk_base_cm":8})"));
  CHECK(answer.out.find("the old top (up)") != std::string::npos);
  CHECK(answer.out.find("if the upper surface stops") != std::string::npos);
  CHECK(run({"roots", "-", "--units", "us"}, plan_of(deep)).out.find(" in ") != std::string::npos);
}

TEST_CASE("roots refuses what no plan can be, each fault at its place", "[cli][roots][refuses]") {
  const auto refused = [](const std::string& input, const std::string& place) {
    const Answer answer = run({"roots", "-", "--json"}, input);
    INFO(answer.err);
    CHECK(answer.exit == Exit::input_refused);
    CHECK(answer.out.empty());
    CHECK(answer.err.find(place) != std::string::npos);
  };
  refused(plan_of(R"("length_cm":20,"width_cm":-14,"height_cm":6)"), "#/block/width_cm");
  refused(plan_of(fitting, R"(,"pose":{"tip_deg":91})"), "#/pose/tip_deg");
  refused(plan_of(fitting, R"(,"clearence":{})"), "#/clearence");
  std::string groupless = plan_of(fitting);
  groupless.erase(groupless.find("\"group\""), std::string("\"group\":\"deciduous-developing\",").size());
  refused(groupless, "group");
}

TEST_CASE("roots tells the corners that a curved wall takes off, as a step and in JSON", "[cli][roots]") {
  // The area of an ellipse over its rectangle is pi/4.
  const std::string input = R"({"format":"gritwright/root-mass-plan/1","group":"conifer","block":{"form":"box","length_cm":24,"width_cm":18,"height_cm":5},)"
                            R"("clearance":{"side_cm":0,"below_cm":1},"pot":{"shape":"oval","rim":{"length_cm":24,"width_cm":18},"depth_cm":7}})";
  const auto json = run({"roots", "-", "--json"}, input).json();
  CHECK(json["plans"].size() == 3);
  const auto& plan = json["plans"][0];
  CHECK(plan["rungs"] == nlohmann::json::array({"corners"}));
  REQUIRE(plan["shaved"].size() == 4);
  double share = 0;
  for (const auto& corners : plan["shaved"]) {
    share += corners["share"].get<double>();
    CHECK(corners["face"] == corners["direction"]);
    CHECK_THAT(corners["cm"].get<double>(), WithinAbs(3.0255, 0.05));
  }
  CHECK_THAT(share, WithinAbs(1 - 0.785398, 0.001));
  const Answer text = run({"roots", "-"}, input);
  CHECK(text.out.find("1. round off the corners along the wall, 21.") != std::string::npos);
  CHECK(text.out.find("the old left (left) up to 3.0 cm") != std::string::npos);
  CHECK(text.out.find("fits as it is") == std::string::npos);
  CHECK(text.out.find("never all sides") != std::string::npos);
}

TEST_CASE("roots gives back the angles that were typed", "[cli][roots]") {
  const Answer answer = run({"roots", "-", "--json"}, plan_of(fitting, R"(,"pose":{"turn_deg":33.3,"tip_deg":0.7,"tip_toward_deg":60},"tip_least_deg":0.7)"));
  CHECK(answer.out.find("\"tip_toward_deg\": 60.0") != std::string::npos);
  CHECK(answer.out.find("\"turn_deg\": 33.3,") != std::string::npos);
}
