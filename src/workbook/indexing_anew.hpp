#pragma once
#include <SQLiteCpp/Database.h>

namespace gritwright {

/// Draws titles, search words and links of every record from the record itself, inside the caller's transaction. A record that can't
/// be read keeps what it had.
void index_anew(SQLite::Database& database);

}  // namespace gritwright
