#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <functional>
#include <random>

#include "failing_files.hpp"
#include "gritwright/workbook/backups.hpp"
#include "gritwright/workbook/search.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "other_program.hpp"
#include "support/paths.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

std::string faults_of(const OpenWorkbook& workbook, const std::filesystem::path& folder) {
  const std::filesystem::path copy = folder / "checked-copy.gritwright";
  if (const auto saved = save_copy(workbook, copy); !saved) return code_of(saved);
  const Problems problems = check_file(copy);
  return problems.empty() ? "" : problems.front().code;
}

/// Every change's log entry came with it, and every record with its change.
void check_every_bag_is_logged(const OpenWorkbook& workbook) {
  for (const Stored<Bag>& bag : workbook.all<Bag>()) {
    ListFilter about;
    about.about = ref_to(bag.id);
    CHECK(workbook.list(RecordKind::log_entry, about).size() == 1);
  }
  CHECK(workbook.count(RecordKind::log_entry) == workbook.count(RecordKind::bag));
}

/// Runs `work` in a process of its own and returns its answer.
int in_child(const std::function<int()>& work) {
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) ::_exit(work());
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 1000 + WTERMSIG(status);
}

/// A closed workbook with some bags; its bytes.
std::string bytes_of_some_bags(const std::filesystem::path& file, Hand& hand, int bags) {
  {
    OpenWorkbook workbook = opened(file, hand.options());
    for (int i = 0; i < bags; ++i) REQUIRE(workbook.add(akadama_bag("lot " + std::to_string(i)), "a bag"));
  }
  return bytes_of(file);
}

void refuse_or_give_all(const std::filesystem::path& file, const std::string& bytes, Hand& hand, std::size_t bags, bool must_refuse) {
  write_bytes(file, bytes);
  auto workbook = OpenWorkbook::open(file, hand.options());
  if (!workbook) {
    const std::string code = code_of(workbook);
    CHECK((code == "file.damaged" || code == "file.other-kind"));
    CHECK(bytes_of(file) == bytes);
    return;
  }
  CHECK_FALSE(must_refuse);
  CHECK(workbook->all<Bag>().size() == bags);
  CHECK(faults_of(*workbook, file.parent_path()).empty());
}

/// The writer of the kill test: says each bag's id once the workbook has acknowledged it, until it is killed.
[[noreturn]] void write_until_killed(const std::filesystem::path& file, Hand& hand, int pipe) {
  auto workbook = OpenWorkbook::open(file, hand.options());
  if (!workbook || ::write(pipe, "!", 1) != 1) ::_exit(3);
  for (int i = 0;; ++i) {
    const auto added = workbook->add(akadama_bag("lot " + std::to_string(i)), "a bag");
    if (!added) ::_exit(4);
    const std::string line = added->text + "\n";
    if (::write(pipe, line.data(), line.size()) != static_cast<ssize_t>(line.size())) ::_exit(5);
  }
}

void kill_while_writing(int times, Placement placement) {
  const Folder folder;
  Hand hand;
  hand.placement = placement;
  bytes_of_some_bags(folder.file(), hand, 1);
  std::mt19937 random(20260301);
  std::vector<std::string> acknowledged;
  int with_changes = 0;
  for (int round = 0; round < times; ++round) {
    // A fresh file now and then keeps the rounds as quick as the first.
    if (round % 20 == 19) {
      std::filesystem::remove(folder.file());
      acknowledged.clear();
    }
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) write_until_killed(folder.file(), hand, ends[1]);
    ::close(ends[1]);
    // Most kills shall come in the midst of writing, some while the file is made or opened.
    std::string said;
    char buffer[4096];
    const int changes_first = round % 5 == 0 ? -1 : std::uniform_int_distribution<int>(0, 3)(random);
    for (int seen = -1; seen < changes_first && ::read(ends[0], buffer, 1) == 1;) {
      said += buffer[0];
      if (buffer[0] == '!' || buffer[0] == '\n') ++seen;
    }
    ::usleep(std::uniform_int_distribution<useconds_t>(0, 40'000)(random));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    CHECK((WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL));
    for (ssize_t got = 0; (got = ::read(ends[0], buffer, sizeof buffer)) > 0;) said.append(buffer, static_cast<std::size_t>(got));
    ::close(ends[0]);
    if (!said.empty()) said.erase(0, 1);
    for (std::size_t at = 0, end = 0; (end = said.find('\n', at)) != std::string::npos; at = end + 1)
      acknowledged.push_back(said.substr(at, end - at));
    with_changes += said.empty() ? 0 : 1;
    const OpenWorkbook workbook = opened(folder.file(), hand.options());
    for (const std::string& id : acknowledged) {
      INFO(id);
      CHECK(workbook.find(Id<Bag>{id}));
    }
    CHECK(faults_of(workbook, folder.path()).empty());
    CHECK(workbook.count(RecordKind::log_entry) == workbook.count(RecordKind::bag));
  }
  CHECK(with_changes > times / 5);
}

}  // namespace

TEST_CASE("A full disk refuses the change whole, wherever in the writing it strikes, and keeps all that was saved", "[workbook][refuses]") {
  const auto placement = GENERATE(Placement::local, Placement::synced_folder);
  const int code = GENERATE(SQLITE_FULL, SQLITE_IOERR_WRITE);
  FailingFiles& files = FailingFiles::instance();
  const Folder folder;
  Hand hand;
  OpeningOptions options = hand.options();
  options.file_layer = FailingFiles::name;
  options.placement = placement;
  int refused = 0;
  {
    OpenWorkbook workbook = opened(folder.file(), options);
    std::size_t saved = 0;
    for (int writes = 0; writes < 60; ++writes) {
      files.fail_after(writes, code);
      const auto added = workbook.add(akadama_bag("lot"), "a bag");
      const bool struck = files.has_failed();
      files.heal();
      if (added) ++saved;
      if (!added) ++refused;
      if (!added) CHECK(code_of(added) == (code == SQLITE_FULL ? "file.disk-full" : "file.write-failed"));
      CHECK((added.ok() || struck));
      CHECK(workbook.count(RecordKind::bag) == saved);
    }
    CHECK(workbook.add(akadama_bag("after"), "a bag"));
    check_every_bag_is_logged(workbook);
    CHECK(faults_of(workbook, folder.path()).empty());
  }
  CHECK(refused > 5);
  const OpenWorkbook again = opened(folder.file(), hand.options());
  CHECK(again.count(RecordKind::bag) == static_cast<std::size_t>(61 - refused));
}

TEST_CASE("A change waits for the disk before it is acknowledged", "[workbook][law]") {
  const auto placement = GENERATE(Placement::local, Placement::synced_folder);
  FailingFiles& files = FailingFiles::instance();
  const Folder folder;
  Hand hand;
  OpeningOptions options = hand.options();
  options.file_layer = FailingFiles::name;
  options.placement = placement;
  OpenWorkbook workbook = opened(folder.file(), options);
  for (int i = 0; i < 5; ++i) {
    const int before = files.syncs();
    REQUIRE(workbook.add(akadama_bag("lot"), "a bag"));
    CHECK(files.syncs() > before);
  }
}

TEST_CASE("A disk that fills up while an older workbook is brought forward leaves all of it, and it comes forward later", "[workbook][refuses]") {
  FailingFiles& files = FailingFiles::instance();
  Hand hand;
  OpeningOptions options = hand.options();
  options.file_layer = FailingFiles::name;
  int without_backup = 0;
  int half_way = 0;
  bool through = false;
  for (int writes = 0; !through && writes < 2'000; writes += 7) {
    const Folder folder;
    std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
    files.fail_after(writes, SQLITE_FULL);
    {
      const auto refused = OpenWorkbook::open(folder.file(), options);
      files.heal();
      through = refused.ok();
      if (!refused) {
        const std::string code = code_of(refused);
        CHECK((code == "workbook.not-migrated" || code == "file.disk-full"));
        (code == "workbook.not-migrated" ? without_backup : half_way) += 1;
      }
    }
    const OpenWorkbook later = opened(folder.file(), hand.options());
    CHECK(check_content(later).empty());
    CHECK(later.find(Id<Tree>{"TR-01"}));
    CHECK(in_g(*later.stock_of({RecordKind::bag, "K-07"})) == 5600);
  }
  CHECK(through);
  CHECK(without_backup > 0);
  CHECK(half_way > 0);
}

TEST_CASE("A full disk at the making of a workbook leaves no file behind", "[workbook][refuses]") {
  FailingFiles& files = FailingFiles::instance();
  Hand hand;
  OpeningOptions options = hand.options();
  options.file_layer = FailingFiles::name;
  for (const int writes : {0, 1, 3, 7, 15}) {
    const Folder folder;
    files.fail_after(writes, SQLITE_FULL);
    const auto workbook = OpenWorkbook::open(folder.file(), options);
    files.heal();
    CHECK(code_of(workbook) == "file.disk-full");
    CHECK(std::filesystem::is_empty(folder.path()));
  }
}

TEST_CASE("A workbook in a folder that can't be written to opens for reading and says so, can be checked, and copied out of it", "[workbook][refuses]") {
  const Folder folder, elsewhere;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 3);
  // An empty log may have been left, as by a program that only read.
  if (GENERATE(false, true)) write_bytes(folder.file("nursery.gritwright-wal"), "");
  constexpr unsigned nobody = 65534;
  const bool is_root = ::geteuid() == 0;
  if (is_root) REQUIRE(::chown(folder.path().c_str(), nobody, nobody) == 0);
  if (is_root) REQUIRE(::chown(folder.file().c_str(), nobody, nobody) == 0);
  if (is_root) REQUIRE(::chown(elsewhere.path().c_str(), nobody, nobody) == 0);
  std::filesystem::permissions(folder.path(), std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
  const int answer = in_child([&] {
    if (is_root && ::setresuid(nobody, nobody, nobody) != 0) return 1;
    auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    if (!workbook || workbook->access() != Access::read_only) return 2;
    const Notes notes = workbook->take_notes();
    if (notes.size() != 1 || notes.front().code != "workbook.opened-read-only") return 3;
    if (workbook->all<Bag>().size() != 3) return 4;
    if (code_of(workbook->add(akadama_bag("x"), "x")) != "workbook.read-only") return 5;
    if (code_of(OpenWorkbook::open(folder.file("new.gritwright"), hand.options())) != "file.read-only") return 6;
    if (!check_file(folder.file()).empty() || !check_content(*workbook).empty()) return 7;
    if (!save_copy(*workbook, elsewhere.file())) return 8;
    return 0;
  });
  std::filesystem::permissions(folder.path(), std::filesystem::perms::owner_all);
  CHECK(answer == 0);
}

TEST_CASE("Where nothing can be made in the folder, a reader still sees what a window writes that had opened the file before", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 3);
  constexpr unsigned nobody = 65534;
  const bool is_root = ::geteuid() == 0;
  if (is_root) REQUIRE(::chown(folder.path().c_str(), nobody, nobody) == 0);
  if (is_root) REQUIRE(::chown(folder.file().c_str(), nobody, nobody) == 0);
  int has_read[2], has_written[2];
  REQUIRE(::pipe(has_read) == 0);
  REQUIRE(::pipe(has_written) == 0);
  OtherProgram reader([&] {
    char sign = 'r';
    if (is_root && ::setresuid(nobody, nobody, nobody) != 0) return 1;
    auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    if (!workbook || workbook->access() != Access::read_only) return 2;
    if (workbook->all<Bag>().size() != 3) return 3;
    if (::write(has_read[1], &sign, 1) != 1 || ::read(has_written[0], &sign, 1) != 1) return 4;
    return workbook->all<Bag>().size() == 4 ? 0 : 5;
  });
  ::close(has_read[1]);
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    REQUIRE(std::filesystem::file_size(folder.file("nursery.gritwright-wal")) == 0);
    std::filesystem::permissions(folder.path(), std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
    reader.start();
    char sign = 0;
    CHECK(::read(has_read[0], &sign, 1) == 1);
    CHECK(workbook.add(akadama_bag("lot 4"), "a bag"));
    CHECK(::write(has_written[1], "w", 1) == 1);
    CHECK(reader.finish() == 0);
    std::filesystem::permissions(folder.path(), std::filesystem::perms::owner_all);
  }
  for (const int end : {has_read[0], has_written[0], has_written[1]}) ::close(end);
}

TEST_CASE("When the file goes away or another takes its place, changes are refused and all that was saved can still be copied out",
          "[workbook][refuses]") {
  const bool replaced = GENERATE(false, true);
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.add(akadama_bag("lot 1"), "a bag"));
  CHECK(workbook.file_trouble().empty());
  std::filesystem::remove(folder.file());
  if (replaced) write_bytes(folder.file(), "something else");
  CHECK(workbook.file_trouble().at(0).code == "file.gone");
  CHECK(code_of(workbook.add(akadama_bag("lot 2"), "a bag")) == "file.gone");
  CHECK(code_of(workbook.undo()) == "file.gone");
  REQUIRE(save_copy(workbook, folder.file("rescued.gritwright")));
  CHECK(opened(folder.file("rescued.gritwright"), hand.options()).count(RecordKind::bag) == 1);
  CHECK(std::filesystem::exists(folder.file()) == replaced);
}

TEST_CASE("A file made where one went away takes nothing from the log that was left behind, and keeps that log", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  CHECK(in_child([&] {
          OpenWorkbook workbook = OpenWorkbook::open(folder.file(), hand.options()).value();
          if (!workbook.add(akadama_bag("lot 1"), "a bag")) return 1;
          ::_exit(0);  // its log stays
        }) == 0);
  REQUIRE(std::filesystem::exists(folder.file("nursery.gritwright-wal")));
  std::filesystem::remove(folder.file());
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(workbook.count(RecordKind::bag) == 0);
  CHECK(faults_of(workbook, folder.path()).empty());
  int left = 0;
  for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
    left += entry.path().filename().string().find("-wal-left-over-") != std::string::npos ? 1 : 0;
  CHECK(left == 1);
}

TEST_CASE("Files of other kinds are refused and stay as they are", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  const auto refused = [&](const std::string& name, const std::string& bytes) {
    write_bytes(folder.file(name), bytes);
    const std::string code = code_of(OpenWorkbook::open(folder.file(name), hand.options()));
    CHECK(bytes_of(folder.file(name)) == bytes);
    return code;
  };
  CHECK(refused("picture.gritwright", std::string("\x89PNG\r\n") + std::string(500, 'x')) == "file.other-kind");
  CHECK(refused("notes.txt", "bags of akadama") == "file.other-kind");
  CHECK(refused("empty.gritwright", "") == "file.damaged");
  CHECK(code_of(OpenWorkbook::open(folder.path(), hand.options())) == "file.is-folder");
  CHECK(code_of(OpenWorkbook::open("/dev/null", hand.options())) == "file.other-kind");
  sqlite3* other = nullptr;
  sqlite3_open(folder.file("other.db").c_str(), &other);
  sqlite3_exec(other, "CREATE TABLE t(x)", nullptr, nullptr, nullptr);
  sqlite3_close(other);
  CHECK(refused("other.db", bytes_of(folder.file("other.db"))) == "file.other-kind");
}

TEST_CASE("A file cut off at any of 1,000 places is recognised as damaged and not touched", "[workbook][refuses][rounds]") {
  const Folder folder;
  Hand hand;
  const std::string whole = bytes_of_some_bags(folder.file("whole.gritwright"), hand, 30);
  std::mt19937 random(7);
  std::uniform_int_distribution<std::size_t> place(0, whole.size() - 1);
  for (int i = 0; i < 1000; ++i) {
    const std::size_t length = i % 4 == 0 ? place(random) / 4096 * 4096 : place(random);
    INFO(length);
    refuse_or_give_all(folder.file("cut.gritwright"), whole.substr(0, length), hand, 30, true);
  }
}

TEST_CASE("The check names every record whose list, words, links or ledger line say something else than it does, and they are drawn anew without touching it",
          "[workbook][refuses]") {
  struct Spoilt {
    const char* by;
    const char* told;
  };
  const auto spoilt = GENERATE(Spoilt{"UPDATE record SET title = 'x' WHERE kind = 'bag'", "bag:A-01"}, Spoilt{"UPDATE record SET day = '2020-01-01' WHERE kind = 'bag'", "bag:A-01"},
                               Spoilt{"UPDATE search SET words = 'x' WHERE rowid = (SELECT number FROM record WHERE kind = 'bag')", "bag:A-01"},
                               Spoilt{"DELETE FROM search WHERE rowid = (SELECT number FROM record WHERE kind = 'bag')", "bag:A-01"},
                               Spoilt{"DELETE FROM link WHERE role = 'about' AND to_kind = 'bag' OR role = 'about' AND from_kind = 'bag'", "log-entry:L-01"},
                               Spoilt{"UPDATE stock SET micrograms = micrograms + 1", "stock-entry:S-01"}, Spoilt{"UPDATE stock SET holder_id = 'A-02'", "stock-entry:S-01"},
                               Spoilt{"DELETE FROM stock", "stock-entry:S-01"}, Spoilt{"UPDATE record SET body = substr(body, 1, 20) WHERE kind = 'bag'", "bag:A-01"});
  INFO(spoilt.by);
  const Folder folder;
  Hand hand;
  Bag bag = akadama_bag("lot");
  bag.bulk_density = bulk_g_l(480);
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    REQUIRE(receive(workbook, bag));
  }
  CHECK(check_content(opened(folder.file(), hand.options())).empty());
  {
    SQLite::Database file(folder.file().string(), SQLite::OPEN_READWRITE);
    file.exec(spoilt.by);
  }
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const Problems problems = check_content(workbook);
  REQUIRE(problems.size() == 1);
  CHECK(std::get<std::string>(problems.front().facts.at("kind")) + ":" + std::get<std::string>(problems.front().facts.at("id")) == spoilt.told);
  const auto bodies = [&] {
    SQLite::Database file(folder.file().string(), SQLite::OPEN_READONLY);
    return file.execAndGet("SELECT group_concat(number || kind || id || revision || body) FROM record").getString();
  };
  const std::string before = bodies();
  REQUIRE(index_again(workbook));
  CHECK(bodies() == before);
  if (problems.front().code == "workbook.record-unreadable") {
    CHECK(check_content(workbook) == problems);
    return;
  }
  CHECK(check_content(workbook).empty());
  CHECK(search(workbook, {.words = "akadama", .material = {}}).size() >= 1);
  CHECK(workbook.stock_of({RecordKind::bag, "A-01"}) == mass_g(14 * 480));
}

TEST_CASE("With any byte of the header flipped a workbook is refused untouched or gives all it held", "[workbook][refuses][rounds]") {
  const Folder folder;
  Hand hand;
  const std::string whole = bytes_of_some_bags(folder.file("whole.gritwright"), hand, 12);
  constexpr std::size_t header = 100;
  for (std::size_t at = 0; at < header; ++at) {
    for (const int flip : {0x01, 0x02, 0x10, 0x80, 0xff}) {
      std::string spoilt = whole;
      spoilt[at] = static_cast<char>(static_cast<unsigned char>(spoilt[at]) ^ flip);
      INFO(at << " flipped by " << flip);
      refuse_or_give_all(folder.file("flipped.gritwright"), spoilt, hand, 12, at < 16);
    }
  }
}

TEST_CASE("A workbook whose count of changes is no number is refused for writing, read as far as it goes and told by the check", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  for (const char* count : {"''", "'1 or 2'", "'-4'", "'99999999999999999999'"}) {
    INFO(count);
    const std::filesystem::path file = folder.file();
    std::filesystem::remove(file);
    bytes_of_some_bags(file, hand, 2);
    {
      SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
      database.exec("PRAGMA journal_mode = DELETE");
      REQUIRE(database.exec(std::string("UPDATE meta SET value = ") + count + " WHERE key = 'changes'") == 1);
    }
    const std::string bytes = bytes_of(file);
    CHECK(code_of(OpenWorkbook::open(file, hand.options())) == "file.damaged");
    OpeningOptions reading = hand.options();
    reading.access = Access::read_only;
    {
      const OpenWorkbook workbook = opened(file, reading);
      CHECK(workbook.all<Bag>().size() == 2);
      const Problems told = check_content(workbook);
      REQUIRE(told.size() == 1);
      CHECK(told.front().code == "file.damaged");
      SearchQuery query;
      query.words = "akadama";
      CHECK_THROWS_AS(search(workbook, query), WorkbookTrouble);
      CHECK_THROWS_AS(workbook.revision(), WorkbookTrouble);
    }
    CHECK(bytes_of(file) == bytes);
  }
}

TEST_CASE("A newer version's workbook is refused by its number, opens for reading on request, and is never written", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 2);
  sqlite3* database = nullptr;
  sqlite3_open(folder.file().c_str(), &database);
  sqlite3_exec(database, "PRAGMA journal_mode=DELETE; PRAGMA user_version = 99; UPDATE meta SET value = '99' WHERE key = 'schema'", nullptr,
               nullptr, nullptr);
  sqlite3_close(database);
  const std::string bytes = bytes_of(folder.file());
  const auto refused = OpenWorkbook::open(folder.file(), hand.options());
  REQUIRE(code_of(refused) == "file.newer-version");
  CHECK(std::get<double>(refused.problems().front().facts.at("version")) == 99.0);
  OpeningOptions reading = hand.options();
  reading.access = Access::read_only;
  {
    OpenWorkbook workbook = opened(folder.file(), reading);
    CHECK(workbook.all<Bag>().size() == 2);
    CHECK(code_of(workbook.add(akadama_bag("x"), "x")) == "workbook.read-only");
  }
  CHECK(bytes_of(folder.file()) == bytes);
}

TEST_CASE("A reader of a newer version's workbook passes over a change to a kind of record that it doesn't know", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 2);
  sqlite3* newer = nullptr;
  sqlite3_open(folder.file().c_str(), &newer);
  REQUIRE(sqlite3_exec(newer, "PRAGMA user_version = 99; UPDATE meta SET value = '99' WHERE key = 'schema'", nullptr, nullptr, nullptr) == SQLITE_OK);
  OpeningOptions reading = hand.options();
  reading.access = Access::read_only;
  {
    const OpenWorkbook workbook = opened(folder.file(), reading);
    const std::int64_t seen = workbook.revision();
    REQUIRE(sqlite3_exec(newer, "UPDATE record SET changed = changed + 100; UPDATE record SET kind = 'lamp' WHERE id = 'A-01'", nullptr, nullptr, nullptr) == SQLITE_OK);
    REQUIRE(sqlite3_changes(newer) == 1);
    const std::vector<RecordRef> changed = workbook.changed_since(seen);
    CHECK(std::ranges::find(changed, RecordRef{RecordKind::bag, "A-02"}) != changed.end());
    CHECK(std::ranges::none_of(changed, [](const RecordRef& ref) { return ref.id == "A-01"; }));
  }
  sqlite3_close(newer);
}

TEST_CASE("A lock held by another process is told, and the change goes through once it is gone", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 1);
  int ready[2];
  REQUIRE(::pipe(ready) == 0);
  OtherProgram other([&] {
    sqlite3* database = nullptr;
    sqlite3_open(folder.file().c_str(), &database);
    const bool held = sqlite3_exec(database, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr) == SQLITE_OK;
    if (::write(ready[1], held ? "y" : "n", 1) != 1) return 1;
    ::pause();
    return 0;
  });
  OpeningOptions options = hand.options();
  options.patience = std::chrono::milliseconds(50);
  OpenWorkbook workbook = opened(folder.file(), options);
  other.start();
  char sign = 0;
  REQUIRE(::read(ready[0], &sign, 1) == 1);
  REQUIRE(sign == 'y');
  CHECK(code_of(workbook.add(akadama_bag("x"), "a bag")) == "file.locked");
  CHECK(workbook.count(RecordKind::bag) == 1);
  other.kill();
  ::close(ready[0]);
  ::close(ready[1]);
  CHECK(workbook.add(akadama_bag("x"), "a bag"));
}

TEST_CASE("Opening a second window keeps the first one's hold on the file against other programs", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 1);
  // It closes as the last one would: it must not fold the log away under the first window.
  OtherProgram other([&] {
    auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    return workbook && workbook->add(akadama_bag("two"), "a bag") ? 0 : 1;
  });
  OtherProgram counting([&] {
    const auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    return workbook ? static_cast<int>(workbook->count(RecordKind::bag)) : 90;
  });
  OpenWorkbook first = opened(folder.file(), hand.options());
  { const OpenWorkbook second = opened(folder.file(), hand.options()); }
  other.start();
  CHECK(other.finish() == 0);
  CHECK(std::filesystem::exists(folder.file("nursery.gritwright-wal")));
  REQUIRE(first.add(akadama_bag("three"), "a bag"));
  counting.start();
  CHECK(counting.finish() == 3);
}

TEST_CASE("Killed at a random moment of writing, a workbook has every change that was acknowledged", "[workbook][law]") {
  kill_while_writing(30, GENERATE(Placement::local, Placement::synced_folder));
}

TEST_CASE("Killed 300 times, a workbook has every change that was acknowledged", "[.][many]") {
  kill_while_writing(300, GENERATE(Placement::local, Placement::synced_folder));
}

TEST_CASE("Killed while an older workbook is brought forward, it is whole and comes forward later", "[workbook][law]") {
  Hand hand;
  std::mt19937 random(20260302);
  int before_the_end = 0;
  for (int round = 0; round < 40; ++round) {
    const Folder folder;
    std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
    OtherProgram other([&] {
      const auto workbook = OpenWorkbook::open(folder.file(), hand.options());
      ::pause();
      return workbook ? 0 : 1;
    });
    other.start();
    ::usleep(std::uniform_int_distribution<useconds_t>(0, 20'000)(random));
    other.kill();
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    for (const Note& note : workbook.take_notes()) before_the_end += note.code == "workbook.migrated" ? 1 : 0;
    CHECK(check_content(workbook).empty());
    CHECK(workbook.find(Id<Tree>{"TR-01"}));
    CHECK(in_g(*workbook.stock_of({RecordKind::bag, "K-07"})) == 5600);
    CHECK(newest_good_backup(folder.file(), workbook.backup_folder()));
  }
  CHECK(before_the_end > 0);
}

TEST_CASE("Of two programs that write into one note at the same moment neither loses the other's words", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 1);
  constexpr int words = 40;
  const auto write_into_the_note = [&](char word) {
    return [&, word] {
      auto workbook = OpenWorkbook::open(folder.file(), hand.options());
      if (!workbook) return 1;
      for (int written = 0; written < words;) {
        const auto bag = workbook->find(Id<Bag>{"A-01"});
        Bag more = bag->record;
        more.note += word;
        const std::string refused = code_of(workbook->replace(*bag, more, "note of bag"));
        if (refused.empty()) ++written;
        else if (refused != "workbook.stale-change" && refused != "file.locked") return 2;
      }
      return 0;
    };
  };
  OtherProgram one(write_into_the_note('a'));
  OtherProgram two(write_into_the_note('b'));
  one.start();
  two.start();
  CHECK(one.finish() == 0);
  CHECK(two.finish() == 0);
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  const std::string note = workbook.find(Id<Bag>{"A-01"})->record.note;
  CHECK(std::ranges::count(note, 'a') == words);
  CHECK(std::ranges::count(note, 'b') == words);
  CHECK(workbook.count(RecordKind::log_entry) == 1 + 2 * words);
}

TEST_CASE("A clock set back is told, and entries keep their order", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  hand.now = noon(20);
  { REQUIRE(opened(folder.file(), hand.options()).add(akadama_bag("one"), "first")); }
  hand.now = noon(3);
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const Notes notes = workbook.take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == "workbook.clock-set-back");
  REQUIRE(workbook.add(akadama_bag("two"), "second"));
  CHECK(workbook.undoable()->label == "second");
  const auto log = workbook.list(RecordKind::log_entry);
  REQUIRE(log.size() == 2);
  CHECK(log.front().title == "second");
}

TEST_CASE("A second window sees a change at once, and both another program's", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  bytes_of_some_bags(folder.file(), hand, 1);
  OtherProgram other([&] {
    auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    return workbook && workbook->add(akadama_bag("three"), "a bag") ? 0 : 1;
  });
  OpenWorkbook one = opened(folder.file(), hand.options());
  const OpenWorkbook two = opened(folder.file(), hand.options());
  const std::int64_t before = two.revision();
  REQUIRE(one.add(akadama_bag("two"), "a bag"));
  CHECK(two.revision() > before);
  const std::int64_t between = one.revision();
  other.start();
  CHECK(other.finish() == 0);
  CHECK(one.changed_since(between).front() == RecordRef{RecordKind::bag, "A-03"});
  CHECK(two.changed_since(between).size() == 2);
}

TEST_CASE("Undo survives closing for the last 200 steps", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    for (int i = 0; i < 210; ++i) REQUIRE(workbook.add(akadama_bag("lot " + std::to_string(i)), "bag " + std::to_string(i)));
  }
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    for (int i = 209; i >= 10; --i) {
      const auto undone = workbook.undo();
      REQUIRE(undone);
      CHECK(undone->label == "bag " + std::to_string(i));
    }
    CHECK(code_of(workbook.undo()) == "workbook.nothing-to-undo");
    CHECK(workbook.count(RecordKind::bag) == 10);
    CHECK(workbook.count(RecordKind::log_entry) == 10);
  }
  {
    // What belonged to the steps that are no longer kept went with them.
    SQLite::Database file(folder.file().string(), SQLite::OPEN_READONLY);
    CHECK(file.execAndGet("SELECT count(*) FROM step").getInt() == 200);
    SQLite::Statement strangers(file, "PRAGMA foreign_key_check");
    CHECK_FALSE(strangers.executeStep());
  }
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  for (int i = 10; i < 210; ++i) REQUIRE(workbook.redo());
  CHECK(code_of(workbook.redo()) == "workbook.nothing-to-redo");
  CHECK(workbook.count(RecordKind::bag) == 210);
  check_every_bag_is_logged(workbook);
}
