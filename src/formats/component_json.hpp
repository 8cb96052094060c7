#pragma once
#include <optional>

#include "gritwright/domain/component.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "json_document.hpp"

namespace gritwright {

enum class PartsKey { required, optional };

/// Reads and checks the keys of a component; the caller takes keys of its own and calls `finish()`. Empty when a problem was reported.
/// `test` receives the sieve test that the grading came from, where it did.
[[nodiscard]] std::optional<Component> read_component(JsonObject& object, PartsKey parts, const ComponentSources& sources,
                                                      Problems& problems, Notes& notes, std::optional<SieveTest>* test = nullptr);

}  // namespace gritwright
