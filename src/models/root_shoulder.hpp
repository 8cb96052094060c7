#pragma once
// What builds a shoulder up around a root mass that stands over the soil. Plain numbers in cm.

#include "root_ladder.hpp"

namespace gritwright {

/// Sphagnum from the root mass down to the soil, as steep as a shoulder may be: the least that holds. `counted` are the shares of this
/// cutting by the fine points. By columns of 5 mm. Source: docs/science/root-mass-plan.md.
[[nodiscard]] double shoulder_sphagnum_cm3(const PlanGround& ground, const AllowedSpace& space, const Cutting& cutting, const PointShares& counted);

}  // namespace gritwright
