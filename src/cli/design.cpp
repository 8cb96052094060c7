#include <algorithm>
#include <chrono>
#include <nlohmann/json.hpp>
#include <mutex>

#include "arguments.hpp"
#include "design_json.hpp"
#include "gritwright/models/recipe_search.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/design_report.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

class DesignVerb final : public Verb {
 public:
  std::string name() const override { return "design"; }
  std::string summary() const override { return "Recipes in parts from what is on the shelf, best first"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A design problem (.json); - reads standard input");
    counted(app, "--threads", threads_, "Threads to search with; the answer is the same", 1, 64);
    flag(app, "--progress", progress_, "Tell on standard error how far the search has come");
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    const auto file = design_problem_from(file_, streams.in);
    if (!file) return refuse(file.problems(), streams.err);
    const DesignProblem& problem = file->problem;
    if (auto problems = check_tested_sizes(problem); !problems.empty()) return refuse(in_file(std::move(problems), file_), streams.err);
    for (const Note& note : wishes_out_of_reach(problem)) streams.err << notes_text({note}, options.units);

    auto answer = design(problem, control(streams.err));
    if (!answer) return refuse(in_file(answer.problems(), file_), streams.err);
    Notes notes = file->notes;
    append(notes, answer->notes);
    if (options.json) {
      Json json = design_json(problem, *answer);
      json["notes"] = to_json(notes);
      if (options.explain) json["explanations"] = to_json(explain_design());
      streams.out << json.dump(2) << '\n';
    } else {
      streams.out << design_text(problem, *answer, options.units) << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explain_design());
    }
    return answer->recipes.empty() ? Exit::no_solution : exit_for(notes, options);
  }

 private:
  SearchControl control(std::ostream& err) {
    SearchControl control;
    control.runner = threads_ > 0 ? slice_threads(threads_) : on_all_cores();
    if (progress_) control.progress = [this, &err](const SearchProgress& progress) { tell(progress, err); };
    control.contradictions_time_is_up = [this] {
      const std::scoped_lock lock(telling_);
      const auto now = std::chrono::steady_clock::now();
      if (!contradictions_since_) contradictions_since_ = now;
      return now - *contradictions_since_ > std::chrono::duration<double>(contradictions_limit_s);
    };
    return control;
  }

  void tell(const SearchProgress& progress, std::ostream& err) {
    const std::scoped_lock lock(telling_);
    const auto percent = static_cast<int>(100 * static_cast<double>(progress.covered) / static_cast<double>(progress.whole));
    if (percent / 5 == told_ / 5 && progress.stage == told_stage_) return;
    told_ = percent;
    told_stage_ = progress.stage;
    err << percent << " % of " << progress.whole << " recipes\n" << std::flush;
  }

  std::string file_;
  unsigned threads_ = 0;
  bool progress_ = false;
  std::mutex telling_;
  int told_ = 0;
  int told_stage_ = 1;
  std::optional<std::chrono::steady_clock::time_point> contradictions_since_;
};

}  // namespace

std::unique_ptr<Verb> design_verb() { return std::make_unique<DesignVerb>(); }

}  // namespace gritwright::cli
