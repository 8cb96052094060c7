#include "gritwright/models/mix_spread.hpp"

#include <algorithm>

#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/range.hpp"

namespace gritwright {

namespace {

// Spreads of typical figures without a range of their own, and of what nobody measures; our assumptions.
constexpr double typical_density_factor = 1.15;
constexpr double typical_packing_deviation = 0.05;
constexpr double typical_skeletal_factor = 1.04;
constexpr double typical_absorption_factor = 1.3;
constexpr double typical_open_share_deviation = 0.1;
/// Worked-in mixes lose 5-13 % where 8 % is usual. Source: gillette-hill-1908 Table IX.
constexpr double settling_usual = 8, settling_low = 5, settling_high = 13;

FactorSpread measured(double deviation) { return {deviation, deviation}; }
FactorSpread typical(double factor) { return factor_within(1, 1 / factor, factor); }

FactorSpread ranged(const CatalogueFigure& figure, double factor_without) {
  if (!figure.low || !figure.high || !(*figure.low > 0)) return typical(factor_without);
  return factor_within(figure.value, *figure.low, *figure.high);
}

ComponentSpread component_spread(const Component& component, const Material* material, const SievedSample& sample) {
  const GrainProperties& grain = component.grain;
  ComponentSpread spread;
  spread.bulk_density = measured(measured_density_deviation);
  if (material != nullptr && is_typical(material->bulk_density_g_l, in_g_l(grain.bulk_density)))
    spread.bulk_density = ranged(material->bulk_density_g_l, typical_density_factor);
  spread.particle_density = measured(measured_density_deviation);
  if (material != nullptr && grain.particle_density && is_typical(material->particle_density_g_l, in_g_l(*grain.particle_density))) {
    spread.particle_by_packing = true;
    spread.particle_density = measured(typical_packing_deviation);
  }
  spread.skeletal_density = measured(measured_density_deviation);
  if (material != nullptr && grain.skeletal_density && is_typical(material->skeletal_density_g_l, in_g_l(*grain.skeletal_density)))
    spread.skeletal_density = ranged(*material->skeletal_density_g_l, typical_skeletal_factor);
  if (material != nullptr && is_typical(material->open_share, grain.open_share.value())) spread.open_share = typical_open_share_deviation;
  spread.water_absorption = measured(measured_absorption_deviation);
  if (material != nullptr && grain.water_absorption && is_typical(material->water_absorption, grain.water_absorption->value()))
    spread.water_absorption = ranged(*material->water_absorption, typical_absorption_factor);
  spread.grading = sieving_spread(component.sizes, grain.particle_density, sample);
  return spread;
}

}  // namespace

FactorSpread factor_within(double value, double low, double high) {
  return {std::log(value / low) / score_of_95_percent, std::log(high / value) / score_of_95_percent};
}

MixSpread usual_spread(const Mix& mix, const Catalogue* catalogue, std::span<const std::optional<SievedSample>> samples) {
  MixSpread spread;
  for (std::size_t k = 0; k < mix.components.size(); ++k) {
    const Component& component = mix.components[k];
    const Material* material = catalogue != nullptr && component.material ? catalogue->find(*component.material) : nullptr;
    const SievedSample sample = k < samples.size() && samples[k] ? *samples[k] : SievedSample{};
    spread.components.push_back(component_spread(component, material, sample));
  }
  spread.packing_voids = packing_voids_error / score_of_95_percent;
  spread.settling = factor_within(settling_usual, settling_low, settling_high);
  spread.pot = usual_pot_spread();
  return spread;
}

}  // namespace gritwright
