#include "record_pages.hpp"

#include <QFileDialog>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <QUndoStack>
#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

#include "charts/comparison_view.hpp"
#include "charts/score_view.hpp"
#include "gritwright/workbook/backups.hpp"
#include "main_window.hpp"
#include "models/material_words.hpp"
#include "models/parts_finder.hpp"
#include "models/pot_library.hpp"
#include "models/pot_test_records.hpp"
#include "models/protocols.hpp"
#include "models/record_export.hpp"
#include "models/record_surroundings.hpp"
#include "models/shelf.hpp"
#include "models/tree_groups.hpp"
#include "pages/bags_page.hpp"
#include "pages/bins_tab.hpp"
#include "pages/groups_page.hpp"
#include "pages/log_page.hpp"
#include "pages/measure_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/pots_tab.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/sick_trees_tab.hpp"
#include "pages/sieving_page.hpp"
#include "pages/trace_tab.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/record_list_side.hpp"
#include "widgets/recipes_panel.hpp"
#include "widgets/screening_panel.hpp"
#include "widgets/traced_table.hpp"

namespace gritwright::desktop {

RecordPages::RecordPages(Bench& bench, RecordBook& book, MainWindow& window, QMenu& before)
    : QObject(&window),
      bench_(bench),
      book_(book),
      window_(window),
      bags_(new BagsPage(book, bench.catalogue(), &window)),
      log_(new LogPage(book, &window)),
      measuring_(new MeasurePage(book, bench.catalogue(), &window)),
      trees_(new TreesPage(book, bench.catalogue(), &window)),
      groups_(new GroupsPage(book, bench.catalogue(), &window)),
      menu_(new QMenu(tr("Rec&ord"), &window)) {
  window_.pages().addWidget(measuring_);
  window_.pages().addWidget(groups_);
  make_menu(before);
  make_context_menus();
  connect(bags_, &BagsPage::measure_wanted, this, &RecordPages::measure_chosen);
  connect(&window_.mix_page(), &MixPage::pot_test_wanted, this, &RecordPages::test_mix);
  connect(measuring_, &MeasurePage::kept, this, &RecordPages::take_measured);
  connect(bags_, &BagsPage::grade_wanted, this, &RecordPages::grade);
  connect(&bags_->bins(), &BinsTab::grade_wanted, this, &RecordPages::grade);
  connect(&bags_->bins(), &BinsTab::mix_wanted, this, &RecordPages::put_in_mix);
  connect(&bags_->bins(), &BinsTab::trace_wanted, this, [this](const QString& id) {
    show_log();
    log_->show_trace(id);
  });
  connect(bags_, &BagsPage::mix_wanted, this, &RecordPages::put_in_mix);
  connect(&book_, &RecordBook::told, &bench_, &Bench::told);
  connect(&book_, &RecordBook::changed, this, &RecordPages::record_changed);
  connect(&bench_.undo_stack(), &QUndoStack::indexChanged, this, [this](int place) {
    kept_steps_.bench_moved(place, bench_.undo_stack().count());
    give_undo_keys();
  });
  connect(&bench_, &Bench::units_changed, this, [this] {
    bags_->set_units(bench_.units());
    measuring_->set_units(bench_.units());
    trees_->set_units(bench_.units());
    log_->set_units(bench_.units());
    groups_->set_units(bench_.units());
  });
  connect(&bench_, &Bench::changed, this, &RecordPages::refresh_surroundings);
  connect(&bench_, &Bench::changed, this, [this] {
    if (known_by(bench_.state()) != known_by_) refresh_known();
  });
  connect(&bench_, &Bench::current_component_changed, this, &RecordPages::refresh_surroundings);
  connect(&window_.pages(), &QStackedWidget::currentChanged, this, &RecordPages::page_changed);
  SievingPage& sieving = window_.sieving_page();
  connect(&sieving, &SievingPage::bag_chosen, this, &RecordPages::grade);
  connect(&sieving, &SievingPage::sieve_set_chosen, this, &RecordPages::use_sieve_set);
  connect(&sieving.screening(), &ScreeningPanel::keep_wanted, this, &RecordPages::keep_fractions);
  connect(&window_.mix_page(), &MixPage::keep_wanted, this, &RecordPages::keep_mix);
  connect(&window_.mix_page().pot(), &PotForm::pot_wanted, this, &RecordPages::take_pot);
  connect(&window_.mix_page(), &MixPage::bag_dropped, this, &RecordPages::put_in_mix);
  window_.mix_page().finder().set_shelf([this] { return shelf_of(book_.workbook(), bench_.catalogue()); });
  window_.mix_page().comparison().set_kept([this] {
    try {
      return kept_mixes(book_.workbook(), bench_.catalogue(), book_.calibrations());
    } catch (const WorkbookTrouble& trouble) {
      emit bench_.told(sentence_text(trouble.problem()));
      return std::vector<KeptMix>{};
    }
  });
  connect(&window_.mix_page().find_panel(), &FindPanel::keep_profile_wanted, this, &RecordPages::keep_profile);
  connect(&window_.mix_page().find_panel(), &FindPanel::groups_wanted, this, [this] {
    show_groups();
    groups_->show_group(bench_.state().find.profile);
  });
  connect(groups_, &GroupsPage::find_wanted, this, [this](const QString& group) {
    window_.show_mixes();
    window_.mix_page().show_find();
    window_.mix_page().find_panel().start_from_profile(group);
  });
  connect(&window_.mix_page().recipes(), &RecipesPanel::keep_wanted, this, &RecordPages::keep_recipe);
  bags_->set_units(bench_.units());
  measuring_->set_units(bench_.units());
  trees_->set_units(bench_.units());
  log_->set_units(bench_.units());
  groups_->set_units(bench_.units());
  record_changed();
  page_changed();
}

QAction* RecordPages::action(const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act) {
  QAction* made = menu_->addAction(text);
  made->setObjectName(QString::fromLatin1(object_name));
  made->setShortcut(QKeySequence(shortcut));
  connect(made, &QAction::triggered, this, [this, act = std::move(act)] { book_.attempt(act); });
  return made;
}

void RecordPages::make_menu(QMenu& before) {
  window_.menuBar()->insertMenu(before.menuAction(), menu_);
  const auto on_bags = [this](void (BagsPage::*act)()) {
    return [this, act] {
      show_bags();
      (bags_->*act)();
    };
  };
  action("action_receive_bags", tr("&Receive bags"), tr("Ctrl+R"), on_bags(&BagsPage::receive));
  action("action_grade_bag", tr("&Grade this bag"), tr("Ctrl+G"), on_bags(&BagsPage::grade));
  action("action_put_in_mix", tr("Put this grai&n into the mix"), tr("Ctrl+M"), [this] { put_in_mix(bags_->chosen_grain()); });
  action("action_take_into_stock", tr("&Take into stock"), tr("Ctrl+Shift+T"), on_bags(&BagsPage::take_into_stock));
  action("action_take_back", tr("Take &back grain from a tree"), tr("Ctrl+Alt+I"), [this] {
    const QString tree = window_.pages().currentWidget() == trees_ ? trees_->trees().list().current() : QString();
    show_bags();
    bags_->take_back(tree);
  });
  action("action_add_bin", tr("Add a bin or tub"), tr("Ctrl+Alt+X"), [this] {
    show_bags();
    bags_->show_bins();
    bags_->bins().add_bin();
  });
  action("action_measure", tr("Measur&e this bag"), tr("Ctrl+D"), [this] { measure_chosen(); });
  action("action_pot_test", tr("&Pot test of a mix"), tr("Ctrl+Shift+B"), [this] { test_mix(); });
  action("action_remove_bag", tr("Re&move this bag or bin"), tr("Ctrl+Shift+R"), on_bags(&BagsPage::remove));
  menu_->addSeparator();
  action("action_add_tree", tr("&Add a tree"), tr("Alt+Shift+T"), [this] {
    show_trees();
    trees_->show_trees();
    trees_->trees().add_tree();
  });
  action("action_add_pot", tr("Add a p&ot"), tr("Ctrl+Alt+P"), [this] {
    show_trees();
    trees_->show_pots();
    trees_->pots().add_pot();
  });
  action("action_plan_tree", tr("Plan the root mass of this tree"), tr("Ctrl+Alt+J"), [this] {
    show_trees();
    const QString tree = trees_->trees().list().current();
    trees_->show_plans();
    if (!tree.isEmpty()) trees_->plans().plan_tree(tree);
  });
  action("action_remove_tree_or_pot", tr("Remove this tree, pot or plan"), tr("Alt+Shift+Delete"), [this] {
    if (trees_->pots().isVisible()) trees_->pots().remove_pot();
    else if (trees_->trees().isVisible()) trees_->trees().remove_tree();
    else if (trees_->plans().isVisible()) trees_->plans().remove_plan();
  });
  menu_->addSeparator();
  auto* keep_sheet = window_.sieving_page().findChild<QToolButton*>(QStringLiteral("sheet_keep"));
  keep_sheet->setDefaultAction(action("action_save_sheet", tr("&Keep the sieve test with its bag"), tr("Ctrl+S"), [this] { save_sheet(); }));
  keep_sheet->setAccessibleName(keep_sheet->text());
  keep_sheet->show();
  action("action_keep_fractions", tr("Keep the &fractions of the screening"), tr("Ctrl+Shift+K"), [this] { keep_fractions(); });
  action("action_keep_mix", tr("Keep the mi&x"), tr("Ctrl+Shift+M"), [this] { keep_mix(); });
  action("action_groups", tr("Group&s of trees and their wishes"), tr("Ctrl+Shift+G"), [this] { show_groups(); });
  menu_->addSeparator();
  action("action_write_down", tr("&Write down in the log"), tr("Ctrl+L"), [this] {
    show_log();
    log_->show_happened();
    log_->findChild<QWidget*>(QStringLiteral("log_text"))->setFocus();
  });
  action("action_trace_grain", tr("W&here this grain went"), tr("Ctrl+Shift+W"), [this] { trace_chosen(); });
  action("action_sick_trees", tr("What do the sick trees share?"), tr("Ctrl+Shift+Y"), [this] {
    show_log();
    log_->show_sick_trees();
  });
  action("action_save_list", tr("Save the list of trees..."), tr("Ctrl+Shift+L"), [this] {
    show_log();
    log_->save_list();
  });
  action("action_find", tr("F&ind on this page"), tr("Ctrl+F"), [this] { find(); });
  menu_->addSeparator();
  undo_ = action("action_record_undo", tr("&Undo in the record"), tr("Ctrl+Alt+Z"), [this] { undo_in_record(); });
  redo_ = action("action_record_redo", tr("Re&do in the record"), tr("Ctrl+Alt+Shift+Z"), [this] { redo_in_record(); });
  menu_->addSeparator();
  action("action_export", tr("Write records to a fi&le..."), tr("Ctrl+Shift+E"), [this] { choose_export(); });
  action("action_save_copy", tr("Save a &copy of the record..."), tr("Ctrl+Shift+S"), [this] { save_copy(); });
}

// What a right click offers is taken from the menu bar, so that neither knows more than the other.
void RecordPages::make_context_menus() {
  const auto give = [this](QWidget* widget, std::initializer_list<const char*> names) {
    for (const char* name : names) widget->addAction(window_.findChild<QAction*>(QLatin1String(name)));
    widget->setContextMenuPolicy(Qt::ActionsContextMenu);
  };
  give(&bags_->table(), {"action_receive_bags", "action_grade_bag", "action_put_in_mix", "action_measure", "action_take_into_stock", "action_trace_grain", "action_remove_bag"});
  give(&bags_->fractions(), {"action_put_in_mix", "action_trace_grain"});
  give(&bags_->bins().list().table(), {"action_add_bin", "action_grade_bag", "action_put_in_mix", "action_trace_grain", "action_remove_bag"});
  give(&bags_->bins(), {"action_add_bin", "action_grade_bag", "action_trace_grain"});
  give(&bags_->bins().tubs(), {"action_put_in_mix", "action_trace_grain"});
  give(&trees_->trees().list().table(), {"action_add_tree", "action_plan_tree", "action_take_back", "action_trace_grain", "action_find", "action_remove_tree_or_pot"});
  give(&trees_->pots().list().table(), {"action_add_pot", "action_find", "action_remove_tree_or_pot"});
  give(&trees_->plans().list().table(), {"action_find", "action_remove_tree_or_pot"});
  give(&trees_->trees(), {"action_plan_tree", "action_take_back", "action_trace_grain"});
  give(groups_, {"action_find_parts"});
  give(&log_->table(), {"action_write_down", "action_find"});
  give(log_->findChild<QWidget*>(QStringLiteral("log_links")), {"action_trace_grain", "action_write_down"});
  give(&log_->trace(), {"action_save_list", "action_find"});
  give(&log_->sick_trees(), {"action_save_list"});
}

// What is asked about is what the page on screen shows: a bag or fraction, or a tree.
void RecordPages::trace_chosen() {
  const QWidget* current = window_.pages().currentWidget();
  const QString id = current == bags_ ? bags_->chosen_grain() : current == trees_ ? trees_->trees().list().current() : QString();
  show_log();
  log_->show_trace(id);
}

void RecordPages::show_bags() { window_.pages().setCurrentWidget(bags_); }
void RecordPages::show_trees() { window_.pages().setCurrentWidget(trees_); }
void RecordPages::show_groups() {
  window_.pages().setCurrentWidget(groups_);
  groups_->take_focus();
}
void RecordPages::show_log() { window_.pages().setCurrentWidget(log_); }

void RecordPages::measure(Protocol protocol, const QString& subject) {
  measuring_->show_protocol(protocol, subject);
  window_.pages().setCurrentWidget(measuring_);
  measuring_->findChild<QWidget*>(QStringLiteral("measure_protocol"))->setFocus();
}

// Its bag comes to the front, so that what is measured is what was seen.
void RecordPages::measure_chosen() {
  bags_->show_bags();
  measure(Protocol::jug, bags_->current_bag());
}

// The newest version of the mix on the bench with its recipe, else the newest version.
void RecordPages::test_mix() {
  const auto& mix = bench_.evaluation().mix;
  QString newest;
  for (const RecordLine& line : book_.workbook().list(RecordKind::mix)) {
    const auto kept = book_.workbook().find(Id<MixVersion>{line.ref.id});
    if (!kept || to_qt(kept->record.mix.name) != bench_.state().mix_name.trimmed()) continue;
    if (mix && same_recipe(kept->record.mix, *mix)) return measure(Protocol::pot_by_balance, to_qt(line.ref.id));
    if (newest.isEmpty()) newest = to_qt(line.ref.id);
  }
  measure(Protocol::pot_by_balance, newest);
}

void RecordPages::take_measured(const QString& bag) {
  const auto& components = bench_.state().components;
  const auto open = std::ranges::find(components, bag, &ComponentSheet::bag);
  const auto sheet = open != components.end() ? sheet_of_grain(book_.workbook(), bag) : std::nullopt;
  if (!sheet) return;
  const auto index = static_cast<std::size_t>(open - components.begin());
  const auto stored = book_.workbook().find(Id<Bag>{bag.toStdString()});
  // What follows from mass and litres of the bag was not measured now, and leaves what is typed.
  const bool is_measured = !stored || stored->record.bulk_density.has_value();
  bench_.edit(tr("grain of %1 as measured").arg(bag), {}, [&](BenchState& state) {
    GrainText& grain = state.components[index].grain;
    if (is_measured && !sheet->grain.bulk_density.isEmpty()) grain.bulk_density = sheet->grain.bulk_density;
    if (!sheet->grain.particle_density.isEmpty()) grain.particle_density = sheet->grain.particle_density;
    if (!sheet->grain.water_absorption.isEmpty()) grain.water_absorption = sheet->grain.water_absorption;
  });
}

void RecordPages::follow_grain() {
  std::map<QString, KnownGrain> known;
  for (std::size_t i = 0; i < bench_.state().components.size(); ++i) {
    const ComponentSheet& component = bench_.state().components[i];
    const QString bag = component.bag;
    if (bag.isEmpty()) continue;
    const auto stored = book_.workbook().find(Id<Bag>{bag.toStdString()});
    const KnownGrain now{litre_weight_text(book_.workbook(), bag), stored ? to_qt(stored->record.material) : QString()};
    known[bag] = now;
    const auto before = known_grain_.find(bag);
    if (before == known_grain_.end()) continue;
    const KnownGrain was = before->second;
    if (!now.litre_weight.isEmpty() && !was.litre_weight.isEmpty() && was.litre_weight != now.litre_weight && component.grain.bulk_density == was.litre_weight)
      bench_.edit(tr("litre weight of %1").arg(bag), QStringLiteral("recorded_litre_weight/%1").arg(bag), [&](BenchState& state) { state.components[i].grain.bulk_density = now.litre_weight; });
    if (!now.material.isEmpty() && was.material != now.material && bench_.state().components[i].material == was.material)
      bench_.edit(tr("material of %1").arg(bag), QStringLiteral("recorded_material/%1").arg(bag), [&](BenchState& state) { state.components[i].material = now.material; });
  }
  known_grain_ = std::move(known);
}

void RecordPages::refresh_known() {
  known_by_ = known_by(bench_.state());
  try {
    bench_.set_known(knowledge_of(book_.workbook(), bench_.state(), book_.calibrations()));
    follow_grain();
  } catch (const WorkbookTrouble& trouble) {
    emit bench_.told(sentence_text(trouble.problem()));
  }
}

void RecordPages::page_changed() {
  give_undo_keys();
  catch_up_in_sight();
}

// The keys for undo belong to what is on screen: the bench on its pages, the record elsewhere. What was kept from the bench is undone by them in its turn.
void RecordPages::give_undo_keys() {
  const bool bench = bench_in_sight();
  bool undoes_bench = bench;
  bool redoes_bench = bench;
  const int place = bench_.undo_stack().index();
  book_.attempt([&] {
    if (const auto kept = kept_steps_.next_to_undo(place); bench && kept) {
      const auto last = book_.workbook().undoable();
      undoes_bench = !last || last->number != *kept;
    }
    if (const auto taken_back = kept_steps_.next_to_redo(place); bench && taken_back) {
      const auto last = book_.workbook().redoable();
      redoes_bench = !last || last->number != *taken_back;
    }
  });
  auto* bench_undo = window_.findChild<QAction*>(QStringLiteral("action_undo"));
  auto* bench_redo = window_.findChild<QAction*>(QStringLiteral("action_redo"));
  const QKeySequence near_undo(tr("Ctrl+Z"));
  const QKeySequence far_undo(tr("Ctrl+Alt+Z"));
  const QKeySequence near_redo(tr("Ctrl+Shift+Z"));
  const QKeySequence far_redo(tr("Ctrl+Alt+Shift+Z"));
  undo_->setShortcut(undoes_bench ? far_undo : near_undo);
  redo_->setShortcut(redoes_bench ? far_redo : near_redo);
  if (bench_undo != nullptr) bench_undo->setShortcut(undoes_bench ? near_undo : far_undo);
  if (bench_redo != nullptr) bench_redo->setShortcut(redoes_bench ? near_redo : far_redo);
}

void RecordPages::kept_from_bench() {
  book_.attempt([this] {
    if (const auto step = book_.workbook().undoable()) kept_steps_.kept(step->number, bench_.undo_stack().index());
  });
  give_undo_keys();
}

void RecordPages::undo_in_record() {
  book_.attempt([this] {
    const auto step = book_.workbook().undoable();
    book_.undo();
    const auto now = book_.workbook().redoable();
    if (step && now && now->number == step->number) kept_steps_.undone(step->number);
  });
  give_undo_keys();
}

void RecordPages::redo_in_record() {
  book_.attempt([this] {
    const auto step = book_.workbook().redoable();
    book_.redo();
    const auto now = book_.workbook().undoable();
    if (step && now && now->number == step->number) kept_steps_.redone(step->number);
  });
  give_undo_keys();
}

void RecordPages::refresh_undo() {
  const QString undo = book_.undo_text();
  const QString redo = book_.redo_text();
  undo_->setText(undo.isEmpty() ? tr("&Undo in the record") : tr("&Undo in the record: %1").arg(menu_text(undo)));
  redo_->setText(redo.isEmpty() ? tr("Re&do in the record") : tr("Re&do in the record: %1").arg(menu_text(redo)));
  undo_->setEnabled(!undo.isEmpty());
  redo_->setEnabled(!redo.isEmpty());
  give_undo_keys();
}

void RecordPages::record_changed() {
  refresh_undo();
  const std::int64_t revision = book_.workbook().revision();
  if (revision == seen_revision_) return;
  // While somebody types a note only that bag changes: what hangs on other kinds is not read again.
  std::set<RecordKind> kinds;
  if (seen_revision_ < 0) kinds.insert(record_kinds.begin(), record_kinds.end());
  else {
    for (const RecordRef& ref : book_.workbook().changed_since(seen_revision_)) kinds.insert(ref.kind);
  }
  seen_revision_ = revision;
  const bool grain = kinds.contains(RecordKind::bag) || kinds.contains(RecordKind::sieve_test) || kinds.contains(RecordKind::stock_entry);
  const bool gradable = kinds.contains(RecordKind::fraction) || kinds.contains(RecordKind::bin) || kinds.contains(RecordKind::tree) || kinds.contains(RecordKind::mix) || kinds.contains(RecordKind::batch);
  if (grain || gradable || kinds.contains(RecordKind::sieve_set)) {
    seen_material_ = QString();
    seen_bag_ = QStringLiteral("?");
    choices_are_stale_ = true;
    catch_up_in_sight();
  }
  if (kinds.contains(RecordKind::container)) {
    pots_are_stale_ = true;
    catch_up_in_sight();
  }
  if (grain || kinds.contains(RecordKind::fraction) || kinds.contains(RecordKind::mix) || kinds.contains(RecordKind::batch) || kinds.contains(RecordKind::container)) {
    window_.mix_page().finder().forget_shelf();
  }
  // A pot that is measured again says something else about the tests made in it.
  const bool tests = kinds.contains(RecordKind::mix) || kinds.contains(RecordKind::pot_test) || kinds.contains(RecordKind::container);
  if (tests) {
    refresh_known();
  } else if (grain || kinds.contains(RecordKind::fraction)) {
    RecordKnowledge known = bench_.known();
    known.grains = grains_of(book_.workbook(), bench_.state());
    bench_.set_known(std::move(known));
    follow_grain();
  }
  if (tests) window_.mix_page().scores().set_tests(compared_tests(book_.workbook()));
  if (kinds.contains(RecordKind::species_profile)) refresh_profiles();
  if (tests || grain) window_.mix_page().comparison().forget_kept();
}

bool RecordPages::bench_in_sight() const {
  const QWidget* current = window_.pages().currentWidget();
  return current == &window_.sieving_page() || current == &window_.mix_page();
}

// Earlier bags and what there is to choose from are read anew when the bench is looked at: not at every sign typed into a bag.
void RecordPages::catch_up_in_sight() {
  if (bench_in_sight()) catch_up();
}

void RecordPages::catch_up() {
  refresh_surroundings();
  try {
    if (std::exchange(choices_are_stale_, false)) refresh_choices();
    if (std::exchange(pots_are_stale_, false)) window_.mix_page().pot().set_pots(pots_for_bench(book_.workbook()));
  } catch (const WorkbookTrouble& trouble) {
    emit bench_.told(sentence_text(trouble.problem()));
  }
}

void RecordPages::refresh_surroundings() {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size()) return;
  const ComponentSheet& sheet = bench_.state().components[index];
  if (sheet.bag == seen_bag_ && sheet.material == seen_material_) return;
  seen_bag_ = sheet.bag;
  seen_material_ = sheet.material;
  try {
    Surroundings around = surroundings_of(book_.workbook(), sheet, book_.calibrations());
    around.laboratory_figures = laboratory_;
    bench_.set_surroundings(std::move(around));
  } catch (const WorkbookTrouble& trouble) {
    emit bench_.told(sentence_text(trouble.problem()));
  }
}

void RecordPages::set_laboratory_figures(bool wanted) {
  laboratory_ = wanted;
  Surroundings around = bench_.surroundings();
  around.laboratory_figures = wanted;
  bench_.set_surroundings(std::move(around));
}

void RecordPages::refresh_choices() {
  constexpr std::size_t most_choices = 200;  // further ones are found by Ctrl+K
  ListFilter newest;
  newest.limit = most_choices;
  std::vector<SievingPage::Choice> bags;
  for (const RecordLine& line : book_.workbook().list(RecordKind::bag, newest)) bags.push_back({to_qt(line.ref.id), choice_words(line)});
  // Bins and tubs, a tree's used ground and a mix are graded as a bag is.
  for (const auto& [kind, text] : {std::pair{RecordKind::fraction, tr("fraction %1")}, {RecordKind::bin, tr("bin %1")}, {RecordKind::tree, tr("ground of %1")}, {RecordKind::mix, tr("mix %1")}}) {
    for (const RecordLine& line : book_.workbook().list(kind, newest)) bags.push_back({to_qt(line.ref.id), text.arg(choice_words(line))});
  }
  for (const RecordLine& line : book_.workbook().list(RecordKind::batch, newest)) {
    if (line.stock && *line.stock > Mass{}) bags.push_back({to_qt(line.ref.id), tr("tub %1").arg(choice_words(line))});
  }
  std::vector<SievingPage::Choice> sets;
  for (const Stored<SieveSet>& set : book_.workbook().all<SieveSet>()) {
    sets.push_back({to_qt(set.id.text), to_qt(set.record.name)});
    for (const OwnedSieve& sieve : set.record.sieves) sets.back().openings.push_back(sieve.aperture);
  }
  window_.sieving_page().set_bags(bags);
  window_.sieving_page().set_sieve_sets(sets);
}

void RecordPages::refresh_profiles() {
  std::vector<SpeciesProfile> profiles;
  for (TreeGroup& group : tree_groups(book_.workbook()))
    if (!group.profile.left_out) profiles.push_back(std::move(group.profile));
  window_.mix_page().find_panel().set_profiles(std::move(profiles));
}

void RecordPages::keep_profile(const SpeciesProfile& profile) {
  const QString name = to_qt(profile.name);
  const auto kept = book_.workbook().all<SpeciesProfile>();
  const auto was = std::ranges::find(kept, profile.name, [](const Stored<SpeciesProfile>& stored) { return stored.record.name; });
  const QString label = tr("wishes for %1").arg(name);
  const bool saved = was == kept.end() ? !book_.add(profile, label).isEmpty() : book_.replace(*was, profile, label);
  if (!saved) return;
  kept_from_bench();
  emit bench_.told(tr("A search for %1 starts with these wishes from now on.").arg(name));
}

void RecordPages::find() {
  if (window_.pages().currentWidget() == log_) return log_->find();
  if (window_.pages().currentWidget() == trees_) return trees_->find();
  show_bags();
  bags_->find();
}

void RecordPages::choose_export() {
  const std::pair<QString, std::optional<RecordKind>> forms[] = {{tr("The whole record (*.json)"), std::nullopt},    {tr("List of bags (*.csv)"), RecordKind::bag},
                                                                 {tr("List of sieve tests (*.csv)"), RecordKind::sieve_test}, {tr("List of pots (*.csv)"), RecordKind::container},
                                                                 {tr("List of trees (*.csv)"), RecordKind::tree},     {tr("List of fractions (*.csv)"), RecordKind::fraction},
                                                                 {tr("List of the stock's entries (*.csv)"), RecordKind::stock_entry}, {tr("The log (*.csv)"), RecordKind::log_entry}};
  QStringList filters;
  for (const auto& [filter, kind] : forms) filters << filter;
  QString chosen;
  const QString path = QFileDialog::getSaveFileName(&window_, tr("Write records to a file"), {}, filters.join(QStringLiteral(";;")), &chosen);
  if (path.isEmpty()) return;
  const auto form = std::ranges::find(forms, chosen, &std::pair<QString, std::optional<RecordKind>>::first);
  try {
    const auto written = write_records(book_.workbook(), path, form == std::end(forms) ? std::nullopt : form->second);
    if (!written) return emit bench_.told(sentence_text(written.problems().front()));
    QStringList left_out;
    for (const Problem& problem : written->left_out) left_out << sentence_text(problem);
    emit bench_.told(left_out.isEmpty() ? tr("Written to %1.").arg(path) : tr("Written to %1, but not all of it. %2.").arg(path, left_out.join(QStringLiteral(". "))));
  } catch (const WorkbookTrouble& trouble) {
    emit bench_.told(sentence_text(trouble.problem()));
  }
}

void RecordPages::save_copy() {
  const QString path = QFileDialog::getSaveFileName(&window_, tr("Save a copy of the record"), {}, tr("Gritwright records (*.gritwright)"));
  if (path.isEmpty()) return;
  const auto saved = gritwright::save_copy(book_.workbook(), path.toStdString());
  emit bench_.told(saved ? tr("A checked copy lies in %1.").arg(path) : sentence_text(saved.problems().front()));
}

}  // namespace gritwright::desktop
