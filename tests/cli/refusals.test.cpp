// What the command line refuses: exit 3, nothing on standard output, and the place of every fault.
#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;

namespace {

struct Refused {
  std::string what;
  std::string verb;
  std::string input;
  std::string place;  ///< that must stand in the message
};

std::string csv(const std::string& rows) { return "aperture_mm,retained_g\n" + rows; }
std::string mix_of(const std::string& component) {
  return R"({"format":"gritwright/mix/1","components":[{"name":"a",)" + component + "}]}";
}
std::string container(const std::string& rest) { return R"({"format":"gritwright/container/1",)" + rest + "}"; }

std::vector<Refused> refused() {
  using namespace std::string_literals;
  return {
      {"an empty file", "grade", "", "standard input"},
      {"a stack without a pan", "grade", csv("4,1\n2,3\n"), "3:1"},
      {"openings that rise", "grade", csv("2,1\n4,3\npan,1\n"), "3:1"},
      {"a repeated opening", "grade", csv("4,1\n4,3\npan,1\n"), "3:1"},
      {"a zero opening", "grade", csv("4,1\n0,3\npan,1\n"), "3:1"},
      {"a negative opening", "grade", csv("4,1\n-2,3\npan,1\n"), "3:1"},
      {"a negative mass", "grade", csv("4,1\n2,-3\npan,1\n"), "3:3"},
      {"a mass with rubbish behind it", "grade", csv("4,12g3\npan,1\n"), "2:3"},
      {"a mass that is not a number", "grade", csv("4,nan\npan,1\n"), "2:3"},
      {"a mass that is not finite", "grade", csv("4,1e999\npan,1\n"), "2:3"},
      {"text where a number belongs", "grade", csv("4,much\npan,1\n"), "2:3"},
      {"a decimal comma in a comma file", "grade", csv("4,\"12,5\"\npan,1\n"), "2:3"},
      {"fractions that outweigh the sample", "grade", "# dry_mass_g: 100\n" + csv("4,50\n2,60\npan,1\n"), "standard input"},
      {"a NUL byte", "grade", csv("4,1\0\npan,1\n"s), "2:4"},
      {"bytes that are not UTF-8", "grade", csv("4,\xff\npan,1\n"), "2:3"},
      {"JSON nested 10,000 deep", "grade", std::string(10000, '['), "standard input"},
      {"a file of 100 MB", "grade", std::string(100'000'000, '1'), "standard input"},
      {"an unknown key", "mix", mix_of(R"("parts":1,"bulk_density_g_l":450,"class_mm":4,"colour":1)"), "#/components/0/colour"},
      {"a duplicate key", "mix", mix_of(R"("parts":1,"parts":2,"bulk_density_g_l":450,"class_mm":4)"), "#/components/0/parts"},
      {"an unknown material", "mix", mix_of(R"("parts":1,"material":"akadma","class_mm":4)"), "#/components/0/material"},
      {"parts that are all zero", "mix", mix_of(R"("parts":0,"bulk_density_g_l":450,"class_mm":4)"), "#/components"},
      {"bulk above particle density", "mix", mix_of(R"("parts":1,"bulk_density_g_l":950,"particle_density_g_l":900,"class_mm":4)"),
       "#/components/0/"},
      {"particle above skeletal density", "mix",
       mix_of(R"("parts":1,"bulk_density_g_l":450,"particle_density_g_l":900,"skeletal_density_g_l":800,"class_mm":4)"), "#/components/0/"},
      {"absorption above the grain's pores", "mix",
       mix_of(R"("parts":1,"bulk_density_g_l":450,"particle_density_g_l":900,"skeletal_density_g_l":1000,"water_absorption":0.9,"class_mm":4)"),
       "#/components/0/water_absorption"},
      {"passing that falls as the aperture grows", "mix",
       mix_of(R"("parts":1,"bulk_density_g_l":450,"grading":[{"aperture_mm":9,"passing":50},{"aperture_mm":4,"passing":60}])"),
       "#/components/0/grading"},
      {"passing outside 0 to 100 by more than a point", "mix",
       mix_of(R"("parts":1,"bulk_density_g_l":450,"grading":[{"aperture_mm":9,"passing":102},{"aperture_mm":4,"passing":0}])"),
       "#/components/0/grading/0/passing"},
      {"a pot without depth", "pot", container(R"("shape":"round","rim":{"diameter_cm":20},"depth_cm":0)"), "#/depth_cm"},
      {"a turned-in wall that closes", "pot",
       container(R"("shape":"drum","rim":{"diameter_cm":26},"middle":{"diameter_cm":15},"base":{"diameter_cm":60},"depth_cm":6)"),
       "#/middle/diameter_cm"},
      {"a fill line under the floor", "pot",
       container(R"("shape":"round","rim":{"diameter_cm":20},"depth_cm":5,"freeboard_cm":6)"), "#/freeboard_cm"},
  };
}

}  // namespace

TEST_CASE("Bad input is refused with its place, exit 3 and nothing written", "[cli][refuses]") {
  for (const Refused& row : refused()) {
    INFO(row.what);
    const Answer answer = run({row.verb, "-", "--json"}, row.input);
    INFO(answer.err);
    CHECK(answer.exit == Exit::input_refused);
    CHECK(answer.out.empty());
    CHECK(answer.err.find(row.place) != std::string::npos);
  }
}

TEST_CASE("A spreadsheet's CSV is taken: byte order mark, CRLF, semicolon or tab, decimal commas", "[cli][grade]") {
  const auto plain = run({"grade", "-", "--json"}, csv("4.75,0\n2,60.5\npan,1.5\n"));
  REQUIRE(plain.exit == Exit::done);
  CHECK(run({"grade", "-", "--json"}, "\xEF\xBB\xBF" "aperture_mm;retained_g\r\n4,75;0\r\n2;60,5\r\npan;1,5\r\n").out == plain.out);
  CHECK(run({"grade", "-", "--json"}, "aperture_mm\tretained_g\n4,75\t0\n2\t60,5\npan\t1,5\n").out == plain.out);
}

TEST_CASE("Loss is noted above .3 %, warned of above 1 %, and a pan above 3 % is warned of", "[cli][grade]") {
  const auto levels = [](const std::string& dry_mass, const std::string& pan) {
    std::string text;
    const auto json = run({"grade", "-", "--json"}, "# dry_mass_g: " + dry_mass + "\n# particle_density_g_l: 900\n" +
                                                        csv("4,0\n2,500\n1,450\npan," + pan + "\n")).json();
    for (const auto& note : json["notes"]) text += note["code"].get<std::string>() + ":" + note["level"].get<std::string>() + " ";
    return text;
  };
  CHECK(levels("970", "20").find("sieve-test.loss") == std::string::npos);
  CHECK(levels("974", "20").find("sieve-test.loss:note") != std::string::npos);
  CHECK(levels("985", "20").find("sieve-test.loss-large:warning") != std::string::npos);
  CHECK(levels("1000", "50").find("sieve-test.pan:warning") != std::string::npos);
}
