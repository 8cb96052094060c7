#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/mix_spread.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/season.hpp"
#include "gritwright/models/slice_runner.hpp"

namespace gritwright {

struct GrainLitresRange {
  Range loose_l;
  Range ready_l;
  std::optional<Range> mass_kg;
};

struct MixOfDayRange {
  Range needed_l;
  std::vector<GrainLitresRange> components;  ///< by component; empty where the day's are
};

struct GrainTakenRange {
  Range raw_l;
  Range ready_l;
};

struct GrainToBuyRange {
  std::string material;
  Range short_l;
  Range raw_l;
  std::optional<Range> bags;
  double chance = 0;  ///< share of the draws in which some is to be bought, 0..1
};

/// Ranges in the order of the answer's lists.
struct DayRanges {
  std::vector<MixOfDayRange> mixes;
  std::vector<GrainLitresRange> components;
  std::vector<GrainTakenRange> taken;   ///< empty for a season
  std::vector<GrainToBuyRange> buy;
  std::vector<GrainToBuyRange> may_buy; ///< what the answer does not ask for and some draws do
  std::vector<Range> lifts_kg;          ///< empty for a season
};

/// A day worked out again for every draw of what is uncertain: the mixes by `spreads` (in the day's order), inside lengths of pots, the
/// packing model, and what a screening yields. Precondition: work_out(day) succeeds. The same for every runner. Source:
/// docs/science/uncertainty.md.
[[nodiscard]] DayRanges day_ranges(const PlannedDay& day, std::span<const MixSpread> spreads, const SampleSize& size = {512, 1},
                                   const SliceRunner& runner = run_in_order);
/// The same for a season's totals.
[[nodiscard]] DayRanges season_ranges(const PlannedSeason& season, std::span<const MixSpread> spreads, const SampleSize& size = {256, 1},
                                      const SliceRunner& runner = run_in_order);

}  // namespace gritwright
