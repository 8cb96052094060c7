#pragma once
#include <compare>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>

#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// Which file a path leads to; a file put in another's place has another one.
struct FileIdentity {
  std::uint64_t device = 0;
  std::uint64_t inode = 0;
  friend auto operator<=>(const FileIdentity&, const FileIdentity&) = default;
};
[[nodiscard]] std::optional<FileIdentity> identity_of(const std::filesystem::path& file);

/// Says for its lifetime that this program has the file open.
[[nodiscard]] std::shared_ptr<void> mark_as_open(const FileIdentity& identity);
[[nodiscard]] bool is_open_here(const FileIdentity& identity);

/// Looks at the first bytes before SQLite takes an empty file for a new database and repairs what it may: file.missing,
/// file.is-folder, file.unreadable, file.other-kind, file.damaged (a header that is not whole, or a file that was cut off).
[[nodiscard]] Problems recognise(const std::filesystem::path& file);

/// By the file system's kind, and by the marks that synchronising programs leave in a folder or its name.
[[nodiscard]] Placement placement_of(const std::filesystem::path& file);

}  // namespace gritwright
