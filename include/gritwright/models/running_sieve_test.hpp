#pragma once
#include <optional>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Gross less tare, the mass itself, or empty for litres.
[[nodiscard]] std::optional<Mass> net_mass(const Retained& retained);

/// Net mass of what was weighed so far: all rows, and the pan if `with_pan`, crumbs included. Empty where litres were measured.
[[nodiscard]] std::optional<Mass> weighed_so_far(const SieveTest& test, bool with_pan);

/// Loose litres in the buckets so far, side by side: all rows, and the pan if `with_pan`. Empty where anything was weighed.
[[nodiscard]] std::optional<LooseVolume> collected_so_far(const SieveTest& test, bool with_pan);

/// What must still lie in the stack: the starting mass (after washing, where it was washed) less the rows. Passing at the rows
/// so far depends on nothing below them, so with this in the pan the curve is right as far as it goes. Empty without a
/// starting mass, where litres were measured, or where the rows outweigh the sample.
[[nodiscard]] std::optional<Mass> still_in_the_stack(const SieveTest& test);

}  // namespace gritwright
