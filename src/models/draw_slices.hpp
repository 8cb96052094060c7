#pragma once
#include <algorithm>
#include <span>
#include <vector>

#include "gritwright/models/normal_scores.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/slice_runner.hpp"

namespace gritwright {

inline constexpr std::size_t draws_in_slice = 256;

/// Calls `use(first, last, scores)` for slices of equal size that cover all draws; `scores` has a row for each draw of the slice.
template <class Use>
void over_draws(const NormalScores& scores, const SampleSize& size, const SliceRunner& runner, const Use& use) {
  const std::size_t slices = (size.draws + draws_in_slice - 1) / draws_in_slice;
  runner(slices, [&](std::size_t slice) {
    const std::size_t first = slice * draws_in_slice, last = std::min(size.draws, first + draws_in_slice);
    std::vector<double> points((last - first) * scores.dimensions());
    scores.fill(first, points);
    use(first, last, std::span<const double>(points));
  });
}

}  // namespace gritwright
