#pragma once
#include <QString>
#include <QStringList>
#include <array>
#include <optional>
#include <vector>

#include "bench.hpp"
#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/lot_control.hpp"
#include "gritwright/units.hpp"

namespace gritwright::desktop {

inline constexpr std::array lot_figure_kinds{LotFigure::dust, LotFigure::d50_mm, LotFigure::usable, LotFigure::air};

/// What one lot of a material gave in the wanted band.
struct LotPoint {
  QString bag;
  QString day;
  LotFigures figures;
  Grading grading;
  MassShare lost{};
  bool on_screen = false;  ///< the bag of the sheet, its test finished
};

/// The band that lots are compared in: the wanted one, else the size printed on the bag. Empty without either.
[[nodiscard]] std::optional<Band> lot_band(const Bench& bench);

/// The grain that the air of all lots is compared in: that of the bag on screen. Empty while it is not known.
[[nodiscard]] std::optional<GrainProperties> lot_grain(const Bench& bench);

/// Earlier lots of the material on screen oldest first, the bag on screen last; bags that were sold as another size are no lots of it. Their air is compared in the grain of the bag on
/// screen, so that only the grading tells them apart.
[[nodiscard]] std::vector<LotPoint> lot_points(const Bench& bench);

/// Where a figure of the lots usually lies; the bag on screen, the last of `points`, is judged by the others.
[[nodiscard]] std::optional<UsualRange> usual_of(const std::vector<LotPoint>& points, LotFigure figure);

[[nodiscard]] QString lot_figure_name(LotFigure figure);
[[nodiscard]] QString lot_figure_text(LotFigure figure, std::optional<double> value, UnitSystem units);

/// What is unusual about the bag on screen for its material, and what it would change in the mixes of that material.
[[nodiscard]] QStringList lot_findings(const Bench& bench);

}  // namespace gritwright::desktop
