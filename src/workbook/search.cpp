#include "gritwright/workbook/search.hpp"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>

#include "inside.hpp"
#include "search_words.hpp"

namespace gritwright {

namespace {

/// The numbers that `sql` finds, `values` bound to it. Made once for a revision: while words are typed the narrowing stays the same.
const NumberSet& numbers_of(OpenWorkbook::Inside& inside, const std::string& sql, std::initializer_list<std::string> values, std::int64_t revision) {
  std::string key = sql;
  for (const std::string& value : values) key.append(1, '\0').append(value);
  NumberSet& set = inside.narrowed[key];
  if (set.revision == revision) return set;
  set.numbers.clear();
  Query found = inside.query(sql);
  found.with_each(values);
  while (found.step()) {
    const auto number = static_cast<std::size_t>(found.whole(0));
    if (number >= set.numbers.size()) set.numbers.resize(std::max(number + 1, 2 * set.numbers.size()));
    set.numbers[number] = true;
  }
  set.revision = revision;
  return set;
}

/// A condition for the records of `kinds` that are not deleted. Naming every kind lets the indexes that begin with the kind answer.
std::string alive_of(const std::vector<RecordKind>& kinds, const char* table) {
  std::string sql = table;
  sql.append("body IS NOT NULL AND ").append(table).append("kind IN (");
  for (const RecordKind kind : kinds) sql.append(kind == kinds.front() ? "'" : ",'").append(kind_name(kind)).append("'");
  return sql.append(")");
}

/// What each narrowing leaves; a record must be in all of them.
std::vector<const NumberSet*> narrowings(OpenWorkbook::Inside& inside, const SearchQuery& query) {
  const std::int64_t revision = std::stoll(inside.meta("changes"));
  static const std::vector<RecordKind> every(record_kinds.begin(), record_kinds.end());
  constexpr std::size_t most_sets = 8;
  if (inside.narrowed.size() > most_sets) inside.narrowed.clear();
  std::vector<const NumberSet*> sets;
  const auto narrow = [&](const std::string& sql, std::initializer_list<std::string> values) { sets.push_back(&numbers_of(inside, sql, values, revision)); };
  if (query.from_day || query.to_day || !query.kinds.empty()) {
    std::string sql = "SELECT number FROM record WHERE ";
    sql.append(alive_of(query.kinds.empty() ? every : query.kinds, ""));
    if (query.from_day || query.to_day) {
      sql.append(" AND day >= ?1 AND day <= ?2 AND (?1 <> '' OR day <> '')");
      narrow(sql, {query.from_day.value_or(""), query.to_day.value_or("9999")});
    } else {
      narrow(sql, {});
    }
  }
  if (query.material) {
    // CROSS keeps the order: from the few records of a material to their links, not from all links.
    std::string sql = "SELECT number FROM record WHERE ";
    sql.append(alive_of(every, "")).append(" AND subject = ?1 UNION ALL SELECT l.owner FROM record m CROSS JOIN link l ON l.from_kind = m.kind AND l.from_id = m.id WHERE ");
    sql.append(alive_of(every, "m.")).append(" AND m.subject = ?1");
    narrow(sql, {*query.material});
  }
  if (query.tree)
    narrow("SELECT number FROM record WHERE body IS NOT NULL AND ((kind = 'tree' AND id = ?1) OR number IN"
           " (SELECT owner FROM link WHERE from_kind = 'tree' AND from_id = ?1 UNION ALL SELECT owner FROM link WHERE to_kind = 'tree' AND to_id = ?1))",
           {query.tree->text});
  return sets;
}

}  // namespace

std::vector<RecordLine> search(const OpenWorkbook& workbook, const SearchQuery& query) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] {
    const std::string match = match_of(query.words);
    const std::vector<const NumberSet*> sets = narrowings(inside, query);
    const auto is_wanted = [&](std::int64_t number) { return std::ranges::all_of(sets, [&](const NumberSet* set) { return set->has(number); }); };
    if (query.limit == 0) return std::vector<RecordLine>();
    SQLite::Statement line(*inside.database, std::string("SELECT ") + line_columns + " FROM record r WHERE r.number = ?1 AND r.body IS NOT NULL");
    std::vector<RecordLine> lines;
    std::size_t passed = 0;
    /// False when there are enough.
    const auto take = [&](std::int64_t number) {
      if (!is_wanted(number)) return true;
      line.bind(1, number);
      std::vector<RecordLine> found = record_lines(line);
      line.reset();
      if (!found.empty() && passed++ >= query.offset) lines.push_back(std::move(found.front()));
      return lines.size() < query.limit;
    };
    if (match.empty() && !sets.empty()) {
      for (auto number = static_cast<std::int64_t>(sets.front()->numbers.size()) - 1; number >= 0 && take(number); --number) {
      }
      return lines;
    }
    // The order of the search index is the order of the record numbers, so that the newest come without sorting.
    Query found = inside.query(match.empty() ? "SELECT number FROM record WHERE body IS NOT NULL ORDER BY number DESC"
                                             : "SELECT rowid FROM search WHERE search MATCH ?1 ORDER BY rowid DESC");
    if (!match.empty()) found.with(match);
    while (found.step() && take(found.whole(0))) {
    }
    return lines;
  });
}

}  // namespace gritwright
