#include "gritwright/models/packing.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "gritwright/domain/sieve_series.hpp"
#include "size_order.hpp"
#include "wedging.hpp"

namespace gritwright {

namespace {

double spread_by_coarser(double coarser_share) { return std::exp(log_base_coarser * coarser_share) - 1; }
double spread_by_finer(double finer_share) { return std::exp(log_base_finer * finer_share) - 1; }

struct Rows {
  const double* effects;
  const double* wedged_effects;
  const double* apartness;
};

/// Sums over the classes that act on one, from their effects, their effects wedged, and their apartness.
struct RowSums {
  double effect = 0;
  double wedged = 0;
  double apart = 0;
};

template <class Room>
RowSums row_sums(const Rows& rows, std::size_t from, std::size_t to, std::span<const double> shares, Room room) {
  double effect = 0, wedged = 0, apart = 0;
  // Several sums side by side: one alone waits for every addition.
#pragma omp simd reduction(+ : effect, wedged, apart)
  for (std::size_t j = from; j < to; ++j) {
    const double each = room(j);
    effect += rows.effects[j] * each;
    wedged += rows.wedged_effects[j] * each;
    apart += rows.apartness[j] * shares[j];
  }
  return {effect, wedged, apart};
}

Aperture middle(Aperture lower, Aperture upper) { return aperture_mm(std::sqrt(in_mm(lower) * in_mm(upper))); }

struct Merged {
  Aperture size;
  double share;
  double volume_share;  ///< sum of share times specific volume
};

std::vector<Merged> merged_coarse_to_fine(std::span<const PackingClass> classes) {
  std::vector<PackingClass> sorted;
  for (const PackingClass& each : classes)
    if (each.share.value() > 0) sorted.push_back(each);
  std::ranges::stable_sort(sorted, std::ranges::greater{}, &PackingClass::size);
  std::vector<Merged> merged;
  for (const PackingClass& each : sorted) {
    const double share = each.share.value();
    if (merged.empty() || !equal_sizes(merged.back().size, each.size)) merged.push_back({each.size, 0, 0});
    merged.back().share += share;
    merged.back().volume_share += share / each.beta.value();
  }
  return merged;
}

}  // namespace

Aperture top_size(const Grading& grading) {
  return grading.top_size ? *grading.top_size : next_coarser_principal(grading.points.back().aperture);
}

Aperture pan_size(const Grading& grading) {
  return grading.pan_size ? *grading.pan_size : grading.points.front().aperture / 2;
}

std::vector<SizeClass> size_classes(const GrainSizes& sizes) {
  if (const auto* single = std::get_if<SingleSize>(&sizes)) return {{single->size, EnvelopeShare(1)}};
  const Grading& grading = std::get<Grading>(sizes);
  const std::vector<GradingPoint>& points = grading.points;
  std::vector<SizeClass> classes;
  const auto add = [&](Aperture size, double share) {
    if (share > 0) classes.push_back({size, EnvelopeShare(share)});
  };
  add(middle(points.back().aperture, top_size(grading)), 1 - points.back().passing.value());
  for (std::size_t i = points.size() - 1; i > 0; --i)
    add(middle(points[i - 1].aperture, points[i].aperture), points[i].passing.value() - points[i - 1].passing.value());
  add(pan_size(grading), points.front().passing.value());
  return classes;
}

double filling_effect(double size_ratio) {
  return std::pow(1 - size_ratio, 3.3) + 2.8 * size_ratio * std::pow(1 - size_ratio, 2.7);
}

double occupying_effect(double size_ratio) {
  return std::pow(1 - size_ratio, 2.0) + 0.4 * size_ratio * std::pow(1 - size_ratio, 3.7);
}

double wedging_effect(double size_ratio) { return 0.322 * std::tanh(11.9 * size_ratio); }

PackingKernel::PackingKernel(std::span<const Aperture> sizes)
    : count_(sizes.size()), effects_(count_ * count_), wedged_effects_(count_ * count_), apartness_(count_ * count_) {
  for (std::size_t coarse = 0; coarse < count_; ++coarse) {
    for (std::size_t fine = coarse + 1; fine < count_; ++fine) {
      const double ratio = sizes[fine] / sizes[coarse];
      if (!(ratio <= 1)) throw std::logic_error("a packing kernel needs its sizes coarse to fine");
      const std::size_t on_fine = fine * count_ + coarse, on_coarse = coarse * count_ + fine;
      effects_[on_fine] = occupying_effect(ratio);
      effects_[on_coarse] = filling_effect(ratio);
      wedged_effects_[on_fine] = occupying_effect(ratio) * wedging_effect(ratio);
      wedged_effects_[on_coarse] = filling_effect(ratio) * wedging_effect(ratio);
      apartness_[on_fine] = apartness_[on_coarse] = apartness(ratio);
    }
  }
}

double PackingKernel::specific_volume(std::span<const double> shares, std::span<const double> loose_volumes) const {
  double additive = 0;
  for (std::size_t i = 0; i < count_; ++i) additive += loose_volumes[i];
  double largest = 0;
  for (std::size_t i = 0; i < count_; ++i) {
    if (!(shares[i] > 0)) continue;
    const Rows rows{effects_.data() + i * count_, wedged_effects_.data() + i * count_, apartness_.data() + i * count_};
    // Coarser grain takes up room by what lies between it, y(V - 1); finer grain by all its loose volume.
    const RowSums coarser = row_sums(rows, 0, i, shares, [&](std::size_t j) { return loose_volumes[j] - shares[j]; });
    const RowSums finer = row_sums(rows, i + 1, count_, shares, [&](std::size_t j) { return loose_volumes[j]; });
    const double unwedged = additive - coarser.effect - finer.effect;
    // A power curve lies under its chord: a class that stays below the largest even so needs no powers.
    const double at_most = unwedged + coarser.wedged * coarser.apart * (base_coarser - 1) + finer.wedged * finer.apart * (base_finer - 1);
    if (at_most <= largest) continue;
    largest = std::max(largest, unwedged + coarser.wedged * spread_by_coarser(coarser.apart) + finer.wedged * spread_by_finer(finer.apart));
  }
  return largest;
}

double PackingKernel::class_volume(std::span<const double> shares, double own) const {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < count_; ++i) {
    if (!(shares[i] > 0)) continue;
    const Rows rows{effects_.data() + i * count_, wedged_effects_.data() + i * count_, apartness_.data() + i * count_};
    const auto share = [&](std::size_t j) { return shares[j]; };
    const RowSums coarser = row_sums(rows, 0, i, shares, share);
    const RowSums finer = row_sums(rows, i + 1, count_, shares, share);
    // With one class volume V the dominant-class formula reads V(1 - f - g) + g, which rises with V, and its V rises with f and g.
    const auto volume = [&](double by_coarser, double by_finer) {
      const double g = coarser.effect - coarser.wedged * by_coarser, f = finer.effect - finer.wedged * by_finer;
      return (own - g) / (1 - f - g);
    };
    // A power curve lies under its chord: a class that stays above the least even so needs no powers.
    if (volume((base_coarser - 1) * coarser.apart, (base_finer - 1) * finer.apart) >= least) continue;
    least = std::min(least, volume(spread_by_coarser(coarser.apart), spread_by_finer(finer.apart)));
  }
  return least;
}

PackingDensity packing_density(std::span<const PackingClass> classes) {
  const std::vector<Merged> merged = merged_coarse_to_fine(classes);
  if (merged.empty()) throw std::logic_error("a packing needs grain");
  double total = 0;
  for (const Merged& each : merged) total += each.share;
  std::vector<Aperture> sizes;
  std::vector<double> shares, volumes;
  for (const Merged& each : merged) {
    sizes.push_back(each.size);
    shares.push_back(each.share / total);
    volumes.push_back(each.volume_share / total);
  }
  return PackingDensity(1 / PackingKernel(sizes).specific_volume(shares, volumes));
}

PackingDensity class_beta(std::span<const SizeClass> classes, PackingDensity own) {
  std::vector<Aperture> sizes;
  std::vector<double> shares;
  for (const SizeClass& each : classes) {
    sizes.push_back(each.size);
    shares.push_back(each.share.value());
  }
  return PackingDensity(1 / PackingKernel(sizes).class_volume(shares, 1 / own.value()));
}

}  // namespace gritwright
