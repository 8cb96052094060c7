#include "pages/trees_page.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>

#include "models/pot_library.hpp"
#include "models/record_editor.hpp"
#include "support.hpp"

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

Container first_kept_pot(OpenWindow& open) { return open.record->workbook().all<RecordedContainer>().front().record.container; }

}  // namespace

TEST_CASE("A pot's lengths are kept as they are typed, and Enter moves on", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_pot");
  REQUIRE(open.record->workbook().count(RecordKind::container) == 1);
  open.type(QStringLiteral("grey tray"));
  open.press(Qt::Key_Return);
  CHECK(open.find<QLineEdit>("pots_rim_length")->hasFocus());
  open.type(local("40"));
  open.press(Qt::Key_Return);
  open.type(local("30"));
  open.press(Qt::Key_Return);
  open.type(local("34"));
  open.press(Qt::Key_Return);
  open.type(local("22"));
  retype(open, "pots_depth", local("6"));
  retype(open, "pots_freeboard", local("0"));
  const Container pot = first_kept_pot(open);
  CHECK(pot.name == "grey tray");
  // The prismatoid of rim 40 x 30, floor 34 x 22, depth 6 holds 5796 cm3 by hand: 6/6 (2 1200 + 2 748 + 880 + 1020).
  CHECK_THAT(in_ml(PotGeometry(pot).volume()), WithinAbs(5796, 0.01));
  CHECK(open.find<QWidget>("pot_drawing")->accessibleDescription().contains(local("34.0")));
}

TEST_CASE("A length that can't be stays in its field with the reason, and the pot stays as it was", "[trees_page][refuses]") {
  OpenWindow open;
  open.trigger("action_add_pot");
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
  open.trigger("action_add_pot");
  auto* shapes = open.find<QComboBox>("pots_shape");
  REQUIRE(shapes->count() == 9);
  for (int shape = 0; shape < shapes->count(); ++shape) {
    choose(shapes, shapes->itemData(shape));
    INFO(shapes->itemText(shape).toStdString());
    CHECK(static_cast<int>(first_kept_pot(open).shape) == shapes->itemData(shape).toInt());
    CHECK(check(first_kept_pot(open)).empty());
    CHECK_FALSE(open.find<QWidget>("pot_drawing")->grab().isNull());
  }
}

TEST_CASE("A water fill overrides the lengths and the difference is shown", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_pot");
  retype(open, "pots_freeboard", local("0"));
  // 30 x 20 x 7 cm hold 4200 mL; 4620 mL are a tenth more.
  retype(open, "pots_water_fill", local("4620"));
  CHECK(open.find<QLabel>("figure_pots_difference")->text() == local("10.0") + QStringLiteral(" %"));
  CHECK(open.find<QLabel>("figure_pots_volume")->text() == local("4.62") + QStringLiteral(" L"));
}

TEST_CASE("A pot is taken while a living tree stands in it", "[trees_page]") {
  OpenWindow open;
  open.trigger("action_add_pot");
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
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(QStringLiteral("2027-02-28")));
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(QStringLiteral("2029-02-28")));
  retype(open, "tree_due", QStringLiteral("2026-04-01"));
  CHECK(open.find<QLabel>("tree_due_text")->text().contains(QStringLiteral("2026-04-01")));
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
  open.trigger("action_add_pot");
  retype(open, "pots_rim_length", local("42.5"));
  open.press(Qt::Key_Return);
  CHECK_THAT(in_cm(first_kept_pot(open).rim.length), WithinAbs(42.5, 1e-9));
  open.trigger("action_record_undo");
  CHECK_THAT(in_cm(first_kept_pot(open).rim.length), WithinAbs(30, 1e-9));
}
