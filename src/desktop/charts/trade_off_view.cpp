#include "trade_off_view.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "curve_look.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double picture_gap = 6;
constexpr double narrow = 520;  // below it the two stand one above the other

/// A round step that divides `span` into about four.
double tick_step(double span) {
  const double rough = span / 4;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (rough <= factor * power) return factor * power;
  return 10 * power;
}

struct Axis {
  double from = 0;
  double to = 1;
  double step = 0.25;
  bool in_percent = false;

  [[nodiscard]] std::vector<double> ticks() const {
    std::vector<double> all;
    const int steps = qRound((to - from) / step);
    for (int i = 0; i <= steps; ++i) all.push_back(from + i * step);
    return all;
  }
  [[nodiscard]] QString text(double value) const {
    if (in_percent) return TradeOffView::tr("%1 %").arg(QLocale().toString(qRound(100 * value)));
    // As many decimals as the step has, so that all end alike.
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(std::abs(value) < 1e-9 * step ? 0 : value, 'f', std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9))));
  }
};

Axis axis_of(const std::vector<TradeOffPoint>& points, double TradeOffPoint::*member, bool in_percent) {
  const auto [least, most] = std::ranges::minmax(points, {}, member);
  double span = most.*member - least.*member;
  // One point, or many alike, still want a scale.
  const double least_span = in_percent ? 0.04 : std::max(0.1, 0.1 * std::abs(most.*member));
  double from = least.*member;
  if (span < least_span) {
    from -= (least_span - span) / 2;
    span = least_span;
  }
  Axis axis;
  axis.in_percent = in_percent;
  axis.step = std::max(tick_step(span), in_percent ? 0.01 : 0.0);
  axis.from = std::max(0.0, std::floor((from - 0.05 * span) / axis.step) * axis.step);
  axis.to = std::ceil((from + 1.05 * span) / axis.step) * axis.step;
  return axis;
}

class Plot {
 public:
  Plot(QPainter& painter, const QRectF& room, const std::vector<TradeOffPoint>& points, bool in_percent, QString title, QString across)
      : painter_(painter),
        bold_(painter.font()),
        metrics_(painter.font()),
        points_(points),
        across_(axis_of(points, &TradeOffPoint::across, in_percent)),
        up_(axis_of(points, &TradeOffPoint::up, in_percent)),
        title_(std::move(title)),
        across_name_(std::move(across)),
        room_(room) {
    bold_.setBold(true);
    double widest = 0;
    for (const double value : up_.ticks()) widest = std::max(widest, metrics_.horizontalAdvance(up_.text(value)));
    plot_ = room.adjusted(widest + 2 * picture_gap, height_in_room(QFontMetricsF(bold_), title_) + 2.5 * picture_gap + metrics_.height() / 2, -3 * picture_gap,
                          -metrics_.height() - height_in_room(metrics_, across_name_) - 2 * picture_gap);
  }

  void paint() {
    frame();
    path();
    marks();
  }

 private:
  /// Of words in as many lines as they need.
  [[nodiscard]] double height_in_room(const QFontMetricsF& metrics, const QString& words) const {
    return metrics.boundingRect(QRectF(0, 0, room_.width() - 2 * picture_gap, room_.height()), Qt::TextWordWrap, words).height();
  }

  [[nodiscard]] double x_of(double across) const { return plot_.left() + plot_.width() * (across - across_.from) / (across_.to - across_.from); }

  /// Where the figure of a tick begins: left of the first stands the scale up, right of the last the room ends.
  [[nodiscard]] double from_of(double across) const {
    const double width = metrics_.horizontalAdvance(across_.text(across));
    return std::max(plot_.left(), std::min(x_of(across) - width / 2, room_.right() - width));
  }

  /// Every how many ticks have room for their figures.
  [[nodiscard]] std::size_t stride_across(const std::vector<double>& ticks) const {
    const auto fit = [&](std::size_t stride) {
      for (std::size_t i = stride; i < ticks.size(); i += stride)
        if (from_of(ticks[i]) < from_of(ticks[i - stride]) + metrics_.horizontalAdvance(across_.text(ticks[i - stride])) + picture_gap) return false;
      return true;
    };
    std::size_t stride = 1;
    while (!fit(stride)) ++stride;
    return stride;
  }

  [[nodiscard]] QPointF place(const TradeOffPoint& point) const {
    return {x_of(point.across), plot_.bottom() - plot_.height() * (point.up - up_.from) / (up_.to - up_.from)};
  }

  void frame() {
    const ThemeColours& colours = current_colours();
    const QFont plain = painter_.font();
    painter_.setFont(bold_);
    painter_.setPen(colours.palette.color(QPalette::Text));
    painter_.drawText(QRectF(room_.left() + picture_gap, room_.top() + 1.5 * picture_gap, room_.width() - 2 * picture_gap, plot_.top() - room_.top()),
                      Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, title_);
    painter_.setFont(plain);
    double free_above = room_.bottom();
    for (const double value : up_.ticks()) {
      const double y = plot_.bottom() - plot_.height() * (value - up_.from) / (up_.to - up_.from);
      painter_.setPen(QPen(colours.grid, 1));
      painter_.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
      if (y > free_above) continue;
      free_above = y - metrics_.height();
      painter_.setPen(colours.muted);
      painter_.drawText(QRectF(room_.left(), y - metrics_.height() / 2, plot_.left() - room_.left() - picture_gap, metrics_.height()), Qt::AlignRight | Qt::AlignVCenter, up_.text(value));
    }
    const std::vector<double> ticks = across_.ticks();
    for (const double value : ticks) {
      const double x = x_of(value);
      painter_.setPen(QPen(colours.grid, 1));
      painter_.drawLine(QPointF(x, plot_.top()), QPointF(x, plot_.bottom()));
    }
    painter_.setPen(colours.muted);
    const std::size_t stride = stride_across(ticks);
    for (std::size_t i = 0; i < ticks.size(); i += stride) painter_.drawText(QPointF(from_of(ticks[i]), plot_.bottom() + picture_gap / 2 + metrics_.ascent()), across_.text(ticks[i]));
    painter_.setPen(colours.muted);
    const double below_ticks = plot_.bottom() + picture_gap / 2 + metrics_.height();
    painter_.drawText(QRectF(room_.left() + picture_gap, below_ticks, room_.width() - 2 * picture_gap, room_.bottom() - below_ticks), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                      across_name_);
  }

  void path() {
    QPolygonF line;
    for (const TradeOffPoint& point : points_) line << place(point);
    painter_.setPen(QPen(current_colours().curves[0].colour, 1, Qt::DotLine));
    painter_.drawPolyline(line);
  }

  /// Listed recipes are filled and carry their rank; the others are rings.
  void marks() {
    const ThemeColours& colours = current_colours();
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(QPen(colours.curves[0].colour, 1.5));
    for (const TradeOffPoint& point : points_)
      if (point.rank == 0) painter_.drawEllipse(place(point), 3, 3);
    std::vector<const TradeOffPoint*> listed;
    for (const TradeOffPoint& point : points_)
      if (point.rank > 0) listed.push_back(&point);
    std::ranges::sort(listed, {}, &TradeOffPoint::rank);
    painter_.setPen(QPen(colours.palette.color(QPalette::Base), 1));
    painter_.setBrush(colours.blend);
    for (const TradeOffPoint* point : listed) painter_.drawEllipse(place(*point), 5, 5);
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(colours.palette.color(QPalette::Text));
    std::vector<QRectF> taken;  // a number that would stand on that of a better rank is left out
    for (const TradeOffPoint* point : listed) {
      const QPointF at = place(*point) + QPointF(8, -4);
      const QString rank = QLocale().toString(point->rank);
      const QRectF number(at - QPointF(0, metrics_.ascent()), QSizeF(metrics_.horizontalAdvance(rank), metrics_.height()));
      if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(number); })) continue;
      taken.push_back(number);
      painter_.drawText(at, rank);
    }
  }

  QPainter& painter_;
  QFont bold_;
  QFontMetricsF metrics_;
  const std::vector<TradeOffPoint>& points_;
  Axis across_;
  Axis up_;
  QString title_;
  QString across_name_;
  QRectF room_;
  QRectF plot_;
};

}  // namespace

TradeOffView::TradeOffView(PartsFinder& finder, QWidget* parent) : QWidget(parent), finder_(finder) {
  setObjectName(QStringLiteral("trade_off"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("What air costs in water, and fit in money"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  connect(&finder_, &PartsFinder::found_changed, this, &TradeOffView::refresh);
  refresh();
}

QSize TradeOffView::minimumSizeHint() const { return {280, 9 * fontMetrics().height()}; }

void TradeOffView::refresh() {
  const FoundParts* const found = finder_.found();
  picture_ = found != nullptr ? trade_off_picture(*found) : TradeOffPicture{};
  setAccessibleDescription(trade_off_sentence(found));
  update();
}

void TradeOffView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const bool has_air = !picture_.air_and_water.empty();
  const bool has_price = !picture_.price_and_fit.empty();
  if (!has_air && !has_price) {
    painter.setPen(current_colours().muted);
    painter.drawText(QRectF(rect()).adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, accessibleDescription());
    return;
  }
  if (finder_.is_stale()) painter.setOpacity(0.55);
  QRectF first(rect());
  QRectF second(rect());
  if (has_air && has_price) {
    if (width() < narrow && height() >= 2 * minimumSizeHint().height()) {
      first.setHeight(height() / 2.0);
      second.setTop(height() / 2.0);
    } else {
      first.setWidth(width() / 2.0);
      second.setLeft(width() / 2.0);
    }
  }
  if (has_air) Plot(painter, first, picture_.air_and_water, true, tr("Water held"), tr("air that drains free")).paint();
  if (has_price) Plot(painter, second, picture_.price_and_fit, false, tr("Score, lower fits better"), picture_.currency.isEmpty() ? tr("price of a mixed litre") : tr("price of a mixed litre, %1").arg(picture_.currency)).paint();
}

}  // namespace gritwright::desktop
