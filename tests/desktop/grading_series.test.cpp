#include "charts/grading_series.hpp"

#include <algorithm>
#include <utility>

#include "charts/grading_chart.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;

TEST_CASE("The chart shows every graded component and the blend, with the band and the sieves as ticks", "[grading_series]") {
  Bench bench(test_catalogue());
  bench.open(complete_bench());
  const GradingPicture picture = grading_picture(bench, 2);
  REQUIRE(picture.series.size() == 3);
  CHECK(picture.series[0].name == QStringLiteral("A-1"));
  CHECK(picture.series[2].look == -1);
  CHECK(picture.sieves_mm == std::vector<double>{1, 2, 4, 5.6, 8});
  REQUIRE(picture.series[0].points_mm_percent.size() == 5);
  // 300 g: 0 on 8, 60 on 5.6, 120 on 4 leave 120 g finer than 4 mm.
  CHECK_THAT(picture.series[0].points_mm_percent[2].x(), WithinAbs(4, 1e-12));
  CHECK_THAT(picture.series[0].points_mm_percent[2].y(), WithinAbs(40, 1e-9));
  CHECK_THAT(picture.band_mm->x(), WithinAbs(2, 1e-12));
  // Row 2 of the sheet is the 4 mm sieve.
  REQUIRE(picture.marked_mm_percent);
  CHECK_THAT(picture.marked_mm_percent->x(), WithinAbs(4, 1e-12));
  CHECK(picture.least_mm < 1);
  CHECK(picture.most_mm > 8);
}

TEST_CASE("A stack that is still being worked through shows the curve so far", "[grading_series]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.components[0].sheet.pan.retained.clear();
  state.components[0].sheet.rows[4].retained.clear();
  state.components[0].sheet.rows[3].retained.clear();
  bench.open(state);
  const GradingPicture picture = grading_picture(bench, -1);
  REQUIRE(picture.series.size() == 2);
  CHECK_FALSE(picture.series[0].finished);
  CHECK(picture.series[0].points_mm_percent.size() == 3);
  CHECK_THAT(picture.series[0].points_mm_percent[0].y(), WithinAbs(40, 1e-9));
}

TEST_CASE("The table twin holds the chart's numbers, with a dash where a curve is not defined", "[grading_series]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.components[1].sheet.rows.pop_back();
  bench.open(state);
  const PictureTable table = grading_table(bench);
  CHECK(table.heading.size() == 4);
  REQUIRE(table.rows.size() == 5);
  CHECK(table.rows[2] == QStringList{local("4 mm"), local("40.0 %"), local("88.3 %"), table.rows[2][3]});
  CHECK(table.rows[4][2] == QStringLiteral("\u2013"));
}

TEST_CASE("The chart describes itself in one sentence", "[grading_series]") {
  Bench bench(test_catalogue());
  CHECK(grading_sentence(bench).contains(QStringLiteral("still empty")));
  bench.open(complete_bench());
  const QString sentence = grading_sentence(bench);
  CHECK(sentence.startsWith(QStringLiteral("Grading chart")));
  CHECK(sentence.contains(QStringLiteral("half of A-1 is finer than")));
  CHECK(sentence.count(u'.') >= 1);
}

TEST_CASE("The value under the cursor is read off the curve and never beyond its sieves", "[grading_series]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  auto* chart = open.find<GradingChart>("grading_chart");
  QApplication::processEvents();
  const QPointF at_4_mm = chart->chart()->mapToPosition(QPointF(0.60206, 50));
  CHECK(chart->reading_at(at_4_mm).contains(local("A-1: 40 % passes")));
  const QPointF left_of_all = chart->chart()->mapToPosition(QPointF(-0.08, 50));
  CHECK_FALSE(chart->reading_at(left_of_all).contains(QStringLiteral("passes")));
  CHECK(chart->reading_at(QPointF(0, 0)).isEmpty());
}

TEST_CASE("The chart says what its faint curves are", "[grading_series]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  bench.open(state);
  CHECK(grading_picture(bench, -1, Curves::on_screen).faint_words.empty());
  Surroundings around = bench.surroundings();
  around.earlier.push_back({QStringLiteral("A-0"), {}, bench.evaluation().components[0].analysis->grading});
  bench.set_surroundings(std::move(around));
  CHECK(grading_picture(bench, -1, Curves::on_screen).faint_words == QStringList{QStringLiteral("earlier bags")});
  ReplicateText again;
  for (const PanText& row : state.components[0].sheet.rows) again.retained.push_back(row.retained);
  again.pan = state.components[0].sheet.pan.retained;
  again.dry_mass = state.components[0].sheet.dry_mass;
  state.components[0].sheet.replicates = {again};
  bench.open(state);
  CHECK(grading_picture(bench, -1, Curves::on_screen).faint_words.contains(QStringLiteral("each sample")));
}

TEST_CASE("Two finished samples beside an empty first one are drawn", "[grading_series][regression]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  SieveSheet& sheet = state.components[0].sheet;
  ReplicateText sample;
  for (PanText& row : sheet.rows) sample.retained.push_back(std::exchange(row.retained, QString()));
  sample.pan = std::exchange(sheet.pan.retained, QString());
  sample.dry_mass = std::exchange(sheet.dry_mass, QString());
  sheet.replicates = {sample, sample};
  bench.open(state);
  const GradingPicture picture = grading_picture(bench, -1, Curves::on_screen);
  CHECK(std::ranges::count(picture.series, true, &GradingSeries::faint) == 2);
  CHECK(picture.faint_words.contains(QStringLiteral("each sample")));
}
