// Ranges beside the figures on the bench: from the draws, live, and with what would narrow them.
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QToolButton>
#include <QRegularExpression>

#include "charts/grading_chart.hpp"
#include "models/range_keeper.hpp"
#include "pages/mix_page.hpp"
#include "pages/sieving_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "widgets/explanation_popup.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

struct RangeWindow : OpenWindow {
  explicit RangeWindow(Start start = Start::mixes) : OpenWindow(start) {
    bench.open(complete_bench());
    QApplication::processEvents();
  }
  RangeKeeper& keeper() { return window.ranges(); }
  QString range(const char* figure) {
    QApplication::processEvents();
    return find<QLabel>((std::string("range_") + figure).c_str())->text();
  }
};

/// Both ends of "15.9 – 21.3 %" as numbers.
std::pair<double, double> ends_of(const QString& range) {
  static const QRegularExpression number(QStringLiteral("[0-9]+([.,][0-9]+)?"));
  auto found = number.globalMatch(range);
  const auto next = [&] {
    REQUIRE(found.hasNext());
    return found.next().captured().replace(u',', u'.').toDouble();
  };
  const double low = next();
  return {low, next()};
}

}  // namespace

TEST_CASE("Every figure of a mix in its pot has a range or a dash", "[ranges]") {
  RangeWindow open;
  open.keeper().finish();
  const auto& water = *open.bench.evaluation().water;
  const auto [low, high] = ends_of(open.range("air_filled_porosity"));
  CHECK(low < 100 * water.air_filled_porosity.value());
  CHECK(high > 100 * water.air_filled_porosity.value());
  // The ends are those of the draws themselves.
  const BenchRanges* ranges = open.keeper().mix();
  REQUIRE(ranges != nullptr);
  CHECK(ranges->draws == standing_sample.draws);
  CHECK_THAT(low, Catch::Matchers::WithinAbs(100 * ranges->mix.of(MixFigure::air_filled_porosity)->low, 0.051));
  CHECK_THAT(high, Catch::Matchers::WithinAbs(100 * ranges->mix.of(MixFigure::air_filled_porosity)->high, 0.051));
  for (const char* figure : {"container_capacity", "available_in_pot", "trapped_air", "perched_height_cm", "volume_ml", "wet_mass_g", "bulk_density_g_l",
                             "voids_between_grains", "total_porosity", "grain_water", "measure_out_1", "mixed_litres", "d50"}) {
    INFO(figure);
    const auto [from, to] = ends_of(open.range(figure));
    CHECK(from < to);
  }
  // No band is typed but the bench's own.
  open.bench.edit(QStringLiteral("pot"), {}, [](BenchState& state) { state.pot.depth.clear(); });
  CHECK(open.range("air_filled_porosity") == QStringLiteral("\u2013"));
  CHECK(open.range("d50") != QStringLiteral("\u2013"));
}

TEST_CASE("A slider that moves has ranges from the beginning of the same sample, at once", "[ranges][rounds]") {
  RangeWindow open;
  open.keeper().finish();
  const QString still = open.range("air_filled_porosity");
  open.find<QSlider>("parts_slider_1")->setValue(40);
  // No waiting: what is shown belongs to the mix that is shown.
  const BenchRanges* moving = open.keeper().mix();
  REQUIRE(moving != nullptr);
  CHECK(moving->draws == moving_sample.draws);
  CHECK(moving->of.mix.components[0].parts.value() == 4);
  CHECK(open.range("air_filled_porosity") != still);
  const auto [low, high] = ends_of(open.range("air_filled_porosity"));
  CHECK_THAT(low, Catch::Matchers::WithinAbs(100 * moving->mix.of(MixFigure::air_filled_porosity)->low, 0.051));
  QTRY_VERIFY(open.keeper().mix()->draws == standing_sample.draws);
  const auto [low_still, high_still] = ends_of(open.range("air_filled_porosity"));
  CHECK_THAT(low_still, Catch::Matchers::WithinAbs(low, 1.5));
  CHECK_THAT(high_still, Catch::Matchers::WithinAbs(high, 1.5));
}

TEST_CASE("The chart of the mix has a ribbon that holds its curve", "[ranges]") {
  RangeWindow open;
  open.keeper().finish();
  const GradingPicture& picture = open.window.mix_page().chart().picture();
  REQUIRE(picture.ribbon_low_mm_percent.size() == picture.ribbon_high_mm_percent.size());
  REQUIRE(picture.ribbon_low_mm_percent.size() > 2);
  const Grading& blend = picture.series.back().grading;
  REQUIRE(blend.points.size() == picture.ribbon_low_mm_percent.size());
  for (std::size_t i = 0; i < blend.points.size(); ++i) {
    CHECK(picture.ribbon_low_mm_percent[i].x() == in_mm(blend.points[i].aperture));
    CHECK(picture.ribbon_low_mm_percent[i].y() <= in_percent(blend.points[i].passing) + 1e-9);
    CHECK(picture.ribbon_high_mm_percent[i].y() >= in_percent(blend.points[i].passing) - 1e-9);
  }
}

TEST_CASE("What would narrow it most is named, with the range before and after", "[ranges]") {
  RangeWindow open;
  open.keeper().finish();
  auto* words = open.find<QLabel>("narrowing");
  CHECK(words->isVisible());
  CHECK(words->text().contains(QStringLiteral("pot test")));
  const BenchRanges* ranges = open.keeper().mix();
  REQUIRE_FALSE(ranges->air.empty());
  CHECK(ranges->air.front().half_range_then < ranges->air.front().half_range_now);
}

TEST_CASE("How so? tells the middle of the range too", "[ranges]") {
  RangeWindow open;
  open.keeper().finish();
  open.find<QToolButton>("how_air_filled_porosity")->click();
  auto* popup = open.window.findChild<QFrame*>(QStringLiteral("explanation_popup"));
  REQUIRE(popup != nullptr);
  CHECK(popup->findChild<QLabel*>(QStringLiteral("explanation_text"))->text().contains(QStringLiteral("5, 50 and 95 of 100 cases")));
  popup->close();
}

TEST_CASE("A finished sieve test has a ribbon, and its verdict says how sure it is", "[ranges]") {
  RangeWindow open(Start::sieving);
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("6");
  });
  QApplication::processEvents();
  open.keeper().finish();
  QApplication::processEvents();
  const GradingPicture& picture = open.window.sieving_page().chart().picture();
  REQUIRE(picture.ribbon_low_mm_percent.size() > 2);
  for (std::size_t i = 0; i < picture.ribbon_low_mm_percent.size(); ++i) CHECK(picture.ribbon_low_mm_percent[i].y() <= picture.ribbon_high_mm_percent[i].y());
  const auto [low, high] = ends_of(open.range("verdict_in_band"));
  CHECK(low < high);
  CHECK(open.find<QLabel>("verdict_certainty")->text().contains(QStringLiteral("100 cases")));
  const auto [smaller, larger] = ends_of(open.range("verdict_d50"));
  CHECK(smaller < larger);
  // One more gram typed: until the new ranges are there, no old one is shown.
  open.bench.edit(QStringLiteral("pan"), {}, [](BenchState& state) { state.components[0].sheet.rows[2].retained = QStringLiteral("121"); });
  CHECK(open.range("verdict_in_band") == QStringLiteral("\u2013"));
  open.keeper().finish();
  QApplication::processEvents();
  CHECK(open.range("verdict_in_band") != QStringLiteral("\u2013"));
}

TEST_CASE("Laboratory figures have their range beside them, a dash where the sieves may not reach", "[ranges]") {
  RangeWindow open(Start::sieving);
  open.window.record_pages()->set_laboratory_figures(true);
  open.trigger("action_show_verdict");
  open.keeper().finish();
  QApplication::processEvents();
  REQUIRE(open.keeper().test() != nullptr);
  const LaboratoryRanges& ranges = open.keeper().test()->laboratory;
  REQUIRE(ranges.mean_phi);
  const auto [low, high] = ends_of(open.range("laboratory_mean_phi").remove(u'-').remove(QChar(0x2212)));
  CHECK_THAT(std::min(low, high), Catch::Matchers::WithinAbs(std::min(std::abs(ranges.mean_phi->low), std::abs(ranges.mean_phi->high)), 0.0051));
  // The pan holds so little that 5 % lies between the sieves in every draw or in none: either way it is said.
  CHECK((open.range("laboratory_sorting") == QStringLiteral("\u2013")) == !ranges.sorting_phi.has_value());
}

TEST_CASE("Two samples of a bag have the ranges of both together beside their verdict", "[ranges]") {
  RangeWindow open(Start::sieving);
  const auto width_of_verdict = [&] {
    open.keeper().finish();
    QApplication::processEvents();
    const TestRanges* ranges = open.keeper().test();
    REQUIRE(ranges != nullptr);
    REQUIRE(ranges->verdict);
    const auto [low, high] = ends_of(open.range("verdict_in_band"));
    CHECK_THAT(low, Catch::Matchers::WithinAbs(100 * ranges->verdict->in_band.low, 0.051));
    CHECK_THAT(high, Catch::Matchers::WithinAbs(100 * ranges->verdict->in_band.high, 0.051));
    CHECK(open.find<QLabel>("verdict_certainty")->text().contains(QStringLiteral("100 cases")));
    return ranges->verdict->in_band.high - ranges->verdict->in_band.low;
  };
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("6");
  });
  const double of_one = width_of_verdict();
  open.bench.edit(QStringLiteral("second sample"), {}, [](BenchState& state) {
    SieveSheet& sheet = state.components[0].sheet;
    ReplicateText again;
    for (const PanText& row : sheet.rows) again.retained.push_back(row.retained);
    again.pan = sheet.pan.retained;
    again.dry_mass = sheet.dry_mass;
    sheet.replicates = {again};
  });
  REQUIRE(open.bench.evaluation().components[0].pooled);
  CHECK(width_of_verdict() < 0.8 * of_one);
}
