#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/season.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// "14.2 kg", "31.3 lb"; "at least 14.2 kg" where a part was not weighed.
[[nodiscard]] std::string lift_mass_text(const Lift& lift, UnitSystem units, const Translate& translate = {});
/// "T-01 in tray", "tub of pines".
[[nodiscard]] std::string lift_name(const Lift& lift, const Translate& translate = {});
/// "2 bags", or the raw litres where no bag size is known.
[[nodiscard]] std::string purchase_text(const GrainToBuy& purchase, UnitSystem units, const Translate& translate = {});

/// How far buds are, from the least on, as files spell it; each is a GRITWRIGHT_TEXT.
[[nodiscard]] std::span<const std::string_view> bud_states();
/// Buds in the reader's words where they are one of these states; else as they were typed.
[[nodiscard]] std::string bud_text(const std::string& bud, const Translate& translate = {});

/// The day as tables and lines for people: trees in working order, mixes, batches, grain, what to screen, buy and lift.
[[nodiscard]] std::string day_text(const PlannedDay& day, const DayAnswer& answer, UnitSystem units);
/// Trees due, litres by mix, grain, what to buy, and which bags several days want.
[[nodiscard]] std::string season_text(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units);

/// Formula, numbers and source of the litres, the raw grain, the bags and the lifts.
[[nodiscard]] std::vector<Explanation> explain(const PlannedDay& day, const DayAnswer& answer);
[[nodiscard]] std::vector<Explanation> explain(const PlannedSeason& season, const SeasonAnswer& answer);

}  // namespace gritwright
