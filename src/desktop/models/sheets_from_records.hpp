#pragma once
#include <cstddef>
#include <span>

#include "bench_state.hpp"
#include "gritwright/domain/recorded_sieve_test.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// A sieve test as the sheet that would have been typed for it: metric, with as many digits as the record holds.
[[nodiscard]] SieveSheet sheet_of(const SieveTest& test);

/// A component of one part from a sieve test: its material, lot and densities where it names them.
[[nodiscard]] ComponentSheet component_of(const SieveTest& test, const QString& name);
/// The newest of a grain's tests, oldest first, and the samples that were typed beside it on one sheet. Precondition: there is one.
[[nodiscard]] ComponentSheet component_of(std::span<const Stored<RecordedSieveTest>> tests, const QString& name);

/// The place of the first of them: those from there on were typed on the sheet of the newest. Precondition: there is one.
[[nodiscard]] std::size_t first_of_newest_sheet(std::span<const Stored<RecordedSieveTest>> tests);

/// A container's lengths as typed, or its table of areas.
[[nodiscard]] PotSheet sheet_of(const Container& container);

}  // namespace gritwright::desktop
