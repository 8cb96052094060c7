#include "gritwright/models/mix_evaluator.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <utility>

#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"
#include "support/random_mix.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Container tapered_pot() {
  Container pot;
  pot.shape = Shape::rectangular;
  pot.rim = {length_cm(28), length_cm(20)};
  pot.base = Section{length_cm(24), length_cm(16)};
  pot.depth = depth_cm(6);
  return pot;
}

Container tilted_round_pot() {
  Container pot;
  pot.shape = Shape::round;
  pot.rim = {length_cm(20), length_cm(20)};
  pot.depth = depth_cm(9);
  pot.saucer = depth_cm(1);
  pot.tilt.angle = angle_deg(8);
  return pot;
}

Container layered_pot() {
  Container pot = tapered_pot();
  pot.bottom_layer = BottomLayer{depth_cm(1.5), {}};
  return pot;
}

Retention coarse_layer() {
  RetentionInput input;
  input.envelope_grading = {{aperture_mm(8), Passing(0)}, {aperture_mm(11.2), Passing(1)}};
  input.voids_between_grains = Porosity(0.45);
  return Retention(input);
}

Retention retention(const MixState& state, const RetentionConstants& constants) {
  RetentionInput input;
  input.envelope_grading = state.envelope_grading.value();
  input.voids_between_grains = state.settled->voids_between_grains;
  input.open_voids_in_grains = state.settled->open_voids_in_grains;
  input.grain_water = state.settled->grain_water;
  input.constants = constants;
  return Retention(input);
}

EvaluatorSetup setup_for(std::vector<Component> candidates, double n) {
  EvaluatorSetup setup;
  setup.candidates = std::move(candidates);
  setup.water.n = n;
  setup.settling = Settling(0.08);
  setup.pots.push_back({PotGeometry(tapered_pot()), {}});
  setup.pots.push_back({PotGeometry(layered_pot()), coarse_layer()});
  setup.suctions = {depth_cm(10), depth_cm(50)};
  setup.apertures = {aperture_mm(1), aperture_mm(2), aperture_mm(5.6)};
  return setup;
}

std::vector<Dose> random_doses(std::size_t candidates, std::mt19937_64& dice) {
  std::uniform_real_distribution<double> unit(0, 1);
  std::vector<Dose> doses;
  for (std::size_t k = 0; k < candidates && doses.size() < 5; ++k)
    if (unit(dice) < 0.3) doses.push_back({k, 1 + std::floor(unit(dice) * 6)});
  if (doses.empty()) doses.push_back({0, 1});
  return doses;
}

/// The same recipe by the models that work out one mix at a time.
void compare(const EvaluatorSetup& setup, const std::vector<Dose>& doses, const RecipeFigures& found) {
  Mix mix;
  mix.water = setup.water;
  mix.settling = setup.settling;
  for (const Dose& dose : doses) {
    mix.components.push_back(setup.candidates[dose.candidate]);
    mix.components.back().parts = Parts(dose.parts);
  }
  const Result<MixState> state = mix_state(mix);
  REQUIRE(state.ok());
  const PackedState& settled = state->settled.value();
  REQUIRE(found.has_volumes);
  REQUIRE_THAT(found.packing_density, WithinRel(state->poured->packing_density.value(), 1e-12));
  REQUIRE_THAT(found.volume_l, WithinRel(in_l(state->poured->volume), 1e-12));
  REQUIRE_THAT(found.shrinkage, WithinAbs(state->shrinkage->value(), 1e-12));
  REQUIRE_THAT(found.bulk_density_g_l, WithinRel(in_g_l(settled.bulk_density), 1e-12));
  REQUIRE_THAT(found.voids_between_grains, WithinAbs(settled.voids_between_grains.value(), 1e-12));
  REQUIRE_THAT(found.voids_in_grains, WithinAbs(settled.voids_in_grains.value(), 1e-12));
  REQUIRE_THAT(found.total_porosity, WithinAbs(settled.total_porosity.value(), 1e-12));
  REQUIRE(found.cation_exchange_meq_l.has_value() == settled.cation_exchange.has_value());
  if (settled.cation_exchange) REQUIRE_THAT(*found.cation_exchange_meq_l, WithinRel(settled.cation_exchange->value(), 1e-12));

  const Retention chain = retention(*state, setup.water);
  REQUIRE_THAT(found.open_porosity, WithinAbs(chain.open_voids().value(), 1e-12));
  REQUIRE_THAT(found.flooded, WithinAbs(chain.flooded().value(), 1e-12));
  for (std::size_t i = 0; i < setup.pots.size(); ++i) {
    CAPTURE(i);
    const PotToFill& pot = setup.pots[i];
    const PotWater water = pot_water(chain, pot.pot, pot.layer ? &*pot.layer : nullptr);
    REQUIRE_THAT(found.container_capacity[i], WithinAbs(water.container_capacity.value(), 1e-7));
  }
  for (std::size_t i = 0; i < setup.suctions.size(); ++i)
    REQUIRE_THAT(found.water_at_suction[i], WithinAbs(chain.water_at(setup.suctions[i]).value(), 1e-7));

  double mass_g = 0;
  for (const Component& each : mix.components) mass_g += each.parts.value() * in_g_l(dry_bulk_density(each.grain));
  REQUIRE_THAT(found.dry_mass_g, WithinRel(mass_g, 1e-12));
  for (const GradingPoint& point : state->passing)
    for (std::size_t i = 0; i < setup.apertures.size(); ++i)
      if (point.aperture == setup.apertures[i]) REQUIRE_THAT(found.passing[i], WithinAbs(point.passing.value(), 1e-12));
}

}  // namespace

TEST_CASE("Recipes over many candidates come out as the same mixes one at a time", "[mix_evaluator][law]") {
  RandomMixes random(12);
  std::mt19937_64 dice(3);
  for (const double n : {6.0, 2.0, 1.4, 12.0}) {
    std::vector<Component> candidates;
    while (candidates.size() < 12)
      for (Component& each : random.next().components) candidates.push_back(std::move(each));
    for (std::size_t k = 0; k < candidates.size(); k += 2) candidates[k].grain.cation_exchange = CationExchange(5.0 * static_cast<double>(k));
    const EvaluatorSetup setup = setup_for(candidates, n);
    const MixEvaluator evaluator(setup);
    MixEvaluator::Workspace workspace;
    RecipeFigures figures;
    for (int round = 0; round < 50; ++round) {
      CAPTURE(n, round);
      const std::vector<Dose> doses = random_doses(candidates.size(), dice);
      evaluator.evaluate(doses, workspace, figures);
      compare(setup, doses, figures);
    }
  }
}

TEST_CASE("Recipes in a tilted pot with a saucer come out as the same mixes one at a time", "[mix_evaluator][law]") {
  RandomMixes random(8);
  std::mt19937_64 dice(4);
  std::vector<Component> candidates;
  while (candidates.size() < 6)
    for (Component& each : random.next().components) candidates.push_back(std::move(each));
  EvaluatorSetup setup = setup_for(candidates, 6);
  setup.pots = {{PotGeometry(tilted_round_pot()), {}}};
  const MixEvaluator evaluator(setup);
  MixEvaluator::Workspace workspace;
  RecipeFigures figures;
  for (int round = 0; round < 5; ++round) {
    const std::vector<Dose> doses = random_doses(candidates.size(), dice);
    evaluator.evaluate(doses, workspace, figures);
    compare(setup, doses, figures);
  }
}

TEST_CASE("Grain of one size gives a recipe like any other", "[mix_evaluator][law]") {
  RandomMixes random(9);
  Component single = random.next().components.front();
  single.sizes = SingleSize{aperture_mm(4)};
  const EvaluatorSetup setup = setup_for({single}, 6);
  const MixEvaluator evaluator(setup);
  MixEvaluator::Workspace workspace;
  RecipeFigures figures;
  const std::vector<Dose> doses{{0, 3}};
  evaluator.evaluate(doses, workspace, figures);
  compare(setup, doses, figures);
}

TEST_CASE("A recipe with a candidate of unknown particle density has masses and passing only", "[mix_evaluator][law]") {
  RandomMixes random(4);
  std::vector<Component> candidates = random.next().components;
  candidates.push_back(candidates.front());
  candidates.back().grain.particle_density.reset();
  const MixEvaluator evaluator(setup_for(candidates, 6));
  MixEvaluator::Workspace workspace;
  RecipeFigures figures;
  const std::vector<Dose> known{{0, 2}}, unknown{{0, 2}, {candidates.size() - 1, 1}};
  evaluator.evaluate(known, workspace, figures);
  CHECK(figures.has_volumes);
  evaluator.evaluate(unknown, workspace, figures);
  CHECK_FALSE(figures.has_volumes);
  CHECK_THAT(figures.dry_mass_g, WithinRel(3 * in_g_l(dry_bulk_density(candidates.front().grain)), 1e-12));
}
