#include <sstream>
#include <thread>

#include "gritwright/formats/record_csv.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "other_program.hpp"
#include "support/paths.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

std::string exported(const OpenWorkbook& workbook) {
  std::ostringstream text;
  REQUIRE(export_workbook(workbook, text).empty());
  return text.str();
}

std::vector<IdentifiedRecord> read(const std::string& text) {
  auto records = read_exchange(text, "exchange.json");
  INFO((records.ok() ? "" : records.problems().front().code + " " + records.problems().front().where.pointer));
  REQUIRE(records);
  return std::move(records).value();
}

std::vector<IdentifiedRecord> bags_of(const std::string& csv) {
  auto list = read_records_csv(RecordKind::bag, csv, "bags.csv");
  REQUIRE(list);
  REQUIRE(list->problems.empty());
  return list->records;
}

constexpr const char* three_bags =
    "material;lot;volume_l;received;note\n"
    "kanuma;lot 7;14,5;2026-02-01;\n"
    "pumice;lot 3;20;2026-02-02;\"fine; dusty\"\n"
    "pumice;lot 3;20;2026-02-02;\"fine; dusty\"\n";

}  // namespace

TEST_CASE("A whole workbook goes to JSON and comes back the same", "[exchange][roundtrip]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook one = opened(folder.file("one.gritwright"), hand.options());
  for (int i = 0; i < 5; ++i) REQUIRE(receive(one, akadama_bag("lot " + std::to_string(i))));
  Tree tree;
  tree.name = "\"Robert'); DROP TABLE record;--\" \xF0\x9F\x8C\xB2 \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D";
  REQUIRE(one.add(tree, "tree"));
  const std::string text = exported(one);
  OpenWorkbook two = opened(folder.file("two.gritwright"), hand.options());
  const auto imported = import_records(two, read(text), "import");
  REQUIRE(imported);
  for (const RecordKind kind : record_kinds) {
    if (kind == RecordKind::log_entry) continue;  // the import has an entry of its own
    const auto before = one.all_of(kind);
    const auto after = two.all_of(kind);
    REQUIRE(before.size() == after.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
      CHECK(before[i].ref == after[i].ref);
      CHECK(before[i].record == after[i].record);
    }
  }
}

TEST_CASE("Importing twice adds nothing twice", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  SECTION("a list without ids, in which two bags are alike") {
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    CHECK(workbook.count(RecordKind::bag) == 3);
    const auto second = import_records(workbook, bags_of(three_bags), "import");
    REQUIRE(second);
    CHECK(second->preview.count(Arrival::already_there) == 3);
    CHECK_FALSE(second->step);
    CHECK(workbook.count(RecordKind::bag) == 3);
    CHECK(workbook.count(RecordKind::log_entry) == 1);
  }
  SECTION("even when a record was changed meanwhile") {
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    const auto bag = workbook.all<Bag>().front();
    Bag changed = bag.record;
    changed.note = "opened";
    REQUIRE(workbook.replace(bag, changed, "note"));
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    CHECK(workbook.count(RecordKind::bag) == 3);
  }
  SECTION("a whole workbook into itself") {
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    const std::string text = exported(workbook);
    const auto again = import_records(workbook, read(text), "import");
    REQUIRE(again);
    CHECK(again->preview.count(Arrival::already_there) == again->preview.lines.size());
    CHECK(exported(workbook) == text);
  }
  SECTION("but what was undone comes in again") {
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    const std::string text = exported(workbook);
    REQUIRE(workbook.undo());
    CHECK(workbook.count(RecordKind::bag) == 0);
    REQUIRE(import_records(workbook, bags_of(three_bags), "import"));
    CHECK(workbook.count(RecordKind::bag) == 3);
    REQUIRE(workbook.undo());
    const auto by_id = import_records(workbook, read(text), "import");
    REQUIRE(by_id);
    CHECK(by_id->preview.count(Arrival::comes_back) == 4);
    CHECK(workbook.count(RecordKind::bag) == 3);
  }
}

TEST_CASE("A record that differs under the same id is refused, or replaced when asked", "[exchange][refuses]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.add(akadama_bag("here"), "bag", "A-01"));
  const std::vector<IdentifiedRecord> incoming{{{RecordKind::bag, "A-01"}, akadama_bag("there"), {}},
                                               {{RecordKind::bag, "A-02"}, akadama_bag("new"), {}}};
  CHECK(code_of(import_records(workbook, incoming, "import")) == "import.id-differs");
  CHECK(workbook.count(RecordKind::bag) == 1);
  const std::vector<IdentifiedRecord> twice{incoming[1], incoming[1]};
  CHECK(code_of(import_records(workbook, twice, "import")) == "import.id-twice");
  REQUIRE(import_records(workbook, incoming, "import", {.replace = true, .catalogue = nullptr}));
  CHECK(workbook.find(Id<Bag>{"A-01"})->record.lot == "there");
  REQUIRE(workbook.undo());
  CHECK(workbook.find(Id<Bag>{"A-01"})->record.lot == "here");
  CHECK(workbook.count(RecordKind::bag) == 1);
}

TEST_CASE("A list that was written from the record is here already when it comes back, though the records hold more than it does", "[exchange][roundtrip]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(import_records(workbook, read(bytes_of(GRITWRIGHT_SOURCE_DIR "/demo-data/nursery.json")), "nursery"));
  for (const RecordKind kind : {RecordKind::bag, RecordKind::sieve_test, RecordKind::container, RecordKind::tree}) {
    std::vector<IdentifiedRecord> records;
    for (StoredRecord& stored : workbook.all_of(kind)) records.push_back({stored.ref, std::move(stored.record), {}});
    const auto list = read_records_csv(kind, write_records_csv(kind, records), "list.csv");
    REQUIRE(list);
    CHECK(list->problems.empty());
    CHECK(list->records.size() == records.size());
    const ImportPreview preview = preview_import(workbook, list->records);
    INFO(kind_name(kind));
    CHECK(preview.problems.empty());
    CHECK(preview.count(Arrival::already_there) == records.size());
  }
}

TEST_CASE("A list changes what it has columns for, and a day of a history, and leaves all else of a record", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Tree tree;
  tree.name = "old pine";
  tree.species = "Pinus thunbergii";
  tree.note = "by the gate";
  tree.conditions = {{"2025-05-01", Condition::thriving, "new shoots"}, {"2026-02-01", Condition::watch, "needles yellow"}};
  for (const char* day : {"2021-03-01", "2025-03-01"}) {
    tree.repottings.emplace_back();
    tree.repottings.back().day = day;
    tree.repottings.back().grain = {{RecordKind::bag, "A-01"}};
    tree.repottings.back().plan_name = "B";
  }
  Bag bag = akadama_bag("lot 1");
  bag.crumbling = Crumbling{0.2, 1, 10};
  REQUIRE(workbook.add(bag, "bag", "A-01"));
  REQUIRE(workbook.add(tree, "tree", "TR-01"));
  const auto take_in = [&](RecordKind kind, const std::string& csv) {
    const auto list = read_records_csv(kind, csv, "list.csv");
    REQUIRE(list);
    REQUIRE(list->problems.empty());
    const auto imported = import_records(workbook, list->records, "list", {.replace = true, .catalogue = nullptr});
    REQUIRE(imported);
    return imported->preview.lines.front().arrival;
  };
  const std::string heading = "id,name,species,condition,condition_day,note\n";
  CHECK(take_in(RecordKind::tree, heading + "TR-01,old pine,Pinus thunbergii,thriving,2025-05-01,by the gate\n") == Arrival::already_there);
  CHECK(take_in(RecordKind::tree, heading + "TR-01,old pine,Pinus thunbergii,sick,2026-03-10,\n") == Arrival::differs);
  CHECK(take_in(RecordKind::tree, heading + "TR-01,old pine,Pinus thunbergii,thriving,2025-09-01,\n") == Arrival::differs);
  Tree expected = tree;
  expected.note.clear();
  expected.conditions.push_back({"2026-03-10", Condition::sick, ""});
  expected.conditions.insert(expected.conditions.begin() + 1, {"2025-09-01", Condition::thriving, ""});
  CHECK(workbook.find(Id<Tree>{"TR-01"})->record == expected);

  CHECK(take_in(RecordKind::bag, "id,material,price,currency\nA-01,akadama,23.5,EUR\n") == Arrival::differs);
  bag.price = Price{23.5, "EUR"};
  CHECK(workbook.find(Id<Bag>{"A-01"})->record == bag);
  CHECK(take_in(RecordKind::bag, "id,material,price,currency\nA-01,akadama,,\n") == Arrival::differs);
  bag.price.reset();
  CHECK(workbook.find(Id<Bag>{"A-01"})->record == bag);

  RecordedContainer bowl;
  bowl.container.name = "bowl";
  bowl.container.shape = Shape::round;
  bowl.container.rim = {length_cm(20), length_cm(20)};
  bowl.container.depth = depth_cm(7);
  bowl.container.bottom_layer = BottomLayer{depth_cm(1), {}};
  REQUIRE(workbook.add(bowl, "pot", "POT-01"));
  CHECK(take_in(RecordKind::container, "id,name,shape,length_cm,depth_cm\nPOT-01,bowl,round,24,7\n") == Arrival::differs);
  bowl.container.rim = {length_cm(24), length_cm(24)};
  CHECK(workbook.find(Id<RecordedContainer>{"POT-01"})->record == bowl);
}

TEST_CASE("A list of sieves changes those and what it has columns for, and leaves all else of a sieve test", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  RecordedSieveTest test;
  test.of = RecordRef{RecordKind::bag, "K-07"};
  test.replicate = 2;
  test.sieve_set = Id<SieveSet>{"SET-01"};
  test.note = "damp day";
  test.test.material = "akadama";
  test.test.date = "2026-02-03";
  test.test.dry_mass = mass_g(250);
  test.test.moisture = Moisture(0.02);
  test.test.basis = PercentBasis::recovered;
  test.test.resolution = mass_g(0.5);
  test.test.particle_density = particle_g_l(1500);
  test.test.bulk_density = bulk_g_l(620);
  test.test.rows = {{aperture_mm(4), mass_g(100), MassShare(0.25)}, {aperture_mm(2), mass_g(90), {}}};
  test.test.pan = mass_g(20);
  test.test.pan_crumbs = MassShare(0.5);
  REQUIRE(workbook.add(test, "sieve test", "ST-01"));
  const auto take_in = [&](const std::string& csv) {
    const auto list = read_records_csv(RecordKind::sieve_test, csv, "list.csv");
    REQUIRE(list);
    REQUIRE(list->problems.empty());
    const auto imported = import_records(workbook, list->records, "list", {.replace = true, .catalogue = nullptr});
    REQUIRE(imported);
    return imported->preview.lines.front().arrival;
  };
  const auto kept = [&] { return workbook.find(Id<RecordedSieveTest>{"ST-01"})->record; };
  CHECK(take_in("id,aperture_mm,retained_g\nST-01,4,100\nST-01,2,90\nST-01,pan,20\n") == Arrival::already_there);
  CHECK(take_in("id,aperture_mm,retained_g\nST-01,4,120\nST-01,2,80\nST-01,1,15\nST-01,pan,10\n") == Arrival::differs);
  test.test.rows = {{aperture_mm(4), mass_g(120), MassShare(0.25)}, {aperture_mm(2), mass_g(80), {}}, {aperture_mm(1), mass_g(15), {}}};
  test.test.pan = mass_g(10);
  CHECK(kept() == test);
  CHECK(take_in("id,note,dry_mass_g,aperture_mm,retained_g,crumbs_percent\nST-01,dry day,,4,120,\nST-01,,,2,80,10\nST-01,,,pan,10,\n") == Arrival::differs);
  test.note = "dry day";
  test.test.dry_mass.reset();
  test.test.rows = {{aperture_mm(4), mass_g(120), {}}, {aperture_mm(2), mass_g(80), MassShare(0.1)}};
  test.test.pan_crumbs = MassShare{};
  CHECK(kept() == test);
}

TEST_CASE("The width of a pot that is measured once follows its length, and that of another stays or is asked for", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  RecordedContainer tray;
  tray.container.name = "tray";
  tray.container.rim = {length_cm(30), length_cm(20)};
  tray.container.depth = depth_cm(7);
  RecordedContainer square = tray;
  square.container.rim = {length_cm(25), length_cm(25)};
  RecordedContainer bowl = tray;
  bowl.container.shape = Shape::round;
  bowl.container.rim = {length_cm(24), length_cm(24)};
  REQUIRE(workbook.add(tray, "pot", "POT-01"));
  REQUIRE(workbook.add(square, "pot", "POT-02"));
  REQUIRE(workbook.add(bowl, "pot", "POT-03"));
  const auto take_in = [&](const std::string& csv) -> std::string {
    const auto list = read_records_csv(RecordKind::container, csv, "list.csv");
    REQUIRE(list);
    if (!list->problems.empty()) return list->problems.front().code;
    const auto imported = import_records(workbook, list->records, "list", {.replace = true, .catalogue = nullptr});
    return imported ? "" : imported.problems().front().code;
  };
  const auto kept = [&](const char* id) { return workbook.find(Id<RecordedContainer>{id})->record; };

  const std::string sides = "id,name,shape,length_cm,width_cm,depth_cm\n";
  CHECK(take_in(sides + "POT-01,tray,rectangular,32,,7\n") == "key.missing");
  CHECK(take_in(sides + ",new tray,rectangular,32,,7\n") == "key.missing");
  CHECK(take_in(sides + "POT-03,tray,round,26,,7\n").empty());
  bowl.container.rim = {length_cm(26), length_cm(26)};
  CHECK(kept("POT-03") == bowl);

  const std::string length = "id,name,shape,length_cm,depth_cm\n";
  CHECK(take_in(length + "POT-01,tray,rectangular,32,7\nPOT-02,tray,rectangular,28,7\n").empty());
  tray.container.rim.length = length_cm(32);
  square.container.rim.length = length_cm(28);
  CHECK(kept("POT-01") == tray);
  CHECK(kept("POT-02") == square);
  CHECK(take_in(length + "POT-09,new tray,rectangular,32,7\n") == "key.missing");
  CHECK(take_in("id,name,length_cm,depth_cm\nPOT-03,tray,24,7\n").empty());
  bowl.container.rim = {length_cm(24), length_cm(24)};
  CHECK(kept("POT-03") == bowl);

  const std::string middle = "id,name,shape,length_cm,middle_length_cm,depth_cm\n";
  CHECK(take_in(middle + "POT-03,tray,drum,24,28,7\n").empty());
  RecordedContainer drum = bowl;
  drum.container.shape = Shape::drum;
  drum.container.middle = Section{length_cm(28), length_cm(28)};
  CHECK(kept("POT-03") == drum);
  CHECK(take_in(middle + "POT-03,tray,round,24,,7\n").empty());
  CHECK(kept("POT-03") == bowl);
  CHECK(workbook.count(RecordKind::container) == 3);
}

TEST_CASE("A preview says what would come in and writes nothing", "[exchange]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  RecordedSieveTest test;
  test.test.pan = mass_g(0);
  test.test.rows.push_back({aperture_mm(2), mass_g(10), {}});
  test.test.resolution = mass_g(0.1);
  test.of = RecordRef{RecordKind::bag, "Z-99"};
  const ImportPreview preview = preview_import(workbook, {{{RecordKind::sieve_test, ""}, test, {}}});
  CHECK(preview.count(Arrival::added) == 1);
  REQUIRE(preview.notes.size() == 1);
  CHECK(preview.notes.front().code == "import.names-unknown");
  CHECK(workbook.revision() == 0);
}

TEST_CASE("Two programs that take one list in at the same moment add it once", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  { const OpenWorkbook made = opened(folder.file(), hand.options()); }
  std::string list = "material,lot\n";
  for (int i = 0; i < 200; ++i) list += "pumice,lot " + std::to_string(i) + "\n";
  const auto records = bags_of(list);
  const auto take_in = [&] {
    auto workbook = OpenWorkbook::open(folder.file(), hand.options());
    if (!workbook) return 1;
    OpenWorkbook mine = std::move(workbook).value();
    return import_records(mine, records, "import") ? 0 : 2;
  };
  OtherProgram one(take_in);
  OtherProgram two(take_in);
  one.start();
  two.start();
  CHECK(one.finish() == 0);
  CHECK(two.finish() == 0);
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(workbook.count(RecordKind::bag) == 200);
  CHECK(workbook.count(RecordKind::log_entry) == 1);
}

TEST_CASE("Two imports of one list at the same moment add it once", "[exchange][law]") {
  const Folder folder;
  Hand hand;
  { const OpenWorkbook made = opened(folder.file(), hand.options()); }
  std::string list = "material,lot\n";
  for (int i = 0; i < 40; ++i) list += "pumice,lot " + std::to_string(i) + "\n";
  const auto records = bags_of(list);
  std::vector<std::string> codes(2);
  std::vector<std::thread> threads;
  for (std::size_t i = 0; i < codes.size(); ++i)
    threads.emplace_back([&, i] {
      auto workbook = OpenWorkbook::open(folder.file(), hand.options());
      if (!workbook) {
        codes[i] = code_of(workbook);
        return;
      }
      OpenWorkbook mine = std::move(workbook).value();
      codes[i] = code_of(import_records(mine, records, "import"));
    });
  for (std::thread& thread : threads) thread.join();
  CHECK(codes == std::vector<std::string>{"", ""});
  const OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(workbook.count(RecordKind::bag) == 40);
}

TEST_CASE("A row without a number gets one that no row of its list carries", "[exchange][regression]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const auto rows = bags_of(
      "id,material,lot\n"
      ",kanuma,first\n"
      "K-01,kanuma,second\n"
      "k-02,kanuma,third\n"
      ",kanuma,fourth\n");
  const auto imported = import_records(workbook, rows, "import");
  INFO((imported.ok() ? "" : imported.problems().front().code));
  REQUIRE(imported);
  REQUIRE(imported->preview.lines.size() == 4);
  CHECK(workbook.find(Id<Bag>{"K-01"})->record.lot == "second");
  CHECK(workbook.find(Id<Bag>{"K-02"})->record.lot == "third");
  CHECK(imported->preview.lines[0].record.ref.id == "K-03");
  CHECK(workbook.find(Id<Bag>{"K-03"})->record.lot == "first");
  CHECK(workbook.find(Id<Bag>{"K-04"})->record.lot == "fourth");
  // Nothing of the list is left when it is taken back, and it comes in once only.
  CHECK(import_records(workbook, rows, "again")->preview.count(Arrival::already_there) == 4);
}
