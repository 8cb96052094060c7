#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "run.hpp"
#include "support/temporary_folder.hpp"

using namespace gritwright::cli;

namespace {

namespace fs = std::filesystem;

/// A workbook in a folder that goes away with the test.
class Bench {
 public:
  [[nodiscard]] std::string file(const std::string& name) const { return (folder_.path() / name).string(); }
  Answer log(std::vector<std::string> arguments, const std::string& input = "") const {
    arguments.insert(arguments.begin(), "log");
    arguments.insert(arguments.end(), {"--workbook", file("nursery.gritwright")});
    return run(std::move(arguments), input);
  }

 private:
  gritwright::tests::TemporaryFolder folder_;
};

const std::string bags = "id,material,lot,received\nK-07,kanuma,lot 7,2026-02-01\nP-03,pumice,=lot 3,2026-02-02\n";
const std::string exchange = R"({"format":"gritwright/workbook/1","records":[
  {"kind":"batch","id":"BT-01","record":{"format":"gritwright/batch/1","day":"2026-03-01","parts":[{"source":"bag:K-07","volume_l":3}]}},
  {"kind":"tree","id":"TR-01","record":{"format":"gritwright/tree/1","name":"old pine","species":"pine",
    "conditions":[{"day":"2026-06-01","condition":"sick"}],
    "repottings":[{"day":"2026-03-02","grain":["batch:BT-01"],"filled_depth_cm":4,"plan_name":"A"}]}},
  {"kind":"tree","id":"TR-02","record":{"format":"gritwright/tree/1","name":"young pine","species":"pine",
    "repottings":[{"day":"2026-03-02","grain":["bag:P-03"],"filled_depth_cm":4}]}}]})";

}  // namespace

TEST_CASE("An entry is added, listed and shown with what it is about", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  const Answer added = bench.log({"add", "smells of the cellar", "--about", "K-07", "--day", "2026-03-01", "--observation"});
  CHECK(added.exit == Exit::done);
  CHECK(added.out == "Added L-02.\n");
  const Answer listed = bench.log({"list", "--json"});
  CHECK(listed.json()["records"].size() == 2);
  CHECK(listed.json()["records"][0]["title"] == "smells of the cellar");
  CHECK(bench.log({"show", "k-07"}).out.find("smells of the cellar") != std::string::npos);
  CHECK(bench.log({"list", "--words", "cell kan", "--json"}).json()["records"].empty());
  CHECK(bench.log({"list", "--words", "cell k-07", "--json"}).json()["records"].size() == 1);
  CHECK(bench.log({"list", "bag", "--csv"}).out.find("P-03,2026-02-02,pumice =lot 3") != std::string::npos);
}

TEST_CASE("A recall list comes as text, CSV and JSON, and a tree says what it stands in", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  REQUIRE(bench.log({"import", "-"}, exchange).exit == Exit::done);
  const auto json = bench.log({"trace", "K-07", "--json"}).json();
  CHECK(json["trees"].size() == 1);
  CHECK(json["trees"][0]["id"] == "TR-01");
  CHECK(json["trees"][0]["way"] == nlohmann::json{"bag:K-07", "batch:BT-01", "tree:TR-01"});
  CHECK(bench.log({"trace", "K-07"}).out.find("Trees that stand in it:") != std::string::npos);
  CHECK(bench.log({"trace", "K-07", "--csv"}).out.find("tree,TR-01,old pine,pine,sick,now,yes,2026-03-02,,,,,K-07 > BT-01 > TR-01") !=
        std::string::npos);
  const Answer back = bench.log({"trace", "TR-01"});
  CHECK(back.out.find("    bag:K-07") != std::string::npos);
  CHECK(bench.log({"trace", "TR-02", "--json"}).json()["steps"].size() == 2);
  const Answer shared = bench.log({"trace", "--shared"});
  CHECK(shared.out.find("1 of 1") != std::string::npos);
  CHECK(shared.out.find("Few trees prove nothing") != std::string::npos);
  CHECK(bench.log({"trace", "--shared", "TR-01", "TR-02", "--json"}).json()["traits"].size() >= 2);
}

TEST_CASE("A preview adds nothing, faulty rows are named and keep everything out, and a second import adds nothing", "[cli][log]") {
  const Bench bench;
  const Answer first = bench.log({"import", "-", "--preview"}, bags);
  CHECK(first.exit == Exit::done);
  CHECK(first.out.find("2 to add") != std::string::npos);
  CHECK_FALSE(fs::exists(bench.file("nursery.gritwright")));
  REQUIRE(bench.log({"add", "start"}).exit == Exit::done);
  const Answer preview = bench.log({"import", "-", "--preview"}, bags);
  CHECK(preview.exit == Exit::done);
  CHECK(preview.out.find("2 to add") != std::string::npos);
  const Answer faulty = bench.log({"import", "-"}, bags + "K-08,,x,2026-02-40\n");
  CHECK(faulty.exit == Exit::input_refused);
  CHECK(faulty.err.find("standard input:4:") != std::string::npos);
  CHECK(bench.log({"list", "bag", "--json"}).json()["records"].empty());
  CHECK(bench.log({"import", "-", "--json"}, bags).json()["added"] == 2);
  CHECK(bench.log({"import", "-", "--json"}, bags).json()["added"] == 0);
}

TEST_CASE("A list of trees that was exported, read back and changed keeps the history that it has no columns for", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  REQUIRE(bench.log({"import", "-"}, exchange).exit == Exit::done);
  std::string list = bench.log({"export", "--kind", "tree", "--csv"}).out;
  const Answer same = bench.log({"import", "-"}, list);
  CHECK(same.exit == Exit::done);
  CHECK(same.out == "0 added, 2 already there.\n");
  list.replace(list.find("old pine"), 8, "oldest pine");
  const Answer differs = bench.log({"import", "-"}, list);
  CHECK(differs.exit == Exit::input_refused);
  CHECK(differs.err.find("standard input:2:1: another tree TR-01") == 0);
  CHECK(differs.err.find("--replace") != std::string::npos);
  CHECK(bench.log({"import", "-", "--replace"}, list).out == "0 added, 1 already there, 1 replaced.\n");
  const auto tree = bench.log({"export", "TR-01"}).json()["record"];
  CHECK(tree["name"] == "oldest pine");
  CHECK(tree["repottings"][0]["grain"] == nlohmann::json{"batch:BT-01"});
  CHECK(tree["repottings"][0]["filled_depth_cm"] == 4);
  CHECK(bench.log({"trace", "TR-01"}).out.find("bag:K-07") != std::string::npos);
}

TEST_CASE("A list that stops at its limit says that there is more", "[cli][log]") {
  const Bench bench;
  for (const char* text : {"one", "two", "three"}) CHECK(bench.log({"add", text}).exit == Exit::done);
  const Answer two = bench.log({"list", "--limit", "2", "--json"});
  CHECK(two.json()["records"].size() == 2);
  CHECK(two.json()["records"][0]["title"] == "three");
  CHECK(two.err.find("--limit") != std::string::npos);
  CHECK(bench.log({"list", "--limit", "3"}).err.empty());
}

TEST_CASE("A workbook that was exported and imported elsewhere exports the same again", "[cli][log][roundtrip]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  REQUIRE(bench.log({"import", "-"}, exchange).exit == Exit::done);
  REQUIRE(bench.log({"export", "--output", bench.file("all.json")}).exit == Exit::done);
  const Bench other;
  REQUIRE(other.log({"import", bench.file("all.json")}).exit == Exit::done);
  for (const char* kind : {"bag", "tree", "batch"})
    CHECK(other.log({"export", "--kind", kind}).out == bench.log({"export", "--kind", kind}).out);
  CHECK(bench.log({"export", "K-07"}).json()["id"] == "K-07");
  CHECK(bench.log({"export", "--kind", "bag", "--csv"}).out.find("'=lot 3") != std::string::npos);
  CHECK(bench.log({"export", "--output", bench.file("no/such/folder.json")}).exit == Exit::file_trouble);
}

TEST_CASE("The check finds a whole workbook whole and a damaged one damaged, and names the newest intact backup", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  REQUIRE(bench.log({"add", "makes the day's backup"}).exit == Exit::done);
  const Answer whole = bench.log({"check", "--json"});
  CHECK(whole.exit == Exit::done);
  CHECK(whole.json()["problems"].empty());
  CHECK(whole.json()["newest_good_backup"].is_string());
  const std::string file = bench.file("nursery.gritwright");
  fs::resize_file(file, fs::file_size(file) / 2);
  const Answer damaged = bench.log({"check", "--json"});
  CHECK(damaged.exit == Exit::file_trouble);
  CHECK_FALSE(damaged.json()["problems"].empty());
  CHECK(damaged.json()["newest_good_backup"].is_string());
  const std::string backup = damaged.json()["newest_good_backup"];
  const auto bytes = [&] {
    std::ifstream stream(file, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(stream), {});
  };
  const std::string before = bytes();
  const Answer told = bench.log({"check"});
  CHECK((told.out + told.err).find("damaged") != std::string::npos);
  CHECK((told.out + told.err).find(backup) != std::string::npos);
  CHECK(bench.log({"add", "into a damaged file"}).exit == Exit::file_trouble);
  CHECK(bytes() == before);
  // What the backup named holds is whole.
  CHECK(run({"log", "check", "--workbook", backup}).exit == Exit::done);
  CHECK(bench.log({"list"}).exit == Exit::file_trouble);
}

TEST_CASE("What can't be meant is wrong usage or refused, and a missing workbook is file trouble", "[cli][log][refuses]") {
  const Bench bench;
  CHECK(bench.log({"list"}).exit == Exit::file_trouble);
  REQUIRE(bench.log({"add", "start"}).exit == Exit::done);
  CHECK(bench.log({"add"}).exit == Exit::wrong_usage);
  CHECK(bench.log({"show"}).exit == Exit::wrong_usage);
  CHECK(bench.log({"trace"}).exit == Exit::wrong_usage);
  CHECK(bench.log({"tidy"}).exit == Exit::wrong_usage);
  CHECK(bench.log({"show", "Q-99"}).exit == Exit::input_refused);
  const Answer no_day = bench.log({"add", "x", "--day", "2026-02-30"});
  CHECK(no_day.exit == Exit::input_refused);
  CHECK(no_day.err == "2026-02-30 is not a day; expected one like 2026-03-14\n");
  CHECK(bench.log({"list", "sack"}).exit == Exit::input_refused);
  CHECK(bench.log({"import", "-"}, "a,b\n1,2\n").exit == Exit::input_refused);
  CHECK(bench.log({"trace", "--shared"}).exit == Exit::input_refused);
  const Answer reading = bench.log({"add", "x", "--read-only"});
  CHECK(reading.exit == Exit::file_trouble);
  CHECK(reading.err.find(bench.file("nursery.gritwright") + ": the record is open for reading only") == 0);
}

TEST_CASE("A long row of numbers is counted in the plain text and whole in JSON", "[cli][log][regression]") {
  const Bench bench;
  std::string boxes = "0,1,0,1,0,1";
  for (int box = 1; box < 9; ++box) boxes += ",0,1,0,1," + std::to_string(box) + ",9.5";
  const std::string tree = R"({"format":"gritwright/workbook/1","records":[{"kind":"tree","id":"TR-01","record":{"format":"gritwright/tree/1","name":"old pine","species":"pine",
    "repottings":[{"day":"2026-03-02","grain":[],"untouched":{"boxes_cm":[)" + boxes + R"(],"trunk_base":{"right_cm":0,"back_cm":0,"up_cm":5}}}]}}]})";
  const Answer added = bench.log({"import", "-"}, tree);
  INFO(added.err);
  REQUIRE(added.exit == Exit::done);
  const std::string shown = bench.log({"show", "TR-01"}).out;
  CHECK(shown.find("54 numbers, all of them with --json") != std::string::npos);
  CHECK(shown.find("boxes_cm.1:") == std::string::npos);
  CHECK(bench.log({"show", "TR-01", "--json"}).json().dump().find("9.5") != std::string::npos);
}

TEST_CASE("One record that can't be read keeps no other from being listed and written out, and is told as file trouble", "[cli][log][refuses]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  {
    SQLite::Database file(bench.file("nursery.gritwright"), SQLite::OPEN_READWRITE);
    REQUIRE(file.exec("UPDATE record SET body = substr(body, 1, 30) WHERE kind = 'bag' AND id = 'K-07'") == 1);
  }
  const Answer all = bench.log({"export"});
  CHECK(all.exit == Exit::file_trouble);
  CHECK(all.err == "the bag K-07 can't be read from the file and was left out; take it in from a backup, or write it anew\n");
  CHECK(all.json()["records"].size() == 2);  // the other bag, and the log's line
  const Answer csv = bench.log({"export", "--kind", "bag", "--csv", "--output", bench.file("bags.csv")});
  CHECK(csv.exit == Exit::file_trouble);
  CHECK(fs::file_size(bench.file("bags.csv")) > 0);
  const Answer listed = bench.log({"list", "bag", "--json"});
  CHECK(listed.exit == Exit::file_trouble);
  CHECK(listed.json()["records"].size() == 2);
  CHECK(listed.err == "the bag K-07 can't be read from the file; take it in from a backup, or write it anew\n");
  const Answer checked = bench.log({"check"});
  CHECK(checked.exit == Exit::file_trouble);
  CHECK(checked.out.find("takes the record's place") == std::string::npos);
}

TEST_CASE("Lists that disagree with their records are drawn anew when the check is told to mend", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  const std::string before = bench.log({"export"}).out;
  {
    SQLite::Database file(bench.file("nursery.gritwright"), SQLite::OPEN_READWRITE);
    REQUIRE(file.exec("UPDATE record SET title = 'x' WHERE kind = 'bag'") == 2);
  }
  const Answer told = bench.log({"check"});
  CHECK(told.exit != Exit::done);
  CHECK(told.err.find("log check --mend") != std::string::npos);
  CHECK(told.out.find("takes the record's place") == std::string::npos);
  const Answer mended = bench.log({"check", "--mend"});
  CHECK(mended.exit == Exit::done);
  CHECK(mended.out.find("drawn anew") != std::string::npos);
  CHECK(bench.log({"check", "--json"}).json()["problems"].empty());
  CHECK(bench.log({"export"}).out == before);
  CHECK_FALSE(bench.log({"check", "--mend", "--json"}).json()["mended"]);
}

TEST_CASE("A record is called intact only where nothing in it needs a correction", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"import", "-"}, bags).exit == Exit::done);
  CHECK(bench.log({"check"}).out.find("The record is intact.") == 0);
  {
    SQLite::Database file(bench.file("nursery.gritwright"), SQLite::OPEN_READWRITE);
    REQUIRE(file.exec("UPDATE record SET body = json_set(body, '$.count', -1) WHERE kind = 'bag' AND id = 'K-07'") == 1);
  }
  const Answer odd = bench.log({"check"});
  CHECK(odd.exit == Exit::done);
  CHECK(odd.out.find("The file is intact; 1 thing in it needs a correction:\n") == 0);
  CHECK(odd.out.find("bag:K-07/count: would be refused today: -1 bags can't be; expected 1 or more") != std::string::npos);
  CHECK(bench.log({"check", "--strict"}).exit == Exit::strict_warnings);
}

TEST_CASE("A line of the log from another record does not take the place of the grower's own, and a slip in a material is told", "[cli][log]") {
  const Bench bench;
  REQUIRE(bench.log({"add", "buds late"}).exit == Exit::done);
  const Bench other;
  REQUIRE(other.log({"import", "-"}, bags).exit == Exit::done);
  const std::string theirs = other.log({"export"}).out;
  const Answer taken = bench.log({"import", "-", "--replace"}, theirs);
  CHECK(taken.exit == Exit::done);
  CHECK(taken.err.find("note: L-01: comes in as L-02, the next free number: L-01 here is another line") != std::string::npos);
  CHECK(bench.log({"show", "L-01"}).out.find("buds late") != std::string::npos);
  CHECK(bench.log({"import", "-"}, theirs).out == "0 added, 3 already there.\n");
  const Answer slip = bench.log({"import", "-"}, "id,material,lot\nX-01,akadma,lot 1\n");
  CHECK(slip.exit == Exit::done);
  CHECK(slip.err.find("X-01: there is no material called akadma in the catalogue, so it is taken as your own; nearest there: akadama") != std::string::npos);
}

TEST_CASE("A bag's mass that an import corrects corrects what came into stock with it, and the record stays whole", "[cli][log][regression]") {
  const Bench bench;
  const std::string received = R"({"format":"gritwright/workbook/1","records":[
    {"kind":"bag","id":"K-07","record":{"format":"gritwright/bag/1","material":"kanuma","mass_kg":5,"moisture_basis":"oven-dry","received":"2026-02-01"}},
    {"kind":"stock-entry","id":"S-01","record":{"format":"gritwright/stock-entry/1","holder":"bag:K-07","reason":"received","change_g":5000,"day":"2026-02-01"}}]})";
  REQUIRE(bench.log({"import", "-"}, received).exit == Exit::done);
  const auto stock_g = [&] { return bench.log({"list", "bag", "--json"}).json()["records"][0]["stock_g"].get<double>(); };
  CHECK(stock_g() == Approx(5000));
  std::string list = bench.log({"export", "--kind", "bag", "--csv"}).out;
  // The mass stands before its basis.
  const auto basis = list.find("oven-dry");
  REQUIRE(basis != std::string::npos);
  const auto mass = list.rfind(list[basis - 1], basis - 2) + 1;
  list.replace(mass, basis - 1 - mass, "4.5");
  REQUIRE(bench.log({"import", "-", "--replace"}, list).out == "0 added, 0 already there, 1 replaced.\n");
  CHECK(stock_g() == Approx(4500));
  CHECK(bench.log({"check"}).exit == Exit::done);
}
