#pragma once
#include <string>
#include <vector>

#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/print_document.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/root_section.hpp"

namespace gritwright {

/// What is looked at from.
enum class RootSide { front, top };

/// Pot and root mass to scale as `root_views` has them: the wall, the soil, the block as posed (dashed), what a plan takes off (hatched)
/// and keeps (grey), the trunk base.
[[nodiscard]] PrintDrawing root_drawing(const RootMassPlan& plan, const WorkedPlan& worked, RootSide view, const Translate& translate = {});

/// What is done in turn at the bench: combing, cuts by old face and new direction, where and how the tree then stands, its shoulder.
[[nodiscard]] std::vector<std::string> root_plan_steps(const WorkedPlan& plan, UnitSystem units, const Translate& translate = {});

/// The sheet for the bench: what limits the fit, plans A, B and C with their cuts in order, pictures of plan A, the stop table and
/// cautions.
[[nodiscard]] PrintDocument root_plan_sheet(const RootMassPlan& plan, const RootPlanAnswer& answer, UnitSystem units, const Translate& translate = {});
/// The same with the new mix's air and water in the pot of plan A.
[[nodiscard]] PrintDocument root_plan_sheet(const RootMassPlan& plan, const RootPlanAnswer& answer, UnitSystem units, const RootSection& section,
                                            const std::string& mix_name, const Translate& translate = {});

}  // namespace gritwright
