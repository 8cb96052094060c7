#include "gritwright/report/pot_section.hpp"

#include <catch2/catch.hpp>

#include "gritwright/models/mix_in_pot.hpp"
#include "support/random_mix.hpp"
#include "support/random_pots.hpp"

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("At every height of a pot grain, water and air add up to one and none is negative", "[pot_section][law]") {
  test::RandomPots pots(Catch::rngSeed());
  RandomMixes mixes(Catch::rngSeed() + 1);
  int filled = 0;
  for (int i = 0; i < 300; ++i) {
    const PotGeometry pot(pots.container());
    const Mix mix = mixes.next();
    const auto state = mix_state(mix);
    if (!state) continue;
    const auto water = mix_in_pot(*state, mix.water, pot);
    if (!water) continue;
    const PotSection section = pot_section(pot, &*water);
    REQUIRE(section.slices.size() == water->water_by_height.size());
    for (const PotSlice& slice : section.slices) {
      for (const Porosity share : {slice.grain, slice.water, slice.trapped_air, slice.free_air}) {
        CHECK(share.value() >= -1e-9);
        CHECK(share.value() <= 1 + 1e-9);
      }
      CHECK_THAT(slice.grain.value() + slice.water.value() + slice.trapped_air.value() + slice.free_air.value(), WithinAbs(1, 1e-12));
    }
    ++filled;
  }
  CHECK(filled > 100);
}

TEST_CASE("A section without a mix shows the pot and no water", "[pot_section]") {
  Container tray;
  tray.shape = Shape::rectangular;
  tray.rim = {length_cm(40), length_cm(30)};
  tray.base = Section{length_cm(30), length_cm(20)};
  tray.depth = depth_cm(8);
  tray.freeboard = depth_cm(1);
  const PotSection section = pot_section(PotGeometry(tray), nullptr);
  CHECK(section.slices.empty());
  CHECK_FALSE(section.perched.has_value());
  CHECK_THAT(in_cm(section.widths.front().length), WithinAbs(30, 1e-9));
  CHECK_THAT(in_cm(section.widths.back().length), WithinAbs(40, 1e-9));
  CHECK_THAT(in_cm(section.fill_line), WithinAbs(7, 1e-9));
}

TEST_CASE("Seen from above a pot's rings reach as far as its lengths at rim, fill line and floor", "[pot_section]") {
  Container tray;
  tray.shape = Shape::oval;
  tray.rim = {length_cm(40), length_cm(30)};
  tray.base = Section{length_cm(34), length_cm(22)};
  tray.depth = depth_cm(6);
  tray.freeboard = depth_cm(0.6);
  const auto rings = pot_rings(PotGeometry(tray));
  REQUIRE(rings.size() == 3);
  // Straight walls: a tenth of the way down the lengths have lost a tenth of their taper.
  const double half_lengths[] = {20, 19.7, 17};
  for (std::size_t i = 0; i < rings.size(); ++i) {
    double farthest = 0;
    for (const auto& [across, along] : rings[i].points) farthest = std::max(farthest, in_cm(across));
    CHECK_THAT(farthest, WithinAbs(half_lengths[i], 1e-6));
  }
}
