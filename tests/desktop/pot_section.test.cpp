#include "charts/pot_section_view.hpp"

#include <QApplication>
#include <QImage>
#include <QLineEdit>
#include <QTableWidget>

#include "charts/pot_drawing.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/range_keeper.hpp"
#include "support.hpp"
#include "text.hpp"
#include "theme.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("The pot in section follows the mix and its table has a row for every height", "[pot_section]") {
  OpenWindow open(Start::mixes);
  CHECK(pot_section_sentence(open.bench).startsWith(QStringLiteral("No pot yet")));
  open.bench.open(complete_bench());
  open.trigger("action_show_section");
  const auto section = bench_pot_section(open.bench);
  REQUIRE(section.has_value());
  REQUIRE_FALSE(section->slices.empty());
  // Nearer the floor a pot is wetter.
  CHECK(section->slices.front().water.value() > section->slices.back().water.value());
  open.trigger("action_chart_table");
  const auto* table = open.find<QTableWidget>("pot_section_table");
  REQUIRE(table->rowCount() == static_cast<int>(section->slices.size()));
  CHECK(table->item(0, 0)->text() == to_local(depth_text(section->fill_line, UnitSystem::metric)));
  // Water, trapped and free air have their range beside them, by the draws at that height; the floor comes last.
  open.window.ranges().finish();
  const BenchRanges* ranges = open.window.ranges().mix();
  REQUIRE(ranges != nullptr);
  const PictureTable ranged = pot_section_table(open.bench, ranges);
  REQUIRE(ranged.heading.size() == 8);
  for (const QStringList& row : ranged.rows) {
    for (const int column : {3, 5, 7}) CHECK(row[column] != QStringLiteral("\u2013"));
  }
  CHECK(ranged.rows.back()[3] == share_range_text(*ranges->mix.water_by_height.front(), 1));
  CHECK(ranged.rows.front()[7] == share_range_text(*ranges->mix.free_air_by_height.back(), 1));
  for (const QStringList& row : pot_section_table(open.bench, nullptr).rows) CHECK(row[3] == QStringLiteral("\u2013"));
  CHECK(open.find<PotSectionView>("pot_section")->accessibleDescription() == pot_section_sentence(open.bench));
}

TEST_CASE("Arrow keys and dragging the rim change the depth as one step to undo", "[pot_section]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.trigger("action_show_section");
  open.press(Qt::Key_Up);
  CHECK(open.bench.state().pot.depth == local("6.5"));
  CHECK(open.find<QLineEdit>("depth")->text() == local("6.5"));
  open.trigger("action_undo");
  CHECK(open.bench.state().pot.depth == QStringLiteral("6"));
  auto* view = open.find<PotSectionView>("pot_section");
  int rim_y = 0;
  const QImage picture = view->grab().toImage();
  // The wall is the topmost stroke in the pot's left half below the legend.
  for (int y = 3 * view->fontMetrics().height(); y < view->height() && rim_y == 0; ++y) {
    for (int x = 0; x < view->width() / 2; ++x) {
      if (picture.pixelColor(x, y).lightness() < 90) rim_y = y;
    }
  }
  REQUIRE(rim_y > 0);
  const int x = view->width() / 3;
  QTest::mousePress(view, Qt::LeftButton, {}, QPoint(x, rim_y));
  QTest::mouseMove(view, QPoint(x, rim_y + 10));
  QTest::mouseMove(view, QPoint(x, rim_y + 20));
  QTest::mouseRelease(view, Qt::LeftButton, {}, QPoint(x, rim_y + 20));
  CHECK(open.bench.state().pot.depth != QStringLiteral("6"));
  CHECK(open.bench.undo_stack().undoText() == QStringLiteral("depth of the pot"));
  open.trigger("action_undo");
  CHECK(open.bench.state().pot.depth == QStringLiteral("6"));
}

TEST_CASE("The words of a pot's drawing are whole, however odd the pot and large the text", "[pot_section]") {
  const int percent = GENERATE(100, 150, 200);
  const double fill_ml = GENERATE(0, 3, 90000);
  apply_theme(*qApp, Theme::light, percent);
  Container pot;
  pot.rim = {length_cm(38), length_cm(28)};
  pot.depth = depth_cm(8);
  if (fill_ml > 0) pot.water_fill = pot_ml(fill_ml);
  PotDrawing drawing;
  drawing.show_pot(&pot, UnitSystem::metric);
  for (const QSize size : {drawing.minimumSizeHint(), QSize(drawing.minimumSizeHint().width(), 500), QSize(700, drawing.minimumSizeHint().height())}) {
    drawing.resize(size);
    const QImage picture = drawing.grab().toImage();
    INFO(percent << " %, " << fill_ml << " mL, " << size.width() << " by " << size.height());
    const QRgb ground = drawing.palette().color(QPalette::Base).rgb();
    // What is cut reaches the edge.
    bool reaches_edge = false;
    const auto look = [&](int x, int y) { reaches_edge = reaches_edge || picture.pixel(x, y) != ground; };
    for (int x = 0; x < picture.width(); ++x) {
      look(x, 0);
      look(x, picture.height() - 1);
    }
    for (int y = 0; y < picture.height(); ++y) {
      look(0, y);
      look(picture.width() - 1, y);
    }
    CHECK_FALSE(reaches_edge);
  }
  apply_theme(*qApp, Theme::light, 100);
}
