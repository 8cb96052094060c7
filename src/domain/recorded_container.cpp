#include "gritwright/domain/recorded_container.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const RecordedContainer& container) {
  Problems problems = under(check(container.container), "/container");
  check_name(problems, "/container/name", container.container.name);
  if (container.drain_holes && *container.drain_holes < 0)
    problems.push_back(problem_at("container.holes-negative", "/drain_holes", {{"count", static_cast<double>(*container.drain_holes)}}));
  if (container.feet && *container.feet < Length{})
    problems.push_back(problem_at("container.length-negative", "/feet_mm", {{"length_cm", in_cm(*container.feet)}}));
  return problems;
}

}  // namespace gritwright
