#include "gritwright/domain/planned_day.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <set>
#include <utility>

#include "record_checks.hpp"

namespace gritwright {

namespace {

constexpr double largest_yield = 1.2;

/// A month and day as windows have them.
void check_month_day(Problems& problems, const std::string& pointer, const std::optional<std::string>& text) {
  // A leap year, so that 29 February can open or close a window.
  if (text && !is_calendar_day("2000-" + *text)) problems.push_back(problem_at("day.not-a-month-and-day", pointer, {{"text", *text}}));
}

void check_supply(Problems& problems, const GrainSupply& supply, const std::string& at) {
  const auto not_below_zero = [&](const std::optional<LooseVolume>& volume, const char* key) {
    if (volume && !(in_l(*volume) >= 0)) problems.push_back(problem_at("day.stock-below-zero", at + key, {{"volume_l", in_l(*volume)}}));
  };
  check_name(problems, at + "/bag", supply.bag);
  not_below_zero(supply.stock, "/stock_l");
  not_below_zero(supply.reserved, "/reserved_l");
  if (supply.yield && !(supply.yield->value() > 0 && supply.yield->value() <= largest_yield))
    problems.push_back(problem_at("day.yield-range", at + "/yield", {{"share", supply.yield->value()}}));
  if (supply.screened && supply.yield) problems.push_back(problem_at("day.yield-of-screened", at + "/yield"));
  if (supply.keeps && in_mm(supply.keeps->from) < 0)
    problems.push_back(problem_at("component.size-not-positive", at + "/from_mm", {{"size_mm", in_mm(supply.keeps->from)}}));
  if (supply.keeps && !(supply.keeps->from < supply.keeps->to))
    problems.push_back(problem_at("band.upside-down", at + "/to_mm", {{"from_mm", in_mm(supply.keeps->from)}, {"to_mm", in_mm(supply.keeps->to)}}));
  check_amount(problems, at + "/bulk_density_g_l", supply.bulk_density);
  check_amount(problems, at + "/particle_density_g_l", supply.particle_density);
  check_amount(problems, at + "/bag_l", supply.bag_volume);
  if (supply.grading) append(problems, under(check(*supply.grading), at + "/grading"));
  if (supply.price && !(supply.price->amount >= 0))
    problems.push_back(problem_at("bag.price-negative", at + "/price", {{"amount", supply.price->amount}}));
}

class TreeCheck {
 public:
  TreeCheck(Problems& problems, const PlannedDay& day) : problems_(problems), day_(day) {
    for (const DayMix& mix : day.mixes) mixes_.insert(mix.name);
  }

  void check(const PlannedTree& tree, const std::string& at) {
    check_name(problems_, at + "/name", tree.name);
    if (!tree.name.empty() && !names_.insert(tree.name).second)
      problems_.push_back(problem_at("day.tree-twice", at + "/name", {{"text", tree.name}}));
    if (!mixes_.contains(tree.mix)) problems_.push_back(problem_at("day.unknown-mix", at + "/mix", {{"text", tree.mix}}));
    const bool pot_known = day_.pots.contains(tree.pot);
    if (!tree.pot.empty() && !pot_known) problems_.push_back(problem_at("day.unknown-pot", at + "/pot", {{"text", tree.pot}}));
    if (!tree.fill && tree.pot.empty()) problems_.push_back(problem_at("day.no-fill", at));
    check_amounts(tree, at);
    check_days(tree, at);
  }

 private:
  void check_amounts(const PlannedTree& tree, const std::string& at) {
    check_volume(tree.fill.value_or(PotVolume{}), at + "/fill_ml");
    for (std::size_t i = 0; i < tree.worse_fills.size(); ++i) check_volume(tree.worse_fills[i], at + item("/worse_fill_ml", i));
    for (std::size_t i = 0; i < tree.layers.size(); ++i) {
      check_name(problems_, at + item("/layers", i, "/grain"), tree.layers[i].grain);
      check_volume(tree.layers[i].volume, at + item("/layers", i, "/volume_ml"));
      check_amount(problems_, at + item("/layers", i, "/bulk_density_g_l"), tree.layers[i].bulk_density);
    }
    for (const auto& [mass, key] : {std::pair(tree.kept_root_mass, "/kept_root_mass_kg"), std::pair(tree.mass, "/mass_kg")})
      if (mass && !(in_kg(*mass) >= 0)) problems_.push_back(problem_at("day.mass-below-zero", at + key, {{"mass_kg", in_kg(*mass)}}));
    if (tree.interval_years && *tree.interval_years < 1)
      problems_.push_back(problem_at("day.interval-range", at + "/interval_years", {{"years", static_cast<double>(*tree.interval_years)}}));
  }

  void check_volume(PotVolume volume, const std::string& pointer) {
    if (!(in_ml(volume) >= 0)) problems_.push_back(problem_at("day.fill-below-zero", pointer, {{"volume_ml", in_ml(volume)}}));
  }

  void check_days(const PlannedTree& tree, const std::string& at) {
    check_day(problems_, at + "/day", tree.day);
    check_day(problems_, at + "/last_repotted", tree.last_repotted);
    check_day(problems_, at + "/due", tree.due);
    check_month_day(problems_, at + "/window_opens", tree.window_opens);
    check_month_day(problems_, at + "/window_closes", tree.window_closes);
  }

  Problems& problems_;
  const PlannedDay& day_;
  std::set<std::string> mixes_;
  std::set<std::string> names_;
};

void check_mixes(Problems& problems, const PlannedDay& day) {
  std::set<std::string> names;
  for (const DayMix& mix : day.mixes) {
    const std::string at = "/mixes/" + mix.name;
    check_name(problems, at, mix.name);
    if (!names.insert(mix.name).second) problems.push_back(problem_at("day.mix-twice", at, {{"text", mix.name}}));
    append(problems, under(check(mix.mix), at));
    for (const auto& [version, key] : {std::pair(mix.version, "/version"), std::pair(mix.newest_version, "/newest_version")})
      if (version && *version < 1)
        problems.push_back(problem_at("day.version-below-one", at + key, {{"version", static_cast<double>(*version)}}));
  }
}

void check_experience(Problems& problems, const PlannedDay& day) {
  for (std::size_t i = 0; i < day.filled_before.size(); ++i) {
    const FilledTree& tree = day.filled_before[i];
    if (!(in_ml(tree.fill) > 0 && in_l(tree.used) > 0)) problems.push_back(problem_at("record.amount-not-positive", item("/filled_before", i)));
  }
  for (std::size_t i = 0; i < day.emptied_before.size(); ++i) {
    const EmptiedBatch& batch = day.emptied_before[i];
    const double left_l = in_l(batch.left_over);
    if (!(in_l(batch.made) > 0 && in_l(batch.used) > 0 && left_l >= 0))
      problems.push_back(problem_at("record.amount-not-positive", item("/emptied_before", i)));
    else if (!(left_l < in_l(batch.made)))
      problems.push_back(problem_at("day.more-left-than-made", item("/emptied_before", i, "/left_l"), {{"left_l", left_l}, {"made_l", in_l(batch.made)}}));
  }
}

/// Of a smaller one a day would take more than anybody counts.
void check_vessel(Problems& problems, const char* pointer, const std::optional<LooseVolume>& vessel) {
  constexpr double least_l = 0.005;  // a teaspoon
  check_amount(problems, pointer, vessel);
  if (vessel && in_l(*vessel) > 0 && in_l(*vessel) < least_l)
    problems.push_back(problem_at("day.vessel-too-small", pointer, {{"volume_l", in_l(*vessel)}, {"least_l", least_l}}));
}

}  // namespace

Problems check(const PlannedDay& day) {
  Problems problems;
  check_day(problems, "/date", day.day);
  check_mixes(problems, day);
  for (const auto& [name, pot] : day.pots) append(problems, under(check(pot), "/pots/" + name));
  for (std::size_t i = 0; i < day.shelf.size(); ++i) check_supply(problems, day.shelf[i], item("/stock", i));
  TreeCheck trees(problems, day);
  if (day.trees.empty()) problems.push_back(problem_at("day.no-trees", "/trees"));
  for (std::size_t i = 0; i < day.trees.size(); ++i) trees.check(day.trees[i], item("/trees", i));
  check_vessel(problems, "/tub_l", day.tub);
  check_vessel(problems, "/scoop_l", day.scoop);
  if (day.tub && day.scoop && in_l(*day.scoop) > 0 && *day.scoop > *day.tub)
    problems.push_back(problem_at("day.scoop-above-tub", "/scoop_l", {{"scoop_l", in_l(*day.scoop)}, {"tub_l", in_l(*day.tub)}}));
  if (day.sheet_revision < 1)
    problems.push_back(problem_at("day.version-below-one", "/sheet_revision", {{"version", static_cast<double>(day.sheet_revision)}}));
  check_experience(problems, day);
  return problems;
}

Problems check(const PlannedSeason& season) {
  Problems problems = check(season.ground);
  check_day(problems, "/until", season.until);
  return problems;
}

std::optional<WorkKey> work_key_named(const std::string& name) {
  constexpr std::array words{std::pair("bud", WorkKey::bud), std::pair("mix", WorkKey::mix), std::pair("helper", WorkKey::helper),
                             std::pair("name", WorkKey::name)};
  for (const auto& [word, key] : words)
    if (name == word) return key;
  return std::nullopt;
}

std::optional<int> bud_rank(const std::string& bud) {
  constexpr std::array words{"dormant", "swelling", "green tips", "opening", "in leaf"};
  std::string lower = bud;
  std::ranges::transform(lower, lower.begin(), [](unsigned char sign) { return static_cast<char>(std::tolower(sign)); });
  const auto found = std::ranges::find(words, lower);
  if (found == words.end()) return std::nullopt;
  return static_cast<int>(found - words.begin());
}

}  // namespace gritwright
