#include "gritwright/workbook/search.hpp"

#include "inside.hpp"
#include "search_words.hpp"

namespace gritwright {

std::vector<RecordLine> search(const OpenWorkbook& workbook, const SearchQuery& query) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] {
    const std::string match = match_of(query.words);
    std::string sql = std::string("SELECT ") + line_columns + " FROM ";
    // The order of the search index is the order of the record numbers, so that the newest come without sorting.
    sql += match.empty() ? "record r WHERE r.body IS NOT NULL"
                         : "search CROSS JOIN record r ON r.number = search.rowid WHERE search MATCH :match AND r.body IS NOT NULL";
    if (query.from_day) sql += " AND r.day >= :from";
    if (query.to_day) sql += " AND r.day <> '' AND r.day <= :to";
    if (query.material)
      sql += " AND (r.subject = :material OR r.number IN (SELECT l.owner FROM record m JOIN link l ON l.from_kind = m.kind AND l.from_id = m.id"
             " WHERE m.subject = :material))";
    if (query.tree)
      sql += " AND ((r.kind = 'tree' AND r.id = :tree) OR r.number IN (SELECT owner FROM link WHERE from_kind = 'tree' AND from_id = :tree"
             " UNION SELECT owner FROM link WHERE to_kind = 'tree' AND to_id = :tree))";
    if (!query.kinds.empty()) {
      sql += " AND r.kind IN (";
      for (const RecordKind kind : query.kinds) sql.append(kind == query.kinds.front() ? "'" : ",'").append(kind_name(kind)).append("'");
      sql += ")";
    }
    sql += match.empty() ? " ORDER BY r.number DESC" : " ORDER BY search.rowid DESC";
    sql += " LIMIT :limit OFFSET :offset";
    SQLite::Statement statement(*inside.database, sql);
    if (!match.empty()) statement.bind(":match", match);
    if (query.from_day) statement.bind(":from", *query.from_day);
    if (query.to_day) statement.bind(":to", *query.to_day);
    if (query.material) statement.bind(":material", *query.material);
    if (query.tree) statement.bind(":tree", query.tree->text);
    statement.bind(":limit", static_cast<std::int64_t>(query.limit));
    statement.bind(":offset", static_cast<std::int64_t>(query.offset));
    return record_lines(statement);
  });
}

}  // namespace gritwright
