// Laws that every pot and mix obeys, over ten thousand random cases.
#include <boost/math/quadrature/gauss.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "gritwright/models/pot_water.hpp"
#include "support/random_pots.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

constexpr int cases = 10000;

/// Capacity summed over layers of the pot, from theta at their heights.
double capacity_by_layers(const Retention& mix, const PotGeometry& pot) {
  const double free_water = in_cm(pot.container().saucer) - in_cm(pot.container().wick);
  const auto water = [&](double height) {
    return mix.water_at(depth_cm(height - free_water)).value() * in_cm2(pot.area_at(depth_cm(height)));
  };
  const double top = in_cm(pot.filled_depth());
  double sum = 0;
  for (const AreaProfile::Piece& piece : pot.profile().below(top).pieces()) {
    const double water_line = std::clamp(free_water, piece.from_cm, piece.to_cm);
    for (const auto& [low, high] : {std::pair(piece.from_cm, water_line), std::pair(water_line, piece.to_cm)}) {
      if (high <= low) continue;
      // Layers thinner towards the free water, where the air sets in.
      double from = low;
      const bool thin = high - low < top / 8;
      for (double part : thin ? std::vector{1.0} : std::vector{1.0 / 64, 1.0 / 16, 1.0 / 4, 1.0}) {
        const double to = low + (high - low) * part;
        sum += boost::math::quadrature::gauss<double, 10>::integrate(water, from, to);
        from = to;
      }
    }
  }
  return sum / in_ml(pot.volume());
}

/// Every size of the mix times `factor`.
RetentionInput coarser(RetentionInput input, double factor) {
  for (GradingPoint& point : input.envelope_grading) point.aperture = point.aperture * factor;
  return input;
}

/// The same profile A(z/H), deeper by `factor`.
Container deeper(Container container, double factor) {
  container.depth = container.depth * factor;
  container.freeboard = container.freeboard * factor;
  for (AreaAtHeight& row : container.areas) row.height = row.height * factor;
  return container;
}

}  // namespace

TEST_CASE("Air and water add up to the open voids in every pot, counted over layers", "[pot_water][law][rounds]") {
  test::RandomPots random(Catch::rngSeed());
  int wrong = 0;
  for (int i = 0; i < cases; ++i) {
    Container container = random.container();
    if (random.chance(0.2)) container.saucer = depth_cm(random.between(0, 8));
    if (random.chance(0.2)) container.wick = depth_cm(random.between(0, 15));
    const PotGeometry pot(container);
    const Retention mix(random.mix());
    const PotWater water = pot_water(mix, pot);
    const bool ordered = water.air_filled_porosity >= Porosity(-1e-12) && water.air_filled_porosity <= water.total_air + Porosity(1e-12) &&
                         water.container_capacity <= water.theta_0 + Porosity(1e-12) && water.container_capacity >= Porosity(0);
    const double by_layers = capacity_by_layers(mix, pot);
    const bool complete = std::abs(by_layers + water.total_air.value() - mix.open_voids().value()) < 1e-4;
    const bool parts = std::abs((water.air_filled_porosity + water.trapped_air - water.total_air).value()) < 1e-12;
    if (!ordered || !complete || !parts) {
      ++wrong;
      UNSCOPED_INFO("case " << i << " capacity " << water.container_capacity.value() << " by layers " << by_layers);
    }
  }
  CHECK(wrong == 0);
}

// A table of areas over a short wick, where the sum over the heights once came to 4e-11 more than all the voids that water fills.
TEST_CASE("A pot in which all stays wet has no less air than none", "[pot_water][law][regression]") {
  test::RandomPots random(1796020677);
  for (int i = 0; i <= 6981; ++i) {
    Container container = random.container();
    if (random.chance(0.2)) container.saucer = depth_cm(random.between(0, 8));
    if (random.chance(0.2)) container.wick = depth_cm(random.between(0, 15));
    const PotGeometry pot(container);
    const Retention mix(random.mix());
    if (i == 6981) CHECK(pot_water(mix, pot).air_filled_porosity >= Porosity(0));
  }
}

TEST_CASE("A deeper pot of the same profile and a coarser mix never hold a larger water share", "[pot_water][law][rounds]") {
  test::RandomPots random(Catch::rngSeed());
  int wrong = 0;
  for (int i = 0; i < cases; ++i) {
    Container container = random.container();
    container.fillet_radius = Length{};  // a fillet does not scale with the depth alone
    container.water_fill.reset();
    const RetentionInput input = random.mix();
    const Retention mix(input);
    const double factor = random.between(1.02, 2);
    const double here = container_capacity(mix.curve(), PotGeometry(container)).value();
    const double deep = container_capacity(mix.curve(), PotGeometry(deeper(container, factor))).value();
    const double coarse = container_capacity(Retention(coarser(input, factor)).curve(), PotGeometry(container)).value();
    if (deep > here + 1e-7 || coarse > here + 1e-7) {
      ++wrong;
      UNSCOPED_INFO("case " << i << " here " << here << " deeper " << deep << " coarser " << coarse);
    }
  }
  CHECK(wrong == 0);
}

TEST_CASE("Twice the grain in half the depth holds the same water share", "[pot_water][law][rounds]") {
  test::RandomPots random(Catch::rngSeed());
  double worst = 0;
  for (int i = 0; i < cases; ++i) {
    Container container = random.container();
    container.fillet_radius = Length{};
    const RetentionInput input = random.mix();
    const double here = container_capacity(Retention(input).curve(), PotGeometry(container)).value();
    const double similar = container_capacity(Retention(coarser(input, 2)).curve(), PotGeometry(deeper(container, 0.5))).value();
    worst = std::max(worst, std::abs(here - similar));
  }
  CHECK(worst < 1e-7);
}

TEST_CASE("A pot that widens upward holds a smaller water share than straight walls, one that narrows a larger", "[pot_water][law][rounds]") {
  test::RandomPots random(Catch::rngSeed());
  int wrong = 0;
  for (int i = 0; i < cases; ++i) {
    Container straight;
    straight.shape = random.chance(0.5) ? Shape::rectangular : Shape::oval;
    straight.rim = {length_cm(random.between(8, 60)), length_cm(random.between(8, 60))};
    straight.depth = depth_cm(random.between(2, 25));
    Container widening = straight;
    const double factor = random.between(0.5, 0.98);
    widening.base = Section{straight.rim.length * factor, straight.rim.width * factor};
    Container narrowing = widening;
    std::swap(narrowing.rim, *narrowing.base);
    const Retention mix(random.mix());
    const auto capacity = [&](const Container& container) { return container_capacity(mix.curve(), PotGeometry(container)).value(); };
    const double level = capacity(straight);
    if (capacity(widening) > level + 1e-7 || capacity(narrowing) < level - 1e-7) ++wrong;
  }
  CHECK(wrong == 0);
}
