#include "gritwright/domain/record.hpp"

#include "record_checks.hpp"

namespace gritwright {

namespace {

/// The plan's own codec judges what stands in it.
Problems check(const KeptRootMassPlan& plan) {
  Problems problems;
  check_day(problems, "/day", plan.day);
  if (plan.plan.empty()) problems.push_back(problem_at("record.no-plan", "/plan"));
  return problems;
}

}  // namespace

Problems check(const Record& record) {
  return std::visit([](const auto& held) { return check(held); }, record);
}

}  // namespace gritwright
