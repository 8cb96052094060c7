#include "gritwright/report/range_report.hpp"

#include <fmt/format.h>

#include <cmath>
#include <string>

#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

using Kind = UncertaintySource::Kind;
using Row = std::vector<std::string>;

std::string code_of(Kind kind) {
  switch (kind) {
    case Kind::bulk_density: return "narrow.bulk-density";
    case Kind::particle_density: return "narrow.particle-density";
    case Kind::water_absorption: return "narrow.water-absorption";
    case Kind::grading: return "narrow.grading";
    case Kind::settling: return "narrow.settling";
    case Kind::capillary_constant:
    case Kind::grain_fill:
    case Kind::flooded_fill: return "narrow.pot-test";
    case Kind::pot_lengths: return "narrow.pot-lengths";
    case Kind::skeletal_density:
    case Kind::open_share:
    case Kind::packing_model:
    case Kind::residual: break;
  }
  return "narrow.otherwise";
}

double in_points(double share) { return std::round(1000 * share) / 10; }

template <class Text>
void add_row(std::vector<Row>& rows, const std::string& name, const std::optional<Range>& range, Text text) {
  if (range) rows.push_back({name, text(range->low), text(range->median), text(range->high)});
}

std::string share_text(double share) { return percent_text(share); }

}  // namespace

int percent_range_decimals(const Range& range, double share) {
  const auto as_read = [](double value, int decimals) { return std::stod(figure(value * 100, decimals)); };
  const double low = as_read(range.low, 0);
  const double high = as_read(range.high, 0);
  const double between = as_read(share, 1);
  return low < high && low <= between && between <= high ? 0 : 1;
}

std::string narrowing_sentence(const Narrowing& narrowing, const Mix& mix, MixFigure figure, const Translate& translate) {
  const std::string_view name = figure == MixFigure::air_filled_porosity ? GRITWRIGHT_TEXT("air") : GRITWRIGHT_TEXT("water");
  Note note{code_of(narrowing.source.kind), Level::note, "", {}};
  note.facts["figure"] = translate ? translate(name) : std::string(name);
  note.facts["now_points"] = in_points(narrowing.half_range_now);
  note.facts["then_points"] = in_points(narrowing.half_range_then);
  if (narrowing.source.component) note.facts["component"] = mix.components[*narrowing.source.component].name;
  return sentence(note, translate);
}

std::string ranges_text(const MixRanges& ranges, const std::string& heading, UnitSystem units) {
  std::vector<Row> rows;
  const auto add = [&](const std::string& name, MixFigure figure, auto text) { add_row(rows, name, ranges.of(figure), text); };
  const auto litres = [&](double value) { return volume_text(value, units); };
  const auto density = [&](double value) { return density_text(value, units); };
  const auto depth = [&](double value) { return depth_text(depth_cm(value), units); };
  add("air", MixFigure::air_filled_porosity, share_text);
  add("water held", MixFigure::container_capacity, share_text);
  add("water plants can take", MixFigure::available_in_pot, share_text);
  add("trapped air", MixFigure::trapped_air, share_text);
  add_row(rows, "wet zone", ranges.perched_height_cm, depth);
  add("shrinkage", MixFigure::shrinkage, share_text);
  add("litre weight", MixFigure::bulk_density_g_l, density);
  add("voids between grains", MixFigure::voids_between_grains, share_text);
  add("total porosity", MixFigure::total_porosity, share_text);
  add("water in grains", MixFigure::grain_water, share_text);
  add("exchange capacity, meq/L", MixFigure::cec_meq_l, [](double value) { return figure(value, 0); });
  add("mixed, to fill the pot", MixFigure::mixed_l, litres);
  add("wet mass", MixFigure::wet_mass_g, [&](double value) { return mass_text(mass_g(value), units); });
  if (rows.empty()) return "";
  return fmt::format("\n{}", text_table({heading, "from", "middle", "to"}, rows));
}

std::string ranges_text(const SieveAnalysis& analysis, const GradingRanges& ranges, const std::string& heading, UnitSystem units) {
  std::vector<Row> rows;
  for (std::size_t i = 0; i < ranges.passing.size(); ++i)
    add_row(rows, fmt::format("passing {}", size_text(analysis.sieves[i].aperture, units)), std::optional(ranges.passing[i]), share_text);
  const auto open_end = [&](const std::optional<double>& mm) { return grain_size_text(mm ? std::optional(aperture_mm(*mm)) : std::nullopt, units); };
  for (std::size_t i = 0; i < reported_percentiles.size(); ++i) {
    const int percent = reported_percentiles[i];
    const auto& range = ranges.percentiles_mm[i];
    if (!range || (percent != 10 && percent != 50 && percent != 90)) continue;
    rows.push_back({fmt::format("D{}", percent), open_end(range->low), open_end(range->median), open_end(range->high)});
  }
  if (ranges.uniformity)
    rows.push_back({"D60/D10", figure(ranges.uniformity->low, 2), figure(ranges.uniformity->median, 2), figure(ranges.uniformity->high, 2)});
  return fmt::format("\n{}", text_table({heading, "from", "middle", "to"}, rows));
}

std::string ranges_text(const DayRanges& ranges, const std::vector<MixOfDay>& mixes, const std::vector<GrainLitres>& components,
                        const std::string& heading, UnitSystem units) {
  constexpr double least_chance = 0.01;
  std::vector<Row> rows;
  const auto litres = [&](double value) { return volume_text(value, units); };
  for (std::size_t i = 0; i < mixes.size(); ++i)
    add_row(rows, fmt::format("mix {}", mixes[i].name), std::optional(ranges.mixes[i].needed_l), litres);
  for (std::size_t i = 0; i < components.size(); ++i)
    add_row(rows, fmt::format("loose {}", components[i].name), std::optional(ranges.components[i].loose_l), litres);
  for (const GrainToBuyRange& purchase : ranges.buy)
    add_row(rows, fmt::format("bags of {}", purchase.material), purchase.bags, [](double value) { return figure(value, 0); });
  std::string text = fmt::format("\n{}", text_table({heading, "from", "middle", "to"}, rows));
  for (const GrainToBuyRange& purchase : ranges.may_buy)
    if (purchase.chance >= least_chance)
      text += fmt::format("{} runs short in {} of the cases\n", purchase.material, percent_text(purchase.chance, 0));
  return text;
}

std::string years_text(const AirOverYears& years) {
  std::vector<Row> rows;
  for (const SeasonAir& season : years.seasons) {
    rows.push_back({fmt::format("{}", season.season), share_text(season.staying.low), share_text(season.staying.median),
                    share_text(season.staying.high), share_text(season.washed_down.low), share_text(season.washed_down.median),
                    share_text(season.washed_down.high)});
  }
  return fmt::format("\n{}", text_table({"air in season", "crumbs stay: from", "middle", "to", "wash down: from", "middle", "to"}, rows));
}

std::string narrowing_text(const std::vector<Narrowing>& air, const std::vector<Narrowing>& water, const Mix& mix) {
  constexpr std::size_t most = 3;
  std::string text;
  const auto add = [&](const std::vector<Narrowing>& list, MixFigure figure) {
    for (std::size_t i = 0; i < list.size() && i < most; ++i) text += fmt::format("- {}\n", narrowing_sentence(list[i], mix, figure));
  };
  add(air, MixFigure::air_filled_porosity);
  add(water, MixFigure::container_capacity);
  return text.empty() ? text : fmt::format("\nwhat would narrow it most:\n{}", text);
}

}  // namespace gritwright
