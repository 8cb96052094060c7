// Random mixes against a second calculation in NumPy that was written apart from this project's sources.
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "gritwright/models/mix_state.hpp"
#include "support/random_mix.hpp"
#include "support/reference.hpp"

using namespace gritwright;

namespace {

void write(const Component& component, std::vector<double>& row) {
  const GrainProperties& grain = component.grain;
  for (const double value : {component.parts.value(), in_g_l(grain.bulk_density), grain.bulk_moisture.value(),
                             in_g_l(grain.particle_density.value()), in_g_l(grain.skeletal_density.value()),
                             grain.open_share.value(), grain.water_absorption ? grain.water_absorption->value() : -1})
    row.push_back(value);
  if (const auto* single = std::get_if<SingleSize>(&component.sizes)) {
    row.push_back(0);
    row.push_back(in_mm(single->size));
    return;
  }
  const auto& points = std::get<Grading>(component.sizes).points;
  row.push_back(static_cast<double>(points.size()));
  for (const GradingPoint& point : points) {
    row.push_back(in_mm(point.aperture));
    row.push_back(point.passing.value());
  }
}

std::vector<double> written(const Mix& mix) {
  std::vector<double> row{counted_settling(mix).value(), mix.water.grain_fill, static_cast<double>(mix.components.size())};
  for (const Component& component : mix.components) write(component, row);
  return row;
}

std::vector<double> figures(const MixState& state) {
  const PackedState& settled = state.settled.value();
  std::vector<double> all{state.poured.value().packing_density.value(), in_l(state.poured.value().volume),
                          state.shrinkage.value().value(), in_g_l(settled.bulk_density),
                          in_g_l(state.particle_density.value()), in_g_l(state.skeletal_density.value()),
                          settled.voids_between_grains.value(), settled.voids_in_grains.value(),
                          settled.total_porosity.value(), settled.grain_water.value()};
  for (const auto& beta : state.class_betas) all.push_back(beta.value().value());
  for (const GradingPoint& point : state.passing) all.push_back(point.passing.value());
  for (const GradingPoint& point : state.envelope_passing.value()) all.push_back(point.passing.value());
  return all;
}

}  // namespace

TEST_CASE("NumPy reckons the same figures for 300 random mixes", "[mix_state][reference][peer]") {
  RandomMixes random(300);
  std::vector<Mix> mixes;
  reference::Rows cases;
  for (int round = 0; round < 300; ++round) cases.push_back(written(mixes.emplace_back(random.next())));
  const reference::Rows answers = reference::answers("mix_state.py", cases);
  for (std::size_t i = 0; i < mixes.size(); ++i) {
    const Result<MixState> state = mix_state(mixes[i]);
    REQUIRE(state.ok());
    const std::vector<double> found = figures(*state);
    CAPTURE(i);
    REQUIRE(found.size() == answers[i].size());
    for (std::size_t k = 0; k < found.size(); ++k) {
      CAPTURE(k);
      // Both are exact but for rounding; NumPy's side finds its class betas to 1e-14.
      REQUIRE(std::abs(found[k] - answers[i][k]) <= 1e-11 * (1 + std::abs(answers[i][k])));
    }
  }
}
