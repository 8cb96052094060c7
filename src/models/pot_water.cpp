#include "gritwright/models/pot_water.hpp"

#include <algorithm>
#include <cmath>

#include "drained_part.hpp"
#include "tilted_body.hpp"

namespace gritwright {

namespace {

constexpr int height_steps = 10;

/// Mean saturation from `from_cm` to the fill line where the lowest point of that part stands at `head_cm`.
double mean_saturation(const RetentionCurve& curve, const PotGeometry& pot, double from_cm, double to_cm, double head_cm) {
  const double mean = pot.container().tilt.angle.value() > 0 ? tilted_mean_saturation(curve, pot, from_cm, to_cm, head_cm)
                                                             : curve.mean_saturation(pot.profile(), from_cm, to_cm, from_cm - head_cm);
  return std::min(1.0, mean);  // a sum over heights of a pot full of water may pass it by its rounding
}

PotWater shares(const Retention& mix, double mean_saturation_in_body) {
  PotWater water;
  water.container_capacity = mix.curve().water_for_saturation(mean_saturation_in_body);
  water.theta_0 = mix.flooded();
  water.theta_10 = mix.water_at(depth_cm(10));
  water.theta_50 = mix.water_at(depth_cm(50));
  water.theta_100 = mix.water_at(depth_cm(100));
  water.air_filled_porosity = water.theta_0 - water.container_capacity;
  water.total_air = mix.open_voids() - water.container_capacity;
  water.trapped_air = water.total_air - water.air_filled_porosity;
  water.easily_available = water.theta_10 - water.theta_50;
  water.water_buffering = water.theta_50 - water.theta_100;
  water.available_in_pot = water.container_capacity - water.theta_50;
  return water;
}

double middle_extent_cm(const PotGeometry& pot) {
  const Section floor = pot.section_at(Depth{});
  return in_cm(pot.container().tilt.axis == TiltAxis::length ? floor.width : floor.length);
}

void note_height(PotWater& water) {
  if (water.perched_height > water.filled_depth) {
    water.notes.push_back({"water.perched-to-the-top",
                           Level::warning,
                           "",
                           {{"perched_cm", in_cm(water.perched_height)}, {"depth_cm", in_cm(water.filled_depth)}}});
  }
}

}  // namespace

Porosity container_capacity(const RetentionCurve& curve, const PotGeometry& pot, const Retention* layer) {
  const DrainedPart part = drained_part(pot, layer);
  return curve.water_for_saturation(mean_saturation(curve, pot, part.from_cm, in_cm(pot.filled_depth()), part.head_cm));
}

PotWater pot_water(const Retention& mix, const PotGeometry& pot, const Retention* layer) {
  const Container& container = pot.container();
  const double top = in_cm(pot.filled_depth());
  const bool layered = container.bottom_layer && in_cm(container.bottom_layer->thickness) > 0;
  const bool known_layer = layered && layer != nullptr;
  const auto [bottom, bottom_head] = drained_part(pot, layer);

  PotWater water = shares(mix, mean_saturation(mix.curve(), pot, bottom, top, bottom_head));
  water.filled_depth = pot.filled_depth();
  water.mix_volume = pot.main_mix_volume();
  const double cosine = std::cos(container.tilt.angle.value());
  const double rise = in_cm(mix.perched_height()) - bottom_head;
  water.perched_height = depth_cm(rise > 0 ? bottom + rise / cosine : 0.0);

  const double sideways = middle_extent_cm(pot) / 2 * std::sin(container.tilt.angle.value());
  for (int i = 0; i <= height_steps; ++i) {
    const double height = top * i / height_steps;
    const bool in_layer = known_layer && height < bottom;
    const double head = in_layer ? head_at_height_cm(container, height) : bottom_head + (height - bottom) * cosine;
    const Retention& grain = in_layer ? *layer : mix;
    water.water_by_height.push_back({depth_cm(height), grain.water_at(depth_cm(std::max(0.0, head + sideways)))});
  }

  if (known_layer) {
    BottomLayerWater effect;
    effect.interface_head = depth_cm(bottom_head);
    effect.layer_capacity =
        layer->curve().water_for_saturation(mean_saturation(layer->curve(), pot, 0, bottom, head_at_height_cm(container, 0)));
    effect.capacity_without = container_capacity(mix.curve(), pot);
    effect.air_without = water.theta_0 - effect.capacity_without;
    const PotVolume above = pot.volume() - pot.bottom_layer_volume();
    effect.water_with = pot.bottom_layer_volume() * effect.layer_capacity.value() + above * water.container_capacity.value();
    effect.water_without = pot.volume() * effect.capacity_without.value();
    water.bottom_layer = effect;
  }

  water.notes = mix.notes();
  if (layered && !known_layer) water.notes.push_back({"water.layer-unknown", Level::note, "", {}});
  if (container.tilt.angle.value() > 0 && container.shape == Shape::profile) {
    water.notes.push_back({"water.tilted-table", Level::note, "", {}});
  }
  note_height(water);
  return water;
}

PotWater column_water(const Retention& mix, Depth depth) {
  PotWater water = shares(mix, mix.curve().mean_saturation(AreaProfile::column(in_cm(depth)), 0, in_cm(depth), 0));
  water.filled_depth = depth;
  water.perched_height = mix.perched_height();
  for (int i = 0; i <= height_steps; ++i) {
    const Depth height = depth * (static_cast<double>(i) / height_steps);
    water.water_by_height.push_back({height, mix.water_at(height)});
  }
  water.notes = mix.notes();
  note_height(water);
  return water;
}

Mass wet_mass(PotVolume mix_volume, BulkDensity bulk_density, Porosity container_capacity) {
  const double litres = in_ml(mix_volume) / 1000;
  return mass_g(litres * (in_g_l(bulk_density) + 1000 * container_capacity.value()));
}

int conductivity_power_hazen(Aperture d10) {
  const double d10_cm = in_mm(d10) / 10;
  return static_cast<int>(std::floor(std::log10(100 * d10_cm * d10_cm)));
}

int conductivity_power_kozeny_carman(Aperture size, Porosity voids_between_grains) {
  constexpr double gravity_over_viscosity = 981.0 * 0.9982 / 0.010016;  // rho g/mu in 1/(cm s), water at 20 degrees
  const double p = voids_between_grains.value();
  const double size_cm = in_mm(size) / 10;
  const double k = gravity_over_viscosity * p * p * p * size_cm * size_cm / (180 * (1 - p) * (1 - p));
  return static_cast<int>(std::floor(std::log10(k)));
}

}  // namespace gritwright
