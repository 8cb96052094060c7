#pragma once
// Typed quantities. Boost.Units carries the dimension; a tag carries what the dimension can't tell apart (a loose litre is
// not a litre of grain). Numbers enter and leave only through the named functions below, which state the unit.

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/volume.hpp>
#include <compare>

namespace gritwright {

using Length = boost::units::quantity<boost::units::si::length>;
using Area = boost::units::quantity<boost::units::si::area>;
using Volume = boost::units::quantity<boost::units::si::volume>;
using Mass = boost::units::quantity<boost::units::si::mass>;
using Density = boost::units::quantity<boost::units::si::mass_density>;
using Angle = boost::units::quantity<boost::units::si::plane_angle>;

/// A quantity of one kind: equal dimension, different meaning, no mixing. Ordered; arithmetic only where the kind allows it.
template <class Tag, class Quantity>
class Tagged {
 public:
  using quantity_type = Quantity;
  constexpr Tagged() = default;
  constexpr explicit Tagged(Quantity value) : value_(value) {}
  [[nodiscard]] constexpr Quantity quantity() const { return value_; }

  friend constexpr bool operator==(const Tagged& a, const Tagged& b) { return a.value_.value() == b.value_.value(); }
  friend constexpr auto operator<=>(const Tagged& a, const Tagged& b) { return a.value_.value() <=> b.value_.value(); }
  friend constexpr Tagged operator*(const Tagged& a, double factor) { return Tagged(a.value_ * factor); }
  friend constexpr Tagged operator*(double factor, const Tagged& a) { return Tagged(a.value_ * factor); }
  friend constexpr Tagged operator/(const Tagged& a, double divisor) { return Tagged(a.value_ / divisor); }
  friend constexpr double operator/(const Tagged& a, const Tagged& b) { return a.value_.value() / b.value_.value(); }
  friend constexpr Tagged operator+(const Tagged& a, const Tagged& b) requires(Tag::additive) {
    return Tagged(a.value_ + b.value_);
  }
  friend constexpr Tagged operator-(const Tagged& a, const Tagged& b) requires(Tag::additive) {
    return Tagged(a.value_ - b.value_);
  }

 private:
  Quantity value_{};
};

/// A pure number of one kind (a share, a ratio, an absorption). Shares run 0..1; percent exists only at the doors.
template <class Tag>
class Number {
 public:
  constexpr Number() = default;
  constexpr explicit Number(double value) : value_(value) {}
  [[nodiscard]] constexpr double value() const { return value_; }
  friend constexpr auto operator<=>(const Number&, const Number&) = default;
  friend constexpr Number operator+(Number a, Number b) { return Number(a.value_ + b.value_); }
  friend constexpr Number operator-(Number a, Number b) { return Number(a.value_ - b.value_); }
  friend constexpr Number operator*(Number a, double factor) { return Number(a.value_ * factor); }

 private:
  double value_ = 0;
};

namespace kind {
struct aperture { static constexpr bool additive = false; };
struct depth { static constexpr bool additive = true; };
struct loose_volume { static constexpr bool additive = false; };
struct envelope_volume { static constexpr bool additive = true; };
struct solid_volume { static constexpr bool additive = true; };
struct mixed_volume { static constexpr bool additive = false; };
struct pot_volume { static constexpr bool additive = true; };
struct bulk_density { static constexpr bool additive = false; };
struct particle_density { static constexpr bool additive = false; };
struct skeletal_density { static constexpr bool additive = false; };
struct parts;
struct passing;
struct mass_share;
struct envelope_share;
struct loose_share;
struct packing_density;
struct bulk_density_ratio;
struct porosity;
struct open_share;
struct moisture;
struct water_absorption;
struct cation_exchange;
struct cation_exchange_per_volume;
struct shrinkage;
struct settling;
struct spill;
struct loss;
}  // namespace kind

/// A sieve opening, and the size of grain on the same axis.
using Aperture = Tagged<kind::aperture, Length>;
/// A height or depth inside a container, from the floor upward unless said otherwise.
using Depth = Tagged<kind::depth, Length>;

/// Litres of loose grain. Loose volumes of two components do not add up to the loose volume of their blend: no operator+.
using LooseVolume = Tagged<kind::loose_volume, Volume>;
/// Volume of the grains with their inner pores, without the voids between them.
using EnvelopeVolume = Tagged<kind::envelope_volume, Volume>;
/// Volume of the mineral or organic solid alone.
using SolidVolume = Tagged<kind::solid_volume, Volume>;
/// Volume of a blend as it lies (poured or settled, as said where used); not a sum of loose volumes.
using MixedVolume = Tagged<kind::mixed_volume, Volume>;
/// Inner volume of a container.
using PotVolume = Tagged<kind::pot_volume, Volume>;

/// Dry mass per bulk volume.
using BulkDensity = Tagged<kind::bulk_density, Density>;
/// Dry mass per envelope volume of the grain.
using ParticleDensity = Tagged<kind::particle_density, Density>;
/// Dry mass per volume of solid.
using SkeletalDensity = Tagged<kind::skeletal_density, Density>;

/// Parts of a recipe by loose volume, >= 0.
using Parts = Number<kind::parts>;
/// Share of the mass that passes an opening, 0..1 (percent passing / 100).
using Passing = Number<kind::passing>;
using MassShare = Number<kind::mass_share>;
using EnvelopeShare = Number<kind::envelope_share>;
using LooseShare = Number<kind::loose_share>;
/// Envelope volume of the grains over the bulk volume they lie in, 0..1; of grain of one size its loosely placed beta.
using PackingDensity = Number<kind::packing_density>;
/// Dry bulk density over that of the bag it was screened out of, > 0.
using BulkDensityRatio = Number<kind::bulk_density_ratio>;
/// A share of a bulk volume that is not solid, 0..1; also volumetric water content and air.
using Porosity = Number<kind::porosity>;
/// Share of the grain's inner pores that is open to water, 0..1.
using OpenShare = Number<kind::open_share>;
/// kg water per kg dry grain, as the material stands, >= 0.
using Moisture = Number<kind::moisture>;
/// kg water per kg dry grain after 24 h of soaking, surface-dry, >= 0.
using WaterAbsorption = Number<kind::water_absorption>;
/// Cation exchange capacity, meq per 100 g dry mass, >= 0.
using CationExchange = Number<kind::cation_exchange>;
/// Cation exchange capacity, meq per litre as filled, >= 0.
using CationExchangePerVolume = Number<kind::cation_exchange_per_volume>;
/// 1 - mixed volume / sum of loose volumes; negative when the mix swells.
using Shrinkage = Number<kind::shrinkage>;
/// Share of the poured volume lost by working in, 0..<1.
using Settling = Number<kind::settling>;
/// Share of the mixed litres that never reaches the pot, 0..<1.
using Spill = Number<kind::spill>;
/// Share of the starting mass that was lost while sieving; negative for a gain.
using Loss = Number<kind::loss>;

namespace detail {
constexpr Length metres(double value) { return value * boost::units::si::meter; }
constexpr Volume cubic_metres(double value) { return value * boost::units::si::cubic_meter; }
constexpr Density kilograms_per_cubic_metre(double value) { return value * boost::units::si::kilogrammes_per_cubic_metre; }
}  // namespace detail

// ---- the doors: numbers in ---------------------------------------------------------------------------------------------
constexpr Aperture aperture_mm(double value) { return Aperture(detail::metres(value / 1000)); }
constexpr Depth depth_cm(double value) { return Depth(detail::metres(value / 100)); }
constexpr Length length_cm(double value) { return detail::metres(value / 100); }
constexpr Length length_mm(double value) { return detail::metres(value / 1000); }
constexpr Area area_cm2(double value) { return value / 1e4 * boost::units::si::square_meter; }
constexpr Mass mass_g(double value) { return value / 1000 * boost::units::si::kilogram; }
constexpr Mass mass_kg(double value) { return value * boost::units::si::kilogram; }
constexpr LooseVolume loose_l(double value) { return LooseVolume(detail::cubic_metres(value / 1000)); }
constexpr EnvelopeVolume envelope_l(double value) { return EnvelopeVolume(detail::cubic_metres(value / 1000)); }
constexpr SolidVolume solid_l(double value) { return SolidVolume(detail::cubic_metres(value / 1000)); }
constexpr MixedVolume mixed_l(double value) { return MixedVolume(detail::cubic_metres(value / 1000)); }
constexpr PotVolume pot_ml(double value) { return PotVolume(detail::cubic_metres(value / 1e6)); }
/// g/L equals kg/m3.
constexpr BulkDensity bulk_g_l(double value) { return BulkDensity(detail::kilograms_per_cubic_metre(value)); }
constexpr ParticleDensity particle_g_l(double value) { return ParticleDensity(detail::kilograms_per_cubic_metre(value)); }
constexpr SkeletalDensity skeletal_g_l(double value) { return SkeletalDensity(detail::kilograms_per_cubic_metre(value)); }
constexpr Passing passing_percent(double value) { return Passing(value / 100); }
constexpr double degrees_to_radians = 3.14159265358979323846 / 180;
constexpr Angle angle_deg(double value) { return value * degrees_to_radians * boost::units::si::radian; }

// ---- the doors: numbers out --------------------------------------------------------------------------------------------
constexpr double in_mm(Aperture value) { return value.quantity().value() * 1000; }
constexpr double in_cm(Depth value) { return value.quantity().value() * 100; }
constexpr double in_cm(Length value) { return value.value() * 100; }
constexpr double in_mm(Length value) { return value.value() * 1000; }
constexpr double in_cm2(Area value) { return value.value() * 1e4; }
constexpr double in_g(Mass value) { return value.value() * 1000; }
constexpr double in_kg(Mass value) { return value.value(); }
constexpr double in_l(LooseVolume value) { return value.quantity().value() * 1000; }
constexpr double in_l(EnvelopeVolume value) { return value.quantity().value() * 1000; }
constexpr double in_l(SolidVolume value) { return value.quantity().value() * 1000; }
constexpr double in_l(MixedVolume value) { return value.quantity().value() * 1000; }
constexpr double in_ml(PotVolume value) { return value.quantity().value() * 1e6; }
constexpr double in_g_l(BulkDensity value) { return value.quantity().value(); }
constexpr double in_g_l(ParticleDensity value) { return value.quantity().value(); }
constexpr double in_g_l(SkeletalDensity value) { return value.quantity().value(); }
constexpr double in_percent(Passing value) { return value.value() * 100; }
constexpr double in_deg(Angle value) { return value.value() / degrees_to_radians; }

/// The bulk density of what is there: dry mass over the volume it lies in.
constexpr BulkDensity operator/(Mass mass, LooseVolume volume) { return BulkDensity(mass / volume.quantity()); }
constexpr Mass operator*(LooseVolume volume, BulkDensity density) { return Mass(volume.quantity() * density.quantity()); }
constexpr EnvelopeVolume operator/(Mass mass, ParticleDensity density) { return EnvelopeVolume(mass / density.quantity()); }
constexpr SolidVolume operator/(Mass mass, SkeletalDensity density) { return SolidVolume(mass / density.quantity()); }

}  // namespace gritwright
