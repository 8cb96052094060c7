#include "gritwright/report/quantity_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "gritwright/domain/sieve_series.hpp"
#include "gritwright/report/text_table.hpp"

namespace gritwright {

namespace {

constexpr double mm_per_inch = 25.4;
constexpr double cm_per_inch = 2.54;
constexpr double g_per_ounce = 28.34952;
constexpr double l_per_quart = 0.9463529;
constexpr double g_l_per_lb_ft3 = 16.01846;

// Three significant digits: what a hobby balance, a jug and a ruler can carry.
std::string three_digits(double value) {
  if (value == 0) return "0";
  const auto magnitude_of = [](double number) { return static_cast<int>(std::floor(std::log10(std::abs(number)))); };
  // Rounding may carry into the next power of ten: 99.97 is 100, not 100.0.
  const double unit = std::pow(10, magnitude_of(value) - 2);
  return figure(value, std::max(0, 2 - magnitude_of(std::round(value / unit) * unit * (1 + 1e-12))));
}

std::string with_unit(std::optional<double> value, const char* unit) {
  return value ? three_digits(*value) + " " + unit : figure(std::nullopt, 0);
}

}  // namespace

std::string size_text(std::optional<Aperture> size, UnitSystem units) {
  const auto mm = number(size, [](Aperture value) { return in_mm(value); });
  if (units == UnitSystem::metric) return mm ? fmt::format("{:.3g} mm", *mm) : figure(std::nullopt, 0);
  if (mm) {
    for (const StandardSieve& sieve : standard_sieves()) {
      if (!sieve.designation.empty() && std::abs(sieve.aperture_mm - *mm) < 1e-9 * *mm) return std::string(sieve.designation);
    }
  }
  return with_unit(mm ? std::optional(*mm / mm_per_inch) : std::nullopt, "in");
}

std::string grain_size_text(std::optional<Aperture> size, UnitSystem units) {
  const auto mm = number(size, [](Aperture value) { return in_mm(value); });
  if (units == UnitSystem::metric) return with_unit(mm, "mm");
  return with_unit(mm ? std::optional(*mm / mm_per_inch) : std::nullopt, "in");
}

std::string scoops_text(std::optional<double> scoops) {
  return scoops ? fmt::format("{:.4g}", std::round(4 * *scoops) / 4) : figure(std::nullopt, 0);
}

std::string depth_text(std::optional<Depth> depth, UnitSystem units) {
  const auto cm = number(depth, [](Depth value) { return in_cm(value); });
  if (units == UnitSystem::metric) return cm ? figure(cm, 1) + " cm" : figure(cm, 1);
  return with_unit(cm ? std::optional(*cm / cm_per_inch) : std::nullopt, "in");
}

std::string area_text(std::optional<Area> area, UnitSystem units) {
  const auto cm2 = number(area, [](Area value) { return in_cm2(value); });
  if (units == UnitSystem::metric) return cm2 ? figure(cm2, 0) + " cm2" : figure(cm2, 0);
  return with_unit(cm2 ? std::optional(*cm2 / (cm_per_inch * cm_per_inch)) : std::nullopt, "in2");
}

std::string mass_text(std::optional<Mass> mass, UnitSystem units) {
  const auto g = number(mass, [](Mass value) { return in_g(value); });
  constexpr double ounces_per_pound = 16;
  if (units == UnitSystem::us && g && std::abs(*g) >= 10 * ounces_per_pound * g_per_ounce) return with_unit(*g / (ounces_per_pound * g_per_ounce), "lb");
  if (units == UnitSystem::us) return with_unit(g ? std::optional(*g / g_per_ounce) : std::nullopt, "oz");
  if (g && std::abs(*g) >= 10000) return with_unit(*g / 1000, "kg");
  return with_unit(g, "g");
}

std::string weighed_text(std::optional<Mass> mass, UnitSystem units) {
  constexpr double least_g = 100;  // below it three digits show the tenth
  constexpr double most_g = 10000;
  const double tenths = mass ? std::round(10 * in_g(*mass) * (1 + 1e-12)) : 0;
  if (units == UnitSystem::us || std::abs(tenths) < 10 * least_g || std::abs(tenths) >= 10 * most_g) return mass_text(mass, units);
  const bool whole = std::fmod(tenths, 10) == 0;
  return fmt::format("{:.{}f} g", tenths / 10, whole ? 0 : 1);
}

std::string volume_text(std::optional<double> litres, UnitSystem units) {
  if (units == UnitSystem::us) return with_unit(litres ? std::optional(*litres / l_per_quart) : std::nullopt, "qt");
  constexpr double rounds_to_a_litre = .9995;
  if (litres && std::abs(*litres) < rounds_to_a_litre) return figure(*litres * 1000, 0) + " mL";
  return with_unit(litres, "L");
}

std::string density_text(std::optional<double> g_per_l, UnitSystem units) {
  if (units == UnitSystem::us) return with_unit(g_per_l ? std::optional(*g_per_l / g_l_per_lb_ft3) : std::nullopt, "lb/ft3");
  return g_per_l ? figure(g_per_l, 0) + " g/L" : figure(g_per_l, 0);
}

std::string percent_text(std::optional<double> share, int decimals) {
  if (!share) return figure(std::nullopt, decimals);
  return figure(*share * 100, decimals) + " %";
}

}  // namespace gritwright
