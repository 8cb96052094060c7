#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/models/root_views.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/pot_section.hpp"
#include "gritwright/report/print_document.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// The pot of a worked plan cut along its length: the new mix with its water and air by height, and before it the kept root mass,
/// whose moisture is not known. `water` and the ranges are those of the new mix alone.
struct RootSection {
  PotSection pot;
  PotWater water;
  ViewOutline kept;          ///< closed, from the middle of the inside floor; empty where all ground was taken off
  double new_mix_share = 0;  ///< of the pot, 0..1
  std::optional<MixRanges> ranges;
  std::vector<Explanation> explanations{};  ///< of water and air: keys new_mix, container_capacity, air_filled_porosity
};

/// Empty for a plan in stages, and where a particle density of the mix is missing. `worked` is one of the plans of `plan`; `side` is its
/// view from the side. Source: docs/science/root-mass-plan.md.
[[nodiscard]] std::optional<RootSection> root_section(const RootMassPlan& plan, const WorkedPlan& worked, const RootView& side, const Mix& mix,
                                                      const MixState& state);

/// The mix in the plan's pot with the root mass taken out, for its ranges. Precondition: as above, and `spread` is for `mix`.
[[nodiscard]] UncertainMix uncertain_new_mix(const RootMassPlan& plan, const WorkedPlan& worked, const Mix& mix, const MixSpread& spread);

/// "new mix only, 41 % of the pot".
[[nodiscard]] std::string new_mix_only_text(const RootSection& section, const Translate& translate = {});

/// Pot, fill line, wet zone and root mass to scale, the root mass hatched and marked as not known.
[[nodiscard]] PrintDrawing root_section_drawing(const RootSection& section, UnitSystem units, const Translate& translate = {});

/// Picture and figures, for the sheet of a plan.
[[nodiscard]] PrintSection root_section_print(const RootSection& section, const std::string& mix_name, UnitSystem units, const Translate& translate = {});

}  // namespace gritwright
