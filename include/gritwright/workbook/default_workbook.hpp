#pragma once
#include <filesystem>

namespace gritwright {

/// The workbook of whoever names none: "gritwright/record.gritwright" in the user's data folder (XDG_DATA_HOME, else
/// ~/.local/share). The file need not exist; opening it makes it.
[[nodiscard]] std::filesystem::path default_workbook_file();

}  // namespace gritwright
