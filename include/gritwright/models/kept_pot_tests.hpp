#pragma once
#include <memory>
#include <optional>
#include <span>
#include <variant>
#include <vector>

#include "gritwright/domain/container.hpp"
#include "gritwright/domain/pot_test.hpp"
#include "gritwright/models/calibration.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/prediction_score.hpp"

namespace gritwright {

/// A pot test of the record with the pot it was made in: its shape, or the depth of straight walls.
struct KeptPotTest {
  PotReading reading;
  std::variant<PotGeometry, Depth> pot;
  std::shared_ptr<const Mix> of = {};  ///< the version it was made of, where that is another; null: the mix as it is
  [[nodiscard]] Depth filled_depth() const;
};

/// `container` is the one the test names. Absent where nothing was measured or neither shape nor volume and depth are known, and
/// where the reading is faulty.
[[nodiscard]] std::optional<KeptPotTest> kept_pot_test(const PotTest& test, const std::optional<Container>& container);

/// Whether a pot test of one mix holds for the other: as many components with parts, paired by material (by name where one names none) and
/// size, each with a share of the loose litres within 3 points and a middle size within a quarter. Densities, settling and what the
/// components are called may differ. The limits are our assumption. Source: docs/science/calibration.md.
[[nodiscard]] bool same_recipe(const Mix& a, const Mix& b);

/// What a test measured beside what the model foretold without it.
struct ForetoldTest {
  PotReading reading;
  MeasuredPorosities measured;
  std::optional<PotWater> predicted;
};

/// A mix with all its pot tests.
struct TestedMix {
  std::vector<ForetoldTest> tests;             ///< in the order of the tests
  std::optional<Calibration> calibration;      ///< of all of them together
  std::vector<PredictedAndMeasured> air;       ///< drained air of the tests that measured it, never total air
};

/// Predictions are made with `prior`, so that no test foretells itself, each of the version it was made of. Absent where the mix has no
/// volumes.
[[nodiscard]] std::optional<TestedMix> tested_mix(const Mix& mix, std::span<const KeptPotTest> tests, const RetentionConstants& prior = {});

}  // namespace gritwright
