#pragma once
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/pot_weighings.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/retention_spread.hpp"
#include "gritwright/models/saturation_kernel.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What a saturate-and-drain test says by itself. Shares of the volume of mix; what was not measured is absent.
struct MeasuredPorosities {
  std::optional<BulkDensity> bulk_density;       ///< dry mass / volume
  std::optional<Porosity> theta_0;               ///< (flooded - dry) / volume
  std::optional<Porosity> air_filled_porosity;   ///< (flooded - drained) / volume: the share that drained
  std::optional<Porosity> container_capacity;    ///< (drained - dry) / volume
  Notes notes;                                   ///< implausible figures are questioned, not refused
};

/// 1 g of water is 1 mL. Precondition: check(reading) is empty. Source: docs/science/calibration.md.
[[nodiscard]] MeasuredPorosities measured_porosities(const PotReading& reading);

/// What is believed of the constants before a test: ln k and w are normal about the usual values; a measured capacity is good to
/// `capacity`. Source: water.md.
struct CalibrationPrior {
  RetentionConstants constants;
  double log_k_deviation = 0.24;
  double grain_fill_deviation = 0.15;
  double flooded_fill_deviation = 0.115;  ///< for the ranges only: a flooded weight fixes f
  double capacity_deviation = 0.02;  ///< of one test, model and balance together, as a share of the volume
  double flooded_deviation = 0.02;   ///< the same of a flooded weight; for the ranges only
};

/// The search for k runs over this span, cm·mm.
inline constexpr double least_k_cm_mm = 2;
inline constexpr double greatest_k_cm_mm = 40;

/// One test of a mix in a pot of known shape.
struct CalibrationTest {
  SaturationKernel pot;  ///< of the pot the test was made in, for the n of the prior's constants
  Depth filled_depth;
  MeasuredPorosities measured;
  std::shared_ptr<const Mix> of = {};  ///< the mix as it was tested, where its grain was another; null: as it is
};

enum class CalibrationMethod {
  none,            ///< no capacity was measured: k and w stay as they were
  k_by_capacity,   ///< the water in the grains is known: the capacity gives k
  weighed_by_prior,  ///< capacity and prior together give k and w
  k_and_w_by_depths  ///< two depths give both
};

/// What is believed of k, w and f after the tests: a weight for each of a row of k, and for each k a normal grain fill and a normal
/// flooded fill that goes with it.
struct CalibratedBelief {
  struct Row {
    double log_k = 0;
    double cumulative = 0;  ///< weight of this row and those before it, 0..1
    double grain_fill = 0;
    double grain_fill_deviation = 0;
    double flooded_fill = 0;            ///< where w is its mean
    double flooded_by_grain_fill = 0;   ///< change of f with w
    double flooded_fill_deviation = 0;  ///< for one w
  };
  std::vector<Row> rows;  ///< rising k
  RetentionConstants constants;
};

/// 5, 50 and 95 % of each constant by itself.
struct ConstantsRange {
  RetentionConstants low;
  RetentionConstants median;
  RetentionConstants high;
};
[[nodiscard]] ConstantsRange constants_range(const CalibratedBelief& belief, const RetentionSpread& spread = {});

/// The constants at standard normal scores; the belief's correlations are kept.
[[nodiscard]] RetentionConstants constants_at(const CalibratedBelief& belief, const RetentionSpread& spread,
                                              const RetentionScores& scores);

/// What the fit took of one test.
struct CalibratedTest {
  Depth filled_depth;
  std::optional<Porosity> theta_0;
  std::optional<Porosity> container_capacity;
  Porosity voids_between_grains;
  Porosity grain_water;  ///< by the fitted w
};

struct Calibration {
  std::vector<CalibratedTest> tests;
  RetentionConstants constants;
  CalibrationMethod method = CalibrationMethod::none;
  bool flooded_fill_measured = false;
  std::optional<CalibratedBelief> belief;  ///< absent where nothing was learnt
  Notes notes;
};

/// Fits k, w and f of `mix` to its tests: f from the flooded weight, k by bisection on the capacity over 2..40, k and w from two
/// depths, else by least squares with the prior. Voids are taken from the measured bulk density where it was weighed; each test is
/// taken in the grain it was made of, where that has volumes. Absent where the mix has none (a particle density is missing).
/// Source: water.md.
[[nodiscard]] std::optional<Calibration> calibrate(const Mix& mix, const MixState& state, std::span<const CalibrationTest> tests,
                                                   const CalibrationPrior& prior = {});

}  // namespace gritwright
