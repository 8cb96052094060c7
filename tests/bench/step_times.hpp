#pragma once
// How long a step takes in the window, told apart from the pauses that the machine makes by itself.

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "bench_table.hpp"

namespace gritwright::bench {

inline double milliseconds_of(const std::vector<double>& sorted, std::size_t per_cent) { return sorted[(sorted.size() * per_cent - 1) / 100]; }

/// Milliseconds of all steps of all passes.
struct StepTimes {
  double median = 0;
  double late = 0;      ///< 99 of 100, each step at its shortest of all passes: a pause of the machine meets a step by chance, what a step does it does each time
  double as_came = 0;  ///< 99 of 100, pauses included
};

template <class Step>
StepTimes step_times(int steps, Step step) {
  constexpr int passes = 3;
  std::vector<double> all;
  std::vector<double> shortest(static_cast<std::size_t>(steps), HUGE_VAL);
  for (int pass = 0; pass < passes; ++pass) {
    for (int i = 0; i < steps; ++i) {
      const auto start = std::chrono::steady_clock::now();
      step(i);
      const double took = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
      all.push_back(took);
      double& least = shortest[static_cast<std::size_t>(i)];
      least = std::min(least, took);
    }
  }
  std::ranges::sort(all);
  std::ranges::sort(shortest);
  return {all[all.size() / 2], milliseconds_of(shortest, 99), milliseconds_of(all, 99)};
}

/// Square roots that take as long as a step at its median, as often: their 99 of 100 are what this machine makes of any such step.
inline double roots_as_came(int steps, double median) {
  const auto took = [](long count) {
    const auto start = std::chrono::steady_clock::now();
    volatile double kept = 1.1;
    double root = kept;
    for (long i = 0; i < count; ++i) root = std::sqrt(root * 1.7 + .3);
    kept = root;
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
  };
  constexpr long many = 1'000'000;
  std::vector<double> of_many(20);
  for (double& one : of_many) one = took(many);
  std::ranges::sort(of_many);
  const long count = std::lround(many * median / of_many[of_many.size() / 2]);
  std::vector<double> times(static_cast<std::size_t>(steps));
  for (double& one : times) one = took(count);
  std::ranges::sort(times);
  return milliseconds_of(times, 99);
}

/// The rows of a step that must keep 16 ms at the median and 33 in 99 of 100.
inline void print_steps(const std::string& what, const StepTimes& times, int steps, Row peer = {}) {
  print({what, "ms", times.median, 16, peer.peer, peer.theirs});
  print({"  99 of 100", "ms", times.late, 33});
  print({"  99 of 100 as they came, pauses of the machine included", "ms", times.as_came, {}, "square roots for as long as the median", roots_as_came(steps, times.median)});
}

}  // namespace gritwright::bench
