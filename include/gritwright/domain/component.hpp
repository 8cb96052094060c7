#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/grading.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Where the properties of a component come from.
enum class Provenance { measured, typical };

/// What is known of one grain: densities, inner pores, water, exchange capacity and its sizes. Dry masses.
struct GrainProperties {
  BulkDensity bulk_density;                      ///< loosely poured, at `bulk_moisture`; use `dry_bulk_density`
  Moisture bulk_moisture{};                      ///< moisture of the grain that was weighed, kg/kg
  std::optional<ParticleDensity> particle_density;  ///< absent: mass shares and grading only
  std::optional<SkeletalDensity> skeletal_density;  ///< absent or equal to particle density: solid grain
  OpenShare open_share{1.0};
  std::optional<WaterAbsorption> water_absorption;
  std::optional<CationExchange> cation_exchange;
  Provenance provenance = Provenance::measured;
  friend bool operator==(const GrainProperties&, const GrainProperties&) = default;
};

/// One component of a mix: so many parts by loose volume of a grain.
struct Component {
  std::string name;
  Parts parts{};
  GrainProperties grain;
  GrainSizes sizes;
  std::optional<std::string> material;  ///< name in the catalogue, where it was taken from there
  friend bool operator==(const Component&, const Component&) = default;
};

/// dry = given / (1 + w). Source: astm-c566 form, from memory.
[[nodiscard]] BulkDensity dry_bulk_density(const GrainProperties& grain);

/// Every breach of order: bulk above particle above skeletal density, absorption above the grain's pores, values out of range.
/// Pointers are relative to the component ("/bulk_density_g_l").
[[nodiscard]] Problems check(const GrainProperties& grain);
[[nodiscard]] Problems check(const Grading& grading);
[[nodiscard]] Problems check(const Component& component);

}  // namespace gritwright
