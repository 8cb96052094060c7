#include "gritwright/domain/component.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

GrainProperties porous_grain() {
  GrainProperties grain;
  grain.bulk_density = bulk_g_l(450);
  grain.particle_density = particle_g_l(900);
  grain.skeletal_density = skeletal_g_l(2350);
  grain.water_absorption = WaterAbsorption(0.40);
  return grain;
}

Grading sound_grading() {
  return {{{aperture_mm(1), passing_percent(5)}, {aperture_mm(2), passing_percent(40)}, {aperture_mm(4), passing_percent(100)}}, {}, {}};
}

bool has(const Problems& problems, const std::string& code, const std::string& pointer) {
  return std::ranges::any_of(problems, [&](const Problem& each) { return each.code == code && each.where.pointer == pointer; });
}

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

}  // namespace

TEST_CASE("The dry bulk density leaves out the water that was weighed along", "[component][law]") {
  GrainProperties grain = porous_grain();
  grain.bulk_density = bulk_g_l(540);
  grain.bulk_moisture = Moisture(0.20);
  CHECK_THAT(in_g_l(dry_bulk_density(grain)), WithinAbs(450, 1e-9));
}

TEST_CASE("Sound grain, gradings and components have no problems", "[component][law]") {
  CHECK(check(porous_grain()).empty());
  CHECK(check(sound_grading()).empty());
  CHECK(check(Component{"a", Parts(0), porous_grain(), sound_grading(), {}}).empty());
  CHECK(check(Component{"a", Parts(1), porous_grain(), SingleSize{aperture_mm(4)}, {}}).empty());
  GrainProperties solid = porous_grain();
  solid.skeletal_density = skeletal_g_l(900);
  solid.water_absorption.reset();
  CHECK(check(solid).empty());
}

TEST_CASE("Grain is refused where its densities are out of order", "[component][refuses]") {
  GrainProperties grain = porous_grain();
  grain.bulk_density = bulk_g_l(950);
  CHECK(has(check(grain), "component.bulk-above-particle", "/bulk_density_g_l"));
  grain.bulk_moisture = Moisture(0.2);  // 792 g/L dry
  CHECK(check(grain).empty());

  grain = porous_grain();
  grain.particle_density = particle_g_l(2400);
  CHECK(has(check(grain), "component.particle-above-skeletal", "/particle_density_g_l"));

  grain = porous_grain();
  grain.particle_density.reset();
  grain.skeletal_density = skeletal_g_l(400);
  CHECK(has(check(grain), "component.bulk-above-skeletal", "/bulk_density_g_l"));
}

TEST_CASE("Grain is refused where it takes up more water than it has pores", "[component][refuses]") {
  GrainProperties grain = porous_grain();  // pores 1 - 900/2350 = .617, .69 kg/kg would fill them
  grain.water_absorption = WaterAbsorption(0.69);
  CHECK(has(check(grain), "component.absorption-above-pores", "/water_absorption"));
  grain.skeletal_density.reset();
  CHECK(check(grain).empty());
  grain.water_absorption = WaterAbsorption(1.2);
  CHECK(has(check(grain), "component.absorption-above-pores", "/water_absorption"));
}

TEST_CASE("All figures of a grain that cannot be are named at once", "[component][refuses]") {
  GrainProperties grain;
  grain.bulk_density = bulk_g_l(0);
  grain.particle_density = particle_g_l(not_a_number);
  grain.skeletal_density = skeletal_g_l(-1);
  grain.bulk_moisture = Moisture(-0.1);
  grain.open_share = OpenShare(1.1);
  grain.water_absorption = WaterAbsorption(-1);
  grain.cation_exchange = CationExchange(-1);
  const Problems problems = check(grain);
  CHECK(has(problems, "component.density-not-positive", "/bulk_density_g_l"));
  CHECK(has(problems, "component.density-not-positive", "/particle_density_g_l"));
  CHECK(has(problems, "component.density-not-positive", "/skeletal_density_g_l"));
  CHECK(has(problems, "component.moisture-range", "/bulk_moisture_percent"));
  CHECK(has(problems, "component.open-share-range", "/open_share"));
  CHECK(has(problems, "component.absorption-negative", "/water_absorption"));
  CHECK(has(problems, "component.cec-negative", "/cec_meq_100g"));
  CHECK(problems.size() == 7);
}

TEST_CASE("A grading is refused where openings or passing run the wrong way", "[component][refuses]") {
  CHECK(has(check(Grading{}), "grading.empty", "/grading"));

  Grading grading = sound_grading();
  grading.points[1].aperture = aperture_mm(1);
  CHECK(has(check(grading), "grading.aperture-order", "/grading"));

  grading = sound_grading();
  grading.points[1].passing = passing_percent(3);
  CHECK(has(check(grading), "grading.passing-falls", "/grading"));

  grading = sound_grading();
  grading.points[0] = {aperture_mm(0), passing_percent(-1)};
  grading.points[2].passing = Passing(not_a_number);
  const Problems problems = check(grading);
  CHECK(has(problems, "grading.aperture-not-positive", "/grading"));
  CHECK(std::ranges::count(problems, "grading.passing-out-of-range", &Problem::code) == 2);
}

TEST_CASE("The sizes that stand for pan and top class have to lie beyond the sieves", "[component][refuses]") {
  Grading grading = sound_grading();
  grading.pan_size = aperture_mm(1.5);
  grading.top_size = aperture_mm(4);
  const Problems problems = check(grading);
  CHECK(has(problems, "grading.pan-size-range", "/pan_size_mm"));
  CHECK(has(problems, "grading.top-size-range", "/top_size_mm"));
  grading.pan_size = aperture_mm(0.2);
  grading.top_size = aperture_mm(4.5);
  CHECK(check(grading).empty());
}

TEST_CASE("A component is refused with negative parts or a size of nothing", "[component][refuses]") {
  const Problems problems = check(Component{"a", Parts(-1), porous_grain(), SingleSize{aperture_mm(0)}, {}});
  CHECK(has(problems, "component.parts-negative", "/parts"));
  CHECK(has(problems, "component.size-not-positive", "/class_mm"));
}
