#include "gritwright/formats/number.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace gritwright;

namespace {
std::string code_of(const Result<double>& result) { return result ? "" : result.problems().front().code; }
}  // namespace

TEST_CASE("A number is read whole, whatever the locale", "[number]") {
  CHECK(*parse_number("12.5") == 12.5);
  CHECK(*parse_number("-0.25") == -0.25);
  CHECK(*parse_number("1e-3") == 0.001);
  CHECK(*parse_number("2,5", DecimalMark::point_or_comma) == 2.5);
  CHECK(*parse_number("2.5", DecimalMark::point_or_comma) == 2.5);
}

TEST_CASE("Rubbish is not taken for a number", "[number][refuses]") {
  for (const char* text : {"12g3", "nan", "inf", "-inf", "+1", "1.2.3", "0x10", "--1", "-", ".", "e5", "1 2", "twelve"})
    CHECK(code_of(parse_number(text)) == "number.not-a-number");
  CHECK(code_of(parse_number("")) == "number.missing");
  CHECK(code_of(parse_number("1e999")) == "number.too-large");

  CHECK(code_of(parse_number("-1e16")) == "number.too-large");
  CHECK(code_of(parse_number("1e-999")) == "number.too-small");
  CHECK(code_of(parse_number("1e-300")) == "number.too-small");
  CHECK(parse_number("0").ok());
  for (const char* text : {"1e-999", "-1e-999"}) CHECK(code_of(parse_number(text)) == "number.too-small");
  CHECK(code_of(parse_number("0." + std::string(400, '0') + "1")) == "number.too-small");
  CHECK(code_of(parse_number("0.1e999")) == "number.too-large");
  CHECK(code_of(parse_number("1,5")) == "number.decimal-comma");
  CHECK(code_of(parse_number("1.234,5", DecimalMark::point_or_comma)) == "number.not-a-number");
  CHECK(code_of(parse_number("1,2,3", DecimalMark::point_or_comma)) == "number.not-a-number");
}

TEST_CASE("A written number tells the power of ten of its last digit", "[number]") {
  CHECK(written_decimals("12") == 0);
  CHECK(written_decimals("12.50") == 2);
  CHECK(written_decimals("12,5") == 1);
  CHECK(written_decimals("1.5e2") == -1);
  CHECK(written_decimals("1.5E+1") == 0);
  CHECK(written_decimals("15e-1") == 1);
  CHECK(written_decimals("1e99999999999") == 0);
}
