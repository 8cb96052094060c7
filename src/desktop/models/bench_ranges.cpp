#include "bench_ranges.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <functional>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/mix_spread.hpp"
#include "gritwright/report/range_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "text.hpp"
#include "verdict_figures.hpp"

namespace gritwright::desktop {

namespace {

class RangeText {
  Q_DECLARE_TR_FUNCTIONS(Ranges)
};

constexpr std::size_t most_narrowings = 3;

using TextOf = std::function<std::string(double)>;

/// "15.9 – 21.3 %": the unit is said once where both ends have the same.
QString span(const QString& low, const QString& high) {
  const auto unit_at = std::max(low.lastIndexOf(QChar(QChar::Nbsp)), low.lastIndexOf(u' '));
  const bool same_unit = unit_at > 0 && high.endsWith(low.mid(unit_at));
  return QStringLiteral("%1 \u2013 %2").arg(same_unit ? low.left(unit_at) : low, high);
}

void put(Figure& figure, const std::optional<Range>& range, const TextOf& text) {
  // A figure that is not there has no range either.
  if (!range || !figure.reason.isEmpty()) return;
  const auto local = [&](double value) { return to_local(text(value)); };
  figure.range = span(local(range->low), local(range->high));
  figure.range_detail = RangeText::tr("5, 50 and 95 of 100 cases: up to %1, %2, %3").arg(local(range->low), local(range->median), local(range->high));
}

void put(Figure& figure, const std::optional<OpenRange>& range, const TextOf& text) {
  if (!range || !figure.reason.isEmpty()) return;
  // Beyond the sieves nothing is guessed: that end stays open.
  const auto local = [&](const std::optional<double>& value) { return value && std::isfinite(*value) ? to_local(text(*value)) : RangeText::tr("open"); };
  figure.range = span(local(range->low), local(range->high));
  figure.range_detail = RangeText::tr("5, 50 and 95 of 100 cases: up to %1, %2, %3").arg(local(range->low), local(range->median), local(range->high));
}

std::string share_text(double share) { return percent_text(share); }

std::optional<Range> mirrored(const std::optional<Range>& range) { return range ? std::optional(Range{-range->high, -range->median, -range->low}) : range; }

std::optional<OpenRange> percentile_of(const std::vector<std::optional<OpenRange>>& all, int percent) {
  const auto at = static_cast<std::size_t>(std::ranges::find(reported_percentiles, percent) - reported_percentiles.begin());
  return at < all.size() ? all[at] : std::nullopt;
}

/// What is drawn about each figure of the mix, by its key; empty where nothing is.
class RangeOf {
 public:
  RangeOf(const Bench& bench, const BenchRanges& ranges) : bench_(bench), ranges_(ranges) {}

  void put_into(Figure& figure) const {
    const UnitSystem units = bench_.units();
    const auto is = [&](const char* key) { return figure.key == QLatin1String(key); };
    const auto of = [&](MixFigure one) { return ranges_.mix.of(one); };
    const TextOf share = share_text;
    const TextOf litres = [units](double l) { return volume_text(l, units); };
    const TextOf density = [units](double g_l) { return density_text(g_l, units); };
    const TextOf size = [units](double mm) { return grain_size_text(aperture_mm(mm), units); };
    if (is("air_filled_porosity")) put(figure, of(MixFigure::air_filled_porosity), share);
    else if (is("container_capacity")) put(figure, of(MixFigure::container_capacity), share);
    else if (is("available_in_pot")) put(figure, of(MixFigure::available_in_pot), share);
    else if (is("trapped_air")) put(figure, of(MixFigure::trapped_air), share);
    else if (is("perched_height_cm")) put(figure, ranges_.mix.perched_height_cm, [units](double cm) { return depth_text(depth_cm(cm), units); });
    else if (is("volume_ml")) put(figure, of(MixFigure::pot_volume_ml), [litres](double ml) { return litres(ml / 1000); });
    else if (is("wet_mass_g")) put(figure, of(MixFigure::wet_mass_g), [units](double g) { return mass_text(mass_g(g), units); });
    else if (is("shrinkage_percent")) put(figure, swells() ? mirrored(of(MixFigure::shrinkage)) : of(MixFigure::shrinkage), share);
    else if (is("bulk_density_g_l")) put(figure, of(MixFigure::bulk_density_g_l), density);
    else if (is("voids_between_grains")) put(figure, of(MixFigure::voids_between_grains), share);
    else if (is("voids_in_grains")) put(figure, of(MixFigure::voids_in_grains), share);
    else if (is("total_porosity")) put(figure, of(MixFigure::total_porosity), share);
    else if (is("grain_water")) put(figure, of(MixFigure::grain_water), share);
    else if (is("cec_meq_l")) put(figure, of(MixFigure::cec_meq_l), [](double meq) { return gritwright::figure(meq, 0) + " meq/L"; });
    else if (is("mixed_litres")) put(figure, of(MixFigure::mixed_l), litres);
    else if (is("d10")) put(figure, percentile_of(ranges_.grain.percentiles_mm, 10), size);
    else if (is("d50")) put(figure, percentile_of(ranges_.grain.percentiles_mm, 50), size);
    else if (is("d90")) put(figure, percentile_of(ranges_.grain.percentiles_mm, 90), size);
    else if (is("cu")) put(figure, ranges_.grain.uniformity, [](double ratio) { return gritwright::figure(ratio, 2); });
    else if (is("in_band") && !ranges_.grain.bands.empty()) put(figure, ranges_.grain.bands[0], share);
    else if (is("finer") && ranges_.grain.bands.size() > 1) put(figure, ranges_.grain.bands[1], share);
    else if (figure.key.startsWith(QStringLiteral("measure_out_"))) put(figure, measured_out(figure.key), litres);
  }

 private:
  [[nodiscard]] bool swells() const {
    const auto& state = bench_.evaluation().mix_state;
    return state && state->shrinkage && state->shrinkage->value() < 0;
  }

  [[nodiscard]] std::optional<Range> measured_out(const QString& key) const {
    const auto component = key.mid(static_cast<int>(sizeof("measure_out_")) - 1).toUInt() - 1;
    const auto& mixed = bench_.evaluation().mixed;
    const auto at = static_cast<std::size_t>(std::ranges::find(mixed, component) - mixed.begin());
    return at < ranges_.mix.measure_out_l.size() ? ranges_.mix.measure_out_l[at] : std::nullopt;
  }

  const Bench& bench_;
  const BenchRanges& ranges_;
};

}  // namespace

bool operator==(const MixQuestion& a, const MixQuestion& b) {
  // A belief is made of the constants and the tests; where it differs, the constants do too.
  return a.mix == b.mix && a.samples == b.samples && a.belief.has_value() == b.belief.has_value() && a.container == b.container && a.band == b.band && a.settled_by == b.settled_by && a.pot_tests == b.pot_tests && a.tested_itself == b.tested_itself;
}

std::optional<SievedSample> sample_of(const ComponentEvaluation& component) {
  if (component.pooled) return taken_together(component.samples, *component.pooled);
  return component.samples.empty() ? std::nullopt : std::optional(component.samples.front());
}

std::optional<MixQuestion> mix_question(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  if (!evaluation.mix) return std::nullopt;
  MixQuestion question;
  question.mix = *evaluation.mix;
  for (const std::size_t i : evaluation.mixed) question.samples.push_back(sample_of(evaluation.components[i]));
  if (evaluation.pot) question.container = evaluation.pot->container();
  question.band = evaluation.band;
  question.settled_by = evaluation.settled_by;
  if (evaluation.calibration) question.belief = evaluation.calibration->belief;
  question.pot_tests = evaluation.pot_tests;
  question.tested_itself = evaluation.calibration.has_value();
  return question;
}

QString by_pot_tests(const MixQuestion& question) {
  QStringList tests;
  for (const std::string& test : question.pot_tests) tests << to_qt(test);
  if (tests.isEmpty()) return {};
  return (question.tested_itself ? RangeText::tr(", by pot test %1") : RangeText::tr(", leaning on pot test %1")).arg(comma_list(tests));
}

MixSpread spread_of(const MixQuestion& question, const Catalogue& catalogue) {
  MixSpread spread = usual_spread(question.mix, &catalogue, question.samples);
  spread.belief = question.belief;
  if (question.settled_by == SettledBy::jug) spread.settling = {measured_settling_deviation, measured_settling_deviation};
  if (question.settled_by == SettledBy::grains) spread.settling = {settling_by_grains_deviation, settling_by_grains_deviation};
  return spread;
}

UncertainMix::Pot pot_of(const MixQuestion& question) {
  if (question.container) return PotGeometry(*question.container);
  return {};
}

std::shared_ptr<const UncertainMix> uncertain(const MixQuestion& question, const Catalogue& catalogue, const UncertainMix* before) {
  MixSpread spread = spread_of(question, catalogue);
  UncertainMix::Pot pot = pot_of(question);
  if (before != nullptr) return std::make_shared<const UncertainMix>(question.mix, std::move(spread), std::move(pot), *before);
  return std::make_shared<const UncertainMix>(question.mix, std::move(spread), std::move(pot));
}

BenchRanges ranges_of(const MixQuestion& question, const UncertainMix& mix, const SampleSize& size, const SliceRunner& runner) {
  auto [figures, passing] = mix.ranges_and_passing(size, runner);
  BenchRanges ranges{question, std::move(figures), {}, {}, {}, {}, size.draws};
  const auto state = mix_state(question.mix);
  if (!state || state->passing.empty()) return ranges;
  for (const GradingPoint& point : state->passing) ranges.sieves.push_back(point.aperture);
  std::vector<Band> bands;
  if (question.band) bands = {*question.band, Band{aperture_mm(0), question.band->from}};
  ranges.grain = blend_ranges(Grading{state->passing, {}, {}}, passing, bands);
  return ranges;
}

void add_narrowing(BenchRanges& ranges, const UncertainMix& mix, const SampleSize& size, const SliceRunner& runner) {
  ranges.air = mix.what_would_narrow(MixFigure::air_filled_porosity, size, runner);
  ranges.water = mix.what_would_narrow(MixFigure::container_capacity, size, runner);
}

std::optional<TestQuestion> test_question(const Bench& bench) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.evaluation().components.size()) return std::nullopt;
  const ComponentEvaluation& component = bench.evaluation().components[index];
  if (component.state != SheetState::finished || !component.test || !component.analysis) return std::nullopt;
  const auto graded = graded_bag(bench);
  const SieveTest& test = *component.test;
  TestQuestion question;
  question.sieved = component.pooled ? sieved_grading(*component.pooled, component.samples, test.particle_density) : sieved_grading(test, *component.analysis);
  question.bulk_density = test.bulk_density;
  if (graded) {
    question.band = graded->band;
    question.bulk_density = graded->bulk_density;
    // The grain's own density says how many grains there were.
    if (graded->particle_density) question.sieved.particle_density = graded->particle_density;
  }
  question.laboratory = bench.surroundings().laboratory_figures;
  question.owned_sieves = bench.surroundings().owned_sieves;
  question.screening = screening_view(bench).openings;
  return question;
}

TestRanges ranges_of(const TestQuestion& question, const SliceRunner& runner) {
  const SievedGrading& sieved = question.sieved;
  TestRanges ranges{question, curve_ranges(sieved, standing_sample, runner), {}, {}, {}, {}, {}};
  if (question.laboratory) ranges.laboratory = laboratory_ranges(sieved, {1024, 1}, runner);
  const FractionPacking packing = fraction_packing(sieved.grading, question.bulk_density, sieved.particle_density);
  ranges.screening = screening_ranges(sieved, question.screening, packing.of, {}, {512, 1}, runner);
  if (question.band) {
    ranges.verdict = verdict_ranges(sieved, *question.band, packing.of, {}, {512, 1}, runner);
    if (const auto judged = judge(sieved.grading, *question.band, {}, {}, packing.of, sieved.sample.lost).value) {
      ranges.fractions = screening_ranges(sieved, judged->openings, packing.of, {}, {512, 1}, runner);
      ranges.openings = opening_ranges(sieved, *question.band, shown_choices(sieved.grading, *question.band, question.owned_sieves, sieved.sample.lost), {}, {512, 1}, runner);
    }
  }
  return ranges;
}

QString share_range_text(const Range& range, int decimals) { return span(to_local(percent_text(range.low, decimals)), to_local(percent_text(range.high, decimals))); }

QString range_beside(const std::optional<Range>& range, double share) {
  return range ? share_range_text(*range, percent_range_decimals(*range, share)) : QStringLiteral("\u2013");
}

QString range_text(const std::optional<Range>& range, const std::function<std::string(double)>& text) {
  return range ? span(to_local(text(range->low)), to_local(text(range->high))) : QStringLiteral("\u2013");
}

void put_range(Figure& figure, const std::optional<Range>& range, const std::function<std::string(double)>& text) {
  figure.range = QStringLiteral("\u2013");
  put(figure, range, text);
}

void add_ranges(std::vector<FigureGroup>& groups, const Bench& bench, const BenchRanges* ranges) {
  for (FigureGroup& group : groups) {
    group.has_ranges = true;
    for (Figure& figure : group.figures) {
      figure.range = QStringLiteral("\u2013");
      if (ranges != nullptr) RangeOf(bench, *ranges).put_into(figure);
    }
  }
}

namespace {

/// What a litre of the bag costs where so much of it is usable: dear where little is.
std::optional<Range> price_range(const std::optional<Bag>& bag, const Range& usable) {
  if (!bag) return std::nullopt;
  const auto at = [&](double share) { return price_per_usable_l(*bag, LooseShare(share)); };
  const auto dear = at(usable.low), middle = at(usable.median), cheap = at(usable.high);
  return dear && middle && cheap ? std::optional(Range{cheap->amount, middle->amount, dear->amount}) : std::nullopt;
}

/// The range as a second line of a cell.
void put_below(QString& cell, const QString& range) { cell += u'\n' + range; }

QString middle_range_text(const std::optional<OpenRange>& range, UnitSystem units) {
  if (!range) return QStringLiteral("\u2013");
  const auto end = [&](const std::optional<double>& mm) { return mm ? to_local(grain_size_text(aperture_mm(*mm), units)) : RangeText::tr("open"); };
  return span(end(range->low), end(range->high));
}

std::optional<Range> of_so_many_litres(const std::optional<Range>& per_litre, const std::optional<LooseVolume>& litres) {
  if (!per_litre || !litres) return std::nullopt;
  const double l = in_l(*litres);
  return Range{l * per_litre->low, l * per_litre->median, l * per_litre->high};
}

}  // namespace

void add_ranges(VerdictView& verdict, const Bench& bench, const TestRanges* ranges) {
  const UnitSystem units = bench.units();
  const auto& bag = bench.surroundings().bag;
  const TextOf litres = [units](double l) { return volume_text(l, units); };
  verdict.figures.has_ranges = true;
  for (Figure& figure : verdict.figures.figures) {
    figure.range = QStringLiteral("\u2013");
    if (ranges == nullptr) continue;
    const auto is = [&](const char* key) { return figure.key == QLatin1String(key); };
    for (const int percent : {10, 50, 90})
      if (figure.key == QStringLiteral("verdict_d%1").arg(percent)) put(figure, percentile_of(ranges->curve.percentiles_mm, percent), [units](double mm) { return grain_size_text(aperture_mm(mm), units); });
    if (!ranges->verdict) continue;
    if (is("verdict_in_band")) put(figure, std::optional(ranges->verdict->in_band), share_text);
    else if (is("verdict_finer")) put(figure, std::optional(ranges->verdict->finer), share_text);
    else if (is("verdict_coarser")) put(figure, std::optional(ranges->verdict->coarser), share_text);
    else if (is("verdict_usable")) put(figure, std::optional(ranges->verdict->usable), [units](double share) { return usable_text(share, units); });
    else if (is("verdict_price")) put(figure, price_range(bag, ranges->verdict->usable), [](double amount) { return gritwright::figure(amount, 2); });
  }
  for (std::size_t i = 0; i < verdict.fractions.size(); ++i) {
    const FractionRange* const range = ranges != nullptr && i < ranges->fractions.size() ? &ranges->fractions[i] : nullptr;
    QStringList& row = verdict.fractions[i];
    const auto per_litre = range != nullptr ? range->loose_per_loose : std::nullopt;
    put_below(row[1], range_beside(range != nullptr ? std::optional(range->share) : std::nullopt, verdict.fraction_shares[i]));
    put_below(row[2], range_text(per_litre, [units](double share) { return usable_text(share, units); }));
    put_below(row[3], range_text(of_so_many_litres(per_litre, bag ? bag->volume : std::nullopt), litres));
    put_below(row[4], middle_range_text(range != nullptr ? range->middle_mm : std::nullopt, units));
  }
  for (std::size_t i = 0; i < verdict.openings.size(); ++i) {
    const OpeningRange* const range = ranges != nullptr && i < ranges->openings.size() ? &ranges->openings[i] : nullptr;
    QStringList& row = verdict.openings[i];
    const auto of = [&](Range OpeningRange::*member, double share) { return range_beside(range != nullptr ? std::optional((*range).*member) : std::nullopt, share); };
    const VerdictView::OpeningShares& shares = verdict.opening_shares[i];
    put_below(row[1], of(&OpeningRange::kept, shares.kept));
    put_below(row[2], of(&OpeningRange::usable, shares.usable));
    put_below(row[3], of(&OpeningRange::dust, shares.dust));
    if (range != nullptr) put_below(row[4], RangeText::tr("in %1 of 100 cases").arg(qRound(100 * range->takes)));
  }
}

FractionRangeTexts fraction_range_texts(const ScreeningRow& row, const FractionRange* range, UnitSystem units) {
  const QString none = QStringLiteral("\u2013");
  FractionRangeTexts texts{none, none, none};
  if (range == nullptr) return texts;
  const double share = row.predicted.share.value();
  texts.share = range_beside(range->share, share);
  // Of so much grain, of so many litres.
  if (row.amount.dry_mass && share > 0)
    texts.mass = range_text(range->share, [&](double one) { return mass_text(*row.amount.dry_mass * (one / share), units); });
  if (const auto& per_litre = row.predicted.loose_per_loose; row.amount.volume && per_litre && per_litre->value() > 0)
    texts.litres = range_text(range->loose_per_loose, [&](double one) { return volume_text(in_l(*row.amount.volume) * one / per_litre->value(), units); });
  return texts;
}

void add_laboratory_ranges(FigureGroup& laboratory, const TestRanges* ranges) {
  laboratory.has_ranges = true;
  const LaboratoryRanges known = ranges != nullptr ? ranges->laboratory : LaboratoryRanges{};
  const auto of = [&](const QString& key) -> std::optional<Range> {
    if (key == QStringLiteral("laboratory_curvature")) return known.curvature;
    if (key == QStringLiteral("laboratory_fineness")) return known.fineness_modulus;
    if (key == QStringLiteral("laboratory_mean_phi")) return known.mean_phi;
    if (key == QStringLiteral("laboratory_sorting")) return known.sorting_phi;
    if (key == QStringLiteral("laboratory_skewness")) return known.skewness;
    if (key == QStringLiteral("laboratory_kurtosis")) return known.kurtosis;
    return std::nullopt;
  };
  for (Figure& figure : laboratory.figures) put_range(figure, of(figure.key), [](double value) { return gritwright::figure(value, 2); });
}

QString verdict_certainty(const TestRanges* ranges) {
  if (ranges == nullptr || !ranges->verdict) return {};
  return RangeText::tr("The same verdict in %1 of 100 cases.").arg(qRound(100 * ranges->verdict->holds));
}

QStringList narrowing_sentences(const BenchRanges* ranges) {
  QStringList sentences;
  if (ranges == nullptr) return sentences;
  const Translate translate = [](std::string_view text) { return QCoreApplication::translate("report", std::string(text).c_str()).toStdString(); };
  const auto add = [&](const std::vector<Narrowing>& list, MixFigure figure) {
    for (std::size_t i = 0; i < list.size() && i < most_narrowings; ++i) {
      QString sentence = to_local(narrowing_sentence(list[i], ranges->of.mix, figure, translate));
      if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
      sentences << sentence;
    }
  };
  add(ranges->air, MixFigure::air_filled_porosity);
  add(ranges->water, MixFigure::container_capacity);
  return sentences;
}

}  // namespace gritwright::desktop
