#include "pages/mix_page.hpp"

#include <QComboBox>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QTableWidget>
#include <QToolButton>

#include "support.hpp"
#include "support/paths.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("Moving the parts moves shares, air and litres at once", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  QApplication::processEvents();
  const QString air_before = open.find<QLabel>("figure_air_filled_porosity")->text();
  const QString litres_before = open.find<QLabel>("figure_measure_out_1")->text();
  auto* slider = open.find<QSlider>("parts_slider_1");
  slider->setValue(40);
  CHECK(open.bench.state().components[0].parts == QStringLiteral("4"));
  CHECK(open.find<QLineEdit>("parts_1")->text() == QStringLiteral("4"));
  CHECK(open.find<QLabel>("figure_air_filled_porosity")->text() != air_before);
  CHECK(open.find<QLabel>("figure_measure_out_1")->text() != litres_before);
}

TEST_CASE("Typed parts move the slider", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  auto* parts = open.find<QLineEdit>("parts_2");
  parts->setFocus();
  parts->selectAll();
  open.type(QStringLiteral("2,5"));
  CHECK(open.find<QSlider>("parts_slider_2")->value() == 25);
}

TEST_CASE("Shape and lengths set the pot, a fault stands under its field", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.trigger("action_show_pot");
  auto* depth = open.find<QLineEdit>("depth");
  depth->setFocus();
  depth->selectAll();
  open.type(QStringLiteral("0"));
  CHECK(open.find<QLabel>("figure_volume_ml")->text() == QStringLiteral("\u2013"));
  CHECK(depth->accessibleDescription().contains(QStringLiteral("must be above 0")));
  depth->selectAll();
  open.type(QStringLiteral("60 mm"));
  CHECK(open.find<QLabel>("figure_volume_ml")->text() == local("5.80 L"));
  auto* shape = open.find<QComboBox>("pot_shape");
  shape->setCurrentIndex(shape->findData(static_cast<int>(Shape::oval)));
  emit shape->activated(shape->currentIndex());
  // pi/4 of the rectangle's 5796 cm3.
  CHECK(open.find<QLabel>("figure_volume_ml")->text() == local("4.55 L"));
  CHECK(open.bench.undo_stack().undoText() == QStringLiteral("shape of the pot"));
}

TEST_CASE("In a field of the bench the keys of undo are the window's, so that undo goes on behind what was typed there", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.trigger("action_show_pot");
  auto* width = open.find<QLineEdit>("rim_width");
  auto* depth = open.find<QLineEdit>("depth");
  for (QLineEdit* field : {width, depth}) {
    field->setFocus();
    field->selectAll();
    open.type(QStringLiteral("9"));
    QKeyEvent keys(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    QApplication::sendEvent(field, &keys);
    CHECK_FALSE(keys.isAccepted());
  }
  open.trigger("action_undo");
  CHECK(depth->text() == QStringLiteral("6"));
  open.trigger("action_undo");
  CHECK(width->text() == QStringLiteral("30"));
}

TEST_CASE("US units change what is read and not what was recorded", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  const BenchState before = open.bench.state();
  open.trigger("action_us_units");
  CHECK(open.find<QLabel>("figure_volume_ml")->text() == local("6.12 qt"));
  CHECK(open.find<QLineEdit>("depth")->text() == local("2.36"));
  CHECK(open.bench.state() == before);
  open.trigger("action_us_units");
  CHECK(open.find<QLineEdit>("depth")->text() == QStringLiteral("6"));
  CHECK(open.bench.state() == before);
}

TEST_CASE("How so? shows formula, inputs and source", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.find<QToolButton>("how_container_capacity")->click();
  auto* popup = open.window.findChild<QFrame*>(QStringLiteral("explanation_popup"));
  REQUIRE(popup != nullptr);
  const QString text = popup->findChild<QLabel*>(QStringLiteral("explanation_text"))->text();
  CHECK(text.contains(QStringLiteral("theta")));
  CHECK(text.contains(QStringLiteral("cm mm")));
  CHECK(text.contains(QStringLiteral("Source:")));
  popup->close();
}

TEST_CASE("The chart has a table twin", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.trigger("action_chart_table");
  auto* table = open.find<QTableWidget>("grading_table");
  CHECK(table->isVisible());
  CHECK(table->rowCount() == 5);
  CHECK(table->columnCount() == 4);
}

TEST_CASE("A component can be added, removed and brought back", "[mix_page]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.trigger("action_add_component");
  CHECK(open.bench.state().components.size() == 3);
  CHECK(open.bench.current_component() == 2);
  open.trigger("action_remove_component");
  CHECK(open.bench.state().components.size() == 2);
  open.trigger("action_undo");
  CHECK(open.bench.state().components.size() == 3);
  for (int i = 0; i < 4; ++i) open.trigger("action_add_component");
  CHECK(open.bench.state().components.size() == gritwright::desktop::most_components);
}

TEST_CASE("A sieve test that is refused opens nothing", "[mix_page][refuses]") {
  OpenWindow open(Start::mixes);
  const BenchState before = open.bench.state();
  open.window.open_sieve_test_file(QStringLiteral(GRITWRIGHT_SOURCE_DIR "/demo-data/README.md"));
  CHECK(open.bench.state() == before);
  auto* box = open.window.findChild<QWidget*>(QStringLiteral("problems_box"));
  REQUIRE(box != nullptr);
  CHECK_FALSE(box->isModal());
  box->close();
}

TEST_CASE("Opened sieve tests take the empty places first", "[mix_page]") {
  OpenWindow open(Start::mixes);
  for (const char* file : {"p_03_1.csv", "a_11_1.csv", "s_06_1.csv"}) {
    open.window.open_sieve_test_file(QStringLiteral(GRITWRIGHT_SOURCE_DIR "/demo-data/sieve_tests/%1").arg(QString::fromLatin1(file)));
  }
  REQUIRE(open.bench.state().components.size() == 3);
  CHECK(open.bench.state().components[0].name == QStringLiteral("P-03"));
  CHECK(open.bench.state().components[2].name == QStringLiteral("S-06"));
  CHECK(open.bench.evaluation().mix_state.has_value());
}

TEST_CASE("The dust caution can be put away and called back", "[mix_page]") {
  OpenWindow open;
  auto* button = open.find<QToolButton>("put_away_sieving_dust");
  auto* bar = button->parentWidget();
  CHECK(bar->isVisible());
  button->click();
  CHECK_FALSE(bar->isVisible());
  open.trigger("action_cautions");
  CHECK(bar->isVisible());
}
