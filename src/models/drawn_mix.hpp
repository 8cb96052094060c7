#pragma once
#include <span>
#include <vector>

#include "drawn_grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/mix_spread.hpp"

namespace gritwright {

/// A mix as it could be in truth, as a record: for sums that work on records. UncertainMix does the same on bare numbers.
class DrawnMix {
 public:
  /// Precondition: check(mix) is empty and `spread` is for this mix.
  DrawnMix(Mix mix, MixSpread spread);

  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }

  /// For standard normal scores, one for each dimension. Everything but the packing model's error and the pot.
  [[nodiscard]] Mix draw(std::span<const double> scores);

  /// The factor on the packing density by the packing model's error, for `packing` as the drawn mix has it and the largest
  /// component's share of the grain.
  [[nodiscard]] double packing_factor(std::span<const double> scores, double packing, double largest_share) const;

 private:
  Mix mix_;
  MixSpread spread_;
  std::vector<std::optional<DrawnGrading>> gradings_;  ///< absent for grain of one size
  std::size_t dimensions_ = 0;
};

}  // namespace gritwright
