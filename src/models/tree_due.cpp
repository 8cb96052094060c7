#include "gritwright/models/tree_due.hpp"

#include <string_view>

#include "calendar_years.hpp"

namespace gritwright {

std::optional<NextRepotting> next_repotting(const RepottingHistory& known) {
  if (known.due) return NextRepotting{*known.due, *known.due};
  constexpr std::string_view day_form = "0000-00-00";
  if (!known.last || known.last->size() != day_form.size()) return std::nullopt;
  const auto after = [&](int least_years, int most_years) { return NextRepotting{years_later(*known.last, least_years), years_later(*known.last, most_years)}; };
  if (known.interval_years) return after(*known.interval_years, *known.interval_years);
  if (!known.group) return std::nullopt;
  const GroupDefaults& group = group_defaults(*known.group);
  if (!group.interval_least_years || !group.interval_most_years) return std::nullopt;
  return after(*group.interval_least_years, *group.interval_most_years);
}

std::optional<NextRepotting> next_repotting(const Tree& tree) {
  const Repotting* last = stands_in(tree);
  return next_repotting({tree.due, last == nullptr ? std::nullopt : std::optional(last->day), tree.group, {}});
}

}  // namespace gritwright
