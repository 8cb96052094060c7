#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/domain/species_group.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// A material of a starting mix, by its name in the catalogue.
struct StartingPart {
  std::string material;
  Parts parts;
  friend bool operator==(const StartingPart&, const StartingPart&) = default;
};

/// What a mix for a group of trees is usually asked to be: where a design starts, for the grower to change.
struct SpeciesProfile {
  std::string name;
  std::optional<SpeciesGroup> group;
  std::vector<Wish> wishes;            ///< figures in a pot name none; starting_wishes() puts it in
  std::vector<StartingPart> starting_parts;
  std::string note;
  bool left_out = false;  ///< not offered any more, kept so that it can be restored
  friend bool operator==(const SpeciesProfile&, const SpeciesProfile&) = default;
};

/// The profiles that a new workbook starts with. Common practice of the trade, no source: docs/science/recipe-search.md.
[[nodiscard]] const std::vector<SpeciesProfile>& common_profiles();

/// The profile's wishes with its pot figures asked of `pot`.
[[nodiscard]] std::vector<Wish> starting_wishes(const SpeciesProfile& profile, const std::string& pot);

/// No name; parts not above 0 or of no material; what check(DesignProblem) finds in wishes, pots and shares apart.
[[nodiscard]] Problems check(const SpeciesProfile& profile);

}  // namespace gritwright
