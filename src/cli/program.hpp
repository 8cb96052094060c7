#pragma once
#include <istream>
#include <memory>
#include <ostream>
#include <string>
#include <vector>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"

namespace CLI {
class App;
}

namespace gritwright::cli {

/// What the process ends with; the numbers are part of the contract.
enum class Exit { done = 0, strict_warnings = 1, wrong_usage = 2, input_refused = 3, file_trouble = 4, no_solution = 5 };

struct Streams {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
};

/// Options every verb understands.
struct CommonOptions {
  bool json = false;
  bool explain = false;
  bool laboratory = false;
  bool strict = false;
  UnitSystem units = UnitSystem::metric;
};

/// A verb of the command line: names its arguments, then runs on streams, so that tests can call it in process.
class Verb {
 public:
  virtual ~Verb() = default;
  [[nodiscard]] virtual std::string name() const = 0;
  [[nodiscard]] virtual std::string summary() const = 0;
  virtual void declare(CLI::App& app) = 0;
  virtual Exit run(const CommonOptions& options, Streams streams) = 0;
};

[[nodiscard]] std::vector<std::unique_ptr<Verb>> all_verbs();

/// Runs `gritwright ARGUMENTS...` (without the program's name).
[[nodiscard]] Exit run_program(std::vector<std::string> arguments, Streams streams);

/// Writes each problem on a line of its own to `err` and gives the exit it stands for: 4 if a file is in trouble, else 3.
Exit refuse(const Problems& problems, std::ostream& err);

/// Exit of a verb that answered with `notes`: warnings count only with --strict.
[[nodiscard]] Exit exit_for(const Notes& notes, const CommonOptions& options);

}  // namespace gritwright::cli
