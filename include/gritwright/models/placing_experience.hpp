#pragma once
#include <optional>
#include <vector>

#include "gritwright/domain/planned_day.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What the litres used taught, each from the last ten at most.
struct PlacingExperience {
  std::optional<Settling> settling;  ///< median; absent without trees, or where the median is below 0
  std::optional<Spill> spill;        ///< the same of batches
  std::vector<Settling> settlings;   ///< of each tree counted, oldest first: 1 - fill/litres poured in
  std::vector<Spill> spills;         ///< of each batch: 1 - litres poured in/(made - left over)
};

/// Median of the last ten; a tree tells its settling, a batch its spill. Source: docs/science/repotting-day.md.
[[nodiscard]] PlacingExperience placing_experience(const std::vector<FilledTree>& trees, const std::vector<EmptiedBatch>& batches);

}  // namespace gritwright
