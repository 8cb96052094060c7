#include "mix_comparison.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <initializer_list>
#include <iterator>
#include <string_view>

#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/report/mix_report.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class ComparisonText {
  Q_DECLARE_TR_FUNCTIONS(Comparison)
};

ComparedMix compared_mix(const KeptMix& kept, const PotGeometry* pot, const std::optional<Band>& band, const Catalogue& catalogue, const SliceRunner& runner) {
  ComparedMix compared;
  compared.id = kept.id;
  compared.name = kept.name;
  const Mix& mix = kept.of.mix;
  QStringList tests;
  for (const std::string& test : kept.of.pot_tests) tests << to_qt(test);
  compared.pot_tests = comma_list(tests);
  compared.tested_itself = kept.of.tested_itself;
  const auto state = mix_state(mix);
  if (!state) return compared;
  compared.grading = Grading{state->passing, {}, {}};
  if (state->settled) compared.bulk_density = state->settled->bulk_density;
  if (band && !compared.grading.points.empty()) {
    compared.in_band = band_share(compared.grading, *band);
    compared.finer = band_share(compared.grading, {aperture_mm(0), band->from});
  }
  const auto take = [&compared](std::initializer_list<std::string_view> keys, const std::vector<Explanation>& all) {
    std::ranges::copy_if(all, std::back_inserter(compared.explanations), [&](const Explanation& one) { return std::ranges::find(keys, one.figure) != keys.end(); });
  };
  take({"bulk_density_g_l"}, explain(mix, *state));
  if (!compared.grading.points.empty()) take({"d50", "in_band", "finer"}, explain_blend(compared.grading, band));
  const auto water = pot != nullptr ? mix_in_pot(*state, mix.water, *pot) : std::nullopt;
  if (water) {
    compared.air = water->air_filled_porosity;
    compared.water = water->container_capacity;
    compared.available = water->available_in_pot;
    take({"container_capacity", "air_filled_porosity", "available_in_pot"}, explain(mix, *state, *water, &pot->container()));
    if (const auto drawn = UncertainMix(mix, spread_of(kept.of, catalogue), *pot).air_and_water(standing_sample, runner)) {
      compared.air_range = drawn->air;
      compared.water_range = drawn->capacity;
    }
  }
  return compared;
}

template <class Share>
std::optional<double> value_of(const std::optional<Share>& share) {
  return share ? std::optional<double>(share->value()) : std::nullopt;
}

}  // namespace

Comparison compared(const std::vector<KeptMix>& mixes, const PotGeometry* pot, const std::optional<Band>& band, const Catalogue& catalogue,
                    const SliceRunner& runner, const std::stop_token& stop, const std::function<void(int, int)>& progress) {
  Comparison comparison;
  comparison.band = band;
  if (pot != nullptr) comparison.depth = pot->filled_depth();
  for (const KeptMix& kept : mixes) {
    if (stop.stop_requested()) break;
    comparison.mixes.push_back(compared_mix(kept, pot, band, catalogue, runner));
    progress(static_cast<int>(comparison.mixes.size()), static_cast<int>(mixes.size()));
  }
  return comparison;
}

QString comparison_sentence(const Comparison& comparison, UnitSystem units) {
  if (comparison.mixes.empty()) return ComparisonText::tr("Nothing to compare yet: keep a mix, or finish the one on the bench.");
  QStringList mixes;
  for (const ComparedMix& mix : comparison.mixes) {
    const QString name = mix.pot_tests.isEmpty() ? mix.name
                         : mix.tested_itself     ? ComparisonText::tr("%1 (by pot test %2)").arg(mix.name, mix.pot_tests)
                                                 : ComparisonText::tr("%1 (leaning on pot test %2)").arg(mix.name, mix.pot_tests);
    mixes << (mix.air ? ComparisonText::tr("%1 holds %2 air and %3 water").arg(name, to_local(percent_text(value_of(mix.air), 0)), to_local(percent_text(value_of(mix.water), 0)))
                      : ComparisonText::tr("%1 without a pot").arg(mix.name));
  }
  const QString list = comma_list(mixes);
  return comparison.depth ? ComparisonText::tr("In one pot, %1 deep: %2.").arg(to_local(depth_text(comparison.depth, units)), list) : list + u'.';
}

PictureTable comparison_table(const Comparison& comparison, UnitSystem units) {
  PictureTable table;
  table.heading << ComparisonText::tr("mix") << ComparisonText::tr("air") << ComparisonText::tr("90 of 100") << ComparisonText::tr("water") << ComparisonText::tr("90 of 100") << ComparisonText::tr("plants can take") << ComparisonText::tr("wanted") << ComparisonText::tr("finer") << ComparisonText::tr("litre weight")
                << ComparisonText::tr("D50") << ComparisonText::tr("pot tests");
  const auto percent = [](const auto& share) { return to_local(percent_text(value_of(share))); };
  const auto ends = [](const std::optional<Range>& range) { return range ? share_range_text(*range, 0) : QStringLiteral("\u2013"); };
  for (const ComparedMix& mix : comparison.mixes) {
    const auto density = mix.bulk_density ? std::optional<double>(in_g_l(*mix.bulk_density)) : std::nullopt;
    const QString pot_tests = mix.pot_tests.isEmpty() ? QStringLiteral("\u2013") : mix.tested_itself ? mix.pot_tests : ComparisonText::tr("leaning on %1").arg(mix.pot_tests);
    const auto half = mix.grading.points.empty() ? std::nullopt : percentile(mix.grading, 50);
    table.rows.push_back({mix.name, percent(mix.air), ends(mix.air_range), percent(mix.water), ends(mix.water_range), percent(mix.available), percent(mix.in_band), percent(mix.finer),
                          to_local(density_text(density, units)), to_local(grain_size_text(half, units)), pot_tests});
  }
  return table;
}

PictureTable comparison_data(const Comparison& comparison) {
  PictureTable table;
  for (const char* name : {"mix", "air_share", "water_share", "available_share", "in_band_share", "finer_share", "bulk_density_g_l", "air_low", "air_high", "water_low", "water_high", "pot_tests"}) table.heading << QLatin1String(name);
  const QLocale plain = QLocale::c();
  const auto share = [&](const auto& value) { return value ? plain.toString(value->value(), 'f', 4) : QString(); };
  const auto end = [&](const std::optional<Range>& range, double Range::*member) { return range ? plain.toString((*range).*member, 'f', 4) : QString(); };
  for (const ComparedMix& mix : comparison.mixes) {
    table.rows.push_back({mix.name, share(mix.air), share(mix.water), share(mix.available), share(mix.in_band), share(mix.finer),
                          mix.bulk_density ? plain.toString(in_g_l(*mix.bulk_density), 'f', 1) : QString(), end(mix.air_range, &Range::low), end(mix.air_range, &Range::high),
                          end(mix.water_range, &Range::low), end(mix.water_range, &Range::high), mix.pot_tests});
  }
  return table;
}

}  // namespace gritwright::desktop
