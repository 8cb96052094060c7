#pragma once
// Random but possible mixes for the laws: densities in order, gradings that rise.

#include <array>
#include <random>
#include <string>

#include "gritwright/domain/mix.hpp"

namespace gritwright {

class RandomMixes {
 public:
  explicit RandomMixes(unsigned seed) : random_(seed) {}

  Mix next() {
    Mix mix;
    const int count = 1 + below(5);
    for (int k = 0; k < count; ++k) mix.components.push_back(component(k));
    mix.settling = Settling(unit() < 0.3 ? 0 : 0.10 * unit());
    return mix;
  }

 private:
  double unit() { return std::uniform_real_distribution<double>(0, 1)(random_); }
  double between(double low, double high) { return low + (high - low) * unit(); }
  int below(int count) { return static_cast<int>(unit() * count); }

  Component component(int k) {
    Component made;
    made.name = "component " + std::to_string(k + 1);
    made.parts = Parts(between(0.1, 4));
    const double skeletal = between(1500, 2900);
    const double particle = skeletal * between(0.25, 1);
    made.grain.bulk_moisture = Moisture(unit() < 0.5 ? 0 : between(0, 0.3));
    made.grain.bulk_density = bulk_g_l(particle * between(0.42, 0.62) * (1 + made.grain.bulk_moisture.value()));
    made.grain.particle_density = particle_g_l(particle);
    made.grain.skeletal_density = skeletal_g_l(skeletal);
    made.grain.open_share = OpenShare(unit());
    if (unit() < 0.5) made.grain.water_absorption = WaterAbsorption(unit() * (1 - particle / skeletal) * 1000 / particle);
    made.sizes = unit() < 0.3 ? GrainSizes(SingleSize{aperture_mm(between(0.5, 12))}) : GrainSizes(grading());
    return made;
  }

  Grading grading() {
    constexpr std::array sieves_mm{0.25, 0.5, 1.0, 2.0, 2.8, 4.0, 5.6, 8.0, 11.2, 16.0};
    const int first = below(5);
    const int count = 2 + below(static_cast<int>(sieves_mm.size()) - first - 1);
    double sum = unit() < 0.5 ? 0 : unit() * 0.3;  // the pan
    std::array<double, sieves_mm.size()> reached{};
    for (int i = 0; i < count; ++i) reached[static_cast<std::size_t>(i)] = sum += i == 0 ? 0 : unit() < 0.2 ? 0 : unit();
    const double above = unit() < 0.7 ? 0 : unit() * 0.3;
    Grading made;
    for (int i = 0; i < count; ++i) {
      const double share = sum + above > 0 ? reached[static_cast<std::size_t>(i)] / (sum + above) : 1;
      made.points.push_back({aperture_mm(sieves_mm[static_cast<std::size_t>(first + i)]), Passing(share)});
    }
    return made;
  }

  std::mt19937_64 random_;
};

}  // namespace gritwright
