#pragma once
#include <filesystem>
#include <optional>
#include <string>

namespace gritwright {

/// The folder `name` ("materials", "demo-data") that belongs to the program at `executable`: the one named by the environment
/// variable GRITWRIGHT_DATA, else share/gritwright/NAME or NAME beside one of the folders above the program.
[[nodiscard]] std::optional<std::filesystem::path> data_folder(const std::string& name,
                                                               const std::filesystem::path& executable = "/proc/self/exe");

}  // namespace gritwright
