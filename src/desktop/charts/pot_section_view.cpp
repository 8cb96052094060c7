#include "pot_section_view.hpp"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "gritwright/report/quantity_text.hpp"
#include "models/typed_text.hpp"
#include "section_table.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double section_gap = 8;
constexpr double step_cm = 0.5;
constexpr double least_depth_cm = 1;
constexpr double most_depth_cm = 60;

}  // namespace

std::optional<PotSection> bench_pot_section(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  if (!evaluation.pot) return std::nullopt;
  return pot_section(*evaluation.pot, evaluation.water ? &*evaluation.water : nullptr);
}

QString pot_section_sentence(const Bench& bench) {
  const auto section = bench_pot_section(bench);
  if (!section) return PotSectionView::tr("No pot yet: type its shape and inside lengths.");
  const UnitSystem units = bench.units();
  const QString depth = to_local(depth_text(section->fill_line, units));
  if (section->slices.empty()) return PotSectionView::tr("Pot in section, filled %1 deep; no mix yet, so no water.").arg(depth);
  return PotSectionView::tr("Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.")
      .arg(depth, to_local(depth_text(section->perched, units)), to_local(percent_text(section->slices.front().water.value())),
           to_local(percent_text(section->slices.back().water.value())));
}

PictureTable pot_section_table(const Bench& bench, const BenchRanges* ranges) {
  const auto section = bench_pot_section(bench);
  return section_table(section ? &*section : nullptr, ranges != nullptr ? &ranges->mix : nullptr, bench.units());
}

PictureTable pot_section_data(const Bench& bench, const BenchRanges* ranges) {
  const auto section = bench_pot_section(bench);
  return section_data(section ? &*section : nullptr, ranges != nullptr ? &ranges->mix : nullptr);
}

PotSectionView::PotSectionView(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  setObjectName(QStringLiteral("pot_section"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Pot in section; up and down change its depth"));
  connect(&bench_, &Bench::changed, this, &PotSectionView::refresh);
  connect(&bench_, &Bench::units_changed, this, &PotSectionView::refresh);
}

QSize PotSectionView::minimumSizeHint() const { return {280, 10 * fontMetrics().height()}; }

void PotSectionView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void PotSectionView::refresh() {
  // Its slices are cut anew each time; nobody waits for them while another picture is in front.
  if (!isVisible()) return;
  section_ = bench_pot_section(bench_);
  setAccessibleDescription(pot_section_sentence(bench_));
  setToolTip(section_ ? tr("Drag the rim, or press Up and Down, to try another depth") : QString());
  update();
}

PotSectionView::Scale PotSectionView::scale() const {
  if (dragging_) return *dragging_;
  double widest = 0;
  for (const PotWidth& width : section_->widths) widest = std::max(widest, in_cm(width.length));
  const double line = fontMetrics().height();
  const auto advance = [this](const QString& words) { return fontMetrics().horizontalAdvance(words.arg(QStringLiteral("00.00 cm"))); };
  const double names = std::max(advance(tr("wet zone %1")), advance(tr("filled %1"))) + 3 * section_gap;
  const double top = legend_height() + line;
  const QRectF room(section_gap, top, std::max(40.0, width() - names - section_gap), std::max(20.0, height() - top - line - 2 * section_gap));
  const double pixels = std::min(room.width() / widest, room.height() / in_cm(section_->rim));
  return {std::max(0.5, pixels), QPointF(room.center().x(), room.center().y() + pixels * in_cm(section_->rim) / 2)};
}

void PotSectionView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  painter.setPen(palette().color(QPalette::Text));
  if (!section_) {
    painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, pot_section_sentence(bench_));
    return;
  }
  const Scale at = scale();
  paint_section_fill(painter, *section_, at);
  paint_pot(painter, at);
  paint_lines(painter, at);
  paint_legend(painter);
}

void PotSectionView::paint_pot(QPainter& painter, const Scale& scale) const {
  paint_section_wall(painter, *section_, scale, hasFocus() ? palette().color(QPalette::Highlight) : palette().color(QPalette::Text));
}

void PotSectionView::paint_lines(QPainter& painter, const Scale& scale) const {
  const UnitSystem units = bench_.units();
  const auto line = [&](Depth height, Qt::PenStyle style, const QString& text, bool above) {
    const double y = scale.floor.y() - in_cm(height) * scale.pixels_per_cm;
    const double half = section_half_px(*section_, in_cm(height), scale);
    painter.setPen(QPen(palette().color(QPalette::Text), 1.5, style));
    painter.drawLine(QPointF(scale.floor.x() - half, y), QPointF(scale.floor.x() + half + 2 * section_gap, y));
    painter.drawText(QPointF(scale.floor.x() + half + 3 * section_gap, above ? y - 3 : y + fontMetrics().ascent() / 2.0), text);
  };
  line(section_->fill_line, Qt::DashLine, tr("filled %1").arg(to_local(depth_text(section_->fill_line, units))), false);
  if (section_->perched) line(*section_->perched, Qt::DotLine, tr("wet zone %1").arg(to_local(depth_text(section_->perched, units))), false);
  painter.setPen(palette().color(QPalette::Text));
  const QString depth = tr("depth inside %1").arg(to_local(depth_text(section_->rim, units)));
  const double taken = fontMetrics().horizontalAdvance(depth);
  const double left = std::max(section_gap, std::min(scale.floor.x() - taken / 2, width() - section_gap - taken));
  painter.drawText(QPointF(left, scale.floor.y() + fontMetrics().height() + section_gap / 2), depth);
}

std::vector<QPointF> PotSectionView::legend_places() const {
  std::vector<QPointF> places;
  QPointF at(section_gap, section_gap);
  const double line = fontMetrics().height();
  for (const SectionFilling& filling : section_fillings()) {
    const double taken = 2 * line + 3 * section_gap + fontMetrics().horizontalAdvance(filling.name);
    if (at.x() > section_gap && at.x() + taken > width()) at = QPointF(section_gap, at.y() + line + 4);
    places.push_back(at);
    at.rx() += taken;
  }
  return places;
}

double PotSectionView::legend_height() const { return legend_places().back().y() + fontMetrics().height() + section_gap; }

void PotSectionView::paint_legend(QPainter& painter) const {
  if (section_->slices.empty()) return;
  const double line = fontMetrics().height();
  const std::vector<QPointF> places = legend_places();
  std::size_t place = 0;
  for (const SectionFilling& filling : section_fillings()) {
    const QRectF swatch(places[place], QSizeF(1.6 * line, line));
    const double y = places[place++].y();
    painter.setPen(QPen(current_colours().field_edge, 1));
    painter.setBrush(filling.brush);
    painter.drawRect(swatch);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QPointF(swatch.right() + section_gap, y + fontMetrics().ascent()), filling.name);
  }
}

void PotSectionView::set_depth_cm(double depth) {
  if (bench_.state().pot.shape == Shape::profile) return;  // its depth is that of its table
  const QString text = number_text(std::round(10 * std::clamp(depth, least_depth_cm, most_depth_cm)) / 10, 4) + QStringLiteral(" cm");
  const QString kept = bench_.units() == UnitSystem::metric ? text.chopped(3) : text;
  bench_.edit(tr("depth of the pot"), QStringLiteral("pot_section_depth"), [&](BenchState& state) { state.pot.depth = kept; });
}

void PotSectionView::mousePressEvent(QMouseEvent* event) {
  if (!section_ || event->button() != Qt::LeftButton) return;
  const Scale at = scale();
  const double rim_y = at.floor.y() - in_cm(section_->rim) * at.pixels_per_cm;
  if (std::abs(event->position().y() - rim_y) > 14) return;
  dragging_ = at;
}

void PotSectionView::mouseMoveEvent(QMouseEvent* event) {
  if (!dragging_) return;
  set_depth_cm((dragging_->floor.y() - event->position().y()) / dragging_->pixels_per_cm);
}

void PotSectionView::mouseReleaseEvent(QMouseEvent*) {
  if (!dragging_) return;
  dragging_.reset();
  bench_.end_typing();
  update();
}

void PotSectionView::keyPressEvent(QKeyEvent* event) {
  const bool moves = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
  if (!section_ || !moves) return QWidget::keyPressEvent(event);
  set_depth_cm(in_cm(section_->rim) + (event->key() == Qt::Key_Up ? step_cm : -step_cm));
  bench_.end_typing();
}

}  // namespace gritwright::desktop
