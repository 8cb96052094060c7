#include "gritwright/report/text_table.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;

TEST_CASE("A figure that is not defined is a dash, and nothing is minus zero", "[text_table]") {
  CHECK(figure(std::nullopt, 2) == "–");
  CHECK(figure(-0.001, 2) == "0.00");
  CHECK(figure(-1.25, 1) == "-1.2");
  CHECK(figure(2.5, 2) == "2.50");
}

TEST_CASE("A table lines its columns up, also with letters outside ASCII", "[text_table]") {
  CHECK(text_table({"sieve", "g"}, {{"4.75 mm", "0"}, {"–", "12.5"}}) ==
        "sieve       g\n"
        "4.75 mm     0\n"
        "–        12.5\n");
}
