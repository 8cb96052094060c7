#include "gritwright/models/kept_pot_tests.hpp"

#include <catch2/catch.hpp>
#include <functional>

#include "gritwright/models/mix_in_pot.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Component tested_component(const char* name, const char* material, double parts, double coarser) {
  Component component;
  component.name = name;
  component.material = material;
  component.parts = Parts(parts);
  component.grain.bulk_density = bulk_g_l(600);
  component.grain.particle_density = particle_g_l(1100);
  component.grain.skeletal_density = skeletal_g_l(2400);
  component.grain.water_absorption = WaterAbsorption(0.3);
  component.sizes = Grading{{{aperture_mm(1 * coarser), Passing(0)}, {aperture_mm(2 * coarser), Passing(0.4)}, {aperture_mm(4 * coarser), Passing(1)}}, {}, {}};
  return component;
}

/// Three parts of one invented grain, two of another.
Mix tested_pines() {
  Mix mix;
  mix.name = "pines";
  mix.components = {tested_component("akadama A-11", "akadama", 3, 1), tested_component("pumice P-03", "pumice", 2, 1)};
  return mix;
}

/// What a pot of straight walls shows of a mix whose k is `k_cm_mm`: a litre, its dry mass by the mix.
KeptPotTest shown_by(const Mix& mix, double k_cm_mm, double deep_cm) {
  const MixState state = mix_state(mix).value();
  RetentionConstants truth;
  truth.k_cm_mm = k_cm_mm;
  const PotWater water = mix_in_column(state, truth, depth_cm(deep_cm)).value();
  const double dry_g = in_g_l(state.settled->bulk_density);
  const auto wet = [&](Porosity share) { return mass_g(dry_g + 1000 * share.value()); };
  return {{pot_ml(1000), PotWeighings{mass_g(0), mass_g(dry_g), wet(water.theta_0), wet(water.container_capacity)}}, depth_cm(deep_cm)};
}

}  // namespace

TEST_CASE("A pot test holds for a mix of the same materials, shares and sizes, whatever its bags are called", "[kept_pot_tests]") {
  const Mix mix = tested_pines();
  const auto changed = [&](const std::function<void(Mix&)>& change) {
    Mix other = mix;
    change(other);
    CHECK(same_recipe(mix, other) == same_recipe(other, mix));
    return same_recipe(mix, other);
  };
  CHECK(changed([](Mix&) {}));
  CHECK(changed([](Mix& other) { other.components[0].name = "akadama A-12"; }));
  CHECK(changed([](Mix& other) { other.name = "pines, shallow"; }));
  CHECK(changed([](Mix& other) { other.settling = Settling(0.1); }));
  CHECK(changed([](Mix& other) { other.components[1].grain.bulk_density = bulk_g_l(640); }));
  CHECK(changed([](Mix& other) { std::swap(other.components[0], other.components[1]); }));
  // Twice as much of all is the same mix; .6 and .4 may become .63 and .37, not .64 and .36.
  CHECK(changed([](Mix& other) { other.components[0].parts = Parts(6), other.components[1].parts = Parts(4); }));
  CHECK(changed([](Mix& other) { other.components[0].parts = Parts(63), other.components[1].parts = Parts(37); }));
  CHECK_FALSE(changed([](Mix& other) { other.components[0].parts = Parts(64), other.components[1].parts = Parts(36); }));
  // A quarter coarser grain is within, a third is another fraction.
  CHECK(changed([](Mix& other) { other.components[0] = tested_component("akadama A-12", "akadama", 3, 1.25); }));
  CHECK_FALSE(changed([](Mix& other) { other.components[0] = tested_component("akadama A-12", "akadama", 3, 1.33); }));
  CHECK_FALSE(changed([](Mix& other) { other.components[1].material = "scoria"; }));
  CHECK_FALSE(changed([](Mix& other) { other.components.push_back(tested_component("kiryu", "kiryu", 0.1, 1)); }));
  // What has no parts is in no mix.
  CHECK(changed([](Mix& other) { other.components.push_back(tested_component("kiryu", "kiryu", 0, 1)); }));
  // Without a material the name tells grains apart.
  CHECK_FALSE(changed([](Mix& other) { other.components[0].material.reset(); }));
}

TEST_CASE("Tests of several versions of a mix are fitted together, each in the grain it was made of", "[kept_pot_tests][law]") {
  const Mix first = tested_pines();
  Mix second = first;
  second.components[0] = tested_component("akadama A-12", "akadama", 3, 1.2);
  REQUIRE(same_recipe(first, second));
  // Both versions have the same k; the coarser one holds less water by its grain.
  KeptPotTest earlier = shown_by(first, 7, 6);
  earlier.of = std::make_shared<const Mix>(first);
  const std::vector tests{earlier, shown_by(second, 7, 6)};
  const TestedMix tested = tested_mix(second, tests).value();
  REQUIRE(tested.calibration.has_value());
  CHECK_THAT(tested.calibration->constants.k_cm_mm, WithinAbs(7, 0.01));
  // Foretold by its own grain, too.
  const auto foretold = mix_in_column(mix_state(first).value(), {}, depth_cm(6));
  REQUIRE(tested.tests.size() == 2);
  CHECK_THAT(tested.tests[0].predicted->container_capacity.value(), WithinAbs(foretold->container_capacity.value(), 1e-12));
  CHECK(tested.air[0].characteristic_size < tested.air[1].characteristic_size);
  // Taken in the grain of the second, the first test would say another k.
  KeptPotTest misread = earlier;
  misread.of = nullptr;
  CHECK(std::abs(tested_mix(second, {&misread, 1})->calibration->constants.k_cm_mm - 7) > 0.1);
}
