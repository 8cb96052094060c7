#include "gritwright/models/lot_control.hpp"

#include <cmath>
#include <numeric>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"

namespace gritwright {

namespace {

std::optional<PotWater> water_of(const Mix& mix, const MixState& state, const UncertainMix::Pot& pot) {
  if (const auto* depth = std::get_if<Depth>(&pot)) return mix_in_column(state, mix.water, *depth);
  if (const auto* container = std::get_if<PotGeometry>(&pot)) return mix_in_pot(state, mix.water, *container);
  return std::nullopt;
}

}  // namespace

std::optional<UsualRange> usual_range(std::span<const double> earlier) {
  if (earlier.size() < least_lots) return std::nullopt;
  UsualRange usual;
  usual.lots = earlier.size();
  usual.mean = std::accumulate(earlier.begin(), earlier.end(), 0.0) / static_cast<double>(earlier.size());
  for (std::size_t i = 1; i < earlier.size(); ++i) usual.mean_moving_range += std::abs(earlier[i] - earlier[i - 1]);
  usual.mean_moving_range /= static_cast<double>(earlier.size() - 1);
  usual.low = usual.mean - individuals_factor * usual.mean_moving_range;
  usual.high = usual.mean + individuals_factor * usual.mean_moving_range;
  usual.most_moving_range = moving_range_factor * usual.mean_moving_range;
  return usual;
}

const std::optional<double>& LotFigures::of(LotFigure figure) const {
  switch (figure) {
    case LotFigure::dust: return dust;
    case LotFigure::d50_mm: return d50_mm;
    case LotFigure::usable: return usable;
    case LotFigure::air: break;
  }
  return air;
}

Mix lot_alone(const Grading& grading, const GrainProperties& grain) {
  Mix alone;
  alone.components.push_back({"", Parts(1), grain, grading, {}});
  return alone;
}

LotFigures lot_figures(const Grading& grading, const Band& wanted, const std::optional<GrainProperties>& grain, MassShare lost) {
  LotFigures figures;
  if (const auto size = percentile(grading, 50)) figures.d50_mm = in_mm(*size);
  const auto packing = fraction_packing(grading, grain ? std::optional(dry_bulk_density(*grain)) : std::nullopt,
                                        grain ? grain->particle_density : std::nullopt);
  if (const auto verdict = judge(grading, wanted, {}, {}, packing.of, lost).value) {
    figures.dust = verdict->finer.value();
    figures.usable = verdict->usable.value();
  }
  if (!grain) return figures;
  const Mix alone = lot_alone(grading, *grain);
  const auto state = mix_state(alone);
  if (!state) return figures;
  if (const auto in_column = mix_in_column(*state, alone.water, lot_depth)) figures.air = in_column->air_filled_porosity.value();
  return figures;
}

std::vector<LotFinding> unusual(const LotFigures& lot, std::span<const LotFigures> earlier) {
  std::vector<LotFinding> findings;
  for (const LotFigure figure : {LotFigure::dust, LotFigure::d50_mm, LotFigure::usable, LotFigure::air}) {
    const auto& value = lot.of(figure);
    if (!value) continue;
    std::vector<double> before;
    for (const LotFigures& each : earlier)
      if (each.of(figure)) before.push_back(*each.of(figure));
    const auto usual = usual_range(before);
    if (!usual) continue;
    const LotFinding finding{figure, *value, *usual, !usual->holds(*value), std::abs(*value - before.back()) > usual->most_moving_range};
    if (finding.outside || finding.jump) findings.push_back(finding);
  }
  return findings;
}

std::optional<LotChange> lot_change(const Mix& mix, std::size_t component, const Grading& lot, std::optional<BulkDensity> bulk_density,
                                    const UncertainMix::Pot& pot) {
  Mix changed = mix;
  changed.components[component].sizes = lot;
  if (bulk_density) {
    changed.components[component].grain.bulk_density = *bulk_density;
    changed.components[component].grain.bulk_moisture = Moisture{};
  }
  const auto before = mix_state(mix), after = mix_state(changed);
  if (!before || !after || !before->shrinkage || !after->shrinkage) return std::nullopt;
  const auto water_before = water_of(mix, *before, pot), water_after = water_of(changed, *after, pot);
  if (!water_before || !water_after) return std::nullopt;
  return LotChange{water_before->air_filled_porosity, water_after->air_filled_porosity,  water_before->container_capacity,
                   water_after->container_capacity,   *before->shrinkage, *after->shrinkage};
}

}  // namespace gritwright
