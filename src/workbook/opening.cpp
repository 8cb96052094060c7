#include <fcntl.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <random>
#include <stdexcept>

#include "backup_copy.hpp"
#include "gritwright/workbook/backups.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "inside.hpp"
#include "schema.hpp"

namespace gritwright {

namespace {

namespace fs = std::filesystem;

/// A damaged file is best found before anything is written; larger files are looked through while their backup is made.
constexpr std::uintmax_t checked_at_opening_bytes = 16U << 20U;

bool may_write(const fs::path& path) { return ::access(path.c_str(), W_OK) == 0; }

fs::path folder_of(const fs::path& file) {
  const fs::path folder = fs::absolute(file).parent_path();
  return folder.empty() ? fs::path("/") : folder;
}

/// A log or journal whose file went away may hold what was written last, and must never be played into a new file.
Problems set_left_overs_aside(const fs::path& file) {
  for (const char* ending : {"-wal", "-journal"}) {
    const fs::path left = file.string() + ending;
    std::error_code trouble;
    // Beside a file that is there again, made by a quicker program, it is that program's own.
    if (!fs::exists(fs::symlink_status(left, trouble)) || fs::exists(fs::symlink_status(file, trouble))) continue;
    std::random_device random;
    fs::rename(left, left.string() + "-left-over-" + std::to_string(random()), trouble);
    if (trouble) return {file_problem("file.write-failed", file)};
  }
  return {};
}

/// Builds the new file under another name and links it into place, so that nobody ever sees half of it and no file that came there
/// meanwhile is overwritten.
Problems create(const fs::path& file, const OpeningOptions& options) {
  std::error_code trouble;
  fs::create_directories(folder_of(file), trouble);
  std::random_device random;
  const fs::path making = file.string() + ".making-" + std::to_string(random());
  Problems problems;
  try {
    // Made here and not by SQLite, so that it is the owner's alone from the first moment.
    const int handle = ::open(making.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, S_IRUSR | S_IWUSR);
    if (handle < 0) return {file_problem(may_write(folder_of(file)) ? "file.write-failed" : "file.read-only", file)};
    ::close(handle);
    SQLite::Database database(making.string(), SQLite::OPEN_READWRITE, 0, options.file_layer);
    database.exec("PRAGMA page_size = 4096");
    database.exec("PRAGMA synchronous = FULL");
    database.exec("BEGIN IMMEDIATE");
    migrate(database, migrations());
    database.exec("COMMIT");
  } catch (const SQLite::Exception& sqlite) {
    problems.push_back(problem_of(sqlite, file));
  }
  if (problems.empty()) problems = set_left_overs_aside(file);
  if (problems.empty()) {
    make_durable(making);
    // Another program that was quicker keeps its file; a file system without links is renamed into.
    if (::link(making.c_str(), file.c_str()) != 0 && !fs::exists(file, trouble)) {
      fs::rename(making, file, trouble);
      if (trouble) problems.push_back(file_problem("file.write-failed", file));
    }
    make_name_durable(file);
  }
  fs::remove(making, trouble);
  fs::remove(making.string() + "-journal", trouble);
  return problems;
}

std::string immutable_uri(const fs::path& file) {
  std::string uri = "file:";
  for (const char sign : fs::absolute(file).string()) {
    if (sign == '%' || sign == '?' || sign == '#') {
      constexpr const char* digits = "0123456789ABCDEF";
      uri += {'%', digits[static_cast<unsigned char>(sign) >> 4U], digits[static_cast<unsigned char>(sign) & 15U]};
    } else {
      uri += sign;
    }
  }
  return uri + "?immutable=1";
}

// One thread works with a connection at a time, so it needs no lock of its own.
std::unique_ptr<SQLite::Database> connect(const fs::path& file, Access access, const OpeningOptions& options) {
  if (access == Access::read_only) return connect_to_read(file, options.patience, options.file_layer);
  return std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX, static_cast<int>(options.patience.count()),
                                            options.file_layer);
}

/// Problems of the content that can be seen at once: wrong version, tables missing, pages that do not fit.
Problems look_inside(SQLite::Database& database, const fs::path& file, Access access) {
  const int version = schema_version(database);
  if (version < 1 || !database.tableExists("meta") || !database.tableExists("record")) return {file_problem("file.damaged", file)};
  if (version > newest_schema() && access == Access::write) {
    // A flipped sign in the header must not pass for a newer program's work.
    const std::string told = database.execAndGet("SELECT coalesce(max(value), '') FROM meta WHERE key = 'schema'").getString();
    Problem problem = file_problem(told == std::to_string(version) ? "file.newer-version" : "file.damaged", file);
    problem.facts["version"] = static_cast<double>(version);
    problem.facts["known"] = static_cast<double>(newest_schema());
    return {problem};
  }
  const std::string told = database.execAndGet("SELECT coalesce(max(value), '') FROM meta WHERE key = 'schema'").getString();
  if (told != std::to_string(version)) return {file_problem("file.damaged", file)};
  std::error_code trouble;
  if (fs::file_size(file, trouble) > checked_at_opening_bytes) return {};
  if (database.execAndGet("PRAGMA quick_check(1)").getString() != "ok") return {file_problem("file.damaged", file)};
  return {};
}

void choose_journal(SQLite::Database& database, Placement placement, NoteBox& notes, const fs::path& file) {
  const bool local = placement == Placement::local;
  const char* wanted = local ? "wal" : "delete";
  try {
    const std::string mode = database.execAndGet(std::string("PRAGMA journal_mode = ") + wanted).getString();
    if (mode != wanted) notes.add({"workbook.journal-kept", Level::warning, file.string(), {{"mode", mode}}});
  } catch (const SQLite::Exception&) {
    // Another window holds it; it decided already.
    notes.add({"workbook.journal-kept", Level::warning, file.string(), {{"mode", std::string("wal")}}});
  }
  if (placement == Placement::network_folder) notes.add({"workbook.in-network-folder", Level::warning, file.string(), {}});
  if (placement == Placement::synced_folder) notes.add({"workbook.in-synced-folder", Level::warning, file.string(), {}});
}

}  // namespace

std::unique_ptr<SQLite::Database> connect_to_read(const fs::path& file, std::chrono::milliseconds patience, const std::string& file_layer) {
  std::error_code trouble;
  const std::uintmax_t log_bytes = fs::file_size(file.string() + "-wal", trouble);
  // A window that has just opened the file has an empty log with its index beside it; one that only read may leave a log without.
  const bool has_log = !trouble && (log_bytes > 0 || fs::exists(file.string() + "-shm", trouble));
  // Reading with a write-ahead log needs both files or makes them (SQLite, "Write-Ahead Logging"); where they are not there
  // and can't be made, nobody has it open.
  const bool alone = !has_log && !may_write(folder_of(file));
  const int flags = SQLite::OPEN_READONLY | SQLite::OPEN_NOMUTEX | (alone ? SQLite::OPEN_URI : 0);
  return std::make_unique<SQLite::Database>(alone ? immutable_uri(file) : file.string(), flags, static_cast<int>(patience.count()), file_layer);
}

Result<OpenWorkbook> OpenWorkbook::open(const fs::path& file, OpeningOptions options) {
  if (!options.clock) throw std::logic_error("a workbook needs a clock");
  std::error_code trouble;
  const bool is_new = !fs::exists(fs::symlink_status(file, trouble)) && options.create && options.access == Access::write;
  if (is_new)
    if (Problems problems = create(file, options); !problems.empty()) return problems;
  if (Problems problems = recognise(file); !problems.empty()) return problems;

  auto inside = std::make_unique<Inside>();
  inside->file = file;
  inside->options = std::move(options);
  inside->access = inside->options.access;
  inside->placement = inside->options.placement.value_or(placement_of(file));
  inside->backups = inside->options.backup_folder.value_or(default_backup_folder(file));
  if (is_new && !backups_of(file, inside->backups).empty())
    inside->notes->add({"workbook.new-beside-backups", Level::warning, inside->backups.string(), {}});
  if (inside->access == Access::write && !(may_write(file) && may_write(folder_of(file)))) {
    inside->access = Access::read_only;
    inside->notes->add({"workbook.opened-read-only", Level::warning, file.string(), {}});
  }
  try {
    inside->database = connect(file, inside->access, inside->options);
    SQLite::Database& database = *inside->database;
    // A cache of 32 MB holds the indexes of a record of many years.
    database.exec("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA cache_size = -32768");
    if (Problems problems = look_inside(database, file, inside->access); !problems.empty()) return problems;
    const auto identity = identity_of(file);
    if (!identity) return file_problem("file.gone", file);
    inside->identity = *identity;
    inside->open_mark = mark_as_open(*identity);
    if (inside->access == Access::write) {
      (void)inside->changes();  // nothing may be counted on from a damaged count
      if (Problems problems = bring_forward(database, file, inside->backups, migrations(), *inside); !problems.empty())
        return problems;
      choose_journal(database, inside->placement, *inside->notes, file);
      sqlite3_wal_hook(
          database.getHandle(),
          [](void* own, sqlite3*, const char*, int pages) {
            static_cast<Inside*>(own)->log_pages = pages;
            return SQLITE_OK;
          },
          inside.get());
      // Without a log the journal's deletion is what saves a change, and its name must be gone from the disk for good.
      if (inside->placement != Placement::local) database.exec("PRAGMA synchronous = EXTRA");
    }
    Query last = inside->query("SELECT max(written) FROM step");
    if (last.step() && !last.is_null(0) && last.text(0) > written_time(inside->options.clock()))
      inside->notes->add({"workbook.clock-set-back", Level::warning, "", {{"time", last.text(0)}}});
  } catch (const SQLite::Exception& sqlite) {
    return problem_of(sqlite, file);
  }
  return OpenWorkbook(std::move(inside));
}

Problems bring_forward(SQLite::Database& database, const fs::path& file, const fs::path& backups, std::span<const Migration> steps,
                       OpenWorkbook::Inside& inside) {
  const int version = schema_version(database);
  if (version >= steps.back().to) return {};
  std::error_code trouble;
  fs::create_directories(backups, trouble);
  const fs::path target = backups / (file.stem().string() + "-before-version-" + std::to_string(steps.back().to) + "-" +
                                     local_day(inside.options.clock()) + ".gritwright");
  if (Result<Done> copied = copy_database(database, target, inside.options.file_layer, {}); !copied) {
    // A damaged file says so itself; whatever else stood in the way concerns the backup.
    if (copied.problems().front().code == "file.damaged") return copied.problems();
    Problem problem = file_problem("workbook.not-migrated", file);
    problem.facts["file"] = target.string();
    return {problem};
  }
  database.exec("BEGIN IMMEDIATE");
  try {
    // Another window may have been quicker while the backup was made.
    if (schema_version(database) == version) migrate(database, steps);
    database.exec("COMMIT");
  } catch (const SQLite::Exception& sqlite) {
    database.tryExec("ROLLBACK");
    return {problem_of(sqlite, file)};
  }
  inside.notes->add({"workbook.migrated", Level::note, target.string(), {{"version", static_cast<double>(steps.back().to)}}});
  return {};
}

namespace {

/// True for a backup that got its name of today from a clock that ran ahead: another of the workbook has seen more.
bool is_outdated(const fs::path& backup, const fs::path& workbook, const fs::path& folder) {
  const auto age = age_of(backup);
  if (!age) return false;
  for (const BackupFile& newest : backups_of(workbook, folder)) {
    const auto of_newest = newest.before_migration ? std::nullopt : age_of(newest.file);
    if (of_newest && of_newest->workbook == age->workbook) return of_newest->changes > age->changes;
  }
  return false;
}

}  // namespace

void OpenWorkbook::Inside::back_up_before_first_write() {
  if (!options.daily_backup) return;
  const std::string today = local_day(options.clock());
  if (backed_up_day == today) return;
  backed_up_day = today;
  std::error_code trouble;
  const std::filesystem::path target = backups / (file.stem().string() + "-" + today + ".gritwright");
  const bool is_there = fs::exists(target, trouble);
  try {
    if (changes() == 0) return;  // nothing in it yet
    fs::create_directories(backups, trouble);
    fs::permissions(backups, fs::perms::owner_all, trouble);
    // The copy shows the workbook as it is now, whatever is written while it is made.
    auto source = std::make_shared<SQLite::Database>(file.string(), SQLite::OPEN_READONLY,
                                                     static_cast<int>(options.patience.count()), options.file_layer);
    source->exec("BEGIN");
    source->execAndGet("SELECT count(*) FROM meta");
    auto job = [source, target, is_there, notes = notes, name = file, folder = backups, layer = options.file_layer] {
      if (is_there && !is_outdated(target, name, folder)) return;
      const Result<Done> copied = copy_database(*source, target, layer, {});
      if (!copied) {
        const Problem& problem = copied.problems().front();
        notes->add({"workbook.backup-failed", Level::warning, target.string(), {{"reason", problem.code}}});
        if (problem.code != "file.damaged" || integrity_of(*source, name, 1).empty()) return;
        notes->damage_seen = true;
        notes->add({"workbook.damaged", Level::warning, name.string(), problem.facts});
        return;
      }
      thin_out_backups(name, folder);
    };
    const bool has_log = database->execAndGet("PRAGMA journal_mode").getString() == "wal";
    if (!has_log) {
      // Without a log the reading copy would keep every writer out.
      job();
    } else if (options.worker) {
      options.worker(job);
    } else {
      if (backup_thread.joinable()) backup_thread.join();
      backup_thread = std::thread([job] {
        constexpr int behind_the_typing = 10;
        ::setpriority(PRIO_PROCESS, 0, behind_the_typing);  // of this thread alone
        job();
      });
    }
  } catch (const SQLite::Exception& sqlite) {
    notes->add({"workbook.backup-failed", Level::warning, target.string(), {{"reason", problem_of(sqlite, file).code}}});
  }
}

}  // namespace gritwright
