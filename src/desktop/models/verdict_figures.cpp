#include "verdict_figures.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <iterator>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/report/explanations.hpp"
#include "gritwright/report/text_table.hpp"
#include "lot_history.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class VerdictText {
  Q_DECLARE_TR_FUNCTIONS(Verdict)
};

constexpr unsigned most_choices = 8;  // more is a list to study, not to choose from

QString why_no_curve(const ComponentEvaluation& component) {
  if (!component.faults.empty()) return VerdictText::tr("see the marked cells and fields");
  if (component.state != SheetState::finished) return VerdictText::tr("finish the sieve test");
  return {};
}

QString joined(const std::vector<Aperture>& openings, UnitSystem units) {
  QStringList texts;
  for (const Aperture& opening : openings) texts << to_local(size_text(opening, units));
  return texts.join(VerdictText::tr(" and "));
}

QString sentence_of(const BagVerdict& judged, UnitSystem units) {
  switch (judged.verdict) {
    case Verdict::take: return VerdictText::tr("Take it as it is");
    case Verdict::take_after_screening: return VerdictText::tr("Take it after screening at %1").arg(joined(judged.openings, units));
    case Verdict::other_use_or_complain: break;
  }
  return VerdictText::tr("Other use, or complain");
}

void add_fractions(VerdictView& view, const GradedBag& graded, const BagVerdict& judged, std::optional<LooseVolume> bag, UnitSystem units) {
  view.fraction_heading = {VerdictText::tr("fraction"), VerdictText::tr("of the mass"), VerdictText::tr("from a litre"), VerdictText::tr("from a bag"), VerdictText::tr("D50")};
  if (judged.openings.empty()) return;
  const auto screened = screen(graded.grading, judged.openings, {}, graded.packing.of);
  if (!screened) return;
  const auto amounts = fraction_amounts(*screened, {}, bag);
  view.fractions_how = explain(*screened);
  for (std::size_t i = 0; i < screened->fractions.size(); ++i) {
    const ScreenedFraction& fraction = screened->fractions[i];
    const auto median = fraction.grading ? percentile(*fraction.grading, 50) : std::nullopt;
    const auto litres = fraction.loose_per_loose ? std::optional<double>(fraction.loose_per_loose->value()) : std::nullopt;
    const auto of_bag = amounts[i].volume ? std::optional<double>(in_l(*amounts[i].volume)) : std::nullopt;
    view.fraction_shares.push_back(fraction.share.value());
    view.fractions.push_back({fraction_name(fraction, units), to_local(percent_text(fraction.share.value())), litres ? to_local(usable_text(*litres, units)) : QStringLiteral("\u2013"),
                              to_local(volume_text(of_bag, units)), to_local(grain_size_text(median, units))});
  }
  for (const Note& note : screened->notes) view.notes << sentence_text(note, units);
}

void add_openings(VerdictView& view, const GradedBag& graded, const Band& band, const std::vector<Aperture>& owned, UnitSystem units) {
  view.opening_heading = {VerdictText::tr("screen at"), VerdictText::tr("kept"), VerdictText::tr("usable"), VerdictText::tr("finer in it"), VerdictText::tr("good enough")};
  view.openings_are_owned = !owned.empty();
  for (const OpeningChoice& choice : shown_choices(graded.grading, band, owned, graded.lost)) {
    std::vector<Aperture> at;
    for (const auto& opening : {choice.coarse, choice.fine}) {
      if (opening) at.push_back(*opening);
    }
    view.opening_shares.push_back({choice.kept.value(), choice.usable.value(), choice.dust.value()});
    view.openings.push_back({joined(at, units), to_local(percent_text(choice.kept.value())), to_local(percent_text(choice.usable.value())),
                             to_local(percent_text(choice.dust.value())), choice.takes ? VerdictText::tr("yes") : VerdictText::tr("no")});
  }
}

void add_laboratory(VerdictView& view, const ComponentEvaluation& component) {
  const auto pan = component.pooled ? component.pooled->pan : component.analysis->pan;
  const LaboratoryFigures figures = laboratory_figures(*component.grading(), pan);
  view.laboratory.key = QStringLiteral("laboratory");
  view.laboratory.title = VerdictText::tr("Laboratory figures");
  const std::vector<Explanation> explanations = explain(figures, *component.grading());
  const auto add = [&](const char* key, const char* explained_as, const QString& label, const std::optional<double>& value) {
    Figure shown{QStringLiteral("laboratory_%1").arg(QLatin1String(key)), label, value ? to_local(figure(value, 2)) : QStringLiteral("\u2013"), {}, {}};
    if (value) std::ranges::copy_if(explanations, std::back_inserter(shown.explanations), [&](const Explanation& one) { return one.figure == explained_as; });
    else shown.reason = VerdictText::tr("the sieves do not reach far enough");
    view.laboratory.figures.push_back(std::move(shown));
  };
  add("curvature", "cc", VerdictText::tr("Curvature"), figures.curvature);
  add("fineness", "fineness_modulus", VerdictText::tr("Fineness modulus"), figures.fineness_modulus);
  add("mean_phi", "mean_phi", VerdictText::tr("Mean, phi"), figures.mean_phi);
  add("sorting", "sorting_phi", VerdictText::tr("Sorting, phi"), figures.sorting_phi);
  add("skewness", "skewness", VerdictText::tr("Skewness"), figures.skewness);
  add("kurtosis", "kurtosis", VerdictText::tr("Kurtosis"), figures.kurtosis);
}

void add_price(VerdictView& view, const std::optional<Bag>& bag, const std::optional<BagVerdict>& judged, const QString& no_verdict) {
  const auto price = bag && judged ? price_per_usable_l(*bag, judged->usable) : std::nullopt;
  Figure figure{QStringLiteral("verdict_price"), VerdictText::tr("Price of a usable litre"), QStringLiteral("\u2013"), {}, {}};
  if (price) {
    figure.value = QLocale().toString(price->amount, 'f', 2) + (price->currency.empty() ? QString() : u' ' + to_qt(price->currency));
    figure.explanations.push_back(explain_price(*bag, *judged));
  } else {
    figure.reason = !judged ? no_verdict : !bag ? VerdictText::tr("choose its bag") : VerdictText::tr("type price and litres of the bag");
  }
  view.figures.figures.push_back(std::move(figure));
}

}  // namespace

std::vector<Aperture> sieves_at_hand(const Grading& grading, const std::vector<Aperture>& owned) {
  if (!owned.empty()) return owned;
  std::vector<Aperture> sieves;
  for (const GradingPoint& point : grading.points) sieves.push_back(point.aperture);
  return sieves;
}

VerdictView verdict_view(const Bench& bench) {
  VerdictView view;
  const auto index = static_cast<std::size_t>(bench.current_component());
  const BenchEvaluation& evaluation = bench.evaluation();
  if (index >= evaluation.components.size()) return view;
  const ComponentEvaluation& component = evaluation.components[index];
  const UnitSystem units = bench.units();
  view.figures.key = QStringLiteral("verdict");
  view.figures.title = VerdictText::tr("Wanted grain in %1").arg(bench.state().components[index].name);
  QString reason = why_no_curve(component);
  if (reason.isEmpty() && !evaluation.band) reason = VerdictText::tr("type the wanted grain");
  std::optional<BagVerdict> judged;
  if (reason.isEmpty()) {
    const auto graded = graded_bag(bench);
    const Band& band = *graded->band;
    if (band != *evaluation.band) view.figures.title = with_label(view.figures.title, VerdictText::tr("%1 to %2, the nearest sieves").arg(to_local(size_text(band.from, units)), to_local(size_text(band.to, units))));
    const Estimate<BagVerdict> estimate = judge(graded->grading, band, {}, {}, graded->packing.of, graded->lost);
    for (const Note& note : estimate.notes) view.notes << sentence_text(note, units);
    judged = estimate.value;
    if (judged) {
      for (const Note& note : graded->packing.notes) view.notes << sentence_text(note, units);
      const auto& bag = bench.surroundings().bag;
      const auto density = component.component ? std::optional(dry_bulk_density(component.component->grain)) : std::nullopt;
      add_fractions(view, *graded, *judged, bag ? litres_of_one(*bag, density) : std::nullopt, units);
      add_openings(view, *graded, band, bench.surroundings().owned_sieves, units);
    } else {
      reason = view.notes.isEmpty() ? VerdictText::tr("the sieves do not reach the ends of the wanted grain") : view.notes.takeFirst();
    }
  }
  view.lots = lot_findings(bench);
  view.sentence = judged ? sentence_of(*judged, units) : VerdictText::tr("No verdict: %1").arg(reason);
  const std::vector<Explanation> explanations = judged ? explain(*judged) : std::vector<Explanation>{};
  const auto add = [&](const char* key, const QString& label, std::optional<std::string> value) {
    Figure figure{QStringLiteral("verdict_%1").arg(QLatin1String(key)), label, value ? to_local(*value) : QStringLiteral("\u2013"), value ? QString() : reason, {}};
    for (const Explanation& explanation : explanations) {
      if (explanation.figure == key) figure.explanations.push_back(explanation);
    }
    view.figures.figures.push_back(std::move(figure));
  };
  const auto share = [&](MassShare BagVerdict::*member) { return judged ? std::optional(percent_text(((*judged).*member).value())) : std::nullopt; };
  add("in_band", VerdictText::tr("Wanted, by mass"), share(&BagVerdict::in_band));
  add("finer", VerdictText::tr("Finer"), share(&BagVerdict::finer));
  add("coarser", VerdictText::tr("Coarser"), share(&BagVerdict::coarser));
  add("usable", VerdictText::tr("Usable of a litre"), judged ? std::optional(usable_text(judged->usable.value(), units)) : std::nullopt);
  const Grading* const curve = component.state == SheetState::finished && component.faults.empty() ? component.grading() : nullptr;
  for (const int percent : {10, 50, 90}) {
    const auto size = curve != nullptr ? percentile(*curve, percent) : std::nullopt;
    Figure figure{QStringLiteral("verdict_d%1").arg(percent), percent == 50 ? VerdictText::tr("D50, half is finer") : VerdictText::tr("D%1").arg(percent), to_local(grain_size_text(size, units)), {}, {}};
    if (!size) figure.reason = curve != nullptr ? VerdictText::tr("the sieves do not reach far enough") : why_no_curve(component);
    else figure.explanations.push_back(explain_size(*curve, percent));
    view.figures.figures.push_back(std::move(figure));
  }
  if (bench.surroundings().laboratory_figures && component.grading() != nullptr && component.state == SheetState::finished) add_laboratory(view, component);
  add_price(view, bench.surroundings().bag, judged, reason);
  view.notes.removeDuplicates();
  return view;
}

std::vector<OpeningChoice> shown_choices(const Grading& grading, const Band& band, const std::vector<Aperture>& owned, MassShare lost) {
  auto choices = opening_choices(grading, band, sieves_at_hand(grading, owned), {}, {}, lost);
  if (choices.size() > most_choices) choices.resize(most_choices);
  return choices;
}

std::string usable_text(double share, UnitSystem units) { return units == UnitSystem::us ? percent_text(share) : volume_text(share, units); }

QString fraction_name(const ScreenedFraction& fraction, UnitSystem units) {
  const auto size = [&](const std::optional<Aperture>& aperture) { return to_local(size_text(aperture, units)); };
  if (!fraction.to) return VerdictText::tr("over %1").arg(size(fraction.from));
  if (!fraction.from) return VerdictText::tr("under %1").arg(size(fraction.to));
  return VerdictText::tr("%1 to %2").arg(size(fraction.from), size(fraction.to));
}

std::optional<GradedBag> graded_bag(const Bench& bench) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return std::nullopt;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  if (component.state != SheetState::finished || !component.faults.empty()) return std::nullopt;
  const auto bulk = component.component ? std::optional(component.component->grain.bulk_density) : component.test->bulk_density;
  const auto particle = component.component ? component.component->grain.particle_density : component.test->particle_density;
  const Grading& grading = *component.grading();
  GradedBag graded{grading, fraction_packing(grading, bulk, particle), bulk, particle, {}, bench.evaluation().band};
  graded.lost = component.lost();
  if (graded.band) graded.band = snapped(*graded.band, sieves_at_hand(grading, bench.surroundings().owned_sieves));
  return graded;
}

}  // namespace gritwright::desktop
