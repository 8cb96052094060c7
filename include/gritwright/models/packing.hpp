#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Grain between two neighbouring sieves, by its middle size. Inside one component the mass and the envelope share agree.
struct SizeClass {
  Aperture size;
  EnvelopeShare share;  ///< of the component's grain, 0..1
  friend bool operator==(const SizeClass&, const SizeClass&) = default;
};

/// The classes of a component's own sieves, coarse to fine, empty ones left out. Middle size sqrt(upper·lower); the pan at its
/// pan size, else half the finest sieve; what lies above the coarsest sieve ends at the top size, else at the next coarser
/// R20/3 sieve. Precondition: check(grading) is empty. Source: packing.md.
[[nodiscard]] std::vector<SizeClass> size_classes(const GrainSizes& sizes);

/// Upper end of the class above the coarsest sieve: as given, else the next coarser R20/3 sieve.
[[nodiscard]] Aperture top_size(const Grading& grading);
/// Size that stands for the pan: as given, else half the finest sieve.
[[nodiscard]] Aperture pan_size(const Grading& grading);

/// How much of the room a finer class fills between coarser grain, for the size ratio finer/coarser 0..1: 1 at 0, 0 at 1.
/// Source: yu-zou-standish-1996.
[[nodiscard]] double filling_effect(double size_ratio);
/// How much of the room of a finer class coarser grain takes up for itself, for the ratio finer/coarser 0..1: 1 at 0, 0 at 1.
/// Source: yu-zou-standish-1996.
[[nodiscard]] double occupying_effect(double size_ratio);
/// How far finer grain props coarser grain apart, for the ratio finer/coarser 0..1. Source: kwan-chan-wong-2013, from memory.
[[nodiscard]] double wedging_effect(double size_ratio);

/// One class of a blend.
struct PackingClass {
  Aperture size;
  EnvelopeShare share;  ///< of the blend's envelope volume, 0..1
  PackingDensity beta;  ///< loosely placed by itself, 0 < beta <= 1
};

/// Packing density of a blend. Classes in any order, at least one with a share; shares are taken relative to their sum and
/// equal sizes (within 1e-9) merge exactly. Source: linear dominant-class model with wedging, packing.md.
[[nodiscard]] PackingDensity packing_density(std::span<const PackingClass> classes);

/// The one class beta for which the model gives a graded component its own measured packing density. Precondition: classes
/// coarse to fine as size_classes() gives them, 0 < own < 1.
[[nodiscard]] PackingDensity class_beta(std::span<const SizeClass> classes, PackingDensity own);

/// The size effects of one set of sizes, computed once and used for many blends.
class PackingKernel {
 public:
  /// `sizes` coarse to fine, equal neighbours allowed. Throws std::logic_error if they rise.
  explicit PackingKernel(std::span<const Aperture> sizes);

  [[nodiscard]] std::size_t size() const { return count_; }

  /// Specific volume 1/phi of a blend: for each size its share y of the envelope volume (sum 1) and its loose volume y·V, the
  /// share over its own beta.
  [[nodiscard]] double specific_volume(std::span<const double> shares, std::span<const double> loose_volumes) const;

  /// The one class volume V = 1/beta that makes specific_volume() come out as `own`. Shares sum to 1.
  [[nodiscard]] double class_volume(std::span<const double> shares, double own) const;

 private:
  std::size_t count_;
  // A row for each class, a column for each class acting on it: g where that one is coarser and f where it is finer, the same
  // times c, and 1 - r^6. Three tables and not one of triples, since the sums over a row then run two at a time.
  std::vector<double> effects_;
  std::vector<double> wedged_effects_;
  std::vector<double> apartness_;
};

}  // namespace gritwright
