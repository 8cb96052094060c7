#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/lot_control.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright {

/// What the last lot of a material is watched by, and where each figure of the `earlier` ones usually lies. Other arguments as in
/// lot_figures. Keys finer, d50, usable, air with container_capacity and air_filled_porosity, each before the usual range of its own (usual).
/// Source: docs/science/grading.md.
[[nodiscard]] std::vector<Explanation> explain_lot(const Grading& last, const Band& wanted, const std::optional<GrainProperties>& grain, MassShare lost,
                                                   std::span<const LotFigures> earlier);

}  // namespace gritwright
