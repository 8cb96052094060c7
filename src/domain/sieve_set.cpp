#include "gritwright/domain/sieve_set.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const SieveSet& set) {
  Problems problems;
  check_name(problems, "/name", set.name);
  if (set.sieves.empty()) problems.push_back(problem_at("sieve-set.empty", "/sieves"));
  for (std::size_t i = 0; i < set.sieves.size(); ++i) {
    const double here = in_mm(set.sieves[i].aperture);
    if (!(here > 0))
      problems.push_back(problem_at("component.size-not-positive", item("/sieves", i, "/aperture_mm"), {{"size_mm", here}}));
    else if (i > 0 && !(set.sieves[i].aperture < set.sieves[i - 1].aperture))
      problems.push_back(problem_at("sieve-set.not-falling", item("/sieves", i, "/aperture_mm"),
                                    {{"aperture_mm", here}, {"before_mm", in_mm(set.sieves[i - 1].aperture)}}));
  }
  check_amount(problems, "/diameter_mm", set.diameter);
  return problems;
}

}  // namespace gritwright
