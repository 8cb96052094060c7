#include "lot_history.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "gritwright/models/bag_verdict.hpp"
#include "text.hpp"
#include "verdict_figures.hpp"

namespace gritwright::desktop {

namespace {

class LotText {
  Q_DECLARE_TR_FUNCTIONS(Lots)
};

const ComponentEvaluation* lot_component(const Bench& bench) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  return index < bench.evaluation().components.size() ? &bench.evaluation().components[index] : nullptr;
}

bool has_lot(const ComponentEvaluation* component) { return component != nullptr && component->state == SheetState::finished && component->grading() != nullptr; }

QString lot_share(Porosity value) { return to_local(percent_text(value.value())); }

}  // namespace

std::optional<Band> lot_band(const Bench& bench) {
  // As the verdict takes it, so that both tell the same.
  const ComponentEvaluation* const component = lot_component(bench);
  if (const auto& wanted = bench.evaluation().band) {
    const auto sieves = has_lot(component) ? sieves_at_hand(*component->grading(), bench.surroundings().owned_sieves) : bench.surroundings().owned_sieves;
    return sieves.empty() ? wanted : std::optional(snapped(*wanted, sieves));
  }
  const auto& bag = bench.surroundings().bag;
  return bag && bag->printed_size ? std::optional(Band{bag->printed_size->from, bag->printed_size->to}) : std::nullopt;
}

const std::vector<LotFigures>& EarlierLots::figures(const std::vector<EarlierTest>& earlier, const Band& band, const std::optional<GrainProperties>& grain) {
  if (band_ == band && grain_ == grain && earlier_ == earlier) return figures_;
  band_ = band;
  grain_ = grain;
  earlier_ = earlier;
  figures_.clear();
  for (const EarlierTest& test : earlier_) figures_.push_back(lot_figures(test.grading, band, grain, test.lost));
  return figures_;
}

std::optional<GrainProperties> lot_grain(const Bench& bench) {
  const ComponentEvaluation* const component = lot_component(bench);
  return component != nullptr && component->component ? std::optional(component->component->grain) : std::nullopt;
}

std::vector<LotPoint> lot_points(const Bench& bench) {
  std::vector<LotPoint> points;
  const auto band = lot_band(bench);
  if (!band) return points;
  const ComponentEvaluation* const component = lot_component(bench);
  const auto grain = lot_grain(bench);
  const auto& earlier = bench.surroundings().earlier;
  const auto& bag = bench.surroundings().bag;
  const auto printed = bag ? bag->printed_size : std::nullopt;
  const std::vector<LotFigures>& figures = bench.earlier_lots().figures(earlier, *band, grain);
  for (std::size_t i = earlier.size(); i-- > 0;) {
    const EarlierTest& test = earlier[i];
    if (!printed || !test.printed_size || printed == test.printed_size) points.push_back({test.bag, test.day, figures[i], test.grading, test.lost});
  }
  if (has_lot(component)) points.push_back({bench.state().components[static_cast<std::size_t>(bench.current_component())].name, {}, lot_figures(*component->grading(), *band, grain, component->lost()), *component->grading(), component->lost(), true});
  return points;
}

std::optional<UsualRange> usual_of(const std::vector<LotPoint>& points, LotFigure figure) {
  std::vector<double> before;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    if (const auto& value = points[i].figures.of(figure)) before.push_back(*value);
  }
  return usual_range(before);
}

QString lot_figure_name(LotFigure figure) {
  switch (figure) {
    case LotFigure::dust: return LotText::tr("finer than wanted");
    case LotFigure::d50_mm: return LotText::tr("D50");
    case LotFigure::usable: return LotText::tr("usable of a litre");
    case LotFigure::air: break;
  }
  return LotText::tr("air, 6 cm deep");
}

QString lot_figure_text(LotFigure figure, std::optional<double> value, UnitSystem units) {
  if (!value) return QStringLiteral("\u2013");
  if (figure == LotFigure::d50_mm) return to_local(grain_size_text(aperture_mm(*value), units));
  return to_local(percent_text(value));
}

QStringList lot_findings(const Bench& bench) {
  QStringList sentences;
  if (!has_lot(lot_component(bench)) || bench.surroundings().earlier.size() < least_lots) return sentences;
  const auto points = lot_points(bench);
  if (points.size() <= least_lots) return sentences;
  std::vector<LotFigures> earlier;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) earlier.push_back(points[i].figures);
  const auto findings = unusual(points.back().figures, earlier);
  const UnitSystem units = bench.units();
  for (const LotFinding& finding : findings) {
    const QString value = lot_figure_text(finding.figure, finding.value, units);
    if (finding.outside) {
      sentences << LotText::tr("Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.", nullptr, static_cast<int>(finding.usual.lots))
                       .arg(lot_figure_name(finding.figure), value, lot_figure_text(finding.figure, std::max(0.0, finding.usual.low), units),
                            lot_figure_text(finding.figure, finding.usual.high, units));
    } else {
      sentences << LotText::tr("A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.").arg(lot_figure_name(finding.figure), value);
    }
  }
  if (findings.empty()) return sentences;
  UncertainMix::Pot pot = lot_depth;
  if (bench.evaluation().pot) pot = *bench.evaluation().pot;
  const ComponentEvaluation* const component = lot_component(bench);
  const auto bulk = component->component ? std::optional(dry_bulk_density(component->component->grain)) : std::nullopt;
  for (const MixOfMaterial& one : bench.surroundings().mixes) {
    if (const auto change = lot_change(one.mix, one.component, *component->grading(), bulk, pot)) {
      sentences << LotText::tr("In mix %1 it would turn air from %2 into %3 and water from %4 into %5.")
                       .arg(one.id, lot_share(change->air_before), lot_share(change->air_after), lot_share(change->capacity_before), lot_share(change->capacity_after));
    }
  }
  return sentences;
}

}  // namespace gritwright::desktop
