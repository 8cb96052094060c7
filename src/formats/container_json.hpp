#pragma once
#include <nlohmann/json_fwd.hpp>

#include "gritwright/domain/container.hpp"

namespace gritwright {

/// A container as it stands in a file of its own, without the format key.
[[nodiscard]] nlohmann::ordered_json container_json(const Container& container);

}  // namespace gritwright
