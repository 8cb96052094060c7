#include "recipe_contradictions.hpp"

#include <algorithm>
#include <bit>

#include "recipe_set_bounds.hpp"
#include "recipe_whole_search.hpp"

namespace gritwright::recipe_search {

namespace {

constexpr std::size_t subset_slices = 96;
constexpr std::size_t first_subset_round = 4;

struct SliceSets {
  MinimalSets sets;
  bool cut_short = false;
};

/// Collects the smallest sets of broken wishes in one slice of the space.
class SliceWalk {
 public:
  SliceWalk(const BoundTables& tables, const RecipeForm& form, const std::vector<PartPatterns>& patterns, const MinimalSets& known,
            const SearchControl& control, ProgressCounter& progress)
      : ground_(tables.ground()),
        form_(form),
        patterns_(patterns),
        control_(control),
        progress_(progress),
        sets_(tables, Strictness::as_wished),
        bounds_(tables, Strictness::as_wished) {
    result_.sets = known;
  }

  SliceSets run(std::size_t slice) {
    SubsetWalk walk(static_cast<int>(ground_.size()), form_.components, slice, subset_slices);
    std::uint64_t covered = 0;
    while (walk.next()) {
      if (control_.stop.stop_requested() || (control_.contradictions_time_is_up && control_.contradictions_time_is_up())) {
        result_.cut_short = true;
        break;
      }
      look_at(walk.subset());
      covered += patterns_[walk.subset().size() - 1].size();
      constexpr std::uint64_t report_every = 1U << 18U;
      if (covered >= report_every) {
        progress_.add(covered);
        covered = 0;
      }
    }
    progress_.add(covered);
    return std::move(result_);
  }

 private:
  void look_at(std::span<const std::uint8_t> subset) {
    const PartPatterns& patterns = patterns_[subset.size() - 1];
    if (patterns.size() == 0) return;  // more candidates than parts
    if (result_.sets.covers(sets_.of_whole_parts(subset, form_.total).broken)) return;
    recipe_ = {};
    recipe_.count = static_cast<std::uint8_t>(subset.size());
    std::ranges::copy(subset, recipe_.candidates.begin());
    bounds_.choose(subset);
    for (std::size_t from = 0; from < patterns.size(); from += SubsetBounds::block) {
      const std::size_t count = std::min(SubsetBounds::block, patterns.size() - from);
      bounds_.bound_gradings(patterns, from, count);
      for (std::size_t i = 0; i < count; ++i)
        if (!result_.sets.covers(bounds_.broken(i))) look_at(patterns, from + i);
    }
  }

  void look_at(const PartPatterns& patterns, std::size_t pattern) {
    std::array<double, 6> parts{};
    for (std::size_t j = 0; j < recipe_.count; ++j) {
      parts[j] = patterns.row(static_cast<int>(j))[pattern];
      recipe_.parts[j] = static_cast<std::uint8_t>(parts[j]);
    }
    if (settled(bounds_.bound_figures({parts.data(), recipe_.count}))) return;
    const std::vector<Dose> doses = doses_of(recipe_);
    ground_.evaluate(doses, workspace_, scratch_, figures_);
    if (settled(figures_)) return;
    settled(ground_.worked_out(doses).figures);
  }

  /// Adds what the recipe breaks unless ranges leave that open.
  bool settled(const FigureRanges& figures) {
    const Rating rating = ground_.rate(figures, Strictness::as_wished);
    if (!rating.within_stock || result_.sets.covers(rating.broken)) return true;
    if (rating.doubtful != 0 || rating.stock_doubtful) return false;
    result_.sets.add(rating.broken);
    return true;
  }

  const Ground& ground_;
  const RecipeForm& form_;
  const std::vector<PartPatterns>& patterns_;
  const SearchControl& control_;
  ProgressCounter& progress_;
  SetBounds sets_;
  SubsetBounds bounds_;
  WholeRecipe recipe_;
  MixEvaluator::Workspace workspace_;
  RecipeFigures scratch_;
  FigureRanges figures_;
  SliceSets result_;
};

std::vector<std::size_t> members(std::uint64_t set) {
  std::vector<std::size_t> list;
  for (; set != 0; set &= set - 1) list.push_back(static_cast<std::size_t>(std::countr_zero(set)));
  return list;
}

}  // namespace

bool MinimalSets::covers(std::uint64_t set) const {
  return std::ranges::any_of(sets_, [&](std::uint64_t known) { return (known & ~set) == 0; });
}

void MinimalSets::add(std::uint64_t set) {
  if (covers(set)) return;
  std::erase_if(sets_, [&](std::uint64_t known) { return (set & ~known) == 0; });
  sets_.push_back(set);
}

std::vector<std::uint64_t> minimal_transversals(const std::vector<std::uint64_t>& sets) {
  std::vector<std::uint64_t> found{0};
  for (const std::uint64_t set : sets) {
    MinimalSets next;
    for (const std::uint64_t each : found)
      if ((each & set) != 0) next.add(each);
    for (const std::uint64_t each : found) {
      if ((each & set) != 0) continue;
      for (std::uint64_t left = set; left != 0; left &= left - 1) next.add(each | (left & (~left + 1)));
    }
    found = next.sets();
  }
  std::ranges::sort(found, [](std::uint64_t a, std::uint64_t b) {
    return std::pair(std::popcount(a), members(a)) < std::pair(std::popcount(b), members(b));
  });
  return found;
}

Contradictions find_contradictions(const BoundTables& tables, const RecipeForm& form, const SearchControl& control) {
  const std::vector<PartPatterns> patterns = part_patterns(form.components, form.total);
  ProgressCounter progress(control, 3, recipe_count(static_cast<int>(tables.ground().size()), form.components, form.total));
  MinimalSets sets;
  Contradictions answer;
  std::size_t done = 0;
  for (std::size_t round = first_subset_round; done < subset_slices && answer.complete; round *= 3) {
    const std::size_t count = std::min(round, subset_slices - done);
    std::vector<SliceSets> results(count);
    control.runner(count, [&](std::size_t i) {
      results[i] = SliceWalk(tables, form, patterns, sets, control, progress).run(done + i);
    });
    for (const SliceSets& result : results) {
      for (const std::uint64_t set : result.sets.sets()) sets.add(set);
      answer.complete = answer.complete && !result.cut_short;
    }
    done += count;
  }
  answer.nothing_in_reach = sets.sets().empty();
  if (answer.nothing_in_reach) return answer;
  if (!answer.complete) return answer;
  std::vector<std::uint64_t> sorted = sets.sets();
  std::ranges::sort(sorted);
  for (const std::uint64_t set : minimal_transversals(sorted)) answer.sets.push_back(members(set));
  return answer;
}

}  // namespace gritwright::recipe_search
