#include "gritwright/workbook/workbook_check.hpp"

#include <array>
#include <cstdint>
#include <set>
#include <string>
#include <utility>

#include "backup_copy.hpp"
#include "indexing_anew.hpp"
#include "inside.hpp"
#include "record_index.hpp"
#include "schema.hpp"

namespace gritwright {

namespace {

Problem damage_of(const char* code, const RecordRef& ref) {
  return {code, {}, {{"kind", std::string(kind_name(ref.kind))}, {"id", ref.id}}};
}

using Threads = std::multiset<std::array<std::string, 8>>;

std::array<std::string, 8> thread_of(const Link& link) {
  return {link.role, std::string(kind_name(link.from.kind)), link.from.id, std::string(kind_name(link.to.kind)), link.to.id, link.day, link.until, link.certain ? "1" : "0"};
}

/// Whether what lists, search, tracing and ledger were given of a record is what the record itself says.
bool is_indexed(OpenWorkbook::Inside& inside, std::int64_t number, const IndexEntry& entry, const Record& record) {
  Query words = inside.query("SELECT words FROM search WHERE rowid = ?1");
  if (!words.with(number).step() || words.text(0) != entry.words) return false;
  Threads told, kept;
  for (const Link& link : entry.links) told.insert(thread_of(link));
  Query links = inside.query("SELECT role, from_kind, from_id, to_kind, to_id, day, until, certain FROM link WHERE owner = ?1");
  links.with(number);
  while (links.step()) {
    std::array<std::string, 8> thread;
    for (std::size_t i = 0; i < thread.size(); ++i) thread[i] = links.text(static_cast<int>(i));
    kept.insert(std::move(thread));
  }
  if (told != kept) return false;
  const auto* line = std::get_if<StockEntry>(&record);
  if (line == nullptr) return true;
  Query stock = inside.query("SELECT holder_kind, holder_id, micrograms FROM stock WHERE number = ?1");
  return stock.with(number).step() && stock.text(0) == kind_name(line->holder.kind) && stock.text(1) == line->holder.id &&
         stock.whole(2) == micrograms_of(line->change);
}

}  // namespace

Problems check_content(const OpenWorkbook& workbook) {
  OpenWorkbook::Inside& inside = workbook.inside();
  Problems problems = integrity_of(*inside.database, inside.file);
  if (!problems.empty()) return problems;
  inside.read([&] {
    if (!inside.told_changes()) problems.push_back(file_problem("file.damaged", inside.file));
    // An older version's indexes are drawn anew when it is brought forward.
    const bool of_now = schema_version(*inside.database) == newest_schema();
    Problems differing;
    append(problems, inside.for_each_record({}, "workbook.record-unreadable", [&](const RecordRef& ref, const Record& record, const Query& row) {
             if (!of_now) return;
             const IndexEntry entry = index_of(ref, record);
             const bool listed = entry.title == row.text(3) && entry.subject == row.text(4) && entry.day == row.text(5);
             if (!(listed && is_indexed(inside, row.whole(6), entry, record))) differing.push_back(damage_of("workbook.index-differs", ref));
           }));
    append(problems, std::move(differing));
    Query ledger = inside.query(
        "SELECT r.id FROM stock s JOIN record r ON r.number = s.number WHERE r.kind <> 'stock-entry' OR r.body IS NULL");
    while (ledger.step()) problems.push_back(damage_of("workbook.index-differs", {RecordKind::stock_entry, ledger.text(0)}));
  });
  return problems;
}

Notes check_sense(const OpenWorkbook& workbook) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] {
    Notes notes;
    // What can't be read is told by check_content.
    (void)inside.for_each_record({}, "workbook.record-unreadable", [&](const RecordRef& ref, const Record& record, const Query&) {
      for (Problem& problem : check(record)) {
        Facts facts = std::move(problem.facts);
        facts["fault"] = problem.code;
        notes.push_back({"workbook.record-at-odds", Level::warning, ref_text(ref) + problem.where.pointer, std::move(facts)});
      }
    });
    for (const char* side : {"from", "to"}) {
      const std::string kind = std::string("l.") + side + "_kind";
      const std::string id = std::string("l.") + side + "_id";
      Query unknown = inside.query("SELECT DISTINCT o.kind, o.id, " + kind + ", " + id +
                                   " FROM link l JOIN record o ON o.number = l.owner WHERE o.body IS NOT NULL AND NOT EXISTS"
                                   " (SELECT 1 FROM record r WHERE r.kind = " + kind + " AND r.id = " + id + ")");
      while (unknown.step()) {
        std::string where = unknown.text(0);
        where.append(":").append(unknown.text(1));
        std::string name = unknown.text(2);
        name.append(":").append(unknown.text(3));
        notes.push_back({"import.names-unknown", Level::warning, std::move(where), {{"text", std::move(name)}}});
      }
    }
    Query below = inside.query("SELECT holder_kind, holder_id, sum(micrograms) FROM stock GROUP BY 1, 2 HAVING sum(micrograms) < 0");
    while (below.step()) {
      std::string where = below.text(0);
      where.append(":").append(below.text(1));
      notes.push_back({"stock.below-zero", Level::warning, std::move(where), {{"mass_g", static_cast<double>(below.whole(2)) / 1e6}}});
    }
    return notes;
  });
}

Result<Done> index_again(OpenWorkbook& workbook) {
  OpenWorkbook::Inside& inside = workbook.inside();
  if (Problems problems = inside.obstacles(); !problems.empty()) return problems;
  inside.back_up_before_first_write();
  return inside.write([&]() -> Result<Done> {
    inside.query("DELETE FROM search WHERE rowid NOT IN (SELECT number FROM record WHERE body IS NOT NULL)").run();
    inside.query("DELETE FROM stock WHERE number NOT IN (SELECT number FROM record WHERE kind = 'stock-entry' AND body IS NOT NULL)").run();
    (void)inside.for_each_record(RecordKind::stock_entry, "workbook.record-unreadable", [&](const RecordRef&, const Record& record, const Query& row) {
      const auto& line = std::get<StockEntry>(record);
      inside.query("INSERT OR REPLACE INTO stock VALUES (?1, ?2, ?3, ?4)")
          .with(row.whole(6), std::string(kind_name(line.holder.kind)), line.holder.id, micrograms_of(line.change))
          .run();
    });
    index_anew(*inside.database);
    // The signs of words that were there before and are in no record any more.
    inside.query("INSERT INTO search(search) VALUES ('rebuild')").run();
    (void)inside.next_change();
    return Done{};
  });
}

}  // namespace gritwright
