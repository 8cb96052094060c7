#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Reads a reference material from JSON ("gritwright/material/1") and checks it. Units are fixed by the key and must be named.
[[nodiscard]] Result<Material> read_material(std::string_view text, std::string file_name);

/// Reads the sources of the catalogue from JSON ("gritwright/references/1").
[[nodiscard]] Result<std::vector<Reference>> read_references(std::string_view text, std::string file_name);

}  // namespace gritwright
