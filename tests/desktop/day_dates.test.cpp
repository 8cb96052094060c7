// A repotting day that gets another date: what moves along with it, when its typing ends, and what outlives a crash.
#include <QAction>
#include <QSettings>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "day_trees_on_screen.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("A day that gets another date takes its histories with it", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  open.type_into("day_date", QStringLiteral("2031-03-14"));
  open.trigger("action_day_tick");
  open.return_tub("30", "20");
  open.type_into("day_date", QStringLiteral("2031-03-15"));
  CHECK(open.day().day == "2031-03-15");
  CHECK(open.tree(id).repottings.back().day == "2031-03-15");
  CHECK(open.book().all<Batch>().back().record.day == "2031-03-15");
  open.trigger("action_record_undo");
  CHECK(open.tree(id).repottings.back().day == "2031-03-14");
  // So the tick can still be taken back.
  open.trigger("action_day_tick");
  CHECK(open.tree(id).repottings.size() == 1);
}

TEST_CASE("A day that gets another date takes the ledger's lines of its date with it, in one step", "[day_page]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  const auto lines_on = [&](const std::string& day) {
    std::size_t count = 0;
    for (const auto& entry : open.book().all<StockEntry>()) count += entry.record.other == RecordRef{RecordKind::repotting_day, open.page().current_day().toStdString()} && entry.record.day == day;
    return count;
  };
  open.trigger("action_day_tick");
  open.return_tub("30", "20");
  const std::size_t booked = lines_on(was);
  REQUIRE(booked > 0);
  const auto stock = stock_g(open.book());
  open.type_into("day_date", QStringLiteral("2031-03-15"));
  CHECK(lines_on(was) == 0);
  CHECK(lines_on("2031-03-15") == booked);
  check_same(stock_g(open.book()), stock);
  open.trigger("action_record_undo");
  CHECK(open.day().day == was);
  CHECK(lines_on(was) == booked);
  // What is booked later than the day stands under its own date, and stays there.
  open.type_into("day_date", QStringLiteral("2020-03-15"));
  open.write(0, DayTreesModel::used, QStringLiteral("40"));
  const std::size_t later = lines_on(was);
  REQUIRE(later > 0);
  open.type_into("day_date", QStringLiteral("2020-03-16"));
  CHECK(lines_on(was) == later);
  CHECK(lines_on("2020-03-16") == booked);
}

TEST_CASE("A day that gets another date takes the log's lines of its work with it, and no others", "[day_page][regression]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  open.trigger("action_day_tick");
  open.return_tub("30", "20");
  const auto lines_on = [&](const std::string& day, const std::string& beginning) {
    const auto lines = open.book().all<LogEntry>();
    return std::ranges::count_if(lines, [&](const auto& line) { return line.record.day == day && line.record.text.starts_with(beginning); });
  };
  REQUIRE(lines_on(was, "Repotted ") == 1);
  REQUIRE(lines_on(was, "Made ") == 1);
  const auto made_the_day = lines_on(was, "repotting day ");
  REQUIRE(made_the_day > 0);
  open.type_into("day_date", QStringLiteral("2031-3-15"));
  CHECK(open.day().day == "2031-03-15");
  for (const char* beginning : {"Repotted ", "Made "}) {
    INFO(beginning);
    CHECK(lines_on(was, beginning) == 0);
    CHECK(lines_on("2031-03-15", beginning) == 1);
  }
  CHECK(lines_on(was, "repotting day ") == made_the_day);
  open.trigger("action_record_undo");
  CHECK(lines_on(was, "Repotted ") == 1);
}

TEST_CASE("The date of a day on which a tree is done is moved once, when its typing ends", "[day_page][regression]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  open.trigger("action_day_tick");
  const auto steps = open.book().count(RecordKind::log_entry);
  auto* date = open.find<QLineEdit>("day_date");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(0);
  date->setFocus();
  date->selectAll();
  open.type(QStringLiteral("2031-03-15"));
  CHECK(open.day().day == was);
  open.press(Qt::Key_Return);
  CHECK(open.day().day == "2031-03-15");
  CHECK(open.book().count(RecordKind::log_entry) == steps + 1);
}

TEST_CASE("A date that is being typed on a done day outlives a crash: it stands in its field again and is saved by Enter alone", "[day_page][regression]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  const QString id = open.page().current_day();
  open.trigger("action_day_tick");
  auto* date = open.find<QLineEdit>("day_date");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(0);
  date->setFocus();
  date->selectAll();
  open.type(QStringLiteral("2031-03-15"));
  // From here on the first window is as good as dead.
  date->blockSignals(true);
  date->removeEventFilter(date->parent());
  const auto day_in = [&](const OpenWorkbook& workbook) { return workbook.find(Id<RepottingDay>{id.toStdString()})->record.day; };
  {
    auto record = RecordBook::open(open.record->file());
    REQUIRE(record);
    Bench bench(test_catalogue());
    MainWindow window(bench, record->get());
    window.resize(1280, 800);
    window.show();
    QApplication::setActiveWindow(&window);
    window.findChild<QAction*>(QStringLiteral("action_page_day"))->trigger();
    window.findChild<DayPage*>(QStringLiteral("day_page"))->show_day(id);
    window.findChild<QTabWidget*>(QStringLiteral("day_tabs"))->setCurrentIndex(0);
    QApplication::processEvents();
    auto* again = window.findChild<QLineEdit*>(QStringLiteral("day_date"));
    CHECK(again->text() == QStringLiteral("2031-03-15"));
    CHECK(again->accessibleDescription().contains(QStringLiteral("not saved")));
    CHECK(day_in((*record)->workbook()) == was);
    // Half a date must not move a day because somebody passed by.
    again->setFocus();
    QTest::keyClick(again, Qt::Key_Tab);
    CHECK(day_in((*record)->workbook()) == was);
    again->setFocus();
    QTest::keyClick(again, Qt::Key_Return);
    CHECK(day_in((*record)->workbook()) == "2031-03-15");
    CHECK_FALSE(again->accessibleDescription().contains(QStringLiteral("not saved")));
  }
  auto record = RecordBook::open(open.record->file());
  REQUIRE(record);
  Bench bench(test_catalogue());
  MainWindow window(bench, record->get());
  window.findChild<QAction*>(QStringLiteral("action_page_day"))->trigger();
  window.findChild<DayPage*>(QStringLiteral("day_page"))->show_day(id);
  CHECK(window.findChild<QLineEdit*>(QStringLiteral("day_date"))->text() == day_text("2031-03-15"));
  CHECK_FALSE(window.findChild<QLineEdit*>(QStringLiteral("day_date"))->accessibleDescription().contains(QStringLiteral("not saved")));
}

TEST_CASE("A date that outlived a crash is given up by Escape, and the day stays", "[day_page]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  open.trigger("action_day_tick");
  auto* date = open.find<QLineEdit>("day_date");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(0);
  QSettings().setValue(QStringLiteral("typed/%1/%2/day_date").arg(open.record->settings_key(), open.page().current_day()), QStringLiteral("2031-03-15"));
  const QString day = open.page().current_day();
  open.trigger("action_new_day");
  open.page().show_day(day);
  CHECK(date->text() == QStringLiteral("2031-03-15"));
  date->setFocus();
  open.press(Qt::Key_Escape);
  CHECK(date->text() == day_text(was));
  open.trigger("action_new_day");
  open.page().show_day(day);
  CHECK(date->text() == day_text(was));
  CHECK(open.day().day == was);
}

TEST_CASE("A tree ticked off after its day has its grain booked on that day", "[day_page][regression]") {
  DayOnScreen open;
  open.type_into("day_date", QStringLiteral("2020-03-20"));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const RecordRef day{RecordKind::repotting_day, open.page().current_day().toStdString()};
  std::size_t lines = 0;
  for (const auto& entry : open.book().all<StockEntry>()) {
    if (entry.record.other != day) continue;
    CHECK(entry.record.day == "2020-03-20");
    ++lines;
  }
  CHECK(lines > 0);
}
