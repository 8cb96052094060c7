#include "drawing_object.hpp"

#include <QPainter>
#include <QPainterPath>
#include <QTextFormat>
#include <cmath>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

QPen pen_of(Ink ink, double points_per_mm) {
  constexpr double thick_mm = 0.4, thin_mm = 0.15;
  QPen pen(Qt::black, (ink == Ink::outline ? thick_mm : thin_mm) * points_per_mm);
  if (ink == Ink::dashed) pen.setDashPattern({8, 5});
  return pen;
}

/// Lines at 45 degrees; a brush pattern would become an image in a PDF.
void hatch(QPainter& painter, const QPainterPath& area, double points_per_mm) {
  constexpr double apart_mm = 1.6;
  const QRectF box = area.boundingRect();
  painter.save();
  painter.setClipPath(area, Qt::IntersectClip);
  const double apart = apart_mm * points_per_mm;
  const int lines = static_cast<int>(std::ceil((box.width() + box.height()) / apart));
  for (int line = 0; line < lines; ++line) {
    const double x = box.left() - box.height() + line * apart;
    painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
  }
  painter.restore();
}

}  // namespace

int DrawingObject::add(const PrintDrawing& drawing) {
  drawings_.push_back(drawing);
  return static_cast<int>(drawings_.size()) - 1;
}

QSizeF DrawingObject::intrinsicSize(QTextDocument* /*document*/, int /*position*/, const QTextFormat& format) {
  const PrintDrawing& drawing = drawings_.at(static_cast<std::size_t>(format.intProperty(index_property)));
  return QSizeF(drawing.width_mm, drawing.height_mm) * points_per_mm_;
}

void DrawingObject::drawObject(QPainter* painter, const QRectF& area, QTextDocument* /*document*/, int /*position*/, const QTextFormat& format) {
  const PrintDrawing& drawing = drawings_.at(static_cast<std::size_t>(format.intProperty(index_property)));
  painter->save();
  painter->translate(area.topLeft());
  for (const DrawnLine& line : drawing.lines) {
    QPainterPath path;
    for (std::size_t i = 0; i < line.points.size(); ++i) {
      const QPointF point(line.points[i].x_mm * points_per_mm_, line.points[i].y_mm * points_per_mm_);
      if (i == 0)
        path.moveTo(point);
      else
        path.lineTo(point);
    }
    const bool filled = line.ink == Ink::grey || line.ink == Ink::hatched;
    if (filled) path.closeSubpath();
    painter->setPen(pen_of(line.ink, points_per_mm_));
    if (line.ink == Ink::grey) painter->fillPath(path, QColor(215, 215, 215));
    if (line.ink == Ink::hatched) hatch(*painter, path, points_per_mm_);
    painter->drawPath(path);
  }
  painter->setPen(Qt::black);
  for (const DrawnText& text : drawing.texts)
    painter->drawText(QPointF(text.at.x_mm * points_per_mm_, text.at.y_mm * points_per_mm_), to_qt(text.text));
  painter->restore();
}

}  // namespace gritwright::desktop
