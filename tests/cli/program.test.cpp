#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;

TEST_CASE("An unknown verb or option is wrong usage", "[cli][refuses]") {
  CHECK(run({"grind"}).exit == Exit::wrong_usage);
  CHECK(run({"grade", "-", "--no-such-option"}).exit == Exit::wrong_usage);
  CHECK(run({}).exit == Exit::wrong_usage);
  CHECK(run({"grade", "-", "--band", "6-2"}).exit == Exit::wrong_usage);
}

TEST_CASE("A file that is missing, or a folder, is file trouble and says which", "[cli][refuses]") {
  const Answer missing = run({"grade", "no-such-file.csv"});
  CHECK(missing.exit == Exit::file_trouble);
  CHECK(missing.err.starts_with("no-such-file.csv: "));
  CHECK(run({"grade", GRITWRIGHT_SOURCE_DIR}).exit == Exit::file_trouble);
}

TEST_CASE("Refused input answers nothing on standard output and names every fault with its place", "[cli][refuses]") {
  const Answer answer = run({"grade", "-", "--json"}, "aperture_mm,retained_g\n2,abc\n4,1\npan,-3\n");
  CHECK(answer.exit == Exit::input_refused);
  CHECK(answer.out.empty());
  CHECK(answer.err.find("standard input:2:3: ") != std::string::npos);
  CHECK(std::count(answer.err.begin(), answer.err.end(), '\n') >= 1);
}

TEST_CASE("Help and version answer on standard output", "[cli]") {
  CHECK(run({"--help"}).exit == Exit::done);
  CHECK(run({"--version"}).out.starts_with("gritwright "));
}
