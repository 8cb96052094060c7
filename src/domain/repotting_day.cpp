#include "gritwright/domain/repotting_day.hpp"

#include <set>

#include "record_checks.hpp"

namespace gritwright {

Problems check(const RepottingDay& day) {
  Problems problems;
  check_day(problems, "/day", day.day);
  std::set<std::string> seen;
  for (std::size_t i = 0; i < day.trees.size(); ++i) {
    const DayTree& tree = day.trees[i];
    if (!seen.insert(tree.tree.text).second)
      problems.push_back(problem_at("repotting-day.tree-twice", item("/trees", i, "/tree"), {{"text", tree.tree.text}}));
    check_amount(problems, item("/trees", i, "/planned_l"), tree.planned);
    check_amount(problems, item("/trees", i, "/sphagnum_ml"), tree.sphagnum);
    check_amount(problems, item("/trees", i, "/used_l"), tree.used);
    check_amount(problems, item("/trees", i, "/kept_root_mass_kg"), tree.kept_root_mass);
  }
  check_amount(problems, "/tub_l", day.tub);
  check_amount(problems, "/scoop_l", day.scoop);
  check_lost_share(problems, "mix.settling-range", "/settling", day.settling);
  check_lost_share(problems, "mix.spill-range", "/spill", day.spill);
  return problems;
}

}  // namespace gritwright
