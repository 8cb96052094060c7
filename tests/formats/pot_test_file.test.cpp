#include "gritwright/formats/pot_test_file.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;

namespace {

std::vector<std::string> faults(const std::string& text) {
  std::vector<std::string> list;
  const auto file = read_pot_test(text, "test", {});
  for (const Problem& problem : file.problems()) list.push_back(problem.code + " " + problem.where.pointer);
  return list;
}

using Faults = std::vector<std::string>;

const std::string start = R"({"format":"gritwright/pot-test/1",)";

}  // namespace

TEST_CASE("A pot test file gives masses, volume and depth", "[pot_test_file]") {
  const auto file = read_pot_test(
      start + R"("depth_cm":6,"volume_ml":1000,"tare_g":120,"dry_g":720,"flooded_g":1290,"drained_g":1035})", "test", {});
  REQUIRE(file);
  REQUIRE(file->readings.size() == 1);
  const WrittenPotReading& reading = file->readings.front();
  CHECK(reading.volume == pot_ml(1000));
  CHECK(std::get<Depth>(reading.pot.value()) == depth_cm(6));
  CHECK(std::get<PotWeighings>(reading.water) == PotWeighings{mass_g(120), mass_g(720), mass_g(1290), mass_g(1035)});
  CHECK_FALSE(file->mix);
}

TEST_CASE("A mix and a container inside a pot test may leave out their format", "[pot_test_file]") {
  const auto file = read_pot_test(start + R"("mix":{"components":[{"name":"a","parts":1,"bulk_density_g_l":500,"class_mm":3}]},
    "container":{"shape":"round","rim":{"diameter_cm":14},"depth_cm":8},"poured_ml":500,"caught_ml":200})", "test", {});
  REQUIRE(file);
  CHECK(file->mix->components.front().name == "a");
  CHECK(std::get<Container>(*file->readings.front().pot).depth == depth_cm(8));
}

TEST_CASE("A pot test file refuses what does not go together, each at its place", "[pot_test_file][refuses]") {
  CHECK(faults(start + R"("volume_ml":1000,"dry_g":700,"poured_ml":10})") == Faults{"pot-test.weighed-and-poured "});
  CHECK(faults(start + R"("volume_ml":1000,"dry_g":700})") == Faults{"pot-test.no-wet-mass "});
  CHECK(faults(start + R"("tests":[]})") == Faults{"pot-test.none /tests"});
  CHECK(faults(start + R"("tests":[{"volume_ml":1000,"dry_g":700,"drained_g":600}],"dry_g":3})") ==
        Faults{"pot-test.mass-order /tests/0/drained_g", "key.unknown /dry_g"});
  CHECK(faults(start + R"("volume_ml":1000,"dry_g":700,"drained_g":900,"mix":{"format":"gritwright/container/1","components":[]}})")
            .front() == "format.unknown /mix/format");
}
