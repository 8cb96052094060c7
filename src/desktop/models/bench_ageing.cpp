#include "bench_ageing.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "gritwright/report/quantity_text.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class AgeingText {
  Q_DECLARE_TR_FUNCTIONS(Ageing)
};

QString aged_share(double share) { return to_local(percent_text(share)); }
QString aged_limit() { return to_local(percent_text(least_air_of_old_mix.value(), 0)); }

}  // namespace

std::optional<Breakdown> breakdown_of(const Component& component, const std::optional<Crumbling>& crumbling, const Catalogue& catalogue) {
  if (crumbling) return measured_breakdown(*crumbling);
  const Material* const material = component.material ? catalogue.find(*component.material) : nullptr;
  return material != nullptr ? typical_breakdown(*material) : std::nullopt;
}

std::optional<AgeingQuestion> ageing_question(const Bench& bench) {
  const BenchEvaluation& evaluation = bench.evaluation();
  auto mix = mix_question(bench);
  if (!mix || !mix->container || !evaluation.mix_state->settled) return std::nullopt;
  AgeingQuestion question{std::move(*mix), {}};
  for (std::size_t k = 0; k < question.mix.mix.components.size(); ++k) question.breakdowns.push_back(breakdown_of(question.mix.mix.components[k], evaluation.crumbling[k], bench.catalogue()));
  return question;
}

std::shared_ptr<const BenchAgeing> ageing_of(const AgeingQuestion& question, const Catalogue& catalogue, const SliceRunner& runner, const std::stop_token& stop, const SampleSize& size) {
  struct NoLongerAsked {};
  const SliceRunner until_stopped = [&](std::size_t count, const std::function<void(std::size_t)>& slice) {
    runner(count, [&](std::size_t i) {
      if (stop.stop_requested()) throw NoLongerAsked();
      slice(i);
    });
  };
  try {
    auto years = air_over_years(question.mix.mix, spread_of(question.mix, catalogue), pot_of(question.mix), question.breakdowns, seasons_ahead, least_air_of_old_mix, size, until_stopped);
    return years ? std::make_shared<const BenchAgeing>(BenchAgeing{question, std::move(*years), size.draws}) : nullptr;
  } catch (const NoLongerAsked&) {
    return nullptr;
  }
}

QString repotting_hint(const AirOverYears& years) {
  const auto& staying = years.likely_below_staying;
  const auto& washed = years.likely_below_washed_down;
  const QString limit = aged_limit();
  if (staying == 0) return AgeingText::tr("The new mix already has less than %1 air in this pot; a coarser mix or a deeper pot has more.").arg(limit);
  if (!staying && !washed) return AgeingText::tr("Likely not below %1 air within %n season(s).", nullptr, static_cast<int>(years.seasons.size()) - 1).arg(limit);
  const int first = std::min(staying.value_or(seasons_ahead + 1), washed.value_or(seasons_ahead + 1));
  if (staying == washed) return AgeingText::tr("Likely below %1 air in season %2: a hint for the next repotting, an estimate.").arg(limit).arg(first);
  return (staying == first ? AgeingText::tr("Likely below %1 air in season %2 if the crumbs stay: a hint for the next repotting, an estimate.")
                           : AgeingText::tr("Likely below %1 air in season %2 if the crumbs wash down: a hint for the next repotting, an estimate."))
      .arg(limit)
      .arg(first);
}

QString ageing_sentence(const Bench& bench, const BenchAgeing* ageing) {
  if (ageing == nullptr) {
    if (!ageing_question(bench)) return AgeingText::tr("The years to come need a mix with known grain densities and a pot.");
    return AgeingText::tr("The years to come are being worked out.");
  }
  const SeasonAir& first = ageing->years.seasons.front();
  const SeasonAir& last = ageing->years.seasons.back();
  return AgeingText::tr("Air in this pot, the middle of the cases: %1 when new; after %2 seasons %3 (%4) if the crumbs stay, %5 (%6) if they wash down. %7")
      .arg(aged_share(first.staying.median))
      .arg(last.season)
      .arg(aged_share(last.staying.median), share_range_text(last.staying, 1), aged_share(last.washed_down.median), share_range_text(last.washed_down, 1), repotting_hint(ageing->years));
}

QStringList ageing_notes(const Bench& bench, const BenchAgeing* ageing) {
  QStringList notes;
  if (ageing == nullptr) return notes;
  QStringList tested, typical;
  const auto& components = ageing->of.mix.mix.components;
  for (std::size_t k = 0; k < components.size(); ++k) {
    if (!ageing->of.breakdowns[k]) continue;
    (k < bench.evaluation().crumbling.size() && bench.evaluation().crumbling[k] ? tested : typical) << to_qt(components[k].name);
  }
  if (!tested.isEmpty()) notes << AgeingText::tr("By your own crumble test: %1.").arg(comma_list(tested));
  if (!typical.isEmpty()) notes << AgeingText::tr("By the catalogue\u2019s typical durability: %1.").arg(comma_list(typical));
  for (const Note& note : ageing->years.notes) {
    // The hint stands in the sentence.
    if (note.code == "ageing.no-durability" || note.code == "ageing.plain-pot" || note.code == "ageing.estimate")
      notes << AgeingText::tr("%1.").arg(sentence_text(note, bench.units()));
  }
  return notes;
}

PictureTable ageing_table(const BenchAgeing* ageing, UnitSystem units) {
  PictureTable table;
  table.heading << AgeingText::tr("season") << AgeingText::tr("air, crumbs stay") << AgeingText::tr("90 of 100 cases") << AgeingText::tr("air, crumbs wash down") << AgeingText::tr("90 of 100 cases");
  if (ageing == nullptr) return table;
  const auto& sieves = ageing->years.seasons.back().grading;
  for (const GradingPoint& point : sieves) table.heading << AgeingText::tr("finer than %1").arg(to_local(size_text(point.aperture, units)));
  for (const SeasonAir& season : ageing->years.seasons) {
    QStringList row{season.season == 0 ? AgeingText::tr("new") : QLocale().toString(season.season), aged_share(season.staying.median), share_range_text(season.staying, 1), aged_share(season.washed_down.median),
                    share_range_text(season.washed_down, 1)};
    for (const GradingPoint& sieve : sieves) {
      // Grain of one size has sieves only once it breaks.
      const auto found = std::ranges::find(season.grading, sieve.aperture, &GradingPoint::aperture);
      row << (found != season.grading.end() ? aged_share(found->passing.value()) : QStringLiteral("\u2013"));
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

PictureTable ageing_data(const BenchAgeing* ageing) {
  PictureTable table;
  for (const char* name : {"season", "staying_low", "staying_median", "staying_high", "washed_down_low", "washed_down_median", "washed_down_high"}) table.heading << QLatin1String(name);
  if (ageing == nullptr) return table;
  const QLocale plain = QLocale::c();
  const auto& sieves = ageing->years.seasons.back().grading;
  for (const GradingPoint& point : sieves) table.heading << QStringLiteral("finer_than_%1_mm").arg(plain.toString(in_mm(point.aperture), 'g', 6));
  for (const SeasonAir& season : ageing->years.seasons) {
    QStringList row{plain.toString(season.season)};
    for (const Range& range : {season.staying, season.washed_down})
      for (const double value : {range.low, range.median, range.high}) row << plain.toString(value, 'f', 4);
    for (const GradingPoint& sieve : sieves) {
      const auto found = std::ranges::find(season.grading, sieve.aperture, &GradingPoint::aperture);
      row << (found != season.grading.end() ? plain.toString(found->passing.value(), 'f', 4) : QString());
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace gritwright::desktop
