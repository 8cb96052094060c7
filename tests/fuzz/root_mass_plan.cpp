#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/root_plan.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = fuzz::text_of(data, size);
  const auto begun = read_begun_root_mass_plan(text, "input", {});
  fuzz::must(begun || !begun.problems().empty());
  const auto file = read_root_mass_plan(text, "input", {});
  if (!file) {
    fuzz::must(!file.problems().empty());
    return 0;
  }
  fuzz::must(begun.ok());
  const auto answer = work_out(file->plan, PlanDetail::live);
  if (!answer) {
    fuzz::must(!answer.problems().empty());
    return 0;
  }
  fuzz::must(answer->plans.size() == 1);
  for (const WorkedPlan& plan : answer->plans) {
    constexpr double rounding = 1e-9;
    fuzz::must(plan.removed_share >= 0 && plan.removed_share <= 1 + rounding);
    fuzz::must(plan.untouched_share >= 0 && plan.untouched_share <= 1 + rounding);
    fuzz::must(in_ml(plan.kept) >= 0 && in_ml(plan.fill) >= 0 && in_ml(plan.sphagnum) >= 0);
  }
  return 0;
}
