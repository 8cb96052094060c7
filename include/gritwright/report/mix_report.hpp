#pragma once
#include <optional>
#include <span>
#include <string>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// The mix as a table and lines for people.
[[nodiscard]] std::string mix_text(const Mix& mix, const MixState& state, UnitSystem units);

/// Air and water in a pot; never without the depth they belong to.
[[nodiscard]] std::string pot_water_text(const PotWater& water, UnitSystem units);

/// What the pot takes and what the mix in it weighs when it has drained.
[[nodiscard]] std::string pot_mass_text(PotVolume to_fill_line, Mass wet_mix, UnitSystem units);

/// Shares, packing, shrinkage, voids and water of a mix: formula, numbers, source.
[[nodiscard]] std::vector<Explanation> explain(const Mix& mix, const MixState& state);
/// `container`: what stands under the pot and at its floor is listed too; null for a bare depth.
[[nodiscard]] std::vector<Explanation> explain(const Mix& mix, const MixState& state, const PotWater& water, const Container* container = nullptr);

/// Volume, depth, areas and, where there is one, the water fill of a container.
[[nodiscard]] std::vector<Explanation> explain(const PotGeometry& pot);

/// The litres to measure out for one pot, as "measure_out".
[[nodiscard]] Explanation explain_measuring_out(const PotGeometry& pot, const Mix& mix, const MixState& state);

/// The price of a mixed litre, as "price". Precondition: one price per component.
[[nodiscard]] Explanation explain_mixed_price(const Mix& mix, const MixState& state, std::span<const std::optional<PricePerLitre>> prices);

}  // namespace gritwright
