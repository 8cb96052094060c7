#pragma once
#include "gritwright/models/slice_runner.hpp"

namespace gritwright {

/// Runs slices on so many threads, the caller's among them; 0 and 1 are the caller's alone. An exception of a slice comes out of the
/// run when all threads have ended; what was not begun by then is left.
[[nodiscard]] SliceRunner slice_threads(unsigned threads);

/// On as many threads as the machine has.
[[nodiscard]] SliceRunner on_all_cores();

}  // namespace gritwright
