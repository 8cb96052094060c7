#include "pot_tests.hpp"

#include <vector>

namespace gritwright::cli {

std::optional<TestedPot> pot_of(const WrittenPotReading& reading, const Container* fallback) {
  if (reading.pot) {
    if (const auto* container = std::get_if<Container>(&*reading.pot)) return PotGeometry(*container);
    return std::get<Depth>(*reading.pot);
  }
  if (fallback != nullptr) return PotGeometry(*fallback);
  return std::nullopt;
}

PotVolume volume_of(const WrittenPotReading& reading, const std::optional<TestedPot>& pot) {
  if (reading.volume) return *reading.volume;
  return std::get<PotGeometry>(pot.value()).volume();
}

Problems without_volume(const std::vector<WrittenPotReading>& readings, bool fallback) {
  Problems problems;
  for (const WrittenPotReading& reading : readings) {
    const bool shaped = reading.pot ? std::holds_alternative<Container>(*reading.pot) : fallback;
    if (!reading.volume && !shaped) problems.push_back(problem_at("pot-test.no-volume", reading.pointer));
  }
  return problems;
}

SaturationKernel kernel_of(const TestedPot& pot, double n) {
  if (const auto* geometry = std::get_if<PotGeometry>(&pot)) return SaturationKernel::for_pot(*geometry, n);
  return SaturationKernel::for_column(std::get<Depth>(pot), n);
}

std::optional<Calibration> learnt_from(const PotTestFile& file, const Mix& mix, const MixState& state) {
  CalibrationPrior prior;
  prior.constants = mix.water;
  std::vector<CalibrationTest> tests;
  std::string dates;
  for (const WrittenPotReading& reading : file.readings) {
    const auto pot = pot_of(reading, nullptr);
    if (!pot) continue;
    const auto* geometry = std::get_if<PotGeometry>(&*pot);
    const Depth depth = geometry != nullptr ? geometry->filled_depth() : std::get<Depth>(*pot);
    tests.push_back({kernel_of(*pot, prior.constants.n), depth, measured_porosities({volume_of(reading, pot), reading.water})});
    if (reading.date) dates.append(dates.empty() ? "" : ", ").append(*reading.date);
  }
  if (tests.empty()) return std::nullopt;
  auto calibration = calibrate(mix, state, tests, prior);
  if (calibration && calibration->belief) {
    const auto count = static_cast<double>(tests.size());
    Facts facts{{"count", count}, {"k_cm_mm", calibration->constants.k_cm_mm}};
    if (!dates.empty()) facts["dates"] = dates;
    calibration->notes.push_back({dates.empty() ? "mix.calibrated" : "mix.calibrated-on", Level::note, "", facts});
    const bool other_mix = file.mix && file.mix->components != mix.components;
    if (other_mix) calibration->notes.push_back({"mix.calibrated-by-other", Level::warning, "", {}});
  }
  return calibration;
}

}  // namespace gritwright::cli
