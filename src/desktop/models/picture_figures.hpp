#pragma once
// Where what a picture shows comes from; empty while it shows nothing.

#include <optional>
#include <vector>

#include "bench.hpp"
#include "bench_ageing.hpp"
#include "find_results.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/report/explanations.hpp"
#include "mix_comparison.hpp"
#include "pot_test_records.hpp"
#include "root_plan_desk.hpp"

namespace gritwright::desktop {

/// The curves of the sieve test on screen, and of each of its samples.
[[nodiscard]] std::vector<Explanation> explain_sieving_curve(const Bench& bench);
/// The last of the lots that are drawn, and where those before it lie.
[[nodiscard]] std::vector<Explanation> explain_lots(const Bench& bench);
/// The curve of the mix on the bench; water and air in its pot; its litres.
[[nodiscard]] std::vector<Explanation> explain_mix_curve(const Bench& bench);
[[nodiscard]] std::vector<Explanation> explain_pot_section(const Bench& bench);
[[nodiscard]] std::vector<Explanation> explain_litres(const Bench& bench);
/// Mixes side by side: each formula once for each source, with what went into it for each mix.
[[nodiscard]] std::vector<Explanation> explain_comparison(const Comparison& comparison);
/// `ageing` is null before the years are worked out.
[[nodiscard]] std::vector<Explanation> explain_ageing(const BenchAgeing* ageing);
/// How recipes are scored, and the figures of the best one. `found` is null before the first answer.
[[nodiscard]] std::vector<Explanation> explain_trade_offs(const FoundParts* found, UnitSystem units);
[[nodiscard]] std::vector<Explanation> explain_scores(const std::vector<ComparedTest>& tests);
/// What a pot holds.
[[nodiscard]] std::vector<Explanation> explain_pot(const std::optional<PotGeometry>& pot);
/// The plan that is drawn: the root mass in its pot; the new mix around it. `outcome` is null before it is worked out.
[[nodiscard]] std::vector<Explanation> explain_plan(const RootPlanOutcome* outcome);
[[nodiscard]] std::vector<Explanation> explain_plan_section(const RootPlanOutcome* outcome);

}  // namespace gritwright::desktop
