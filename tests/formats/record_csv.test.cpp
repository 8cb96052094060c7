#include <catch2/catch.hpp>
#include <string>

#include "gritwright/formats/csv_text.hpp"
#include "gritwright/formats/record_csv.hpp"
#include "gritwright/formats/record_file.hpp"

using namespace gritwright;

namespace {

std::string rows_told(const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems)
    text += std::to_string(problem.where.line.value_or(0)) + ":" + std::to_string(problem.where.column.value_or(0)) + " " + problem.code + "\n";
  return text;
}

CsvRecords read_list(RecordKind kind, const std::string& text) {
  auto list = read_records_csv(kind, text, "list.csv");
  INFO((list.ok() ? "" : rows_told(list.problems())));
  REQUIRE(list);
  return std::move(list).value();
}

template <class R>
R only(const CsvRecords& list) {
  INFO(rows_told(list.problems));
  REQUIRE(list.problems.empty());
  REQUIRE(list.records.size() == 1);
  return std::get<R>(list.records.front().record);
}

Bag full_bag() {
  Bag bag;
  bag.material = "kanuma";
  bag.lot = "=HYPERLINK(\"x\")";
  bag.count = 10;
  bag.printed_size = SizeBand{aperture_mm(3), aperture_mm(6)};
  bag.volume = loose_l(14.2);
  bag.mass_as_bagged = mass_kg(6.55);
  bag.moisture = Moisture(0.125);
  bag.price = Price{23.5, "EUR"};
  bag.received = "2026-02-01";
  bag.bulk_density = bulk_g_l(310);
  bag.reclaimed = Reclaimed{{"TR-01"}, Id<MixVersion>{"M-01/2"}, "2026-01-05"};
  bag.note = "two\nlines; \"quoted\", comma";
  return bag;
}

}  // namespace

TEST_CASE("A cell that a spreadsheet would run is made harmless, a negative number stays one", "[csv]") {
  CHECK(csv_cell("=1+1") == "'=1+1");
  CHECK(csv_cell("+49 30") == "'+49 30");
  CHECK(csv_cell("@home") == "'@home");
  CHECK(csv_cell("-a") == "'-a");
  CHECK(csv_cell("\tx").starts_with("\"'\t"));
  CHECK(csv_cell("-3.5") == "-3.5");
  CHECK(csv_cell("K-07") == "K-07");
  CHECK(csv_cell("a,b") == "\"a,b\"");
  CHECK(csv_cell("say \"x\"") == "\"say \"\"x\"\"\"");
  CHECK(csv_row({"a", "=b"}) == "a,'=b\r\n");
}

TEST_CASE("Bags, trees, containers and sieve tests go to a list and come back the same", "[csv][roundtrip]") {
  const auto back = [](RecordKind kind, const Record& record) {
    const CsvRecords list = read_list(kind, write_records_csv(kind, {{{kind, "X-01"}, record, {}}}));
    INFO(rows_told(list.problems));
    REQUIRE(list.records.size() == 1);
    CHECK(list.problems.empty());
    CHECK(list.records.front().ref.id == "X-01");
    CHECK(write_record(list.records.front().record) == write_record(record));
  };
  back(RecordKind::bag, full_bag());
  Tree tree;
  tree.name = "-5 pine";
  tree.species = "Pinus thunbergii";
  tree.group = SpeciesGroup::conifer;
  tree.since_year = 1998;
  tree.conditions.push_back({"2026-01-01", Condition::watch, ""});
  tree.window.ready_when = "as buds swell";
  Repotting repotting;
  repotting.day = "2025-03-01";
  repotting.mix = Id<MixVersion>{"M-01/1"};
  repotting.container = Id<RecordedContainer>{"POT-01"};
  tree.repottings.push_back(repotting);
  back(RecordKind::tree, tree);
  RecordedContainer container;
  container.container.name = "tray";
  container.container.rim = {length_cm(42), length_cm(30)};
  container.container.depth = depth_cm(6.5);
  container.container.mass = mass_kg(4.2);
  container.drain_holes = 4;
  container.given_away = true;
  back(RecordKind::container, container);
  RecordedSieveTest test;
  test.test.material = "kanuma";
  test.test.lot = "7";
  test.test.date = "2026-01-05";
  test.test.dry_mass = mass_g(102.4);
  test.test.resolution = mass_g(0.1);
  test.test.rows = {{aperture_mm(4), GrossTare{mass_g(250.5), mass_g(200)}, {}}, {aperture_mm(2), GrossTare{mass_g(240), mass_g(200)}, MassShare(0.05)}};
  test.test.pan = GrossTare{mass_g(211.1), mass_g(200)};
  test.of = RecordRef{RecordKind::bag, "K-07"};
  test.replicate = 2;
  test.note = "second";
  back(RecordKind::sieve_test, test);
  // A balance without an error; left empty, a resolution is that of the last digit.
  test.test.resolution = Mass{};
  back(RecordKind::sieve_test, test);
}

TEST_CASE("What a day loses goes to a list and comes back as it was typed, an empty cell as nothing typed", "[csv][roundtrip]") {
  RepottingDay typed;
  typed.day = "2026-03-14";
  typed.settling = Settling(0);
  typed.spill = Spill(0.07);
  RepottingDay plain;
  plain.day = "2026-03-15";
  const std::string text = write_records_csv(RecordKind::repotting_day, {{{RecordKind::repotting_day, "RD-01"}, typed, {}}, {{RecordKind::repotting_day, "RD-02"}, plain, {}}});
  INFO(text);
  const CsvRecords back = read_list(RecordKind::repotting_day, text);
  REQUIRE(back.problems.empty());
  REQUIRE(back.records.size() == 2);
  CHECK(std::get<RepottingDay>(back.records[0].record) == typed);
  CHECK(std::get<RepottingDay>(back.records[1].record) == plain);
}

TEST_CASE("Columns may stand in any order, with comma or point, and most may be missing", "[csv]") {
  const Bag bag = only<Bag>(read_list(RecordKind::bag, "\xEF\xBB\xBFlot;Volume_L;material\r\n7;14,5;kanuma\r\n;;\r\n"));
  CHECK(bag.lot == "7");
  CHECK(in_l(*bag.volume) == 14.5);
  const auto round = only<RecordedContainer>(read_list(RecordKind::container, "name,shape,length_cm,depth_cm\nbowl,round,20,7\n"));
  CHECK(in_cm(round.container.rim.width) == 20);
  const auto test = only<RecordedSieveTest>(read_list(RecordKind::sieve_test, "# lot: K-07\naperture_mm,retained_g\n2,30.5\npan,1.5\n"));
  CHECK(test.test.lot == "K-07");
}

TEST_CASE("Every faulty row is named with line and column, all its faults in one go, and the good rows stand", "[csv][refuses]") {
  const CsvRecords list = read_list(RecordKind::bag,
                               "material,lot,volume_l,received,count\n"
                               "kanuma,a,abc,2026-02-31,1\n"
                               "kanuma,b,14,2026-02-01,1\n"
                               ",c,-3,,0.5\n");
  CHECK(rows_told(list.problems) ==
        "2:10 number.not-a-number\n2:14 date.not-a-day\n"
        "4:1 key.missing\n4:8 record.not-whole\n");
  REQUIRE(list.records.size() == 1);
  CHECK(list.records.front().from.line == 3);
  const CsvRecords tests = read_list(RecordKind::sieve_test,
                                "material,dry_mass_g,aperture_mm,retained_g\n"
                                "kanuma,100,4,60\n,,4,38\n,,pan,2\n"
                                "pumice,100,4,98\n,,pan,2\n"
                                "pumice,100,4,98\n");
  CHECK(tests.records.size() == 1);
  CHECK(rows_told(tests.problems).find("3:") == 0);
  CHECK(rows_told(tests.problems).find("7:1 sieve-test.no-pan") != std::string::npos);
}

TEST_CASE("A list with an unknown column, a column twice or an open quote is refused", "[csv][refuses]") {
  CHECK(rows_told(read_list(RecordKind::bag, "material,colour\nkanuma,blue\n").problems) == "1:10 csv.unknown-column\n");
  CHECK(rows_told(read_records_csv(RecordKind::bag, "material,material\nkanuma,blue\n", "x").problems()) == "1:10 csv.duplicate-column\n");
  CHECK(rows_told(read_records_csv(RecordKind::bag, "material,lot\nkanuma,\"blue\n", "x").problems()) == "2:8 csv.quote-open\n");
  CHECK(rows_told(read_records_csv(RecordKind::bag, "material\nkanuma,blue\n", "x").problems()) == "2:8 csv.too-many-cells\n");
  CHECK_FALSE(read_records_csv(RecordKind::bag, "", "x").ok());
}

TEST_CASE("What a list holds is told by its columns", "[csv]") {
  CHECK(kind_of_csv("material,lot\n") == RecordKind::bag);
  CHECK(kind_of_csv("id;name;species\n") == RecordKind::tree);
  CHECK(kind_of_csv("name,shape,depth_cm\n") == RecordKind::container);
  CHECK(kind_of_csv("material,aperture_mm,retained_g\n") == RecordKind::sieve_test);
  CHECK_FALSE(kind_of_csv("a,b\n"));
}

TEST_CASE("A list of every kind of record has columns of its own beside the number", "[csv][law]") {
  for (const RecordKind kind : record_kinds) {
    INFO(kind_name(kind));
    CHECK(csv_columns(kind).size() > 1);
  }
}
