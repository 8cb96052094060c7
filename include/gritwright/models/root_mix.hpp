#pragma once
// The new mix around a kept root mass: the part of a pot that can be known.

#include "gritwright/models/root_plan.hpp"

namespace gritwright {

/// The container a worked plan goes into: the plan's own or one of the free pots.
[[nodiscard]] const Container& pot_of(const RootMassPlan& plan, const WorkedPlan& worked);

/// New mix as a share of the pot to its soil surface, 0..1.
[[nodiscard]] double new_mix_share(const RootMassPlan& plan, const WorkedPlan& worked);

/// The pot with the kept root mass taken out: a table of the areas left for layers and new mix, standing and watered as the pot
/// does. Its air and water are those of the new mix alone; what the root mass holds is not known.
[[nodiscard]] Container pot_without_root_mass(const RootMassPlan& plan, const WorkedPlan& worked);

}  // namespace gritwright
