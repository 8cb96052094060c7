#include "gritwright/models/day_litres.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

#include "day_lifts.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/placing_experience.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "grain_shelf.hpp"

namespace gritwright {

namespace {

constexpr double no_need_l = 1e-9;
constexpr std::size_t trees_that_may_go_worse = 2;
constexpr double scoop_step = 0.25;

double losses(const MixOfDay& mix) { return (1 - mix.settling.value()) * (1 - mix.spill.value()); }

class DayWork {
 public:
  explicit DayWork(const PlannedDay& day) : day_(day) {}

  DayAnswer work() {
    for (const auto& [name, pot] : day_.pots) pots_.emplace(name, PotGeometry(pot));
    read_mixes();
    fill_trees();
    for (std::size_t mix = 0; mix < answer_.mixes.size(); ++mix) add_up(mix);
    add_layers();
    add_up_components();
    lift();
    order();
    warn_outside_windows();
    warn_of_pots_shared();
    GrainShelf shelf(day_);
    for (const GrainLitres& grain : answer_.components) shelf.take(grain);
    shelf.hand_over(answer_);
    return std::move(answer_);
  }

 private:
  void note(const char* code, Level level, std::string where, Facts facts = {}) {
    answer_.notes.push_back({code, level, std::move(where), std::move(facts)});
  }

  void read_mixes() {
    const PlacingExperience learnt = placing_experience(day_.filled_before, day_.emptied_before);
    for (const DayMix& planned : day_.mixes) {
      Mix mix = planned.mix;
      MixOfDay of_day;
      of_day.name = planned.name;
      of_day.version = planned.version;
      if (!mix.settling) mix.settling = learnt.settling;
      if (!mix.spill) mix.spill = learnt.spill;
      of_day.settling = counted_settling(mix);
      of_day.spill = counted_spill(mix);
      tell_where_losses_come_from(planned, of_day, learnt);
      if (planned.deleted)
        note("day.mix-deleted", Level::warning, planned.name);
      else if (planned.version && planned.newest_version && *planned.newest_version > *planned.version)
        note("day.mix-edited", Level::warning, planned.name,
             {{"version", static_cast<double>(*planned.version)}, {"newest", static_cast<double>(*planned.newest_version)}});
      auto state = mix_state(mix);
      if (state) {
        of_day.shrinkage = state->shrinkage;
        for (Note& each : Notes(state->notes)) {
          // Neither says anything about litres or weights.
          if (each.code == "mix.no-cation-exchange" || each.code == "mix.open-pores-only") continue;
          each.where = each.where.empty() ? planned.name : planned.name + ", " + each.where;
          answer_.notes.push_back(std::move(each));
        }
        states_.emplace_back(std::move(state).value());
      } else {
        // Only a settling that leaves no voids comes here: everything else is what check(day) found.
        for (const Problem& problem : state.problems()) note(problem.code.c_str(), Level::warning, planned.name, problem.facts);
        states_.emplace_back();
      }
      answer_.mixes.push_back(std::move(of_day));
    }
  }

  void tell_where_losses_come_from(const DayMix& planned, const MixOfDay& mix, const PlacingExperience& learnt) {
    const auto tell = [&](bool given, bool known, const char* learnt_code, const char* none_code, double share, std::size_t count) {
      if (given) return;
      if (known)
        note(learnt_code, Level::note, planned.name, {{"percent", share * 100}, {"count", static_cast<double>(count)}});
      else
        note(none_code, Level::note, planned.name);
    };
    tell(planned.mix.settling.has_value(), learnt.settling.has_value(), "day.settling-learnt", "day.no-settling", mix.settling.value(), learnt.settlings.size());
    tell(planned.mix.spill.has_value(), learnt.spill.has_value(), "day.spill-learnt", "day.no-spill", mix.spill.value(), learnt.spills.size());
  }

  std::size_t mix_of(const PlannedTree& tree) const {
    return static_cast<std::size_t>(std::ranges::find(day_.mixes, tree.mix, &DayMix::name) - day_.mixes.begin());
  }

  void fill_trees() {
    for (std::size_t i = 0; i < day_.trees.size(); ++i) {
      const PlannedTree& tree = day_.trees[i];
      TreeOfDay filled;
      filled.tree = i;
      filled.whole_pot = !tree.fill;
      filled.fill = tree.fill ? *tree.fill : pots_.at(tree.pot).main_mix_volume();
      for (const PotVolume& worse : tree.worse_fills) filled.worse_by = std::max(filled.worse_by, worse - filled.fill);
      const MixOfDay& mix = answer_.mixes[mix_of(tree)];
      filled.poured = mixed_volume_to_fill(filled.fill, mix.settling, mix.spill);
      if (day_.scoop) filled.scoops = rounded_up(in_l(filled.poured) / in_l(*day_.scoop), scoop_step);
      if (filled.whole_pot) note("day.whole-pot", Level::note, tree.name, {{"volume_l", in_ml(filled.fill) / 1000}});
      answer_.trees.push_back(filled);
    }
  }

  void add_up(std::size_t index) {
    MixOfDay& mix = answer_.mixes[index];
    std::vector<std::size_t> trees;
    double scoops = 0;
    for (const TreeOfDay& tree : answer_.trees) {
      if (mix_of(day_.trees[tree.tree]) != index) continue;
      mix.fill = mix.fill + tree.fill;
      scoops += tree.scoops.value_or(0);
      if (tree.worse_by > PotVolume{}) trees.push_back(tree.tree);
    }
    std::ranges::stable_sort(trees, std::greater{}, [&](std::size_t tree) { return answer_.trees[tree].worse_by; });
    if (trees.size() > trees_that_may_go_worse) trees.resize(trees_that_may_go_worse);
    for (const std::size_t tree : trees) mix.reserve = mix.reserve + answer_.trees[tree].worse_by;
    mix.reserve_trees = trees;
    mix.needed = mixed_volume_to_fill(mix.fill + mix.reserve, mix.settling, mix.spill);
    measure_out(index, scoops);
  }

  /// Litres of the components, and batches that also cover the quarters of a scoop that each tree was rounded up by.
  void measure_out(std::size_t index, double tree_scoops) {
    MixOfDay& mix = answer_.mixes[index];
    const Mix& recipe = day_.mixes[index].mix;
    const auto volumes = states_[index] ? component_volumes(mix.needed, *states_[index]) : std::nullopt;
    if (!volumes) return;
    for (std::size_t k = 0; k < recipe.components.size(); ++k) {
      const Component& component = recipe.components[k];
      mix.components.push_back({component.name, component.material.value_or(""), (*volumes)[k], (*volumes)[k],
                                (*volumes)[k] * dry_bulk_density(component.grain)});
    }
    if (in_l(mix.needed) <= no_need_l) return;
    MixedVolume to_make = mix.needed;
    if (day_.scoop) {
      const double reserve_l = in_l(mixed_volume_to_fill(mix.reserve, mix.settling, mix.spill));
      to_make = std::max(to_make, mixed_l(tree_scoops * in_l(*day_.scoop) + reserve_l));
    }
    BatchTask task;
    task.loose = *component_volumes(to_make, *states_[index]);
    for (const Component& component : recipe.components) task.parts.push_back(component.parts.value());
    task.shrinkage = *mix.shrinkage;
    task.tub = day_.tub;
    task.scoop = day_.scoop;
    mix.batches = tub_batches(task);
    for (std::size_t k = 0; k < mix.components.size(); ++k) mix.components[k].ready = mix.batches->loose[k];
    mix.left_over = mixed_l(std::max(0.0, in_l(mix.batches->made) - in_l(mixed_volume_to_fill(mix.fill, mix.settling, mix.spill))));
    constexpr double much_off_recipe = 0.05;
    if (mix.batches->off_recipe > much_off_recipe) note("day.batch-off-recipe", Level::warning, mix.name, {{"percent", mix.batches->off_recipe * 100}});
    for (std::size_t k = 0; k < task.parts.size(); ++k) {
      const auto without = std::ranges::count_if(mix.batches->batches, [&](const TubBatch& batch) { return !(in_l(batch.loose[k]) > 0); });
      if (task.parts[k] > 0 && without > 0)
        note("day.batch-lacks-grain", Level::warning, mix.name,
             {{"grain", recipe.components[k].name}, {"without", static_cast<double>(without)}, {"batches", static_cast<double>(mix.batches->batches.size())}});
    }
  }

  void add_layers() {
    for (TreeOfDay& of_day : answer_.trees) {
      const PlannedTree& tree = day_.trees[of_day.tree];
      const MixOfDay& mix = answer_.mixes[mix_of(tree)];
      const auto add_layer = [&](const std::string& grain, const std::string& material, PotVolume volume, std::optional<BulkDensity> density) {
        if (in_ml(volume) <= 0) return;
        const LooseVolume loose = loose_l(in_ml(volume) / 1000 / losses(mix));
        GrainLitres layer{grain, material, loose, loose, {}};
        if (density) layer.dry_mass = loose * *density;
        of_day.layers.push_back(std::move(layer));
      };
      for (const GrainLayer& layer : tree.layers) add_layer(layer.grain, "", layer.volume, layer.bulk_density);
      const auto pot = pots_.find(tree.pot);
      if (pot == pots_.end()) continue;
      const std::optional<BottomLayer>& bottom = pot->second.container().bottom_layer;
      if (bottom && bottom->component)
        add_layer(bottom->component->name, bottom->component->material.value_or(""), pot->second.bottom_layer_volume(),
                  dry_bulk_density(bottom->component->grain));
      else if (bottom && in_ml(pot->second.bottom_layer_volume()) > 0)
        note("day.layer-of-unknown-grain", Level::note, tree.name, {{"volume_l", in_ml(pot->second.bottom_layer_volume()) / 1000}});
      if (tree.top_dressing.empty() && in_ml(pot->second.top_dressing_volume()) > 0)
        note("day.layer-of-unknown-grain", Level::note, tree.name, {{"volume_l", in_ml(pot->second.top_dressing_volume()) / 1000}});
      else
        add_layer(tree.top_dressing, "", pot->second.top_dressing_volume(), density_on_shelf(tree.top_dressing));
    }
  }

  std::optional<BulkDensity> density_on_shelf(const std::string& grain) const {
    const auto supply = std::ranges::find_if(day_.shelf, [&](const GrainSupply& each) { return each.bulk_density && (each.bag == grain || each.material == grain); });
    return supply == day_.shelf.end() ? std::nullopt : supply->bulk_density;
  }

  void add_up_components() {
    for (const MixOfDay& mix : answer_.mixes)
      for (const GrainLitres& grain : mix.components) add_component(grain);
    for (const TreeOfDay& tree : answer_.trees)
      for (const GrainLitres& grain : tree.layers) add_component(grain);
  }

  void add_component(const GrainLitres& grain) {
    const auto known = std::ranges::find(answer_.components, grain.name, &GrainLitres::name);
    if (known == answer_.components.end()) {
      answer_.components.push_back(grain);
      return;
    }
    // Loose litres of one grain, so they do add up.
    known->loose = loose_l(in_l(known->loose) + in_l(grain.loose));
    known->ready = loose_l(in_l(known->ready) + in_l(grain.ready));
    if (known->material.empty()) known->material = grain.material;
    if (known->dry_mass && grain.dry_mass)
      *known->dry_mass += *grain.dry_mass;
    else
      known->dry_mass.reset();
  }

  void lift() {
    DayLifts lifts(day_, states_, pots_);
    for (const TreeOfDay& tree : answer_.trees) answer_.lifts.push_back(lifts.of_tree(tree.tree, mix_of(day_.trees[tree.tree]), tree.fill));
    for (std::size_t mix = 0; mix < answer_.mixes.size(); ++mix)
      if (auto tub = lifts.of_tub(mix, answer_.mixes[mix])) answer_.lifts.push_back(*std::move(tub));
    for (const Lift& each : answer_.lifts)
      if (each.mass > heavy_lift)
        note(each.complete ? "day.heavy-lift" : "day.heavy-lift-at-least", Level::note, each.what, {{"mass_kg", in_kg(each.mass)}});
  }

  void order() {
    for (std::size_t i = 0; i < answer_.trees.size(); ++i) answer_.order.push_back(i);
    std::ranges::stable_sort(answer_.order, [&](std::size_t a, std::size_t b) {
      for (const WorkKey key : day_.order) {
        const int order = compare(key, day_.trees[a], day_.trees[b]);
        if (order != 0) return order < 0;
      }
      return false;
    });
  }

  int compare(WorkKey key, const PlannedTree& a, const PlannedTree& b) const {
    switch (key) {
      case WorkKey::mix: {
        const std::size_t left = mix_of(a), right = mix_of(b);
        return left < right ? -1 : static_cast<int>(left > right);
      }
      case WorkKey::helper: return a.helper.compare(b.helper);
      case WorkKey::name: return a.name.compare(b.name);
      case WorkKey::bud: {
        // The farther the buds, the sooner; trees without a word for it come last.
        const auto left = bud_rank(a.bud), right = bud_rank(b.bud);
        if (left || right) return right.value_or(-1) - left.value_or(-1);
        if (a.bud.empty() != b.bud.empty()) return a.bud.empty() ? 1 : -1;
        return a.bud.compare(b.bud);
      }
    }
    return 0;
  }

  void warn_outside_windows() {
    if (!day_.day) return;
    const std::string month_and_day = day_.day->substr(5);
    for (const PlannedTree& tree : day_.trees) {
      const bool early = tree.window_opens && month_and_day < *tree.window_opens;
      const bool late = tree.window_closes && month_and_day > *tree.window_closes;
      // A window over the turn of the year is left only between its close and its opening.
      const bool over_new_year = tree.window_opens && tree.window_closes && *tree.window_closes < *tree.window_opens;
      if (over_new_year ? early && late : early || late)
        note("day.outside-window", Level::note, tree.name,
             {{"day", *day_.day}, {"opens", tree.window_opens.value_or("")}, {"closes", tree.window_closes.value_or("")}});
    }
  }

  /// Neither a record nor a file knows how many there are of a pot, so that this is asked, never refused.
  void warn_of_pots_shared() {
    for (const auto& [pot, geometry] : pots_) {
      std::string trees;
      std::size_t count = 0;
      for (const PlannedTree& tree : day_.trees) {
        if (tree.pot != pot) continue;
        if (count++ > 0) trees += ", ";
        trees += tree.name;
      }
      if (count > 1) note("day.pot-shared", Level::warning, pot, {{"trees", trees}});
    }
  }

  const PlannedDay& day_;
  std::map<std::string, PotGeometry> pots_;
  std::vector<std::optional<MixState>> states_;
  DayAnswer answer_;
};

}  // namespace

Result<DayAnswer> work_out(const PlannedDay& day) {
  if (auto problems = check(day); !problems.empty()) return problems;
  return DayWork(day).work();
}

}  // namespace gritwright
