#pragma once
#include <string>
#include <string_view>

namespace gritwright {

/// What was typed as a full-text query; empty if it holds no word.
[[nodiscard]] std::string match_of(std::string_view typed);

}  // namespace gritwright
