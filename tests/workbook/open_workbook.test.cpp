#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <chrono>
#include <cstdlib>
#include <thread>

#include "gritwright/workbook/default_workbook.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

TEST_CASE("A new workbook is made on first start and belongs to its owner alone", "[workbook]") {
  const Folder folder;
  Hand hand;
  { const OpenWorkbook workbook = opened(folder.file(), hand.options()); }
  const auto perms = std::filesystem::status(folder.file()).permissions();
  CHECK((perms & std::filesystem::perms::all) == (std::filesystem::perms::owner_read | std::filesystem::perms::owner_write));
}

TEST_CASE("A workbook is a SQLite file with its own mark and version, strict tables, a log and foreign keys", "[workbook]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.add(akadama_bag("one"), "a bag"));
  SQLite::Database file(folder.file().string(), SQLite::OPEN_READONLY);
  CHECK(file.execAndGet("PRAGMA journal_mode").getString() == "wal");
  CHECK(file.execAndGet("PRAGMA application_id").getInt() == 0x47726974);  // "Grit"
  CHECK(file.execAndGet("PRAGMA user_version").getInt() > 0);
  SQLite::Statement tables(file, "SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%'");
  int seen = 0;
  while (tables.executeStep()) {
    INFO(tables.getColumn(0).getString());
    CHECK(tables.getColumn(1).getInt() == 1);
    ++seen;
  }
  CHECK(seen > 5);
  CHECK(file.execAndGet("SELECT count(*) FROM pragma_table_list t JOIN pragma_foreign_key_list(t.name) WHERE t.type = 'table'").getInt() > 0);
  SQLite::Statement strangers(file, "PRAGMA foreign_key_check");
  CHECK_FALSE(strangers.executeStep());
}

TEST_CASE("Who names no workbook has one in the folder of their data", "[workbook]") {
  const Folder folder;
  const char* const before = std::getenv("XDG_DATA_HOME");
  const std::string kept = before == nullptr ? "" : before;
  ::setenv("XDG_DATA_HOME", folder.path().c_str(), 1);
  const std::filesystem::path file = default_workbook_file();
  if (before == nullptr) ::unsetenv("XDG_DATA_HOME");
  else ::setenv("XDG_DATA_HOME", kept.c_str(), 1);
  CHECK(file == folder.path() / "gritwright" / "record.gritwright");
  Hand hand;
  const OpenWorkbook workbook = opened(file, hand.options());
  CHECK(std::filesystem::exists(file));
}

TEST_CASE("What was added is there after closing, under a printable id", "[workbook][roundtrip]") {
  const Folder folder;
  Hand hand;
  Bag bag = akadama_bag("lot 1");
  bag.price = Price{23.5, "EUR"};
  Id<Bag> id;
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    const auto added = workbook.add(bag, "bag of akadama");
    REQUIRE(added);
    id = *added;
    CHECK(id.text == "A-01");
  }
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  const auto found = workbook.find(id);
  REQUIRE(found);
  CHECK(found->record == bag);
  CHECK(found->revision == 1);
  CHECK(workbook.count(RecordKind::log_entry) == 1);
}

TEST_CASE("Undo takes a change and its log entry back, and redo returns them", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const auto id = workbook.add(akadama_bag("lot 1"), "bag A-01");
  REQUIRE(id);
  auto stored = workbook.find(*id);
  Bag changed = stored->record;
  changed.volume = loose_l(12);
  REQUIRE(workbook.replace(*stored, changed, "volume of bag A-01"));
  CHECK(workbook.undoable()->label == "volume of bag A-01");
  REQUIRE(workbook.undo());
  CHECK(workbook.find(*id)->record == akadama_bag("lot 1"));
  CHECK(workbook.find(*id)->revision == 3);
  CHECK(workbook.count(RecordKind::log_entry) == 1);
  CHECK(workbook.redoable()->label == "volume of bag A-01");
  REQUIRE(workbook.redo());
  CHECK(workbook.find(*id)->record == changed);
  CHECK(workbook.count(RecordKind::log_entry) == 2);
  CHECK_FALSE(workbook.redoable());
}

TEST_CASE("A large step beyond the kept ones goes out in parts, and not half of it comes back by undo", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  constexpr std::size_t many = 900;
  constexpr std::size_t kept = 200;
  Change import{"many bags", {}, {}, {}};
  for (std::size_t i = 0; i < many; ++i) import.edits.push_back({{RecordKind::bag, ""}, 0, akadama_bag("of the import")});
  REQUIRE(workbook.apply(std::move(import)));
  for (std::size_t i = 0; i <= kept; ++i) REQUIRE(workbook.add(akadama_bag("typed"), "a bag"));
  for (std::size_t i = 0; i < kept; ++i) REQUIRE(workbook.undo());
  CHECK(workbook.undo().problems().front().code == "workbook.nothing-to-undo");
  CHECK(workbook.count(RecordKind::bag) == many + 1);
  // What was undone can't be redone after another change, and goes out in parts too.
  for (int i = 0; i < 10; ++i) {
    REQUIRE(workbook.add(akadama_bag("typed later"), "a bag"));
    CHECK(workbook.redo().problems().front().code == "workbook.nothing-to-redo");
  }
  SQLite::Database file(folder.file().string(), SQLite::OPEN_READONLY);
  CHECK(file.execAndGet("SELECT count(*) FROM step").getInt() == 10);
  CHECK(file.execAndGet("SELECT count(*) FROM swap").getInt() == 20);  // each bag and its log entry
}

TEST_CASE("What was typed stands in the file itself, without its log, soon after the typing ends", "[workbook]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  std::size_t typed = 0;
  const auto log_bytes = [&] { return std::filesystem::file_size(folder.file().string() + "-wal"); };
  constexpr std::size_t a_thousand_pages = 1000 * 4096;
  for (; typed < 2000 && log_bytes() < a_thousand_pages; ++typed) REQUIRE(workbook.add(akadama_bag(std::string(9000, 'n')), "a bag"));
  REQUIRE(log_bytes() >= a_thousand_pages);
  const auto without_log = folder.file("without_log.gritwright");
  std::size_t there = 0;
  for (int tenths = 0; tenths < 300 && there != typed; ++tenths) {
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
    std::filesystem::copy_file(folder.file(), without_log, std::filesystem::copy_options::overwrite_existing);
    const Result<OpenWorkbook> copy = OpenWorkbook::open(without_log, hand.options());
    if (copy) there = copy->count(RecordKind::bag);  // torn while it is written
  }
  CHECK(there == typed);
}

TEST_CASE("A change based on an older revision is refused and nothing of it is kept", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook one = opened(folder.file(), hand.options());
  OpenWorkbook two = opened(folder.file(), hand.options());
  const auto id = one.add(akadama_bag("lot 1"), "bag A-01");
  REQUIRE(id);
  const auto seen_by_two = two.find(*id);
  REQUIRE(seen_by_two);
  Bag changed = seen_by_two->record;
  changed.note = "from window one";
  REQUIRE(one.replace(*one.find(*id), changed, "note of bag A-01"));
  changed.note = "from window two";
  const auto refused = two.replace(*seen_by_two, changed, "note of bag A-01");
  CHECK(code_of(refused) == "workbook.stale-change");
  CHECK(two.find(*id)->record.note == "from window one");
  CHECK(two.changed_since(1) == std::vector<RecordRef>{{RecordKind::bag, "A-01"}, {RecordKind::log_entry, "L-02"}});
}

TEST_CASE("An id is never used again", "[workbook][refuses]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.add(akadama_bag("x"), "bag K-07", "K-07"));
  REQUIRE(workbook.remove(*workbook.find(Id<Bag>{"K-07"}), "bag K-07"));
  CHECK(code_of(workbook.add(akadama_bag("y"), "bag K-07", "K-07")) == "workbook.id-used");
  CHECK(code_of(workbook.add(akadama_bag("y"), "bag k-07", "k-07")) == "workbook.id-used");
  CHECK(workbook.suggest_id(RecordKind::bag, "kanuma") == "K-08");
  CHECK(workbook.find_even_deleted({RecordKind::bag, "K-07"}));
  CHECK_FALSE(workbook.find(Id<Bag>{"K-07"}));
}

TEST_CASE("An id that undo took back, a list brought or another session gave is never given to another record", "[workbook][law]") {
  const Folder folder;
  Hand hand;
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    CHECK(workbook.add(akadama_bag("one"), "a bag")->text == "A-01");
    REQUIRE(workbook.undo());
    CHECK(workbook.add(akadama_bag("two"), "a bag")->text == "A-02");
    REQUIRE(import_records(workbook, {{{RecordKind::bag, ""}, akadama_bag("three"), {}}, {{RecordKind::bag, "A-40"}, akadama_bag("four"), {}}}, "a list"));
    CHECK(workbook.find(Id<Bag>{"A-03"})->record.lot == "three");
    REQUIRE(workbook.undo());
  }
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.undo());
  CHECK(workbook.count(RecordKind::bag) == 0);
  CHECK(workbook.add(akadama_bag("five"), "a bag")->text == "A-41");
  for (const char* used : {"A-01", "A-02", "A-03", "a-40"}) {
    INFO(used);
    CHECK(code_of(workbook.add(akadama_bag("six"), "a bag", used)) == "workbook.id-used");
    CHECK_FALSE(import_records(workbook, {{{RecordKind::bag, used}, akadama_bag("six"), {}}}, "a list", {.replace = true, .catalogue = nullptr}));
  }
  CHECK(workbook.count(RecordKind::bag) == 1);
}
