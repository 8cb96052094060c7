#pragma once
// Bounds on the figures of recipes, cheap enough for tens of millions of them. Proofs: docs/science/recipe-search.md.

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "recipe_ground.hpp"

namespace gritwright::recipe_search {

/// What holds for all candidates alone, tabulated once per search.
class BoundTables {
 public:
  explicit BoundTables(const Ground& ground);
  /// Makes the bounds of single recipes ready; those of whole sets of candidates need less.
  void tabulate();

  /// Per loose litre of one candidate.
  struct Grain {
    double mass_g = 0;
    bool has_volumes = false;
    double envelope_l = 0;
    double open_l = 0;
    double water_l = 0;       ///< at the problem's fill of the grains
    double filled_l = 0;      ///< open pores whose water goes by that fill; 0 where the absorption is known
    double most_water_l = 0;  ///< at the greatest fill learnt of any candidate
    double log_k_l = 0;       ///< envelope litres times ln k, and times the fills
    double flooded_l = 0;
    double grain_fill_l = 0;
    double log_size = 0;  ///< envelope litres times the mean ln size in mm
    double log_least = 0;
    double log_greatest = 0;
    double additive_l = 0;  ///< volume if nothing found place in the voids of others
    double exchange_meq = 0;
    bool exchange_known = false;
    double price = 0;
    bool priced = false;
    std::vector<double> passing_g;  ///< by aperture
    std::vector<std::size_t> classes;  ///< size classes it has grain in
    std::vector<double> envelope_by_class;
    std::vector<double> volume_by_class;
    /// Contribution to U_i·E of every size class i: the part without wedging, the parts wedged by coarser and by finer grain,
    /// and to Y^L_i·E and Y^S_i·E.
    std::vector<double> unwedged;
    std::vector<double> wedged_coarser;
    std::vector<double> wedged_finer;
    std::vector<double> coarser;
    std::vector<double> finer;
  };

  [[nodiscard]] const Ground& ground() const { return ground_; }
  [[nodiscard]] const Grain& grain(std::size_t candidate) const { return grains_[candidate]; }
  [[nodiscard]] std::size_t class_count() const { return class_sizes_.size(); }
  [[nodiscard]] std::size_t columns() const { return columns_; }

  /// Mean saturation of candidate's pores in column `column` (pots, then the suction of 50 cm) where a pore of ln size 0 has
  /// ln alpha `shift`, that is (1 - b) times the blend's mean ln size, less ln k; within saturation_error().
  [[nodiscard]] double saturation(std::size_t candidate, std::size_t column, double shift) const {
    const double position = (shift - shift_first_) * nodes_per_log_;
    const double inside = position < 0 ? 0 : position > last_node_ ? last_node_ : position;
    auto node = static_cast<std::size_t>(inside);
    if (node + 1 >= nodes_) node = nodes_ - 2;
    const double along = inside - static_cast<double>(node);
    const double* const at = saturation_.data() + (candidate * columns_ + column) * nodes_ + node;
    return at[0] + along * (at[1] - at[0]);
  }
  /// By how much the mean over a recipe's pores may differ from that of its candidates' saturations, where their sizes lie so far apart in ln.
  [[nodiscard]] double mean_saturation_error(double log_size_range) const;
  /// The greatest share of the voids between grains that a flood fills in any recipe.
  [[nodiscard]] double most_flooded_fill() const { return most_flooded_fill_; }

 private:
  void describe(std::size_t candidate, double most_grain_fill);
  void describe_classes();
  void tabulate_saturation();

  const Ground& ground_;
  std::vector<Aperture> class_sizes_;
  std::vector<Grain> grains_;
  std::size_t columns_ = 0;
  std::size_t nodes_ = 0;
  double shift_first_ = 0;
  double nodes_per_log_ = 0;
  double last_node_ = 0;
  double saturation_error_ = 0;
  double steepest_ = 0;
  double most_flooded_fill_ = 0;
  std::vector<double> saturation_;
};

/// The most that air and capacity together can be, as a share of the volume, in a mix packed at least so densely.
[[nodiscard]] inline double most_room(double packing, double grain_water, double flooded_fill) {
  return std::max(flooded_fill * (1 - packing) + packing * grain_water, grain_water);
}

/// A wish for air and one for water in the same pot, which share the room between and in the grains.
struct AirAndWater {
  double together = 0;  ///< the least of both, a share of the volume
  double weight = 0;    ///< what a missing point of the two costs at least, squared; infinite where both are hard

  /// What both cost at least where they have so much room.
  [[nodiscard]] double least_cost(double room) const {
    constexpr double rounding = 1e-8, points_per_share = 100;
    const double missing = together - room - rounding;
    return missing > 0 ? weight * points_per_share * missing * points_per_share * missing : 0;
  }
};
/// The most demanding pair of each pot that has both.
[[nodiscard]] std::vector<AirAndWater> air_and_water(const Ground& ground, Strictness strictness);

/// Bounds of recipes over one subset of candidates at a time. One for each thread.
class SubsetBounds {
 public:
  SubsetBounds(const BoundTables& tables, Strictness strictness);

  /// Candidates rising.
  void choose(std::span<const std::uint8_t> candidates);

  static constexpr std::size_t block = 256;
  /// Least score by gradings and shares, and hard wishes surely broken, of the patterns from..from+count-1 (count <= block).
  void bound_gradings(const PartPatterns& patterns, std::size_t from, std::size_t count);
  [[nodiscard]] double score(std::size_t in_block) const { return scores_[in_block]; }
  [[nodiscard]] std::uint64_t broken(std::size_t in_block) const { return broken_[in_block]; }

  /// What wishes for air and water cost at least for want of room, without working out the packing. What stands behind the chosen ones' parts
  /// does not count.
  [[nodiscard]] double least_for_want_of_room(const std::array<double, 6>& parts) const;

  /// Ranges of all figures of one recipe of the chosen candidates; valid until the next call.
  const FigureRanges& bound_figures(std::span<const double> parts);
  /// The same without gradings and shares of volume, which are left as they were.
  const FigureRanges& bound_volumes(std::span<const double> parts);

 private:
  /// The constants of a recipe: the problem's, or the means of what was learnt.
  struct Constants {
    double log_k = 0;
    double flooded_fill = 0;
    double water_l = 0;  ///< in the grains
  };
  template <std::size_t candidates>
  void bound_gradings_of(const PartPatterns& patterns, std::size_t from, std::size_t count);
  [[nodiscard]] Constants constants(std::span<const double> parts, double envelope_l) const;
  void gather_classes();
  [[nodiscard]] double specific_volume(std::span<const double> parts, double envelope_l);
  void bound_water(std::span<const double> parts, double envelope_l, double specific_volume);

  const BoundTables& tables_;
  const Ground& ground_;
  Strictness strictness_;
  double log_usual_k_;
  std::array<std::uint8_t, 6> chosen_{};
  std::size_t count_ = 0;
  bool classes_gathered_ = false;
  bool has_volumes_ = false;
  std::vector<AirAndWater> air_and_water_;
  /// Per loose litre of each: litres of envelope, of volume where nothing finds place in the voids of others, and of water; nothing behind the
  /// chosen ones, so that sums over all six need no count.
  std::array<std::array<double, 4>, 6> litres_{};

  std::array<double, block> scores_{};
  std::array<std::uint64_t, block> broken_{};
  std::array<double, block> per_gram_{};
  std::array<double, block> squares_{};

  std::vector<std::size_t> classes_;
  std::vector<double> coefficients_;  ///< 5 rows for each chosen candidate, one column for each class
  std::vector<double> sums_;          ///< 5 rows
  FigureRanges figures_;
};

}  // namespace gritwright::recipe_search
