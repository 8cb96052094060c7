// A day of 60 trees and 12 mixes, worked out anew: litres, batches, screening, buying and the water of every full pot.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "gritwright/models/day_litres.hpp"

using namespace gritwright;

namespace {

Component bag(int k) {
  Component made;
  made.name = "bag " + std::to_string(k);
  made.parts = Parts(1 + k % 3);
  made.grain.bulk_density = bulk_g_l(450 + 60 * (k % 6));
  made.grain.particle_density = particle_g_l(900 + 130 * (k % 6));
  made.grain.skeletal_density = skeletal_g_l(2400);
  Grading grading;
  for (int i = 0; i < 10; ++i)
    grading.points.push_back({aperture_mm(0.5 * (i + 1) * (1 + 0.03 * k)), Passing(i / 9.0)});
  made.sizes = grading;
  return made;
}

PlannedDay large_day() {
  PlannedDay day;
  for (int m = 0; m < 12; ++m) {
    DayMix mix;
    mix.name = "mix " + std::to_string(m);
    for (int k = 0; k < 4; ++k) mix.mix.components.push_back(bag((m + k * 3) % 14));
    mix.mix.settling = Settling(0.08);
    mix.mix.spill = Spill(0.07);
    day.mixes.push_back(mix);
  }
  for (int i = 0; i < 60; ++i) {
    // Every tree has a pot of its own, so that no answer serves two.
    const std::string name = "pot " + std::to_string(i);
    Container pot;
    pot.rim = {length_cm(20 + 0.3 * i), length_cm(15 + 0.2 * i)};
    pot.base = Section{length_cm(18 + 0.3 * i), length_cm(13 + 0.2 * i)};
    pot.depth = depth_cm(4 + 0.1 * i);
    pot.mass = mass_kg(2);
    day.pots.emplace(name, pot);
    PlannedTree tree;
    tree.name = "tree " + std::to_string(i);
    tree.mix = "mix " + std::to_string(i % 12);
    tree.pot = name;
    tree.fill = pot_ml(500 + 40 * i);
    tree.worse_fills = {pot_ml(560 + 40 * i), pot_ml(600 + 43 * i)};
    day.trees.push_back(tree);
  }
  for (int k = 0; k < 14; ++k) {
    GrainSupply supply;
    supply.bag = "bag " + std::to_string(k);
    supply.material = "stone";
    supply.stock = loose_l(8);
    supply.yield = ScreenYield(0.75);
    supply.bag_volume = loose_l(14);
    day.shelf.push_back(supply);
  }
  day.tub = loose_l(40);
  day.scoop = loose_l(0.5);
  return day;
}

}  // namespace

int main() {
  const PlannedDay day = large_day();
  std::vector<double> times_ms;
  std::size_t lifts = 0;
  for (int run = 0; run < 15; ++run) {
    const auto start = std::chrono::steady_clock::now();
    const auto answer = work_out(day);
    times_ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    if (!answer) return 1;
    lifts = answer->lifts.size();
  }
  std::ranges::sort(times_ms);
  bench::print({fmt::format("repotting day of 60 trees, 12 mixes, 14 bags, {} lifts", lifts), "ms", times_ms[times_ms.size() / 2], 200});
  return 0;
}
