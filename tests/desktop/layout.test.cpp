// How the pages of the invented nursery lie in windows of all sizes, in all languages and sizes of text: nothing cut, nothing covered, the urgent first.
#include <QComboBox>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <cstdlib>
#include <functional>
#include <map>
#include <string>
#include <utility>

#include "charts/root_plan_view.hpp"
#include "models/demonstration_record.hpp"
#include "pages/day_page.hpp"
#include "pages/log_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/sick_trees_tab.hpp"
#include "pages/trees_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

void open_invented_nursery(OpenWindow& open) {
  REQUIRE(fill_with_demonstration(*open.record, open.bench.catalogue()).empty());
  open.window.open_demonstration();
  QApplication::processEvents();
}

void show_sick_trees(OpenWindow& open) {
  open.trigger("action_sick_trees");
  open.window.record_pages()->log().sick_trees().job().wait();
  QApplication::processEvents();
}

RootPlanTab& show_plan(OpenWindow& open, const char* plan) {
  open.trigger("action_page_trees");
  open.window.record_pages()->trees().show_plans();
  RootPlanTab& tab = open.window.record_pages()->trees().plans();
  tab.list().show_record(QString::fromLatin1(plan));
  tab.desk().job().wait();
  QApplication::processEvents();
  return tab;
}

void on_pages_of_the_nursery(OpenWindow& open, const std::function<void(const char*)>& look) {
  for (const char* action : {"action_page_bags", "action_show_sheet", "action_show_verdict", "action_show_screening", "action_show_grain", "action_show_pot", "action_show_section",
                             "action_show_comparison", "action_find_parts", "action_groups", "action_page_trees", "action_page_log", "action_trace_grain", "action_sick_trees",
                             "action_settings"}) {
    open.trigger(action);
    QApplication::processEvents();
    look(action);
  }
  open.window.record_pages()->trees().show_pots();
  open.trigger("action_page_trees");
  look("pots");
  show_plan(open, "RP-01");
  look("root-mass plans");
  open.trigger("action_page_day");
  auto* tabs = open.find<QTabWidget>("day_tabs");
  for (int tab = 0; tab < tabs->count(); ++tab) {
    tabs->setCurrentIndex(tab);
    QApplication::processEvents();
    look(tabs->tabText(tab).toUtf8().constData());
  }
}

/// Whether a cell's words are in sight whole, in as many lines as its row has.
bool shows_whole(const QTableView& table, int row, int column) {
  constexpr int around = 6;
  const QString text = table.model()->index(row, column).data().toString();
  const QRect needed = table.fontMetrics().boundingRect(QRect(0, 0, table.columnWidth(column) - around, 10000), Qt::TextWordWrap, text);
  return needed.width() <= table.columnWidth(column) - around && needed.height() <= table.rowHeight(row);
}

std::map<const QWidget*, QRect> places_of(const QWidget& window) {
  std::map<const QWidget*, QRect> places;
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (widget->isVisible()) places[widget] = widget->geometry();
  return places;
}

}  // namespace

TEST_CASE("In every language nothing lies beneath a page's scroll bar", "[layout][translation][rounds]") {
  struct Look {
    const char* language;
    QSize size;
    int percent;
  };
  constexpr QSize least(1024, 700);
  // Large text is the hardest; what is plain or wide is looked at once.
  const auto [language, size, percent] = GENERATE_COPY(Look{"en", least, 200}, Look{"de", least, 100}, Look{"fr", least, 200}, Look{"fr", QSize(1280, 800), 150}, Look{"fr", least, 150}, Look{"en", least, 150},
                                                       Look{"es", least, 200}, Look{"ja", least, 200});
  const WithLanguage spoken(language);
  OpenWindow open;
  open.window.resize(size);
  open_invented_nursery(open);
  const LargeText text(percent);
  on_pages_of_the_nursery(open, [&](const char* view) {
    INFO(language << ", " << size.width() << ", " << percent << " %: " << view);
    CHECK(cut_at_the_side(open.window) == "");
    INFO(open.window.height() << " high");
    CHECK(open.window.size() == size);
  });
}

TEST_CASE("A table's headings are two lines high only where one of them needs two", "[layout][large_text]") {
  const char* language = GENERATE("en", "fr");
  const int percent = GENERATE(100, 150);
  const WithLanguage spoken(language);
  OpenWindow open;
  open.window.resize(1024, 700);
  open_invented_nursery(open);
  const LargeText text(percent);
  on_pages_of_the_nursery(open, [&](const char* view) {
    for (const QTableView* table : open.window.findChildren<QTableView*>()) {
      if (!table->isVisible() || table->model() == nullptr) continue;
      const QHeaderView& header = *table->horizontalHeader();
      bool needs_two = false;
      for (int column = 0; column < header.count(); ++column) {
        const QString heading = table->model()->headerData(column, Qt::Horizontal).toString();
        constexpr int around = 6;
        needs_two = needs_two || (!header.isSectionHidden(column) && (heading.contains(u'\n') || header.fontMetrics().horizontalAdvance(heading) > header.sectionSize(column) - around));
      }
      INFO(language << ", " << percent << " %: " << view << ", " << table->objectName().toStdString());
      CHECK((header.height() > 2 * header.fontMetrics().lineSpacing()) == needs_two);
    }
  });
}

TEST_CASE("The season says how its figures come about", "[layout][day_page]") {
  OpenWindow open;
  open_invented_nursery(open);
  open.trigger("action_page_day");
  auto* tabs = open.find<QTabWidget>("day_tabs");
  tabs->setCurrentIndex(tabs->count() - 1);
  QApplication::processEvents();
  auto* how = open.find<QToolButton>("how_season");
  REQUIRE(how->isEnabled());
  how->click();
  CHECK(open.find<QLabel>("explanation_text")->text().contains(QStringLiteral("docs/science/repotting-day.md")));
}

TEST_CASE("How the figures of a large day come about fits the screen and scrolls, what to read on in sight", "[layout]") {
  OpenWindow open;
  open_invented_nursery(open);
  open.trigger("action_page_day");
  QApplication::processEvents();
  auto* how = open.window.findChild<QPushButton*>(QStringLiteral("day_how"));
  REQUIRE(how != nullptr);
  how->click();
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  auto* popup = open.window.findChild<QWidget*>(QStringLiteral("explanation_popup"));
  REQUIRE(popup != nullptr);
  const int screen = popup->screen()->availableGeometry().height();
  auto* text = popup->findChild<QLabel*>(QStringLiteral("explanation_text"));
  REQUIRE(text != nullptr);
  REQUIRE(text->height() > screen);
  CHECK(popup->height() <= screen);
  auto* read_on = popup->findChild<QPushButton*>(QStringLiteral("read_on_packing"));
  REQUIRE(read_on != nullptr);
  CHECK(popup->rect().contains(QRect(read_on->mapTo(popup, QPoint(0, 0)), read_on->size())));
  auto* scroll = popup->findChild<QScrollArea*>();
  REQUIRE(scroll != nullptr);
  CHECK(scroll->verticalScrollBar()->maximum() > 0);
  CHECK(scroll->horizontalScrollBar()->maximum() == 0);
  QTest::keyClick(scroll, Qt::Key_PageDown);
  CHECK(scroll->verticalScrollBar()->value() > 0);
}

TEST_CASE("What is opened stands in its place at once, before anything is painted", "[layout]") {
  const QSize size = GENERATE(QSize(1024, 700), QSize(1280, 800));
  const int percent = GENERATE(100, 150);
  OpenWindow open(Start::mixes);
  open.window.resize(size);
  open_invented_nursery(open);
  const LargeText text(percent);
  open.trigger("action_find_parts");
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  open.window.mix_page().find_panel().show_more(true);
  const auto at_once = places_of(open.window);
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  const auto settled = places_of(open.window);
  for (const auto& [widget, place] : settled) {
    const auto found = at_once.find(widget);
    INFO(percent << " %, " << size.width() << ": " << widget->metaObject()->className() << " " << widget->objectName().toStdString());
    REQUIRE(found != at_once.end());
    CHECK(found->second == place);
  }
}

TEST_CASE("The day says first what is short and what is heaviest, then how much of each mix to make", "[layout][day_page]") {
  OpenWindow open;
  open_invented_nursery(open);
  open.trigger("action_page_day");
  auto& page = *open.find<DayPage>("day_page");
  page.finish_ranges();
  QApplication::processEvents();
  const auto* first = open.find<QLabel>("day_first");
  const QStringList lines = first->text().split(u'\n');
  REQUIRE(page.answer()->ok());
  const DayAnswer& answer = page.answer()->value();
  REQUIRE_FALSE(answer.buy.empty());
  CHECK(lines[0].contains(QString::fromStdString(answer.buy.front().material)));
  const auto heaviest = std::ranges::max_element(answer.lifts, {}, &Lift::mass);
  CHECK(lines[1].contains(QString::fromStdString(heaviest->what)));
  REQUIRE_FALSE(answer.mixes.empty());
  for (std::size_t i = 0; i < answer.mixes.size(); ++i) {
    const std::string number = std::to_string(i);
    const auto* litres = open.find<QLabel>(("figure_to_mix_" + number).c_str());
    CHECK(litres->isVisible());
    CHECK(litres->mapTo(&open.window, QPoint()).y() > first->mapTo(&open.window, QPoint()).y());
    CHECK(open.find<QToolButton>(("how_to_mix_" + number).c_str())->isEnabled());
    CHECK(open.find<QLabel>(("range_to_mix_" + number).c_str())->text().contains(u'\u2013'));
  }
}

TEST_CASE("The material of bags to receive stands beside its button, and its name says what it is for", "[layout][bags_page]") {
  const int width = GENERATE(1024, 1280, 1920);
  OpenWindow open;
  open.window.resize(width, 800);
  open_invented_nursery(open);
  open.trigger("action_page_bags");
  QApplication::processEvents();
  const auto* material = open.find<QComboBox>("bags_material");
  const auto* receive = open.find<QPushButton>("bags_receive");
  const auto line_of = [](const QWidget& widget) { return widget.mapTo(widget.window(), widget.rect().center()).y(); };
  INFO(width);
  CHECK(std::abs(line_of(*material) - line_of(*receive)) <= 2);
  const auto labels = open.window.findChildren<QLabel*>();
  const auto label = std::ranges::find_if(labels, [&](const QLabel* one) { return one->buddy() == material; });
  REQUIRE(label != labels.end());
  CHECK((*label)->text().contains(QStringLiteral("receive")));
}

TEST_CASE("The headings of a screening are whole and it scrolls up and down only, whatever the size of the text", "[layout][large_text]") {
  const int percent = GENERATE(100, 150, 200);
  const QSize size = GENERATE(QSize(1024, 700), QSize(1280, 800), QSize(1920, 1080));
  OpenWindow open;
  open.window.resize(size);
  open_invented_nursery(open);
  const LargeText large(percent);
  open.trigger("action_show_screening");
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  const auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() > 0);
  INFO(percent << " %, " << size.width() << ", table " << table->width());
  CHECK(table->horizontalScrollBar()->maximum() == 0);
  for (int column = 0; column < table->columnCount(); ++column) {
    if (table->isColumnHidden(column)) continue;
    for (const QString& line : table->horizontalHeaderItem(column)->text().split(u'\n'))
      CHECK(table->horizontalHeader()->fontMetrics().horizontalAdvance(line) <= table->columnWidth(column));
  }
}

TEST_CASE("Notes on trees are read whole where the page has room for them", "[layout][large_text]") {
  const auto [percent, size] = GENERATE(std::pair{100, QSize(1280, 800)}, std::pair{150, QSize(1280, 800)}, std::pair{100, QSize(1920, 1080)}, std::pair{200, QSize(1280, 800)},
                                        std::pair{200, QSize(1024, 700)});
  OpenWindow open;
  open.window.resize(size);
  open_invented_nursery(open);
  const LargeText large(percent);
  show_sick_trees(open);
  INFO(percent << " %, " << size.width());
  const auto* trees = open.find<QTableWidget>("sick_trees");
  CHECK(trees->horizontalScrollBar()->maximum() == 0);
  constexpr int note = 3;
  for (int row = 0; row < trees->rowCount(); ++row) {
    INFO(trees->item(row, note)->text().toStdString());
    CHECK(shows_whole(*trees, row, note));
  }
  if (percent == 200) return;
  open.trigger("action_page_day");
  QApplication::processEvents();
  const auto* day = open.find<QTableView>("day_table");
  CHECK(day->horizontalScrollBar()->maximum() == 0);
  const int last = day->model()->columnCount() - 1;
  for (int row = 0; row < day->model()->rowCount(); ++row) {
    INFO(day->model()->index(row, last).data().toString().toStdString());
    CHECK(shows_whole(*day, row, last));
    CHECK(shows_whole(*day, row, 1));  // its tree
  }
}

TEST_CASE("The names of fractions and of what happened are whole in large text in a small window", "[layout][large_text]") {
  OpenWindow open;
  open.window.resize(1024, 700);
  open_invented_nursery(open);
  const LargeText large(200);
  open.trigger("action_page_bags");
  for (int round = 0; round < 3; ++round) QApplication::processEvents();
  const auto* fractions = open.find<QTableView>("fraction_list");
  REQUIRE(fractions->model()->rowCount() > 0);
  for (int row = 0; row < fractions->model()->rowCount(); ++row) CHECK(shows_whole(*fractions, row, 1));
  open.window.record_pages()->show_log();
  open.window.record_pages()->log().show_about(QStringLiteral("P-03"));
  for (int round = 0; round < 3; ++round) QApplication::processEvents();
  const auto* log = open.find<QTableView>("log_table");
  REQUIRE(log->model()->rowCount() > 0);
  for (int row = 0; row < log->model()->rowCount(); ++row) CHECK(shows_whole(*log, row, 1));
}

TEST_CASE("Names of cuts stand beside the pictures of a plan where they have room, else in a list, each after its letter", "[layout][large_text][trees_page]") {
  OpenWindow open;
  open.window.resize(1920, 1080);
  open_invented_nursery(open);
  show_plan(open, "RP-03");
  const auto* view = open.find<RootPlanView>("root_plan_view");
  CHECK(view->key().isEmpty());
  open.window.resize(1024, 700);
  const LargeText large(200);
  for (int round = 0; round < 3; ++round) QApplication::processEvents();
  const QStringList key = view->key();
  // Cut on five faces, all but the top.
  CHECK(key.size() == 5);
  for (const Face face : {Face::right, Face::left, Face::back, Face::front, Face::bottom})
    CHECK(std::ranges::count_if(key, [&](const QString& name) { return name.startsWith(old_face_text(face)); }) == 1);
}

TEST_CASE("What sticks out on several sides of a root mass is one caution", "[layout][trees_page]") {
  OpenWindow open;
  open_invented_nursery(open);
  RootPlanTab& tab = show_plan(open, "RP-03");
  REQUIRE(tab.desk().worked() != nullptr);
  const auto& cautions = tab.desk().worked()->cautions;
  REQUIRE(std::ranges::count(cautions, std::string("root-plan.still-too-large"), &Note::code) == 4);
  const QString text = open.find<QLabel>("plan_steps")->text();
  CHECK(text.count(QStringLiteral("sticks out")) == 1);
  const QString line = text.section(QStringLiteral("sticks out"), 1).section(u'\n', 0, 0);
  for (const Direction direction : {Direction::right, Direction::left, Direction::back, Direction::front}) CHECK(line.contains(direction_text(direction)));
}

TEST_CASE("All columns of the recipes are in sight in large text in a small window", "[layout][large_text][find_parts]") {
  const int percent = GENERATE(100, 150, 200);
  OpenWindow open;
  open.window.resize(1024, 700);
  open_invented_nursery(open);
  const LargeText large(percent);
  open.trigger("action_find_parts");
  open.bench.edit(QStringLiteral("pot"), {}, [](BenchState& state) { state.pot = complete_bench().pot; });
  auto* groups = open.find<QComboBox>("find_group");
  groups->setCurrentIndex(3);
  emit groups->activated(3);
  open.window.mix_page().finder().search();
  open.window.mix_page().finder().job().wait();
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  const auto* table = open.find<QTableWidget>("recipes_table");
  REQUIRE(table->rowCount() > 0);
  REQUIRE(table->isVisible());
  INFO(percent << " %, table " << table->width());
  if (table->isColumnHidden(2)) CHECK(open.find<QLabel>("recipe_sentences")->text().contains(QStringLiteral("Misses")));
  CHECK(table->horizontalScrollBar()->maximum() == 0);
  CHECK(open.window.width() == 1024);
}

TEST_CASE("The list of a day has room for three trees in large text in a small window", "[layout][large_text][day_page]") {
  const char* const language = GENERATE("en", "fr");
  const int percent = GENERATE(100, 150, 200);
  const WithLanguage speaking(language);
  OpenWindow open;
  open.window.resize(1024, 700);
  open_invented_nursery(open);
  const LargeText large(percent);
  open.trigger("action_page_day");
  for (int round = 0; round < 10; ++round) QApplication::processEvents();
  const auto* table = open.find<QTableView>("day_table");
  REQUIRE(table->model()->rowCount() > 3);
  INFO(language << ", " << percent << " %");
  CHECK(table->viewport()->height() >= table->rowViewportPosition(2) + table->rowHeight(2));
  for (int column = 0; column < table->model()->columnCount(); ++column)
    for (const QString& word : table->model()->headerData(column, Qt::Horizontal).toString().split(u' '))
      CHECK(table->horizontalHeader()->fontMetrics().horizontalAdvance(word) <= table->columnWidth(column));
  CHECK(open.window.size() == QSize(1024, 700));
}

TEST_CASE("The names of trees are whole beside their condition, and a row has two lines at most", "[layout][trees_page]") {
  const char* const language = GENERATE("en", "de", "fr", "es", "ja");
  const QSize size = GENERATE(QSize(1024, 700), QSize(1280, 800), QSize(1920, 1080));
  const WithLanguage speaking(language);
  OpenWindow open;
  open.window.resize(size);
  open_invented_nursery(open);
  open.trigger("action_page_trees");
  for (int round = 0; round < 5; ++round) QApplication::processEvents();
  const auto* trees = open.find<QTableView>("trees_table");
  REQUIRE(trees->model()->rowCount() > 3);
  INFO(language << ", " << size.width());
  for (int row = 0; row < trees->model()->rowCount(); ++row) {
    CHECK(trees->rowHeight(row) <= 2 * trees->fontMetrics().lineSpacing() + 8);
    for (int column = 0; column < 3; ++column) {
      INFO(trees->model()->index(row, column).data().toString().toStdString());
      CHECK(shows_whole(*trees, row, column));
    }
  }
}

TEST_CASE("What stands behind a figure is read to its end in large text", "[layout][large_text]") {
  OpenWindow open;
  open.window.resize(1024, 700);
  open_invented_nursery(open);
  const LargeText large(200);
  open.trigger("action_show_pot");
  for (int round = 0; round < 5; ++round) QApplication::processEvents();
  open.find<QToolButton>("how_measure_out_1")->click();
  auto* popup = open.window.findChild<QFrame*>(QStringLiteral("explanation_popup"));
  REQUIRE(popup != nullptr);
  const auto* text = popup->findChild<QLabel*>(QStringLiteral("explanation_text"));
  const auto* scroll = popup->findChild<QScrollArea*>();
  CHECK((scroll != nullptr ? scroll->widget()->height() : text->height()) >= text->heightForWidth(text->width()));
  CHECK(popup->height() <= open.window.screen()->availableGeometry().height());
  popup->close();
}
