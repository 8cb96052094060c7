#include "verdict_figures.hpp"

#include <QCoreApplication>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/report/explanations.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class Text {
  Q_DECLARE_TR_FUNCTIONS(Verdict)
};

constexpr std::size_t most_choices = 8;  // more is a list to study, not to choose from

QString why_no_curve(const ComponentEvaluation& component) {
  if (!component.faults.empty()) return Text::tr("see the marked cells and fields");
  if (component.state != SheetState::finished) return Text::tr("the sieve test is not finished");
  return {};
}

QString joined(const std::vector<Aperture>& openings, UnitSystem units) {
  QStringList texts;
  for (const Aperture& opening : openings) texts << to_local(size_text(opening, units));
  return texts.join(Text::tr(" and "));
}

QString sentence_of(const BagVerdict& judged, UnitSystem units) {
  switch (judged.verdict) {
    case Verdict::take: return Text::tr("Take it as it is");
    case Verdict::take_after_screening: return Text::tr("Take it after screening at %1").arg(joined(judged.openings, units));
    case Verdict::other_use_or_complain: break;
  }
  return Text::tr("Other use, or complain");
}

QString range_of(const ScreenedFraction& fraction, UnitSystem units) {
  const auto size = [&](const std::optional<Aperture>& aperture) { return to_local(size_text(aperture, units)); };
  if (!fraction.to) return Text::tr("over %1").arg(size(fraction.from));
  if (!fraction.from) return Text::tr("under %1").arg(size(fraction.to));
  return Text::tr("%1 to %2").arg(size(fraction.from), size(fraction.to));
}

void add_fractions(VerdictView& view, const Grading& grading, const BagVerdict& judged, const FractionPacking& packing, UnitSystem units) {
  view.fraction_heading = {Text::tr("fraction"), Text::tr("of the mass"), Text::tr("from a litre"), Text::tr("D50")};
  if (judged.openings.empty()) return;
  const auto screened = screen(grading, judged.openings, {}, packing.of);
  if (!screened) return;
  for (const ScreenedFraction& fraction : screened->fractions) {
    const auto median = fraction.grading ? percentile(*fraction.grading, 50) : std::nullopt;
    const auto litres = fraction.loose_per_loose ? std::optional<double>(fraction.loose_per_loose->value()) : std::nullopt;
    view.fractions.push_back({range_of(fraction, units), to_local(percent_text(fraction.share.value())), to_local(volume_text(litres, units)),
                              to_local(size_text(median, units))});
  }
  for (const Note& note : screened->notes) view.notes << sentence_text(note, units);
}

void add_openings(VerdictView& view, const Grading& grading, const Band& band, UnitSystem units) {
  view.opening_heading = {Text::tr("screen at"), Text::tr("kept"), Text::tr("usable"), Text::tr("dust in it"), Text::tr("good enough")};
  std::vector<Aperture> sieves;
  for (const GradingPoint& point : grading.points) sieves.push_back(point.aperture);
  for (const OpeningChoice& choice : opening_choices(grading, band, sieves)) {
    if (view.openings.size() == most_choices) break;
    std::vector<Aperture> at;
    for (const auto& opening : {choice.coarse, choice.fine}) {
      if (opening) at.push_back(*opening);
    }
    view.openings.push_back({joined(at, units), to_local(percent_text(choice.kept.value())), to_local(percent_text(choice.usable.value())),
                             to_local(percent_text(choice.dust.value())), choice.takes ? Text::tr("yes") : Text::tr("no")});
  }
}

}  // namespace

VerdictView verdict_view(const Bench& bench) {
  VerdictView view;
  const auto index = static_cast<std::size_t>(bench.current_component());
  const BenchEvaluation& evaluation = bench.evaluation();
  if (index >= evaluation.components.size()) return view;
  const ComponentEvaluation& component = evaluation.components[index];
  const UnitSystem units = bench.units();
  view.figures.key = QStringLiteral("verdict");
  view.figures.title = Text::tr("%1 in the wanted band").arg(bench.state().components[index].name);
  QString reason = why_no_curve(component);
  if (reason.isEmpty() && !evaluation.band) reason = Text::tr("no wanted grain is typed");
  std::optional<BagVerdict> judged;
  if (reason.isEmpty()) {
    const Grading& grading = component.analysis->grading;
    const auto bulk = component.component ? std::optional(component.component->grain.bulk_density) : component.test->bulk_density;
    const auto particle = component.component ? component.component->grain.particle_density : component.test->particle_density;
    const FractionPacking packing = fraction_packing(grading, bulk, particle);
    const Estimate<BagVerdict> estimate = judge(grading, *evaluation.band, {}, {}, packing.of);
    for (const Note& note : estimate.notes) view.notes << sentence_text(note, units);
    judged = estimate.value;
    if (judged) {
      for (const Note& note : packing.notes) view.notes << sentence_text(note, units);
      add_fractions(view, grading, *judged, packing, units);
      add_openings(view, grading, *evaluation.band, units);
    } else {
      reason = view.notes.isEmpty() ? Text::tr("the sieves do not reach the ends of the band") : view.notes.takeFirst();
    }
  }
  view.sentence = judged ? sentence_of(*judged, units) : Text::tr("No verdict: %1").arg(reason);
  const std::vector<Explanation> explanations = judged ? explain(*judged) : std::vector<Explanation>{};
  const auto add = [&](const char* key, const QString& label, std::optional<std::string> value) {
    Figure figure{QStringLiteral("verdict_%1").arg(QLatin1String(key)), label, value ? to_local(*value) : QStringLiteral("\u2013"), value ? QString() : reason, {}};
    for (const Explanation& explanation : explanations) {
      if (explanation.figure == key) figure.explanations.push_back(explanation);
    }
    view.figures.figures.push_back(std::move(figure));
  };
  const auto share = [&](MassShare BagVerdict::*member) { return judged ? std::optional(percent_text(((*judged).*member).value())) : std::nullopt; };
  add("in_band", Text::tr("In the band, by mass"), share(&BagVerdict::in_band));
  add("finer", Text::tr("Finer"), share(&BagVerdict::finer));
  add("coarser", Text::tr("Coarser"), share(&BagVerdict::coarser));
  add("usable", Text::tr("Usable of a litre"), judged ? std::optional(volume_text(judged->usable.value(), units)) : std::nullopt);
  view.notes.removeDuplicates();
  return view;
}

}  // namespace gritwright::desktop
