// Air and water of one mix in a tapered pot, beside the same chain vectorised in NumPy and integrated by SciPy.
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
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/saturation_kernel.hpp"
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

Container tapered_tray() {
  Container container;
  container.rim = {length_cm(28), length_cm(20)};
  container.base = Section{length_cm(24), length_cm(16)};
  container.depth = depth_cm(6);
  return container;
}

RetentionInput ten_sieves() {
  RetentionInput input;
  for (int i = 0; i < 10; ++i) {
    input.envelope_grading.push_back({aperture_mm(std::pow(10, -0.3 + 0.12 * i)), Passing(0.04 + 0.96 * i * i / 81)});
  }
  input.envelope_grading = with_pan_step(input.envelope_grading);
  input.voids_between_grains = Porosity(0.46);
  input.open_voids_in_grains = Porosity(0.27);
  input.grain_water = Porosity(0.189);
  return input;
}

struct PeerTimes {
  double numpy_us = 0;
  double quad_us = 0;
  double capacity = 0;
  std::string version;
};

PeerTimes peer() {
  const std::string command = std::string(GRITWRIGHT_PYTHON) + " \"" GRITWRIGHT_SOURCE_DIR "/tests/bench/pot_water_peer.py\"";
  PeerTimes times;
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return times;
  std::array<char, 200> version{};
  if (std::fscanf(pipe, "%lf %lf %lf %199[^\n]", &times.numpy_us, &times.quad_us, &times.capacity, version.data()) == 4) {
    times.version = version.data();
  }
  pclose(pipe);
  return times;
}

}  // namespace

int main() {
  const PeerTimes theirs = peer();
  if (theirs.version.empty()) {
    std::cerr << "the peer did not run\n";
    return 1;
  }
  const PotGeometry pot(tapered_tray());
  const RetentionInput input = ten_sieves();
  const Retention mix(input);
  const SaturationKernel kernel = SaturationKernel::for_pot(pot, input.constants.n);
  std::vector<double> log_sizes;
  std::vector<double> shares;
  for (const GradingPoint& point : input.envelope_grading) {
    log_sizes.push_back(std::log(in_mm(point.aperture)));
    shares.push_back(point.passing.value());
  }
  const double ours = container_capacity(mix.curve(), pot).value();
  if (!(std::abs(ours - theirs.capacity) < 1e-6)) {
    std::cerr << fmt::format("capacities differ: {} here, {} there\n", ours, theirs.capacity);
    return 1;
  }
  const std::string sums = theirs.version + ", 100 x 64 points";
  const std::string quadrature = theirs.version + ", adaptive quadrature";
  bench::print({"water of a tapered pot, tabulated, from 10 sieves", "us", microseconds_of(20000, [&](int i) {
                  return kernel.mean(equal_volume_log_sizes(log_sizes, shares), 9.5 + 1e-6 * i, 0.7);
                }), {}, sums, theirs.numpy_us});
  bench::print({"water of any pot", "us", microseconds_of(2000, [&](int) { return container_capacity(mix.curve(), pot).value(); }), {}, sums, theirs.numpy_us});
  bench::print({"water of a pot, chain from the grading and all figures", "us",
                microseconds_of(500, [&](int) { return pot_water(Retention(input), pot).container_capacity.value(); }), {}, quadrature, theirs.quad_us});
  bench::print({"geometry of a pot from its lengths", "us", microseconds_of(5000, [&](int) { return in_ml(PotGeometry(pot.container()).volume()); }), {}, quadrature,
                theirs.quad_us});
  bench::print({"tabulating a pot, once", "us", microseconds_of(3, [&](int) { return SaturationKernel::for_pot(pot, input.constants.n).at(0); })});
  return std::isfinite(checksum) ? 0 : 1;
}
