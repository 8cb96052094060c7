#pragma once
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <thread>
#include <type_traits>
#include <utility>
#include <vector>

#include "file_recognition.hpp"
#include "gritwright/units.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "records_read.hpp"
#include "schema.hpp"
#include "word_search.hpp"

namespace gritwright {

/// Holds a database's state for the length of a scope. Within another one or a transaction it is theirs.
class OneState {
 public:
  explicit OneState(SQLite::Database& database) {
    if (sqlite3_get_autocommit(database.getHandle()) == 0) return;
    database.exec("BEGIN");
    database_ = &database;
  }
  ~OneState() {
    if (database_ != nullptr) database_->tryExec("COMMIT");
  }
  OneState(const OneState&) = delete;
  OneState& operator=(const OneState&) = delete;

 private:
  SQLite::Database* database_ = nullptr;
};

/// A cached statement for the length of a scope; leaving it ends the read.
class Query {
 public:
  explicit Query(SQLite::Statement& statement) : statement_(&statement) {}
  ~Query() {
    statement_->tryReset();
    statement_->clearBindings();
  }
  Query(const Query&) = delete;
  Query& operator=(const Query&) = delete;

  template <class... Values>
  Query& with(const Values&... values) {
    int index = 0;
    (bind_one(++index, values), ...);
    return *this;
  }
  bool step() { return statement_->executeStep(); }
  void run() {
    while (statement_->executeStep()) {
    }
  }
  [[nodiscard]] std::string text(int column) const { return statement_->getColumn(column).getString(); }
  [[nodiscard]] std::int64_t whole(int column) const { return statement_->getColumn(column).getInt64(); }
  [[nodiscard]] bool is_null(int column) const { return statement_->isColumnNull(column); }
  [[nodiscard]] std::optional<std::string> optional_text(int column) const {
    return is_null(column) ? std::nullopt : std::optional(text(column));
  }

 private:
  template <class T>
  void bind_one(int index, const T& value) {
    if constexpr (std::is_same_v<T, std::optional<std::string>>) {
      if (value)
        statement_->bind(index, *value);
      else
        statement_->bind(index);
    } else if constexpr (std::is_integral_v<T>) {
      statement_->bind(index, static_cast<std::int64_t>(value));
    } else {
      statement_->bind(index, std::string(value));
    }
  }
  SQLite::Statement* statement_;
};

/// "2026-03-14T09:30:00Z".
[[nodiscard]] std::string written_time(std::chrono::system_clock::time_point time);

/// The day where this machine stands: what happened late in the evening happened that day.
[[nodiscard]] std::string local_day(std::chrono::system_clock::time_point time);

/// A to Z made small: ids and materials are the same in either.
[[nodiscard]] std::string small_letters(std::string text);

/// "L" and 7 of "L-07", as ids are counted; empty for an id of another manner.
[[nodiscard]] std::optional<std::pair<std::string, std::int64_t>> counted_id(const std::string& id);

/// As the ledger adds it up.
[[nodiscard]] std::int64_t micrograms_of(Mass mass);

/// Opens `file` for reading, also where nothing can be written beside it.
[[nodiscard]] std::unique_ptr<SQLite::Database> connect_to_read(const std::filesystem::path& file, std::chrono::milliseconds patience,
                                                                const std::string& file_layer);

/// What a failure of SQLite means to the user.
[[nodiscard]] Problem problem_of(const SQLite::Exception& trouble, const std::filesystem::path& file);
[[nodiscard]] Problem file_problem(const char* code, const std::filesystem::path& file);

/// Notes from this thread and from a backup beside it, which may outlive the workbook.
class NoteBox {
 public:
  void add(Note note) {
    const std::lock_guard lock(guard_);
    notes_.push_back(std::move(note));
  }
  [[nodiscard]] Notes take() {
    const std::lock_guard lock(guard_);
    return std::exchange(notes_, {});
  }
  /// Set by the backup, which reads all of a large file, to keep further changes out of a damaged one.
  std::atomic<bool> damage_seen{false};

 private:
  std::mutex guard_;
  Notes notes_;
};

/// What a change stands on beside the revisions that its edits are based on.
struct Footing {
  /// Refused with workbook.changed-meanwhile if anything was changed after this revision: for a change that follows from what was
  /// read and not from the records it edits, as the difference of a count to the books.
  std::optional<std::int64_t> workbook_revision;
  /// By edit, of what it was imported from, so that the same import adds it once; empty: not imported. May be shorter.
  std::vector<std::string> fingerprints;
};

struct OpenWorkbook::Inside {
  std::filesystem::path file;
  OpeningOptions options;
  Access access = Access::write;
  Placement placement = Placement::local;
  std::filesystem::path backups;
  FileIdentity identity;
  std::shared_ptr<void> open_mark;
  std::unique_ptr<SQLite::Database> database;
  std::map<std::string, std::unique_ptr<SQLite::Statement>> statements;
  std::shared_ptr<NoteBox> notes = std::make_shared<NoteBox>();
  std::thread backup_thread;
  std::string backed_up_day;
  std::thread log_thread;
  std::atomic<bool> log_is_moved{false};
  std::mutex log_guard;  ///< of the three below, which tell the thread when to begin
  std::condition_variable log_news;
  std::chrono::steady_clock::time_point last_change;
  bool log_is_long = false;
  bool closing = false;
  int log_pages = 0;                ///< after the last change
  int log_pages_moved_at = 0;       ///< when moving them was last begun
  std::optional<std::int64_t> own_last_step;  ///< the only step that typing may be merged into
  WordSearch word_search{*this};
  RecordsRead records_read;

  ~Inside();

  [[nodiscard]] Query query(const std::string& sql);
  [[nodiscard]] std::string meta(const char* key);
  /// How many changes the file says it has seen; none where that is no number.
  [[nodiscard]] std::optional<std::int64_t> told_changes();
  /// The same of a file that is whole; without a number the file is damaged, and an SQLite::Exception says so.
  [[nodiscard]] std::int64_t changes();

  struct Row {
    std::int64_t number = 0;
    std::string id;
    std::int64_t revision = 0;
    std::optional<std::string> body;
    std::optional<std::string> gone;  ///< what a deleted record last was
  };
  [[nodiscard]] std::optional<Row> row(const RecordRef& ref);

  /// Calls `then` for every record that is there, oldest first, where `only` is given for those of that kind. `row` is its row: kind,
  /// id, body, title, subject, day, number. Those that can't be read are left out and come back as problems with `code`; those of a newer
  /// version's kinds are passed over.
  using EachRecord = std::function<void(const RecordRef& ref, Record record, const Query& row)>;
  [[nodiscard]] Problems for_each_record(std::optional<RecordKind> only, const char* code, const EachRecord& then);

  /// Puts `body` (absent: deleted) in place; indexes, links, stock and search follow. `keep_links` when a deletion is meant, so
  /// that what was made of the record can still be traced. Returns the new revision.
  std::int64_t put(const RecordRef& ref, const std::optional<std::string>& body, bool keep_links, std::int64_t change);
  void count_id(const RecordRef& ref);
  /// An id that was never used, by the manner of the house, with a number above `beyond`. `hint` is a bag's material.
  [[nodiscard]] std::string free_id(RecordKind kind, const std::string& hint = {}, std::int64_t beyond = 0);
  [[nodiscard]] std::int64_t next_change();

  /// What `OpenWorkbook::apply` does, on a further footing.
  [[nodiscard]] Result<Applied> apply(Change change, const Footing& footing);
  Result<Applied> apply_in_transaction(Change& change, std::vector<std::optional<std::string>>& bodies, const Footing& footing);
  /// Adds what came in with the bags that are corrected, unless the change says itself what it was.
  [[nodiscard]] Problems add_corrected_receipts(Change& change, std::vector<std::optional<std::string>>& bodies);
  Result<Step> swap_step(std::optional<std::int64_t> wanted, bool undo);

  /// Problems that stand in the way of any writing.
  [[nodiscard]] Problems obstacles() const;
  void back_up_before_first_write();
  /// Has the log's pages brought into the file by a thread of its own once they are many and nobody types: a sign typed meanwhile waits for the disk.
  void move_log_beside();

  /// Runs `work`, which reads, on one state of the file, whatever others write meanwhile; trouble with the file becomes a WorkbookTrouble.
  template <class Work>
  auto read(Work work) -> decltype(work()) {
    try {
      const OneState state(*database);
      return work();
    } catch (const SQLite::Exception& trouble) {
      throw WorkbookTrouble(problem_of(trouble, file));
    }
  }

  /// Runs `work` in an immediate transaction; rolls back when it fails or throws. Never throws for trouble with the file.
  template <class Work>
  auto write(Work work) -> decltype(work()) {
    try {
      database->exec("BEGIN IMMEDIATE");
    } catch (const SQLite::Exception& trouble) {
      return problem_of(trouble, file);
    }
    try {
      auto result = work();
      if (result.ok())
        database->exec("COMMIT");
      else
        database->tryExec("ROLLBACK");
      move_log_beside();
      return result;
    } catch (const SQLite::Exception& trouble) {
      const Problem problem = problem_of(trouble, file);
      database->tryExec("ROLLBACK");
      return problem;
    } catch (...) {
      database->tryExec("ROLLBACK");
      throw;
    }
  }
};

/// Columns of a query over `record r` that `record_lines` reads, in this order.
inline constexpr const char* line_columns =
    "r.kind, r.id, r.revision, r.title, r.subject, r.day,"
    " (SELECT sum(micrograms) FROM stock s WHERE s.holder_kind = r.kind AND s.holder_id = r.id),"
    " (SELECT count(*) FROM link t WHERE t.from_kind = r.kind AND t.from_id = r.id AND t.role = 'tested' AND t.to_kind = 'sieve-test')";
[[nodiscard]] std::vector<RecordLine> record_lines(SQLite::Statement& statement);

/// Runs the migrations that `database` lacks, in one transaction, after a checked backup into `backups`.
[[nodiscard]] Problems bring_forward(SQLite::Database& database, const std::filesystem::path& file,
                                     const std::filesystem::path& backups, std::span<const Migration> steps,
                                     OpenWorkbook::Inside& inside);

}  // namespace gritwright
