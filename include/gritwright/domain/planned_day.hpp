#pragma once
// A repotting day, or a season's trees, with everything its litres follow from: trees, mixes, pots and the grain on the shelf.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/container.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/repotting_day.hpp"
#include "gritwright/domain/species_group.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

namespace kind {
struct screen_yield;
}  // namespace kind
/// Loose litres that a screening leaves usable for each loose litre of raw grain, above 0; fractions apart fill a little more
/// than the bag did, so at most 1.2.
using ScreenYield = Number<kind::screen_yield>;

/// Grain on the shelf: a bag, bin or fraction that a component can be taken from.
struct GrainSupply {
  std::string bag;        ///< as the grower calls it: "K-07"
  std::string material;
  std::string component;  ///< of the mixes, that it is meant for; empty: every component of its material
  std::optional<LooseVolume> stock;     ///< on hand; absent: not known
  std::optional<LooseVolume> reserved;  ///< promised to other days, in litres of the same grain
  bool screened = false;                ///< ready to use
  std::optional<SizeBand> keeps;        ///< what the screening keeps
  std::optional<ScreenYield> yield;     ///< as measured; absent: by `grading`, else typical
  std::optional<Grading> grading;       ///< of the bag as it came
  std::optional<BulkDensity> bulk_density;  ///< dry
  std::optional<ParticleDensity> particle_density;
  std::optional<LooseVolume> bag_volume;  ///< of a new bag of the same
  std::optional<Price> price;             ///< of a new bag
  friend bool operator==(const GrainSupply&, const GrainSupply&) = default;
};

/// A mix of the day as it was when the day was planned. Where its settling or spill is absent what was learnt before counts, else 0.
struct DayMix {
  std::string name;
  Mix mix;
  std::optional<int> version;
  std::optional<int> newest_version;  ///< above `version` where the mix was edited since
  bool deleted = false;               ///< since the day was planned
  friend bool operator==(const DayMix&, const DayMix&) = default;
};

/// A layer of one grain in a tree's pot besides the main mix and the pot's own bottom layer: top dressing, sphagnum of a shoulder.
struct GrainLayer {
  std::string grain;
  PotVolume volume;
  std::optional<BulkDensity> bulk_density;
  friend bool operator==(const GrainLayer&, const GrainLayer&) = default;
};

/// One tree with its plan.
struct PlannedTree {
  std::string name;
  std::string species;
  std::optional<SpeciesGroup> group;
  std::string mix;  ///< of `PlannedDay::mixes`
  std::string pot;  ///< of `PlannedDay::pots`; may be empty
  std::string plan = "A";
  std::optional<PotVolume> fill;  ///< main mix as it lies in the pot; absent: all the pot holds
  std::vector<PotVolume> worse_fills;  ///< the same of the fall-backs
  std::vector<GrainLayer> layers;
  std::string top_dressing;  ///< grain of the pot's top dressing; empty: not known
  std::optional<Mass> kept_root_mass;
  std::optional<Mass> mass;  ///< of the tree without ground
  std::string bud;           ///< how far the buds are
  std::string helper;
  std::string note;
  std::optional<std::string> day;  ///< that it is planned for, in a season
  std::optional<std::string> last_repotted;
  std::optional<std::string> due;     ///< as the grower set it
  std::optional<int> interval_years;  ///< the grower's own; absent: the group's
  std::optional<std::string> window_opens;   ///< month and day, "03-01"
  std::optional<std::string> window_closes;
  friend bool operator==(const PlannedTree&, const PlannedTree&) = default;
};

/// A tree that was filled: the plan's litres as they lie, and what was poured in.
struct FilledTree {
  PotVolume fill;
  MixedVolume used;
  friend bool operator==(const FilledTree&, const FilledTree&) = default;
};
/// A batch that was used up: made, poured into pots, and left over.
struct EmptiedBatch {
  MixedVolume made;
  MixedVolume used;
  MixedVolume left_over;
  friend bool operator==(const EmptiedBatch&, const EmptiedBatch&) = default;
};

struct PlannedDay {
  std::string name;
  std::optional<std::string> day;
  std::vector<DayMix> mixes;
  std::map<std::string, Container> pots;
  std::vector<GrainSupply> shelf;  ///< in the order it shall be used up
  std::vector<PlannedTree> trees;
  std::optional<LooseVolume> tub;    ///< no batch is larger, measured as the parts are tipped in
  std::optional<LooseVolume> scoop;
  std::vector<WorkKey> order{WorkKey::bud, WorkKey::mix, WorkKey::helper};
  std::vector<ChecklistLine> checklist;
  int sheet_revision = 1;
  std::map<std::string, LooseVolume> typical_bags;  ///< litres of a bag by material, of the catalogue
  std::vector<FilledTree> filled_before;            ///< oldest first
  std::vector<EmptiedBatch> emptied_before;
  friend bool operator==(const PlannedDay&, const PlannedDay&) = default;
};

/// A season: all trees of `trees`, of which those due by `until` count; the days stand at the trees.
struct PlannedSeason {
  PlannedDay ground;
  std::string until;
  friend bool operator==(const PlannedSeason&, const PlannedSeason&) = default;
};

/// Trees or mixes twice, a mix or pot that is not there, no fill, amounts out of range, stock below 0, yields beyond 0..1.2, a
/// scoop larger than the tub, days that are none. Codes day.*; what `check(Mix)` and `check(Container)` find, at its place.
[[nodiscard]] Problems check(const PlannedDay& day);
[[nodiscard]] Problems check(const PlannedSeason& season);

/// As files spell them: "bud", "mix", "helper", "name".
[[nodiscard]] std::optional<WorkKey> work_key_named(const std::string& name);

/// How far buds are, from the words growers use ("dormant", "swelling", "green tips", "opening", "in leaf"): the higher, the sooner
/// the tree is to be worked on. Empty for any other text.
[[nodiscard]] std::optional<int> bud_rank(const std::string& bud);

}  // namespace gritwright
