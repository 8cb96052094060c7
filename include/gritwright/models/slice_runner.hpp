#pragma once
#include <cstddef>
#include <functional>

namespace gritwright {

/// Calls `slice(i)` once for every i below `count`, in any order and on any threads, and returns when all are done.
using SliceRunner = std::function<void(std::size_t count, const std::function<void(std::size_t)>& slice)>;

/// One slice after the other, on the caller's thread.
void run_in_order(std::size_t count, const std::function<void(std::size_t)>& slice);

}  // namespace gritwright
