#pragma once
#include <array>
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// One sieve's shares of the base, 0..1; unrounded.
struct SieveShare {
  Aperture aperture;
  MassShare retained;
  MassShare cumulative_retained;
  Passing passing;
};

/// A sieve test worked out. Masses are dry (what was weighed divided by 1 + moisture); absent for a test measured in litres.
struct SieveAnalysis {
  std::optional<Mass> total;  ///< what came off the sieves and the pan, crumbs included
  std::optional<Mass> base;   ///< what the shares refer to: the starting or the recovered mass, crumbs taken off
  std::optional<Mass> start;  ///< dry, before washing; absent where it was not weighed
  Mass washed_out{};
  std::optional<Loss> loss;   ///< of the starting mass; absent without one
  std::vector<SieveShare> sieves;  ///< coarse to fine
  MassShare pan;                   ///< of the base: what lay in the pan and what washed out; not what was lost
  Grading grading;
  Notes notes;
};

/// Percentages, mass balance and procedure checks of one test. Fails with the problems of check(test). Sources: astm-c136-19
/// (base, loss, overload), en-933-1 and astm-d6913 (least sample), folk-1980 p. 32 (crumbs).
[[nodiscard]] Result<SieveAnalysis> analyse(const SieveTest& test);

/// The test of a sample of mass `sample` that would give this grading: what was predicted, in the form of what is weighed.
/// Precondition: check(grading) is empty and has points.
[[nodiscard]] SieveTest test_of(const Grading& grading, Mass sample);

/// The percentiles a report lists.
inline constexpr std::array reported_percentiles{5, 10, 16, 25, 30, 50, 60, 75, 84, 90, 95};

/// The size that `percent` (0..100) of the mass is finer than, log-linear between sieves; empty outside the measured range.
[[nodiscard]] std::optional<Aperture> percentile(const Grading& grading, double percent);

/// Coefficient of uniformity D60/D10; empty where either is. Source: astm-d2487.
[[nodiscard]] std::optional<double> uniformity(const Grading& grading);

/// A range of sizes, from <= to; from 0 means all that is finer than `to`.
struct Band {
  Aperture from;
  Aperture to;
  friend bool operator==(const Band&, const Band&) = default;
};

/// Share of the mass inside the band; empty where the curve isn't defined at one of its ends.
[[nodiscard]] std::optional<MassShare> band_share(const Grading& grading, const Band& band);

/// Least dry sample for grain of nominal maximum size `largest`: (D/10)^2 kg, not below 0.2 kg, scaled to the grain's
/// density outside 2000-3000 g/L, and not below 100 of the largest grains. Sources: en-933-1, astm-d6913.
[[nodiscard]] Mass least_sample(Aperture largest, std::optional<ParticleDensity> density);

/// The most one sieve of that frame should hold at the end of sieving; light grain by its bulk density over 1500 g/L (our
/// assumption). Precondition: frame > 12.7 mm. Source: astm-c136-19 8.3.
[[nodiscard]] Mass overload_limit(Aperture aperture, Length frame_diameter, std::optional<BulkDensity> density);

}  // namespace gritwright
