#pragma once
#include <optional>

#include "gritwright/domain/grading.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Loose packing density of one size of grain where nothing was measured: between broken (.47-.48) and rounded (.58-.61) stone.
/// Our assumption; the ranges are from feret in gillette-hill-1908.
inline constexpr PackingDensity assumed_class_beta{0.52};

/// How the fractions of a bag pack: the packing model with the one class beta that gives the bag its own packing density.
struct FractionPacking {
  PackingDensityOf of;
  Notes notes;  ///< says where the beta was assumed
};

/// Packing of the fractions of a bag from its densities (0 < bulk < particle); with either missing or out of that order, by
/// `assumed_class_beta`. Precondition: check(bag) is empty.
[[nodiscard]] FractionPacking fraction_packing(const Grading& bag, std::optional<BulkDensity> bulk_density,
                                               std::optional<ParticleDensity> particle_density);

}  // namespace gritwright
