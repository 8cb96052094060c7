#include "widgets/sieve_table.hpp"

#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>

#include "models/sieve_table_model.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

constexpr int amount = SieveTableModel::retained;

}  // namespace

TEST_CASE("Enter goes from pan to pan and every sign is computed at once", "[sieve_table]") {
  OpenWindow open;
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.type(QStringLiteral("500"));
  open.go_to_cell(0, amount);
  open.type(QStringLiteral("50"));
  // The editor is still open: what stands in it counts already.
  CHECK(open.cell(0, SieveTableModel::passing) == local("90.0 %"));
  CHECK(open.bench.evaluation().components[0].state == SheetState::running);
  open.press(Qt::Key_Return);
  auto* table = open.find<SieveTable>("sieve_table");
  CHECK(table->currentIndex().row() == 1);
  CHECK(table->currentIndex().column() == amount);
  open.type(QStringLiteral("150,5"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(1, SieveTableModel::passing) == local("59.9 %"));
  CHECK(open.find<QLabel>("balance")->text().contains(local("still in the stack 299.5 g")));
  CHECK(table->currentIndex().row() == 2);
}

TEST_CASE("A whole stack typed with Enter ends with sum and loss in view", "[sieve_table]") {
  OpenWindow open;
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.type(QStringLiteral("500"));
  open.go_to_cell(0, amount);
  for (const char* mass : {"0", "40", "160", "150", "90", "35", "15", "9"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  CHECK(open.bench.evaluation().components[0].state == SheetState::finished);
  CHECK(open.find<QLabel>("balance")->text() == local("Sum 499 g, loss 0.20 %"));
}

TEST_CASE("Enter leads from the name over the sample down the stack, and on to the empty sieves", "[sieve_table]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("measure"), {}, [](BenchState& state) { state.components[0].sheet.measure = Measure::gross_and_tare; });
  open.find<QLineEdit>("component_name")->setFocus();
  open.press(Qt::Key_Return);
  CHECK(QApplication::focusWidget() == open.find("dry_mass"));
  open.type(QStringLiteral("500"));
  open.press(Qt::Key_Return);
  auto* table = open.find<SieveTable>("sieve_table");
  CHECK(QApplication::focusWidget() == table);
  for (const char* gross : {"210", "250", "370", "360", "300", "245", "225", "219"}) {
    open.type(QString::fromLatin1(gross));
    open.press(Qt::Key_Return);
  }
  CHECK(table->currentIndex() == table->model()->index(0, SieveTableModel::tare));
  for (int pan = 0; pan < 8; ++pan) {
    open.type(QStringLiteral("210"));
    open.press(Qt::Key_Return);
  }
  CHECK(open.bench.evaluation().components[0].state == SheetState::finished);
  // There is nothing further to weigh.
  CHECK(table->currentIndex() == table->model()->index(7, SieveTableModel::tare));
}

TEST_CASE("A further sample is typed from its mass down its own column", "[sieve_table]") {
  OpenWindow open;
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.type(QStringLiteral("500"));
  open.press(Qt::Key_Return);
  const auto weigh_all = [&] {
    for (const char* mass : {"0", "40", "160", "150", "90", "35", "15", "9"}) {
      open.type(QString::fromLatin1(mass));
      open.press(Qt::Key_Return);
    }
  };
  weigh_all();
  open.trigger("action_add_sample");
  CHECK(QApplication::focusWidget() == open.find("dry_mass_2"));
  open.type(QStringLiteral("500"));
  open.press(Qt::Key_Return);
  CHECK(open.find<SieveTable>("sieve_table")->currentIndex() == open.find<SieveTable>("sieve_table")->model()->index(0, SieveTableModel::second));
  weigh_all();
  CHECK(open.cell(7, SieveTableModel::second) == QStringLiteral("9"));
  CHECK(open.bench.evaluation().components[0].replicates.front().state == SheetState::finished);
}

TEST_CASE("A further sample weighed with its pan is gross, and a net figure there is told beside its row", "[sieve_table][refuses]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("measure"), {}, [](BenchState& state) {
    SieveSheet& sheet = state.components[0].sheet;
    sheet.measure = Measure::gross_and_tare;
    sheet.rows = {{QStringLiteral("4"), QStringLiteral("310"), QStringLiteral("210"), {}}, {QStringLiteral("2"), QStringLiteral("260"), QStringLiteral("210"), {}}};
    sheet.pan = {{}, QStringLiteral("220"), QStringLiteral("210"), {}};
    sheet.replicates.emplace_back();
  });
  const auto* table = open.find<SieveTable>("sieve_table");
  CHECK(table->model()->headerData(SieveTableModel::second, Qt::Horizontal).toString().startsWith(QStringLiteral("gross")));
  open.go_to_cell(0, SieveTableModel::second);
  for (const char* mass : {"100", "262", "221"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  CHECK(open.cell(0, SieveTableModel::check).contains(QStringLiteral("above the gross mass")));
  CHECK_FALSE(open.cell(1, SieveTableModel::check).contains(QStringLiteral("above the gross mass")));
  CHECK_FALSE(open.find<QLabel>("balance")->text().contains(u'-'));
  CHECK_FALSE(open.find<QLabel>("verdict_certainty")->isVisible());
  open.go_to_cell(0, SieveTableModel::second);
  open.type(QStringLiteral("312"));
  open.press(Qt::Key_Return);
  CHECK_FALSE(open.cell(0, SieveTableModel::check).contains(QStringLiteral("above the gross mass")));
  CHECK(open.find<QLabel>("balance")->text().contains(local("sum 165 g")));
}

TEST_CASE("Rubbish stays where it was typed, with its fault beside the cell, and typing goes on", "[sieve_table][refuses]") {
  OpenWindow open;
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.type(QStringLiteral("500"));
  open.go_to_cell(0, amount);
  open.type(QStringLiteral("12g3"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(0, amount) == QStringLiteral("12g3"));
  CHECK(open.cell(0, SieveTableModel::check).contains(QStringLiteral("12g3 is not a number")));
  CHECK(open.cell(0, SieveTableModel::passing) == QStringLiteral("\u2013"));
  CHECK(open.bench.evaluation().components[0].state == SheetState::faulty);
  open.type(QStringLiteral("20"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(1, amount) == QStringLiteral("20"));
  open.go_to_cell(0, amount);
  open.type(QStringLiteral("12"));
  open.press(Qt::Key_Return);
  CHECK(open.bench.evaluation().components[0].state == SheetState::running);
  CHECK(open.cell(0, SieveTableModel::check).isEmpty());
}

TEST_CASE("An opening out of order is told beside its row", "[sieve_table][refuses]") {
  OpenWindow open;
  open.go_to_cell(1, SieveTableModel::sieve);
  open.type(QStringLiteral("9"));
  open.press(Qt::Key_Return);
  open.go_to_cell(0, amount);
  open.type(QStringLiteral("5"));
  open.press(Qt::Key_Return);
  open.type(QStringLiteral("6"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(1, SieveTableModel::check).contains(QStringLiteral("write the sieves from coarse to fine")));
}

TEST_CASE("A column pasted from a spreadsheet fills the stack down to the pan", "[sieve_table]") {
  OpenWindow open;
  open.go_to_cell(0, amount);
  QGuiApplication::clipboard()->setText(QStringLiteral("stayed on\r\n0\r\n40,5\r\n160\r\n150\r\n90\r\n35\r\n15\r\n9\r\n"));
  open.trigger("action_paste");
  CHECK(open.cell(1, amount) == QStringLiteral("40,5"));
  CHECK(open.cell(7, amount) == QStringLiteral("9"));
  CHECK(open.bench.evaluation().components[0].state == SheetState::finished);
  open.trigger("action_undo");
  CHECK(open.cell(1, amount).isEmpty());
  CHECK(open.cell(7, amount).isEmpty());
}

TEST_CASE("Two columns pasted bring their own sieves", "[sieve_table]") {
  OpenWindow open;
  open.go_to_cell(0, amount);
  QGuiApplication::clipboard()->setText(QStringLiteral("mm\tg\n6.3\t10\n4\t200\n2\t150\npan\t40\n"));
  open.trigger("action_paste");
  CHECK(open.find<SieveTable>("sieve_table")->model()->rowCount() == 4);
  CHECK(open.cell(0, SieveTableModel::sieve) == QStringLiteral("6.3"));
  CHECK(open.cell(3, amount) == QStringLiteral("40"));
  CHECK(open.bench.evaluation().components[0].analysis.has_value());
}

TEST_CASE("A stack pasted from fine to coarse is turned round, and says so", "[sieve_table]") {
  OpenWindow open;
  open.go_to_cell(0, amount);
  QString told;
  QObject::connect(&open.bench, &Bench::told, [&told](const QString& text) { told = text; });
  QGuiApplication::clipboard()->setText(QStringLiteral("mm\tg\npan\t40\n2\t150\n4\t200\n6.3\t10\n"));
  open.trigger("action_paste");
  CHECK(open.cell(0, SieveTableModel::sieve) == QStringLiteral("6.3"));
  CHECK(open.cell(0, amount) == QStringLiteral("10"));
  CHECK(open.cell(2, amount) == QStringLiteral("150"));
  CHECK(open.cell(3, amount) == QStringLiteral("40"));
  CHECK(open.bench.evaluation().components[0].analysis.has_value());
  CHECK(told.contains(QStringLiteral("turned round")));
  // Neither order: that can be a slip of the keys, so it stays and is told.
  QGuiApplication::clipboard()->setText(QStringLiteral("2\t150\n6.3\t10\n4\t200\npan\t40\n"));
  open.trigger("action_paste");
  CHECK(open.cell(0, SieveTableModel::sieve) == QStringLiteral("2"));
  CHECK_FALSE(open.bench.evaluation().components[0].analysis.has_value());
}

TEST_CASE("Pasting words changes nothing", "[sieve_table][refuses]") {
  OpenWindow open;
  open.go_to_cell(0, amount);
  const BenchState before = open.bench.state();
  QGuiApplication::clipboard()->setText(QStringLiteral("no numbers here"));
  open.trigger("action_paste");
  CHECK(open.bench.state() == before);
  CHECK_FALSE(open.bench.undo_stack().canUndo());
}

TEST_CASE("Gross and tare show the net mass beside them", "[sieve_table]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("measure"), {}, [](BenchState& state) { state.components[0].sheet.measure = Measure::gross_and_tare; });
  open.go_to_cell(0, amount);
  open.type(QStringLiteral("52.3"));
  open.press(Qt::Key_Tab);
  open.type(QStringLiteral("2.3"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(0, SieveTableModel::net) == local("50.0 g"));
  open.go_to_cell(1, amount);
  open.type(QStringLiteral("1"));
  open.press(Qt::Key_Tab);
  open.type(QStringLiteral("3"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(1, SieveTableModel::check).contains(QStringLiteral("tare")));
}

TEST_CASE("Undo names the thing and takes a typed figure back as one step", "[sieve_table]") {
  OpenWindow open;
  open.go_to_cell(7, amount);
  open.type(QStringLiteral("125"));
  open.press(Qt::Key_Return);
  CHECK(open.bench.undo_stack().undoText() == QStringLiteral("pan mass of Component 1"));
  CHECK(open.bench.undo_stack().count() == 1);
  open.trigger("action_undo");
  CHECK(open.cell(7, amount).isEmpty());
  open.trigger("action_redo");
  CHECK(open.cell(7, amount) == QStringLiteral("125"));
}

TEST_CASE("Closing the window with an open editor is harmless", "[sieve_table][regression]") {
  auto open = std::make_unique<OpenWindow>();
  open->go_to_cell(0, amount);
  open->type(QStringLiteral("12"));
  open->window.close();
  open.reset();
  SUCCEED("no crash");
}

TEST_CASE("A sum that stands below a pasted column is left out and told, and a further pan that is no sum stays", "[sieve_table][regression]") {
  OpenWindow open;
  QString told;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { told = sentence; });
  open.go_to_cell(0, amount);
  const int rows = open.find<QTableView>("sieve_table")->model()->rowCount();
  QGuiApplication::clipboard()->setText(QStringLiteral("0\r\n40,5\r\n160\r\n150\r\n90\r\n35\r\n15\r\n9\r\n499,5\r\n"));
  open.trigger("action_paste");
  CHECK(open.find<QTableView>("sieve_table")->model()->rowCount() == rows);
  CHECK(open.cell(7, amount) == QStringLiteral("9"));
  CHECK(told.contains(QStringLiteral("499,5")));
  open.trigger("action_undo");
  open.go_to_cell(0, amount);
  QGuiApplication::clipboard()->setText(QStringLiteral("0\r\n40,5\r\n160\r\n150\r\n90\r\n35\r\n15\r\n9\r\n12\r\n"));
  open.trigger("action_paste");
  CHECK(open.find<QTableView>("sieve_table")->model()->rowCount() == rows + 1);
  CHECK(open.cell(8, amount) == QStringLiteral("12"));
  // As a spreadsheet shows it, each figure rounded by itself.
  open.trigger("action_undo");
  open.go_to_cell(0, amount);
  QGuiApplication::clipboard()->setText(QStringLiteral("0\r\n40.3\r\n160.3\r\n150.3\r\n90.3\r\n35.3\r\n15.3\r\n9.3\r\n501.3\r\n"));
  open.trigger("action_paste");
  CHECK(open.find<QTableView>("sieve_table")->model()->rowCount() == rows);
  CHECK(open.cell(7, amount) == QStringLiteral("9.3"));
}

TEST_CASE("A bag measured by the bucket asks for no sample, and one that stands there stays in sight while it is emptied", "[sieve_table]") {
  OpenWindow open;
  const auto measure = [&](Measure how) {
    auto* box = open.find<QComboBox>("measure");
    box->setCurrentIndex(static_cast<int>(how));
    emit box->activated(box->currentIndex());
    QApplication::processEvents();
  };
  auto* sample = open.find<QLineEdit>("dry_mass");
  measure(Measure::litres);
  CHECK_FALSE(sample->isVisible());
  measure(Measure::net_mass);
  REQUIRE(sample->isVisible());
  sample->setFocus();
  open.type(QStringLiteral("5"));
  measure(Measure::litres);
  CHECK(sample->isVisible());
  sample->setFocus();
  open.press(Qt::Key_Backspace);
  CHECK(sample->text().isEmpty());
  CHECK(sample->isVisible());
}
