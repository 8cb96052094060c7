#pragma once
// A pot in section as all of its pictures draw it.

#include <QBrush>
#include <QPointF>
#include <QString>
#include <array>

#include "gritwright/report/pot_section.hpp"

class QColor;
class QPainter;

namespace gritwright::desktop {

/// Where the pot's lengths lie on a widget.
struct SectionScale {
  double pixels_per_cm = 1;
  QPointF floor;  ///< middle of the floor
};

struct SectionFilling {
  Porosity PotSlice::*share;
  QBrush brush;
  QString name;
};

/// From the left wall to the right. Each has its own pattern, so that colour is not needed to tell them apart.
[[nodiscard]] std::array<SectionFilling, 4> section_fillings();

/// Half the pot's width at a height, in pixels.
[[nodiscard]] double section_half_px(const PotSection& section, double height_cm, const SectionScale& scale);

/// Fills the inside by the shares at every height; nothing where there is no mix.
void paint_section_fill(QPainter& painter, const PotSection& section, const SectionScale& scale);
void paint_section_wall(QPainter& painter, const PotSection& section, const SectionScale& scale, const QColor& ink);

}  // namespace gritwright::desktop
