#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "gritwright/models/calibration.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "inputs.hpp"

namespace gritwright::cli {

/// The pot a test was made in: a container, or straight walls of a depth.
using TestedPot = std::variant<PotGeometry, Depth>;

/// Of a reading; `fallback` where it names none.
[[nodiscard]] std::optional<TestedPot> pot_of(const WrittenPotReading& reading, const Container* fallback);
/// Written, else the pot's to its fill line. Precondition: one of them is known.
[[nodiscard]] PotVolume volume_of(const WrittenPotReading& reading, const std::optional<TestedPot>& pot);
/// The readings that have no volume: neither a written one nor that of a container, their own or, with `fallback`, another. Straight
/// walls of a depth have none. Code pot-test.no-volume.
[[nodiscard]] Problems without_volume(const std::vector<WrittenPotReading>& readings, bool fallback);
[[nodiscard]] SaturationKernel kernel_of(const TestedPot& pot, double n);

/// What the pot tests of a file teach about a mix: tests without a pot of known shape teach nothing. The notes name the tests.
[[nodiscard]] std::optional<Calibration> learnt_from(const PotTestFile& file, const Mix& mix, const MixState& state);

}  // namespace gritwright::cli
