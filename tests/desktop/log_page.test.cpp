#include "pages/log_page.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTableView>

#include "models/demonstration_record.hpp"
#include "record_pages.hpp"
#include "support.hpp"

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
