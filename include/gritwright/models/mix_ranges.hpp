#pragma once
#include <memory>
#include <optional>
#include <utility>
#include <variant>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/mix_spread.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/slice_runner.hpp"

namespace gritwright {

/// A figure of a mix in a pot, in the unit its name says; shares 0..1 of the bulk volume, settled but for the first three.
enum class MixFigure {
  packing_density,
  volume_l,
  shrinkage,
  bulk_density_g_l,
  particle_density_g_l,
  skeletal_density_g_l,
  voids_between_grains,
  voids_in_grains,
  total_porosity,
  grain_water,
  cec_meq_l,
  pot_volume_ml,
  depth_cm,
  container_capacity,
  air_filled_porosity,
  trapped_air,
  total_air,
  theta_0,
  theta_10,
  theta_50,
  easily_available,
  available_in_pot,
  wet_mass_g,
  mixed_l,  ///< to fill the pot, settling and spill included
  count
};

/// Ranges of all figures of a mix. Absent where the figure itself is not defined. Lists are in component order, curves by the
/// sieves of MixState::passing, water at 11 equal heights.
struct MixRanges {
  std::vector<std::optional<Range>> figures;  ///< by MixFigure
  std::vector<Range> mass_shares;
  std::vector<std::optional<Range>> envelope_shares;
  std::vector<std::optional<Range>> class_betas;
  std::vector<std::optional<Range>> measure_out_l;
  std::vector<Range> passing;
  std::vector<std::optional<Range>> envelope_passing;
  std::vector<std::optional<Range>> water_by_height;
  std::vector<std::optional<Range>> free_air_by_height;  ///< what drained there, theta(0) - theta
  std::optional<Range> perched_height_cm;

  [[nodiscard]] const std::optional<Range>& of(MixFigure figure) const { return figures[static_cast<std::size_t>(figure)]; }
};

/// One thing that is not known for certain.
struct UncertaintySource {
  enum class Kind {
    bulk_density,
    particle_density,
    skeletal_density,
    open_share,
    water_absorption,
    grading,
    packing_model,
    settling,
    capillary_constant,
    grain_fill,
    flooded_fill,
    residual,
    pot_lengths
  };
  Kind kind = Kind::packing_model;
  std::optional<std::size_t> component;
  friend bool operator==(const UncertaintySource&, const UncertaintySource&) = default;
};

/// How much of a figure's variance one source brings by itself, 0..1. Source: sobol-1993, by a Hermite expansion to the third power.
struct SourceShare {
  UncertaintySource source;
  double share = 0;
};

/// What measuring one source would do to a figure's 5-95 % range; half widths in the figure's unit.
struct Narrowing {
  UncertaintySource source;
  double share = 0;
  double half_range_now = 0;
  double half_range_then = 0;
};

/// A mix in a pot with everything uncertain about it, ready to be drawn. Source: docs/science/uncertainty.md.
class UncertainMix {
 public:
  using Pot = std::variant<std::monostate, PotGeometry, Depth>;

  /// Precondition: check(mix) is empty and `spread` is for this mix.
  UncertainMix(Mix mix, MixSpread spread, Pot pot);
  /// The same, quicker to set up the more its constants and pot are those of the one before. Same precondition.
  UncertainMix(Mix mix, MixSpread spread, Pot pot, const UncertainMix& before);
  ~UncertainMix();
  UncertainMix(UncertainMix&&) noexcept;
  UncertainMix& operator=(UncertainMix&&) noexcept;

  /// All figures. The same for every runner.
  [[nodiscard]] MixRanges ranges(const SampleSize& size = {}, const SliceRunner& runner = run_in_order) const;

  /// The air-filled porosity and container capacity only, for a picture that moves with a slider.
  struct AirAndWater {
    Range air;
    Range capacity;
  };
  [[nodiscard]] std::optional<AirAndWater> air_and_water(const SampleSize& size = {}, const SliceRunner& runner = run_in_order) const;

  /// One figure of every draw, in the order of the draws; empty where it is not defined.
  [[nodiscard]] std::vector<double> draws_of(MixFigure figure, const SampleSize& size = {}, const SliceRunner& runner = run_in_order) const;

  /// Share finer at the sieves of MixState::passing, a row for each draw, in the order of the draws.
  [[nodiscard]] std::vector<std::vector<double>> passing_draws(const SampleSize& size = {}, const SliceRunner& runner = run_in_order) const;
  /// Both from one sample.
  [[nodiscard]] std::pair<MixRanges, std::vector<std::vector<double>>> ranges_and_passing(const SampleSize& size = {}, const SliceRunner& runner = run_in_order) const;

  /// Sources by their share of the variance of `figure`, largest first; those below 1 % are left out.
  [[nodiscard]] std::vector<SourceShare> sensitivity(MixFigure figure, const SampleSize& size = {},
                                                     const SliceRunner& runner = run_in_order) const;

  /// "What would narrow it most?": for the sources a grower can measure, largest share first, the range before and after.
  [[nodiscard]] std::vector<Narrowing> what_would_narrow(MixFigure figure, const SampleSize& size = {},
                                                         const SliceRunner& runner = run_in_order) const;

 private:
  class Chain;
  [[nodiscard]] std::vector<std::vector<double>> drawn_columns(const SampleSize& size, const SliceRunner& runner) const;
  [[nodiscard]] MixRanges ranges_of(const std::vector<std::vector<double>>& columns) const;
  std::unique_ptr<const Chain> chain_;
};

}  // namespace gritwright
