#include "inside.hpp"

#include <sqlite3.h>

#include <charconv>
#include <cmath>
#include <ctime>
#include <system_error>
#include <utility>

#include "gritwright/formats/record_file.hpp"
#include "record_index.hpp"

namespace gritwright {

std::string written_time(std::chrono::system_clock::time_point time) {
  const std::time_t seconds = std::chrono::system_clock::to_time_t(time);
  std::tm parts{};
  ::gmtime_r(&seconds, &parts);
  char text[40];
  const std::size_t length = std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &parts);
  return {text, length};
}

std::string local_day(std::chrono::system_clock::time_point time) {
  const std::time_t seconds = std::chrono::system_clock::to_time_t(time);
  std::tm parts{};
  ::localtime_r(&seconds, &parts);
  char text[40];
  const std::size_t length = std::strftime(text, sizeof text, "%Y-%m-%d", &parts);
  return {text, length};
}

std::int64_t micrograms_of(Mass mass) {
  constexpr double micrograms_per_gram = 1e6;
  return std::llround(in_g(mass) * micrograms_per_gram);
}

Problem file_problem(const char* code, const std::filesystem::path& file) {
  Place place;
  place.file = file.string();
  return {code, std::move(place), {}};
}

Problem problem_of(const SQLite::Exception& trouble, const std::filesystem::path& file) {
  switch (trouble.getErrorCode() & 0xff) {
    case SQLITE_FULL: return file_problem("file.disk-full", file);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL: return file_problem("file.locked", file);
    case SQLITE_READONLY:
    case SQLITE_PERM: return file_problem("file.read-only", file);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_FORMAT: return file_problem("file.damaged", file);
    case SQLITE_CANTOPEN:
    case SQLITE_AUTH: return file_problem("file.unreadable", file);
    case SQLITE_IOERR: return file_problem("file.write-failed", file);
    default: {
      Problem problem = file_problem("file.trouble", file);
      problem.facts["text"] = std::string(trouble.what());
      return problem;
    }
  }
}

namespace {

/// Kinds that grain passes through: a deleted one still has what was made of it.
bool carries_grain(RecordKind kind) {
  switch (kind) {
    case RecordKind::bag:
    case RecordKind::bin:
    case RecordKind::fraction:
    case RecordKind::mix:
    case RecordKind::batch:
    case RecordKind::tree: return true;
    default: return false;
  }
}

}  // namespace

OpenWorkbook::Inside::~Inside() {
  if (backup_thread.joinable()) backup_thread.join();
  {
    const std::lock_guard lock(log_guard);
    closing = true;
  }
  log_news.notify_all();
  if (log_thread.joinable()) log_thread.join();
  statements.clear();
}

void OpenWorkbook::Inside::move_log_beside() {
  constexpr int many_pages = 1000;  // as SQLite itself would
  constexpr int too_many_pages = 10'000;
  constexpr std::chrono::seconds pause{2};
  if (log_pages < log_pages_moved_at) log_pages_moved_at = 0;  // begun anew
  const int pages = log_pages - log_pages_moved_at;
  {
    const std::lock_guard lock(log_guard);
    last_change = std::chrono::steady_clock::now();
    log_is_long = pages >= too_many_pages;
  }
  if (log_is_long) log_news.notify_all();
  if (pages < many_pages || log_is_moved) return;
  log_pages_moved_at = log_pages;
  if (log_thread.joinable()) log_thread.join();
  log_is_moved = true;
  const auto move = [this, pause, own = identity, name = file, layer = options.file_layer] {
    {
      std::unique_lock lock(log_guard);
      while (!closing && !log_is_long && std::chrono::steady_clock::now() < last_change + pause) log_news.wait_until(lock, last_change + pause);
      if (closing) {
        log_is_moved = false;  // closing brings it over
        return;
      }
    }
    try {
      if (identity_of(name) == std::optional(own)) {
        SQLite::Database beside(name.string(), SQLite::OPEN_READWRITE, 0, layer);
        beside.exec("PRAGMA synchronous = FULL; PRAGMA wal_checkpoint(PASSIVE)");
      }
    } catch (const SQLite::Exception&) {
      // Nothing is lost: the log holds it, and closing or the next try brings it over.
    }
    log_is_moved = false;
  };
  try {
    log_thread = std::thread(move);
  } catch (const std::system_error&) {
    log_is_moved = false;
  }
}

Query OpenWorkbook::Inside::query(const std::string& sql) {
  auto& statement = statements[sql];
  if (!statement) {
    try {
      statement = std::make_unique<SQLite::Statement>(*database, sql);
    } catch (...) {
      statements.erase(sql);
      throw;
    }
  }
  return Query(*statement);
}

std::vector<RecordLine> record_lines(SQLite::Statement& statement) {
  constexpr double micrograms_per_gram = 1e6;
  std::vector<RecordLine> lines;
  while (statement.executeStep()) {
    const auto kind = kind_named(statement.getColumn(0).getString());
    if (!kind) continue;  // of a newer version
    RecordLine& line = lines.emplace_back();
    line.ref = {*kind, statement.getColumn(1).getString()};
    line.revision = statement.getColumn(2).getInt64();
    line.title = statement.getColumn(3).getString();
    line.subject = statement.getColumn(4).getString();
    line.day = statement.getColumn(5).getString();
    if (!statement.isColumnNull(6)) line.stock = mass_g(static_cast<double>(statement.getColumn(6).getInt64()) / micrograms_per_gram);
    line.sieve_tests = statement.getColumn(7).getInt();
  }
  return lines;
}

std::string OpenWorkbook::Inside::meta(const char* key) {
  Query found = query("SELECT value FROM meta WHERE key = ?1");
  found.with(std::string(key));
  return found.step() ? found.text(0) : std::string();
}

std::optional<std::int64_t> OpenWorkbook::Inside::told_changes() {
  const std::string told = meta("changes");
  std::int64_t count = 0;
  const auto [end, fault] = std::from_chars(told.data(), told.data() + told.size(), count);
  constexpr std::int64_t never_reached = 1'000'000'000'000'000;
  if (fault != std::errc() || end != told.data() + told.size() || count < 0 || count > never_reached) return std::nullopt;
  return count;
}

std::int64_t OpenWorkbook::Inside::changes() {
  if (const auto count = told_changes()) return *count;
  throw SQLite::Exception("the count of changes is no number", SQLITE_CORRUPT);
}

std::optional<OpenWorkbook::Inside::Row> OpenWorkbook::Inside::row(const RecordRef& ref) {
  Query found = query("SELECT number, id, revision, body, gone FROM record WHERE kind = ?1 AND id = ?2");
  found.with(std::string(kind_name(ref.kind)), ref.id);
  if (!found.step()) return std::nullopt;
  return Row{found.whole(0), found.text(1), found.whole(2), found.optional_text(3), found.optional_text(4)};
}

std::int64_t OpenWorkbook::Inside::next_change() {
  const std::int64_t next = changes() + 1;
  query("UPDATE meta SET value = ?1 WHERE key = 'changes'").with(std::to_string(next)).run();
  return next;
}

std::string small_letters(std::string text) {
  for (char& sign : text)
    if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
  return text;
}

std::optional<std::pair<std::string, std::int64_t>> counted_id(const std::string& id) {
  const std::string base = id.substr(0, id.find('/'));
  const auto dash = base.rfind('-');
  if (dash == std::string::npos) return std::nullopt;
  const std::string digits = base.substr(dash + 1);
  constexpr std::size_t most_digits = 9;
  if (digits.empty() || digits.size() > most_digits || digits.find_first_not_of("0123456789") != std::string::npos) return std::nullopt;
  return std::pair{base.substr(0, dash), std::int64_t{std::stoll(digits)}};
}

void OpenWorkbook::Inside::count_id(const RecordRef& ref) {
  const auto counted = counted_id(ref.id);
  if (!counted) return;
  query("INSERT INTO counter VALUES (?1, ?2, ?3) ON CONFLICT DO UPDATE SET last = max(last, excluded.last)")
      .with(std::string(kind_name(ref.kind)), counted->first, counted->second)
      .run();
}

Problems OpenWorkbook::Inside::for_each_record(std::optional<RecordKind> only, const char* code, const EachRecord& then) {
  Problems unreadable;
  Query row = query(only ? "SELECT kind, id, body, title, subject, day, number FROM record WHERE body IS NOT NULL AND kind = ?1 ORDER BY number"
                         : "SELECT kind, id, body, title, subject, day, number FROM record WHERE body IS NOT NULL ORDER BY number");
  if (only) row.with(std::string(kind_name(*only)));
  while (row.step()) {
    const auto kind = kind_named(row.text(0));
    if (!kind) continue;
    const RecordRef ref{*kind, row.text(1)};
    Result<Record> record = read_record(*kind, row.text(2), ref_text(ref));
    if (record)
      then(ref, std::move(record).value(), row);
    else
      unreadable.push_back({code, {}, {{"kind", row.text(0)}, {"id", ref.id}}});
  }
  return unreadable;
}

std::int64_t OpenWorkbook::Inside::put(const RecordRef& ref, const std::optional<std::string>& body, bool keep_links,
                                       std::int64_t change) {
  const std::string kind(kind_name(ref.kind));
  const std::optional<Row> was = row(ref);
  std::int64_t number = was ? was->number : 0;
  const std::int64_t revision = was ? was->revision + 1 : 1;
  if (!was) {
    query("INSERT INTO record(kind, id, revision, changed) VALUES (?1, ?2, 0, ?3)").with(kind, ref.id, change).run();
    number = database->getLastInsertRowid();
    count_id(ref);
  }
  if (body || !keep_links || !carries_grain(ref.kind)) query("DELETE FROM link WHERE owner = ?1").with(number).run();
  if (was && was->body) {
    query("DELETE FROM search WHERE rowid = ?1").with(number).run();
    if (ref.kind == RecordKind::stock_entry) query("DELETE FROM stock WHERE number = ?1").with(number).run();
  }
  if (!body) {
    query("UPDATE record SET revision = ?2, changed = ?3, gone = body, body = NULL WHERE number = ?1")
        .with(number, revision, change)
        .run();
    return revision;
  }
  const Result<Record> record = read_record(ref.kind, *body, ref_text(ref));
  if (!record) throw std::logic_error("a stored record can't be read: " + record.problems().front().code);
  const IndexEntry entry = index_of(ref, *record);
  query("UPDATE record SET revision = ?2, changed = ?3, title = ?4, subject = ?5, day = ?6, body = ?7, gone = NULL WHERE number = ?1")
      .with(number, revision, change, entry.title, entry.subject, entry.day, *body)
      .run();
  query("INSERT INTO search(rowid, words) VALUES (?1, ?2)").with(number, entry.words).run();
  for (const Link& link : entry.links)
    query("INSERT INTO link VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)")
        .with(number, link.role, std::string(kind_name(link.from.kind)), link.from.id, std::string(kind_name(link.to.kind)),
              link.to.id, link.day, link.until, int{link.certain})
        .run();
  if (const auto* stock = std::get_if<StockEntry>(&*record)) {
    query("INSERT INTO stock VALUES (?1, ?2, ?3, ?4)")
        .with(number, std::string(kind_name(stock->holder.kind)), stock->holder.id,
              micrograms_of(stock->change))
        .run();
  }
  return revision;
}

Problems OpenWorkbook::Inside::obstacles() const {
  if (access == Access::read_only) return {file_problem("workbook.read-only", file)};
  if (identity_of(file) != std::optional(identity)) return {file_problem("file.gone", file)};
  if (notes->damage_seen) return {file_problem("file.damaged", file)};
  return {};
}

}  // namespace gritwright
