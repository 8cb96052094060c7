#include "weighed_text.hpp"

#include <fmt/format.h>

#include <cmath>

#include "text.hpp"

namespace gritwright::desktop {

QString weighed_text(std::optional<Mass> mass, UnitSystem units) {
  constexpr double least_g = 100;  // below it three digits show the tenth
  constexpr double most_g = 10000;
  const double tenths = mass ? std::round(10 * in_g(*mass) * (1 + 1e-12)) : 0;
  if (units == UnitSystem::us || std::abs(tenths) < 10 * least_g || std::abs(tenths) >= 10 * most_g) return to_local(mass_text(mass, units));
  const bool whole = std::fmod(tenths, 10) == 0;
  return to_local(fmt::format("{:.{}f} g", tenths / 10, whole ? 0 : 1));
}

}  // namespace gritwright::desktop
