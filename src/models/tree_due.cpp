#include "gritwright/models/tree_due.hpp"

#include <string_view>

#include "calendar_years.hpp"

namespace gritwright {

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
