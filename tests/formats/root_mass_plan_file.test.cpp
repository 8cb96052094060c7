#include "gritwright/formats/root_mass_plan_file.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "support/random_pots.hpp"

using namespace gritwright;

namespace {

std::string plan_with(const std::string& more, const std::string& block = R"({"form":"box","length_cm":24,"width_cm":18,"height_cm":8})") {
  return R"({"format":"gritwright/root-mass-plan/1","group":"conifer","block":)" + block +
         R"(,"pot":{"shape":"rectangular","rim":{"length_cm":30,"width_cm":22},"depth_cm":7})" + more + "}";
}

std::vector<std::string> refusals(const std::string& text) {
  std::vector<std::string> told;
  const auto file = read_root_mass_plan(text, "file", {});
  for (const Problem& problem : file.problems()) told.push_back(problem.code + " " + problem.where.pointer);
  return told;
}

using Told = std::vector<std::string>;

}  // namespace

TEST_CASE("A plan says no more than it must", "[root_plan]") {
  const auto file = read_root_mass_plan(plan_with(""), "file", {});
  REQUIRE(file);
  const RootMassPlan& plan = file->plan;
  CHECK(plan.group == SpeciesGroup::conifer);
  CHECK(in_cm(std::get<BlockBox>(plan.block).height) == 8);
  CHECK_FALSE(plan.trunk_base);
  CHECK_FALSE(plan.side_clearance);
  CHECK_FALSE(plan.permission[0]);
  CHECK(plan.cut_style == CutStyle::wall);
}

TEST_CASE("A block without a form has the inside of its present pot", "[root_plan]") {
  const auto file = read_root_mass_plan(plan_with("", R"({"pot":{"shape":"round","rim":{"diameter_cm":20},"depth_cm":8}})"), "file", {});
  REQUIRE(file);
  CHECK(std::get<AsPresentPot>(file->plan.block).pot.shape == Shape::round);
}

TEST_CASE("A plan with every fault is refused with each at its place", "[root_plan][refuses]") {
  CHECK(refusals(plan_with(R"(,"pose":{"tip_deg":91})")) == Told{"root-plan.angle-range /pose/tip_deg"});
  CHECK(refusals(plan_with(R"(,"pose":{"right_cm":16},"trunk_base":{"right_cm":-13,"up_cm":7})")) ==
        Told{"root-plan.trunk-base-outside /trunk_base/right_cm", "root-plan.trunk-base-outside /pose/right_cm"});
  CHECK(refusals(plan_with(R"(,"clearance":{"side_cm":11,"below_cm":7})")) ==
        Told{"root-plan.clearance-too-large /clearance/side_cm", "root-plan.clearance-too-large /clearance/below_cm"});
  CHECK(refusals(plan_with("", R"({"form":"box","length_cm":-24,"width_cm":18,"height_cm":8})")) ==
        Told{"root-plan.length-not-positive /block/length_cm"});
  CHECK(refusals(plan_with("", R"({"form":"cube","length_cm":24,"width_cm":18,"height_cm":8})")) == Told{"record.unknown-word /block/form"});
  CHECK(refusals(plan_with("", R"({"form":"present-pot"})")) == Told{"key.missing /block"});
  CHECK(refusals(plan_with("", "7")) == Told{"value.wrong-kind /block"});
  CHECK(refusals(plan_with(R"(,"permission":{"top_cm":-1,"roof_cm":2})")) == Told{"key.unknown /permission/roof_cm"});
  CHECK(refusals(plan_with(R"(,"permission":{"top_cm":-1})")) == Told{"root-plan.length-negative /permission/top_cm"});
  CHECK(refusals(plan_with(R"(,"cut_order":["up","sideways"])")) == Told{"record.unknown-word /cut_order/1"});
  CHECK(refusals(plan_with(R"(,"cut_order":["up","up"])")) == Told{"root-plan.direction-twice /cut_order/1"});
  CHECK(refusals(plan_with(R"(,"combed":[{"depth_cm":2}])")) == Told{"key.missing /combed/0"});
  CHECK(refusals(plan_with(R"(,"combed":[{"face":"left","depth_cm":12.5}])")) == Told{"root-plan.combed-past-middle /combed/0/depth_cm"});
  CHECK(refusals(plan_with(R"(,"stopped":[{"direction":"top","depth_cm":2}])")) == Told{"record.unknown-word /stopped/0/direction"});
  CHECK(refusals(plan_with(R"(,"bare_root":true)")) == Told{"root-plan.conifer-bare-root /bare_root"});
  CHECK(refusals(plan_with(R"(,"interval_years":2.5)")) == Told{"record.not-whole /interval_years"});
  CHECK(refusals(plan_with(R"(,"free_pots":[{"shape":"round","rim":{"diameter_cm":-3},"depth_cm":8}])")) ==
        Told{"container.length-not-positive /free_pots/0/rim/diameter_cm"});
}

TEST_CASE("A plan of no group, or of an unknown one, is refused", "[root_plan][refuses]") {
  std::string text = plan_with("");
  CHECK(refusals(text.replace(text.find("conifer"), 7, "heather")) == Told{"root-plan.unknown-group /group"});
  text = plan_with("");
  CHECK(refusals(text.erase(text.find("\"group\":\"conifer\","), 18)) == Told{"key.missing "});
}

TEST_CASE("Random plans are the same after writing and reading", "[root_plan][roundtrip]") {
  test::RandomPots random(Catch::rngSeed());
  const auto tenths = [&](double low, double high) { return std::round(random.between(low, high) * 10) / 10; };
  for (const Shape shape : test::RandomPots::shapes) {
    for (int i = 0; i < 20; ++i) {
      RootMassPlan plan;
      plan.name = "Tree " + std::to_string(i);
      plan.group = species_groups[static_cast<std::size_t>(i) % species_groups.size()];
      plan.pot = random.container(shape);
      if (random.chance(0.5))
        plan.block = AsPresentPot{random.container(shape)};
      else
        plan.block = BlockBox{BlockForm::rounded, length_cm(tenths(10, 40)), length_cm(tenths(8, 30)), length_cm(tenths(4, 12)), 3.5};
      if (random.chance(0.5)) plan.trunk_base = TreePoint{length_cm(tenths(-3, 3)), length_cm(0), length_cm(tenths(2, 9))};
      plan.pose.turn = angle_deg(tenths(-90, 90));
      plan.pose.tip = angle_deg(tenths(10, 60));
      plan.pose.tip_toward = angle_deg(tenths(0, 360));
      if (random.chance(0.5)) plan.pose.right = length_cm(tenths(-3, 3));
      if (random.chance(0.5)) plan.pose.trunk_base = depth_cm(tenths(3, 9));
      plan.turn_most = angle_deg(tenths(0, 20));
      if (random.chance(0.5)) plan.tip_least = angle_deg(tenths(0, 9));
      plan.trunk_height_least = depth_cm(tenths(0, 1));
      if (random.chance(0.5)) plan.below_clearance = length_cm(tenths(0.1, 0.5));
      plan.permission[static_cast<std::size_t>(random.between(0, 5.99))] = length_cm(tenths(0, 4));
      if (random.chance(0.5)) plan.cut_order = {Direction::down, Direction::left};
      if (random.chance(0.5)) plan.cut_style = CutStyle::straight;
      if (random.chance(0.5)) plan.combed = {{Face::bottom, length_cm(1)}};
      if (random.chance(0.5)) plan.stopped = {{Direction::up, length_cm(tenths(0, 3))}};
      if (random.chance(0.5)) plan.working_depth = length_cm(tenths(0.3, 2));
      plan.displaced = pot_ml(tenths(0, 200));
      if (random.chance(0.5)) plan.removed_most = 0.4;
      if (random.chance(0.5)) plan.interval_years = 3;
      plan.bare_rooted_last_time = random.chance(0.5);
      if (random.chance(0.3)) plan.free_pots = {random.container(Shape::oval)};
      if (!check(plan).empty()) continue;
      const std::string text = write_root_mass_plan(plan);
      const auto back = read_root_mass_plan(text, "file", {});
      INFO(text << (back ? "" : back.problems().front().code + back.problems().front().where.pointer));
      REQUIRE(back);
      CHECK(write_root_mass_plan(back->plan) == text);
      CHECK(back->plan.permission == plan.permission);
      CHECK(back->plan.cut_order == plan.cut_order);
      CHECK(back->plan.block.index() == plan.block.index());
    }
  }
}
