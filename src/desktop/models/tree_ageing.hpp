#pragma once
#include <span>

#include "bench_ageing.hpp"
#include "gritwright/domain/tree.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// The mix and pot a repotting names, with crumble tests of the bags the mix was designed from, else typical durability. Empty where
/// mix or pot are not known, or the mix has no volumes. `calibrations` are those of the record.
[[nodiscard]] std::optional<AgeingQuestion> ageing_question(const OpenWorkbook& workbook, const Catalogue& catalogue, const Repotting& repotting,
                                                            std::span<const MixCalibration> calibrations);

/// "Since the repotting of 2024-03-14, by pot test T-01: likely below 20 % air in season 3 ..., an estimate".
[[nodiscard]] QString tree_air_sentence(const Repotting& repotting, const BenchAgeing& ageing);

}  // namespace gritwright::desktop
