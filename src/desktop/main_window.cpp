#include "main_window.hpp"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>

#include "models/bench_files.hpp"
#include "models/sheets_from_records.hpp"
#include "pages/mix_page.hpp"
#include "pages/welcome_page.hpp"
#include "record_pages.hpp"
#include "text.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/sheet_editor.hpp"
#include "widgets/sieve_table.hpp"

namespace gritwright::desktop {

namespace {

/// True for a component that nobody has typed into: a file opened may take its place.
bool is_untouched(const ComponentSheet& component) {
  const SieveSheet& sheet = component.sheet;
  const auto typed = [](const PanText& pan) { return !pan.retained.isEmpty() || !pan.tare.isEmpty(); };
  return !typed(sheet.pan) && sheet.dry_mass.isEmpty() && component.material.isEmpty() && component.grain == GrainText{} &&
         !std::ranges::any_of(sheet.rows, typed);
}

}  // namespace

MainWindow::MainWindow(Bench& bench, RecordBook* record, QWidget* parent)
    : QMainWindow(parent),
      bench_(bench),
      settings_(read_settings()),
      pages_(new QStackedWidget(this)),
      welcome_page_(new WelcomePage(this)),
      mix_page_(new MixPage(bench, this)) {
  setObjectName(QStringLiteral("main_window"));
  setWindowTitle(tr("Gritwright"));
  pages_->addWidget(welcome_page_);
  pages_->addWidget(mix_page_);
  setCentralWidget(pages_);
  make_file_menu();
  make_edit_menu();
  make_component_menu();
  make_view_menu();
  make_help_menu();
  if (record != nullptr) record_pages_ = new RecordPages(bench_, *record, *this, *view_menu_);
  statusBar()->setObjectName(QStringLiteral("status_bar"));
  connect(&bench_, &Bench::told, this, &MainWindow::say);
  connect(welcome_page_, &WelcomePage::demonstration_wanted, this, &MainWindow::open_demonstration);
  connect(welcome_page_, &WelcomePage::sieving_wanted, this, [this] {
    show_bench();
    mix_page_->show_sheet();
  });
  connect(welcome_page_, &WelcomePage::container_wanted, this, [this] {
    show_bench();
    mix_page_->show_pot();
  });
  bench_.set_units(settings_.units);
  resize(1280, 800);
  restoreGeometry(QSettings().value(QStringLiteral("window/geometry")).toByteArray());
}

QAction* MainWindow::action(QMenu* menu, const char* object_name, const QString& text, const QKeySequence& shortcut) {
  QAction* made = menu->addAction(text);
  made->setObjectName(QString::fromLatin1(object_name));
  made->setShortcut(shortcut);
  return made;
}

void MainWindow::make_file_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&File"));
  connect(action(menu, "action_new", tr("&New bench"), QKeySequence::New), &QAction::triggered, this, [this] {
    bench_.edit(tr("bench cleared"), {}, [](BenchState& state) { state = empty_bench(); });
    show_bench();
    mix_page_->show_sheet();
  });
  connect(action(menu, "action_open_sieve_test", tr("&Open sieve tests..."), QKeySequence::Open), &QAction::triggered, this, &MainWindow::choose_sieve_tests);
  connect(action(menu, "action_open_container", tr("Open &container..."), QKeySequence(tr("Ctrl+Shift+O"))), &QAction::triggered, this, &MainWindow::choose_container);
  connect(action(menu, "action_demonstration", tr("&Demonstration"), QKeySequence(tr("Ctrl+Shift+D"))), &QAction::triggered, this, &MainWindow::open_demonstration);
  menu->addSeparator();
  QAction* quit = action(menu, "action_quit", tr("&Quit"), QKeySequence(tr("Ctrl+Q")));
  quit->setMenuRole(QAction::QuitRole);
  connect(quit, &QAction::triggered, this, &QWidget::close);
}

void MainWindow::make_edit_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Edit"));
  QAction* undo = bench_.undo_stack().createUndoAction(this, tr("Undo:"));
  undo->setObjectName(QStringLiteral("action_undo"));
  undo->setShortcut(QKeySequence(tr("Ctrl+Z")));
  menu->addAction(undo);
  QAction* redo = bench_.undo_stack().createRedoAction(this, tr("Redo:"));
  redo->setObjectName(QStringLiteral("action_redo"));
  redo->setShortcut(QKeySequence(tr("Ctrl+Shift+Z")));
  menu->addAction(redo);
  menu->addSeparator();
  SieveTable* table = &mix_page_->sheet().table();
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
    show_bench();
    mix_page_->parts().add_component();
    mix_page_->show_sheet();
  });
  connect(action(menu, "action_remove_component", tr("&Remove this component"), QKeySequence(tr("Ctrl+Shift+Delete"))), &QAction::triggered, &mix_page_->parts(),
          &PartsPanel::remove_component);
}

void MainWindow::make_view_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&View"));
  view_menu_ = menu;
  const auto go = [&](const char* object_name, const QString& text, const QString& shortcut, void (MixPage::*shown)()) {
    connect(action(menu, object_name, text, QKeySequence(shortcut)), &QAction::triggered, this, [this, shown] {
      show_bench();
      (mix_page_->*shown)();
    });
  };
  go("action_show_sheet", tr("&Sieve test"), tr("Ctrl+Shift+1"), &MixPage::show_sheet);
  go("action_show_verdict", tr("&Verdict on the bag"), tr("Ctrl+Shift+2"), &MixPage::show_verdict);
  go("action_show_grain", tr("&Grain"), tr("Ctrl+Shift+3"), &MixPage::show_grain);
  go("action_show_pot", tr("&Pot"), tr("Ctrl+Shift+4"), &MixPage::show_pot);
  go("action_show_band", tr("&Wanted grain"), tr("Ctrl+B"), &MixPage::show_band);
  go("action_show_curves", tr("&Curves"), tr("Ctrl+Shift+5"), &MixPage::show_curves);
  go("action_show_section", tr("Pot in s&ection"), tr("Ctrl+Shift+6"), &MixPage::show_section);
  QAction* table = action(menu, "action_chart_table", tr("Picture as a &table"), QKeySequence(tr("Ctrl+T")));
  table->setCheckable(true);
  connect(table, &QAction::toggled, mix_page_, &MixPage::show_as_table);
  menu->addSeparator();
  QAction* us = action(menu, "action_us_units", tr("&US units"), QKeySequence(tr("Ctrl+U")));
  us->setCheckable(true);
  us->setChecked(settings_.units == UnitSystem::us);
  connect(us, &QAction::toggled, this, [this](bool on) {
    settings_.units = on ? UnitSystem::us : UnitSystem::metric;
    bench_.set_units(settings_.units);
    write_settings(settings_);
  });
  menu->addSeparator();
  auto* themes = new QActionGroup(this);
  const auto theme = [&](const char* object_name, const QString& text, const QString& shortcut, std::optional<Theme> chosen) {
    QAction* made = action(menu, object_name, text, QKeySequence(shortcut));
    made->setCheckable(true);
    made->setChecked(settings_.theme == chosen);
    themes->addAction(made);
    connect(made, &QAction::triggered, this, [this, chosen] { set_theme(chosen); });
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
  connect(action(menu, "action_welcome", tr("The &three doors"), QKeySequence(tr("F1"))), &QAction::triggered, this, &MainWindow::show_welcome);
  connect(action(menu, "action_cautions", tr("Show &cautions again"), QKeySequence(tr("Shift+F1"))), &QAction::triggered, this, [this] { mix_page_->caution().restore(); });
  QAction* about = action(menu, "action_about", tr("&About Gritwright"), QKeySequence(tr("Ctrl+F1")));
  about->setMenuRole(QAction::AboutRole);
  connect(about, &QAction::triggered, this, [this] {
    QMessageBox::about(this, tr("About Gritwright"),
                       tr("Gritwright %1: grading, mixes and pots for trees in shallow containers.\n\nFree software under the GNU General Public License, version 3 or later, "
                          "without any warranty.\nEstimates are general information; where a figure matters, measure it in a pot test.")
                           .arg(QCoreApplication::applicationVersion()));
  });
}

void MainWindow::show_welcome() { pages_->setCurrentWidget(welcome_page_); }

void MainWindow::show_bench() {
  pages_->setCurrentWidget(mix_page_);
  if (!settings_.first_start) return;
  settings_.first_start = false;
  write_settings(settings_);
}

void MainWindow::open_demonstration() {
  const auto state = demonstration(bench_.catalogue());
  if (!state) return show_problems(tr("The demonstration can't be opened"), state.problems());
  // As one step, so that what lay on the bench comes back with undo.
  bench_.edit(tr("demonstration opened"), {}, [&](BenchState& current) { current = *state; });
  bench_.set_current_component(0);
  show_bench();
}

void MainWindow::choose_sieve_tests() {
  const QStringList paths = QFileDialog::getOpenFileNames(this, tr("Open sieve tests"), {}, tr("Sieve tests (*.csv *.json);;All files (*)"));
  for (const QString& path : paths) open_sieve_test_file(path);
}

void MainWindow::choose_container() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open container"), {}, tr("Containers (*.json);;All files (*)"));
  if (!path.isEmpty()) open_container_file(path);
}

void MainWindow::open_sieve_test_file(const QString& path) {
  const auto test = open_sieve_test(path);
  if (!test) return show_problems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), test.problems());
  QString name = QFileInfo(path).completeBaseName();
  if (test->lot) name = to_qt(*test->lot);
  put_component(component_of(*test, name));
  show_bench();
}

void MainWindow::put_component(const ComponentSheet& component) {
  const auto& components = bench_.state().components;
  const auto current = static_cast<std::size_t>(bench_.current_component());
  const auto untouched = std::ranges::find_if(components, is_untouched);
  const bool add = untouched == components.end() && components.size() < most_components;
  if (untouched == components.end() && !add) return say(tr("A mix here has up to %1 components; remove one first.").arg(most_components));
  std::size_t at = add ? components.size() : static_cast<std::size_t>(untouched - components.begin());
  if (current < components.size() && is_untouched(components[current])) at = current;
  bench_.edit(tr("%1 opened").arg(component.name), {}, [&](BenchState& state) {
    if (at < state.components.size()) state.components[at] = component;
    else state.components.push_back(component);
  });
  bench_.set_current_component(static_cast<int>(at));
}

void MainWindow::open_container_file(const QString& path) {
  const auto container = open_container(path, bench_.catalogue());
  if (!container) return show_problems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), container.problems());
  const auto sheet = sheet_of(*container);
  if (!sheet) return say(tr("A container given as a table of areas is read by the command line only, for now."));
  bench_.edit(tr("container opened"), {}, [&](BenchState& state) { state.pot = *sheet; });
  if (container->bottom_layer || container->top_dressing) say(tr("Bottom layer and top dressing of the file are not on this form and were left out."));
  show_bench();
  mix_page_->show_pot();
}

void MainWindow::set_text_percent(int percent) {
  settings_.text_percent = std::clamp(percent, 100, 200);
  apply_settings();
}

void MainWindow::set_theme(std::optional<Theme> theme) {
  settings_.theme = theme;
  apply_settings();
}

void MainWindow::apply_settings() {
  write_settings(settings_);
  auto* application = static_cast<QApplication*>(QCoreApplication::instance());
  static const Theme of_system = system_theme(QApplication::palette());
  apply_theme(*application, settings_.theme.value_or(of_system), settings_.text_percent);
}

void MainWindow::say(const QString& sentence) { statusBar()->showMessage(sentence, 10000); }

void MainWindow::show_problems(const QString& title, const Problems& problems) {
  QStringList lines;
  for (const Problem& problem : problems) {
    const QString place = to_qt(place_text(problem.where));
    lines << (place.isEmpty() ? sentence_text(problem) : QStringLiteral("%1: %2").arg(place, sentence_text(problem)));
  }
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
  QMainWindow::closeEvent(event);
}

}  // namespace gritwright::desktop
