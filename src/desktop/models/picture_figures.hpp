#pragma once
// Where what a picture shows comes from; without explanations while it shows nothing.

#include <optional>
#include <vector>

#include "bench_ageing.hpp"
#include "figures.hpp"
#include "find_results.hpp"
#include "mix_comparison.hpp"
#include "pot_test_records.hpp"
#include "root_plan_desk.hpp"

namespace gritwright::desktop {

/// The curves of the sieve test on screen, of each of its samples.
[[nodiscard]] Figure sieving_curve_figure(const Bench& bench);
/// The bag on screen among the bags of its material before it.
[[nodiscard]] Figure lots_figure(const Bench& bench);
/// The curve of the mix on the bench; water and air in its pot; its litres.
[[nodiscard]] Figure mix_curve_figure(const Bench& bench);
[[nodiscard]] Figure pot_section_figure(const Bench& bench);
[[nodiscard]] Figure litres_figure(const Bench& bench);
/// Mixes side by side: each formula once, with what went into it for each mix.
[[nodiscard]] Figure comparison_figure(const Comparison& comparison);
/// The years to come; null before they are worked out.
[[nodiscard]] Figure years_figure(const BenchAgeing* ageing);
[[nodiscard]] Figure trade_off_figure(const FoundParts* found);
[[nodiscard]] Figure scores_figure(const std::vector<ComparedTest>& tests);
/// What a pot holds.
[[nodiscard]] Figure pot_figure(const std::optional<PotGeometry>& pot);
/// The root mass in its new pot; the new mix around it. Null before the plan is worked out.
[[nodiscard]] Figure plan_views_figure(const RootPlanOutcome* outcome);
[[nodiscard]] Figure plan_section_figure(const RootPlanOutcome* outcome);

}  // namespace gritwright::desktop
