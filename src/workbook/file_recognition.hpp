#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>

#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// Which file a path leads to; a file put in another's place has another one.
struct FileIdentity {
  std::uint64_t device = 0;
  std::uint64_t inode = 0;
  friend bool operator==(const FileIdentity&, const FileIdentity&) = default;
};
[[nodiscard]] std::optional<FileIdentity> identity_of(const std::filesystem::path& file);

/// Looks at the first bytes without SQLite, which would take an empty file for a new database and repair what it may:
/// file.missing, file.is-folder, file.unreadable, file.other-kind, file.damaged (a workbook's file with a header that is not whole).
[[nodiscard]] Problems recognise(const std::filesystem::path& file);

/// By the file system's kind, and by the marks that synchronising programs leave in a folder or its name.
[[nodiscard]] Placement placement_of(const std::filesystem::path& file);

}  // namespace gritwright
