#pragma once
#include "gritwright/domain/container.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "json_document.hpp"

namespace gritwright {

/// Reads and checks the members of a container that stands in a file of its own or inside another; the caller reads the format
/// key and calls `finish()`.
[[nodiscard]] Container read_container_members(JsonObject& object, const ComponentSources& sources, Problems& problems,
                                               Notes& notes);

}  // namespace gritwright
