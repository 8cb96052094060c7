#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What a grading rests on.
struct SievedSample {
  Mass dry = mass_g(300);  ///< of all tests together, > 0
  Mass resolution{};       ///< of the balance, for dry grain
  MassShare lost{};        ///< share of the base that was lost and counts with the pan
  int weighings = 1;       ///< that the mass of each class comes from, >= 1
  double operators = 1;    ///< operator deviations the passing is off by at a score of 1: fewer for several tests, more where they lie apart
  friend bool operator==(const SievedSample&, const SievedSample&) = default;
};

/// The sample of one test; a test in litres weighs its litres by its bulk density, 300 g where that is unknown.
[[nodiscard]] SievedSample sample_of(const SieveTest& test, const SieveAnalysis& analysis);

/// The sample of tests that were pooled: their masses add up and the coarsest balance counts; each test helps by its weight in the pool,
/// and where they lie farther apart than the repeat limit the operator was off by as much more (assumption). Precondition: `samples` are of
/// those tests, at least one.
[[nodiscard]] SievedSample taken_together(std::span<const SievedSample> samples, const PooledTests& pooled);

/// How well a grading is known.
struct SievingSpread {
  /// Standard deviation of ln(mass) of each class of size_classes(), from the chance of sampling (Gy) and the balance.
  std::vector<double> class_masses;
  double operators = 0;  ///< how many operator deviations of astm-c136-14 Table 2 the passing moves by at a score of 1
  double lost = 0;       ///< share of the mass that was lost: dust in half the cases, else any part of it of all sizes alike
  friend bool operator==(const SievingSpread&, const SievingSpread&) = default;
};

/// Each class is a number of grains drawn by chance, so the variance of ln(mass) is the mean grain mass over the mass of the class;
/// that is Gy's model before the shares are divided by their sum. A weighing is off by up to half the resolution. Absent density:
/// 1000 g/L. Source: docs/science/uncertainty.md.
[[nodiscard]] SievingSpread sieving_spread(const GrainSizes& sizes, std::optional<ParticleDensity> density,
                                           const SievedSample& sample = {});

}  // namespace gritwright
