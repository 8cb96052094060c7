#include "gritwright/models/measured_properties.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

bool asks(const Notes& notes, const std::string& code) {
  for (const Note& note : notes)
    if (note.code == code) return true;
  return false;
}

}  // namespace

TEST_CASE("A jug gives loose and worked-in density and the settling", "[measured_properties]") {
  // Invented: jug 210 g, 1 L of grain at 5 % moisture, worked in to 920 mL.
  const JugReading reading{mass_g(210), mass_g(840), loose_l(1), Moisture(0.05), loose_l(0.92)};
  REQUIRE(check(reading).empty());
  const MeasuredBulk measured = measured_bulk(reading, particle_g_l(1140));
  CHECK_THAT(in_g_l(measured.loose), WithinAbs(600, 1e-9));
  CHECK_THAT(in_g_l(*measured.worked_in), WithinAbs(600 / 0.92, 1e-9));
  CHECK_THAT(measured.settling->value(), WithinAbs(0.08, 1e-12));
  CHECK(measured.notes.empty());
}

TEST_CASE("Settling is the share of the loose litre that working in takes away, and none where grain would swell", "[measured_properties]") {
  CHECK_THAT(settling_of(bulk_g_l(460), bulk_g_l(500))->value(), WithinAbs(0.08, 1e-12));
  CHECK_FALSE(settling_of(bulk_g_l(500), bulk_g_l(460)));
}

TEST_CASE("A mix settles as its grains do by their litres, those without a jug as usual", "[measured_properties][law]") {
  const std::vector<GrainSettling> grains{{loose_l(3), Settling(0.04)}, {loose_l(1), Settling(0.12)}};
  CHECK_THAT(settling_of_grains(grains, Settling(0.08))->value(), WithinAbs(0.06, 1e-12));
  const std::vector<GrainSettling> half{{loose_l(1), Settling(0.04)}, {loose_l(1), {}}};
  CHECK_THAT(settling_of_grains(half, Settling(0.08))->value(), WithinAbs(0.06, 1e-12));
  const std::vector<GrainSettling> none{{loose_l(1), {}}};
  CHECK_FALSE(settling_of_grains(none, Settling(0.08)));
  CHECK_FALSE(settling_of_grains({}, Settling(0.08)));
}

TEST_CASE("Grain under water gives particle density and absorption back", "[measured_properties][law]") {
  // Grain of known density, pores and fill, weighed as the protocol says.
  for (const double particle_g_per_l : {450.0, 830.0, 1140.0, 2650.0}) {
    for (const double absorption : {0.0, 0.15, 0.6}) {
      const double dry = 300, volume_ml = 1000 * dry / particle_g_per_l, soaked = dry * (1 + absorption);
      const double jug = 350, mark_ml = 2000;
      const DisplacementReading reading{mass_g(soaked), mass_g(jug + mark_ml), mass_g(jug + mark_ml - volume_ml + soaked), mass_g(dry)};
      REQUIRE(check(reading).empty());
      const MeasuredGrain measured = measured_grain(reading);
      CHECK_THAT(in_g_l(*measured.particle_density), WithinAbs(particle_g_per_l, 1e-6));
      CHECK_THAT(measured.water_absorption->value(), WithinAbs(absorption, 1e-9));
      CHECK(asks(measured.notes, "displacement.floats") == (particle_g_per_l * (1 + absorption) < 1000 - 1e-6));
    }
  }
}

TEST_CASE("Displacement is the specific gravity of coarse aggregate by weighing under water", "[measured_properties][published]") {
  // ASTM C127, from memory: oven-dry A, surface-dry B, apparent mass in water C: relative density (OD) = A/(B - C), absorption =
  // (B - A)/A. With A 1000, B 1025, C 635 g: 2.564 and 2.5 %.
  const double full = 1500;
  const DisplacementReading reading{mass_g(1025), mass_g(full), mass_g(full + 635), mass_g(1000)};
  const MeasuredGrain measured = measured_grain(reading);
  CHECK_THAT(in_g_l(*measured.particle_density) / 1000, WithinAbs(2.564, 5e-4));
  CHECK_THAT(measured.water_absorption->value(), WithinAbs(0.025, 1e-12));
}

TEST_CASE("A grain density that leaves a measured litre next to no voids is asked about", "[measured_properties][law]") {
  const DisplacementReading reading{mass_g(600), mass_g(1500), mass_g(1580), mass_g(400)};  // 400 g in 520 mL
  CHECK_FALSE(asks(measured_grain(reading).notes, "jug.voids-implausible"));
  CHECK_FALSE(asks(measured_grain(reading, {}, bulk_g_l(420)).notes, "jug.voids-implausible"));
  CHECK(asks(measured_grain(reading, {}, bulk_g_l(700)).notes, "jug.voids-implausible"));
}

TEST_CASE("Impossible readings are refused with their place", "[measured_properties][refuses]") {
  const Problems jug = check(JugReading{mass_g(500), mass_g(400), loose_l(0), {}, loose_l(1)});
  CHECK(jug.size() == 3);
  CHECK(jug[0].code == "jug.not-filled");
  CHECK(check(DisplacementReading{mass_g(300), mass_g(2000), mass_g(2400), mass_g(320)}).size() == 2);
}

TEST_CASE("Implausible readings are asked about and kept", "[measured_properties]") {
  const MeasuredBulk loose = measured_bulk({mass_g(0), mass_g(200), loose_l(1), {}, loose_l(0.7)}, particle_g_l(1140));
  CHECK(asks(loose.notes, "jug.voids-implausible"));
  CHECK(asks(loose.notes, "jug.settles-much"));
  CHECK_THAT(in_g_l(loose.loose), WithinAbs(200, 1e-9));
  CHECK(asks(measured_absorption(mass_g(180), mass_g(100), particle_g_l(1140), skeletal_g_l(2350)).notes, "absorption.above-pores"));
  CHECK(measured_absorption(mass_g(130), mass_g(100), particle_g_l(1140), skeletal_g_l(2350)).notes.empty());
  CHECK(asks(repeated(600, 640).notes, "measurement.repeats-differ"));
  CHECK(repeated(600, 610).notes.empty());
}

TEST_CASE("A stack is thoroughly sieved when less than half a percent falls in one more minute", "[measured_properties][published]") {
  // ASTM C136-19: not more than 0.5 % by mass of the total sample passes in one more minute.
  CHECK(sieve_thoroughness(mass_g(400), mass_g(1.9)).thorough);
  CHECK_FALSE(sieve_thoroughness(mass_g(400), mass_g(2.1)).thorough);
  CHECK(asks(sieve_thoroughness(mass_g(400), mass_g(6)).notes, "sieving.not-thorough"));
}
