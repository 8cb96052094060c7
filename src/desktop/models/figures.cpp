#include "figures.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <array>

#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class FigureText {
  Q_DECLARE_TR_FUNCTIONS(Figures)
};

/// Gathers the figures of one group; a dash always comes with its reason.
class Group {
 public:
  Group(QString key, QString title, std::vector<Explanation> explanations, QString reason)
      : explanations_(std::move(explanations)), reason_(std::move(reason)) {
    group_.key = std::move(key);
    group_.title = std::move(title);
  }

  void add(const char* key, const QString& label, const std::string& value) { add(key, label, value, reason_); }

  void add(const char* key, const QString& label, const std::string& value, const QString& reason) {
    Figure figure{QString::fromLatin1(key), label, to_local(value), {}, {}};
    // A table's dash stands alone; a value has a digit in it.
    if (!std::ranges::any_of(figure.value, [](QChar sign) { return sign.isDigit(); })) {
      figure.value = QStringLiteral("\u2013");
      figure.reason = reason;
    }
    for (const Explanation& explanation : explanations_) {
      if (explanation.figure == key) figure.explanations.push_back(explanation);
    }
    group_.figures.push_back(std::move(figure));
  }

  [[nodiscard]] FigureGroup take() { return std::move(group_); }

 private:
  FigureGroup group_;
  std::vector<Explanation> explanations_;
  QString reason_;
};

QString why_no_mix(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  if (evaluation.mix_state) return {};
  QStringList waiting;
  for (std::size_t i = 0; i < evaluation.components.size(); ++i) {
    const ComponentEvaluation& component = evaluation.components[i];
    if (component.component) continue;
    const QString name = bench.state().components[i].name;
    if (!component.faults.empty()) waiting << FigureText::tr("%1: put its marked fields right").arg(name);
    else if (component.state != SheetState::finished) waiting << FigureText::tr("%1: finish its sieve test").arg(name);
    else waiting << FigureText::tr("%1: weigh a litre of it").arg(name);
  }
  if (!waiting.isEmpty()) return semicolon_list(waiting);
  return evaluation.faults.empty() ? FigureText::tr("give a component parts") : FigureText::tr("see the marked fields");
}

QString why_no_pot(const Bench& bench) {
  if (bench.evaluation().pot) return {};
  return bench.evaluation().faults.empty() ? FigureText::tr("type the pot's lengths") : FigureText::tr("see the marked fields of the pot");
}

QString why_no_packing(const Bench& bench) {
  const QString no_mix = why_no_mix(bench);
  return no_mix.isEmpty() ? FigureText::tr("measure the grain density of each component") : no_mix;
}

FigureGroup grain_group(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  const UnitSystem units = bench.units();
  const std::optional<Grading>& grading = evaluation.mix_grading;
  Group group(QStringLiteral("grain"), FigureText::tr("Grain of the mix"), grading ? explain_blend(*grading, evaluation.band) : std::vector<Explanation>{},
              why_no_mix(bench));
  const auto size = [&](double percent) { return grain_size_text(grading ? percentile(*grading, percent) : std::nullopt, units); };
  const QString outside = grading ? FigureText::tr("outside the sieves used; a wider set would tell") : why_no_mix(bench);
  group.add("d50", FigureText::tr("D50, half is finer"), size(50), outside);
  group.add("d10", FigureText::tr("D10"), size(10), outside);
  group.add("d90", FigureText::tr("D90"), size(90), outside);
  group.add("cu", FigureText::tr("D60/D10"), figure(grading ? uniformity(*grading) : std::nullopt, 2), outside);
  const QString no_band = evaluation.band ? outside : FigureText::tr("type the wanted grain");
  const auto share = [&](const Band& band) {
    const auto in_band = grading ? band_share(*grading, band) : std::nullopt;
    return percent_text(number(in_band, [](MassShare s) { return s.value(); }));
  };
  group.add("in_band", FigureText::tr("Wanted grain, by mass"), evaluation.band ? share(*evaluation.band) : std::string(), no_band);
  group.add("finer", FigureText::tr("Finer than it"), evaluation.band ? share({aperture_mm(0), evaluation.band->from}) : std::string(), no_band);
  return group.take();
}

FigureGroup mix_group(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  const UnitSystem units = bench.units();
  const auto& state = evaluation.mix_state;
  std::vector<Explanation> explanations = state ? explain(*evaluation.mix, *state) : std::vector<Explanation>{};
  if (state) explanations.push_back(explain_mixed_price(*evaluation.mix, *state, evaluation.prices));
  Group group(QStringLiteral("mix"), FigureText::tr("Mix, worked in"), std::move(explanations), why_no_packing(bench));
  const auto shrinkage = state ? state->shrinkage : std::nullopt;
  const bool swells = shrinkage && shrinkage->value() < 0;
  group.add("shrinkage_percent", swells ? FigureText::tr("Swells on mixing by") : FigureText::tr("Shrinks on mixing by"),
            percent_text(number(shrinkage, [](Shrinkage s) { return s.value() < 0 ? -s.value() : s.value(); })));
  const PackedState* settled = state && state->settled ? &*state->settled : nullptr;
  const auto of_settled = [&](auto convert) { return settled != nullptr ? std::optional<double>(convert(*settled)) : std::nullopt; };
  const auto share = [&](Porosity PackedState::*member) { return percent_text(of_settled([&](const PackedState& s) { return (s.*member).value(); })); };
  group.add("bulk_density_g_l", FigureText::tr("Litre weight, dry"), density_text(of_settled([](const PackedState& s) { return in_g_l(s.bulk_density); }), units));
  group.add("voids_between_grains", FigureText::tr("Voids between grains"), share(&PackedState::voids_between_grains));
  group.add("voids_in_grains", FigureText::tr("Voids in grains"), share(&PackedState::voids_in_grains));
  group.add("total_porosity", FigureText::tr("Total porosity"), share(&PackedState::total_porosity));
  group.add("grain_water", FigureText::tr("Water in grains"), share(&PackedState::grain_water));
  std::optional<double> exchange;
  if (settled != nullptr && settled->cation_exchange) exchange = settled->cation_exchange->value();
  // Where nothing has a price, nobody asks for one.
  const bool any_price = std::ranges::any_of(evaluation.prices, [](const auto& price) { return price.has_value(); });
  if (any_price) {
    const auto& price = evaluation.price_per_l;
    group.add("price", FigureText::tr("Price of a mixed litre"), price ? figure(price->amount, 2) + (price->currency.empty() ? "" : " " + price->currency) : std::string(),
              !state || !state->shrinkage ? why_no_packing(bench) : FigureText::tr("a component has no price, or they are in several currencies; only bags have one"));
  }
  group.add("cec_meq_l", FigureText::tr("Exchange capacity"), figure(exchange, 0) + (exchange ? " meq/L" : ""),
            settled != nullptr ? FigureText::tr("unknown for a component") : why_no_packing(bench));
  return group.take();
}

namespace {

/// What changes the water and stands further down the form.
QStringList what_water_stands_on(const Container& container, UnitSystem units) {
  QStringList all;
  if (in_cm(container.saucer) > 0) all << FigureText::tr("saucer %1").arg(to_local(depth_text(container.saucer, units)));
  if (in_cm(container.wick) > 0) all << FigureText::tr("wick %1").arg(to_local(depth_text(container.wick, units)));
  if (in_deg(container.tilt.angle) > 0) all << FigureText::tr("tilted %1\u00b0").arg(number_text(in_deg(container.tilt.angle), 3));
  return all;
}

}  // namespace

FigureGroup pot_group(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  const UnitSystem units = bench.units();
  const auto& water = evaluation.water;
  const auto& pot = evaluation.pot;
  std::vector<Explanation> explanations;
  if (water) explanations = explain(*evaluation.mix, *evaluation.mix_state, *water, pot ? &pot->container() : nullptr);
  if (pot) {
    for (Explanation& explanation : explain(*pot)) explanations.push_back(explanation);
  }
  QString reason = why_no_pot(bench);
  if (const QString no_mix = why_no_packing(bench); !water && !(evaluation.mix_state && evaluation.mix_state->settled)) reason = reason.isEmpty() ? no_mix : semicolon_list({reason, no_mix});
  const QString title = pot ? comma_list(QStringList{FigureText::tr("In this pot, %1 deep").arg(to_local(depth_text(pot->filled_depth(), units)))} + what_water_stands_on(pot->container(), units))
                            : FigureText::tr("In the pot");
  Group group(QStringLiteral("pot"), title, explanations, reason);
  const auto share = [&](Porosity PotWater::*member) {
    return percent_text(number(water, [&](const PotWater& w) { return (w.*member).value(); }));
  };
  group.add("air_filled_porosity", FigureText::tr("Air that drains free"), share(&PotWater::air_filled_porosity));
  group.add("container_capacity", FigureText::tr("Water held"), share(&PotWater::container_capacity));
  group.add("available_in_pot", FigureText::tr("Water plants can take"), share(&PotWater::available_in_pot));
  group.add("trapped_air", FigureText::tr("Trapped air, apart"), share(&PotWater::trapped_air));
  group.add("perched_height_cm", FigureText::tr("Wet zone, height"), depth_text(water ? std::optional(water->perched_height) : std::nullopt, units));
  group.add("volume_ml", FigureText::tr("Volume to the fill line"), volume_text(number(pot, [](const PotGeometry& p) { return in_ml(p.volume()) / 1000; }), units), why_no_pot(bench));
  std::optional<Mass> wet;
  if (water && evaluation.mix_state->settled) wet = wet_mass(pot->main_mix_volume(), evaluation.mix_state->settled->bulk_density, water->container_capacity);
  group.add("wet_mass_g", FigureText::tr("Mix, wet"), mass_text(wet, units));
  return group.take();
}

FigureGroup litres_group(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  const UnitSystem units = bench.units();
  QString reason = why_no_pot(bench);
  if (const QString no_mix = why_no_packing(bench); !evaluation.to_measure_out && !(evaluation.mix_state && evaluation.mix_state->settled)) reason = reason.isEmpty() ? no_mix : semicolon_list({reason, no_mix});
  std::vector<Explanation> measuring;
  if (evaluation.pot && evaluation.mix_state) measuring.push_back(explain_measuring_out(*evaluation.pot, *evaluation.mix, *evaluation.mix_state));
  Group group(QStringLiteral("litres"), FigureText::tr("To measure out for one pot"), {}, reason);
  FigureGroup rows = group.take();
  const auto add = [&](const QString& key, const QString& label, std::optional<double> litres) {
    Figure figure{key, label, to_local(volume_text(litres, units)), {}, {}};
    if (!litres) {
      figure.value = QStringLiteral("\u2013");
      figure.reason = reason;
    }
    figure.explanations = measuring;
    rows.figures.push_back(figure);
  };
  for (std::size_t i = 0; i < evaluation.components.size(); ++i) {
    const auto in_mix = std::ranges::find(evaluation.mixed, i);
    std::optional<double> litres;
    if (evaluation.to_measure_out && in_mix != evaluation.mixed.end()) {
      litres = in_l((*evaluation.to_measure_out)[static_cast<std::size_t>(in_mix - evaluation.mixed.begin())]);
    }
    if (evaluation.to_measure_out && in_mix == evaluation.mixed.end()) continue;
    add(QStringLiteral("measure_out_%1").arg(i + 1), bench.state().components[i].name, litres);
  }
  add(QStringLiteral("mixed_litres"), FigureText::tr("Mixed, before filling"), number(evaluation.to_fill, [](MixedVolume v) { return in_l(v); }));
  return rows;
}

}  // namespace

std::vector<FigureGroup> bench_figures(const Bench& bench) {
  return {pot_group(bench), litres_group(bench), mix_group(bench), grain_group(bench)};
}

namespace {

/// A size with its unit, sizes with words around them, or a name.
QString part_words(const QString& part) {
  const bool is_composed = part.endsWith(QStringLiteral(" mm")) && part.contains(QRegularExpression(QStringLiteral("[a-z] [0-9]")));
  if (is_composed || part == QStringLiteral("the rest")) return explanation_words(part.toStdString());
  return part.endsWith(QStringLiteral(" mm")) ? to_local(part.toStdString()) : part;
}

}  // namespace

QString explanation_words(const std::string& text) {
  struct Around {
    QRegularExpression shape;
    const char* words;
  };
  static const std::array arounds{Around{QRegularExpression(QStringLiteral("^([0-9.]+ mm) to ([0-9.]+ mm)$")), QT_TRANSLATE_NOOP("Figures", "%1 to %2")},
                                  Around{QRegularExpression(QStringLiteral("^([0-9.]+) parts at ([0-9]+ g/L)$")), QT_TRANSLATE_NOOP("Figures", "%1 parts at %2")},
                                  Around{QRegularExpression(QStringLiteral("^beta of (.+)$")), QT_TRANSLATE_NOOP("Figures", "beta of %1")},
                                  Around{QRegularExpression(QStringLiteral("^share of (.+)$")), QT_TRANSLATE_NOOP("Figures", "share of %1")},
                                  Around{QRegularExpression(QStringLiteral("^over ([0-9.]+ mm)$")), QT_TRANSLATE_NOOP("Figures", "over %1")},
                                  Around{QRegularExpression(QStringLiteral("^packing density of (over [0-9.]+ mm|[0-9.]+ mm to [0-9.]+ mm|the rest)$")), QT_TRANSLATE_NOOP("Figures", "packing density of %1")},
                                  Around{QRegularExpression(QStringLiteral("^stayed on ([0-9.]+ mm)$")), QT_TRANSLATE_NOOP("Figures", "stayed on %1")},
                                  Around{QRegularExpression(QStringLiteral("^passing at ([0-9.]+ mm)$")), QT_TRANSLATE_NOOP("Figures", "passing at %1")},
                                  Around{QRegularExpression(QStringLiteral("^([0-9]+ %) typical$")), QT_TRANSLATE_NOOP("Figures", "%1 typical")}};
  for (const Around& around : arounds) {
    const QRegularExpressionMatch match = around.shape.match(to_qt(text));
    if (!match.hasMatch()) continue;
    QString said = FigureText::tr(around.words);
    for (int part = 1; part <= match.lastCapturedIndex(); ++part) said = said.arg(part_words(match.captured(part)));
    return said;
  }
  return to_qt(translated(text));
}

Figure balance_figure(const Bench& bench) {
  Figure figure{QStringLiteral("balance"), FigureText::tr("Sum and loss"), {}, {}, {}};
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return figure;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  const auto add = [&](SheetState state, const std::optional<SieveAnalysis>& analysis) {
    if (state != SheetState::finished || !analysis) return;
    for (Explanation& one : explain(*analysis))
      if (one.figure == "total_g" || one.figure == "loss_percent" || one.figure == "base_g") figure.explanations.push_back(std::move(one));
  };
  add(component.state, component.analysis);
  for (const ReplicateEvaluation& sample : component.replicates) add(sample.state, sample.analysis);
  return figure;
}

QString explanation_text(const Figure& figure) {
  QStringList lines;
  if (!figure.reason.isEmpty()) lines << FigureText::tr("Not computed: %1.").arg(figure.reason);
  if (!figure.range_detail.isEmpty()) lines << figure.range_detail;
  for (const Explanation& explanation : figure.explanations) {
    lines << explanation_words(explanation.formula);
    for (const auto& [name, value] : explanation.inputs) lines << QStringLiteral("    ") + with_label(explanation_words(name), to_local(explanation_words(value).toStdString()));
    lines << FigureText::tr("Source: %1").arg(explanation_words(explanation.source));
  }
  return lines.join(u'\n');
}

}  // namespace gritwright::desktop
