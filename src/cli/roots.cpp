#include <algorithm>
#include <nlohmann/json.hpp>

#include "arguments.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/root_mix.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/root_plan_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "roots_json.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

/// "up=3"
std::optional<StoppedCut> parse_stop(const std::string& text) {
  const std::size_t equals = text.find('=');
  if (equals == std::string::npos) return std::nullopt;
  const auto direction = direction_named(text.substr(0, equals));
  const std::string depth = text.substr(equals + 1);
  if (!direction || !is_plain_number(depth).empty()) return std::nullopt;
  return StoppedCut{*direction, length_cm(plain_number(depth))};
}

std::string is_stop(const std::string& text) {
  return parse_stop(text) ? "" : text + " is no stop; expected a direction and how far the cut got in cm, like up=3";
}

/// New mix around the root mass of plan A.
struct NewMix {
  Mix mix;
  MixState state;
  std::optional<PotWater> water;
  std::optional<std::vector<LooseVolume>> measure_out;
};

NewMix new_mix(const RootMassPlan& plan, const WorkedPlan& worked, const Mix& mix, const MixState& state) {
  const MixedVolume mixed = mixed_volume_to_fill(worked.fill, mix);
  NewMix filling{mix, state, std::nullopt, component_volumes(mixed, state)};
  if (worked.fits) filling.water = mix_in_pot(state, mix.water, PotGeometry(pot_without_root_mass(plan, worked)));
  return filling;
}

std::optional<double> litres_of(const NewMix& filling, std::size_t component) {
  return filling.measure_out ? std::optional(in_l((*filling.measure_out)[component])) : std::nullopt;
}

Json mix_json(const NewMix& filling, const RootMassPlan& plan, const WorkedPlan& worked) {
  Json json{{"share_of_pot", worked.fits ? Json(new_mix_share(plan, worked)) : Json(nullptr)}, {"air_filled_porosity", nullptr},
            {"trapped_air", nullptr}, {"container_capacity", nullptr}, {"available_in_pot", nullptr}};
  if (filling.water) {
    json["air_filled_porosity"] = filling.water->air_filled_porosity.value();
    json["trapped_air"] = filling.water->trapped_air.value();
    json["container_capacity"] = filling.water->container_capacity.value();
    json["available_in_pot"] = filling.water->available_in_pot.value();
  }
  json["measure_out"] = Json::array();
  for (std::size_t i = 0; i < filling.mix.components.size(); ++i)
    json["measure_out"].push_back({{"name", filling.mix.components[i].name}, {"loose_l", to_json(litres_of(filling, i))}});
  return json;
}

std::string mix_text(const NewMix& filling, const RootMassPlan& plan, const WorkedPlan& worked, UnitSystem units) {
  std::string text = "\n";
  if (filling.water)
    text += "new mix only, " + percent_text(new_mix_share(plan, worked), 0) + " of the pot; what the root mass holds is not known\n" +
            pot_water_text(*filling.water, units) + '\n';
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < filling.mix.components.size(); ++i)
    rows.push_back({filling.mix.components[i].name, volume_text(litres_of(filling, i), units)});
  return text + text_table({"measure out for plan A", "loose"}, rows);
}

/// Cuts that permission or space do not allow, or that would take most of the root mass, are no plan at all; what the group alone
/// does not bear is staged.
bool impossible(const WorkedPlan& worked) {
  return std::ranges::any_of(worked.cautions, [](const Note& note) {
    return note.code == "root-plan.still-too-large" || note.code == "root-plan.corner-forbidden" ||
           note.code == "root-plan.larger-than-any-plan";
  });
}

class Roots final : public Verb {
 public:
  std::string name() const override { return "roots"; }
  std::string summary() const override { return "What comes off a root mass, where, and the new mix around it"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A root-mass plan (.json); - reads standard input");
    argument(app, "--mix", mix_file_, "A mix (.json) to fill the rest with");
    repeatable(app, "--stopped", stopped_, "At the bench: no more comes off there, like up=3 (cm); the rest is worked out anew", is_stop);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    Problems problems;
    const auto file = root_mass_plan_from(file_, streams.in);
    append(problems, file.problems());
    std::optional<Result<MixFile>> mix;
    if (!mix_file_.empty()) mix.emplace(mix_from(mix_file_, streams.in));
    if (mix) append(problems, mix->problems());
    if (!problems.empty()) return refuse(problems, streams.err);
    RootMassPlan plan = file->plan;
    take_stops(plan);
    const auto answer = work_out(plan, PlanDetail::full, on_all_cores());
    if (!answer) return refuse(in_file(answer.problems(), file_), streams.err);
    const WorkedPlan& first = answer->plans.front();

    Notes notes = file->notes;
    append(notes, answer->notes);
    std::optional<NewMix> filling;
    if (mix) {
      const auto state = mix_state((*mix)->mix);
      if (!state) return refuse(in_file(state.problems(), mix_file_), streams.err);
      filling = new_mix(plan, first, (*mix)->mix, *state);
      append(notes, (*mix)->notes);
      append(notes, state->notes);
      if (filling->water) append(notes, filling->water->notes);
    }
    const auto growth = first.fits ? std::nullopt : smallest_fitting_growth(plan);
    if (options.json) {
      Json json = roots_json(plan, *answer, growth);
      if (filling) json["mix"] = mix_json(*filling, plan, first);
      json["notes"] = to_json(notes);
      if (options.explain) json["explanations"] = to_json(explain(plan, *answer));
      streams.out << json.dump(2) << '\n';
    } else {
      streams.out << root_plan_text(plan, *answer, growth, options.units);
      if (filling) streams.out << mix_text(*filling, plan, first, options.units);
      streams.out << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explain(plan, *answer));
    }
    append(notes, first.cautions);
    return impossible(first) ? Exit::no_solution : exit_for(notes, options);
  }

 private:
  /// What is entered at the bench stands before what the file says of that direction.
  void take_stops(RootMassPlan& plan) const {
    for (const std::string& text : stopped_) {
      const StoppedCut stop = *parse_stop(text);
      std::erase_if(plan.stopped, [&](const StoppedCut& written) { return written.direction == stop.direction; });
      plan.stopped.push_back(stop);
    }
  }

  std::string file_;
  std::string mix_file_;
  std::vector<std::string> stopped_;
};

}  // namespace

std::unique_ptr<Verb> roots_verb() { return std::make_unique<Roots>(); }

}  // namespace gritwright::cli
