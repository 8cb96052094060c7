#include "gritwright/models/pot_notes.hpp"

#include <catch2/catch.hpp>
#include <variant>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("A water fill of less than half or more than one and a half times the lengths is told", "[pot_notes]") {
  Container tray;
  tray.rim = {length_cm(20), length_cm(10)};
  tray.depth = depth_cm(6);
  const auto told = [&](double ml) {
    tray.water_fill = pot_ml(ml);
    REQUIRE(check(tray).empty());
    return notes_on_water_fill(PotGeometry(tray));
  };
  CHECK(notes_on_water_fill(PotGeometry(tray)).empty());
  for (const double ml : {600.0, 1200.0, 1800.0}) CHECK(told(ml).empty());
  CHECK(told(1801).size() == 1);
  // Litres typed as millilitres.
  const Notes slip = told(1.2);
  REQUIRE(slip.size() == 1);
  CHECK(slip.front().code == "container.water-fill-far-off");
  CHECK(slip.front().level == Level::warning);
  CHECK_THAT(std::get<double>(slip.front().facts.at("lengths_ml")), WithinAbs(1200, 1e-9));
  CHECK_THAT(std::get<double>(slip.front().facts.at("percent")), WithinAbs(0.1, 1e-9));
}
