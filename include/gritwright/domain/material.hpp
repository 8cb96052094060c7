#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/component.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// How far a catalogue figure can be trusted: read in its source, derived from what was read, or a typical value from memory.
enum class FigureKind { measured, derived, typical };

/// State of the grain a density was taken in.
enum class MoistureBasis { oven_dry, air_dry, as_bagged };

/// One catalogue figure in the unit its key names ("bulk_density_g_l"), with its range and where both come from.
struct CatalogueFigure {
  double value = 0;
  std::optional<double> low;   ///< never above `value`
  std::optional<double> high;  ///< never below `value`
  FigureKind kind = FigureKind::typical;
  std::string source;                       ///< key in materials/references.json
  std::optional<FigureKind> range_kind;     ///< where the range is known otherwise than the value
  std::optional<std::string> range_source;
  std::optional<MoistureBasis> basis;       ///< densities and whatever else depends on moisture
  std::optional<std::string> remark;
  friend bool operator==(const CatalogueFigure&, const CatalogueFigure&) = default;
};

/// A reference material of the catalogue. Only the bulk density is always there; its figures go together as a set.
struct Material {
  std::string name;
  std::vector<std::string> aliases;
  std::string description;
  CatalogueFigure bulk_density_g_l;
  std::optional<CatalogueFigure> particle_density_g_l;
  std::optional<CatalogueFigure> skeletal_density_g_l;
  std::optional<CatalogueFigure> total_porosity;  ///< 0..1
  std::optional<CatalogueFigure> grain_porosity;  ///< pores inside the grain as a share of its envelope, 0..1
  std::optional<CatalogueFigure> open_share;      ///< 0..1
  std::optional<CatalogueFigure> water_absorption;  ///< kg/kg after 24 h, >= 0
  std::optional<CatalogueFigure> water_held;        ///< kg/kg held by the bulk when soaked, where no grain absorption is known
  std::optional<CatalogueFigure> container_capacity;  ///< 0..1, as published for one column
  std::optional<CatalogueFigure> ph;                ///< 0..14
  std::optional<CatalogueFigure> cec_meq_100g;      ///< >= 0
  std::optional<CatalogueFigure> durability_years;  ///< seasons until the grain breaks down, > 0
  std::optional<CatalogueFigure> bag_volume_l;
  std::optional<CatalogueFigure> bag_mass_kg;
  friend bool operator==(const Material&, const Material&) = default;
};

/// One row of a material's figures by key, for tables and checks.
struct NamedFigure {
  std::string_view key;
  std::string_view unit;
  const CatalogueFigure* figure;
};

/// The figures `material` has, in the order of the record. They point into `material`.
[[nodiscard]] std::vector<NamedFigure> figures(const Material& material);

/// The typical grain of `material`, marked as typical. CEC and absorption are left out where the catalogue has none.
[[nodiscard]] GrainProperties typical_grain(const Material& material);

/// True where `value`, in the figure's unit, still is the catalogue's; a grower who measures just that is taken for one who did not.
[[nodiscard]] bool is_typical(const std::optional<CatalogueFigure>& figure, double value);

/// Typical as long as any figure of the grain still is the material's own.
[[nodiscard]] Provenance provenance_of(const GrainProperties& grain, const Material& material);

/// A value outside its own range, a range upside down, shares beyond 1, negative figures, no source. Codes catalogue.*.
[[nodiscard]] Problems check(const Material& material);

/// A source that catalogue figures name by its key. `seen` says how far it was read: read, abstract, ranges, quoted or none.
struct Reference {
  std::string key;
  std::string citation;
  std::string seen;
  friend bool operator==(const Reference&, const Reference&) = default;
};

/// Materials by name or alias; case, "-" and "_" do not matter.
class Catalogue {
 public:
  Catalogue() = default;
  explicit Catalogue(std::vector<Material> materials);

  [[nodiscard]] const std::vector<Material>& materials() const { return materials_; }
  /// Null if there is none of that name.
  [[nodiscard]] const Material* find(std::string_view name) const;
  /// Up to `count` names that look most like `name`, best first.
  [[nodiscard]] std::vector<std::string> nearest(std::string_view name, std::size_t count = 3) const;

 private:
  std::vector<Material> materials_;
};

}  // namespace gritwright
