// `grade` as a process of its own, from cold, beside a Python script that does the same grading with NumPy.
#include <spawn.h>
#include <sys/wait.h>
#include <fcntl.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "support/paths.hpp"

extern char** environ;

namespace {

double milliseconds_of(std::vector<std::string> command) {
  std::vector<char*> arguments;
  for (std::string& word : command) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", O_WRONLY, 0);
  const auto start = std::chrono::steady_clock::now();
  pid_t child = 0;
  int status = 1;
  if (posix_spawnp(&child, arguments[0], &actions, nullptr, arguments.data(), environ) != 0 || waitpid(child, &status, 0) < 0 ||
      status != 0) {
    std::cerr << "could not run " << command[0] << '\n';
    std::exit(1);
  }
  const std::chrono::duration<double, std::milli> elapsed = std::chrono::steady_clock::now() - start;
  posix_spawn_file_actions_destroy(&actions);
  return elapsed.count();
}

double median_of(const std::vector<std::string>& command, int runs) {
  std::vector<double> times;
  for (int run = 0; run < runs; ++run) times.push_back(milliseconds_of(command));
  std::ranges::sort(times);
  return times[times.size() / 2];
}

}  // namespace

int main() {
  const std::string file = GRITWRIGHT_SOURCE_DIR "/tests/fixtures/published/boyer_2012_pine_bark.csv";
  const std::string script =
      "import sys, numpy as np\n"
      "rows = [l.split(',') for l in open(sys.argv[1]) if l[0].isdigit() or l.startswith('pan')]\n"
      "mass = np.array([float(r[1]) for r in rows]); size = np.array([float(r[0]) for r in rows[:-1]])\n"
      "passing = 100 - 100*np.cumsum(mass)[:-1]/mass.sum()\n"
      "print(np.exp(np.interp([10, 50, 90], passing[::-1], np.log(size[::-1]))))\n";
  const double ours = median_of({GRITWRIGHT_PROGRAM, "grade", file, "--json", "--band", "2-6"}, 41);
  const double peer = median_of({GRITWRIGHT_PYTHON, "-c", script, file}, 11);
  gritwright::bench::print({"grade, 12 sieves, a process from cold", "ms", ours, 15, "Python with NumPy", peer});
}
