#pragma once
// A repotting day added up: litres of every mix and grain, what to screen and to buy, batches, and what is heavy.
// Definitions: docs/science/repotting-day.md.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/planned_day.hpp"
#include "gritwright/models/tub_batches.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Loose litres of one grain.
struct GrainLitres {
  std::string name;      ///< of the component
  std::string material;  ///< as the mix names it; may be empty
  LooseVolume loose;     ///< as computed
  LooseVolume ready;     ///< to have ready: what the batches take in whole scoops
  std::optional<Mass> dry_mass;  ///< of `loose`; absent where its density is not known
};

/// One mix of the day. Source: day-litres.
struct MixOfDay {
  std::string name;
  std::optional<int> version;
  Settling settling;
  Spill spill;
  std::optional<Shrinkage> shrinkage;  ///< absent without particle densities; then there are no component litres
  PotVolume fill;                      ///< of the plans named, as it lies
  PotVolume reserve;                   ///< the two largest differences to a worse plan
  std::vector<std::size_t> reserve_trees;
  MixedVolume needed;                  ///< fill and reserve before settling and spill
  std::vector<GrainLitres> components;
  std::optional<TubBatches> batches;   ///< absent without component litres, or where nothing is needed
  std::optional<MixedVolume> left_over;  ///< of what is made if every tree keeps to its plan
};

/// One tree of the day.
struct TreeOfDay {
  std::size_t tree = 0;  ///< index in the day
  PotVolume fill;
  PotVolume worse_by;    ///< largest difference to a worse plan
  bool whole_pot = false;  ///< no plan: all the pot holds was counted
  MixedVolume poured;      ///< before settling and spill
  std::optional<double> scoops;  ///< of mix, in quarters, never too few
  std::vector<GrainLitres> layers;  ///< bottom layer, top dressing, sphagnum of a shoulder, as far as their grain is known
};

/// Grain taken from the shelf.
struct GrainTaken {
  std::size_t supply = 0;  ///< index in the day's shelf
  std::string component;
  LooseVolume raw;    ///< off the shelf
  LooseVolume ready;  ///< that it gives
  std::optional<ScreenYield> yield;  ///< absent for grain that is ready to use
  bool typical_yield = false;
  std::optional<Mass> dry_mass;      ///< of `raw`
};

/// What the shelf is short of, by material.
struct GrainToBuy {
  std::string material;
  std::vector<std::string> components;
  LooseVolume short_of;  ///< ready grain
  LooseVolume raw;       ///< to screen for it
  ScreenYield yield;     ///< of a bag like the last of this material, else typical
  bool typical_yield = false;
  std::optional<LooseVolume> bag_volume;
  bool typical_bag = false;
  std::optional<Price> bag_price;
  std::optional<int> bags;  ///< absent where no bag size is known
  std::optional<Price> cost;
  std::optional<LooseVolume> left_over;  ///< raw grain left of the bags bought
};

/// A bag of the shelf after the day.
struct ShelfAfter {
  std::optional<LooseVolume> taken;  ///< raw
  std::optional<LooseVolume> left;   ///< neither taken nor promised; absent where the stock is not known
};

enum class LiftSort { tree, tub };
struct Lift {
  LiftSort sort = LiftSort::tree;
  std::string what;       ///< name of the tree, or of the mix in the tub
  std::string pot;        ///< empty where none is named, and for a tub
  std::size_t index = 0;  ///< of the tree, or the mix
  Mass mass{};            ///< of what is known
  bool complete = true;   ///< false: at least `mass`
  std::vector<std::string> missing;  ///< "water", "root-mass", "tree", "pot", "layer", "mix"
};

struct DayAnswer {
  std::vector<MixOfDay> mixes;
  std::vector<TreeOfDay> trees;          ///< in the day's order
  std::vector<std::size_t> order;        ///< of work: indices into `trees`
  std::vector<GrainLitres> components;   ///< of all mixes and layers, each name once
  std::vector<GrainTaken> taken;
  std::vector<GrainToBuy> buy;
  std::vector<ShelfAfter> shelf;         ///< in the shelf's order
  std::vector<Lift> lifts;               ///< trees in the day's order, then tubs
  Notes notes;
};

/// Precondition for a full answer: particle densities. Fails with the problems of check(day).
[[nodiscard]] Result<DayAnswer> work_out(const PlannedDay& day);

/// The share of raw litres that is usable where no bag was measured: a tenth to a third is lost to the fine screen; common
/// practice, no source.
inline constexpr ScreenYield typical_yield{0.75};

/// Moss is torn or cut, not screened. `grain` is a material or a name in the grower's words.
[[nodiscard]] bool used_unscreened(std::string_view grain);

/// Something of a supply is lost before it can be used: neither screened grain, nor moss unless a yield was typed.
[[nodiscard]] bool has_yield(const GrainSupply& supply);

/// Litres that a supply gives for each litre of it: 1 when screened or not to be, measured, by its grading through real screens, or empty.
[[nodiscard]] std::optional<ScreenYield> known_yield(const GrainSupply& supply);

/// From here two people or a trolley are advised: about 16 kg for women and 25 kg for men, close to the body at elbow height, and
/// far less at arm's length. Source: guidance L23 as restated in print; docs/science/repotting-day.md.
inline constexpr Mass heavy_lift = 16.0 * boost::units::si::kilogram;

}  // namespace gritwright
