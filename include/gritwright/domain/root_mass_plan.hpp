#pragma once
// The plan of one repotting as it is written down: the root mass, the pot it goes to, how it shall stand, and what may be done to it.

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "gritwright/domain/container.hpp"
#include "gritwright/domain/species_group.hpp"
#include "gritwright/domain/untouched_part.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Directions of the pot: x to the right, y to the back, z up.
enum class Direction { right, left, back, front, up, down };
/// Sides of the root mass in the tree frame, which is fixed to the tree for life: "old right" and so on.
enum class Face { right, left, back, front, top, bottom };

inline constexpr std::array<Direction, 6> directions{Direction::right, Direction::left, Direction::back,
                                                     Direction::front, Direction::up,   Direction::down};
inline constexpr std::array<Face, 6> faces{Face::right, Face::left, Face::back, Face::front, Face::top, Face::bottom};

/// A point of the tree frame: origin at the centre of the underside of the block's box, axes as the pot's seen from the old front.
struct TreePoint {
  Length right{};
  Length back{};
  Length up{};
  friend bool operator==(const TreePoint&, const TreePoint&) = default;
};

enum class BlockForm { box, elliptic, rounded };

/// A root mass by its outer lengths. `elliptic` is an upright cylinder, `rounded` a superellipsoid.
struct BlockBox {
  BlockForm form = BlockForm::box;
  Length length{};
  Length width{};
  Length height{};
  std::optional<double> exponent;  ///< rounded only, >= 1
  friend bool operator==(const BlockBox&, const BlockBox&) = default;
};

/// A root mass that has the inside of its present pot, from the floor to the fill line.
struct AsPresentPot {
  Container pot;
  friend bool operator==(const AsPresentPot&, const AsPresentPot&) = default;
};

using RootBlock = std::variant<BlockBox, AsPresentPot>;

/// How the root mass shall stand: turned about the vertical by `turn`, then tipped by `tip` toward the bearing `tip_toward`, both
/// about the trunk base; bearings from the pot's right toward its back. The trunk base goes to the place given.
struct Pose {
  Angle turn{};
  Angle tip{};  ///< 0..90 degrees
  Angle tip_toward{};
  std::optional<Length> right;          ///< of the trunk base; absent: so that the block's box is centred
  std::optional<Length> back;
  std::optional<Depth> trunk_base;      ///< above the floor; absent: at its least height over the soil
  friend bool operator==(const Pose&, const Pose&) = default;
};

/// How the cuts are made: along the pot's wall, or as straight saw cuts.
enum class CutStyle { wall, straight };

/// A face combed out to a depth without a cut.
struct CombedFace {
  Face face = Face::bottom;
  Length depth{};
  friend bool operator==(const CombedFace&, const CombedFace&) = default;
};

/// At the bench: cutting along `direction` came to an end this far from the farthest point, and no more can come off there.
struct StoppedCut {
  Direction direction = Direction::up;
  Length depth{};
  friend bool operator==(const StoppedCut&, const StoppedCut&) = default;
};

struct RootMassPlan {
  std::string name;
  SpeciesGroup group = SpeciesGroup::conifer;
  RootBlock block;
  std::optional<TreePoint> trunk_base;  ///< absent: in the middle of the block's top
  Container pot;
  Pose pose;
  Angle turn_most{};              ///< how far the turn may be changed, either way
  std::optional<Angle> tip_least;  ///< how far the tip may be taken back; absent: upright
  Depth trunk_height_least{};     ///< of the trunk base over the soil
  std::optional<Length> side_clearance;   ///< new mix wanted between wall and root mass
  std::optional<Length> below_clearance;  ///< and between floor (or bottom layer) and root mass
  /// How deep each old face may be taken back, by Face; absent: not known. 0: a structural root or a live vein.
  std::array<std::optional<Length>, 6> permission;
  std::vector<Direction> cut_order;  ///< no direction twice; those left out follow, largest excess first
  CutStyle cut_style = CutStyle::wall;
  std::vector<CombedFace> combed;
  std::vector<StoppedCut> stopped;
  std::optional<Length> working_depth;  ///< absent: 3 % of the block's length, kept within 3-20 mm
  PotVolume displaced{};                ///< trunk and stones under the soil surface
  std::optional<double> untouched_least;  ///< absent: the group's
  std::optional<double> removed_most;
  std::optional<int> interval_years;
  bool bare_root = false;                 ///< all ground is taken off on purpose
  bool bare_rooted_last_time = false;
  std::optional<UntouchedPart> untouched_last_time;
  std::vector<Container> free_pots;       ///< of the grower's library
  friend bool operator==(const RootMassPlan&, const RootMassPlan&) = default;
};

/// Lengths, angles and shares out of range, a trunk base outside root mass or pot, clearances larger than the pot, combing past the middle, a face or direction named
/// twice, a conifer to be bare-rooted, faults of the containers. Codes root-plan.* and container.*.
[[nodiscard]] Problems check(const RootMassPlan& plan);
/// True where nothing is wrong but lengths of the root mass that are 0: not measured yet.
[[nodiscard]] bool lacks_lengths_alone(const RootMassPlan& plan);

/// As files spell them: "right", "left", "back", "front", "up", "down"; "top", "bottom".
[[nodiscard]] std::string direction_name(Direction direction);
[[nodiscard]] std::optional<Direction> direction_named(std::string_view name);
[[nodiscard]] std::string face_name(Face face);
[[nodiscard]] std::optional<Face> face_named(std::string_view name);

}  // namespace gritwright
