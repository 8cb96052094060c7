#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What stayed on a sieve, weighed with its pan.
struct GrossTare {
  Mass gross;
  Mass tare;
  friend bool operator==(const GrossTare&, const GrossTare&) = default;
};

/// What was measured of one fraction: net mass, gross and tare, or bucket litres.
using Retained = std::variant<Mass, GrossTare, LooseVolume>;

struct SieveRow {
  Aperture aperture;
  Retained retained;
  MassShare crumbs{};  ///< share of this pan that is unbroken aggregate and is taken off, 0..1
  friend bool operator==(const SieveRow&, const SieveRow&) = default;
};

enum class PercentBasis { original, recovered };

/// One sieving as typed: rows coarse to fine, then the pan.
struct SieveTest {
  std::optional<std::string> material;
  std::optional<std::string> lot;
  std::optional<std::string> date;  ///< ISO 8601 day
  std::optional<Mass> dry_mass;         ///< starting mass, air-dry or dry; absent: the recovered mass is the base, with a note
  std::optional<Mass> washed_dry_mass;  ///< after washing; what washed out counts with the pan
  Moisture moisture{};                  ///< of the weighed grain
  std::optional<Length> sieve_diameter;
  PercentBasis basis = PercentBasis::original;
  Mass resolution;  ///< of the balance; from the last written decimal where it was not given
  std::optional<ParticleDensity> particle_density;
  std::optional<BulkDensity> bulk_density;
  std::vector<SieveRow> rows;
  Retained pan;
  MassShare pan_crumbs{};
  friend bool operator==(const SieveTest&, const SieveTest&) = default;
};

/// Openings not falling or repeated, zero or negative; negative masses; tare above gross; sum above the sample by more than
/// rows x resolution; mixed masses and volumes; moisture, crumbs out of range.
[[nodiscard]] Problems check(const SieveTest& test);

}  // namespace gritwright
