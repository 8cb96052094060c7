#pragma once
#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/season.hpp"
#include "json_out.hpp"

namespace gritwright::cli {

[[nodiscard]] Json day_json(const PlannedDay& day, const DayAnswer& answer);
/// The keys of a day for all days together, and the days themselves.
[[nodiscard]] Json season_json(const PlannedSeason& season, const SeasonAnswer& answer);

}  // namespace gritwright::cli
