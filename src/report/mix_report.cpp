#include "gritwright/report/mix_report.hpp"

#include <fmt/format.h>

#include <span>
#include <utility>

#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

std::string significant(double value) { return fmt::format("{:.4g}", value); }

std::string component_rows(const Mix& mix, const MixState& state) {
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < mix.components.size(); ++i) {
    const auto envelope = state.envelope_shares ? std::optional((*state.envelope_shares)[i].value()) : std::nullopt;
    rows.push_back({mix.components[i].name, significant(mix.components[i].parts.value()),
                    percent_text(state.loose_shares[i].value()), percent_text(state.mass_shares[i].value()),
                    percent_text(envelope)});
  }
  return text_table({"component", "parts", "of the loose litres", "of the mass", "of the grain volume"}, rows);
}

std::string grading_rows(const MixState& state, UnitSystem units) {
  std::vector<std::vector<std::string>> rows;
  for (auto point = state.passing.rbegin(); point != state.passing.rend(); ++point) {
    rows.push_back({size_text(point->aperture, units), percent_text(point->passing.value())});
  }
  return text_table({"sieve", "passing"}, rows);
}

}  // namespace

std::string mix_text(const Mix& mix, const MixState& state, UnitSystem units) {
  const auto share = [&](auto member) {
    return percent_text(number(state.settled, [&](const PackedState& s) { return (s.*member).value(); }));
  };
  std::string text = component_rows(mix, state) + '\n' + grading_rows(state, units) + '\n';
  const auto shrinkage = number(state.shrinkage, [](Shrinkage s) { return s.value(); });
  if (shrinkage && *shrinkage < 0) {
    text += "the parts swell by " + percent_text(-*shrinkage) + " when mixed";
  } else {
    text += "the parts shrink by " + percent_text(shrinkage) + " when mixed";
  }
  text += ": " + volume_text(number(state.poured, [](const PackedState& s) { return in_l(s.volume); }), units) +
          " of the parts taken as litres\n";
  text += "litre weight " + density_text(number(state.settled, [](const PackedState& s) { return in_g_l(s.bulk_density); }), units) +
          ", voids between grains " + share(&PackedState::voids_between_grains) + ", in grains " +
          share(&PackedState::voids_in_grains) + ", total porosity " + share(&PackedState::total_porosity) + ", water in grains " +
          share(&PackedState::grain_water) + '\n';
  const auto exchange = state.settled ? number(state.settled->cation_exchange, [](auto c) { return c.value(); }) : std::nullopt;
  text += "exchange capacity " + figure(exchange, 0) + (exchange ? " meq/L" : "") + '\n';
  return text;
}

std::string pot_water_text(const PotWater& water, UnitSystem units) {
  std::string text = "new mix, " + depth_text(water.filled_depth, units) + " deep: air " +
                     percent_text(water.air_filled_porosity.value()) + " (and " + percent_text(water.trapped_air.value()) +
                     " trapped), water " + percent_text(water.container_capacity.value()) + ", of it plants can take " +
                     percent_text(water.available_in_pot.value()) + "; wet zone " + depth_text(water.perched_height, units) +
                     " high\n";
  if (const auto& layer = water.bottom_layer) {
    text += "with the bottom layer the mix drains to a suction of " + depth_text(layer->interface_head, units) +
            "; without it: air " + percent_text(layer->air_without.value()) + ", water " +
            percent_text(layer->capacity_without.value()) + '\n';
    const auto litres = [](const std::optional<PotVolume>& volume) {
      return number(volume, [](PotVolume v) { return in_ml(v) / 1000; });
    };
    text += "water in the whole pot " + volume_text(litres(layer->water_with), units) + " with the layer, " +
            volume_text(litres(layer->water_without), units) + " without\n";
  }
  return text;
}

std::string pot_mass_text(PotVolume to_fill_line, Mass wet_mix, UnitSystem units) {
  return "volume to the fill line " + volume_text(in_ml(to_fill_line) / 1000, units) + ", the mix in it weighs " +
         mass_text(wet_mix, units) + " wet\n";
}

namespace {

/// The parts of a mix as litres: what is poured, what it weighs dry, and what the grains alone take.
struct PartsAsLitres {
  double loose_l = 0;
  double mass_g = 0;
  double envelope_l = 0;
};

/// Precondition: the mix is packed.
PartsAsLitres parts_of(const Mix& mix, const MixState& state) {
  PartsAsLitres sum;
  for (const Component& component : mix.components) {
    const double mass = component.parts.value() * in_g_l(dry_bulk_density(component.grain));
    sum.loose_l += component.parts.value();
    sum.mass_g += mass;
    if (component.grain.particle_density) sum.envelope_l += mass / in_g_l(*component.grain.particle_density);
  }
  // A search works with parts of another sum than the mix it keeps.
  const double scale = in_l(state.poured->volume) / (1 - state.shrinkage->value()) / sum.loose_l;
  return {sum.loose_l * scale, sum.mass_g * scale, sum.envelope_l * scale};
}

/// Where the settled mix's other figures come from.
void append_settled(std::vector<Explanation>& list, const Mix& mix, const PartsAsLitres& parts, std::span<const MassShare> mass_shares, const PackedState& settled) {
  const auto share = [](Porosity value) { return percent_text(value.value()); };
  const std::string source = "docs/science/packing.md";
  list.push_back({"bulk_density_g_l", GRITWRIGHT_TEXT("sum of the dry masses / volume of the settled mix"),
                  {{GRITWRIGHT_TEXT("dry mass"), mass_text(mass_g(parts.mass_g), UnitSystem::metric)},
                   {GRITWRIGHT_TEXT("volume"), volume_text(in_l(settled.volume), UnitSystem::metric)},
                   {GRITWRIGHT_TEXT("settling"), percent_text(counted_settling(mix).value())}},
                  source});
  // Of the grains' own volume.
  const double grains = 1 - settled.voids_between_grains.value();
  list.push_back({"voids_in_grains", GRITWRIGHT_TEXT("(1 - voids between grains) x mean porosity of the grains, 1 - grain density/solid density"),
                  {{GRITWRIGHT_TEXT("voids between grains"), share(settled.voids_between_grains)},
                   {GRITWRIGHT_TEXT("mean porosity of the grains"), percent_text(settled.voids_in_grains.value() / grains)}},
                  source});
  list.push_back({"total_porosity", GRITWRIGHT_TEXT("voids between grains + voids in grains"),
                  {{GRITWRIGHT_TEXT("between"), share(settled.voids_between_grains)}, {"in", share(settled.voids_in_grains)}}, source});
  list.push_back({"grain_water", GRITWRIGHT_TEXT("(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, "
                                 "else w of the open grain pores"),
                  {{GRITWRIGHT_TEXT("voids between grains"), share(settled.voids_between_grains)},
                   {GRITWRIGHT_TEXT("water the grains hold"), percent_text(settled.grain_water.value() / grains)},
                   {"w", significant(mix.water.grain_fill)}},
                  source});
  if (settled.cation_exchange) {
    std::vector<std::pair<std::string, std::string>> exchanges{{GRITWRIGHT_TEXT("litre weight"), density_text(in_g_l(settled.bulk_density), UnitSystem::metric)}};
    for (std::size_t k = 0; k < mix.components.size(); ++k)
      if (const auto& exchange = mix.components[k].grain.cation_exchange) exchanges.emplace_back(mix.components[k].name, percent_text(mass_shares[k].value()) + " x " + significant(exchange->value()) + " meq/100 g");
    list.push_back({"cec_meq_l", GRITWRIGHT_TEXT("sum over components of mass share x exchange capacity in meq/100 g x 10 x litre weight in kg/L"),
                    std::move(exchanges), source});
  }
}

}  // namespace

std::vector<Explanation> explain(const Mix& mix, const MixState& state) {
  std::vector<Explanation> list;
  std::vector<std::pair<std::string, std::string>> shares;
  for (std::size_t i = 0; i < mix.components.size(); ++i) {
    shares.emplace_back(mix.components[i].name,
                        significant(mix.components[i].parts.value()) + " parts at " +
                            density_text(in_g_l(dry_bulk_density(mix.components[i].grain)), UnitSystem::metric));
  }
  list.push_back({"mass_shares", GRITWRIGHT_TEXT("m_k = v_k rho_b,k; the grading of the mix is blended by these shares"), shares,
                  "docs/science/packing.md"});
  list.push_back({"loose_volume_shares", GRITWRIGHT_TEXT("parts / sum of parts"), {}, "docs/science/packing.md"});
  list.push_back({"passing", GRITWRIGHT_TEXT("sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves"), {},
                  "docs/science/packing.md"});
  if (!state.poured || !state.settled || !state.shrinkage) return list;
  const PartsAsLitres parts = parts_of(mix, state);
  list.push_back({"envelope_shares", GRITWRIGHT_TEXT("E_k / sum E, E_k = mass / grain density"), {}, "docs/science/packing.md"});
  list.push_back({"envelope_passing", GRITWRIGHT_TEXT("as passing, by envelope share"), {}, "docs/science/packing.md"});
  std::vector<std::pair<std::string, std::string>> betas;
  for (std::size_t i = 0; i < mix.components.size(); ++i) {
    if (state.class_betas[i]) betas.emplace_back("beta of " + mix.components[i].name, significant(state.class_betas[i]->value()));
  }
  list.push_back({"class_betas", GRITWRIGHT_TEXT("the packing density all classes of a component share for which the model gives back the component's own "
                                 "phi = dry litre weight / grain density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V"),
                  betas, "docs/science/packing.md"});
  list.push_back({"packing_density", GRITWRIGHT_TEXT("1/phi = max over i of U_i (linear dominant class with wedging), each component with the one "
                                     "class beta that gives back its own packing density"),
                  betas, GRITWRIGHT_TEXT("Yu, Zou & Standish 1996; Kwan, Chan & Wong 2013 (from memory); ±1.5 points of voids")});
  const std::pair<std::string, std::string> envelopes{"sum E", volume_text(parts.envelope_l, UnitSystem::metric)};
  list.push_back({"volume_l", GRITWRIGHT_TEXT("V = sum E/phi of the parts taken as litres, E = loose litres x dry litre weight / grain density"),
                  {envelopes, {"phi", significant(state.poured->packing_density.value())}}, "docs/science/packing.md"});
  list.push_back({"shrinkage_percent", GRITWRIGHT_TEXT("1 - V/sum v, with V = sum E/phi"),
                  {envelopes,
                   {"phi", significant(state.poured->packing_density.value())},
                   {"V", volume_text(in_l(state.poured->volume), UnitSystem::metric)},
                   {"sum v", volume_text(parts.loose_l, UnitSystem::metric)}},
                  "docs/science/packing.md"});
  list.push_back({"voids_between_grains", GRITWRIGHT_TEXT("1 - phi/(1 - settling)"),
                  {{"phi", significant(state.poured->packing_density.value())}, {GRITWRIGHT_TEXT("settling"), percent_text(counted_settling(mix).value())}},
                  "docs/science/packing.md"});
  const auto densities = [&](auto of) {
    std::vector<std::pair<std::string, std::string>> list_of;
    for (std::size_t k = 0; k < mix.components.size(); ++k)
      if (const std::optional<double> g_per_l = of(mix.components[k].grain)) list_of.emplace_back(mix.components[k].name, percent_text(state.mass_shares[k].value()) + ", " + density_text(g_per_l, UnitSystem::metric));
    return list_of;
  };
  if (state.particle_density) {
    list.push_back({"particle_density_g_l", GRITWRIGHT_TEXT("sum m / sum (m / grain density)"), densities([](const GrainProperties& grain) { return number(grain.particle_density, [](ParticleDensity d) { return in_g_l(d); }); }),
                    "docs/science/packing.md"});
  }
  if (state.skeletal_density) {
    list.push_back({"skeletal_density_g_l", GRITWRIGHT_TEXT("sum m / sum (m / solid density)"), densities([](const GrainProperties& grain) { return number(grain.skeletal_density, [](SkeletalDensity d) { return in_g_l(d); }); }),
                    "docs/science/packing.md"});
  }
  append_settled(list, mix, parts, state.mass_shares, *state.settled);
  return list;
}

namespace {

/// What stands under a pot, or at its floor, and shifts the suction in it.
std::vector<std::pair<std::string, std::string>> conditions_of(const Container* container) {
  std::vector<std::pair<std::string, std::string>> inputs;
  if (container == nullptr) return inputs;
  const auto add = [&](const char* name, const Depth& depth) {
    if (depth > Depth{}) inputs.emplace_back(name, depth_text(depth, UnitSystem::metric));
  };
  add(GRITWRIGHT_TEXT("saucer"), container->saucer);
  add(GRITWRIGHT_TEXT("wick"), container->wick);
  if (container->bottom_layer) add(GRITWRIGHT_TEXT("bottom layer"), container->bottom_layer->thickness);
  if (in_deg(container->tilt.angle) > 0) inputs.emplace_back(GRITWRIGHT_TEXT("tilt"), figure(in_deg(container->tilt.angle), 1) + "°");
  return inputs;
}

}  // namespace

std::vector<Explanation> explain(const Mix& mix, const MixState& state, const PotWater& water, const Container* container) {
  const std::vector<std::pair<std::string, std::string>> conditions = conditions_of(container);
  const auto with_conditions = [&](std::vector<std::pair<std::string, std::string>> inputs) {
    inputs.insert(inputs.end(), conditions.begin(), conditions.end());
    return inputs;
  };
  std::vector<Explanation> list = explain(mix, state);
  const auto share = [](Porosity value) { return percent_text(value.value()); };
  const RetentionConstants& constants = mix.water;
  list.push_back({"depth_cm", GRITWRIGHT_TEXT("height of the fill line over the floor: depth - fill line below rim"),
                  {{GRITWRIGHT_TEXT("filled depth"), depth_text(water.filled_depth, UnitSystem::metric)}}, "docs/science/containers.md"});
  list.push_back({"container_capacity", GRITWRIGHT_TEXT("mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j "
                                        "[1 + (h d'_j/k)^n]^-(1-1/n) + water in grains"),
                  with_conditions({{"k", significant(constants.k_cm_mm) + " cm mm"},
                   {"b", significant(constants.spread)},
                   {"n", significant(constants.n)},
                   {"theta_r", significant(constants.residual)},
                   {"f", significant(constants.flooded_fill)},
                   {"w", significant(constants.grain_fill)},
                   {"phi_v", share(state.settled->voids_between_grains)},
                   {GRITWRIGHT_TEXT("water in grains"), share(state.settled->grain_water)},
                   {GRITWRIGHT_TEXT("filled depth"), depth_text(water.filled_depth, UnitSystem::metric)}}),
                  constants == RetentionConstants{} ? GRITWRIGHT_TEXT("docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test")
                                                    : GRITWRIGHT_TEXT("docs/science/water.md; constants by pot tests, or as the mix gives them")});
  list.push_back({"air_filled_porosity", GRITWRIGHT_TEXT("theta(0) - water held: the share that drains"),
                  {{"theta(0)", share(water.theta_0)}, {GRITWRIGHT_TEXT("water held"), share(water.container_capacity)}}, "docs/science/water.md"});
  const std::pair<std::string, std::string> in_grains{GRITWRIGHT_TEXT("water in grains"), share(state.settled->grain_water)};
  list.push_back({"theta_0", GRITWRIGHT_TEXT("theta at no suction: f of the voids between grains + water in grains"),
                  {{"f", significant(constants.flooded_fill)}, {GRITWRIGHT_TEXT("voids between grains"), share(state.settled->voids_between_grains)}, in_grains},
                  "docs/science/water.md"});
  list.push_back({"theta_10", GRITWRIGHT_TEXT("theta at a suction of 10 cm of water"), {{"theta(10)", share(water.theta_10)}, in_grains}, "docs/science/water.md"});
  list.push_back({"theta_50", GRITWRIGHT_TEXT("theta at a suction of 50 cm of water"), {{"theta(50)", share(water.theta_50)}, in_grains}, "docs/science/water.md"});
  list.push_back({"easily_available", "theta(10) - theta(50)", {{"theta(10)", share(water.theta_10)}, {"theta(50)", share(water.theta_50)}},
                  GRITWRIGHT_TEXT("De Boodt & Verdonck 1972, from memory; docs/science/water.md")});
  const std::pair<std::string, std::string> open_voids{GRITWRIGHT_TEXT("open voids"), percent_text(water.total_air.value() + water.container_capacity.value())};
  list.push_back({"total_air", GRITWRIGHT_TEXT("all open voids, between and in grains, - water held"),
                  {open_voids, {GRITWRIGHT_TEXT("water held"), share(water.container_capacity)}}, "docs/science/water.md"});
  list.push_back({"available_in_pot", GRITWRIGHT_TEXT("water held - theta(50)"),
                  {{GRITWRIGHT_TEXT("water held"), share(water.container_capacity)}, {"theta(50)", share(water.theta_50)}}, "docs/science/water.md"});
  list.push_back({"trapped_air", GRITWRIGHT_TEXT("open voids - theta(0): gas a flood does not reach, and grain pores it does not fill"),
                  {open_voids, {"theta(0)", share(water.theta_0)}},
                  "docs/science/water.md"});
  list.push_back({"perched_height_cm", GRITWRIGHT_TEXT("height over the floor of the pot up to which the pores stay nine tenths full"),
                  with_conditions({{"k", significant(constants.k_cm_mm) + " cm mm"}, {"b", significant(constants.spread)}, {"n", significant(constants.n)}, {GRITWRIGHT_TEXT("filled depth"), depth_text(water.filled_depth, UnitSystem::metric)}}),
                  "docs/science/water.md"});
  std::vector<std::pair<std::string, std::string>> wet;
  if (water.mix_volume) wet.emplace_back(GRITWRIGHT_TEXT("volume of the mix"), volume_text(in_ml(*water.mix_volume) / 1000, UnitSystem::metric));
  wet.emplace_back(GRITWRIGHT_TEXT("water held"), share(water.container_capacity));
  wet.emplace_back(GRITWRIGHT_TEXT("litre weight"), density_text(in_g_l(state.settled->bulk_density), UnitSystem::metric));
  list.push_back({"wet_mass_g", GRITWRIGHT_TEXT("volume of the mix x (litre weight + 1000 g/L x water held)"), std::move(wet), "docs/science/water.md"});
  return list;
}

namespace {

std::string metric_litres(PotVolume volume) { return volume_text(in_ml(volume) / 1000, UnitSystem::metric); }

}  // namespace

std::vector<Explanation> explain(const PotGeometry& pot) {
  std::vector<Explanation> list{{"volume_ml", GRITWRIGHT_TEXT("integral of A(z) from the floor to the fill line"),
                                 {{GRITWRIGHT_TEXT("filled depth"), depth_text(pot.filled_depth(), UnitSystem::metric)},
                                  {GRITWRIGHT_TEXT("area at the floor"), figure(in_cm2(pot.area_at(Depth{})), 0) + " cm2"},
                                  {GRITWRIGHT_TEXT("area at the fill line"), figure(in_cm2(pot.area_at(pot.filled_depth())), 0) + " cm2"}},
                                 "docs/science/containers.md"}};
  list.push_back({"depth_cm", GRITWRIGHT_TEXT("height of the fill line over the floor: depth - fill line below rim"),
                  {{GRITWRIGHT_TEXT("filled depth"), depth_text(pot.filled_depth(), UnitSystem::metric)}}, "docs/science/containers.md"});
  list.push_back({"area_cm2", GRITWRIGHT_TEXT("A(z) of the shape at eleven equal heights from the floor to the fill line"),
                  {{GRITWRIGHT_TEXT("area halfway up"), figure(in_cm2(pot.area_at(pot.filled_depth() * 0.5)), 0) + " cm2"}}, "docs/science/containers.md"});
  if (pot.container().water_fill) {
    list.push_back({"volume_ml", GRITWRIGHT_TEXT("the water fill overrides the lengths; A(z) is scaled by their ratio"),
                    {{GRITWRIGHT_TEXT("water fill"), metric_litres(pot.volume())}, {GRITWRIGHT_TEXT("by the lengths"), metric_litres(pot.volume_by_lengths())}},
                    "docs/science/containers.md"});
  }
  return list;
}

Explanation explain_measuring_out(const PotGeometry& pot, const Mix& mix, const MixState& state) {
  Explanation explanation{"measure_out", GRITWRIGHT_TEXT("component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), "
                                                         "fill = volume + mound - bottom layer - top dressing"),
                          {{GRITWRIGHT_TEXT("volume"), metric_litres(pot.volume())},
                           {GRITWRIGHT_TEXT("mound"), metric_litres(pot.mound_volume())},
                           {GRITWRIGHT_TEXT("bottom layer"), metric_litres(pot.bottom_layer_volume())},
                           {GRITWRIGHT_TEXT("top dressing"), metric_litres(pot.top_dressing_volume())},
                           {GRITWRIGHT_TEXT("settling"), percent_text(counted_settling(mix).value())},
                           {GRITWRIGHT_TEXT("spill"), percent_text(counted_spill(mix).value())}},
                          "docs/science/packing.md"};
  if (state.shrinkage) explanation.inputs.emplace_back(GRITWRIGHT_TEXT("shrinkage"), percent_text(state.shrinkage->value()));
  for (std::size_t k = 0; k < mix.components.size(); ++k) explanation.inputs.emplace_back("share of " + mix.components[k].name, percent_text(state.loose_shares[k].value()));
  return explanation;
}

Explanation explain_mixed_price(const Mix& mix, const MixState& state, std::span<const std::optional<PricePerLitre>> prices) {
  Explanation explanation{"price", GRITWRIGHT_TEXT("sum over components of share x price of a loose litre / (1 - shrinkage)"), {}, "docs/science/packing.md"};
  for (std::size_t k = 0; k < prices.size(); ++k) {
    if (prices[k]) explanation.inputs.emplace_back(mix.components[k].name, percent_text(state.loose_shares[k].value()) + " x " + figure(prices[k]->value(), 2));
  }
  if (state.shrinkage) explanation.inputs.emplace_back(GRITWRIGHT_TEXT("shrinkage"), percent_text(state.shrinkage->value()));
  return explanation;
}

}  // namespace gritwright
