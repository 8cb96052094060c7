#pragma once
// "How so?" of what is measured at the bench. Figures carry their keys: bulk_density, worked_in_density, settling, particle_density,
// soaked_density, water_absorption, broken, breakages_per_round, modulus, still_passing.

#include <vector>

#include "gritwright/models/breakdown.hpp"
#include "gritwright/models/measured_properties.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright {

[[nodiscard]] std::vector<Explanation> explain(const JugReading& reading, const MeasuredBulk& measured);
[[nodiscard]] std::vector<Explanation> explain(const DisplacementReading& reading, const MeasuredGrain& measured);
[[nodiscard]] std::vector<Explanation> explain_absorption(Mass soaked, Mass dry);
[[nodiscard]] std::vector<Explanation> explain(const CrumbleTest& test, const CrumbleResult& result, double rounds_in_season);
[[nodiscard]] std::vector<Explanation> explain_thoroughness(Mass specimen, Mass fallen);

}  // namespace gritwright
