#pragma once
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "program.hpp"
#include "support/paths.hpp"

namespace gritwright::cli {

/// What one call of the program answered.
struct Answer {
  Exit exit;
  std::string out;
  std::string err;
  [[nodiscard]] nlohmann::json json() const { return nlohmann::json::parse(out); }
};

inline Answer run(std::vector<std::string> arguments, const std::string& standard_input = "") {
  std::istringstream in(standard_input);
  std::ostringstream out;
  std::ostringstream err;
  const Exit exit = run_program(std::move(arguments), {in, out, err});
  return {exit, out.str(), err.str()};
}

inline std::string fixture(const std::string& name) { return std::string(GRITWRIGHT_SOURCE_DIR) + "/tests/fixtures/" + name; }

}  // namespace gritwright::cli
