#pragma once
#include "gritwright/models/root_plan.hpp"
#include "root_ladder.hpp"
#include "root_space.hpp"

namespace gritwright {

/// More than this share is never advised, in one go or in stages.
inline constexpr double never_advised_removed = 0.70;

/// What a grower should think of before this plan; nothing is forbidden by it. Codes root-plan.*.
[[nodiscard]] Notes cautions_for(const RootMassPlan& plan, const WorkedPlan& worked, const AllowedSpace& space, const PlanGround& ground);

/// What holds for every plan of the tree.
[[nodiscard]] Notes notes_for(const RootMassPlan& plan, const AllowedSpace& space);

}  // namespace gritwright
