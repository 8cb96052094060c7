#pragma once
// From the texts on the bench to records, and through the engine to results. No figure is computed here.

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bench_state.hpp"
#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/design_problem.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "gritwright/models/sieving_spread.hpp"
#include "gritwright/result.hpp"
#include "mix_learning.hpp"

namespace gritwright::desktop {

/// Problems by the place they stand beside: the JSON pointer the engine uses ("/retained/2/mass_g", "/dry_mass_g").
using Faults = std::multimap<std::string, Problem>;

/// The container as typed. Empty while rim or depth are not typed yet, and where something is wrong.
[[nodiscard]] std::optional<Container> container_of(const PotSheet& sheet, Faults& faults);

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
  std::optional<LooseVolume> collected;   ///< the same of a bag measured in litres
  std::optional<Mass> still_in_stack;
  std::vector<std::optional<Mass>> net;   ///< by row, the pan last; gross less tare
  std::vector<ReplicateEvaluation> replicates;  ///< as many as on the sheet
  std::vector<SievedSample> samples;            ///< of the finished ones, in their order
  std::optional<PooledTests> pooled;            ///< of them, where there are two or more
  std::optional<Component> component;     ///< as it goes into the mix; needs a finished sheet and a bulk density

  /// All finished samples taken as one, else the one there is; null without a curve.
  [[nodiscard]] const Grading* grading() const;
  /// Of that curve, what was found nowhere; nothing without a curve.
  [[nodiscard]] MassShare lost() const;
};

/// A jug of a kept mix that was worked in; it holds for the same components in the same parts.
struct MixSettling {
  std::string mix;
  std::vector<std::pair<std::string, double>> parts;
  Settling settling;
  friend bool operator==(const MixSettling&, const MixSettling&) = default;
};

/// What the record measured of a grain beyond what its sheet shows.
struct GrainOfRecord {
  std::string bag;  ///< whose tests they are
  std::optional<Settling> settling;
  std::optional<Crumbling> crumbling;
  std::optional<Price> price_per_l;  ///< of a loose litre; a fraction has none of its own
  friend bool operator==(const GrainOfRecord&, const GrainOfRecord&) = default;
};

/// What the record knows about what lies on the bench, so that the bench itself needs none.
struct RecordKnowledge {
  std::vector<MixCalibration> calibrations;  ///< of all mixes of the record
  std::vector<MixSettling> settlings;        ///< of the mix's name; the first that fits it is used
  std::map<QString, GrainOfRecord> grains;   ///< by the number on a component's sheet
  friend bool operator==(const RecordKnowledge&, const RecordKnowledge&) = default;
};

/// Where the settling of the mix comes from.
enum class SettledBy { typed, jug, grains, usual };

struct BenchEvaluation {
  std::vector<ComponentEvaluation> components;
  std::optional<Band> band;
  Faults faults;  ///< of band, pot and placing: "/band/from", "/pot/depth_cm", "/settling"
  std::optional<Mix> mix;            ///< of the components that are ready and have parts
  std::optional<MixCalibration> calibration;  ///< whose constants the mix has
  std::optional<PooledForMix> pooled;             ///< whose constants it has where it has no test of its own
  std::vector<std::string> pot_tests;             ///< that the constants rest on
  SettledBy settled_by = SettledBy::usual;
  Settling settling = default_settling(Placing::worked_in);  ///< of the mix, also while there is none yet
  std::vector<std::optional<Crumbling>> crumbling;  ///< by crumble test, in the mix's order
  std::vector<std::optional<PricePerLitre>> prices;  ///< of a loose litre, in the mix's order
  std::optional<Price> price_per_l;                  ///< of a mixed litre; in one currency
  std::vector<std::size_t> mixed;    ///< which of the bench's components are in the mix, in its order
  std::optional<MixState> mix_state;
  std::optional<Grading> mix_grading;  ///< of the blend, for percentiles and band shares
  std::optional<PotGeometry> pot;
  std::optional<PotWater> water;
  std::optional<MixedVolume> to_fill;                      ///< mixed litres, poured, for the pot's main mix
  std::optional<std::vector<LooseVolume>> to_measure_out;  ///< in the mix's order
  Notes notes;                                             ///< of mix, litres and water
};

[[nodiscard]] BenchEvaluation evaluate(const BenchState& state, const Catalogue& catalogue, const RecordKnowledge& known = {});

/// What the sheet says, read as a record. Rows below the last typed one are left out while the pan is open.
[[nodiscard]] ComponentEvaluation evaluate_component(const ComponentSheet& sheet, const Catalogue& catalogue);

}  // namespace gritwright::desktop
