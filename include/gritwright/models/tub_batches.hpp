#pragma once
#include <optional>
#include <vector>

#include "gritwright/units.hpp"

namespace gritwright {

/// What a mix needs of each component, and the tools it is measured with.
struct BatchTask {
  std::vector<LooseVolume> loose;  ///< of each component, >= 0, some above 0
  std::vector<double> parts;       ///< of the recipe, in the same order
  Shrinkage shrinkage;
  std::optional<LooseVolume> tub;    ///< no batch is larger; absent: one batch
  std::optional<LooseVolume> scoop;  ///< absent: litres are not rounded
};

/// One tub full. Lists are in component order.
struct TubBatch {
  std::vector<LooseVolume> loose;
  std::vector<int> scoops;  ///< empty without a scoop
  MixedVolume made;         ///< as poured
};

struct TubBatches {
  std::vector<TubBatch> batches;
  std::vector<LooseVolume> loose;  ///< of all batches together, never below what was asked
  MixedVolume made;
  double off_recipe = 0;           ///< largest difference of a component's share in a batch to the recipe's, 0..1
  bool recipe_kept = true;         ///< every batch is a whole number of rounds of the parts
};

/// Whole rounds of the parts where a round fits into the tub and that takes no more than a scoop of each component beyond the least; else the
/// least number of scoops, spread over the batches as evenly as whole scoops allow. Source: day-litres.
[[nodiscard]] TubBatches tub_batches(const BatchTask& task);

/// `value` rounded up to a multiple of `step` (> 0); a multiple within rounding error stays what it is.
[[nodiscard]] double rounded_up(double value, double step);

}  // namespace gritwright
