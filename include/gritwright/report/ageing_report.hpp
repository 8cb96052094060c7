#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/ageing.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright {

/// How the air of a mix is foretold over the years. Arguments as in air_over_years. Key air_over_years. Source: docs/science/ageing.md.
[[nodiscard]] Explanation explain_years(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, Porosity limit = least_air_of_old_mix);

}  // namespace gritwright
