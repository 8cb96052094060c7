#include "pages/import_page.hpp"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>

#include "models/record_export.hpp"
#include "pages/bags_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

struct Importing : OpenWindow {
  ImportPage* page() { return find<ImportPage>("import_page"); }
  void look_at(const char* text) {
    const QString path = folder.filePath(QStringLiteral("list.csv"));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(text);
    file.close();
    window.import_file(path);
    wait();
  }
  void wait() {
    page()->import().job().wait();
    QApplication::processEvents();
  }
  void take_in() {
    find<QPushButton>("import_take_in")->click();
    wait();
  }
  QStringList faults() {
    QStringList texts;
    auto* list = find<QListWidget>("import_faults");
    for (int row = 0; row < list->count(); ++row) texts << list->item(row)->text();
    return texts;
  }
  QString cell(int row, int column) { return find<QTableView>("import_table")->model()->index(row, column).data().toString(); }
  [[nodiscard]] std::size_t bags() const { return record->workbook().count(RecordKind::bag); }
};

constexpr const char* two_bags = "id,material,lot,volume_l\nK-07,akadama,7 B,14\n,pumice,P 2,14\n";

}  // namespace

TEST_CASE("A list of bags is shown before it is taken in, as one step that undo takes back", "[import_page]") {
  Importing open;
  open.look_at(two_bags);
  CHECK(open.window.pages().currentWidget() == open.page());
  CHECK(open.bags() == 0);
  CHECK(open.cell(0, 0) == QStringLiteral("K-07"));
  CHECK(open.cell(0, 2) == QStringLiteral("bag"));
  CHECK(open.cell(0, 3) == QStringLiteral("new"));
  CHECK(open.cell(1, 0) == QStringLiteral("the next free"));
  CHECK(open.find<QLabel>("import_summary")->text().startsWith(QStringLiteral("2 record")));
  open.take_in();
  CHECK(open.bags() == 2);
  CHECK(open.window.pages().currentWidget() == &open.window.record_pages()->bags());
  open.record->undo();
  CHECK(open.bags() == 0);
}

TEST_CASE("Taking the same list in twice adds nothing twice", "[import_page][law]") {
  Importing open;
  open.look_at(two_bags);
  open.take_in();
  open.look_at(two_bags);
  CHECK(open.cell(0, 3).startsWith(QStringLiteral("here already")));
  CHECK_FALSE(open.find<QPushButton>("import_take_in")->isEnabled());
  CHECK(open.bags() == 2);
}

TEST_CASE("Every faulty row is named and keeps the list out until it is mended", "[import_page][refuses]") {
  Importing open;
  open.look_at("id,material,lot,count\nK-07,akadama,7 B,0\nK-08,akadama,8 B,two\nK-09,pumice,9 B,3\n");
  CHECK_FALSE(open.find<QPushButton>("import_take_in")->isEnabled());
  const QStringList faults = open.faults();
  REQUIRE(faults.size() == 2);
  CHECK(faults[0].startsWith(QStringLiteral("list.csv, line 2, character ")));
  CHECK(faults[1].startsWith(QStringLiteral("list.csv, line 3, character ")));
  CHECK(open.find("import_faults")->isVisible());
  CHECK(open.bags() == 0);
  open.look_at("id,material,lot,count\nK-07,akadama,7 B,1\nK-08,akadama,8 B,2\nK-09,pumice,9 B,3\n");
  CHECK_FALSE(open.find("import_faults")->isVisible());
  open.take_in();
  CHECK(open.bags() == 3);
}

TEST_CASE("A record that differs keeps the list out unless it shall take the other's place", "[import_page][refuses]") {
  Importing open;
  open.look_at(two_bags);
  open.take_in();
  open.look_at("id,material,lot,volume_l\nK-07,akadama,another lot,14\n");
  CHECK(open.cell(0, 3) == QStringLiteral("differs from the one here"));
  CHECK_FALSE(open.find<QPushButton>("import_take_in")->isEnabled());
  open.find<QAbstractButton>("import_replace")->click();
  open.wait();
  CHECK(open.cell(0, 3) == QStringLiteral("replaces the one here"));
  open.take_in();
  CHECK(open.record->workbook().find(Id<Bag>{"K-07"})->record.lot == "another lot");
}

TEST_CASE("Lists of trees, containers and sieve tests are taken in as well", "[import_page]") {
  Importing open;
  open.look_at("id,name,species\nTR-01,the old one,\"pine, invented\"\n");
  CHECK(open.cell(0, 2) == QStringLiteral("tree"));
  open.take_in();
  CHECK(open.record->workbook().count(RecordKind::tree) == 1);
  open.look_at("# material: pumice\n# dry_mass_g: 500\naperture_mm,retained_g\n4,200\n2,200\npan,100\n");
  CHECK(open.cell(0, 2) == QStringLiteral("sieve test"));
  open.take_in();
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 1);
}

TEST_CASE("What a list holds is asked for where its columns don't tell", "[import_page][refuses]") {
  Importing open;
  open.look_at("id,note\nK-07,dusty\n");
  REQUIRE(open.faults().size() == 1);
  CHECK(open.faults().front().contains(QStringLiteral("which kind of record")));
  auto* kind = open.find<QComboBox>("import_kind");
  kind->setCurrentIndex(1);
  emit kind->activated(1);
  open.wait();
  CHECK_FALSE(open.faults().isEmpty());
  CHECK_FALSE(open.faults().front().contains(QStringLiteral("which kind of record")));
}

TEST_CASE("What was written to a file is here already when it is read back, as a list and as the whole record", "[import_page][roundtrip]") {
  Importing open;
  open.look_at(two_bags);
  open.take_in();
  for (const std::optional<RecordKind> kind : {std::optional(RecordKind::bag), std::optional<RecordKind>()}) {
    const QString path = open.folder.filePath(kind ? QStringLiteral("bags.csv") : QStringLiteral("record.json"));
    REQUIRE(write_records(open.record->workbook(), path, kind));
    open.window.import_file(path);
    open.wait();
    CHECK(open.faults().isEmpty());
    CHECK(open.page()->import().preview().lines.size() >= 2);
    CHECK(open.page()->import().coming() == 0);
  }
}

TEST_CASE("Records are not written where they can't be", "[import_page][refuses]") {
  Importing open;
  const auto written = write_records(open.record->workbook(), open.folder.filePath(QStringLiteral("no folder/bags.csv")), RecordKind::bag);
  REQUIRE_FALSE(written);
  CHECK(written.problems().front().code == "file.write-failed");
}

TEST_CASE("A file chosen while records are being taken in waits its turn, and both answers come", "[import_page][refuses]") {
  Importing open;
  QString told;
  QObject::connect(open.record.get(), &RecordBook::told, [&](const QString& sentence) { told += sentence; });
  open.look_at(two_bags);
  const QString other = open.folder.filePath(QStringLiteral("trees.csv"));
  QFile file(other);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("id,name,species\nTR-01,the old one,\"pine, invented\"\n");
  file.close();
  open.find<QPushButton>("import_take_in")->click();
  REQUIRE(open.page()->import().is_taking_in());
  CHECK_FALSE(open.page()->import().look({other, {}, false}));
  open.window.import_file(other);
  REQUIRE(QTest::qWaitFor([&] { return open.cell(0, 2) == QStringLiteral("tree"); }));
  CHECK(open.bags() == 2);
  CHECK(told.contains(QStringLiteral("2 record")));
  CHECK(open.window.pages().currentWidget() == open.page());
  open.take_in();
  CHECK(open.record->workbook().count(RecordKind::tree) == 1);
}

TEST_CASE("A column that is not known is told together with those that are", "[import_page][refuses]") {
  Importing open;
  open.look_at("id,material,lot,colour\nK-07,akadama,7 B,brown\n");
  REQUIRE(open.faults().size() == 1);
  CHECK(open.faults().front().contains(QStringLiteral("colour")));
  CHECK(open.faults().front().contains(QStringLiteral("id, material, lot, count")));
}

TEST_CASE("What a list says of its records has room in a longer language too", "[import_page]") {
  const WithLanguage german("de");
  Importing open;
  open.look_at(two_bags);
  const auto* table = open.find<QTableView>("import_table");
  for (const int column : {0, 2, 3}) {
    INFO(open.cell(1, column) << " has " << table->columnWidth(column));
    CHECK(table->columnWidth(column) >= table->fontMetrics().horizontalAdvance(open.cell(1, column)) + 8);
  }
}

TEST_CASE("A line of another record's log comes in under the next free number, whatever is ticked, and the page says so", "[import_page]") {
  Importing open;
  open.look_at(two_bags);
  open.take_in();
  const auto own = open.record->workbook().find(Id<LogEntry>{"L-01"});
  REQUIRE(own);
  open.look_at(R"({"format":"gritwright/workbook/1","records":[{"kind":"log-entry","id":"L-01","record":
    {"format":"gritwright/log-entry/1","day":"2026-03-01","sort":"observation","text":"buds late"}}]})");
  open.find<QAbstractButton>("import_replace")->click();
  open.wait();
  CHECK(open.cell(0, 0) == QStringLiteral("L-02"));
  CHECK(open.cell(0, 3) == QStringLiteral("new"));
  REQUIRE(open.faults().size() == 1);
  // Behind a label the sentence begins small, but for languages that keep the capital.
  CHECK(open.faults().front().compare(QStringLiteral("L-01: comes in as L-02, the next free number: L-01 here is another line"), Qt::CaseInsensitive) == 0);
  open.take_in();
  CHECK(open.record->workbook().find(Id<LogEntry>{"L-01"})->record == own->record);
  CHECK(open.record->workbook().find(Id<LogEntry>{"L-02"})->record.text == "buds late");
}

TEST_CASE("A slip in the name of a material is told before the list is taken in, and keeps it not out", "[import_page]") {
  Importing open;
  open.look_at("id,material,lot\nX-01,akadma,7 B\n");
  REQUIRE(open.faults().size() == 1);
  CHECK(open.faults().front().startsWith(QStringLiteral("X-01: there is no material called akadma in the catalogue"), Qt::CaseInsensitive));
  open.take_in();
  CHECK(open.bags() == 1);
}
