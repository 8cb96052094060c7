#pragma once
// Random but possible repotting days for the laws.

#include <random>
#include <string>

#include "gritwright/domain/planned_day.hpp"
#include "support/random_mix.hpp"

namespace gritwright {

class RandomDays {
 public:
  explicit RandomDays(unsigned seed) : random_(seed), mixes_(seed + 1) {}

  PlannedDay next(int trees = 12) {
    PlannedDay day;
    for (int i = 0, count = 1 + below(4); i < count; ++i) day.mixes.push_back(mix(i));
    for (int i = 0; i < trees; ++i) day.trees.push_back(tree(i, static_cast<int>(day.mixes.size())));
    if (unit() < 0.8) day.tub = loose_l(between(8, 60));
    if (unit() < 0.8) day.scoop = loose_l(between(0.2, 1.5));
    for (const DayMix& mix : day.mixes)
      for (const Component& component : mix.mix.components)
        if (unit() < 0.7) day.shelf.push_back(supply(component.name));
    return day;
  }

 private:
  double unit() { return std::uniform_real_distribution<double>(0, 1)(random_); }
  double between(double low, double high) { return low + (high - low) * unit(); }
  int below(int count) { return static_cast<int>(unit() * count); }

  DayMix mix(int index) {
    DayMix made;
    made.name = "mix " + std::to_string(index + 1);
    made.mix = mixes_.next();
    made.mix.spill = Spill(unit() < 0.2 ? 0 : between(0, 0.1));
    const bool whole = unit() < 0.7;
    for (Component& component : made.mix.components) {
      component.name = made.name + ", " + component.name;
      if (whole) component.parts = Parts(1 + below(5));
    }
    return made;
  }

  PlannedTree tree(int index, int mixes) {
    PlannedTree made;
    made.name = "tree " + std::to_string(index + 1);
    made.mix = "mix " + std::to_string(1 + below(mixes));
    made.fill = pot_ml(between(100, 9000));
    for (int i = 0, count = below(3); i < count; ++i) made.worse_fills.push_back(*made.fill * between(0.9, 1.6));
    return made;
  }

  GrainSupply supply(const std::string& component) {
    GrainSupply made;
    made.bag = "bag of " + component;
    made.component = component;
    made.stock = loose_l(between(0, 15));
    if (unit() < 0.3) made.reserved = loose_l(between(0, 8));
    if (unit() < 0.2)
      made.screened = true;
    else if (unit() < 0.7)
      made.yield = ScreenYield(between(0.4, 1));
    if (unit() < 0.7) made.bag_volume = loose_l(between(5, 30));
    return made;
  }

  std::mt19937 random_;
  RandomMixes mixes_;
};

}  // namespace gritwright
