#include "day_certainty.hpp"

#include <QCoreApplication>

#include "gritwright/report/text_table.hpp"
#include "known_mix.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class CertaintyText {
  Q_DECLARE_TR_FUNCTIONS(DayCertainty)
};

constexpr double least_told_chance = 0.01;

std::string certain_words(const QString& text) { return text.toStdString(); }

PrintTable range_table(const QString& what) {
  PrintTable table;
  table.heading = {certain_words(what), certain_words(CertaintyText::tr("from")), certain_words(CertaintyText::tr("middle")), certain_words(CertaintyText::tr("to"))};
  table.numbers = {false, true, true, true};
  return table;
}

template <class Text>
void add_range(PrintTable& table, const std::string& name, const Range& range, Text text) {
  table.rows.push_back({name, text(range.low), text(range.median), text(range.high)});
}

}  // namespace

std::vector<MixSpread> spreads_of(const PlannedDay& day, const std::vector<DayMixSources>& mixes, const OpenWorkbook& workbook, const Catalogue& catalogue,
                                  std::span<const MixCalibration> calibrations) {
  std::vector<MixSpread> spreads;
  for (std::size_t i = 0; i < day.mixes.size(); ++i) {
    // A day may name a mix that was deleted since.
    const auto stored = workbook.find_even_deleted(ref_to(mixes[i].id));
    MixQuestion known = known_mix(workbook, catalogue, std::get<MixVersion>(stored.value().record), calibrations);
    if (day.mixes[i].mix.settling != known.mix.settling) known.settled_by = SettledBy::typed;
    spreads.push_back(spread_of(known, catalogue));
  }
  return spreads;
}

std::vector<PrintSection> litres_certainty(const DayRanges& ranges, const std::vector<MixOfDay>& mixes, const std::vector<GrainLitres>& components, UnitSystem units) {
  const auto litres = [units](double value) { return volume_text(value, units); };
  PrintTable table = range_table(CertaintyText::tr("mix or loose grain"));
  for (std::size_t i = 0; i < mixes.size() && i < ranges.mixes.size(); ++i) add_range(table, certain_words(CertaintyText::tr("mix %1").arg(to_qt(mixes[i].name))), ranges.mixes[i].needed_l, litres);
  for (std::size_t i = 0; i < components.size() && i < ranges.components.size(); ++i) add_range(table, components[i].name, ranges.components[i].loose_l, litres);
  if (table.rows.empty()) return {};
  return {{certain_words(CertaintyText::tr("How sure are the litres? 90 of 100 cases")), {std::move(table)}}};
}

std::vector<PrintSection> bags_certainty(const DayRanges& ranges, UnitSystem units) {
  PrintSection section{certain_words(CertaintyText::tr("How sure is that? 90 of 100 cases")), {}};
  PrintTable table = range_table(CertaintyText::tr("to buy"));
  for (const GrainToBuyRange& one : ranges.buy) {
    if (one.bags) add_range(table, certain_words(CertaintyText::tr("bags of %1").arg(material_words(one.material))), *one.bags, [](double value) { return figure(value, 0); });
    else add_range(table, certain_words(CertaintyText::tr("litres of %1").arg(material_words(one.material))), one.raw_l, [units](double value) { return volume_text(value, units); });
  }
  if (!table.rows.empty()) section.blocks.emplace_back(std::move(table));
  for (const GrainToBuyRange& one : ranges.may_buy) {
    if (one.chance >= least_told_chance)
      section.blocks.emplace_back(PrintText{certain_words(CertaintyText::tr("%1 may run short: in %2 of 100 cases.").arg(material_words(one.material)).arg(qRound(100 * one.chance)))});
  }
  if (section.blocks.empty()) return {};
  return {std::move(section)};
}

}  // namespace gritwright::desktop
