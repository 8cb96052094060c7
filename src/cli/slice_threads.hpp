#pragma once
#include "gritwright/models/recipe_search.hpp"

namespace gritwright::cli {

/// Runs slices on so many threads, 1 or more; the caller's is one of them.
[[nodiscard]] SliceRunner slice_threads(unsigned threads);

}  // namespace gritwright::cli
