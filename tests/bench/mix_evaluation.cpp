// One full evaluation of a recipe (blend, packing, capacity and air in a tapered pot) beside the same chain in NumPy.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "gritwright/models/mix_evaluator.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

double checksum = 0;  // what is computed must be used, or the compiler leaves it out

template <class Work>
double microseconds_of(int repeats, Work work) {
  std::vector<double> times;
  for (int run = 0; run < 9; ++run) {
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < repeats; ++i) checksum += work(i);
    times.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count() / repeats);
  }
  std::ranges::sort(times);
  return times[times.size() / 2];
}

struct Shelf {
  int bags = 5;
  int sieves = 10;
  double spread = 0;  ///< above 0 each bag has its own sieves, so that no two sizes are shared
};

/// Invented gradings, from .5 to 11.3 mm however many sieves there are.
EvaluatorSetup bags(const Shelf& shelf) {
  EvaluatorSetup setup;
  for (int k = 0; k < shelf.bags; ++k) {
    Component bag;
    bag.name = "bag " + std::to_string(k + 1);
    bag.grain.bulk_density = bulk_g_l(450 + 150 * (k % 5));
    bag.grain.particle_density = particle_g_l(900 + 280 * (k % 5));
    bag.grain.skeletal_density = skeletal_g_l(2400);
    Grading grading;
    for (int i = 0; i < shelf.sieves; ++i) {
      const double along = static_cast<double>(i) / (shelf.sieves - 1);
      grading.points.push_back({aperture_mm(0.5 * std::pow(1.4142, 9 * along) * (1 + shelf.spread * k)), Passing(std::pow(along, 0.5 + 0.5 * (k % 5)))});
    }
    bag.sizes = grading;
    setup.candidates.push_back(bag);
  }
  Container tray;
  tray.rim = {length_cm(28), length_cm(20)};
  tray.base = Section{length_cm(24), length_cm(16)};
  tray.depth = depth_cm(6);
  setup.pots.push_back({PotGeometry(tray), {}});
  return setup;
}

std::vector<Dose> recipe(int i, std::size_t bags_in_it = 5) {
  std::vector<Dose> doses;
  for (std::size_t k = 0; k < bags_in_it; ++k) doses.push_back({k, 1 + static_cast<double>((i >> k) % 7)});
  return doses;
}

double capacity_one_at_a_time(const EvaluatorSetup& setup, const std::vector<Dose>& doses) {
  Mix mix;
  for (const Dose& dose : doses) {
    mix.components.push_back(setup.candidates[dose.candidate]);
    mix.components.back().parts = Parts(dose.parts);
  }
  const Result<MixState> state = mix_state(mix);
  return mix_in_pot(*state, setup.water, setup.pots.front().pot)->container_capacity.value();
}

struct PeerAnswer {
  double shared_us = 0;
  double distinct_us = 0;
  double capacity = 0;
  std::string version;
};

PeerAnswer peer() {
  const std::string command = std::string(GRITWRIGHT_PYTHON) + " \"" GRITWRIGHT_SOURCE_DIR "/tests/bench/mix_evaluation_peer.py\"";
  PeerAnswer answer;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return answer;
  std::array<char, 200> version{};
  if (std::fscanf(pipe, "%lf %lf %lf %199[^\n]", &answer.shared_us, &answer.distinct_us, &answer.capacity, version.data()) == 4)
    answer.version = version.data();
  pclose(pipe);
  return answer;
}

double evaluation_us(const EvaluatorSetup& setup) {
  const MixEvaluator evaluator(setup);
  MixEvaluator::Workspace workspace;
  RecipeFigures figures;
  std::vector<std::vector<Dose>> recipes;
  for (int i = 0; i < 256; ++i) recipes.push_back(recipe(i, setup.candidates.size()));
  return microseconds_of(20000, [&](int i) {
    evaluator.evaluate(recipes[static_cast<std::size_t>(i) % recipes.size()], workspace, figures);
    return figures.container_capacity.front();
  });
}

}  // namespace

int main() {
  const PeerAnswer theirs = peer();
  if (theirs.version.empty()) {
    std::cerr << "the peer did not run\n";
    return 1;
  }
  const EvaluatorSetup shared = bags({}), distinct = bags({5, 10, 0.04});
  const double ours = capacity_one_at_a_time(shared, recipe(0));
  // The peer integrates the pot over 64 points.
  if (!(std::abs(ours - theirs.capacity) < 1e-6)) {
    std::cerr << fmt::format("capacities differ: {} here, {} there\n", ours, theirs.capacity);
    return 1;
  }
  bench::print({"recipe of 5 bags x 10 sieves: packing, water and air in a pot", "us", evaluation_us(shared), 4, theirs.version, theirs.shared_us});
  bench::print({"recipe of 50 distinct sizes", "us", evaluation_us(distinct), 8, theirs.version, theirs.distinct_us});
  bench::print({"recipe of 5 bags x 20 sieves, the sieves doubled", "us", evaluation_us(bags({5, 20, 0}))});
  bench::print({"recipe of 10 bags x 10 sieves, the components doubled", "us", evaluation_us(bags({10, 10, 0}))});
  bench::print({"recipe by itself, nothing prepared", "us", microseconds_of(200, [&](int i) { return capacity_one_at_a_time(shared, recipe(i)); }), {},
                theirs.version, theirs.shared_us});
  bench::print({"preparing 5 candidates and a pot, once", "us", microseconds_of(3, [&](int) { return static_cast<double>(MixEvaluator(shared).candidates()); })});
  return std::isfinite(checksum) ? 0 : 1;
}
