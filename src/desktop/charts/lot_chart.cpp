#include "lot_chart.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "curve_look.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr double lot_gap = 6;
constexpr int lot_look = 0;

bool lot_is_outside(const std::vector<LotPoint>& points, LotFigure figure) {
  const auto usual = usual_of(points, figure);
  const auto& value = points.back().figures.of(figure);
  return usual && value && !usual->holds(*value);
}

}  // namespace

QString lot_sentence(const Bench& bench) {
  const auto points = lot_points(bench);
  if (points.empty()) return LotChart::tr("No lots to compare: type the wanted grain, and grade bags of one material.");
  QStringList figures;
  QStringList outside;
  for (const LotFigure figure : lot_figure_kinds) {
    figures << QStringLiteral("%1 %2").arg(lot_figure_name(figure), lot_figure_text(figure, points.back().figures.of(figure), bench.units()));
    if (lot_is_outside(points, figure)) outside << lot_figure_name(figure);
  }
  const QString all = LotChart::tr("%n lot(s), oldest first; the last, %1: %2.", nullptr, static_cast<int>(points.size())).arg(points.back().bag, comma_list(figures));
  if (points.size() <= least_lots) return all + u' ' + LotChart::tr("A usual range needs %n earlier lot(s).", nullptr, static_cast<int>(least_lots));
  return all + u' ' + (outside.isEmpty() ? LotChart::tr("All within what is usual.") : LotChart::tr("Outside what is usual: %1.").arg(comma_list(outside)));
}

PictureTable lot_table(const Bench& bench) {
  PictureTable table;
  table.heading << LotChart::tr("bag") << LotChart::tr("day");
  for (const LotFigure figure : lot_figure_kinds) table.heading << lot_figure_name(figure);
  const auto points = lot_points(bench);
  for (const LotPoint& point : points) {
    QStringList row{point.bag, point.day};
    for (const LotFigure figure : lot_figure_kinds) row << lot_figure_text(figure, point.figures.of(figure), bench.units());
    table.rows.push_back(row);
  }
  if (points.empty()) return table;
  QStringList usual_row{LotChart::tr("usual"), QString()};
  for (const LotFigure figure : lot_figure_kinds) {
    const auto usual = usual_of(points, figure);
    usual_row << (usual ? LotChart::tr("%1 to %2").arg(lot_figure_text(figure, std::max(0.0, usual->low), bench.units()), lot_figure_text(figure, usual->high, bench.units()))
                        : QStringLiteral("\u2013"));
  }
  table.rows.push_back(usual_row);
  return table;
}

PictureTable lot_data(const Bench& bench) {
  PictureTable table;
  table.heading << QStringLiteral("bag") << QStringLiteral("day") << QStringLiteral("finer_mass_share") << QStringLiteral("d50_mm") << QStringLiteral("usable_l_per_l")
                << QStringLiteral("air_filled_porosity");
  for (const LotPoint& point : lot_points(bench)) {
    QStringList row{point.bag, point.day};
    for (const LotFigure figure : lot_figure_kinds) {
      const auto& value = point.figures.of(figure);
      row << (value ? QLocale::c().toString(*value, 'f', 4) : QString());
    }
    table.rows.push_back(row);
  }
  return table;
}

LotChart::LotChart(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  setObjectName(QStringLiteral("lot_chart"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Dust, size, yield and air from lot to lot"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  connect(&bench_, &Bench::changed, this, &LotChart::refresh);
  connect(&bench_, &Bench::surroundings_changed, this, &LotChart::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &LotChart::refresh);
}

QSize LotChart::minimumSizeHint() const { return {320, 13 * fontMetrics().height()}; }

void LotChart::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void LotChart::refresh() {
  // Every lot is judged anew; nobody waits for it while another picture is in front.
  if (!isVisible()) return;
  points_ = lot_points(bench_);
  setAccessibleDescription(lot_sentence(bench_));
  update();
}

void LotChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(font());
  if (points_.empty()) {
    painter.setPen(current_colours().muted);
    painter.drawText(QRectF(rect()).adjusted(lot_gap, lot_gap, -lot_gap, -lot_gap), Qt::AlignCenter | Qt::TextWordWrap, lot_sentence(bench_));
    return;
  }
  constexpr double top = 2 * lot_gap;  // clear of the button beside the tabs
  const QSizeF size((width() - lot_gap) / 2, (height() - top - lot_gap) / 2);
  for (std::size_t i = 0; i < lot_figure_kinds.size(); ++i) {
    const double x = i % 2 == 0 ? 0 : size.width() + lot_gap;
    const double y = i < 2 ? top : top + size.height() + lot_gap;
    paint_panel(painter, QRectF(QPointF(x, y), size), lot_figure_kinds[i]);
  }
}

// Each figure has its own scale; shaded is where single lots usually lie, the line is their mean.
void LotChart::paint_panel(QPainter& painter, const QRectF& room, LotFigure figure) const {
  const QFontMetricsF metrics(font());
  const QColor ink = current_colours().palette.color(QPalette::Text);
  const auto usual = usual_of(points_, figure);
  const bool outside = lot_is_outside(points_, figure);
  const auto text = [&](double value) { return lot_figure_text(figure, value, bench_.units()); };
  QString title = with_label(lot_figure_name(figure), lot_figure_text(figure, points_.back().figures.of(figure), bench_.units()));
  if (outside) title += QStringLiteral(" \u2013 ") + tr("unusual");
  painter.setPen(outside ? current_colours().fault : ink);
  painter.drawText(QPointF(room.left() + lot_gap, room.top() + metrics.ascent() + 2), metrics.elidedText(title, Qt::ElideMiddle, room.width() - 2 * lot_gap));
  std::vector<double> values;
  for (const LotPoint& point : points_) {
    if (const auto& value = point.figures.of(figure)) values.push_back(*value);
  }
  if (values.empty()) return;
  double low = *std::ranges::min_element(values);
  double high = *std::ranges::max_element(values);
  if (usual) {
    low = std::min(low, std::max(0.0, usual->low));
    high = std::max(high, usual->high);
  }
  const double margin = std::max(0.1 * (high - low), 0.02 * high);
  low = std::max(0.0, low - margin);
  high += margin;
  if (!(high > low)) high = low + 1;
  const double left = std::max(metrics.horizontalAdvance(text(low)), metrics.horizontalAdvance(text(high))) + 2 * lot_gap;
  const QRectF plot(room.left() + left, room.top() + metrics.height() + lot_gap, room.width() - left - 2 * lot_gap, room.height() - 2 * metrics.height() - 2 * lot_gap);
  const auto y_of = [&](double value) { return plot.bottom() - plot.height() * (value - low) / (high - low); };
  if (usual) {
    const double top = y_of(usual->high);
    const double bottom = y_of(std::max(low, usual->low));
    painter.fillRect(QRectF(plot.left(), top, plot.width(), bottom - top), current_colours().band);
    painter.setPen(QPen(current_colours().muted, 1, Qt::DashLine));
    for (const double at : {top, y_of(usual->mean), bottom}) painter.drawLine(QPointF(plot.left(), at), QPointF(plot.right(), at));
  }
  painter.setPen(QPen(current_colours().grid, 1));
  painter.drawRect(plot);
  painter.setPen(current_colours().muted);
  for (const double end : {low, high}) {
    const double y = end == low ? plot.bottom() - metrics.height() : plot.top();
    painter.drawText(QRectF(room.left(), y, left - lot_gap, metrics.height()), Qt::AlignRight | Qt::AlignVCenter, text(end));
  }
  const double step = plot.width() / static_cast<double>(points_.size());
  std::optional<QPointF> before;
  for (std::size_t i = 0; i < points_.size(); ++i) {
    const auto& value = points_[i].figures.of(figure);
    if (!value) {
      before.reset();
      continue;
    }
    const QPointF at(plot.left() + step * (static_cast<double>(i) + 0.5), y_of(*value));
    const CurveLook look = look_of(lot_look);
    painter.setPen(QPen(look.colour, 1));
    if (before) painter.drawLine(*before, at);
    painter.save();
    painter.translate(at - QPointF(6, 6));
    paint_swatch(painter, look, QSize(12, 12));
    painter.restore();
    const bool last = i + 1 == points_.size();
    if (last) {
      // A ring about the bag on screen; a square one where it is unusual.
      painter.setPen(QPen(outside ? current_colours().fault : ink, 2));
      if (outside) painter.drawRect(QRectF(at - QPointF(9, 9), QSizeF(18, 18)));
      else painter.drawEllipse(at, 8, 8);
    }
    before = at;
  }
  painter.setPen(current_colours().muted);
  const QString ends = points_.size() > 1 ? points_.front().bag : QString();
  painter.drawText(QPointF(plot.left(), plot.bottom() + metrics.ascent() + 2), ends);
  const QString name = metrics.elidedText(points_.back().bag, Qt::ElideMiddle, plot.width() - metrics.horizontalAdvance(ends) - lot_gap);
  painter.drawText(QPointF(plot.right() - metrics.horizontalAdvance(name), plot.bottom() + metrics.ascent() + 2), name);
}

}  // namespace gritwright::desktop
