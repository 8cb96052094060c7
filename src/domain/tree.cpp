#include "gritwright/domain/tree.hpp"

#include "record_checks.hpp"

namespace gritwright {

namespace {

/// "03-14"; any leap day counts.
bool is_month_day(const std::string& text) { return is_calendar_day("2024-" + text); }

template <class Share>
void check_share(Problems& problems, const std::string& pointer, const std::optional<Share>& share) {
  if (share && !(share->value() >= 0 && share->value() <= 1))
    problems.push_back(problem_at("tree.share-range", pointer, {{"share", share->value()}}));
}

void check_repotting(Problems& problems, const Repotting& repotting, const std::string& at) {
  check_day(problems, at + "/day", repotting.day);
  for (std::size_t i = 0; i < repotting.grain.size(); ++i)
    check_grain(problems, item((at + "/grain").c_str(), i), repotting.grain[i]);
  check_amount(problems, at + "/filled_depth_cm", repotting.filled_depth);
  check_amount(problems, at + "/filled_l", repotting.filled);
  check_share(problems, at + "/removed_share", repotting.removed_share);
  check_share(problems, at + "/untouched_share", repotting.untouched_share);
  check_day(problems, at + "/due", repotting.due);
  if (repotting.untouched) append(problems, check(*repotting.untouched, at + "/untouched"));
}

}  // namespace

std::optional<Condition> condition_now(const Tree& tree) {
  return tree.conditions.empty() ? std::nullopt : std::optional(tree.conditions.back().condition);
}

const Repotting* stands_in(const Tree& tree) { return tree.repottings.empty() ? nullptr : &tree.repottings.back(); }

Problems check(const Tree& tree) {
  Problems problems;
  if (tree.species.empty()) check_name(problems, "/name", tree.name);
  check_amount(problems, "/trunk_width_cm", tree.trunk_width);
  check_amount(problems, "/mass_kg", tree.mass);
  for (std::size_t i = 0; i < tree.conditions.size(); ++i)
    check_day(problems, item("/conditions", i, "/day"), tree.conditions[i].day);
  for (std::size_t i = 0; i < tree.inspections.size(); ++i)
    check_day(problems, item("/inspections", i, "/day"), tree.inspections[i].day);
  for (std::size_t i = 0; i < tree.repottings.size(); ++i) {
    check_repotting(problems, tree.repottings[i], item("/repottings", i));
    if (i > 0 && tree.repottings[i].day < tree.repottings[i - 1].day)
      problems.push_back(problem_at("tree.repottings-not-in-order", item("/repottings", i, "/day"),
                                    {{"text", tree.repottings[i].day}, {"before", tree.repottings[i - 1].day}}));
  }
  if (tree.window.opens && !is_month_day(*tree.window.opens))
    problems.push_back(problem_at("tree.not-a-month-day", "/window/opens", {{"text", *tree.window.opens}}));
  if (tree.window.closes && !is_month_day(*tree.window.closes))
    problems.push_back(problem_at("tree.not-a-month-day", "/window/closes", {{"text", *tree.window.closes}}));
  check_day(problems, "/due", tree.due);
  return problems;
}

}  // namespace gritwright
