#pragma once
#include "gritwright/models/slice_runner.hpp"

namespace gritwright::desktop {

/// Runs slices on as many threads as the machine has, the caller's among them. An exception of a slice comes out of the run.
[[nodiscard]] SliceRunner on_all_cores();

}  // namespace gritwright::desktop
