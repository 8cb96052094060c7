#include "grading_series.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <functional>

#include "gritwright/models/grading_curve.hpp"
#include "models/bench_ranges.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class SeriesText {
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

/// The component's own curve; with several finished samples the one of all taken together, and each sample faint.
void add_component(GradingPicture& picture, const Bench& bench, std::size_t index, bool with_samples) {
  const ComponentEvaluation& component = bench.evaluation().components[index];
  const Grading* grading = component.grading();
  if (grading == nullptr) return;
  const QString& name = bench.state().components[index].name;
  const auto faint = [&](const QString& sample, const Grading& of) {
    GradingSeries series = series_of(sample, of, static_cast<int>(index));
    series.faint = true;
    picture.faint_look = series.look;
    picture.series.push_back(std::move(series));
  };
  if (with_samples && component.pooled) {
    const auto& agreement = component.pooled->agreement;
    for (auto sieve = agreement.rbegin(); sieve != agreement.rend(); ++sieve) {
      picture.ribbon_low_mm_percent.emplace_back(in_mm(sieve->aperture), in_percent(sieve->least));
      picture.ribbon_high_mm_percent.emplace_back(in_mm(sieve->aperture), in_percent(sieve->most));
    }
    picture.faint_words << SeriesText::tr("each sample");
    if (component.analysis) faint(SeriesText::tr("%1, sample 1").arg(name), component.analysis->grading);
    for (std::size_t i = 0; i < component.replicates.size(); ++i) {
      if (component.replicates[i].analysis) faint(SeriesText::tr("%1, sample %2").arg(name).arg(i + 2), component.replicates[i].analysis->grading);
    }
  }
  GradingSeries series = series_of(name, *grading, static_cast<int>(index));
  series.finished = component.state == SheetState::finished;
  add_sieves(picture.sieves_mm, series);
  picture.series.push_back(std::move(series));
}

std::optional<QPointF> marked_point(const Bench& bench, int marked_row) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size() || marked_row < 0) return std::nullopt;
  const auto& analysis = bench.evaluation().components[index].analysis;
  if (!analysis || marked_row >= static_cast<int>(analysis->sieves.size())) return std::nullopt;
  const SieveShare& sieve = analysis->sieves[static_cast<std::size_t>(marked_row)];
  return QPointF(in_mm(sieve.aperture), in_percent(sieve.passing));
}

void add_earlier(GradingPicture& picture, const Bench& bench) {
  if (!bench.surroundings().earlier.empty()) picture.faint_words << SeriesText::tr("earlier bags");
  for (const EarlierTest& test : bench.surroundings().earlier) {
    GradingSeries series = series_of(test.bag, test.grading, bench.current_component());
    series.faint = true;
    picture.faint_look = series.look;
    picture.series.push_back(std::move(series));
  }
}

}  // namespace

GradingPicture grading_picture(const Bench& bench, int marked_row, Curves curves) {
  GradingPicture picture;
  const BenchEvaluation& evaluation = bench.evaluation();
  if (curves == Curves::on_screen) {
    add_earlier(picture, bench);
    const auto index = static_cast<std::size_t>(bench.current_component());
    if (index < evaluation.components.size()) add_component(picture, bench, index, true);
    for (const Aperture& owned : bench.surroundings().owned_sieves) picture.sieves_mm.push_back(in_mm(owned));
  } else {
    for (std::size_t i = 0; i < evaluation.components.size(); ++i) add_component(picture, bench, i, false);
    if (evaluation.mix_grading && evaluation.mixed.size() > 1) picture.series.push_back(series_of(SeriesText::tr("the mix"), *evaluation.mix_grading, -1));
  }
  picture.marked_mm_percent = marked_point(bench, marked_row);
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

namespace {

void add_to_ribbon(GradingPicture& picture, Aperture sieve, const Range& passing) {
  picture.ribbon_low_mm_percent.emplace_back(in_mm(sieve), 100 * passing.low);
  picture.ribbon_high_mm_percent.emplace_back(in_mm(sieve), 100 * passing.high);
}

}  // namespace

void add_ribbon(GradingPicture& picture, const BenchRanges* ranges) {
  if (ranges == nullptr || !picture.ribbon_low_mm_percent.empty()) return;
  for (std::size_t i = 0; i < ranges->sieves.size(); ++i) add_to_ribbon(picture, ranges->sieves[i], ranges->mix.passing[i]);
}

void add_ribbon(GradingPicture& picture, const TestRanges* ranges) {
  if (ranges == nullptr) return;
  picture.ribbon_low_mm_percent.clear();
  picture.ribbon_high_mm_percent.clear();
  const auto& points = ranges->of.sieved.grading.points;
  for (std::size_t i = 0; i < points.size(); ++i) add_to_ribbon(picture, points[i].aperture, ranges->curve.passing[i]);
}

QString grading_sentence(const Bench& bench, Curves which) {
  const GradingPicture picture = grading_picture(bench, -1, which);
  QStringList curves;
  int earlier = 0;
  for (const GradingSeries& series : picture.series) {
    if (series.faint) {
      ++earlier;
      continue;
    }
    const auto half = percentile(series.grading, 50);
    curves << (half ? SeriesText::tr("half of %1 is finer than %2").arg(series.name, to_local(grain_size_text(half, bench.units())))
                    : SeriesText::tr("%1 has no middle size inside its sieves").arg(series.name));
  }
  if (curves.isEmpty()) return SeriesText::tr("Grading chart, still empty: no sieve test has a curve yet.");
  const QString sentence = SeriesText::tr("Grading chart, percent passing over grain size: %1.").arg(comma_list(curves));
  return earlier == 0 ? sentence : sentence + u' ' + SeriesText::tr("%n faint curve(s) of single samples and earlier bags lie behind.", nullptr, earlier);
}

namespace {

PictureTable table_of(const GradingPicture& picture, const QString& sieve, const std::function<QString(double)>& size_of,
                      const std::function<QString(std::optional<double>)>& passing_of) {
  PictureTable table;
  table.heading << sieve;
  std::vector<GradingCurve> curves;
  for (const GradingSeries& series : picture.series) {
    table.heading << series.name;
    curves.emplace_back(series.grading);
  }
  if (curves.empty()) return table;
  for (auto mm = picture.sieves_mm.rbegin(); mm != picture.sieves_mm.rend(); ++mm) {
    QStringList row{size_of(*mm)};
    for (const GradingCurve& curve : curves) {
      const auto passing = curve.passing_at(aperture_mm(*mm));
      row << passing_of(passing ? std::optional(passing->value()) : std::nullopt);
    }
    table.rows.push_back(row);
  }
  return table;
}

}  // namespace

PictureTable grading_table(const Bench& bench, Curves curves) {
  return table_of(grading_picture(bench, -1, curves), SeriesText::tr("sieve"),
                  [&](double mm) { return to_local(size_text(aperture_mm(mm), bench.units())); },
                  [](std::optional<double> share) { return to_local(percent_text(share)); });
}

PictureTable grading_data(const Bench& bench, Curves curves) {
  return table_of(grading_picture(bench, -1, curves), QStringLiteral("aperture_mm"), [](double mm) { return QLocale::c().toString(mm, 'g', 6); },
                  [](std::optional<double> share) { return share ? QLocale::c().toString(in_percent(Passing(*share)), 'f', 2) : QString(); });
}

}  // namespace gritwright::desktop
