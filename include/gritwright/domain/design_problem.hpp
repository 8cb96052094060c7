#pragma once
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "gritwright/domain/component.hpp"
#include "gritwright/domain/container.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

namespace kind {
struct price_per_litre;
}  // namespace kind
/// Money per litre, in the grower's own currency, >= 0.
using PricePerLitre = Number<kind::price_per_litre>;

/// Constants of the retention chain that pot tests taught of a grain's material; those a test does not reach are the problem's.
struct LearntConstants {
  double k_cm_mm = 0;
  double flooded_fill = 0;
  double grain_fill = 0;
  friend bool operator==(const LearntConstants&, const LearntConstants&) = default;
};

/// What may go into a recipe: a bag, a fraction or a catalogue material. The parts of its component are not read.
struct Candidate {
  Component component;
  std::optional<LooseVolume> stock;     ///< loose litres on the shelf; absent: as much as wanted
  std::optional<PricePerLitre> price;   ///< of a loose litre
  std::optional<std::string> family;    ///< "pumice", "organic": what share wishes may name
  /// A recipe's k is the geometric mean and its fills are the means over its candidates by envelope volume; absent: the problem's.
  std::optional<LearntConstants> learnt;
  friend bool operator==(const Candidate&, const Candidate&) = default;
};

struct PassingLimit {
  Aperture aperture;
  std::optional<Passing> low;
  std::optional<Passing> high;
  friend bool operator==(const PassingLimit&, const PassingLimit&) = default;
};

/// A band of gradings; the amount missed is the root mean square over all its apertures, those inside counting 0.
struct PassingLimits {
  std::vector<PassingLimit> limits;
  friend bool operator==(const PassingLimits&, const PassingLimits&) = default;
};
/// A grading to come near to; the amount missed is the root mean square over its apertures.
struct NearestGrading {
  std::vector<GradingPoint> points;
  friend bool operator==(const NearestGrading&, const NearestGrading&) = default;
};
/// Share of the mass between two sizes.
struct BandShare {
  Aperture from;
  Aperture to;
  friend bool operator==(const BandShare&, const BandShare&) = default;
};
/// Share of the mass finer than a size.
struct FinerShare {
  Aperture size;
  friend bool operator==(const FinerShare&, const FinerShare&) = default;
};
enum class PotFigure { air_filled_porosity, container_capacity, available_in_pot, wet_mass };
/// A figure of the mix in one of the problem's pots.
struct FigureInPot {
  PotFigure figure = PotFigure::air_filled_porosity;
  std::string pot;
  friend bool operator==(const FigureInPot&, const FigureInPot&) = default;
};
struct ExchangeCapacity {
  friend bool operator==(const ExchangeCapacity&, const ExchangeCapacity&) = default;
};
/// Loose litres × price, summed, over the mixed litres.
struct MixPrice {
  friend bool operator==(const MixPrice&, const MixPrice&) = default;
};
/// Share of the loose volume of every candidate of that name or family.
struct ShareOf {
  std::string name;
  friend bool operator==(const ShareOf&, const ShareOf&) = default;
};

using WishFigure =
    std::variant<PassingLimits, NearestGrading, BandShare, FinerShare, FigureInPot, ExchangeCapacity, MixPrice, ShareOf>;

/// What a recipe should be. `least` and `most` stand in the figure's own unit: percent of the mass for bands and fines, 0..1
/// for porosities, water and shares of volume, g/L, meq/L, money per litre. Limits and gradings carry their own.
struct Wish {
  WishFigure figure;
  std::optional<double> least;
  std::optional<double> most;
  bool hard = false;
  double weight = 1;  ///< of a soft wish, >= 0
  friend bool operator==(const Wish&, const Wish&) = default;
};

/// The problem's constants with what was learnt of a candidate in their place.
[[nodiscard]] RetentionConstants learnt_constants(const Candidate& candidate, const RetentionConstants& usual);

/// What a recipe may look like: whole parts with a total up to `total`, or free shares; at most `components` candidates.
struct RecipeForm {
  bool whole = true;
  int total = 12;      ///< M, 1..20
  int components = 4;  ///< N, 1..6
  friend bool operator==(const RecipeForm&, const RecipeForm&) = default;
};

/// From a shelf and wishes to recipes.
struct DesignProblem {
  std::vector<Candidate> candidates;     ///< 1..40
  std::map<std::string, Container> pots;
  std::optional<MixedVolume> need;       ///< mixed, as poured; absent: stock is not checked
  RecipeForm form;
  std::vector<Wish> wishes;              ///< at most 60
  RetentionConstants water;
  Settling settling{};
  friend bool operator==(const DesignProblem&, const DesignProblem&) = default;
};

inline constexpr std::size_t most_candidates = 40;
inline constexpr std::size_t most_wishes = 60;
inline constexpr int most_components = 6;
inline constexpr int most_total_parts = 20;

/// No or too many candidates, nothing in stock, numbers out of range, limits upside down, pots and names that are not there.
/// Components and containers are checked too; pointers as in the file ("/wishes/0/most").
[[nodiscard]] Problems check(const DesignProblem& problem);

}  // namespace gritwright
