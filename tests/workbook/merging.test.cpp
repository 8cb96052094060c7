// Two records that become one, and what can still be had of a record that can't be read whole.
#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <map>
#include <sstream>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/record_csv.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "support/paths.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

std::string all_of_it(const OpenWorkbook& workbook) {
  std::ostringstream text;
  REQUIRE(export_workbook(workbook, text).empty());
  return text.str();
}

std::vector<IdentifiedRecord> records_in(const std::string& text) {
  auto records = read_exchange(text, "other.json");
  REQUIRE(records);
  return std::move(records).value();
}

/// A bag with its receipt, and a line that the grower wrote: S-01, L-01 and L-02.
OpenWorkbook grower(const std::filesystem::path& file, Hand& hand, const std::string& bag_id, double litres, const std::string& note) {
  OpenWorkbook workbook = opened(file, hand.options());
  Bag bag = akadama_bag("lot of " + bag_id);
  bag.volume = loose_l(litres);
  bag.bulk_density = bulk_g_l(480);
  REQUIRE(receive(workbook, bag, bag_id));
  REQUIRE(workbook.apply({"log entry", {}, LogEntry{"2026-03-01", "", LogSort::observation, note, {}}, {}}));
  return workbook;
}

/// How often each line of log and ledger is there, whatever its number.
std::map<std::string, int> lines_of(const OpenWorkbook& workbook) {
  std::map<std::string, int> lines;
  for (const RecordKind kind : {RecordKind::log_entry, RecordKind::stock_entry})
    for (const StoredRecord& line : workbook.all_of(kind)) ++lines[write_record(line.record)];
  return lines;
}

std::size_t told(const ImportPreview& preview, const std::string& code) {
  return static_cast<std::size_t>(std::ranges::count(preview.notes, code, &Note::code));
}

}  // namespace

TEST_CASE("Lines of another record's log and ledger come in under the next free numbers, whichever takes the other in, and none of its own is touched",
          "[exchange][law]") {
  const Folder folder;
  Hand hand;
  const bool replace = GENERATE(false, true);
  const bool swapped = GENERATE(false, true);
  CAPTURE(replace, swapped);
  OpenWorkbook one = grower(folder.file("one.gritwright"), hand, "A-01", 14, "buds late");
  OpenWorkbook two = grower(folder.file("two.gritwright"), hand, "A-02", 20, "leaves drop");
  OpenWorkbook& mine = swapped ? two : one;
  const OpenWorkbook& theirs = swapped ? one : two;
  const std::string before = all_of_it(mine), other = all_of_it(theirs);
  const auto own = lines_of(mine), foreign = lines_of(theirs);
  const auto imported = import_records(mine, records_in(other), "import", {.replace = replace, .catalogue = nullptr});
  REQUIRE(imported);
  CHECK(imported->preview.count(Arrival::added) == 4);  // bag, receipt, two lines of the log
  CHECK(told(imported->preview, "import.renumbered") == 3);
  for (const StoredRecord& line : opened(folder.file(swapped ? "two.gritwright" : "one.gritwright"), hand.options()).all_of(RecordKind::stock_entry))
    CHECK((line.ref.id == "S-01" || line.ref.id == "S-02"));
  CHECK(std::get<LogEntry>(mine.find(RecordRef{RecordKind::log_entry, "L-02"})->record).text == (swapped ? "leaves drop" : "buds late"));
  auto merged = own;
  for (const auto& [line, count] : foreign) merged[line] += count;
  auto now = lines_of(mine);
  for (const auto& [line, count] : merged) CHECK(now[line] == count);
  CHECK(mine.count(RecordKind::log_entry) == 5);  // with the import's own
  CHECK(in_g(mine.stock_of({RecordKind::bag, "A-01"}).value()) == Approx(14 * 480));
  CHECK(in_g(mine.stock_of({RecordKind::bag, "A-02"}).value()) == Approx(20 * 480));
  CHECK(check_content(mine).empty());

  SECTION("Taken in again it adds nothing") {
    const std::string after = all_of_it(mine);
    const auto again = import_records(mine, records_in(other), "import", {.replace = replace, .catalogue = nullptr});
    REQUIRE(again);
    CHECK_FALSE(again->step);
    CHECK(again->preview.notes.empty());
    CHECK(all_of_it(mine) == after);
  }
  SECTION("Nor where a line was corrected since") {
    const auto came = mine.find(Id<LogEntry>{"L-04"});
    REQUIRE(came);
    LogEntry put_right = came->record;
    put_right.text += ", on the shaded bench";
    REQUIRE(mine.replace(*came, put_right, "log entry"));
    const std::string after = all_of_it(mine);
    REQUIRE(import_records(mine, records_in(other), "import", {.replace = replace, .catalogue = nullptr}));
    CHECK(all_of_it(mine) == after);
  }
  SECTION("One undo takes it back, one redo brings it again") {
    const std::string after = all_of_it(mine);
    REQUIRE(mine.undo());
    CHECK(all_of_it(mine) == before);
    REQUIRE(mine.redo());
    CHECK(all_of_it(mine) == after);
    REQUIRE(mine.undo());
    REQUIRE(import_records(mine, records_in(other), "import", {.replace = replace, .catalogue = nullptr}));
    now = lines_of(mine);
    for (const auto& [line, count] : merged) CHECK(now[line] == count);
    CHECK(check_content(mine).empty());
  }
  SECTION("What goes back to where it came from is known there by what it says") {
    OpenWorkbook back = opened(folder.file(swapped ? "one.gritwright" : "two.gritwright"), hand.options());
    const auto returned = import_records(back, records_in(all_of_it(mine)), "import", {.replace = replace, .catalogue = nullptr});
    REQUIRE(returned);
    CHECK(returned->preview.count(Arrival::already_there) == 4);
    now = lines_of(back);
    for (const auto& [line, count] : merged) CHECK(now[line] == count);
    CHECK(in_g(back.stock_of({RecordKind::bag, "A-01"}).value()) == Approx(14 * 480));
    CHECK(in_g(back.stock_of({RecordKind::bag, "A-02"}).value()) == Approx(20 * 480));
  }
}

TEST_CASE("Two lines of a ledger that say the same are two, and each stands for one of those here", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook one = grower(folder.file("one.gritwright"), hand, "A-01", 14, "buds late");
  OpenWorkbook two = grower(folder.file("two.gritwright"), hand, "A-02", 20, "leaves drop");
  for (int turn = 0; turn < 2; ++turn)
    REQUIRE(enter_stock(two, {RecordKind::bag, "A-02"}, StockReason::spilt, {mass_g(100), {}, {}, {}}, "2026-03-02"));
  const std::string other = all_of_it(two);
  REQUIRE(import_records(one, records_in(other), "import"));
  CHECK(in_g(one.stock_of({RecordKind::bag, "A-02"}).value()) == Approx(20 * 480 - 200));
  REQUIRE(import_records(one, records_in(other), "import"));
  CHECK(one.count(RecordKind::stock_entry) == 4);
}

TEST_CASE("An older copy of the own record leaves a line of the ledger that was corrected since as it is, and tells it", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = grower(folder.file(), hand, "A-01", 14, "buds late");
  const std::string older = all_of_it(workbook);
  const auto receipt = workbook.find(Id<StockEntry>{"S-01"});
  REQUIRE(receipt);
  StockEntry corrected = receipt->record;
  corrected.change = mass_g(6000);
  corrected.density_used = bulk_g_l(6000 / 14.0);
  REQUIRE(workbook.replace(*receipt, corrected, "receipt"));
  const auto imported = import_records(workbook, records_in(older), "import", {.replace = true, .catalogue = nullptr});
  REQUIRE(imported);
  CHECK_FALSE(imported->step);
  CHECK(told(imported->preview, "import.line-kept") == 1);
  CHECK(in_g(workbook.stock_of({RecordKind::bag, "A-01"}).value()) == Approx(6000));
}

TEST_CASE("Hundreds of lines come in under other numbers without as many words", "[exchange]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook one = grower(folder.file("one.gritwright"), hand, "A-01", 14, "buds late");
  OpenWorkbook two = grower(folder.file("two.gritwright"), hand, "A-02", 20, "leaves drop");
  for (int i = 0; i < 200; ++i) {
    REQUIRE(one.apply({"log entry", {}, LogEntry{"2026-03-01", "", LogSort::event, "here " + std::to_string(i), {}}, {}}));
    REQUIRE(two.apply({"log entry", {}, LogEntry{"2026-03-01", "", LogSort::event, "there " + std::to_string(i), {}}, {}}));
  }
  const auto imported = import_records(one, records_in(all_of_it(two)), "import");
  REQUIRE(imported);
  CHECK(imported->preview.notes.size() == 6);
  CHECK(imported->preview.notes.back().code == "import.renumbered-more");
  CHECK(std::get<double>(imported->preview.notes.back().facts.at("count")) == 198);  // 202 lines of the log, one of the ledger, five named
  CHECK(one.count(RecordKind::log_entry) == 405);
}

TEST_CASE("A number too long to be counted costs no line its place", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = grower(folder.file(), hand, "A-01", 14, "buds late");
  const LogEntry far{"2026-03-01", "", LogSort::event, "far", {}};
  const LogEntry other{"2026-03-01", "", LogSort::event, "other", {}};
  REQUIRE(import_records(workbook, {{{RecordKind::log_entry, "L-999999999"}, far, {}}, {{RecordKind::log_entry, "L-01"}, other, {}}}, "import"));
  for (int i = 0; i < 3; ++i) REQUIRE(workbook.apply({"log entry", {}, LogEntry{"2026-03-01", "", LogSort::event, "after", {}}, {}}));
  CHECK(workbook.count(RecordKind::log_entry) == 7);  // two at first, two that came in, three
  CHECK(check_content(workbook).empty());
}

TEST_CASE("A material that is neither in the catalogue nor in use here is told once, and comes in", "[exchange]") {
  const Folder folder;
  Hand hand;
  const auto catalogue = read_catalogue(GRITWRIGHT_SOURCE_DIR "/materials");
  REQUIRE(catalogue);
  const ImportOptions options{.replace = false, .catalogue = &catalogue->catalogue};
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const auto list = read_records_csv(RecordKind::bag, "id,material,lot\nX-01,akadma,lot 1\nX-02,Akadma,lot 2\nP-01,pumice,lot 3\n", "bags.csv");
  REQUIRE(list);
  const auto imported = import_records(workbook, list->records, "list", options);
  REQUIRE(imported);
  REQUIRE(imported->preview.notes.size() == 1);
  const Note& note = imported->preview.notes.front();
  CHECK(note.code == "import.material-unknown");
  CHECK(note.where == "X-01");
  CHECK(std::get<std::string>(note.facts.at("nearest")).starts_with("akadama"));
  CHECK(workbook.count(RecordKind::bag) == 3);
  const auto more = read_records_csv(RecordKind::bag, "id,material,lot\nX-03,akadma,lot 4\n", "bags.csv");
  REQUIRE(more);
  CHECK(preview_import(workbook, more->records, options).notes.empty());
}

TEST_CASE("A record that can't be read is left out of what is written and told, and comes back from an older copy", "[exchange][refuses]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = grower(folder.file(), hand, "A-01", 14, "buds late");
  REQUIRE(receive(workbook, akadama_bag("another"), "A-02"));
  const std::string whole = all_of_it(workbook);
  {
    SQLite::Database file(folder.file().string(), SQLite::OPEN_READWRITE);
    REQUIRE(file.exec("UPDATE record SET body = substr(body, 1, 30) WHERE kind = 'bag' AND id = 'A-01'") == 1);
  }
  std::ostringstream out;
  const Problems left_out = export_workbook(workbook, out);
  REQUIRE(left_out.size() == 1);
  CHECK(left_out.front().code == "export.left-out");
  CHECK(std::get<std::string>(left_out.front().facts.at("id")) == "A-01");
  CHECK(records_in(out.str()).size() == records_in(whole).size() - 1);
  const RecordsToExport bags = records_to_export(workbook, RecordKind::bag);
  CHECK(bags.left_out == left_out);
  REQUIRE(bags.records.size() == 1);
  CHECK(bags.records.front().ref.id == "A-02");
  REQUIRE(import_records(workbook, records_in(whole), "older copy", {.replace = true, .catalogue = nullptr}));
  CHECK(check_content(workbook).empty());
  CHECK(workbook.find(Id<Bag>{"A-01"})->record.lot == "lot of A-01");
}

TEST_CASE("The check tells what would be refused today with its code and facts, so that it can be said in words", "[workbook]") {
  const Folder folder;
  Hand hand;
  const OpenWorkbook workbook = grower(folder.file(), hand, "A-01", 14, "buds late");
  {
    SQLite::Database file(folder.file().string(), SQLite::OPEN_READWRITE);
    REQUIRE(file.exec("UPDATE record SET body = json_set(body, '$.count', -1) WHERE kind = 'bag'") == 1);
  }
  CHECK(check_content(workbook).empty());
  const Notes notes = check_sense(workbook);
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().where == "bag:A-01/count");
  CHECK(std::get<std::string>(notes.front().facts.at("fault")) == "bag.count-below-one");
  CHECK(std::get<double>(notes.front().facts.at("count")) == -1);
}
