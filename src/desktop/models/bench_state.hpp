#pragma once
// What lies on the bench as it was typed. Texts, not numbers: typing is never blocked, and what cannot be read stays where it
// was typed, with its fault beside it. A plain value, so that undo is a swap.

#include <QString>
#include <vector>

#include "gritwright/domain/container.hpp"

namespace gritwright::desktop {

/// How the fractions are measured.
enum class Measure { net_mass, gross_and_tare, litres };

/// One sieve and what stayed on it; the pan has no opening.
struct PanText {
  QString aperture;
  QString retained;  ///< net mass, gross mass or litres, as the sheet's measure says
  QString tare;
  friend bool operator==(const PanText&, const PanText&) = default;
};

struct SieveSheet {
  Measure measure = Measure::net_mass;
  std::vector<PanText> rows;
  PanText pan;
  QString dry_mass;
  QString washed_dry_mass;
  QString moisture;
  QString sieve_diameter;
  bool on_recovered_mass = false;
  friend bool operator==(const SieveSheet&, const SieveSheet&) = default;
};

/// Figures of the grain that were measured; an empty text leaves the catalogue's typical figure standing.
struct GrainText {
  QString bulk_density;
  QString particle_density;
  QString skeletal_density;
  QString water_absorption;
  friend bool operator==(const GrainText&, const GrainText&) = default;
};

struct ComponentSheet {
  QString name;
  QString material;  ///< a catalogue name, or empty
  QString parts;
  QString bag;  ///< the bag in the record that this is a test of, or empty
  GrainText grain;
  SieveSheet sheet;
  friend bool operator==(const ComponentSheet&, const ComponentSheet&) = default;
};

struct PotSheet {
  Shape shape = Shape::rectangular;
  QString rim_length;  ///< also diameter, or across flats
  QString rim_width;
  QString base_length;
  QString base_width;
  QString middle;
  QString exponent;
  QString depth;
  QString freeboard;
  QString water_fill;
  QString saucer;
  QString wick;
  QString tilt;
  QString mound_rise;
  friend bool operator==(const PotSheet&, const PotSheet&) = default;
};

struct BenchState {
  std::vector<ComponentSheet> components;
  QString band_from;
  QString band_to;
  PotSheet pot;
  QString settling;  ///< percent of the poured volume
  QString spill;     ///< percent of the mixed litres
  friend bool operator==(const BenchState&, const BenchState&) = default;
};

inline constexpr std::size_t most_components = 5;

/// A component with the sieves of the default set and nothing typed.
[[nodiscard]] ComponentSheet empty_component(const QString& name);

/// Two empty components, no pot, our defaults for placing.
[[nodiscard]] BenchState empty_bench();

}  // namespace gritwright::desktop
