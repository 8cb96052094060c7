#include "gritwright/domain/species_group.hpp"

#include <algorithm>

namespace gritwright {

namespace {

// docs/science/root-mass-plan.md, table of groups.
constexpr std::array<GroupDefaults, 10> defaults{{
    {SpeciesGroup::conifer, "conifer", BareRoot::never, 0.50, 0.35, 3, 5},
    {SpeciesGroup::deciduous_conifer, "deciduous-conifer", BareRoot::caution, 0.25, 0.50, 2, 3},
    {SpeciesGroup::deciduous_developing, "deciduous-developing", BareRoot::may_be, 0.20, 0.50, 1, 3},
    {SpeciesGroup::deciduous_refined, "deciduous-refined", BareRoot::more_care, 0.40, 0.33, 2, 4},
    {SpeciesGroup::broadleaf_evergreen, "broadleaf-evergreen", BareRoot::refused, 0.40, 0.33, 2, 4},
    {SpeciesGroup::acid_lover, "acid-lover", BareRoot::refused, 0.30, 0.50, 2, 4},
    {SpeciesGroup::tropical, "tropical", BareRoot::when_growing, 0.20, 0.50, 1, 2},
    {SpeciesGroup::sick, "sick", BareRoot::refused, {}, {}, {}, {}},
    {SpeciesGroup::collected, "collected", BareRoot::refused, {}, {}, 2, 3},
    {SpeciesGroup::imported, "imported", BareRoot::refused, {}, {}, {}, {}},
}};

}  // namespace

const GroupDefaults& group_defaults(SpeciesGroup group) { return *std::ranges::find(defaults, group, &GroupDefaults::group); }

std::optional<SpeciesGroup> species_group_named(std::string_view name) {
  const auto found = std::ranges::find(defaults, name, &GroupDefaults::name);
  if (found == defaults.end()) return std::nullopt;
  return found->group;
}

}  // namespace gritwright
