#include "pages/log_page.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QFile>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <algorithm>
#include <functional>

#include "models/demonstration_record.hpp"
#include "models/grain_trace.hpp"
#include "pages/sick_trees_tab.hpp"
#include "pages/trace_tab.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("What is written down stands in the log, about the record that was named", "[log_page]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  const std::string bag = open.record->workbook().all<Bag>().front().id.text;
  open.trigger("action_write_down");
  open.find<QLineEdit>("log_about")->setText(QString::fromStdString(bag));
  open.type(QStringLiteral("smells musty"));
  open.press(Qt::Key_Return);
  CHECK(open.find<QLineEdit>("log_text")->text().isEmpty());
  bool found = false;
  for (const auto& entry : open.record->workbook().all<LogEntry>()) {
    if (entry.record.text != "smells musty") continue;
    found = true;
    CHECK(entry.record.sort == LogSort::observation);
    CHECK(entry.record.about == std::vector<RecordRef>{{RecordKind::bag, bag}});
  }
  CHECK(found);
}

TEST_CASE("A line of an earlier day stands among those of that day, chosen and in sight, and undo takes it from there", "[log_page][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_write_down");
  auto* table = open.find<QTableView>("log_table");
  const auto days = [&] {
    // Read from the record: the list shows a day as the locale writes it.
    std::vector<std::string> of_rows;
    for (int row = 0; row < table->model()->rowCount(); ++row) {
      const QString id = table->model()->index(row, 2).data().toString();
      of_rows.push_back(open.record->workbook().find(Id<LogEntry>{id.toStdString()})->record.day);
    }
    return of_rows;
  };
  const auto before = days();
  CHECK(std::ranges::is_sorted(before, std::ranges::greater{}));
  open.find<QLineEdit>("log_day")->setText(QStringLiteral("2024-11-30"));
  open.type(QStringLiteral("first frost"));
  open.press(Qt::Key_Return);
  const auto after = days();
  CHECK(after.size() == before.size() + 1);
  CHECK(std::ranges::is_sorted(after, std::ranges::greater{}));
  const QModelIndex chosen = table->currentIndex();
  CHECK(table->model()->index(chosen.row(), 1).data().toString() == QStringLiteral("first frost"));
  CHECK(table->viewport()->rect().intersects(table->visualRect(chosen)));
  open.record->undo();
  CHECK(days() == before);
}

TEST_CASE("An old day stays for the lines of one sitting, and whoever comes back writes under today's unless a line waits", "[log_page][regression]") {
  OpenWindow open;
  open.trigger("action_write_down");
  auto* day = open.find<QLineEdit>("log_day");
  const QString now = day_text(today());
  CHECK(day->text() == now);
  day->setText(QStringLiteral("2024-11-30"));
  open.type(QStringLiteral("first frost"));
  open.press(Qt::Key_Return);
  CHECK(day->text() == QStringLiteral("2024-11-30"));
  open.type(QStringLiteral("second frost"));
  open.trigger("action_page_bags");
  open.trigger("action_write_down");
  CHECK(day->text() == QStringLiteral("2024-11-30"));
  open.press(Qt::Key_Return);
  open.trigger("action_page_bags");
  open.trigger("action_write_down");
  CHECK(day->text() == now);
}

TEST_CASE("The line's button says with what it is kept, and what was only gone to is not meant by the line after", "[log_page][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const auto* keep = open.find<QPushButton>("log_keep");
  auto* about = open.find<QLineEdit>("log_about");
  const auto write = [&](const char* words) {
    open.trigger("action_write_down");
    open.type(QString::fromLatin1(words));
    open.press(Qt::Key_Return);
    std::vector<RecordRef> kept_with;
    for (const auto& entry : open.record->workbook().all<LogEntry>())
      if (entry.record.text == words) kept_with = entry.record.about;
    return kept_with;
  };
  const std::vector<RecordRef> of_bag{{RecordKind::bag, "P-03"}};
  open.window.record_pages()->log().show_about(QStringLiteral("P-03"));
  CHECK(keep->text().contains(QStringLiteral("P-03")));
  CHECK(write("smells sour") == of_bag);
  CHECK(about->text().isEmpty());
  CHECK_FALSE(keep->text().contains(QStringLiteral("P-03")));
  CHECK(write("buds late").empty());
  // Typed by hand it is meant until it is typed otherwise.
  about->setFocus();
  open.type(QStringLiteral("P-03"));
  CHECK(write("still sour") == of_bag);
  CHECK(write("sour again") == of_bag);
}

TEST_CASE("A line without words or with a day that is none is refused with its reason", "[log_page][refuses]") {
  OpenWindow open;
  open.trigger("action_write_down");
  const auto before = open.record->workbook().count(RecordKind::log_entry);
  open.press(Qt::Key_Return);
  open.find<QLineEdit>("log_day")->setText(QStringLiteral("2026-02-30"));
  open.type(QStringLiteral("x"));
  open.press(Qt::Key_Return);
  CHECK(open.record->workbook().count(RecordKind::log_entry) == before);
  CHECK(open.find<QLineEdit>("log_text")->text() == QStringLiteral("x"));
}

TEST_CASE("The demonstration fills a record with bags, tests, containers, trees and days", "[log_page]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 22);  // twenty of bags, one of a fraction, one of a used pot's ground
  CHECK(open.record->workbook().count(RecordKind::container) == 14);
  CHECK(open.record->workbook().count(RecordKind::tree) == 12);
  CHECK(open.record->workbook().count(RecordKind::repotting_day) == 3);
  CHECK(open.record->workbook().sieve_tests_of({RecordKind::bag, "P-03"}).size() == 2);
}

TEST_CASE("About narrows the log and lists what is linked", "[log_page]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_log");
  auto* table = open.find<QTableView>("log_table");
  const int all = table->model()->rowCount();
  open.find<QLineEdit>("log_about")->setText(QStringLiteral("P-03"));
  // Received once, sieved twice.
  CHECK(table->model()->rowCount() >= 3);
  CHECK(table->model()->rowCount() < all);
  auto* links = open.find<QListWidget>("log_links");
  const auto tests = links->findItems(QStringLiteral("sieve test"), Qt::MatchStartsWith);
  REQUIRE(tests.size() == 2);
  CHECK(links->findItems(QStringLiteral("mix "), Qt::MatchStartsWith).size() >= 1);
  // What is linked can be followed.
  emit links->itemActivated(tests.front());
  CHECK(open.find<QLineEdit>("log_about")->text().startsWith(QStringLiteral("ST-")));
  open.find<QLineEdit>("log_about")->setText(QStringLiteral("nobody"));
  CHECK(table->model()->rowCount() == all);
}

TEST_CASE("About takes a bag by the mark of its lot, and tells the numbers where several have it", "[log_page]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  bag.lot = "K-07";
  const QString first = open.record->add(bag, QStringLiteral("bag"));
  open.trigger("action_page_log");
  auto* about = open.find<QLineEdit>("log_about");
  auto* table = open.find<QTableView>("log_table");
  open.record->add(LogEntry{"2026-03-14", {}, LogSort::observation, "buds late", {}}, QStringLiteral("line"));
  const int all = table->model()->rowCount();
  about->setText(QStringLiteral("k-07"));
  CHECK(open.find<QLabel>("log_links_title")->text().contains(first));
  CHECK(table->model()->rowCount() == all - 1);
  const QString second = open.record->add(bag, QStringLiteral("bag"));
  about->setText(QString());
  about->setText(QStringLiteral("K-07"));
  const auto* fault = open.find<QLabel>("log_about_fault");
  CHECK(fault->text().contains(first));
  CHECK(fault->text().contains(second));
}

TEST_CASE("A log that is empty because of what it is narrowed to says so", "[log_page][refuses]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_log");
  auto* table = open.find<QTableView>("log_table");
  const auto told = [&] {
    return std::ranges::any_of(open.window.findChildren<QLabel*>(), [](const QLabel* label) { return label->isVisible() && label->text().contains(QStringLiteral("About and the days")); });
  };
  open.find<QLineEdit>("log_about")->setText(QStringLiteral("P-03"));
  CHECK_FALSE(told());
  open.find<QLineEdit>("log_find")->setText(QStringLiteral("nosuchword"));
  CHECK(table->model()->rowCount() == 0);
  CHECK(told());
  open.find<QLineEdit>("log_find")->clear();
  CHECK(table->model()->rowCount() > 0);
  CHECK_FALSE(told());
}

TEST_CASE("From and to narrow the log to days, and what is no day is told and narrows nothing", "[log_page][refuses]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_log");
  auto* table = open.find<QTableView>("log_table");
  const int all = table->model()->rowCount();
  open.find<QLineEdit>("log_from")->setText(QStringLiteral("2025-10-25"));
  open.find<QLineEdit>("log_to")->setText(QStringLiteral("2025-10-25"));
  const int that_day = table->model()->rowCount();
  CHECK(that_day > 0);
  CHECK(that_day < all);
  open.find<QLineEdit>("log_to")->setText(QStringLiteral("2025-10-"));
  CHECK(table->model()->rowCount() > that_day);
  open.find<QLineEdit>("log_from")->clear();
  CHECK(table->model()->rowCount() == all);
}

TEST_CASE("The log leaves the small changes of fields out until they are asked for, and says how many there are", "[log_page]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  open.type(QStringLiteral("7 B"));
  open.find("bag_note")->setFocus();
  open.type(QStringLiteral("smells musty"));
  open.trigger("action_page_log");
  auto* table = open.find<QTableView>("log_table");
  auto* small = open.find<QCheckBox>("log_small");
  CHECK(table->model()->rowCount() == 1);
  CHECK(small->text().contains(QStringLiteral("(2)")));
  auto* find = open.find<QLineEdit>("log_find");
  find->setText(QStringLiteral("note"));
  CHECK(table->model()->rowCount() == 0);
  CHECK(small->text().contains(QStringLiteral("(1)")));
  small->click();
  CHECK(table->model()->rowCount() == 1);
  CHECK_FALSE(small->text().contains(u'('));
  find->clear();
  CHECK(table->model()->rowCount() == 3);
  open.record->undo();
  CHECK(table->model()->rowCount() == 2);
  small->click();
  CHECK(table->model()->rowCount() == 1);
  CHECK(small->text().contains(QStringLiteral("(1)")));
}

namespace {

QStringList column(const QTableWidget& table, int at) {
  QStringList cells;
  for (int row = 0; row < table.rowCount(); ++row) cells << table.item(row, at)->text();
  return cells;
}

std::string file_text(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll().toStdString();
}

void open_sick_trees(OpenWindow& open) {
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_sick_trees");
  open.window.record_pages()->log().sick_trees().job().wait();
  QApplication::processEvents();
}

}  // namespace

TEST_CASE("A bag is traced to the trees that stand in it, and the list is saved as text, CSV and JSON", "[log_page][trace]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_log");
  open.window.record_pages()->log().show_trace(QStringLiteral("P-03"));
  auto* trees = open.find<QTableWidget>("trace_trees");
  const auto recalled = recall_list(open.record->workbook(), {RecordKind::bag, "P-03"});
  REQUIRE(recalled);
  REQUIRE(trees->rowCount() == static_cast<int>(recalled->trees.size()));
  // TR-01 was potted from the batch that six litres of this bag went into.
  CHECK(column(*trees, 0).contains(QStringLiteral("TR-01")));
  CHECK(open.find<QTableWidget>("trace_holders")->isVisible());
  TraceTab& tab = open.window.record_pages()->log().trace();
  const QString file = open.folder.filePath(QStringLiteral("trees"));
  for (const char* ending : {".txt", ".csv", ".json"}) REQUIRE(tab.save_list(file + QLatin1String(ending)));
  CHECK(file_text(file + QStringLiteral(".txt")).find("stands in it") != std::string::npos);
  CHECK(file_text(file + QStringLiteral(".csv")).find("TR-01") != std::string::npos);
  CHECK(file_text(file + QStringLiteral(".json")).find("gritwright/recall-list/1") != std::string::npos);
}

TEST_CASE("A tree is traced back to the bags it stands in, and a row leads on", "[log_page][trace]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_trees");
  open.trigger("action_page_log");
  open.window.record_pages()->log().show_trace(QStringLiteral("TR-05"));
  auto* ground = open.find<QTableWidget>("trace_trees");
  const QStringList what = column(*ground, 0);
  // It was potted from a batch that took grain out of the bin, which held two lots then.
  CHECK(what.filter(QStringLiteral("A-12")).size() == 1);
  CHECK(column(*ground, 5).contains(QStringLiteral("may")));
  CHECK_FALSE(open.find<QPushButton>("trace_save")->isEnabled());
  CHECK_FALSE(open.window.record_pages()->log().trace().save_list(open.folder.filePath(QStringLiteral("none.txt"))));
  emit ground->activated(ground->model()->index(static_cast<int>(what.indexOf(what.filter(QStringLiteral("A-12")).front())), 0));
  CHECK(open.find<QLineEdit>("trace_of")->text() == QStringLiteral("A-12"));
  CHECK(open.find<QPushButton>("trace_save")->isEnabled());
}

TEST_CASE("What does not exist is not traced, and says so", "[log_page][trace][refuses]") {
  OpenWindow open;
  open.trigger("action_page_log");
  open.trigger("action_trace_grain");
  open.type(QStringLiteral("X-99"));
  CHECK(open.find<QLabel>("trace_sentence")->text().contains(QStringLiteral("X-99")));
  CHECK_FALSE(open.find<QTableWidget>("trace_trees")->isVisible());
}

TEST_CASE("A bag is traced by the mark of its lot, and of several bags of a lot the numbers are told", "[log_page][trace]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  bag.lot = "K-07";
  const QString first = open.record->add(bag, QStringLiteral("bag"));
  open.trigger("action_page_log");
  open.trigger("action_trace_grain");
  open.type(QStringLiteral("k-07"));
  const auto* sentence = open.find<QLabel>("trace_sentence");
  CHECK(sentence->text().contains(first));
  CHECK_FALSE(sentence->text().contains(QStringLiteral("nothing called")));
  const QString second = open.record->add(bag, QStringLiteral("bag"));
  CHECK(sentence->text().contains(first));
  CHECK(sentence->text().contains(second));
  CHECK_FALSE(open.find<QTableWidget>("trace_holders")->isVisible());
}

TEST_CASE("The sick trees stand first with their day, ticked to be compared with all others", "[log_page][trace]") {
  OpenWindow open;
  open_sick_trees(open);
  auto* trees = open.find<QTableWidget>("sick_trees");
  REQUIRE(trees->rowCount() == 12);
  CHECK(trees->item(0, 0)->text() == QStringLiteral("TR-04"));  // sick since February
  CHECK(trees->item(1, 0)->text() == QStringLiteral("TR-03"));  // since January
  CHECK(trees->item(1, 2)->text() == QLocale().toString(QDate(2026, 1, 24), QLocale::ShortFormat));
  CHECK(trees->item(1, 0)->checkState() == Qt::Checked);
  CHECK(trees->item(2, 0)->checkState() == Qt::Unchecked);
  auto* traits = open.find<QTableWidget>("sick_traits");
  const auto shared = shared_traits(open.record->workbook());
  REQUIRE(shared);
  CHECK(traits->rowCount() == static_cast<int>(shared_table(*shared).refs.size()));
  CHECK(column(*traits, 2).contains(QStringLiteral("2 of 2")));
  CHECK(column(*traits, 1).filter(QStringLiteral("MX-02/1")).size() == 1);
  CHECK(open.find<QLabel>("sick_caution")->text().contains(QStringLiteral("prove nothing")));
  CHECK(open.find<QLabel>("sick_first_looks")->text().contains(QStringLiteral("drain hole")));
  const QString file = open.folder.filePath(QStringLiteral("shared.json"));
  REQUIRE(open.window.record_pages()->log().sick_trees().save_shared(file));
  CHECK(file_text(file).find("gritwright/shared-traits/1") != std::string::npos);
}

TEST_CASE("Other trees are compared by ticking them, and the sick ones by one button", "[log_page][trace]") {
  OpenWindow open;
  open_sick_trees(open);
  auto& tab = open.window.record_pages()->log().sick_trees();
  auto* trees = open.find<QTableWidget>("sick_trees");
  trees->item(0, 0)->setCheckState(Qt::Unchecked);
  trees->item(1, 0)->setCheckState(Qt::Unchecked);
  tab.job().wait();
  CHECK_FALSE(open.find<QTableWidget>("sick_traits")->isVisible());
  CHECK_FALSE(tab.save_shared(open.folder.filePath(QStringLiteral("none.txt"))));
  trees->item(2, 0)->setCheckState(Qt::Checked);
  tab.job().wait();
  CHECK(open.find<QLabel>("sick_which")->text().contains(trees->item(2, 0)->text()));
  open.find<QPushButton>("sick_again")->click();
  tab.job().wait();
  CHECK(trees->item(0, 0)->checkState() == Qt::Checked);
  CHECK(open.find<QLabel>("sick_which")->text().contains(QStringLiteral("TR-03")));
}

TEST_CASE("The log tells what was seen of a tree and what it was repotted into, and finds it by these words", "[log_page][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.window.record_pages()->show_trees();
  open.window.record_pages()->trees().show_trees();
  open.window.record_pages()->trees().trees().list().show_record(QStringLiteral("TR-03"));
  auto* seen = open.find<QComboBox>("tree_seen_as");
  seen->setCurrentIndex(seen->findData(static_cast<int>(Condition::sick)));
  open.find<QLineEdit>("tree_seen_note")->setText(QStringLiteral("needles yellow"));
  open.find<QPushButton>("tree_seen_keep")->click();
  open.find<QLineEdit>("tree_repotted_day")->setText(QStringLiteral("2026-02-02"));
  open.find<QLineEdit>("tree_repotted_note")->setText(QStringLiteral("emergency pot"));
  open.find<QPushButton>("tree_repotted_keep")->click();
  open.trigger("action_page_log");
  auto* table = open.find<QTableView>("log_table");
  auto* find = open.find<QLineEdit>("log_find");
  for (const char* words : {"sick needles", "emergency"}) {
    find->setText(QLatin1String(words));
    INFO(words);
    REQUIRE(table->model()->rowCount() == 1);
    CHECK(table->model()->index(0, 1).data().toString().startsWith(QStringLiteral("TR-03 ")));
  }
  find->setText(QStringLiteral("nosuchword"));
  CHECK(std::ranges::any_of(open.window.findChildren<QLabel*>(), [](const QLabel* label) { return label->isVisible() && label->text().contains(QStringLiteral("Nothing fits Find")); }));
}

TEST_CASE("Where grain went, asked from the log, is that of what the log is narrowed to", "[log_page][trace][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_log");
  open.find<QLineEdit>("log_about")->setText(QStringLiteral("P-03"));
  open.trigger("action_trace_grain");
  CHECK(open.find<QLineEdit>("trace_of")->text() == QStringLiteral("P-03"));
  CHECK(open.find<QTableWidget>("trace_trees")->rowCount() > 0);
}
