#pragma once
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace gritwright {

/// Points of a Sobol' sequence, each axis shifted by bits of the seed, as standard normal scores. Point i is the same however the
/// points are cut into slices. Source: bratley-fox-1988.
class NormalScores {
 public:
  NormalScores(std::size_t dimensions, std::uint64_t seed) : dimensions_(dimensions), seed_(seed) {}

  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }

  /// The points first, first + 1, ... as rows of `dimensions()` scores; fills `scores`, whose size is a multiple of it.
  void fill(std::size_t first, std::span<double> scores) const;

 private:
  std::size_t dimensions_;
  std::uint64_t seed_;
};

/// The score below which a share 0 < u < 1 of the standard normal lies.
[[nodiscard]] double normal_score(double share);

}  // namespace gritwright
