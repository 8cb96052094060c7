#pragma once
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/models/calibration.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/prediction_score.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// What the model foretold for a tested pot before it learnt from the test.
struct PredictedTest {
  BulkDensity bulk_density;
  PotWater water;
};

struct ReportedTest {
  std::string name;  ///< empty where there is only one
  PotReading reading;
  MeasuredPorosities measured;
  std::optional<Depth> filled_depth;
  std::optional<PredictedTest> predicted;
};

/// Pot tests of one mix, and what was learnt.
struct CalibrationReport {
  std::vector<ReportedTest> tests;
  std::optional<Calibration> calibration;
  RetentionConstants prior;  ///< where the fit began
  PredictionScores scores;  ///< of the air that drained
};

/// Measured beside predicted, then the fitted constants with their ranges.
[[nodiscard]] std::string calibration_text(const CalibrationReport& report, UnitSystem units);
[[nodiscard]] std::vector<Explanation> explain(const CalibrationReport& report);

/// Air that was foretold of a pot test. Key predicted_air.
[[nodiscard]] Explanation explain_predicted_air(const PotWater& water);

/// How predicted air fared over tests, each with its name. Key score.
[[nodiscard]] Explanation explain_score(std::span<const std::pair<std::string, PredictedAndMeasured>> tests);

}  // namespace gritwright
