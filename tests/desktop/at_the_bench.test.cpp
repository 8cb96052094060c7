// What somebody new to the window met between bags, sieves and mixes, by keyboard.
#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPixmap>
#include <QPushButton>
#include <QStatusBar>

#include "models/demonstration_record.hpp"
#include "models/parts_finder.hpp"
#include "models/sieve_table_model.hpp"
#include "pages/bags_page.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

QString kept_bag(OpenWindow& open, const char* material) {
  Bag bag;
  bag.material = material;
  bag.bulk_density = bulk_g_l(600);
  bag.received = "2026-03-01";
  return open.record->add(bag, QStringLiteral("bag"), to_qt(open.record->workbook().suggest_id(RecordKind::bag, material)));
}

/// 2 to 4 mm, as screening predicts it: a hair of it over 4 mm.
QString predicted_fraction(OpenWindow& open) {
  const QString bag = kept_bag(open, "pumice");
  Fraction fraction;
  fraction.source = RecordRef{RecordKind::bag, bag.toStdString()};
  fraction.material = "pumice";
  fraction.from = aperture_mm(2);
  fraction.to = aperture_mm(4);
  fraction.dry_mass = mass_g(3600);
  Grading grading;
  grading.points = {{aperture_mm(1), Passing(0.000000001)}, {aperture_mm(2), Passing(0.0139854111)}, {aperture_mm(4), Passing(0.967688345)}, {aperture_mm(8), Passing(1)}};
  fraction.sizes = grading;
  fraction.predicted = true;
  return open.record->add(fraction, QStringLiteral("fraction"), bag + QStringLiteral("/1"));
}

QString keep_as(OpenWindow& open, const char* name) {
  open.bench.edit(QStringLiteral("name"), {}, [&](BenchState& state) { state.mix_name = QString::fromLatin1(name); });
  open.trigger("action_keep_mix");
  for (const auto& mix : open.record->workbook().all<MixVersion>())
    if (mix.record.mix.name == name) return to_qt(mix.id.text);
  return {};
}

QString focus_name() { return QApplication::focusWidget() != nullptr ? QApplication::focusWidget()->objectName() : QString(); }

QString fault_beside(OpenWindow& open, const char* field) {
  return open.find<QLineEdit>(field)->accessibleDescription();
}

}  // namespace

TEST_CASE("What was predicted of a fraction is marked so, is no test to keep or print, and gives way to what is weighed", "[at_the_bench][refuses]") {
  OpenWindow open;
  const QString tub = predicted_fraction(open);
  open.window.record_pages()->put_in_mix(tub);
  open.trigger("action_show_sheet");
  const auto sheet = [&] { return open.bench.state().components[static_cast<std::size_t>(open.bench.current_component())].sheet; };
  REQUIRE(sheet().predicted);
  REQUIRE(open.bench.evaluation().mix.has_value());
  CHECK(open.cell(0, SieveTableModel::retained) == QStringLiteral("0"));
  CHECK(open.cell(1, SieveTableModel::retained) == QStringLiteral("3.2"));
  CHECK(open.cell(4, SieveTableModel::retained) == QStringLiteral("0"));
  CHECK(open.bench.evaluation().components[0].analysis->notes.empty());
  const QString words = prediction_words();
  CHECK(open.find<QLabel>("balance")->text() == words);
  for (const char* action : {"action_save_sheet", "action_sheet_pdf", "action_print_sheet"}) {
    open.window.statusBar()->clearMessage();
    open.trigger(action);
    INFO(action);
    CHECK(open.window.statusBar()->currentMessage() == words);
  }
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 0);
  const SieveSheet predicted = sheet();
  open.go_to_cell(1, SieveTableModel::retained);
  open.type(QStringLiteral("12"));
  open.press(Qt::Key_Return);
  CHECK_FALSE(sheet().predicted);
  CHECK(sheet().rows[1].retained == QStringLiteral("12"));
  for (const std::size_t row : {0u, 2u, 3u}) CHECK(sheet().rows[row].retained.isEmpty());
  CHECK(sheet().pan.retained.isEmpty());
  open.trigger("action_undo");
  CHECK(sheet() == predicted);
  QGuiApplication::clipboard()->setText(QStringLiteral("0\n14\n300\n80\n6"));
  open.go_to_cell(0, SieveTableModel::retained);
  open.trigger("action_paste");
  open.trigger("action_save_sheet");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 1);
}
