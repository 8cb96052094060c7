#include "gritwright/domain/stock_entry.hpp"

#include "record_checks.hpp"

namespace gritwright {

namespace {

bool goes_away(StockReason reason) {
  return reason == StockReason::screened_out_of || reason == StockReason::used || reason == StockReason::spilt ||
         reason == StockReason::thrown_out;
}

}  // namespace

Problems check(const StockEntry& entry) {
  Problems problems;
  check_grain(problems, "/holder", entry.holder);
  check_day(problems, "/day", entry.day);
  check_amount(problems, "/density_used_g_l", entry.density_used);
  if (entry.measured && !entry.density_used) problems.push_back(problem_at("stock.no-density", "/measured_l"));
  const bool wrong_sign = goes_away(entry.reason) ? entry.change > Mass{} : entry.change < Mass{};
  if (entry.reason != StockReason::counted && wrong_sign)
    problems.push_back(problem_at("stock.wrong-sign", "/change_g", {{"change_g", in_g(entry.change)}}));
  if (entry.reason == StockReason::counted && !entry.counted) problems.push_back(problem_at("stock.no-count", "/counted_g"));
  return problems;
}

}  // namespace gritwright
