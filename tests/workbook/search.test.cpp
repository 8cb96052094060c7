#include "gritwright/workbook/search.hpp"

#include <algorithm>
#include <functional>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "gritwright/formats/record_csv.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

std::vector<std::string> found(const OpenWorkbook& workbook, SearchQuery query) {
  std::vector<std::string> refs;
  for (const RecordLine& line : search(workbook, query))
    if (line.ref.kind != RecordKind::log_entry) refs.push_back(ref_text(line.ref));
  std::ranges::sort(refs);
  return refs;
}
using Refs = std::vector<std::string>;

/// Two bags, a tree potted from one of them, and a mix.
struct Shelf {
  Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());

  Shelf() {
    Bag kanuma;
    kanuma.material = "kanuma";
    kanuma.lot = "Lot Größe 7";
    kanuma.received = "2025-11-15";
    kanuma.note = "smells of the cellar";
    REQUIRE(workbook.add(kanuma, "bag K-07", "K-07"));
    Bag pumice;
    pumice.material = "pumice";
    pumice.lot = "cellar shelf";
    pumice.received = "2026-01-20";
    REQUIRE(workbook.add(pumice, "bag P-03", "P-03"));
    Tree azalea;
    azalea.name = "white azalea";
    azalea.species = "Rhododendron indicum";
    azalea.repottings.push_back(Repotting{});
    azalea.repottings.back().day = "2026-02-10";
    azalea.repottings.back().grain = {{RecordKind::bag, "K-07"}};
    REQUIRE(workbook.add(azalea, "tree TR-01", "TR-01"));
  }
};

}  // namespace

TEST_CASE("Words and ids are found by their beginnings, whatever their capitals and accents", "[search]") {
  const Shelf shelf;
  CHECK(found(shelf.workbook, {.words = "cell"}) == Refs{"bag:K-07", "bag:P-03"});
  CHECK(found(shelf.workbook, {.words = "CELLAR smel"}) == Refs{"bag:K-07"});
  CHECK(found(shelf.workbook, {.words = "grosse"}).empty());
  CHECK(found(shelf.workbook, {.words = "größe"}) == Refs{"bag:K-07"});
  CHECK(found(shelf.workbook, {.words = "Große"}) == Refs{"bag:K-07"});
  CHECK(found(shelf.workbook, {.words = "k-07"}) == Refs{"bag:K-07"});
  CHECK(found(shelf.workbook, {.words = "\"the cellar\""}) == Refs{"bag:K-07"});
  CHECK(found(shelf.workbook, {.words = "\"cellar the\""}).empty());
  CHECK(found(shelf.workbook, {.words = "rhodo"}) == Refs{"tree:TR-01"});
}

TEST_CASE("A search is narrowed to days, a material, a tree and kinds", "[search]") {
  const Shelf shelf;
  CHECK(found(shelf.workbook, {.from_day = "2026-01-01", .to_day = "2026-01-31"}) == Refs{"bag:P-03"});
  CHECK(found(shelf.workbook, {.from_day = "2026-01-21"}) == Refs{"tree:TR-01"});
  CHECK(found(shelf.workbook, {.material = "kanuma"}) == Refs{"bag:K-07", "tree:TR-01"});
  CHECK(found(shelf.workbook, {.tree = Id<Tree>{"TR-01"}}) == Refs{"tree:TR-01"});
  CHECK(found(shelf.workbook, {.words = "cellar", .kinds = {RecordKind::tree}}).empty());
  CHECK(search(shelf.workbook, {.tree = Id<Tree>{"TR-01"}}).size() == 2);  // the tree and the entry about it
}

TEST_CASE("Whatever is typed into a search is searched for, and never run", "[search][refuses]") {
  const Shelf shelf;
  for (const char* typed : {"\"", "\"\"", "'", "a\"b", "NEAR(", "kanuma OR pumice", "*", "-cellar", "words:cellar", "^", "{}", "k-07\" OR \"p", ");DROP TABLE record;--"})
    CHECK_NOTHROW(search(shelf.workbook, {.words = typed}));
  CHECK(found(shelf.workbook, {.words = "kanuma OR pumice"}).empty());
  CHECK(found(shelf.workbook, {.material = "x' OR '1'='1"}).empty());
  CHECK(shelf.workbook.count(RecordKind::bag) == 2);
}

TEST_CASE("What was deleted is no longer found, and is again after undo", "[search]") {
  Shelf shelf;
  REQUIRE(shelf.workbook.remove(*shelf.workbook.find(Id<Bag>{"P-03"}), "bag P-03"));
  CHECK(found(shelf.workbook, {.words = "shelf"}).empty());
  REQUIRE(shelf.workbook.undo());
  CHECK(found(shelf.workbook, {.words = "shelf"}) == Refs{"bag:P-03"});
}

TEST_CASE("Names of ten thousand signs, emoji, right-to-left, quotes and SQL stay what they were on every way out and in", "[workbook][roundtrip]") {
  std::string endless;
  // Ten signs of one to four bytes.
  for (int i = 0; i < 1'000; ++i) endless += "ümläut \xE6\xA3\xAE\xF0\x9F\x8C\xB2x";
  const std::vector<std::string> names{endless,
                                       "\xF0\x9F\x8C\xB2\xF0\x9F\xAA\xB4 pine \xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x8C\xBE",
                                       "\xD7\xA2\xD7\xA5 \xD7\x90\xD7\x95\xD7\xA8\xD7\x9F \xE2\x80\xAE" "abc\xE2\x80\xAC",
                                       "the \"old\" 'one', ; \\ / | \t tab",
                                       "Robert'); DROP TABLE record;--",
                                       "=HYPERLINK(\"x\")",
                                       "+1", "-1", "@home", "'=x", "''", "line\nbreak", "100 %", "a/b~c", "NULL", "%s%n"};
  const Folder folder, other;
  Hand hand;
  std::vector<IdentifiedRecord> trees;
  {
    OpenWorkbook workbook = opened(folder.file(), hand.options());
    for (const std::string& name : names) {
      Tree tree;
      tree.name = name;
      tree.species = name;
      tree.note = name;
      const auto id = workbook.add(tree, name, {});
      INFO(name);
      REQUIRE(id);
      CHECK(workbook.undoable()->label == name);
      REQUIRE(workbook.undo());
      REQUIRE(workbook.redo());
    }
  }
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  CHECK(check_content(workbook).empty());
  const auto kept = workbook.all<Tree>();
  REQUIRE(kept.size() == names.size());
  for (std::size_t i = 0; i < names.size(); ++i) {
    INFO(names[i]);
    CHECK(kept[i].record.name == names[i]);
    CHECK(workbook.list(RecordKind::tree, {names[i], {}, {}, {}}).size() == 1);
    trees.push_back({ref_to(kept[i].id), kept[i].record, {}});
  }
  CHECK(found(workbook, {.words = "\xF0\x9F\x8C\xB2 pine"}).size() == 1);
  CHECK(found(workbook, {.words = "\xD7\x90\xD7\x95\xD7\xA8\xD7\x9F"}).size() == 1);
  CHECK(found(workbook, {.words = "robert drop"}).size() == 1);

  std::ostringstream json;
  REQUIRE(export_workbook(workbook, json).empty());
  const auto read = read_exchange(json.str(), "file");
  REQUIRE(read);
  OpenWorkbook copy = opened(other.file(), hand.options());
  REQUIRE(import_records(copy, *read, "import"));
  for (const auto& tree : kept) CHECK(copy.find(tree.id)->record == tree.record);

  const auto list = read_records_csv(RecordKind::tree, write_records_csv(RecordKind::tree, trees), "file");
  REQUIRE(list);
  CHECK(list->problems.empty());
  REQUIRE(list->records.size() == trees.size());
  for (std::size_t i = 0; i < trees.size(); ++i) {
    INFO(names[i]);
    CHECK(std::get<Tree>(list->records[i].record).name == names[i]);
  }
}

TEST_CASE("A list of records says how many it holds and where one stands, read in pages and narrowed or not", "[search]") {
  Shelf shelf;
  for (int i = 0; i < 25; ++i) {
    Bag bag;
    bag.material = i % 2 == 0 ? "pumice" : "akadama";
    bag.lot = std::string("row ").append(std::to_string(i));
    bag.received = i < 10 ? "2026-03-01" : "2026-04-01";
    REQUIRE(shelf.workbook.count(RecordKind::bag) == static_cast<std::size_t>(2 + i));
    REQUIRE(shelf.workbook.add(bag, "bag"));
  }
  ListFilter all;
  ListFilter april;
  april.from_day = "2026-04-01";
  ListFilter cellar;
  cellar.words = "cell";
  ListFilter both = april;
  both.words = "row";
  both.subject = "pumice";
  for (ListFilter filter : {all, april, cellar, both}) {
    const std::vector<RecordLine> whole = shelf.workbook.list(RecordKind::bag, filter);
    CHECK(shelf.workbook.count(RecordKind::bag, filter) == whole.size());
    std::vector<RecordRef> paged;
    filter.limit = 4;
    for (filter.offset = 0; filter.offset < whole.size(); filter.offset += 4) {
      for (const RecordLine& line : shelf.workbook.list(RecordKind::bag, filter)) paged.push_back(line.ref);
    }
    REQUIRE(paged.size() == whole.size());
    for (std::size_t i = 0; i < whole.size(); ++i) {
      CHECK(paged[i] == whole[i].ref);
      CHECK(shelf.workbook.place_in_list(whole[i].ref, filter) == i);
    }
  }
  CHECK(shelf.workbook.list(RecordKind::bag, cellar).size() == 2);
  CHECK_FALSE(shelf.workbook.place_in_list({RecordKind::bag, "K-07"}, april));
  CHECK_FALSE(shelf.workbook.place_in_list({RecordKind::bag, "X-99"}));
}

TEST_CASE("However a search is narrowed, to few records or to many, it finds what both find by themselves", "[search][law]") {
  Shelf shelf;
  // More of the one than have their words indexed apart, fewer of the other.
  std::vector<IdentifiedRecord> bags;
  for (int i = 0; i < 4'300; ++i) {
    Bag bag;
    bag.material = i % 50 == 0 ? "akadama" : "pumice";
    bag.lot = std::string("row ").append(std::to_string(i));
    bag.note = i % 3 == 0 ? "tub of the shed" : "Schüssel";
    bag.received = i % 2 == 0 ? "2026-03-01" : "2026-04-01";
    bags.push_back({{RecordKind::bag, std::string("B-").append(std::to_string(10'000 + i))}, Record(std::move(bag)), {}});
  }
  REQUIRE(import_records(shelf.workbook, bags, "a shed"));
  const auto found_in_order = [&](SearchQuery query) {
    query.limit = 1'000'000;
    std::vector<RecordRef> refs;
    for (const RecordLine& line : search(shelf.workbook, query)) refs.push_back(line.ref);
    return refs;
  };
  const SearchQuery narrowings[] = {{.material = "pumice"},
                                    {.material = "akadama"},
                                    {.from_day = "2026-04-01"},
                                    {.from_day = "2026-03-01", .to_day = "2026-03-31", .material = "akadama"},
                                    {.kinds = {RecordKind::bag}},
                                    {.kinds = {RecordKind::tree, RecordKind::log_entry}},
                                    {.tree = Id<Tree>{"TR-01"}}};
  for (const SearchQuery& narrowing : narrowings) {
    const std::vector<RecordRef> left = found_in_order(narrowing);
    REQUIRE_FALSE(left.empty());
    const std::set<RecordRef> all(left.begin(), left.end());
    for (const char* typed : {"t", "tub", "row 12", "schussel", "B-1", "azalea", "xylophone"}) {
      INFO(typed);
      std::vector<RecordRef> expected = found_in_order({.words = typed});
      std::erase_if(expected, [&](const RecordRef& ref) { return !all.contains(ref); });
      SearchQuery both = narrowing;
      both.words = typed;
      CHECK(found_in_order(both) == expected);
    }
  }
  // What comes in after a narrowing was kept is found through it.
  Bag late;
  late.material = "akadama";
  late.note = "xylophone";
  REQUIRE(shelf.workbook.add(late, "a late bag"));
  CHECK(found_in_order({.words = "xylo", .material = "akadama"}).size() == 1);
}

TEST_CASE("However many searches were typed before, each finds what it finds in a window just opened", "[search][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const std::vector<std::string> words{"frost", "shade", "roots", "moss", "dust", "lot"};
  for (std::size_t i = 0; i < 40; ++i) {
    Bag bag;
    bag.material = i % 2 == 0 ? "pumice" : "akadama";
    bag.note = words[i % words.size()] + " " + words[i / 3 % words.size()];
    REQUIRE(workbook.add(bag, "bag", "B-" + std::to_string(100 + i)));
  }
  const auto ids = [](const OpenWorkbook& of, const ListFilter& filter) {
    std::vector<std::string> all;
    for (const RecordLine& line : of.list(RecordKind::bag, filter)) all.push_back(line.ref.id);
    return all;
  };
  std::size_t hits = 0;
  for (int round = 0; round < 2; ++round)
    for (const std::string& word : words)
      for (std::size_t letters = 1; letters <= word.size(); ++letters)
        for (const char* material : {"", "pumice", "akadama"}) {
          ListFilter filter;
          filter.words = word.substr(0, letters);
          if (*material != '\0') filter.subject = material;
          const std::vector<std::string> all = ids(workbook, filter);
          hits += all.size();
          CHECK(workbook.count(RecordKind::bag, filter) == all.size());
          if (round == 1) CHECK(all == ids(opened(folder.file(), hand.options()), filter));
        }
  CHECK(hits > 0);
}

TEST_CASE("By day the newest day stands first and of one day what was written last, however the list is narrowed and paged", "[search]") {
  Shelf shelf;
  const char* const days[] = {"2026-03-02", "2024-11-30", "2026-03-02", "2025-06-01", "2024-11-30"};
  for (int i = 0; i < 25; ++i) {
    LogEntry entry;
    entry.day = days[i % 5];
    entry.sort = i % 3 == 0 ? LogSort::bookkeeping : LogSort::observation;
    entry.text = std::string(i % 2 == 0 ? "rain " : "sun ").append(std::to_string(i));
    if (i % 4 == 0) entry.about.push_back({RecordKind::bag, "P-03"});
    REQUIRE(shelf.workbook.add(entry, "line"));
  }
  ListFilter rain, about, told, late, both;
  rain.words = "rain";
  about.about = RecordRef{RecordKind::bag, "P-03"};
  told.without_small = true;
  late.from_day = "2025-01-01";
  both = about;
  both.words = "rain";
  for (ListFilter filter : {ListFilter{}, rain, about, told, late, both}) {
    std::vector<RecordLine> expected = shelf.workbook.list(RecordKind::log_entry, filter);
    REQUIRE(expected.size() > 2);
    // As written they stand newest first already: a stable sort leaves those of one day so.
    std::ranges::stable_sort(expected, std::ranges::greater{}, &RecordLine::day);
    filter.by_day = true;
    CHECK(shelf.workbook.count(RecordKind::log_entry, filter) == expected.size());
    filter.limit = 4;
    std::vector<RecordRef> paged;
    for (filter.offset = 0; filter.offset < expected.size(); filter.offset += 4)
      for (const RecordLine& line : shelf.workbook.list(RecordKind::log_entry, filter)) paged.push_back(line.ref);
    REQUIRE(paged.size() == expected.size());
    for (std::size_t i = 0; i < paged.size(); ++i) {
      CHECK(paged[i] == expected[i].ref);
      CHECK(shelf.workbook.place_in_list(expected[i].ref, filter) == i);
    }
  }
  // What is written meanwhile takes its place too.
  rain.by_day = true;
  LogEntry old;
  old.day = "2023-01-01";
  old.sort = LogSort::observation;
  old.text = "rain at last";
  REQUIRE(shelf.workbook.add(old, "line"));
  CHECK(shelf.workbook.list(RecordKind::log_entry, rain).back().title == "rain at last");
  REQUIRE(shelf.workbook.undo());
  CHECK(shelf.workbook.list(RecordKind::log_entry, rain).back().day == "2024-11-30");
}

TEST_CASE("The log can be listed without the bookkeeping of single fields, and what comes or goes is an event", "[search]") {
  Shelf shelf;
  const auto bag = *shelf.workbook.find(Id<Bag>{"P-03"});
  Bag typed = bag.record;
  typed.note = "dusty";
  REQUIRE(shelf.workbook.replace(bag, typed, "note of bag P-03"));
  REQUIRE(shelf.workbook.remove(*shelf.workbook.find(Id<Bag>{"K-07"}), "bag K-07 removed"));
  ListFilter told;
  told.without_small = true;
  CHECK(shelf.workbook.count(RecordKind::log_entry) == 5);
  CHECK(shelf.workbook.count(RecordKind::log_entry, told) == 4);
  const auto lines = shelf.workbook.list(RecordKind::log_entry, told);
  REQUIRE(lines.size() == 4);
  CHECK(lines.front().title == "bag K-07 removed");
  CHECK(lines.front().subject == "event");
  for (std::size_t i = 0; i < lines.size(); ++i) CHECK(shelf.workbook.place_in_list(lines[i].ref, told) == i);
  for (ListFilter narrowed : {told, ListFilter{}}) {
    const std::size_t small = narrowed.without_small ? 0 : 1;
    narrowed.words = "p-03";
    CHECK(shelf.workbook.count(RecordKind::log_entry, narrowed) == 1 + small);
    narrowed.words.clear();
    narrowed.about = RecordRef{RecordKind::bag, "P-03"};
    CHECK(shelf.workbook.count(RecordKind::log_entry, narrowed) == 1 + small);
    CHECK(shelf.workbook.list(RecordKind::log_entry, narrowed).size() == 1 + small);
  }
  CHECK(check_content(shelf.workbook).empty());
}
