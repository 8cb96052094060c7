#include "gritwright/report/quantity_text.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;

TEST_CASE("Text gives a unit with every figure and a dash without one", "[quantity_text]") {
  CHECK(size_text(aperture_mm(4.75), UnitSystem::metric) == "4.75 mm");
  CHECK(depth_text(depth_cm(6), UnitSystem::metric) == "6.0 cm");
  CHECK(mass_text(mass_g(729), UnitSystem::metric) == "729 g");
  CHECK(mass_text(mass_kg(14.25), UnitSystem::metric) == "14.2 kg");
  CHECK(volume_text(2.5, UnitSystem::metric) == "2.50 L");
  CHECK(volume_text(0.35, UnitSystem::metric) == "350 mL");
  CHECK(volume_text(0.9994, UnitSystem::metric) == "999 mL");
  CHECK(volume_text(0.9999999999999998, UnitSystem::metric) == "1.00 L");
  CHECK(density_text(696.2, UnitSystem::metric) == "696 g/L");
  CHECK(percent_text(0.1724) == "17.2 %");
  CHECK(scoops_text(9) == "9");
  CHECK(scoops_text(12.75) == "12.75");
  CHECK(scoops_text(std::nullopt) == "–");
  CHECK(size_text(std::nullopt, UnitSystem::metric) == "–");
  CHECK(percent_text(std::nullopt) == "–");
}

TEST_CASE("A sum of weighings keeps its tenths of a gram from 100 g to 10 kg, and beyond is told as any mass", "[quantity_text]") {
  const auto told = [](double g) { return weighed_text(mass_g(g), UnitSystem::metric); };
  CHECK(told(99.94) == mass_text(mass_g(99.94), UnitSystem::metric));
  CHECK(told(109.5) == "109.5 g");
  CHECK(told(109.46) == "109.5 g");
  CHECK(told(-109.5) == "-109.5 g");
  CHECK(told(1300) == "1300 g");
  CHECK(told(9999.9) == "9999.9 g");
  CHECK(told(12345) == mass_text(mass_g(12345), UnitSystem::metric));
  // Six weighings of 18.25 g, whose sum is a hair below 109.5.
  CHECK(told(6 * 18.25 - 1e-12) == "109.5 g");
  CHECK(weighed_text(mass_g(109.5), UnitSystem::us) == mass_text(mass_g(109.5), UnitSystem::us));
  CHECK(weighed_text(std::nullopt, UnitSystem::metric) == mass_text(std::nullopt, UnitSystem::metric));
}

TEST_CASE("Sizes read off a curve stand beside each other with three digits, and a sieve keeps its own name", "[quantity_text]") {
  CHECK(grain_size_text(aperture_mm(5.5), UnitSystem::metric) == "5.50 mm");
  CHECK(grain_size_text(aperture_mm(5.65), UnitSystem::metric) == "5.65 mm");
  CHECK(grain_size_text(aperture_mm(12), UnitSystem::metric) == "12.0 mm");
  CHECK(grain_size_text(aperture_mm(0.25), UnitSystem::metric) == "0.250 mm");
  CHECK(grain_size_text(aperture_mm(4.75), UnitSystem::us) == "0.187 in");
  CHECK(grain_size_text(std::nullopt, UnitSystem::metric) == "–");
  CHECK(size_text(aperture_mm(2), UnitSystem::metric) == "2 mm");
}

TEST_CASE("US text names standard sieves and converts by the published factors", "[quantity_text][published]") {
  // NIST Special Publication 811, appendix B: 1 in = 25.4 mm, 1 oz = 28.34952 g, 1 qt (US liquid) = 0.9463529 L,
  // 1 lb/ft3 = 16.01846 kg/m3. Designation: ASTM E11.
  CHECK(size_text(aperture_mm(4.75), UnitSystem::us) == "No. 4");
  CHECK(size_text(aperture_mm(3.0), UnitSystem::us) == "0.118 in");
  CHECK(mass_text(mass_g(453.5924), UnitSystem::us) == "16.0 oz");
  CHECK(mass_text(mass_kg(20), UnitSystem::us) == "44.1 lb");
  CHECK(volume_text(3.785412, UnitSystem::us) == "4.00 qt");
  CHECK(density_text(1601.846, UnitSystem::us) == "100 lb/ft3");
  CHECK(depth_text(depth_cm(25.4), UnitSystem::us) == "10.0 in");
  CHECK(area_text(area_cm2(645.16), UnitSystem::us) == "100 in2");
}
