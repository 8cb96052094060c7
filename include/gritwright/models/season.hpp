#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/planned_day.hpp"
#include "gritwright/models/day_litres.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Whether a tree is to be repotted by a day.
enum class Due {
  not_yet,
  may_be,   ///< the shortest interval is over, the longest is not: look at it
  due,      ///< the longest is over, or the day the grower set
  unknown   ///< neither a day nor a last repotting with an interval
};

struct DueTree {
  std::size_t tree = 0;  ///< index in the season's trees
  Due due = Due::unknown;
  std::optional<std::string> from;  ///< day from which it may be repotted
  bool counted = false;             ///< its litres are in the season's totals
};

/// Grain of one bag that several days want.
struct Claim {
  std::optional<std::string> day;  ///< absent: trees without a day yet
  LooseVolume wanted;              ///< if it were the only day
  LooseVolume gets;                ///< after the days before it
};
struct Reservation {
  std::size_t supply = 0;
  std::vector<Claim> claims;  ///< in the order of the days
  bool runs_out = false;      ///< a later day gets less than it wants
};

struct DayOfSeason {
  std::optional<std::string> day;
  PlannedDay plan;   ///< its trees, with what earlier days take marked as reserved
  DayAnswer answer;
};

struct SeasonAnswer {
  std::vector<DueTree> trees;
  std::vector<DayOfSeason> days;  ///< by date, trees without a day last
  std::vector<MixOfDay> mixes;          ///< of all days, each name once; batches are those of a day
  std::vector<GrainLitres> components;  ///< of all days
  std::vector<GrainToBuy> buy;          ///< for all days together
  std::vector<Reservation> reservations;  ///< bags that more than one day wants
  Notes notes;
};

/// Due or possibly due trees count, and those that have a day. Earlier days are served first. Fails with the problems of
/// check(season).
[[nodiscard]] Result<SeasonAnswer> work_out(const PlannedSeason& season);

/// `tree` seen on `until`. A tree with a day of its own is due.
[[nodiscard]] DueTree due_by(const PlannedTree& tree, const std::string& until);

}  // namespace gritwright
