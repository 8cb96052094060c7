#include "grading_series.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "gritwright/models/grading_curve.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class Text {
  Q_DECLARE_TR_FUNCTIONS(GradingChart)
};

GradingSeries series_of(const QString& name, const Grading& grading, int look) {
  GradingSeries series{name, grading, {}, look, true};
  for (const GradingPoint& point : grading.points) series.points_mm_percent.emplace_back(in_mm(point.aperture), in_percent(point.passing));
  return series;
}

/// Analysis gradings hold the sieves weighed so far, so an unfinished curve simply ends at the last of them.
void add_sieves(std::vector<double>& sieves_mm, const GradingSeries& series) {
  for (const QPointF& point : series.points_mm_percent) sieves_mm.push_back(point.x());
}

}  // namespace

GradingPicture grading_picture(const Bench& bench, int marked_row) {
  GradingPicture picture;
  const BenchEvaluation& evaluation = bench.evaluation();
  for (std::size_t i = 0; i < evaluation.components.size(); ++i) {
    const ComponentEvaluation& component = evaluation.components[i];
    if (!component.analysis) continue;
    GradingSeries series = series_of(bench.state().components[i].name, component.analysis->grading, static_cast<int>(i));
    series.finished = component.state == SheetState::finished;
    add_sieves(picture.sieves_mm, series);
    if (static_cast<int>(i) == bench.current_component() && marked_row >= 0 &&
        marked_row < static_cast<int>(component.analysis->sieves.size())) {
      const SieveShare& sieve = component.analysis->sieves[static_cast<std::size_t>(marked_row)];
      picture.marked_mm_percent = QPointF(in_mm(sieve.aperture), in_percent(sieve.passing));
    }
    picture.series.push_back(std::move(series));
  }
  if (evaluation.mix_grading && evaluation.mixed.size() > 1) {
    picture.series.push_back(series_of(Text::tr("the mix"), *evaluation.mix_grading, -1));
  }
  if (evaluation.band) picture.band_mm = QPointF(in_mm(evaluation.band->from), in_mm(evaluation.band->to));
  std::ranges::sort(picture.sieves_mm);
  picture.sieves_mm.erase(std::unique(picture.sieves_mm.begin(), picture.sieves_mm.end()), picture.sieves_mm.end());
  if (picture.sieves_mm.empty()) {
    // Nothing weighed yet: the sieves of the sheet on screen, so that the axis is there before the curve.
    for (const double mm : {1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0}) picture.sieves_mm.push_back(mm);
  }
  constexpr double room = 1.25;  // so that the end points don't sit on the frame
  picture.least_mm = picture.sieves_mm.front() / room;
  picture.most_mm = picture.sieves_mm.back() * room;
  if (picture.band_mm) {
    if (picture.band_mm->x() > 0) picture.least_mm = std::min(picture.least_mm, picture.band_mm->x() / room);
    picture.most_mm = std::max(picture.most_mm, picture.band_mm->y() * room);
  }
  return picture;
}

QString grading_sentence(const Bench& bench) {
  const GradingPicture picture = grading_picture(bench, -1);
  if (picture.series.empty()) return Text::tr("Grading chart, still empty: no sieve test has a curve yet.");
  QStringList curves;
  for (const GradingSeries& series : picture.series) {
    const auto half = percentile(series.grading, 50);
    curves << (half ? Text::tr("half of %1 is finer than %2").arg(series.name, to_local(size_text(half, bench.units())))
                    : Text::tr("%1 has no middle size inside its sieves").arg(series.name));
  }
  return Text::tr("Grading chart, percent passing over grain size: %1.").arg(curves.join(QStringLiteral(", ")));
}

GradingTable grading_table(const Bench& bench) {
  const GradingPicture picture = grading_picture(bench, -1);
  GradingTable table;
  table.heading << Text::tr("sieve");
  std::vector<GradingCurve> curves;
  for (const GradingSeries& series : picture.series) {
    table.heading << series.name;
    curves.emplace_back(series.grading);
  }
  if (curves.empty()) return table;
  for (auto mm = picture.sieves_mm.rbegin(); mm != picture.sieves_mm.rend(); ++mm) {
    QStringList row{to_local(size_text(aperture_mm(*mm), bench.units()))};
    for (const GradingCurve& curve : curves) {
      const auto passing = curve.passing_at(aperture_mm(*mm));
      row << to_local(percent_text(passing ? std::optional(passing->value()) : std::nullopt));
    }
    table.rows.push_back(row);
  }
  return table;
}

}  // namespace gritwright::desktop
