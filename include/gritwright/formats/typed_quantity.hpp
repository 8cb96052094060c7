#pragma once
#include <optional>
#include <string_view>

#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

// What people type into a field: a number with a point or a comma, and after it a unit or none. A unit that is none of the kind
// is refused with quantity.unknown-unit; the other errors are those of parse_number. Places are left to the caller.
// Source of the factors: nist-sp-811, appendix B.

enum class LengthUnit { millimetre, centimetre, inch };
enum class MassUnit { gram, kilogram, ounce, pound };
enum class VolumeUnit { millilitre, litre, quart, gallon };

/// "6", "6,5 cm", "60 mm", "2 1/2 in", "3/8\"". `bare` is the unit of a number without one.
[[nodiscard]] Result<Length> parse_length(std::string_view text, LengthUnit bare);

/// A mass and what the last digit that was written stands for: the balance's resolution as far as it shows.
struct WrittenMass {
  Mass mass;
  Mass last_digit;
};
/// "120.5", "1,2 kg", "4 oz", "2 lb".
[[nodiscard]] Result<WrittenMass> parse_mass(std::string_view text, MassUnit bare);

/// "2.5", "2,5 l", "350 ml", "2 qt", "1 gal". US liquid quarts and gallons.
[[nodiscard]] Result<Volume> parse_volume(std::string_view text, VolumeUnit bare);

/// A sieve's opening: a trade or standard name ("No. 4", "3/8 in"), else a length, bare numbers in mm.
[[nodiscard]] Result<Aperture> parse_aperture(std::string_view text);

/// What a volume weighs, in g/L: "700", "0.7 kg/L", "43.7 lb/ft3". Bare numbers are in g/L.
[[nodiscard]] Result<double> parse_density(std::string_view text);

/// A number in percent, with or without its sign: "12,5 %". As a share, 0.125.
[[nodiscard]] Result<double> parse_percent(std::string_view text);

}  // namespace gritwright
