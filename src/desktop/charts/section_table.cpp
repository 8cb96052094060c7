#include "section_table.hpp"

#include <QCoreApplication>
#include <QLocale>

#include "models/bench_ranges.hpp"
#include "section_painting.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class SectionTableText {
  Q_DECLARE_TR_FUNCTIONS(Section)
};

bool has_range(const SectionFilling& filling) { return filling.share != &PotSlice::grain; }

/// Where a filling lies at the height of a slice; trapped air is the same at every height.
std::optional<Range> slice_range(const MixRanges* ranges, std::size_t slice, Porosity PotSlice::*share) {
  if (ranges == nullptr) return std::nullopt;
  if (share == &PotSlice::trapped_air) return ranges->of(MixFigure::trapped_air);
  const auto& heights = share == &PotSlice::water ? ranges->water_by_height : ranges->free_air_by_height;
  return slice < heights.size() ? heights[slice] : std::nullopt;
}

}  // namespace

PictureTable section_table(const PotSection* section, const MixRanges* ranges, UnitSystem units) {
  PictureTable table;
  const auto fillings = section_fillings();
  table.heading << SectionTableText::tr("height");
  for (const SectionFilling& filling : fillings) {
    table.heading << filling.name;
    if (has_range(filling)) table.heading << SectionTableText::tr("90 of 100 cases");
  }
  for (std::size_t i = section != nullptr ? section->slices.size() : 0; i-- > 0;) {
    const PotSlice& slice = section->slices[i];
    QStringList row{to_local(depth_text(slice.height, units))};
    for (const SectionFilling& filling : fillings) {
      row << to_local(percent_text((slice.*filling.share).value()));
      if (has_range(filling)) row << range_text(slice_range(ranges, i, filling.share), [](double share) { return percent_text(share); });
    }
    table.rows.push_back(row);
  }
  return table;
}

PictureTable section_data(const PotSection* section, const MixRanges* ranges) {
  PictureTable table;
  for (const char* name : {"height_cm", "grain_share", "water_share", "trapped_air_share", "free_air_share", "water_low", "water_high", "trapped_air_low", "trapped_air_high", "free_air_low",
                           "free_air_high"})
    table.heading << QLatin1String(name);
  const QLocale plain = QLocale::c();
  const auto number = [&](double share) { return plain.toString(share, 'f', 4); };
  for (std::size_t i = section != nullptr ? section->slices.size() : 0; i-- > 0;) {
    const PotSlice& slice = section->slices[i];
    QStringList row{plain.toString(in_cm(slice.height), 'f', 3)};
    for (const Porosity share : {slice.grain, slice.water, slice.trapped_air, slice.free_air}) row << number(share.value());
    for (const auto share : {&PotSlice::water, &PotSlice::trapped_air, &PotSlice::free_air}) {
      const auto range = slice_range(ranges, i, share);
      row << (range ? number(range->low) : QString()) << (range ? number(range->high) : QString());
    }
    table.rows.push_back(row);
  }
  return table;
}

}  // namespace gritwright::desktop
