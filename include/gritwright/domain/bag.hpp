#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/component.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/id.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

struct Tree;
struct MixVersion;

/// The sizes printed on a bag or wanted of a fraction, from below to above.
struct SizeBand {
  Aperture from;
  Aperture to;
  friend bool operator==(const SizeBand&, const SizeBand&) = default;
};

/// An amount of money; the currency is the grower's word for it.
struct Price {
  double amount = 0;  ///< >= 0
  std::string currency;
  friend bool operator==(const Price&, const Price&) = default;
};

/// Grain that was taken back from a tree's ground.
struct Reclaimed {
  Id<Tree> tree;
  std::optional<Id<MixVersion>> mix;
  std::optional<std::string> day;
  friend bool operator==(const Reclaimed&, const Reclaimed&) = default;
};

/// How a grain came through the grower's own crumble test.
struct Crumbling {
  double breakages_per_round = 0;  ///< mean breakages of a grain, >= 0
  double modulus = 1;              ///< of the fragments, > 0
  double rounds_per_season = 10;   ///< as the grower counts a season, > 0
  friend bool operator==(const Crumbling&, const Crumbling&) = default;
};

/// Bags of one lot that came in together. Figures are those of one bag; the stock is in the ledger.
struct Bag {
  std::string material;  ///< name in the catalogue or of an own material
  std::string lot;
  int count = 1;  ///< bags of this lot, >= 1
  std::optional<SizeBand> printed_size;  ///< a provisional grading until the lot is sieved
  std::optional<LooseVolume> volume;
  std::optional<Mass> mass_as_bagged;
  MoistureBasis moisture_basis = MoistureBasis::as_bagged;
  std::optional<Moisture> moisture;  ///< as bagged
  std::optional<Price> price;
  std::optional<std::string> received;  ///< ISO 8601 day
  std::optional<BulkDensity> bulk_density;  ///< dry, as measured on this lot
  std::optional<BulkDensity> worked_in_density;  ///< dry, after working in with a stick
  std::optional<ParticleDensity> particle_density;
  std::optional<WaterAbsorption> water_absorption;  ///< 24 h soak, surface-dry
  std::optional<Crumbling> crumbling;
  std::optional<Reclaimed> reclaimed;
  std::string note;
  friend bool operator==(const Bag&, const Bag&) = default;
};

/// No material, count below 1, sizes upside down, amounts not above 0, days that are none. Pointers by the keys of files.
[[nodiscard]] Problems check(const Bag& bag);

/// Dry bulk density as measured on the lot, else what one bag held dry by the litres it came with; empty where neither is known.
[[nodiscard]] std::optional<BulkDensity> bulk_density_received(const Bag& bag);

/// Dry mass of all bags: weighed less its moisture, else volume times bulk density; empty where neither is known.
[[nodiscard]] std::optional<Mass> dry_mass_received(const Bag& bag);

}  // namespace gritwright
