#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "gritwright/models/sieving_spread.hpp"
#include "gritwright/models/slice_runner.hpp"

namespace gritwright {

/// 5, 50 and 95 % of a figure that some draws put beyond the sieves, where nothing is guessed: an end there is absent.
struct OpenRange {
  std::optional<double> low;
  std::optional<double> median;
  std::optional<double> high;
  friend bool operator==(const OpenRange&, const OpenRange&) = default;
};

/// Ranges of a graded sieve test, in the order of the analysis. Absent where the figure itself is not defined. Shares 0..1.
struct GradingRanges {
  std::vector<Range> passing;
  std::vector<Range> retained;
  std::vector<std::optional<OpenRange>> percentiles_mm;  ///< by reported_percentiles
  std::optional<OpenRange> uniformity;
  std::vector<std::optional<Range>> bands;
  std::optional<Range> total_g;  ///< by the balance alone
  std::optional<Range> base_g;
  std::optional<Range> loss;
};

/// A grading as sieved, of one test or of several that pool() took as one, with what it rests on.
struct SievedGrading {
  Grading grading;
  MassShare pan{};  ///< what lay under the finest sieve
  std::optional<ParticleDensity> particle_density;
  SievedSample sample;
  friend bool operator==(const SievedGrading&, const SievedGrading&) = default;
};

/// Precondition: `analysis` is of `test`.
[[nodiscard]] SievedGrading sieved_grading(const SieveTest& test, const SieveAnalysis& analysis);
/// Precondition: `samples` are of the tests that were pooled.
[[nodiscard]] SievedGrading sieved_grading(const PooledTests& pooled, std::span<const SievedSample> samples, std::optional<ParticleDensity> density);

/// What a curve and its sizes could be.
struct CurveRanges {
  std::vector<Range> passing;                            ///< at each point of the grading, fine to coarse
  std::vector<std::optional<OpenRange>> percentiles_mm;  ///< by reported_percentiles; absent where the grading itself has none
};

/// The same for every runner. Source: docs/science/uncertainty.md.
[[nodiscard]] CurveRanges curve_ranges(const SievedGrading& sieved, const SampleSize& size = {}, const SliceRunner& runner = run_in_order);

/// Precondition: `analysis` is of `test`. The same for every runner. Source: docs/science/uncertainty.md.
[[nodiscard]] GradingRanges grading_ranges(const SieveTest& test, const SieveAnalysis& analysis, std::span<const Band> bands = {},
                                           const SampleSize& size = {}, const SliceRunner& runner = run_in_order);

/// Ranges of laboratory figures. Absent where the figure is not defined, also where it is not in some draws.
struct LaboratoryRanges {
  std::optional<Range> curvature;
  std::optional<Range> fineness_modulus;
  std::optional<Range> mean_phi;
  std::optional<Range> sorting_phi;
  std::optional<Range> skewness;
  std::optional<Range> kurtosis;
};

/// The same for every runner.
[[nodiscard]] LaboratoryRanges laboratory_ranges(const SievedGrading& sieved, const SampleSize& size = {1024, 1}, const SliceRunner& runner = run_in_order);

/// Ranges of the sizes and shares of a blend. Absent where the figure itself is not defined.
struct BlendRanges {
  std::vector<std::optional<OpenRange>> percentiles_mm;  ///< by reported_percentiles
  std::optional<OpenRange> uniformity;
  std::vector<std::optional<Range>> bands;
};

/// `passing_draws` as UncertainMix gives them, each as long as `nominal` has points. Precondition: at least one draw and one point.
[[nodiscard]] BlendRanges blend_ranges(const Grading& nominal, std::span<const std::vector<double>> passing_draws, std::span<const Band> bands = {});

/// How sure a verdict is.
struct VerdictRanges {
  Range in_band;
  Range finer;
  Range coarser;
  Range usable;  ///< at the openings of the verdict that was reached
  double holds = 0;  ///< share of the draws that come to the same verdict, 0..1
};

/// `packing` and `limits` as the verdict was reached with; like it without what was lost. Absent where the verdict is.
[[nodiscard]] std::optional<VerdictRanges> verdict_ranges(const SievedGrading& sieved, const Band& wanted, const PackingDensityOf& packing, const VerdictLimits& limits = {},
                                                          const SampleSize& size = {512, 1}, const SliceRunner& runner = run_in_order);

/// What one fraction of a screening could amount to.
struct FractionRange {
  Range share;                           ///< of the mass screened
  std::optional<Range> loose_per_loose;  ///< absent without packing densities
  std::optional<OpenRange> middle_mm;    ///< D50; absent where the fraction has none
};

/// Screening at `openings` again for every draw of the curve; fractions as screen() orders them, none where it refuses. The same for
/// every runner.
[[nodiscard]] std::vector<FractionRange> screening_ranges(const SievedGrading& sieved, std::span<const Aperture> openings, const PackingDensityOf& packing,
                                                          Sharpness sharpness = {}, const SampleSize& size = {512, 1}, const SliceRunner& runner = run_in_order);

/// What one way to screen a bag could come to, as shares of the mass like those of OpeningChoice.
struct OpeningRange {
  Range kept;
  Range usable;
  Range dust;
  double takes = 0;  ///< share of the draws in which what is kept meets the limits, 0..1
};

/// In the order of `choices`. The same for every runner.
[[nodiscard]] std::vector<OpeningRange> opening_ranges(const SievedGrading& sieved, const Band& wanted, std::span<const OpeningChoice> choices,
                                                       const VerdictLimits& limits = {}, const SampleSize& size = {512, 1}, const SliceRunner& runner = run_in_order);

}  // namespace gritwright
