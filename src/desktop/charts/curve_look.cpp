#include "curve_look.hpp"

#include <QPolygonF>
#include <cmath>
#include <numbers>

namespace gritwright::desktop {

CurveLook look_of(int index) {
  const ThemeColours& colours = current_colours();
  if (index < 0) return {colours.blend, Qt::SolidLine, CurveLook::Marker::circle};
  return colours.curves[static_cast<std::size_t>(index) % colours.curves.size()];
}

QPen line_pen(const CurveLook& look, double width) {
  QPen pen(look.colour, width, look.line);
  if (look.line == Qt::CustomDashLine) pen.setDashPattern({10, 3});
  return pen;
}

QPen faint_pen(QColor colour) {
  colour.setAlphaF(0.8F);
  return QPen(colour, 1.5);
}

QScatterSeries::MarkerShape chart_marker(CurveLook::Marker marker) {
  switch (marker) {
    case CurveLook::Marker::circle: return QScatterSeries::MarkerShapeCircle;
    case CurveLook::Marker::square: return QScatterSeries::MarkerShapeRectangle;
    case CurveLook::Marker::triangle: return QScatterSeries::MarkerShapeTriangle;
    case CurveLook::Marker::diamond: return QScatterSeries::MarkerShapeRotatedRectangle;
    case CurveLook::Marker::cross: return QScatterSeries::MarkerShapeStar;
    case CurveLook::Marker::pentagon: return QScatterSeries::MarkerShapePentagon;
  }
  return QScatterSeries::MarkerShapeCircle;
}

QPixmap swatch(const CurveLook& look, const QSize& size, double device_pixel_ratio) {
  QPixmap pixmap(size * device_pixel_ratio);
  pixmap.setDevicePixelRatio(device_pixel_ratio);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  paint_swatch(painter, look, size);
  return pixmap;
}

void paint_swatch(QPainter& painter, const CurveLook& look, const QSize& size) {
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF middle(size.width() / 2.0, size.height() / 2.0);
  painter.setPen(line_pen(look, 2));
  painter.drawLine(QPointF(1, middle.y()), QPointF(size.width() - 1, middle.y()));
  painter.setPen(Qt::NoPen);
  painter.setBrush(look.colour);
  const double r = 5;
  switch (look.marker) {
    case CurveLook::Marker::circle: painter.drawEllipse(middle, r, r); break;
    case CurveLook::Marker::square: painter.drawRect(QRectF(middle.x() - r, middle.y() - r, 2 * r, 2 * r)); break;
    case CurveLook::Marker::triangle:
      painter.drawPolygon(QPolygonF({middle + QPointF(0, -r), middle + QPointF(r, r), middle + QPointF(-r, r)}));
      break;
    case CurveLook::Marker::diamond:
      painter.drawPolygon(QPolygonF({middle + QPointF(0, -r - 1), middle + QPointF(r + 1, 0), middle + QPointF(0, r + 1), middle + QPointF(-r - 1, 0)}));
      break;
    case CurveLook::Marker::cross: {
      QPolygonF star;
      for (int i = 0; i < 10; ++i) {
        const double radius = i % 2 == 0 ? r + 1.5 : r * 0.45;
        const double angle = i * 0.6283185307;
        star << middle + QPointF(radius * std::sin(angle), -radius * std::cos(angle));
      }
      painter.drawPolygon(star);
      break;
    }
    case CurveLook::Marker::pentagon: {
      QPolygonF corners;
      constexpr double fifth = 2 * std::numbers::pi / 5;
      for (int i = 0; i < 5; ++i) corners << middle + QPointF(r * std::sin(i * fifth), -r * std::cos(i * fifth));
      painter.drawPolygon(corners);
      break;
    }
  }
}

}  // namespace gritwright::desktop
