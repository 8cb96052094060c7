#pragma once
#include <optional>
#include <vector>

#include "gritwright/domain/container.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "json_document.hpp"

namespace gritwright {

/// Reads and checks the members of a mix that stands in a file of its own or inside another; the caller reads the format key and
/// calls `finish()`. `sieve_tests` receives, by component, the tests that gradings came from.
[[nodiscard]] Mix read_mix_members(JsonObject& object, const ComponentSources& sources, Problems& problems, Notes& notes,
                                   std::vector<std::optional<SieveTest>>* sieve_tests = nullptr);

}  // namespace gritwright
