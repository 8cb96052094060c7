#include "gritwright/workbook/backups.hpp"

#include <linux/magic.h>
#include <stdlib.h>
#include <sys/syscall.h>
#include <sys/vfs.h>
#include <time.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdint>
#include <fstream>
#include <functional>
#include <optional>
#include <random>
#include <string>
#include <thread>
#include <vector>

#include "failing_files.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "other_program.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

namespace fs = std::filesystem;

constexpr fs::perms owner_only = fs::perms::owner_read | fs::perms::owner_write;

OpeningOptions with_backups(Hand& hand) {
  OpeningOptions options = hand.options();
  options.daily_backup = true;
  return options;
}

/// The zone this machine says it stands in, for the length of a test.
class ZoneOfThisMachine {
 public:
  explicit ZoneOfThisMachine(const char* zone) {
    if (const char* before = std::getenv("TZ")) before_ = before;
    ::setenv("TZ", zone, 1);
    ::tzset();
  }
  ~ZoneOfThisMachine() {
    if (before_) ::setenv("TZ", before_->c_str(), 1);
    else ::unsetenv("TZ");
    ::tzset();
  }
  ZoneOfThisMachine(const ZoneOfThisMachine&) = delete;
  ZoneOfThisMachine& operator=(const ZoneOfThisMachine&) = delete;

 private:
  std::optional<std::string> before_;
};

/// The kind of file system that every folder is said to be on, for the length of a test; 0: the true one.
struct SaidFileSystem {
  static inline std::atomic<long> kind = 0;
  SaidFileSystem() = default;
  ~SaidFileSystem() { kind = 0; }
  SaidFileSystem(const SaidFileSystem&) = delete;
  SaidFileSystem& operator=(const SaidFileSystem&) = delete;
};

}  // namespace

// In the place of the system's, since a test can't mount a network.
extern "C" int statfs(const char* path, struct statfs* info) noexcept {
  if (SaidFileSystem::kind == 0) return static_cast<int>(::syscall(SYS_statfs, path, info));
  *info = {};
  info->f_type = SaidFileSystem::kind;
  return 0;
}

TEST_CASE("Before the first write of a day the workbook as it was is copied, checked, and the owner's alone", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  CHECK(backups_of(folder.file(), default_backup_folder(folder.file())).empty());
  hand.now = noon(2);
  {
    OpenWorkbook workbook = opened(folder.file(), with_backups(hand));
    REQUIRE(workbook.add(akadama_bag("two"), "a bag"));
    REQUIRE(workbook.add(akadama_bag("three"), "a bag"));
  }
  const auto backups = backups_of(folder.file(), default_backup_folder(folder.file()));
  REQUIRE(backups.size() == 1);
  CHECK(backups.front().day == "2026-03-02");
  CHECK((fs::status(backups.front().file).permissions() & fs::perms::all) == owner_only);
  CHECK((fs::status(backups.front().file.parent_path()).permissions() & fs::perms::all) == fs::perms::owner_all);
  CHECK(opened(backups.front().file, hand.options()).count(RecordKind::bag) == 1);
}

TEST_CASE("A link that waits where a backup will lie is not written through", "[workbook][backup][security]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  hand.now = noon(2);
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("two"), "a bag")); }
  const auto backups = backups_of(folder.file(), default_backup_folder(folder.file()));
  REQUIRE(backups.size() == 1);
  std::string next = backups.front().file.string();
  const auto day = next.rfind("2026-03-02");
  REQUIRE(day != std::string::npos);
  next.replace(day, 10, "2026-03-03");
  const fs::path somebody_elses = folder.path() / "letter";
  write_bytes(somebody_elses, "Dear aunt");
  fs::create_symlink(somebody_elses, next);
  hand.now = noon(3);
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("three"), "a bag")); }
  CHECK(bytes_of(somebody_elses) == "Dear aunt");
  CHECK(opened(folder.file(), hand.options()).count(RecordKind::bag) == 3);
}

TEST_CASE("A day's backup runs on the worker that is given", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  hand.now = noon(2);
  std::vector<std::function<void()>> jobs;
  OpeningOptions options = with_backups(hand);
  options.worker = [&jobs](std::function<void()> job) { jobs.push_back(std::move(job)); };
  OpenWorkbook workbook = opened(folder.file(), options);
  REQUIRE(workbook.add(akadama_bag("two"), "a bag"));
  REQUIRE(jobs.size() == 1);
  jobs.front()();
  const auto backup = newest_good_backup(folder.file(), workbook.backup_folder());
  REQUIRE(backup);
  CHECK(opened(backup->file, hand.options()).count(RecordKind::bag) == 1);
}

TEST_CASE("Where no worker is given a day's backup is written by a thread of its own", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  OpeningOptions options = with_backups(hand);
  options.file_layer = FailingFiles::name;
  FailingFiles& files = FailingFiles::instance();
  { REQUIRE(opened(folder.file(), options).add(akadama_bag("one"), "a bag")); }
  files.watch_writers();
  { const OpenWorkbook looked_at = opened(folder.file(), options); }
  CHECK_FALSE(files.others_wrote());
  hand.now = noon(2);
  { REQUIRE(opened(folder.file(), options).add(akadama_bag("two"), "a bag")); }
  CHECK(files.others_wrote());
  CHECK(newest_good_backup(folder.file(), default_backup_folder(folder.file())));
}

TEST_CASE("A backup that can't be made is told, and what is written is saved all the same", "[workbook][backup][refuses]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  write_bytes(folder.file("no folder"), "a file stands where the folder of the backups should be");
  hand.now = noon(2);
  OpeningOptions options = with_backups(hand);
  options.backup_folder = folder.file("no folder");
  options.worker = [](const std::function<void()>& job) { job(); };
  OpenWorkbook workbook = opened(folder.file(), options);
  REQUIRE(workbook.add(akadama_bag("two"), "a bag"));
  const Notes notes = workbook.take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == "workbook.backup-failed");
  CHECK(workbook.count(RecordKind::bag) == 2);
}

TEST_CASE("A disk that is full when a backup is written leaves no half of it, and what is written is saved all the same", "[workbook][backup][refuses]") {
  const int writes = GENERATE(0, 1, 5, 20);
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  hand.now = noon(2);
  FailingFiles& files = FailingFiles::instance();
  OpeningOptions options = with_backups(hand);
  options.file_layer = FailingFiles::name;
  options.worker = [&](const std::function<void()>& job) {
    files.fail_after(writes, SQLITE_FULL);
    job();
    files.heal();
  };
  OpenWorkbook workbook = opened(folder.file(), options);
  REQUIRE(workbook.add(akadama_bag("two"), "a bag"));
  const Notes notes = workbook.take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == "workbook.backup-failed");
  CHECK(std::get<std::string>(notes.front().facts.at("reason")) == "file.disk-full");
  CHECK(fs::is_empty(workbook.backup_folder()));
  CHECK(workbook.count(RecordKind::bag) == 2);
}

TEST_CASE("Killed while a backup is restored, the record is what it was or the backup, and what it was is kept", "[workbook][backup][law][rounds]") {
  Hand hand;
  std::mt19937 random(20260303);
  const Folder folder;
  { REQUIRE(opened(folder.file("backup.gritwright"), hand.options()).add(akadama_bag("one"), "a bag")); }
  const auto keep_two_bags = [&](const Folder& place) {
    OpenWorkbook workbook = opened(place.file(), hand.options());
    for (const char* lot : {"one", "two"}) REQUIRE(workbook.add(akadama_bag(lot), "a bag"));
  };
  // A slow machine, or one that watches every access, is killed as often in the middle as a quick one.
  const auto time_of_a_whole_one = [&] {
    const Folder place;
    keep_two_bags(place);
    OtherProgram other([&] { return restore(folder.file("backup.gritwright"), place.file(), hand.options().clock) ? 0 : 1; });
    const auto from = std::chrono::steady_clock::now();
    other.start();
    REQUIRE(other.finish() == 0);
    return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - from);
  }();
  int begun = 0;
  for (int round = 0; round < 40; ++round) {
    const Folder place;
    keep_two_bags(place);
    OtherProgram other([&] {
      const auto kept = restore(folder.file("backup.gritwright"), place.file(), hand.options().clock);
      ::pause();
      return kept ? 0 : 1;
    });
    other.start();
    std::this_thread::sleep_for(std::uniform_int_distribution<std::int64_t>(0, time_of_a_whole_one.count())(random) * std::chrono::microseconds(1));
    other.kill();
    std::vector<fs::path> replaced;
    for (const auto& entry : fs::directory_iterator(place.path())) {
      begun += entry.path() != place.file() ? 1 : 0;
      if (entry.path().filename().string().starts_with("nursery-replaced-") && entry.path().extension() == ".gritwright") replaced.push_back(entry.path());
    }
    const std::size_t bags = opened(place.file(), hand.options()).count(RecordKind::bag);
    CHECK((bags == 1 || bags == 2));
    if (bags == 2) continue;
    REQUIRE(replaced.size() == 1);
    CHECK(opened(replaced.front(), hand.options()).count(RecordKind::bag) == 2);
  }
  CHECK(begun > 0);
}

TEST_CASE("The last 10 days and 12 months of backups are kept", "[workbook][backup]") {
  const Folder folder;
  for (int month = 1; month <= 12; ++month)
    for (const int day : {5, 25})
      for (const int year : {2024, 2025}) {
        const std::string name = "nursery-" + std::to_string(year) + (month < 10 ? "-0" : "-") + std::to_string(month) + (day < 10 ? "-0" : "-") + std::to_string(day);
        write_bytes(folder.file(name + ".gritwright"), "x");
      }
  for (int day = 1; day <= 9; ++day) write_bytes(folder.file("nursery-2026-01-0" + std::to_string(day) + ".gritwright"), "x");
  write_bytes(folder.file("nursery-before-version-2-2020-01-01.gritwright"), "x");
  write_bytes(folder.file("greenhouse-2020-01-01.gritwright"), "x");
  thin_out_backups(folder.file(), folder.path());
  const auto kept = backups_of(folder.file(), folder.path());
  std::vector<std::string> days;
  for (const BackupFile& backup : kept) days.push_back(backup.day);
  CHECK(days == std::vector<std::string>{"2026-01-09", "2026-01-08", "2026-01-07", "2026-01-06", "2026-01-05", "2026-01-04", "2026-01-03",
                                         "2026-01-02", "2026-01-01", "2025-12-25", "2025-11-25", "2025-10-25", "2025-09-25", "2025-08-25",
                                         "2025-07-25", "2025-06-25", "2025-05-25", "2025-04-25", "2025-03-25", "2025-02-25", "2020-01-01"});
  CHECK(fs::exists(folder.file("greenhouse-2020-01-01.gritwright")));
}

TEST_CASE("The newest intact backup passes over damaged ones, restores, and what was there is kept", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  for (int day = 1; day <= 4; ++day) {
    hand.now = noon(day);
    REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("lot"), "a bag"));
  }
  const fs::path backups = default_backup_folder(folder.file());
  REQUIRE(backups_of(folder.file(), backups).size() == 3);
  const std::string newest = bytes_of(backups_of(folder.file(), backups).front().file);
  write_bytes(backups_of(folder.file(), backups).front().file, newest.substr(0, newest.size() / 2));
  const std::string damaged = bytes_of(folder.file()).substr(0, 20'000);
  write_bytes(folder.file(), damaged);
  CHECK(code_of(OpenWorkbook::open(folder.file(), hand.options())) == "file.damaged");
  CHECK(bytes_of(folder.file()) == damaged);
  const auto good = newest_good_backup(folder.file(), backups);
  REQUIRE(good);
  CHECK(good->day == "2026-03-03");
  const auto kept = restore(good->file, folder.file(), hand.options().clock);
  REQUIRE(kept);
  REQUIRE(*kept);
  CHECK(bytes_of(**kept) == damaged);
  CHECK((fs::status(**kept).permissions() & fs::perms::all) == owner_only);
  CHECK((fs::status(folder.file()).permissions() & fs::perms::all) == owner_only);
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(workbook.count(RecordKind::bag) == 2);
  CHECK(code_of(restore(good->file, folder.file(), hand.options().clock)) == "file.locked");
  CHECK(workbook.add(akadama_bag("after"), "a bag"));
}

TEST_CASE("The newest intact backup is the one that has seen the most changes, though the clock ran ahead or was set back", "[workbook][backup][law]") {
  const Folder folder;
  Hand hand;
  const auto write_on = [&](int day_of_march) {
    hand.now = noon(day_of_march);
    REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("lot"), "a bag"));
  };
  const auto days = [&] {
    std::vector<std::string> found;
    for (const BackupFile& backup : backups_of(folder.file(), default_backup_folder(folder.file()))) found.push_back(backup.day);
    return found;
  };
  const auto bags_in_newest = [&] {
    const auto newest = newest_good_backup(folder.file(), default_backup_folder(folder.file()));
    REQUIRE(newest);
    return opened(newest->file, hand.options()).count(RecordKind::bag);
  };
  write_on(1);
  write_on(30);  // a clock that ran ahead
  write_on(2);
  write_on(3);
  CHECK(days() == std::vector<std::string>{"2026-03-03", "2026-03-02", "2026-03-30"});
  CHECK(bags_in_newest() == 3);
  write_on(-400);  // and was set back
  CHECK(days() == std::vector<std::string>{"2025-01-24", "2026-03-03", "2026-03-02", "2026-03-30"});
  CHECK(bags_in_newest() == 4);
  // That was not today.
  write_on(30);
  CHECK(days().front() == "2026-03-30");
  CHECK(bags_in_newest() == 5);
  write_on(30);
  CHECK(bags_in_newest() == 5);
}

TEST_CASE("What a clock that was set back called very old is not thinned out as old", "[workbook][backup][law][rounds]") {
  const Folder folder;
  Hand hand;
  for (int day = 1; day <= 14; ++day) {
    // Only the last is of a year long gone.
    hand.now = noon(day < 14 ? day : -6000);
    REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("lot"), "a bag"));
  }
  const fs::path backups = default_backup_folder(folder.file());
  CHECK(thin_out_backups(folder.file(), backups, 10, 1).empty());
  CHECK(backups_of(folder.file(), backups).size() == 10);
  CHECK(opened(newest_good_backup(folder.file(), backups)->file, hand.options()).count(RecordKind::bag) == 13);
}

TEST_CASE("After an older backup was restored, those of what was given up are older than those made since", "[workbook][backup][law]") {
  const Folder folder;
  Hand hand;
  const auto write_on = [&](int day_of_march, const char* lot) {
    hand.now = noon(day_of_march);
    OpenWorkbook workbook = opened(folder.file(), with_backups(hand));
    for (int i = 0; i < (day_of_march < 4 ? 10 : 1); ++i) REQUIRE(workbook.add(akadama_bag(lot), "a bag"));
  };
  for (int day = 1; day <= 3; ++day) write_on(day, "given up");
  const fs::path backups = default_backup_folder(folder.file());
  REQUIRE(restore(backups / "nursery-2026-03-02.gritwright", folder.file(), hand.options().clock));
  {
    const OpenWorkbook restored = opened(folder.file(), hand.options());
    CHECK(restored.count(RecordKind::bag) == 10);
    CHECK(check_content(restored).empty());
  }
  write_on(4, "since");
  write_on(5, "since");
  CHECK(newest_good_backup(folder.file(), backups)->day == "2026-03-05");
  CHECK(opened(newest_good_backup(folder.file(), backups)->file, hand.options()).count(RecordKind::bag) == 11);
}

TEST_CASE("Backups of another workbook of the same name keep their place by day", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  for (int day = 1; day <= 2; ++day) {
    hand.now = noon(day);
    OpenWorkbook workbook = opened(folder.file(), with_backups(hand));
    for (int i = 0; i < 10; ++i) REQUIRE(workbook.add(akadama_bag("lot"), "a bag"));
  }
  fs::remove(folder.file());
  for (int day = 3; day <= 4; ++day) {
    hand.now = noon(day);
    REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("lot"), "a bag"));
  }
  CHECK(newest_good_backup(folder.file(), default_backup_folder(folder.file()))->day == "2026-03-04");
}

TEST_CASE("Damage that comes to light while a workbook is open is told, nothing more is written to it, and the last good backup stays", "[workbook][backup][refuses]") {
  const Folder folder;
  Hand hand;
  for (int day = 1; day <= 2; ++day) {
    hand.now = noon(day);
    OpenWorkbook workbook = opened(folder.file(), with_backups(hand));
    for (int i = 0; i < 30; ++i) REQUIRE(workbook.add(akadama_bag("lot"), "a bag"));
  }
  hand.now = noon(3);
  OpeningOptions options = with_backups(hand);
  options.worker = [](const std::function<void()>& job) { job(); };
  OpenWorkbook workbook = opened(folder.file(), options);
  const auto bag = workbook.all<Bag>().front();
  // As a failing disk does it: a few pages in the midst are no longer what was written.
  constexpr std::streamoff page = 4096;
  {
    std::fstream file(folder.file(), std::ios::binary | std::ios::in | std::ios::out);
    const auto pages = static_cast<std::streamoff>(fs::file_size(folder.file())) / page;
    for (std::streamoff at = 5; at < pages; at += 3) {
      file.seekp(at * page);
      file << std::string(page, '\xA5');
    }
  }
  Bag typed = bag.record;
  typed.note = "typed after the damage";
  const auto first = workbook.replace(bag, typed, "note of bag");
  if (!first) CHECK(code_of(first) == "file.damaged");
  const Notes notes = workbook.take_notes();
  CHECK(std::ranges::find(notes, "workbook.damaged", &Note::code) != notes.end());
  const std::string damaged = bytes_of(folder.file());
  CHECK(code_of(workbook.add(akadama_bag("after"), "a bag")) == "file.damaged");
  CHECK(bytes_of(folder.file()) == damaged);
  const auto good = newest_good_backup(folder.file(), workbook.backup_folder());
  REQUIRE(good);
  CHECK(good->day == "2026-03-02");
}

TEST_CASE("A damaged backup is never restored", "[workbook][backup][refuses]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), hand.options()).add(akadama_bag("one"), "a bag")); }
  const std::string whole = bytes_of(folder.file());
  write_bytes(folder.file("bad.gritwright"), whole.substr(0, 12'288));
  CHECK(code_of(restore(folder.file("bad.gritwright"), folder.file(), hand.options().clock)) == "file.damaged");
  CHECK(bytes_of(folder.file()) == whole);
}

TEST_CASE("A new workbook beside backups of its name says that one went missing", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("one"), "a bag")); }
  hand.now = noon(2);
  { REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("two"), "a bag")); }
  fs::remove(folder.file());
  const Notes notes = opened(folder.file(), with_backups(hand)).take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == "workbook.new-beside-backups");
}

TEST_CASE("The day before whose first write a backup is made begins at midnight where the grower is", "[workbook][backup]") {
  const ZoneOfThisMachine far_east("XYZ-13");
  const Folder folder;
  Hand hand;
  const auto write_at = [&](int hour_of_march_in_utc) {
    hand.now = std::chrono::sys_days(std::chrono::year(2026) / std::chrono::March / 1) + std::chrono::hours(hour_of_march_in_utc);
    REQUIRE(opened(folder.file(), with_backups(hand)).add(akadama_bag("lot"), "a bag"));
  };
  write_at(7);   // on the 1st at 8 in the evening
  write_at(19);  // on the 2nd at 8 in the morning
  write_at(34);  // on the 2nd at 11 in the evening
  const auto backups = backups_of(folder.file(), default_backup_folder(folder.file()));
  REQUIRE(backups.size() == 1);
  CHECK(backups.front().day == "2026-03-02");
  CHECK(opened(backups.front().file, hand.options()).count(RecordKind::bag) == 1);
}

TEST_CASE("In a network or synchronised folder no write-ahead log is used and the grower is told", "[workbook][placement]") {
  const Folder folder;
  Hand hand;
  { REQUIRE(opened(folder.file(), hand.options()).add(akadama_bag("from before it was moved here"), "a bag")); }
  REQUIRE(bytes_of(folder.file()).at(18) == 2);
  OpeningOptions options = hand.options();
  std::string expected;
  const SaidFileSystem said;
  SECTION("a network folder") {
    options.placement.reset();
    SaidFileSystem::kind = SMB_SUPER_MAGIC;
    expected = "workbook.in-network-folder";
  }
  SECTION("a folder that a synchronising program marked") {
    options.placement.reset();
    write_bytes(folder.path() / ".sync_state", "");
    expected = "workbook.in-synced-folder";
  }
  OpenWorkbook workbook = opened(folder.file(), options);
  const Notes notes = workbook.take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == expected);
  REQUIRE(workbook.add(akadama_bag("one"), "a bag"));
  CHECK_FALSE(fs::exists(folder.file("nursery.gritwright-wal")));
  CHECK(bytes_of(folder.file()).at(18) == 1);
  CHECK(workbook.count(RecordKind::bag) == 2);
}

// Kinds of file systems: linux/magic.h of the kernel.
TEST_CASE("A network's file systems are recognised by their kind, a disk's are not", "[workbook][placement][published]") {
  const Folder folder;
  Hand hand;
  OpeningOptions options = hand.options();
  options.placement.reset();
  const SaidFileSystem said;
  const auto lies = [&](long kind) {
    SaidFileSystem::kind = kind;
    return opened(folder.file(), options).placement();
  };
  for (const long kind : {long{NFS_SUPER_MAGIC}, long{SMB_SUPER_MAGIC}, long{CIFS_SUPER_MAGIC}, long{SMB2_SUPER_MAGIC}, long{FUSE_SUPER_MAGIC},
                          long{V9FS_MAGIC}, long{AFS_SUPER_MAGIC}, long{AFS_FS_MAGIC}, long{CEPH_SUPER_MAGIC}, long{NCP_SUPER_MAGIC},
                          long{CODA_SUPER_MAGIC}, long{OCFS2_SUPER_MAGIC}}) {
    INFO(std::hex << kind);
    CHECK(lies(kind) == Placement::network_folder);
  }
  for (const long kind : {long{EXT4_SUPER_MAGIC}, long{BTRFS_SUPER_MAGIC}, long{XFS_SUPER_MAGIC}, long{TMPFS_MAGIC}, long{MSDOS_SUPER_MAGIC}, long{OVERLAYFS_SUPER_MAGIC}}) {
    INFO(std::hex << kind);
    CHECK(lies(kind) == Placement::local);
  }
}
