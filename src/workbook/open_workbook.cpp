#include "gritwright/workbook/open_workbook.hpp"

#include <algorithm>
#include <functional>
#include <set>
#include <stdexcept>

#include "corrected_receipt.hpp"
#include "gritwright/formats/record_file.hpp"
#include "inside.hpp"
#include "record_index.hpp"
#include "search_words.hpp"

namespace gritwright {

namespace {

Problem record_problem(const char* code, const RecordRef& ref, Facts facts = {}) {
  facts["kind"] = std::string(kind_name(ref.kind));
  facts["id"] = ref.id;
  return {code, {}, std::move(facts)};
}

/// The record's JSON, refused unless the door reads it again: a workbook stores nothing that it can't give back.
Result<std::string> encode(const RecordRef& ref, const Record& record) {
  if (kind_of_record(record) != ref.kind) throw std::logic_error("an edit's record is of another kind than its reference");
  std::string body = write_record(record);
  const Result<Record> again = read_record(ref.kind, body, ref_text(ref));
  if (!again) return again.problems();
  return body;
}

/// A stored text as this version of the program would write it; as it is where it can't be read.
std::string written_today(const RecordRef& ref, const std::string& body) {
  const Result<Record> record = read_record(ref.kind, body, ref_text(ref));
  return record ? write_record(*record) : body;
}

const char* prefix_of(RecordKind kind) {
  switch (kind) {
    case RecordKind::material: return "OM";
    case RecordKind::bag: return "B";
    case RecordKind::bin: return "BIN";
    case RecordKind::fraction: return "FR";
    case RecordKind::sieve_set: return "SET";
    case RecordKind::sieve_test: return "ST";
    case RecordKind::mix: return "MX";
    case RecordKind::container: return "POT";
    case RecordKind::tree: return "TR";
    case RecordKind::root_mass_plan: return "RP";
    case RecordKind::repotting_day: return "RD";
    case RecordKind::batch: return "BT";
    case RecordKind::pot_test: return "PT";
    case RecordKind::stock_entry: return "S";
    case RecordKind::log_entry: return "L";
    case RecordKind::species_profile: return "SP";
  }
  return "";
}

std::string hint_of(const Record& record) {
  const auto* bag = std::get_if<Bag>(&record);
  return bag == nullptr ? std::string() : bag->material;
}

/// Where some record of a change is yet to get a number: those that others have, which it must not get.
std::set<RecordRef> ids_brought_along(const Change& change) {
  std::set<RecordRef> ids;
  if (std::ranges::none_of(change.edits, [](const Edit& edit) { return edit.ref.id.empty(); })) return ids;
  for (const Edit& edit : change.edits)
    if (edit.based_on == 0 && !edit.ref.id.empty()) ids.insert({edit.ref.kind, small_letters(edit.ref.id)});
  return ids;
}

// A step is done (0), undone (1), or on its way out (-1): it can be neither undone nor redone any more.
constexpr int kept_steps = 200;
constexpr int dropped_swaps = 200;  // in one change: an import's step holds thousands, and whoever types next shouldn't wait for them

}  // namespace

std::string OpenWorkbook::Inside::free_id(RecordKind kind, const std::string& hint, std::int64_t beyond) {
  std::string prefix = prefix_of(kind);
  if (kind == RecordKind::bag && !hint.empty()) {
    const char letter = hint.front();
    if (letter >= 'a' && letter <= 'z') prefix = static_cast<char>(letter - 'a' + 'A');
    if (letter >= 'A' && letter <= 'Z') prefix = letter;
  }
  Query last = query("SELECT last FROM counter WHERE kind = ?1 AND prefix = ?2");
  last.with(std::string(kind_name(kind)), prefix);
  for (std::int64_t next = std::max(last.step() ? last.whole(0) : 0, beyond) + 1;; ++next) {
    std::string id = std::to_string(next);
    if (id.size() < 2) id.insert(0, 1, '0');
    id = prefix + "-" + id + (kind == RecordKind::mix ? "/1" : "");
    // Numbers too long to be counted may be in use all the same.
    if (!row({kind, id})) return id;
  }
}

OpenWorkbook::OpenWorkbook(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
OpenWorkbook::OpenWorkbook(OpenWorkbook&&) noexcept = default;
OpenWorkbook& OpenWorkbook::operator=(OpenWorkbook&&) noexcept = default;
OpenWorkbook::~OpenWorkbook() = default;

const std::filesystem::path& OpenWorkbook::file() const { return inside_->file; }
Access OpenWorkbook::access() const { return inside_->access; }
Placement OpenWorkbook::placement() const { return inside_->placement; }
std::filesystem::path OpenWorkbook::backup_folder() const { return inside_->backups; }

Notes OpenWorkbook::take_notes() { return inside_->notes->take(); }

// ---- reading -----------------------------------------------------------------------------------------------------------

std::optional<StoredRecord> OpenWorkbook::find(const RecordRef& ref) const {
  const auto row = inside_->read([&] { return inside_->row(ref); });
  if (!row || !row->body) return std::nullopt;
  const RecordRef spelt{ref.kind, row->id};
  return StoredRecord{spelt, row->revision, inside_->records_read.of(spelt, *row->body)};
}

std::optional<StoredRecord> OpenWorkbook::find_even_deleted(const RecordRef& ref) const {
  return inside_->read([&]() -> std::optional<StoredRecord> {
    Query found = inside_->query("SELECT id, revision, coalesce(body, gone) FROM record WHERE kind = ?1 AND id = ?2");
    found.with(std::string(kind_name(ref.kind)), ref.id);
    if (!found.step() || found.is_null(2)) return std::nullopt;
    const RecordRef spelt{ref.kind, found.text(0)};
    return StoredRecord{spelt, found.whole(1), inside_->records_read.of(spelt, found.text(2))};
  });
}

namespace {

/// The records of a list by its filter, its words left out.
NumberQuery listed(RecordKind kind, const ListFilter& filter) {
  NumberQuery query;
  const auto bound = [&](std::string value) {
    query.values.push_back(std::move(value));
    return std::string(1, '?').append(std::to_string(query.values.size()));
  };
  // The kind stands in the text, so that an index of one kind can answer.
  query.sql.append(" FROM record r WHERE r.kind = '").append(kind_name(kind)).append("' AND r.body IS NOT NULL");
  if (filter.without_small) query.sql += " AND r.subject <> 'bookkeeping'";
  if (filter.subject) query.sql.append(" AND r.subject = ").append(bound(*filter.subject));
  if (filter.from_day) query.sql.append(" AND r.day >= ").append(bound(*filter.from_day));
  if (filter.to_day) query.sql.append(" AND r.day <= ").append(bound(*filter.to_day));
  if (filter.about) {
    const std::string about_kind = bound(std::string(kind_name(filter.about->kind)));
    const std::string about_id = bound(filter.about->id);
    query.sql.append(" AND r.number IN (SELECT owner FROM link WHERE from_kind = ").append(about_kind).append(" AND from_id = ").append(about_id);
    query.sql.append(" UNION SELECT owner FROM link WHERE to_kind = ").append(about_kind).append(" AND to_id = ").append(about_id).append(")");
  }
  return query;
}

SQLite::Statement list_statement(OpenWorkbook::Inside& inside, const char* columns, const NumberQuery& query, const char* further) {
  SQLite::Statement statement(*inside.database, std::string("SELECT ") + columns + query.sql + further);
  int index = 0;
  for (const std::string& value : query.values) statement.bind(++index, value);
  return statement;
}

/// The numbers of a list that has words, in its order.
const std::vector<std::int64_t>& numbers_by_words(OpenWorkbook::Inside& inside, RecordKind kind, const ListFilter& filter) {
  NumberQuery narrowing = listed(kind, filter);
  narrowing.sql.insert(0, "SELECT r.number");
  const std::string match = match_of(filter.words);
  if (filter.by_day) return inside.word_search.all_by_day(kind, std::move(narrowing), match);
  return inside.word_search.all({std::move(narrowing)}, match);
}

}  // namespace

std::vector<RecordLine> OpenWorkbook::list(RecordKind kind, const ListFilter& filter) const {
  return inside_->read([&] {
    if (!match_of(filter.words).empty()) {
      const std::vector<std::int64_t>& numbers = numbers_by_words(*inside_, kind, filter);
      SQLite::Statement statement(*inside_->database, std::string("SELECT ") + line_columns + " FROM record r WHERE r.number = ?1 AND r.body IS NOT NULL");
      std::vector<RecordLine> lines;
      for (std::size_t i = filter.offset; i < numbers.size() && lines.size() < filter.limit; ++i) {
        statement.bind(1, numbers[i]);
        for (RecordLine& line : record_lines(statement)) lines.push_back(std::move(line));
        statement.reset();
      }
      return lines;
    }
    const NumberQuery query = listed(kind, filter);
    SQLite::Statement statement = list_statement(
        *inside_, line_columns, query, filter.by_day ? " ORDER BY r.day DESC, r.number DESC LIMIT ?10 OFFSET ?11" : " ORDER BY r.number DESC LIMIT ?10 OFFSET ?11");
    statement.bind(10, static_cast<std::int64_t>(filter.limit));
    statement.bind(11, static_cast<std::int64_t>(filter.offset));
    return record_lines(statement);
  });
}

std::size_t OpenWorkbook::count(RecordKind kind, const ListFilter& filter) const {
  return inside_->read([&] {
    if (!match_of(filter.words).empty()) return numbers_by_words(*inside_, kind, filter).size();
    SQLite::Statement statement = list_statement(*inside_, "count(*)", listed(kind, filter), "");
    statement.executeStep();
    return static_cast<std::size_t>(statement.getColumn(0).getInt64());
  });
}

std::optional<std::size_t> OpenWorkbook::place_in_list(const RecordRef& ref, const ListFilter& filter) const {
  return inside_->read([&]() -> std::optional<std::size_t> {
    const auto found = inside_->row(ref);
    if (!found) return std::nullopt;
    if (!match_of(filter.words).empty()) {
      const std::vector<std::int64_t>& numbers = numbers_by_words(*inside_, ref.kind, filter);
      const auto at = filter.by_day ? std::ranges::find(numbers, found->number) : std::ranges::lower_bound(numbers, found->number, std::greater{});
      if (at == numbers.end() || *at != found->number) return std::nullopt;
      return static_cast<std::size_t>(at - numbers.begin());
    }
    const NumberQuery query = listed(ref.kind, filter);
    SQLite::Statement at = list_statement(*inside_, "count(*)", query, " AND r.number = ?10");
    at.bind(10, found->number);
    at.executeStep();
    if (at.getColumn(0).getInt64() == 0) return std::nullopt;
    SQLite::Statement before = list_statement(*inside_, "count(*)", query,
                                              filter.by_day ? " AND (r.day, r.number) > (SELECT day, number FROM record WHERE number = ?10)" : " AND r.number > ?10");
    before.bind(10, found->number);
    before.executeStep();
    return static_cast<std::size_t>(before.getColumn(0).getInt64());
  });
}

std::size_t OpenWorkbook::count(RecordKind kind) const {
  return inside_->read([&] {
    Query found = inside_->query("SELECT count(*) FROM record WHERE kind = ?1 AND body IS NOT NULL");
    found.with(std::string(kind_name(kind))).step();
    return static_cast<std::size_t>(found.whole(0));
  });
}

std::vector<StoredRecord> OpenWorkbook::all_of(RecordKind kind) const {
  return inside_->read([&] {
    Query found = inside_->query("SELECT id, revision, body FROM record WHERE kind = ?1 AND body IS NOT NULL ORDER BY number");
    found.with(std::string(kind_name(kind)));
    std::vector<StoredRecord> records;
    while (found.step()) {
      const RecordRef ref{kind, found.text(0)};
      records.push_back({ref, found.whole(1), inside_->records_read.of(ref, found.text(2))});
    }
    return records;
  });
}

std::vector<Stored<RecordedSieveTest>> OpenWorkbook::sieve_tests_of(const RecordRef& ref) const {
  return inside_->read([&] {
    Query found = inside_->query(
        "SELECT r.id, r.revision, r.body FROM link l JOIN record r ON r.number = l.owner WHERE l.from_kind = ?1 AND l.from_id = ?2"
        " AND l.role = 'tested' AND l.to_kind = 'sieve-test' AND r.body IS NOT NULL ORDER BY r.number");
    found.with(std::string(kind_name(ref.kind)), ref.id);
    std::vector<Stored<RecordedSieveTest>> tests;
    while (found.step()) {
      const RecordRef test{RecordKind::sieve_test, found.text(0)};
      tests.push_back({{test.id}, found.whole(1), std::get<RecordedSieveTest>(inside_->records_read.of(test, found.text(2)))});
    }
    return tests;
  });
}

std::optional<Mass> OpenWorkbook::stock_of(const RecordRef& holder) const {
  return inside_->read([&]() -> std::optional<Mass> {
    Query found = inside_->query("SELECT sum(micrograms) FROM stock WHERE holder_kind = ?1 AND holder_id = ?2");
    found.with(std::string(kind_name(holder.kind)), holder.id).step();
    if (found.is_null(0)) return std::nullopt;
    return mass_g(static_cast<double>(found.whole(0)) / 1e6);
  });
}

bool OpenWorkbook::is_used(const RecordRef& ref) const {
  return inside_->read([&] {
    Query found = inside_->query(
        "SELECT 1 FROM link l JOIN record r ON r.number = l.owner WHERE l.from_kind = ?1 AND l.from_id = ?2 AND l.role <> 'about'"
        " AND r.body IS NOT NULL LIMIT 1");
    found.with(std::string(kind_name(ref.kind)), ref.id);
    return found.step();
  });
}

std::string OpenWorkbook::suggest_id(RecordKind kind, const std::string& hint) const {
  return inside_->read([&] { return inside_->free_id(kind, hint); });
}

Id<MixVersion> OpenWorkbook::next_version(const Id<MixVersion>& id) const {
  return inside_->read([&]() -> Id<MixVersion> {
    const std::string base = id.text.substr(0, id.text.rfind('/'));
    for (int version = 2;; ++version) {
      const std::string next = base + "/" + std::to_string(version);
      if (!inside_->row({RecordKind::mix, next})) return {next};
    }
  });
}

// ---- changing ----------------------------------------------------------------------------------------------------------

Result<Applied> OpenWorkbook::apply(Change change) { return inside_->apply(std::move(change), {}); }

Result<Applied> OpenWorkbook::Inside::apply(Change change, const Footing& footing) {
  if (Problems problems = obstacles(); !problems.empty()) return problems;
  Problems problems;
  std::vector<std::optional<std::string>> bodies;
  for (const Edit& edit : change.edits) {
    bodies.emplace_back();
    if (!edit.value) continue;
    Result<std::string> body = encode(edit.ref, *edit.value);
    append(problems, body.problems());
    if (body) bodies.back() = std::move(body).value();
  }
  if (!problems.empty()) return problems;
  back_up_before_first_write();
  return write([&] { return apply_in_transaction(change, bodies, footing); });
}

Problems OpenWorkbook::Inside::add_corrected_receipts(Change& change, std::vector<std::optional<std::string>>& bodies) {
  Problems problems;
  const std::size_t given = change.edits.size();
  for (std::size_t i = 0; i < given; ++i) {
    if (change.edits[i].ref.kind != RecordKind::bag || !change.edits[i].value) continue;
    const std::optional<Row> was = row(change.edits[i].ref);
    if (!was || !was->body) continue;
    const RecordRef bag{RecordKind::bag, was->id};
    // What can't be read any more says nothing of what came in.
    const Result<Record> before = read_record(bag.kind, *was->body, ref_text(bag));
    if (!before) continue;
    auto edit = corrected_receipt(*this, bag, std::get<Bag>(*before), std::get<Bag>(*change.edits[i].value));
    if (!edit) continue;
    const auto tells_itself = [&](const Edit& other) {
      const auto* entry = other.value ? std::get_if<StockEntry>(&*other.value) : nullptr;
      return other.ref == edit->ref || (entry != nullptr && entry->holder == bag);
    };
    if (std::any_of(change.edits.begin(), change.edits.begin() + static_cast<std::ptrdiff_t>(given), tells_itself)) continue;
    Result<std::string> body = encode(edit->ref, *edit->value);
    append(problems, body.problems());
    if (!body) continue;
    bodies.emplace_back(std::move(body).value());
    change.edits.push_back(*std::move(edit));
  }
  return problems;
}

Result<Applied> OpenWorkbook::Inside::apply_in_transaction(Change& change, std::vector<std::optional<std::string>>& bodies,
                                                           const Footing& footing) {
  struct Swap {
    RecordRef ref;
    std::optional<std::string> before;
    std::optional<std::string> after;
  };
  if (footing.workbook_revision && *footing.workbook_revision != changes())
    return Problem{"workbook.changed-meanwhile", {}, {}};
  Problems problems = add_corrected_receipts(change, bodies);
  if (!problems.empty()) return problems;
  std::vector<Swap> swaps;
  Applied applied;
  std::optional<std::int64_t> counter;
  const std::set<RecordRef> brought = ids_brought_along(change);
  for (std::size_t i = 0; i < change.edits.size(); ++i) {
    Edit& edit = change.edits[i];
    const bool adds = edit.based_on == 0;
    if (adds && edit.ref.id.empty()) {
      const std::string hint = edit.value ? hint_of(*edit.value) : "";
      edit.ref.id = free_id(edit.ref.kind, hint);
      while (brought.contains({edit.ref.kind, small_letters(edit.ref.id)})) edit.ref.id = free_id(edit.ref.kind, hint, counted_id(edit.ref.id).value().second);
    }
    const std::optional<Row> was = row(edit.ref);
    if (was) edit.ref.id = was->id;
    if (adds && was) problems.push_back(record_problem("workbook.id-used", edit.ref));
    if (!adds && !was) problems.push_back(record_problem("workbook.not-there", edit.ref));
    if (!adds && was && was->revision != edit.based_on) problems.push_back(record_problem("workbook.stale-change", edit.ref));
    // A deleted record comes back under its id only as what it last was.
    if (!adds && was && was->revision == edit.based_on && !was->body && !(bodies[i] && was->gone && *bodies[i] == written_today(edit.ref, *was->gone)))
      problems.push_back(record_problem("workbook.not-there", edit.ref));
    if (!problems.empty()) continue;
    applied.revisions.emplace_back(edit.ref, was ? was->revision : 0);
    if ((was ? was->body : std::nullopt) == bodies[i]) continue;
    if (!counter) counter = next_change();
    applied.revisions.back().second = put(edit.ref, bodies[i], true, *counter);
    if (!bodies[i]) applied.revisions.back().second = 0;
    if (i < footing.fingerprints.size() && !footing.fingerprints[i].empty())
      query("INSERT INTO imported SELECT ?1, number FROM record WHERE kind = ?2 AND id = ?3")
          .with(footing.fingerprints[i], std::string(kind_name(edit.ref.kind)), edit.ref.id)
          .run();
    swaps.push_back({edit.ref, was ? was->body : std::nullopt, bodies[i]});
  }
  if (!problems.empty()) return problems;
  if (swaps.empty() && !change.log) return applied;
  if (!counter) counter = next_change();

  query("UPDATE step SET undone = -1 WHERE undone = 1").run();
  std::optional<std::int64_t> merged_into;
  if (!change.merge_key.empty() && own_last_step) {
    Query last = query("SELECT number FROM step WHERE number = (SELECT max(number) FROM step WHERE undone = 0) AND number = ?1 AND merge_key = ?2");
    last.with(*own_last_step, change.merge_key);
    if (last.step()) merged_into = last.whole(0);
  }
  const std::string now = written_time(options.clock());
  std::int64_t step = 0;
  if (merged_into) {
    step = *merged_into;
    query("UPDATE step SET label = ?2, written = ?3 WHERE number = ?1").with(step, change.label, now).run();
  } else {
    query("INSERT INTO step(label, written, merge_key) VALUES (?1, ?2, ?3)").with(change.label, now, change.merge_key).run();
    step = database->getLastInsertRowid();
    const auto comes_or_goes = [](const Swap& swap) { return swap.before.has_value() != swap.after.has_value(); };
    const LogSort sort = std::ranges::any_of(swaps, comes_or_goes) ? LogSort::event : LogSort::bookkeeping;
    LogEntry entry = change.log.value_or(LogEntry{"", "", sort, change.label, {}});
    if (entry.day.empty()) entry.day = local_day(options.clock());
    entry.written = now;
    if (entry.text.empty()) entry.text = change.label.empty() ? "-" : change.label;
    // A step that touches much is told by its label.
    constexpr std::size_t most_named = 50;
    for (const Swap& swap : swaps) {
      if (swaps.size() > most_named) break;
      const bool tells_itself = swap.ref.kind == RecordKind::stock_entry || swap.ref.kind == RecordKind::log_entry;
      if (!tells_itself && std::ranges::find(entry.about, swap.ref) == entry.about.end()) entry.about.push_back(swap.ref);
    }
    const bool only_log = std::ranges::all_of(swaps, [](const Swap& swap) { return swap.ref.kind == RecordKind::log_entry; });
    // A note written into the log by hand is its own entry.
    if (change.log || !only_log) {
      const RecordRef ref{RecordKind::log_entry, free_id(RecordKind::log_entry)};
      const Result<std::string> body = encode(ref, entry);
      if (!body) return body.problems();
      put(ref, *body, false, *counter);
      swaps.push_back({ref, std::nullopt, *body});
    }
  }
  std::int64_t position = 0;
  if (merged_into) {
    Query last = query("SELECT coalesce(max(position), 0) FROM swap WHERE step = ?1");
    last.with(step).step();
    position = last.whole(0);
  }
  for (const Swap& swap : swaps) {
    const std::string kind(kind_name(swap.ref.kind));
    if (merged_into) {
      query("UPDATE swap SET after = ?4 WHERE step = ?1 AND kind = ?2 AND id = ?3").with(step, kind, swap.ref.id, swap.after).run();
      if (database->getChanges() > 0) continue;
    }
    query("INSERT INTO swap VALUES (?1, ?2, ?3, ?4, ?5, ?6)").with(step, ++position, kind, swap.ref.id, swap.before, swap.after).run();
  }
  if (merged_into) {
    // Typed back to what it was: there is nothing to undo, and nothing happened that a log should tell.
    Query differs = query("SELECT 1 FROM swap WHERE step = ?1 AND kind <> 'log-entry' AND before IS NOT after LIMIT 1");
    const bool nothing_left = !differs.with(step).step();
    if (nothing_left) {
      std::vector<std::string> entries;
      {
        Query logged = query("SELECT id FROM swap WHERE step = ?1 AND kind = 'log-entry'");
        logged.with(step);
        while (logged.step()) entries.push_back(logged.text(0));
      }
      for (const std::string& id : entries) put({RecordKind::log_entry, id}, std::nullopt, false, *counter);
      query("DELETE FROM step WHERE number = ?1").with(step).run();
      own_last_step.reset();
      return applied;
    }
  }
  query("UPDATE step SET undone = -1 WHERE undone = 0 AND number < (SELECT min(number) FROM (SELECT number FROM step WHERE undone = 0 ORDER BY number DESC LIMIT ?1))")
      .with(kept_steps)
      .run();
  query("DELETE FROM swap WHERE rowid IN (SELECT w.rowid FROM step s JOIN swap w ON w.step = s.number WHERE s.undone = -1 LIMIT ?1)").with(dropped_swaps).run();
  query("DELETE FROM step WHERE undone = -1 AND NOT EXISTS (SELECT 1 FROM swap WHERE swap.step = step.number)").run();
  // Written at once, words lie in many large parts; SQLite would merge them under the signs typed next, and the slowest would take a tenth of a second.
  constexpr std::size_t many = 1000;
  if (swaps.size() >= many) query("INSERT INTO search(search) VALUES ('optimize')").run();
  own_last_step = step;
  applied.step = step;
  return applied;
}

void OpenWorkbook::end_merging() { inside_->own_last_step.reset(); }

namespace {

std::optional<Step> step_where(OpenWorkbook::Inside& inside, bool undone) {
  Query found = inside.query(undone ? "SELECT number, label FROM step WHERE undone = 1 ORDER BY number LIMIT 1"
                                    : "SELECT number, label FROM step WHERE undone = 0 ORDER BY number DESC LIMIT 1");
  if (!found.step()) return std::nullopt;
  return Step{found.whole(0), found.text(1)};
}

}  // namespace

std::optional<Step> OpenWorkbook::undoable() const {
  return inside_->read([&] { return step_where(*inside_, false); });
}
std::optional<Step> OpenWorkbook::redoable() const {
  return inside_->read([&] { return step_where(*inside_, true); });
}

Result<Step> OpenWorkbook::undo(std::optional<std::int64_t> step) {
  if (Problems problems = inside_->obstacles(); !problems.empty()) return problems;
  inside_->back_up_before_first_write();
  return inside_->write([&] { return inside_->swap_step(step, true); });
}
Result<Step> OpenWorkbook::redo(std::optional<std::int64_t> step) {
  if (Problems problems = inside_->obstacles(); !problems.empty()) return problems;
  inside_->back_up_before_first_write();
  return inside_->write([&] { return inside_->swap_step(step, false); });
}

Result<Step> OpenWorkbook::Inside::swap_step(std::optional<std::int64_t> wanted, bool undo) {
  const std::optional<Step> step = step_where(*this, !undo);
  if (!step) return Problem{undo ? "workbook.nothing-to-undo" : "workbook.nothing-to-redo", {}, {}};
  if (wanted && *wanted != step->number) return Problem{"workbook.step-gone", {}, {{"label", step->label}}};
  struct Swap {
    RecordRef ref;
    std::optional<std::string> from;
    std::optional<std::string> to;
  };
  std::vector<Swap> swaps;
  {
    Query found = query(undo ? "SELECT kind, id, after, before FROM swap WHERE step = ?1 ORDER BY position DESC"
                             : "SELECT kind, id, before, after FROM swap WHERE step = ?1 ORDER BY position");
    found.with(step->number);
    while (found.step())
      swaps.push_back({{kind_named(found.text(0)).value(), found.text(1)}, found.optional_text(2), found.optional_text(3)});
  }
  const std::int64_t change = next_change();
  for (const Swap& swap : swaps) {
    const std::optional<Row> now = row(swap.ref);
    if (!now || now->body != swap.from) return Problem{"workbook.step-gone", {}, {{"label", step->label}}};
    put(swap.ref, swap.to, !undo, change);
  }
  query("UPDATE step SET undone = ?2 WHERE number = ?1").with(step->number, int{undo}).run();
  own_last_step.reset();
  return *step;
}

std::string OpenWorkbook::own_id() const {
  return inside_->read([&] { return inside_->meta("workbook"); });
}

// ---- other windows -----------------------------------------------------------------------------------------------------

std::int64_t OpenWorkbook::revision() const {
  return inside_->read([&] { return inside_->changes(); });
}

std::vector<RecordRef> OpenWorkbook::changed_since(std::int64_t revision) const {
  return inside_->read([&] {
    Query found = inside_->query("SELECT kind, id FROM record WHERE changed > ?1 ORDER BY changed, number");
    found.with(revision);
    std::vector<RecordRef> refs;
    // A kind of a newer version is not shown anywhere.
    while (found.step())
      if (const auto kind = kind_named(found.text(0))) refs.push_back({*kind, found.text(1)});
    return refs;
  });
}

Problems OpenWorkbook::file_trouble() const {
  if (identity_of(inside_->file) != std::optional(inside_->identity)) return {file_problem("file.gone", inside_->file)};
  return {};
}

}  // namespace gritwright
