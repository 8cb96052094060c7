#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/tree.hpp"

namespace gritwright {

/// One tree of a repotting day. `mix` names the version it was planned with.
struct DayTree {
  Id<Tree> tree;
  std::optional<Id<RootMassPlan>> plan;
  std::string plan_name = "A";
  std::optional<Id<MixVersion>> mix;
  std::optional<Id<RecordedContainer>> container;
  std::optional<MixedVolume> planned;             ///< main mix as it lies in the pot, of the plan named
  std::vector<MixedVolume> worse_plans;           ///< the same of the fall-backs B, C
  std::optional<PotVolume> sphagnum;              ///< that builds a shoulder up, of the plan named, as it lies
  std::string top_dressing;                       ///< grain of the pot's top dressing: a bag, a fraction or a material; empty: not known
  std::optional<Mass> kept_root_mass;
  bool done = false;
  std::string done_plan;
  std::optional<MixedVolume> used;
  std::string helper;
  std::string bud;  ///< how far the buds are; orders the work
  std::string note;
  friend bool operator==(const DayTree&, const DayTree&) = default;
};

struct ChecklistLine {
  std::string text;
  bool evening_before = false;
  bool done = false;
  friend bool operator==(const ChecklistLine&, const ChecklistLine&) = default;
};

/// By what the work is ordered.
enum class WorkKey { bud, mix, helper, name };

struct RepottingDay {
  std::string day;
  std::string name;
  std::vector<DayTree> trees;
  std::optional<MixedVolume> tub;    ///< no batch is larger
  std::optional<LooseVolume> scoop;
  std::optional<Settling> settling;  ///< of the mixes that don't tell their own; absent: not given
  std::optional<Spill> spill;        ///< the same
  std::vector<ChecklistLine> checklist;
  WorkKey work_by = WorkKey::bud;  ///< first; the other keys follow
  int sheet_revision = 1;
  std::optional<int> printed_revision;  ///< of the sheet printed last
  std::string note;
  friend bool operator==(const RepottingDay&, const RepottingDay&) = default;
};

/// A day that is none, a tree twice, volumes not above 0, settling or spill outside 0..<1.
[[nodiscard]] Problems check(const RepottingDay& day);

}  // namespace gritwright
