#include "gritwright/workbook/trace.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "inside.hpp"
#include "record_index.hpp"

namespace gritwright {

namespace {

/// Later than every day: a record as it is now.
constexpr const char* today_or_later = "9999";

/// Unknown days rule nothing out.
bool not_after(const std::string& a, const std::string& b) { return a.empty() || b.empty() || a <= b; }

/// Ids are the same in capitals and small letters.
struct AnyCase {
  bool operator()(const RecordRef& a, const RecordRef& b) const {
    return a.kind != b.kind ? a.kind < b.kind : sqlite3_stricmp(a.id.c_str(), b.id.c_str()) < 0;
  }
};

struct Passage {
  std::string role;
  RecordRef to;
  std::string day;
  std::string until;
  bool certain = true;
};

/// What came about by it is of nothing else, whatever day stands at either: only what its source held that day is asked of the days.
bool makes_anew(const Passage& passage) { return passage.role == "screened" || passage.role == "mixed" || passage.role == "reclaimed"; }

/// When grain can be at a record. Forward: from `entered` to `leaves_by` (empty: no end, or not known). Back: it was in there by
/// `entered` (empty: not known when).
struct State {
  std::string entered;
  std::string leaves_by;
  bool certain = true;
};

class Walk {
 public:
  Walk(OpenWorkbook::Inside& inside, TraceDirection direction) : inside_(inside), forward_(direction == TraceDirection::forward) {
    trace_.direction = direction;
  }

  Trace run(const RecordRef& start) {
    add({start, {}, {}, {}, {}, {}, {}, true, false}, State{forward_ ? "" : today_or_later, "", true});
    for (std::size_t i = 0; i < trace_.steps.size(); ++i) {
      const TraceStep here = trace_.steps[i];
      const State state = states_[i];
      std::vector<Passage> onward = passages(here.ref, forward_);
      keep_what_days_allow(onward, here.ref, state);
      for (const Passage& passage : onward) {
        TraceStep step{passage.to, {}, {}, passage.role, i, passage.day, passage.until, state.certain && passage.certain, false};
        State next = after(state, passage);
        next.certain = step.certain;
        if (!known_already(step.ref, next)) add(std::move(step), std::move(next));
      }
    }
    return each_once();
  }

 private:
  std::vector<Passage> passages(const RecordRef& ref, bool forward) {
    static const std::string to = std::string("SELECT role, to_kind, to_id, day, until, certain FROM link WHERE from_kind = ?1 AND from_id = ?2 AND ") + is_flow;
    static const std::string from = std::string("SELECT role, from_kind, from_id, day, until, certain FROM link WHERE to_kind = ?1 AND to_id = ?2 AND ") + is_flow;
    Query found = inside_.query(forward ? to : from);
    found.with(std::string(kind_name(ref.kind)), ref.id);
    std::vector<Passage> passages;
    while (found.step()) {
      const auto kind = kind_named(found.text(1));
      if (kind) passages.push_back({found.text(0), {*kind, found.text(2)}, found.text(3), found.text(4), found.whole(5) != 0});
    }
    drop_what_a_bin_tells_better(passages, ref, forward);
    drop_what_a_day_gave_back(passages, ref, forward);
    return passages;
  }

  /// A line of the ledger knows that grain went into a bin; the bin's contents know beside what, and until when.
  static void drop_what_a_bin_tells_better(std::vector<Passage>& passages, const RecordRef& ref, bool forward) {
    std::set<RecordRef> told;
    for (const Passage& passage : passages)
      if (passage.role == "tipped") told.insert(passage.to);
    std::erase_if(passages, [&](const Passage& passage) {
      const RecordKind receiver = forward ? passage.to.kind : ref.kind;
      return passage.role == "used" && receiver == RecordKind::bin && told.contains(passage.to);
    });
  }

  /// What a day took of a bag and gave back to it went nowhere, so between the two their lines count together. A holder that got more of a day
  /// than it gave has grain of the day's others, but for a tub whose parts are known: they tell which.
  void drop_what_a_day_gave_back(std::vector<Passage>& passages, const RecordRef& ref, bool forward) {
    const bool is_day = ref.kind == RecordKind::repotting_day;
    const auto of_a_day = [&](const Passage& passage) { return passage.role == "used" && (is_day || passage.to.kind == RecordKind::repotting_day); };
    if (std::ranges::none_of(passages, of_a_day)) return;
    constexpr std::int64_t rounding = 1000;  // each line is a whole number of micrograms
    const auto got = got_in_all(ref);
    const bool to_the_day = forward != is_day;
    std::erase_if(passages, [&](const Passage& passage) {
      if (!of_a_day(passage)) return false;
      const auto found = got.find(passage.to);
      const std::int64_t micrograms = found == got.end() ? 0 : found->second;
      return to_the_day ? micrograms >= -rounding : micrograms <= rounding || has_known_parts(is_day ? passage.to : ref);
    });
    for (Passage& passage : passages)
      if (!to_the_day && of_a_day(passage)) passage.certain = false;
  }
  /// By the other end, what the holder of the ledger's lines between it and `ref` got.
  std::map<RecordRef, std::int64_t, AnyCase> got_in_all(const RecordRef& ref) {
    Query lines = inside_.query(
        "SELECT l.to_kind, l.to_id, s.micrograms FROM link l JOIN stock s ON s.number = l.owner WHERE l.from_kind = ?1 AND l.from_id = ?2 AND l.role = 'used'"
        " UNION ALL SELECT l.from_kind, l.from_id, s.micrograms FROM link l JOIN stock s ON s.number = l.owner"
        " WHERE l.to_kind = ?1 AND l.to_id = ?2 AND l.role = 'used'");
    lines.with(std::string(kind_name(ref.kind)), ref.id);
    std::map<RecordRef, std::int64_t, AnyCase> got;
    while (lines.step())
      if (const auto kind = kind_named(lines.text(0))) got[{*kind, lines.text(1)}] += lines.whole(2);
    return got;
  }
  bool has_known_parts(const RecordRef& tub) {
    return inside_.query("SELECT 1 FROM link WHERE to_kind = ?1 AND to_id = ?2 AND role = 'mixed' AND from_kind <> 'mix'").with(std::string(kind_name(tub.kind)), tub.id).step();
  }

  /// Grain that is said to come out of a bin in which nothing lay by its days came out of it nevertheless: then any of it may be what it was.
  void keep_what_days_allow(std::vector<Passage>& onward, const RecordRef& ref, const State& state) {
    const auto against = [&](const Passage& passage) { return !feasible(state, passage); };
    if (ref.kind != RecordKind::bin) {
      std::erase_if(onward, against);
      return;
    }
    if (!forward_) {
      if (std::ranges::all_of(onward, against)) {
        for (Passage& passage : onward) passage.certain = false;
      } else {
        std::erase_if(onward, against);
      }
      return;
    }
    if (std::ranges::none_of(onward, against)) return;
    const std::vector<Passage> inward = passages(ref, false);
    std::erase_if(onward, [&](Passage& passage) {
      if (!against(passage)) return false;
      passage.certain = false;
      return std::ranges::any_of(inward, [&](const Passage& in) { return not_after(in.day, passage.day) && not_after(passage.day, in.until); });
    });
  }
  bool feasible(const State& state, const Passage& passage) const {
    if (!forward_ && makes_anew(passage)) return true;
    // Grain that is taken out on the day a bin is noted empty, or a tree repotted, was still in it.
    if (forward_) return not_after(state.entered, passage.day) && not_after(passage.day, state.leaves_by);
    return not_after(passage.day, state.entered) && not_after(state.entered, passage.until);
  }
  State after(const State& state, const Passage& passage) const {
    State next;
    next.leaves_by = forward_ ? passage.until : "";
    next.entered = passage.day.empty() ? (forward_ ? state.entered : "") : passage.day;
    if (forward_ && makes_anew(passage)) next.entered.clear();
    return next;
  }

  /// Nothing can be found from `state` that an earlier visit did not find, as surely.
  bool known_already(const RecordRef& ref, const State& state) const {
    const auto visits = visited_.find(ref);
    if (visits == visited_.end()) return false;
    return std::ranges::any_of(visits->second, [&](std::size_t index) {
      const State& other = states_[index];
      if (state.certain && !other.certain) return false;
      if (!forward_) return other.entered.empty() || (!state.entered.empty() && other.entered >= state.entered);
      const bool as_early = other.entered.empty() || (!state.entered.empty() && other.entered <= state.entered);
      const bool as_long = other.leaves_by.empty() || (!state.leaves_by.empty() && other.leaves_by >= state.leaves_by);
      return as_early && as_long;
    });
  }
  void add(TraceStep step, State state) {
    visited_[step.ref].push_back(trace_.steps.size());
    trace_.steps.push_back(std::move(step));
    states_.push_back(std::move(state));
  }

  /// How good a visit tells of grain that is at a record: there now before gone, sure before unsure.
  static int rank(const TraceStep& step) {
    return (step.until.empty() ? 4 : 0) + (step.certain ? 2 : 0) + (step.role == "remains" ? 0 : 1);
  }

  /// A record once, by its best visit. The visits on the way there stand under the record's best one.
  Trace each_once() {
    std::map<RecordRef, std::size_t> best;
    for (std::size_t i = 0; i < trace_.steps.size(); ++i) {
      const auto [found, is_new] = best.emplace(trace_.steps[i].ref, i);
      if (!is_new && found->second != 0 && rank(trace_.steps[i]) > rank(trace_.steps[found->second])) found->second = i;
    }
    // A better visit may come later than what was reached through a worse one, so the order is made anew from the start.
    std::map<std::size_t, std::vector<std::size_t>> below;
    std::vector<std::size_t> order{0};
    std::vector<std::optional<std::size_t>> place(trace_.steps.size());
    std::vector<std::size_t> parent(trace_.steps.size(), 0);
    for (const auto& [ref, index] : best) {
      if (index == 0) continue;
      parent[index] = best.at(trace_.steps[*trace_.steps[index].from].ref);
      below[parent[index]].push_back(index);
    }
    for (auto& [from, indices] : below) std::ranges::sort(indices);
    Trace answer;
    answer.direction = trace_.direction;
    for (std::size_t at = 0; at < order.size(); ++at) {
      const std::size_t index = order[at];
      place[index] = answer.steps.size();
      TraceStep step = std::move(trace_.steps[index]);
      if (index != 0) step.from = place[parent[index]];
      describe(step);
      answer.steps.push_back(std::move(step));
      if (const auto next = below.find(index); next != below.end()) order.insert(order.end(), next->second.begin(), next->second.end());
    }
    return answer;
  }

  void describe(TraceStep& step) {
    Query found = inside_.query("SELECT title, subject, body IS NULL FROM record WHERE kind = ?1 AND id = ?2");
    found.with(std::string(kind_name(step.ref.kind)), step.ref.id);
    // Named by a record, but never written down itself.
    if (!found.step()) return;
    step.title = found.text(0);
    step.subject = found.text(1);
    step.deleted = found.whole(2) != 0;
  }

  OpenWorkbook::Inside& inside_;
  bool forward_;
  Trace trace_;
  std::vector<State> states_;
  std::map<RecordRef, std::vector<std::size_t>> visited_;
};

}  // namespace

Result<Trace> trace(const OpenWorkbook& workbook, const RecordRef& start, TraceDirection direction) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&]() -> Result<Trace> {
    const auto row = inside.row(start);
    if (!row) return Problem{"workbook.not-there", {}, {{"kind", std::string(kind_name(start.kind))}, {"id", start.id}}};
    return Walk(inside, direction).run({start.kind, row->id});
  });
}

Result<RecallList> recall_list(const OpenWorkbook& workbook, const RecordRef& start) {
  const Result<Trace> walked = trace(workbook, start, TraceDirection::forward);
  if (!walked) return walked.problems();
  RecallList list;
  list.of = walked->steps.front().ref;
  list.title = walked->steps.front().title;
  for (const TraceStep& step : walked->steps) {
    const bool is_tree = step.ref.kind == RecordKind::tree;
    const bool holds = step.ref.kind == RecordKind::bag || step.ref.kind == RecordKind::bin || step.ref.kind == RecordKind::fraction ||
                       step.ref.kind == RecordKind::batch;
    if (!is_tree && !holds) continue;
    RecallRow row;
    row.ref = step.ref;
    row.name = step.title;
    row.species = step.subject;
    row.certain = step.certain;
    row.day = step.day;
    row.until = step.until;
    row.deleted = step.deleted;
    row.standing = !step.until.empty() ? Standing::was : step.role == "remains" ? Standing::may_remain : Standing::now;
    for (const TraceStep* at = &step;; at = &walked->steps[*at->from]) {
      row.way.insert(row.way.begin(), at->ref);
      if (!at->from) break;
    }
    if (!is_tree) {
      row.stock = workbook.stock_of(step.ref);
      list.holders.push_back(std::move(row));
      continue;
    }
    if (const auto tree = workbook.find_even_deleted(step.ref)) {
      const auto& record = std::get<Tree>(tree->record);
      row.name = record.name;
      row.species = record.species;
      row.condition = condition_now(record);
      const auto potted = std::ranges::find(record.repottings, step.day, &Repotting::day);
      if (potted != record.repottings.end()) {
        row.mix = potted->mix ? potted->mix->text : "";
        row.container = potted->container ? potted->container->text : "";
      }
    }
    list.trees.push_back(std::move(row));
  }
  std::ranges::stable_sort(list.trees, [](const RecallRow& a, const RecallRow& b) {
    return a.standing != b.standing ? a.standing < b.standing : a.certain != b.certain ? a.certain : a.name < b.name;
  });
  return list;
}

}  // namespace gritwright
