#pragma once
// From the texts on the bench to records, and through the engine to results. No figure is computed here.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "bench_state.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/models/calibration.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "gritwright/result.hpp"

namespace gritwright::desktop {

/// Problems by the place they stand beside: the JSON pointer the engine uses ("/retained/2/mass_g", "/dry_mass_g").
using Faults = std::multimap<std::string, Problem>;

enum class SheetState {
  empty,       ///< nothing typed yet
  begun,       ///< rows typed, no starting mass and no pan: no base for percentages
  running,     ///< rows typed and a starting mass: the curve so far is known
  finished,    ///< the pan is typed
  faulty,      ///< something can't be read or contradicts itself
};

/// A further sample on the sheet. Its faults stand with the component's, under "/replicates/0".
struct ReplicateEvaluation {
  SheetState state = SheetState::empty;
  std::optional<SieveTest> test;
  std::optional<SieveAnalysis> analysis;
  std::optional<Mass> weighed;
};

struct ComponentEvaluation {
  SheetState state = SheetState::empty;
  Faults faults;
  std::optional<SieveTest> test;
  std::optional<SieveAnalysis> analysis;  ///< of the rows so far while running
  std::optional<Mass> weighed;            ///< running sum
  std::optional<Mass> still_in_stack;
  std::vector<std::optional<Mass>> net;   ///< by row, the pan last; gross less tare
  std::vector<ReplicateEvaluation> replicates;  ///< as many as on the sheet
  std::optional<PooledTests> pooled;            ///< of the finished samples, where there are two or more
  std::optional<Component> component;     ///< as it goes into the mix; needs a finished sheet and a bulk density

  /// All finished samples taken as one, else the one there is; null without a curve.
  [[nodiscard]] const Grading* grading() const;
};

/// What pot tests taught about a kept mix; it holds on the bench while the same components lie there in the same parts.
struct MixCalibration {
  std::string mix;
  RecordRef calibrated_by;
  std::size_t tests = 0;
  std::vector<std::pair<std::string, double>> parts;  ///< of each component
  RetentionConstants constants;
  std::optional<CalibratedBelief> belief;
};

struct BenchEvaluation {
  std::vector<ComponentEvaluation> components;
  std::optional<Band> band;
  Faults faults;  ///< of band, pot and placing: "/band/from", "/pot/depth_cm", "/settling"
  std::optional<Mix> mix;            ///< of the components that are ready and have parts
  std::optional<MixCalibration> calibration;  ///< whose constants the mix has
  std::vector<std::size_t> mixed;    ///< which of the bench's components are in the mix, in its order
  std::optional<MixState> mix_state;
  std::optional<Grading> mix_grading;  ///< of the blend, for percentiles and band shares
  std::optional<PotGeometry> pot;
  std::optional<PotWater> water;
  std::optional<MixedVolume> to_fill;                      ///< mixed litres, poured, for the pot's main mix
  std::optional<std::vector<LooseVolume>> to_measure_out;  ///< in the mix's order
  Notes notes;                                             ///< of mix, litres and water
};

/// Of `calibrations` the first that fits the mix is used.
[[nodiscard]] BenchEvaluation evaluate(const BenchState& state, const Catalogue& catalogue, std::span<const MixCalibration> calibrations = {});

/// What the sheet says, read as a record. Rows below the last typed one are left out while the pan is open.
[[nodiscard]] ComponentEvaluation evaluate_component(const ComponentSheet& sheet, const Catalogue& catalogue);

}  // namespace gritwright::desktop
