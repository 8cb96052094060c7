#pragma once
#include <array>
#include <optional>
#include <string_view>

namespace gritwright {

/// What a tree bears when it is repotted goes by its group.
enum class SpeciesGroup {
  conifer,
  deciduous_conifer,
  deciduous_developing,
  deciduous_refined,
  broadleaf_evergreen,
  acid_lover,
  tropical,
  sick,
  collected,
  imported
};

/// How a group takes to having all ground taken off.
enum class BareRoot {
  never,       ///< the one stop sign
  refused,     ///< keep the core
  caution,     ///< stands between
  more_care,
  may_be,
  when_growing
};

/// What a group bears, as the trade does it; no source beyond common practice, and a grower may change it.
struct GroupDefaults {
  SpeciesGroup group;
  std::string_view name;  ///< as files spell it: "deciduous-conifer"
  BareRoot bare_root;
  std::optional<double> untouched_least;  ///< least share of the root mass that stays untouched, 0..1
  std::optional<double> removed_most;     ///< largest share that may be taken off, 0..1
  std::optional<int> interval_least_years;
  std::optional<int> interval_most_years;
};

inline constexpr std::array<SpeciesGroup, 10> species_groups{
    SpeciesGroup::conifer,             SpeciesGroup::deciduous_conifer, SpeciesGroup::deciduous_developing,
    SpeciesGroup::deciduous_refined,   SpeciesGroup::broadleaf_evergreen, SpeciesGroup::acid_lover,
    SpeciesGroup::tropical,            SpeciesGroup::sick,              SpeciesGroup::collected,
    SpeciesGroup::imported};

[[nodiscard]] const GroupDefaults& group_defaults(SpeciesGroup group);

/// The group that files spell `name`; empty if there is none.
[[nodiscard]] std::optional<SpeciesGroup> species_group_named(std::string_view name);

}  // namespace gritwright
