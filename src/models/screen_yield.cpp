#include <array>
#include <string_view>

#include "gritwright/domain/grain_words.hpp"
#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/screening.hpp"

namespace gritwright {

bool used_unscreened(std::string_view grain) { return speaks_of(grain, GrainWord::moss); }

bool has_yield(const GrainSupply& supply) { return !supply.screened && (supply.yield || !used_unscreened(supply.material)); }

std::optional<ScreenYield> known_yield(const GrainSupply& supply) {
  if (!has_yield(supply)) return ScreenYield(1);
  if (supply.yield) return supply.yield;
  if (!supply.grading || !supply.keeps) return std::nullopt;
  const FractionPacking packing = fraction_packing(*supply.grading, supply.bulk_density, supply.particle_density);
  const std::array openings{supply.keeps->from, supply.keeps->to};
  const auto screening = screen(*supply.grading, openings, {}, packing.of);
  if (!screening) return std::nullopt;
  for (const auto& fraction : screening->fractions) {
    if (fraction.from != supply.keeps->from || !fraction.loose_per_loose || !(fraction.loose_per_loose->value() > 0)) continue;
    return ScreenYield(fraction.loose_per_loose->value());
  }
  return std::nullopt;
}

}  // namespace gritwright
