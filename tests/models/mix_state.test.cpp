#include "gritwright/models/mix_state.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>
#include <string>
#include <utility>

#include "gritwright/models/packing.hpp"
#include "support/random_mix.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Component component(std::string name, double parts, double bulk, std::optional<double> particle, std::optional<double> skeletal,
                    GrainSizes sizes) {
  Component made;
  made.name = std::move(name);
  made.parts = Parts(parts);
  made.grain.bulk_density = bulk_g_l(bulk);
  if (particle) made.grain.particle_density = particle_g_l(*particle);
  if (skeletal) made.grain.skeletal_density = skeletal_g_l(*skeletal);
  made.sizes = std::move(sizes);
  return made;
}

Grading mix_grading(const std::vector<std::pair<double, double>>& aperture_and_percent) {
  Grading made;
  for (const auto& [mm, percent] : aperture_and_percent) made.points.push_back({aperture_mm(mm), passing_percent(percent)});
  return made;
}

MixState mix_state_of(const Mix& mix) {
  Result<MixState> state = mix_state(mix);
  for (const Problem& problem : state.problems()) UNSCOPED_INFO(problem.code << " at " << problem.where.pointer);
  REQUIRE(state.ok());
  return std::move(state).value();
}

Mix coarse_and_fine() {
  Mix mix;
  mix.components = {component("coarse", 1, 450, 900, 2350, SingleSize{aperture_mm(7.5)}),
                    component("fine", 1, 750, 1350, 2650, SingleSize{aperture_mm(1.5)})};
  mix.components[0].grain.water_absorption = WaterAbsorption(0.40);
  mix.components[1].grain.water_absorption = WaterAbsorption(0.25);
  return mix;
}

bool has_note(const MixState& state, const std::string& code, const std::string& where) {
  return std::ranges::any_of(state.notes, [&](const Note& note) { return note.code == code && note.where == where; });
}

double passing_at(const MixState& state, double mm) {
  const auto found = std::ranges::find_if(state.passing, [&](const GradingPoint& point) { return std::abs(in_mm(point.aperture) - mm) < 1e-9; });
  REQUIRE(found != state.passing.end());
  return in_percent(found->passing);
}

/// A mix by mass shares: equal bulk densities, so that loose and mass shares agree.
Mix by_mass(const std::vector<std::pair<double, Grading>>& parts) {
  Mix mix;
  for (const auto& [share, sizes] : parts) mix.components.push_back(component("c", share, 1500, 2650, 2650, sizes));
  return mix;
}

}  // namespace

TEST_CASE("Masses, volumes and voids of two litres are kept in order", "[mix_state][law]") {
  // Envelope shares and densities are plain arithmetic on the inputs; the packing density is the model's.
  const MixState state = mix_state_of(coarse_and_fine());
  REQUIRE(state.envelope_shares);
  CHECK_THAT((*state.envelope_shares)[0].value(), WithinAbs(0.473684, 6e-7));
  CHECK_THAT((*state.envelope_shares)[1].value(), WithinAbs(0.526316, 6e-7));
  CHECK_THAT(in_g_l(*state.particle_density), WithinAbs(1136.842, 6e-4));
  CHECK_THAT(in_g_l(*state.skeletal_density), WithinAbs(2528.934, 6e-4));
  CHECK_THAT(state.mass_shares[0].value(), WithinAbs(0.375, 1e-12));
  CHECK_THAT(state.loose_shares[0].value(), WithinAbs(0.5, 1e-12));

  const PackedState& poured = *state.poured;
  CHECK_THAT(poured.packing_density.value(), WithinAbs(0.612403, 6e-7));
  CHECK_THAT(in_l(poured.volume), WithinAbs(1.72363, 6e-6));
  CHECK_THAT(state.shrinkage->value(), WithinAbs(0.1382, 6e-5));
  CHECK_THAT(in_g_l(poured.bulk_density), WithinAbs(696.205, 6e-4));
  CHECK_THAT(poured.voids_between_grains.value(), WithinAbs(0.387597, 6e-7));
  CHECK_THAT(poured.voids_in_grains.value(), WithinAbs(0.337107, 6e-7));
  CHECK_THAT(poured.total_porosity.value(), WithinAbs(0.724704, 6e-7));
  CHECK_THAT(poured.grain_water.value(), WithinAbs(0.213213, 6e-7));
  CHECK_THAT(poured.total_porosity.value(), WithinAbs(1 - in_g_l(poured.bulk_density) / in_g_l(*state.skeletal_density), 1e-12));
  CHECK(state.poured == state.settled);
}

TEST_CASE("Settling squeezes the voids between the grains and keeps the dry mass", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  mix.settling = Settling(0.08);
  const MixState state = mix_state_of(mix);
  CHECK_THAT(state.settled->packing_density.value(), WithinRel(state.poured->packing_density.value() / 0.92, 1e-12));
  CHECK_THAT(in_l(state.settled->volume), WithinRel(in_l(state.poured->volume) * 0.92, 1e-12));
  CHECK_THAT(in_g_l(state.settled->bulk_density) * in_l(state.settled->volume),
             WithinRel(in_g_l(state.poured->bulk_density) * in_l(state.poured->volume), 1e-12));
  CHECK_THAT(state.settled->grain_water.value(), WithinRel(state.poured->grain_water.value() / 0.92, 1e-12));
  CHECK_THAT(state.shrinkage->value(), WithinAbs(0.1382, 6e-5));

  mix.settling = Settling(0.40);
  const Result<MixState> crushed = mix_state(mix);
  REQUIRE_FALSE(crushed.ok());
  CHECK(crushed.problems().front().code == "mix.settling-beyond-voids");
  CHECK(crushed.problems().front().where.pointer == "/settling");
}

TEST_CASE("A mix of one component is that component", "[mix_state][law]") {
  Mix mix;
  mix.components = {component("a", 3, 450, 900, 2350, mix_grading({{1, 5}, {2, 25}, {3.35, 60}, {4.75, 90}, {6.3, 100}})),
                    component("none of it", 0, 110, {}, 1500, mix_grading({{1, 50}, {2, 100}}))};
  const MixState state = mix_state_of(mix);
  CHECK_THAT(state.poured->packing_density.value(), WithinAbs(0.5, 1e-13));
  CHECK(state.shrinkage->value() == 0);
  CHECK_THAT(in_g_l(state.poured->bulk_density), WithinAbs(450, 1e-9));
  CHECK(state.passing.size() == 5);
  CHECK_THAT(passing_at(state, 3.35), WithinAbs(60, 1e-12));
  CHECK_THAT(state.pan_share.value(), WithinAbs(0.05, 1e-12));
  CHECK_FALSE(has_note(state, "mix.no-particle-density", "none of it"));
  CHECK_FALSE(has_note(state, "mix.swells", ""));
}

TEST_CASE("Parts scaled by two change nothing but the volume", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  const MixState once = mix_state_of(mix);
  for (Component& each : mix.components) each.parts = each.parts * 2;
  const MixState twice = mix_state_of(mix);
  CHECK_THAT(twice.poured->packing_density.value(), WithinRel(once.poured->packing_density.value(), 1e-14));
  CHECK_THAT(in_l(twice.poured->volume), WithinRel(2 * in_l(once.poured->volume), 1e-14));
  CHECK_THAT(twice.shrinkage->value(), WithinAbs(once.shrinkage->value(), 1e-14));
}

TEST_CASE("Two aggregates by mass give the class exercise's blend", "[mix_state][published]") {
  // Two-component blend of a class exercise in asphalt mix design, mass shares 45:55; exact to the printed hundredths.
  const Grading a = mix_grading({{0.075, 12}, {2.36, 100}, {9.5, 100}, {12.5, 100}, {19, 100}});
  const Grading b = mix_grading({{0.075, 0}, {2.36, 9}, {9.5, 77}, {12.5, 98}, {19, 100}});
  const MixState state = mix_state_of(by_mass({{45, a}, {55, b}}));
  const std::vector<std::pair<double, double>> expected{{19, 100}, {12.5, 98.9}, {9.5, 87.35}, {2.36, 49.95}, {0.075, 5.4}};
  for (const auto& [mm, percent] : expected) CHECK_THAT(passing_at(state, mm), WithinAbs(percent, 1e-9));
  // 50:50 leaves the exercise's band of 34-50 % at 2.36 mm.
  CHECK(passing_at(mix_state_of(by_mass({{50, a}, {50, b}})), 2.36) > 50);
}

TEST_CASE("Three aggregates by mass give the class exercise's blend", "[mix_state][published]") {
  // Three-component blend of a class exercise in asphalt mix design, mass shares .66/.28/.06; exact to the printed hundredths.
  const std::vector<double> mm{0.075, 0.15, 0.3, 2.36, 4.75, 12.5, 19};
  const auto curve = [&](const std::vector<double>& percent) {
    Grading made;
    for (std::size_t i = 0; i < mm.size(); ++i) made.points.push_back({aperture_mm(mm[i]), passing_percent(percent[i])});
    return made;
  };
  const MixState state = mix_state_of(by_mass({{0.66, curve({0, 3, 5, 8, 19, 63, 100})}, {0.28, curve({3, 36, 55, 93, 100, 100, 100})},
                                           {0.06, curve({88, 97, 100, 100, 100, 100, 100})}}));
  const std::vector<double> expected{6.12, 17.88, 24.7, 37.32, 46.54, 75.58, 100};
  for (std::size_t i = 0; i < mm.size(); ++i) CHECK_THAT(passing_at(state, mm[i]), WithinAbs(expected[i], 1e-9));
}

TEST_CASE("Parts that nearly add up to a hundred are pointed out and not normalised", "[mix_state][law]") {
  const Grading sizes = mix_grading({{1, 0}, {4, 100}});
  const MixState state = mix_state_of(by_mass({{34, sizes}, {27, sizes}, {38, sizes}}));
  CHECK(has_note(state, "mix.parts-near-hundred", ""));
  CHECK_THAT(in_l(state.poured->volume), WithinAbs(99, 1e-9));
  CHECK_FALSE(has_note(mix_state_of(by_mass({{34, sizes}, {28, sizes}, {38, sizes}})), "mix.parts-near-hundred", ""));
  CHECK_FALSE(has_note(mix_state_of(by_mass({{4, sizes}, {2, sizes}})), "mix.parts-near-hundred", ""));
}

TEST_CASE("Mass grading weighs by dry mass, envelope grading by the volume of the grains", "[mix_state][law]") {
  Mix mix;
  // One litre each: 600 g of porous and 1500 g of dense grain; .6 L and .566 L of envelope.
  mix.components = {component("light", 1, 720, 1000, 2500, mix_grading({{2, 0}, {4, 100}})),
                    component("dense", 1, 1500, 2650, 2650, mix_grading({{0.5, 0}, {1, 100}}))};
  mix.components[0].grain.bulk_moisture = Moisture(0.2);
  const MixState state = mix_state_of(mix);
  CHECK_THAT(passing_at(state, 1), WithinAbs(100 * 1500.0 / 2100, 1e-9));
  const auto at_one = std::ranges::find(*state.envelope_passing, aperture_mm(1), &GradingPoint::aperture);
  REQUIRE(at_one != state.envelope_passing->end());
  CHECK_THAT(at_one->passing.value(), WithinAbs((1500.0 / 2650) / (1500.0 / 2650 + 0.6), 1e-12));
}

TEST_CASE("Without a particle density there are mass shares and a grading, and the reason for the rest", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  mix.components.push_back(component("peat", 1, 110, {}, 1550, SingleSize{aperture_mm(1)}));
  const MixState state = mix_state_of(mix);
  CHECK(state.mass_shares.size() == 3);
  CHECK_THAT(state.mass_shares[2].value(), WithinAbs(110.0 / 1310, 1e-12));
  CHECK(state.passing.size() == 3);
  CHECK(state.class_betas[0]);
  CHECK_FALSE(state.class_betas[2]);
  CHECK_FALSE(state.envelope_shares);
  CHECK_FALSE(state.poured);
  CHECK_FALSE(state.settled);
  CHECK_FALSE(state.shrinkage);
  CHECK_FALSE(state.particle_density);
  CHECK(has_note(state, "mix.no-particle-density", "peat"));
  CHECK(has_note(state, "mix.grain-yields", "peat"));
  CHECK(state.organic_or_fibrous);
}

TEST_CASE("Grain water follows the absorption, else the filled share of the open pores", "[mix_state][law]") {
  GrainProperties grain;
  grain.bulk_density = bulk_g_l(450);
  CHECK_FALSE(grain_pores(grain, 0.7));
  grain.particle_density = particle_g_l(900);

  const auto solid = grain_pores(grain, 0.7);  // no skeletal density: solid grain
  CHECK(solid->pores.value() == 0);
  CHECK(solid->water.value() == 0);

  grain.skeletal_density = skeletal_g_l(2250);  // n_g = .6
  grain.open_share = OpenShare(0.5);
  const auto half_open = grain_pores(grain, 0.7);
  CHECK_THAT(half_open->pores.value(), WithinAbs(0.6, 1e-12));
  CHECK_THAT(half_open->open.value(), WithinAbs(0.3, 1e-12));
  CHECK_THAT(half_open->water.value(), WithinAbs(0.21, 1e-12));

  grain.water_absorption = WaterAbsorption(0.40);  // .36 of the grain: what holds water must be open
  const auto soaked = grain_pores(grain, 0.7);
  CHECK_THAT(soaked->water.value(), WithinAbs(0.36, 1e-12));
  CHECK_THAT(soaked->open.value(), WithinAbs(0.36, 1e-12));

  grain.skeletal_density.reset();
  const auto unknown_solid = grain_pores(grain, 0.7);
  CHECK_THAT(unknown_solid->pores.value(), WithinAbs(0.36, 1e-12));
  CHECK_THAT(unknown_solid->open.value(), WithinAbs(0.36, 1e-12));
}

TEST_CASE("Porous grain without a skeletal density gives open porosity and says so", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  mix.components[0].grain.skeletal_density.reset();
  const MixState state = mix_state_of(mix);
  CHECK(has_note(state, "mix.open-pores-only", "coarse"));
  CHECK_FALSE(state.skeletal_density);
  CHECK_THAT(state.poured->grain_water.value(), WithinAbs(0.213213, 6e-7));
  CHECK(state.poured->total_porosity.value() < 0.724704);
}

TEST_CASE("Exchange capacity per litre counts the mass that lies in the settled litre", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  CHECK_FALSE(mix_state_of(mix).poured->cation_exchange);
  mix.components[0].grain.cation_exchange = CationExchange(19);
  CHECK_FALSE(mix_state_of(mix).poured->cation_exchange);
  CHECK(has_note(mix_state_of(mix), "mix.no-cation-exchange", "fine"));
  mix.components[1].grain.cation_exchange = CationExchange(0);
  // Scoria 5 meq/100 g at 840 g/L gives 42 meq/L; here 19 · 450 g in 1.72363 L.
  CHECK_THAT(mix_state_of(mix).poured->cation_exchange->value(), WithinAbs(19 * 4.5 / 1.72363, 1e-3));

  Mix scoria;
  scoria.components = {component("scoria", 1, 840, 1500, 2930, SingleSize{aperture_mm(5)})};
  scoria.components[0].grain.cation_exchange = CationExchange(5);
  CHECK_THAT(mix_state_of(scoria).settled->cation_exchange->value(), WithinAbs(42, 1e-9));
}

TEST_CASE("A mix that swells says so and is not cut off at nothing", "[mix_state][law]") {
  RandomMixes random(5);
  int swelling = 0;
  for (int round = 0; round < 2000; ++round) {
    const MixState state = mix_state_of(random.next());
    if (state.shrinkage->value() < -1e-9) ++swelling;
    CHECK(has_note(state, "mix.swells", "") == (state.shrinkage->value() < -1e-9));
  }
  CHECK(swelling > 0);
}

TEST_CASE("Doubtful densities and assumed sizes are noted with the component they concern", "[mix_state][law]") {
  Mix mix = coarse_and_fine();
  mix.components[0].grain.skeletal_density = skeletal_g_l(5500);
  mix.components[1].sizes = mix_grading({{1, 4}, {2, 60}, {4, 90}});
  mix.components[1].grain.provenance = Provenance::typical;
  const MixState state = mix_state_of(mix);
  CHECK(has_note(state, "mix.skeletal-density-doubtful", "coarse"));
  CHECK(has_note(state, "mix.pan-size-assumed", "fine"));
  CHECK(has_note(state, "mix.top-size-assumed", "fine"));
  CHECK(has_note(state, "mix.typical-figures", "fine"));

  mix.components[0].grain.skeletal_density.reset();
  mix.components[0].grain.water_absorption.reset();
  mix.components[0].grain.bulk_density = bulk_g_l(100);
  mix.components[0].grain.particle_density = particle_g_l(200);
  CHECK(has_note(mix_state_of(mix), "mix.particle-density-doubtful", "coarse"));
}

TEST_CASE("A mix refused by its own check gives no state", "[mix_state][refuses]") {
  Mix mix = coarse_and_fine();
  mix.components[1].grain.bulk_density = bulk_g_l(2000);
  const Result<MixState> state = mix_state(mix);
  REQUIRE_FALSE(state.ok());
  CHECK(state.problems().front().where.pointer == "/components/1/bulk_density_g_l");
}

TEST_CASE("Ten thousand random mixes keep the laws of packing", "[mix_state][law][rounds]") {
  RandomMixes random(1907);
  for (int round = 0; round < 10000; ++round) {
    const Mix mix = random.next();
    const MixState state = mix_state_of(mix);
    const double phi = state.poured->packing_density.value();
    INFO("round " << round << ", packing density " << phi);

    // Never looser than volumes that add up, never denser than every class filled by all finer ones.
    double additive = 0, empty = 1, loose_l = 0, mass_g = 0;
    for (std::size_t k = 0; k < mix.components.size(); ++k) {
      additive += (*state.envelope_shares)[k].value() / state.class_betas[k]->value();
      for (std::size_t i = 0; i < size_classes(mix.components[k].sizes).size(); ++i) empty *= 1 - state.class_betas[k]->value();
      loose_l += mix.components[k].parts.value();
      mass_g += mix.components[k].parts.value() * in_g_l(dry_bulk_density(mix.components[k].grain));
    }
    const bool within = phi >= 1 / additive * (1 - 1e-12) && phi <= 1 - empty + 1e-12;
    if (!within) FAIL_CHECK("packing density outside its limits " << 1 / additive << " and " << 1 - empty);

    const double volume_l = in_l(state.poured->volume);
    for (const Component& each : mix.components)
      if (volume_l < each.parts.value() * 0.99) FAIL_CHECK("the mix is smaller than its own " << each.name);
    if (std::abs(1 - volume_l / loose_l - state.shrinkage->value()) > 1e-12) FAIL_CHECK("shrinkage");

    for (const PackedState* lying : {&*state.poured, &*state.settled}) {
      if (std::abs(in_g_l(lying->bulk_density) * in_l(lying->volume) / mass_g - 1) > 1e-12) FAIL_CHECK("dry mass was lost");
      const double porosity = lying->voids_between_grains.value() + lying->voids_in_grains.value();
      if (std::abs(porosity - lying->total_porosity.value()) > 1e-12) FAIL_CHECK("porosities do not add up");
      const bool ordered = lying->grain_water <= lying->open_voids_in_grains && lying->open_voids_in_grains <= lying->voids_in_grains &&
                           lying->total_porosity < Porosity(1);
      if (!ordered) FAIL_CHECK("water above open voids above voids in the grains above the solid");
    }
    for (const auto* curve : {&state.grading, &*state.envelope_grading}) {
      const bool rising = std::ranges::is_sorted(*curve, {}, &GradingPoint::passing) && std::ranges::is_sorted(*curve, {}, &GradingPoint::aperture);
      if (!rising || curve->front().passing != Passing(0) || curve->back().passing != Passing(1)) FAIL_CHECK("a mix_grading that falls");
    }
  }
}

TEST_CASE("A mix that is a part of its own is the mix it was poured as", "[mix_state][law]") {
  RandomMixes random(1911);
  for (int round = 0; round < 300; ++round) {
    Mix mix = random.next();
    mix.settling = Settling(0);
    const MixState state = mix_state_of(mix);
    const auto grain = mix_as_grain(mix);
    INFO("round " << round);
    REQUIRE(grain);
    Mix alone;
    alone.water = mix.water;
    alone.components = {*grain};
    const MixState again = mix_state_of(alone);
    const auto same = [](double one, double other) { return std::abs(one - other) <= 1e-9 * std::max(1.0, std::abs(other)); };
    CHECK(same(in_g_l(again.poured->bulk_density), in_g_l(state.poured->bulk_density)));
    CHECK(same(again.poured->voids_between_grains.value(), state.poured->voids_between_grains.value()));
    CHECK(same(again.poured->grain_water.value(), state.poured->grain_water.value()));
    if (state.skeletal_density) CHECK(same(again.poured->total_porosity.value(), state.poured->total_porosity.value()));
    if (state.poured->cation_exchange) CHECK(same(again.poured->cation_exchange->value(), state.poured->cation_exchange->value()));
    for (const GradingPoint& point : state.passing) CHECK(same(passing_at(again, in_mm(point.aperture)), in_percent(point.passing)));
  }
  // Without a particle density its litres can't be told.
  Mix unknown = coarse_and_fine();
  unknown.components[0].grain.particle_density.reset();
  unknown.components[0].grain.skeletal_density.reset();
  CHECK_FALSE(mix_as_grain(unknown));
}

TEST_CASE("Adding a component never makes a mix smaller than it was", "[mix_state][law]") {
  RandomMixes random(71);
  for (int round = 0; round < 1000; ++round) {
    Mix mix = random.next();
    if (mix.components.size() < 2) continue;
    const double with_l = in_l(mix_state_of(mix).poured->volume);
    mix.components.pop_back();
    const double without_l = in_l(mix_state_of(mix).poured->volume);
    INFO("round " << round);
    CHECK(with_l >= without_l * 0.99);
  }
}
