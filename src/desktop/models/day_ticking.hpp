#pragma once
#include <optional>
#include <string>
#include <vector>

#include "day_ground.hpp"
#include "gritwright/models/day_litres.hpp"

namespace gritwright::desktop {

struct TickedOff {
  Change change;
  std::vector<std::string> without_cuts;  ///< trees whose root-mass plan could not be worked out: their histories say nothing of what was cut
};
/// What ticking trees off writes, as one step: the day, each tree's history, the grain that left the shelf, the log. `rows` are those
/// of the record's day; trees done already are left out. Litres that were not typed are taken as planned. Empty if nothing is to do.
[[nodiscard]] std::optional<TickedOff> tick_off(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer,
                                             const Stored<RepottingDay>& day, const std::vector<std::size_t>& rows, const std::string& today);

/// A tree that was ticked off, as its row shall be.
struct TickCorrection {
  std::size_t row = 0;
  DayTree wanted;
  std::optional<std::vector<GrainLitres>> layers_before;  ///< by the row as it was; absent: layers stay as they were booked
};
/// Layers that the day counts for a row of the record; empty where that is left out.
[[nodiscard]] std::optional<std::vector<GrainLitres>> layers_of(const DayGround& ground, const DayAnswer& answer, std::size_t row);

/// What a correction writes, as one step: the row, its history as if it had been ticked off so, the grain and the layers that are more or less,
/// the log. The mix stays. `ground` and `answer` are of the day with the row as wanted. Empty where nothing changes, its history is gone, or a plan
/// that it is changed to can't be worked out.
[[nodiscard]] std::optional<Change> correct_tick(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer,
                                                 const Stored<RepottingDay>& day, const TickCorrection& correction, const std::string& today);

/// A day that gets another date after trees were ticked off or tubs made on it: their histories, its batches, and the ledger's and the log's lines of
/// that date go with it. Empty where none were.
[[nodiscard]] std::optional<Change> move_done_day(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, RepottingDay now, const std::string& today);

/// Takes a tick back: the grain returns to its bags, but for what a tub was made of; the tree's history loses this repotting, and its trunk base lies as it did before.
[[nodiscard]] std::optional<Change> take_tick_back(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::size_t row,
                                                   const std::string& today);

/// What was made of a mix of `ground` and what is left of it. The left-over goes into stock as a batch; what went beyond the trees' own
/// litres leaves the shelf.
struct TubLeft {
  std::size_t mix = 0;
  MixedVolume made;
  MixedVolume left;
};
/// "Made 30.0 L of pines, 2.00 L left over, kept as BT-01"
[[nodiscard]] QString left_over_words(const QString& mix, MixedVolume made, MixedVolume left, const RecordRef& tub);
[[nodiscard]] std::optional<Change> return_left_over(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer,
                                                     const Stored<RepottingDay>& day, const TubLeft& tub, const std::string& today);

}  // namespace gritwright::desktop
