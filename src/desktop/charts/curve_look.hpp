#pragma once
#include <QPainter>
#include <QPen>
#include <QPixmap>
#include <QtCharts/QScatterSeries>
#include <optional>
#include <vector>

#include "theme.hpp"

namespace gritwright::desktop {

/// The look of a component's curve; -1 is the blend.
[[nodiscard]] CurveLook look_of(int index);

/// The line of a curve so wide.
[[nodiscard]] QPen line_pen(const CurveLook& look, double width);

/// Faint enough to stay behind, still a line to follow.
[[nodiscard]] QPen faint_pen(QColor colour);

[[nodiscard]] QScatterSeries::MarkerShape chart_marker(CurveLook::Marker marker);

/// Line and marker from the painter's origin to `size`.
void paint_swatch(QPainter& painter, const CurveLook& look, const QSize& size);

/// The same as a picture, for lists that name the curves.
[[nodiscard]] QPixmap swatch(const CurveLook& look, const QSize& size, double device_pixel_ratio);

}  // namespace gritwright::desktop
