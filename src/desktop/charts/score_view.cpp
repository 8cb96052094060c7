#include "score_view.hpp"

#include <QEvent>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QSizePolicy>
#include <algorithm>
#include <cmath>

#include "curve_look.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr double score_gap = 6;
constexpr double widest_plot = 0.6;  // of the picture; the rest is for words
constexpr int fine_look = 0;
constexpr int coarse_look = 1;

bool is_coarse_test(const ComparedTest& test) { return in_mm(test.air.characteristic_size) > coarse_from_mm; }

PredictionScores scores_of(const std::vector<ComparedTest>& tests) {
  std::vector<PredictedAndMeasured> pairs;
  for (const ComparedTest& test : tests) pairs.push_back(test.air);
  return score(pairs);
}

QString score_points(double share) { return QLocale().toString(100 * share, 'f', 1); }

QString words_for_score(const PredictionScore& score) {
  const QString amount = score_points(std::abs(score.bias));
  return (score.bias < 0 ? ScoreView::tr("predicted %1 points too low on average, %2 points root mean square, %n test(s)", nullptr, static_cast<int>(score.count))
                         : ScoreView::tr("predicted %1 points too high on average, %2 points root mean square, %n test(s)", nullptr, static_cast<int>(score.count)))
      .arg(amount, score_points(score.rmse));
}

// Title and scale do not touch: half of the uppermost percents stands above the plot.
double above_score_plot(const QFontMetricsF& metrics) { return 1.4 * metrics.height() + 2; }
double below_score_plot(const QFontMetricsF& metrics) { return 2 * metrics.height() + 4; }
double left_of_score_plot(const QFontMetricsF& metrics) { return metrics.horizontalAdvance(QStringLiteral("100 %")) + 2 * score_gap; }
double least_score_side(const QFontMetricsF& metrics) { return 4 * metrics.height(); }

QString score_share(Porosity value) { return to_local(percent_text(value.value())); }

}  // namespace

QString score_sentence(const std::vector<ComparedTest>& tests) {
  const PredictionScores scores = scores_of(tests);
  if (!scores.all) return ScoreView::tr("No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.");
  QStringList sentences{ScoreView::tr("Air that drains free: %1.").arg(words_for_score(*scores.all))};
  if (scores.fine) sentences << ScoreView::tr("Fine, up to %1: %2.").arg(to_local(size_text(aperture_mm(coarse_from_mm), UnitSystem::metric)), words_for_score(*scores.fine));
  if (scores.coarse) sentences << ScoreView::tr("Coarse: %1.").arg(words_for_score(*scores.coarse));
  return sentences.join(u' ');
}

PictureTable score_table(const std::vector<ComparedTest>& tests) {
  PictureTable table;
  table.heading << ScoreView::tr("pot test") << ScoreView::tr("mix") << ScoreView::tr("grain") << ScoreView::tr("predicted air") << ScoreView::tr("measured air") << ScoreView::tr("points off");
  for (const ComparedTest& test : tests) {
    table.rows.push_back({to_qt(test.test), to_qt(test.mix), is_coarse_test(test) ? ScoreView::tr("coarse") : ScoreView::tr("fine"), score_share(test.air.predicted), score_share(test.air.measured),
                          score_points(test.air.predicted.value() - test.air.measured.value())});
  }
  return table;
}

PictureTable score_data(const std::vector<ComparedTest>& tests) {
  PictureTable table;
  table.heading << QStringLiteral("pot_test") << QStringLiteral("mix") << QStringLiteral("characteristic_size_mm") << QStringLiteral("predicted_air") << QStringLiteral("measured_air");
  const auto plain = [](double value) { return QLocale::c().toString(value, 'f', 4); };
  for (const ComparedTest& test : tests) {
    table.rows.push_back({to_qt(test.test), to_qt(test.mix), plain(in_mm(test.air.characteristic_size)), plain(test.air.predicted.value()), plain(test.air.measured.value())});
  }
  return table;
}

ScoreView::ScoreView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("score_view"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Pot tests: predicted against measured air"));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  set_tests({});
}

void ScoreView::set_tests(std::vector<ComparedTest> tests) {
  tests_ = std::move(tests);
  setAccessibleDescription(score_sentence(tests_));
  updateGeometry();
  update();
}

QSize ScoreView::minimumSizeHint() const {
  const QFontMetricsF metrics(font());
  return {280, static_cast<int>(std::ceil(above_score_plot(metrics) + least_score_side(metrics) + below_score_plot(metrics) + 2 * score_gap))};
}

double ScoreView::side_of_plot(int width) const {
  const QFontMetricsF metrics(font());
  const double in_sight = parentWidget() != nullptr ? parentWidget()->height() : 0;
  const double highest = in_sight - 2 * score_gap - above_score_plot(metrics) - below_score_plot(metrics);
  return std::min(std::max(least_score_side(metrics), highest), (width - 2 * score_gap) * widest_plot - left_of_score_plot(metrics));
}

int ScoreView::heightForWidth(int width) const {
  const QFontMetricsF metrics(font());
  const double beside = width - 5 * score_gap - left_of_score_plot(metrics) - side_of_plot(width);
  const double words = metrics.boundingRect(QRectF(0, 0, std::max(1.0, beside), 1e6), Qt::TextWordWrap, score_sentence(tests_)).height();
  const double legend = 2 * (metrics.height() + score_gap);
  return std::max(minimumSizeHint().height(), static_cast<int>(std::ceil(above_score_plot(metrics) + legend + words + 3 * score_gap)));
}

void ScoreView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (parentWidget() != nullptr) parentWidget()->installEventFilter(this);
}

// The plot is as high as what is in sight, which changes without the view's own size.
bool ScoreView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parentWidget() && event->type() == QEvent::Resize) update();
  return QWidget::eventFilter(watched, event);
}

void ScoreView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(font());
  const QRectF room = QRectF(rect()).adjusted(score_gap, score_gap, -score_gap, -score_gap);
  const QString sentence = score_sentence(tests_);
  const QColor ink = current_colours().palette.color(QPalette::Text);
  if (tests_.empty()) {
    painter.setPen(current_colours().muted);
    painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap, sentence);
    return;
  }
  double most = 0.1;
  for (const ComparedTest& test : tests_) most = std::max({most, test.air.predicted.value(), test.air.measured.value()});
  const int ticks = static_cast<int>(std::ceil(most * 10 + 0.05));
  const double side = side_of_plot(width());
  const QRectF plot(left_of_score_plot(metrics), room.top() + above_score_plot(metrics), side, side);
  const auto x_of = [&](double value) { return plot.left() + plot.width() * value * 10 / ticks; };
  const auto y_of = [&](double value) { return plot.bottom() - plot.height() * value * 10 / ticks; };
  for (int tick = 0; tick <= ticks; ++tick) {
    const double at = tick / 10.0;
    painter.setPen(QPen(current_colours().grid, 1));
    painter.drawLine(QPointF(plot.left(), y_of(at)), QPointF(plot.right(), y_of(at)));
    painter.drawLine(QPointF(x_of(at), plot.top()), QPointF(x_of(at), plot.bottom()));
    painter.setPen(current_colours().muted);
    const QString text = tr("%1 %").arg(QLocale().toString(10 * tick));
    const bool end = tick == 0 || tick == ticks;
    if (end || side / ticks >= 0.85 * metrics.height())
      painter.drawText(QRectF(0, y_of(at) - metrics.height() / 2, plot.left() - score_gap, metrics.height()), Qt::AlignRight | Qt::AlignVCenter, text);
    const double wide = metrics.horizontalAdvance(text);
    // Left of the first stands the scale up, right of the last the words.
    const double from = std::clamp(x_of(at) - wide / 2, plot.left(), std::max(plot.left(), plot.right() + 2 * score_gap - wide));
    if (end || side / ticks > 1.5 * wide + score_gap) painter.drawText(QPointF(from, plot.bottom() + metrics.ascent() + 2), text);
  }
  painter.setPen(ink);
  painter.drawText(QPointF(score_gap, room.top() + metrics.ascent()), tr("measured air"));
  const QString across = tr("predicted air");
  painter.drawText(QPointF(std::max(score_gap, plot.right() - metrics.horizontalAdvance(across)), plot.bottom() + metrics.height() + metrics.ascent() + 4), across);
  painter.setPen(QPen(ink, 1, Qt::DashLine));
  painter.drawLine(QPointF(x_of(0), y_of(0)), QPointF(x_of(ticks / 10.0), y_of(ticks / 10.0)));
  for (const ComparedTest& test : tests_) {
    painter.save();
    painter.translate(QPointF(x_of(test.air.predicted.value()), y_of(test.air.measured.value())) - QPointF(7, 7));
    paint_swatch(painter, look_of(is_coarse_test(test) ? coarse_look : fine_look), QSize(14, 14));
    painter.restore();
  }
  const QRectF beside(plot.right() + 4 * score_gap, plot.top(), room.right() - plot.right() - 4 * score_gap, room.bottom() - plot.top());
  double y = beside.top();
  const auto legend = [&](int look, const QString& text) {
    painter.save();
    painter.translate(beside.left(), y);
    paint_swatch(painter, look_of(look), QSize(34, static_cast<int>(metrics.height())));
    painter.restore();
    painter.setPen(ink);
    painter.drawText(QPointF(beside.left() + 34 + score_gap, y + metrics.ascent()), text);
    y += metrics.height() + score_gap;
  };
  legend(fine_look, tr("fine grain"));
  legend(coarse_look, tr("coarse grain"));
  painter.setPen(ink);
  painter.drawText(QRectF(beside.left(), y + score_gap, beside.width(), room.bottom() - y - score_gap), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, sentence);
}

}  // namespace gritwright::desktop
