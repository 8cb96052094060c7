// Corrections of a repotting day after the tick: what is typed sign by sign, plans that are not there, days of earlier versions.
#include <QFocusEvent>
#include <QStatusBar>
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "day_trees_on_screen.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// A tree with layers, ticked off, of which a field of the tab "Tree" is typed into by the keyboard.
class TickedDressedPine : public DressedPine {
 public:
  TickedDressedPine() {
    trigger("action_day_tick");
    REQUIRE(day().trees.front().done);
    find<QTabWidget>("day_tabs")->setCurrentIndex(1);
    ticked = day();
  }

  void type_over(const char* field, const QString& text) {
    find<QLineEdit>(field)->setFocus();
    find<QLineEdit>(field)->selectAll();
    type(text);
  }

  RepottingDay ticked;
};

}  // namespace

TEST_CASE("What is typed into a tree that is done is one correction, however typing ends", "[day_page][regression]") {
  TickedDressedPine open;
  // What is typed on the way to "LV-012" names a bag that is there.
  Bag lava;
  lava.material = "lava";
  lava.volume = loose_l(10);
  lava.bulk_density = bulk_g_l(900);
  const std::string whole = open.record->add(lava, QStringLiteral("bag"), QStringLiteral("LV-012")).toStdString();
  REQUIRE_FALSE(open.record->add(lava, QStringLiteral("bag"), QStringLiteral("LV-01")).isEmpty());
  const double grit_l = open.gone_l(open.grit);
  const std::size_t entries = open.book().count(RecordKind::stock_entry);
  const std::size_t lines = open.book().count(RecordKind::log_entry);
  open.type_over("day_tree_top_dressing", QStringLiteral("LV-012"));
  CHECK(open.day() == open.ticked);
  CHECK(open.book().count(RecordKind::stock_entry) == entries);
  CHECK(open.find<QLineEdit>("day_tree_top_dressing")->text() == QStringLiteral("LV-012"));
  const int way = GENERATE(0, 1, 2, 3, 4, 5, 6, 7);
  CAPTURE(way);
  switch (way) {
    case 0: open.press(Qt::Key_Return); break;
    case 1: open.press(Qt::Key_Tab); break;
    case 2: open.find<QTableView>("day_table")->setFocus(); break;
    case 3: open.find<QTabWidget>("day_tabs")->setCurrentIndex(0); break;
    case 4: open.trigger("action_page_log"); break;
    case 5: open.page().set_units(UnitSystem::us); break;
    case 6: open.window.close(); break;
    default: {
      // Another window comes to the front.
      QFocusEvent left(QEvent::FocusOut, Qt::ActiveWindowFocusReason);
      QApplication::sendEvent(open.find<QLineEdit>("day_tree_top_dressing"), &left);
    }
  }
  QApplication::processEvents();
  CHECK(open.day().trees.front().top_dressing == whole);
  CHECK_THAT(open.gone_l(open.grit), WithinAbs(0, 1e-6));
  CHECK_THAT(open.gone_l({RecordKind::bag, whole}), WithinRel(grit_l, 1e-6));
  CHECK(open.book().all<StockEntry>().size() > entries);
  for (const auto& entry : open.book().all<StockEntry>()) CHECK(entry.record.holder.id != "LV-01");
  CHECK(open.book().count(RecordKind::log_entry) == lines + 1);
  open.record->undo();
  CHECK(open.day() == open.ticked);
  CHECK(open.book().count(RecordKind::stock_entry) == entries);
  CHECK(open.book().count(RecordKind::log_entry) == lines);
}

TEST_CASE("What is typed and not yet saved is a step of its own before an undo, and is taken back by it", "[day_page][regression]") {
  TickedDressedPine open;
  open.type_over("day_tree_sphagnum", QStringLiteral("1.2"));
  SECTION("undo") {
    open.trigger("action_record_undo");
    CHECK(open.day() == open.ticked);
    CHECK(open.find<QLineEdit>("day_tree_sphagnum")->text() == local("0.8"));
  }
  SECTION("the tick taken back") {
    open.trigger("action_day_tick");
    CHECK_FALSE(open.day().trees.front().done);
    CHECK(open.day().trees.front().sphagnum == pot_ml(1200));
    CHECK_THAT(open.gone_l(open.moss), WithinAbs(0, 1e-6));
  }
}

TEST_CASE("What is typed into one tree is saved for it when another comes to the front", "[day_page][regression]") {
  TickedDressedPine open;
  open.put(open.add_tree("second pine"));
  const int first = open.lines().line_of(QString::fromStdString(open.id));
  auto* table = open.find<QTableView>("day_table");
  table->setCurrentIndex(open.lines().index(first, DayTreesModel::tree));
  open.type_over("day_tree_sphagnum", QStringLiteral("1.2"));
  SECTION("saved") {
    table->setCurrentIndex(open.lines().index(1 - first, DayTreesModel::tree));
    const RepottingDay day = open.day();
    for (const DayTree& tree : day.trees) CHECK(tree.sphagnum == (tree.tree.text == open.id ? std::optional(pot_ml(1200)) : std::nullopt));
  }
  SECTION("told, where it can't be read") {
    open.type(QStringLiteral("x"));
    table->setCurrentIndex(open.lines().index(1 - first, DayTreesModel::tree));
    CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("1.2x")));
  }
}

TEST_CASE("A correction that can't be made says so at its field, and what was typed stays", "[day_page][refuses][regression]") {
  TickedDressedPine open;
  const auto stored = open.book().find(Id<Tree>{open.id});
  Tree without = stored->record;
  without.repottings.pop_back();
  REQUIRE(open.record->replace(*stored, without, QStringLiteral("tree")));
  open.type_over("day_tree_sphagnum", QStringLiteral("1.2"));
  open.press(Qt::Key_Return);
  CHECK(open.day() == open.ticked);
  CHECK(open.find<QLineEdit>("day_tree_sphagnum")->text() == QStringLiteral("1.2"));
  CHECK(open.find<QLineEdit>("day_tree_sphagnum")->accessibleDescription().contains(QStringLiteral("no longer in its history")));
}

TEST_CASE("A plan is named by its letter however it is typed, and by none other than those there are", "[day_page][refuses][regression]") {
  PlannedPineOnDay open;
  const auto planned = plan_of_tree(open.book(), test_catalogue(), Id<Tree>{open.id});
  REQUIRE(planned);
  open.write(0, DayTreesModel::plan, QStringLiteral(" b "));
  CHECK(open.day().trees.front().plan_name == "B");
  // The record keeps seven digits.
  const auto planned_l = [&] { return in_l(*open.day().trees.front().planned); };
  CHECK_THAT(planned_l(), WithinRel(in_l(planned->fills[1]), 1e-6));
  const RepottingDay day = open.day();
  open.write(0, DayTreesModel::plan, QStringLiteral("Z"));
  CHECK(open.day() == day);
  const std::string last(1, static_cast<char>('A' + planned->fills.size() - 1));
  CHECK(open.window.statusBar()->currentMessage().contains(QString::fromStdString("has no plan Z; its root-mass plan has A, B")));
  CHECK(open.window.statusBar()->currentMessage().endsWith(QString::fromStdString(last)));
  open.tick(0);
  CHECK(open.last().plan_name == "B");
  REQUIRE(open.last().removed_share);
  CHECK_THAT(open.last().removed_share->value(), WithinAbs(open.b.removed_share, 1e-7));
  SECTION("on a done row") {
    const RepottingDay done = open.day();
    open.write(0, DayTreesModel::plan, QStringLiteral("z"));
    CHECK(open.day() == done);
    open.write(0, DayTreesModel::plan, QStringLiteral("a"));
    CHECK(open.last().plan_name == "A");
    CHECK(open.day().trees.front().sphagnum == sphagnum_of(*planned, 0));
    // Emptied, it is what was planned: B, with B's pot and sphagnum.
    open.write(0, DayTreesModel::plan, {});
    CHECK(open.day() == done);
    CHECK(open.last().plan_name == "B");
  }
  SECTION("emptied on an open row") {
    open.tick(0);
    open.write(0, DayTreesModel::plan, {});
    CHECK(open.day().trees.front().plan_name == "A");
    CHECK_THAT(planned_l(), WithinRel(in_l(planned->fills[0]), 1e-6));
  }
}

TEST_CASE("A tree ticked off by a plan that is gone says that its history has no cuts", "[day_page][regression]") {
  PlannedPineOnDay open;
  open.delete_plan();
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  CHECK_FALSE(open.last().removed_share);
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("has no cuts")));
}

TEST_CASE("A day of which tubs were made and no tree is done takes them along to another date", "[day_page][regression]") {
  DayOnScreen open;
  const std::string was = open.day().day;
  open.return_tub("5", "2");
  const RecordRef day{RecordKind::repotting_day, open.page().current_day().toStdString()};
  const auto lines = open.book().all<StockEntry>();
  REQUIRE(std::ranges::any_of(lines, [&](const auto& entry) { return entry.record.other == day && entry.record.day == was; }));
  open.type_into("day_date", QStringLiteral("2031-03-15"));
  CHECK(open.book().all<Batch>().back().record.day == "2031-03-15");
  for (const auto& entry : open.book().all<StockEntry>())
    if (entry.record.other == day) CHECK(entry.record.day == "2031-03-15");
  open.trigger("action_record_undo");
  CHECK(open.day().day == was);
  CHECK(open.book().all<Batch>().back().record.day == was);
}

TEST_CASE("A day of an earlier version, where a tub kept what its trees took, is settled by what stands in the ledger", "[day_page][regression]") {
  ThreePines open;
  open.return_tub("5", "0");
  const std::string tub = open.book().all<Batch>().back().id.text;
  const auto note_of = [&](int row) { return open.day().trees[static_cast<std::size_t>(row)].tree.text; };
  /// Leaves a share of a tree's lines under the tub.
  const auto leave_under_tub = [&](int row, double share) {
    for (const auto& entry : open.book().all<StockEntry>()) {
      if (entry.record.note != note_of(row)) continue;
      StockEntry part = entry.record;
      StockEntry rest = entry.record;
      part.note = tub;
      part.change = part.change * share;
      rest.change = rest.change * (1 - share);
      REQUIRE(open.record->replace(entry, share < 1 ? rest : part, QStringLiteral("old form")));
      if (share < 1) open.record->add(part, QStringLiteral("old form"));
    }
  };
  open.fill_and_tick(0, 3);
  SECTION("one tree was ticked off") {
    leave_under_tub(0, 1);
    REQUIRE_THAT(open.under_l(0), WithinAbs(0, 1e-6));
    open.fill_and_tick(1, 4);
  }
  SECTION("two were, and the second found too little in the tub") {
    open.fill_and_tick(1, 4);
    leave_under_tub(0, 1);
    leave_under_tub(1, 0.5);
    REQUIRE_THAT(open.under_l(1), WithinAbs(2, 1e-6));
    open.fill(1, 5);
    CHECK_THAT(open.gone_l(), WithinRel(8.0, 1e-6));
    open.fill(1, 4);
  }
  // Worked by hand: 3 + 4 L beyond the 5 L made; without either tree the 5 L of the tub stay gone.
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
  CHECK_THAT(open.under_l(0), WithinRel(3.0, 1e-5));
  CHECK_THAT(open.under_l(1), WithinRel(4.0, 1e-5));
  const int first = GENERATE(0, 1);
  open.tick(first);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  CHECK_THAT(open.under_l(first), WithinAbs(0, 1e-6));
  open.tick(1 - first);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
}

TEST_CASE("Layers that an earlier version booked under one note follow a correction each for itself", "[day_page][regression]") {
  DressedPine open;
  const auto before = stock_g(open.book());
  open.trigger("action_day_tick");
  const double moss_l = open.gone_l(open.moss);
  const double grit_l = open.gone_l(open.grit);
  REQUIRE(grit_l > 0);
  for (const auto& entry : open.book().all<StockEntry>()) {
    if (!entry.record.note.starts_with(open.id + ", layers: ")) continue;
    StockEntry old = entry.record;
    old.note = open.id + ", layers";
    REQUIRE(open.record->replace(entry, old, QStringLiteral("old form")));
  }
  const RecordRef other = open.add_bag("lava", 900);
  open.type_into("day_tree_top_dressing", QString::fromStdString(other.id));
  CHECK_THAT(open.gone_l(open.grit), WithinAbs(0, 1e-6));
  CHECK_THAT(open.gone_l(other), WithinRel(grit_l, 1e-6));
  open.type_into("day_tree_sphagnum", QStringLiteral("0.2"));
  CHECK_THAT(open.gone_l(open.moss), WithinRel(moss_l / 4, 1e-6));
  open.trigger("action_day_tick");
  check_same(stock_g(open.book()), before);
}
