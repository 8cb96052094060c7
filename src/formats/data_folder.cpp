#include "gritwright/formats/data_folder.hpp"

#include <cstdlib>

namespace gritwright {

namespace fs = std::filesystem;

std::optional<fs::path> data_folder(const std::string& name, const fs::path& executable) {
  std::error_code trouble;
  if (const char* named = std::getenv("GRITWRIGHT_DATA"); named != nullptr && *named != '\0') {
    const fs::path folder = fs::path(named) / name;
    return fs::is_directory(folder, trouble) ? std::optional(folder) : std::nullopt;
  }
  fs::path folder = fs::canonical(executable, trouble).parent_path();
  while (!folder.empty()) {
    for (const fs::path& candidate : {folder / "share" / "gritwright" / name, folder / name}) {
      // A file of ours inside tells the folder from a stranger's of the same name.
      if (fs::exists(candidate / "README.md", trouble) || fs::exists(candidate / "schema.json", trouble)) return candidate;
    }
    if (folder == folder.root_path()) break;
    folder = folder.parent_path();
  }
  return std::nullopt;
}

}  // namespace gritwright
