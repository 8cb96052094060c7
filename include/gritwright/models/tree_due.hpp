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

/// The day the grower set; else last repotting plus the group's intervals. Empty where there is neither.
/// Source: docs/science/root-mass-plan.md (intervals: common practice).
[[nodiscard]] std::optional<NextRepotting> next_repotting(const Tree& tree);

}  // namespace gritwright
