#include "grading_chart.hpp"

#include <QGraphicsLayout>
#include <QLocale>
#include <QMouseEvent>
#include <QToolTip>
#include <QtCharts/QChart>
#include <QtCharts/QLegend>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "chart_frame.hpp"
#include "curve_look.hpp"
#include "gritwright/models/grading_curve.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

GradingChart::GradingChart(QWidget* parent)
    : QChartView(new QChart, parent), size_axis_(new QValueAxis(this)), percent_axis_(new QValueAxis(this)), frame_(new ChartFrame(chart())) {
  setRenderHint(QPainter::Antialiasing);
  setFrameShape(NoFrame);
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(280, 180);
  setAccessibleName(tr("Grading chart"));
  chart()->setAnimationOptions(QChart::NoAnimation);
  chart()->setBackgroundRoundness(0);
  chart()->setPlotAreaBackgroundVisible(false);
  chart()->setMargins({0, 0, 0, 0});
  chart()->layout()->setContentsMargins(0, 0, 0, 0);
  chart()->legend()->hide();
  chart()->addAxis(size_axis_, Qt::AlignBottom);
  chart()->addAxis(percent_axis_, Qt::AlignLeft);
  percent_axis_->setRange(least_shown_percent, most_shown_percent);
  // The frame draws both axes.
  size_axis_->setVisible(false);
  percent_axis_->setVisible(false);
  dress();
}

void GradingChart::ensure_curves(std::size_t count) {
  while (curves_.size() < count) {
    const Curve curve{new QLineSeries(this), new QScatterSeries(this)};
    for (QXYSeries* series : {static_cast<QXYSeries*>(curve.line), static_cast<QXYSeries*>(curve.points)}) {
      chart()->addSeries(series);
      series->attachAxis(size_axis_);
      series->attachAxis(percent_axis_);
    }
    curves_.push_back(curve);
  }
}

bool GradingChart::same_curves(const GradingPicture& picture) const {
  return std::ranges::equal(picture.series, picture_.series, [](const GradingSeries& now, const GradingSeries& before) {
    return now.name == before.name && now.look == before.look && now.finished == before.finished && now.faint == before.faint;
  });
}

void GradingChart::show_picture(const GradingPicture& picture, const QString& sentence) {
  const bool same = same_curves(picture);
  const bool same_axis = picture.least_mm == picture_.least_mm && picture.most_mm == picture_.most_mm && size_axis_->max() > size_axis_->min();
  picture_ = picture;
  frame_->set(&picture_);
  ensure_curves(picture.series.size());
  if (!same_axis) set_axis();
  for (std::size_t i = 0; i < curves_.size(); ++i) {
    QList<QPointF> points;
    if (i < picture.series.size()) {
      for (const QPointF& point : picture.series[i].points_mm_percent) points.append(QPointF(std::log10(point.x()), point.y()));
    }
    // A curve that stayed where it was is not laid out anew: while parts change only that of the mix moves.
    if (curves_[i].line->points() != points) curves_[i].line->replace(points);
    if (i < picture.series.size() && picture.series[i].faint) points.clear();
    if (curves_[i].points->points() != points) curves_[i].points->replace(points);
  }
  if (!same) {
    for (std::size_t i = 0; i < picture.series.size(); ++i) dress_curve(curves_[i], picture.series[i]);
    lay_out();
  }
  setAccessibleDescription(sentence);
}

void GradingChart::set_axis() {
  const QPointF ends = zoom_.value_or(QPointF(std::log10(picture_.least_mm), std::log10(picture_.most_mm)));
  size_axis_->setRange(ends.x(), ends.y());
  frame_->dress();
}

void GradingChart::zoom(double factor, double around_mm) {
  const double whole_from = std::log10(picture_.least_mm);
  const double whole_to = std::log10(picture_.most_mm);
  const double around = std::clamp(std::log10(around_mm), size_axis_->min(), size_axis_->max());
  const QPointF ends(std::max(whole_from, around - (around - size_axis_->min()) * factor), std::min(whole_to, around + (size_axis_->max() - around) * factor));
  constexpr double nearest = 0.1;  // a quarter of an octave or so; nearer there is nothing to see
  if (ends.y() - ends.x() < nearest) return;
  constexpr double same = 1e-9;
  zoom_ = ends.x() <= whole_from + same && ends.y() >= whole_to - same ? std::nullopt : std::optional(ends);
  set_axis();
}

void GradingChart::show_all() {
  zoom_.reset();
  set_axis();
}

void GradingChart::wheelEvent(QWheelEvent* event) {
  if (!chart()->plotArea().contains(event->position())) return event->ignore();
  constexpr double step = 0.8;
  zoom(event->angleDelta().y() > 0 ? step : 1 / step, std::pow(10.0, chart()->mapToValue(event->position()).x()));
  event->accept();
}

void GradingChart::keyPressEvent(QKeyEvent* event) {
  constexpr double step = 0.8;
  const double middle_mm = std::pow(10.0, (size_axis_->min() + size_axis_->max()) / 2);
  if (event->key() == Qt::Key_Plus) zoom(step, middle_mm);
  else if (event->key() == Qt::Key_Minus) zoom(1 / step, middle_mm);
  else if (event->key() == Qt::Key_0) show_all();
  else QChartView::keyPressEvent(event);
}

void GradingChart::dress_curve(const Curve& curve, const GradingSeries& series) {
  const bool blend = series.look < 0;
  const CurveLook look = look_of(series.look);
  QPen pen = line_pen(look, blend ? 3.0 : 2.0);
  if (series.faint) pen = faint_pen(look.colour);
  curve.line->setPen(pen);
  curve.line->setName(series.name);
  curve.points->setColor(look.colour);
  curve.points->setBorderColor(current_colours().palette.color(QPalette::Base));
  curve.points->setMarkerSize(blend ? 6 : 10);
  curve.points->setMarkerShape(chart_marker(look.marker));
}

void GradingChart::dress() {
  const QColor ground = current_colours().palette.color(QPalette::Base);
  chart()->setBackgroundBrush(ground);
  setBackgroundBrush(ground);
  chart()->setFont(font());
  for (std::size_t i = 0; i < curves_.size() && i < picture_.series.size(); ++i) dress_curve(curves_[i], picture_.series[i]);
  lay_out();
}

void GradingChart::lay_out() {
  chart()->setPlotArea(frame_->plot_area(size(), font()));
  frame_->dress();
}

void GradingChart::resizeEvent(QResizeEvent* event) {
  QChartView::resizeEvent(event);
  lay_out();
}

void GradingChart::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) dress();
}

QString GradingChart::reading_at(const QPointF& position) const {
  if (!chart()->plotArea().contains(position)) return {};
  const double mm = std::pow(10.0, chart()->mapToValue(position).x());
  QStringList lines{tr("%1 mm").arg(QLocale().toString(mm, 'g', 3))};
  for (const GradingSeries& series : picture_.series) {
    if (series.faint) continue;
    if (const auto passing = GradingCurve(series.grading).passing_at(aperture_mm(mm))) {
      lines << tr("%1: %2 passes").arg(series.name, to_local(percent_text(passing->value(), 0)));
    }
  }
  return lines.join(u'\n');
}

void GradingChart::mouseMoveEvent(QMouseEvent* event) {
  QChartView::mouseMoveEvent(event);
  QToolTip::showText(event->globalPosition().toPoint(), reading_at(event->position()), this);
}

}  // namespace gritwright::desktop
