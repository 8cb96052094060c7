#include "gritwright/domain/fraction.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const Fraction& fraction) {
  Problems problems;
  check_grain(problems, "/source", fraction.source);
  if (!fraction.from && !fraction.to) problems.push_back(problem_at("fraction.no-openings", ""));
  if (fraction.from && fraction.to && !(*fraction.from < *fraction.to))
    problems.push_back(problem_at("record.sizes-upside-down", "/from_mm",
                                  {{"from_mm", in_mm(*fraction.from)}, {"to_mm", in_mm(*fraction.to)}}));
  check_day(problems, "/day", fraction.day);
  check_amount(problems, "/dry_mass_g", fraction.dry_mass);
  check_amount(problems, "/volume_l", fraction.volume);
  check_amount(problems, "/bulk_density_ratio", fraction.bulk_density_ratio);
  if (fraction.grain) append(problems, under(check(*fraction.grain), "/grain"));
  if (fraction.sizes)
    if (const auto* grading = std::get_if<Grading>(&*fraction.sizes)) append(problems, under(check(*grading), "/sizes"));
  return problems;
}

}  // namespace gritwright
