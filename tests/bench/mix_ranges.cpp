// 4,096 draws of everything uncertain about a mix of five bags in a tapered pot, beside the same chain vectorised in NumPy.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <iostream>
#include <optional>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "gritwright/models/ageing.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

double checksum = 0;  // what is computed must be used, or the compiler leaves it out

template <class Work>
double milliseconds_of(Work work) {
  std::vector<double> times;
  for (int run = 0; run < 9; ++run) {
    const std::clock_t start = std::clock();  // of the processor: one core's work, whoever else is busy
    checksum += work();
    times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  std::ranges::sort(times);
  return times[times.size() / 2];
}

/// Five invented gradings over ten sieves.
Mix five_bags() {
  constexpr std::array parts{1.0, 2.0, 3.0, 1.0, 1.0};
  Mix mix;
  mix.settling = Settling(0.08);
  for (int k = 0; k < 5; ++k) {
    Component bag;
    bag.name = "bag " + std::to_string(k + 1);
    bag.parts = Parts(parts[static_cast<std::size_t>(k)]);
    bag.grain.bulk_density = bulk_g_l(450 + 150 * k);
    bag.grain.particle_density = particle_g_l(900 + 280 * k);
    bag.grain.skeletal_density = skeletal_g_l(2400);
    Grading grading;
    for (int i = 0; i < 10; ++i)
      grading.points.push_back({aperture_mm(0.5 * std::pow(1.4142, i)), Passing(std::pow(i / 9.0, 0.5 + 0.5 * k))});
    bag.sizes = grading;
    mix.components.push_back(bag);
  }
  return mix;
}

PotGeometry tray() {
  Container container;
  container.rim = {length_cm(28), length_cm(20)};
  container.base = Section{length_cm(24), length_cm(16)};
  container.depth = depth_cm(6);
  return PotGeometry(container);
}

struct PeerAnswer {
  double every_figure_ms = 0;
  double air_ms = 0;
  Range air;
  std::string version;
};

PeerAnswer peer() {
  const std::string command = "OPENBLAS_NUM_THREADS=1 " GRITWRIGHT_PYTHON " \"" GRITWRIGHT_SOURCE_DIR "/tests/bench/mix_ranges_peer.py\"";
  PeerAnswer answer;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return answer;
  std::array<char, 200> version{};
  if (std::fscanf(pipe, "%lf %lf %lf %lf %lf %199[^\n]", &answer.every_figure_ms, &answer.air_ms, &answer.air.low, &answer.air.median, &answer.air.high,
                  version.data()) == 6)
    answer.version = version.data();
  pclose(pipe);
  return answer;
}

/// A tray with rounded corners and floor.
PotGeometry rounded_tray() {
  Container container = tray().container();
  container.corner_radius = length_cm(4);
  container.fillet_radius = length_cm(1.5);
  return PotGeometry(container);
}

/// Two of the five bags break by half in three seasons, quickly or slowly.
std::vector<std::optional<Breakdown>> half_soft() {
  const Breakdown soft{0.23, 1, factor_within(1, 0.5, 2)};
  return {soft, std::nullopt, soft, std::nullopt, std::nullopt};
}

double years_ms(const Mix& mix, const PotGeometry& pot, std::size_t draws) {
  return milliseconds_of([&] { return air_over_years(mix, usual_spread(mix), pot, half_soft(), 5, least_air_of_old_mix, {draws, 1})->seasons.back().staying.high; });
}

}  // namespace

int main() {
  const PeerAnswer theirs = peer();
  if (theirs.version.empty()) {
    std::cerr << "the peer did not run\n";
    return 1;
  }
  const Mix mix = five_bags();
  const UncertainMix uncertain(mix, usual_spread(mix), tray());
  const Range air = *uncertain.ranges().of(MixFigure::air_filled_porosity);
  // The peer draws at random, so its quantiles scatter.
  const double room = 0.06 * (theirs.air.high - theirs.air.low);
  if (std::abs(air.low - theirs.air.low) > room || std::abs(air.median - theirs.air.median) > room ||
      std::abs(air.high - theirs.air.high) > room) {
    std::cerr << fmt::format("air differs: {} {} {} here, {} {} {} there\n", air.low, air.median, air.high, theirs.air.low,
                             theirs.air.median, theirs.air.high);
    return 1;
  }
  const auto air_of = [](const MixRanges& ranges) { return ranges.of(MixFigure::air_filled_porosity)->high; };
  bench::print({"4,096 draws of 5 bags in a tray: range of every figure and curve", "ms", milliseconds_of([&] { return air_of(uncertain.ranges()); }), 30, theirs.version, theirs.every_figure_ms});
  bench::print({"the same of the air only", "ms", milliseconds_of([&] { return uncertain.draws_of(MixFigure::air_filled_porosity, {}).front(); }), {}, theirs.version, theirs.air_ms});
  bench::print({"64 draws of every figure and curve, while a slider moves", "ms", milliseconds_of([&] { return air_of(uncertain.ranges({64, 1})); })});
  bench::print({"what would narrow the air most", "ms", milliseconds_of([&] { return uncertain.what_would_narrow(MixFigure::air_filled_porosity, {}).front().share; })});
  bench::print({"preparing mix and pot, once", "ms", milliseconds_of([&] { return UncertainMix(mix, usual_spread(mix), tray()).air_and_water({1, 1})->air.high; })});
  bench::print({"air over five seasons, 4,096 draws: tapered tray", "ms", years_ms(mix, tray(), 4096)});
  bench::print({"air over five seasons, 4,096 draws: rounded tray", "ms", years_ms(mix, rounded_tray(), 4096)});
  bench::print({"the same while a slider moves, 64 draws: rounded tray", "ms", years_ms(mix, rounded_tray(), 64)});
  return std::isfinite(checksum) ? 0 : 1;
}
