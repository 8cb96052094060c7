#pragma once
#include <optional>
#include <string>

#include "gritwright/units.hpp"

namespace gritwright {

/// Units of what people read. Files and JSON are always metric.
enum class UnitSystem { metric, us };

// Each gives number and unit, or a dash where there is no value. Sources of the factors: nist-sp-811, appendix B (exact or
// rounded to seven digits there).

/// "4.75 mm", "No. 4" or "0.187 in" (a standard sieve by its designation).
[[nodiscard]] std::string size_text(std::optional<Aperture> size, UnitSystem units);
/// A size read off a curve: three digits, so that those beside each other end alike; "5.50 mm", "0.217 in".
[[nodiscard]] std::string grain_size_text(std::optional<Aperture> size, UnitSystem units);
/// "6.0 cm", "2.36 in".
[[nodiscard]] std::string depth_text(std::optional<Depth> depth, UnitSystem units);
/// "1200 cm2", "186 in2".
[[nodiscard]] std::string area_text(std::optional<Area> area, UnitSystem units);
/// "729 g", "25.7 oz".
[[nodiscard]] std::string mass_text(std::optional<Mass> mass, UnitSystem units);
/// A sum or difference of what a balance showed: from 100 g to 10 kg to a tenth of a gram, "109.5 g", so that it can be added up and a loss
/// of 0.3 % is seen in it; else as any mass.
[[nodiscard]] std::string weighed_text(std::optional<Mass> mass, UnitSystem units);
/// "2.50 L", "2.64 qt"; below a litre "350 mL", "0.37 qt". `litres` of whatever kind of volume.
[[nodiscard]] std::string volume_text(std::optional<double> litres, UnitSystem units);
/// "696 g/L", "43.5 lb/ft3".
[[nodiscard]] std::string density_text(std::optional<double> g_per_l, UnitSystem units);
/// Scoops to the quarter: "9", "9.25".
[[nodiscard]] std::string scoops_text(std::optional<double> scoops);
/// A share 0..1 as "17.2 %".
[[nodiscard]] std::string percent_text(std::optional<double> share, int decimals = 1);

}  // namespace gritwright
