#include "gritwright/domain/pot_weighings.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;

namespace {

PotReading weighed(double tare, double dry, double flooded, double drained) {
  return {pot_ml(1000), PotWeighings{mass_g(tare), mass_g(dry), mass_g(flooded), mass_g(drained)}};
}

std::vector<std::string> faults(const PotReading& reading) {
  std::vector<std::string> list;
  for (const Problem& problem : check(reading)) list.push_back(problem.code + " " + problem.where.pointer);
  return list;
}

using Faults = std::vector<std::string>;

}  // namespace

TEST_CASE("A pot test in order is taken", "[pot_test]") {
  CHECK(check(weighed(120, 720, 1290, 1035)).empty());
  CHECK(check(weighed(0, 720, 720, 720)).empty());
  CHECK(check({pot_ml(1000), PouredWater{pot_ml(570), pot_ml(255)}}).empty());
}

TEST_CASE("A pot test refuses weighings out of order", "[pot_test][refuses]") {
  CHECK(faults(weighed(720, 720, 1290, 1035)) == Faults{"pot-test.mass-order /dry_g"});
  CHECK(faults(weighed(120, 720, 1290, 700)) == Faults{"pot-test.mass-order /drained_g"});
  CHECK(faults(weighed(120, 720, 1000, 1035)) == Faults{"pot-test.mass-order /flooded_g"});
  CHECK(faults(weighed(-1, 720, 1290, 1035)) == Faults{"pot-test.mass-negative /tare_g"});
}

TEST_CASE("A pot test refuses all its faults at once", "[pot_test][refuses]") {
  PotReading reading{pot_ml(0), PouredWater{pot_ml(200), pot_ml(255)}};
  CHECK(faults(reading) == Faults{"pot-test.volume-not-positive /volume_ml", "pot-test.caught-above-poured /caught_ml"});
}
