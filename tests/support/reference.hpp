#pragma once
// Checks against a library that is not ours: a script under tests/reference gets one case a line and answers one line a case.

#include <catch2/catch.hpp>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <locale>
#include <sstream>
#include <string>
#include <vector>

#include "support/paths.hpp"

namespace gritwright::reference {

using Rows = std::vector<std::vector<double>>;

/// Runs tests/reference/`script` over `cases` and returns its answers. The script's lines that begin with # (its versions) are
/// printed. Fails the test if the script does.
inline Rows answers(const std::string& script, const Rows& cases) {
  const auto input = std::filesystem::temp_directory_path() / (script + "." + std::to_string(getpid()) + ".txt");
  {
    std::ofstream stream(input);
    stream.imbue(std::locale::classic());
    stream.precision(17);
    for (const auto& row : cases) {
      for (const double value : row) stream << value << ' ';
      stream << '\n';
    }
  }
  const std::string command =
      "'" GRITWRIGHT_PYTHON "' '" GRITWRIGHT_SOURCE_DIR "/tests/reference/" + script + "' '" + input.string() + "'";
  std::string output;
  FILE* const pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  char buffer[4096];
  while (const std::size_t count = std::fread(buffer, 1, sizeof buffer, pipe)) output.append(buffer, count);
  const int status = pclose(pipe);
  std::filesystem::remove(input);
  INFO(command);
  REQUIRE(status == 0);

  Rows rows;
  std::istringstream lines(output);
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with('#')) {
      std::printf("%s\n", line.c_str());
      continue;
    }
    std::istringstream numbers(line);
    numbers.imbue(std::locale::classic());
    std::vector<double> row;
    for (double value = 0; numbers >> value;) row.push_back(value);
    rows.push_back(row);
  }
  REQUIRE(rows.size() == cases.size());
  return rows;
}

}  // namespace gritwright::reference
