#include "indexing_anew.hpp"

#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <string>
#include <vector>

#include "gritwright/formats/record_file.hpp"
#include "record_index.hpp"

namespace gritwright {

namespace {

struct Kept {
  std::int64_t number;
  RecordRef ref;
  bool deleted;
};

std::vector<Kept> kept_records(SQLite::Database& database) {
  std::vector<Kept> records;
  // A deleted record without links was taken back, not deleted: it has nothing to trace.
  SQLite::Statement found(database,
                          "SELECT number, kind, id, body IS NULL FROM record WHERE body IS NOT NULL"
                          " OR (gone IS NOT NULL AND number IN (SELECT owner FROM link))");
  while (found.executeStep())
    if (const auto kind = kind_named(found.getColumn(1).getString()))
      records.push_back({found.getColumn(0).getInt64(), {*kind, found.getColumn(2).getString()}, found.getColumn(3).getInt() != 0});
  return records;
}

void run(SQLite::Statement& statement) {
  statement.exec();
  statement.reset();
}

}  // namespace

void index_anew(SQLite::Database& database) {
  SQLite::Statement text(database, "SELECT coalesce(body, gone) FROM record WHERE number = ?1");
  SQLite::Statement no_links(database, "DELETE FROM link WHERE owner = ?1");
  SQLite::Statement no_words(database, "DELETE FROM search WHERE rowid = ?1");
  SQLite::Statement describe(database, "UPDATE record SET title = ?2, subject = ?3, day = ?4 WHERE number = ?1");
  SQLite::Statement words(database, "INSERT INTO search(rowid, words) VALUES (?1, ?2)");
  SQLite::Statement link(database, "INSERT INTO link VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
  // Read one by one, so that a large record does not have to fit into memory.
  for (const Kept& kept : kept_records(database)) {
    text.bind(1, kept.number);
    text.executeStep();
    const Result<Record> record = read_record(kept.ref.kind, text.getColumn(0).getString(), ref_text(kept.ref));
    text.reset();
    if (!record) continue;
    const IndexEntry entry = index_of(kept.ref, *record);
    no_links.bind(1, kept.number);
    run(no_links);
    for (const Link& thread : entry.links) {
      link.bind(1, kept.number);
      link.bind(2, thread.role);
      link.bind(3, std::string(kind_name(thread.from.kind)));
      link.bind(4, thread.from.id);
      link.bind(5, std::string(kind_name(thread.to.kind)));
      link.bind(6, thread.to.id);
      link.bind(7, thread.day);
      link.bind(8, thread.until);
      link.bind(9, int{thread.certain});
      run(link);
    }
    if (kept.deleted) continue;
    describe.bind(1, kept.number);
    describe.bind(2, entry.title);
    describe.bind(3, entry.subject);
    describe.bind(4, entry.day);
    run(describe);
    no_words.bind(1, kept.number);
    run(no_words);
    words.bind(1, kept.number);
    words.bind(2, entry.words);
    run(words);
  }
}

}  // namespace gritwright
