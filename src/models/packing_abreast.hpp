#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "draw_lanes.hpp"
#include "gritwright/domain/grading.hpp"

namespace gritwright {

/// PackingKernel for draws_abreast blends of the same sizes at a time: a row for each size. Agrees with it to the last few digits.
class PackingAbreast {
 public:
  /// As PackingKernel's, and throws as it does.
  explicit PackingAbreast(std::span<const Aperture> sizes);

  /// As PackingKernel::specific_volume; fills the row `volumes`.
  void specific_volumes(const double* shares, const double* loose_volumes, double* volumes) const;

  /// As PackingKernel::class_volume; `own` is a row, too.
  void class_volumes(const double* shares, const double* own, double* volumes) const;

 private:
  /// What one class does to another: f or g, the same wedged, and 1 - r^6.
  struct Effect {
    double plain = 0;
    double wedged = 0;
    double apart = 0;
  };
  struct Sums;

  template <class Room>
  [[nodiscard]] Sums sums(std::size_t on, std::size_t from, std::size_t to, const double* shares, const Room& room) const;

  std::size_t count_;
  std::vector<Effect> effects_;  ///< a row for each class, a column for each that acts on it
};

}  // namespace gritwright
