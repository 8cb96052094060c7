#include "ageing_view.hpp"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QStackedWidget>
#include <algorithm>
#include <cmath>
#include <utility>

#include "curve_look.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr double ageing_gap = 6;
constexpr double ageing_narrow = 560;  // below it the curves are left to the table
constexpr int ageing_wait_ms = 300;
constexpr int staying_look = 0;
constexpr int washed_look = 1;
constexpr double swatch_wide = 30;

/// Whether one answer may stand in for the other for a moment: the same grains that break alike.
bool same_grains(const AgeingQuestion& a, const AgeingQuestion& b) { return a.mix.mix.components.size() == b.mix.mix.components.size() && a.breakdowns == b.breakdowns; }

/// The new mix has the look of a mix, each season one of its own.
CurveLook look_of_season(int season) { return look_of(season - 1); }

void paint_marker(QPainter& painter, const CurveLook& look, const QPointF& at) {
  CurveLook bare = look;
  bare.line = Qt::NoPen;
  painter.save();
  painter.translate(at - QPointF(7, 7));
  paint_swatch(painter, bare, QSize(14, 14));
  painter.restore();
}

/// A plot with its frame: round percents up, whatever across.
class AgeingPlot {
 public:
  AgeingPlot(QPainter& painter, const QRectF& room, const QString& title, double most_share) : painter_(painter), metrics_(painter.font()), most_(std::ceil(std::max(most_share, 0.05) * 10) / 10) {
    const double left = metrics_.horizontalAdvance(QStringLiteral("100 %")) + 2 * ageing_gap;
    plot_ = room.adjusted(left, metrics_.height() + 2 * ageing_gap, -2 * ageing_gap, -2 * metrics_.height() - ageing_gap);
    painter_.setPen(current_colours().palette.color(QPalette::Text));
    painter_.drawText(QRectF(room.left() + ageing_gap, room.top() + ageing_gap / 2, room.width() - ageing_gap, metrics_.height()), Qt::AlignLeading | Qt::AlignVCenter,
                      metrics_.elidedText(title, Qt::ElideRight, room.width() - ageing_gap));
    const int ticks = static_cast<int>(std::lround(most_ * 10));
    const int every = ticks > 5 ? 2 : 1;
    for (int tick = 0; tick <= ticks; tick += every) {
      const double y = y_of(tick / 10.0);
      painter_.setPen(QPen(current_colours().grid, 1));
      painter_.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
      painter_.setPen(current_colours().muted);
      painter_.drawText(QRectF(room.left(), y - metrics_.height() / 2, plot_.left() - room.left() - ageing_gap, metrics_.height()), Qt::AlignRight | Qt::AlignVCenter,
                        AgeingView::tr("%1 %").arg(QLocale().toString(10 * tick)));
    }
  }

  [[nodiscard]] const QRectF& plot() const { return plot_; }
  [[nodiscard]] double y_of(double share) const { return plot_.bottom() - plot_.height() * share / most_; }

  /// A line up at a place 0..1 along the plot and its word below, unless it would run into the one before.
  void across(double along, const QString& text) {
    const double x = plot_.left() + plot_.width() * along;
    painter_.setPen(QPen(current_colours().grid, 1));
    painter_.drawLine(QPointF(x, plot_.top()), QPointF(x, plot_.bottom()));
    const double wide = metrics_.horizontalAdvance(text);
    const double from = std::max(x - wide / 2, plot_.left());  // left of it stands the scale
    if (from < free_from_) return;
    painter_.setPen(current_colours().muted);
    painter_.drawText(QPointF(from, plot_.bottom() + metrics_.ascent() + 2), text);
    free_from_ = from + wide + ageing_gap;
  }
  void below(const QString& text) {
    painter_.setPen(current_colours().muted);
    painter_.drawText(QRectF(plot_.left(), plot_.bottom() + metrics_.height() + 2, plot_.width(), metrics_.height()), Qt::AlignCenter, metrics_.elidedText(text, Qt::ElideRight, plot_.width()));
  }

 private:
  QPainter& painter_;
  QFontMetricsF metrics_;
  double most_;
  QRectF plot_;
  double free_from_ = -1e9;
};

using LegendEntries = std::vector<std::pair<CurveLook, QString>>;

/// Where the names with their swatches stand in a row that wraps, and the height it takes.
std::pair<std::vector<QPointF>, double> legend_row(const QFontMetricsF& metrics, const QRectF& room, const LegendEntries& entries) {
  std::vector<QPointF> places;
  double x = room.left(), y = room.top();
  for (const auto& [look, text] : entries) {
    const double wide = swatch_wide + ageing_gap + metrics.horizontalAdvance(text);
    if (x > room.left() && x + wide > room.right()) {
      x = room.left();
      y += metrics.height() + 2;
    }
    places.emplace_back(x, y);
    x += wide + 3 * ageing_gap;
  }
  return {std::move(places), y + metrics.height() - room.top()};
}

void paint_legend_row(QPainter& painter, const QFontMetricsF& metrics, const QRectF& room, const LegendEntries& entries) {
  const auto [places, height] = legend_row(metrics, room, entries);
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const auto& [look, text] = entries[i];
    painter.save();
    painter.translate(places[i]);
    paint_swatch(painter, look, QSize(static_cast<int>(swatch_wide), static_cast<int>(metrics.height())));
    painter.restore();
    painter.setPen(current_colours().palette.color(QPalette::Text));
    painter.drawText(QPointF(places[i].x() + swatch_wide + ageing_gap, places[i].y() + metrics.ascent()), text);
  }
}

LegendEntries legend_of_air() { return {{look_of(staying_look), AgeingView::tr("crumbs stay")}, {look_of(washed_look), AgeingView::tr("crumbs wash down")}}; }

LegendEntries legend_of_gradings(const AirOverYears& years) {
  LegendEntries gradings;
  for (const SeasonAir& season : years.seasons) gradings.emplace_back(look_of_season(season.season), season.season == 0 ? AgeingView::tr("new") : QLocale().toString(season.season));
  return gradings;
}

/// The rooms of what the view shows; whatever is not plot is as high as its text.
struct AgeingRooms {
  QRectF left_legend;
  QRectF right_legend;  ///< empty where there is room for one plot only
  double legend = 0;    ///< height
  double words = 0;     ///< height
};

AgeingRooms rooms_of(const QFontMetricsF& metrics, const QRectF& room, const AirOverYears& years, const QString& words) {
  AgeingRooms rooms;
  const bool both = room.width() >= ageing_narrow;
  const double left = both ? room.width() * 0.52 : room.width();
  rooms.left_legend = QRectF(room.left(), room.top(), left - 2 * ageing_gap, 0);
  if (both) rooms.right_legend = QRectF(room.left() + left + ageing_gap, room.top(), room.width() - left - ageing_gap, 0);
  rooms.legend = legend_row(metrics, rooms.left_legend, legend_of_air()).second;
  if (both) rooms.legend = std::max(rooms.legend, legend_row(metrics, rooms.right_legend, legend_of_gradings(years)).second);
  rooms.words = metrics.boundingRect(QRectF(0, 0, room.width(), 1e6), Qt::TextWordWrap, words).height();
  return rooms;
}

void paint_air(QPainter& painter, const QRectF& room, const AirOverYears& years) {
  const auto& seasons = years.seasons;
  double most = least_air_of_old_mix.value() + 0.05;  // so that the limit is a line within the plot
  for (const SeasonAir& season : seasons) most = std::max({most, season.staying.high, season.washed_down.high});
  AgeingPlot plot(painter, room, AgeingView::tr("Air that drains free, 90 of 100 cases"), most);
  const double last = std::max<double>(1, seasons.back().season);
  for (const SeasonAir& season : seasons) plot.across(season.season / last, season.season == 0 ? AgeingView::tr("new") : QLocale().toString(season.season));
  plot.below(AgeingView::tr("season"));
  const auto x_of = [&](const SeasonAir& season) { return plot.plot().left() + plot.plot().width() * season.season / last; };
  const auto series = [&](Range SeasonAir::*fate, int look_index, Qt::BrushStyle fill) {
    const CurveLook look = look_of(look_index);
    QPolygonF ribbon, line;
    for (const SeasonAir& season : seasons) {
      ribbon << QPointF(x_of(season), plot.y_of((season.*fate).high));
      line << QPointF(x_of(season), plot.y_of((season.*fate).median));
    }
    for (auto season = seasons.rbegin(); season != seasons.rend(); ++season) ribbon << QPointF(x_of(*season), plot.y_of(((*season).*fate).low));
    QColor faint = look.colour;
    faint.setAlpha(fill == Qt::SolidPattern ? 45 : 110);
    painter.setPen(line_pen(look, 0.7));
    painter.setBrush(QBrush(faint, fill));
    painter.drawPolygon(ribbon);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(line_pen(look, 2));
    painter.drawPolyline(line);
    for (const QPointF& at : line) paint_marker(painter, look, at);
  };
  series(&SeasonAir::staying, staying_look, Qt::SolidPattern);
  series(&SeasonAir::washed_down, washed_look, Qt::BDiagPattern);
  const double y = plot.y_of(least_air_of_old_mix.value());
  painter.setPen(QPen(current_colours().fault, 1.5, Qt::DashDotLine));
  painter.drawLine(QPointF(plot.plot().left(), y), QPointF(plot.plot().right(), y));
  const QFontMetricsF metrics(painter.font());
  painter.drawText(QRectF(plot.plot().left(), y - metrics.height(), plot.plot().width() - ageing_gap, metrics.height()), Qt::AlignRight | Qt::AlignVCenter, AgeingView::tr("repotting hint"));
}

void paint_gradings(QPainter& painter, const QRectF& room, const AirOverYears& years, UnitSystem units) {
  const auto& last = years.seasons.back().grading;
  AgeingPlot plot(painter, room, AgeingView::tr("Grading, finer than"), 1);
  if (last.size() < 2) return;
  const double from = std::log(in_mm(last.front().aperture)), to = std::log(in_mm(last.back().aperture));
  const auto along = [&](Aperture aperture) { return (std::log(in_mm(aperture)) - from) / (to - from); };
  for (const GradingPoint& point : last) plot.across(along(point.aperture), to_local(size_text(point.aperture, units)));
  for (const SeasonAir& season : years.seasons) {
    const CurveLook look = look_of_season(season.season);
    QPolygonF line;
    for (const GradingPoint& point : season.grading) line << QPointF(plot.plot().left() + plot.plot().width() * along(point.aperture), plot.y_of(point.passing.value()));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(line_pen(look, 1.6));
    painter.drawPolyline(line);
    for (const QPointF& at : line) paint_marker(painter, look, at);
  }
  plot.below(AgeingView::tr("sieve"));
}

}  // namespace

AgeingView::AgeingView(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  setObjectName(QStringLiteral("ageing_view"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The years to come: air and grading by season"));
  setAccessibleDescription(sentence());
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  stands_still_.setSingleShot(true);
  stands_still_.setInterval(ageing_wait_ms);
  connect(&stands_still_, &QTimer::timeout, this, &AgeingView::work_out);
  connect(&bench_, &Bench::changed, this, &AgeingView::ask);
  connect(&bench_, &Bench::units_changed, this, [this] { update(); });
}

QSize AgeingView::minimumSizeHint() const { return {280, 13 * fontMetrics().height()}; }

QString AgeingView::words() const { return sentence() + u'\n' + ageing_notes(bench_, ageing_.get()).join(u' '); }

int AgeingView::heightForWidth(int width) const {
  if (!ageing_) return minimumSizeHint().height();
  const QFontMetricsF metrics(font());
  const AgeingRooms rooms = rooms_of(metrics, QRectF(0, 0, width - 2 * ageing_gap, 0), ageing_->years, words());
  constexpr int plot_lines = 11;
  return static_cast<int>(std::ceil(rooms.legend + rooms.words + 5 * ageing_gap + plot_lines * metrics.height()));
}

QString AgeingView::sentence() const {
  if (answered_ && !ageing_) return tr("Nothing can be foretold for this mix in this pot.");
  return ageing_sentence(bench_, ageing_.get());
}

void AgeingView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  ask();
}

void AgeingView::ask() {
  // Its table may stand in front of it.
  const QWidget* tab = parentWidget();
  while (tab != nullptr && qobject_cast<const QStackedWidget*>(tab) == nullptr) tab = tab->parentWidget();
  if (!isVisible() && !(tab != nullptr && tab->isVisible())) return;
  const auto question = ageing_question(bench_);
  if (question == asked_) return;
  asked_ = question;
  answered_ = false;
  job_.cancel();
  if (!asked_ || (ageing_ && !same_grains(ageing_->of, *asked_))) ageing_.reset();
  if (asked_) {
    stands_still_.start();
    follow();
  } else {
    stands_still_.stop();
    moving_job_.cancel();
  }
  tell();
}

void AgeingView::tell() {
  setAccessibleDescription(sentence());
  updateGeometry();
  update();
  emit aged();
}

void AgeingView::show_ageing(std::shared_ptr<const BenchAgeing> ageing) {
  ageing_ = std::move(ageing);
  tell();
}

// An answer under way is shown even if something moved meanwhile: otherwise nothing would be seen until it stands still.
void AgeingView::follow() {
  if (moving_job_.is_running()) return;
  moving_job_.start([this, question = *asked_, &catalogue = bench_.catalogue()](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    auto ageing = ageing_of(question, catalogue, on_all_cores(), stop, moving_years_sample);
    return [this, ageing = std::move(ageing)] {
      if (!asked_ || answered_) return;
      const bool of_now = ageing && ageing->of == *asked_;
      if (ageing && same_grains(ageing->of, *asked_)) show_ageing(ageing);
      if (ageing && !of_now) QTimer::singleShot(0, this, [this] {
        if (asked_ && !answered_) follow();
      });
    };
  });
}

void AgeingView::work_out() {
  stands_still_.stop();
  if (!asked_ || answered_) return;
  job_.start([this, question = *asked_, &catalogue = bench_.catalogue()](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    auto ageing = ageing_of(question, catalogue, on_all_cores(), stop);
    return [this, ageing = std::move(ageing)] {
      answered_ = true;
      show_ageing(ageing);
    };
  });
}

void AgeingView::finish() {
  ask();
  moving_job_.cancel();
  work_out();
  job_.wait();
}

void AgeingView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(font());
  const QRectF room = QRectF(rect()).adjusted(ageing_gap, ageing_gap, -ageing_gap, -ageing_gap);
  if (!ageing_) {
    painter.setPen(current_colours().muted);
    painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap, sentence());
    return;
  }
  const AirOverYears& years = ageing_->years;
  const QString words_below = words();
  const AgeingRooms rooms = rooms_of(metrics, room, years, words_below);
  const bool both = !rooms.right_legend.isNull();
  paint_legend_row(painter, metrics, rooms.left_legend, legend_of_air());
  if (both) paint_legend_row(painter, metrics, rooms.right_legend, legend_of_gradings(years));
  const double top = room.top() + rooms.legend + ageing_gap;
  const double height = room.bottom() - rooms.words - 2 * ageing_gap - top;
  paint_air(painter, QRectF(room.left(), top, rooms.left_legend.width() + 2 * ageing_gap, height), years);
  if (both) paint_gradings(painter, QRectF(rooms.right_legend.left(), top, rooms.right_legend.width(), height), years, bench_.units());
  painter.setPen(current_colours().palette.color(QPalette::Text));
  painter.drawText(QRectF(room.left(), room.bottom() - rooms.words, room.width(), rooms.words), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words_below);
}

}  // namespace gritwright::desktop
