#pragma once
#include <functional>
#include <optional>
#include <string>

#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What a component takes over from a sieve test it names.
struct SieveTestGrading {
  Grading grading;
  std::optional<BulkDensity> bulk_density;
  std::optional<ParticleDensity> particle_density;
  Notes notes;
  std::optional<SieveTest> test{};  ///< for how well the grading is known
};

/// Where "material" and "sieve_test" of a component are looked up. The caller reads the file and grades it, because a format
/// knows neither folders nor models.
struct ComponentSources {
  const Catalogue* catalogue = nullptr;  ///< null: every "material" is unknown
  /// Empty: "sieve_test" is refused.
  std::function<Result<SieveTestGrading>(const std::string& file)> grading_of_sieve_test;
};

}  // namespace gritwright
