#include "record_pages.hpp"

#include <QFileDialog>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

#include "charts/comparison_view.hpp"
#include "charts/score_view.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/workbook/backups.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "main_window.hpp"
#include "models/find_problem.hpp"
#include "models/material_words.hpp"
#include "models/parts_finder.hpp"
#include "models/pot_test_records.hpp"
#include "models/protocols.hpp"
#include "models/record_export.hpp"
#include "models/record_surroundings.hpp"
#include "models/screening_view.hpp"
#include "models/sheets_from_records.hpp"
#include "models/tree_groups.hpp"
#include "pages/bags_page.hpp"
#include "pages/bins_tab.hpp"
#include "pages/groups_page.hpp"
#include "pages/log_page.hpp"
#include "pages/measure_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/pots_tab.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/sieving_page.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/record_list_side.hpp"
#include "widgets/recipes_panel.hpp"
#include "widgets/screening_panel.hpp"
#include "widgets/traced_table.hpp"

namespace gritwright::desktop {

namespace {

/// As it would be written down: what went over other units differs in its last binary digit.
bool same_weighing(const SieveTest& a, const SieveTest& b) {
  const SieveSheet one = sheet_of(a);
  const SieveSheet other = sheet_of(b);
  return one.rows == other.rows && one.pan == other.pan && one.dry_mass == other.dry_mass;
}

constexpr QLatin1String no_parts("0");

}  // namespace

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
  action("action_add_tree", tr("&Add a tree"), tr("Ctrl+Alt+T"), [this] {
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
  action("action_remove_tree_or_pot", tr("Remove this tree, pot or plan"), tr("Ctrl+Alt+Delete"), [this] {
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
  undo_ = action("action_record_undo", tr("&Undo in the record"), tr("Ctrl+Alt+Z"), [this] { book_.undo(); });
  redo_ = action("action_record_redo", tr("Re&do in the record"), tr("Ctrl+Alt+Shift+Z"), [this] { book_.redo(); });
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
  give(&bags_->bins().tubs(), {"action_put_in_mix", "action_trace_grain"});
  give(&trees_->trees().list().table(), {"action_add_tree", "action_plan_tree", "action_take_back", "action_trace_grain", "action_find", "action_remove_tree_or_pot"});
  give(&trees_->pots().list().table(), {"action_add_pot", "action_find", "action_remove_tree_or_pot"});
  give(&trees_->plans().list().table(), {"action_find", "action_remove_tree_or_pot"});
  give(&log_->table(), {"action_write_down", "action_find"});
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
  bench_.edit(tr("grain of %1 as measured").arg(bag), {}, [&](BenchState& state) {
    GrainText& grain = state.components[index].grain;
    if (!sheet->grain.bulk_density.isEmpty()) grain.bulk_density = sheet->grain.bulk_density;
    if (!sheet->grain.particle_density.isEmpty()) grain.particle_density = sheet->grain.particle_density;
    if (!sheet->grain.water_absorption.isEmpty()) grain.water_absorption = sheet->grain.water_absorption;
  });
}

void RecordPages::refresh_known() {
  known_by_ = known_by(bench_.state());
  try {
    bench_.set_known(knowledge_of(book_.workbook(), bench_.state(), book_.calibrations()));
  } catch (const WorkbookTrouble& trouble) {
    emit bench_.told(sentence_text(trouble.problem()));
  }
}

// The keys for undo belong to what is on screen: the bench on its pages, the record elsewhere.
void RecordPages::page_changed() {
  const bool bench = bench_in_sight();
  auto* bench_undo = window_.findChild<QAction*>(QStringLiteral("action_undo"));
  auto* bench_redo = window_.findChild<QAction*>(QStringLiteral("action_redo"));
  const QKeySequence near_undo(tr("Ctrl+Z"));
  const QKeySequence far_undo(tr("Ctrl+Alt+Z"));
  const QKeySequence near_redo(tr("Ctrl+Shift+Z"));
  const QKeySequence far_redo(tr("Ctrl+Alt+Shift+Z"));
  undo_->setShortcut(bench ? far_undo : near_undo);
  redo_->setShortcut(bench ? far_redo : near_redo);
  if (bench_undo != nullptr) bench_undo->setShortcut(bench ? near_undo : far_undo);
  if (bench_redo != nullptr) bench_redo->setShortcut(bench ? near_redo : far_redo);
  catch_up_in_sight();
}

void RecordPages::refresh_undo() {
  const QString undo = book_.undo_text();
  const QString redo = book_.redo_text();
  undo_->setText(undo.isEmpty() ? tr("&Undo in the record") : tr("&Undo in the record: %1").arg(menu_text(undo)));
  redo_->setText(redo.isEmpty() ? tr("Re&do in the record") : tr("Re&do in the record: %1").arg(menu_text(redo)));
  undo_->setEnabled(!undo.isEmpty());
  redo_->setEnabled(!redo.isEmpty());
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
  for (const RecordLine& line : book_.workbook().list(RecordKind::bag, newest)) bags.push_back({to_qt(line.ref.id), QStringLiteral("%1 %2").arg(to_qt(line.ref.id), title_words(line))});
  // Bins and tubs, a tree's used ground and a mix are graded as a bag is.
  for (const auto& [kind, text] : {std::pair{RecordKind::fraction, tr("fraction %1: %2")}, {RecordKind::bin, tr("bin %1: %2")}, {RecordKind::tree, tr("used ground of %1: %2")}, {RecordKind::mix, tr("mix %1: %2")}}) {
    for (const RecordLine& line : book_.workbook().list(kind, newest)) bags.push_back({to_qt(line.ref.id), text.arg(to_qt(line.ref.id), title_words(line))});
  }
  for (const RecordLine& line : book_.workbook().list(RecordKind::batch, newest)) {
    if (line.stock && *line.stock > Mass{}) bags.push_back({to_qt(line.ref.id), tr("tub %1: %2").arg(to_qt(line.ref.id), title_words(line))});
  }
  std::vector<SievingPage::Choice> sets;
  for (const RecordLine& line : book_.workbook().list(RecordKind::sieve_set)) sets.push_back({to_qt(line.ref.id), to_qt(line.title)});
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
  if (saved) emit bench_.told(tr("A search for %1 starts with these wishes from now on.").arg(name));
}

void RecordPages::find() {
  if (window_.pages().currentWidget() == log_) return log_->find();
  if (window_.pages().currentWidget() == trees_) return trees_->find();
  show_bags();
  bags_->find();
}

bool RecordPages::lay_on_bench(const QString& bag, const QString& parts) {
  const auto& components = bench_.state().components;
  const auto open = std::ranges::find(components, bag, &ComponentSheet::bag);
  if (open != components.end()) {
    bench_.set_current_component(static_cast<int>(open - components.begin()));
    return true;
  }
  auto sheet = sheet_of_grain(book_.workbook(), bag);
  if (!sheet) return false;
  const auto current = static_cast<std::size_t>(bench_.current_component());
  const bool untested = evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty;
  // In a mix its printed size stands in for a test; to be graded it begins with empty pans.
  if (untested && parts != no_parts) sheet = by_printed_size(book_.workbook(), *sheet);
  if (untested && !sheet->sheet.predicted && current < components.size()) sheet->sheet = same_stack(components[current].sheet);
  sheet->parts = parts;
  if (!window_.put_component(*sheet)) return false;
  if (untested && sheet->sheet.predicted) emit bench_.told(prediction_words());
  return true;
}

void RecordPages::grade(const QString& bag) {
  // Looking at a bag adds nothing to the mix on the bench.
  if (!lay_on_bench(bag, no_parts)) return;
  window_.show_sieving();
  window_.sieving_page().show_sheet();
}

void RecordPages::put_in_mix(const QString& bag) {
  if (bag.isEmpty() || !lay_on_bench(bag, QStringLiteral("1"))) return;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  const ComponentSheet& sheet = bench_.state().components[index];
  // It lay there to be graded; now it is wanted.
  if (const QString parts = sheet.parts.trimmed(); parts.isEmpty() || parts == no_parts) {
    bench_.edit(PartsPanel::tr("parts of %1").arg(sheet.name), {}, [&](BenchState& state) { state.components[index].parts = QStringLiteral("1"); });
  }
  window_.show_mixes();
  window_.mix_page().show_parts();
}

void RecordPages::take_pot(const QString& id) {
  const auto pot = book_.workbook().find(Id<RecordedContainer>{id.toStdString()});
  if (pot) window_.put_pot(pot->record.container, tr("pot %1").arg(id));
}

void RecordPages::use_sieve_set(const QString& id) {
  const auto set = book_.workbook().find(Id<SieveSet>{id.toStdString()});
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (!set || index >= bench_.state().components.size()) return;
  const QString name = bench_.state().components[index].name;
  bench_.edit(tr("sieves of %1").arg(name), {}, [&](BenchState& state) {
    SieveSheet& sheet = state.components[index].sheet;
    drop_prediction(sheet, SieveSheet(sheet));
    // What was weighed stays with its opening; openings the set lacks go if nothing stands on them.
    std::vector<PanText> rows;
    for (const OwnedSieve& sieve : set->record.sieves) rows.push_back({sieve.label.empty() ? number_text(in_mm(sieve.aperture), 6) : to_qt(sieve.label), {}, {}});
    for (const PanText& was : sheet.rows) {
      const auto same = std::ranges::find(rows, was.aperture.trimmed(), &PanText::aperture);
      if (same != rows.end()) *same = was;
      else if (!was.retained.trimmed().isEmpty()) rows.push_back(was);
    }
    sheet.rows = std::move(rows);
    for (ReplicateText& sample : sheet.replicates) sample.retained.clear();
    if (set->record.diameter) sheet.sieve_diameter = number_text(in_mm(*set->record.diameter), 6);
  });
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

int RecordPages::save_tests(const QString& bag, const ComponentSheet& component, const ComponentEvaluation& evaluation) {
  std::vector<SieveTest> samples{*evaluation.test};
  for (const ReplicateEvaluation& replicate : evaluation.replicates) {
    if (replicate.state == SheetState::finished && replicate.test) samples.push_back(*replicate.test);
  }
  const RecordRef of = gradable_called(book_.workbook(), bag).value_or(RecordRef{RecordKind::bag, bag.toStdString()});
  auto kept = book_.workbook().sieve_tests_of(of);
  Change change;
  change.label = tr("sieve test of bag %1").arg(bag).toStdString();
  for (SieveTest& sample : samples) {
    const bool already = std::ranges::any_of(kept, [&](const Stored<RecordedSieveTest>& one) { return same_weighing(one.record.test, sample); });
    if (already) continue;
    RecordedSieveTest record;
    record.test = std::move(sample);
    record.of = of;
    if (!component.material.isEmpty()) record.test.material = component.material.toStdString();
    if (!record.test.date) record.test.date = today();
    record.replicate = static_cast<int>(kept.size() + change.edits.size()) + 1;
    change.edits.push_back({RecordRef{RecordKind::sieve_test, {}}, 0, Record(std::move(record))});
  }
  const int added = static_cast<int>(change.edits.size());
  if (added == 0) return 0;
  change.log = event_about(of, tr("Graded bag %1").arg(bag), today());
  return book_.apply(std::move(change)) ? added : -1;
}

void RecordPages::save_sheet() {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size()) return;
  const ComponentSheet component = bench_.state().components[index];
  const ComponentEvaluation& evaluation = bench_.evaluation().components[index];
  if (component.sheet.predicted) return emit bench_.told(prediction_words());
  if (evaluation.state != SheetState::finished || !evaluation.test) {
    emit bench_.told(tr("The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench."));
    return;
  }
  const QString bag = bag_of_sheet(component);
  if (bag.isEmpty()) return;
  const int added = save_tests(bag, component, evaluation);
  if (added < 0) return;
  if (added == 0) return emit bench_.told(tr("Bag %1 has this sieve test already.").arg(bag));
  bench_.edit(tr("bag of %1").arg(component.name), {}, [&](BenchState& state) { state.components[index].bag = bag; });
  emit bench_.told(tr("Kept %n sieve test(s) with bag %1.", nullptr, added).arg(bag));
}

void RecordPages::keep_fractions() {
  catch_up();
  const ScreeningView view = screening_view(bench_);
  const auto& bag = bench_.surroundings().bag;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (!view.day_fault.isEmpty()) return emit bench_.told(view.day_fault);
  if (!view.is_measured || !view.screened) return emit bench_.told(tr("Weigh every fraction first, then they can be kept."));
  if (!bag) return emit bench_.told(tr("Keep the sieve test with its bag first: fractions come from a bag."));
  const QString bag_id = bench_.state().components[index].bag;
  const RecordRef from{RecordKind::bag, bag_id.toStdString()};
  Change change;
  change.label = tr("screening of bag %1").arg(bag_id).toStdString();
  const auto booked = [&](const RecordRef& holder, StockReason reason, Mass mass, const RecordRef& other) {
    StockEntry entry;
    entry.holder = holder;
    entry.reason = reason;
    entry.change = mass;
    entry.other = other;
    entry.day = view.day;
    change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(std::move(entry))});
  };
  if (!book_.workbook().stock_of(from)) {
    // A bag that was never taken in gives nothing away before it is.
    if (auto received = arrival_of(from, *bag, view.day)) change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(*std::move(received))});
  }
  int number = 1;
  for (Fraction& fraction : fractions_of(view, *bag, bag_id)) {
    RecordRef tub;
    do {
      tub = RecordRef{RecordKind::fraction, QStringLiteral("%1/%2").arg(bag_id).arg(number++).toStdString()};
    } while (book_.workbook().find_even_deleted(tub));
    const Mass mass = *fraction.dry_mass;
    change.edits.push_back({tub, 0, Record(std::move(fraction))});
    booked(tub, StockReason::screened_into, mass, from);
    booked(from, StockReason::screened_out_of, mass * -1.0, tub);
  }
  // What went up as dust is no longer in the bag either.
  if (view.loss && view.loss->value() > 0) booked(from, StockReason::spilt, *view.screened * -view.loss->value(), from);
  change.log = event_about(from, tr("Screened bag %1. %2").arg(bag_id, view.balance), view.day);
  if (!book_.apply(std::move(change))) return;
  bench_.edit(tr("screening kept of %1").arg(bag_id), {}, [&](BenchState& state) { state.components[index].screening = {}; });
  emit bench_.told(tr("The fractions of bag %1 are in stock.").arg(bag_id));
}

void RecordPages::keep_mix() {
  const BenchEvaluation& evaluation = bench_.evaluation();
  if (!evaluation.mix) return emit bench_.told(tr("There is no mix to keep yet: finish the sieve tests and give them parts."));
  MixVersion version;
  version.mix = *evaluation.mix;
  version.mix.name = bench_.state().mix_name.trimmed().toStdString();
  if (version.mix.name.empty()) {
    window_.show_mixes();
    window_.mix_page().ask_for_name();
    return emit bench_.told(tr("Give the mix a name first."));
  }
  for (const std::size_t i : evaluation.mixed) {
    version.sources.push_back(grain_called(book_.workbook(), bench_.state().components[i].bag));
  }
  version.day = today();
  version.settling_measured = evaluation.settled_by == SettledBy::jug;
  if (evaluation.calibration) version.calibrated_by = evaluation.calibration->calibrated_by;
  if (evaluation.band) version.wanted_band = SizeBand{evaluation.band->from, evaluation.band->to};
  std::string id;
  for (const auto& kept : book_.workbook().all<MixVersion>()) {
    if (kept.record.mix.name != version.mix.name) continue;
    // As written, because a length that went through a file can differ in its last binary digit.
    MixVersion same = version;
    same.day = kept.record.day;
    // A mix that was kept without a band is the same mix in any.
    if (!kept.record.wanted_band) same.wanted_band.reset();
    if (write_record(Record(kept.record)) == write_record(Record(same))) return emit bench_.told(tr("This mix is kept already, as %1.").arg(to_qt(kept.id.text)));
    id = book_.workbook().next_version(kept.id).text;
  }
  if (id.empty()) id = book_.workbook().suggest_id(RecordKind::mix);
  const QString shown = to_qt(id);
  const RecordRef ref{RecordKind::mix, id};
  if (book_.add(version, tr("mix %1").arg(shown), shown, event_about(ref, tr("Kept mix %1, %2").arg(shown, to_qt(version.mix.name)), today())).isEmpty()) return;
  emit bench_.told(tr("Kept as %1.").arg(shown));
}

void RecordPages::keep_recipe(int recipe, bool reserve) {
  const FoundParts* const found = window_.mix_page().finder().found();
  if (found == nullptr || recipe < 0 || recipe >= static_cast<int>(found->listed().size())) return;
  QString name = bench_.state().mix_name.trimmed();
  const auto mixes = book_.workbook().all<MixVersion>();
  // The name of a mix that is open stands for that mix; only one that was typed for this recipe is its own.
  const bool is_taken = std::ranges::any_of(mixes, [&](const auto& kept) { return to_qt(kept.record.mix.name) == name; });
  if (name.isEmpty() || is_taken) name = bench_.state().find.profile;
  if (name.isEmpty()) name = tr("found mix");
  MixVersion version = version_of(*found, static_cast<std::size_t>(recipe), name.toStdString(), today());
  if (reserve) version.reserved = found->setup.need;
  std::string id;
  for (const auto& kept : mixes) {
    if (kept.record.mix.name == version.mix.name) id = book_.workbook().next_version(kept.id).text;
  }
  if (id.empty()) id = book_.workbook().suggest_id(RecordKind::mix);
  const QString shown = to_qt(id);
  const LogEntry event = event_about({RecordKind::mix, id}, reserve ? tr("Found mix %1, %2, and reserved its grain").arg(shown, name) : tr("Found mix %1, %2").arg(shown, name), today());
  const auto reserved = version.reserved;
  if (book_.add(std::move(version), tr("mix %1").arg(shown), shown, event).isEmpty()) return;
  QStringList sentences = lay_mix(shown, true);
  sentences.prepend(reserved ? tr("Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.")
                                  .arg(shown, to_local(volume_text(in_l(*reserved), bench_.units())))
                            : tr("Kept as %1 and laid on the bench.").arg(shown));
  emit bench_.told(sentences.join(u' '));
}

bool RecordPages::has_unkept_test(std::size_t index) const {
  const ComponentSheet& component = bench_.state().components[index];
  const auto weighed = [](const PanText& pan) { return !pan.retained.trimmed().isEmpty(); };
  if (component.sheet.predicted || !(weighed(component.sheet.pan) || std::ranges::any_of(component.sheet.rows, weighed))) return false;
  const ComponentEvaluation& evaluation = bench_.evaluation().components[index];
  std::vector<std::optional<SieveTest>> samples{evaluation.test};
  for (const ReplicateEvaluation& replicate : evaluation.replicates) samples.push_back(replicate.test);
  const auto of = gradable_called(book_.workbook(), component.bag);
  if (!of) return true;
  const auto kept = book_.workbook().sieve_tests_of(*of);
  return !std::ranges::all_of(samples, [&](const std::optional<SieveTest>& sample) {
    return sample && std::ranges::any_of(kept, [&](const Stored<RecordedSieveTest>& one) { return same_weighing(one.record.test, *sample); });
  });
}

bool RecordPages::only_looked_at(std::size_t index) const {
  const ComponentSheet& component = bench_.state().components[index];
  if (component.bag.isEmpty() || component.parts.trimmed() != QStringLiteral("0") || component.screening != ScreeningText{} || has_unkept_test(index)) return false;
  const auto kept = sheet_of_grain(book_.workbook(), component.bag);
  return kept && kept->grain == component.grain;
}

std::optional<std::size_t> RecordPages::on_bench_only(const Component& component) const {
  const BenchState& state = bench_.state();
  for (std::size_t i = 0; i < state.components.size(); ++i) {
    const auto& there = bench_.evaluation().components[i].component;
    if (state.components[i].bag.isEmpty() && there && there->name == component.name && there->sizes == component.sizes && has_unkept_test(i)) return i;
  }
  return std::nullopt;
}

std::optional<SpeciesProfile> RecordPages::profile_called(const QString& name) const {
  for (TreeGroup& group : tree_groups(book_.workbook()))
    if (to_qt(group.profile.name) == name) return std::move(group.profile);
  return std::nullopt;
}

void RecordPages::open_mix(const QString& id) {
  const QStringList sentences = lay_mix(id, false);
  if (!sentences.isEmpty()) emit bench_.told(sentences.join(u' '));
}

QStringList RecordPages::lay_mix(const QString& id, bool has_band) {
  const auto stored = book_.workbook().find(Id<MixVersion>{id.toStdString()});
  if (!stored) return {};
  std::vector<ComponentSheet> sheets;
  std::set<std::size_t> laid;
  QStringList without;
  const auto& components = stored->record.mix.components;
  for (std::size_t i = 0; i < components.size() && sheets.size() < most_components; ++i) {
    const auto source = i < stored->record.sources.size() ? stored->record.sources[i] : std::nullopt;
    auto sheet = source ? sheet_of_grain(book_.workbook(), to_qt(source->id)) : std::nullopt;
    if (const auto own = source ? std::nullopt : on_bench_only(components[i])) {
      sheet = bench_.state().components[*own];
      laid.insert(*own);
    } else if (!sheet || evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty) {
      // No sieve test stands behind it: the version says how the grain was known when the mix was designed.
      const QString bag = sheet ? sheet->bag : QString();
      sheet = sheet_as_designed(components[i], bench_.catalogue());
      sheet->bag = bag;
      if (evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty) without << sheet->name;
    }
    sheet->parts = number_text(components[i].parts.value(), 6);
    sheets.push_back(std::move(*sheet));
  }
  // What was typed and is kept nowhere else stays on the bench, outside the mix.
  QStringList left;
  for (std::size_t i = 0; i < bench_.state().components.size(); ++i) {
    if (laid.contains(i) || !has_unkept_test(i)) continue;
    if (sheets.size() == most_components) {
      left << bench_.state().components[i].name;
      continue;
    }
    sheets.push_back(bench_.state().components[i]);
    sheets.back().parts = QStringLiteral("0");
  }
  const QString name = to_qt(stored->record.mix.name);
  const std::optional<SizeBand>& wanted = stored->record.wanted_band;
  const std::optional<SpeciesProfile> group = has_band ? std::nullopt : profile_called(name);
  bench_.edit(tr("mix %1 opened").arg(id), {}, [&](BenchState& state) {
    state.components = sheets;
    state.mix_name = name;
    const auto percent = [](double share) { return share > 0 ? number_text(100 * share, 6) : QString(); };
    state.settling = percent(stored->record.mix.settling.value());
    state.spill = percent(stored->record.mix.spill.value());
    if (!has_band) give_band_back(state);
    if (!has_band && wanted) borrow_band(state, *wanted);
    else if (group) borrow_band(state, *group);
  });
  bench_.set_current_component(0);
  window_.show_mixes();
  QStringList sentences;
  if (components.size() > most_components) sentences << tr("The bench holds %1 components: the others of mix %2 were left out.").arg(most_components).arg(id);
  if (!without.isEmpty()) sentences << tr("No bag stands behind %1: type its sieve test.").arg(comma_list(without));
  if (!left.isEmpty()) sentences << tr("The sieve test of %1 is not kept and left the bench: undo brings it back.").arg(comma_list(left));
  return sentences;
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
