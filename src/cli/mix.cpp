#include <nlohmann/json.hpp>

#include "gritwright/models/ageing.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/pot_notes.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/range_report.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "mix_json.hpp"
#include "pot_tests.hpp"
#include "range_json.hpp"
#include "range_options.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

Json seasons_json(const AirOverYears& years) {
  Json rows = Json::array();
  for (const SeasonAir& season : years.seasons) {
    rows.push_back({{"season", season.season},
                    {"air_crumbs_staying", to_json(season.staying)},
                    {"air_crumbs_washed_down", to_json(season.washed_down)},
                    {"passing", to_json(season.grading)}});
  }
  return rows;
}

class MixVerb final : public Verb {
 public:
  std::string name() const override { return "mix"; }
  std::string summary() const override { return "What a mix is, and what it does in a pot"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A mix (.json); - reads standard input");
    argument(app, "--pot", pot_file_, "A pot (.json)", is_file_name);
    argument(app, "--depth-cm", depth_text_, "Straight walls of this depth instead of a pot", is_positive_number);
    either_or(app, "--depth-cm", "--pot");
    argument(app, "--pot-test", pot_test_file_, "Pot tests (.json) of this mix, to learn its water constants from",
             is_file_name);
    range_.declare(app);
    counted(app, "--seasons", seasons_, "The air in the pot after 1 to this many years, at most 30", 1, 30);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    if (const double depth = depth_text_.empty() ? 1 : plain_number(depth_text_); !(depth >= 0.01 && depth <= 1'000)) {
      streams.err << "--depth-cm wants a depth of 0.01 to 1000 cm\n";
      return Exit::wrong_usage;
    }
    if (seasons_ > 0 && !has_pot()) {
      streams.err << "--seasons wants a pot: give --pot or --depth-cm\n";
      return Exit::wrong_usage;
    }
    Problems problems;
    const auto file = mix_from(file_, streams.in);
    append(problems, file.problems());
    std::optional<Result<PotTestFile>> tests;
    if (!pot_test_file_.empty()) tests.emplace(pot_test_from(pot_test_file_, streams.in));
    if (tests) append(problems, tests->problems());
    if (tests && *tests) append(problems, in_file(without_volume((*tests)->readings, false), pot_test_file_));
    std::optional<Result<ContainerFile>> container;
    if (!pot_file_.empty()) container.emplace(container_from(pot_file_, streams.in));
    if (container) append(problems, container->problems());
    if (!problems.empty()) return refuse(problems, streams.err);
    Mix mix = file->mix;
    auto state = mix_state(mix);
    if (!state) return refuse(in_file(state.problems(), file_), streams.err);
    std::optional<Calibration> learnt;
    if (tests) learnt = learnt_from(**tests, mix, *state);
    if (learnt) {
      mix.water = learnt->constants;
      state = mix_state(mix);
    }

    std::optional<MixBackground> background;
    if (range_.wanted() || seasons_ > 0) {
      auto known = background_of(*file);
      if (!known) return refuse(known.problems(), streams.err);
      background = std::move(known).value();
      if (learnt) background->spread.belief = learnt->belief;
    }

    std::optional<PotWater> water;
    std::optional<PotGeometry> geometry;
    UncertainMix::Pot pot;
    if (container) {
      geometry.emplace((*container)->container);
      pot = *geometry;
      water = mix_in_pot(*state, mix.water, *geometry);
    } else if (!depth_text_.empty()) {
      water = mix_in_column(*state, mix.water, depth_cm(plain_number(depth_text_)));
      pot = depth_cm(plain_number(depth_text_));
    }
    Notes notes = file->notes;
    if (tests) append(notes, (*tests)->notes);
    if (learnt) append(notes, learnt->notes);
    if (container) append(notes, (*container)->notes);
    if (container) append(notes, notes_on_water_fill(*geometry));
    append(notes, state->notes);
    if (water) append(notes, water->notes);
    std::optional<Ranges> ranges;
    if (range_.wanted()) ranges = ranges_of(UncertainMix(mix, background->spread, pot));
    std::optional<AirOverYears> years;
    if (seasons_ > 0) {
      years = air_over_years(mix, background->spread, pot, background->breakdowns, static_cast<int>(seasons_), least_air_of_old_mix, range_.size(), on_all_cores());
      if (years) append(notes, years->notes);
    }
    answer(options, streams, mix, *state, water, geometry, ranges, years, notes);
    return exit_for(notes, options);
  }

 private:
  static std::optional<PotVolume> fill_volume(const std::optional<PotGeometry>& pot) {
    if (!pot) return std::nullopt;
    return pot->volume();
  }
  [[nodiscard]] bool has_pot() const { return !pot_file_.empty() || !depth_text_.empty(); }

  struct Ranges {
    MixRanges figures;
    std::vector<Narrowing> air;
    std::vector<Narrowing> water;
  };

  [[nodiscard]] Ranges ranges_of(const UncertainMix& mix) const {
    const SampleSize size = range_.size();
    const SliceRunner runner = on_all_cores();
    return {mix.ranges(size, runner), mix.what_would_narrow(MixFigure::air_filled_porosity, size, runner),
            mix.what_would_narrow(MixFigure::container_capacity, size, runner)};
  }

  void answer(const CommonOptions& options, Streams streams, const Mix& mix, const MixState& state,
              const std::optional<PotWater>& water, const std::optional<PotGeometry>& geometry, const std::optional<Ranges>& ranges,
              const std::optional<AirOverYears>& years, const Notes& notes) const {
    std::vector<Explanation> explanations;
    if (options.explain) explanations = water ? explain(mix, state, *water, geometry ? &geometry->container() : nullptr) : explain(mix, state);
    if (options.explain && geometry) {
      for (Explanation& more : explain(*geometry))
        if (more.figure == "volume_ml") explanations.push_back(std::move(more));
    }
    if (options.json) {
      Json json = mix_json(state);
      if (has_pot()) json["pot"] = water ? pot_water_json(*water, fill_volume(geometry), state.settled->bulk_density) : Json(nullptr);
      if (ranges) add_ranges(json, ranges->figures);
      if (ranges && water) {
        add_pot_ranges(json["pot"], ranges->figures);
        json["pot"]["narrowing"] = Json::array();
        add_narrowing(json["pot"]["narrowing"], ranges->air, mix, MixFigure::air_filled_porosity);
        add_narrowing(json["pot"]["narrowing"], ranges->water, mix, MixFigure::container_capacity);
      }
      if (years) json["pot"]["seasons"] = seasons_json(*years);
      json["notes"] = to_json(notes);
      if (options.explain) json["explanations"] = to_json(explanations);
      streams.out << json.dump(2) << '\n';
      return;
    }
    streams.out << mix_text(mix, state, options.units);
    if (water) streams.out << pot_water_text(*water, options.units);
    if (geometry && water && water->mix_volume) {
      const Mass wet = wet_mass(*water->mix_volume, state.settled->bulk_density, water->container_capacity);
      streams.out << pot_mass_text(geometry->volume(), wet, options.units);
    }
    if (ranges)
      streams.out << ranges_text(ranges->figures, range_.heading(), options.units) << narrowing_text(ranges->air, ranges->water, mix);
    if (years) streams.out << years_text(*years);
    streams.out << notes_text(notes, options.units);
    if (options.explain) streams.out << '\n' << explanation_text(explanations);
  }

  std::string file_;
  std::string pot_file_;
  std::string depth_text_;
  std::string pot_test_file_;
  RangeOptions range_;
  unsigned seasons_ = 0;
};

}  // namespace

std::unique_ptr<Verb> mix_verb() { return std::make_unique<MixVerb>(); }

}  // namespace gritwright::cli
