#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;

namespace {

/// A shelf of two invented bags and whatever wishes.
std::string problem(const std::string& wishes, const std::string& more = "") {
  return R"({"format":"gritwright/design/1","candidates":[
    {"name":"fine","bulk_density_g_l":700,"particle_density_g_l":1300,"skeletal_density_g_l":2600,"cec_meq_100g":10,"price_per_l":0.5,
     "grading":[{"aperture_mm":1,"passing":3},{"aperture_mm":2,"passing":80},{"aperture_mm":4,"passing":100}]},
    {"name":"coarse","bulk_density_g_l":500,"particle_density_g_l":950,"skeletal_density_g_l":2600,"family":"pumice",
     "grading":[{"aperture_mm":2,"passing":1},{"aperture_mm":4,"passing":20},{"aperture_mm":6.3,"passing":100}]}],
   "pots":{"a":{"shape":"rectangular","rim":{"length_cm":30,"width_cm":20},"depth_cm":5}},)" +
         more + R"("wishes":[)" + wishes + "]}";
}

}  // namespace

TEST_CASE("design ranks recipes in parts and counts the whole space", "[cli][design]") {
  const Answer answer = run({"design", "-", "--json"}, problem(R"({"band":{"from_mm":2,"to_mm":6.3},"least":60},
    {"air_filled_porosity":"a","least":0.1,"hard":true},{"share":"pumice","most":0.8})"));
  REQUIRE(answer.exit == Exit::done);
  const auto json = answer.json();
  REQUIRE_FALSE(json["recipes"].empty());
  const auto& best = json["recipes"][0];
  CHECK(best["parts"].size() == 2);
  CHECK(best["parts"][0].is_number_integer());
  CHECK(best["shares"].size() == 2);
  CHECK(best["mix"]["pots"]["a"]["depth_cm"] == 5);
  CHECK(best["mix"]["mass_shares"].size() == 2);
  CHECK(json["proven"] == true);
  // Two candidates, up to 12 parts: 1:0, 0:1 and every pair without a common divisor.
  CHECK(json["examined"].get<int>() + json["excluded"].get<int>() == 47);
  CHECK(json["nearest"].is_null());
  CHECK(json["contradictions"].empty());
}

TEST_CASE("design gives the same answer on any number of threads", "[cli][design]") {
  const std::string input = problem(R"({"finer_than_mm":2,"most":30},{"container_capacity":"a","least":0.4},{"cec_meq_l":true,"least":20})");
  CHECK(run({"design", "-", "--json", "--threads", "1"}, input).out == run({"design", "-", "--json", "--threads", "2"}, input).out);
}

TEST_CASE("design exits with 5 where hard wishes contradict each other, and prints which and the nearest recipe", "[cli][design]") {
  const std::string input = problem(R"({"finer_than_mm":2,"most":30,"hard":true},{"finer_than_mm":2,"least":50,"hard":true})");
  const Answer answer = run({"design", "-", "--json"}, input);
  CHECK(answer.exit == Exit::no_solution);
  const auto json = answer.json();
  CHECK(json["recipes"].empty());
  CHECK(json["contradictions"] == nlohmann::json::parse("[[0,1]]"));
  CHECK(json["nearest"]["parts"].size() == 2);
  CHECK(json["nearest"]["violations"].size() == 2);
  const Answer text = run({"design", "-"}, input);
  CHECK(text.exit == Exit::no_solution);
  CHECK(text.out.find("cannot hold together") != std::string::npos);
  // Between shares a distance is points: "by 10 %" would be a part of the share.
  const std::size_t miss = text.out.find("    misses ");
  REQUIRE(miss != std::string::npos);
  const std::string line = text.out.substr(miss, text.out.find('\n', miss) - miss);
  CHECK(line.substr(line.find(" by ")).find(" points") != std::string::npos);
}

TEST_CASE("design names a hard wish that no candidate touches on standard error", "[cli][design]") {
  const Answer answer = run({"design", "-", "--json"}, problem(R"({"band":{"from_mm":4,"to_mm":6.3},"least":90,"hard":true})"));
  CHECK(answer.exit == Exit::no_solution);
  CHECK(answer.err.find("/wishes/0") != std::string::npos);
  CHECK(answer.json()["contradictions"] == nlohmann::json::parse("[[0]]"));
}

TEST_CASE("design keeps to the stock on hand with shrinkage", "[cli][design]") {
  std::string input = problem(R"({"share":"fine","least":0.5,"most":0.5,"hard":true})", R"("need_l":10,)");
  const auto loose = run({"design", "-", "--json"}, input);
  REQUIRE(loose.exit == Exit::done);
  // 1:1 of two sizes shrinks, so ten litres need more than five of each.
  CHECK(loose.json()["recipes"][0]["mix"]["shrinkage_percent"].get<double>() > 1);
  input.replace(input.find("\"price_per_l\":0.5"), 0, "\"stock_l\":5,");
  CHECK(run({"design", "-", "--json"}, input).exit == Exit::no_solution);
}

TEST_CASE("design refuses problems that cannot be searched, each fault at its place", "[cli][design][refuses]") {
  const auto refused = [](const std::string& input, const std::string& place, const std::string& words = {}) {
    const Answer answer = run({"design", "-", "--json"}, input);
    INFO(answer.err);
    CHECK(answer.exit == Exit::input_refused);
    CHECK(answer.out.empty());
    CHECK(answer.err.find(place) != std::string::npos);
    CHECK(answer.err.find(words) != std::string::npos);
  };
  refused(R"({"format":"gritwright/design/1","candidates":[],"wishes":[]})", "#/candidates:", "there is nothing to mix; expected 1 to 40 candidates");
  refused(problem("", R"("parts":{"components":0},)"), "#/parts/components", "expected 1 to 6");
  refused(problem("", R"("parts":{"total":0},)"), "#/parts/total", "expected 1 to 20");
  refused(problem("", R"("parts":{"total":2.5},)"), "#/parts/total");
  refused(problem("", R"("need_l":0,)"), "#/need_l");
  refused(problem(R"({"finer_than_mm":2,"least":60,"most":40})"), "#/wishes/0/most", "the limits run from 60 down to 40");
  refused(problem(R"({"limits":[{"aperture_mm":2,"low":60,"high":40}]})"), "#/wishes/0/limits/0/high", "the limits run from 60 down to 40");
  refused(problem(R"({"band":{"from_mm":6,"to_mm":2},"least":60})"), "#/wishes/0/band");
  refused(problem(R"({"air_filled_porosity":"b","least":0.2})"), "#/wishes/0/air_filled_porosity");
  refused(problem(R"({"share":"lava","least":0.2})"), "#/wishes/0/share");
  refused(problem(R"({"least":0.2})"), "#/wishes/0");
  refused(problem(R"({"finer_than_mm":2})"), "#/wishes/0");
  refused(problem(R"({"finer_than_mm":2,"most":5,"colour":1})"), "#/wishes/0/colour");
  refused(problem(R"({"finer_than_mm":2,"share":"fine","most":0.5})"), "#/wishes/0");
  refused(problem(R"({"cec_meq_l":false,"least":5})"), "#/wishes/0/cec_meq_l");
  refused(problem(R"({"finer_than_mm":0.1,"most":5})"), "#/wishes/0/finer_than_mm", "no candidate was tested at 0.1 mm, and the curves are not extrapolated; sieve one of them there");
  std::string negative = problem("");
  negative.replace(negative.find("\"price_per_l\":0.5"), 0, "\"stock_l\":-1,");
  refused(negative, "#/candidates/0/stock_l", "a stock of -1 L can't be; expected 0 or more");
  std::string empty_shelf = problem("", R"("need_l":5,)");
  empty_shelf.replace(empty_shelf.find("\"price_per_l\":0.5"), 0, "\"stock_l\":0,");
  empty_shelf.replace(empty_shelf.find("\"family\""), 0, "\"stock_l\":0,");
  refused(empty_shelf, "#/candidates:", "the stock of every candidate is 0, so all are excluded");
  std::string many = R"({"format":"gritwright/design/1","candidates":[)";
  for (int i = 0; i < 41; ++i) many += std::string(i == 0 ? "" : ",") + R"({"name":"a","bulk_density_g_l":500,"class_mm":4})";
  refused(many + R"(],"wishes":[]})", "#/candidates:", "there are 41 candidates; leave some out, at most 40 are searched");
}
