#include "gritwright/workbook/search.hpp"

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "inside.hpp"
#include "search_words.hpp"

namespace gritwright {

namespace {

/// A condition for the records of `kinds` that are not deleted. Naming every kind lets the indexes that begin with the kind answer.
std::string alive_of(const std::vector<RecordKind>& kinds, const char* table) {
  std::string sql = table;
  sql.append("body IS NOT NULL AND ").append(table).append("kind IN (");
  for (const RecordKind kind : kinds) sql.append(kind == kinds.front() ? "'" : ",'").append(kind_name(kind)).append("'");
  return sql.append(")");
}

/// What each narrowing leaves; a record must be in all of them.
std::vector<NumberQuery> narrowings(const SearchQuery& query) {
  static const std::vector<RecordKind> every(record_kinds.begin(), record_kinds.end());
  std::vector<NumberQuery> all;
  // The one that leaves fewest first.
  if (query.tree)
    all.push_back({"SELECT number FROM record WHERE body IS NOT NULL AND ((kind = 'tree' AND id = ?1) OR number IN"
                   " (SELECT owner FROM link WHERE from_kind = 'tree' AND from_id = ?1 UNION ALL SELECT owner FROM link WHERE to_kind = 'tree' AND to_id = ?1))",
                   {query.tree->text}});
  if (query.from_day || query.to_day || !query.kinds.empty()) {
    NumberQuery narrowing{"SELECT number FROM record WHERE ", {}};
    narrowing.sql.append(alive_of(query.kinds.empty() ? every : query.kinds, ""));
    if (query.from_day || query.to_day) {
      narrowing.sql.append(" AND day >= ?1 AND day <= ?2 AND (?1 <> '' OR day <> '')");
      narrowing.values = {query.from_day.value_or(""), query.to_day.value_or("9999")};
    }
    all.push_back(std::move(narrowing));
  }
  if (query.material) {
    // CROSS keeps the order: from the few records of a material to their links, not from all links.
    NumberQuery narrowing{"SELECT number FROM record WHERE ", {*query.material}};
    narrowing.sql.append(alive_of(every, "")).append(" AND subject = ?1 UNION ALL SELECT l.owner FROM record m CROSS JOIN link l ON l.from_kind = m.kind AND l.from_id = m.id WHERE ");
    narrowing.sql.append(alive_of(every, "m.")).append(" AND m.subject = ?1");
    all.push_back(std::move(narrowing));
  }
  return all;
}

}  // namespace

std::vector<RecordLine> search(const OpenWorkbook& workbook, const SearchQuery& query) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] {
    std::vector<RecordLine> lines;
    if (query.limit == 0) return lines;
    SQLite::Statement line(*inside.database, std::string("SELECT ") + line_columns + " FROM record r WHERE r.number = ?1 AND r.body IS NOT NULL");
    std::size_t passed = 0;
    inside.word_search.each(narrowings(query), match_of(query.words), [&](std::int64_t number) {
      line.bind(1, number);
      std::vector<RecordLine> found = record_lines(line);
      line.reset();
      if (!found.empty() && passed++ >= query.offset) lines.push_back(std::move(found.front()));
      return lines.size() < query.limit;
    });
    return lines;
  });
}

}  // namespace gritwright
