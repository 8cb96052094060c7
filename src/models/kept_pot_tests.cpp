#include "gritwright/models/kept_pot_tests.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/retention.hpp"
#include "gritwright/models/sieve_analysis.hpp"

namespace gritwright {

namespace {

const PotGeometry* geometry_of(const KeptPotTest& test) { return std::get_if<PotGeometry>(&test.pot); }

SaturationKernel kernel_of(const KeptPotTest& test, double n) {
  const PotGeometry* const pot = geometry_of(test);
  return pot != nullptr ? SaturationKernel::for_pot(*pot, n) : SaturationKernel::for_column(std::get<Depth>(test.pot), n);
}

constexpr double most_share_apart = 0.03;
constexpr double most_size_apart = 1.25;

/// One component as far as a pot test hangs on it.
struct RecipePart {
  std::string grain;
  double share = 0;
  double middle_mm = 0;
};

/// Half of a component lies below it; what has no middle within its sieves goes by its finest or coarsest.
double middle_mm_of(const GrainSizes& sizes) {
  if (const auto* single = std::get_if<SingleSize>(&sizes)) return in_mm(single->size);
  const Grading& grading = std::get<Grading>(sizes);
  if (const auto middle = percentile(grading, 50)) return in_mm(*middle);
  return in_mm(grading.points.front().passing > Passing(0.5) ? grading.points.front().aperture : grading.points.back().aperture);
}

std::vector<RecipePart> recipe_parts(const Mix& mix) {
  double sum = 0;
  for (const Component& component : mix.components) sum += component.parts.value();
  std::vector<RecipePart> parts;
  for (const Component& component : mix.components) {
    if (component.parts.value() > 0) parts.push_back({component.material.value_or(component.name), component.parts.value() / sum, middle_mm_of(component.sizes)});
  }
  std::ranges::sort(parts, [](const RecipePart& a, const RecipePart& b) { return a.grain != b.grain ? a.grain < b.grain : a.middle_mm < b.middle_mm; });
  return parts;
}

bool same_part(const RecipePart& a, const RecipePart& b) {
  // A share or size right at the limit is within it, whatever its last digit.
  constexpr double rounding = 1e-9;
  return a.grain == b.grain && std::abs(a.share - b.share) <= most_share_apart + rounding &&
         std::max(a.middle_mm, b.middle_mm) <= most_size_apart * std::min(a.middle_mm, b.middle_mm) + rounding;
}

/// The mix a test was made of, as the chain takes it.
struct TestedState {
  std::optional<MixState> state;
  std::optional<RetentionInput> input;
};

TestedState tested_state(const Mix& mix, const RetentionConstants& prior) {
  TestedState tested;
  auto state = mix_state(mix);
  if (!state) return tested;
  tested.state = std::move(state).value();
  tested.input = retention_input(*tested.state, prior);
  return tested;
}

}  // namespace

bool same_recipe(const Mix& a, const Mix& b) { return std::ranges::equal(recipe_parts(a), recipe_parts(b), same_part); }

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
  const TestedState now = tested_state(mix, prior);
  if (!now.input) return std::nullopt;
  TestedMix tested;
  std::vector<CalibrationTest> for_fit;
  for (const KeptPotTest& test : tests) {
    const TestedState then = test.of ? tested_state(*test.of, prior) : TestedState{};
    const TestedState& ground = then.input ? then : now;
    ForetoldTest one;
    one.reading = test.reading;
    one.measured = measured_porosities(test.reading);
    const PotGeometry* const pot = geometry_of(test);
    one.predicted = pot != nullptr ? mix_in_pot(*ground.state, prior, *pot) : mix_in_column(*ground.state, prior, std::get<Depth>(test.pot));
    if (one.predicted && one.measured.air_filled_porosity)
      tested.air.push_back({one.predicted->air_filled_porosity, *one.measured.air_filled_porosity, Retention(*ground.input).characteristic_size()});
    for_fit.push_back({kernel_of(test, prior.n), test.filled_depth(), one.measured, test.of});
    tested.tests.push_back(std::move(one));
  }
  CalibrationPrior before;
  before.constants = prior;
  if (!for_fit.empty()) tested.calibration = calibrate(mix, *now.state, for_fit, before);
  return tested;
}

}  // namespace gritwright
