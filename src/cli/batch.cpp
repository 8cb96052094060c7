#include <nlohmann/json.hpp>
#include <variant>

#include "arguments.hpp"
#include "day_json.hpp"
#include "gritwright/models/day_ranges.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/day_report.hpp"
#include "gritwright/report/range_report.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "range_json.hpp"
#include "range_options.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

Json to_answer_json(const PlannedDay& day, const DayAnswer& answer) { return day_json(day, answer); }
Json to_answer_json(const PlannedSeason& season, const SeasonAnswer& answer) { return season_json(season, answer); }
std::string to_text(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) { return day_text(day, answer, units); }
std::string to_text(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units) { return season_text(season, answer, units); }

const PlannedDay& ground_of(const PlannedDay& day) { return day; }
const PlannedDay& ground_of(const PlannedSeason& season) { return season.ground; }
DayRanges ranges_of(const PlannedDay& day, const std::vector<MixSpread>& spreads, std::uint64_t seed) {
  return day_ranges(day, spreads, {512, seed}, on_all_cores());
}
DayRanges ranges_of(const PlannedSeason& season, const std::vector<MixSpread>& spreads, std::uint64_t seed) {
  return season_ranges(season, spreads, {256, seed}, on_all_cores());
}
void add_all_ranges(Json& json, const DayAnswer& answer, const DayRanges& ranges) {
  add_ranges(json, ranges);
  add_taken_ranges(json, answer, ranges);
}
void add_all_ranges(Json& json, const SeasonAnswer&, const DayRanges& ranges) { add_ranges(json, ranges); }

class BatchVerb final : public Verb {
 public:
  std::string name() const override { return "batch"; }
  std::string summary() const override { return "Litres of a repotting day or season: mixes, grain, screening, bags, lifts"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A repotting day or a season (.json); - reads standard input");
    range_.declare(app);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    const auto file = planned_day_from(file_, streams.in);
    if (!file) return refuse(file.problems(), streams.err);
    return std::visit([&](const auto& plan) { return tell(plan, file->notes, options, streams); }, file->plan);
  }

 private:
  template <class Plan>
  Exit tell(const Plan& plan, Notes notes, const CommonOptions& options, Streams streams) const {
    const auto answer = work_out(plan);
    if (!answer) return refuse(in_file(answer.problems(), file_), streams.err);
    append(notes, answer->notes);
    std::optional<DayRanges> ranges;
    if (range_.wanted()) {
      const auto spreads = spreads_of(ground_of(plan));
      if (!spreads) return refuse(spreads.problems(), streams.err);
      ranges = ranges_of(plan, *spreads, range_.size().seed);
    }
    if (options.json) {
      Json json = to_answer_json(plan, *answer);
      if (ranges) add_all_ranges(json, *answer, *ranges);
      json["notes"] = to_json(notes);
      if (options.explain) json["explanations"] = to_json(explain(plan, *answer));
      streams.out << json.dump(2) << '\n';
    } else {
      streams.out << to_text(plan, *answer, options.units);
      if (ranges) streams.out << ranges_text(*ranges, answer->mixes, answer->components, range_.heading(), options.units);
      streams.out << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explain(plan, *answer));
    }
    return exit_for(notes, options);
  }

  std::string file_;
  RangeOptions range_;
};

}  // namespace

std::unique_ptr<Verb> batch_verb() { return std::make_unique<BatchVerb>(); }

}  // namespace gritwright::cli
