#include "gritwright/formats/typed_quantity.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("A length takes its unit with it, and a bare number takes the field's", "[typed_quantity]") {
  CHECK_THAT(in_cm(*parse_length("6,5", LengthUnit::centimetre)), WithinRel(6.5, 1e-12));
  CHECK_THAT(in_cm(*parse_length(" 60 mm ", LengthUnit::centimetre)), WithinRel(6.0, 1e-12));
  CHECK_THAT(in_mm(*parse_length("3/8 in", LengthUnit::centimetre)), WithinRel(9.525, 1e-12));
  CHECK_THAT(in_mm(*parse_length("2 1/2\"", LengthUnit::centimetre)), WithinRel(63.5, 1e-12));
  CHECK_THAT(in_mm(*parse_length("2.5", LengthUnit::inch)), WithinRel(63.5, 1e-12));
}

// NIST SP 811, appendix B: ounce 28.34952 g, pound 453.5924 g, US liquid quart 0.9463529 L, US gallon 3.785412 L.
TEST_CASE("Ounces, pounds, quarts and gallons convert by the published factors", "[typed_quantity][published]") {
  CHECK_THAT(in_g(parse_mass("1 oz", MassUnit::gram)->mass), WithinRel(28.34952, 1e-6));
  CHECK_THAT(in_g(parse_mass("2", MassUnit::pound)->mass), WithinRel(907.1848, 1e-6));
  CHECK_THAT(in_l(LooseVolume(*parse_volume("1 qt", VolumeUnit::litre))), WithinRel(0.9463529, 1e-6));
  CHECK_THAT(in_l(LooseVolume(*parse_volume("2", VolumeUnit::gallon))), WithinRel(7.570824, 1e-6));
}

// NIST SP 811, appendix B: pound per cubic foot 16.01846 kg/m3.
TEST_CASE("A density is in grams a litre unless it says otherwise", "[typed_quantity][published]") {
  CHECK_THAT(*parse_density("696"), WithinRel(696.0, 1e-12));
  CHECK_THAT(*parse_density("0,7 kg/L"), WithinRel(700.0, 1e-12));
  CHECK_THAT(*parse_density("650 kg/m3"), WithinRel(650.0, 1e-12));
  CHECK_THAT(*parse_density("10 lb/ft3"), WithinRel(160.1846, 1e-6));
}

TEST_CASE("A mass remembers what its last digit stands for", "[typed_quantity]") {
  CHECK_THAT(in_g(parse_mass("12.50", MassUnit::gram)->last_digit), WithinRel(0.01, 1e-9));
  CHECK_THAT(in_g(parse_mass("1,2 kg", MassUnit::gram)->last_digit), WithinRel(100.0, 1e-9));
  CHECK_THAT(in_g(parse_mass("12", MassUnit::gram)->last_digit), WithinRel(1.0, 1e-9));
}

TEST_CASE("A sieve goes by its name or by its opening in mm", "[typed_quantity]") {
  CHECK_THAT(in_mm(*parse_aperture("No. 4")), WithinAbs(4.75, 1e-9));
  CHECK_THAT(in_mm(*parse_aperture("2,36")), WithinAbs(2.36, 1e-9));
  CHECK_THAT(in_mm(*parse_aperture("1.5 cm")), WithinAbs(15, 1e-9));
}

TEST_CASE("Rubbish and foreign units are refused by name", "[typed_quantity][refuses]") {
  CHECK(parse_mass("12g3", MassUnit::gram).problems().front().code == "number.not-a-number");
  CHECK(parse_mass("nan", MassUnit::gram).problems().front().code == "number.not-a-number");
  CHECK(parse_mass("1e999", MassUnit::gram).problems().front().code == "number.too-large");
  CHECK(parse_mass("", MassUnit::gram).problems().front().code == "number.missing");
  CHECK(parse_mass("12 l", MassUnit::gram).problems().front().code == "quantity.unknown-unit");
  CHECK(parse_length("1/0 in", LengthUnit::inch).problems().front().code == "number.not-a-number");
  CHECK(parse_density("5 g").problems().front().code == "quantity.unknown-unit");
  CHECK(parse_percent("5 g").problems().front().code == "quantity.unknown-unit");
  CHECK_THAT(*parse_percent("12,5 %"), WithinRel(0.125, 1e-12));
}
