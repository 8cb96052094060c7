#include "gritwright/formats/typed_quantity.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <span>
#include <string>

#include "gritwright/domain/sieve_series.hpp"
#include "gritwright/formats/number.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

/// A unit's spelling and how many base units (m, kg, m3, g/L) it holds, as a ratio: 14 g must be the same number here as at the
/// other doors, which divide by 1000.
struct Unit {
  std::string_view spelling;
  double times;
  double over = 1;
};

double to_base(double value, const Unit& unit) { return value * unit.times / unit.over; }

constexpr double inch_m = 0.0254;
constexpr double ounce_kg = 0.02834952;
constexpr double pound_kg = 0.4535924;
constexpr double quart_m3 = 0.9463529e-3;
constexpr double gallon_m3 = 3.785412e-3;
constexpr double pound_per_cubic_foot_g_l = 16.01846;

constexpr std::array lengths{Unit{"mm", 1, 1000},    Unit{"cm", 1, 100},      Unit{"m", 1},        Unit{"in", inch_m},
                             Unit{"inch", inch_m}, Unit{"inches", inch_m}, Unit{"\"", inch_m}, Unit{"\u2033", inch_m}};
constexpr std::array masses{Unit{"g", 1, 1000},        Unit{"kg", 1},          Unit{"mg", 1, 1e6},      Unit{"oz", ounce_kg},
                            Unit{"ounce", ounce_kg}, Unit{"ounces", ounce_kg}, Unit{"lb", pound_kg}, Unit{"lbs", pound_kg},
                            Unit{"pound", pound_kg}, Unit{"pounds", pound_kg}};
constexpr std::array volumes{Unit{"ml", 1, 1e6},          Unit{"cm3", 1, 1e6},       Unit{"cl", 1, 1e5},        Unit{"dl", 1, 1e4},
                             Unit{"l", 1, 1000},           Unit{"litre", 1, 1000},     Unit{"litres", 1, 1000},    Unit{"liter", 1, 1000},
                             Unit{"liters", 1, 1000},      Unit{"qt", quart_m3},    Unit{"quart", quart_m3}, Unit{"quarts", quart_m3},
                             Unit{"gal", gallon_m3},    Unit{"gallon", gallon_m3}, Unit{"gallons", gallon_m3}};

constexpr std::array densities{Unit{"g/l", 1},        Unit{"kg/m3", 1},      Unit{"kg/l", 1000},
                               Unit{"g/ml", 1000}, Unit{"g/cm3", 1000}, Unit{"lb/ft3", pound_per_cubic_foot_g_l}};

/// Splits "2,5 l" into the number's and the unit's text. An exponent's e belongs to the number only if digits follow.
std::pair<std::string_view, std::string_view> split(std::string_view text) {
  text = trimmed(text);
  std::size_t end = 0;
  const auto is_digit = [&](std::size_t at) { return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0; };
  while (end < text.size()) {
    const char sign = text[end];
    const bool exponent = (sign == 'e' || sign == 'E') && end > 0 &&
                          (is_digit(end + 1) || (end + 1 < text.size() && (text[end + 1] == '-' || text[end + 1] == '+') && is_digit(end + 2)));
    if (exponent) {
      end += 2;
      continue;
    }
    if (!is_digit(end) && std::string_view(".,+-/ ").find(sign) == std::string_view::npos) break;
    ++end;
  }
  return {trimmed(text.substr(0, end)), trimmed(text.substr(end))};
}

/// A plain number or a fraction as rulers have them: "3/8", "2 1/2".
Result<double> number_or_fraction(std::string_view text) {
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) return parse_number(text, DecimalMark::point_or_comma);
  std::string_view above = trimmed(text.substr(0, slash));
  double whole = 0;
  if (const std::size_t space = above.find(' '); space != std::string_view::npos) {
    const auto before = parse_number(above.substr(0, space));
    if (!before) return Problem{"number.not-a-number", {}, {{"text", std::string(text)}}};
    whole = *before;
    above = trimmed(above.substr(space));
  }
  const auto numerator = parse_number(above);
  const auto denominator = parse_number(trimmed(text.substr(slash + 1)));
  if (!numerator || !denominator || !(*denominator > 0)) return Problem{"number.not-a-number", {}, {{"text", std::string(text)}}};
  return whole + *numerator / *denominator;
}

struct Typed {
  double base = 0;       ///< in m, kg, m3, g/L
  Unit unit{{}, 1, 1};  ///< it was typed in
  std::string_view number;
};

Result<Typed> typed(std::string_view text, std::span<const Unit> units, const Unit& bare) {
  const auto [number, unit] = split(text);
  // "twelve g" has no number at all: what stands there is told, not that something is missing.
  if (number.empty() && !unit.empty()) return Problem{"number.not-a-number", {}, {{"text", std::string(trimmed(text))}}};
  const auto value = number_or_fraction(number);
  if (!value) {
    Problem problem = value.problems().front();
    if (problem.facts.contains("text")) problem.facts["text"] = std::string(trimmed(text));
    return problem;
  }
  if (unit.empty()) return Typed{to_base(*value, bare), bare, number};
  const std::string name = in_small_letters(unit);
  const auto found = std::ranges::find(units, name, &Unit::spelling);
  if (found == units.end()) {
    const bool rubbish = std::ranges::any_of(name, [](unsigned char sign) { return std::isdigit(sign) != 0; });
    if (rubbish) return Problem{"number.not-a-number", {}, {{"text", std::string(trimmed(text))}}};
    return Problem{"quantity.unknown-unit", {}, {{"unit", std::string(unit)}}};
  }
  return Typed{to_base(*value, *found), *found, number};
}

Unit bare_unit(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::millimetre: return {{}, 1, 1000};
    case LengthUnit::centimetre: return {{}, 1, 100};
    case LengthUnit::inch: return {{}, inch_m, 1};
  }
  return {{}, 1, 1};
}

Unit bare_unit(MassUnit unit) {
  switch (unit) {
    case MassUnit::gram: return {{}, 1, 1000};
    case MassUnit::kilogram: return {{}, 1, 1};
    case MassUnit::ounce: return {{}, ounce_kg, 1};
    case MassUnit::pound: return {{}, pound_kg, 1};
  }
  return {{}, 1, 1};
}

Unit bare_unit(VolumeUnit unit) {
  switch (unit) {
    case VolumeUnit::millilitre: return {{}, 1, 1e6};
    case VolumeUnit::litre: return {{}, 1, 1000};
    case VolumeUnit::quart: return {{}, quart_m3, 1};
    case VolumeUnit::gallon: return {{}, gallon_m3, 1};
  }
  return {{}, 1, 1};
}

}  // namespace

Result<Length> parse_length(std::string_view text, LengthUnit bare) {
  const auto value = typed(text, lengths, bare_unit(bare));
  if (!value) return value.problems();
  return Length(value->base * boost::units::si::meter);
}

Result<WrittenMass> parse_mass(std::string_view text, MassUnit bare) {
  const auto value = typed(text, masses, bare_unit(bare));
  if (!value) return value.problems();
  return WrittenMass{mass_kg(value->base), mass_kg(to_base(std::pow(10.0, -written_decimals(value->number)), value->unit))};
}

Result<Volume> parse_volume(std::string_view text, VolumeUnit bare) {
  const auto value = typed(text, volumes, bare_unit(bare));
  if (!value) return value.problems();
  return Volume(value->base * boost::units::si::cubic_meter);
}

Result<Aperture> parse_aperture(std::string_view text) {
  if (const auto named = aperture_named(trimmed(text))) return *named;
  const auto length = parse_length(text, LengthUnit::millimetre);
  if (!length) return length.problems();
  return Aperture(*length);
}

Result<double> parse_density(std::string_view text) {
  const auto value = typed(text, densities, Unit{{}, 1});
  if (!value) return value.problems();
  return value->base;
}

Result<double> parse_percent(std::string_view text) {
  const auto [number, sign] = split(text);
  if (!sign.empty() && sign != "%") return Problem{"quantity.unknown-unit", {}, {{"unit", std::string(sign)}}};
  const auto value = parse_number(number, DecimalMark::point_or_comma);
  if (!value) return value.problems();
  return *value / 100;
}

}  // namespace gritwright
