#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

struct BackupFile {
  std::filesystem::path file;
  std::string day;  ///< ISO 8601
  bool before_migration = false;
  std::uintmax_t bytes = 0;
  friend bool operator==(const BackupFile&, const BackupFile&) = default;
};

/// Where the backups of `workbook` lie unless the grower chose otherwise: "NAME-backups" beside it.
[[nodiscard]] std::filesystem::path default_backup_folder(const std::filesystem::path& workbook);

/// The backups of the workbook called `workbook` in `folder`, newest first: by day, and where the clock ran ahead or was set back by the changes
/// that each has seen.
[[nodiscard]] std::vector<BackupFile> backups_of(const std::filesystem::path& workbook, const std::filesystem::path& folder);

/// The newest backup that passes its integrity check; empty if none does.
[[nodiscard]] std::optional<BackupFile> newest_good_backup(const std::filesystem::path& workbook, const std::filesystem::path& folder);

/// Problems of a workbook file that is not open: those of opening it read-only and of SQLite's integrity check.
[[nodiscard]] Problems check_file(const std::filesystem::path& file);

/// Copies the open workbook to `target`, checks the copy and only then gives it its name. An existing file is replaced.
/// `progress` gets the share done, 0..1, and stops the copying by returning false (workbook.cancelled).
[[nodiscard]] Result<Done> save_copy(const OpenWorkbook& workbook, const std::filesystem::path& target,
                                     const std::function<bool(double)>& progress = {});

/// Puts `backup` in the place of `workbook`, which nobody may have open (file.locked). What was there is kept beside it, under the
/// name that is returned; absent if nothing was there. The backup is copied and checked before anything is moved.
[[nodiscard]] Result<std::optional<std::filesystem::path>> restore(const std::filesystem::path& backup,
                                                                   const std::filesystem::path& workbook, const Clock& clock);

/// The last backup of each of the newest `months` months and of each of the newest `days` days stay, the others are deleted.
/// Returns what was deleted. Backups made before a migration stay.
std::vector<std::filesystem::path> thin_out_backups(const std::filesystem::path& workbook, const std::filesystem::path& folder,
                                                    std::size_t days = 10, std::size_t months = 12);

}  // namespace gritwright
