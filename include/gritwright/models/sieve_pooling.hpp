#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// How several tests of one bag agree on one sieve.
struct Agreement {
  Aperture aperture;
  Passing mean;
  Passing least;
  Passing most;
  Passing limit;  ///< a wider range than this comes up in about one of twenty careful repeats
  [[nodiscard]] bool within() const { return most - least <= limit; }
};

/// Several tests of one bag taken as one.
struct PooledTests {
  std::optional<Mass> base;  ///< sum of the bases; absent if one test was measured in litres
  Grading grading;           ///< at every sieve inside the range all tests cover
  MassShare pan{};           ///< what lay under the finest of those sieves; not what was lost
  std::vector<Agreement> agreement;  ///< at those sieves, coarse to fine; empty for a single test
  Notes notes;
};

/// Share of the pooled base that the curve counts as finer than every sieve although it was found nowhere; 0 for a gain.
[[nodiscard]] MassShare lost_share(const PooledTests& pooled);

/// Weighted by dry mass; equally if one was measured in litres. Curves are read log-linearly where a test lacked a sieve. Refuses:
/// no test, tests whose sieves share no range. Source: astm-c136-14 Table 2 (agreement).
[[nodiscard]] Result<PooledTests> pool(std::span<const SieveAnalysis> tests);

/// Standard deviation of the percent passing between repeats of one operator, as a share. Source: astm-c136-14 Table 2, coarse
/// aggregate.
[[nodiscard]] Passing repeatability(Passing passing);

/// The widest range `tests` repeats (2 or more) show in about nineteen of twenty cases, from the repeatability.
[[nodiscard]] Passing repeat_limit(Passing passing, std::size_t tests);

/// A class of grain in a sample: its share and the mass-weighted mean mass of its grains.
struct GrainClass {
  MassShare share;
  Mass mean_grain;
};

/// Standard deviation of the share of class `index` that chance alone gives a sample of mass `sample`. Source: Gy's model of grains
/// drawn one by one, derived in docs/science/grading.md. Precondition: shares add up to 1, sample > 0.
[[nodiscard]] MassShare sampling_deviation(std::span<const GrainClass> classes, std::size_t index, Mass sample);

/// The same for a band of a measured grading; mass lies evenly over log size between sieves. Empty where the band's share is.
[[nodiscard]] std::optional<MassShare> sampling_deviation(const Grading& grading, const Band& band, ParticleDensity density,
                                                          Mass sample);

}  // namespace gritwright
