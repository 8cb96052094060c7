#include "gritwright/models/season.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "gritwright/models/tree_due.hpp"
#include "grain_shelf.hpp"

namespace gritwright {

namespace {

constexpr double no_claim_l = 1e-9;

LooseVolume raw_taken(const DayAnswer& answer, std::size_t supply) { return answer.shelf[supply].taken.value_or(LooseVolume{}); }

void add_grain(std::vector<GrainLitres>& to, const GrainLitres& grain) {
  const auto known = std::ranges::find(to, grain.name, &GrainLitres::name);
  if (known == to.end()) return to.push_back(grain);
  known->loose = loose_l(in_l(known->loose) + in_l(grain.loose));
  known->ready = loose_l(in_l(known->ready) + in_l(grain.ready));
  if (known->dry_mass && grain.dry_mass)
    *known->dry_mass += *grain.dry_mass;
  else
    known->dry_mass.reset();
}

class SeasonWork {
 public:
  explicit SeasonWork(const PlannedSeason& season) : season_(season) {}

  Result<SeasonAnswer> work() {
    find_due();
    for (const auto& day : days()) {
      auto problems = work_day(day);
      if (!problems.empty()) return problems;
    }
    for (GrainToBuy& purchase : answer_.buy) count_bags(purchase);
    for (std::size_t supply = 0; supply < season_.ground.shelf.size(); ++supply) add_reservation(supply);
    return std::move(answer_);
  }

 private:
  void find_due() {
    for (std::size_t i = 0; i < season_.ground.trees.size(); ++i) {
      DueTree tree = due_by(season_.ground.trees[i], season_.until);
      tree.tree = i;
      if (tree.due == Due::unknown) answer_.notes.push_back({"season.due-unknown", Level::note, season_.ground.trees[i].name, {}});
      answer_.trees.push_back(tree);
    }
    const auto counted = std::ranges::count_if(answer_.trees, &DueTree::counted);
    if (counted == 0) answer_.notes.push_back({"season.none-due", Level::note, "", {{"until", season_.until}}});
  }

  /// By date; trees without a day come last.
  std::vector<std::optional<std::string>> days() const {
    std::set<std::string> dated;
    bool undated = false;
    for (const DueTree& tree : answer_.trees) {
      if (!tree.counted) continue;
      const auto& day = season_.ground.trees[tree.tree].day;
      if (day)
        dated.insert(*day);
      else
        undated = true;
    }
    std::vector<std::optional<std::string>> all(dated.begin(), dated.end());
    if (undated) all.emplace_back();
    return all;
  }

  Problems work_day(const std::optional<std::string>& day) {
    PlannedDay plan = season_.ground;
    plan.day = day;
    plan.trees.clear();
    std::set<std::string> mixes;
    for (const DueTree& tree : answer_.trees) {
      const PlannedTree& planned = season_.ground.trees[tree.tree];
      if (!tree.counted || planned.day != day) continue;
      plan.trees.push_back(planned);
      mixes.insert(planned.mix);
    }
    std::erase_if(plan.mixes, [&](const DayMix& mix) { return !mixes.contains(mix.name); });
    const auto alone = work_out(plan);
    if (!alone) return alone.problems();
    for (std::size_t i = 0; i < plan.shelf.size(); ++i) {
      double earlier_l = in_l(plan.shelf[i].reserved.value_or(LooseVolume{}));
      for (const DayOfSeason& earlier : answer_.days) earlier_l += in_l(raw_taken(earlier.answer, i));
      if (earlier_l > 0) plan.shelf[i].reserved = loose_l(earlier_l);
    }
    auto answer = work_out(plan);
    if (!answer) return answer.problems();
    for (const MixOfDay& mix : answer->mixes) add_mix(mix);
    for (const GrainLitres& grain : answer->components) add_grain(answer_.components, grain);
    for (const GrainToBuy& purchase : answer->buy) add_purchase(purchase);
    for (const Note& note : answer->notes)
      if (std::ranges::find(answer_.notes, note) == answer_.notes.end()) answer_.notes.push_back(note);
    wanted_.push_back(alone->shelf);
    answer_.days.push_back({day, std::move(plan), std::move(answer).value()});
    return {};
  }

  void add_mix(const MixOfDay& mix) {
    const auto known = std::ranges::find(answer_.mixes, mix.name, &MixOfDay::name);
    if (known == answer_.mixes.end()) {
      answer_.mixes.push_back(mix);
      answer_.mixes.back().batches.reset();
      answer_.mixes.back().left_over.reset();
      answer_.mixes.back().reserve_trees.clear();
      return;
    }
    known->fill = known->fill + mix.fill;
    known->reserve = known->reserve + mix.reserve;
    known->needed = mixed_l(in_l(known->needed) + in_l(mix.needed));
    for (const GrainLitres& grain : mix.components) add_grain(known->components, grain);
  }

  void add_purchase(const GrainToBuy& purchase) {
    const auto known = std::ranges::find(answer_.buy, purchase.material, &GrainToBuy::material);
    if (known == answer_.buy.end()) return answer_.buy.push_back(purchase);
    known->short_of = loose_l(in_l(known->short_of) + in_l(purchase.short_of));
    known->raw = loose_l(in_l(known->raw) + in_l(purchase.raw));
    for (const std::string& component : purchase.components)
      if (std::ranges::find(known->components, component) == known->components.end()) known->components.push_back(component);
  }

  void add_reservation(std::size_t supply) {
    Reservation reservation{supply, {}, false};
    for (std::size_t day = 0; day < answer_.days.size(); ++day) {
      const LooseVolume wanted = wanted_[day][supply].taken.value_or(LooseVolume{});
      const LooseVolume gets = raw_taken(answer_.days[day].answer, supply);
      if (in_l(wanted) <= no_claim_l && in_l(gets) <= no_claim_l) continue;
      reservation.claims.push_back({answer_.days[day].day, wanted, gets});
      if (in_l(gets) < in_l(wanted) - no_claim_l) reservation.runs_out = true;
    }
    if (reservation.claims.size() > 1) answer_.reservations.push_back(std::move(reservation));
  }

  const PlannedSeason& season_;
  std::vector<std::vector<ShelfAfter>> wanted_;
  SeasonAnswer answer_;
};

}  // namespace

DueTree due_by(const PlannedTree& tree, const std::string& until) {
  DueTree answer;
  if (const auto next = next_repotting({tree.due, tree.last_repotted, tree.group, tree.interval_years})) {
    answer.from = next->from;
    answer.due = next->to <= until ? Due::due : next->from <= until ? Due::may_be : Due::not_yet;
  }
  if (tree.day) answer.due = Due::due;
  answer.counted = answer.due == Due::due || answer.due == Due::may_be;
  return answer;
}

Result<SeasonAnswer> work_out(const PlannedSeason& season) {
  if (auto problems = check(season); !problems.empty()) return problems;
  return SeasonWork(season).work();
}

}  // namespace gritwright
