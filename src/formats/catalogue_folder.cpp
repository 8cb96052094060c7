#include "gritwright/formats/catalogue_folder.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <system_error>
#include <utility>

#include "gritwright/formats/json_schema.hpp"
#include "gritwright/formats/material_file.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

namespace fs = std::filesystem;

constexpr const char* schema_file = "schema.json";
constexpr const char* references_file = "references.json";

Result<std::string> text_of(const fs::path& path) {
  Place place;
  place.file = path.string();
  std::error_code error;
  const auto bytes = fs::file_size(path, error);
  if (error) return Problem{"file.missing", place, {}};
  if (bytes > largest_text_mb * 1024 * 1024) return Problem{"file.too-large", place, {{"limit_mb", static_cast<double>(largest_text_mb)}}};
  std::ifstream stream(path, std::ios::binary);
  std::string text{std::istreambuf_iterator<char>(stream), {}};
  if (!stream.is_open() || stream.bad()) return Problem{"file.no-access", place, {}};
  return text;
}

Result<std::vector<fs::path>> material_files(const fs::path& folder) {
  std::error_code error;
  std::vector<fs::path> files;
  for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
    const fs::path& path = entry->path();
    if (path.extension() == ".json" && path.filename() != schema_file && path.filename() != references_file) files.push_back(path);
  }
  if (error || files.empty()) {
    Place place;
    place.file = folder.string();
    return Problem{"file.missing", place, {}};
  }
  std::ranges::sort(files);
  return files;
}

Problem about(const char* code, const fs::path& path, const std::string& pointer, Facts facts) {
  Place place;
  place.file = path.string();
  place.pointer = pointer;
  return {code, std::move(place), std::move(facts)};
}

/// Every source a material names, with the pointer to the key that names it.
std::vector<std::pair<std::string, std::string>> sources_of(const Material& material) {
  std::vector<std::pair<std::string, std::string>> sources;
  for (const auto& [key, unit, figure] : figures(material)) {
    const std::string pointer = "/figures/" + std::string(key);
    sources.emplace_back(figure->source, pointer + "/source");
    if (figure->range_source) sources.emplace_back(*figure->range_source, pointer + "/range_source");
  }
  return sources;
}

}  // namespace

Result<CatalogueFolder> read_catalogue(const fs::path& folder) {
  const auto files = material_files(folder);
  if (!files) return files.problems();
  Problems problems;
  std::vector<Material> materials;
  CatalogueFolder result;
  for (const fs::path& path : *files) {
    const auto text = text_of(path);
    if (!text) {
      append(problems, text.problems());
      continue;
    }
    auto material = read_material(*text, path.string());
    if (material)
      materials.push_back(std::move(material).value());
    else
      append(problems, material.problems());
  }
  const auto text = text_of(folder / references_file);
  if (!text) {
    append(problems, text.problems());
  } else {
    auto references = read_references(*text, (folder / references_file).string());
    if (references)
      result.references = std::move(references).value();
    else
      append(problems, references.problems());
  }
  if (!problems.empty()) return problems;
  std::ranges::sort(materials, {}, &Material::name);
  result.catalogue = Catalogue(std::move(materials));
  return result;
}

Problems check_catalogue(const fs::path& folder) {
  const auto files = material_files(folder);
  const auto schema = text_of(folder / schema_file);
  const auto references_text = text_of(folder / references_file);
  Problems problems;
  append(problems, files.problems());
  append(problems, schema.problems());
  append(problems, references_text.problems());
  if (!problems.empty()) return problems;
  const auto references = read_references(*references_text, (folder / references_file).string());
  if (!references) return references.problems();

  std::set<std::string> listed, used, names;
  std::vector<Material> seen;  // names are compared as the catalogue finds them
  for (const Reference& reference : *references)
    if (!listed.insert(reference.key).second)
      problems.push_back(about("catalogue.name-twice", folder / references_file, "/references", {{"name", reference.key}}));
  for (const fs::path& path : *files) {
    const auto text = text_of(path);
    if (!text) {
      append(problems, text.problems());
      continue;
    }
    append(problems, placed_in(check_against_schema(*text, schema_file, {{schema_file, *schema}}), path.string()));
    const auto material = read_material(*text, path.string());
    if (!material) {
      append(problems, material.problems());
      continue;
    }
    for (const auto& [key, pointer] : sources_of(*material)) {
      used.insert(key);
      if (!listed.contains(key)) problems.push_back(about("catalogue.unknown-source", path, pointer, {{"source", key}}));
    }
    std::vector<std::string> called = material->aliases;
    called.push_back(material->name);
    for (const std::string& name : called)
      if (!names.insert(name).second || Catalogue(seen).find(name) != nullptr) problems.push_back(about("catalogue.name-twice", path, "/name", {{"name", name}}));
    seen.push_back(*material);
  }
  for (const std::string& key : listed)
    if (!used.contains(key)) problems.push_back(about("catalogue.unused-source", folder / references_file, "/references", {{"source", key}}));
  return problems;
}

}  // namespace gritwright
