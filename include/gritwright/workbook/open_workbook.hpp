#pragma once
// The grower's file. One object is one connection for one thread; several may be open on one file, in one program or in many.

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/domain/record.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// The time is handed in, so that a test can set it back.
using Clock = std::function<std::chrono::system_clock::time_point()>;

enum class Access { write, read_only };

/// Where the file lies. Shared memory does not work over a network, and a synchronising program copies files that do not fit
/// each other, so in both no write-ahead log is used.
enum class Placement { local, network_folder, synced_folder };

/// Runs a job beside the caller; the default is a thread that closing the workbook waits for.
using Worker = std::function<void(std::function<void()>)>;

struct OpeningOptions {
  Clock clock;  ///< must be set
  Access access = Access::write;
  bool create = true;  ///< make the file if it is not there
  bool daily_backup = true;
  std::optional<std::filesystem::path> backup_folder;  ///< absent: "NAME-backups" beside the file
  std::optional<Placement> placement;                  ///< absent: found out
  Worker worker;
  std::chrono::milliseconds patience{2000};  ///< how long another program's lock is waited for
  std::string file_layer;                    ///< name of a registered SQLite file layer; empty: the system's
};

/// Reading failed because of the file, not the caller: it was damaged, went away or stays locked while it is read. Thrown by the
/// reading functions of an open workbook, since every answer they could give would be wrong.
class WorkbookTrouble : public std::runtime_error {
 public:
  explicit WorkbookTrouble(Problem problem) : std::runtime_error(problem.code), problem_(std::move(problem)) {}
  [[nodiscard]] const Problem& problem() const { return problem_; }

 private:
  Problem problem_;
};

/// A record with its revision, which rises with every change of it and never falls.
template <class R>
struct Stored {
  Id<R> id;
  std::int64_t revision = 0;
  R record;
};
struct StoredRecord {
  RecordRef ref;
  std::int64_t revision = 0;
  Record record;
};

/// One record put in place of another: absent `value` deletes, `based_on` 0 adds. An empty id is filled in when it is added.
struct Edit {
  RecordRef ref;
  std::int64_t based_on = 0;  ///< the revision that was looked at
  std::optional<Record> value;
};

/// What is done in one transaction and undone in one step.
struct Change {
  std::string label;  ///< names the thing: "pan mass of bag K-07"
  std::vector<Edit> edits;
  /// Absent: an entry with the label, of bookkeeping where records only change, an event where one comes or goes. Day and time of
  /// writing are filled in.
  std::optional<LogEntry> log;
  std::string merge_key;        ///< while typing: joined with the step before if that has the same key; empty: never
};

struct Applied {
  std::vector<std::pair<RecordRef, std::int64_t>> revisions;  ///< of each edit, in order; 0 where it was deleted
  std::optional<std::int64_t> step;                           ///< absent when nothing changed
};

/// A step that can be undone or redone.
struct Step {
  std::int64_t number = 0;
  std::string label;
};

/// A record as lists show it, without reading all of it.
struct RecordLine {
  RecordRef ref;
  std::int64_t revision = 0;
  std::string title;
  std::string subject;  ///< material, species or what it is of; of a log entry its sort
  std::string day;
  std::optional<Mass> stock;  ///< dry grain by the ledger; absent where the ledger has no line
  int sieve_tests = 0;
};

struct ListFilter {
  std::optional<std::string> subject;
  std::optional<std::string> from_day;
  std::optional<std::string> to_day;
  std::optional<RecordRef> about;  ///< records that are linked to this one; of log entries, those about it
  std::size_t limit = 1'000'000;
  std::size_t offset = 0;
  std::string words{};  ///< found by their beginning, as a search does; empty: do not narrow
  bool without_small = false;  ///< of log entries only what happened or was seen, not the bookkeeping of a field that was typed into
  bool by_day = false;  ///< the newest day first, and of one day what was written last; else what was written last first, whatever day it is of
};

/// An open workbook. Every change is saved when `apply` returns.
class OpenWorkbook {
 public:
  /// Opens or creates `file`. Errors: file.missing, file.is-folder, file.other-kind, file.damaged, file.newer-version,
  /// file.read-only, file.locked, file.disk-full, file.unreadable, workbook.not-migrated (of an older version, and the backup before
  /// bringing it forward failed). A file that is refused is never written to.
  [[nodiscard]] static Result<OpenWorkbook> open(const std::filesystem::path& file, OpeningOptions options);

  OpenWorkbook(OpenWorkbook&&) noexcept;
  OpenWorkbook& operator=(OpenWorkbook&&) noexcept;
  OpenWorkbook(const OpenWorkbook&) = delete;
  OpenWorkbook& operator=(const OpenWorkbook&) = delete;
  /// Waits for a backup that is under way.
  ~OpenWorkbook();

  [[nodiscard]] const std::filesystem::path& file() const;
  /// 16 hexadecimal digits that it got by chance when it was begun. It keeps them wherever its file goes; its copies and backups have the same.
  [[nodiscard]] std::string own_id() const;
  [[nodiscard]] Access access() const;
  [[nodiscard]] Placement placement() const;
  [[nodiscard]] std::filesystem::path backup_folder() const;
  /// Notes since the last call: workbook.in-network-folder, workbook.in-synced-folder, workbook.migrated, workbook.read-only,
  /// workbook.clock-set-back, workbook.backup-failed.
  [[nodiscard]] Notes take_notes();

  // ---- reading ---------------------------------------------------------------------------------------------------------
  /// Empty if there is no such record.
  [[nodiscard]] std::optional<StoredRecord> find(const RecordRef& ref) const;
  template <class R>
  [[nodiscard]] std::optional<Stored<R>> find(const Id<R>& id) const {
    auto found = find(ref_to(id));
    if (!found) return std::nullopt;
    return Stored<R>{{found->ref.id}, found->revision, std::get<R>(std::move(found->record))};
  }
  /// The same, or what it last was before it was deleted.
  [[nodiscard]] std::optional<StoredRecord> find_even_deleted(const RecordRef& ref) const;
  /// Newest first, as the filter orders them.
  [[nodiscard]] std::vector<RecordLine> list(RecordKind kind, const ListFilter& filter = {}) const;
  [[nodiscard]] std::size_t count(RecordKind kind) const;
  /// How many `list` would give without its limit and offset.
  [[nodiscard]] std::size_t count(RecordKind kind, const ListFilter& filter) const;
  /// How many stand before the record in that list; empty if it is not in it.
  [[nodiscard]] std::optional<std::size_t> place_in_list(const RecordRef& ref, const ListFilter& filter = {}) const;
  /// All records of one kind, oldest first.
  template <class R>
  [[nodiscard]] std::vector<Stored<R>> all() const {
    std::vector<Stored<R>> records;
    for (StoredRecord& found : all_of(kind_of<R>))
      records.push_back({{found.ref.id}, found.revision, std::get<R>(std::move(found.record))});
    return records;
  }
  [[nodiscard]] std::vector<StoredRecord> all_of(RecordKind kind) const;
  /// Sieve tests of a bag, fraction, mix or tree, oldest first.
  [[nodiscard]] std::vector<Stored<RecordedSieveTest>> sieve_tests_of(const RecordRef& ref) const;
  /// Dry grain by the ledger; empty where it has no line.
  [[nodiscard]] std::optional<Mass> stock_of(const RecordRef& holder) const;
  /// True if another record names this one.
  [[nodiscard]] bool is_used(const RecordRef& ref) const;
  /// An id that was never used, by the manner of the house: the material's letter for bags, "M-04/1" for a mix.
  [[nodiscard]] std::string suggest_id(RecordKind kind, const std::string& hint = {}) const;
  /// The next version of a mix: "M-03/3" after "M-03/2".
  [[nodiscard]] Id<MixVersion> next_version(const Id<MixVersion>& id) const;

  // ---- changing --------------------------------------------------------------------------------------------------------
  /// One transaction and one undo step; all or nothing. What came into stock with a bag follows the bag (corrects_receipt), unless the
  /// change has stock entries of the bag itself. Errors: workbook.stale-change (the record was changed meanwhile),
  /// workbook.id-used, workbook.not-there, workbook.read-only, file.gone, file.disk-full, file.locked, file.damaged, and those of
  /// storing a record that could not be read again.
  [[nodiscard]] Result<Applied> apply(Change change);

  template <class R>
  [[nodiscard]] Result<Id<R>> add(R record, std::string label, std::string id = {}) {
    auto applied = apply({std::move(label), {{{kind_of<R>, std::move(id)}, 0, Record(std::move(record))}}, {}, {}});
    if (!applied) return applied.problems();
    return Id<R>{applied->revisions.front().first.id};
  }
  template <class R>
  [[nodiscard]] Result<Applied> replace(const Stored<R>& was, R now, std::string label, std::string merge_key = {}) {
    return apply({std::move(label), {{ref_to(was.id), was.revision, Record(std::move(now))}}, {}, std::move(merge_key)});
  }
  template <class R>
  [[nodiscard]] Result<Applied> remove(const Stored<R>& was, std::string label) {
    return apply({std::move(label), {{ref_to(was.id), was.revision, std::nullopt}}, {}, {}});
  }
  /// Ends the merging of steps, as when a field is left.
  void end_merging();

  [[nodiscard]] std::optional<Step> undoable() const;
  [[nodiscard]] std::optional<Step> redoable() const;
  /// Undoes `step`, which must be the last one (or, absent, whichever is). Errors: workbook.nothing-to-undo,
  /// workbook.step-gone (another window was quicker), and those of `apply`.
  [[nodiscard]] Result<Step> undo(std::optional<std::int64_t> step = {});
  [[nodiscard]] Result<Step> redo(std::optional<std::int64_t> step = {});

  // ---- other windows ---------------------------------------------------------------------------------------------------
  /// Rises with every change by whomsoever. Cheap enough to ask every half second.
  [[nodiscard]] std::int64_t revision() const;
  /// What was changed after `revision`, deleted records too.
  [[nodiscard]] std::vector<RecordRef> changed_since(std::int64_t revision) const;
  /// Empty while the file is where it was; else file.gone (deleted or another file in its place).
  [[nodiscard]] Problems file_trouble() const;

  struct Inside;
  [[nodiscard]] Inside& inside() const { return *inside_; }

 private:
  explicit OpenWorkbook(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace gritwright
