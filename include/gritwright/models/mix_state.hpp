#pragma once
#include <optional>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Pores of one component's grain, as shares of its envelope volume, 0..1.
struct GrainPores {
  Porosity pores;  ///< n_g where the skeletal density is known, else the open pores alone
  Porosity open;   ///< e
  Porosity water;  ///< s = e·w, or by the water absorption
  friend bool operator==(const GrainPores&, const GrainPores&) = default;
};

/// A mix as it lies: poured, or after working in. Shares of the bulk volume.
struct PackedState {
  PackingDensity packing_density;
  MixedVolume volume;  ///< of the parts taken as litres
  BulkDensity bulk_density;
  Porosity voids_between_grains;  ///< phi_v = 1 - packing density
  Porosity voids_in_grains;
  Porosity open_voids_in_grains;
  Porosity total_porosity;
  Porosity grain_water;  ///< water held inside the grains
  std::optional<CationExchangePerVolume> cation_exchange;  ///< absent where a component's is unknown
  friend bool operator==(const PackedState&, const PackedState&) = default;
};

/// What follows from a mix without a pot. Lists are in component order. Source: packing.md.
struct MixState {
  std::vector<MassShare> mass_shares;    ///< of the dry mass
  std::vector<LooseShare> loose_shares;  ///< of the loose volumes
  std::vector<std::optional<PackingDensity>> class_betas;  ///< absent without particle density
  std::vector<std::optional<GrainPores>> grain_pores;      ///< absent without particle density

  std::vector<GradingPoint> passing;  ///< share of the mass, once for each sieve of a component, rising
  std::vector<GradingPoint> grading;  ///< the same as a whole curve from 0 to 1 with pans as steps (two points at one size)
  MassShare pan_share;                ///< in the pans of the components

  // Absent as long as a component with parts has no particle density; notes name it.
  std::optional<std::vector<EnvelopeShare>> envelope_shares;
  std::optional<std::vector<GradingPoint>> envelope_passing;
  std::optional<std::vector<GradingPoint>> envelope_grading;
  std::optional<ParticleDensity> particle_density;
  std::optional<SkeletalDensity> skeletal_density;  ///< absent also where a porous component's is unknown
  std::optional<Shrinkage> shrinkage;               ///< poured; negative: swells
  std::optional<PackedState> poured;
  std::optional<PackedState> settled;

  bool organic_or_fibrous = false;  ///< some component with parts is no rigid mineral grain
  Notes notes;
};

/// Blends the components by loose volume. Fails with the problems of check(mix), or where the settling leaves no voids.
[[nodiscard]] Result<MixState> mix_state(const Mix& mix);

/// The mix, poured, as one part of another: what is left of it in a tub. Its sizes are told by the sieves of its components. Empty where
/// check(mix) finds anything or a particle density is not known.
[[nodiscard]] std::optional<Component> mix_as_grain(const Mix& mix);

/// Pores and water of a grain: n_g = 1 - rho_e/rho_s, e = open share of n_g, s = WA·rho_e/rho_w or e·w; e is at least s.
/// `grain_fill` is w, 0..1. Empty without particle density.
[[nodiscard]] std::optional<GrainPores> grain_pores(const GrainProperties& grain, double grain_fill);

/// The packing density a component shows by itself, dry bulk over particle density. Empty without particle density.
[[nodiscard]] std::optional<PackingDensity> own_packing_density(const GrainProperties& grain);

/// Half-width of the packing model's error in the voids between grains, as a share of the bulk volume. Source: packing.md.
inline constexpr double packing_voids_error = 0.015;

}  // namespace gritwright
