#pragma once
#include <stop_token>

#include "gritwright/models/slice_runner.hpp"

namespace gritwright::desktop {

/// Out of work that was stopped; a BackgroundJob has no answer then.
struct WorkStopped {};

/// Runs slices on all cores until a stop is asked for: then those that are left are not begun and WorkStopped comes out of the run.
[[nodiscard]] SliceRunner on_all_cores_until(std::stop_token stop);

/// From now on this thread, and those that it makes, have less of the processors than the window's.
void stand_behind_the_typing();

}  // namespace gritwright::desktop
