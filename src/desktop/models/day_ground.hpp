#pragma once
// From the record to a repotting day as the models take it: mixes as they were planned, pots, the grain on the shelf and the trees.

#include <QString>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/domain/planned_day.hpp"
#include "gritwright/domain/repotting_day.hpp"
#include "gritwright/models/placing_experience.hpp"
#include "gritwright/models/season.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "mix_learning.hpp"

namespace gritwright::desktop {

/// A tree that can't be added up, and what it lacks.
struct LeftOutTree {
  Id<Tree> id;
  std::string tree;  ///< "T-04 old pine"
  QString reason;
  friend bool operator==(const LeftOutTree&, const LeftOutTree&) = default;
};

/// Which mix of the record a mix of the day is, and where its grain is taken.
struct DayMixSources {
  Id<MixVersion> id;
  std::vector<std::optional<RecordRef>> sources;  ///< one per component
};

struct DayGround {
  PlannedDay plan;
  std::vector<std::size_t> rows;            ///< of each tree of `plan`: its row in the record
  std::vector<LeftOutTree> left_out;
  std::vector<DayMixSources> mixes;         ///< in the order of `plan.mixes`
  std::vector<RecordRef> shelf;             ///< in the order of `plan.shelf`
  std::vector<RecordRef> below_zero;        ///< whose books say less than nothing
  PlacingExperience learnt;                 ///< from the trees and batches of the record
  Notes pot_tests;                          ///< that the water of mixes rests on, and so what their full pots weigh
};

/// The newest version of a mix that is in the record; empty if none is.
[[nodiscard]] std::optional<Id<MixVersion>> newest_version(const OpenWorkbook& workbook, const Id<MixVersion>& mix);

/// The day with all of its trees; what it has taken from the shelf already is put back first, so that the totals stay those of the
/// whole day. Grain that earlier days and reserved mixes want is marked as promised. `calibrations` are those of the record, here and below.
[[nodiscard]] DayGround ground_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<RepottingDay>& day, std::span<const MixCalibration> calibrations = {});
/// The same of a day as it shall be, which differs from the record's.
[[nodiscard]] DayGround ground_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::span<const MixCalibration> calibrations);

/// All days with trees to be done, and every tree that is on none, with the mix and pot it stands in.
struct SeasonGround {
  PlannedSeason season;
  std::vector<LeftOutTree> left_out;
  std::vector<DayMixSources> mixes;  ///< in the order of the season's
};
[[nodiscard]] SeasonGround season_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const std::string& until, std::span<const MixCalibration> calibrations = {});

/// Fills of plan A and its fall-backs as they lie, by a root-mass plan of the record; empty where it can't be worked out.
struct TreePlan {
  Id<RootMassPlan> id;
  std::optional<Id<MixVersion>> mix;
  std::vector<MixedVolume> fills;
  std::vector<PotVolume> sphagnum;  ///< of a shoulder; 0 where there is none
  std::vector<std::optional<Id<RecordedContainer>>> pots;  ///< that each goes into; absent: not in the library, or in stages back into its own
};
[[nodiscard]] std::optional<TreePlan> tree_plan(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<RootMassPlan>& id);
/// By the newest of a tree that was not carried out; empty where it has none.
[[nodiscard]] std::optional<TreePlan> plan_of_tree(const OpenWorkbook& workbook, const Catalogue& catalogue, const Id<Tree>& tree);

/// A tree as it comes onto a day: the newest version of its mix, its plan's pot or the one it stands in.
[[nodiscard]] DayTree day_tree_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<Tree>& tree);

/// Of a shoulder, by one of the plans; empty where there is none. Precondition as below.
[[nodiscard]] std::optional<PotVolume> sphagnum_of(const TreePlan& plan, std::size_t at);

/// Lets a row follow one of the plans, by its place from A on; its mix stays. Precondition: the place is one of `plan`.
void follow_plan(DayTree& row, const TreePlan& plan, std::size_t at);

/// Litres as they lie, of the plan that was carried out; plans are named A, B, C from the best on. Empty where that one was not counted.
[[nodiscard]] std::optional<MixedVolume> fill_done(const DayTree& tree);

/// "T-04 old pine"
[[nodiscard]] std::string tree_title(const Id<Tree>& id, const Tree& tree);

}  // namespace gritwright::desktop
