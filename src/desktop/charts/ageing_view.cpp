#include "ageing_view.hpp"

#include <QCoreApplication>
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
// Where it is narrower than either, the plots stand one above the other.
constexpr double ageing_narrow = 560;
constexpr double ageing_narrow_lines = 25;
// How high a plot is without its words, in lines.
constexpr double full_plot = 8;
constexpr double enough_plot = 5;  // lower than that it would be for the sentences to be in sight too
constexpr double least_plot = 2.5;
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

class SieveAxisText {
  Q_DECLARE_TR_FUNCTIONS(GradingChart)
};

QString title_of_air() { return AgeingView::tr("Air that drains free, 90 of 100 cases"); }
QString title_of_gradings() { return AgeingView::tr("Grading, finer than"); }
QString repotting_hint_name() { return AgeingView::tr("repotting hint"); }
QString percent_name(int percent) { return AgeingView::tr("%1 %").arg(QLocale().toString(percent)); }

double ageing_words_height(const QFontMetricsF& metrics, double width, const QString& words) { return metrics.boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, words).height(); }

/// A plot with its frame: round percents up, whatever across.
class AgeingPlot {
 public:
  struct Tick {
    double along;  ///< 0..1
    QString text;
  };

  AgeingPlot(QPainter& painter, const QRectF& room, const QString& title, double title_height, double most_share)
      : painter_(painter), metrics_(painter.font()), room_(room), most_percent_(static_cast<int>(10 * std::ceil(std::max(most_share, 0.05) * 10))) {
    plot_ = room.adjusted(metrics_.horizontalAdvance(percent_name(most_percent_)) + 2 * ageing_gap, height_above(metrics_, title_height), -right_of_plot, -height_below(metrics_));
    painter_.setPen(current_colours().palette.color(QPalette::Text));
    painter_.drawText(QRectF(room.left() + ageing_gap, room.top() + ageing_gap / 2, room.width() - ageing_gap, title_height), Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, title);
    const int step = percent_step();
    for (int percent = 0; percent <= most_percent_; percent += step) {
      const double y = y_of(percent / 100.0);
      painter_.setPen(QPen(current_colours().grid, 1));
      painter_.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
      painter_.setPen(current_colours().muted);
      painter_.drawText(QRectF(room.left(), y - metrics_.height() / 2, plot_.left() - room.left() - ageing_gap, metrics_.height()), Qt::AlignRight | Qt::AlignVCenter, percent_name(percent));
    }
  }

  /// Title and scale do not touch: half of the uppermost percents stands above the plot.
  [[nodiscard]] static double height_above(const QFontMetricsF& metrics, double title_height) { return ageing_gap / 2 + title_height + 0.4 * metrics.height() + 2; }
  [[nodiscard]] static double height_below(const QFontMetricsF& metrics) { return ticks_below(metrics) + 2 * metrics.height() + 2; }

  [[nodiscard]] const QRectF& plot() const { return plot_; }
  [[nodiscard]] double x_of(double along) const { return plot_.left() + plot_.width() * along; }
  [[nodiscard]] double y_of(double share) const { return plot_.bottom() - plot_.height() * 100 * share / most_percent_; }

  /// Lines up, and below them the words of both ends and of what has room between.
  void across(const std::vector<Tick>& ticks) {
    const double last_from = from_of(ticks.back());
    double free_from = room_.left();
    for (std::size_t i = 0; i < ticks.size(); ++i) {
      const double x = x_of(ticks[i].along);
      painter_.setPen(QPen(current_colours().grid, 1));
      painter_.drawLine(QPointF(x, plot_.top()), QPointF(x, plot_.bottom()));
      const double from = from_of(ticks[i]);
      const double free_again = from + metrics_.horizontalAdvance(ticks[i].text) + ageing_gap;
      const bool last = i + 1 == ticks.size();
      if (from < free_from || (!last && free_again > last_from)) continue;
      painter_.setPen(current_colours().muted);
      painter_.drawText(QPointF(from, plot_.bottom() + ticks_below(metrics_) + metrics_.ascent()), ticks[i].text);
      free_from = free_again;
    }
  }
  void below(const QString& text) {
    painter_.setPen(current_colours().muted);
    painter_.drawText(QRectF(plot_.left(), plot_.bottom() + ticks_below(metrics_) + metrics_.height(), plot_.width(), metrics_.height()), Qt::AlignCenter,
                      metrics_.elidedText(text, Qt::ElideRight, plot_.width()));
  }

  static constexpr double right_of_plot = 2 * ageing_gap;

 private:
  /// The lowest percents reach below the plot.
  [[nodiscard]] static double ticks_below(const QFontMetricsF& metrics) { return 0.3 * metrics.height() + 2; }

  /// Where a word below begins: in the middle of its line as far as the room goes.
  [[nodiscard]] double from_of(const Tick& tick) const {
    const double wide = metrics_.horizontalAdvance(tick.text);
    return std::max(room_.left(), std::min(x_of(tick.along) - wide / 2, room_.right() - wide));
  }

  [[nodiscard]] int percent_step() const {
    constexpr int most_steps = 5;
    constexpr double least_lines = 0.85;  // figures fill less than their line
    for (const int step : {10, 20}) {
      const double apart = plot_.height() * step / most_percent_;
      if (most_percent_ <= most_steps * step && apart >= least_lines * metrics_.height()) return step;
    }
    return 50;
  }

  QPainter& painter_;
  QFontMetricsF metrics_;
  QRectF room_;
  int most_percent_;
  QRectF plot_;
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

/// How the plots with their legends and titles stand, and the words below; heights are those of the text.
struct AgeingLayout {
  bool beside = true;  ///< else the gradings are below the air
  double air_width = 0;
  double grading_width = 0;
  double air_legend = 0;
  double grading_legend = 0;
  double air_title = 0;
  double grading_title = 0;
  double words = 0;

  /// Around the upper plot.
  [[nodiscard]] double first(const QFontMetricsF& metrics) const { return air_legend + ageing_gap + AgeingPlot::height_above(metrics, air_title) + AgeingPlot::height_below(metrics); }
  /// Around the lower one, where there is one.
  [[nodiscard]] double second(const QFontMetricsF& metrics) const {
    return beside ? 0 : 2 * ageing_gap + grading_legend + AgeingPlot::height_above(metrics, grading_title) + AgeingPlot::height_below(metrics);
  }
  /// All but the plots.
  [[nodiscard]] double around(const QFontMetricsF& metrics) const { return first(metrics) + second(metrics) + ageing_gap + words; }
  [[nodiscard]] int rows() const { return beside ? 1 : 2; }

  /// Of one plot where so much is in sight at once: axes before sentences, which can be scrolled to.
  [[nodiscard]] double plot_height(const QFontMetricsF& metrics, double in_sight) const {
    const double line = metrics.height();
    const double with_words = (in_sight - around(metrics)) / rows();
    if (with_words >= enough_plot * line) return std::min(with_words, full_plot * line);
    return std::clamp(in_sight - first(metrics), least_plot * line, full_plot * line);
  }
};

AgeingLayout layout_of(const QFontMetricsF& metrics, double width, const AirOverYears& years, const QString& words) {
  AgeingLayout layout;
  layout.air_width = 0.52 * width;
  layout.grading_width = width - layout.air_width - ageing_gap;
  const double scale = metrics.horizontalAdvance(percent_name(100)) + 2 * ageing_gap;
  const double air_plot = layout.air_width - scale - AgeingPlot::right_of_plot;
  layout.beside = width >= std::max(ageing_narrow, ageing_narrow_lines * metrics.height()) && metrics.horizontalAdvance(repotting_hint_name()) + ageing_gap <= air_plot;
  if (!layout.beside) layout.air_width = layout.grading_width = width;
  layout.air_legend = legend_row(metrics, QRectF(0, 0, layout.air_width - 2 * ageing_gap, 0), legend_of_air()).second;
  layout.grading_legend = legend_row(metrics, QRectF(0, 0, layout.grading_width, 0), legend_of_gradings(years)).second;
  layout.air_title = ageing_words_height(metrics, layout.air_width - ageing_gap, title_of_air());
  layout.grading_title = ageing_words_height(metrics, layout.grading_width - ageing_gap, title_of_gradings());
  if (layout.beside) {
    layout.air_legend = layout.grading_legend = std::max(layout.air_legend, layout.grading_legend);
    layout.air_title = layout.grading_title = std::max(layout.air_title, layout.grading_title);
  }
  layout.words = ageing_words_height(metrics, width, words);
  return layout;
}

void paint_air(QPainter& painter, const QRectF& room, double title_height, const AirOverYears& years) {
  const auto& seasons = years.seasons;
  double most = least_air_of_old_mix.value() + 0.05;  // so that the limit is a line within the plot
  for (const SeasonAir& season : seasons) most = std::max({most, season.staying.high, season.washed_down.high});
  AgeingPlot plot(painter, room, title_of_air(), title_height, most);
  const double last = std::max<double>(1, seasons.back().season);
  std::vector<AgeingPlot::Tick> ticks;
  for (const SeasonAir& season : seasons) ticks.push_back({season.season / last, season.season == 0 ? AgeingView::tr("new") : QLocale().toString(season.season)});
  plot.across(ticks);
  plot.below(AgeingView::tr("season"));
  const auto x_of = [&](const SeasonAir& season) { return plot.x_of(season.season / last); };
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
  const double width = plot.plot().width() - ageing_gap;
  const double height = ageing_words_height(metrics, width, repotting_hint_name());
  constexpr double off_line = 2;
  const double above = y - off_line - height;
  // Letters do not reach to the top of their line.
  const bool has_room_above = above >= plot.plot().top() - 0.15 * metrics.height();
  const QRectF place(plot.plot().left(), has_room_above ? above : y + off_line, width, height);
  constexpr int how_words_lie = Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap;
  // Below the line it would lie across the curves.
  if (!has_room_above) painter.fillRect(metrics.boundingRect(place, how_words_lie, repotting_hint_name()), current_colours().palette.color(QPalette::Base));
  painter.drawText(place, how_words_lie, repotting_hint_name());
}

void paint_gradings(QPainter& painter, const QRectF& room, double title_height, const AirOverYears& years, UnitSystem units) {
  const auto& last = years.seasons.back().grading;
  AgeingPlot plot(painter, room, title_of_gradings(), title_height, 1);
  if (last.size() < 2) return;
  const double from = std::log(in_mm(last.front().aperture)), to = std::log(in_mm(last.back().aperture));
  const auto along = [&](Aperture aperture) { return (std::log(in_mm(aperture)) - from) / (to - from); };
  const bool metric = units == UnitSystem::metric;
  std::vector<AgeingPlot::Tick> ticks;
  for (const GradingPoint& point : last) ticks.push_back({along(point.aperture), metric ? QLocale().toString(in_mm(point.aperture), 'g', 3) : to_local(size_text(point.aperture, units))});
  plot.across(ticks);
  for (const SeasonAir& season : years.seasons) {
    const CurveLook look = look_of_season(season.season);
    QPolygonF line;
    for (const GradingPoint& point : season.grading) line << QPointF(plot.x_of(along(point.aperture)), plot.y_of(point.passing.value()));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(line_pen(look, 1.6));
    painter.drawPolyline(line);
    for (const QPointF& at : line) paint_marker(painter, look, at);
  }
  plot.below(metric ? SieveAxisText::tr("sieve opening, mm") : AgeingView::tr("sieve"));
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

QSize AgeingView::minimumSizeHint() const { return {280, 6 * fontMetrics().height()}; }

QString AgeingView::words() const { return sentence() + u'\n' + ageing_notes(bench_, ageing_.get()).join(u' '); }

int AgeingView::heightForWidth(int width) const {
  if (!ageing_) return minimumSizeHint().height();
  const QFontMetricsF metrics(font());
  const AgeingLayout layout = layout_of(metrics, width - 2 * ageing_gap, ageing_->years, words());
  const double in_sight = parentWidget() != nullptr ? parentWidget()->height() - 2 * ageing_gap : 0;
  return static_cast<int>(std::ceil(layout.around(metrics) + layout.rows() * layout.plot_height(metrics, in_sight) + 2 * ageing_gap));
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
  const AgeingLayout layout = layout_of(metrics, room.width(), years, words_below);
  const double plot_height = std::max(1.0, (room.height() - layout.around(metrics)) / layout.rows());
  const double first_height = layout.first(metrics) + plot_height;
  const QRectF air(room.left(), room.top(), layout.air_width, first_height);
  const QRectF grading = layout.beside ? QRectF(room.right() - layout.grading_width, room.top(), layout.grading_width, first_height)
                                       : QRectF(room.left(), air.bottom() + ageing_gap, layout.grading_width, layout.second(metrics) - ageing_gap + plot_height);
  paint_legend_row(painter, metrics, air.adjusted(0, 0, -2 * ageing_gap, 0), legend_of_air());
  paint_legend_row(painter, metrics, grading, legend_of_gradings(years));
  paint_air(painter, air.adjusted(0, layout.air_legend + ageing_gap, 0, 0), layout.air_title, years);
  paint_gradings(painter, grading.adjusted(0, layout.grading_legend + ageing_gap, 0, 0), layout.grading_title, years, bench_.units());
  painter.setPen(current_colours().palette.color(QPalette::Text));
  painter.drawText(QRectF(room.left(), room.bottom() - layout.words, room.width(), layout.words), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words_below);
}

}  // namespace gritwright::desktop
