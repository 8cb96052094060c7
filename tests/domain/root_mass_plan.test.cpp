#include "gritwright/domain/root_mass_plan.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace gritwright;

namespace {

RootMassPlan sound_plan() {
  RootMassPlan plan;
  plan.block = BlockBox{BlockForm::box, length_cm(20), length_cm(14), length_cm(6), {}};
  plan.pot.rim = {length_cm(30), length_cm(20)};
  plan.pot.depth = depth_cm(8);
  return plan;
}

std::string first_code(const RootMassPlan& plan) {
  const Problems problems = check(plan);
  REQUIRE(problems.size() == 1);
  return problems.front().code;
}

}  // namespace

TEST_CASE("A sound root-mass plan has no faults", "[root_mass_plan]") { CHECK(check(sound_plan()).empty()); }

TEST_CASE("A root mass larger than its cells can be counted is refused", "[root_mass_plan][refuses]") {
  RootMassPlan plan = sound_plan();
  std::get<BlockBox>(plan.block).length = length_cm(1'000'000);
  CHECK(first_code(plan) == "container.length-too-large");
}

TEST_CASE("A root-mass plan refuses lengths, angles and shares that can't be", "[root_mass_plan][refuses]") {
  RootMassPlan plan = sound_plan();
  std::get<BlockBox>(plan.block).width = length_cm(0);
  CHECK(first_code(plan) == "root-plan.length-not-positive");
  plan = sound_plan();
  plan.pose.tip = angle_deg(90.5);
  CHECK(first_code(plan) == "root-plan.angle-range");
  plan = sound_plan();
  plan.tip_least = angle_deg(10);
  CHECK(first_code(plan) == "root-plan.tip-least-above-tip");
  plan = sound_plan();
  plan.below_clearance = length_cm(8);
  CHECK(first_code(plan) == "root-plan.clearance-too-large");
  plan = sound_plan();
  plan.permission[0] = length_cm(-1);
  CHECK(first_code(plan) == "root-plan.length-negative");
  plan = sound_plan();
  plan.combed = {{Face::top, length_cm(3.1)}};
  CHECK(first_code(plan) == "root-plan.combed-past-middle");
  plan = sound_plan();
  plan.cut_order = {Direction::up, Direction::up};
  CHECK(first_code(plan) == "root-plan.direction-twice");
  plan = sound_plan();
  plan.bare_root = true;
  CHECK(first_code(plan) == "root-plan.conifer-bare-root");
  plan.group = SpeciesGroup::tropical;
  CHECK(check(plan).empty());
}

TEST_CASE("Faults of the containers are told at their place in the plan", "[root_mass_plan][refuses]") {
  RootMassPlan plan = sound_plan();
  plan.pot.depth = depth_cm(0);
  plan.free_pots.push_back(plan.pot);
  const Problems problems = check(plan);
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].where.pointer == "/pot/depth_cm");
  CHECK(problems[1].where.pointer == "/free_pots/0/depth_cm");
}

TEST_CASE("Every group has a name that leads back to it", "[species_group][roundtrip]") {
  for (const SpeciesGroup group : species_groups) {
    CHECK(species_group_named(group_defaults(group).name) == group);
    CHECK(group_defaults(group).group == group);
  }
  CHECK_FALSE(species_group_named("palm"));
}
