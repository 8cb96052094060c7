#include "main_window.hpp"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QContextMenuEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QToolBar>
#include <QUndoStack>

#include "charts/ageing_view.hpp"
#include "charts/chart_export.hpp"
#include "charts/grading_chart.hpp"
#include "charts/picture_tabs.hpp"
#include "charts/score_view.hpp"
#include "day_room.hpp"
#include "jump_targets.hpp"
#include "models/bench_files.hpp"
#include "models/range_keeper.hpp"
#include "models/record_book.hpp"
#include "models/sheets_from_records.hpp"
#include "models/sieve_table_model.hpp"
#include "navigation.hpp"
#include "pages/bags_page.hpp"
#include "pages/groups_page.hpp"
#include "pages/day_page.hpp"
#include "pages/import_page.hpp"
#include "pages/log_page.hpp"
#include "pages/manual_page.hpp"
#include "pages/measure_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/pots_tab.hpp"
#include "pages/room_page.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/settings_page.hpp"
#include "pages/sieving_page.hpp"
#include "pages/trees_page.hpp"
#include "pages/trouble_page.hpp"
#include "pages/welcome_page.hpp"
#include "print/test_sheet.hpp"
#include "record_pages.hpp"
#include "text.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/jump_box.hpp"
#include "widgets/page_stack.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/recipes_panel.hpp"
#include "widgets/screening_panel.hpp"
#include "widgets/sheet_editor.hpp"
#include "widgets/sieve_table.hpp"
#include "widgets/status_line.hpp"
#include "widgets/tab_order.hpp"
#include "widgets/undo_keys.hpp"
#include "widgets/verdict_panel.hpp"
#include "window_memory.hpp"

namespace gritwright::desktop {

namespace {

/// True for a component that nobody has typed into: a file opened may take its place.
bool is_untouched(const ComponentSheet& component) {
  const SieveSheet& sheet = component.sheet;
  // The tares may be those of the sheet before.
  const auto typed = [](const PanText& pan) { return !pan.retained.isEmpty(); };
  return !typed(sheet.pan) && sheet.dry_mass.isEmpty() && component.material.isEmpty() && component.grain == GrainText{} &&
         !std::ranges::any_of(sheet.rows, typed);
}

}  // namespace

MainWindow::MainWindow(Bench& bench, RecordBook* record, QWidget* parent)
    : QMainWindow(parent),
      bench_(bench),
      record_(record),
      settings_(read_settings()),
      pages_(new PageStack(this)),
      ranges_(new RangeKeeper(bench, this)),
      welcome_page_(new WelcomePage(this)),
      sieving_page_(new SievingPage(bench, *ranges_, this)),
      mix_page_(new MixPage(bench, *ranges_, this)),
      settings_page_(new SettingsPage(record, settings_, this)),
      manual_page_(new ManualPage(this)),
      status_line_(new StatusLine(this)) {
  setObjectName(QStringLiteral("main_window"));
  setWindowTitle(tr("Gritwright"));
  pages_->addWidget(welcome_page_);
  setCentralWidget(pages_);
  make_file_menu();
  make_edit_menu();
  make_component_menu();
  make_go_menu();
  if (record != nullptr) record_pages_ = new RecordPages(bench_, *record, *this, *go_menu_);
  if (record_pages_ != nullptr) day_room_ = new DayRoom(bench_, *record, *this, record_pages_->menu());
  make_view_menu();
  make_help_menu();
  for (const QAction* title : menuBar()->actions()) connect(title->menu(), &QMenu::aboutToHide, this, &MainWindow::leave_menu_bar, Qt::QueuedConnection);
  make_rooms();
  make_context_menus();
  new UndoKeys(*this);
  status_line_->setObjectName(QStringLiteral("status_bar"));
  setStatusBar(status_line_);
  connect(&bench_, &Bench::told, this, &MainWindow::say);
  connect(settings_page_, &SettingsPage::settings_changed, this, &MainWindow::set_settings);
  connect(welcome_page_, &WelcomePage::demonstration_wanted, this, &MainWindow::demonstration_wanted);
  connect(welcome_page_, &WelcomePage::sieving_wanted, this, [this] {
    show_sieving();
    sieving_page_->show_sheet();
  });
  connect(welcome_page_, &WelcomePage::container_wanted, this, &MainWindow::describe_pot);
  bench_.set_units(settings_.units);
  if (record_pages_ != nullptr) record_pages_->set_laboratory_figures(settings_.laboratory_figures);
  // With its frame it must fit the screen: the line at its foot says what happened.
  constexpr QSize frame(16, 48);
  resize(QSize(1280, 800).boundedTo(screen()->availableSize() - frame));
  restoreGeometry(QSettings().value(QStringLiteral("window/geometry")).toByteArray());
}

void MainWindow::make_rooms() {
  const auto closed = [this](const QString& title) {
    auto* room = new RoomPage(title, tr("The record could not be opened, so this page is empty; what lies on the bench is kept all the same."), tr("What can be done..."), this);
    connect(room, &RoomPage::help_wanted, this, [this] {
      if (trouble_page_ != nullptr) pages_->setCurrentWidget(trouble_page_);
    });
    return room;
  };
  navigation_->add_room("bags", tr("Bags"), record_pages_ != nullptr ? static_cast<QWidget*>(&record_pages_->bags()) : closed(tr("Bags")));
  navigation_->add_room("sieving", tr("Sieving"), sieving_page_);
  navigation_->add_room("mixes", tr("Mixes"), mix_page_);
  navigation_->add_room("trees", tr("Pots and trees"), record_pages_ != nullptr ? static_cast<QWidget*>(&record_pages_->trees()) : closed(tr("Pots and trees")));
  navigation_->add_room("day", tr("Repotting day"), day_room_ != nullptr ? static_cast<QWidget*>(&day_room_->page()) : closed(tr("Repotting day")));
  navigation_->add_room("log", tr("Log"), record_pages_ != nullptr ? static_cast<QWidget*>(&record_pages_->log()) : closed(tr("Log")));
  pages_->addWidget(settings_page_);
  pages_->addWidget(manual_page_);
  if (record_ != nullptr) {
    import_page_ = new ImportPage(*record_, bench_.catalogue(), this);
    pages_->addWidget(import_page_);
    connect(import_page_, &ImportPage::left, &record_pages_->bags(), [this] { record_pages_->show_bags(); });
    connect(settings_page_, &SettingsPage::restore_wanted, this, &MainWindow::ask_to_restore);
    connect(settings_page_, &SettingsPage::look_wanted, this, [this](const QString& backup) { emit record_wanted(backup, true); });
  }
  connect(manual_page_, &ManualPage::left, this, &MainWindow::leave_manual);
}

QAction* MainWindow::action(QMenu* menu, const char* object_name, const QString& text, const QKeySequence& shortcut) {
  QAction* made = menu->addAction(text);
  made->setObjectName(QString::fromLatin1(object_name));
  made->setShortcut(shortcut);
  return made;
}

void MainWindow::make_file_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&File"));
  connect(action(menu, "action_new", tr("Cl&ear the bench"), QKeySequence::New), &QAction::triggered, this, [this] {
    bench_.edit(tr("bench cleared"), {}, [](BenchState& state) {
      BenchState fresh = empty_bench();
      for (ComponentSheet& component : fresh.components) {
        if (!state.components.empty()) component.sheet = same_stack(state.components.back().sheet);
      }
      state = std::move(fresh);
    });
    show_sieving();
    sieving_page_->show_sheet();
  });
  connect(action(menu, "action_open_sieve_test", tr("&Open sieve tests..."), QKeySequence::Open), &QAction::triggered, this, &MainWindow::choose_sieve_tests);
  connect(action(menu, "action_open_container", tr("Open po&t..."), QKeySequence(tr("Ctrl+Shift+O"))), &QAction::triggered, this, &MainWindow::choose_container);
  connect(action(menu, "action_demonstration", tr("&Demonstration"), QKeySequence(tr("Ctrl+Shift+D"))), &QAction::triggered, this, &MainWindow::demonstration_wanted);
  menu->addSeparator();
  connect(action(menu, "action_save_picture", tr("Save the &picture or its data..."), QKeySequence(tr("Ctrl+E"))), &QAction::triggered, this, &MainWindow::choose_picture_file);
  connect(action(menu, "action_print_sheet", tr("P&rint the sheet..."), QKeySequence::Print), &QAction::triggered, this, &MainWindow::print_sheet);
  connect(action(menu, "action_sheet_pdf", tr("S&heet as PDF..."), QKeySequence(tr("Ctrl+Shift+P"))), &QAction::triggered, this, &MainWindow::choose_sheet_file);
  menu->addSeparator();
  QAction* import = action(menu, "action_import", tr("Records from a f&ile..."), QKeySequence(tr("Ctrl+I")));
  import->setEnabled(record_ != nullptr);
  connect(import, &QAction::triggered, this, [this] { import_file(); });
  connect(action(menu, "action_open_record", tr("Open &another record..."), QKeySequence(tr("Ctrl+Alt+W"))), &QAction::triggered, this, &MainWindow::choose_record);
  connect(action(menu, "action_usual_record", tr("&Back to the usual record"), QKeySequence(tr("Ctrl+Alt+H"))), &QAction::triggered, this, [this] { emit record_wanted({}, false); });
  connect(action(menu, "action_backups", tr("Bac&kups of the record"), QKeySequence(tr("Ctrl+Alt+U"))), &QAction::triggered, this, &MainWindow::show_backups);
  menu->addSeparator();
  connect(action(menu, "action_settings", tr("&Settings"), QKeySequence(tr("Ctrl+,"))), &QAction::triggered, this, &MainWindow::show_settings);
  menu->addSeparator();
  QAction* quit = action(menu, "action_quit", tr("&Quit"), QKeySequence(tr("Ctrl+Q")));
  quit->setMenuRole(QAction::QuitRole);
  connect(quit, &QAction::triggered, this, &QWidget::close);
}

void MainWindow::make_edit_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Edit"));
  QUndoStack& steps = bench_.undo_stack();
  QAction* undo = action(menu, "action_undo", {}, QKeySequence(tr("Ctrl+Z")));
  QAction* redo = action(menu, "action_redo", {}, QKeySequence(tr("Ctrl+Shift+Z")));
  const auto name = [undo, redo, &steps] {
    undo->setText(steps.canUndo() ? tr("&Undo: %1").arg(menu_text(steps.undoText())) : tr("&Undo"));
    redo->setText(steps.canRedo() ? tr("Re&do: %1").arg(menu_text(steps.redoText())) : tr("Re&do"));
    undo->setEnabled(steps.canUndo());
    redo->setEnabled(steps.canRedo());
  };
  connect(&steps, &QUndoStack::indexChanged, this, name);
  connect(&steps, &QUndoStack::undoTextChanged, this, name);
  connect(&steps, &QUndoStack::redoTextChanged, this, name);
  // What changes out of sight is told, or nobody would know.
  const auto told = [this](const QString& sentence) {
    if (!is_bench_in_sight()) say(sentence);
  };
  connect(undo, &QAction::triggered, this, [&steps, told] {
    const QString what = steps.undoText();
    steps.undo();
    told(RecordBook::tr("Undone: %1").arg(what));
  });
  connect(redo, &QAction::triggered, this, [&steps, told] {
    const QString what = steps.redoText();
    steps.redo();
    told(RecordBook::tr("Done again: %1").arg(what));
  });
  name();
  menu->addSeparator();
  SieveTable* table = &sieving_page_->sheet().table();
  // These belong to the stack: elsewhere the same keys keep the meaning they have in a line of text.
  const auto of_table = [&](const char* object_name, const QString& text, const QKeySequence& shortcut, void (SieveTable::*act)()) {
    QAction* made = action(menu, object_name, text, shortcut);
    made->setShortcutContext(Qt::WidgetShortcut);
    table->addAction(made);
    connect(made, &QAction::triggered, table, act);
  };
  of_table("action_copy", tr("&Copy cells"), QKeySequence::Copy, &SieveTable::copy);
  of_table("action_paste", tr("&Paste into the stack"), QKeySequence::Paste, &SieveTable::paste);
  of_table("action_clear", tr("C&lear cells"), QKeySequence(Qt::Key_Delete), &SieveTable::clear_cells);
  menu->addSeparator();
  of_table("action_insert_sieve", tr("&New sieve above"), QKeySequence(Qt::Key_Insert), &SieveTable::insert_sieve);
  of_table("action_remove_sieve", tr("&Remove sieve"), QKeySequence(tr("Ctrl+Delete")), &SieveTable::remove_sieve);
}

void MainWindow::make_component_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Component"));
  const auto step = [this](int by) {
    const int count = static_cast<int>(bench_.state().components.size());
    if (count > 0) bench_.set_current_component((bench_.current_component() + by + count) % count);
  };
  connect(action(menu, "action_next_component", tr("&Next component"), QKeySequence(tr("Ctrl+PgDown"))), &QAction::triggered, this, [step] { step(1); });
  connect(action(menu, "action_previous_component", tr("&Previous component"), QKeySequence(tr("Ctrl+PgUp"))), &QAction::triggered, this, [step] { step(-1); });
  menu->addSeparator();
  connect(action(menu, "action_add_component", tr("&Add a component"), QKeySequence(tr("Ctrl+Shift+N"))), &QAction::triggered, this, [this] {
    mix_page_->parts().add_component();
    show_sieving();
    sieving_page_->show_sheet();
  });
  connect(action(menu, "action_remove_component", tr("&Remove this component"), QKeySequence(tr("Ctrl+Shift+Delete"))), &QAction::triggered, &mix_page_->parts(),
          &PartsPanel::remove_component);
  menu->addSeparator();
  SieveTableModel* stack = &sieving_page_->sheet().table().stack();
  connect(action(menu, "action_add_sample", tr("&Further sample of this bag"), QKeySequence(tr("Ctrl+Shift+F"))), &QAction::triggered, this, [this, stack] {
    stack->add_replicate();
    const auto current = static_cast<std::size_t>(bench_.current_component());
    if (current >= bench_.state().components.size()) return;
    const auto samples = bench_.state().components[current].sheet.replicates.size() + 1;
    if (auto* mass = sieving_page_->findChild<QWidget*>(QStringLiteral("dry_mass_%1").arg(samples))) mass->setFocus();
  });
  connect(action(menu, "action_remove_sample", tr("Remove the &last sample"), QKeySequence(tr("Ctrl+Alt+F"))), &QAction::triggered, stack, &SieveTableModel::remove_replicate);
}

void MainWindow::make_go_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Go"));
  go_menu_ = menu;
  navigation_ = new Navigation(*this, *pages_, *menu);
  // The rooms come first; this separator waits for them.
  QAction* below = menu->addSeparator();
  navigation_->insert_before(below);
  const auto go = [&](const char* object_name, const QString& text, const QString& shortcut, std::function<void()> shown) {
    connect(action(menu, object_name, text, QKeySequence(shortcut)), &QAction::triggered, this, [shown = std::move(shown)] { shown(); });
  };
  const auto on_sieving = [this](void (SievingPage::*shown)()) {
    return [this, shown] {
      show_sieving();
      (sieving_page_->*shown)();
    };
  };
  const auto on_mixes = [this](void (MixPage::*shown)()) {
    return [this, shown] {
      show_mixes();
      (mix_page_->*shown)();
    };
  };
  go("action_jump", tr("&Any bag, mix or action..."), tr("Ctrl+K"), [this] { jump(); });
  menu->addSeparator();
  go("action_show_sheet", tr("&Sieve test"), tr("Ctrl+Shift+1"), on_sieving(&SievingPage::show_sheet));
  go("action_show_grain", tr("&Grain"), tr("Ctrl+Shift+2"), on_sieving(&SievingPage::show_grain));
  go("action_show_curve", tr("C&urve of this test"), tr("Ctrl+Shift+3"), on_sieving(&SievingPage::show_curve));
  go("action_show_lots", tr("&Lot to lot"), tr("Ctrl+Shift+4"), on_sieving(&SievingPage::show_lots));
  go("action_show_verdict", tr("&Verdict on the bag"), tr("Ctrl+Shift+5"), on_sieving(&SievingPage::show_verdict));
  go("action_show_screening", tr("S&creen this bag"), tr("Ctrl+Shift+6"), on_sieving(&SievingPage::show_screening));
  menu->addSeparator();
  go("action_show_pot", tr("&Pot"), tr("Ctrl+Alt+4"), on_mixes(&MixPage::show_pot));
  go("action_show_curves", tr("Curves of the &mix"), tr("Ctrl+Alt+5"), on_mixes(&MixPage::show_curves));
  go("action_show_section", tr("Pot in s&ection"), tr("Ctrl+Alt+6"), on_mixes(&MixPage::show_section));
  go("action_show_litres", tr("Litres &in and out"), tr("Ctrl+Alt+7"), on_mixes(&MixPage::show_litres));
  go("action_show_comparison", tr("Mi&xes side by side"), tr("Ctrl+Alt+8"), on_mixes(&MixPage::show_comparison));
  go("action_find_parts", tr("Find par&ts"), tr("Ctrl+Shift+7"), on_mixes(&MixPage::show_find));
  go("action_show_recipes", tr("&Recipes found"), tr("Ctrl+Shift+8"), on_mixes(&MixPage::show_recipes));
  go("action_show_trade_off", tr("Trade-&offs of the recipes"), tr("Ctrl+Shift+9"), on_mixes(&MixPage::show_trade_off));
  go("action_show_ageing", tr("&Years to come"), tr("Ctrl+Alt+Y"), on_mixes(&MixPage::show_ageing));
  go("action_show_scores", tr("Pot tests against the pre&dictions"), tr("Ctrl+Alt+9"), on_mixes(&MixPage::show_scores));
  menu->addSeparator();
  go("action_show_band", tr("&Wanted grain"), tr("Ctrl+B"), [this] {
    if (pages_->currentWidget() == mix_page_) return mix_page_->show_band();
    show_sieving();
    sieving_page_->show_band();
  });
}

void MainWindow::make_view_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&View"));
  QAction* table = action(menu, "action_chart_table", tr("Pictures as &tables"), QKeySequence(tr("Ctrl+T")));
  table->setCheckable(true);
  for (PictureTabs* tabs : findChildren<PictureTabs*>()) {
    connect(table, &QAction::toggled, tabs, &PictureTabs::set_as_table);
    connect(tabs, &PictureTabs::as_table_changed, table, &QAction::setChecked);
  }
  connect(action(menu, "action_whole_chart", tr("&Whole curve again"), QKeySequence(tr("Ctrl+9"))), &QAction::triggered, this, [this] {
    sieving_page_->chart().show_all();
    mix_page_->chart().show_all();
  });
  menu->addSeparator();
  QAction* us = action(menu, "action_us_units", tr("&US units"), QKeySequence(tr("Ctrl+Alt+M")));
  us->setCheckable(true);
  us->setChecked(settings_.units == UnitSystem::us);
  connect(us, &QAction::toggled, this, [this](bool on) {
    Settings changed = settings_;
    changed.units = on ? UnitSystem::us : UnitSystem::metric;
    set_settings(changed);
  });
  menu->addSeparator();
  auto* themes = new QActionGroup(this);
  const auto theme = [&](const char* object_name, const QString& text, const QString& shortcut, std::optional<Theme> chosen) {
    QAction* made = action(menu, object_name, text, QKeySequence(shortcut));
    made->setCheckable(true);
    made->setChecked(settings_.theme == chosen);
    themes->addAction(made);
    connect(made, &QAction::triggered, this, [this, chosen] {
      Settings changed = settings_;
      changed.theme = chosen;
      set_settings(changed);
    });
  };
  theme("action_theme_system", tr("Colours of the s&ystem"), tr("Ctrl+Alt+0"), std::nullopt);
  theme("action_theme_light", tr("&Light"), tr("Ctrl+Alt+1"), Theme::light);
  theme("action_theme_dark", tr("&Dark"), tr("Ctrl+Alt+2"), Theme::dark);
  theme("action_theme_contrast", tr("&High contrast"), tr("Ctrl+Alt+3"), Theme::high_contrast);
  menu->addSeparator();
  connect(action(menu, "action_larger", tr("Larger te&xt"), QKeySequence::ZoomIn), &QAction::triggered, this, [this] { set_text_percent(settings_.text_percent + 25); });
  connect(action(menu, "action_smaller", tr("S&maller text"), QKeySequence::ZoomOut), &QAction::triggered, this, [this] { set_text_percent(settings_.text_percent - 25); });
  connect(action(menu, "action_normal_text", tr("&Normal text"), QKeySequence(tr("Ctrl+0"))), &QAction::triggered, this, [this] { set_text_percent(100); });
}

void MainWindow::make_help_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Help"));
  connect(action(menu, "action_manual", tr("&Manual: this page"), QKeySequence(tr("F1"))), &QAction::triggered, this, &MainWindow::show_manual);
  connect(action(menu, "action_manual_contents", tr("C&ontents of the manual"), QKeySequence(tr("Ctrl+Shift+F1"))), &QAction::triggered, this,
          [this] { show_manual_page(QStringLiteral("manual/desktop")); });
  menu->addSeparator();
  connect(action(menu, "action_welcome", tr("The &three doors"), QKeySequence(tr("Alt+Shift+F1"))), &QAction::triggered, this, &MainWindow::show_welcome);
  connect(action(menu, "action_cautions", tr("Show &cautions again"), QKeySequence(tr("Shift+F1"))), &QAction::triggered, this, [this] {
    for (CautionBar* caution : findChildren<CautionBar*>()) caution->restore();
  });
  QAction* about = action(menu, "action_about", tr("&About Gritwright"), QKeySequence(tr("Ctrl+F1")));
  about->setMenuRole(QAction::AboutRole);
  connect(about, &QAction::triggered, this, [this] {
    auto* box = new QMessageBox(QMessageBox::NoIcon, tr("About Gritwright"),
                                tr("Gritwright %1: grading, mixes and pots for trees in shallow containers.\n\nFree software under the GNU General Public License, version 3 or later, "
                                   "without any warranty.\nEstimates are general information; where a figure matters, measure it in a pot test.")
                                    .arg(QCoreApplication::applicationVersion()),
                                QMessageBox::Ok, this);
    box->setObjectName(QStringLiteral("about_box"));
    constexpr int icon_side = 64;
    box->setIconPixmap(windowIcon().pixmap(icon_side));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setModal(false);
    box->show();
  });
}

void MainWindow::show_welcome() {
  pages_->setCurrentWidget(welcome_page_);
  welcome_page_->take_focus();
}

void MainWindow::describe_pot() {
  if (record_pages_ != nullptr) {
    findChild<QAction*>(QStringLiteral("action_add_pot"))->trigger();
    return findChild<QWidget*>(QStringLiteral("new_pot_rim_length"))->setFocus();
  }
  show_mixes();
  mix_page_->show_pot();
}

void MainWindow::show_sieving() { pages_->setCurrentWidget(sieving_page_); }
void MainWindow::show_mixes() { pages_->setCurrentWidget(mix_page_); }

void MainWindow::show_settings() {
  settings_page_->show_settings(settings_);
  pages_->setCurrentWidget(settings_page_);
  settings_page_->take_focus();
}

void MainWindow::show_backups() {
  if (trouble_page_ != nullptr) return pages_->setCurrentWidget(trouble_page_);
  show_settings();
  settings_page_->show_backups();
}

void MainWindow::import_file(const QString& path) {
  if (import_page_ == nullptr) return;
  if (path.isEmpty() && !import_page_->choose_file()) return;
  if (!path.isEmpty()) import_page_->show_file(path);
  pages_->setCurrentWidget(import_page_);
  import_page_->take_focus();
}

void MainWindow::choose_record() {
  const QString file = QFileDialog::getOpenFileName(this, tr("Open another record"), {}, tr("Gritwright records (*.gritwright);;All files (*)"));
  if (!file.isEmpty()) emit record_wanted(file, false);
}

void MainWindow::ask_to_restore(const QString& backup) {
  auto* box = new QMessageBox(QMessageBox::Question, tr("Restore a backup"), tr("Put %1 in the place of the record?").arg(QFileInfo(backup).fileName()), QMessageBox::Cancel, this);
  box->setObjectName(QStringLiteral("restore_box"));
  box->setInformativeText(tr("What was written down since then is no longer in the record. The record as it is now stays beside it under a name of its own, so nothing is lost."));
  QPushButton* restore = box->addButton(tr("Restore"), QMessageBox::AcceptRole);
  restore->setObjectName(QStringLiteral("restore_confirm"));
  box->setDefaultButton(QMessageBox::Cancel);
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setModal(false);
  connect(restore, &QPushButton::clicked, this, [this, backup] { emit restore_wanted(backup); });
  box->show();
}

void MainWindow::mark_record(const QString& name, bool read_only) {
  setWindowTitle(read_only ? tr("Gritwright \u2013 %1, reading only").arg(name) : tr("Gritwright \u2013 %1").arg(name));
  status_line_->keep_words(read_only ? tr("%1 is open for reading only: nothing here can be changed.").arg(name) : tr("This is %1, not the usual record.").arg(name), "record_words");
}

void MainWindow::show_trouble(const RecordTrouble& trouble) {
  trouble_page_ = new TroublePage(trouble, this);
  pages_->addWidget(trouble_page_);
  connect(trouble_page_, &TroublePage::open_wanted, this, &MainWindow::record_wanted);
  connect(trouble_page_, &TroublePage::other_wanted, this, &MainWindow::choose_record);
  connect(trouble_page_, &TroublePage::restore_wanted, this, &MainWindow::ask_to_restore);
  pages_->setCurrentWidget(trouble_page_);
  trouble_page_->take_focus();
}

QString MainWindow::chapter_on_screen() const {
  // What the cursor is in may have a chapter of its own inside a room.
  for (const QWidget* widget = QApplication::focusWidget(); widget != nullptr; widget = widget->parentWidget()) {
    const QString name = widget->objectName();
    if (!widget->isVisible()) break;
    if (qobject_cast<const ScreeningPanel*>(widget) != nullptr) return QStringLiteral("manual/screening");
    if (qobject_cast<const VerdictPanel*>(widget) != nullptr || name == QStringLiteral("sieving_pictures")) return QStringLiteral("manual/curve_and_verdict");
    if (widget == &mix_page_->pictures()) {
      const QWidget* picture = mix_page_->pictures().picture().view;
      const auto shows = [&](const QWidget& one) { return picture->isAncestorOf(&one); };
      if (shows(mix_page_->ageing()) || shows(mix_page_->scores())) return QStringLiteral("manual/how_sure");
    }
  }
  const QWidget* page = pages_->currentWidget();
  if (page == mix_page_) return mix_page_->find_panel().isVisible() ? QStringLiteral("manual/finding_parts") : QStringLiteral("manual/mixes");
  if (qobject_cast<const GroupsPage*>(page) != nullptr) return QStringLiteral("manual/finding_parts");
  if (page == sieving_page_) return QStringLiteral("manual/sieving");
  if (page == settings_page_ || page == trouble_page_) return QStringLiteral("manual/settings");
  if (page == import_page_ && page != nullptr) return QStringLiteral("manual/old_notebook");
  if (const auto* measure = qobject_cast<const MeasurePage*>(page))
    return takes_pot(measure->sheet().protocol) ? QStringLiteral("manual/how_sure") : QStringLiteral("manual/receiving_bags");
  constexpr std::pair<const char*, const char*> rooms[] = {
      {"bags", "manual/receiving_bags"}, {"trees", "manual/pots_and_trees"}, {"day", "manual/repotting_day"}, {"log", "manual/log_and_tracing"}};
  for (const auto& [room, chapter] : rooms) {
    if (page == navigation_->room(room)) return QString::fromLatin1(chapter);
  }
  return QStringLiteral("manual/desktop");
}

void MainWindow::show_manual() {
  if (pages_->currentWidget() == manual_page_) return leave_manual();
  show_manual_page(chapter_on_screen());
}

void MainWindow::show_manual_page(const QString& page) {
  if (pages_->currentWidget() != manual_page_) before_manual_ = pages_->currentWidget();
  pages_->setCurrentWidget(manual_page_);
  manual_page_->open(page);
}

void MainWindow::leave_manual() {
  if (before_manual_ != nullptr && pages_->indexOf(before_manual_) >= 0) pages_->setCurrentWidget(before_manual_);
}

void MainWindow::jump() {
  if (jump_box_ == nullptr) jump_box_ = new JumpBox([this](const QString& words) { return jump_targets(*this, bench_, record_, words); }, this);
  jump_box_->open_empty();
}

void MainWindow::offer(QWidget& widget, std::initializer_list<const char*> names) {
  for (const char* name : names) {
    if (auto* offered = findChild<QAction*>(QLatin1String(name))) widget.addAction(offered);
  }
  widget.setContextMenuPolicy(Qt::ActionsContextMenu);
}

void MainWindow::make_context_menus() {
  for (PictureTabs* tabs : {&sieving_page_->pictures(), &mix_page_->pictures()}) offer(*tabs, {"action_chart_table", "action_whole_chart", "action_save_picture"});
  offer(mix_page_->parts(), {"action_show_sheet", "action_show_grain", "action_add_component", "action_remove_component"});
  offer(sieving_page_->screening(), {"action_keep_fractions", "action_show_sheet", "action_show_verdict"});
  offer(*sieving_page_->findChild<VerdictPanel*>(), {"action_save_sheet", "action_show_curve", "action_show_screening"});
  offer(mix_page_->find_panel(), {"action_show_recipes", "action_show_trade_off", "action_groups"});
  offer(mix_page_->recipes(), {"action_show_trade_off", "action_find_parts"});
  if (record_pages_ == nullptr) return;
  offer(record_pages_->trees().plans(), {"action_chart_table", "action_save_picture"});
  offer(record_pages_->trees().pots(), {"action_chart_table", "action_save_picture"});
}

bool MainWindow::is_bench_in_sight() const { return pages_->currentWidget() == sieving_page_ || pages_->currentWidget() == mix_page_; }

PictureTabs* MainWindow::pictures_in_front() {
  for (PictureTabs* tabs : pages_->currentWidget()->findChildren<PictureTabs*>())
    if (tabs->isVisible()) return tabs;
  return nullptr;
}

void MainWindow::choose_picture_file() {
  const PictureTabs* const tabs = pictures_in_front();
  if (tabs == nullptr) return say(tr("There is no picture on this page to save."));
  const PictureTabs::Picture& picture = tabs->picture();
  const QString path = QFileDialog::getSaveFileName(this, tr("Save \u201c%1\u201d").arg(picture.title), picture.title + QStringLiteral(".png"),
                                                    tr("Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)"));
  if (path.isEmpty()) return;
  say(save_picture(path) ? tr("Saved as %1.").arg(path) : tr("%1 could not be written: end its name in png, svg, pdf or csv, and choose a folder you may write to.").arg(path));
}

bool MainWindow::save_picture(const QString& path) {
  const PictureTabs* const tabs = pictures_in_front();
  if (tabs == nullptr) return false;
  const PictureTabs::Picture& picture = tabs->picture();
  if (path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) return export_csv(picture.data(), path);
  QWidget* drawn = picture.view->focusProxy() != nullptr ? picture.view->focusProxy() : picture.view;
  return export_picture(*drawn, path);
}

bool MainWindow::refuse_sheet() {
  if (!is_bench_in_sight()) {
    say(tr("Nothing here goes on paper. Sieving and Mixes (Ctrl+2) have the sheet of a test, Pots and trees that of a plan, Repotting day its lists."));
    return true;
  }
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size() || !bench_.state().components[index].sheet.predicted) return false;
  say(prediction_words());
  return true;
}

RootPlanTab* MainWindow::plan_in_sight() {
  return record_pages_ != nullptr && record_pages_->trees().plans().isVisible() ? &record_pages_->trees().plans() : nullptr;
}

void MainWindow::print_sheet() {
  if (RootPlanTab* plan = plan_in_sight()) return plan->print_sheet();
  if (refuse_sheet()) return;
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(settings_.letter_paper ? QPageSize::Letter : QPageSize::A4));
  printer.setResolution(sheet_dots_per_inch);
  printer.setPageMargins({});
  printer.setFullPage(true);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  if (record_pages_ != nullptr) record_pages_->catch_up();
  print_test_sheet(bench_, printer);
}

void MainWindow::choose_sheet_file() {
  if (RootPlanTab* plan = plan_in_sight()) return plan->choose_sheet_file();
  if (refuse_sheet()) return;
  const QString path = QFileDialog::getSaveFileName(this, tr("Test sheet as PDF"), tr("sieve test.pdf"), tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (record_pages_ != nullptr) record_pages_->catch_up();
  say(write_test_sheet(bench_, path, settings_.letter_paper) ? tr("Saved as %1.").arg(path) : tr("%1 could not be written: choose a folder you may write to.").arg(path));
}

void MainWindow::mark_as_demonstration() {
  setWindowTitle(tr("Gritwright \u2013 demonstration, an invented nursery"));
  status_line_->keep_words(tr("Demonstration: everything here is invented and goes when this window is closed."), "demonstration_words");
  // Its record goes with it; the grower's own is in the other window.
  for (const char* name : {"action_open_record", "action_usual_record"}) findChild<QAction*>(QLatin1String(name))->setEnabled(false);
}

void MainWindow::open_demonstration() {
  const auto state = demonstration(bench_.catalogue());
  if (!state) return show_problems(tr("The demonstration can't be opened"), state.problems());
  // As one step, so that what lay on the bench comes back with undo.
  bench_.edit(tr("demonstration opened"), {}, [&](BenchState& current) { current = *state; });
  bench_.set_current_component(0);
  show_mixes();
}

void MainWindow::choose_sieve_tests() {
  const QStringList paths = QFileDialog::getOpenFileNames(this, tr("Open sieve tests"), {}, tr("Sieve tests (*.csv *.json);;All files (*)"));
  for (const QString& path : paths) open_sieve_test_file(path);
}

void MainWindow::choose_container() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open pot"), {}, tr("Pots (*.json);;All files (*)"));
  if (!path.isEmpty()) open_container_file(path);
}

void MainWindow::open_sieve_test_file(const QString& path) {
  const auto test = open_sieve_test(path);
  if (!test) return show_problems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), test.problems());
  QString name = QFileInfo(path).completeBaseName();
  if (test->lot) name = to_qt(*test->lot);
  (void)put_component(component_of(*test, name));
  show_sieving();
}

bool MainWindow::put_component(const ComponentSheet& component) {
  const auto& components = bench_.state().components;
  const auto current = static_cast<std::size_t>(bench_.current_component());
  const auto untouched = std::ranges::find_if(components, is_untouched);
  const bool add = untouched == components.end() && components.size() < most_components;
  std::size_t at = add ? components.size() : static_cast<std::size_t>(untouched - components.begin());
  // Where the bench is full, the first that lies there only to be looked at gives its place.
  if (!add && record_pages_ != nullptr)
    for (std::size_t i = 0; at == components.size() && i < components.size(); ++i)
      if (record_pages_->only_looked_at(i)) at = i;
  if (!add && at == components.size()) {
    say(tr("A mix here has up to %1 components; remove one first.").arg(most_components));
    return false;
  }
  if (current < components.size() && is_untouched(components[current])) at = current;
  bench_.edit(tr("%1 opened").arg(component.name), {}, [&](BenchState& state) {
    if (at < state.components.size()) state.components[at] = component;
    else state.components.push_back(component);
  });
  bench_.set_current_component(static_cast<int>(at));
  return true;
}

void MainWindow::open_container_file(const QString& path) {
  const auto container = open_container(path, bench_.catalogue());
  if (!container) return show_problems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), container.problems());
  put_pot(*container, tr("pot opened"));
  show_mixes();
  mix_page_->show_pot();
}

void MainWindow::put_pot(const Container& container, const QString& what) {
  bench_.edit(what, {}, [&](BenchState& state) { state.pot = sheet_of(container); });
  if (container.bottom_layer || container.top_dressing) say(tr("Bottom layer and top dressing of the pot are not on this form and were left out."));
}

void MainWindow::set_text_percent(int percent) {
  Settings changed = settings_;
  changed.text_percent = std::clamp(percent, 100, 200);
  set_settings(changed);
  say(tr("Text at %1 %.").arg(changed.text_percent));
}

void MainWindow::set_settings(const Settings& settings) {
  const bool looks = settings.theme != settings_.theme || settings.text_percent != settings_.text_percent;
  settings_ = settings;
  bench_.set_units(settings_.units);
  if (record_pages_ != nullptr) record_pages_->set_laboratory_figures(settings_.laboratory_figures);
  if (auto* us = findChild<QAction*>(QStringLiteral("action_us_units"))) {
    const QSignalBlocker quiet(us);
    us->setChecked(settings_.units == UnitSystem::us);
  }
  settings_page_->show_settings(settings_);
  if (looks) apply_settings();
  else write_settings(settings_);
}

void MainWindow::apply_settings() {
  write_settings(settings_);
  auto* application = static_cast<QApplication*>(QCoreApplication::instance());
  static const Theme of_system = system_theme(QApplication::palette());
  apply_theme(*application, settings_.theme.value_or(of_system), settings_.text_percent);
}

void MainWindow::tell_trouble(const Problem& problem) {
  if (record_ != nullptr && (!problem.where.file || *problem.where.file == record_->workbook().file().string())) say(sentence_text(problem));
}

// Closed by Escape a menu leaves the keys in the bar, where what is typed next would be lost and Enter would undo.
void MainWindow::leave_menu_bar() {
  if (QApplication::activePopupWidget() != nullptr || menuBar()->activeAction() == nullptr) return;
  QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
  QApplication::sendEvent(menuBar(), &escape);
}

void MainWindow::say(const QString& sentence) { status_line_->showMessage(sentence, 10000); }

void MainWindow::show_problems(const QString& title, const Problems& problems) {
  QStringList lines;
  for (const Problem& problem : problems) lines << fault_text(problem);
  auto* box = new QMessageBox(QMessageBox::Warning, title, title, QMessageBox::Close, this);
  box->setObjectName(QStringLiteral("problems_box"));
  box->setInformativeText(lines.mid(0, 12).join(u'\n'));
  if (lines.size() > 12) box->setDetailedText(lines.join(u'\n'));
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setModal(false);
  box->show();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  // An editor still open would commit while the window is being taken apart.
  if (QWidget* focused = QApplication::focusWidget()) focused->clearFocus();
  QSettings().setValue(QStringLiteral("window/geometry"), saveGeometry());
  remember_layout(*this);
  QMainWindow::closeEvent(event);
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
  // Outside of a dialogue a button leaves Enter alone; whoever goes by the keyboard expects it to press what has the focus.
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (auto* const button = qobject_cast<QPushButton*>(focusWidget()); enter && button != nullptr && button->isEnabled() && !event->isAutoRepeat()) return button->click();
  // Keyboards without a key for menus have this one, which not every platform's plugin knows.
  if (QWidget* const focused = focusWidget(); focused != nullptr && event->key() == Qt::Key_F10 && event->modifiers() == Qt::ShiftModifier) {
    const QPoint at = focused->inputMethodQuery(Qt::ImCursorRectangle).toRect().center();
    QContextMenuEvent wanted(QContextMenuEvent::Keyboard, at, focused->mapToGlobal(at));
    QApplication::sendEvent(focused, &wanted);
    return;
  }
  QMainWindow::keyPressEvent(event);
}

bool MainWindow::focusNextPrevChild(bool next) {
  tab_in_reading_order({navigation_->bar(), pages_->currentWidget()});
  return QMainWindow::focusNextPrevChild(next);
}

void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  if (laid_out_) return;
  laid_out_ = true;
  restore_layout(*this);
}

}  // namespace gritwright::desktop
