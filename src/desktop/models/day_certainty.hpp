#pragma once
// How sure the litres and bags of a repotting day or season are, as sections beside the figures themselves.

#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/models/day_ranges.hpp"
#include "gritwright/report/print_document.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright::desktop {

/// What is uncertain about each mix of the day, in its order.
[[nodiscard]] std::vector<MixSpread> spreads_of(const PlannedDay& day, const Catalogue& catalogue);

/// 5, 50 and 95 of 100 cases of the litres by mix and by component.
[[nodiscard]] std::vector<PrintSection> litres_certainty(const DayRanges& ranges, const std::vector<MixOfDay>& mixes, const std::vector<GrainLitres>& components, UnitSystem units);
/// The same of the bags to buy, and what may run short although nothing is to be bought; empty where there is neither.
[[nodiscard]] std::vector<PrintSection> bags_certainty(const DayRanges& ranges, UnitSystem units);

}  // namespace gritwright::desktop
