#pragma once
#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <span>
#include <string>

namespace gritwright {

/// "GritW" cannot fit four bytes; these spell "Grit".
inline constexpr std::int32_t workbook_application_id = 0x47726974;

/// One step forward: the statements that turn version `to` - 1 into `to`.
struct Migration {
  int to;
  const char* statements;
  bool reindex = false;  ///< what lists, search and tracing read of the records is drawn from them anew
};

/// All steps, from nothing to the schema of now.
[[nodiscard]] std::span<const Migration> migrations();
[[nodiscard]] int newest_schema();

/// The file's version; 0 for a new file.
[[nodiscard]] int schema_version(SQLite::Database& database);

/// Runs the steps beyond the file's version inside the caller's transaction.
void migrate(SQLite::Database& database, std::span<const Migration> steps);

}  // namespace gritwright
