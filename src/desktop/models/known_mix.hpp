#pragma once
// A kept mix with all that the record now knows of it, so that every page has the same figures and ranges for it.

#include <span>

#include "bench_ranges.hpp"
#include "gritwright/domain/mix_version.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// The mix as it was designed, with the water constants that pot tests of it or of its materials teach, the samples its gradings rest on,
/// and what its settling is known by. Without pot and band. `calibrations` are those of the record.
[[nodiscard]] MixQuestion known_mix(const OpenWorkbook& workbook, const Catalogue& catalogue, const MixVersion& version, std::span<const MixCalibration> calibrations);

/// Its water constants alone.
[[nodiscard]] RetentionConstants known_water(const Mix& mix, std::span<const MixCalibration> calibrations);
/// The pot tests these rest on, in words; empty without any.
[[nodiscard]] std::optional<Note> known_by_tests(const Mix& mix, std::span<const MixCalibration> calibrations);

}  // namespace gritwright::desktop
