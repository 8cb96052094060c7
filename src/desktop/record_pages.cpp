#include "record_pages.hpp"

#include <QActionGroup>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>
#include <QToolBar>

#include "gritwright/workbook/backups.hpp"
#include "main_window.hpp"
#include "models/sheets_from_records.hpp"
#include "pages/bags_page.hpp"
#include "pages/log_page.hpp"
#include "pages/mix_page.hpp"
#include "text.hpp"

namespace gritwright::desktop {

RecordPages::RecordPages(Bench& bench, RecordBook& book, MainWindow& window, QMenu& before)
    : QObject(&window),
      bench_(bench),
      book_(book),
      window_(window),
      bags_(new BagsPage(book, bench.catalogue(), &window)),
      log_(new LogPage(book, &window)),
      menu_(new QMenu(tr("Rec&ord"), &window)),
      bar_(new QToolBar(tr("Pages"), &window)),
      pages_(new QActionGroup(this)) {
  window_.pages().addWidget(bags_);
  window_.pages().addWidget(log_);
  bar_->setObjectName(QStringLiteral("page_bar"));
  bar_->setMovable(false);
  bar_->setToolButtonStyle(Qt::ToolButtonTextOnly);
  window_.addToolBar(Qt::TopToolBarArea, bar_);
  make_menu(before);
  connect(bags_, &BagsPage::grade_wanted, this, &RecordPages::grade);
  connect(&book_, &RecordBook::told, &bench_, &Bench::told);
  connect(&book_, &RecordBook::changed, this, &RecordPages::refresh_undo);
  connect(&bench_, &Bench::units_changed, this, [this] { bags_->set_units(bench_.units()); });
  connect(&window_.pages(), &QStackedWidget::currentChanged, this, &RecordPages::page_changed);
  bags_->set_units(bench_.units());
  refresh_undo();
  page_changed();
}

QAction* RecordPages::action(const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act) {
  QAction* made = menu_->addAction(text);
  made->setObjectName(QString::fromLatin1(object_name));
  made->setShortcut(QKeySequence(shortcut));
  connect(made, &QAction::triggered, this, [act = std::move(act)] { act(); });
  return made;
}

void RecordPages::make_menu(QMenu& before) {
  window_.menuBar()->insertMenu(before.menuAction(), menu_);
  const auto page = [&](const char* object_name, const QString& text, const QString& shortcut, void (RecordPages::*go)()) {
    QAction* made = action(object_name, text, shortcut, [this, go] { (this->*go)(); });
    made->setCheckable(true);
    pages_->addAction(made);
    bar_->addAction(made);
    QWidget* button = bar_->widgetForAction(made);
    button->setObjectName(QString::fromLatin1(object_name) + QStringLiteral("_button"));
    button->setAccessibleName(text);
    button->setMinimumHeight(28);
    button->setFocusPolicy(Qt::StrongFocus);
  };
  page("action_page_bags", tr("Bags"), tr("Ctrl+1"), &RecordPages::show_bags);
  page("action_page_bench", tr("Sieving and mixes"), tr("Ctrl+2"), &RecordPages::show_bench);
  page("action_page_log", tr("Log"), tr("Ctrl+3"), &RecordPages::show_log);
  menu_->addSeparator();
  const auto on_bags = [this](void (BagsPage::*act)()) {
    return [this, act] {
      show_bags();
      (bags_->*act)();
    };
  };
  action("action_receive_bags", tr("&Receive bags"), tr("Ctrl+R"), on_bags(&BagsPage::receive));
  action("action_grade_bag", tr("&Grade this bag"), tr("Ctrl+G"), on_bags(&BagsPage::grade));
  action("action_take_into_stock", tr("&Take into stock"), tr("Ctrl+Shift+T"), on_bags(&BagsPage::take_into_stock));
  action("action_remove_bag", tr("Re&move this bag"), tr("Ctrl+Shift+R"), on_bags(&BagsPage::remove));
  menu_->addSeparator();
  action("action_save_sheet", tr("&Keep the sieve test with its bag"), tr("Ctrl+S"), [this] { save_sheet(); });
  action("action_write_down", tr("&Write down in the log"), tr("Ctrl+L"), [this] {
    show_log();
    log_->findChild<QWidget*>(QStringLiteral("log_text"))->setFocus();
  });
  action("action_find", tr("&Find"), tr("Ctrl+F"), [this] { find(); });
  menu_->addSeparator();
  undo_ = action("action_record_undo", tr("&Undo in the record"), tr("Ctrl+Alt+Z"), [this] { book_.undo(); });
  redo_ = action("action_record_redo", tr("Re&do in the record"), tr("Ctrl+Alt+Shift+Z"), [this] { book_.redo(); });
  menu_->addSeparator();
  action("action_save_copy", tr("Save a &copy of the record..."), tr("Ctrl+Shift+S"), [this] { save_copy(); });
}

void RecordPages::show_bags() { window_.pages().setCurrentWidget(bags_); }
void RecordPages::show_bench() { window_.show_bench(); }
void RecordPages::show_log() { window_.pages().setCurrentWidget(log_); }

// The keys for undo belong to what is on screen: the record on its pages, the bench elsewhere.
void RecordPages::page_changed() {
  QWidget* current = window_.pages().currentWidget();
  const bool record = current == bags_ || current == log_;
  const QList<QAction*> actions = pages_->actions();
  actions[0]->setChecked(current == bags_);
  actions[1]->setChecked(!record);
  actions[2]->setChecked(current == log_);
  auto* bench_undo = window_.findChild<QAction*>(QStringLiteral("action_undo"));
  auto* bench_redo = window_.findChild<QAction*>(QStringLiteral("action_redo"));
  const QKeySequence near_undo(tr("Ctrl+Z"));
  const QKeySequence far_undo(tr("Ctrl+Alt+Z"));
  const QKeySequence near_redo(tr("Ctrl+Shift+Z"));
  const QKeySequence far_redo(tr("Ctrl+Alt+Shift+Z"));
  undo_->setShortcut(record ? near_undo : far_undo);
  redo_->setShortcut(record ? near_redo : far_redo);
  if (bench_undo != nullptr) bench_undo->setShortcut(record ? far_undo : near_undo);
  if (bench_redo != nullptr) bench_redo->setShortcut(record ? far_redo : near_redo);
}

void RecordPages::refresh_undo() {
  const QString undo = book_.undo_text();
  const QString redo = book_.redo_text();
  undo_->setText(undo.isEmpty() ? tr("&Undo in the record") : tr("&Undo in the record: %1").arg(undo));
  redo_->setText(redo.isEmpty() ? tr("Re&do in the record") : tr("Re&do in the record: %1").arg(redo));
  undo_->setEnabled(!undo.isEmpty());
  redo_->setEnabled(!redo.isEmpty());
}

void RecordPages::find() {
  if (window_.pages().currentWidget() == log_) return log_->find();
  show_bags();
  bags_->find();
}

void RecordPages::grade(const QString& bag) {
  const auto& components = bench_.state().components;
  const auto open = std::ranges::find(components, bag, &ComponentSheet::bag);
  if (open != components.end()) {
    bench_.set_current_component(static_cast<int>(open - components.begin()));
  } else {
    const auto stored = book_.workbook().find(Id<Bag>{bag.toStdString()});
    if (!stored) return;
    const auto tests = book_.workbook().sieve_tests_of(ref_to(stored->id));
    ComponentSheet component = tests.empty() ? empty_component(bag) : component_of(tests.back().record.test, bag);
    component.name = QStringLiteral("%1 %2").arg(to_qt(stored->record.material).replace(u'_', u' '), bag);
    component.bag = bag;
    component.material = to_qt(stored->record.material);
    if (stored->record.bulk_density) component.grain.bulk_density = number_text(in_g_l(*stored->record.bulk_density), 9);
    if (stored->record.particle_density) component.grain.particle_density = number_text(in_g_l(*stored->record.particle_density), 9);
    window_.put_component(component);
  }
  window_.show_bench();
  window_.mix_page().show_sheet();
}

QString RecordPages::bag_of_sheet(const ComponentSheet& component) {
  if (!component.bag.isEmpty()) return component.bag;
  if (component.material.isEmpty()) {
    emit bench_.told(tr("Choose the material on the Grain tab first: a bag is of some material."));
    return {};
  }
  Bag fresh;
  fresh.material = component.material.toStdString();
  fresh.lot = component.name.trimmed().toStdString();
  fresh.received = today();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::bag, fresh.material));
  return book_.add(fresh, tr("bag %1").arg(id), id);
}

void RecordPages::save_sheet() {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size()) return;
  const ComponentSheet component = bench_.state().components[index];
  const ComponentEvaluation& evaluation = bench_.evaluation().components[index];
  if (evaluation.state != SheetState::finished || !evaluation.test) {
    emit bench_.told(tr("The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench."));
    return;
  }
  const QString bag = bag_of_sheet(component);
  if (bag.isEmpty()) return;
  RecordedSieveTest record;
  record.test = *evaluation.test;
  record.of = RecordRef{RecordKind::bag, bag.toStdString()};
  if (!component.material.isEmpty()) record.test.material = component.material.toStdString();
  if (!record.test.date) record.test.date = today();
  const auto tests = book_.workbook().sieve_tests_of(*record.of);
  const bool kept_already = std::ranges::any_of(tests, [&](const Stored<RecordedSieveTest>& kept) {
    return kept.record.test.rows == record.test.rows && kept.record.test.pan == record.test.pan && kept.record.test.dry_mass == record.test.dry_mass;
  });
  if (kept_already) return emit bench_.told(tr("Bag %1 has this sieve test already.").arg(bag));
  record.replicate = static_cast<int>(tests.size()) + 1;
  const LogEntry log = event_about(*record.of, tr("Sieved bag %1, test %2").arg(bag).arg(record.replicate), *record.test.date);
  if (book_.add(record, tr("sieve test of bag %1").arg(bag), {}, log).isEmpty()) return;
  bench_.edit(tr("bag of %1").arg(component.name), {}, [&](BenchState& state) { state.components[index].bag = bag; });
  emit bench_.told(tr("Kept as test %1 of bag %2.").arg(record.replicate).arg(bag));
}

void RecordPages::save_copy() {
  const QString path = QFileDialog::getSaveFileName(&window_, tr("Save a copy of the record"), {}, tr("Gritwright records (*.gritwright)"));
  if (path.isEmpty()) return;
  const auto saved = gritwright::save_copy(book_.workbook(), path.toStdString());
  emit bench_.told(saved ? tr("A checked copy lies in %1.").arg(path) : sentence_text(saved.problems().front()));
}

}  // namespace gritwright::desktop
