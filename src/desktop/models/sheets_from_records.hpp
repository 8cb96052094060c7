#pragma once
#include "bench_state.hpp"
#include "gritwright/domain/sieve_test.hpp"

namespace gritwright::desktop {

/// A sieve test as the sheet that would have been typed for it: metric, with as many digits as the record holds.
[[nodiscard]] SieveSheet sheet_of(const SieveTest& test);

/// A component of one part from a sieve test: its material, lot and densities where it names them.
[[nodiscard]] ComponentSheet component_of(const SieveTest& test, const QString& name);

/// A container's lengths as typed, or its table of areas.
[[nodiscard]] PotSheet sheet_of(const Container& container);

}  // namespace gritwright::desktop
