#include "range_json.hpp"

#include <nlohmann/json.hpp>

#include "gritwright/report/range_report.hpp"

namespace gritwright::cli {

namespace {

Json of(const MixRanges& ranges, MixFigure figure, double factor = 1) { return to_json(ranges.of(figure), factor); }

template <class Ranges>
Json list_of(const Ranges& ranges) {
  Json list = Json::array();
  for (const auto& range : ranges) list.push_back(to_json(range));
  return list;
}

/// Rows as the curve lists them; the curve may be null.
template <class Ranges>
void add_to_rows(Json& rows, const Ranges& ranges) {
  if (!rows.is_array()) return;
  for (std::size_t i = 0; i < rows.size() && i < ranges.size(); ++i) rows[i]["range"] = to_json(ranges[i], 100);
}

const char* key_of(UncertaintySource::Kind kind) {
  using Kind = UncertaintySource::Kind;
  switch (kind) {
    case Kind::bulk_density: return "bulk_density";
    case Kind::particle_density: return "particle_density";
    case Kind::skeletal_density: return "skeletal_density";
    case Kind::open_share: return "open_share";
    case Kind::water_absorption: return "water_absorption";
    case Kind::grading: return "grading";
    case Kind::packing_model: return "packing_model";
    case Kind::settling: return "settling";
    case Kind::capillary_constant: return "k";
    case Kind::grain_fill: return "grain_fill";
    case Kind::flooded_fill: return "flooded_fill";
    case Kind::residual: return "residual";
    case Kind::pot_lengths: return "pot_lengths";
  }
  return "";
}

Json grain_json(const GrainLitresRange& grain) {
  return {{"loose_l", to_json(grain.loose_l)}, {"mass_kg", to_json(grain.mass_kg)}, {"ready_l", to_json(grain.ready_l)}};
}

Json purchase_json(const GrainToBuyRange& purchase) {
  return {{"bags", to_json(purchase.bags)}, {"short_l", to_json(purchase.short_l)}, {"raw_l", to_json(purchase.raw_l)}};
}

Range downward(const Range& range) { return {1 - range.high, 1 - range.median, 1 - range.low}; }

}  // namespace

Json to_json(const Range& range, double factor) {
  return {{"low", range.low * factor}, {"median", range.median * factor}, {"high", range.high * factor}};
}

Json to_json(const std::optional<Range>& range, double factor) { return range ? to_json(*range, factor) : Json(nullptr); }

Json to_json(const std::optional<OpenRange>& range, double factor) {
  if (!range) return nullptr;
  const auto end = [&](const std::optional<double>& value) { return to_json(value ? std::optional(*value * factor) : std::nullopt); };
  return {{"low", end(range->low)}, {"median", end(range->median)}, {"high", end(range->high)}};
}

void add_ranges(Json& mix, const MixRanges& ranges) {
  add_to_rows(mix["passing"], ranges.passing);
  add_to_rows(mix["envelope_passing"], ranges.envelope_passing);
  Json range;
  range["mass_shares"] = list_of(ranges.mass_shares);
  range["envelope_shares"] = list_of(ranges.envelope_shares);
  range["class_betas"] = list_of(ranges.class_betas);
  range["packing_density"] = of(ranges, MixFigure::packing_density);
  range["volume_l"] = of(ranges, MixFigure::volume_l);
  range["shrinkage_percent"] = of(ranges, MixFigure::shrinkage, 100);
  range["bulk_density_g_l"] = of(ranges, MixFigure::bulk_density_g_l);
  range["particle_density_g_l"] = of(ranges, MixFigure::particle_density_g_l);
  range["skeletal_density_g_l"] = of(ranges, MixFigure::skeletal_density_g_l);
  range["voids_between_grains"] = of(ranges, MixFigure::voids_between_grains);
  range["voids_in_grains"] = of(ranges, MixFigure::voids_in_grains);
  range["total_porosity"] = of(ranges, MixFigure::total_porosity);
  range["grain_water"] = of(ranges, MixFigure::grain_water);
  range["cec_meq_l"] = of(ranges, MixFigure::cec_meq_l);
  mix["range"] = std::move(range);
}

void add_pot_ranges(Json& pot, const MixRanges& ranges) {
  Json range;
  range["volume_ml"] = of(ranges, MixFigure::pot_volume_ml);
  range["depth_cm"] = of(ranges, MixFigure::depth_cm);
  range["container_capacity"] = of(ranges, MixFigure::container_capacity);
  range["air_filled_porosity"] = of(ranges, MixFigure::air_filled_porosity);
  range["trapped_air"] = of(ranges, MixFigure::trapped_air);
  range["total_air"] = of(ranges, MixFigure::total_air);
  range["theta_0"] = of(ranges, MixFigure::theta_0);
  range["theta_10"] = of(ranges, MixFigure::theta_10);
  range["theta_50"] = of(ranges, MixFigure::theta_50);
  range["easily_available"] = of(ranges, MixFigure::easily_available);
  range["available_in_pot"] = of(ranges, MixFigure::available_in_pot);
  range["perched_height_cm"] = to_json(ranges.perched_height_cm);
  range["wet_mass_g"] = of(ranges, MixFigure::wet_mass_g);
  pot["range"] = std::move(range);
}

void add_ranges(Json& day, const DayRanges& ranges) {
  for (std::size_t i = 0; i < ranges.mixes.size(); ++i) {
    Json& mix = day["mixes"][i];
    mix["range"] = {{"needed_l", to_json(ranges.mixes[i].needed_l)}};
    if (!mix["components"].is_array()) continue;
    for (std::size_t k = 0; k < ranges.mixes[i].components.size(); ++k) mix["components"][k]["range"] = grain_json(ranges.mixes[i].components[k]);
  }
  for (std::size_t i = 0; i < ranges.components.size(); ++i) day["components"][i]["range"] = grain_json(ranges.components[i]);
  for (std::size_t i = 0; i < ranges.buy.size(); ++i) {
    day["buy"][i]["range"] = purchase_json(ranges.buy[i]);
    day["buy"][i]["chance_percent"] = 100 * ranges.buy[i].chance;
  }
  day["may_buy"] = Json::array();
  for (const GrainToBuyRange& purchase : ranges.may_buy)
    day["may_buy"].push_back({{"material", purchase.material}, {"chance_percent", 100 * purchase.chance}, {"range", purchase_json(purchase)}});
  for (std::size_t i = 0; i < ranges.lifts_kg.size(); ++i) day["lifts"][i]["range"] = {{"mass_kg", to_json(ranges.lifts_kg[i])}};
}

void add_taken_ranges(Json& day, const DayAnswer& answer, const DayRanges& ranges) {
  // Grain that is ready to use stands in a list of its own.
  std::size_t raw = 0, ready = 0;
  for (std::size_t i = 0; i < ranges.taken.size(); ++i) {
    if (answer.taken[i].yield)
      day["raw"][raw++]["range"] = {{"screen_l", to_json(ranges.taken[i].raw_l)}, {"ready_l", to_json(ranges.taken[i].ready_l)}};
    else
      day["ready"][ready++]["range"] = {{"take_l", to_json(ranges.taken[i].raw_l)}};
  }
}

void add_narrowing(Json& rows, const std::vector<Narrowing>& narrowings, const Mix& mix, MixFigure figure) {
  for (const Narrowing& narrowing : narrowings) {
    const auto component = narrowing.source.component;
    rows.push_back({{"figure", figure == MixFigure::air_filled_porosity ? "air_filled_porosity" : "container_capacity"},
                    {"source", key_of(narrowing.source.kind)},
                    {"component", component ? Json(mix.components[*component].name) : Json(nullptr)},
                    {"share", narrowing.share},
                    {"half_range_now", narrowing.half_range_now},
                    {"half_range_then", narrowing.half_range_then},
                    {"text", narrowing_sentence(narrowing, mix, figure)}});
  }
}

void add_ranges(Json& grade, const GradingRanges& ranges) {
  add_to_rows(grade["passing"], ranges.passing);
  add_to_rows(grade["bands"], ranges.bands);
  for (std::size_t i = 0; i < ranges.retained.size(); ++i) {
    grade["retained"][i]["range"] = {{"percent", to_json(ranges.retained[i], 100)},
                                     {"cumulative_percent", to_json(downward(ranges.passing[i]), 100)}};
  }
  Json sizes;
  for (std::size_t i = 0; i < reported_percentiles.size(); ++i)
    sizes[std::string("d").append(std::to_string(reported_percentiles[i]))] = to_json(ranges.percentiles_mm[i]);
  grade["d_mm"]["range"] = std::move(sizes);
  grade["range"] = {{"total_g", to_json(ranges.total_g)},
                    {"base_g", to_json(ranges.base_g)},
                    {"loss_percent", to_json(ranges.loss, 100)},
                    {"cu", to_json(ranges.uniformity)}};
}

}  // namespace gritwright::cli
