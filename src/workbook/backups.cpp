#include "gritwright/workbook/backups.hpp"

#include <SQLiteCpp/Backup.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <functional>
#include <map>
#include <random>
#include <set>
#include <utility>

#include "backup_copy.hpp"
#include "inside.hpp"
#include "schema.hpp"

namespace gritwright {

namespace {

namespace fs = std::filesystem;

constexpr const char* suffix = ".gritwright";
constexpr const char* partial_mark = ".partial-";
constexpr std::chrono::milliseconds patience_with_others{2000};

bool is_day(const std::string& text) {
  if (text.size() != 10) return false;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (i == 4 || i == 7 ? text[i] != '-' : text[i] < '0' || text[i] > '9') return false;
  return true;
}

void remove_quietly(const fs::path& file) {
  std::error_code ignored;
  fs::remove(file, ignored);
}

fs::path beside(const fs::path& file, const std::string& ending) { return fs::path(file.string() + ending); }

/// A new file beside `target` that is the owner's alone from its first moment. Two programs may copy to one target at the same time, so
/// the name is nobody else's.
Result<fs::path> new_partial(const fs::path& target) {
  std::random_device random;
  fs::path partial = beside(target, partial_mark + std::to_string(random()));
  const int handle = ::open(partial.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR);
  if (handle < 0) {
    const bool full = errno == ENOSPC || errno == EDQUOT;
    const bool barred = errno == EACCES || errno == EPERM || errno == EROFS;
    return file_problem(full ? "file.disk-full" : barred ? "file.read-only" : "file.write-failed", target);
  }
  ::close(handle);
  return partial;
}

/// Copies that were broken off, as by a power cut, and are nobody's any more.
void remove_old_partials(const fs::path& folder, const std::string& start) {
  std::error_code trouble;
  for (fs::directory_iterator entry(folder, trouble), end; !trouble && entry != end; entry.increment(trouble)) {
    const std::string name = entry->path().filename().string();
    if (!name.starts_with(start) || name.find(partial_mark) == std::string::npos) continue;
    std::error_code unknown;
    const auto age = fs::file_time_type::clock::now() - entry->last_write_time(unknown);
    if (!unknown && age > std::chrono::hours(24)) remove_quietly(entry->path());
  }
}

/// All of `from`, an open file, in a new file at `to`.
bool copy_bytes(int from, const fs::path& to) {
  const int copy = ::open(to.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR);
  if (copy < 0) return false;
  constexpr std::size_t at_once = 1U << 16U;
  std::vector<char> buffer(at_once);
  bool good = true;
  for (off_t at = 0; good;) {
    const ssize_t read = ::pread(from, buffer.data(), buffer.size(), at);
    if (read == 0) break;
    good = read > 0 && ::write(copy, buffer.data(), static_cast<std::size_t>(read)) == read;
    at += std::max<ssize_t>(read, 0);
  }
  good = good && ::fsync(copy) == 0;
  ::close(copy);
  if (!good) remove_quietly(to);
  return good;
}

/// Holds a file that nobody may be working in while another takes its place.
class HeldFile {
 public:
  explicit HeldFile(const fs::path& file) : handle_(::open(file.c_str(), O_RDWR | O_CLOEXEC)) {
    if (handle_ < 0) handle_ = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    // The bytes that SQLite locks: https://www.sqlite.org/src/file/src/os.h
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    lock.l_start = 0x40000000;
    lock.l_len = 512;
    busy_ = handle_ >= 0 && ::fcntl(handle_, F_SETLK, &lock) != 0 && (errno == EACCES || errno == EAGAIN);
  }
  ~HeldFile() {
    if (handle_ >= 0) ::close(handle_);
  }
  HeldFile(const HeldFile&) = delete;
  HeldFile& operator=(const HeldFile&) = delete;
  [[nodiscard]] int handle() const { return handle_; }
  [[nodiscard]] bool is_busy() const { return busy_; }

 private:
  int handle_;
  bool busy_ = false;
};

/// Copies `workbook`, its log and its journal to a name of their own; absent if there is none of them.
Result<std::optional<fs::path>> keep_beside(const fs::path& workbook, const HeldFile& held, const Clock& clock) {
  constexpr std::array endings{"", "-wal", "-journal"};
  std::error_code trouble;
  const auto is_there = [&](const fs::path& name) {
    return std::ranges::any_of(endings, [&](const char* ending) { return fs::exists(beside(name, ending), trouble); });
  };
  if (!is_there(workbook)) return std::optional<fs::path>();
  std::string time = written_time(clock());
  std::erase(time, ':');
  const std::string name = workbook.stem().string() + "-replaced-" + time;
  fs::path kept = workbook.parent_path() / (name + suffix);
  for (int number = 2; is_there(kept); ++number) kept = workbook.parent_path() / (name + "-" + std::to_string(number) + suffix);
  for (const char* ending : endings) {
    const fs::path part = beside(workbook, ending);
    if (!fs::exists(part, trouble)) continue;
    const bool copied = *ending == '\0' ? copy_bytes(held.handle(), kept) : fs::copy_file(part, beside(kept, ending), trouble);
    if (copied) continue;
    for (const char* made : endings) remove_quietly(beside(kept, made));
    return file_problem("file.write-failed", kept);
  }
  return std::optional(kept);
}

/// Most changes that a backup of this workbook has seen.
std::int64_t most_changes(const std::string& workbook, const fs::path& name, const std::set<fs::path>& folders) {
  std::int64_t most = 0;
  for (const fs::path& folder : folders)
    for (const BackupFile& backup : backups_of(name, folder))
      if (const auto age = age_of(backup.file); age && age->workbook == workbook) most = std::max(most, age->changes);
  return most;
}

/// What is written from here on is newer than all that was written before: the files of what was given up stay behind.
void count_on_from(std::int64_t changes, const fs::path& file) {
  SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
  // A journal that was left behind would be played into the next file of this name.
  database.exec("PRAGMA journal_mode = MEMORY");
  SQLite::Statement count(database, "UPDATE meta SET value = ?1 WHERE key = 'changes' AND CAST(value AS INTEGER) < CAST(?1 AS INTEGER)");
  count.bind(1, std::to_string(changes));
  count.exec();
}

/// A file that grows in small durable steps. It stays open until the end: closing it would give up the locks that SQLite holds on it.
class WrittenThrough {
 public:
  explicit WrittenThrough(const fs::path& file) : handle_(::open(file.c_str(), O_RDONLY | O_CLOEXEC)) {}
  ~WrittenThrough() {
    if (handle_ >= 0) ::close(handle_);
  }
  WrittenThrough(const WrittenThrough&) = delete;
  WrittenThrough& operator=(const WrittenThrough&) = delete;
  void now() const {
    if (handle_ >= 0) ::fdatasync(handle_);
  }

 private:
  int handle_;
};

}  // namespace

std::optional<Age> age_of(const fs::path& file) {
  try {
    const auto database = connect_to_read(file, patience_with_others, {});
    SQLite::Statement told(*database, "SELECT w.value, CAST(c.value AS INTEGER) FROM meta w, meta c WHERE w.key = 'workbook' AND c.key = 'changes'");
    if (!told.executeStep()) return std::nullopt;
    return Age{told.getColumn(0).getString(), told.getColumn(1).getInt64()};
  } catch (const SQLite::Exception&) {
    return std::nullopt;
  }
}

void make_durable(const fs::path& file) {
  const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (handle < 0) return;
  ::fsync(handle);
  ::close(handle);
}

void make_name_durable(const fs::path& file) { make_durable(fs::absolute(file).parent_path()); }

Problems integrity_of(SQLite::Database& database, const fs::path& file, int most) {
  Problems problems;
  try {
    SQLite::Statement check(database, "PRAGMA integrity_check(" + std::to_string(most) + ")");
    while (check.executeStep()) {
      const std::string line = check.getColumn(0).getString();
      if (line == "ok") continue;
      Problem problem = file_problem("file.damaged", file);
      problem.facts["text"] = line;
      problems.push_back(std::move(problem));
    }
  } catch (const SQLite::Exception& trouble) {
    problems.push_back(problem_of(trouble, file));
  }
  return problems;
}

Result<Done> copy_database(SQLite::Database& source, const fs::path& target, const std::string& file_layer,
                           const std::function<bool(double)>& progress) {
  const Result<fs::path> made = new_partial(target);
  if (!made) return made.problems();
  const fs::path& partial = *made;
  try {
    {
      SQLite::Database copy(partial.string(), SQLite::OPEN_READWRITE, 0, file_layer);
      SQLite::Backup backup(copy, source);
      // Half a megabyte at a time onto the disk: a sign that is saved meanwhile would wait for all that lies before it.
      constexpr int pages_at_once = 128;
      const WrittenThrough written(partial);
      constexpr int most_refusals = 5;
      for (int refusals = 0;;) {
        const int code = backup.executeStep(pages_at_once);
        if (code == SQLITE_DONE) break;
        written.now();
        // Each refusal came after the source's own patience.
        if (code != SQLITE_OK && ++refusals == most_refusals) {
          remove_quietly(partial);
          return file_problem("file.locked", target);
        }
        const double total = backup.getTotalPageCount();
        if (progress && total > 0 && !progress((total - backup.getRemainingPageCount()) / total)) {
          remove_quietly(partial);
          return Problem{"workbook.cancelled", {}, {}};
        }
      }
      copy.exec("PRAGMA journal_mode = DELETE");
      if (Problems problems = integrity_of(copy, target, 1); !problems.empty()) {
        remove_quietly(partial);
        return problems;
      }
    }
    make_durable(partial);
    fs::rename(partial, target);
    make_name_durable(target);
  } catch (const SQLite::Exception& trouble) {
    remove_quietly(partial);
    remove_quietly(beside(partial, "-journal"));
    return problem_of(trouble, target);
  } catch (const fs::filesystem_error&) {
    remove_quietly(partial);
    return file_problem("file.write-failed", target);
  }
  return Done{};
}

fs::path default_backup_folder(const fs::path& workbook) { return workbook.parent_path() / (workbook.stem().string() + "-backups"); }

std::vector<BackupFile> backups_of(const fs::path& workbook, const fs::path& folder) {
  std::vector<BackupFile> found;
  const std::string daily = workbook.stem().string() + "-";
  const std::string migration = daily + "before-version-";
  std::error_code trouble;
  for (fs::directory_iterator entry(folder, trouble), end; !trouble && entry != end; entry.increment(trouble)) {
    const std::string name = entry->path().filename().string();
    if (!name.starts_with(daily) || !name.ends_with(suffix)) continue;
    const std::string stem = name.substr(0, name.size() - std::string(suffix).size());
    if (stem.size() < 10) continue;
    const std::string day = stem.substr(stem.size() - 10);
    const bool before_migration = stem.starts_with(migration);
    if (!is_day(day) || (!before_migration && stem.size() != daily.size() + 10)) continue;
    std::error_code no_size;
    found.push_back({entry->path(), day, before_migration, entry->file_size(no_size)});
  }
  std::ranges::sort(found, [](const BackupFile& a, const BackupFile& b) {
    return a.day != b.day ? a.day > b.day : a.file.string() > b.file.string();
  });
  // A day is what the clock said. Among the backups of one workbook its own count of changes knows better which is newer.
  std::map<std::string, std::vector<std::pair<std::int64_t, std::size_t>>> of_workbook;
  for (std::size_t place = 0; place < found.size(); ++place)
    if (const auto age = age_of(found[place].file)) of_workbook[age->workbook].emplace_back(age->changes, place);
  std::vector<BackupFile> in_order = found;
  for (const auto& [id, places] : of_workbook) {
    auto by_changes = places;
    std::ranges::stable_sort(by_changes, std::ranges::greater(), &std::pair<std::int64_t, std::size_t>::first);
    for (std::size_t i = 0; i < places.size(); ++i) in_order[places[i].second] = found[by_changes[i].second];
  }
  return in_order;
}

Problems check_file(const fs::path& file) {
  if (Problems problems = recognise(file); !problems.empty()) return problems;
  try {
    const auto database = connect_to_read(file, patience_with_others, {});
    if (Problems problems = integrity_of(*database, file); !problems.empty()) return problems;
    if (!database->tableExists("record") || schema_version(*database) < 1) return {file_problem("file.damaged", file)};
  } catch (const SQLite::Exception& trouble) {
    return {problem_of(trouble, file)};
  }
  return {};
}

std::optional<BackupFile> newest_good_backup(const fs::path& workbook, const fs::path& folder) {
  for (BackupFile& backup : backups_of(workbook, folder))
    if (check_file(backup.file).empty()) return std::move(backup);
  return std::nullopt;
}

Result<Done> save_copy(const OpenWorkbook& workbook, const fs::path& target, const std::function<bool(double)>& progress) {
  OpenWorkbook::Inside& inside = workbook.inside();
  std::error_code trouble;
  if (fs::equivalent(target, inside.file, trouble)) return file_problem("workbook.copy-onto-itself", target);
  return copy_database(*inside.database, target, inside.options.file_layer, progress);
}

Result<std::optional<fs::path>> restore(const fs::path& backup, const fs::path& workbook, const Clock& clock) {
  if (Problems problems = check_file(backup); !problems.empty()) return problems;
  // Opening the file a second time would drop this program's locks on it, so this is asked before it is held.
  const auto identity = identity_of(workbook);
  if (identity && is_open_here(*identity)) return file_problem("file.locked", workbook);
  const HeldFile held(workbook);
  if (held.is_busy()) return file_problem("file.locked", workbook);
  const fs::path incoming = beside(workbook, ".restoring");
  try {
    const auto source = connect_to_read(backup, patience_with_others, {});
    if (Result<Done> copied = copy_database(*source, incoming, {}, {}); !copied) return copied.problems();
    if (const auto age = age_of(incoming)) {
      count_on_from(most_changes(age->workbook, workbook, {backup.parent_path(), default_backup_folder(workbook)}) + 1, incoming);
      make_durable(incoming);
    }
  } catch (const SQLite::Exception& trouble) {
    return problem_of(trouble, backup);
  }
  // What was there is copied whole, with what waits in its log and journal; those must never meet the file that takes its place.
  Result<std::optional<fs::path>> kept = keep_beside(workbook, held, clock);
  if (!kept) {
    remove_quietly(incoming);
    return kept.problems();
  }
  for (const char* ending : {"-wal", "-journal", "-shm"}) remove_quietly(beside(workbook, ending));
  std::error_code trouble;
  fs::rename(incoming, workbook, trouble);
  if (trouble) return file_problem("file.write-failed", workbook);
  make_name_durable(workbook);
  return kept;
}

std::vector<fs::path> thin_out_backups(const fs::path& workbook, const fs::path& folder, std::size_t days, std::size_t months) {
  std::set<std::string> kept_days;
  std::set<std::string> kept_months;
  std::vector<fs::path> deleted;
  // Counted by backups, not by the calendar: a clock that once ran ahead must not cost the whole row.
  for (const BackupFile& backup : backups_of(workbook, folder)) {
    if (backup.before_migration) continue;
    const std::string month = backup.day.substr(0, 7);
    bool keep = false;
    if (kept_days.size() < days) keep = kept_days.insert(backup.day).second;
    if (!kept_months.contains(month) && kept_months.size() < months) {
      kept_months.insert(month);
      keep = true;
    }
    if (keep) continue;
    std::error_code trouble;
    if (fs::remove(backup.file, trouble)) deleted.push_back(backup.file);
  }
  remove_old_partials(folder, workbook.stem().string() + "-");
  return deleted;
}

}  // namespace gritwright
