#pragma once
#include <filesystem>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// The catalogue as it lies in a folder: one JSON file per material, references.json and schema.json.
struct CatalogueFolder {
  Catalogue catalogue;                ///< by name
  std::vector<Reference> references;  ///< as listed
};

/// Reads every material of `folder`. Errors: file.missing, file.is-folder and those of read_material, read_references.
[[nodiscard]] Result<CatalogueFolder> read_catalogue(const std::filesystem::path& folder);

/// What `read_catalogue` refuses and more: breaches of schema.json, sources that references.json does not list, sources nobody
/// uses, names or aliases used twice.
[[nodiscard]] Problems check_catalogue(const std::filesystem::path& folder);

}  // namespace gritwright
