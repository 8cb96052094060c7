#include "gritwright/models/packing.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "gritwright/domain/sieve_series.hpp"

namespace gritwright {

namespace {

constexpr double same_size = 1e-9;
constexpr double wedging_base_coarse = 2.6;
constexpr double wedging_base_fine = 3.8;

/// Grows from 0 to 1 as the sizes part, so that cutting a class in two leaves the wedging as it was.
double apartness(double size_ratio) { return 1 - std::pow(size_ratio, 6); }

Aperture middle(Aperture lower, Aperture upper) { return aperture_mm(std::sqrt(in_mm(lower) * in_mm(upper))); }

bool equal_sizes(Aperture coarser, Aperture finer) { return in_mm(coarser) - in_mm(finer) <= same_size * in_mm(coarser); }

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
    : count_(sizes.size()), effect_(count_ * count_), wedged_effect_(count_ * count_), apartness_(count_ * count_) {
  for (std::size_t coarse = 0; coarse < count_; ++coarse) {
    for (std::size_t fine = coarse + 1; fine < count_; ++fine) {
      const double ratio = sizes[fine] / sizes[coarse];
      if (!(ratio <= 1)) throw std::logic_error("a packing kernel needs its sizes coarse to fine");
      effect_[at(fine, coarse)] = occupying_effect(ratio);
      effect_[at(coarse, fine)] = filling_effect(ratio);
      wedged_effect_[at(fine, coarse)] = occupying_effect(ratio) * wedging_effect(ratio);
      wedged_effect_[at(coarse, fine)] = filling_effect(ratio) * wedging_effect(ratio);
      apartness_[at(fine, coarse)] = apartness_[at(coarse, fine)] = apartness(ratio);
    }
  }
}

double PackingKernel::specific_volume(std::span<const double> shares, std::span<const double> class_volumes) const {
  double additive = 0;
  for (std::size_t i = 0; i < count_; ++i) additive += shares[i] * class_volumes[i];
  double largest = 0;
  for (std::size_t i = 0; i < count_; ++i) {
    if (!(shares[i] > 0)) continue;
    double occupied = 0, occupied_wedged = 0, coarser = 0;
    for (std::size_t j = 0; j < i; ++j) {
      const double room = shares[j] * (class_volumes[j] - 1);
      occupied += effect_[at(i, j)] * room;
      occupied_wedged += wedged_effect_[at(i, j)] * room;
      coarser += apartness_[at(i, j)] * shares[j];
    }
    double filled = 0, filled_wedged = 0, finer = 0;
    for (std::size_t j = i + 1; j < count_; ++j) {
      const double room = shares[j] * class_volumes[j];
      filled += effect_[at(i, j)] * room;
      filled_wedged += wedged_effect_[at(i, j)] * room;
      finer += apartness_[at(i, j)] * shares[j];
    }
    const double volume = additive - occupied + occupied_wedged * (std::pow(wedging_base_coarse, coarser) - 1) - filled +
                          filled_wedged * (std::pow(wedging_base_fine, finer) - 1);
    largest = std::max(largest, volume);
  }
  return largest;
}

double PackingKernel::class_volume(std::span<const double> shares, double own) const {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < count_; ++i) {
    if (!(shares[i] > 0)) continue;
    double occupied = 0, occupied_wedged = 0, coarser = 0;
    for (std::size_t j = 0; j < i; ++j) {
      occupied += effect_[at(i, j)] * shares[j];
      occupied_wedged += wedged_effect_[at(i, j)] * shares[j];
      coarser += apartness_[at(i, j)] * shares[j];
    }
    double filled = 0, filled_wedged = 0, finer = 0;
    for (std::size_t j = i + 1; j < count_; ++j) {
      filled += effect_[at(i, j)] * shares[j];
      filled_wedged += wedged_effect_[at(i, j)] * shares[j];
      finer += apartness_[at(i, j)] * shares[j];
    }
    const double g = occupied - occupied_wedged * (std::pow(wedging_base_coarse, coarser) - 1);
    const double f = filled - filled_wedged * (std::pow(wedging_base_fine, finer) - 1);
    // With one class volume V the dominant-class formula reads V(1 - f - g) + g, which rises with V.
    least = std::min(least, (own - g) / (1 - f - g));
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
    volumes.push_back(each.volume_share / each.share);
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
