#include "gritwright/formats/named_file.hpp"

#include <algorithm>
#include <system_error>

namespace gritwright {

Result<std::filesystem::path> file_named_in(const std::filesystem::path& naming, const std::string& name) {
  namespace fs = std::filesystem;
  if (name.empty()) return Problem{"file.no-name", {}, {}};
  const fs::path folder = naming.parent_path();
  // "-" is a name like any other here.
  const fs::path file = folder / (name == "-" ? "./-" : name);
  const auto refused = [&](const char* code) { return Problem{code, Place{file.string(), {}, {}, {}}, {}}; };
  std::error_code trouble;
  const fs::path home = fs::canonical(folder.empty() ? fs::path(".") : folder, trouble);
  if (trouble) return refused("file.missing");
  const fs::path real = fs::weakly_canonical(fs::absolute(file, trouble), trouble);
  if (trouble) return refused("file.missing");
  const auto lies_in = [&](const fs::path& allowed) { return std::ranges::mismatch(allowed, real).in1 == allowed.end(); };
  if (!lies_in(home) && !lies_in(home.parent_path() / "sieve_tests")) return refused("file.outside-folder");
  const fs::file_type type = fs::status(real, trouble).type();
  const bool ordinary = type == fs::file_type::regular || type == fs::file_type::directory || type == fs::file_type::not_found;
  if (!ordinary) return refused("file.no-access");
  return file;
}

}  // namespace gritwright
