#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "gritwright/workbook/trace.hpp"

namespace gritwright {

namespace {

struct Seen {
  std::string value;
  std::string title;
  std::optional<RecordRef> ref;
  bool certain = true;
};

/// What is known of one tree, by trait.
using Known = std::map<TraitSort, std::vector<Seen>>;

std::optional<double> depth_in_cm(const OpenWorkbook& workbook, const Repotting& last) {
  if (last.filled_depth) return in_cm(*last.filled_depth);
  if (!last.container) return std::nullopt;
  const auto container = workbook.find(*last.container);
  if (!container) return std::nullopt;
  return in_cm(container->record.container.depth) - in_cm(container->record.container.freeboard);
}

std::string tenths(double share) {
  const int step = std::min(static_cast<int>(std::floor(share * 10 + 1e-9)), 9);
  return std::to_string(step * 10) + "-" + std::to_string((step + 1) * 10) + " %";
}

Known known_of(const OpenWorkbook& workbook, const Stored<Tree>& tree) {
  Known known;
  if (const Result<Trace> walked = trace(workbook, ref_to(tree.id), TraceDirection::back)) {
    for (const TraceStep& step : walked->steps)
      if (step.ref.kind == RecordKind::bag) known[TraitSort::lot].push_back({step.ref.id, step.title, step.ref, step.certain});
  }
  const Repotting* last = stands_in(tree.record);
  if (last == nullptr) return known;
  known[TraitSort::day].push_back({last->day, {}, {}, true});
  if (last->mix) {
    const auto mix = workbook.find_even_deleted(ref_to(*last->mix));
    const std::string name = mix ? std::get<MixVersion>(mix->record).mix.name : std::string();
    known[TraitSort::mix].push_back({last->mix->text, name, ref_to(*last->mix), true});
  }
  if (const auto depth = depth_in_cm(workbook, *last))
    known[TraitSort::depth].push_back({std::to_string(std::lround(*depth)) + " cm", {}, {}, true});
  if (!last->plan_name.empty()) known[TraitSort::plan].push_back({last->plan_name, {}, {}, true});
  if (last->removed_share) known[TraitSort::removed_share].push_back({tenths(last->removed_share->value()), {}, {}, true});
  return known;
}

}  // namespace

Result<SharedTraits> shared_traits(const OpenWorkbook& workbook, std::optional<std::vector<Id<Tree>>> trees) {
  const std::vector<Stored<Tree>> all = workbook.all<Tree>();
  std::set<std::string> wanted;
  Problems problems;
  if (trees) {
    for (const Id<Tree>& id : *trees) {
      // Ids are the same in capitals and small letters.
      if (const auto found = workbook.find(ref_to(id)))
        wanted.insert(found->ref.id);
      else
        problems.push_back({"workbook.not-there", {}, {{"kind", std::string("tree")}, {"id", id.text}}});
    }
  } else {
    for (const Stored<Tree>& tree : all)
      if (condition_now(tree.record) == Condition::sick) wanted.insert(tree.id.text);
  }
  if (!problems.empty()) return problems;
  if (wanted.empty()) return Problem{"trace.no-sick-tree", {}, {}};

  std::map<std::pair<TraitSort, std::string>, SharedTrait> counted;
  std::map<TraitSort, std::pair<std::size_t, std::size_t>> known_by;
  SharedTraits answer;
  for (const bool asked : {true, false}) {
    for (const Stored<Tree>& tree : all) {
      if (wanted.contains(tree.id.text) != asked) continue;
      if (asked) answer.trees.push_back(ref_to(tree.id));
      for (const auto& [sort, values] : known_of(workbook, tree)) {
        ++(asked ? known_by[sort].first : known_by[sort].second);
        for (const Seen& seen : values) {
          const auto at = counted.find({sort, seen.value});
          if (!asked) {
            if (at != counted.end()) ++at->second.others;
            continue;
          }
          SharedTrait& trait = counted[{sort, seen.value}];
          trait.sort = sort;
          trait.value = seen.value;
          trait.title = seen.title;
          trait.ref = seen.ref;
          ++trait.count;
          if (!seen.certain) ++trait.uncertain;
        }
      }
    }
  }
  for (auto& [key, trait] : counted) {
    std::tie(trait.among, trait.others_among) = known_by[trait.sort];
    answer.traits.push_back(std::move(trait));
  }
  const auto among_others = [](const SharedTrait& trait) {
    return trait.others_among == 0 ? 0.0 : static_cast<double>(trait.others) / static_cast<double>(trait.others_among);
  };
  std::ranges::stable_sort(answer.traits, [&](const SharedTrait& a, const SharedTrait& b) {
    return a.count != b.count ? a.count > b.count : among_others(a) < among_others(b);
  });
  return answer;
}

}  // namespace gritwright
