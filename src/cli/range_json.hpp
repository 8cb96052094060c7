#pragma once
#include "gritwright/models/day_ranges.hpp"
#include "gritwright/models/grading_ranges.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "json_out.hpp"

namespace gritwright::cli {

/// `{low, median, high}`, each times `factor`.
[[nodiscard]] Json to_json(const Range& range, double factor = 1);
[[nodiscard]] Json to_json(const std::optional<Range>& range, double factor = 1);
[[nodiscard]] Json to_json(const std::optional<OpenRange>& range, double factor = 1);

/// Puts a `range` beside the figures of `mix` or `grade` JSON: in a row of a list that has one figure the range itself, else an
/// object with the keys of the figures.
void add_ranges(Json& mix, const MixRanges& ranges);
void add_pot_ranges(Json& pot, const MixRanges& ranges);
void add_ranges(Json& grade, const GradingRanges& ranges);

/// To the JSON of a day or a season; `may_buy` lists what some cases ask for and the answer does not.
void add_ranges(Json& day, const DayRanges& ranges);
/// To `raw` and `ready` of a day.
void add_taken_ranges(Json& day, const DayAnswer& answer, const DayRanges& ranges);

/// Rows of `{figure, source, component, share, half_range_now, half_range_then, text}`, the figure's own unit.
void add_narrowing(Json& rows, const std::vector<Narrowing>& narrowings, const Mix& mix, MixFigure figure);

}  // namespace gritwright::cli
