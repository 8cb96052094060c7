#include "gritwright/domain/batch.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const Batch& batch) {
  Problems problems;
  check_day(problems, "/day", batch.day);
  for (std::size_t i = 0; i < batch.parts.size(); ++i) {
    check_grain(problems, item("/parts", i, "/source"), batch.parts[i].source);
    check_amount(problems, item("/parts", i, "/volume_l"), batch.parts[i].volume);
    check_amount(problems, item("/parts", i, "/dry_mass_g"), batch.parts[i].dry_mass);
  }
  check_amount(problems, "/made_l", batch.made);
  if (batch.left && !(*batch.left >= MixedVolume{} && (!batch.made || *batch.left <= *batch.made)))
    problems.push_back(problem_at("batch.left-range", "/left_l", {{"left_l", in_l(*batch.left)}}));
  return problems;
}

}  // namespace gritwright
