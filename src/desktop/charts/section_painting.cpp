#include "section_painting.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <algorithm>
#include <vector>

#include "theme.hpp"

namespace gritwright::desktop {

namespace {

struct SectionText {
  Q_DECLARE_TR_FUNCTIONS(PotSection)
};

/// From the left end of the rim, down and along the floor, to its right end.
QPolygonF section_wall(const PotSection& section, const SectionScale& scale) {
  const auto at = [&](double side, const PotWidth& width) {
    return QPointF(scale.floor.x() + side * in_cm(width.length) / 2 * scale.pixels_per_cm, scale.floor.y() - in_cm(width.height) * scale.pixels_per_cm);
  };
  QPolygonF wall;
  for (auto width = section.widths.rbegin(); width != section.widths.rend(); ++width) wall << at(-1, *width);
  for (const PotWidth& width : section.widths) wall << at(1, width);
  return wall;
}

}  // namespace

std::array<SectionFilling, 4> section_fillings() {
  const ThemeColours& theme = current_colours();
  QColor grain = theme.curves[4].colour;
  grain.setAlpha(120);
  return {SectionFilling{&PotSlice::grain, QBrush(grain, Qt::SolidPattern), SectionText::tr("grain")},
          SectionFilling{&PotSlice::water, QBrush(theme.curves[0].colour, Qt::Dense4Pattern), SectionText::tr("water")},
          SectionFilling{&PotSlice::trapped_air, QBrush(theme.muted, Qt::BDiagPattern), SectionText::tr("trapped air")},
          SectionFilling{&PotSlice::free_air, QBrush(Qt::NoBrush), SectionText::tr("air that drains free")}};
}

double section_half_px(const PotSection& section, double height_cm, const SectionScale& scale) {
  const auto& widths = section.widths;
  const auto above = std::ranges::find_if(widths, [&](const PotWidth& width) { return in_cm(width.height) >= height_cm; });
  return in_cm((above == widths.end() ? widths.back() : *above).length) / 2 * scale.pixels_per_cm;
}

void paint_section_fill(QPainter& painter, const PotSection& section, const SectionScale& scale) {
  const auto& slices = section.slices;
  if (slices.empty()) return;
  QPainterPath inside;
  inside.addPolygon(section_wall(section, scale));
  inside.closeSubpath();
  painter.save();
  painter.setClipPath(inside);
  painter.setPen(Qt::NoPen);
  std::vector<double> from(slices.size(), 0);
  for (const SectionFilling& filling : section_fillings()) {
    QPolygonF zone;
    std::vector<double> to(slices.size());
    const auto add = [&](std::size_t i, double share) {
      const double half = section_half_px(section, in_cm(slices[i].height), scale);
      zone << QPointF(scale.floor.x() - half + 2 * half * share, scale.floor.y() - in_cm(slices[i].height) * scale.pixels_per_cm);
    };
    for (std::size_t i = 0; i < slices.size(); ++i) {
      to[i] = from[i] + (slices[i].*filling.share).value();
      add(i, from[i]);
    }
    for (std::size_t i = slices.size(); i-- > 0;) add(i, to[i]);
    painter.setBrush(filling.brush);
    painter.drawPolygon(zone);
    from = to;
  }
  painter.restore();
}

void paint_section_wall(QPainter& painter, const PotSection& section, const SectionScale& scale, const QColor& ink) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(ink, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(section_wall(section, scale));
}

}  // namespace gritwright::desktop
