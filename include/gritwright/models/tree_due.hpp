#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/tree.hpp"

namespace gritwright {

/// When a tree comes up for repotting again, as ISO days.
struct NextRepotting {
  std::string from;  ///< the shortest interval of its group is over: look at it
  std::string to;    ///< the longest is over, or the day the grower set
};

/// What the next repotting follows from; days are ISO days.
struct RepottingHistory {
  std::optional<std::string> due;   ///< as the grower set it
  std::optional<std::string> last;  ///< repotting
  std::optional<SpeciesGroup> group;
  std::optional<int> interval_years;  ///< the grower's own; absent: the group's
};

/// The day the grower set; else last repotting plus the grower's interval or the group's. Empty where there is neither.
/// Source: docs/science/root-mass-plan.md (intervals: common practice).
[[nodiscard]] std::optional<NextRepotting> next_repotting(const RepottingHistory& known);
[[nodiscard]] std::optional<NextRepotting> next_repotting(const Tree& tree);

}  // namespace gritwright
