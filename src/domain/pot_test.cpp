#include "gritwright/domain/pot_test.hpp"

#include "record_checks.hpp"

namespace gritwright {

namespace {

void check_weighings(Problems& problems, const PotWeighings& weighed) {
  const auto out_of_order = [&](const char* pointer, Mass lower, Mass higher) {
    if (lower > higher)
      problems.push_back(problem_at("pot-test.weighings-out-of-order", pointer, {{"lower_g", in_g(lower)}, {"higher_g", in_g(higher)}}));
  };
  if (weighed.tare < Mass{}) problems.push_back(problem_at("record.amount-not-positive", "/weighed/tare_g"));
  if (!(weighed.dry > weighed.tare))
    problems.push_back(problem_at("pot-test.weighings-out-of-order", "/weighed/dry_g",
                                  {{"lower_g", in_g(weighed.tare)}, {"higher_g", in_g(weighed.dry)}}));
  if (weighed.drained) out_of_order("/weighed/drained_g", weighed.dry, *weighed.drained);
  if (weighed.flooded) out_of_order("/weighed/flooded_g", weighed.drained.value_or(weighed.dry), *weighed.flooded);
}

}  // namespace

Problems check(const PotTest& test) {
  Problems problems;
  check_day(problems, "/day", test.day);
  check_amount(problems, "/volume_ml", test.volume);
  check_amount(problems, "/filled_depth_cm", test.filled_depth);
  if (test.weighed) check_weighings(problems, *test.weighed);
  check_amount(problems, "/water_poured_ml", test.water_poured);
  if (test.water_caught && *test.water_caught < PotVolume{})
    problems.push_back(problem_at("record.amount-not-positive", "/water_caught_ml"));
  if (test.water_poured && test.water_caught && *test.water_caught > *test.water_poured)
    problems.push_back(problem_at("pot-test.more-caught-than-poured", "/water_caught_ml",
                                  {{"caught_ml", in_ml(*test.water_caught)}, {"poured_ml", in_ml(*test.water_poured)}}));
  if (test.fitted) append(problems, under(check(*test.fitted), "/fitted"));
  return problems;
}

}  // namespace gritwright
