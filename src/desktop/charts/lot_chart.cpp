#include "lot_chart.hpp"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <optional>
#include <utility>

#include "curve_look.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr double lot_gap = 6;
constexpr int lot_look = 0;

bool lot_is_outside(const std::vector<LotPoint>& points, LotFigure figure) {
  const auto usual = usual_of(points, figure);
  const auto& value = points.back().figures.of(figure);
  return points.back().on_screen && usual && value && !usual->holds(*value);
}

/// What a panel shows from its foot to its top; nothing where no lot has the figure.
std::optional<std::pair<double, double>> lot_scale(const std::vector<LotPoint>& points, LotFigure figure) {
  std::vector<double> values;
  for (const LotPoint& point : points) {
    if (const auto& value = point.figures.of(figure)) values.push_back(*value);
  }
  if (values.empty()) return std::nullopt;
  double low = *std::ranges::min_element(values);
  double high = *std::ranges::max_element(values);
  if (const auto usual = usual_of(points, figure)) {
    low = std::min(low, std::max(0.0, usual->low));
    high = std::max(high, usual->high);
  }
  const double margin = std::max(0.1 * (high - low), 0.02 * high);
  low = std::max(0.0, low - margin);
  high += margin;
  if (!(high > low)) high = low + 1;
  return std::pair(low, high);
}

/// Bags are told apart by what stands last in their names: words before it give way.
QString shortened_bag(const QFontMetricsF& metrics, const QString& bag, double room) {
  if (metrics.horizontalAdvance(bag) <= room) return bag;
  for (qsizetype space = bag.indexOf(u' '); space >= 0; space = bag.indexOf(u' ', space + 1)) {
    QString rest = u'\u2026' + bag.mid(space + 1);
    if (metrics.horizontalAdvance(rest) <= room) return rest;
  }
  return metrics.elidedText(bag, Qt::ElideLeft, room);
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
  int title_lines = 1;
  double scale_width = 0;
  for (const LotFigure figure : lot_figure_kinds) {
    if (metrics.horizontalAdvance(title(figure, 1).front()) > size.width() - 2 * lot_gap) title_lines = 2;
    const auto scale = lot_scale(points_, figure);
    if (!scale) continue;
    for (const double end : {scale->first, scale->second}) scale_width = std::max(scale_width, metrics.horizontalAdvance(lot_figure_text(figure, end, bench_.units())));
  }
  for (std::size_t i = 0; i < lot_figure_kinds.size(); ++i) {
    const double x = i % 2 == 0 ? 0 : size.width() + lot_gap;
    const double y = i < 2 ? top : top + size.height() + lot_gap;
    paint_panel(painter, QRectF(QPointF(x, y), size), lot_figure_kinds[i], title_lines, scale_width);
  }
}

QStringList LotChart::title(LotFigure figure, int lines) const {
  const QString name = lot_figure_name(figure);
  QString value = lot_figure_text(figure, points_.back().figures.of(figure), bench_.units());
  if (lot_is_outside(points_, figure)) value += QStringLiteral(" \u2013 ") + tr("unusual");
  return lines == 1 ? QStringList{with_label(name, value)} : QStringList{name, value};
}

// Each figure has its own scale; shaded is where single lots usually lie, the line is their mean.
void LotChart::paint_panel(QPainter& painter, const QRectF& room, LotFigure figure, int title_lines, double scale_width) const {
  const QFontMetricsF metrics(font());
  const QColor ink = current_colours().palette.color(QPalette::Text);
  const auto usual = usual_of(points_, figure);
  const bool outside = lot_is_outside(points_, figure);
  const auto text = [&](double value) { return lot_figure_text(figure, value, bench_.units()); };
  painter.setPen(outside ? current_colours().fault : ink);
  QPointF line(room.left() + lot_gap, room.top() + metrics.ascent() + 2);
  for (const QString& words : title(figure, title_lines)) {
    painter.drawText(line, metrics.elidedText(words, Qt::ElideRight, room.width() - 2 * lot_gap));
    line.ry() += metrics.height();
  }
  const auto scale = lot_scale(points_, figure);
  if (!scale) return;
  const auto [low, high] = *scale;
  const double left = scale_width + 2 * lot_gap;
  const double above = title_lines * metrics.height() + lot_gap;
  const QRectF plot(room.left() + left, room.top() + above, room.width() - left - 2 * lot_gap, room.height() - above - metrics.height() - lot_gap);
  const auto y_of = [&plot, low = low, high = high](double value) { return plot.bottom() - plot.height() * (value - low) / (high - low); };
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
    if (last && points_[i].on_screen) {
      // A ring about the bag on screen; a square one where it is unusual.
      painter.setPen(QPen(outside ? current_colours().fault : ink, 2));
      if (outside) painter.drawRect(QRectF(at - QPointF(9, 9), QSizeF(18, 18)));
      else painter.drawEllipse(at, 8, 8);
    }
    before = at;
  }
  paint_names(painter, plot);
}

// Each below its point as far as the plot's width allows: first and last always, those between where all have room.
void LotChart::paint_names(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(font());
  const double step = plot.width() / static_cast<double>(points_.size());
  const double baseline = plot.bottom() + metrics.ascent() + 2;
  painter.setPen(current_colours().muted);
  const auto from_of = [&](std::size_t lot, double wide) {
    const double middle = plot.left() + step * (static_cast<double>(lot) + 0.5);
    return std::max(plot.left(), std::min(middle - wide / 2, plot.right() - wide));
  };
  const std::size_t last = points_.size() - 1;
  if (last == 0) {
    const QString name = shortened_bag(metrics, points_.front().bag, plot.width());
    painter.drawText(QPointF(from_of(0, metrics.horizontalAdvance(name)), baseline), name);
    return;
  }
  const QString first_name = shortened_bag(metrics, points_.front().bag, (plot.width() - lot_gap) / 2);
  const double first_wide = metrics.horizontalAdvance(first_name);
  const QString last_name = shortened_bag(metrics, points_.back().bag, plot.width() - first_wide - lot_gap);
  const double last_wide = metrics.horizontalAdvance(last_name);
  const double last_from = std::max(from_of(last, last_wide), plot.left() + first_wide + lot_gap);
  const double first_from = std::min(from_of(0, first_wide), last_from - lot_gap - first_wide);
  painter.drawText(QPointF(first_from, baseline), first_name);
  painter.drawText(QPointF(last_from, baseline), last_name);
  std::vector<std::pair<double, QString>> between;
  double free_from = first_from + first_wide + lot_gap;
  for (std::size_t lot = 1; lot < last; ++lot) {
    const double wide = metrics.horizontalAdvance(points_[lot].bag);
    const double from = from_of(lot, wide);
    if (from < free_from || from + wide + lot_gap > last_from) return;
    between.emplace_back(from, points_[lot].bag);
    free_from = from + wide + lot_gap;
  }
  for (const auto& [from, name] : between) painter.drawText(QPointF(from, baseline), name);
}

}  // namespace gritwright::desktop
