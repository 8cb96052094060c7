#include "gritwright/models/kept_pot_tests.hpp"

#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"

namespace gritwright {

namespace {

const PotGeometry* geometry_of(const KeptPotTest& test) { return std::get_if<PotGeometry>(&test.pot); }

SaturationKernel kernel_of(const KeptPotTest& test, double n) {
  const PotGeometry* const pot = geometry_of(test);
  return pot != nullptr ? SaturationKernel::for_pot(*pot, n) : SaturationKernel::for_column(std::get<Depth>(test.pot), n);
}

}  // namespace

Depth KeptPotTest::filled_depth() const {
  const PotGeometry* const shape = geometry_of(*this);
  return shape != nullptr ? shape->filled_depth() : std::get<Depth>(pot);
}

std::optional<KeptPotTest> kept_pot_test(const PotTest& test, const std::optional<Container>& container) {
  std::optional<std::variant<PotGeometry, Depth>> pot;
  if (container) pot = PotGeometry(*container);
  else if (test.filled_depth) pot = *test.filled_depth;
  if (!pot) return std::nullopt;
  PotReading reading;
  if (test.volume) reading.volume = *test.volume;
  else if (const auto* shape = std::get_if<PotGeometry>(&*pot)) reading.volume = shape->volume();
  if (test.weighed) reading.water = *test.weighed;
  else if (test.water_poured) reading.water = PouredWater{*test.water_poured, test.water_caught};
  else return std::nullopt;
  if (!check(reading).empty()) return std::nullopt;
  return KeptPotTest{reading, *pot};
}

std::optional<TestedMix> tested_mix(const Mix& mix, std::span<const KeptPotTest> tests, const RetentionConstants& prior) {
  const auto state = mix_state(mix);
  if (!state) return std::nullopt;
  const auto input = retention_input(*state, prior);
  if (!input) return std::nullopt;
  const Aperture size = Retention(*input).characteristic_size();
  TestedMix tested;
  std::vector<CalibrationTest> for_fit;
  for (const KeptPotTest& test : tests) {
    ForetoldTest one;
    one.measured = measured_porosities(test.reading);
    const PotGeometry* const pot = geometry_of(test);
    one.predicted = pot != nullptr ? mix_in_pot(*state, prior, *pot) : mix_in_column(*state, prior, std::get<Depth>(test.pot));
    if (one.predicted && one.measured.air_filled_porosity)
      tested.air.push_back({one.predicted->air_filled_porosity, *one.measured.air_filled_porosity, size});
    for_fit.push_back({kernel_of(test, prior.n), test.filled_depth(), one.measured});
    tested.tests.push_back(std::move(one));
  }
  CalibrationPrior before;
  before.constants = prior;
  if (!for_fit.empty()) tested.calibration = calibrate(mix, *state, for_fit, before);
  return tested;
}

}  // namespace gritwright
