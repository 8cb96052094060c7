#include "picture_figures.hpp"

#include <QLatin1String>
#include <QString>
#include <QStringList>
#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>

#include "figures.hpp"
#include "gritwright/models/lot_control.hpp"
#include "gritwright/report/ageing_report.hpp"
#include "gritwright/report/calibration_report.hpp"
#include "gritwright/report/design_report.hpp"
#include "gritwright/report/lot_report.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/pot_section.hpp"
#include "gritwright/report/root_plan_report.hpp"
#include "gritwright/report/root_section.hpp"
#include "lot_history.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

void append_all(std::vector<Explanation>& list, std::vector<Explanation> more) { std::ranges::move(more, std::back_inserter(list)); }

std::vector<Explanation> picked(const std::vector<Explanation>& all, std::initializer_list<std::string_view> keys) {
  std::vector<Explanation> some;
  for (const std::string_view key : keys) std::ranges::copy_if(all, std::back_inserter(some), [key](const Explanation& one) { return one.figure == key; });
  return some;
}

std::vector<Explanation> explanations_in(const Bench& bench, const char* group, std::initializer_list<const char*> keys) {
  std::vector<Explanation> some;
  for (const FigureGroup& each : bench_figures(bench)) {
    if (each.key != QLatin1String(group)) continue;
    for (const Figure& one : each.figures) {
      if (std::ranges::any_of(keys, [&one](const char* key) { return one.key == QLatin1String(key); })) append_all(some, one.explanations);
    }
  }
  return some;
}

}  // namespace

std::vector<Explanation> explain_sieving_curve(const Bench& bench) {
  std::vector<Explanation> list;
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return list;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  const auto add = [&list](SheetState state, const std::optional<SieveAnalysis>& analysis) {
    if (state == SheetState::finished && analysis) append_all(list, picked(explain(*analysis), {"passing"}));
  };
  add(component.state, component.analysis);
  for (const ReplicateEvaluation& sample : component.replicates) add(sample.state, sample.analysis);
  if (list.empty() || component.grading() == nullptr) return list;
  if (component.pooled) list.push_back(explain_pooling(*component.pooled));
  for (const double percent : {10.0, 50.0, 90.0}) list.push_back(explain_size(*component.grading(), percent));
  return list;
}

std::vector<Explanation> explain_lots(const Bench& bench) {
  const auto points = lot_points(bench);
  if (points.empty()) return {};
  std::vector<LotFigures> earlier;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) earlier.push_back(points[i].figures);
  return explain_lot(points.back().grading, *lot_band(bench), lot_grain(bench), points.back().lost, earlier);
}

std::vector<Explanation> explain_mix_curve(const Bench& bench) {
  std::vector<Explanation> list = explanations_in(bench, "grain", {"d10", "d50", "d90", "in_band", "finer"});
  const auto& evaluation = bench.evaluation();
  if (evaluation.mix_state) append_all(list, picked(explain(*evaluation.mix, *evaluation.mix_state), {"passing", "mass_shares"}));
  return list;
}

std::vector<Explanation> explain_pot_section(const Bench& bench) {
  return explanations_in(bench, "pot", {"container_capacity", "air_filled_porosity", "trapped_air", "perched_height_cm"});
}

std::vector<Explanation> explain_litres(const Bench& bench) {
  std::vector<Explanation> list = explanations_in(bench, "mix", {"shrinkage_percent", "voids_between_grains", "voids_in_grains"});
  if (!list.empty()) append_all(list, explanations_in(bench, "litres", {"mixed_litres"}));
  return list;
}

std::vector<Explanation> explain_comparison(const Comparison& comparison) {
  std::vector<Explanation> list;
  for (const ComparedMix& mix : comparison.mixes) {
    for (const Explanation& one : mix.explanations) {
      auto same = std::ranges::find_if(list, [&one](const Explanation& other) { return other.figure == one.figure && other.formula == one.formula && other.source == one.source; });
      if (same == list.end()) same = list.insert(list.end(), Explanation{one.figure, one.formula, {}, one.source});
      QStringList inputs;
      for (const auto& [name, value] : one.inputs) inputs << with_label(explanation_words(name), to_local(explanation_words(value).toStdString()));
      same->inputs.emplace_back(mix.name.toStdString(), semicolon_list(inputs).toStdString());
    }
  }
  return list;
}

std::vector<Explanation> explain_ageing(const BenchAgeing* ageing) {
  if (ageing == nullptr) return {};
  return explain_years(ageing->of.mix.mix, ageing->of.breakdowns, static_cast<int>(ageing->years.seasons.size()) - 1);
}

std::vector<Explanation> explain_trade_offs(const FoundParts* found, UnitSystem units) {
  if (found == nullptr) return {};
  std::vector<Explanation> list = explain_design();
  for (const Figure& figure : recipe_figures(*found, 0, units).figures) {
    for (const Explanation& one : figure.explanations) {
      if (std::ranges::find(list, one.formula, &Explanation::formula) == list.end()) list.push_back(one);
    }
  }
  return list;
}

std::vector<Explanation> explain_scores(const std::vector<ComparedTest>& tests) {
  if (tests.empty()) return {};
  std::vector<std::pair<std::string, PredictedAndMeasured>> scored;
  for (const ComparedTest& test : tests) scored.emplace_back(test.test, test.air);
  return {explain_score(scored)};
}

std::vector<Explanation> explain_pot(const std::optional<PotGeometry>& pot) { return pot ? explain_holding(*pot) : std::vector<Explanation>{}; }

std::vector<Explanation> explain_plan(const RootPlanOutcome* outcome) {
  return outcome != nullptr && outcome->answer ? explain(outcome->plan, *outcome->answer, outcome->worked) : std::vector<Explanation>{};
}

std::vector<Explanation> explain_plan_section(const RootPlanOutcome* outcome) {
  return outcome != nullptr && outcome->section ? outcome->section->explanations : std::vector<Explanation>{};
}

}  // namespace gritwright::desktop
