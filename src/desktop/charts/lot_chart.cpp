#include "lot_chart.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "curve_look.hpp"
#include "gritwright/models/bag_verdict.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr double lot_gap = 6;
constexpr int dust_look = 1;
constexpr int usable_look = 0;

LotPoint point_of(const QString& bag, const QString& day, const Grading& grading, const Band& band) {
  LotPoint point{bag, day, {}, {}};
  if (const auto judged = judge(grading, band).value) {
    point.dust = judged->finer.value();
    point.usable = judged->usable.value();
  }
  return point;
}

QString text_of(std::optional<double> share) { return to_local(percent_text(share)); }

}  // namespace

std::vector<LotPoint> lot_points(const Bench& bench) {
  std::vector<LotPoint> points;
  const auto& band = bench.evaluation().band;
  if (!band) return points;
  const auto& earlier = bench.surroundings().earlier;
  for (auto test = earlier.rbegin(); test != earlier.rend(); ++test) points.push_back(point_of(test->bag, test->day, test->grading, *band));
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return points;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  if (component.state == SheetState::finished) points.push_back(point_of(bench.state().components[index].name, {}, *component.grading(), *band));
  return points;
}

QString lot_sentence(const Bench& bench) {
  const auto points = lot_points(bench);
  if (points.empty()) return LotChart::tr("No lots to compare: type the wanted grain, and grade bags of one material.");
  const LotPoint& last = points.back();
  return LotChart::tr("Dust and usable litres of %n lot(s), oldest first; the last, %1, has %2 dust and %3 usable.", nullptr, static_cast<int>(points.size()))
      .arg(last.bag, text_of(last.dust), text_of(last.usable));
}

PictureTable lot_table(const Bench& bench) {
  PictureTable table;
  table.heading << LotChart::tr("bag") << LotChart::tr("day") << LotChart::tr("finer than wanted") << LotChart::tr("usable of a litre");
  for (const LotPoint& point : lot_points(bench)) table.rows.push_back({point.bag, point.day, text_of(point.dust), text_of(point.usable)});
  return table;
}

PictureTable lot_data(const Bench& bench) {
  PictureTable table;
  table.heading << QStringLiteral("bag") << QStringLiteral("day") << QStringLiteral("finer_mass_share") << QStringLiteral("usable_l_per_l");
  const auto plain = [](std::optional<double> share) { return share ? QLocale::c().toString(*share, 'f', 4) : QString(); };
  for (const LotPoint& point : lot_points(bench)) table.rows.push_back({point.bag, point.day, plain(point.dust), plain(point.usable)});
  return table;
}

LotChart::LotChart(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  setObjectName(QStringLiteral("lot_chart"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Dust and yield from lot to lot"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  connect(&bench_, &Bench::changed, this, &LotChart::refresh);
  connect(&bench_, &Bench::surroundings_changed, this, &LotChart::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &LotChart::refresh);
}

QSize LotChart::minimumSizeHint() const { return {280, 9 * fontMetrics().height()}; }

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
  const double left = metrics.horizontalAdvance(QStringLiteral("100 %")) + 2 * lot_gap;
  const double top = metrics.height() + 3 * lot_gap;
  const double below = metrics.height() + 2 * lot_gap;
  const QRectF plot(left, top, width() - left - 2 * lot_gap, height() - top - below);
  paint_axis(painter, plot);
  paint_lots(painter, plot);
  paint_legend(painter, plot);
}

void LotChart::paint_axis(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(font());
  for (int percent = 0; percent <= 100; percent += 25) {
    const double y = plot.bottom() - plot.height() * percent / 100;
    painter.setPen(QPen(current_colours().grid, 1));
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    painter.setPen(current_colours().muted);
    painter.drawText(QRectF(0, y - metrics.height() / 2, plot.left() - lot_gap, metrics.height()), Qt::AlignRight | Qt::AlignVCenter, tr("%1 %").arg(QLocale().toString(percent)));
  }
}

void LotChart::paint_lots(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(font());
  const double step = plot.width() / static_cast<double>(points_.size());
  const auto x_of = [&](std::size_t i) { return plot.left() + step * (static_cast<double>(i) + 0.5); };
  const auto line = [&](std::optional<double> LotPoint::*member, int look_index) {
    const CurveLook look = look_of(look_index);
    std::optional<QPointF> before;
    for (std::size_t i = 0; i < points_.size(); ++i) {
      const std::optional<double>& share = points_[i].*member;
      if (!share) {
        before.reset();
        continue;
      }
      const QPointF at(x_of(i), plot.bottom() - plot.height() * *share);
      if (before) {
        painter.setPen(QPen(look.colour, 1, look.line));
        painter.drawLine(*before, at);
      }
      painter.save();
      painter.translate(at - QPointF(7, 7));
      paint_swatch(painter, look, QSize(14, 14));
      painter.restore();
      before = at;
    }
  };
  line(&LotPoint::usable, usable_look);
  line(&LotPoint::dust, dust_look);
  painter.setPen(current_colours().palette.color(QPalette::Text));
  double free_from = plot.left();
  for (std::size_t i = 0; i < points_.size(); ++i) {
    const QString name = metrics.elidedText(points_[i].bag, Qt::ElideMiddle, std::max(step, 8 * metrics.averageCharWidth()));
    const double width = metrics.horizontalAdvance(name);
    const double x = std::min(x_of(i) - width / 2, plot.right() - width);
    // The bag on screen is always named; of the others as many as there is room for.
    if (x < free_from && i + 1 < points_.size()) continue;
    painter.drawText(QPointF(x, plot.bottom() + lot_gap + metrics.ascent()), name);
    free_from = x + width + lot_gap;
  }
}

void LotChart::paint_legend(QPainter& painter, const QRectF& plot) const {
  const QFontMetricsF metrics(font());
  double x = plot.left();
  const auto entry = [&](int look, const QString& text) {
    const QSize size(34, static_cast<int>(metrics.height()));
    painter.save();
    painter.translate(x, lot_gap);
    paint_swatch(painter, look_of(look), size);
    painter.restore();
    painter.setPen(current_colours().palette.color(QPalette::Text));
    painter.drawText(QPointF(x + size.width() + lot_gap, lot_gap + metrics.ascent()), text);
    x += size.width() + 3 * lot_gap + metrics.horizontalAdvance(text);
  };
  entry(usable_look, tr("usable of a litre"));
  entry(dust_look, tr("finer than wanted"));
}

}  // namespace gritwright::desktop
