#pragma once
// Random containers and mixes for laws and reference checks. The seed is the suite's, which it prints.

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "gritwright/domain/container.hpp"
#include "gritwright/models/retention.hpp"

namespace gritwright::test {

class RandomPots {
 public:
  explicit RandomPots(unsigned seed) : engine_(seed) {}

  double between(double low, double high) { return std::uniform_real_distribution<>(low, high)(engine_); }
  bool chance(double share) { return between(0, 1) < share; }

  static constexpr Shape shapes[] = {Shape::rectangular, Shape::oval, Shape::round, Shape::hexagonal, Shape::octagonal,
                                     Shape::drum, Shape::superellipse, Shape::bowl, Shape::profile};

  /// A container without saucer, wick, tilt and layers.
  Container container(Shape shape) {
    Container pot;
    pot.shape = shape;
    const bool one_length = shape == Shape::round || shape == Shape::hexagonal || shape == Shape::octagonal || shape == Shape::drum;
    const auto section = [&] {
      const Length length = length_cm(between(8, 60));
      return Section{length, one_length ? length : length_cm(between(8, 60))};
    };
    pot.depth = depth_cm(between(2, 25));
    pot.rim = section();
    const auto near_rim = [&] {
      Section near{pot.rim.length * between(0.7, 1.1), pot.rim.width * between(0.7, 1.1)};
      if (one_length) near.width = near.length;
      return near;
    };
    if (chance(0.7) && shape != Shape::bowl && shape != Shape::profile) pot.base = near_rim();
    if (shape == Shape::drum) pot.middle = near_rim();
    if (shape == Shape::superellipse) pot.exponent = between(1.5, 8);
    if (shape == Shape::profile) {
      double height = 0;
      const double top = in_cm(pot.depth);
      while (height < top - 0.02) {
        pot.areas.push_back({depth_cm(height), area_cm2(between(50, 1500))});
        height += between(top / 8, top / 2);
      }
      pot.areas.push_back({pot.depth, area_cm2(between(50, 1500))});
    }
    if (chance(0.5)) pot.freeboard = depth_cm(between(0, 0.2) * in_cm(pot.depth));
    if (shape == Shape::rectangular && chance(0.3)) pot.corner_radius = length_cm(between(0, 2.5));
    if (shape != Shape::bowl && shape != Shape::profile && chance(0.3)) pot.fillet_radius = length_cm(between(0.1, 0.8));
    if (chance(0.3)) pot.water_fill = pot_ml(between(500, 20000));
    return pot;
  }

  Container container() { return container(shapes[static_cast<std::size_t>(between(0, 8.9999))]); }

  /// Grain of .2 to 15 mm, some with a pan, porous or not.
  RetentionInput mix() {
    RetentionInput input;
    double size = between(0.2, 3);
    double share = chance(0.5) ? 0 : between(0, 0.1);
    const int sieves = static_cast<int>(between(1, 7));
    for (int i = 0; i < sieves; ++i) {
      input.envelope_grading.push_back({aperture_mm(size), Passing(share)});
      size *= between(1.1, 2);
      share += between(0, 1 - share);
    }
    input.envelope_grading.push_back({aperture_mm(size), Passing(1)});
    input.envelope_grading = with_pan_step(input.envelope_grading);
    input.voids_between_grains = Porosity(between(0.3, 0.6));
    input.open_voids_in_grains = Porosity((1 - input.voids_between_grains.value()) * between(0, 0.7));
    input.grain_water = input.open_voids_in_grains * between(0, 1);
    input.constants.k_cm_mm = between(4, 20);
    input.constants.spread = between(0.3, 1);
    input.constants.n = chance(0.8) ? RetentionConstants{}.n : chance(0.5) ? 2 : between(1.5, 9);
    input.constants.residual = between(0, 0.08);
    input.constants.flooded_fill = between(0.65, 1);
    return input;
  }

 private:
  std::mt19937_64 engine_;
};

}  // namespace gritwright::test
