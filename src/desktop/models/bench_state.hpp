#pragma once
// What lies on the bench as it was typed. Texts, not numbers: typing is never blocked, and what cannot be read stays where it
// was typed, with its fault beside it. A plain value, so that undo is a swap.

#include <QString>
#include <vector>

#include "find_sheet.hpp"
#include "gritwright/domain/container.hpp"

namespace gritwright::desktop {

/// How the fractions are measured.
enum class Measure { net_mass, gross_and_tare, litres };

/// One sieve and what stayed on it; the pan has no opening.
struct PanText {
  QString aperture;
  QString retained;  ///< net mass, gross mass or litres, as the sheet's measure says
  QString tare;
  QString crumbs = {};  ///< percent, as an opened test says; the stack has no column for it
  friend bool operator==(const PanText&, const PanText&) = default;
};

/// A further sample of the same bag on the same stack, measured as the first; gross masses share its tares.
struct ReplicateText {
  std::vector<QString> retained;  ///< by row; may be shorter than the stack
  QString pan;
  QString dry_mass;
  friend bool operator==(const ReplicateText&, const ReplicateText&) = default;
};

/// More columns than these do not fit beside the stack; further samples are tests of their own.
inline constexpr std::size_t most_replicates = 2;

struct SieveSheet {
  Measure measure = Measure::net_mass;
  std::vector<PanText> rows;
  PanText pan;
  std::vector<ReplicateText> replicates;  ///< the second sample and on, at most `most_replicates`
  QString dry_mass;
  QString washed_dry_mass;
  QString moisture;
  QString sieve_diameter;
  QString resolution;  ///< as an opened test says; empty: the last written digit
  bool on_recovered_mass = false;
  bool predicted = false;  ///< the masses are a reckoned grading, per 100 g: nothing was weighed
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

/// A screening of the bag of a sheet as it is planned and then measured.
struct ScreeningText {
  QString openings;  ///< "6.3 2"; empty: as the verdict says
  QString screened;  ///< dry grain that went over the sieves; empty: all that is left of the bag
  QString day;       ///< on which it was done; empty: today
  std::vector<PanText> measured;  ///< coarse to fine: `retained` the dry mass, `tare` the litres
  friend bool operator==(const ScreeningText&, const ScreeningText&) = default;
};

struct ComponentSheet {
  QString name;
  QString material;  ///< a catalogue name, or empty
  QString parts;
  QString bag;  ///< the bag or fraction in the record that this is a test of, or empty
  GrainText grain;
  SieveSheet sheet;
  ScreeningText screening;
  friend bool operator==(const ComponentSheet&, const ComponentSheet&) = default;
};

/// Whether two texts name the same opening, with whatever decimal mark.
[[nodiscard]] bool is_same_opening(const QString& a, const QString& b);
/// True for shapes with a length and a width; the others have one diameter.
[[nodiscard]] bool has_width(Shape shape);

struct PotSheet {
  Shape shape = Shape::rectangular;
  QString rim_length;  ///< also diameter, or across flats
  QString rim_width;
  QString base_length;
  QString base_width;
  QString middle;
  QString exponent;
  QString areas;  ///< heights and areas, of a pot measured so
  QString depth;
  QString freeboard;
  QString water_fill;
  QString saucer;
  QString wick;
  QString tilt;
  QString mound_rise;
  // As an opened container says; the form has no field for them.
  QString corner_radius;
  QString fillet_radius;
  QString mass;
  TiltAxis tilt_axis = TiltAxis::length;
  MoundForm mound_form = MoundForm::paraboloid;
  friend bool operator==(const PotSheet&, const PotSheet&) = default;
};

struct BenchState {
  std::vector<ComponentSheet> components;
  QString mix_name;
  QString band_from;
  QString band_to;
  PotSheet pot;
  QString settling;  ///< percent of the poured volume; empty: by jug tests of the grains, else as usual
  QString spill;     ///< percent of the mixed litres
  FindSheet find;
  friend bool operator==(const BenchState&, const BenchState&) = default;
};

inline constexpr std::size_t most_components = 6;

/// A component with the sieves of the default set and nothing typed.
[[nodiscard]] ComponentSheet empty_component(const QString& name);

/// The sieves, pans and way of measuring of a sheet with nothing weighed yet: the next sample goes onto the same ones.
[[nodiscard]] SieveSheet same_stack(const SieveSheet& sheet);

/// Takes the masses of a prediction off, so that what is weighed is not mixed with them. What differs from `before` was typed and stays.
void drop_prediction(SieveSheet& sheet, const SieveSheet& before);

/// What to say of a sheet whose masses are a prediction.
[[nodiscard]] QString prediction_words();

/// Two empty components, no pot, our defaults for filling.
[[nodiscard]] BenchState empty_bench();

}  // namespace gritwright::desktop
