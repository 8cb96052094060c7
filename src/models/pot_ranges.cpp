#include "gritwright/models/pot_ranges.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "draw_slices.hpp"

namespace gritwright {

namespace {

constexpr double length_half_range_cm = 0.2;
constexpr double water_fill_deviation = 0.01;
/// A ruler can't be off by nearly the whole pot.
constexpr double least_factor = 0.1;

}  // namespace

PotSpread usual_pot_spread() { return {length_half_range_cm / score_of_95_percent, water_fill_deviation}; }

PotFactors pot_factors(const PotGeometry& pot, const PotSpread& spread, const PotScores& scores) {
  const auto factor = [&](double length_cm, double score) { return std::max(least_factor, 1 + spread.length_cm * score / length_cm); };
  const Section rim = pot.section_at(pot.filled_depth());
  PotFactors factors;
  factors.depth = factor(in_cm(pot.filled_depth()), scores.depth);
  if (pot.container().water_fill) {
    factors.volume = std::exp(spread.water_fill * scores.length);
    factors.area = factors.volume / factors.depth;
  } else {
    factors.area = factor(in_cm(rim.length), scores.length) * factor(in_cm(rim.width), scores.width);
    factors.volume = factors.area * factors.depth;
  }
  return factors;
}

PotRanges pot_ranges(const PotGeometry& pot, const PotSpread& spread, const SampleSize& size) {
  std::optional<PotGeometry> lengths_alone;  // where a fill stands in their stead
  if (pot.container().water_fill) {
    Container measured_by_lengths = pot.container();
    measured_by_lengths.water_fill.reset();
    lengths_alone.emplace(measured_by_lengths);
  }
  std::vector<double> volumes(size.draws), depths(size.draws), areas(size.draws), main_mixes(size.draws), by_lengths(size.draws);
  over_draws(NormalScores(3, size.seed), size, run_in_order, [&](std::size_t first, std::size_t last, std::span<const double> points) {
    for (std::size_t i = first; i < last; ++i) {
      const double* const z = points.data() + 3 * (i - first);
      const PotFactors factors = pot_factors(pot, spread, {z[0], z[1], z[2]});
      volumes[i] = in_ml(pot.volume()) * factors.volume;
      main_mixes[i] = in_ml(pot.main_mix_volume()) * factors.volume;
      depths[i] = in_cm(pot.filled_depth()) * factors.depth;
      areas[i] = factors.area;
      by_lengths[i] = lengths_alone ? in_ml(pot.volume_by_lengths()) * pot_factors(*lengths_alone, spread, {z[0], z[1], z[2]}).volume : volumes[i];
    }
  });
  return {range_of(volumes), range_of(depths), range_of(areas), range_of(main_mixes), range_of(by_lengths)};
}

}  // namespace gritwright
