#include "models/verdict_figures.hpp"

#include <QLabel>
#include <QRegularExpression>
#include <QTableWidget>
#include <algorithm>
#include <utility>
#include <vector>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/bench.hpp"
#include "models/range_keeper.hpp"
#include "support.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

/// A bench whose component on screen has half its grain in 2 to 4 mm, a fifth coarser, three tenths finer.
BenchState dusty_bag_bench() {
  BenchState state = complete_bench();
  state.components[0] = finished_component(QStringLiteral("D-1"), QStringLiteral("pumice"), {{"8", "0"}, {"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500");
  state.band_from = QStringLiteral("2");
  state.band_to = QStringLiteral("4");
  return state;
}

}  // namespace

TEST_CASE("The verdict on screen is the model's, with what screening gives and the openings to choose", "[verdict]") {
  OpenWindow open;
  open.bench.open(dusty_bag_bench());
  open.trigger("action_show_verdict");
  CHECK(open.find<QLabel>("figure_verdict_in_band")->text() == to_local("50.0 %"));
  CHECK(open.find<QLabel>("figure_verdict_finer")->text() == to_local("30.0 %"));
  CHECK(open.find<QLabel>("figure_verdict_coarser")->text() == to_local("20.0 %"));
  const auto judged = judge(open.bench.evaluation().components[0].analysis->grading, *open.bench.evaluation().band);
  REQUIRE(judged.value.has_value());
  REQUIRE_FALSE(judged.value->openings.empty());
  const auto* fractions = open.find<QTableWidget>("verdict_fractions");
  CHECK(fractions->rowCount() == static_cast<int>(judged.value->openings.size()) + 1);
  const auto* openings = open.find<QTableWidget>("verdict_openings");
  CHECK(openings->rowCount() > 0);
  CHECK(openings->item(0, 0)->text().contains(to_local(size_text(aperture_mm(2), UnitSystem::metric))));
}

TEST_CASE("A bag all in the band is taken as it is, without openings to screen at", "[verdict]") {
  OpenWindow open;
  BenchState state = dusty_bag_bench();
  state.components[0] = finished_component(QStringLiteral("C-1"), QStringLiteral("pumice"), {{"8", "0"}, {"4", "10"}, {"2", "485"}, {"1", "4"}}, "1", "500");
  open.bench.open(state);
  open.trigger("action_show_verdict");
  CHECK(open.find<QLabel>("verdict_sentence")->text() == QStringLiteral("Take it as it is"));
  CHECK(open.find<QTableWidget>("verdict_fractions")->isHidden());
}

TEST_CASE("Without a finished test or a band there is no verdict, but its reason", "[verdict][refuses]") {
  OpenWindow open;
  open.trigger("action_show_verdict");
  CHECK(open.find<QLabel>("verdict_sentence")->text() == QStringLiteral("No verdict: finish the sieve test"));
  CHECK(open.find<QLabel>("figure_verdict_usable")->text() == QStringLiteral("\u2013"));
  BenchState state = dusty_bag_bench();
  state.band_from.clear();
  open.bench.open(state);
  CHECK(open.find<QLabel>("verdict_sentence")->text() == QStringLiteral("No verdict: type the wanted grain"));
  state = dusty_bag_bench();
  state.band_from = QStringLiteral("0.1");
  open.bench.open(state);
  CHECK(open.find<QLabel>("verdict_sentence")->text().startsWith(QStringLiteral("No verdict: ")));
  CHECK(open.find<QTableWidget>("verdict_openings")->isHidden());
}

TEST_CASE("Every figure of the verdict tells its formula and source", "[verdict]") {
  OpenWindow open;
  open.bench.open(dusty_bag_bench());
  const VerdictView view = verdict_view(open.bench);
  REQUIRE(view.figures.figures.size() == 8);
  for (const Figure& figure : view.figures.figures) {
    if (figure.key == QStringLiteral("verdict_price")) {
      CHECK(figure.reason == QStringLiteral("choose its bag"));
      continue;
    }
    INFO(figure.key.toStdString());
    CHECK_FALSE(figure.explanations.empty());
  }
}

TEST_CASE("Sizes of a graded bag stand beside its verdict, also before a grain is wanted", "[verdict]") {
  OpenWindow open;
  BenchState state = dusty_bag_bench();
  state.band_from.clear();
  open.bench.open(state);
  const auto figures = verdict_view(open.bench).figures.figures;
  const auto found = std::ranges::find(figures, QStringLiteral("verdict_d50"), &Figure::key);
  REQUIRE(found != figures.end());
  const auto half = percentile(*open.bench.evaluation().components[0].grading(), 50);
  REQUIRE(half);
  CHECK(found->value == to_local(grain_size_text(half, UnitSystem::metric)));
  CHECK_FALSE(found->explanations.empty());
}

TEST_CASE("A second sample over an empty pan leaves the fineness modulus in sight, though some was lost", "[verdict]") {
  Bench bench(test_catalogue());
  Surroundings around = bench.surroundings();
  around.laboratory_figures = true;
  bench.set_surroundings(std::move(around));
  BenchState state = dusty_bag_bench();
  state.components[0] = finished_component(QStringLiteral("D-1"), QStringLiteral("pumice"), {{"4.75", "0"}, {"2.36", "300"}, {"1.18", "198"}}, "0", "500");
  bench.open(state);
  const auto modulus = [&] {
    const VerdictView view = verdict_view(bench);
    const auto& figures = view.laboratory.figures;
    const auto found = std::ranges::find(figures, QStringLiteral("laboratory_fineness"), &Figure::key);
    REQUIRE(found != figures.end());
    return found->value;
  };
  CHECK(modulus() == to_local("4.60"));
  state.components[0].sheet.replicates = {{{QStringLiteral("0"), QStringLiteral("300"), QStringLiteral("198")}, QStringLiteral("0"), QStringLiteral("500")}};
  bench.open(state);
  REQUIRE(bench.evaluation().components[0].pooled);
  CHECK(modulus() == to_local("4.60"));
}

namespace {

/// "68.2 %" with "66 - 70 %" below it: the range is that of the draws, to a whole percent or to a tenth, and holds the figure.
void check_share_cell(const QTableWidgetItem& cell, const Range& drawn) {
  static const QRegularExpression number(QStringLiteral("[0-9]+([.,][0-9]+)?"));
  std::vector<double> read;
  for (auto found = number.globalMatch(cell.text()); found.hasNext();) read.push_back(found.next().captured().replace(u',', u'.').toDouble());
  INFO(cell.text().toStdString());
  REQUIRE(read.size() == 3);
  CHECK_THAT(read[1], Catch::Matchers::WithinAbs(100 * drawn.low, 0.501));
  CHECK_THAT(read[2], Catch::Matchers::WithinAbs(100 * drawn.high, 0.501));
  CHECK(read[1] < read[2]);
  CHECK(read[1] <= read[0]);
  CHECK(read[0] <= read[2]);
}

}  // namespace

TEST_CASE("Every figure of screening and of the openings to choose has its range below it", "[verdict][ranges][rounds]") {
  OpenWindow open;
  open.bench.open(dusty_bag_bench());
  open.trigger("action_show_verdict");
  open.window.ranges().finish();
  QApplication::processEvents();
  const TestRanges* ranges = open.window.ranges().test();
  REQUIRE(ranges != nullptr);
  const auto* fractions = open.find<QTableWidget>("verdict_fractions");
  REQUIRE(ranges->fractions.size() == static_cast<std::size_t>(fractions->rowCount()));
  for (int row = 0; row < fractions->rowCount(); ++row) {
    const FractionRange& range = ranges->fractions[static_cast<std::size_t>(row)];
    CHECK(range.share.low < range.share.high);
    check_share_cell(*fractions->item(row, 1), range.share);
    REQUIRE(range.loose_per_loose);
    CHECK(fractions->item(row, 2)->text().contains(QStringLiteral("\u2013")));
    // The sheet belongs to no bag, so nothing is known of its litres nor how sure they are.
    CHECK(fractions->item(row, 3)->text() == QStringLiteral("\u2013\n\u2013"));
  }
  const auto* openings = open.find<QTableWidget>("verdict_openings");
  REQUIRE(ranges->openings.size() == static_cast<std::size_t>(openings->rowCount()));
  for (int row = 0; row < openings->rowCount(); ++row) {
    const OpeningRange& range = ranges->openings[static_cast<std::size_t>(row)];
    check_share_cell(*openings->item(row, 1), range.kept);
    check_share_cell(*openings->item(row, 2), range.usable);
    check_share_cell(*openings->item(row, 3), range.dust);
    CHECK(openings->item(row, 4)->text().contains(QLocale().toString(qRound(100 * range.takes))));
  }
  // Both lines are seen.
  CHECK(fractions->rowHeight(0) >= 2 * fractions->fontMetrics().height());
}
