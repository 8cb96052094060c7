#pragma once
// Small random design problems with every kind of wish, for searches to be held against plain enumeration.

#include <random>
#include <string>

#include "gritwright/domain/design_problem.hpp"

namespace gritwright::test {

class DesignCases {
 public:
  explicit DesignCases(unsigned seed) : random_(seed) {}

  DesignProblem next() {
    DesignProblem problem;
    const int count = 2 + below(4);
    for (int k = 0; k < count; ++k) problem.candidates.push_back(candidate(k));
    problem.form.components = 1 + below(4);
    problem.form.total = 2 + below(5);
    problem.pots["low"] = pot(between(3, 6));
    if (chance(0.4)) problem.pots["tall"] = pot(between(8, 15));
    if (chance(0.4)) problem.need = mixed_l(between(5, 20));
    const int wishes = 1 + below(6);
    for (int w = 0; w < wishes; ++w) problem.wishes.push_back(wish(problem));
    return problem;
  }

  double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }
  bool chance(double share) { return between(0, 1) < share; }
  int below(int count) { return std::min(count - 1, static_cast<int>(between(0, count))); }

 private:
  Candidate candidate(int k) {
    Candidate made;
    Component& component = made.component;
    component.name = "bag " + std::string(1, static_cast<char>('a' + k));
    component.parts = Parts(1);
    const double bulk = between(250, 1200);
    component.grain.bulk_density = bulk_g_l(bulk);
    if (chance(0.95)) {
      component.grain.particle_density = particle_g_l(bulk / between(0.45, 0.6));
      component.grain.skeletal_density = skeletal_g_l(2700);
      component.grain.open_share = OpenShare(between(0, 1));
    }
    if (chance(0.9)) component.grain.cation_exchange = CationExchange(between(0, 40));
    if (chance(0.9)) made.price = PricePerLitre(chance(0.3) ? 0.5 : between(0.1, 2));
    if (chance(0.3)) made.learnt = LearntConstants{between(5, 20), between(0.6, 0.95), between(0.4, 0.9)};
    if (chance(0.3)) made.stock = loose_l(between(2, 20));
    if (chance(0.5)) made.family = chance(0.5) ? "stone" : "clay";
    component.sizes = chance(0.3) ? GrainSizes(SingleSize{aperture_mm(below(6) + 1)}) : GrainSizes(grading());
    return made;
  }

  Grading grading() {
    constexpr double sieves_mm[] = {0.5, 1, 2, 4, 5.6, 8};
    const int first = below(3), count = 3 + below(3);
    Grading made;
    double share = chance(0.5) ? 0 : between(0, 0.08);
    for (int i = 0; i < count && first + i < 6; ++i) {
      made.points.push_back({aperture_mm(sieves_mm[first + i]), Passing(share)});
      share += between(0, 1 - share);
    }
    made.points.back().passing = Passing(1);
    return made;
  }

  Container pot(double depth) {
    Container made;
    made.rim = {length_cm(30), length_cm(22)};
    if (chance(0.5)) made.base = Section{length_cm(26), length_cm(18)};
    made.depth = depth_cm(depth);
    return made;
  }

  /// Limits around a typical figure, so that some recipes hold them and some don't.
  void limits(Wish& wish, double low, double high) {
    const double middle = between(low, high), half = between(0, (high - low) / 4);
    const bool both = chance(0.3), least = chance(0.5);
    if (both || least) wish.least = std::max(low, middle - half);
    if (both || !least) wish.most = std::min(high, middle + half);
  }

  Wish wish(const DesignProblem& problem) {
    Wish made;
    made.hard = chance(0.4);
    made.weight = chance(0.5) ? 1 : between(0.1, 3);
    const std::string pot = problem.pots.size() > 1 && chance(0.5) ? "tall" : "low";
    const auto in_pot = [&](PotFigure figure, double low, double high) {
      made.figure = FigureInPot{figure, pot};
      limits(made, low, high);
    };
    switch (below(10)) {
      case 0: {
        PassingLimits band;
        for (const double size : {1.0, 2.0, 4.0, 5.6}) {
          if (chance(0.4)) continue;
          PassingLimit limit{aperture_mm(size), {}, {}};
          const double low = between(0, 60);
          if (chance(0.8)) limit.low = passing_percent(low);
          if (!limit.low || chance(0.8)) limit.high = passing_percent(between(low, 100));
          band.limits.push_back(limit);
        }
        if (band.limits.empty()) band.limits.push_back({aperture_mm(4), passing_percent(20), {}});
        made.figure = band;
        break;
      }
      case 1:
        made.hard = false;
        made.figure = NearestGrading{{{aperture_mm(2), passing_percent(between(0, 40))}, {aperture_mm(5.6), passing_percent(between(50, 100))}}};
        break;
      case 2:
        made.figure = BandShare{aperture_mm(chance(0.3) ? 0 : 2), aperture_mm(5.6)};
        limits(made, 0, 100);
        break;
      case 3:
        made.figure = FinerShare{aperture_mm(chance(0.5) ? 1 : 2)};
        limits(made, 0, 60);
        break;
      case 4: in_pot(PotFigure::air_filled_porosity, 0.05, 0.35); break;
      case 5: in_pot(PotFigure::container_capacity, 0.15, 0.55); break;
      case 6: in_pot(chance(0.5) ? PotFigure::available_in_pot : PotFigure::wet_mass, 0.05, 0.3);
        if (std::get<FigureInPot>(made.figure).figure == PotFigure::wet_mass) {
          made.least.reset();
          made.most = between(700, 1500);
        }
        break;
      case 7:
        made.figure = ExchangeCapacity{};
        limits(made, 0, 300);
        break;
      case 8:
        made.figure = MixPrice{};
        limits(made, 0.2, 2);
        break;
      default: {
        const auto& of = problem.candidates[static_cast<std::size_t>(below(static_cast<int>(problem.candidates.size())))];
        made.figure = ShareOf{of.family && chance(0.5) ? *of.family : of.component.name};
        limits(made, 0, 1);
      }
    }
    return made;
  }

  std::mt19937_64 random_;
};

}  // namespace gritwright::test
