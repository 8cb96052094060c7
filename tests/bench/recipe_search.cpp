// Whole-number recipes proven best, for a shelf of invented bags; beside it SciPy's differential evolution on the same objective
// and plain enumeration in NumPy.
#include <fmt/format.h>

#include <array>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <iostream>
#include <string>
#include <thread>
#include <vector>

#include "bench_table.hpp"
#include "gritwright/models/recipe_search.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

constexpr std::array sieves_mm{0.5, 1.0, 2.0, 2.8, 4.0, 5.6, 8.0, 11.2};

/// Bag k of the shelf; recipe_search_peer.py has the same.
Candidate bag(int k) {
  Candidate made;
  Component& component = made.component;
  component.name = fmt::format("bag {:02}", k);
  const double bulk = 350 + 37.0 * (k * 7 % 23);
  component.grain.bulk_density = bulk_g_l(bulk);
  component.grain.particle_density = particle_g_l(bulk / (0.48 + 0.01 * (k % 8)));
  component.grain.skeletal_density = skeletal_g_l(2650);
  Grading grading;
  const double dust = 0.01 * (k % 6), finest = std::pow(1.35, k % 7), coarsest = finest * (1.8 + 0.3 * (k % 5));
  for (const double sieve : sieves_mm)
    grading.points.push_back({aperture_mm(sieve), Passing(dust + (1 - dust) * std::clamp(std::log(sieve / finest) / std::log(coarsest / finest), 0.0, 1.0))});
  component.sizes = grading;
  return made;
}

enum class Case { easy, air_against_water };

DesignProblem problem(int bags, RecipeForm form, Case kind) {
  DesignProblem made;
  for (int k = 0; k < bags; ++k) made.candidates.push_back(bag(k));
  Container tray;
  tray.rim = {length_cm(28), length_cm(20)};
  tray.base = Section{length_cm(24), length_cm(16)};
  tray.depth = depth_cm(6);
  made.pots["tray"] = tray;
  made.form = form;
  const bool easy = kind == Case::easy;
  made.wishes = {{BandShare{aperture_mm(2), aperture_mm(5.6)}, 75.0, {}, false, 1},
                 {FinerShare{aperture_mm(1)}, {}, 3.0, false, 1},
                 {FigureInPot{PotFigure::air_filled_porosity, "tray"}, easy ? 0.18 : 0.25, {}, false, 1},
                 {FigureInPot{PotFigure::container_capacity, "tray"}, easy ? 0.42 : 0.50, {}, false, 1}};
  return made;
}

/// Slices on two threads.
void on_two_threads(std::size_t count, const std::function<void(std::size_t)>& slice) {
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < count; i = next++) slice(i);
  };
  const std::jthread other(work);
  work();
}

struct Timed {
  DesignAnswer answer;
  double seconds = 0;
  double of_processor = 0;  ///< of both threads together, which other work on the machine changes less
};

Timed searched(const DesignProblem& problem, int runs) {
  SearchControl control;
  control.runner = on_two_threads;
  std::vector<double> times, of_processor;
  Timed timed;
  for (int run = 0; run < runs; ++run) {
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t spent = std::clock();
    timed.answer = design(problem, control).value();
    of_processor.push_back(static_cast<double>(std::clock() - spent) / CLOCKS_PER_SEC);
    times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
  }
  const auto median = [](std::vector<double>& all) {
    std::ranges::sort(all);
    return all[all.size() / 2];
  };
  timed.seconds = median(times);
  timed.of_processor = median(of_processor);
  return timed;
}

struct Peer {
  double seconds = 0;
  double score = 0;
};

struct Peers {
  /// By case: differential evolution one recipe at a time, a generation at a time, plain enumeration.
  std::array<std::array<Peer, 3>, 2> cases;
  std::string version;
};

/// 12 bags, up to 4 of them, up to 12 parts.
Peers peers() {
  const std::string command = std::string(GRITWRIGHT_PYTHON) + " \"" GRITWRIGHT_SOURCE_DIR "/tests/bench/recipe_search_peer.py\"";
  Peers answer;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return answer;
  bool complete = true;
  for (auto& methods : answer.cases)
    for (Peer& peer : methods) complete = complete && std::fscanf(pipe, "%lf %lf", &peer.seconds, &peer.score) == 2;
  std::array<char, 200> version{};
  if (complete && std::fscanf(pipe, " %199[^\n]", version.data()) == 1) answer.version = version.data();
  pclose(pipe);
  return answer;
}

const char* name(Case kind) { return kind == Case::easy ? "easy" : "air against water"; }

}  // namespace

int main(int argc, char**) {
  const bool without_peers = argc > 1;
  std::array<Timed, 2> small;
  const auto row = [](const std::string& what, const Timed& timed, double limit_s) {
    const std::string proof = timed.answer.proven ? "proven" : fmt::format("gap {:.2f}", timed.answer.gap.value_or(0));
    bench::print({fmt::format("{}: {}, {} examined, {:.3f} s of processor", what, proof, timed.answer.examined, timed.of_processor), "s", timed.seconds, limit_s});
  };
  struct Size {
    int bags;
    RecipeForm form;
    double limit_s;
  };
  for (const Size& size : {Size{12, {true, 12, 4}, 0.1}, Size{24, {true, 12, 4}, 1}, Size{40, {true, 12, 4}, 6}, Size{40, {true, 20, 6}, 1}}) {
    for (const Case kind : {Case::easy, Case::air_against_water}) {
      const DesignProblem asked = problem(size.bags, size.form, kind);
      const Timed timed = searched(asked, size.bags == 12 ? 15 : 1);
      if (size.bags == 12) small[static_cast<std::size_t>(kind)] = timed;
      row(fmt::format("recipes of {} bags, {} in {} parts, {}", size.bags, size.form.components, size.form.total, name(kind)), timed, size.limit_s);
    }
  }
  if (without_peers) return 0;

  const Peers theirs = peers();
  if (theirs.version.empty()) {
    std::cerr << "the peers did not run\n";
    return 1;
  }
  bool as_good = true;
  for (const Case kind : {Case::easy, Case::air_against_water}) {
    const auto index = static_cast<std::size_t>(kind);
    const auto& [one_at_a_time, generation_at_a_time, enumeration] = theirs.cases[index];
    const double seconds = small[index].seconds, score = small[index].answer.recipes.front().score;
    const auto line = [&](const char* what, const Peer& peer) {
      bench::print({fmt::format("recipes of 12 bags, {}: score {:.4f}", name(kind), score), "s", seconds, {}, fmt::format("{}, {}: score {:.4f}", what, theirs.version, peer.score), peer.seconds});
    };
    line("evolution as it comes", one_at_a_time);
    line("evolution, vectorised", generation_at_a_time);
    line("enumeration", enumeration);
    // The peer integrates the pot over 64 points.
    constexpr double same = 1e-4;
    as_good = as_good && score <= one_at_a_time.score + same && score <= generation_at_a_time.score + same && std::abs(score - enumeration.score) <= same;
  }
  if (!as_good) std::cerr << "a peer found a better recipe\n";
  return as_good ? 0 : 1;
}
