#include "pot_drawing.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double gap = 10;

QString length_text(Length length, UnitSystem units) { return to_local(depth_text(Depth(length), units)); }

QStringList ring_names() { return {PotDrawing::tr("rim"), PotDrawing::tr("fill line"), PotDrawing::tr("floor")}; }

constexpr Qt::PenStyle ring_styles[] = {Qt::SolidLine, Qt::DashLine, Qt::DotLine};

}  // namespace

PotDrawing::PotDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("pot_drawing"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The pot to scale, from the front and from above"));
  show_pot(nullptr, UnitSystem::metric);
}

QSize PotDrawing::minimumSizeHint() const { return {260, 9 * fontMetrics().height()}; }

void PotDrawing::show_pot(const Container* pot, UnitSystem units) {
  units_ = units;
  section_.reset();
  rings_.clear();
  sections_.clear();
  if (pot != nullptr && check(*pot).empty()) {
    const PotGeometry geometry(*pot);
    section_ = pot_section(geometry, nullptr);
    rings_ = pot_rings(geometry);
    for (const PotRing& ring : rings_) sections_.push_back(geometry.section_at(ring.height));
  }
  if (section_) {
    setAccessibleDescription(tr("Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.")
                                 .arg(length_text(sections_[0].length, units), length_text(sections_[0].width, units), length_text(sections_[2].length, units),
                                      length_text(sections_[2].width, units), to_local(depth_text(section_->rim, units)), to_local(depth_text(section_->fill_line, units))));
  } else {
    setAccessibleDescription(tr("No pot yet."));
  }
  update();
}

PictureTable PotDrawing::table() const {
  PictureTable table{{tr("where"), tr("height"), tr("length"), tr("width")}, {}};
  const QStringList names = ring_names();
  for (std::size_t i = 0; i < rings_.size(); ++i) {
    table.rows.push_back({names[static_cast<qsizetype>(i)], to_local(depth_text(rings_[i].height, units_)), length_text(sections_[i].length, units_), length_text(sections_[i].width, units_)});
  }
  return table;
}

PictureTable PotDrawing::data() const {
  PictureTable table{{QStringLiteral("height_cm"), QStringLiteral("length_cm"), QStringLiteral("width_cm")}, {}};
  const QLocale plain = QLocale::c();
  for (std::size_t i = 0; i < rings_.size(); ++i) {
    table.rows.push_back({plain.toString(in_cm(rings_[i].height), 'f', 3), plain.toString(in_cm(sections_[i].length), 'f', 3), plain.toString(in_cm(sections_[i].width), 'f', 3)});
  }
  return table;
}

void PotDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  painter.setPen(palette().color(QPalette::Text));
  if (!section_) {
    painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, accessibleDescription());
    return;
  }
  double longest = 0;
  double widest = 0;
  for (const PotRing& ring : rings_) {
    for (const auto& [across, along] : ring.points) {
      longest = std::max(longest, 2 * in_cm(across));
      widest = std::max(widest, 2 * in_cm(along));
    }
  }
  for (const PotWidth& width : section_->widths) longest = std::max(longest, in_cm(width.length));
  // Side by side where the picture is wide, one over the other where it is high.
  const double line = fontMetrics().height();
  const double deep = in_cm(section_->rim);
  const double room_x = width() - 3 * gap;
  const double room_y = height() - 3 * gap - 2 * line;
  const double beside = std::min(room_x / (2 * longest), room_y / std::max(deep, widest));
  const double stacked = std::min((room_x + gap) / longest, (room_y - line - gap) / (deep + widest));
  if (beside >= stacked) {
    const double scale = std::max(0.5, beside);
    const double middle_y = gap + line + (room_y + gap) / 2;
    paint_front(painter, {gap + longest * scale / 2, middle_y + deep * scale / 2}, scale);
    paint_above(painter, {width() - gap - longest * scale / 2, middle_y}, scale);
  } else {
    const double scale = std::max(0.5, stacked);
    const double used = (deep + widest) * scale + 3 * line + gap;
    const double top = std::max(gap, (height() - used) / 2);
    paint_front(painter, {width() / 2.0, top + line + deep * scale}, scale);
    paint_above(painter, {width() / 2.0, top + 2.2 * line + gap + deep * scale + widest * scale / 2}, scale);
  }
}

void PotDrawing::paint_front(QPainter& painter, QPointF floor, double pixels_per_cm) const {
  const auto at = [&](double across_cm, double height_cm) { return QPointF(floor.x() + across_cm * pixels_per_cm, floor.y() - height_cm * pixels_per_cm); };
  QPolygonF wall;
  for (auto width = section_->widths.rbegin(); width != section_->widths.rend(); ++width) wall << at(-in_cm(width->length) / 2, in_cm(width->height));
  for (const PotWidth& width : section_->widths) wall << at(in_cm(width.length) / 2, in_cm(width.height));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Text), 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(wall);
  const double half_fill = in_cm(sections_[1].length) / 2;
  painter.setPen(QPen(palette().color(QPalette::Text), 1.2, Qt::DashLine));
  painter.drawLine(at(-half_fill, in_cm(section_->fill_line)), at(half_fill, in_cm(section_->fill_line)));
  painter.setPen(palette().color(QPalette::Text));
  const auto centred = [&](double y, const QString& text) { painter.drawText(QPointF(floor.x() - fontMetrics().horizontalAdvance(text) / 2.0, y), text); };
  centred(floor.y() - in_cm(section_->rim) * pixels_per_cm - 4, tr("rim %1").arg(length_text(sections_[0].length, units_)));
  centred(floor.y() + fontMetrics().height(), tr("floor %1, depth %2").arg(length_text(sections_[2].length, units_), to_local(depth_text(section_->rim, units_))));
}

void PotDrawing::paint_above(QPainter& painter, QPointF middle, double pixels_per_cm) const {
  painter.setBrush(Qt::NoBrush);
  double widest = 0;
  for (std::size_t i = 0; i < rings_.size(); ++i) {
    QPolygonF outline;
    for (const auto& [across, along] : rings_[i].points) {
      outline << QPointF(middle.x() + in_cm(across) * pixels_per_cm, middle.y() - in_cm(along) * pixels_per_cm);
      widest = std::max(widest, in_cm(along));
    }
    painter.setPen(QPen(palette().color(QPalette::Text), i == 0 ? 2.5 : 1.2, ring_styles[i]));
    painter.drawPolygon(outline);
  }
  painter.setPen(palette().color(QPalette::Text));
  const QString text = tr("from above, %1 wide").arg(length_text(sections_[0].width, units_));
  painter.drawText(QPointF(middle.x() - fontMetrics().horizontalAdvance(text) / 2.0, middle.y() + widest * pixels_per_cm + fontMetrics().height()), text);
}

}  // namespace gritwright::desktop
