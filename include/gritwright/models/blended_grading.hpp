#pragma once
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"

namespace gritwright {

/// The whole curve of a grain from 0 to 1, rising; a step is two points at one size. The pan is a step at its own size and the
/// class above the coarsest sieve ends at the top size (the rules of size_classes). Precondition: check(grading) is empty.
[[nodiscard]] std::vector<GradingPoint> closed_grading(const GrainSizes& sizes);

/// Share not coarser than `aperture` on a whole curve: the head of a step that stands there. Linear in log size.
[[nodiscard]] double share_passing(std::span<const GradingPoint> closed_curve, Aperture aperture);
/// Share strictly finer than `aperture` on a whole curve: the foot of a step that stands there.
[[nodiscard]] double share_finer(std::span<const GradingPoint> closed_curve, Aperture aperture);

/// Curves as closed_grading() gives them, added by weight on the union of their points, each read linearly in log size on its
/// own. The weights (mass or envelope shares, >= 0) need not sum to 1; at least one is above 0. Source: astm-c136 blends.
[[nodiscard]] std::vector<GradingPoint> blended_grading(std::span<const std::vector<GradingPoint>> closed_curves,
                                                        std::span<const double> weights);

}  // namespace gritwright
