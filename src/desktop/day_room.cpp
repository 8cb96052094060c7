#include "day_room.hpp"

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QMenu>
#include <QStackedWidget>
#include <QTableView>

#include "main_window.hpp"
#include "models/record_book.hpp"
#include "pages/day_page.hpp"

namespace gritwright::desktop {

DayRoom::DayRoom(Bench& bench, RecordBook& book, MainWindow& window, QMenu& menu) : QObject(&window), book_(book), window_(window), page_(new DayPage(book, bench.catalogue(), &window)) {
  menu.addSeparator();
  QMenu* own = menu.addMenu(tr("Repotting da&y"));
  const auto on_page = [&](const char* name, const QString& text, const QString& shortcut, void (DayPage::*act)()) {
    action(*own, name, text, shortcut, [this, act] { (page_->*act)(); });
  };
  on_page("action_new_day", tr("&New day"), tr("Ctrl+Alt+N"), &DayPage::new_day);
  on_page("action_day_add_tree", tr("&Put the tree on the day"), tr("Ctrl+Alt+A"), &DayPage::add_tree);
  on_page("action_day_remove_tree", tr("Take the tree o&ff the day"), tr("Ctrl+Alt+R"), &DayPage::remove_tree);
  on_page("action_day_plan_again", tr("Take its plan from the re&cord"), tr("Ctrl+Alt+G"), &DayPage::take_plan_again);
  own->addSeparator();
  on_page("action_day_tick", tr("&Tick the tree off, or back"), tr("Ctrl+Alt+K"), &DayPage::tick);
  on_page("action_day_evening", tr("Tick off &what has litres"), tr("Ctrl+Alt+E"), &DayPage::enter_evening);
  on_page("action_day_season", tr("&Season"), tr("Ctrl+Alt+S"), &DayPage::show_season);
  on_page("action_day_remove", tr("&Remove the day"), tr("Ctrl+Alt+Shift+Delete"), &DayPage::remove_day);
  own->addSeparator();
  const auto print = [&](const char* name, const QString& text, const QString& shortcut, DaySheet sheet) {
    action(*own, name, text, shortcut, [this, sheet] { page_->choose_file(sheet); });
  };
  print("action_day_sheet", tr("&Day sheet as PDF..."), tr("Ctrl+Alt+D"), DaySheet::day);
  print("action_day_cards", tr("&Batch cards as PDF..."), tr("Ctrl+Alt+B"), DaySheet::cards);
  print("action_day_labels", tr("Pot &labels as PDF..."), tr("Alt+Shift+L"), DaySheet::labels);
  print("action_day_root_plans", tr("R&oot-mass plans as PDF..."), tr("Ctrl+Alt+O"), DaySheet::root_plans);
  connect(&window_.pages(), &QStackedWidget::currentChanged, this, &DayRoom::page_changed);
  for (const char* name : {"action_day_tick", "action_day_add_tree", "action_day_remove_tree", "action_day_plan_again"})
    page_->table().addAction(own->findChild<QAction*>(QLatin1String(name)));
  page_->table().setContextMenuPolicy(Qt::ActionsContextMenu);
  for (const char* name : {"action_day_evening", "action_day_season", "action_day_sheet", "action_day_cards", "action_day_labels", "action_day_root_plans"})
    page_->addAction(own->findChild<QAction*>(QLatin1String(name)));
  page_->setContextMenuPolicy(Qt::ActionsContextMenu);
  connect(&bench, &Bench::units_changed, this, [this, &bench] { page_->set_units(bench.units()); });
  page_->set_units(bench.units());
  connect(page_, &DayPage::find_parts_wanted, this, [this] { window_.findChild<QAction*>(QStringLiteral("action_find_parts"))->trigger(); });
}

// The keys for paper belong to what is on screen.
void DayRoom::page_changed() {
  const bool day = window_.pages().currentWidget() == page_;
  QList<QKeySequence> keys{QKeySequence(tr("Ctrl+Alt+D"))};
  for (const char* name : {"action_print_sheet", "action_sheet_pdf"}) {
    auto* const test = window_.findChild<QAction*>(QLatin1String(name));
    test->setEnabled(!day);
    if (day) keys << test->shortcuts();
  }
  window_.findChild<QAction*>(QStringLiteral("action_day_sheet"))->setShortcuts(keys);
}

void DayRoom::show() { window_.pages().setCurrentWidget(page_); }

void DayRoom::action(QMenu& menu, const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act) {
  QAction* made = menu.addAction(text);
  made->setObjectName(QString::fromLatin1(object_name));
  made->setShortcut(QKeySequence(shortcut));
  connect(made, &QAction::triggered, this, [this, act = std::move(act)] {
    book_.attempt([&] {
      show();
      act();
    });
  });
}

}  // namespace gritwright::desktop
