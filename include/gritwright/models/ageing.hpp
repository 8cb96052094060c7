#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/breakdown.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// A mix after some seasons in its pot.
struct AgedMix {
  Mix mix;                  ///< graded, packed and dosed as it then is; parts keep the dry mass that is left
  double volume_ratio = 1;  ///< of the settled volume to that of the new mix
  double clogged = 0;       ///< share of that volume, at the floor, whose voids are full of crumbled grain, 0..1
};

/// `breakdowns` in component order (absent: it does not break), each rate times its factor of `rates`. Absent where the mix has no
/// volumes. Precondition: check(mix) is empty, seasons >= 0. Source: docs/science/ageing.md.
[[nodiscard]] std::optional<AgedMix> aged_mix(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, double seasons,
                                              Fines fines, std::span<const double> rates = {});

/// Air-filled porosity of what is left of the mix in its pot, in one season.
struct SeasonAir {
  int season = 0;  ///< 0: new
  Range staying;
  Range washed_down;
  std::vector<GradingPoint> grading;  ///< by mass, at usual rates, the fines staying
};

struct AirOverYears {
  std::vector<SeasonAir> seasons;
  std::optional<int> likely_below_staying;      ///< first season whose middle estimate lies below the limit
  std::optional<int> likely_below_washed_down;
  Notes notes;
};

/// Whom the hint for the next repotting serves may set another limit; our assumption.
inline constexpr Porosity least_air_of_old_mix{0.20};

/// Air over `seasons` years, with its range from everything uncertain about the mix and from the rates. Absent where the mix has no
/// volumes or no pot. The same for every runner; the rates share the draws out, each with a seed of its own, and a small sample has the
/// first of them. The new mix has the range UncertainMix gives it.
[[nodiscard]] std::optional<AirOverYears> air_over_years(const Mix& mix, const MixSpread& spread, const UncertainMix::Pot& pot,
                                                         std::span<const std::optional<Breakdown>> breakdowns, int seasons = 5,
                                                         Porosity limit = least_air_of_old_mix, const SampleSize& size = {},
                                                         const SliceRunner& runner = run_in_order);

}  // namespace gritwright
