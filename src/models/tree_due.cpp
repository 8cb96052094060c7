#include "gritwright/models/tree_due.hpp"

#include <string_view>

namespace gritwright {

namespace {

/// The same day some years later; the 29th of February becomes the 28th, which every year has.
std::string years_later(const std::string& day, int years) {
  const std::string month_and_day = day.substr(4);
  return std::to_string(std::stoi(day.substr(0, 4)) + years) + (month_and_day == "-02-29" ? "-02-28" : month_and_day);
}

}  // namespace

std::optional<NextRepotting> next_repotting(const Tree& tree) {
  if (tree.due) return NextRepotting{*tree.due, *tree.due};
  const Repotting* last = stands_in(tree);
  constexpr std::string_view day_form = "0000-00-00";
  if (last == nullptr || !tree.group || last->day.size() != day_form.size()) return std::nullopt;
  const GroupDefaults& group = group_defaults(*tree.group);
  if (!group.interval_least_years || !group.interval_most_years) return std::nullopt;
  return NextRepotting{years_later(last->day, *group.interval_least_years), years_later(last->day, *group.interval_most_years)};
}

}  // namespace gritwright
