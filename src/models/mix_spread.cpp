#include "gritwright/models/mix_spread.hpp"

#include <algorithm>
#include <numbers>

#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

constexpr double score_of_95_percent = 1.6448536269514722;

// Spreads of typical figures without a range of their own, and of what nobody measures; our assumptions.
constexpr double typical_density_factor = 1.15;
constexpr double typical_packing_deviation = 0.05;
constexpr double typical_skeletal_factor = 1.04;
constexpr double typical_absorption_factor = 1.3;
constexpr double typical_open_share_deviation = 0.1;
constexpr double pot_length_half_range_cm = 0.2;
constexpr double water_fill_deviation = 0.01;
/// Worked-in mixes lose 5-13 % where 8 % is usual. Source: gillette-hill-1908 Table IX.
constexpr double settling_usual = 8, settling_low = 5, settling_high = 13;

FactorSpread measured(double deviation) { return {deviation, deviation}; }
FactorSpread typical(double factor) { return factor_within(1, 1 / factor, factor); }

/// A figure that still is the catalogue's has the catalogue's range; any other was given by the grower.
bool is_of(const std::optional<CatalogueFigure>& figure, double value) {
  return figure && std::abs(figure->value - value) <= 1e-9 * std::abs(value);
}

FactorSpread ranged(const CatalogueFigure& figure, double factor_without) {
  if (!figure.low || !figure.high || !(*figure.low > 0)) return typical(factor_without);
  return factor_within(figure.value, *figure.low, *figure.high);
}

ComponentSpread component_spread(const Component& component, const Material* material, Mass sample) {
  const GrainProperties& grain = component.grain;
  ComponentSpread spread;
  spread.bulk_density = measured(measured_density_deviation);
  if (material != nullptr && is_of(material->bulk_density_g_l, in_g_l(grain.bulk_density)))
    spread.bulk_density = ranged(material->bulk_density_g_l, typical_density_factor);
  spread.particle_density = measured(measured_density_deviation);
  if (material != nullptr && grain.particle_density && is_of(material->particle_density_g_l, in_g_l(*grain.particle_density))) {
    spread.particle_by_packing = true;
    spread.particle_density = measured(typical_packing_deviation);
  }
  spread.skeletal_density = measured(measured_density_deviation);
  if (material != nullptr && grain.skeletal_density && is_of(material->skeletal_density_g_l, in_g_l(*grain.skeletal_density)))
    spread.skeletal_density = ranged(*material->skeletal_density_g_l, typical_skeletal_factor);
  if (material != nullptr && is_of(material->open_share, grain.open_share.value())) spread.open_share = typical_open_share_deviation;
  spread.water_absorption = measured(measured_absorption_deviation);
  if (material != nullptr && grain.water_absorption && is_of(material->water_absorption, grain.water_absorption->value()))
    spread.water_absorption = ranged(*material->water_absorption, typical_absorption_factor);
  spread.class_masses = class_mass_deviations(component.sizes, grain.particle_density, sample);
  spread.sieving = std::holds_alternative<SingleSize>(component.sizes) ? 0 : 1;
  return spread;
}

}  // namespace

FactorSpread factor_within(double value, double low, double high) {
  return {std::log(value / low) / score_of_95_percent, std::log(high / value) / score_of_95_percent};
}

std::vector<double> class_mass_deviations(const GrainSizes& sizes, std::optional<ParticleDensity> density, Mass sample) {
  const std::vector<SizeClass> classes = size_classes(sizes);
  const double grain_g_l = density ? in_g_l(*density) : 1000;
  std::vector<double> deviations;
  for (const SizeClass& each : classes) {
    if (classes.size() == 1) {
      deviations.push_back(0);
      continue;
    }
    const double size_m = in_mm(each.size) / 1000;
    const double grain_kg = std::numbers::pi / 6 * grain_g_l * size_m * size_m * size_m;
    // A class of less than one grain in the sample could be anything; a factor of e either way is wide enough.
    deviations.push_back(std::min(1.0, std::sqrt(grain_kg / (each.share.value() * in_kg(sample)))));
  }
  return deviations;
}

MixSpread usual_spread(const Mix& mix, const Catalogue* catalogue, Mass sample) {
  MixSpread spread;
  for (const Component& component : mix.components) {
    const Material* material = catalogue != nullptr && component.material ? catalogue->find(*component.material) : nullptr;
    spread.components.push_back(component_spread(component, material, sample));
  }
  spread.packing_voids = packing_voids_error / score_of_95_percent;
  spread.settling = factor_within(settling_usual, settling_low, settling_high);
  spread.pot_length_cm = pot_length_half_range_cm / score_of_95_percent;
  spread.water_fill = water_fill_deviation;
  return spread;
}

}  // namespace gritwright
