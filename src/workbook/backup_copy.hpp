#pragma once
#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "gritwright/result.hpp"

namespace gritwright {

/// Copies `source` page by page to a file beside `target` that is the owner's alone, checks it, makes it durable and renames it to
/// `target`.
[[nodiscard]] Result<Done> copy_database(SQLite::Database& source, const std::filesystem::path& target, const std::string& file_layer,
                                         const std::function<bool(double)>& progress);

/// Empty if SQLite finds the database whole; at most `most` faults.
[[nodiscard]] Problems integrity_of(SQLite::Database& database, const std::filesystem::path& file, int most = 20);

/// Which workbook a file is, and how many changes it has seen: of two files of one workbook the one with more is newer, whatever the clock said.
struct Age {
  std::string workbook;
  std::int64_t changes = 0;
};
/// Empty if the file can't be read.
[[nodiscard]] std::optional<Age> age_of(const std::filesystem::path& file);

/// Makes the bytes of `file` durable. Not for a file that this program has open: closing a second handle drops the locks of the first.
void make_durable(const std::filesystem::path& file);
/// Makes the names in the folder of `file` durable.
void make_name_durable(const std::filesystem::path& file);

}  // namespace gritwright
