#include "recipe_whole_search.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <queue>

#include "recipe_set_bounds.hpp"

namespace gritwright::recipe_search {

namespace {

constexpr std::size_t slices = 96;
// Rounds of slices; between rounds the slices learn of each other. The first is one slice of the sets that promise most, so that
// a good limit is known to all the others.
constexpr std::size_t first_round = 1;
// Recipes that wait to be worked out in the order of what they cost at least.
constexpr std::size_t most_waiting = 256;

/// A place in the order up to which recipes are collected.
struct Limit {
  bool is_set = false;
  FigureKey key;
  WholeRecipe recipe;

  [[nodiscard]] bool excludes(const FigureKey& low, const WholeRecipe& other, const std::vector<int>& ranks) const {
    if (!is_set) return false;
    if (const auto order = low <=> key; order != 0) return order > 0;
    return comes_before(recipe, other, ranks);
  }
};

FigureKey key_of(double score, const std::optional<Range>& price, bool upper) {
  return figure_key(score, price ? (upper ? price->high : price->low) : infinite);
}

Entry entry_of(const WholeRecipe& recipe, const Rating& rating, const FigureRanges& figures) {
  return {key_of(rating.score.low, figures.price, false), key_of(rating.score.high, figures.price, true),
          rating.doubtful != 0 || rating.stock_doubtful, recipe};
}

/// Lowers a limit to the place of the last of `listed` distinct entries, which suffices as long as no better recipe displaces
/// more than the spare ones; the caller looks at the end whether that held.
class Collector {
 public:
  Collector(const std::vector<int>& ranks, std::size_t listed, const std::vector<Entry>& shared, const Limit& limit)
      : ranks_(ranks), listed_(listed), shared_(shared), limit_(limit) {}

  [[nodiscard]] const Limit& limit() const { return limit_; }
  [[nodiscard]] bool excludes(const FigureKey& low, const WholeRecipe& recipe) const { return limit_.excludes(low, recipe, ranks_); }

  void add(const Entry& entry) {
    own_.push_back(entry);
    if (own_.size() >= next_look_) lower_limit();
  }

  std::vector<Entry> finish() {
    // What is shared made the limit it came with.
    if (own_.size() > seen_) lower_limit();
    return std::move(own_);
  }

 private:
  void lower_limit() {
    std::vector<Entry> sure;
    for (const auto* list : {&shared_, static_cast<const std::vector<Entry>*>(&own_)})
      for (const Entry& entry : *list)
        if (!entry.doubtful && !limit_.excludes(entry.high, entry.recipe, ranks_)) sure.push_back(entry);
    const std::vector<Entry> first = distinct_first(std::move(sure), listed_, ranks_);
    if (first.size() == listed_) limit_ = {true, first.back().high, first.back().recipe};
    std::erase_if(own_, [&](const Entry& entry) { return excludes(entry.low, entry.recipe); });
    seen_ = own_.size();
    next_look_ = 2 * own_.size() + 64;
  }

  const std::vector<int>& ranks_;
  std::size_t listed_;
  const std::vector<Entry>& shared_;
  Limit limit_;
  std::vector<Entry> own_;
  std::size_t seen_ = 0;  ///< of own_, when the limit was lowered last
  std::size_t next_look_ = 64;
};

struct SliceResult {
  std::vector<Entry> found;
  Limit limit;
  std::uint64_t examined = 0;
  std::uint64_t excluded = 0;
  bool stopped = false;
};

/// A set of candidates, what its recipe of equal parts costs at least by gradings and room, and what any of its recipes does.
struct CandidateSet {
  double least = 0;
  float cost = 0;
  bool is_out = false;  ///< a hard wish fails in all of them
  std::uint8_t count = 0;
  std::array<std::uint8_t, 6> candidates{};
};

/// All sets, the most promising first. The order changes no answer, only how soon bounds exclude what is left.
std::vector<CandidateSet> sets_by_promise(const BoundTables& tables, const RecipeForm& form, const std::vector<PartPatterns>& patterns,
                                          Strictness strictness, const SearchControl& control) {
  std::vector<CandidateSet> sets;
  SubsetWalk walk(static_cast<int>(tables.ground().size()), form.components, 0, 1);
  while (walk.next()) {
    CandidateSet& set = sets.emplace_back();
    set.count = static_cast<std::uint8_t>(walk.subset().size());
    set.candidates = walk.places();
  }
  control.runner(slices, [&](std::size_t slice) {
    SetBounds sets_bounds(tables, strictness);
    SubsetBounds bounds(tables, strictness);
    constexpr std::array<double, 6> equal{1, 1, 1, 1, 1, 1};
    for (std::size_t i = slice; i < sets.size(); i += slices) {
      CandidateSet& set = sets[i];
      if (patterns[set.count - 1U].size() == 0) continue;  // more candidates than parts
      const SetRating rating = sets_bounds.of_whole_parts({set.candidates.data(), set.count}, form.total);
      set.least = rating.least_score;
      set.is_out = rating.broken != 0;
      if (set.is_out) {
        set.cost = std::numeric_limits<float>::infinity();
        continue;
      }
      bounds.choose({set.candidates.data(), set.count});
      // The first pattern is one part of each.
      bounds.bound_gradings(patterns[set.count - 1U], 0, 1);
      const double cost = bounds.broken(0) != 0 ? infinite : bounds.score(0) + bounds.least_for_want_of_room(equal);
      set.cost = static_cast<float>(cost);
    }
  });
  std::ranges::stable_sort(sets, {}, &CandidateSet::cost);
  return sets;
}

/// Walks one slice of the space.
class SliceSearch {
 public:
  SliceSearch(const BoundTables& tables, const std::vector<PartPatterns>& patterns, Strictness strictness,
              Collector collector, const SearchControl& control, ProgressCounter& progress)
      : ground_(tables.ground()),
        patterns_(patterns),
        strictness_(strictness),
        collector_(std::move(collector)),
        control_(control),
        progress_(progress),
        bounds_(tables, strictness),
        bounds_figures_(ground_.asks_for_volumes()) {}

  /// Every `step`-th set from `from` and before `to`.
  SliceResult run(std::span<const CandidateSet> sets, std::size_t from, std::size_t to, std::size_t step) {
    std::uint64_t reported = 0;
    for (std::size_t at = from; at < to; at += step) {
      if (control_.stop.stop_requested()) {
        result_.stopped = true;
        break;
      }
      search_set(sets[at]);
      if (waiting_.size() >= most_waiting) work_out_waiting();
      constexpr std::uint64_t report_every = 1U << 18U;
      const std::uint64_t covered = result_.examined + result_.excluded;
      if (covered - reported >= report_every) {
        progress_.add(covered - reported);
        reported = covered;
      }
    }
    work_out_waiting();
    progress_.add(result_.examined + result_.excluded - reported);
    result_.found = collector_.finish();
    result_.limit = collector_.limit();
    return std::move(result_);
  }

 private:
  void search_set(const CandidateSet& set) {
    const PartPatterns& patterns = patterns_[set.count - 1U];
    if (set.is_out || beyond(set.least)) {
      result_.excluded += patterns.size();
      return;
    }
    recipe_.count = set.count;
    recipe_.candidates = set.candidates;
    recipe_.parts = {};
    bounds_.choose({set.candidates.data(), set.count});
    for (std::size_t from = 0; from < patterns.size(); from += SubsetBounds::block) {
      const std::size_t count = std::min(SubsetBounds::block, patterns.size() - from);
      bounds_.bound_gradings(patterns, from, count);
      // The limit stays as it is until what waits is worked out. Without a branch: what is left is too irregular to foretell.
      const Limit& limit = collector_.limit();
      const double farthest = limit.is_set ? farthest_score_cell(limit.key) : infinite;
      std::array<std::size_t, SubsetBounds::block> left;
      std::size_t left_count = 0;
      for (std::size_t i = 0; i < count; ++i) {
        left[left_count] = i;
        const bool excluded = bounds_.broken(i) != 0 || score_lies_beyond(bounds_.score(i), farthest);
        left_count += excluded ? 0 : 1;
      }
      result_.excluded += count - left_count;
      for (std::size_t i = 0; i < left_count; ++i) examine(patterns, from + left[i], bounds_.score(left[i]));
    }
  }

  [[nodiscard]] bool beyond(double score) const {
    const Limit& limit = collector_.limit();
    return limit.is_set && score_lies_beyond(score, limit.key);
  }

  struct Waiting {
    FigureKey least;
    WholeRecipe recipe;
  };

  /// `grading_score`: what gradings and shares cost at least.
  void examine(const PartPatterns& patterns, std::size_t pattern, double grading_score) {
    std::array<double, 6> parts{};
    for (std::size_t j = 0; j < recipe_.count; ++j) parts[j] = patterns.row(static_cast<int>(j))[pattern];
    const std::span<const double> chosen(parts.data(), recipe_.count);
    if (bounds_figures_ && beyond(grading_score + bounds_.least_for_want_of_room(parts))) {
      ++result_.excluded;
      return;
    }
    for (std::size_t j = 0; j < recipe_.count; ++j) recipe_.parts[j] = static_cast<std::uint8_t>(parts[j]);
    if (!bounds_figures_) {
      waiting_.push_back({figure_key(grading_score, 0), recipe_});
      return;
    }
    const FigureRanges& figures = bounds_.bound_volumes(chosen);
    Rating least = ground_.rate(figures, strictness_, Counted::of_volumes);
    least.score.low += grading_score;
    if (out(least, figures, recipe_)) ++result_.excluded;
    else waiting_.push_back({key_of(least.score.low, figures.price, false), recipe_});
  }

  /// The full model for what waits, best first: the later ones may be excluded by what the first are found to be.
  void work_out_waiting() {
    std::ranges::sort(waiting_, [&](const Waiting& a, const Waiting& b) {
      if (const auto order = a.least <=> b.least; order != 0) return order < 0;
      return comes_before(a.recipe, b.recipe, ground_.name_ranks());
    });
    for (const Waiting& each : waiting_) {
      if (collector_.excludes(each.least, each.recipe)) {
        ++result_.excluded;
        continue;
      }
      ++result_.examined;
      doses_.clear();
      for (std::size_t j = 0; j < each.recipe.count; ++j) doses_.push_back({each.recipe.candidates[j], static_cast<double>(each.recipe.parts[j])});
      ground_.evaluate(doses_, workspace_, scratch_, figures_);
      const Rating rating = ground_.rate(figures_, strictness_);
      if (!out(rating, figures_, each.recipe)) collector_.add(entry_of(each.recipe, rating, figures_));
    }
    waiting_.clear();
  }

  [[nodiscard]] bool out(const Rating& rating, const FigureRanges& figures, const WholeRecipe& recipe) const {
    return rating.broken != 0 || !rating.within_stock ||
           collector_.excludes(key_of(rating.score.low, figures.price, false), recipe);
  }

  const Ground& ground_;
  const std::vector<PartPatterns>& patterns_;
  Strictness strictness_;
  Collector collector_;
  const SearchControl& control_;
  ProgressCounter& progress_;
  SubsetBounds bounds_;
  bool bounds_figures_;
  WholeRecipe recipe_;
  std::vector<Waiting> waiting_;
  std::vector<Dose> doses_;
  MixEvaluator::Workspace workspace_;
  RecipeFigures scratch_;
  FigureRanges figures_;
  SliceResult result_;
};

/// One walk over the whole space with `listed` distinct recipes kept below the limit.
struct Pass {
  std::vector<Entry> pool;
  Limit limit;
  std::uint64_t examined = 0;
  std::uint64_t excluded = 0;
  bool stopped = false;
};

Pass walk_once(const BoundTables& tables, std::span<const CandidateSet> sets, const std::vector<PartPatterns>& patterns, Strictness strictness,
               std::size_t listed, const SearchControl& control, ProgressCounter& progress) {
  const std::vector<int>& ranks = tables.ground().name_ranks();
  Pass pass;
  std::size_t done = 0;
  for (std::size_t round = first_round; done < slices && !pass.stopped; round *= 3) {
    const std::size_t count = std::min(round, slices - done);
    std::vector<SliceResult> results(count);
    control.runner(count, [&](std::size_t i) {
      SliceSearch search(tables, patterns, strictness, Collector(ranks, listed, pass.pool, pass.limit), control, progress);
      results[i] = search.run(sets, sets.size() * done / slices + i, sets.size() * (done + count) / slices, count);
    });
    Limit lowest = pass.limit;
    for (SliceResult& result : results) {
      pass.pool.insert(pass.pool.end(), result.found.begin(), result.found.end());
      pass.examined += result.examined;
      pass.excluded += result.excluded;
      pass.stopped = pass.stopped || result.stopped;
      if (result.limit.is_set && !lowest.excludes(result.limit.key, result.limit.recipe, ranks)) lowest = result.limit;
    }
    const std::vector<Entry> none;
    Collector merged(ranks, listed, none, lowest);
    for (const Entry& entry : pass.pool)
      if (!merged.excludes(entry.low, entry.recipe)) merged.add(entry);
    std::vector<Entry> kept = merged.finish();
    pass.limit = merged.limit();
    pass.pool = std::move(kept);
    done += count;
  }
  return pass;
}

/// A recipe's place in the order and the figures it stands on; no place where a hard wish or the stock excludes it.
struct PlacedRecipe {
  std::optional<Entry> entry;
  std::shared_ptr<const WorkedOut> worked_out;
};

PlacedRecipe exact_place(const Ground& ground, const WholeRecipe& recipe, Strictness strictness) {
  PlacedRecipe placed;
  placed.worked_out = std::make_shared<const WorkedOut>(ground.worked_out(doses_of(recipe)));
  const FigureRanges& figures = placed.worked_out->figures;
  const Rating rating = ground.rate(figures, strictness);
  if (rating.broken == 0 && rating.within_stock) placed.entry = entry_of(recipe, rating, figures);
  return placed;
}

struct FirstDistinct {
  std::vector<WholeRecipe> recipes;
  std::vector<std::shared_ptr<const WorkedOut>> worked_out;
};

/// Takes recipes in their order, working out exactly only those whose place matters. Empty where the pool's limit cut the list.
std::optional<FirstDistinct> first_distinct(const Ground& ground, const Pass& pass, Strictness strictness, std::size_t wanted,
                                                       const SearchControl& control) {
  const std::vector<int>& ranks = ground.name_ranks();
  // Those that will most likely be asked for are worked out side by side.
  const std::vector<Entry> likely = distinct_first(pass.pool, wanted, ranks);
  std::vector<PlacedRecipe> known(likely.size());
  control.runner(likely.size(), [&](std::size_t i) { known[i] = exact_place(ground, likely[i].recipe, strictness); });
  const auto exactly = [&](const WholeRecipe& recipe) {
    const auto found = std::ranges::find(likely, recipe, &Entry::recipe);
    return found != likely.end() ? known[static_cast<std::size_t>(found - likely.begin())] : exact_place(ground, recipe, strictness);
  };
  struct Open {
    FigureKey key;
    bool settled;
    WholeRecipe recipe;
    std::shared_ptr<const WorkedOut> worked_out;
  };
  const auto later = [&](const Open& a, const Open& b) {
    if (const auto order = a.key <=> b.key; order != 0) return order > 0;
    if (a.recipe == b.recipe) return a.settled < b.settled;
    return comes_before(b.recipe, a.recipe, ranks);
  };
  std::priority_queue<Open, std::vector<Open>, decltype(later)> queue(later);
  for (const Entry& entry : pass.pool) queue.push({entry.low, entry.low == entry.high && !entry.doubtful, entry.recipe, nullptr});
  FirstDistinct first;
  while (!queue.empty() && first.recipes.size() < wanted) {
    const Open open = queue.top();
    queue.pop();
    // What is listed already stands before everything that is still open.
    if (!std::ranges::all_of(first.recipes, [&](const WholeRecipe& better) { return distinct(better, open.recipe); })) continue;
    if (pass.limit.excludes(open.key, open.recipe, ranks)) return std::nullopt;
    if (open.settled) {
      first.recipes.push_back(open.recipe);
      first.worked_out.push_back(open.worked_out);
    } else if (const PlacedRecipe exact = exactly(open.recipe); exact.entry) {
      queue.push({exact.entry->low, true, open.recipe, exact.worked_out});
    }
  }
  if (first.recipes.size() < wanted && pass.limit.is_set) return std::nullopt;
  return first;
}

}  // namespace

SubsetWalk::SubsetWalk(int candidates, int components, std::size_t slice, std::size_t slice_count)
    : candidates_(candidates), components_(std::min(components, candidates)), slices_(slice_count), index_(slice) {}

bool SubsetWalk::next() {
  if (begun_) index_ += slices_;
  begun_ = true;
  while (chosen_ <= components_) {
    const std::uint64_t count = subset_count(candidates_, chosen_);
    if (index_ < count) {
      subset_ = subset_at(candidates_, chosen_, index_);
      return true;
    }
    index_ -= count;
    ++chosen_;
  }
  return false;
}

std::vector<PartPatterns> part_patterns(int components, int total) {
  std::vector<PartPatterns> patterns;
  for (int c = 1; c <= components; ++c) patterns.emplace_back(c, total);
  return patterns;
}

std::optional<Entry> exact_entry(const Ground& ground, const WholeRecipe& recipe, Strictness strictness) {
  return exact_place(ground, recipe, strictness).entry;
}

WholeSearchResult search_whole(const BoundTables& tables, const RecipeForm& form, Strictness strictness, std::size_t wanted,
                               const SearchControl& control, int stage) {
  const std::vector<PartPatterns> patterns = part_patterns(form.components, form.total);
  const std::vector<CandidateSet> sets = sets_by_promise(tables, form, patterns, strictness, control);
  const std::uint64_t whole = recipe_count(static_cast<int>(tables.ground().size()), form.components, form.total);
  WholeSearchResult result;
  // A better recipe found late can displace several listed ones; then the limit was too low and the walk is made again with
  // more to spare.
  for (std::size_t listed = wanted + 3;; listed = listed < 4 * wanted ? 4 * wanted : std::numeric_limits<std::size_t>::max()) {
    ProgressCounter progress(control, stage, whole);
    Pass pass = walk_once(tables, sets, patterns, strictness, listed, control, progress);
    result.examined = pass.examined;
    result.excluded = pass.excluded;
    result.stopped = pass.stopped;
    if (pass.stopped) pass.limit = {};
    auto first = first_distinct(tables.ground(), pass, strictness, wanted, control);
    if (!first) continue;
    result.recipes = std::move(first->recipes);
    result.worked_out = std::move(first->worked_out);
    result.pool = std::move(pass.pool);
    result.proven = !pass.stopped;
    return result;
  }
}

}  // namespace gritwright::recipe_search
