#include "mix_comparison.hpp"

#include <QCoreApplication>
#include <QLocale>

#include "bench_ranges.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class ComparisonText {
  Q_DECLARE_TR_FUNCTIONS(Comparison)
};

/// Draws of one mix among many.
constexpr SampleSize compared_sample{512, 1};

ComparedMix compared_mix(const KeptMix& kept, const PotGeometry* pot, const std::optional<Band>& band, const Catalogue& catalogue) {
  ComparedMix compared{kept.id, kept.name, {}, {}, {}, {}, {}, {}, {}, {}, {}};
  const auto state = mix_state(kept.mix);
  if (!state) return compared;
  compared.grading = Grading{state->passing, {}, {}};
  if (state->settled) compared.bulk_density = state->settled->bulk_density;
  if (band && !compared.grading.points.empty()) {
    compared.in_band = band_share(compared.grading, *band);
    compared.finer = band_share(compared.grading, {aperture_mm(0), band->from});
  }
  const auto water = pot != nullptr ? mix_in_pot(*state, kept.mix.water, *pot) : std::nullopt;
  if (water) {
    compared.air = water->air_filled_porosity;
    compared.water = water->container_capacity;
    compared.available = water->available_in_pot;
    if (const auto drawn = UncertainMix(kept.mix, usual_spread(kept.mix, &catalogue), *pot).air_and_water(compared_sample)) {
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

Comparison compared(const std::vector<KeptMix>& mixes, const PotGeometry* pot, const std::optional<Band>& band, const Catalogue& catalogue, const std::stop_token& stop,
                    const std::function<void(int, int)>& progress) {
  Comparison comparison;
  comparison.band = band;
  if (pot != nullptr) comparison.depth = pot->filled_depth();
  for (const KeptMix& kept : mixes) {
    if (stop.stop_requested()) break;
    comparison.mixes.push_back(compared_mix(kept, pot, band, catalogue));
    progress(static_cast<int>(comparison.mixes.size()), static_cast<int>(mixes.size()));
  }
  return comparison;
}

QString comparison_sentence(const Comparison& comparison, UnitSystem units) {
  if (comparison.mixes.empty()) return ComparisonText::tr("Nothing to compare yet: keep a mix, or finish the one on the bench.");
  QStringList mixes;
  for (const ComparedMix& mix : comparison.mixes) {
    mixes << (mix.air ? ComparisonText::tr("%1 holds %2 air and %3 water").arg(mix.name, to_local(percent_text(value_of(mix.air), 0)), to_local(percent_text(value_of(mix.water), 0)))
                      : ComparisonText::tr("%1 without a pot").arg(mix.name));
  }
  const QString list = mixes.join(QStringLiteral(", "));
  return comparison.depth ? ComparisonText::tr("In one pot, %1 deep: %2.").arg(to_local(depth_text(comparison.depth, units)), list) : list + u'.';
}

PictureTable comparison_table(const Comparison& comparison, UnitSystem units) {
  PictureTable table;
  table.heading << ComparisonText::tr("mix") << ComparisonText::tr("air") << ComparisonText::tr("90 of 100") << ComparisonText::tr("water") << ComparisonText::tr("90 of 100") << ComparisonText::tr("for plants") << ComparisonText::tr("in band") << ComparisonText::tr("finer") << ComparisonText::tr("litre weight")
                << ComparisonText::tr("D50");
  const auto percent = [](const auto& share) { return to_local(percent_text(value_of(share))); };
  const auto ends = [](const std::optional<Range>& range) { return range ? share_range_text(*range, 0) : QStringLiteral("\u2013"); };
  for (const ComparedMix& mix : comparison.mixes) {
    const auto density = mix.bulk_density ? std::optional<double>(in_g_l(*mix.bulk_density)) : std::nullopt;
    const auto half = mix.grading.points.empty() ? std::nullopt : percentile(mix.grading, 50);
    table.rows.push_back({mix.name, percent(mix.air), ends(mix.air_range), percent(mix.water), ends(mix.water_range), percent(mix.available), percent(mix.in_band), percent(mix.finer),
                          to_local(density_text(density, units)), to_local(size_text(half, units))});
  }
  return table;
}

PictureTable comparison_data(const Comparison& comparison) {
  PictureTable table;
  for (const char* name : {"mix", "air_share", "water_share", "available_share", "in_band_share", "finer_share", "bulk_density_g_l", "air_low", "air_high", "water_low", "water_high"}) table.heading << QLatin1String(name);
  const QLocale plain = QLocale::c();
  const auto share = [&](const auto& value) { return value ? plain.toString(value->value(), 'f', 4) : QString(); };
  const auto end = [&](const std::optional<Range>& range, double Range::*member) { return range ? plain.toString((*range).*member, 'f', 4) : QString(); };
  for (const ComparedMix& mix : comparison.mixes) {
    table.rows.push_back({mix.name, share(mix.air), share(mix.water), share(mix.available), share(mix.in_band), share(mix.finer),
                          mix.bulk_density ? plain.toString(in_g_l(*mix.bulk_density), 'f', 1) : QString(), end(mix.air_range, &Range::low), end(mix.air_range, &Range::high),
                          end(mix.water_range, &Range::low), end(mix.water_range, &Range::high)});
  }
  return table;
}

}  // namespace gritwright::desktop
