#pragma once
#include "gritwright/domain/sieve_test.hpp"

namespace gritwright {

/// Whether the same was weighed or measured: openings, what stayed on them, pan, crumbs, starting mass. To 1e-8 of each, since nine digits
/// of a figure are typed and shown. A net mass is a gross one with a tare of 0.
[[nodiscard]] bool same_weighings(const SieveTest& a, const SieveTest& b);

/// Also of what is known of the sample beside that: width of the sieves, moisture, mass after washing.
[[nodiscard]] bool same_sieving(const SieveTest& a, const SieveTest& b);

/// Whether `now` is `kept` with figures put right, rather than another sample: more than half of what was read off the balance is the
/// same, pans without grain not counted; a tare may be another. Two samples of a bag hardly share one weight (common practice, no source).
[[nodiscard]] bool is_put_right(const SieveTest& kept, const SieveTest& now);

}  // namespace gritwright
