#include "pot_drawing.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cstddef>

#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double gap = 10;
constexpr double word_gap = 4;         // a line and the words about it
constexpr double least_pot_scale = 0.5;   // pixels in a centimetre
constexpr int pot_words_flags = Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap;

QString length_text(Length length, UnitSystem units) { return to_local(depth_text(Depth(length), units)); }

/// A line does not end between a number and its unit.
QString unbroken_length(Length length, UnitSystem units) { return length_text(length, units).replace(u' ', QChar(QChar::Nbsp)); }

QStringList ring_names() { return {PotDrawing::tr("rim"), PotDrawing::tr("fill line"), PotDrawing::tr("floor")}; }

constexpr Qt::PenStyle ring_styles[] = {Qt::SolidLine, Qt::DashLine, Qt::DotLine};

}  // namespace

PotDrawing::PotDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("pot_drawing"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The pot to scale, from the front and from above"));
  show_pot(nullptr, UnitSystem::metric);
}

QSize PotDrawing::minimumSizeHint() const { return {260, 12 * fontMetrics().height()}; }

void PotDrawing::show_pot(const Container* pot, UnitSystem units) {
  units_ = units;
  section_.reset();
  geometry_.reset();
  rings_.clear();
  sections_.clear();
  if (pot != nullptr && check(*pot).empty()) {
    const PotGeometry& geometry = geometry_.emplace(*pot);
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
  // Side by side where the picture is wide, one over the other where it is high. The words have their room first, in as many lines as they need.
  const double deep = in_cm(section_->rim);
  const double half = (width() - 3 * gap) / 2;
  const double whole = width() - 2 * gap;
  const auto words_of = [this](double room) {
    return Words{height_of(rim_words(), room), height_of(floor_words(), room), height_of(above_words(), room)};
  };
  const Words halved = words_of(half);
  const Words one_over_other = words_of(whole);
  const double room_y = height() - 2 * gap;
  const double beside = std::min({half / longest, (room_y - halved.rim - halved.floor) / deep, (room_y - halved.above) / widest});
  const double stacked = std::min(whole / longest, (room_y - one_over_other.sum() - gap) / (deep + widest));
  const double scale = std::max(least_pot_scale, std::max(beside, stacked));
  if (beside >= stacked) {
    const double front = (height() - halved.rim - halved.floor - deep * scale) / 2;
    paint_front(painter, QRectF(gap, front, half, deep * scale + halved.rim + halved.floor), halved, scale);
    const double above = (height() - halved.above - widest * scale) / 2;
    paint_above(painter, QRectF(2 * gap + half, above, half, widest * scale + halved.above), scale);
  } else {
    const double top = std::max(gap, (height() - (deep + widest) * scale - one_over_other.sum() - gap) / 2);
    const double front = deep * scale + one_over_other.rim + one_over_other.floor;
    paint_front(painter, QRectF(gap, top, whole, front), one_over_other, scale);
    paint_above(painter, QRectF(gap, top + front + gap, whole, widest * scale + one_over_other.above), scale);
  }
}

QString PotDrawing::rim_words() const { return tr("rim %1").arg(unbroken_length(sections_[0].length, units_)); }
QString PotDrawing::floor_words() const { return tr("floor %1, depth %2").arg(unbroken_length(sections_[2].length, units_), unbroken_length(section_->rim.quantity(), units_)); }
QString PotDrawing::above_words() const { return tr("from above, %1 wide").arg(unbroken_length(sections_[0].width, units_)); }

double PotDrawing::height_of(const QString& words, double room) const {
  return fontMetrics().boundingRect(QRect(0, 0, static_cast<int>(room), height()), pot_words_flags, words).height() + word_gap;
}

void PotDrawing::paint_front(QPainter& painter, const QRectF& room, const Words& words, double pixels_per_cm) const {
  const QPointF floor(room.center().x(), room.bottom() - words.floor);
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
  painter.drawText(QRectF(room.left(), room.top(), room.width(), words.rim - word_gap), pot_words_flags, rim_words());
  painter.drawText(QRectF(room.left(), floor.y() + word_gap, room.width(), words.floor - word_gap), pot_words_flags, floor_words());
}

void PotDrawing::paint_above(QPainter& painter, const QRectF& room, double pixels_per_cm) const {
  double widest = 0;
  for (const PotRing& ring : rings_)
    for (const auto& [across, along] : ring.points) widest = std::max(widest, in_cm(along));
  const QPointF middle(room.center().x(), room.top() + widest * pixels_per_cm);
  painter.setBrush(Qt::NoBrush);
  for (std::size_t i = 0; i < rings_.size(); ++i) {
    QPolygonF outline;
    for (const auto& [across, along] : rings_[i].points) outline << QPointF(middle.x() + in_cm(across) * pixels_per_cm, middle.y() - in_cm(along) * pixels_per_cm);
    painter.setPen(QPen(palette().color(QPalette::Text), i == 0 ? 2.5 : 1.2, ring_styles[i]));
    painter.drawPolygon(outline);
  }
  painter.setPen(palette().color(QPalette::Text));
  const double below = middle.y() + widest * pixels_per_cm + word_gap;
  painter.drawText(QRectF(room.left(), below, room.width(), room.bottom() - below), pot_words_flags, above_words());
}

}  // namespace gritwright::desktop
