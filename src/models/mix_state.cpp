#include "gritwright/models/mix_state.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <string>

#include "gritwright/domain/grain_words.hpp"
#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

constexpr double water_density_g_l = 1000;
// Solids of the media in use, from light organic matter to basalt glass; beyond it a density was probably mistyped.
constexpr double lightest_solid_g_l = 300;
constexpr double heaviest_solid_g_l = 2950;
// Parts that add up to nearly 100 were probably meant as percent.
constexpr double near_hundred = 5;
// Equal grains neither shrink nor swell but for the last bits.
constexpr double state_rounding = 1e-9;

bool speaks_of_any(const Component& component, std::initializer_list<GrainWord> grains) {
  const std::string name = component.material.value_or("") + " " + component.name;
  return std::ranges::any_of(grains, [&](GrainWord grain) { return speaks_of(name, grain); });
}

bool organic_or_fibrous(const Component& component) {
  return speaks_of_any(component, {GrainWord::moss, GrainWord::bark, GrainWord::peat, GrainWord::coir, GrainWord::compost});
}

/// Grain that gives way under its own load or a finger: the packing model is made for rigid grain.
bool yields(const Component& component) { return organic_or_fibrous(component) || speaks_of_any(component, {GrainWord::soft_clay, GrainWord::vermiculite}); }

/// What the mix is computed from, one component at a time; doubles carry their unit in the name.
struct Part {
  const Component* component = nullptr;
  double loose_l = 0;
  double mass_g = 0;
  double envelope_l = 0;
};

class Blend {
 public:
  explicit Blend(const Mix& mix) : mix_(mix) {
    for (const Component& component : mix.components) {
      Part part{&component, component.parts.value(), 0, 0};
      part.mass_g = part.loose_l * in_g_l(dry_bulk_density(component.grain));
      if (component.grain.particle_density) part.envelope_l = part.mass_g / in_g_l(*component.grain.particle_density);
      loose_l_ += part.loose_l;
      mass_g_ += part.mass_g;
      envelope_l_ += part.envelope_l;
      parts_.push_back(part);
    }
  }

  Result<MixState> run() {
    shares();
    grains();
    gradings();
    for (const Part& part : parts_) notes_on(part);
    if (std::abs(loose_l_ - 100) > state_rounding && std::abs(loose_l_ - 100) <= near_hundred)
      state_.notes.push_back({"mix.parts-near-hundred", Level::warning, {}, {{"sum", loose_l_}}});
    if (!all_particle_densities_known()) return std::move(state_);
    densities();
    return packed();
  }

 private:
  void note(const char* code, const Component& component, Facts facts = {}, Level level = Level::note) {
    state_.notes.push_back({code, level, component.name, std::move(facts)});
  }

  [[nodiscard]] bool all_particle_densities_known() const {
    return std::ranges::all_of(parts_, [](const Part& part) { return part.loose_l <= 0 || part.component->grain.particle_density; });
  }

  void shares() {
    for (const Part& part : parts_) {
      state_.loose_shares.emplace_back(part.loose_l / loose_l_);
      state_.mass_shares.emplace_back(part.mass_g / mass_g_);
      state_.organic_or_fibrous = state_.organic_or_fibrous || (part.loose_l > 0 && organic_or_fibrous(*part.component));
    }
    if (!all_particle_densities_known()) return;
    state_.envelope_shares.emplace();
    for (const Part& part : parts_) state_.envelope_shares->emplace_back(part.envelope_l / envelope_l_);
  }

  void grains() {
    for (const Part& part : parts_) {
      const GrainProperties& grain = part.component->grain;
      state_.grain_pores.push_back(grain_pores(grain, mix_.water.grain_fill));
      const auto own = own_packing_density(grain);
      state_.class_betas.push_back(own ? std::optional(class_beta(size_classes(part.component->sizes), *own)) : std::nullopt);
    }
  }

  void gradings() {
    std::vector<std::vector<GradingPoint>> curves;
    std::vector<double> masses, envelopes;
    double pan_g = 0;
    for (const Part& part : parts_) {
      curves.push_back(closed_grading(part.component->sizes));
      masses.push_back(part.mass_g);
      envelopes.push_back(part.envelope_l);
      if (const auto* grading = std::get_if<Grading>(&part.component->sizes))
        pan_g += part.mass_g * grading->points.front().passing.value();
    }
    state_.pan_share = MassShare(pan_g / mass_g_);
    state_.grading = blended_grading(curves, masses);
    state_.passing = at_sieves(state_.grading);
    if (!all_particle_densities_known()) return;
    state_.envelope_grading = blended_grading(curves, envelopes);
    state_.envelope_passing = at_sieves(*state_.envelope_grading);
  }

  /// Of a whole curve only what stands at a component's own sieve or size, a step by its upper end.
  [[nodiscard]] std::vector<GradingPoint> at_sieves(const std::vector<GradingPoint>& curve) const {
    std::vector<Aperture> sieves;
    for (const Part& part : parts_) {
      if (!(part.loose_l > 0)) continue;
      if (const auto* single = std::get_if<SingleSize>(&part.component->sizes))
        sieves.push_back(single->size);
      else
        for (const GradingPoint& point : std::get<Grading>(part.component->sizes).points) sieves.push_back(point.aperture);
    }
    std::ranges::sort(sieves);
    std::vector<GradingPoint> points;
    for (const GradingPoint& point : curve) {
      if (!std::ranges::binary_search(sieves, point.aperture)) continue;
      if (!points.empty() && points.back().aperture == point.aperture) points.pop_back();
      points.push_back(point);
    }
    return points;
  }

  void notes_on(const Part& part) {
    if (!(part.loose_l > 0)) return;
    const Component& component = *part.component;
    const GrainProperties& grain = component.grain;
    if (!grain.particle_density) note("mix.no-particle-density", component);
    if (!grain.cation_exchange) note("mix.no-cation-exchange", component);
    if (grain.provenance == Provenance::typical) note("mix.typical-figures", component);
    if (yields(component)) note("mix.grain-yields", component);
    solids_note(component);
    if (const auto* grading = std::get_if<Grading>(&component.sizes)) size_notes(component, *grading);
  }

  void solids_note(const Component& component) {
    const GrainProperties& grain = component.grain;
    const auto pores = grain_pores(grain, mix_.water.grain_fill);
    if (pores && !grain.skeletal_density && pores->open.value() > 0) note("mix.open-pores-only", component);
    if (!grain.skeletal_density && !pores) return;
    const double solid_g_l =
        grain.skeletal_density ? in_g_l(*grain.skeletal_density) : in_g_l(*grain.particle_density) / (1 - pores->open.value());
    if (solid_g_l < lightest_solid_g_l || solid_g_l > heaviest_solid_g_l)
      note(grain.skeletal_density ? "mix.skeletal-density-doubtful" : "mix.particle-density-doubtful", component,
           {{"density_g_l", solid_g_l}, {"low", lightest_solid_g_l}, {"high", heaviest_solid_g_l}}, Level::warning);
  }

  void size_notes(const Component& component, const Grading& grading) {
    const double above = 1 - grading.points.back().passing.value();
    const double below = grading.points.front().passing.value();
    if (above > 0 && !grading.top_size)
      note("mix.top-size-assumed", component,
           {{"percent", above * 100}, {"aperture_mm", in_mm(grading.points.back().aperture)}, {"top_mm", in_mm(top_size(grading))}});
    if (below > 0 && !grading.pan_size)
      note("mix.pan-size-assumed", component,
           {{"percent", below * 100}, {"aperture_mm", in_mm(grading.points.front().aperture)}, {"size_mm", in_mm(pan_size(grading))}});
  }

  void densities() {
    state_.particle_density = particle_g_l(mass_g_ / envelope_l_);
    double solid_l = 0;
    for (std::size_t k = 0; k < parts_.size(); ++k) {
      if (!(parts_[k].loose_l > 0)) continue;
      const GrainProperties& grain = parts_[k].component->grain;
      // Without a skeletal density grain that takes up no water is solid; of the solid of porous grain nothing is known.
      if (!grain.skeletal_density && state_.grain_pores[k]->open.value() > 0) return;
      solid_l += grain.skeletal_density ? parts_[k].mass_g / in_g_l(*grain.skeletal_density) : parts_[k].envelope_l;
    }
    state_.skeletal_density = skeletal_g_l(mass_g_ / solid_l);
  }

  [[nodiscard]] PackingDensity poured_packing_density() const {
    std::vector<PackingClass> classes;
    for (std::size_t k = 0; k < parts_.size(); ++k) {
      if (!(parts_[k].loose_l > 0)) continue;
      for (const SizeClass& each : size_classes(parts_[k].component->sizes))
        classes.push_back({each.size, each.share * (parts_[k].envelope_l / envelope_l_), *state_.class_betas[k]});
    }
    return gritwright::packing_density(classes);
  }

  Result<MixState> packed() {
    const double phi = poured_packing_density().value();
    const double settling = counted_settling(mix_).value();
    const double settled_phi = phi / (1 - settling);
    if (settled_phi >= 1)
      return problem_at("mix.settling-beyond-voids", "/settling", {{"percent", settling * 100}, {"most_percent", (1 - phi) * 100}});
    const bool alone = std::ranges::count_if(parts_, [](const Part& part) { return part.loose_l > 0; }) == 1;
    state_.shrinkage = Shrinkage(alone ? 0 : 1 - envelope_l_ / phi / loose_l_);
    state_.poured = packed_at(phi);
    state_.settled = packed_at(settled_phi);
    if (state_.shrinkage->value() < -state_rounding)
      state_.notes.push_back({"mix.swells", Level::note, {}, {{"percent", -100 * state_.shrinkage->value()}}});
    return std::move(state_);
  }

  [[nodiscard]] PackedState packed_at(double phi) const {
    const double volume_l = envelope_l_ / phi;
    double pores = 0, open = 0, water = 0, exchange_meq = 0;
    bool exchange_known = true;
    for (std::size_t k = 0; k < parts_.size(); ++k) {
      if (!(parts_[k].loose_l > 0)) continue;
      const double bulk_share = phi * parts_[k].envelope_l / envelope_l_;
      pores += bulk_share * state_.grain_pores[k]->pores.value();
      open += bulk_share * state_.grain_pores[k]->open.value();
      water += bulk_share * state_.grain_pores[k]->water.value();
      const auto& exchange = parts_[k].component->grain.cation_exchange;
      exchange_known = exchange_known && exchange;
      if (exchange) exchange_meq += parts_[k].mass_g * exchange->value() / 100;
    }
    return {PackingDensity(phi),
            mixed_l(volume_l),
            bulk_g_l(mass_g_ / volume_l),
            Porosity(1 - phi),
            Porosity(pores),
            Porosity(open),
            Porosity(1 - phi + pores),
            Porosity(water),
            exchange_known ? std::optional(CationExchangePerVolume(exchange_meq / volume_l)) : std::nullopt};
  }

  const Mix& mix_;
  std::vector<Part> parts_;
  double loose_l_ = 0;
  double mass_g_ = 0;
  double envelope_l_ = 0;
  MixState state_;
};

}  // namespace

std::optional<GrainPores> grain_pores(const GrainProperties& grain, double grain_fill) {
  if (!grain.particle_density) return std::nullopt;
  const double particle_g_l = in_g_l(*grain.particle_density);
  const double pores = grain.skeletal_density ? std::max(0.0, 1 - particle_g_l / in_g_l(*grain.skeletal_density)) : 0;
  double open = grain.open_share.value() * pores;
  double water = open * grain_fill;
  if (grain.water_absorption) {
    water = grain.water_absorption->value() * particle_g_l / water_density_g_l;
    open = std::max(open, water);
  }
  return GrainPores{Porosity(std::max(pores, open)), Porosity(open), Porosity(water)};
}

std::optional<PackingDensity> own_packing_density(const GrainProperties& grain) {
  if (!grain.particle_density) return std::nullopt;
  return PackingDensity(in_g_l(dry_bulk_density(grain)) / in_g_l(*grain.particle_density));
}

Result<MixState> mix_state(const Mix& mix) {
  if (Problems problems = check(mix); !problems.empty()) return problems;
  return Blend(mix).run();
}

std::optional<Component> mix_as_grain(const Mix& mix) {
  const Result<MixState> state = mix_state(mix);
  if (!state || !state->poured) return std::nullopt;
  const PackedState& poured = *state->poured;
  Component grain;
  grain.name = mix.name;
  grain.parts = Parts(1);
  grain.grain.bulk_density = poured.bulk_density;
  grain.grain.particle_density = state->particle_density;
  grain.grain.skeletal_density = state->skeletal_density;
  const double bulk = in_g_l(poured.bulk_density);
  if (poured.voids_in_grains.value() > 0) grain.grain.open_share = OpenShare(std::min(1.0, poured.open_voids_in_grains.value() / poured.voids_in_grains.value()));
  grain.grain.water_absorption = WaterAbsorption(poured.grain_water.value() * water_density_g_l / bulk);
  if (poured.cation_exchange) grain.grain.cation_exchange = CationExchange(poured.cation_exchange->value() / bulk * 100);
  Grading sizes{state->passing, {}, {}};
  // Sums of shares may fall by their last digit where nothing lies between two sieves.
  for (std::size_t i = 1; i < sizes.points.size(); ++i) sizes.points[i].passing = std::max(sizes.points[i].passing, sizes.points[i - 1].passing);
  grain.sizes = std::move(sizes);
  return check(grain).empty() ? std::optional(std::move(grain)) : std::nullopt;
}

}  // namespace gritwright
