#include "gritwright/domain/mix.hpp"

#include <cmath>
#include <string>

#include "record_checks.hpp"

namespace gritwright {

namespace {

enum class UpperEnd { included, excluded };

void check_range(Problems& problems, const char* pointer, double value, double low, double high,
                 UpperEnd end = UpperEnd::included) {
  const bool below = end == UpperEnd::included ? value <= high : value < high;
  if (!(value >= low && below))
    problems.push_back(problem_at("water.out-of-range", pointer, {{"value", value}, {"low", low}, {"high", high}}));
}

}  // namespace

Problems check(const RetentionConstants& constants) {
  Problems problems;
  check_range(problems, "/k_cm_mm", constants.k_cm_mm, 2, 40);
  check_range(problems, "/spread", constants.spread, 0, 1);
  // Towards 1 the wet zone grows without end; no coarse mix comes near.
  check_range(problems, "/n", constants.n, 1.1, 50);
  check_range(problems, "/residual", constants.residual, 0, 1, UpperEnd::excluded);
  check_range(problems, "/flooded_fill", constants.flooded_fill, 0, 1);
  check_range(problems, "/grain_fill", constants.grain_fill, 0, 1);
  return problems;
}

Problems check(const Mix& mix) {
  Problems problems;
  if (mix.components.empty()) problems.push_back(problem_at("mix.no-components", "/components"));
  bool some_parts = false;
  for (std::size_t i = 0; i < mix.components.size(); ++i) {
    append(problems, under(check(mix.components[i]), "/components/" + std::to_string(i)));
    some_parts = some_parts || mix.components[i].parts.value() != 0;
  }
  if (!mix.components.empty() && !some_parts) problems.push_back(problem_at("mix.no-parts", "/components"));
  append(problems, under(check(mix.water), "/water"));
  check_lost_share(problems, "mix.settling-range", "/settling", mix.settling);
  check_lost_share(problems, "mix.spill-range", "/spill", mix.spill);
  return problems;
}

}  // namespace gritwright
