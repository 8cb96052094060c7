#include "gritwright/models/normal_scores.hpp"

#include <boost/math/special_functions/erf.hpp>
#include <boost/random/sobol.hpp>
#include <numbers>

namespace gritwright {

namespace {

constexpr std::uint32_t cells_bits = 14;
constexpr std::size_t cells = std::size_t{1} << cells_bits;

/// Scores at the middles of equal cells: a sample of a few thousand points can't tell more cells apart.
const std::vector<double>& scores_by_cell() {
  static const std::vector<double> table = [] {
    std::vector<double> values(cells);
    for (std::size_t i = 0; i < cells; ++i) values[i] = normal_score((static_cast<double>(i) + 0.5) / cells);
    return values;
  }();
  return table;
}

/// A well-mixed number for each axis. Source: steele-lea-flood-2014 (SplitMix).
std::uint32_t shift_of(std::uint64_t seed, std::size_t axis) {
  std::uint64_t z = seed + 0x9e3779b97f4a7c15ULL * (axis + 1);
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
  return static_cast<std::uint32_t>((z ^ (z >> 31U)) >> 32U);
}

}  // namespace

double normal_score(double share) { return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * share); }

void NormalScores::fill(std::size_t first, std::span<double> scores) const {
  const std::vector<double>& table = scores_by_cell();
  std::vector<std::uint32_t> shifts;
  for (std::size_t axis = 0; axis < dimensions_; ++axis) shifts.push_back(shift_of(seed_, axis));
  boost::random::sobol_engine<std::uint32_t, 32> engine(dimensions_);
  engine.seed(static_cast<std::uint32_t>(first));
  for (std::size_t at = 0; at + dimensions_ <= scores.size(); at += dimensions_) {
    for (std::size_t axis = 0; axis < dimensions_; ++axis) scores[at + axis] = table[(engine() ^ shifts[axis]) >> (32 - cells_bits)];
  }
}

}  // namespace gritwright
