#pragma once
// Fields of grain, mixes, containers and sieve tests inside the records of a workbook. They carry every property outright, so
// that a record stays what it was when the catalogue changes.

#include <algorithm>

#include "gritwright/domain/container.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "record_archive.hpp"

namespace gritwright::fields {

inline constexpr Door<Aperture> mm{aperture_mm, [](Aperture value) { return in_mm(value); }};
inline constexpr Door<Length> mm_long{length_mm, [](Length value) { return in_mm(value); }};
inline constexpr Door<Length> cm_long{length_cm, [](Length value) { return in_cm(value); }};
inline constexpr Door<Depth> cm{depth_cm, [](Depth value) { return in_cm(value); }};
inline constexpr Door<Area> cm2{area_cm2, [](Area value) { return in_cm2(value); }};
inline constexpr Door<Mass> g{mass_g, [](Mass value) { return in_g(value); }};
inline constexpr Door<Mass> kg{mass_kg, [](Mass value) { return in_kg(value); }};
inline constexpr Door<LooseVolume> loose{loose_l, [](LooseVolume value) { return in_l(value); }};
inline constexpr Door<MixedVolume> mixed{mixed_l, [](MixedVolume value) { return in_l(value); }};
inline constexpr Door<PotVolume> ml{pot_ml, [](PotVolume value) { return in_ml(value); }};
inline constexpr Door<BulkDensity> bulk{bulk_g_l, [](BulkDensity value) { return in_g_l(value); }};
inline constexpr Door<ParticleDensity> particle{particle_g_l, [](ParticleDensity value) { return in_g_l(value); }};
inline constexpr Door<SkeletalDensity> skeletal{skeletal_g_l, [](SkeletalDensity value) { return in_g_l(value); }};
inline constexpr Door<Angle> deg{angle_deg, [](Angle value) { return in_deg(value); }};
inline constexpr Door<double> plain{[](double value) { return value; }, [](double value) { return value; }};
template <class N>
inline constexpr Door<N> ratio{[](double value) { return N(value); }, [](N value) { return value.value(); }};
template <class N>
inline constexpr Door<N> percent{[](double value) { return N(value / 100); }, [](N value) { return value.value() * 100; }};


inline constexpr std::array provenance_words{Word<Provenance>{Provenance::measured, "measured"},
                                             Word<Provenance>{Provenance::typical, "typical"}};

struct GrainFields {
  template <class Io, class T>
  void operator()(Io& io, T& grain) const {
    io.required_number("bulk_density_g_l", grain.bulk_density, bulk);
    io.number("bulk_moisture_percent", grain.bulk_moisture, percent<Moisture>);
    io.number("particle_density_g_l", grain.particle_density, particle);
    io.number("skeletal_density_g_l", grain.skeletal_density, skeletal);
    io.number("open_share", grain.open_share, ratio<OpenShare>, OpenShare(1));
    io.number("water_absorption", grain.water_absorption, ratio<WaterAbsorption>);
    io.number("cec_meq_100g", grain.cation_exchange, ratio<CationExchange>);
    io.word("provenance", grain.provenance, provenance_words);
  }
};

struct GradingPointFields {
  template <class Io, class T>
  void operator()(Io& io, T& point) const {
    io.required_number("aperture_mm", point.aperture, mm);
    io.required_number("passing", point.passing, percent<Passing>);
  }
};

struct GradingFields {
  template <class Io, class T>
  void operator()(Io& io, T& grading) const {
    io.list("grading", grading.points, GradingPointFields{});
    // Files of mixes list the coarsest first; records are read either way and written with the finest first.
    if constexpr (Io::reading)
      if (grading.points.size() > 1 && grading.points.back().aperture < grading.points.front().aperture) std::ranges::reverse(grading.points);
    io.number("pan_size_mm", grading.pan_size, mm);
    io.number("top_size_mm", grading.top_size, mm);
  }
};

/// A grading, or grain of one size as `class_mm`.
template <class Io, class T>
void grain_sizes(Io& io, T& sizes) {
  if constexpr (Io::reading) {
    std::optional<Aperture> size;
    io.number("class_mm", size, mm);
    Grading grading;
    GradingFields{}(io, grading);
    if (size)
      sizes = SingleSize{*size};
    else
      sizes = std::move(grading);
  } else if (const auto* single = std::get_if<SingleSize>(&sizes)) {
    io.required_number("class_mm", single->size, mm);
  } else {
    GradingFields{}(io, std::get<Grading>(sizes));
  }
}

struct SizesFields {
  template <class Io, class T>
  void operator()(Io& io, T& sizes) const {
    grain_sizes(io, sizes);
  }
};

struct ComponentFields {
  template <class Io, class T>
  void operator()(Io& io, T& component) const {
    io.text("name", component.name);
    io.required_number("parts", component.parts, ratio<Parts>);
    io.text("material", component.material);
    GrainFields{}(io, component.grain);
    grain_sizes(io, component.sizes);
  }
};

struct WaterFields {
  template <class Io, class T>
  void operator()(Io& io, T& water) const {
    io.required_number("k_cm_mm", water.k_cm_mm, plain);
    io.required_number("spread", water.spread, plain);
    io.required_number("n", water.n, plain);
    io.required_number("residual", water.residual, plain);
    io.required_number("flooded_fill", water.flooded_fill, plain);
    io.required_number("grain_fill", water.grain_fill, plain);
  }
};

struct MixFields {
  template <class Io, class T>
  void operator()(Io& io, T& mix) const {
    io.text("name", mix.name);
    io.list("components", mix.components, ComponentFields{});
    io.object("water", mix.water, WaterFields{});
    io.number("settling", mix.settling, ratio<Settling>);
    io.number("spill", mix.spill, ratio<Spill>);
  }
};

inline constexpr std::array mound_words{Word<MoundForm>{MoundForm::paraboloid, "paraboloid"},
                                        Word<MoundForm>{MoundForm::cone, "cone"},
                                        Word<MoundForm>{MoundForm::ellipsoid, "ellipsoid"}};
inline constexpr std::array axis_words{Word<TiltAxis>{TiltAxis::length, "length"}, Word<TiltAxis>{TiltAxis::width, "width"}};

struct SectionFields {
  template <class Io, class T>
  void operator()(Io& io, T& section) const {
    io.required_number("length_cm", section.length, cm_long);
    io.required_number("width_cm", section.width, cm_long);
  }
};
struct AreaFields {
  template <class Io, class T>
  void operator()(Io& io, T& area) const {
    io.required_number("height_cm", area.height, cm);
    io.required_number("area_cm2", area.area, cm2);
  }
};
struct MoundFields {
  template <class Io, class T>
  void operator()(Io& io, T& mound) const {
    io.required_number("rise_cm", mound.rise, cm);
    io.word("form", mound.form, mound_words);
  }
};
struct BottomLayerFields {
  template <class Io, class T>
  void operator()(Io& io, T& layer) const {
    io.required_number("thickness_cm", layer.thickness, cm);
    io.object("component", layer.component, ComponentFields{});
  }
};

struct ContainerFields {
  template <class Io, class T>
  void operator()(Io& io, T& container) const {
    io.text("name", container.name);
    io.word("shape", container.shape, shape_words);
    io.object("rim", container.rim, SectionFields{});
    io.object("middle", container.middle, SectionFields{});
    io.object("base", container.base, SectionFields{});
    io.required_number("depth_cm", container.depth, cm);
    io.number("freeboard_cm", container.freeboard, cm);
    io.number("water_fill_ml", container.water_fill, ml);
    io.number("corner_radius_cm", container.corner_radius, cm_long);
    io.number("fillet_radius_cm", container.fillet_radius, cm_long);
    io.number("exponent", container.exponent, plain);
    io.list("areas", container.areas, AreaFields{});
    io.number("saucer_cm", container.saucer, cm);
    io.number("wick_cm", container.wick, cm);
    io.number("tilt_deg", container.tilt.angle, deg);
    io.word("tilt_axis", container.tilt.axis, axis_words);
    io.number("mass_kg", container.mass, kg);
    io.object("mound", container.mound, MoundFields{});
    io.object("bottom_layer", container.bottom_layer, BottomLayerFields{});
    io.number("top_dressing_cm", container.top_dressing, cm);
  }
};

inline constexpr std::array basis_words{Word<PercentBasis>{PercentBasis::original, "original"},
                                        Word<PercentBasis>{PercentBasis::recovered, "recovered"}};

/// Net mass, gross and tare, or litres; one of the three.
template <class Io, class T>
void retained(Io& io, T& value) {
  if constexpr (Io::reading) {
    std::optional<Mass> mass, gross;
    std::optional<LooseVolume> volume;
    Mass tare{};
    io.number("mass_g", mass, g);
    io.number("gross_g", gross, g);
    io.number("tare_g", tare, g);
    io.number("retained_l", volume, loose);
    if (gross)
      value = GrossTare{*gross, tare};
    else if (volume)
      value = *volume;
    else
      value = mass.value_or(Mass{});
  } else if (const auto* mass = std::get_if<Mass>(&value)) {
    io.required_number("mass_g", *mass, g);
  } else if (const auto* weighed = std::get_if<GrossTare>(&value)) {
    io.required_number("gross_g", weighed->gross, g);
    io.required_number("tare_g", weighed->tare, g);
  } else {
    io.required_number("retained_l", std::get<LooseVolume>(value), loose);
  }
}

struct RetainedFields {
  template <class Io, class T>
  void operator()(Io& io, T& value) const {
    retained(io, value);
  }
};

struct SieveRowFields {
  template <class Io, class T>
  void operator()(Io& io, T& row) const {
    io.required_number("aperture_mm", row.aperture, mm);
    retained(io, row.retained);
    io.number("crumbs_percent", row.crumbs, percent<MassShare>);
  }
};

struct SieveTestFields {
  template <class Io, class T>
  void operator()(Io& io, T& test) const {
    io.text("material", test.material);
    io.text("lot", test.lot);
    io.day("date", test.date);
    io.number("dry_mass_g", test.dry_mass, g);
    io.number("washed_dry_mass_g", test.washed_dry_mass, g);
    io.number("moisture_percent", test.moisture, percent<Moisture>);
    io.number("sieve_diameter_mm", test.sieve_diameter, mm_long);
    io.word("basis", test.basis, basis_words);
    io.number("resolution_g", test.resolution, g);
    io.number("particle_density_g_l", test.particle_density, particle);
    io.number("bulk_density_g_l", test.bulk_density, bulk);
    io.list("retained", test.rows, SieveRowFields{});
    io.object("pan", test.pan, RetainedFields{});
    io.number("pan_crumbs_percent", test.pan_crumbs, percent<MassShare>);
  }
};

}  // namespace gritwright::fields
