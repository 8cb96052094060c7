#include "chart_frame.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <QPaintEngine>
#include <QPainter>
#include <QtCharts/QChart>
#include <algorithm>
#include <array>
#include <cmath>

#include "curve_look.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

class ChartFrameText {
  Q_DECLARE_TR_FUNCTIONS(GradingChart)
};

constexpr double key_gap = 6;
constexpr double swatch_width = 34;

QString shown_name(const GradingSeries& series) { return series.finished ? series.name : ChartFrameText::tr("%1 (so far)").arg(series.name); }

}  // namespace

ChartFrame::ChartFrame(QChart* chart) : QGraphicsItem(chart), chart_(chart) { setZValue(0.5); }

void ChartFrame::set(const GradingPicture* picture) {
  picture_ = picture;
  if (!pixmap_.isNull() && still() != painted_) pixmap_ = {};
  update();
}

void ChartFrame::dress() {
  pixmap_ = {};
  update();
}

ChartFrame::Still ChartFrame::still() const {
  Still still{{}, picture_->faint_words, picture_->faint_look, picture_->sieves_mm, picture_->band_mm};
  for (const GradingSeries& series : picture_->series)
    if (!series.faint) still.entries.emplace_back(shown_name(series), series.look);
  return still;
}

QRectF ChartFrame::boundingRect() const { return chart_->rect(); }

bool ChartFrame::is_of_shown_curve(double mm) const {
  return std::ranges::any_of(picture_->series, [mm](const GradingSeries& series) {
    return !series.faint && std::ranges::any_of(series.points_mm_percent, [mm](const QPointF& point) { return std::abs(point.x() - mm) <= 1e-6 * mm; });
  });
}

double ChartFrame::x_of(double mm) const { return chart_->mapToPosition(QPointF(std::log10(mm), 0)).x(); }

std::vector<ChartFrame::Entry> ChartFrame::legend(double width, const QFont& font, double& height) const {
  const QFontMetricsF metrics(font);
  const double line = metrics.height() + 4;
  std::vector<Entry> entries;
  QPointF at(key_gap, key_gap);
  const auto add = [&](const QString& name, std::optional<int> look) {
    const QString text = metrics.elidedText(name, Qt::ElideMiddle, std::max(60.0, width / 2));
    const double taken = swatch_width + key_gap + metrics.horizontalAdvance(text) + 3 * key_gap;
    if (at.x() > key_gap && at.x() + taken > width) at = QPointF(key_gap, at.y() + line);
    entries.push_back({text, look, at});
    at.rx() += taken;
  };
  if (picture_ != nullptr) {
    for (const GradingSeries& series : picture_->series)
      if (!series.faint) add(shown_name(series), series.look);
    if (!picture_->faint_words.empty()) add(comma_list(picture_->faint_words), std::nullopt);
  }
  height = at.y() + line;
  return entries;
}

QRectF ChartFrame::plot_area(const QSizeF& size, const QFont& font) const {
  const QFontMetricsF metrics(font);
  double top = 0;
  legend(size.width(), font, top);
  const double left = metrics.height() + metrics.horizontalAdvance(QStringLiteral("100")) + 3 * key_gap;
  const double below = 2 * metrics.height() + 2 * key_gap;
  const QRectF plot(left, top + key_gap, size.width() - left - 2.5 * key_gap, size.height() - top - key_gap - below);
  return QRectF(plot.topLeft(), QSizeF(std::max(40.0, plot.width()), std::max(40.0, plot.height())));
}

void ChartFrame::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  if (picture_ == nullptr) return;
  painter->setFont(chart_->font());
  const QRectF plot = chart_->plotArea();
  // Lines and words would be drawn again for every step of a slider. Into a file they are drawn as such.
  const QTransform to_pixels = painter->deviceTransform();
  if (painter->paintEngine()->type() == QPaintEngine::Raster && to_pixels.type() <= QTransform::TxScale) {
    const double ratio = to_pixels.m11();
    // The chart itself lays out its axis later than it tells.
    const std::array<double, 4> place{plot.left(), plot.bottom(), x_of(1), x_of(10)};
    if (pixmap_.isNull() || pixmap_.devicePixelRatio() != ratio || place != painted_at_) {
      pixmap_ = QPixmap((boundingRect().size() * ratio).toSize());
      pixmap_.setDevicePixelRatio(ratio);
      pixmap_.fill(Qt::transparent);
      QPainter still_painter(&pixmap_);
      still_painter.setRenderHints(painter->renderHints());
      still_painter.setFont(chart_->font());
      paint_still(still_painter, plot);
      painted_ = still();
      painted_at_ = place;
    }
    painter->drawPixmap(QPointF(0, 0), pixmap_);
  } else {
    paint_still(*painter, plot);
  }
  paint_ribbon(*painter, plot);
  paint_mark(*painter);
}

void ChartFrame::paint_still(QPainter& painter, const QRectF& plot) const {
  paint_legend(painter);
  paint_band(painter, plot);
  paint_percents(painter, plot);
  paint_sieves(painter, plot);
  paint_band_name(painter, plot);
  painter.setPen(QPen(current_colours().muted, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(plot);
}

void ChartFrame::paint_legend(QPainter& painter) const {
  const QFontMetricsF metrics(painter.font());
  double height = 0;
  for (const Entry& entry : legend(chart_->size().width(), painter.font(), height)) {
    const QSize size(static_cast<int>(swatch_width), static_cast<int>(metrics.height()));
    painter.save();
    painter.translate(entry.at);
    if (entry.look) {
      paint_swatch(painter, look_of(*entry.look), size);
    } else {
      painter.setPen(faint_pen(look_of(picture_->faint_look).colour));
      painter.drawLine(QPointF(0, size.height() / 2.0), QPointF(size.width(), size.height() / 2.0));
    }
    painter.restore();
    painter.setPen(current_colours().palette.color(QPalette::Text));
    painter.drawText(QPointF(entry.at.x() + swatch_width + key_gap, entry.at.y() + metrics.ascent()), entry.text);
  }
}

std::optional<QRectF> ChartFrame::band_place(const QRectF& plot) const {
  if (!picture_->band_mm) return std::nullopt;
  const double from = picture_->band_mm->x() > 0 ? std::max(plot.left(), x_of(picture_->band_mm->x())) : plot.left();
  const double to = std::min(plot.right(), x_of(picture_->band_mm->y()));
  return to > from ? std::optional(QRectF(QPointF(from, plot.top()), QPointF(to, plot.bottom()))) : std::nullopt;
}

void ChartFrame::paint_band(QPainter& painter, const QRectF& plot) const {
  if (const auto band = band_place(plot)) painter.fillRect(*band, current_colours().band);
}

void ChartFrame::paint_band_name(QPainter& painter, const QRectF& plot) const {
  const auto band = band_place(plot);
  if (!band) return;
  const QFontMetricsF metrics(painter.font());
  const QString name = metrics.elidedText(ChartFrameText::tr("wanted"), Qt::ElideRight, band->width() - key_gap);
  const QRectF place(band->left() + key_gap / 2, plot.top() + 2, metrics.horizontalAdvance(name), metrics.height());
  // Lines of the chart would strike it through.
  painter.fillRect(place, current_colours().palette.color(QPalette::Base));
  painter.fillRect(place, current_colours().band);
  painter.setPen(current_colours().muted);
  painter.drawText(QPointF(place.left(), place.top() + metrics.ascent()), name);
}

void ChartFrame::paint_percents(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(painter.font());
  // As many labels as the height has room for.
  const int step = plot.height() < 6 * metrics.height() ? 50 : plot.height() < 11 * metrics.height() ? 20 : 10;
  for (int percent = 0; percent <= 100; percent += step) {
    const double y = plot.bottom() - plot.height() * (percent - least_shown_percent) / (most_shown_percent - least_shown_percent);
    painter.setPen(QPen(current_colours().grid, 1));
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    painter.setPen(current_colours().muted);
    const QString label = QLocale().toString(percent);
    painter.drawText(QPointF(plot.left() - key_gap - metrics.horizontalAdvance(label), y + metrics.ascent() / 2 - 1), label);
  }
  QString title = ChartFrameText::tr("percent passing");
  if (metrics.horizontalAdvance(title) > plot.height()) title = QStringLiteral("%");
  painter.save();
  painter.translate(key_gap / 2 + metrics.ascent(), plot.center().y() + metrics.horizontalAdvance(title) / 2);
  painter.rotate(-90);
  painter.drawText(QPointF(0, 0), title);
  painter.restore();
}

void ChartFrame::paint_sieves(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(painter.font());
  constexpr double between = 4;
  std::vector<QRectF> labels;
  const auto label = [&](double mm) {
    const QString text = QLocale().toString(mm, 'g', 3);
    const double width = metrics.horizontalAdvance(text);
    const QRectF place(x_of(mm) - width / 2, plot.bottom() + key_gap, width, metrics.height());
    const bool free = place.left() >= plot.left() - metrics.height() && std::ranges::none_of(labels, [&](const QRectF& taken) { return taken.adjusted(-between, 0, between, 0).intersects(place); });
    if (!free) return;
    painter.drawText(QPointF(place.left(), place.top() + metrics.ascent()), text);
    labels.push_back(place);
  };
  std::vector<double> other_mm;
  for (const double mm : picture_->sieves_mm) {
    const double x = x_of(mm);
    if (x < plot.left() - 0.5 || x > plot.right() + 0.5) continue;
    painter.setPen(QPen(current_colours().grid, 1));
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    painter.setPen(QPen(current_colours().muted, 1));
    painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4));
    if (is_of_shown_curve(mm)) label(mm);
    else other_mm.push_back(mm);
  }
  // Where there is no room for all, those that were sieved with keep theirs.
  for (const double mm : other_mm) label(mm);
  const QString title = ChartFrameText::tr("sieve opening, mm");
  painter.drawText(QPointF(plot.center().x() - metrics.horizontalAdvance(title) / 2, plot.bottom() + key_gap + metrics.height() + metrics.ascent()), title);
}

// Between the least and the most of the samples.
void ChartFrame::paint_ribbon(QPainter& painter, const QRectF& plot) const {
  if (picture_->ribbon_low_mm_percent.size() < 2) return;
  const auto place = [&](const QPointF& point) { return chart_->mapToPosition(QPointF(std::log10(point.x()), point.y())); };
  QPolygonF ribbon;
  for (const QPointF& point : picture_->ribbon_low_mm_percent) ribbon << place(point);
  for (auto point = picture_->ribbon_high_mm_percent.rbegin(); point != picture_->ribbon_high_mm_percent.rend(); ++point) ribbon << place(*point);
  QColor fill = current_colours().blend;
  fill.setAlphaF(0.25F);
  painter.save();
  painter.setClipRect(plot);
  painter.setPen(Qt::NoPen);
  painter.setBrush(fill);
  painter.drawPolygon(ribbon);
  painter.restore();
}

void ChartFrame::paint_mark(QPainter& painter) const {
  if (!picture_->marked_mm_percent) return;
  const QRectF plot = chart_->plotArea();
  const QPointF at = chart_->mapToPosition(QPointF(std::log10(picture_->marked_mm_percent->x()), picture_->marked_mm_percent->y()));
  if (!plot.adjusted(-1, -1, 1, 1).contains(at)) return;
  painter.setPen(QPen(current_colours().palette.color(QPalette::Highlight), 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(at, 9, 9);
}

}  // namespace gritwright::desktop
