#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// "the old bottom (down)": both names of what a cut takes.
[[nodiscard]] std::string cut_text(const PlannedCut& cut);
/// A growth of the pot as it is told: rounded up, never smaller than what fits.
[[nodiscard]] std::string growth_length_text(Length by, UnitSystem units);
/// "move the tree", "tip less" ...
[[nodiscard]] std::string rung_text(Rung rung);

/// The sheet for the bench: what limits the fit, plans A, B, C with their steps, the stop table. `growth` where plan A does not fit.
[[nodiscard]] std::string root_plan_text(const RootMassPlan& plan, const RootPlanAnswer& answer, const std::optional<PotGrowth>& growth,
                                         UnitSystem units);

/// Where the figures of one of the answer's plans come from, 0 for plan A. Keys excess, corners, removed, untouched, soil_line, fill, shoulder.
[[nodiscard]] std::vector<Explanation> explain(const RootMassPlan& plan, const RootPlanAnswer& answer, std::size_t which = 0);

}  // namespace gritwright
