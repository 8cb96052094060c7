#pragma once
#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <functional>

#include "gritwright/result.hpp"

namespace gritwright {

/// Copies `source` page by page to a file beside `target`, checks it, makes it durable and renames it to `target`.
[[nodiscard]] Result<Done> copy_database(SQLite::Database& source, const std::filesystem::path& target, const std::string& file_layer,
                                         const std::function<bool(double)>& progress);

/// Empty if SQLite finds the database whole; at most `most` faults.
[[nodiscard]] Problems integrity_of(SQLite::Database& database, const std::filesystem::path& file, int most = 20);

/// Makes the bytes of `file` and its name in the folder durable.
void make_durable(const std::filesystem::path& file);

}  // namespace gritwright
