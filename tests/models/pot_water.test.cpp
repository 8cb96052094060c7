#include "gritwright/models/pot_water.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <utility>

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// The worked mix of docs/science/water.md: half-porous grain of 1 to 6.3 mm.
RetentionInput worked_mix(double finer_than_one_mm = 0.05) {
  RetentionInput input;
  for (const auto& [size, share] : {std::pair(1.0, finer_than_one_mm), std::pair(2.0, 0.25), std::pair(3.35, 0.60), std::pair(4.75, 0.90), std::pair(6.3, 1.0)}) {
    input.envelope_grading.push_back({aperture_mm(size), Passing(share)});
  }
  input.envelope_grading = with_pan_step(input.envelope_grading, aperture_mm(0.5));
  input.voids_between_grains = Porosity(0.46);
  input.open_voids_in_grains = Porosity(0.54 * 0.50);
  input.grain_water = Porosity(0.54 * 0.50 * 0.7);
  return input;
}

RetentionInput settled(RetentionInput input, double settling) {
  const double packed = 1 / (1 - settling);
  input.voids_between_grains = Porosity(1 - (1 - input.voids_between_grains.value()) * packed);
  input.open_voids_in_grains = input.open_voids_in_grains * packed;
  input.grain_water = input.grain_water * packed;
  return input;
}

double capacity(const RetentionInput& input, double depth) { return column_water(Retention(input), depth_cm(depth)).container_capacity.value(); }

/// Coarse solid grain for a bottom layer.
Retention gravel(double size_mm) {
  RetentionInput input;
  input.envelope_grading = {{aperture_mm(size_mm), Passing(0)}, {aperture_mm(size_mm), Passing(1)}};
  input.voids_between_grains = Porosity(0.45);
  return Retention(input);
}

Container water_tray(double depth = 6) {
  Container container;
  container.rim = {length_cm(26), length_cm(18)};
  container.depth = depth_cm(depth);
  return container;
}

double on_the_pot(const Retention& mix, const Container& container) {
  return pot_water(mix, PotGeometry(container)).container_capacity.value();
}

constexpr double last_digit = 5.1e-5;  // the worked values carry four digits

}  // namespace

TEST_CASE("The worked mix holds the water of the worked example at four depths", "[pot_water][reference]") {
  // docs/science/water.md, worked example, computed with an independent implementation (SciPy quadrature).
  const Retention mix(worked_mix());
  CHECK_THAT(in_mm(mix.characteristic_size()), WithinAbs(2.5923, last_digit));
  const double depths[] = {4, 6, 8, 12};
  const double capacities[] = {0.5169, 0.4550, 0.4108, 0.3582};
  const double air[] = {0.0585, 0.1204, 0.1646, 0.2172};
  const double total[] = {0.2131, 0.2750, 0.3192, 0.3718};
  for (std::size_t i = 0; i < 4; ++i) {
    INFO("depth " << depths[i]);
    const PotWater water = column_water(mix, depth_cm(depths[i]));
    CHECK_THAT(water.container_capacity.value(), WithinAbs(capacities[i], last_digit));
    CHECK_THAT(water.air_filled_porosity.value(), WithinAbs(air[i], last_digit));
    CHECK_THAT(water.total_air.value(), WithinAbs(total[i], last_digit));
    CHECK_THAT(water.trapped_air.value(), WithinAbs(0.1546, last_digit));
  }
  const PotWater water = column_water(mix, depth_cm(6));
  CHECK_THAT(water.theta_0.value(), WithinAbs(0.5754, last_digit));
  CHECK_THAT(mix.water_at(depth_cm(5)).value(), WithinAbs(0.3277, last_digit));
  CHECK_THAT(water.theta_10.value(), WithinAbs(0.2524, last_digit));
  CHECK_THAT(water.theta_50.value(), WithinAbs(0.2340, last_digit));
  CHECK_THAT(water.easily_available.value(), WithinAbs(0.0184, last_digit));
  CHECK_THAT(water.available_in_pot.value(), WithinAbs(0.2210, last_digit));
}

TEST_CASE("A smaller k, no fines and settling change the worked mix as worked", "[pot_water][reference]") {
  RetentionInput low = worked_mix();
  low.constants.k_cm_mm = 7.5;
  const RetentionInput clean = worked_mix(0);
  const RetentionInput pressed = settled(worked_mix(), 0.08);
  CHECK_THAT(pressed.voids_between_grains.value(), WithinAbs(0.4130, last_digit));
  CHECK_THAT(in_mm(Retention(clean).characteristic_size()), WithinAbs(2.7306, last_digit));
  const double depths[] = {4, 6, 8, 12};
  const double with_low_k[] = {0.4818, 0.4183, 0.3785, 0.3336};
  const double without_fines[] = {0.5144, 0.4504, 0.4041, 0.3499};
  const double when_settled[] = {0.5006, 0.4459, 0.4068, 0.3603};
  const double air_settled[] = {0.0518, 0.1065, 0.1456, 0.1921};
  for (std::size_t i = 0; i < 4; ++i) {
    INFO("depth " << depths[i]);
    CHECK_THAT(capacity(low, depths[i]), WithinAbs(with_low_k[i], last_digit));
    CHECK_THAT(capacity(clean, depths[i]), WithinAbs(without_fines[i], last_digit));
    CHECK_THAT(capacity(pressed, depths[i]), WithinAbs(when_settled[i], last_digit));
    CHECK_THAT(column_water(Retention(pressed), depth_cm(depths[i])).air_filled_porosity.value(), WithinAbs(air_settled[i], last_digit));
  }
}

TEST_CASE("A pot of straight walls holds what a bare depth holds", "[pot_water][law]") {
  const Retention mix(worked_mix());
  const PotWater pot = pot_water(mix, PotGeometry(water_tray()));
  const PotWater column = column_water(mix, depth_cm(6));
  CHECK_THAT(pot.container_capacity.value(), WithinAbs(column.container_capacity.value(), 1e-12));
  CHECK(pot.perched_height == column.perched_height);
  CHECK_THAT(in_ml(pot.mix_volume.value()), WithinRel(26.0 * 18 * 6, 1e-12));
  CHECK_FALSE(column.mix_volume);
  REQUIRE(pot.water_by_height.size() == 11);
  CHECK(pot.water_by_height.front().water == pot.theta_0);
  CHECK_THAT(in_cm(pot.water_by_height.back().height), WithinAbs(6, 1e-12));
  CHECK_THAT(pot.water_by_height.back().water.value(), WithinAbs(mix.water_at(depth_cm(6)).value(), 1e-12));
}

TEST_CASE("The fill line counts for the water and the mound does not", "[pot_water][law]") {
  const Retention mix(worked_mix());
  Container deep = water_tray(8);
  deep.freeboard = depth_cm(2);
  deep.mound = Mound{depth_cm(2), MoundForm::cone};
  CHECK_THAT(on_the_pot(mix, deep), WithinAbs(on_the_pot(mix, water_tray(6)), 1e-12));
}

TEST_CASE("A saucer drowns what stands in it and drains the rest from its level", "[pot_water][law]") {
  const Retention mix(worked_mix());
  Container standing = water_tray(6);
  standing.saucer = depth_cm(2);
  const PotWater water = pot_water(mix, PotGeometry(standing));
  const double by_parts = (2 * mix.flooded().value() + 4 * capacity(worked_mix(), 4)) / 6;
  CHECK_THAT(water.container_capacity.value(), WithinAbs(by_parts, 1e-9));
  CHECK_THAT(in_cm(water.perched_height), WithinAbs(in_cm(mix.perched_height()) + 2, 1e-9));
  standing.saucer = depth_cm(7);
  const PotWater drowned = pot_water(mix, PotGeometry(standing));
  CHECK_THAT(drowned.container_capacity.value(), WithinAbs(drowned.theta_0.value(), 1e-12));
  CHECK_THAT(drowned.air_filled_porosity.value(), WithinAbs(0, 1e-12));
}

TEST_CASE("A wick drains the pot as if it were that much higher", "[pot_water][law]") {
  const Retention mix(worked_mix());
  Container hung = water_tray(6);
  hung.wick = depth_cm(6);
  // The upper half of a column of twice the height.
  const double upper_half = 2 * capacity(worked_mix(), 12) - capacity(worked_mix(), 6);
  CHECK_THAT(on_the_pot(mix, hung), WithinAbs(upper_half, 1e-8));
}

TEST_CASE("The wet mass is that of all mix that is filled in, the mound too", "[pot_water][law][regression]") {
  Container mounded = water_tray();
  mounded.mound = Mound{depth_cm(2), MoundForm::paraboloid};
  const PotGeometry pot(mounded);
  const PotWater water = pot_water(Retention(worked_mix()), pot);
  CHECK(water.mix_volume.value() == pot.main_mix_volume());
  CHECK(pot.main_mix_volume() > pot.volume());
}

TEST_CASE("Corners shrink with the sections when a water fill does, also in a tilted pot", "[pot_water][law][regression]") {
  Container filled = water_tray();
  filled.corner_radius = length_cm(4.5);
  filled.tilt.angle = angle_deg(20);
  Container similar = filled;
  const double scale = 0.8;
  similar.rim = {filled.rim.length * scale, filled.rim.width * scale};
  similar.corner_radius = filled.corner_radius * scale;
  filled.water_fill = PotGeometry(similar).volume();
  const Retention mix(worked_mix());
  CHECK_THAT(container_capacity(mix.curve(), PotGeometry(filled)).value(),
             WithinAbs(container_capacity(mix.curve(), PotGeometry(similar)).value(), 1e-9));
}

TEST_CASE("A tilted pot drains more, and without an angle nothing changes", "[pot_water][law]") {
  const Retention mix(worked_mix());
  for (Shape shape : {Shape::rectangular, Shape::oval, Shape::superellipse, Shape::hexagonal, Shape::octagonal, Shape::round}) {
    Container container = water_tray(6);
    container.shape = shape;
    container.exponent = 3;
    const bool one_length = shape == Shape::hexagonal || shape == Shape::octagonal || shape == Shape::round;
    if (one_length) container.rim.width = container.rim.length;
    const double level = on_the_pot(mix, container);
    container.tilt.angle = angle_deg(1e-4);
    CHECK_THAT(on_the_pot(mix, container), WithinAbs(level, 1e-5));
    container.tilt.angle = angle_deg(15);
    const double about_length = on_the_pot(mix, container);
    CHECK(about_length < level);
    container.tilt.axis = TiltAxis::width;
    // Turned about the shorter axis the far edge stands higher.
    const double about_width = on_the_pot(mix, container);
    if (one_length) CHECK_THAT(about_width, WithinAbs(about_length, 1e-12));
    if (!one_length) CHECK(about_width < about_length);
  }
}

TEST_CASE("A rectangular pot tilted agrees with the closed form of its curve", "[pot_water][law]") {
  // For one class, n = 2: the mean over the section is closed in asinh, the rest is quadrature here.
  RetentionInput input = worked_mix();
  input.envelope_grading = {{aperture_mm(2), Passing(0)}, {aperture_mm(2), Passing(1)}};
  input.constants.n = 2;
  const Retention mix(input);
  Container container = water_tray(6);
  container.tilt.angle = angle_deg(20);
  const double cosine = std::cos(container.tilt.angle.value());
  const double sine = std::sin(container.tilt.angle.value());
  const double alpha = 2 / 9.5;
  double sum = 0;
  constexpr int steps = 2000;
  for (int i = 0; i < steps; ++i) {
    const double base = (i + 0.5) / steps * 6 * cosine;
    sum += (std::asinh(alpha * (base + 18 * sine)) - std::asinh(alpha * base)) / (alpha * 18 * sine) / steps;
  }
  CHECK_THAT(on_the_pot(mix, container), WithinAbs(mix.curve().water_for_saturation(sum).value(), 1e-6));
}

TEST_CASE("A coarse bottom layer ends the mix's drainage at its own suction", "[pot_water][law]") {
  const Retention mix(worked_mix());
  const Retention layer = gravel(10);
  Container layered = water_tray(8);
  layered.bottom_layer = BottomLayer{depth_cm(2), std::nullopt};
  const PotWater water = pot_water(mix, PotGeometry(layered), &layer);
  REQUIRE(water.bottom_layer);
  // h_i = min(t, .5 k/d_l) = .475 cm; the mix above stands as in a pot from .475 to 6.475 cm.
  CHECK_THAT(in_cm(water.bottom_layer->interface_head), WithinAbs(0.475, 1e-12));
  const double expected = (6.475 * capacity(worked_mix(), 6.475) - 0.475 * capacity(worked_mix(), 0.475)) / 6;
  CHECK_THAT(water.container_capacity.value(), WithinAbs(expected, 1e-8));
  CHECK_THAT(water.bottom_layer->capacity_without.value(), WithinAbs(capacity(worked_mix(), 8), 1e-9));
  CHECK(water.air_filled_porosity < water.bottom_layer->air_without);
  CHECK_THAT(in_ml(water.bottom_layer->water_with.value()),
             WithinRel(26 * 18 * (6 * expected + 2 * water.bottom_layer->layer_capacity.value()), 1e-7));
  CHECK_THAT(in_ml(water.mix_volume.value()), WithinRel(26.0 * 18 * 6, 1e-12));
  // A thin layer of finer grain lets its full thickness count.
  layered.bottom_layer->thickness = depth_cm(0.4);
  CHECK_THAT(in_cm(pot_water(mix, PotGeometry(layered), &layer).bottom_layer->interface_head), WithinAbs(0.4, 1e-12));
}

TEST_CASE("A bottom layer of unknown grain is left out and said so", "[pot_water][law]") {
  const Retention mix(worked_mix());
  Container layered = water_tray(8);
  layered.bottom_layer = BottomLayer{depth_cm(2), std::nullopt};
  const PotWater water = pot_water(mix, PotGeometry(layered));
  CHECK_FALSE(water.bottom_layer);
  CHECK(water.notes.back().code == "water.layer-unknown");
  CHECK_THAT(water.container_capacity.value(), WithinAbs(capacity(worked_mix(), 8), 1e-9));
}

TEST_CASE("Wet mass is dry mix plus a gram for each millilitre held", "[pot_water][law]") {
  CHECK_THAT(in_g(wet_mass(pot_ml(2500), bulk_g_l(600), Porosity(0.4))), WithinAbs(2500, 1e-9));
}

TEST_CASE("Conductivity is told as a power of ten only", "[pot_water][law]") {
  CHECK(conductivity_power_hazen(aperture_mm(2)) == 0);       // 100·.2^2 = 4 cm/s
  CHECK(conductivity_power_hazen(aperture_mm(0.2)) == -2);    // .04 cm/s
  CHECK(conductivity_power_kozeny_carman(aperture_mm(0.5), Porosity(0.4)) == -1);  // .24 cm/s
}
