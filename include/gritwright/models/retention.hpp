#pragma once
#include <memory>
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/models/area_profile.hpp"
#include "gritwright/models/moment_table.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Water held against suction: theta(h) = residual + (saturated - residual)·mean_j S(alpha_j h) + grain_water. Source: docs/science/water.md.
class RetentionCurve {
 public:
  /// One alpha (1/cm) per equal share of the pore volume; n > 1; shares of the bulk volume.
  RetentionCurve(double residual, double saturated, const std::vector<double>& alphas_per_cm, double n, double grain_water = 0);

  /// The same with a table that is at hand.
  RetentionCurve(double residual, double saturated, const std::vector<double>& alphas_per_cm,
                 std::shared_ptr<const MomentTable> table, double grain_water = 0);

  /// Se(h), 1 for heads up to 0.
  [[nodiscard]] double saturation(double head_cm) const;

  /// theta(h).
  [[nodiscard]] Porosity water_at(Depth head) const;

  /// theta for a saturation that was averaged over a body.
  [[nodiscard]] Porosity water_for_saturation(double saturation) const;

  /// Mean of Se over the part of `body` between two heights, head = height - free_water_cm (a wick lets it be negative).
  /// Exact but for the moment table's 2.5e-7.
  [[nodiscard]] double mean_saturation(const AreaProfile& body, double from_cm, double to_cm, double free_water_cm) const;

  /// The head at which Se has fallen to `saturation`, 0 < saturation < 1.
  [[nodiscard]] Depth head_at(double saturation) const;

 private:
  struct PoreClass {
    double alpha_per_cm = 0;
    double log_alpha = 0;
    double share = 0;
  };
  double residual_;
  double saturated_;
  double grain_water_;
  std::vector<PoreClass> classes_;
  std::shared_ptr<const MomentTable> table_;
};

/// What the retention chain needs to know of a mix, settled as it lies in the pot.
struct RetentionInput {
  /// Share of the ENVELOPE volume finer than a size, from 0 to 1, rising; a step is two points at one size. Pans are steps.
  std::vector<GradingPoint> envelope_grading;
  Porosity voids_between_grains;  ///< phi_v
  Porosity open_voids_in_grains;  ///< (1 - phi_v)·sum v_k e_k
  Porosity grain_water;           ///< (1 - phi_v)·sum v_k e_k w_k (or by water absorption), at most open_voids_in_grains
  Passing finer_than_pan_sieve{};  ///< share of the mass in the components' pans
  bool organic_or_fibrous = false;  ///< some component is no rigid grain: the chain is out of its range
  RetentionConstants constants;
  friend bool operator==(const RetentionInput&, const RetentionInput&) = default;
};

/// Puts the share that passed the finest sieve at the pan's size: pan_size, else half that sieve.
[[nodiscard]] std::vector<GradingPoint> with_pan_step(std::vector<GradingPoint> points, std::optional<Aperture> pan_size = {});

/// A hundred equal-volume classes of a grading at mid-quantiles, rising, sizes linear in log between sieves.
/// Precondition: a point at least; passing runs from 0 to 1.
[[nodiscard]] std::vector<Aperture> equal_volume_sizes(const std::vector<GradingPoint>& grading);

/// Geometric mean: unlike a median it does not jump when one half of a bimodal mix outweighs the other.
[[nodiscard]] Aperture geometric_mean(const std::vector<Aperture>& sizes);

/// The retention chain: from grading and voids to water by suction. Scale alpha_j = d'_j/k, d'_j = d_c·(d_j/d_c)^b.
class Retention {
 public:
  explicit Retention(RetentionInput input);

  /// d_c, the geometric mean size by envelope volume.
  [[nodiscard]] Aperture characteristic_size() const { return characteristic_size_; }

  /// theta(h) with h the suction in cm of water.
  [[nodiscard]] Porosity water_at(Depth head) const { return curve_.water_at(head); }

  /// theta(0): flooded from below, f of the voids between grains and w of the open grain pores filled.
  [[nodiscard]] Porosity flooded() const { return curve_.water_at(Depth{}); }

  /// phi_v and the open voids in the grains: what water or air can fill.
  [[nodiscard]] Porosity open_voids() const { return input_.voids_between_grains + input_.open_voids_in_grains; }

  /// Height over free water up to which Se stays at 0.9 or above.
  [[nodiscard]] Depth perched_height() const { return curve_.head_at(0.9); }

  /// Where the chain is known to be off or out of its range for this mix.
  [[nodiscard]] const Notes& notes() const { return notes_; }

  [[nodiscard]] const RetentionCurve& curve() const { return curve_; }
  [[nodiscard]] const RetentionInput& input() const { return input_; }

 private:
  RetentionInput input_;
  std::vector<Aperture> sizes_;
  Aperture characteristic_size_;
  RetentionCurve curve_;
  Notes notes_;
};

}  // namespace gritwright
