#pragma once
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/result.hpp"

namespace gritwright::cli {

using Json = nlohmann::ordered_json;

/// null where there is no value.
[[nodiscard]] Json to_json(std::optional<double> value);
/// `[{code, level, where, text}]`
[[nodiscard]] Json to_json(const Notes& notes);
/// `[{aperture_mm, percent}]` in rising aperture.
[[nodiscard]] Json to_json(const std::vector<GradingPoint>& points);
/// `[{figure, formula, inputs{}, source}]`
[[nodiscard]] Json to_json(const std::vector<Explanation>& explanations);

}  // namespace gritwright::cli
