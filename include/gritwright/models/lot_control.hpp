#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/models/sieve_analysis.hpp"

namespace gritwright {

/// Limits of a chart of individuals are mean ± 2.66·mean moving range, of its moving ranges 3.267·mean: 3/d2 and 1 + 3 d3/d2 for
/// pairs, d2 = 1.128, d3 = 0.853. Source: nist-sematech-handbook 6.3.2.2.
inline constexpr double individuals_factor = 2.66;
inline constexpr double moving_range_factor = 3.267;

/// Fewer lots than this tell no usual range; our assumption.
inline constexpr std::size_t least_lots = 4;

/// Where a figure of a material usually lies from lot to lot.
struct UsualRange {
  double mean = 0;
  double low = 0;
  double high = 0;
  double mean_moving_range = 0;
  double most_moving_range = 0;
  std::size_t lots = 0;
  [[nodiscard]] bool holds(double value) const { return value >= low && value <= high; }
  friend bool operator==(const UsualRange&, const UsualRange&) = default;
};

/// Of figures in the order of time. Absent below `least_lots`.
[[nodiscard]] std::optional<UsualRange> usual_range(std::span<const double> earlier);

/// What is watched of a material from lot to lot.
enum class LotFigure { dust, d50_mm, usable, air };

/// Figures of one lot; what was not defined is absent.
struct LotFigures {
  std::optional<double> dust;    ///< share of the mass finer than the wanted band, 0..1
  std::optional<double> d50_mm;
  std::optional<double> usable;  ///< usable loose litres per loose litre of bag
  std::optional<double> air;     ///< air-filled porosity of the material alone, `lot_depth` deep, 0..1
  [[nodiscard]] const std::optional<double>& of(LotFigure figure) const;
};

/// Straight walls of this depth compare the air of lots.
inline constexpr Depth lot_depth = depth_cm(6);

/// `grain` where it is known, for the air; a grading by itself has none. `lost` as in judge.
[[nodiscard]] LotFigures lot_figures(const Grading& grading, const Band& wanted, const std::optional<GrainProperties>& grain = {}, MassShare lost = MassShare(0));

/// The mix of nothing else, by the usual constants, whose air is compared.
[[nodiscard]] Mix lot_alone(const Grading& grading, const GrainProperties& grain);

/// A lot outside what is usual for its material.
struct LotFinding {
  LotFigure figure = LotFigure::dust;
  double value = 0;
  UsualRange usual;
  bool outside = false;  ///< beyond the limits of single lots
  bool jump = false;     ///< further from the lot before than lots usually are
};

/// `earlier` in the order of time, without the lot itself.
[[nodiscard]] std::vector<LotFinding> unusual(const LotFigures& lot, std::span<const LotFigures> earlier);

/// What a lot would change in a mix that uses its material.
struct LotChange {
  Porosity air_before;
  Porosity air_after;
  Porosity capacity_before;
  Porosity capacity_after;
  Shrinkage shrinkage_before;
  Shrinkage shrinkage_after;
};

/// The mix as it is and with the new lot's grading (and its bulk density, where it was weighed) for one component. Absent where the
/// mix has no volumes, or no pot was given. Precondition: component < mix.components.size().
[[nodiscard]] std::optional<LotChange> lot_change(const Mix& mix, std::size_t component, const Grading& lot,
                                                  std::optional<BulkDensity> bulk_density, const UncertainMix::Pot& pot);

}  // namespace gritwright
