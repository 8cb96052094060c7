#include "mix_json.hpp"

#include <nlohmann/json.hpp>

namespace gritwright::cli {

namespace {

template <class NumberKind>
Json numbers(const std::vector<NumberKind>& values) {
  Json list = Json::array();
  for (const NumberKind& value : values) list.push_back(value.value());
  return list;
}

template <class NumberKind>
Json numbers(const std::vector<std::optional<NumberKind>>& values) {
  Json list = Json::array();
  for (const auto& value : values) list.push_back(value ? Json(value->value()) : Json(nullptr));
  return list;
}

}  // namespace

Json mix_json(const MixState& state) {
  const auto poured = [&](auto figure) { return state.poured ? Json(figure(*state.poured)) : Json(nullptr); };
  const auto settled = [&](auto figure) { return state.settled ? Json(figure(*state.settled)) : Json(nullptr); };
  Json answer;
  answer["mass_shares"] = numbers(state.mass_shares);
  answer["envelope_shares"] = state.envelope_shares ? numbers(*state.envelope_shares) : Json(nullptr);
  answer["loose_volume_shares"] = numbers(state.loose_shares);
  answer["class_betas"] = numbers(state.class_betas);
  answer["passing"] = to_json(state.passing);
  answer["envelope_passing"] = state.envelope_passing ? to_json(*state.envelope_passing) : Json(nullptr);
  answer["packing_density"] = poured([](const PackedState& s) { return s.packing_density.value(); });
  answer["volume_l"] = poured([](const PackedState& s) { return in_l(s.volume); });
  answer["shrinkage_percent"] = state.shrinkage ? Json(state.shrinkage->value() * 100) : Json(nullptr);
  answer["bulk_density_g_l"] = settled([](const PackedState& s) { return in_g_l(s.bulk_density); });
  answer["particle_density_g_l"] = state.particle_density ? Json(in_g_l(*state.particle_density)) : Json(nullptr);
  answer["skeletal_density_g_l"] = state.skeletal_density ? Json(in_g_l(*state.skeletal_density)) : Json(nullptr);
  answer["voids_between_grains"] = settled([](const PackedState& s) { return s.voids_between_grains.value(); });
  answer["voids_in_grains"] = settled([](const PackedState& s) { return s.voids_in_grains.value(); });
  answer["total_porosity"] = settled([](const PackedState& s) { return s.total_porosity.value(); });
  answer["grain_water"] = settled([](const PackedState& s) { return s.grain_water.value(); });
  answer["cec_meq_l"] =
      settled([](const PackedState& s) { return s.cation_exchange ? Json(s.cation_exchange->value()) : Json(nullptr); });
  return answer;
}

Json pot_water_json(const PotWater& water, std::optional<PotVolume> volume, BulkDensity bulk_density) {
  const auto mix_volume = water.mix_volume;
  return {{"volume_ml", volume ? Json(in_ml(*volume)) : Json(nullptr)},
          {"depth_cm", in_cm(water.filled_depth)},
          {"container_capacity", water.container_capacity.value()},
          {"air_filled_porosity", water.air_filled_porosity.value()},
          {"trapped_air", water.trapped_air.value()},
          {"total_air", water.total_air.value()},
          {"theta_0", water.theta_0.value()},
          {"theta_10", water.theta_10.value()},
          {"theta_50", water.theta_50.value()},
          {"easily_available", water.easily_available.value()},
          {"available_in_pot", water.available_in_pot.value()},
          {"perched_height_cm", in_cm(water.perched_height)},
          {"wet_mass_g", mix_volume ? Json(in_g(wet_mass(*mix_volume, bulk_density, water.container_capacity))) : Json(nullptr)}};
}

}  // namespace gritwright::cli
