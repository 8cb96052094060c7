// What somebody met who did a first season's work by keyboard: typing that outlives the window, undo from any line, keys that lead on.
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <memory>
#include <vector>

#include "jump_targets.hpp"
#include "models/demonstration_record.hpp"
#include "models/root_plan_desk.hpp"
#include "models/sieve_table_model.hpp"
#include "pages/bags_page.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

/// A second window on the record, as it is opened when the first one is gone.
struct WindowAfterwards {
  explicit WindowAfterwards(const RecordBook& gone) : record(RecordBook::open(gone.file()).value()), bench(test_catalogue()), window(bench, record.get()) {
    window.resize(1280, 800);
    window.show();
    QApplication::setActiveWindow(&window);
  }

  std::unique_ptr<RecordBook> record;
  Bench bench;
  MainWindow window;
};

QString kept_tree(OpenWindow& open, const char* name) {
  Tree tree;
  tree.name = name;
  tree.group = SpeciesGroup::conifer;
  return open.record->add(tree, QStringLiteral("tree"));
}

void show_tree(MainWindow& window, const QString& id) {
  window.record_pages()->show_trees();
  window.record_pages()->trees().show_trees();
  window.record_pages()->trees().trees().list().show_record(id);
}

}  // namespace

TEST_CASE("A line begun in the log stands there again after the window with what it is about, and is gone once it is written down", "[first_season]") {
  OpenWindow open;
  const QString pine = kept_tree(open, "pine");
  open.find<QLineEdit>("log_about")->setText(pine);
  open.trigger("action_write_down");
  open.type(QStringLiteral("first frost"));
  {
    WindowAfterwards again(*open.record);
    auto* line = again.window.findChild<QLineEdit*>(QStringLiteral("log_text"));
    CHECK(line->text() == QStringLiteral("first frost"));
    again.window.findChild<QAction*>(QStringLiteral("action_write_down"))->trigger();
    QTest::keyClick(line, Qt::Key_Return);
    std::vector<std::vector<RecordRef>> about;
    for (const auto& entry : again.record->workbook().all<LogEntry>())
      if (entry.record.text == "first frost") about.push_back(entry.record.about);
    REQUIRE(about.size() == 1);
    CHECK(about.front() == std::vector{RecordRef{RecordKind::tree, pine.toStdString()}});
  }
  WindowAfterwards third(*open.record);
  CHECK(third.window.findChild<QLineEdit*>(QStringLiteral("log_text"))->text().isEmpty());
  CHECK(third.window.findChild<QLineEdit*>(QStringLiteral("log_about"))->text().isEmpty());
}

TEST_CASE("What is begun for a tree waits for that tree with all that was chosen, also after the window, and for no other", "[first_season]") {
  OpenWindow open;
  RecordedContainer pot;
  pot.container.name = "tray";
  pot.container.rim = {length_cm(30), length_cm(20)};
  pot.container.base = pot.container.rim;
  pot.container.depth = depth_cm(6);
  const QString tray = open.record->add(pot, QStringLiteral("pot"));
  const QString pine = kept_tree(open, "pine");
  const QString maple = kept_tree(open, "maple");
  show_tree(open.window, pine);
  open.find<QLineEdit>("tree_seen_note")->setFocus();
  open.type(QStringLiteral("needles pale"));
  open.find<QLineEdit>("tree_repotted_note")->setFocus();
  open.type(QStringLiteral("cut by half"));
  open.find<QLineEdit>("tree_repotted_day")->setText(QStringLiteral("2024-03-10"));
  open.find<QComboBox>("tree_seen_as")->setFocus();
  for (int down = 0; down < 2; ++down) open.press(Qt::Key_Down);  // past "watch" to "sick"
  open.find<QComboBox>("tree_repotted_pot")->setFocus();
  open.press(Qt::Key_Down);
  open.find<QCheckBox>("tree_bare_rooted")->click();
  WindowAfterwards again(*open.record);
  const auto text = [&](const char* name) { return again.window.findChild<QLineEdit*>(QLatin1String(name))->text(); };
  const auto chosen = [&](const char* name) { return again.window.findChild<QComboBox*>(QLatin1String(name))->currentData(); };
  show_tree(again.window, maple);
  CHECK(text("tree_seen_note").isEmpty());
  CHECK(text("tree_repotted_note").isEmpty());
  CHECK(text("tree_repotted_day").isEmpty());
  CHECK(chosen("tree_seen_as").toInt() == static_cast<int>(Condition::thriving));
  CHECK(chosen("tree_repotted_pot").toString().isEmpty());
  CHECK_FALSE(again.window.findChild<QCheckBox*>(QStringLiteral("tree_bare_rooted"))->isChecked());
  show_tree(again.window, pine);
  CHECK(text("tree_seen_note") == QStringLiteral("needles pale"));
  CHECK(text("tree_repotted_note") == QStringLiteral("cut by half"));
  CHECK(text("tree_repotted_day") == QStringLiteral("2024-03-10"));
  again.window.findChild<QPushButton*>(QStringLiteral("tree_seen_keep"))->click();
  again.window.findChild<QPushButton*>(QStringLiteral("tree_repotted_keep"))->click();
  const Tree written = again.record->workbook().find(Id<Tree>{pine.toStdString()})->record;
  REQUIRE(written.conditions.size() == 1);
  CHECK(written.conditions.front().condition == Condition::sick);
  REQUIRE(written.repottings.size() == 1);
  CHECK(written.repottings.front().container == std::optional(Id<RecordedContainer>{tray.toStdString()}));
  CHECK(written.repottings.front().bare_rooted);
  show_tree(again.window, maple);
  show_tree(again.window, pine);
  CHECK(text("tree_seen_note").isEmpty());
  CHECK(text("tree_repotted_day").isEmpty());
  CHECK(chosen("tree_repotted_pot").toString().isEmpty());
}

TEST_CASE("Enter in the note on a repotting writes it down, and goes to the day where that can't be read", "[first_season]") {
  OpenWindow open;
  const QString pine = kept_tree(open, "pine");
  show_tree(open.window, pine);
  const auto repottings = [&] { return open.record->workbook().find(Id<Tree>{pine.toStdString()})->record.repottings; };
  open.find<QLineEdit>("tree_repotted_day")->setText(QStringLiteral("10 March"));
  open.find<QLineEdit>("tree_repotted_note")->setFocus();
  open.type(QStringLiteral("cut by half"));
  open.press(Qt::Key_Return);
  CHECK(repottings().empty());
  CHECK(open.find<QLabel>("tree_history_fault")->isVisible());
  CHECK(QApplication::focusWidget() == open.find("tree_repotted_day"));
  open.find<QLineEdit>("tree_repotted_day")->selectAll();
  open.type(QStringLiteral("2024-03-10"));
  open.press(Qt::Key_Return);
  REQUIRE(repottings().size() == 1);
  CHECK(repottings().front().note == "cut by half");
  // A second Enter writes it no second time.
  CHECK(open.find<QLineEdit>("tree_repotted_day")->text().isEmpty());
  open.find<QLineEdit>("tree_repotted_note")->setFocus();
  open.press(Qt::Key_Return);
  CHECK(repottings().size() == 1);
}

TEST_CASE("A plan without a mix shows none when it is come to again from its tree", "[first_season][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const QString pine = kept_tree(open, "pine");
  show_tree(open.window, pine);
  RootPlanTab& plans = open.window.record_pages()->trees().plans();
  for (int time = 0; time < 2; ++time) {
    open.window.record_pages()->trees().show_plans();
    plans.plan_tree(pine);
    const auto kept = plans.desk().kept();
    REQUIRE(kept);
    REQUIRE_FALSE(kept->record.mix);
    CHECK(open.find<QComboBox>("plan_mix")->currentText() == QStringLiteral("none yet"));
  }
}

TEST_CASE("A plan is called after the pot it is for, also when that is changed, until it is given a name", "[first_season][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const QString pine = kept_tree(open, "pine");
  show_tree(open.window, pine);
  open.window.record_pages()->trees().show_plans();
  RootPlanTab& plans = open.window.record_pages()->trees().plans();
  plans.plan_tree(pine);
  auto* pots = open.find<QComboBox>("plan_pot");
  const auto take_pot = [&](int index) {
    pots->setCurrentIndex(index);
    emit pots->activated(index);
    return open.record->workbook().find(Id<RecordedContainer>{pots->itemData(index).toString().toStdString()})->record.container.name;
  };
  const int other = pots->currentIndex() == 0 ? 1 : 0;
  const std::string pot = take_pot(other);
  CHECK(plans.desk().kept()->record.name == "pine into " + pot);
  const auto kept = *plans.desk().kept();
  KeptRootMassPlan named = kept.record;
  named.name = "spring work";
  REQUIRE(open.record->replace(kept, named, QStringLiteral("name")));
  take_pot(1 - other);
  CHECK(plans.desk().kept()->record.name == "spring work");
}

TEST_CASE("From a line with nothing to undo the keys of undo and redo are the record's", "[first_season]") {
  OpenWindow open;
  const QString pine = kept_tree(open, "pine");
  const auto there = [&] { return open.record->workbook().find(Id<Tree>{pine.toStdString()}).has_value(); };
  for (const char* name : {"log_find", "log_text", "bags_find"}) {
    INFO(name);
    open.trigger(QLatin1String(name).startsWith(QLatin1String("log")) ? "action_page_log" : "action_page_bags");
    open.find<QLineEdit>(name)->setFocus();
    open.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(there());
    open.press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(there());
    open.type(QStringLiteral("half"));
    open.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(open.find<QLineEdit>(name)->text().isEmpty());
    CHECK(there());
  }
}

TEST_CASE("A line taken out of the log by undo does not come back as typing", "[first_season]") {
  OpenWindow open;
  open.trigger("action_write_down");
  open.type(QStringLiteral("first frost"));
  open.press(Qt::Key_Return);
  REQUIRE(open.record->workbook().count(RecordKind::log_entry) == 1);
  open.press(Qt::Key_Z, Qt::ControlModifier);
  CHECK(open.record->workbook().count(RecordKind::log_entry) == 0);
  CHECK(open.find<QLineEdit>("log_text")->text().isEmpty());
}

TEST_CASE("Going to a bag that is on screen books its own stock again, not that of the fraction chosen before", "[first_season][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  BagsPage& bags = open.window.record_pages()->bags();
  open.trigger("action_page_bags");
  const Stored<Fraction> fraction = open.record->workbook().all<Fraction>().front();
  const auto booked_of = [&] {
    open.find<QLineEdit>("bag_stock_amount")->setText(QStringLiteral("100 g"));
    open.find<QPushButton>("bag_stock_enter")->click();
    return open.record->workbook().all<StockEntry>().back().record.holder.id;
  };
  bags.show_bag(QStringLiteral("A-11"));
  CHECK(booked_of() == "A-11");
  bags.show_fraction(to_qt(fraction.id.text));
  CHECK(booked_of() == fraction.id.text);
  bags.show_bag(QStringLiteral("A-11"));
  CHECK(booked_of() == "A-11");
}

TEST_CASE("Who goes to a record by its number has the keys in its list, so that nothing is typed into a field by accident", "[first_season]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const auto go = [&](const char* id) {
    for (const JumpBox::Target& target : jump_targets(open.window, open.bench, open.record.get(), QLatin1String(id)))
      if (target.text.contains(QLatin1String(id))) return target.go();
    FAIL("nothing is called " << id);
  };
  open.trigger("action_page_bags");
  open.find<QLineEdit>("bag_received")->setFocus();
  go("A-11");
  CHECK(QApplication::focusWidget() == open.find("bags_table"));
  go("TR-02");
  CHECK(QApplication::focusWidget() == &open.window.record_pages()->trees().trees().list().table());
  open.find<QLineEdit>("tree_name")->setFocus();
  go("TR-03");
  CHECK(QApplication::focusWidget() == &open.window.record_pages()->trees().trees().list().table());
}

TEST_CASE("The row of a verdict's table that the keys come to is in sight", "[first_season]") {
  OpenWindow open;
  BenchState state = complete_bench();
  state.components[0] = finished_component(QStringLiteral("P-1"), QStringLiteral("pumice"), {{"8", "60"}, {"5.6", "90"}, {"4", "110"}, {"2.8", "80"}, {"2", "40"}, {"1", "30"}}, "25", "435");
  state.band_from = QStringLiteral("2");
  state.band_to = QStringLiteral("6");
  open.bench.open(state);
  open.window.resize(1024, 700);
  open.trigger("action_show_verdict");
  for (const char* name : {"verdict_fractions", "verdict_openings"}) {
    auto* table = open.find<QTableWidget>(name);
    REQUIRE(table->rowCount() > 1);
    table->setFocus(Qt::TabFocusReason);
    for (int row = 0; row < table->rowCount(); ++row) {
      INFO(name << ", row " << row);
      table->setCurrentCell(row, 0);
      const QRect cell = table->visualRect(table->currentIndex());
      const QPoint middle = table->viewport()->mapTo(&open.window, cell.center());
      CHECK(table->viewport()->visibleRegion().contains(cell.center()));
      CHECK(open.window.rect().contains(middle));
    }
  }
}

TEST_CASE("Net and sum are shown as finely as a balance weighs, and below zero there is no sum", "[first_season][regression]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("measure"), {}, [](BenchState& state) { state.components[0].sheet.measure = Measure::gross_and_tare; });
  open.go_to_cell(0, SieveTableModel::retained);
  open.type(QStringLiteral("421.0"));
  open.press(Qt::Key_Tab);
  open.type(QStringLiteral("311.5"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(0, SieveTableModel::net) == local("109.5 g"));
  CHECK(open.find<QLabel>("balance")->text().contains(local("109.5 g")));
  open.go_to_cell(0, SieveTableModel::retained);
  open.type(QStringLiteral("66"));
  open.press(Qt::Key_Return);
  CHECK(open.find<QLabel>("balance")->text().contains(QStringLiteral("\u2013")));
}

TEST_CASE("Fractions that weigh more than the sample, with no pan above it, mark the sample's mass", "[first_season][refuses]") {
  OpenWindow open;
  BenchState state = complete_bench();
  state.components[0] = finished_component(QStringLiteral("P-1"), QStringLiteral("pumice"), {{"8", "40.1"}, {"4", "197.8"}, {"2", "119"}}, "53.7", "395");
  open.bench.open(state);
  CHECK(open.bench.evaluation().components[0].faults.contains("/dry_mass_g"));
  CHECK(open.find<QLineEdit>("dry_mass")->accessibleDescription().contains(local("410.6 g")));
  CHECK(open.cell(0, SieveTableModel::check).isEmpty());
}
