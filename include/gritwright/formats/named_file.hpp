#pragma once
#include <filesystem>
#include <string>

#include "gritwright/result.hpp"

namespace gritwright {

/// Where the file called `name` inside the file `naming` lies: in that file's folder or in "sieve_tests" beside it, links followed. A
/// mix from somebody else must not make a program read whatever lies on the disk. Errors: file.no-name, file.outside-folder,
/// file.missing (a device or the like).
[[nodiscard]] Result<std::filesystem::path> file_named_in(const std::filesystem::path& naming, const std::string& name);

}  // namespace gritwright
