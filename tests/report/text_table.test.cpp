#include "gritwright/report/text_table.hpp"

#include <catch2/catch.hpp>
#include <string>

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

TEST_CASE("A long text in the last column makes no other line longer", "[text_table]") {
  CHECK(text_table({"record", "g", "what"}, {{"L-01", "1.5", "a"}, {"L-02", "12", std::string(10'000, 'x')}}, LastColumn::words) ==
        "record    g  what\n"
        "L-01    1.5  a\n"
        "L-02     12  " +
            std::string(10'000, 'x') + "\n");
}

TEST_CASE("A cell with line ends and control signs keeps to its row", "[text_table]") {
  CHECK(text_table({"record", "what"}, {{"L-01", "two\nlines\t\x1B[31m"}, {"L-02", "ä"}}, LastColumn::words) ==
        "record  what\n"
        "L-01    two lines  [31m\n"
        "L-02    ä\n");
}
