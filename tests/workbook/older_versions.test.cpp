#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <string>
#include <vector>

#include "gritwright/workbook/backups.hpp"
#include "gritwright/workbook/search.hpp"
#include "gritwright/workbook/trace.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "support/paths.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

int schema_of(const std::filesystem::path& file) {
  SQLite::Database database(file.string(), SQLite::OPEN_READONLY);
  return database.execAndGet("PRAGMA user_version").getInt();
}

}  // namespace

// version_1.gritwright was written by the program while its schema was the first: two bags, a ledger line, a tree repotted twice, a
// deleted tree, and a bag whose adding was undone.
TEST_CASE("A workbook of the first version is brought forward with a backup, and traced as if it were written today", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const Notes notes = workbook.take_notes();
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().code == "workbook.migrated");
  const auto backups = backups_of(folder.file(), workbook.backup_folder());
  REQUIRE(backups.size() == 1);
  CHECK(backups.front().before_migration);

  CHECK(check_content(workbook).empty());
  CHECK(workbook.find(Id<Tree>{"TR-01"})->record.repottings.size() == 2);
  CHECK(in_g(*workbook.stock_of({RecordKind::bag, "K-07"})) == 5600);
  CHECK(search(workbook, {.words = "juniper"}).empty());
  CHECK(search(workbook, {.words = "pine"}).size() == 1);
  CHECK(workbook.undoable()->label == "tree TR-02");
  CHECK(workbook.redoable()->label == "bag taken back");

  // The first version did not know that a repotting may leave old grain between the roots.
  const auto walked = trace(workbook, {RecordKind::bag, "K-07"}, TraceDirection::forward);
  REQUIRE(walked);
  const auto step_to = [&](const char* tree) { return std::ranges::find(walked->steps, RecordRef{RecordKind::tree, tree}, &TraceStep::ref); };
  REQUIRE(step_to("TR-01") != walked->steps.end());
  CHECK(step_to("TR-01")->role == "remains");
  CHECK_FALSE(step_to("TR-01")->certain);
  REQUIRE(step_to("TR-02") != walked->steps.end());
  CHECK(step_to("TR-02")->deleted);
}

TEST_CASE("A workbook that was brought forward has the tables and indexes of a new one", "[workbook][law]") {
  const std::string older = GENERATE(as<std::string>{}, "version_1", "version_2", "version_3");
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/" + older + ".gritwright", folder.file());
  { const OpenWorkbook forward = opened(folder.file(), hand.options()), made = opened(folder.file("new.gritwright"), hand.options()); }
  const auto built = [](const std::filesystem::path& file) {
    SQLite::Database database(file.string(), SQLite::OPEN_READONLY);
    SQLite::Statement parts(database, "SELECT coalesce(sql, name) FROM sqlite_master ORDER BY name");
    std::vector<std::string> all;
    while (parts.executeStep()) all.push_back(parts.getColumn(0).getString());
    return all;
  };
  CHECK(built(folder.file()).size() > 10);
  CHECK(built(folder.file()) == built(folder.file("new.gritwright")));
}

TEST_CASE("A workbook that was brought forward opens again without another backup", "[workbook]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
  { const OpenWorkbook first = opened(folder.file(), hand.options()); }
  OpenWorkbook again = opened(folder.file(), hand.options());
  CHECK(again.take_notes().empty());
  CHECK(backups_of(folder.file(), again.backup_folder()).size() == 1);
  REQUIRE(again.undo());
  CHECK(again.find(Id<Tree>{"TR-02"}));
}

TEST_CASE("Before a workbook is brought forward its backup is made in the old schema, checked, and the owner's alone", "[workbook][backup]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(schema_of(folder.file()) > 1);
  const auto backups = backups_of(folder.file(), workbook.backup_folder());
  REQUIRE(backups.size() == 1);
  CHECK(backups.front().before_migration);
  CHECK(backups.front().day == "2026-03-01");
  CHECK(schema_of(backups.front().file) == 1);
  CHECK(check_file(backups.front().file).empty());
  using std::filesystem::perms;
  CHECK((std::filesystem::status(backups.front().file).permissions() & perms::all) == (perms::owner_read | perms::owner_write));
  CHECK(newest_good_backup(folder.file(), workbook.backup_folder()) == backups.front());
}

TEST_CASE("Without its backup a workbook is not brought forward: it stays as it was and can still be read", "[workbook][backup][refuses]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", folder.file());
  const std::string before = bytes_of(folder.file());
  OpeningOptions options = hand.options();
  write_bytes(folder.file("no folder"), "a file stands where the folder of the backups should be");
  options.backup_folder = folder.file("no folder");
  const auto refused = OpenWorkbook::open(folder.file(), options);
  REQUIRE_FALSE(refused);
  CHECK(refused.problems().front().code == "workbook.not-migrated");
  CHECK(bytes_of(folder.file()) == before);
  options.access = Access::read_only;
  const OpenWorkbook reading = opened(folder.file(), options);
  CHECK(reading.find(Id<Tree>{"TR-01"}));
  CHECK(check_content(reading).empty());
  CHECK(bytes_of(folder.file()) == before);
}

// version_2.gritwright was written by the program while its schema was the second: two bags taken in from a list, one replaced by a second
// list, and two lines written down.
TEST_CASE("A workbook of the second version is brought forward, and its log can be listed without small changes", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_2.gritwright", folder.file());
  OpeningOptions reading = hand.options();
  reading.access = Access::read_only;
  ListFilter told;
  told.without_small = true;
  {
    const OpenWorkbook before = opened(folder.file(), reading);
    CHECK(check_content(before).empty());
    CHECK(before.count(RecordKind::log_entry, told) == 4);  // it did not know which are small
    CHECK(search(before, {.words = "frost", .material = {}}).size() == 1);
  }
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(check_content(workbook).empty());
  CHECK(workbook.count(RecordKind::log_entry) == 4);
  CHECK(workbook.count(RecordKind::log_entry, told) == 2);
  CHECK(search(workbook, {.words = "frost", .material = {}}).size() == 1);
  CHECK(search(workbook, {.material = "kanuma"}).size() == 4);  // the bag and three entries about it
  REQUIRE(workbook.undo());
  REQUIRE(workbook.undo());
  CHECK(workbook.find(Id<Bag>{"K-07"})->record.note.empty());
}

TEST_CASE("A log entry that can't be read does not keep a workbook of the second version from being brought forward", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_2.gritwright", folder.file());
  {
    SQLite::Database database(folder.file().string(), SQLite::OPEN_READWRITE);
    REQUIRE(database.exec("UPDATE record SET body = substr(body, 1, 38) WHERE kind = 'log-entry' AND id = 'L-02'") == 1);
  }
  ListFilter told;
  told.without_small = true;
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(schema_of(folder.file()) > 2);
  const Problems problems = check_content(workbook);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().code == "workbook.record-unreadable");
  CHECK(workbook.count(RecordKind::log_entry) == 4);
  CHECK(workbook.count(RecordKind::log_entry, told) == 2);  // what can't be read is not taken for a small change
  SQLite::Database database(folder.file().string(), SQLite::OPEN_READONLY);
  CHECK(database.execAndGet("SELECT length(body) FROM record WHERE kind = 'log-entry' AND id = 'L-02'").getInt() == 38);
}

// version_3.gritwright was written by the program while its schema was the third: a repotting day whose spill nobody typed, which the file
// tells as 7 %, with a correction that undo takes back; a day with 5 %; a mix with a spill of 7 % of its own.
TEST_CASE("A day of the third version whose spill is the 7 % of that time has none that was typed, also when undo brings it back", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_3.gritwright", folder.file());
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(check_content(workbook).empty());
  const auto day = [&](const char* id) { return workbook.find(Id<RepottingDay>{id})->record; };
  CHECK_FALSE(day("RD-01").spill);
  CHECK(day("RD-01").settling == Settling(0.08));
  CHECK(day("RD-01").note == "windy");
  CHECK(day("RD-01").checklist.front().text == "cut wire, \"spill\":0.07");
  CHECK(day("RD-02").spill == Spill(0.05));
  CHECK(workbook.find(Id<MixVersion>{"MX-01/1"})->record.mix.spill == Spill(0.07));
  CHECK_FALSE(workbook.find(Id<MixVersion>{"MX-01/1"})->record.mix.settling);
  REQUIRE(workbook.undo());
  CHECK(day("RD-01").note.empty());
  CHECK_FALSE(day("RD-01").spill);
  REQUIRE(workbook.redo());
  CHECK(day("RD-01").note == "windy");
  CHECK_FALSE(day("RD-01").spill);
}

TEST_CASE("A day that can't be read does not keep a workbook of the third version from being brought forward", "[workbook][regression]") {
  const Folder folder;
  Hand hand;
  std::filesystem::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_3.gritwright", folder.file());
  {
    SQLite::Database database(folder.file().string(), SQLite::OPEN_READWRITE);
    REQUIRE(database.exec("UPDATE record SET body = substr(body, 1, 38) WHERE id = 'RD-01'") == 1);
    REQUIRE(database.exec("UPDATE record SET gone = body, body = NULL WHERE id = 'RD-02'") == 1);
  }
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(schema_of(folder.file()) > 3);
  const Problems problems = check_content(workbook);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().code == "workbook.record-unreadable");
}
