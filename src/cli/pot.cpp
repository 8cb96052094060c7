#include <nlohmann/json.hpp>

#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/pot_notes.hpp"
#include "gritwright/models/pot_ranges.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/range_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "range_json.hpp"
#include "range_options.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

constexpr int heights_listed = 11;

Depth listed_height(const PotGeometry& geometry, int index) {
  return geometry.filled_depth() * (static_cast<double>(index) / (heights_listed - 1));
}

Json pot_json(const PotGeometry& geometry) {
  Json areas = Json::array();
  for (int i = 0; i < heights_listed; ++i) {
    const Depth height = listed_height(geometry, i);
    areas.push_back({{"height_cm", in_cm(height)}, {"area", in_cm2(geometry.area_at(height))}});
  }
  return {{"volume_ml", in_ml(geometry.volume())}, {"depth_cm", in_cm(geometry.filled_depth())}, {"area_cm2", areas}};
}

std::string pot_text(const PotGeometry& geometry, UnitSystem units) {
  std::string text = "volume to the fill line " + volume_text(in_ml(geometry.volume()) / 1000, units) + ", filled depth " +
                     depth_text(geometry.filled_depth(), units) + '\n';
  if (geometry.container().water_fill) {
    text += "by its lengths " + volume_text(in_ml(geometry.volume_by_lengths()) / 1000, units) + "; the water fill counts\n";
  }
  std::vector<std::vector<std::string>> rows;
  for (int i = 0; i < heights_listed; ++i) {
    const Depth height = listed_height(geometry, i);
    rows.push_back({depth_text(height, units), area_text(geometry.area_at(height), units)});
  }
  return text + '\n' + text_table({"height", "area"}, rows);
}

/// A mix measured out for one pot. Litres are unknown where a particle density is missing.
struct Filling {
  Mix mix;
  MixState state;
  std::optional<PotWater> water;
  std::optional<std::vector<LooseVolume>> measure_out;
};

Filling filling_of(const Mix& mix, const MixState& state, const PotGeometry& geometry) {
  const MixedVolume mixed = mixed_volume_to_fill(geometry.main_mix_volume(), mix);
  return {mix, state, mix_in_pot(state, mix.water, geometry), component_volumes(mixed, state)};
}

std::optional<double> litres_of(const Filling& filling, std::size_t component) {
  return filling.measure_out ? std::optional(in_l((*filling.measure_out)[component])) : std::nullopt;
}

void add_json(Json& answer, const Filling& filling) {
  Json water = Json::array();
  if (filling.water) {
    for (const WaterAtHeight& at : filling.water->water_by_height) {
      water.push_back({{"height_cm", in_cm(at.height)}, {"theta", at.water.value()}});
    }
  }
  answer["water"] = filling.water ? water : Json(nullptr);
  Json measure_out = Json::array();
  for (std::size_t i = 0; i < filling.mix.components.size(); ++i) {
    measure_out.push_back({{"name", filling.mix.components[i].name}, {"loose_l", to_json(litres_of(filling, i))}});
  }
  answer["measure_out"] = measure_out;
}

void add_ranges(Json& answer, const PotRanges& ranges) {
  for (Json& row : answer["area_cm2"]) row["range"] = to_json(ranges.area, row["area"].get<double>());
  answer["range"] = {{"volume_ml", to_json(ranges.volume_ml)}, {"depth_cm", to_json(ranges.depth_cm)}};
}

void add_filling_ranges(Json& answer, const MixRanges& ranges) {
  if (answer["water"].is_array()) {
    for (std::size_t i = 0; i < answer["water"].size(); ++i) answer["water"][i]["range"] = to_json(ranges.water_by_height[i]);
  }
  for (std::size_t k = 0; k < answer["measure_out"].size(); ++k) answer["measure_out"][k]["range"] = to_json(ranges.measure_out_l[k]);
}

std::string filling_text(const Filling& filling, UnitSystem units) {
  std::string text = "\n";
  if (filling.water) {
    text += pot_water_text(*filling.water, units) + '\n';
    std::vector<std::vector<std::string>> rows;
    for (const WaterAtHeight& at : filling.water->water_by_height) {
      rows.push_back({depth_text(at.height, units), percent_text(at.water.value())});
    }
    text += text_table({"height", "water"}, rows) + '\n';
  }
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < filling.mix.components.size(); ++i) {
    rows.push_back({filling.mix.components[i].name, volume_text(litres_of(filling, i), units)});
  }
  return text + text_table({"measure out", "loose"}, rows);
}

class Pot final : public Verb {
 public:
  std::string name() const override { return "pot"; }
  std::string summary() const override { return "Volume and area of a pot, and with a mix the water in it"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A pot (.json); - reads standard input");
    argument(app, "--mix", mix_file_, "A mix (.json) to fill it with", is_file_name);
    range_.declare(app);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    Problems problems;
    const auto read = container_from(file_, streams.in);
    append(problems, read.problems());
    std::optional<Result<MixFile>> mix;
    if (!mix_file_.empty()) mix.emplace(mix_from(mix_file_, streams.in));
    if (mix) append(problems, mix->problems());
    if (!problems.empty()) return refuse(problems, streams.err);
    const PotGeometry geometry(read->container);
    Notes notes = read->notes;
    append(notes, notes_on_water_fill(geometry));
    std::optional<Filling> filling;
    if (mix) {
      const auto state = mix_state((*mix)->mix);
      if (!state) return refuse(in_file(state.problems(), mix_file_), streams.err);
      filling = filling_of((*mix)->mix, *state, geometry);
      append(notes, (*mix)->notes);
      append(notes, state->notes);
      if (filling->water) append(notes, filling->water->notes);
    }
    std::optional<PotRanges> pot_range;
    std::optional<MixRanges> mix_range;
    if (range_.wanted()) {
      pot_range = pot_ranges(geometry, usual_pot_spread(), range_.size());
      if (mix) {
        const auto background = background_of(**mix);
        if (!background) return refuse(background.problems(), streams.err);
        mix_range = UncertainMix((*mix)->mix, background->spread, geometry).ranges(range_.size(), on_all_cores());
      }
    }
    std::vector<Explanation> explanations;
    if (options.explain) explanations = explain(geometry);
    if (options.explain && filling && filling->measure_out) explanations.push_back(explain_measuring_out(geometry, filling->mix, filling->state));
    if (options.explain && filling && filling->water) {
      explanations.push_back({"water", "theta at each height z: the suction there is the height over free water; see container_capacity",
                              {{"theta at the floor", percent_text(filling->water->water_by_height.front().water.value())},
                               {"at the fill line", percent_text(filling->water->water_by_height.back().water.value())}},
                              "docs/science/water.md"});
      for (Explanation& more : explain(filling->mix, filling->state, *filling->water, &geometry.container())) explanations.push_back(std::move(more));
    }
    if (options.json) {
      Json answer = pot_json(geometry);
      if (filling) add_json(answer, *filling);
      if (pot_range) add_ranges(answer, *pot_range);
      if (mix_range) add_filling_ranges(answer, *mix_range);
      answer["notes"] = to_json(notes);
      if (options.explain) answer["explanations"] = to_json(explanations);
      streams.out << answer.dump(2) << '\n';
    } else {
      streams.out << pot_text(geometry, options.units);
      if (filling) streams.out << filling_text(*filling, options.units);
      if (pot_range) streams.out << range_text(*pot_range, options.units);
      if (mix_range) streams.out << measure_out_range_text(*filling, *mix_range, options.units);
      streams.out << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explanations);
    }
    return exit_for(notes, options);
  }

 private:
  std::string file_;
  [[nodiscard]] std::string range_text(const PotRanges& ranges, UnitSystem units) const {
    const auto litres = [&](double ml) { return volume_text(ml / 1000, units); };
    const auto depth = [&](double cm) { return depth_text(depth_cm(cm), units); };
    return '\n' + text_table({range_.heading(), "from", "middle", "to"},
                             {{"volume", litres(ranges.volume_ml.low), litres(ranges.volume_ml.median), litres(ranges.volume_ml.high)},
                              {"filled depth", depth(ranges.depth_cm.low), depth(ranges.depth_cm.median), depth(ranges.depth_cm.high)}});
  }

  [[nodiscard]] std::string measure_out_range_text(const Filling& filling, const MixRanges& ranges, UnitSystem units) const {
    std::vector<std::vector<std::string>> rows;
    for (std::size_t k = 0; k < ranges.measure_out_l.size(); ++k) {
      const auto litres = [&](double Range::*end) {
        return volume_text(ranges.measure_out_l[k] ? std::optional((*ranges.measure_out_l[k]).*end) : std::nullopt, units);
      };
      rows.push_back({"loose " + filling.mix.components[k].name, litres(&Range::low), litres(&Range::median), litres(&Range::high)});
    }
    return ranges_text(ranges, range_.heading(), units) + '\n' + text_table({"measure out", "from", "middle", "to"}, rows);
  }

  std::string mix_file_;
  RangeOptions range_;
};

}  // namespace

std::unique_ptr<Verb> pot_verb() { return std::make_unique<Pot>(); }

}  // namespace gritwright::cli
