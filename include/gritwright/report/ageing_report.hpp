#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/ageing.hpp"
#include "gritwright/models/breakdown.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// How the air of a mix is foretold over so many seasons, for both fates of the crumbs. Arguments as in air_over_years. Keys crumbs_staying,
/// crumbs_washed_down. Source: docs/science/ageing.md.
[[nodiscard]] std::vector<Explanation> explain_years(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, int seasons,
                                                     Porosity limit = least_air_of_old_mix);

}  // namespace gritwright
