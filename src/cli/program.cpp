#include "program.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <set>

#include "gritwright/report/messages.hpp"

namespace gritwright::cli {

namespace {

/// Every verb takes all of them; its help lists those that change its answer.
void declare_common(CLI::App& app, const std::string& verb, CommonOptions& options) {
  const auto listed_if = [](bool changes_answer, CLI::Option* option) {
    if (!changes_answer) option->group("");
  };
  app.add_flag("--json", options.json, "Answer as JSON, for programs");
  listed_if(verb != "log", app.add_flag("--explain", options.explain, "Add formula, inputs and source behind each figure"));
  listed_if(verb == "grade", app.add_flag("--laboratory", options.laboratory, "Add the laboratory figures"));
  app.add_flag("--strict", options.strict, "Exit with 1 if there are warnings");
  listed_if(verb != "catalogue",
            app.add_option_function<std::string>(
                   "--units", [&options](const std::string& system) { options.units = system == "us" ? UnitSystem::us : UnitSystem::metric; },
                   "Units of the text: metric or us (JSON is always metric)")
                ->check(CLI::IsMember({"metric", "us"})));
}

// Trouble with reaching the file, as opposed to what stands in it.
bool is_file_trouble(const Problem& problem) {
  static const std::set<std::string> codes{"export.left-out", "file.missing", "file.no-name", "file.unreadable", "file.is-folder",
                                            "file.no-access", "file.no-catalogue",
                                            "file.damaged", "file.disk-full",  "file.gone",      "file.locked",
                                            "file.newer-version", "file.other-kind", "file.outside-folder", "file.read-only", "file.trouble",
                                            "file.write-failed", "workbook.none-yet", "workbook.not-migrated", "workbook.read-only", "workbook.record-unreadable"};
  return codes.contains(problem.code);
}

}  // namespace

Exit refuse(const Problems& problems, std::ostream& err) {
  for (const Problem& problem : problems) {
    const std::string place = place_text(problem);
    err << place << (place.empty() ? "" : ": ") << sentence(problem) << '\n';
  }
  return std::ranges::any_of(problems, is_file_trouble) ? Exit::file_trouble : Exit::input_refused;
}

Exit exit_for(const Notes& notes, const CommonOptions& options) {
  const bool warned = std::ranges::any_of(notes, [](const Note& note) { return note.level == Level::warning; });
  return warned && options.strict ? Exit::strict_warnings : Exit::done;
}

Exit run_program(std::vector<std::string> arguments, Streams streams) {
  CLI::App app("From a weighed sieve sample to a mix in a pot", "gritwright");
  app.set_version_flag("--version", "gritwright " GRITWRIGHT_VERSION "\nbuilt on " GRITWRIGHT_BUILT_ON);
  app.require_subcommand(1);
  CommonOptions options;
  const auto verbs = all_verbs();
  std::vector<CLI::App*> commands;
  for (const auto& verb : verbs) {
    commands.push_back(app.add_subcommand(verb->name(), verb->summary()));
    verb->declare(*commands.back());
    declare_common(*commands.back(), verb->name(), options);
  }
  if (!arguments.empty() && !arguments.front().starts_with('-') && std::ranges::none_of(verbs, [&](const auto& verb) { return verb->name() == arguments.front(); })) {
    const std::string& asked = arguments.front();
    std::string near;
    for (const auto& verb : verbs) {
      const std::string name = verb->name();
      if (name.starts_with(asked) || asked.starts_with(name)) near.append(near.empty() ? "" : " or ").append(name);
    }
    streams.err << "There is no subcommand " << asked;
    if (!near.empty()) streams.err << "; did you mean " << near << "?";
    streams.err << "\nRun with --help for more information.\n";
    return Exit::wrong_usage;
  }
  try {
    std::ranges::reverse(arguments);  // the parser takes them from the back
    app.parse(arguments);
  } catch (const CLI::ParseError& error) {
    const int code = app.exit(error, streams.out, streams.err);
    return code == 0 ? Exit::done : Exit::wrong_usage;
  }
  for (std::size_t index = 0; index < verbs.size(); ++index) {
    if (commands[index]->parsed()) return verbs[index]->run(options, streams);
  }
  return Exit::wrong_usage;
}

}  // namespace gritwright::cli
