#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/batch.hpp"
#include "gritwright/domain/mix_version.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/recorded_container.hpp"
#include "gritwright/domain/species_group.hpp"
#include "gritwright/domain/untouched_part.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

struct RootMassPlan;

namespace kind {
struct removed_share;
struct untouched_share;
}  // namespace kind
/// Share of the root mass that was taken off, 0..1.
using RemovedShare = Number<kind::removed_share>;
/// Share of the root mass that stayed untouched, 0..1.
using UntouchedShare = Number<kind::untouched_share>;

enum class Condition { thriving, watch, sick, dead };

struct ConditionEntry {
  std::string day;
  Condition condition = Condition::thriving;
  std::string note;
  friend bool operator==(const ConditionEntry&, const ConditionEntry&) = default;
};

/// What was seen when a tree was looked at for repotting.
struct Inspection {
  std::string day;
  std::string note;
  friend bool operator==(const Inspection&, const Inspection&) = default;
};

/// When a tree may be repotted.
struct Window {
  std::string ready_when;             ///< "as buds swell"
  std::optional<std::string> opens;   ///< month and day, "03-01"
  std::optional<std::string> closes;
  friend bool operator==(const Window&, const Window&) = default;
};

/// A cut or combing of an old face of the root mass.
struct FaceWork {
  std::string face;  ///< "top", "bottom", "left", "right", "front", "back", as seen from the old front
  Length depth{};
  friend bool operator==(const FaceWork&, const FaceWork&) = default;
};

/// One repotting as it was done.
struct Repotting {
  std::string day;
  std::optional<Id<RecordedContainer>> container;
  std::optional<Id<MixVersion>> mix;
  std::vector<RecordRef> grain;  ///< batches, or bags, bins and fractions filled in straight
  std::optional<Depth> filled_depth;
  std::optional<MixedVolume> filled;
  std::optional<Id<RootMassPlan>> plan;
  std::string plan_name;  ///< "A", "B", "C"; empty if none was made
  std::optional<RemovedShare> removed_share;
  std::optional<UntouchedShare> untouched_share;
  std::optional<UntouchedPart> untouched;
  std::vector<FaceWork> cut;
  std::vector<FaceWork> combed;
  bool bare_rooted = false;
  std::optional<std::string> due;  ///< the day the grower had set for it
  std::string note;
  friend bool operator==(const Repotting&, const Repotting&) = default;
};

/// The trunk-base point in the tree frame: from the middle of the underside of the root mass's box, seen from the old front.
struct TrunkBase {
  Length right{};
  Length back{};
  Length up{};
  friend bool operator==(const TrunkBase&, const TrunkBase&) = default;
};

/// A tree with its history, oldest first. Where it stands now is its last repotting.
struct Tree {
  std::string name;
  std::string species;
  std::optional<SpeciesGroup> group;
  std::optional<int> since_year;  ///< sown, struck or collected
  std::optional<Length> trunk_width;
  std::optional<TrunkBase> trunk_base;
  std::optional<Mass> mass;  ///< without ground and pot
  std::vector<ConditionEntry> conditions;
  Window window;
  std::vector<Repotting> repottings;
  std::vector<Inspection> inspections;
  std::optional<std::string> due;     ///< day of the next repotting, as the grower set it
  std::vector<std::string> photos;    ///< files, by reference
  std::string note;
  friend bool operator==(const Tree&, const Tree&) = default;
};

/// The last condition written down; empty if there is none.
[[nodiscard]] std::optional<Condition> condition_now(const Tree& tree);
/// Null if it was never repotted.
[[nodiscard]] const Repotting* stands_in(const Tree& tree);

/// No name and no species; days that are none; shares outside 0..1; grain that is none.
[[nodiscard]] Problems check(const Tree& tree);

}  // namespace gritwright
