#include "gritwright/workbook/backups.hpp"

#include <SQLiteCpp/Backup.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <set>

#include "backup_copy.hpp"
#include "inside.hpp"
#include "schema.hpp"

namespace gritwright {

namespace {

namespace fs = std::filesystem;

constexpr const char* suffix = ".gritwright";

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

}  // namespace

void make_durable(const fs::path& file) {
  for (const fs::path& path : {file, fs::absolute(file).parent_path()}) {
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0) continue;
    ::fsync(handle);
    ::close(handle);
  }
}

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
  const fs::path partial = beside(target, ".partial");
  remove_quietly(partial);
  remove_quietly(beside(partial, "-journal"));
  try {
    {
      SQLite::Database copy(partial.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0, file_layer);
      ::chmod(partial.c_str(), S_IRUSR | S_IWUSR);
      SQLite::Backup backup(copy, source);
      constexpr int pages_at_once = 512;
      for (;;) {
        const int code = backup.executeStep(pages_at_once);
        if (code == SQLITE_DONE) break;
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
    make_durable(target);
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
  return found;
}

Problems check_file(const fs::path& file) {
  if (Problems problems = recognise(file); !problems.empty()) return problems;
  try {
    SQLite::Database database(file.string(), SQLite::OPEN_READONLY, 2000);
    if (Problems problems = integrity_of(database, file); !problems.empty()) return problems;
    if (!database.tableExists("record") || schema_version(database) < 1) return {file_problem("file.damaged", file)};
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
  const fs::path incoming = beside(workbook, ".restoring");
  try {
    SQLite::Database source(backup.string(), SQLite::OPEN_READONLY, 2000);
    if (Result<Done> copied = copy_database(source, incoming, {}, {}); !copied) return copied.problems();
  } catch (const SQLite::Exception& trouble) {
    return problem_of(trouble, backup);
  }
  std::error_code trouble;
  if (!fs::exists(workbook, trouble)) {
    remove_quietly(beside(workbook, "-wal"));
    fs::rename(incoming, workbook, trouble);
    if (trouble) return file_problem("file.write-failed", workbook);
    make_durable(workbook);
    return std::optional<fs::path>();
  }
  // Both names lead to the old file until the new one is in place, so that there is no moment without a workbook. The log of the
  // old file must not meet the new one.
  std::string time = written_time(clock());
  std::erase(time, ':');
  fs::path kept;
  for (int attempt = 1;; ++attempt) {
    std::string name = workbook.stem().string() + "-replaced-" + time;
    if (attempt > 1) name.append("-").append(std::to_string(attempt));
    kept = workbook.parent_path() / name.append(suffix);
    fs::create_hard_link(workbook, kept, trouble);
    if (trouble && !fs::exists(kept)) fs::copy_file(workbook, kept, trouble);
    if (!trouble) break;
    constexpr int most_attempts = 100;
    if (attempt == most_attempts) {
      remove_quietly(incoming);
      return file_problem("file.write-failed", kept);
    }
  }
  for (const char* ending : {"-wal", "-journal"}) {
    if (!fs::exists(beside(workbook, ending))) continue;
    fs::rename(beside(workbook, ending), beside(kept, ending), trouble);
    if (trouble) {
      remove_quietly(incoming);
      return file_problem("file.write-failed", workbook);
    }
  }
  remove_quietly(beside(workbook, "-shm"));
  fs::rename(incoming, workbook, trouble);
  if (trouble) return file_problem("file.write-failed", workbook);
  make_durable(workbook);
  return std::optional<fs::path>(kept);
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
  return deleted;
}

}  // namespace gritwright
