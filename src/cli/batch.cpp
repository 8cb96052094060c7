#include <nlohmann/json.hpp>
#include <variant>

#include "arguments.hpp"
#include "day_json.hpp"
#include "gritwright/report/day_report.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

Json to_answer_json(const PlannedDay& day, const DayAnswer& answer) { return day_json(day, answer); }
Json to_answer_json(const PlannedSeason& season, const SeasonAnswer& answer) { return season_json(season, answer); }
std::string to_text(const PlannedDay& day, const DayAnswer& answer, UnitSystem units) { return day_text(day, answer, units); }
std::string to_text(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units) { return season_text(season, answer, units); }

class BatchVerb final : public Verb {
 public:
  std::string name() const override { return "batch"; }
  std::string summary() const override { return "Litres of a repotting day or season: mixes, grain, screening, bags, lifts"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A repotting day or a season (.json); - reads standard input");
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
    if (options.json) {
      Json json = to_answer_json(plan, *answer);
      json["notes"] = to_json(notes);
      if (options.explain) json["explanations"] = to_json(explain(plan, *answer));
      streams.out << json.dump(2) << '\n';
    } else {
      streams.out << to_text(plan, *answer, options.units) << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explain(plan, *answer));
    }
    return exit_for(notes, options);
  }

  std::string file_;
};

}  // namespace

std::unique_ptr<Verb> batch_verb() { return std::make_unique<BatchVerb>(); }

}  // namespace gritwright::cli
