#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTableWidget>
#include <QThread>
#include <QToolButton>
#include <atomic>
#include <algorithm>

#include "application.hpp"
#include "charts/chart_export.hpp"
#include "charts/comparison_view.hpp"
#include "charts/picture_tabs.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/demonstration_record.hpp"
#include "models/sieve_table_model.hpp"
#include "pages/bags_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/settings_page.hpp"
#include "pages/sieving_page.hpp"
#include "print/test_sheet.hpp"
#include "record_pages.hpp"
#include "settings.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/jump_box.hpp"
#include "window_memory.hpp"
#include "workers/background_job.hpp"
#include "workers/stopped_work.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

QByteArray contents(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

}  // namespace

TEST_CASE("The rooms come in the order of the work, with Ctrl and their number", "[window]") {
  OpenWindow open;
  int number = 1;
  for (const char* room : {"bags", "sieving", "mixes", "trees", "day", "log"}) {
    auto* action = open.window.findChild<QAction*>(QStringLiteral("action_page_") + QLatin1String(room));
    REQUIRE(action != nullptr);
    CHECK(action->shortcut() == QKeySequence(QStringLiteral("Ctrl+%1").arg(number++)));
    action->trigger();
    CHECK(action->isChecked());
    CHECK(open.window.pages().currentWidget()->isVisible());
  }
}

TEST_CASE("From bags over sieving to a kept mix without a mouse", "[window]") {
  OpenWindow open;
  const auto receive = [&](const char* material, const char* density) {
    open.trigger("action_page_bags");
    auto* box = open.find<QComboBox>("bags_material");
    box->setCurrentIndex(box->findData(QLatin1String(material)));
    open.trigger("action_receive_bags");
    open.type(QStringLiteral("lot 7"));
    open.find<QLineEdit>("bag_bulk_density")->setFocus();
    open.type(QLatin1String(density));
    open.trigger("action_grade_bag");
  };
  receive("pumice", "600");
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.type(QStringLiteral("500"));
  open.go_to_cell(0, SieveTableModel::retained);
  // Wrong first: the fault stands beside the cell, typing goes on, the right mass mends it.
  open.type(QStringLiteral("4o"));
  open.press(Qt::Key_Return);
  CHECK_FALSE(open.cell(0, SieveTableModel::check).isEmpty());
  open.go_to_cell(0, SieveTableModel::retained);
  for (const char* mass : {"0", "40", "160", "150", "90", "35", "15", "9"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  CHECK(open.find<QLabel>("balance")->text() == local("Sum 499 g, loss 0.20 %"));
  open.trigger("action_save_sheet");
  receive("akadama", "650");
  QApplication::processEvents();
  open.bench.edit(QStringLiteral("paste"), {}, [&](BenchState& state) {
    state.components[1].sheet = finished_component({}, {}, {{"8", "0"}, {"5.6", "60"}, {"4", "120"}, {"2", "100"}, {"1", "15"}}, "5", "300").sheet;
  });
  open.trigger("action_save_sheet");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 2);
  // The first bag is put into the mix from its list, the second by its parts.
  open.trigger("action_page_bags");
  open.window.record_pages()->bags().show_bag(QStringLiteral("P-01"));
  open.trigger("action_put_in_mix");
  open.find<QLineEdit>("parts_2")->setFocus();
  open.find<QLineEdit>("parts_2")->selectAll();
  open.type(QStringLiteral("1"));
  open.trigger("action_show_pot");
  for (const auto& [field, text] : {std::pair{"rim_length", "40"}, {"rim_width", "30"}, {"depth", "6"}}) {
    open.find<QLineEdit>(field)->setFocus();
    open.type(QString::fromLatin1(text));
  }
  CHECK(open.find<QLabel>("figure_air_filled_porosity")->text() != QStringLiteral("\u2013"));
  open.find<QLineEdit>("mix_name")->setFocus();
  open.type(QStringLiteral("for junipers"));
  open.trigger("action_keep_mix");
  const auto mixes = open.record->workbook().all<MixVersion>();
  REQUIRE(mixes.size() == 1);
  REQUIRE(mixes[0].record.sources.size() == 2);
  CHECK(mixes[0].record.sources[0] == RecordRef{RecordKind::bag, "P-01"});
  CHECK(mixes[0].record.sources[1] == RecordRef{RecordKind::bag, "A-01"});
}

TEST_CASE("Ctrl+K finds a bag by number or word, a mix, and what to do", "[window]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_jump");
  auto* box = open.find<JumpBox>("jump_box");
  CHECK(box->isVisible());
  CHECK_FALSE(box->isModal());
  auto* words = open.find<QLineEdit>("jump_words");
  auto* list = open.find<QListWidget>("jump_list");
  words->setText(QStringLiteral("k-07"));
  REQUIRE(list->count() > 0);
  CHECK(list->item(0)->text().contains(QStringLiteral("K-07")));
  QTest::keyClick(words, Qt::Key_Return);
  CHECK_FALSE(box->isVisible());
  CHECK(open.window.record_pages()->bags().current_bag() == QStringLiteral("K-07"));
  open.trigger("action_jump");
  words->setText(QStringLiteral("pines mix"));
  QTest::keyClick(words, Qt::Key_Return);
  CHECK(open.bench.state().mix_name == QStringLiteral("pines"));
  for (const auto& [number, list_name] : {std::pair{"TR-03", "trees_table"}, {"POT-02", "pots_table"}, {"RP-02", "plans_table"}}) {
    open.trigger("action_jump");
    words->setText(QLatin1String(number));
    QTest::keyClick(words, Qt::Key_Return);
    auto* there = open.find<QTableView>(list_name);
    CHECK(there->isVisible());
    CHECK(there->currentIndex().siblingAtColumn(0).data().toString() == QLatin1String(number));
  }
  open.trigger("action_jump");
  words->setText(QStringLiteral("RD-02"));
  QTest::keyClick(words, Qt::Key_Return);
  CHECK(open.find("day_page")->isVisible());
  open.trigger("action_jump");
  words->setText(QStringLiteral("settings"));
  QTest::keyClick(words, Qt::Key_Return);
  CHECK(open.find<SettingsPage>("settings_page")->isVisible());
  open.trigger("action_jump");
  words->setText(QStringLiteral("no such thing"));
  CHECK(list->count() == 1);
  QTest::keyClick(words, Qt::Key_Return);
  CHECK(box->isVisible());
  box->close();
}

TEST_CASE("Settings hold at once and are there after a restart", "[window]") {
  const Settings before = read_settings();
  {
    OpenWindow open;
    open.trigger("action_settings");
    auto* units = open.find<QComboBox>("settings_units");
    units->setCurrentIndex(1);
    emit units->activated(1);
    CHECK(open.bench.units() == UnitSystem::us);
    CHECK(open.window.findChild<QAction*>(QStringLiteral("action_us_units"))->isChecked());
    auto* paper = open.find<QComboBox>("settings_paper");
    paper->setCurrentIndex(1);
    emit paper->activated(1);
    CHECK(read_settings().letter_paper);
  }
  CHECK(read_settings().units == UnitSystem::us);
  write_settings(before);
}

TEST_CASE("The letters of a setting choose it, however long its change takes", "[window]") {
  const Settings before = read_settings();
  OpenWindow open;
  open.trigger("action_settings");
  auto* theme = open.find<QComboBox>("settings_theme");
  theme->setFocus();
  QObject::connect(theme, &QComboBox::activated, [] { QTest::qSleep(QApplication::keyboardInputInterval() + 50); });
  open.type(QStringLiteral("dark"));
  CHECK(theme->currentText() == QStringLiteral("dark"));
  CHECK(read_settings().theme == Theme::dark);
  theme->setCurrentIndex(0);
  emit theme->activated(0);
  write_settings(before);
}

TEST_CASE("Owned sieves are typed as one line, in any order, and what can't be read is refused", "[window][refuses]") {
  OpenWindow open;
  open.trigger("action_settings");
  open.window.findChild<SettingsPage*>()->add_sieve_set();
  auto* table = open.find<QTableWidget>("settings_sieves");
  REQUIRE(table->rowCount() == 1);
  table->item(0, 1)->setText(QStringLiteral("2 8 4"));
  auto sets = open.record->workbook().all<SieveSet>();
  REQUIRE(sets.size() == 1);
  REQUIRE(sets[0].record.sieves.size() == 3);
  CHECK(in_mm(sets[0].record.sieves.front().aperture) == 8);
  table->item(0, 1)->setText(QStringLiteral("8 four"));
  CHECK_FALSE(open.find<QLabel>("settings_sieves_fault")->text().isEmpty());
  CHECK(open.record->workbook().all<SieveSet>()[0].record == sets[0].record);
  // What was refused is not put away by what is typed beside it.
  table->item(0, 0)->setText(QStringLiteral("riddles"));
  CHECK(open.record->workbook().all<SieveSet>()[0].record.name == "riddles");
  CHECK(table->item(0, 1)->text() == QStringLiteral("8 four"));
  CHECK_FALSE(open.find<QLabel>("settings_sieves_fault")->text().isEmpty());
  table->item(0, 1)->setText(QStringLiteral("8 4"));
  CHECK(open.record->workbook().all<SieveSet>()[0].record.sieves.size() == 2);
  CHECK(table->item(0, 1)->text() == QStringLiteral("8 4"));
  CHECK(open.find<QLabel>("settings_sieves_fault")->text().isEmpty());
}

TEST_CASE("A set of sieves says how wide they are, refuses what is no width, and is removed by Delete and put back by undo", "[window]") {
  OpenWindow open;
  open.trigger("action_settings");
  open.window.findChild<SettingsPage*>()->add_sieve_set();
  auto* table = open.find<QTableWidget>("settings_sieves");
  table->item(0, 2)->setText(QStringLiteral("20 cm"));
  const auto set = [&] { return open.record->workbook().all<SieveSet>().at(0).record; };
  REQUIRE(set().diameter);
  CHECK_THAT(in_mm(*set().diameter), Catch::Matchers::WithinAbs(200, 1e-9));
  CHECK(table->item(0, 2)->text() == QStringLiteral("200"));
  for (const char* wrong : {"wide", "-5"}) {
    table->item(0, 2)->setText(QLatin1String(wrong));
    CHECK_FALSE(open.find<QLabel>("settings_sieves_fault")->text().isEmpty());
    CHECK_THAT(in_mm(*set().diameter), Catch::Matchers::WithinAbs(200, 1e-9));
  }
  table->item(0, 2)->setText(QString());
  CHECK_FALSE(set().diameter);
  table->setFocus();
  open.press(Qt::Key_Delete);
  CHECK(open.record->workbook().count(RecordKind::sieve_set) == 0);
  open.record->undo();
  CHECK(open.record->workbook().count(RecordKind::sieve_set) == 1);
}

TEST_CASE("A picture is saved as PNG, SVG and PDF, and its data as CSV with a point", "[window]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  const QString start = open.folder.filePath(QStringLiteral("picture"));
  open.trigger("action_show_curves");
  for (const auto& [ending, mark] : {std::pair{".png", "PNG"}, {".svg", "<svg"}, {".pdf", "%PDF"}}) {
    const QString path = start + QLatin1String(ending);
    CHECK(open.window.save_picture(path));
    CHECK(contents(path).left(2000).contains(mark));
  }
  CHECK_FALSE(open.window.save_picture(start + QStringLiteral(".bmp")));
  CHECK_FALSE(open.window.save_picture(QStringLiteral("/no/such/folder/x.png")));
  CHECK(open.window.save_picture(start + QStringLiteral(".csv")));
  CHECK(contents(start + QStringLiteral(".csv")).startsWith("aperture_mm,A-1,P-1,the mix\n8,100.00,100.00,100.00\n"));
  CHECK(contents(start + QStringLiteral(".csv")).contains("\n5.6,80.00,98.33,"));
  open.trigger("action_show_section");
  CHECK(open.window.save_picture(start + QStringLiteral(".csv")));
  CHECK(contents(start + QStringLiteral(".csv")).startsWith("height_cm,grain_share,"));
  CHECK(csv_text({{QStringLiteral("a,b"), QStringLiteral("c\"d")}, {}}) == QStringLiteral("\"a,b\",\"c\"\"d\"\n"));
}

TEST_CASE("Every picture has a table twin and one sentence that says what it shows", "[window][accessibility]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.window.record_pages()->put_in_mix(QStringLiteral("P-03"));
  for (const char* action : {"action_show_curve", "action_show_lots", "action_show_pot", "action_show_curves", "action_show_section", "action_show_litres", "action_show_comparison"}) {
    open.trigger(action);
  }
  for (PictureTabs* tabs : open.window.findChildren<PictureTabs*>()) {
    for (int i = 0; i < tabs->count(); ++i) {
      tabs->setCurrentIndex(i);
      const PictureTabs::Picture& picture = tabs->picture();
      const QWidget* drawn = picture.view->focusProxy() != nullptr ? picture.view->focusProxy() : picture.view;
      INFO(picture.title.toStdString());
      CHECK_FALSE(drawn->accessibleName().isEmpty());
      CHECK_FALSE(picture.table().heading.isEmpty());
      CHECK(picture.data().heading.size() >= 2);
    }
  }
}

TEST_CASE("Every picture that shows something says how so: formula, numbers and source", "[window][accessibility]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.window.record_pages()->put_in_mix(QStringLiteral("P-03"));
  for (const char* action : {"action_show_lots", "action_show_comparison"}) open.trigger(action);
  open.window.mix_page().comparison().job().wait();
  QApplication::processEvents();
  int explained = 0;
  for (PictureTabs* tabs : open.window.findChildren<PictureTabs*>()) {
    for (int i = 0; i < tabs->count(); ++i) {
      tabs->setCurrentIndex(i);
      const PictureTabs::Picture& picture = tabs->picture();
      INFO(picture.title.toStdString());
      const auto explanations = picture.how();
      CHECK(explanations.empty() == picture.table().rows.empty());
      for (const Explanation& one : explanations) {
        CHECK_FALSE(one.formula.empty());
        CHECK_FALSE(one.source.empty());
      }
      explained += explanations.empty() ? 0 : 1;
    }
  }
  CHECK(explained >= 6);
}

TEST_CASE("A picture that shows nothing says what it needs instead of how so", "[window][accessibility]") {
  OpenWindow open(Start::mixes);
  PictureTabs& pictures = open.window.mix_page().pictures();
  auto* how = pictures.findChild<QToolButton*>(QStringLiteral("how_picture"));
  REQUIRE(how != nullptr);
  open.trigger("action_show_section");
  how->click();
  auto* popup = open.window.findChild<QLabel*>(QStringLiteral("explanation_text"));
  REQUIRE(popup != nullptr);
  CHECK(popup->text().startsWith(QStringLiteral("Not computed: ")));
  CHECK_FALSE(popup->text().contains(QStringLiteral("..")));
  popup->window()->close();
}

TEST_CASE("A table that is empty says why, as its picture does", "[window][accessibility]") {
  OpenWindow open(Start::mixes);
  open.trigger("action_show_scores");
  PictureTabs& pictures = open.window.mix_page().pictures();
  REQUIRE(pictures.picture().table().rows.empty());
  pictures.set_as_table(true);
  const auto* table = open.find<QTableWidget>("score_table");
  REQUIRE(table->rowCount() == 1);
  CHECK_FALSE(table->item(0, 0)->text().isEmpty());
}

TEST_CASE("The test sheet names the bag, every sieve and the verdict, and prints to PDF", "[window]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  const QString html = test_sheet_html(open.bench);
  for (const char* words : {"A-1", "5.6", "akadama", "Verdict"}) CHECK(html.contains(QLatin1String(words)));
  CHECK(html.contains(local("80.0 %")));  // 60 of 300 g stayed on 5.6 mm
  const QString path = open.folder.filePath(QStringLiteral("sheet.pdf"));
  CHECK(write_test_sheet(open.bench, path, false));
  CHECK(contents(path).startsWith("%PDF"));
  CHECK_FALSE(write_test_sheet(open.bench, QStringLiteral("/no/such/folder/x.pdf"), false));
}

TEST_CASE("Of two jobs only the newer answers, a cancelled one never", "[window]") {
  BackgroundJob job;
  int answered = 0;
  std::atomic<bool> go{false};
  job.start([&](const std::stop_token& stop, const BackgroundJob::Progress& progress) -> BackgroundJob::Delivery {
    while (!go && !stop.stop_requested()) QThread::msleep(1);
    progress(1, 1);
    return [&] { answered = 1; };
  });
  CHECK(job.is_running());
  job.start([&](const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery { return [&] { answered = 2; }; });
  job.wait();
  QApplication::processEvents();
  CHECK(answered == 2);
  CHECK_FALSE(job.is_running());
  job.start([&](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    while (!stop.stop_requested()) QThread::msleep(1);
    return [&] { answered = 3; };
  });
  job.cancel();
  job.wait();
  QApplication::processEvents();
  CHECK(answered == 2);
}

TEST_CASE("Work in slices ends soon after its job was stopped, and has no answer", "[window]") {
  BackgroundJob job;
  constexpr std::size_t slices = 1000;
  std::atomic<std::size_t> begun{0};
  bool answered = false;
  std::atomic<bool> went_on{false};
  job.start([&](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    on_all_cores_until(stop)(slices, [&](std::size_t) {
      ++begun;
      while (!stop.stop_requested()) QThread::msleep(1);
    });
    went_on = true;
    return [&] { answered = true; };
  });
  while (begun == 0) QThread::msleep(1);
  job.cancel();
  job.wait();
  CHECK(begun < slices);
  CHECK_FALSE(went_on);
  CHECK_FALSE(answered);
  job.start([&](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    on_all_cores_until(stop)(slices, [&](std::size_t) { ++begun; });
    return [&] { answered = true; };
  });
  job.wait();
  CHECK(begun > slices);
  CHECK(answered);
}

TEST_CASE("Work asked for again and again while somebody types is done once, for what was asked last", "[window]") {
  BackgroundJob job;
  std::atomic<int> begun{0};
  int answered = 0;
  const auto ask = [&](int what) {
    job.start_when_still([&begun, &answered, what](const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
      ++begun;
      return [&answered, what] { answered = what; };
    });
  };
  for (int sign = 1; sign <= 5; ++sign) {
    ask(sign);
    QApplication::processEvents();
  }
  CHECK(begun == 0);
  CHECK(job.is_running());
  QTRY_VERIFY(answered == 5);
  CHECK(begun == 1);
  CHECK_FALSE(job.is_running());
  SECTION("and at once when it is waited for") {
    ask(6);
    job.wait();
    CHECK(answered == 6);
  }
  SECTION("and not at all when it is called off") {
    ask(7);
    job.cancel();
    job.wait();
    CHECK(begun == 1);
  }
}

TEST_CASE("Dragged dividers and columns are there again in the next window", "[window]") {
  QList<int> sizes;
  int column = 0;
  {
    OpenWindow open;
    open.trigger("action_page_bags");
    auto* splitter = open.find<QSplitter>("bags_splitter");
    splitter->setSizes({500, 740});
    open.find<QTableView>("bags_table")->setColumnWidth(0, 123);
    sizes = splitter->sizes();
    column = open.find<QTableView>("bags_table")->columnWidth(0);
    open.window.close();
  }
  OpenWindow open;
  open.trigger("action_page_bags");
  CHECK(open.find<QSplitter>("bags_splitter")->sizes() == sizes);
  CHECK(open.find<QTableView>("bags_table")->columnWidth(0) == column);
}

TEST_CASE("A column that nobody dragged follows what it holds, in the next window too", "[window][regression]") {
  {
    OpenWindow open(Start::mixes);
    open.trigger("action_page_bags");
    open.window.close();
  }
  OpenWindow open(Start::mixes);
  open.trigger("action_page_bags");
  auto* table = open.find<QTableView>("bags_table");
  const int before = table->columnWidth(0);
  Bag bag;
  bag.material = "pumice";
  bag.received = "2026-02-10";
  open.record->add(bag, QStringLiteral("bag"), QStringLiteral("PUMICE-2026-0001"));
  QApplication::processEvents();
  CHECK(table->columnWidth(0) > before);
}

TEST_CASE("A demonstration says that it is one", "[window]") {
  OpenWindow open;
  open.window.mark_as_demonstration();
  CHECK(open.find<QLabel>("demonstration_words")->text().contains(QStringLiteral("invented")));
  CHECK(open.window.windowTitle().contains(QStringLiteral("invented")));
}

TEST_CASE("A double click on a record opens that record, other files are sieve tests", "[window]") {
  const auto wanted = wanted_files({QStringLiteral("/home/me/a.csv"), QStringLiteral("/home/me/My Nursery.GRITWRIGHT"), QStringLiteral("b.json")});
  CHECK(wanted.record == QStringLiteral("/home/me/My Nursery.GRITWRIGHT"));
  CHECK(wanted.sieve_tests == QStringList{QStringLiteral("/home/me/a.csv"), QStringLiteral("b.json")});
  CHECK(wanted_files({}).record.isEmpty());
}

TEST_CASE("A menu that Escape closes leaves no title of the bar waiting for keys", "[window][regression]") {
  OpenWindow open;
  open.go_to_cell(0, SieveTableModel::retained);
  QMenuBar& bar = *open.window.menuBar();
  QAction* const edit = bar.actions().at(1);
  bar.setActiveAction(edit);
  edit->menu()->popup(QPoint(0, 0));
  QTest::keyClick(edit->menu(), Qt::Key_Escape);
  for (int round = 0; round < 3; ++round) QApplication::processEvents();
  CHECK(bar.activeAction() == nullptr);
}

TEST_CASE("Undo names the thing, and says no more than its name where there is nothing to undo", "[window]") {
  OpenWindow open(Start::mixes);
  auto* undo = open.find<QAction>("action_undo");
  auto* redo = open.find<QAction>("action_redo");
  CHECK(undo->text() == QStringLiteral("&Undo"));
  CHECK_FALSE(undo->isEnabled());
  CHECK(redo->text() == QStringLiteral("Re&do"));
  open.bench.edit(QStringLiteral("sand & grit"), {}, [](BenchState& state) { state.mix_name = QStringLiteral("a"); });
  CHECK(undo->text() == QStringLiteral("&Undo: sand && grit"));
  open.trigger("action_undo");
  CHECK(undo->text() == QStringLiteral("&Undo"));
  CHECK(redo->text() == QStringLiteral("Re&do: sand && grit"));
}
