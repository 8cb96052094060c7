#include "gritwright/models/pot_outline.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <vector>

#include "support/random_pots.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Container soft_cornered(double length, double width, double exponent) {
  Container pot;
  pot.shape = Shape::superellipse;
  pot.rim = {length_cm(length), length_cm(width)};
  pot.base = Section{length_cm(length * 0.85), length_cm(width * 0.85)};
  pot.depth = depth_cm(8);
  pot.exponent = exponent;
  return pot;
}

/// The least distance to the outline of half lengths 1, stretched, by plain search over its points.
class PlainSearch {
 public:
  explicit PlainSearch(double exponent) : exponent_(exponent), diagonal_(std::pow(0.5, 1 / exponent)) {
    for (int i = 0; i <= steps; ++i) other_.push_back(other(diagonal_ * i / steps));
  }

  [[nodiscard]] double depth_cm(const Outline& outline, double x, double y) const {
    // The right side by the way to the back, the back side by the way to the right.
    return std::min(least(std::abs(y), std::abs(x), outline.half_width_cm, outline.half_length_cm),
                    least(std::abs(x), std::abs(y), outline.half_length_cm, outline.half_width_cm));
  }

 private:
  static constexpr int steps = 2000;

  [[nodiscard]] double other(double t) const { return std::pow(1 - std::pow(t, exponent_), 1 / exponent_); }

  [[nodiscard]] double least(double along, double out, double length, double reach) const {
    double best = 1e9;
    int best_step = 0;
    for (int i = 0; i <= steps; ++i) {
      const double away = std::hypot(length * diagonal_ * i / steps - along, reach * other_[static_cast<std::size_t>(i)] - out);
      if (away >= best) continue;
      best = away;
      best_step = i;
    }
    // Thirds between the neighbours of the nearest.
    double low = diagonal_ * std::max(0, best_step - 1) / steps;
    double high = diagonal_ * std::min(steps, best_step + 1) / steps;
    const auto away = [&](double t) { return std::hypot(length * t - along, reach * other(t) - out); };
    for (int i = 0; i < 60; ++i) {
      const double third = (high - low) / 3;
      if (away(low + third) < away(high - third))
        high -= third;
      else
        low += third;
    }
    return std::min(best, away((low + high) / 2));
  }

  double exponent_;
  double diagonal_;
  std::vector<double> other_;
};

/// Mostly as pots are, now and then nearly square-cornered.
double any_exponent(test::RandomPots& random) { return random.chance(0.2) ? random.between(9, 100) : random.between(2, 9); }

}  // namespace

TEST_CASE("The distance to a soft-cornered wall is that of a plain search along it, wherever the point lies", "[pot_outline][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 40; ++i) {
    const PotOutlines outlines{PotGeometry(soft_cornered(random.between(20, 45), random.between(12, 30), any_exponent(random)))};
    const Outline outline = outlines.at(random.between(0, 8));
    const PlainSearch search(outline.exponent);
    for (int k = 0; k < 50; ++k) {
      const double x = random.between(-1, 1) * outline.half_length_cm;
      const double y = random.between(-1, 1) * outline.half_width_cm;
      if (outline.gauge(x, y) > 1) continue;
      INFO("exponent " << outline.exponent << ", " << outline.half_length_cm << " by " << outline.half_width_cm << " at " << x << ", " << y);
      CHECK_THAT(outline.depth_inside_cm(x, y), WithinAbs(search.depth_cm(outline, x, y), 1e-6));
    }
  }
}

TEST_CASE("Where two sides of a soft-cornered wall are about as far, the nearer one is found", "[pot_outline][regression]") {
  const double exponent = GENERATE(2.0, 2.2, 3.5, 6.0, 20.0);
  const PotOutlines outlines{PotGeometry(soft_cornered(36, 26, exponent))};
  const Outline outline = outlines.at(8);
  const PlainSearch search(exponent);
  // A line across the pot, on which right and back change their places as the nearest: at x = 5 both are 13 cm off the middle line.
  for (double x = 0; x <= 17; x += 0.25) {
    for (const double y : {0.0, 0.5, 2.0, 5.0, 8.0}) {
      if (outline.gauge(x, y) > 1) continue;
      INFO("exponent " << exponent << " at " << x << ", " << y);
      CHECK_THAT(outline.depth_inside_cm(x, y), WithinAbs(search.depth_cm(outline, x, y), 1e-6));
    }
  }
}

TEST_CASE("Tables of a soft corner decide as a plain search does", "[pot_outline][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 40; ++i) {
    const PotOutlines outlines{PotGeometry(soft_cornered(random.between(20, 45), random.between(12, 30), any_exponent(random)))};
    const Outline outline = outlines.at(random.between(0, 8));
    const PlainSearch search(outline.exponent);
    const double inset = random.between(0.3, 2.5);
    for (int k = 0; k < 60; ++k) {
      const double x = random.between(-1, 1) * outline.half_length_cm;
      const double y = random.between(-1, 1) * outline.half_width_cm;
      INFO("exponent " << outline.exponent << ", " << outline.half_length_cm << " by " << outline.half_width_cm << " at " << x << ", " << y);
      if (outline.gauge(x, y) > 1) {
        CHECK_FALSE(outline.holds(x, y, inset));
        CHECK_FALSE(outline.holds(x, y, 0));
        continue;
      }
      const double depth = search.depth_cm(outline, x, y);
      // On the very line either is right.
      if (std::abs(depth - inset) < 1e-6) continue;
      CHECK(outline.holds(x, y, inset) == (depth > inset));
      const auto near = outline.nearest_within(x, y, inset);
      CHECK(near.has_value() == (depth < inset));
      if (!near) continue;
      CHECK_THAT(near->depth_cm, WithinAbs(depth, 1e-6));
      // Straight on in its direction lies the outline.
      CHECK_THAT(outline.gauge(x + near->depth_cm * near->right, y + near->depth_cm * near->back), WithinAbs(1, 1e-5));
    }
  }
}

TEST_CASE("The distance to a wall whose ends are pointed is that of a plain search along it, however long and narrow it is", "[pot_outline][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 60; ++i) {
    const double exponent = random.chance(0.15) ? 1 : random.between(1, 2);
    const double length = random.between(20, 60);
    const PotOutlines outlines{PotGeometry(soft_cornered(length, length / random.between(1, 6), exponent))};
    const Outline outline = outlines.at(random.between(0, 8));
    const PlainSearch search(exponent);
    const double inset = random.between(0.05, 0.9) * outline.half_width_cm;
    for (int k = 0; k < 50; ++k) {
      const double x = random.between(-1, 1) * outline.half_length_cm;
      const double y = random.between(-1, 1) * outline.half_width_cm;
      if (outline.gauge(x, y) > 1) continue;
      const double depth = search.depth_cm(outline, x, y);
      INFO("exponent " << exponent << ", " << outline.half_length_cm << " by " << outline.half_width_cm << " at " << x << ", " << y);
      // The direction is halved down to 1.5e-6 of a radian; a flat side turns about its far end, 30 cm off at most.
      constexpr double exactness_cm = 5e-5;
      CHECK_THAT(outline.depth_inside_cm(x, y), WithinAbs(depth, exactness_cm));
      if (std::abs(depth - inset) < exactness_cm) continue;
      CHECK(outline.holds(x, y, inset) == (depth > inset));
      const auto near = outline.nearest_within(x, y, inset);
      CHECK(near.has_value() == (depth < inset));
      if (!near) continue;
      CHECK_THAT(near->depth_cm, WithinAbs(depth, exactness_cm));
      // Straight on in its direction lies the outline.
      CHECK_THAT(outline.gauge(x + near->depth_cm * near->right, y + near->depth_cm * near->back), WithinAbs(1, 1e-4));
    }
  }
}

TEST_CASE("The nearest of an oval wall is found where it is near, and nothing where it is far", "[pot_outline][law]") {
  test::RandomPots random(Catch::rngSeed());
  for (int i = 0; i < 200; ++i) {
    Outline oval;
    oval.kind = Outline::Kind::ellipse;
    oval.half_length_cm = random.between(10, 22);
    oval.half_width_cm = random.between(6, 15);
    const double angle = random.between(0, 2 * std::numbers::pi);
    const double out = random.between(0, 1);
    const double x = out * oval.half_length_cm * std::cos(angle);
    const double y = out * oval.half_width_cm * std::sin(angle);
    const double depth = PlainSearch(2).depth_cm(oval, x, y);
    const double limit = random.between(0, 4);
    INFO(oval.half_length_cm << " by " << oval.half_width_cm << " at " << x << ", " << y << ", limit " << limit);
    if (std::abs(depth - limit) < 1e-5) continue;
    const auto near = oval.nearest_within(x, y, limit);
    CHECK(near.has_value() == (depth < limit));
    if (near) CHECK_THAT(near->depth_cm, WithinAbs(depth, 1e-5));
  }
}
