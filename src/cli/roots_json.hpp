#pragma once
#include <optional>

#include "gritwright/models/root_plan.hpp"
#include "json_out.hpp"

namespace gritwright::cli {

/// Limitations, plans and stop table; `growth` is null where plan A fits.
[[nodiscard]] Json roots_json(const RootMassPlan& plan, const RootPlanAnswer& answer, const std::optional<PotGrowth>& growth);

}  // namespace gritwright::cli
