#pragma once
// How sure the litres and bags of a repotting day or season are, as sections beside the figures themselves.

#include <span>
#include <vector>

#include "day_ground.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/models/day_ranges.hpp"
#include "gritwright/report/print_document.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright::desktop {

/// What is uncertain about each mix of a day, in its order. `mixes` say which of the record's they are, `calibrations` are those of the record.
[[nodiscard]] std::vector<MixSpread> spreads_of(const PlannedDay& day, const std::vector<DayMixSources>& mixes, const OpenWorkbook& workbook, const Catalogue& catalogue,
                                                std::span<const MixCalibration> calibrations);

/// 5, 50 and 95 of 100 cases of the litres by mix and by component.
[[nodiscard]] std::vector<PrintSection> litres_certainty(const DayRanges& ranges, const std::vector<MixOfDay>& mixes, const std::vector<GrainLitres>& components, UnitSystem units);
/// The same of the bags to buy, and what may run short although nothing is to be bought; empty where there is neither.
[[nodiscard]] std::vector<PrintSection> bags_certainty(const DayRanges& ranges, UnitSystem units);

}  // namespace gritwright::desktop
