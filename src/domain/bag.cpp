#include "gritwright/domain/bag.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const Bag& bag) {
  Problems problems;
  check_name(problems, "/material", bag.material);
  if (bag.count < 1) problems.push_back(problem_at("bag.count-below-one", "/count", {{"count", static_cast<double>(bag.count)}}));
  if (bag.printed_size && !(bag.printed_size->from < bag.printed_size->to))
    problems.push_back(problem_at("record.sizes-upside-down", "/printed_size",
                                  {{"from_mm", in_mm(bag.printed_size->from)}, {"to_mm", in_mm(bag.printed_size->to)}}));
  check_amount(problems, "/volume_l", bag.volume);
  check_amount(problems, "/mass_kg", bag.mass_as_bagged);
  check_amount(problems, "/bulk_density_g_l", bag.bulk_density);
  check_amount(problems, "/worked_in_density_g_l", bag.worked_in_density);
  check_amount(problems, "/particle_density_g_l", bag.particle_density);
  if (bag.water_absorption && bag.water_absorption->value() < 0)
    problems.push_back(problem_at("component.absorption-negative", "/water_absorption", {{"ratio", bag.water_absorption->value()}}));
  if (bag.crumbling && (!(bag.crumbling->breakages_per_round >= 0) || !(bag.crumbling->modulus > 0) || !(bag.crumbling->rounds_per_season > 0)))
    problems.push_back(problem_at("bag.crumbling-range", "/crumbling"));
  if (bag.moisture && bag.moisture->value() < 0)
    problems.push_back(problem_at("component.moisture-range", "/moisture_percent", {{"percent", bag.moisture->value() * 100}}));
  if (bag.price && bag.price->amount < 0)
    problems.push_back(problem_at("bag.price-negative", "/price/amount", {{"amount", bag.price->amount}}));
  check_day(problems, "/received", bag.received);
  if (bag.reclaimed) check_day(problems, "/reclaimed/day", bag.reclaimed->day);
  return problems;
}

namespace {

/// Of one bag, by the balance.
std::optional<Mass> dry_mass_weighed(const Bag& bag) {
  if (!bag.mass_as_bagged) return std::nullopt;
  if (bag.moisture_basis == MoistureBasis::oven_dry) return bag.mass_as_bagged;
  // dry = weighed / (1 + w)
  if (bag.moisture) return *bag.mass_as_bagged / (1 + bag.moisture->value());
  return std::nullopt;
}

}  // namespace

std::optional<BulkDensity> bulk_density_received(const Bag& bag) {
  if (bag.bulk_density) return bag.bulk_density;
  const auto dry = dry_mass_weighed(bag);
  if (!dry || !bag.volume || !(*bag.volume > LooseVolume{})) return std::nullopt;
  return bulk_g_l(in_g(*dry) / in_l(*bag.volume));
}

std::optional<Mass> dry_mass_received(const Bag& bag) {
  if (const auto dry = dry_mass_weighed(bag)) return *dry * static_cast<double>(bag.count);
  if (bag.volume && bag.bulk_density) return *bag.volume * *bag.bulk_density * static_cast<double>(bag.count);
  return std::nullopt;
}

}  // namespace gritwright
