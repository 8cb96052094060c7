#include "gritwright/models/litres.hpp"

#include <catch2/catch.hpp>
#include <optional>
#include <vector>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("Filling a volume takes more mixed litres, by settling and by spill", "[litres][law]") {
  // 4.6 L / (.92 · .95), worked by hand.
  CHECK_THAT(in_l(mixed_volume_to_fill(pot_ml(4600), Settling(0.08), Spill(0.05))), WithinAbs(5.263158, 1e-6));
  CHECK_THAT(in_l(mixed_volume_to_fill(pot_ml(4600), Settling(0), Spill(0))), WithinAbs(4.6, 1e-12));
}

TEST_CASE("The components of mixed litres take up the shrinkage", "[litres][law]") {
  CHECK_THAT(in_l(component_volume(mixed_l(10), LooseShare(0.25), Shrinkage(0.2))), WithinAbs(3.125, 1e-12));

  MixState state;
  state.loose_shares = {LooseShare(0.25), LooseShare(0.75)};
  CHECK_FALSE(component_volumes(mixed_l(10), state));
  state.shrinkage = Shrinkage(0.2);
  const auto volumes = component_volumes(mixed_l(10), state);
  REQUIRE(volumes);
  double loose_l = 0;
  for (const LooseVolume& volume : *volumes) loose_l += in_l(volume);
  CHECK_THAT(loose_l * (1 - 0.2), WithinAbs(10, 1e-12));
}

TEST_CASE("Without a jug test a mix settles as published for its placing", "[litres][published]") {
  // Gillette & Hill, Concrete Construction (1908): Table IX, hauled stone, median of ten rows 8.2 %, taken as 8; Feret's shaken
  // sands, 14 % rounded and 19 % angular.
  CHECK(default_settling(Placing::poured) == Settling(0));
  CHECK_THAT(default_settling(Placing::worked_in).value(), WithinAbs(0.082, 0.005));
  CHECK_THAT(default_settling(Placing::shaken_hard_rounded).value(), WithinAbs(0.14, 1e-12));
  CHECK_THAT(default_settling(Placing::shaken_hard_angular).value(), WithinAbs(0.19, 1e-12));
}

TEST_CASE("One bag has the litres of its dry grain, or those it came with where its mass or litre weight is unknown", "[litres][law]") {
  Bag bag;
  bag.count = 3;
  bag.volume = loose_l(14);
  CHECK_THAT(in_l(litres_of_one(bag, bulk_g_l(500)).value()), WithinAbs(14, 1e-12));
  bag.mass_as_bagged = mass_g(7000);
  bag.moisture_basis = MoistureBasis::oven_dry;
  CHECK_THAT(in_l(litres_of_one(bag, bulk_g_l(560)).value()), WithinAbs(12.5, 1e-9));
  CHECK_THAT(in_l(litres_of_one(bag, {}).value()), WithinAbs(14, 1e-12));
  bag.volume.reset();
  CHECK_FALSE(litres_of_one(bag, {}));
}

TEST_CASE("A mixed litre costs what its loose litres cost, so more the more it shrinks", "[litres][law]") {
  MixState state;
  state.loose_shares = {LooseShare(0.25), LooseShare(0.75)};
  const std::vector<std::optional<PricePerLitre>> prices{PricePerLitre(2), PricePerLitre(1)};
  CHECK_FALSE(price_per_mixed_l(state, prices));
  state.shrinkage = Shrinkage(0.2);
  // (.25 x 2 + .75 x 1) / .8, worked by hand.
  CHECK_THAT(price_per_mixed_l(state, prices).value().value(), WithinAbs(1.5625, 1e-12));
  CHECK_FALSE(price_per_mixed_l(state, std::vector<std::optional<PricePerLitre>>{PricePerLitre(2), std::nullopt}));
}
