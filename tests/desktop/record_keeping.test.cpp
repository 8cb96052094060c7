// What keeps a record from being lost, seen from the window: backups and the way back to them, files that can't be opened, other windows.
#include <SQLiteCpp/Database.h>

#include <QAction>
#include <QCryptographicHash>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStatusBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTimer>
#include <QTableView>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

#include "gritwright/workbook/backups.hpp"
#include "day_room.hpp"
#include "models/day_trees_model.hpp"
#include "models/demonstration_record.hpp"
#include "models/record_list_model.hpp"
#include "pages/bags_page.hpp"
#include "pages/day_page.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "pages/trouble_page.hpp"
#include "record_pages.hpp"
#include "record_session.hpp"
#include "support.hpp"
#include "support/paths.hpp"
#include "widgets/backups_card.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

namespace fs = std::filesystem;

std::string all_bytes(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}
void put_bytes(const fs::path& file, const std::string& bytes) { std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes; }

/// A record in a folder of its own, written to on as many days of March 2026 as asked for, one bag a day.
struct Kept {
  explicit Kept(int days) {
    for (int day = 1; day <= days; ++day) {
      OpeningOptions options;
      options.clock = [day] { return std::chrono::sys_days(std::chrono::year(2026) / 3 / day) + std::chrono::hours(12); };
      options.placement = Placement::local;
      auto workbook = OpenWorkbook::open(file, std::move(options));
      REQUIRE(workbook);
      Bag bag;
      bag.material = "akadama";
      REQUIRE(workbook->add(bag, "a bag"));
    }
  }
  QTemporaryDir folder;
  fs::path file = fs::path(folder.path().toStdString()) / "nursery.gritwright";
  [[nodiscard]] QString name() const { return QString::fromStdString(file.string()); }
};

/// A session as the program runs it, on an empty bench.
struct Running {
  explicit Running(const QString& file) : bench(test_catalogue()), session(bench, file, {}) { session.open(file); }
  Bench bench;
  RecordSession session;

  template <class Widget = QWidget>
  Widget* find(const char* object_name) {
    auto* found = session.window().findChild<Widget*>(QString::fromLatin1(object_name));
    INFO("object name " << object_name);
    REQUIRE(found != nullptr);
    return found;
  }
  BackupsCard& looked_through() {
    auto* card = session.window().findChild<BackupsCard*>();
    REQUIRE(card != nullptr);
    while (card->job().is_running()) card->job().wait();
    return *card;
  }
  /// Confirms what is asked and lets the windows change places.
  void confirm() {
    find<QPushButton>("restore_confirm")->click();
    QApplication::processEvents();
  }
  QString said() { return session.window().statusBar()->currentMessage(); }
};

std::size_t bags_in(Running& running) {
  REQUIRE(running.session.record() != nullptr);
  return running.session.record()->workbook().count(RecordKind::bag);
}

}  // namespace

TEST_CASE("A damaged record says so at opening, and the newest whole backup takes its place while the damaged file is kept", "[record_keeping]") {
  const Kept kept(4);
  const auto backups = backups_of(kept.file, default_backup_folder(kept.file));
  REQUIRE(backups.size() == 3);
  put_bytes(backups.front().file, all_bytes(backups.front().file).substr(0, 12'288));
  const std::string damaged = all_bytes(kept.file).substr(0, 20'000);
  put_bytes(kept.file, damaged);

  Running running(kept.name());
  CHECK(running.session.record() == nullptr);
  CHECK(running.find("trouble_page")->isVisible());
  CHECK(running.find<QLabel>("trouble_why")->text().contains(QStringLiteral("damaged")));
  // What a damaged file shows could be wrong.
  CHECK_FALSE(running.find("trouble_read_only")->isVisible());
  running.looked_through();
  auto* table = running.find<QTableWidget>("backups_table");
  REQUIRE(table->rowCount() == 3);
  CHECK(table->item(0, 1)->text() == QStringLiteral("damaged"));
  CHECK(table->item(1, 1)->text() == QStringLiteral("intact"));
  auto* restore = running.find<QPushButton>("trouble_restore");
  CHECK(restore->isVisible());
  restore->click();
  CHECK(all_bytes(kept.file) == damaged);
  running.confirm();
  CHECK(bags_in(running) == 2);
  CHECK(running.said().contains(QStringLiteral("is kept as")));
  bool damaged_kept = false;
  for (const auto& entry : fs::directory_iterator(kept.file.parent_path()))
    damaged_kept = damaged_kept || (entry.path().filename().string().starts_with("nursery-replaced-") && all_bytes(entry.path()) == damaged);
  CHECK(damaged_kept);
}

TEST_CASE("The settings list the backups as they were looked through, and one of them is restored from there", "[record_keeping]") {
  const Kept kept(3);
  Running running(kept.name());
  running.find<QAction>("action_backups")->trigger();
  running.looked_through();
  auto* table = running.find<QTableWidget>("backups_table");
  REQUIRE(table->rowCount() == 2);
  CHECK(table->item(0, 0)->text().contains(QStringLiteral("2026")));
  CHECK(table->item(0, 1)->text() == QStringLiteral("intact"));
  CHECK_FALSE(table->item(0, 2)->text().isEmpty());
  CHECK(bags_in(running) == 3);
  table->setCurrentCell(1, 0);
  running.find<QPushButton>("backups_restore")->click();
  running.confirm();
  CHECK(bags_in(running) == 1);
  // What was there is not lost: it can be opened again.
  QString replaced;
  for (const auto& entry : fs::directory_iterator(kept.file.parent_path()))
    if (entry.path().filename().string().starts_with("nursery-replaced-") && entry.path().extension() == ".gritwright") replaced = QString::fromStdString(entry.path().string());
  emit running.session.window().record_wanted(replaced, false);
  QApplication::processEvents();
  CHECK(bags_in(running) == 3);
  CHECK(running.session.window().windowTitle().contains(QStringLiteral("nursery-replaced-")));
  running.find<QAction>("action_usual_record")->trigger();
  QApplication::processEvents();
  CHECK(bags_in(running) == 1);
}

TEST_CASE("What lies on the bench is not tied to the same numbers of another record", "[record_keeping]") {
  const Kept kept(1);
  const Kept other(1);
  Running running(kept.name());
  const auto bags = running.session.record()->workbook().all<Bag>();
  const QString bag = QString::fromStdString(bags.front().id.text);
  running.bench.edit(QStringLiteral("sheets"), {}, [&](BenchState& state) {
    state.components.front().name = QStringLiteral("sieved");
    state.components.front().bag = bag;
    state.find.also_pots = {QStringLiteral("C1")};
    state.find.candidate_to_change(QStringLiteral("bag:%1").arg(bag)).stock = QStringLiteral("3");
    state.find.candidate_to_change(QStringLiteral("material:akadama")).price = QStringLiteral("2");
  });
  REQUIRE(running.bench.surroundings().bag);
  const BenchState before = running.bench.state();
  // The same file again: the numbers still mean the same bags.
  running.session.open(kept.name());
  CHECK(running.bench.state() == before);

  running.session.open(other.name());
  REQUIRE(running.session.record()->workbook().all<Bag>().front().id == bags.front().id);
  const BenchState& now = running.bench.state();
  CHECK(now.components.front().name == QStringLiteral("sieved"));
  CHECK(now.components.front().bag.isEmpty());
  CHECK_FALSE(running.bench.surroundings().bag);
  CHECK(now.find.also_pots.empty());
  CHECK(now.find.candidate(QStringLiteral("bag:%1").arg(bag)) == nullptr);
  CHECK(now.find.candidate(QStringLiteral("material:akadama")) != nullptr);
  running.bench.undo_stack().undo();
  CHECK(running.bench.state() == before);
}

TEST_CASE("A damaged backup can't be chosen for restoring", "[record_keeping][refuses]") {
  const Kept kept(2);
  const fs::path backup = backups_of(kept.file, default_backup_folder(kept.file)).front().file;
  put_bytes(backup, all_bytes(backup).substr(0, 12'288));
  Running running(kept.name());
  running.find<QAction>("action_backups")->trigger();
  running.looked_through();
  running.find<QTableWidget>("backups_table")->setCurrentCell(0, 0);
  CHECK_FALSE(running.find<QPushButton>("backups_restore")->isEnabled());
  CHECK_FALSE(running.find<QPushButton>("backups_look")->isEnabled());
}

TEST_CASE("While another program works in the record nothing is restored, and that is told", "[record_keeping][refuses]") {
  const Kept kept(2);
  Running running(kept.name());
  running.find<QAction>("action_backups")->trigger();
  running.looked_through();
  const auto other = RecordBook::open(kept.name());
  REQUIRE(other);
  running.find<QTableWidget>("backups_table")->setCurrentCell(0, 0);
  running.find<QPushButton>("backups_restore")->click();
  running.confirm();
  CHECK(bags_in(running) == 2);
  CHECK(running.said().contains(QStringLiteral("another program"), Qt::CaseInsensitive));
}

TEST_CASE("A backup is looked into without changing anything", "[record_keeping]") {
  const Kept kept(2);
  Running running(kept.name());
  running.find<QAction>("action_backups")->trigger();
  running.looked_through();
  running.find<QTableWidget>("backups_table")->setCurrentCell(0, 0);
  running.find<QPushButton>("backups_look")->click();
  QApplication::processEvents();
  CHECK(bags_in(running) == 1);
  CHECK(running.session.record()->is_read_only());
  CHECK(running.find<QLabel>("record_words")->text().contains(QStringLiteral("reading only")));
  running.find<QAction>("action_receive_bags")->trigger();
  CHECK(bags_in(running) == 1);
  CHECK(running.said().contains(QStringLiteral("reading only")));
}

TEST_CASE("A newer version's record is opened for reading only on request", "[record_keeping]") {
  const Kept kept(1);
  {
    SQLite::Database database(kept.file.string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA user_version = 99; UPDATE meta SET value = '99' WHERE key = 'schema'");
  }
  Running running(kept.name());
  CHECK(running.session.record() == nullptr);
  CHECK(running.find<QLabel>("trouble_why")->text().contains(QStringLiteral("newer Gritwright")));
  auto* reading = running.find<QPushButton>("trouble_read_only");
  CHECK(reading->isVisible());
  reading->click();
  QApplication::processEvents();
  CHECK(bags_in(running) == 1);
  CHECK(running.session.record()->is_read_only());
}

TEST_CASE("An older record whose backup fails is not brought forward, and can be read", "[record_keeping][refuses]") {
  const QTemporaryDir folder;
  const fs::path file = fs::path(folder.path().toStdString()) / "old.gritwright";
  fs::copy_file(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/workbook/version_1.gritwright", file);
  put_bytes(default_backup_folder(file), "a file stands where the folder of the backups should be");
  Running running(QString::fromStdString(file.string()));
  CHECK(running.session.record() == nullptr);
  CHECK(running.find<QLabel>("trouble_why")->text().contains(QStringLiteral("older version")));
  running.find<QPushButton>("trouble_read_only")->click();
  QApplication::processEvents();
  CHECK(running.session.record() != nullptr);
}

TEST_CASE("A backup that fails is told in the window, and the change is saved", "[record_keeping][refuses]") {
  const Kept kept(1);
  fs::remove_all(default_backup_folder(kept.file));
  put_bytes(default_backup_folder(kept.file), "a file stands where the folder of the backups should be");
  Running running(kept.name());
  running.find<QAction>("action_receive_bags")->trigger();
  CHECK(bags_in(running) == 2);
  // The thread that makes it has its answer in a moment.
  CHECK(QTest::qWaitFor([&] { return running.said().contains(QStringLiteral("backup could not be made")); }));
}

TEST_CASE("The day's backup is made while the window goes on", "[record_keeping]") {
  const Kept kept(1);
  Running running(kept.name());
  CHECK(backups_of(kept.file, default_backup_folder(kept.file)).empty());
  running.find<QAction>("action_receive_bags")->trigger();
  CHECK(QTest::qWaitFor([&] { return !backups_of(kept.file, default_backup_folder(kept.file)).empty(); }));
  const auto backup = newest_good_backup(kept.file, default_backup_folder(kept.file));
  REQUIRE(backup);
  CHECK(backup->day >= "2026-03-01");
}

TEST_CASE("A record in a folder that another program copies is told of, and the settings say so as long as it lies there", "[record_keeping]") {
  const Kept kept(1);
  put_bytes(kept.file.parent_path() / ".sync_state", "");
  Running running(kept.name());
  CHECK(running.find<QLabel>("settings_record")->text().contains(QStringLiteral("copies that folder elsewhere")));
  CHECK(QTest::qWaitFor([&] { return running.said().contains(QStringLiteral("copies elsewhere")); }));
}

TEST_CASE("A second window sees a bag that the first one received", "[record_keeping][two_windows]") {
  const Kept kept(1);
  Running here(kept.name());
  Running there(kept.name());
  here.session.window().record_pages()->show_bags();
  there.session.window().record_pages()->show_bags();
  REQUIRE(here.find<QTableView>("bags_table")->model()->rowCount() == 1);
  there.find<QAction>("action_receive_bags")->trigger();
  CHECK(QTest::qWaitFor([&] { return here.find<QTableView>("bags_table")->model()->rowCount() == 2; }));
}

TEST_CASE("A window looks for changes of other windows and programs at least once a second", "[record_keeping][two_windows]") {
  const Kept kept(1);
  Running here(kept.name());
  const auto* looks = here.session.record()->findChild<QTimer*>({}, Qt::FindDirectChildrenOnly);
  REQUIRE(looks != nullptr);
  CHECK(looks->isActive());
  CHECK_FALSE(looks->isSingleShot());
  CHECK(looks->interval() <= 1000);
}

namespace {

/// Two windows on one bag, the cursor of the first in its note.
struct TwoWindows {
  TwoWindows() {
    for (Running* running : {&here, &there}) {
      running->session.window().record_pages()->show_bags();
      running->session.window().record_pages()->bags().show_bag(id());
    }
    here.session.window().activateWindow();
    QApplication::setActiveWindow(&here.session.window());
    note()->setFocus();
    QTest::keyClicks(note(), QStringLiteral("du"));
  }
  [[nodiscard]] QString id() { return to_qt(here.session.record()->workbook().all<Bag>().front().id.text); }
  static QString to_qt(const std::string& text) { return QString::fromStdString(text); }
  QLineEdit* note() { return here.find<QLineEdit>("bag_note"); }
  [[nodiscard]] Stored<Bag> bag() { return there.session.record()->workbook().all<Bag>().front(); }
  void delete_there() { REQUIRE(there.session.record()->remove(bag(), QStringLiteral("bag removed"))); }
  [[nodiscard]] std::size_t bags() { return there.session.record()->workbook().count(RecordKind::bag); }
  void change_note_there(const char* text) {
    const auto was = bag();
    Bag now = was.record;
    now.note = text;
    REQUIRE(there.session.record()->replace(was, now, QStringLiteral("note of bag")));
  }
  Kept kept{1};
  Running here{kept.name()};
  Running there{kept.name()};
};

}  // namespace

TEST_CASE("What is typed over a change from another window is refused and shown, and what was typed is not lost", "[record_keeping][two_windows][refuses]") {
  TwoWindows windows;
  REQUIRE(windows.bag().record.note == "du");
  windows.change_note_there("rained on");
  const bool noticed_before_typing = GENERATE(false, true);
  if (noticed_before_typing) windows.here.session.record()->look_for_changes();
  QTest::keyClicks(windows.note(), QStringLiteral("st"));
  CHECK(windows.bag().record.note == "rained on");
  CHECK(windows.note()->text() == QStringLiteral("dust"));
  CHECK(windows.note()->accessibleDescription().contains(QStringLiteral("rained on")));
  SECTION("Enter saves what was typed here") {
    QTest::keyClick(windows.note(), Qt::Key_Return);
    CHECK(windows.bag().record.note == "dust");
    CHECK_FALSE(windows.note()->accessibleDescription().contains(QStringLiteral("rained on")));
  }
  SECTION("Escape takes what came from there") {
    QTest::keyClick(windows.note(), Qt::Key_Escape);
    CHECK(windows.bag().record.note == "rained on");
    CHECK(windows.note()->text() == QStringLiteral("rained on"));
    QTest::keyClicks(windows.note(), QStringLiteral(", dried"));
    CHECK(windows.bag().record.note == "rained on, dried");
  }
}

TEST_CASE("What was being typed into a bag that another window deletes stays in sight, and the bag comes back with it or is let go", "[record_keeping][two_windows]") {
  TwoWindows windows;
  const Stored<Bag> before = windows.bag();
  windows.delete_there();
  // Noticed while typing, or before the next sign is typed.
  const bool while_typing = GENERATE(true, false);
  if (while_typing) QTest::keyClicks(windows.note(), QStringLiteral("s"));
  windows.here.session.record()->look_for_changes();
  QTest::keyClicks(windows.note(), while_typing ? QStringLiteral("t") : QStringLiteral("st"));
  CHECK(windows.note()->text() == QStringLiteral("dust"));
  CHECK(windows.here.find("bag_gone")->isVisible());
  CHECK(windows.here.find<QLabel>("bag_gone_words")->text().contains(QString::fromStdString(before.id.text)));
  CHECK(windows.here.said().contains(QStringLiteral("not in the record any more")));
  CHECK(windows.bags() == 0);
  SECTION("brought back") {
    windows.here.find<QPushButton>("bag_gone_bring_back")->click();
    REQUIRE(windows.bags() == 1);
    CHECK(windows.bag().id == before.id);
    CHECK(windows.bag().record.note == "dust");
    CHECK(windows.bag().record.material == before.record.material);
    CHECK_FALSE(windows.here.find("bag_gone")->isVisible());
    CHECK(windows.note()->text() == QStringLiteral("dust"));
  }
  SECTION("let go") {
    windows.here.find<QPushButton>("bag_gone_let_go")->click();
    CHECK(windows.bags() == 0);
    CHECK_FALSE(windows.note()->isVisible());
  }
  SECTION("brought back by the other window") {
    windows.there.session.record()->undo();
    windows.here.session.record()->look_for_changes();
    CHECK(windows.bag().record.note == "dust");
    CHECK_FALSE(windows.here.find("bag_gone")->isVisible());
  }
  SECTION("another bag is chosen meanwhile") {
    Bag other;
    other.material = "pumice";
    const QString id = windows.there.session.record()->add(other, QStringLiteral("bag"));
    windows.here.session.record()->look_for_changes();
    CHECK(windows.note()->text() == QStringLiteral("dust"));
    windows.here.session.window().record_pages()->bags().show_bag(id);
    CHECK(windows.note()->text().isEmpty());
    CHECK(windows.here.said().contains(QStringLiteral("dust")));
    CHECK(windows.bag().record.note.empty());
  }
}

TEST_CASE("A bag deleted here while its note was typed goes without being asked about", "[record_keeping]") {
  TwoWindows windows;
  windows.here.find<QAction>("action_remove_bag")->trigger();
  CHECK(windows.bags() == 0);
  CHECK_FALSE(windows.here.find("bag_gone")->isVisible());
}

TEST_CASE("A list counts what comes and goes, here and in another window, and keeps its rows while a note is typed", "[record_keeping][two_windows]") {
  TwoWindows windows;
  RecordBook& here = *windows.here.session.record();
  RecordBook& there = *windows.there.session.record();
  RecordListModel bags(here, RecordKind::bag, {RecordListModel::Column::id, RecordListModel::Column::title});
  RecordListModel fractions(here, RecordKind::fraction, {RecordListModel::Column::id});
  const auto counted = [&] {
    here.look_for_changes();
    CHECK(bags.rowCount() == static_cast<int>(here.workbook().count(RecordKind::bag)));
    CHECK(fractions.rowCount() == static_cast<int>(here.workbook().count(RecordKind::fraction)));
  };
  counted();
  const int before = bags.rowCount();
  windows.change_note_there("rained on");
  counted();
  Bag bag;
  bag.material = "pumice";
  const QString added = there.add(bag, QStringLiteral("bag"));
  counted();
  CHECK(bags.rowCount() == before + 1);
  CHECK(bags.row_of(added) == 0);
  // One comes and one goes between two looks.
  REQUIRE(there.remove(*there.workbook().find(Id<Bag>{added.toStdString()}), QStringLiteral("bag removed")));
  REQUIRE_FALSE(there.add(bag, QStringLiteral("bag")).isEmpty());
  counted();
  CHECK(bags.row_of(added) == -1);
  Fraction fraction;
  fraction.source = {RecordKind::bag, windows.bag().id.text};
  fraction.from = aperture_mm(2);
  fraction.dry_mass = mass_g(100);
  REQUIRE_FALSE(here.add(fraction, QStringLiteral("fraction")).isEmpty());
  counted();
  CHECK(fractions.rowCount() == 1);
  here.undo();
  counted();
  CHECK(fractions.rowCount() == 0);
}

TEST_CASE("A note on a tree that another window deletes does not slip to the next tree", "[record_keeping][two_windows]") {
  const Kept kept(1);
  Running here(kept.name());
  Running there(kept.name());
  RecordBook& book = *there.session.record();
  Tree pine;
  pine.name = "old pine";
  const QString older = book.add(pine, QStringLiteral("tree"));
  pine.name = "young pine";
  const QString younger = book.add(pine, QStringLiteral("tree"));
  here.session.record()->look_for_changes();
  TreesTab& trees = here.session.window().record_pages()->trees().trees();
  here.session.window().record_pages()->show_trees();
  here.session.window().record_pages()->trees().show_trees();
  trees.list().show_record(younger);
  auto* note = trees.findChild<QLineEdit*>(QStringLiteral("tree_seen_note"));
  note->setText(QStringLiteral("needles yellow"));
  REQUIRE(book.remove(*book.workbook().find(Id<Tree>{younger.toStdString()}), QStringLiteral("tree removed")));
  here.session.record()->look_for_changes();
  CHECK(trees.list().current() == younger);
  QTest::keyClick(note, Qt::Key_Return);
  CHECK(note->text() == QStringLiteral("needles yellow"));
  CHECK(book.workbook().find(Id<Tree>{older.toStdString()})->record.conditions.empty());
  trees.findChild<QPushButton*>(QStringLiteral("tree_gone_bring_back"))->click();
  QTest::keyClick(note, Qt::Key_Return);
  const auto back = book.workbook().find(Id<Tree>{younger.toStdString()});
  REQUIRE(back);
  REQUIRE(back->record.conditions.size() == 1);
  CHECK(back->record.conditions.front().note == "needles yellow");
  CHECK(note->text().isEmpty());
}

namespace {

/// Two windows on one day of three trees; the first has the second tree in front.
struct DayInTwoWindows {
  DayInTwoWindows() {
    RecordBook& book = *there.session.record();
    Component grain;
    grain.name = "pumice";
    grain.parts = Parts(1);
    grain.grain.bulk_density = bulk_g_l(500);
    grain.grain.particle_density = particle_g_l(900);
    grain.sizes = SingleSize{aperture_mm(4)};
    MixVersion mix;
    mix.mix.name = "one grain";
    mix.mix.components = {grain};
    mix.sources = {std::nullopt};
    const Id<MixVersion> mix_id{book.add(mix, QStringLiteral("mix")).toStdString()};
    RepottingDay fresh;
    fresh.day = "2026-03-14";
    fresh.name = "first day";
    for (const char* name : {"first pine", "second pine", "third pine"}) {
      Tree pine;
      pine.name = name;
      DayTree on_day;
      on_day.tree = Id<Tree>{book.add(pine, QStringLiteral("tree")).toStdString()};
      on_day.mix = mix_id;
      on_day.planned = mixed_l(2);
      trees.push_back(on_day.tree);
      fresh.trees.push_back(on_day);
    }
    const QString id = book.add(fresh, QStringLiteral("day"));
    day_id = Id<RepottingDay>{id.toStdString()};
    here.session.record()->look_for_changes();
    here.find<QAction>("action_page_day")->trigger();
    page().show_day(id);
    REQUIRE(table().model()->rowCount() == 3);
    table().setCurrentIndex(table().model()->index(1, DayTreesModel::note));
    here.session.window().activateWindow();
    QApplication::setActiveWindow(&here.session.window());
  }
  DayPage& page() { return here.session.window().day_room()->page(); }
  QTableView& table() { return page().table(); }
  /// Types into the second tree's form.
  QLineEdit* dressing(const char* text) {
    here.find<QTabWidget>("day_tabs")->setCurrentIndex(1);
    auto* field = here.find<QLineEdit>("day_tree_top_dressing");
    field->setFocus();
    QTest::keyClicks(field, QString::fromLatin1(text));
    return field;
  }
  void take_off_there(std::size_t which) {
    const auto was = *there.session.record()->workbook().find(day_id);
    RepottingDay now = was.record;
    std::erase_if(now.trees, [&](const DayTree& tree) { return tree.tree == trees[which]; });
    REQUIRE(there.session.record()->replace(was, now, QStringLiteral("tree taken off")));
  }
  /// As the record has it; a tree that is not on the day is empty.
  DayTree on_day(std::size_t which) {
    const auto stored = there.session.record()->workbook().find(day_id);
    REQUIRE(stored);
    const auto found = std::ranges::find(stored->record.trees, trees[which], &DayTree::tree);
    return found == stored->record.trees.end() ? DayTree{} : *found;
  }
  Kept kept{1};
  Running here{kept.name()};
  Running there{kept.name()};
  std::vector<Id<Tree>> trees;
  Id<RepottingDay> day_id;
};

}  // namespace

TEST_CASE("What is written into a tree's line goes to that tree, though another window takes an earlier one off the day", "[record_keeping][two_windows]") {
  DayInTwoWindows windows;
  SECTION("not noticed yet") {
    windows.take_off_there(0);
    auto* lines = windows.table().model();
    lines->setData(lines->index(1, DayTreesModel::note), QStringLiteral("root rot"), Qt::EditRole);
  }
  SECTION("noticed while the cell is written into") {
    windows.table().edit(windows.table().currentIndex());
    auto* editor = windows.table().viewport()->findChild<QLineEdit*>();
    REQUIRE(editor != nullptr);
    QTest::keyClicks(editor, QStringLiteral("root rot"));
    windows.take_off_there(0);
    windows.here.session.record()->look_for_changes();
    CHECK(windows.table().model()->rowCount() == 2);
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
  }
  CHECK(windows.on_day(1).note == "root rot");
  CHECK(windows.on_day(2).note.empty());
}

TEST_CASE("A tick goes to the tree whose line was ticked, though another window takes an earlier one off the day", "[record_keeping][two_windows]") {
  DayInTwoWindows windows;
  windows.take_off_there(0);
  SECTION("in the table") {
    auto* lines = windows.table().model();
    lines->setData(lines->index(1, DayTreesModel::done), Qt::Checked, Qt::CheckStateRole);
  }
  SECTION("by the menu") { windows.here.find<QAction>("action_day_tick")->trigger(); }
  CHECK(windows.on_day(1).done);
  CHECK_FALSE(windows.on_day(2).done);
  const auto repotted = [&](std::size_t which) { return windows.there.session.record()->workbook().find(windows.trees[which])->record.repottings.size(); };
  CHECK(repotted(1) == 1);
  CHECK(repotted(2) == 0);
}

TEST_CASE("What is written into the line of a tree that another window took off the day is refused and told", "[record_keeping][two_windows][refuses]") {
  DayInTwoWindows windows;
  const bool noticed = GENERATE(false, true);
  if (noticed) {
    windows.table().edit(windows.table().currentIndex());
    auto* editor = windows.table().viewport()->findChild<QLineEdit*>();
    REQUIRE(editor != nullptr);
    QTest::keyClicks(editor, QStringLiteral("root rot"));
    windows.take_off_there(1);
    windows.here.session.record()->look_for_changes();
  } else {
    windows.take_off_there(1);
    auto* lines = windows.table().model();
    lines->setData(lines->index(1, DayTreesModel::note), QStringLiteral("root rot"), Qt::EditRole);
  }
  CHECK(windows.here.said().contains(QStringLiteral("root rot")));
  CHECK(windows.here.said().contains(QStringLiteral("changed elsewhere")));
  for (const std::size_t which : {0U, 2U}) CHECK(windows.on_day(which).note.empty());
}

TEST_CASE("What is typed of a tree that another window takes off the day stays in sight, and the tree comes back with it or is let go", "[record_keeping][two_windows]") {
  DayInTwoWindows windows;
  auto* field = windows.dressing("pumi");
  REQUIRE(windows.on_day(1).top_dressing == "pumi");
  windows.take_off_there(1);
  windows.here.session.record()->look_for_changes();
  windows.dressing("ce");
  CHECK(field->text() == QStringLiteral("pumice"));
  CHECK(windows.here.find("day_tree_gone")->isVisible());
  for (const std::size_t which : {0U, 2U}) CHECK(windows.on_day(which).top_dressing.empty());
  SECTION("brought back") {
    windows.here.find<QPushButton>("day_tree_gone_bring_back")->click();
    CHECK(windows.on_day(1).tree == windows.trees[1]);
    CHECK(windows.on_day(1).top_dressing == "pumice");
    CHECK_FALSE(windows.here.find("day_tree_gone")->isVisible());
  }
  SECTION("let go") {
    windows.here.find<QPushButton>("day_tree_gone_let_go")->click();
    CHECK_FALSE(windows.here.find("day_tree_gone")->isVisible());
    CHECK(field->text().isEmpty());
  }
  SECTION("another tree is chosen meanwhile") {
    windows.table().setCurrentIndex(windows.table().model()->index(0, DayTreesModel::note));
    CHECK(field->text().isEmpty());
    CHECK(windows.here.said().contains(QStringLiteral("pumice")));
  }
  for (const std::size_t which : {0U, 2U}) CHECK(windows.on_day(which).top_dressing.empty());
}

TEST_CASE("A tree is typed on where another window takes an earlier one off the day", "[record_keeping][two_windows]") {
  DayInTwoWindows windows;
  windows.dressing("pumi");
  windows.take_off_there(0);
  const bool noticed = GENERATE(true, false);
  if (noticed) windows.here.session.record()->look_for_changes();
  windows.dressing("ce");
  CHECK(windows.on_day(1).top_dressing == "pumice");
  CHECK(windows.on_day(2).top_dressing.empty());
}

TEST_CASE("Two windows may change different fields of one bag", "[record_keeping][two_windows]") {
  TwoWindows windows;
  const auto was = windows.bag();
  Bag now = was.record;
  now.lot = "7 B";
  REQUIRE(windows.there.session.record()->replace(was, now, QStringLiteral("lot of bag")));
  QTest::keyClicks(windows.note(), QStringLiteral("st"));
  CHECK(windows.bag().record.note == "dust");
  CHECK(windows.bag().record.lot == "7 B");
  CHECK(windows.here.find<QLineEdit>("bag_lot")->text() == QStringLiteral("7 B"));
}

TEST_CASE("A change that holds an older revision is refused and told", "[record_keeping][two_windows][refuses]") {
  TwoWindows windows;
  const auto older = windows.bag();
  windows.change_note_there("rained on");
  Bag now = older.record;
  now.note = "overwritten";
  CHECK_FALSE(windows.here.session.record()->replace(older, now, QStringLiteral("note of bag")));
  CHECK(windows.bag().record.note == "rained on");
  CHECK(windows.here.said().contains(QStringLiteral("changed elsewhere")));
}

namespace {

/// As if the file were torn away under the program: nothing in it can be read any more, from one moment to the next.
void break_the_file(const fs::path& file) {
  SQLite::Database other(file.string(), SQLite::OPEN_READWRITE);
  other.exec("ALTER TABLE record RENAME TO torn");
}

}  // namespace

TEST_CASE("Where the record's file fails under the hand every page says so, nothing is written and the window goes on", "[record_keeping][refuses]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  DayPage& day = open.window.day_room()->page();
  open.trigger("action_page_day");
  break_the_file(open.record->file().toStdString());
  int told = 0;
  QObject::connect(open.window.statusBar(), &QStatusBar::messageChanged, [&](const QString& message) { told += message.isEmpty() ? 0 : 1; });
  const auto pdf = [&](DaySheet sheet) { return day.write_sheet(sheet, open.folder.filePath(QStringLiteral("sheet.pdf"))); };
  for (const DaySheet sheet : {DaySheet::season, DaySheet::day, DaySheet::root_plans}) {
    told = 0;
    CHECK_FALSE(pdf(sheet));
    CHECK(told > 0);
  }
  CHECK_FALSE(QFile::exists(open.folder.filePath(QStringLiteral("sheet.pdf"))));
  // As the event loop runs them, with what they show first.
  for (const char* name : {"action_page_bags", "action_page_sieving", "action_page_mixes", "action_page_trees", "action_page_day", "action_page_log", "action_receive_bags",
                           "action_grade_bag", "action_put_in_mix", "action_take_into_stock", "action_take_back", "action_add_bin", "action_measure", "action_pot_test",
                           "action_remove_bag", "action_add_tree", "action_add_pot", "action_plan_tree", "action_remove_tree_or_pot", "action_save_sheet", "action_keep_fractions",
                           "action_keep_mix", "action_groups", "action_write_down", "action_trace_grain", "action_sick_trees", "action_find", "action_record_undo",
                           "action_record_redo", "action_new_day", "action_day_add_tree", "action_day_tick", "action_day_evening", "action_day_season", "action_day_remove",
                           "action_backups", "action_us_units"}) {
    INFO(name);
    auto* action = open.find<QAction>(name);
    QTimer::singleShot(0, action, &QAction::trigger);
    CHECK_NOTHROW(QApplication::processEvents());
    QApplication::processEvents();
  }
  open.window.statusBar()->clearMessage();
  told = 0;
  QTimer::singleShot(0, open.find<QAction>("action_receive_bags"), &QAction::trigger);
  QApplication::processEvents();
  CHECK(told > 0);
  CHECK(open.window.isVisible());
}

TEST_CASE("A line begun in a record is there still after its file was moved, and a copy beside it has lines of its own", "[record_keeping]") {
  const Kept kept(1);
  const QString moved = kept.name() + QStringLiteral(".moved");
  const QString copy = kept.name() + QStringLiteral(".copy");
  const auto line_in = [](const QString& file) { return QStringLiteral("typed/%1/log_text").arg(RecordBook::open(file).value()->settings_key()); };
  QSettings().setValue(line_in(kept.name()), QStringLiteral("begun"));
  REQUIRE(QFile::copy(kept.name(), copy));
  CHECK_FALSE(QSettings().contains(line_in(copy)));
  CHECK(line_in(copy) == line_in(copy));
  REQUIRE(QFile::rename(kept.name(), moved));
  CHECK(QSettings().value(line_in(moved)).toString() == QStringLiteral("begun"));
  CHECK(line_in(copy) != line_in(moved));
  CHECK(QSettings().value(line_in(moved)).toString() == QStringLiteral("begun"));
}

TEST_CASE("Lines that an earlier version kept under the path of the file are taken over", "[record_keeping]") {
  const Kept kept(1);
  const QString by_path = QString::fromLatin1(QCryptographicHash::hash(kept.name().toUtf8(), QCryptographicHash::Sha1).toHex().left(12));
  QSettings().setValue(QStringLiteral("typed/%1/TR-01/tree_note").arg(by_path), QStringLiteral("begun"));
  QSettings().setValue(QStringLiteral("measuring/%1/jug/K-07/full").arg(by_path), QStringLiteral("812"));
  const auto record = RecordBook::open(kept.name());
  REQUIRE(record);
  const QString key = (*record)->settings_key();
  CHECK(key != by_path);
  CHECK(QSettings().value(QStringLiteral("typed/%1/TR-01/tree_note").arg(key)).toString() == QStringLiteral("begun"));
  CHECK(QSettings().value(QStringLiteral("measuring/%1/jug/K-07/full").arg(key)).toString() == QStringLiteral("812"));
  CHECK_FALSE(QSettings().contains(QStringLiteral("typed/%1/TR-01/tree_note").arg(by_path)));
}
