#pragma once
#include <string>
#include <string_view>

#include "gritwright/domain/container.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

struct ContainerFile {
  Container container;
  Notes notes;
};

/// Reads a container from JSON ("gritwright/container/1"); the keys depend on the shape, those of another shape are unknown.
/// A profile without depth_cm ends at its highest height. All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<ContainerFile> read_container(std::string_view text, std::string file_name, const ComponentSources& sources);

}  // namespace gritwright
