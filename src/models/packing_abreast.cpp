#include "packing_abreast.hpp"

#include <array>
#include <limits>
#include <stdexcept>

#include "gritwright/models/packing.hpp"
#include "wedging.hpp"

namespace gritwright {

namespace {

/// Draws that are summed together: more would not fit the registers, fewer would load each effect oftener.
constexpr std::size_t pairs_together = 2;
using Few = std::array<Pair, pairs_together>;

Few few_at(const double* row) {
  Few few;
  for (std::size_t i = 0; i < pairs_together; ++i) few[i] = pair_at(row + 2 * i);
  return few;
}

template <class Mask>
bool any(const std::array<Mask, pairs_together>& mask) {
  return (mask[0][0] | mask[0][1] | mask[1][0] | mask[1][1]) != 0;
}

}  // namespace

struct PackingAbreast::Sums {
  Few plain{};
  Few wedged{};
  Few apart{};
};

PackingAbreast::PackingAbreast(std::span<const Aperture> sizes) : count_(sizes.size()), effects_(count_ * count_) {
  for (std::size_t coarse = 0; coarse < count_; ++coarse) {
    for (std::size_t fine = coarse + 1; fine < count_; ++fine) {
      const double ratio = sizes[fine] / sizes[coarse];
      if (!(ratio <= 1)) throw std::logic_error("packing abreast needs its sizes coarse to fine");
      const double wedged = wedging_effect(ratio), apart = apartness(ratio);
      effects_[fine * count_ + coarse] = {occupying_effect(ratio), occupying_effect(ratio) * wedged, apart};
      effects_[coarse * count_ + fine] = {filling_effect(ratio), filling_effect(ratio) * wedged, apart};
    }
  }
}

template <class Room>
PackingAbreast::Sums PackingAbreast::sums(std::size_t on, std::size_t from, std::size_t to, const double* shares, const Room& room) const {
  Sums sums;
  for (std::size_t j = from; j < to; ++j) {
    const Effect& effect = effects_[on * count_ + j];
    const double* const share = shares + j * draws_abreast;
    for (std::size_t i = 0; i < pairs_together; ++i) {
      const Pair each = room(j * draws_abreast + 2 * i);
      sums.plain[i] += effect.plain * each;
      sums.wedged[i] += effect.wedged * each;
      sums.apart[i] += effect.apart * pair_at(share + 2 * i);
    }
  }
  return sums;
}

void PackingAbreast::specific_volumes(const double* shares, const double* loose_volumes, double* volumes) const {
  for (std::size_t lane = 0; lane < draws_abreast; lane += 2 * pairs_together) {
    const double* const share = shares + lane;
    const double* const loose = loose_volumes + lane;
    Few additive{}, largest{};
    for (std::size_t i = 0; i < count_; ++i)
      for (std::size_t p = 0; p < pairs_together; ++p) additive[p] += pair_at(loose + i * draws_abreast + 2 * p);
    for (std::size_t i = 0; i < count_; ++i) {
      // Coarser grain takes up room by what lies between it, y(V - 1); finer grain by all its loose volume.
      const Sums coarser = sums(i, 0, i, share, [&](std::size_t at) { return pair_at(loose + at) - pair_at(share + at); });
      const Sums finer = sums(i, i + 1, count_, share, [&](std::size_t at) { return pair_at(loose + at); });
      const Few own = few_at(share + i * draws_abreast);
      const auto volume = [&](std::size_t p, const Pair& by_coarser, const Pair& by_finer) {
        return additive[p] - coarser.plain[p] - finer.plain[p] + coarser.wedged[p] * by_coarser + finer.wedged[p] * by_finer;
      };
      // A power curve lies under its chord: a class that stays below the largest even so needs no powers.
      const auto wanted = [&](std::size_t p) {
        return (own[p] > 0.0) & (volume(p, (base_coarser - 1) * coarser.apart[p], (base_finer - 1) * finer.apart[p]) > largest[p]);
      };
      const std::array masks{wanted(0), wanted(1)};
      if (!any(masks)) continue;
      for (std::size_t p = 0; p < pairs_together; ++p) {
        const Pair one = volume(p, raised_e(log_base_coarser * coarser.apart[p]) - 1.0, raised_e(log_base_finer * finer.apart[p]) - 1.0);
        largest[p] = (masks[p] & (one > largest[p])) ? one : largest[p];
      }
    }
    for (std::size_t p = 0; p < pairs_together; ++p) put_pair(largest[p], volumes + lane + 2 * p);
  }
}

void PackingAbreast::class_volumes(const double* shares, const double* own, double* volumes) const {
  for (std::size_t lane = 0; lane < draws_abreast; lane += 2 * pairs_together) {
    const double* const share = shares + lane;
    const Few whole = few_at(own + lane);
    Few least;
    least.fill(Pair{} + std::numeric_limits<double>::infinity());
    for (std::size_t i = 0; i < count_; ++i) {
      const auto each = [&](std::size_t at) { return pair_at(share + at); };
      const Sums coarser = sums(i, 0, i, share, each), finer = sums(i, i + 1, count_, share, each);
      const Few mine = few_at(share + i * draws_abreast);
      // With one class volume V the dominant-class formula reads V(1 - f - g) + g, which rises with V, and its V rises with f and g.
      const auto volume = [&](std::size_t p, const Pair& by_coarser, const Pair& by_finer) {
        const Pair g = coarser.plain[p] - coarser.wedged[p] * by_coarser, f = finer.plain[p] - finer.wedged[p] * by_finer;
        return (whole[p] - g) / (1.0 - f - g);
      };
      // A power curve lies under its chord: a class that stays above the least even so needs no powers.
      const auto wanted = [&](std::size_t p) {
        return (mine[p] > 0.0) & (volume(p, (base_coarser - 1) * coarser.apart[p], (base_finer - 1) * finer.apart[p]) < least[p]);
      };
      const std::array masks{wanted(0), wanted(1)};
      if (!any(masks)) continue;
      for (std::size_t p = 0; p < pairs_together; ++p) {
        const Pair one = volume(p, raised_e(log_base_coarser * coarser.apart[p]) - 1.0, raised_e(log_base_finer * finer.apart[p]) - 1.0);
        least[p] = (masks[p] & (one < least[p])) ? one : least[p];
      }
    }
    for (std::size_t p = 0; p < pairs_together; ++p) put_pair(least[p], volumes + lane + 2 * p);
  }
}

}  // namespace gritwright
