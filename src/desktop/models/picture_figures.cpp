#include "picture_figures.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <initializer_list>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>

#include "gritwright/report/ageing_report.hpp"
#include "gritwright/report/calibration_report.hpp"
#include "gritwright/report/design_report.hpp"
#include "gritwright/report/lot_report.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/pot_section.hpp"
#include "gritwright/report/root_plan_report.hpp"
#include "lot_history.hpp"
#include "text.hpp"
#include "verdict_figures.hpp"

namespace gritwright::desktop {

namespace {

class PictureText {
  Q_DECLARE_TR_FUNCTIONS(Pictures)
};

Figure picture_figure(const QString& label) { return {QStringLiteral("picture"), label, {}, PictureText::tr("nothing is drawn yet"), {}}; }

void explain_by(Figure& figure, std::vector<Explanation> explanations) {
  for (Explanation& one : explanations) figure.explanations.push_back(std::move(one));
  if (!figure.explanations.empty()) figure.reason.clear();
}

std::vector<Explanation> picked(const std::vector<Explanation>& all, std::initializer_list<std::string_view> keys) {
  std::vector<Explanation> some;
  for (const std::string_view key : keys) std::ranges::copy_if(all, std::back_inserter(some), [key](const Explanation& one) { return one.figure == key; });
  return some;
}

/// `group` says why there is nothing, where there is nothing.
Figure figure_of_group(const Bench& bench, const QString& label, const char* group, std::initializer_list<const char*> keys) {
  Figure figure = picture_figure(label);
  for (const FigureGroup& each : bench_figures(bench)) {
    if (each.key != QLatin1String(group)) continue;
    for (const Figure& one : each.figures) {
      const bool asked = std::ranges::any_of(keys, [&one](const char* key) { return one.key == QLatin1String(key); });
      if (!asked) continue;
      if (!one.reason.isEmpty() && figure.explanations.empty()) figure.reason = one.reason;
      explain_by(figure, one.explanations);
    }
  }
  return figure;
}

}  // namespace

Figure sieving_curve_figure(const Bench& bench) {
  Figure figure = picture_figure(PictureText::tr("Grading curve"));
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return figure;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  const auto add = [&figure](SheetState state, const std::optional<SieveAnalysis>& analysis) {
    if (state == SheetState::finished && analysis) explain_by(figure, picked(explain(*analysis), {"passing", "d_mm", "cu"}));
  };
  add(component.state, component.analysis);
  for (const ReplicateEvaluation& sample : component.replicates) add(sample.state, sample.analysis);
  return figure;
}

Figure lots_figure(const Bench& bench) {
  Figure figure = picture_figure(PictureText::tr("From lot to lot"));
  const auto band = lot_band(bench);
  const auto graded = graded_bag(bench);
  if (!band) figure.reason = PictureText::tr("type the wanted grain");
  else if (!graded) figure.reason = PictureText::tr("finish the sieve test");
  if (!band || !graded) return figure;
  const auto points = lot_points(bench);
  std::vector<LotFigures> earlier;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) earlier.push_back(points[i].figures);
  const auto& component = bench.evaluation().components[static_cast<std::size_t>(bench.current_component())].component;
  explain_by(figure, explain_lot(graded->grading, *band, component ? std::optional(component->grain) : std::nullopt, graded->lost, earlier));
  return figure;
}

Figure mix_curve_figure(const Bench& bench) {
  const QString label = PictureText::tr("Grading curve of the mix");
  Figure figure = figure_of_group(bench, label, "grain", {"d10", "d50", "d90", "in_band", "finer"});
  const auto& evaluation = bench.evaluation();
  if (evaluation.mix_state) explain_by(figure, picked(explain(*evaluation.mix, *evaluation.mix_state), {"passing", "mass_shares"}));
  return figure;
}

Figure pot_section_figure(const Bench& bench) {
  return figure_of_group(bench, PictureText::tr("Pot in section"), "pot", {"container_capacity", "air_filled_porosity", "trapped_air", "perched_height_cm"});
}

Figure litres_figure(const Bench& bench) {
  Figure figure = figure_of_group(bench, PictureText::tr("Litres in and out"), "mix", {"shrinkage_percent", "voids_between_grains", "voids_in_grains"});
  explain_by(figure, figure_of_group(bench, {}, "litres", {"mixed_litres"}).explanations);
  return figure;
}

Figure comparison_figure(const Comparison& comparison) {
  Figure figure = picture_figure(PictureText::tr("Mixes side by side"));
  std::vector<Explanation> formulas;
  for (const ComparedMix& mix : comparison.mixes) {
    for (const Explanation& one : mix.explanations) {
      auto formula = std::ranges::find(formulas, one.formula, &Explanation::formula);
      if (formula == formulas.end()) formula = formulas.insert(formulas.end(), Explanation{one.figure, one.formula, {}, one.source});
      QStringList inputs;
      for (const auto& [name, value] : one.inputs) inputs << with_label(explained(name), to_local(explained(value).toStdString()));
      formula->inputs.emplace_back(mix.name.toStdString(), semicolon_list(inputs).toStdString());
    }
  }
  explain_by(figure, std::move(formulas));
  return figure;
}

Figure years_figure(const BenchAgeing* ageing) {
  Figure figure = picture_figure(PictureText::tr("Air over the years"));
  if (ageing != nullptr) explain_by(figure, {explain_years(ageing->of.mix.mix, ageing->of.breakdowns)});
  return figure;
}

Figure trade_off_figure(const FoundParts* found) {
  Figure figure = picture_figure(PictureText::tr("Recipes found"));
  if (found != nullptr) explain_by(figure, explain_design());
  return figure;
}

Figure scores_figure(const std::vector<ComparedTest>& tests) {
  Figure figure = picture_figure(PictureText::tr("Pot tests beside what was foretold"));
  std::vector<std::pair<std::string, PredictedAndMeasured>> scored;
  for (const ComparedTest& test : tests) scored.emplace_back(test.test, test.air);
  if (!scored.empty()) explain_by(figure, {explain_score(scored)});
  return figure;
}

Figure pot_figure(const std::optional<PotGeometry>& pot) {
  Figure figure = picture_figure(PictureText::tr("The pot to scale"));
  if (pot) explain_by(figure, explain_holding(*pot));
  return figure;
}

Figure plan_views_figure(const RootPlanOutcome* outcome) {
  Figure figure = picture_figure(PictureText::tr("Root mass in the pot"));
  if (outcome != nullptr && outcome->answer) explain_by(figure, explain(outcome->plan, *outcome->answer));
  return figure;
}

Figure plan_section_figure(const RootPlanOutcome* outcome) {
  Figure figure = picture_figure(PictureText::tr("New mix around the root mass"));
  if (outcome != nullptr && outcome->section) explain_by(figure, explain(*outcome->section));
  return figure;
}

}  // namespace gritwright::desktop
