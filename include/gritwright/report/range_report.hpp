#pragma once
#include <string>
#include <vector>

#include "gritwright/models/ageing.hpp"
#include "gritwright/models/day_ranges.hpp"
#include "gritwright/models/grading_ranges.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// "weigh a litre of the pumice: range of air from ±6.1 to ±3.2 points". Air-filled porosity and container capacity only.
[[nodiscard]] std::string narrowing_sentence(const Narrowing& narrowing, const Mix& mix, MixFigure figure, const Translate& translate = {});

/// Low, median and high of a mix, and in a pot of its air and water, as a table.
[[nodiscard]] std::string ranges_text(const MixRanges& ranges, const std::string& heading, UnitSystem units);
/// Of a sieve test.
[[nodiscard]] std::string ranges_text(const SieveAnalysis& analysis, const GradingRanges& ranges, const std::string& heading,
                                      UnitSystem units);

/// Litres and bags of a day or season; chances of a shortage the answer does not have, from 1 %.
[[nodiscard]] std::string ranges_text(const DayRanges& ranges, const std::vector<MixOfDay>& mixes, const std::vector<GrainLitres>& components,
                                      const std::string& heading, UnitSystem units);

/// Decimals for a range of shares beside a share of one decimal: none, but one where whole percents would not tell the ends apart or not
/// hold the share.
[[nodiscard]] int percent_range_decimals(const Range& range, double share);

/// Air over the years as a table, for crumbs that stay and crumbs that wash down.
[[nodiscard]] std::string years_text(const AirOverYears& years);

/// "What would narrow it most": the three largest for air and for water, a sentence a line. Empty where nothing would.
[[nodiscard]] std::string narrowing_text(const std::vector<Narrowing>& air, const std::vector<Narrowing>& water, const Mix& mix);

}  // namespace gritwright
