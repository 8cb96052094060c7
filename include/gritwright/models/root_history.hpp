#pragma once
// From a plan that was carried out to the tree's history, and from the history to the next plan.

#include <optional>

#include "gritwright/domain/tree.hpp"
#include "gritwright/models/root_plan.hpp"

namespace gritwright {

/// What a worked plan did to the tree: its name, cuts, combed faces, shares, bare-rooted or not, and the untouched part in the tree frame.
/// Day, pot, mix and litres are the caller's. `worked` is one of the plans of `plan`.
[[nodiscard]] Repotting repotting_by(const RootMassPlan& plan, const WorkedPlan& worked);

/// Where the trunk base lies afterwards: in the frame of the pot the tree stands in, which is the tree frame of the next plan. In stages
/// it stays where it was.
[[nodiscard]] TrunkBase trunk_base_after(const RootMassPlan& plan, const WorkedPlan& worked);

}  // namespace gritwright
