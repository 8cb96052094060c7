#pragma once
#include <optional>
#include <vector>

#include "day_ground.hpp"
#include "gritwright/models/day_litres.hpp"

namespace gritwright::desktop {

/// What ticking trees off writes, as one step: the day, each tree's history, the grain that left the shelf, the log. `rows` are those
/// of the record's day; trees done already are left out. Litres that were not typed are taken as planned. Empty if nothing is to do.
[[nodiscard]] std::optional<Change> tick_off(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer,
                                             const Stored<RepottingDay>& day, const std::vector<std::size_t>& rows, const std::string& today);

/// What changing a tree that was ticked off writes, as one step: its row, its history as if it had been ticked off so, the grain that is
/// more or less, the log. The mix stays. Empty where nothing changes or its history is gone.
[[nodiscard]] std::optional<Change> correct_tick(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer,
                                                 const Stored<RepottingDay>& day, std::size_t row, DayTree corrected, const std::string& today);

/// A day that gets another date after trees were ticked off on it: their histories and its batches go with it. Empty where none was.
[[nodiscard]] std::optional<Change> move_done_day(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, RepottingDay now, const std::string& today);

/// Takes a tick back: the grain returns to its bags, the tree's history loses this repotting, and its trunk base lies as it did before.
[[nodiscard]] std::optional<Change> take_tick_back(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::size_t row,
                                                   const std::string& today);

/// What was made of a mix of `ground` and what is left of it. The left-over goes into stock as a batch; what went beyond the trees' own
/// litres leaves the shelf.
struct TubLeft {
  std::size_t mix = 0;
  MixedVolume made;
  MixedVolume left;
};
[[nodiscard]] std::optional<Change> return_left_over(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer,
                                                     const Stored<RepottingDay>& day, const TubLeft& tub, const std::string& today);

}  // namespace gritwright::desktop
