#include "pages/trees_page.hpp"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStatusBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTimer>
#include <QToolButton>

#include "models/bench_evaluation.hpp"
#include "models/pot_library.hpp"
#include "models/record_editor.hpp"
#include "pages/pots_tab.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/trees_tab.hpp"
#include "record_pages.hpp"
#include "settings.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;

namespace {

void choose(QComboBox* box, const QVariant& data) {
  const int index = box->findData(data);
  REQUIRE(index >= 0);
  box->setCurrentIndex(index);
  emit box->activated(index);
}

/// Types over what stands in a field, key by key.
void retype(OpenWindow& open, const char* field, const QString& text) {
  auto* line = open.find<QLineEdit>(field);
  line->setFocus();
  line->selectAll();
  open.type(text);
}

QLabel* fault_below(OpenWindow& open, const char* field) {
  for (QLabel* label : open.window.findChildren<QLabel*>()) {
    if (label->property("role") == QStringLiteral("fault") && label->isVisible() && !label->text().isEmpty() &&
        open.find<QLineEdit>(field)->accessibleDescription() == label->text())
      return label;
  }
  return nullptr;
}

/// A tray of 30 x 20 x 7 cm, on screen.
void keep_tray(OpenWindow& open) {
  RecordedContainer tray;
  tray.container.name = "tray";
  tray.container.rim = {length_cm(30), length_cm(20)};
  tray.container.depth = depth_cm(7);
  tray.container.freeboard = depth_cm(0.5);
  const QString id = open.record->add(tray, QStringLiteral("pot"));
  TreesPage& trees = open.window.record_pages()->trees();
  open.window.record_pages()->show_trees();
  trees.show_pots();
  trees.pots().list().show_record(id);
  QApplication::processEvents();
}

Container first_kept_pot(OpenWindow& open) { return open.record->workbook().all<RecordedContainer>().front().record.container; }

}  // namespace

TEST_CASE("A new pot is kept once its lengths are typed, and nothing is worked out of it before", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_pot");
  open.type(QStringLiteral("grey tray"));
  open.press(Qt::Key_Return);
  CHECK(open.find<QLineEdit>("new_pot_rim_length")->hasFocus());
  open.type(local("40"));
  open.press(Qt::Key_Return);
  open.type(local("30"));
  CHECK(open.record->workbook().count(RecordKind::container) == 0);
  CHECK_FALSE(open.find<QPushButton>("new_pot_keep")->isEnabled());
  CHECK(open.window.findChild<QLabel*>(QStringLiteral("figure_pots_volume")) == nullptr);
  open.press(Qt::Key_Return);
  open.type(local("6"));
  CHECK(open.find<QPushButton>("new_pot_keep")->isEnabled());
  open.press(Qt::Key_Return);
  REQUIRE(open.record->workbook().count(RecordKind::container) == 1);
  CHECK(open.find<QLineEdit>("pots_base_length")->hasFocus());
  open.type(local("34"));
  open.press(Qt::Key_Return);
  open.type(local("22"));
  retype(open, "pots_freeboard", local("0"));
  const Container pot = first_kept_pot(open);
  CHECK(pot.name == "grey tray");
  // The prismatoid of rim 40 x 30, floor 34 x 22, depth 6 holds 5796 cm3 by hand: 6/6 (2 1200 + 2 748 + 880 + 1020).
  CHECK_THAT(in_ml(PotGeometry(pot).volume()), WithinAbs(5796, 0.01));
  CHECK(open.find<QWidget>("pot_drawing")->accessibleDescription().contains(local("34.0")));
  open.trigger("action_add_pot");
  CHECK(open.find<QLineEdit>("new_pot_rim_length")->text().isEmpty());
}

TEST_CASE("What was typed of a pot that is not kept yet waits for the next window", "[trees_page]") {
  {
    OpenWindow open;
    open.trigger("action_add_pot");
    open.type(QStringLiteral("blue bowl"));
    open.press(Qt::Key_Return);
    open.type(QStringLiteral("3x"));
    CHECK(fault_below(open, "new_pot_rim_length") != nullptr);
    open.find<QPushButton>("new_pot_leave")->click();
    CHECK_FALSE(open.find<QLineEdit>("new_pot_name")->isVisible());
  }
  OpenWindow open;
  open.trigger("action_add_pot");
  CHECK(open.find<QLineEdit>("new_pot_name")->text() == QStringLiteral("blue bowl"));
  CHECK(open.find<QLineEdit>("new_pot_rim_length")->text() == QStringLiteral("3x"));
  CHECK(open.record->workbook().count(RecordKind::container) == 0);
  QSettings().remove(QStringLiteral("new_pot"));
}

TEST_CASE("A new pot whose areas were measured by height is kept from two pasted columns", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_pot");
  open.type(QStringLiteral("crackled slab"));
  choose(open.find<QComboBox>("new_pot_shape"), static_cast<int>(Shape::profile));
  CHECK_FALSE(open.find<QLineEdit>("new_pot_rim_length")->isVisible());
  CHECK_FALSE(open.find<QLineEdit>("new_pot_depth")->isVisible());
  auto* areas = open.find<QLineEdit>("new_pot_areas");
  CHECK_FALSE(open.find<QPushButton>("new_pot_keep")->isEnabled());
  areas->setFocus();
  // Half typed there is one row, and heights that fall are none; both say so below and nothing is kept.
  open.type(QStringLiteral("0 450"));
  CHECK(fault_below(open, "new_pot_areas") != nullptr);
  open.type(QStringLiteral("; 4 520; 3 600"));
  CHECK(fault_below(open, "new_pot_areas") != nullptr);
  CHECK_FALSE(open.find<QPushButton>("new_pot_keep")->isEnabled());
  areas->selectAll();
  QApplication::clipboard()->setText(local("height cm\tarea cm2\n0\t450\n4\t520.5\n8\t600\n"));
  areas->paste();
  CHECK(fault_below(open, "new_pot_areas") == nullptr);
  CHECK(open.find<QPushButton>("new_pot_keep")->isEnabled());
  // The drawing follows what is typed: 8 cm deep before the pot is kept.
  CHECK(open.find<QWidget>("pot_drawing")->accessibleDescription().contains(local("8.0")));
  open.press(Qt::Key_Return);
  REQUIRE(open.record->workbook().count(RecordKind::container) == 1);
  const Container pot = first_kept_pot(open);
  CHECK(pot.shape == Shape::profile);
  CHECK(pot.areas == std::vector{AreaAtHeight{depth_cm(0), area_cm2(450)}, AreaAtHeight{depth_cm(4), area_cm2(520.5)}, AreaAtHeight{depth_cm(8), area_cm2(600)}});
  CHECK(in_cm(pot.depth) == 8);
  CHECK(open.find<QLineEdit>("pots_areas")->text() == local("0 450; 4 520.5; 8 600"));
  // Measured as a table it has no lengths; taken for a round pot it is as wide at the rim.
  choose(open.find<QComboBox>("pots_shape"), static_cast<int>(Shape::round));
  CHECK_THAT(in_cm(first_kept_pot(open).rim.length), WithinAbs(27.6396, 1e-3));  // 600 = pi/4 d^2
}

TEST_CASE("A length that can't be stays in its field with the reason, and the pot stays as it was", "[trees_page][refuses]") {
  OpenWindow open;
  keep_tray(open);
  retype(open, "pots_depth", QStringLiteral("-4"));
  CHECK_THAT(in_cm(first_kept_pot(open).depth), WithinAbs(7, 1e-9));
  CHECK(fault_below(open, "pots_depth") != nullptr);
  CHECK(open.find<QLineEdit>("pots_depth")->text() == QStringLiteral("-4"));
  retype(open, "pots_depth", local("9"));
  CHECK_THAT(in_cm(first_kept_pot(open).depth), WithinAbs(9, 1e-9));
  CHECK(fault_below(open, "pots_depth") == nullptr);
}

TEST_CASE("Every shape can be chosen and is drawn", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  auto* shapes = open.find<QComboBox>("pots_shape");
  REQUIRE(shapes->count() == 9);
  for (int shape = 0; shape < shapes->count(); ++shape) {
    choose(shapes, shapes->itemData(shape));
    if (shapes->itemData(shape).toInt() == static_cast<int>(Shape::drum)) retype(open, "pots_middle", local("33"));
    INFO(shapes->itemText(shape).toStdString());
    CHECK(static_cast<int>(first_kept_pot(open).shape) == shapes->itemData(shape).toInt());
    CHECK(check(first_kept_pot(open)).empty());
    CHECK_FALSE(open.find<QWidget>("pot_drawing")->grab().isNull());
  }
}

TEST_CASE("A kept pot becomes a drum once its diameter at half the depth is typed, and nothing is worked out of it before", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  const Container before = first_kept_pot(open);
  auto* shapes = open.find<QComboBox>("pots_shape");
  choose(shapes, static_cast<int>(Shape::drum));
  auto* middle = open.find<QLineEdit>("pots_middle");
  CHECK(middle->isVisible());
  CHECK(middle->hasFocus());
  CHECK(middle->text().isEmpty());
  CHECK_FALSE(open.find<QLineEdit>("pots_rim_width")->isVisible());
  CHECK_FALSE(open.find<QLabel>("figure_pots_volume")->isVisible());
  CHECK(first_kept_pot(open) == before);
  SECTION("typed") {
    open.type(local("33"));
    const Container drum = first_kept_pot(open);
    CHECK(drum.shape == Shape::drum);
    CHECK(drum.middle == Section{length_cm(33), length_cm(33)});
    CHECK(open.find<QLabel>("figure_pots_volume")->isVisible());
  }
  SECTION("another shape after all") {
    choose(shapes, static_cast<int>(Shape::rectangular));
    CHECK(first_kept_pot(open) == before);
    CHECK_FALSE(middle->isVisible());
    CHECK(open.find<QLabel>("figure_pots_volume")->isVisible());
  }
}

TEST_CASE("A water fill overrides the lengths and the difference is shown", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  retype(open, "pots_freeboard", local("0"));
  // 30 x 20 x 7 cm hold 4200 mL; 4620 mL are a tenth more.
  retype(open, "pots_water_fill", local("4620"));
  CHECK(open.find<QLabel>("figure_pots_difference")->text() == local("10.0 %"));
  CHECK(open.find<QLabel>("figure_pots_volume")->text() == local("4.62 L"));
  // A water fill is good to a hundredth or so, a difference has no range of its own.
  CHECK(open.find<QLabel>("range_pots_volume")->text() == local("4.54") + QStringLiteral(" \u2013 ") + local("4.70 L"));
  CHECK(open.find<QLabel>("range_pots_difference")->text() == QStringLiteral("\u2013"));
}

TEST_CASE("A water fill far from what the lengths hold is taken with a caution that says both", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  auto* mind = open.find<QLabel>("pots_mind");
  // 30 x 20 x 6.5 cm hold 3900 mL.
  retype(open, "pots_water_fill", local("3800"));
  CHECK_FALSE(mind->isVisible());
  retype(open, "pots_water_fill", QStringLiteral("3"));
  CHECK(in_ml(*first_kept_pot(open).water_fill) == 3);
  REQUIRE(mind->isVisible());
  CHECK(mind->text().contains(QStringLiteral("3900")));
  open.find<QLineEdit>("pots_water_fill")->selectAll();
  open.press(Qt::Key_Backspace);
  CHECK_FALSE(first_kept_pot(open).water_fill.has_value());
  CHECK_FALSE(mind->isVisible());
}

TEST_CASE("A pot is taken while a living tree stands in it", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  const auto pot = open.record->workbook().all<RecordedContainer>().front().id;
  CHECK(free_pots(open.record->workbook()).size() == 1);
  open.trigger("action_add_tree");
  retype(open, "tree_species", QStringLiteral("Pinus mugo"));
  retype(open, "tree_repotted_day", QStringLiteral("2024-03-10"));
  choose(open.find<QComboBox>("tree_repotted_pot"), to_qt(pot.text));
  open.find<QPushButton>("tree_repotted_keep")->click();
  CHECK(free_pots(open.record->workbook()).empty());
  CHECK(open.find<QTableWidget>("tree_repotting_table")->rowCount() == 1);
  choose(open.find<QComboBox>("tree_seen_as"), static_cast<int>(Condition::dead));
  open.find<QPushButton>("tree_seen_keep")->click();
  CHECK(free_pots(open.record->workbook()).size() == 1);
}

TEST_CASE("The next repotting follows from the last by the group's interval, unless a day was set", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_tree");
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(QChar(0x2013)));
  choose(open.find<QComboBox>("tree_group"), static_cast<int>(SpeciesGroup::conifer));
  retype(open, "tree_repotted_day", QStringLiteral("2024-02-29"));
  open.find<QPushButton>("tree_repotted_keep")->click();
  // Conifers: 3 to 5 years, common practice.
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(day_text("2027-02-28")));
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(day_text("2029-02-28")));
  retype(open, "tree_due", QStringLiteral("2026-04-01"));
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(day_text("2026-04-01")));
}

TEST_CASE("A repotting on a day that is none is refused and nothing is written", "[trees_page][refuses]") {
  OpenWindow open;
  open.trigger("action_add_tree");
  retype(open, "tree_repotted_day", QStringLiteral("2024-02-30"));
  open.find<QPushButton>("tree_repotted_keep")->click();
  CHECK(open.find<QLabel>("tree_history_fault")->isVisible());
  CHECK(open.record->workbook().all<Tree>().front().record.repottings.empty());
}

TEST_CASE("Undo takes back a typed length of a pot in one step", "[trees_page]") {
  OpenWindow open;
  keep_tray(open);
  retype(open, "pots_rim_length", local("42.5"));
  open.press(Qt::Key_Return);
  CHECK_THAT(in_cm(first_kept_pot(open).rim.length), WithinAbs(42.5, 1e-9));
  open.trigger("action_record_undo");
  CHECK_THAT(in_cm(first_kept_pot(open).rim.length), WithinAbs(30, 1e-9));
}

namespace {

/// A tree of a group in a pot, and a second pot that is free, with a plan for the tree on screen and worked out.
class TreeToRepot {
 public:
  explicit TreeToRepot(SpeciesGroup group = SpeciesGroup::deciduous_developing) {
    keep_tray(open);
    RecordedContainer larger = open.record->workbook().all<RecordedContainer>().front().record;
    const auto present = open.record->workbook().all<RecordedContainer>().front().id;
    larger.container.name = "larger";
    larger.container.rim = {length_cm(36), length_cm(26)};
    larger.container.depth = depth_cm(8);
    open.record->add(larger, QStringLiteral("pot"));
    Tree tree;
    tree.name = "maple";
    tree.group = group;
    Repotting last;
    last.day = "2023-03-10";
    last.container = present;
    tree.repottings.push_back(last);
    id = open.record->add(tree, QStringLiteral("tree"));
    tab().plan_tree(id);
    open.window.record_pages()->show_trees();
    open.window.record_pages()->trees().show_plans();
    tab().desk().job().wait();
  }

  RootPlanTab& tab() { return open.window.record_pages()->trees().plans(); }

  OpenWindow open;
  QString id;
};

}  // namespace

TEST_CASE("A plan begins with the tree's group, its present pot as root mass and a free pot, and is worked out", "[trees_page]") {
  TreeToRepot planned;
  REQUIRE(planned.tab().desk().plan());
  CHECK(planned.tab().desk().plan()->group == SpeciesGroup::deciduous_developing);
  CHECK(std::holds_alternative<AsPresentPot>(planned.tab().desk().plan()->block));
  CHECK(planned.tab().desk().plan()->pot.name == "larger");
  REQUIRE(planned.tab().desk().worked() != nullptr);
  CHECK(planned.tab().desk().worked()->fits);
  CHECK(planned.open.find<QLabel>("plan_steps")->text().contains(QStringLiteral("1.")));
  // Nothing says how sure its figures are, and that is told.
  for (const char* figure : {"range_plan_removed", "range_plan_untouched", "range_plan_fill"}) CHECK(planned.open.find<QLabel>(figure)->text() == QStringLiteral("\u2013"));
}

TEST_CASE("A plan for a pot that is not in the library as it stands says so, however often the choices are read anew", "[trees_page]") {
  TreeToRepot planned;
  OpenWindow& open = planned.open;
  auto changed = planned.tab().desk().plan()->pot;
  changed.name = "former";
  changed.depth = depth_cm(6);
  REQUIRE(planned.tab().desk().save(QStringLiteral("pot"), [&](RootMassPlan& plan) { plan.pot = changed; }).empty());
  auto* pot = open.find<QComboBox>("plan_pot");
  CHECK(pot->currentIndex() == -1);
  CHECK(pot->placeholderText().contains(QStringLiteral("former")));
  planned.tab().plan_tree(planned.id);
  CHECK(pot->currentIndex() == -1);
}

TEST_CASE("A root mass of typed lengths shows no present pot", "[trees_page]") {
  TreeToRepot planned;
  auto* forms = planned.open.find<QComboBox>("plan_block");
  forms->setCurrentIndex(forms->findData(static_cast<int>(BlockForm::box)));
  emit forms->activated(forms->currentIndex());
  CHECK(planned.open.find<QComboBox>("plan_present_pot")->currentIndex() == -1);
}

TEST_CASE("Over a plan stand its number and its tree, whatever tree a new plan would be for", "[trees_page]") {
  TreeToRepot planned;
  Tree other;
  other.name = "elm";
  const QString id = planned.open.record->add(other, QStringLiteral("tree"));
  auto* trees = planned.open.find<QComboBox>("plan_tree");
  trees->setCurrentIndex(trees->findData(id));
  const QString heading = planned.open.find<QLabel>("plan_heading")->text();
  CHECK(heading.contains(QStringLiteral("maple")));
  CHECK(heading.contains(planned.id));
  CHECK_FALSE(heading.contains(QStringLiteral("elm")));
}

TEST_CASE("Asked again for the plan of a tree, the one it has comes to the front", "[trees_page]") {
  TreeToRepot planned;
  OpenWindow& open = planned.open;
  open.window.record_pages()->show_trees();
  open.window.record_pages()->trees().show_trees();
  for (int again = 0; again < 3; ++again) open.trigger("action_plan_tree");
  CHECK(open.record->workbook().count(RecordKind::root_mass_plan) == 1);
}

TEST_CASE("A tree of no group gets no plan and the reason stands beside it", "[trees_page][refuses]") {
  OpenWindow open;
  open.trigger("action_add_tree");
  open.trigger("action_plan_tree");
  CHECK(open.find<QLabel>("plan_tree_fault")->isVisible());
  CHECK(open.record->workbook().count(RecordKind::root_mass_plan) == 0);
}

TEST_CASE("A root mass that nobody measured begins without lengths, and nothing is worked out before they are typed", "[trees_page]") {
  OpenWindow open;
  RecordedContainer tray;
  tray.container.shape = Shape::rectangular;
  tray.container.rim = {length_cm(36), length_cm(26)};
  tray.container.depth = depth_cm(8);
  open.record->add(tray, QStringLiteral("pot"));
  Tree tree;
  tree.name = "collected";
  tree.group = SpeciesGroup::deciduous_developing;
  const QString id = open.record->add(tree, QStringLiteral("tree"));
  RootPlanTab& tab = open.window.record_pages()->trees().plans();
  tab.plan_tree(id);
  open.window.record_pages()->show_trees();
  open.window.record_pages()->trees().show_plans();
  tab.desk().job().wait();
  REQUIRE(tab.desk().plan());
  CHECK(tab.desk().lacks_lengths());
  CHECK(tab.desk().worked() == nullptr);
  for (const char* field : {"plan_block_length", "plan_block_width", "plan_block_height"}) CHECK(open.find<QLineEdit>(field)->text().isEmpty());
  CHECK(open.find<QLabel>("plan_limits")->text().contains(QStringLiteral("length, width and height")));
  CHECK(open.find<QWidget>("root_plan_view")->accessibleDescription().contains(QStringLiteral("length, width and height")));
  // What is typed so far is kept, also over closing.
  retype(open, "plan_block_length", local("24"));
  retype(open, "plan_block_width", local("18"));
  CHECK(tab.desk().worked() == nullptr);
  CHECK(open.record->workbook().all_of(RecordKind::root_mass_plan).size() == 1);
  tab.desk().open({});
  tab.desk().open(to_qt(open.record->workbook().list(RecordKind::root_mass_plan).front().ref.id));
  CHECK(tab.desk().lacks_lengths());
  CHECK_THAT(in_cm(std::get<BlockBox>(tab.desk().plan()->block).width), WithinAbs(18, 1e-9));
  retype(open, "plan_block_height", local("6"));
  tab.desk().job().wait();
  REQUIRE(tab.desk().worked() != nullptr);
  CHECK(tab.desk().worked()->fits);
  open.trigger("action_record_undo");
  CHECK(tab.desk().lacks_lengths());
  CHECK(tab.desk().worked() == nullptr);
}

TEST_CASE("Without a pot to go into no plan is begun, and the reason stands beside the tree", "[trees_page][refuses]") {
  OpenWindow open;
  Tree tree;
  tree.name = "collected";
  tree.group = SpeciesGroup::deciduous_developing;
  open.record->add(tree, QStringLiteral("tree"));
  open.trigger("action_plan_tree");
  CHECK(open.find<QLabel>("plan_tree_fault")->isVisible());
  CHECK(open.record->workbook().count(RecordKind::root_mass_plan) == 0);
}

TEST_CASE("A tip above 90 degrees and a clearance larger than the pot stay in their fields with the reason", "[trees_page][refuses]") {
  TreeToRepot planned;
  const RootMassPlan before = *planned.tab().desk().plan();
  planned.open.find<QTabWidget>("plan_tabs")->setCurrentIndex(1);
  auto* tip = planned.open.find<QLineEdit>("plan_tip");
  tip->setText(QStringLiteral("95"));
  emit tip->textEdited(tip->text());
  CHECK(fault_below(planned.open, "plan_tip") != nullptr);
  planned.open.find<QTabWidget>("plan_tabs")->setCurrentIndex(0);
  auto* side = planned.open.find<QLineEdit>("plan_side_clearance");
  side->setText(QStringLiteral("20"));
  emit side->textEdited(side->text());
  CHECK(fault_below(planned.open, "plan_side_clearance") != nullptr);
  CHECK(*planned.tab().desk().plan() == before);
}

TEST_CASE("The tree moved with the keys keeps its new place, and undo takes it back", "[trees_page]") {
  TreeToRepot planned;
  const RootMassPlan before = *planned.tab().desk().plan();
  auto* view = planned.open.find<QWidget>("root_plan_view");
  view->setFocus();
  planned.open.press(Qt::Key_Right);
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().plan()->pose.right);
  CHECK_FALSE(planned.tab().desk().outcome()->coarse);
  planned.open.trigger("action_record_undo");
  CHECK(*planned.tab().desk().plan() == before);
}

TEST_CASE("A cut that stopped at the bench is kept and the rest planned anew", "[trees_page]") {
  TreeToRepot planned;
  planned.open.find<QTabWidget>("plan_tabs")->setCurrentIndex(3);
  planned.open.find<QLineEdit>("plan_stop_depth")->setText(QStringLiteral("1 cm"));
  planned.open.find<QPushButton>("plan_stop")->click();
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().plan()->stopped.size() == 1);
  CHECK_THAT(in_cm(planned.tab().desk().plan()->stopped.front().depth), WithinAbs(1, 1e-9));
  planned.open.find<QLineEdit>("plan_stop_depth")->setText(QStringLiteral("-1 cm"));
  planned.open.find<QPushButton>("plan_stop")->click();
  CHECK(planned.open.find<QLabel>("plan_stop_fault")->isVisible());
  CHECK_THAT(in_cm(planned.tab().desk().plan()->stopped.front().depth), WithinAbs(1, 1e-9));
}

TEST_CASE("A plan carried out stands in the tree's history and takes its pot", "[trees_page]") {
  TreeToRepot planned;
  planned.open.find<QPushButton>("plan_done")->click();
  const Tree tree = planned.open.record->workbook().find(Id<Tree>{planned.id.toStdString()})->record;
  REQUIRE(tree.repottings.size() == 2);
  CHECK(tree.repottings.back().plan_name == "A");
  CHECK(tree.repottings.back().removed_share.has_value());
  REQUIRE(tree.repottings.back().container);
  CHECK(planned.open.record->workbook().find(*tree.repottings.back().container)->record.container.name == "larger");
}

TEST_CASE("The root-plan sheet is written as a PDF file", "[trees_page]") {
  TreeToRepot planned;
  const QString file = planned.open.folder.filePath(QStringLiteral("sheet.pdf"));
  REQUIRE(planned.tab().save_sheet(file));
  QFile written(file);
  REQUIRE(written.open(QIODevice::ReadOnly));
  CHECK(written.read(5) == QByteArray("%PDF-"));
}

TEST_CASE("The keys for paper write the plan on screen, on the paper chosen in the settings whatever the units", "[trees_page]") {
  TreeToRepot planned;
  const QString file = planned.open.folder.filePath(QStringLiteral("plan.pdf"));
  Settings settings = read_settings();
  settings.letter_paper = GENERATE(false, true);
  settings.units = GENERATE(UnitSystem::metric, UnitSystem::us);
  write_settings(settings);
  planned.tab().set_units(settings.units);
  bool asked = false;
  QTimer::singleShot(0, &planned.open.window, [&] {
    auto* files = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    asked = files != nullptr;
    if (!asked) return;
    files->selectFile(file);
    static_cast<QDialog*>(files)->accept();
  });
  planned.open.trigger("action_sheet_pdf");
  REQUIRE(asked);
  QFile written(file);
  REQUIRE(written.open(QIODevice::ReadOnly));
  const QByteArray pdf = written.readAll();
  const qsizetype box = pdf.indexOf("/MediaBox [");
  REQUIRE(box >= 0);
  const QList<QByteArray> sides = pdf.mid(box, pdf.indexOf(']', box) - box).split(' ');
  REQUIRE(sides.size() >= 5);
  constexpr double letter_points = 8.5 * 72;
  constexpr double a4_points = 210 / 25.4 * 72;
  INFO(pdf.mid(box, 60).toStdString());
  CHECK_THAT(sides[3].toDouble(), WithinAbs(settings.letter_paper ? letter_points : a4_points, 1));
}

TEST_CASE("Without a plan the keys for paper say what it takes", "[trees_page][refuses]") {
  OpenWindow open;
  open.window.record_pages()->show_trees();
  open.window.record_pages()->trees().show_plans();
  for (const char* action : {"action_sheet_pdf", "action_print_sheet"}) {
    open.window.statusBar()->clearMessage();
    open.trigger(action);
    INFO(action);
    CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("Begin one")));
  }
}

TEST_CASE("The root-plan sheet is headed by the numbers of its tree, plan and pot", "[trees_page][regression]") {
  TreeToRepot planned;
  const OpenWorkbook& workbook = planned.open.record->workbook();
  const auto kept = planned.tab().desk().kept();
  REQUIRE(kept);
  REQUIRE(kept->record.tree);
  const RootMassPlan named = with_numbers(workbook, *kept, *planned.tab().desk().plan());
  CHECK(named.name.starts_with(kept->record.tree->text));
  CHECK(named.name.ends_with(", " + kept->id.text));
  const auto pots = workbook.all<RecordedContainer>();
  CHECK(std::ranges::any_of(pots, [&](const auto& pot) { return named.pot.name.starts_with(pot.id.text); }));
}

namespace {

/// A plan for a pine whose mass is far too high for its new pot, as a box typed in.
class HighPine : public TreeToRepot {
 public:
  HighPine() : TreeToRepot(SpeciesGroup::conifer) {
    REQUIRE(tab().desk().save(QStringLiteral("root mass"), [](RootMassPlan& plan) {
      plan.block = BlockBox{BlockForm::box, length_cm(28), length_cm(20), length_cm(9), {}};
      plan.trunk_base.reset();
      plan.pose = {};
    }).empty());
    tab().desk().job().wait();
    open.record->end_typing();
  }
};

Tree only_tree(OpenWindow& open) { return open.record->workbook().all<Tree>().front().record; }

}  // namespace

TEST_CASE("Plans A, B and C can be chosen, and each is told with its own steps", "[trees_page]") {
  TreeToRepot planned;
  REQUIRE(planned.tab().desk().save(QStringLiteral("root mass"), [](RootMassPlan& plan) {
    plan.block = BlockBox{BlockForm::box, length_cm(28), length_cm(20), length_cm(9), {}};
    plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
  }).empty());
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().outcome()->answer);
  REQUIRE(planned.tab().desk().outcome()->answer->plans.size() == 3);
  auto* shown = planned.open.find<QComboBox>("plan_shown");
  REQUIRE(shown->count() == 3);
  QStringList told;
  for (int plan = 0; plan < 3; ++plan) {
    shown->setCurrentIndex(plan);
    emit shown->activated(plan);
    planned.tab().desk().job().wait();
    CHECK(planned.tab().desk().worked()->name == std::string(1, static_cast<char>('A' + plan)));
    told << planned.open.find<QLabel>("plan_steps")->text();
    CHECK(planned.open.find<QToolButton>("how_plan_removed")->isEnabled());
    CHECK_FALSE(planned.open.find<QWidget>("root_plan_view")->grab().isNull());
  }
  CHECK(told[0].startsWith(QStringLiteral("Plan A")));
  CHECK(told[2].startsWith(QStringLiteral("Plan C")));
  CHECK(told[0] != told[1]);
  auto* stops = planned.open.find<QTableWidget>("plan_stop_table");
  CHECK(stops->rowCount() == static_cast<int>(told_stops(*planned.tab().desk().outcome()->answer).size()));
  CHECK(stops->rowCount() > 0);
}

TEST_CASE("A plan in stages is drawn in the old pot, says when the rest comes, and goes into the history with that pot", "[trees_page]") {
  HighPine planned;
  REQUIRE(planned.tab().desk().save(QStringLiteral("permission"), [](RootMassPlan& plan) {
    plan.pot.depth = depth_cm(4);
    plan.permission[static_cast<std::size_t>(Face::top)] = Length{};
  }).empty());
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().worked() != nullptr);
  REQUIRE_FALSE(planned.tab().desk().worked()->fits);
  auto* view = planned.open.find<QWidget>("root_plan_view");
  CHECK(view->accessibleDescription().contains(QStringLiteral("old pot")));
  REQUIRE(planned.tab().desk().outcome()->views);
  CHECK_FALSE(planned.tab().desk().outcome()->views->side.kept.empty());
  CHECK(planned.open.find<QLabel>("plan_steps")->text().contains(QStringLiteral("back into its old pot")));
  CHECK(planned.open.find<QComboBox>("plan_shown")->currentText().contains(QStringLiteral("in stages")));
  const auto present = only_tree(planned.open).repottings.back().container;
  planned.open.find<QPushButton>("plan_done")->click();
  CHECK(only_tree(planned.open).repottings.size() == 2);
  CHECK(only_tree(planned.open).repottings.back().container == present);
}

TEST_CASE("The mix chosen for a plan is shown around a root mass whose moisture is not known", "[trees_page]") {
  TreeToRepot planned;
  auto* section = planned.open.find<QWidget>("root_section");
  CHECK(section->accessibleDescription().contains(QStringLiteral("No mix yet")));
  const auto lava = evaluate_component(finished_component(QStringLiteral("lava"), QStringLiteral("scoria"), {{"9.5", "0"}, {"4.75", "200"}, {"2", "280"}}, "20", "500"), test_catalogue()).component;
  REQUIRE(lava);
  MixVersion version;
  version.mix.name = "red";
  version.mix.components = {*lava};
  version.sources.resize(1);
  const QString mix = planned.open.record->add(version, QStringLiteral("mix"));
  choose(planned.open.find<QComboBox>("plan_mix"), mix);
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().outcome()->section);
  const RootSection& drawn = *planned.tab().desk().outcome()->section;
  CHECK(drawn.new_mix_share > 0);
  CHECK(drawn.new_mix_share < 1);
  CHECK_FALSE(drawn.kept.empty());
  REQUIRE(drawn.ranges);
  CHECK(drawn.ranges->of(MixFigure::air_filled_porosity)->low < drawn.ranges->of(MixFigure::air_filled_porosity)->high);
  CHECK(section->accessibleDescription().contains(QStringLiteral("new mix only")));
  CHECK(section->accessibleDescription().contains(QStringLiteral("not known")));
  CHECK(planned.tab().desk().kept()->record.mix == Id<MixVersion>{mix.toStdString()});
  planned.open.trigger("action_record_undo");
  CHECK_FALSE(planned.tab().desk().kept()->record.mix);
}

TEST_CASE("Shift with the arrow keys turns and tips the tree, and undo takes it back", "[trees_page]") {
  TreeToRepot planned;
  auto* view = planned.open.find<QWidget>("root_plan_view");
  view->setFocus();
  planned.open.press(Qt::Key_Left, Qt::ShiftModifier);
  planned.tab().desk().job().wait();
  CHECK_THAT(in_deg(planned.tab().desk().plan()->pose.turn), WithinAbs(5, 1e-9));
  planned.open.press(Qt::Key_Up, Qt::ShiftModifier);
  planned.tab().desk().job().wait();
  CHECK_THAT(in_deg(planned.tab().desk().plan()->pose.tip), WithinAbs(2, 1e-9));
  REQUIRE(planned.tab().desk().worked() != nullptr);
  CHECK(planned.open.find<QLabel>("plan_steps")->text().contains(QStringLiteral("turned 5")));
  CHECK(planned.open.find<QLabel>("plan_steps")->text().contains(QStringLiteral("tipped 2")));
  planned.open.press(Qt::Key_Down, Qt::ShiftModifier);
  planned.open.press(Qt::Key_Down, Qt::ShiftModifier);
  planned.tab().desk().job().wait();
  // Less than upright there is not.
  CHECK_THAT(in_deg(planned.tab().desk().plan()->pose.tip), WithinAbs(0, 1e-9));
  CHECK_FALSE(planned.tab().desk().outcome()->coarse);
}

TEST_CASE("What a plan lacks in the form can be typed: order of cuts, trunk and stones, working depth, years", "[trees_page]") {
  TreeToRepot planned;
  const auto typed = [&](int tab, const char* name, const QString& text) {
    planned.open.find<QTabWidget>("plan_tabs")->setCurrentIndex(tab);
    auto* field = planned.open.find<QLineEdit>(name);
    field->setText(text);
    emit field->textEdited(text);
  };
  typed(0, "plan_displaced", local("250"));
  typed(2, "plan_cut_order", QStringLiteral("down, Right up"));
  typed(2, "plan_working_depth", local("1.2"));
  typed(2, "plan_interval", QStringLiteral("4"));
  const RootMassPlan plan = *planned.tab().desk().plan();
  CHECK_THAT(in_ml(plan.displaced), WithinAbs(250, 1e-6));
  CHECK(plan.cut_order == std::vector<Direction>{Direction::down, Direction::right, Direction::up});
  CHECK_THAT(in_cm(*plan.working_depth), WithinAbs(1.2, 1e-9));
  CHECK(plan.interval_years == 4);
  typed(2, "plan_cut_order", QStringLiteral("down, sideways"));
  CHECK(fault_below(planned.open, "plan_cut_order") != nullptr);
  typed(2, "plan_cut_order", QStringLiteral("down, down"));
  CHECK(fault_below(planned.open, "plan_cut_order") != nullptr);
  typed(2, "plan_interval", QStringLiteral("1.5"));
  CHECK(fault_below(planned.open, "plan_interval") != nullptr);
  CHECK(*planned.tab().desk().plan() == plan);
}

TEST_CASE("A broadleaf can be bare-rooted on purpose, a conifer can't", "[trees_page][refuses]") {
  for (const SpeciesGroup group : {SpeciesGroup::deciduous_developing, SpeciesGroup::conifer}) {
    TreeToRepot planned(group);
    planned.open.find<QTabWidget>("plan_tabs")->setCurrentIndex(2);
    choose(planned.open.find<QComboBox>("plan_bare_root"), true);
    planned.tab().desk().job().wait();
    CHECK(planned.tab().desk().plan()->bare_root == (group != SpeciesGroup::conifer));
    CHECK(planned.open.find<QComboBox>("plan_bare_root")->currentData().toBool() == (group != SpeciesGroup::conifer));
  }
}

TEST_CASE("What stayed untouched is kept in the history and limits the next plan", "[trees_page]") {
  TreeToRepot planned(SpeciesGroup::conifer);
  REQUIRE(planned.tab().desk().save(QStringLiteral("combed"), [](RootMassPlan& plan) { plan.combed = {{Face::left, length_cm(4)}}; }).empty());
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().worked()->fits);
  planned.open.find<QPushButton>("plan_done")->click();
  const Repotting done = only_tree(planned.open).repottings.back();
  REQUIRE(done.untouched);
  REQUIRE(done.combed.size() == 1);
  REQUIRE(only_tree(planned.open).trunk_base);
  planned.open.find<QPushButton>("plan_add")->click();
  planned.tab().desk().job().wait();
  REQUIRE(planned.tab().desk().plan()->untouched_last_time);
  CHECK(*planned.tab().desk().plan()->untouched_last_time == *done.untouched);
  REQUIRE(planned.tab().desk().worked() != nullptr);
  REQUIRE(planned.tab().desk().worked()->other_half);
  CHECK(planned.tab().desk().worked()->other_half->toward == Face::right);
  CHECK_FALSE(planned.tab().desk().outcome()->views->side.left_before.empty());
}

TEST_CASE("A root mass larger than any plan can fit is told as such, with the pot that would do", "[trees_page][refuses]") {
  HighPine planned;
  REQUIRE(planned.tab().desk().save(QStringLiteral("root mass"), [](RootMassPlan& plan) {
    plan.block = BlockBox{BlockForm::box, length_cm(90), length_cm(70), length_cm(40), {}};
    plan.pose = {};
  }).empty());
  planned.tab().desk().job().wait();
  CHECK_FALSE(planned.tab().desk().worked()->fits);
  CHECK(planned.open.find<QLabel>("plan_steps")->text().contains(local("more than 70 % is never advised")));
}

TEST_CASE("Corners that an oval takes off are a step of the plan, a row of its table and a cut of the history", "[trees_page][corners]") {
  TreeToRepot planned;
  REQUIRE(planned.tab().desk().save(QStringLiteral("root mass"), [](RootMassPlan& plan) {
    plan.block = BlockBox{BlockForm::box, length_cm(24), length_cm(18), length_cm(5), {}};
    plan.pot.shape = Shape::oval;
    plan.pot.rim = {length_cm(24), length_cm(18)};
    plan.side_clearance = Length{};
  }).empty());
  planned.tab().desk().job().wait();
  const WorkedPlan* worked = planned.tab().desk().worked();
  REQUIRE(worked != nullptr);
  REQUIRE(worked->shaved.size() == 4);
  const std::size_t cuts = worked->cuts.size() + worked->shaved.size();
  const QString steps = planned.open.find<QLabel>("plan_steps")->text();
  CHECK(steps.contains(QStringLiteral("Round off the corners along the wall, 21")));
  CHECK_FALSE(steps.contains(QStringLiteral("fits as it is")));
  planned.open.find<QPushButton>("plan_done")->click();
  const Tree after = planned.open.record->workbook().find(Id<Tree>{planned.id.toStdString()})->record;
  REQUIRE_FALSE(after.repottings.empty());
  CHECK(after.repottings.back().cut.size() == cuts);
  planned.open.window.record_pages()->trees().show_trees();
  const auto* history = planned.open.find<QTableWidget>("tree_repotting_table");
  REQUIRE(history->item(0, 4) != nullptr);
  CHECK(history->item(0, 4)->text().contains(QStringLiteral("right corners")));
}

TEST_CASE("What is written down of one tree begins anew for the next, from today and with nothing chosen", "[trees_page][regression]") {
  OpenWindow open;
  keep_tray(open);
  Tree pine;
  pine.name = "old pine";
  const QString older = open.record->add(pine, QStringLiteral("tree"));
  pine.name = "young pine";
  const QString younger = open.record->add(pine, QStringLiteral("tree"));
  TreesPage& page = open.window.record_pages()->trees();
  page.show_trees();
  TreesTab& trees = page.trees();
  trees.list().show_record(older);
  const auto field = [&](const char* name) { return open.find<QLineEdit>(name); };
  field("tree_seen_day")->setText(QStringLiteral("2021-1-9"));
  choose(open.find<QComboBox>("tree_seen_as"), static_cast<int>(Condition::watch));
  open.find<QPushButton>("tree_seen_keep")->click();
  CHECK(open.record->workbook().find(Id<Tree>{older.toStdString()})->record.conditions.front().day == "2021-01-09");
  field("tree_repotted_day")->setText(QStringLiteral("2021-03-14"));
  choose(open.find<QComboBox>("tree_repotted_pot"), to_qt(open.record->workbook().all<RecordedContainer>().front().id.text));
  field("tree_repotted_note")->setText(QStringLiteral("half a note"));
  trees.list().show_record(younger);
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("half a note")));
  CHECK(field("tree_seen_day")->text() == day_text(today()));
  CHECK(field("tree_repotted_day")->text().isEmpty());
  CHECK(field("tree_repotted_note")->text().isEmpty());
  CHECK(open.find<QComboBox>("tree_repotted_pot")->currentIndex() == 0);
  choose(open.find<QComboBox>("tree_seen_as"), static_cast<int>(Condition::sick));
  open.find<QPushButton>("tree_seen_keep")->click();
  CHECK(open.record->workbook().find(Id<Tree>{younger.toStdString()})->record.conditions.front().day == today());
  // A fault stands where it was made.
  field("tree_seen_day")->setText(QStringLiteral("soon"));
  open.find<QPushButton>("tree_seen_keep")->click();
  CHECK(open.find<QLabel>("tree_seen_fault")->isVisible());
  CHECK_FALSE(open.find<QLabel>("tree_history_fault")->isVisible());
}
