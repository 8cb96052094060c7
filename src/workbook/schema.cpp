#include "schema.hpp"

#include <array>

#include "indexing_anew.hpp"

namespace gritwright {

namespace {

// A deleted record keeps its row with what it last was in `gone`: its id is never used again, its revision never falls back, and
// what was made of it can still be traced.
constexpr const char* first_schema = R"sql(
CREATE TABLE meta(
  key TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE record(
  number INTEGER PRIMARY KEY,
  kind TEXT NOT NULL,
  id TEXT NOT NULL COLLATE NOCASE,
  revision INTEGER NOT NULL,
  changed INTEGER NOT NULL,
  title TEXT NOT NULL DEFAULT '',
  subject TEXT NOT NULL DEFAULT '' COLLATE NOCASE,
  day TEXT NOT NULL DEFAULT '',
  body TEXT,
  gone TEXT,
  UNIQUE(kind, id)
) STRICT;
CREATE INDEX record_in_order ON record(kind, number) WHERE body IS NOT NULL;
CREATE INDEX record_by_day ON record(kind, day) WHERE body IS NOT NULL;
CREATE INDEX record_by_subject ON record(kind, subject) WHERE body IS NOT NULL;
CREATE INDEX record_by_change ON record(changed);
CREATE TABLE link(
  owner INTEGER NOT NULL REFERENCES record(number),
  role TEXT NOT NULL,
  from_kind TEXT NOT NULL,
  from_id TEXT NOT NULL COLLATE NOCASE,
  to_kind TEXT NOT NULL,
  to_id TEXT NOT NULL COLLATE NOCASE,
  day TEXT NOT NULL DEFAULT '',
  until TEXT NOT NULL DEFAULT '',
  certain INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX link_owner ON link(owner);
CREATE INDEX link_from ON link(from_kind, from_id, role);
CREATE INDEX link_to ON link(to_kind, to_id, role);
CREATE TABLE stock(
  number INTEGER PRIMARY KEY REFERENCES record(number),
  holder_kind TEXT NOT NULL,
  holder_id TEXT NOT NULL COLLATE NOCASE,
  micrograms INTEGER NOT NULL
) STRICT;
CREATE INDEX stock_holder ON stock(holder_kind, holder_id, micrograms);
CREATE TABLE counter(
  kind TEXT NOT NULL,
  prefix TEXT NOT NULL COLLATE NOCASE,
  last INTEGER NOT NULL,
  PRIMARY KEY(kind, prefix)
) STRICT, WITHOUT ROWID;
CREATE TABLE step(
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  label TEXT NOT NULL,
  written TEXT NOT NULL,
  merge_key TEXT NOT NULL DEFAULT '',
  undone INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE TABLE swap(
  step INTEGER NOT NULL REFERENCES step(number) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  kind TEXT NOT NULL,
  id TEXT NOT NULL COLLATE NOCASE,
  before TEXT,
  after TEXT,
  PRIMARY KEY(step, position)
) STRICT;
CREATE VIRTUAL TABLE search USING fts5(words, prefix='1 2 3', tokenize='unicode61 remove_diacritics 2');
INSERT INTO meta VALUES ('workbook', lower(hex(randomblob(8)))), ('changes', '0');
)sql";

// What came in without an id is known again by what it was when it came.
constexpr const char* imports_schema = R"sql(
CREATE TABLE imported(
  fingerprint TEXT NOT NULL,
  record INTEGER NOT NULL REFERENCES record(number)
) STRICT;
CREATE INDEX imported_fingerprint ON imported(fingerprint);
)sql";

// What a log entry's subject says is its sort, so that the log can be read without its small changes. The wider indexes answer a
// narrowing by themselves: a record of a material, and what is linked to it, are found without reading the records.
constexpr const char* narrowing_schema = R"sql(
DROP INDEX record_by_subject;
UPDATE record SET subject = CASE WHEN json_valid(body) THEN coalesce(json_extract(body, '$.sort'), 'event') ELSE 'event' END
  WHERE kind = 'log-entry' AND body IS NOT NULL;
CREATE INDEX record_by_subject ON record(kind, subject, id) WHERE body IS NOT NULL;
CREATE INDEX log_told ON record(kind, number) WHERE body IS NOT NULL AND kind = 'log-entry' AND subject <> 'bookkeeping';
DROP INDEX link_from;
CREATE INDEX link_from ON link(from_kind, from_id, role, owner);
DROP INDEX link_to;
CREATE INDEX link_to ON link(to_kind, to_id, role, owner);
)sql";

// A repotting day always wrote its spill, 7 % also where none was typed: the two can't be told apart, and 7 % counted as none. What undo
// would bring back is likewise. Compared as written: how SQLite reads a number may hang on the locale.
constexpr const char* spill_not_given_schema = R"sql(
UPDATE record SET body = json_remove(body, '$.spill')
  WHERE kind = 'repotting-day' AND CASE WHEN json_valid(body) THEN body -> '$.spill' END = '0.07';
UPDATE record SET gone = json_remove(gone, '$.spill')
  WHERE kind = 'repotting-day' AND CASE WHEN json_valid(gone) THEN gone -> '$.spill' END = '0.07';
UPDATE swap SET before = json_remove(before, '$.spill')
  WHERE kind = 'repotting-day' AND CASE WHEN json_valid(before) THEN before -> '$.spill' END = '0.07';
UPDATE swap SET after = json_remove(after, '$.spill')
  WHERE kind = 'repotting-day' AND CASE WHEN json_valid(after) THEN after -> '$.spill' END = '0.07';
)sql";

constexpr std::array steps{Migration{1, first_schema}, Migration{2, imports_schema, true}, Migration{3, narrowing_schema}, Migration{4, spill_not_given_schema}};

}  // namespace

std::span<const Migration> migrations() { return steps; }

int newest_schema() { return steps.back().to; }

int schema_version(SQLite::Database& database) { return database.execAndGet("PRAGMA user_version").getInt(); }

void migrate(SQLite::Database& database, std::span<const Migration> all) {
  const int from = schema_version(database);
  int reached = from;
  bool reindex = false;
  for (const Migration& step : all) {
    if (step.to <= from) continue;
    database.exec(step.statements);
    reached = step.to;
    reindex = reindex || step.reindex;
  }
  if (reached == from) return;
  // Once and last, since the indexing of now writes the tables of now.
  if (reindex && from > 0) index_anew(database);
  database.exec("PRAGMA user_version = " + std::to_string(reached));
  database.exec("PRAGMA application_id = " + std::to_string(workbook_application_id));
  database.exec("INSERT INTO meta VALUES ('schema', '" + std::to_string(reached) +
                "') ON CONFLICT(key) DO UPDATE SET value = excluded.value");
}

}  // namespace gritwright
