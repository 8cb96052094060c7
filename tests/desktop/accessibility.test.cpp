// A walk over every page of the window. What fails here is something a keyboard, a screen reader or weak eyes would stumble over.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QComboBox>
#include <QFile>
#include <QGraphicsView>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTimer>
#include <QToolButton>
#include <algorithm>
#include <filesystem>
#include <functional>
#include <map>
#include <set>
#include <utility>
#include <vector>

#include "charts/comparison_view.hpp"
#include "charts/picture_tabs.hpp"
#include "gritwright/workbook/backups.hpp"
#include "models/demonstration_record.hpp"
#include "models/parts_finder.hpp"
#include "models/protocols.hpp"
#include "pages/bags_page.hpp"
#include "pages/import_page.hpp"
#include "pages/log_page.hpp"
#include "pages/manual_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/settings_page.hpp"
#include "pages/sick_trees_tab.hpp"
#include "pages/trees_page.hpp"
#include "pages/trouble_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "theme.hpp"
#include "widgets/backups_card.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/sieve_table.hpp"
#include "widgets/whole_choice.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

constexpr int least_target_px = 24;
constexpr double least_contrast = 4.5;  // WCAG 2.1, 1.4.3

/// Runs `visit` with every page and tab in view in turn.
void on_every_view(OpenWindow& open, const std::function<void(const char*)>& visit) {
  const auto view = [&](const char* name) {
    QApplication::processEvents();
    visit(name);
  };
  open.window.show_welcome();
  view("welcome");
  const auto each = [&](std::initializer_list<const char*> actions) {
    for (const char* action : actions) {
      open.trigger(action);
      view(action);
    }
  };
  each({"action_show_sheet", "action_show_lots", "action_show_verdict", "action_show_screening", "action_show_grain", "action_show_curve"});
  open.trigger("action_add_sample");
  each({"action_show_sheet"});
  open.trigger("action_remove_sample");
  each({"action_show_pot", "action_show_section", "action_show_litres", "action_show_comparison", "action_show_ageing", "action_show_curves"});
  open.trigger("action_chart_table");
  each({"action_show_curve", "action_show_lots", "action_show_curves", "action_show_section", "action_show_litres", "action_show_comparison", "action_show_ageing"});
  open.trigger("action_chart_table");
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().show_more(true);
  auto* group = open.find<QComboBox>("find_group");
  group->setCurrentIndex(3);
  emit group->activated(3);
  open.window.mix_page().finder().search();
  open.window.mix_page().finder().job().wait();
  each({"action_find_parts", "action_show_recipes", "action_show_trade_off"});
  open.trigger("action_chart_table");
  each({"action_show_trade_off"});
  open.trigger("action_chart_table");
  each({"action_show_scores", "action_page_bags", "action_receive_bags", "action_measure"});
  for (const Protocol protocol : protocols) {
    open.window.record_pages()->measure(protocol, {});
    view(key_of(protocol));
  }
  Fraction fraction;
  fraction.source = {RecordKind::bag, open.record->workbook().all<Bag>().front().id.text};
  fraction.from = aperture_mm(2);
  fraction.dry_mass = mass_g(1200);
  open.record->add(fraction, QStringLiteral("fraction"));
  Tree tree;
  tree.species = "pine, invented";
  open.record->add(tree, QStringLiteral("tree"));
  RecordedContainer pot;
  pot.container.name = "tray";
  pot.container.rim = {length_cm(30), length_cm(20)};
  pot.container.depth = depth_cm(7);
  open.record->add(pot, QStringLiteral("pot"));
  each({"action_page_bags", "action_take_back", "action_add_bin", "action_page_trees", "action_add_tree", "action_add_pot"});
  open.find<QPushButton>("new_pot_leave")->click();
  view("pots");
  each({"action_plan_tree", "action_groups", "action_page_day", "action_new_day", "action_day_add_tree"});
  auto* day_tabs = open.find<QTabWidget>("day_tabs");
  for (int tab = 0; tab < day_tabs->count(); ++tab) {
    day_tabs->setCurrentIndex(tab);
    view("action_page_day");
  }
  each({"action_page_log", "action_sick_trees", "action_trace_grain"});
  open.find<QLineEdit>("trace_of")->setText(QStringLiteral("TR-01"));
  view("a tree traced");
  open.find<QLineEdit>("trace_of")->setText(QString::fromStdString(fraction.source.id));
  view("a bag traced");
  each({"action_settings", "action_manual"});
  open.find<QLineEdit>("manual_words")->setText(QStringLiteral("dust"));
  view("manual searched");
  QFile list(open.folder.filePath(QStringLiteral("bags.csv")));
  REQUIRE(list.open(QIODevice::WriteOnly | QIODevice::Truncate));
  list.write("id,material,count\nK-97,akadama,2\nK-98,akadama,none\n");
  list.close();
  open.window.import_file(list.fileName());
  open.find<ImportPage>("import_page")->import().job().wait();
  view("import");
  const std::filesystem::path file = open.record->workbook().file();
  const std::filesystem::path backups = open.record->workbook().backup_folder();
  std::filesystem::create_directories(backups);
  REQUIRE(save_copy(open.record->workbook(), backups / "record-2026-03-14.gritwright"));
  open.trigger("action_backups");
  auto* kept = open.find<SettingsPage>("settings_page")->findChild<BackupsCard*>();
  kept->job().wait();
  view("backups");
  open.window.show_trouble({file, backups, {Problem{"file.damaged", {}, {}}}});
  open.find<TroublePage>("trouble_page")->backups().job().wait();
  view("trouble");
}

bool takes_focus(const QWidget* widget) { return widget->focusPolicy() != Qt::NoFocus && widget->isVisible() && widget->isEnabled(); }

/// Parts of compound widgets that Qt names itself.
bool is_inner_part(const QWidget* widget) {
  const auto* area = qobject_cast<const QAbstractScrollArea*>(widget->parentWidget());
  if (area != nullptr && area->viewport() == widget) return true;
  const QString name = QString::fromLatin1(widget->metaObject()->className());
  return name == QStringLiteral("QTabBar") || qobject_cast<const QScrollBar*>(widget) != nullptr || name.startsWith(QStringLiteral("QComboBoxPrivate")) ||
         qobject_cast<const QSplitter*>(widget) != nullptr || name == QStringLiteral("QHeaderView") || widget->objectName().startsWith(QStringLiteral("qt_"));
}

bool has_buddy(const QWidget* window, const QWidget* widget) {
  for (const QLabel* label : window->findChildren<QLabel*>()) {
    if (label->buddy() == widget) return true;
  }
  return false;
}

std::vector<QWidget*> focusable(const MainWindow& window) {
  std::vector<QWidget*> found;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (takes_focus(widget) && !is_inner_part(widget)) found.push_back(widget);
  }
  return found;
}

/// What Tab goes through, from the first page's button to where it begins again.
std::vector<QWidget*> tab_chain(MainWindow& window) {
  auto* first = window.findChild<QWidget*>(QStringLiteral("action_page_bags_button"));
  std::vector<QWidget*> chain{first};
  for (QWidget* widget = first->nextInFocusChain(); widget != first; widget = widget->nextInFocusChain()) {
    if (takes_focus(widget) && !is_inner_part(widget)) chain.push_back(widget);
  }
  return chain;
}

/// The two groups, of one parent, of which the one holds the first widget and the other the second.
std::pair<QWidget*, QWidget*> where_they_part(QWidget* first, QWidget* second) {
  QWidget* second_group = second;
  while (second_group->parentWidget() != nullptr && !second_group->parentWidget()->isAncestorOf(first)) second_group = second_group->parentWidget();
  QWidget* first_group = first;
  while (first_group->parentWidget() != second_group->parentWidget() && first_group->parentWidget() != nullptr) first_group = first_group->parentWidget();
  return {first_group, second_group};
}

std::string called(const QWidget* widget) {
  return (QString::fromLatin1(widget->metaObject()->className()) + QStringLiteral(" \"") + widget->objectName() + u'"').toStdString();
}

std::vector<QAction*> actions_in(const QMenu* menu) {
  std::vector<QAction*> all;
  for (QAction* action : menu->actions()) {
    if (action->isSeparator()) continue;
    if (action->menu() != nullptr) {
      for (QAction* inner : actions_in(action->menu())) all.push_back(inner);
    } else {
      all.push_back(action);
    }
  }
  return all;
}

std::vector<QAction*> menu_actions(MainWindow& window) {
  std::vector<QAction*> all;
  for (QAction* top : window.menuBar()->actions()) {
    for (QAction* action : actions_in(top->menu())) all.push_back(action);
  }
  return all;
}

}  // namespace

TEST_CASE("Whatever takes the focus has a name or a label that is its buddy, and an object name", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    for (const QWidget* widget : focusable(open.window)) {
      INFO(view << ": " << called(widget));
      CHECK((!widget->accessibleName().isEmpty() || has_buddy(&open.window, widget)));
      CHECK_FALSE(widget->objectName().isEmpty());
    }
  });
}

TEST_CASE("Every field of a form has a buddy", "[accessibility][rounds]") {
  OpenWindow open;
  on_every_view(open, [&](const char* view) {
    for (const QWidget* widget : focusable(open.window)) {
      const bool is_field = qobject_cast<const QLineEdit*>(widget) != nullptr || qobject_cast<const QComboBox*>(widget) != nullptr;
      // The parts stand in a list whose button names them; each carries the component's name instead of a label.
      if (!is_field || widget->objectName().startsWith(QStringLiteral("parts_"))) continue;
      INFO(view << ": " << called(widget));
      CHECK(has_buddy(&open.window, widget));
    }
  });
}

TEST_CASE("Every action stands in a menu and has a shortcut", "[accessibility]") {
  OpenWindow open;
  const std::vector<QAction*> in_menus = menu_actions(open.window);
  CHECK(in_menus.size() >= 20);
  const std::set<QAction*> listed(in_menus.begin(), in_menus.end());
  for (QAction* action : open.window.findChildren<QAction*>()) {
    // Menus' own title actions and those Qt makes for its line edits and scroll bars are no actions of ours.
    if (action->menu() != nullptr || action->isSeparator() || action->objectName().isEmpty() || action->objectName().startsWith(QStringLiteral("_q_"))) continue;
    INFO(action->objectName().toStdString());
    CHECK(listed.contains(action));
    CHECK_FALSE(action->shortcut().isEmpty());
  }
}

TEST_CASE("No two actions share a shortcut, no two menus a mnemonic", "[accessibility]") {
  OpenWindow open;
  std::map<QString, QString> owner;
  for (const QAction* action : menu_actions(open.window)) {
    for (const QKeySequence& shortcut : action->shortcuts()) {
      const QString keys = shortcut.toString();
      INFO(action->objectName().toStdString() << " and " << owner[keys].toStdString() << " by " << keys.toStdString());
      CHECK(owner[keys].isEmpty());
      owner[keys] = action->objectName();
    }
  }
  std::set<QString> letters;
  for (const QAction* top : open.window.menuBar()->actions()) {
    const QString letter = QKeySequence::mnemonic(top->text()).toString();
    INFO(letter.toStdString());
    CHECK_FALSE(letter.isEmpty());
    CHECK(letters.insert(letter).second);
  }
}

TEST_CASE("No two entries of a menu share a mnemonic", "[accessibility]") {
  OpenWindow open;
  const std::function<void(const QMenu*)> look_through = [&](const QMenu* menu) {
    std::map<QString, QString> owner;
    for (const QAction* action : menu->actions()) {
      const QString keys = QKeySequence::mnemonic(action->text()).toString();
      INFO(menu->title().toStdString() << ": " << action->text().toStdString() << " and " << owner[keys].toStdString());
      CHECK((keys.isEmpty() || owner[keys].isEmpty()));
      owner[keys] = action->text();
      if (action->menu() != nullptr) look_through(action->menu());
    }
  };
  for (const QAction* top : open.window.menuBar()->actions()) look_through(top->menu());
}

TEST_CASE("No two labels or buttons in view share a mnemonic, nor one with a menu", "[accessibility][rounds]") {
  OpenWindow open;
  std::set<QString> menus;
  for (const QAction* top : open.window.menuBar()->actions()) menus.insert(QKeySequence::mnemonic(top->text()).toString());
  on_every_view(open, [&](const char* view) {
    std::map<QString, QString> owner;
    const auto claim = [&](const QString& text) {
      const QString keys = QKeySequence::mnemonic(text).toString();
      if (keys.isEmpty()) return;
      INFO(view << ": " << text.toStdString() << " and " << owner[keys].toStdString());
      CHECK(owner[keys].isEmpty());
      CHECK_FALSE(menus.contains(keys));
      owner[keys] = text;
    };
    for (const QLabel* label : open.window.findChildren<QLabel*>()) {
      if (label->isVisible() && label->buddy() != nullptr) claim(label->text());
    }
    for (const QAbstractButton* button : open.window.findChildren<QAbstractButton*>()) {
      if (button->isVisible()) claim(button->text());
    }
  });
}

TEST_CASE("The tab order follows the reading order, inside every group and from group to group", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    QTest::keyClick(&open.window, Qt::Key_Tab);  // puts the chain in order
    const std::vector<QWidget*> order = tab_chain(open.window);
    REQUIRE(order.size() > 6);
    for (std::size_t i = 1; i < order.size(); ++i) {
      const auto [before, after] = where_they_part(order[i - 1], order[i]);
      INFO(view << ": " << called(order[i - 1]) << " then " << called(order[i]) << ", that is " << called(before) << " then " << called(after));
      // The next group must not lie above or, in the same line, left; nor may a group be left and come back to.
      const QRect first(before->mapTo(&open.window, QPoint(0, 0)), before->size());
      const QRect second(after->mapTo(&open.window, QPoint(0, 0)), after->size());
      const int overlap = std::min(first.bottom(), second.bottom()) - std::max(first.top(), second.top());
      const bool same_line = 2 * overlap > std::min(first.height(), second.height());
      CHECK((same_line ? second.left() >= first.left() : second.top() >= first.top()));
    }
  });
}

TEST_CASE("Tab reaches every widget that takes the focus", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    std::set<QWidget*> in_chain;
    for (QWidget* widget = open.window.nextInFocusChain(); widget != &open.window; widget = widget->nextInFocusChain()) in_chain.insert(widget);
    for (QWidget* widget : focusable(open.window)) {
      INFO(view << ": " << called(widget));
      CHECK(in_chain.contains(widget));
      CHECK((widget->focusPolicy() & Qt::TabFocus) != 0);
    }
  });
}

TEST_CASE("Every target is at least 24 pixels high and wide", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    for (const QWidget* widget : focusable(open.window)) {
      if (widget->objectName() == QStringLiteral("sieve_cell_editor")) continue;
      INFO(view << ": " << called(widget) << " " << widget->width() << " x " << widget->height());
      CHECK(widget->height() >= least_target_px);
      CHECK(widget->width() >= least_target_px);
    }
    for (const QTabBar* bar : open.window.findChildren<QTabBar*>()) {
      for (int tab = 0; bar->isVisible() && tab < bar->count(); ++tab) {
        INFO(view << ": tab " << bar->tabText(tab).toStdString());
        CHECK(bar->tabRect(tab).height() >= least_target_px);
      }
    }
    for (const QAbstractItemView* table : open.window.findChildren<QAbstractItemView*>()) {
      if (!table->isVisible() || table->inherits("QHeaderView") || table->model() == nullptr || table->model()->rowCount() == 0) continue;
      INFO(view << ": row of " << called(table));
      CHECK(table->visualRect(table->model()->index(0, 0)).height() >= least_target_px);
    }
  });
}

TEST_CASE("Text stands out by 4.5 to 1 in every theme, curves by 3 to 1", "[accessibility]") {
  for (const Theme theme : {Theme::light, Theme::dark, Theme::high_contrast}) {
    const ThemeColours& chosen = colours(theme);
    const QPalette& palette = chosen.palette;
    const auto readable = [&](const char* what, const QColor& text, const QColor& ground) {
      INFO(what << " in theme " << static_cast<int>(theme));
      CHECK(contrast(text, ground) >= least_contrast);
    };
    readable("text on base", palette.color(QPalette::Text), palette.color(QPalette::Base));
    readable("text on alternate base", palette.color(QPalette::Text), palette.color(QPalette::AlternateBase));
    readable("window text", palette.color(QPalette::WindowText), palette.color(QPalette::Window));
    readable("button text", palette.color(QPalette::ButtonText), palette.color(QPalette::Button));
    readable("selected text", palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight));
    readable("selected text without the keys", palette.color(QPalette::Inactive, QPalette::HighlightedText), palette.color(QPalette::Inactive, QPalette::Highlight));
    CHECK(contrast(palette.color(QPalette::Inactive, QPalette::Highlight), palette.color(QPalette::Highlight)) >= 1.5);
    readable("placeholder", palette.color(QPalette::PlaceholderText), palette.color(QPalette::Base));
    readable("text on a card", palette.color(QPalette::WindowText), chosen.card);
    readable("text on a caution", palette.color(QPalette::WindowText), chosen.caution_fill);
    for (const QColor& ground : {palette.color(QPalette::Window), palette.color(QPalette::Base), palette.color(QPalette::AlternateBase), chosen.card}) {
      readable("muted", chosen.muted, ground);
      readable("fault", chosen.fault, ground);
    }
    readable("fault on its fill", chosen.fault, chosen.fault_fill);
    readable("text on the fault's fill", palette.color(QPalette::Text), chosen.fault_fill);
    for (const CurveLook& look : chosen.curves) {
      // WCAG 2.1, 1.4.11: graphics 3:1, on the plain ground and on the wanted band.
      CHECK(contrast(look.colour, palette.color(QPalette::Base)) >= 3);
      CHECK(contrast(look.colour, chosen.band) >= 3);
    }
  }
}

TEST_CASE("No two curves share line or marker, so none is told by colour alone", "[accessibility]") {
  for (const Theme theme : {Theme::light, Theme::dark, Theme::high_contrast}) {
    std::set<int> lines;
    std::set<int> markers;
    for (const CurveLook& look : colours(theme).curves) {
      CHECK(lines.insert(static_cast<int>(look.line)).second);
      CHECK(markers.insert(static_cast<int>(look.marker)).second);
    }
  }
}

TEST_CASE("The desktop's palette chooses light, dark or high contrast", "[accessibility]") {
  const auto chosen = [](const QColor& window, const QColor& text) {
    QPalette palette;
    palette.setColor(QPalette::Window, window);
    palette.setColor(QPalette::WindowText, text);
    return system_theme(palette);
  };
  CHECK(chosen("#efefef", "#000000") == Theme::light);
  CHECK(chosen("#353535", "#ffffff") == Theme::dark);
  CHECK(chosen("#000000", "#ffffff") == Theme::high_contrast);
  CHECK(chosen("#ffffff", "#000000") == Theme::high_contrast);
  for (const Theme theme : {Theme::light, Theme::dark, Theme::high_contrast}) CHECK(system_theme(colours(theme).palette) == theme);
}

TEST_CASE("Contrast of black and white is 21 to 1", "[accessibility][published]") {
  // WCAG 2.1, definition of contrast ratio: 21:1 for black on white, 1:1 for equal colours.
  CHECK_THAT(contrast(Qt::black, Qt::white), Catch::Matchers::WithinAbs(21, 1e-9));
  CHECK_THAT(contrast(Qt::red, Qt::red), Catch::Matchers::WithinAbs(1, 1e-12));
}

TEST_CASE("Every page fits a window of 1024 by 700 at plain text size", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    INFO(view);
    CHECK(open.window.minimumSizeHint().width() <= 1024);
    CHECK(open.window.minimumSizeHint().height() <= 700);
  });
}

TEST_CASE("A right click offers what the menu bar has, and every list of records has one", "[accessibility]") {
  OpenWindow open;
  const std::vector<QAction*> in_menus = menu_actions(open.window);
  for (const QWidget* widget : open.window.findChildren<QWidget*>()) {
    if (widget->contextMenuPolicy() != Qt::ActionsContextMenu) continue;
    INFO(called(widget));
    CHECK_FALSE(widget->actions().isEmpty());
    for (QAction* action : widget->actions()) CHECK(std::ranges::find(in_menus, action) != in_menus.end());
  }
  for (const char* list : {"bags_table", "fraction_list", "bins_table", "trees_table", "pots_table", "plans_table", "day_table", "log_table"}) {
    INFO(list);
    CHECK(open.find<QWidget>(list)->contextMenuPolicy() == Qt::ActionsContextMenu);
  }
}

TEST_CASE("Every table of the rooms and every picture has a menu by right click or by its key, its own or that of what it lies in", "[accessibility]") {
  OpenWindow open;
  for (const QAbstractItemView* view : open.window.findChildren<QAbstractItemView*>()) {
    // A list that drops down, a heading, and what only shows: the manual's contents, files on disk, a file to be taken in.
    if (view->window() != &open.window || qobject_cast<const QHeaderView*>(view) != nullptr) continue;
    bool has_menu = qobject_cast<const SieveTable*>(view) != nullptr;
    bool only_shows = false;
    for (const QWidget* widget = view; widget != nullptr; widget = widget->parentWidget()) {
      has_menu = has_menu || widget->contextMenuPolicy() == Qt::ActionsContextMenu;
      only_shows = only_shows || qobject_cast<const ManualPage*>(widget) != nullptr || qobject_cast<const SettingsPage*>(widget) != nullptr || qobject_cast<const ImportPage*>(widget) != nullptr;
    }
    INFO(called(view));
    CHECK((has_menu || only_shows));
  }
  for (const PictureTabs* pictures : open.window.findChildren<PictureTabs*>()) {
    bool has_menu = false;
    for (const QWidget* widget = pictures; widget != nullptr; widget = widget->parentWidget()) has_menu = has_menu || widget->contextMenuPolicy() == Qt::ActionsContextMenu;
    INFO(called(pictures));
    CHECK(has_menu);
  }
}

TEST_CASE("Shift and F10 open the menu that a right click opens", "[accessibility]") {
  OpenWindow open;
  open.trigger("action_page_log");
  open.find<QTableView>("log_table")->setFocus();
  QStringList offered;
  // The menu waits for a choice; it is closed from within.
  QTimer closing;
  closing.setSingleShot(true);
  QObject::connect(&closing, &QTimer::timeout, &open.window, [&] {
    QWidget* const menu = QApplication::activePopupWidget();
    if (menu == nullptr) return;
    for (const QAction* action : menu->actions()) offered << action->objectName();
    menu->close();
  });
  closing.start(0);
  open.press(Qt::Key_F10, Qt::ShiftModifier);
  CHECK(offered.contains(QStringLiteral("action_write_down")));
}

TEST_CASE("Every figure in view answers how so", "[accessibility][rounds]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  on_every_view(open, [&](const char* view) {
    for (const QToolButton* how : open.window.findChildren<QToolButton*>()) {
      if (!how->isVisible() || !how->objectName().startsWith(QStringLiteral("how_"))) continue;
      INFO(view << ": " << how->objectName().toStdString());
      CHECK(how->isEnabledTo(how->parentWidget()));
    }
  });
}

namespace {

void open_nursery(OpenWindow& open) {
  REQUIRE(fill_with_demonstration(*open.record, open.bench.catalogue()).empty());
  open.window.open_demonstration();
  QApplication::processEvents();
}

}  // namespace

TEST_CASE("With large text a table of trees does not scroll sideways, its words stand in two lines", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  const LargeText large;
  open.trigger("action_sick_trees");
  open.window.record_pages()->log().sick_trees().job().wait();
  QApplication::processEvents();
  for (const auto& [page, name] : {std::pair{"action_sick_trees", "sick_trees"}, {"action_page_day", "day_table"}}) {
    open.trigger(page);
    const auto* table = open.find<QTableView>(name);
    INFO(name);
    REQUIRE(table->model()->rowCount() > 0);
    CHECK(table->horizontalScrollBar()->maximum() == 0);
    CHECK(table->rowHeight(0) >= 2 * table->fontMetrics().lineSpacing());
  }
}

TEST_CASE("With large text every page fits a window of 1024 by 700 and scrolls up and down only", "[accessibility][large_text][rounds]") {
  const int percent = GENERATE(150, 200);
  OpenWindow open;
  open.bench.open(complete_bench());
  open.window.resize(1024, 700);
  const LargeText large(percent);
  on_every_view(open, [&](const char* view) {
    INFO(percent << " %: " << view << " needs " << open.window.minimumSizeHint().width() << " by " << open.window.minimumSizeHint().height());
    CHECK(open.window.minimumSizeHint().width() <= 1024);
    CHECK(open.window.minimumSizeHint().height() <= 700);
    CHECK(cut_at_the_side(open.window) == "");
  });
}

TEST_CASE("Each choice of the demonstration's record is whole in its box, whatever the size of the text", "[accessibility][large_text][rounds]") {
  const auto [percent, code] = GENERATE(table<int, const char*>({{100, "fr"}, {150, "en"}, {200, "de"}}));
  const WithLanguage language(code);
  OpenWindow open;
  open_nursery(open);
  open.window.resize(1024, 700);
  const LargeText large(percent);
  on_every_view(open, [&](const char* view) {
    for (const QComboBox* box : open.window.findChildren<QComboBox*>()) {
      if (!box->isVisible()) continue;
      for (int choice = 0; choice < box->count(); ++choice) {
        INFO(percent << " %: " << view << ": " << called(box) << ": " << box->itemText(choice).toStdString() << " in " << box->width());
        CHECK(has_room_for(*box, box->itemText(choice)));
      }
    }
  });
}

TEST_CASE("The fields of a form stand where they stood once large text is put away", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  const char* const action = GENERATE("action_page_bags", "action_show_pot", "action_show_screening", "action_add_tree");
  open.trigger(action);
  const auto places = [&] {
    for (int round = 0; round < 8; ++round) QApplication::processEvents();
    std::map<QString, QRect> all;
    for (const QWidget* field : open.window.findChildren<QWidget*>())
      if (field->isVisible() && (qobject_cast<const QLineEdit*>(field) != nullptr || qobject_cast<const QComboBox*>(field) != nullptr)) all[field->objectName()] = QRect(field->mapTo(&open.window, QPoint(0, 0)), field->size());
    return all;
  };
  const auto before = places();
  { const LargeText large(200); places(); }
  const auto after = places();
  for (const auto& [name, place] : before) {
    INFO(action << ": " << name.toStdString() << " " << place.x() << "," << place.y() << " " << place.width() << "x" << place.height() << " then " << after.at(name).x() << "," << after.at(name).y() << " " << after.at(name).width() << "x" << after.at(name).height());
    CHECK(after.at(name) == place);
  }
}

TEST_CASE("With large text in a small window the names of trees and pots are whole, and no list scrolls sideways", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  open.window.resize(1024, 700);
  const LargeText large;
  open.trigger("action_page_trees");
  TreesPage& page = open.window.record_pages()->trees();
  const auto check_names = [&](const char* name) {
    QApplication::processEvents();
    const auto* table = open.find<QTableView>(name);
    REQUIRE(table->model()->rowCount() > 0);
    CHECK(table->horizontalScrollBar()->maximum() == 0);
    for (int row = 0; row < table->model()->rowCount(); ++row) {
      // The species behind a tree's name may be cut; its tip has it.
      const QString text = table->model()->index(row, 1).data().toString().section(u' ', 0, 1);
      constexpr int around = 8;
      const QRect needed = table->fontMetrics().boundingRect(QRect(0, 0, table->columnWidth(1) - around, 1000), Qt::TextWordWrap, text);
      INFO(name << ": " << text.toStdString() << " has " << table->columnWidth(1) << " by " << table->rowHeight(row));
      CHECK(needed.width() <= table->columnWidth(1) - around);
      CHECK(needed.height() <= table->rowHeight(row));
    }
  };
  page.show_trees();
  check_names("trees_table");
  for (const char* name : {"tree_seen_table", "tree_repotting_table"}) {
    INFO(name);
    CHECK(open.find<QTableView>(name)->horizontalScrollBar()->maximum() == 0);
  }
  for (const char* name : {"tree_seen_day", "tree_repotted_day"}) {
    const auto* day = open.find<QLineEdit>(name);
    CHECK(day->fontMetrics().horizontalAdvance(QStringLiteral("2026-11-29")) + 8 <= day->width());
  }
  page.show_pots();
  check_names("pots_table");
}

TEST_CASE("With plain text in a small window the rows of bags, pots and groups have one line", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  open.window.resize(1024, 700);
  const auto check_rows = [&](const char* name) {
    QApplication::processEvents();
    const auto* table = open.find<QTableView>(name);
    INFO(name);
    REQUIRE(table->model()->rowCount() > 0);
    CHECK(table->horizontalScrollBar()->maximum() == 0);
    CHECK(table->rowHeight(0) < 2 * table->fontMetrics().lineSpacing());
  };
  open.trigger("action_page_bags");
  check_rows("bags_table");
  open.trigger("action_page_trees");
  open.window.record_pages()->trees().show_pots();
  check_rows("pots_table");
  open.trigger("action_groups");
  check_rows("groups_table");
}

TEST_CASE("A column that says nothing of a tree's repottings is left out, and the others are in sight", "[accessibility]") {
  OpenWindow open;
  open_nursery(open);
  open.trigger("action_page_trees");
  auto* trees = open.find<QTableView>("trees_table");
  trees->setCurrentIndex(trees->model()->index(0, 0));  // TR-12
  QApplication::processEvents();
  const auto* table = open.find<QTableWidget>("tree_repotting_table");
  CHECK(table->horizontalScrollBar()->maximum() == 0);
  REQUIRE(table->rowCount() == 1);
  for (int column = 0; column < table->columnCount(); ++column) {
    if (!table->isColumnHidden(column)) CHECK_FALSE(table->item(0, column)->text().isEmpty());
  }
  CHECK_FALSE(table->isColumnHidden(1));  // its pot
}

TEST_CASE("With plain text the rows of the repotting day have one line", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  open.trigger("action_page_day");
  const auto* table = open.find<QTableView>("day_table");
  CHECK(table->horizontalScrollBar()->maximum() == 0);
  CHECK(table->rowHeight(0) < 2 * table->fontMetrics().lineSpacing());
}

TEST_CASE("With large text the name of every picture of a mix is in sight", "[accessibility][large_text]") {
  OpenWindow open(Start::mixes);
  open_nursery(open);
  const LargeText large;
  QApplication::processEvents();
  const QTabBar* bar = open.window.mix_page().pictures().tabBar();
  for (int tab = 0; tab < bar->count(); ++tab) {
    INFO(bar->tabText(tab).toStdString());
    CHECK(bar->rect().contains(bar->tabRect(tab)));
  }
  for (const QToolButton* arrow : bar->findChildren<QToolButton*>()) CHECK_FALSE(arrow->isVisible());
  CHECK(bar->tabText(1) == QStringLiteral("Pot in section"));  // said in one piece to a screen reader
}

TEST_CASE("The three doors of the first start speak in the size of all other text", "[accessibility][large_text]") {
  OpenWindow open;
  open.window.show_welcome();
  const LargeText large;
  QApplication::processEvents();
  for (const char* name : {"door_demonstration", "door_sieving", "door_container"}) {
    const auto* door = open.find<QPushButton>(name);
    INFO(name << " is " << door->width() << " by " << door->height());
    CHECK(door->height() >= door->heightForWidth(door->width()));
    for (const QLabel* words : door->findChildren<QLabel*>()) {
      CHECK(words->font().pointSizeF() == QApplication::font().pointSizeF());
      CHECK(words->height() >= words->heightForWidth(words->width()));
    }
  }
}

TEST_CASE("In a small window the names of pictures and of a day's tabs need no arrows, whatever the size of the text", "[accessibility][large_text]") {
  const int percent = GENERATE(100, 150, 200);
  INFO(percent << " %");
  OpenWindow open(Start::mixes);
  open_nursery(open);
  open.window.resize(1024, 700);
  const LargeText text(percent);
  QApplication::processEvents();
  const auto has_arrows = [](const QTabBar& bar) { return std::ranges::any_of(bar.findChildren<QToolButton*>(), &QWidget::isVisible); };
  PictureTabs& pictures = open.window.mix_page().pictures();
  CHECK_FALSE(has_arrows(*pictures.tabBar()));
  auto* chooser = pictures.findChild<QComboBox*>(QStringLiteral("picture_chooser"));
  if (chooser->isVisible()) {
    REQUIRE(chooser->count() == pictures.count());
    chooser->setCurrentIndex(2);
    emit chooser->activated(2);
    CHECK(pictures.currentIndex() == 2);
    pictures.setCurrentIndex(1);
    CHECK(chooser->currentText() == pictures.tabText(1));
  } else {
    for (int tab = 0; tab < pictures.count(); ++tab) CHECK(pictures.tabBar()->rect().contains(pictures.tabBar()->tabRect(tab)));
  }
  open.trigger("action_page_day");
  CHECK_FALSE(has_arrows(*open.find<QTabBar>("day_tab_bar")));
}

TEST_CASE("With large text what is weighed of a screening is in sight beside what was predicted", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  open.window.resize(1024, 700);
  const LargeText large;
  open.trigger("action_show_screening");
  const auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() > 0);
  CHECK(table->horizontalScrollBar()->maximum() == 0);
}

TEST_CASE("With large text what was tipped into a bin does not scroll sideways", "[accessibility][large_text]") {
  OpenWindow open;
  open_nursery(open);
  open.window.resize(1024, 700);
  const LargeText large;
  open.trigger("action_page_bags");
  open.window.record_pages()->bags().show_bins();
  QApplication::processEvents();
  const auto* table = open.find<QTableWidget>("bin_contents");
  REQUIRE(table->rowCount() > 0);
  CHECK(table->horizontalScrollBar()->maximum() == 0);
}

TEST_CASE("The button beside the names of pictures is no lower than they are", "[accessibility]") {
  const int percent = GENERATE(100, 150, 200);
  OpenWindow open(Start::mixes);
  open_nursery(open);
  const LargeText text(percent);
  QApplication::processEvents();
  PictureTabs& pictures = open.window.mix_page().pictures();
  const QRect tabs(pictures.tabBar()->mapTo(&pictures, QPoint()), pictures.tabBar()->size());
  const QRect button = pictures.cornerWidget()->geometry();
  INFO(percent << " %: " << button.top() << " to " << button.bottom() << " beside " << tabs.top() << " to " << tabs.bottom());
  CHECK(button.top() >= tabs.top());
  CHECK(button.bottom() <= tabs.bottom());
}

TEST_CASE("With large text half of the mixes compared are in sight at once", "[accessibility][large_text]") {
  OpenWindow open(Start::mixes);
  open_nursery(open);
  const LargeText large;
  open.window.mix_page().show_comparison();
  open.window.mix_page().comparison().job().wait();
  QApplication::processEvents();
  const QWidget& picture = open.window.mix_page().comparison().picture();
  REQUIRE(open.window.mix_page().comparison().comparison().mixes.size() >= 6);
  CHECK(2 * picture.parentWidget()->height() >= picture.height());
}
