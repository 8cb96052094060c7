#include "day_ticking.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <set>
#include <utility>

#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/root_history.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "record_book.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class TickText {
  Q_DECLARE_TR_FUNCTIONS(DayTicking)
};

/// Raw grain of one bag for one component.
struct RawGrain {
  RecordRef holder;
  LooseVolume raw;
  BulkDensity density;
};

/// Where the grain of a day's mixes comes from: the bags in the order they are to be used up, each as far as the day counts on it.
class DayGrain {
 public:
  /// As if nothing had been taken yet.
  DayGrain(const DayGround& ground, const DayAnswer& answer) : ground_(ground), answer_(answer) {}
  /// After what the day has booked already.
  DayGrain(const DayGround& ground, const DayAnswer& answer, const std::map<RecordRef, Mass>& booked) : DayGrain(ground, answer) {
    for (std::size_t i = 0; i < ground.shelf.size(); ++i) {
      const auto mass = booked.find(ground.shelf[i]);
      if (mass != booked.end() && ground.plan.shelf[i].bulk_density) taken_l_[i] = in_l(loose_volume(mass->second, *ground.plan.shelf[i].bulk_density));
    }
  }

  /// Raw grain of `mixed` litres of a mix of the day. Empty where litres can't be told apart.
  std::vector<RawGrain> take(std::size_t mix, MixedVolume mixed) {
    std::vector<RawGrain> grain;
    const Mix& recipe = ground_.plan.mixes[mix].mix;
    const auto state = mix_state(recipe);
    const auto litres = state ? component_volumes(mixed, *state) : std::nullopt;
    for (std::size_t k = 0; litres && k < recipe.components.size(); ++k) {
      const BulkDensity density = dry_bulk_density(recipe.components[k].grain);
      if (take_component(recipe.components[k].name, (*litres)[k], density, grain)) continue;
      if (const auto& source = ground_.mixes[mix].sources[k]) add(grain, {*source, (*litres)[k], density_of(*source).value_or(density)});
    }
    return grain;
  }

  /// Of a layer, as far as it stands on the shelf.
  std::vector<RawGrain> take_layer(const std::string& name, LooseVolume loose) {
    std::vector<RawGrain> grain;
    take_component(name, loose, {}, grain);
    return grain;
  }

 private:
  /// False where the day counts on no bag for it. `density` stands in where a bag's own is not known.
  bool take_component(const std::string& name, LooseVolume ready, const std::optional<BulkDensity>& density, std::vector<RawGrain>& grain) {
    double open_l = in_l(ready);
    const GrainTaken* last = nullptr;
    for (const GrainTaken& taken : answer_.taken) {
      if (taken.component != name) continue;
      last = &taken;
      open_l -= take_from(taken, std::min(open_l, left_l(taken)), density, grain);
    }
    // What went beyond the day's count came out of the bag that was open.
    if (last != nullptr) take_from(*last, open_l, density, grain);
    return last != nullptr;
  }

  static double yield_of(const GrainTaken& taken) { return taken.yield ? taken.yield->value() : 1; }

  /// Of what the day counts on from this bag, ready to use.
  [[nodiscard]] double left_l(const GrainTaken& taken) const {
    double counted_l = 0;
    for (const GrainTaken& one : answer_.taken) {
      if (one.supply == taken.supply) counted_l += in_l(one.raw);
    }
    const auto gone = taken_l_.find(taken.supply);
    return std::max(0.0, counted_l - (gone == taken_l_.end() ? 0 : gone->second)) * yield_of(taken);
  }

  [[nodiscard]] std::optional<BulkDensity> density_of(const RecordRef& source) const {
    const auto at = std::ranges::find(ground_.shelf, source);
    return at == ground_.shelf.end() ? std::nullopt : ground_.plan.shelf[static_cast<std::size_t>(at - ground_.shelf.begin())].bulk_density;
  }

  double take_from(const GrainTaken& taken, double ready_l, const std::optional<BulkDensity>& density, std::vector<RawGrain>& grain) {
    constexpr double no_grain_l = 1e-9;
    const auto of_bag = ground_.plan.shelf[taken.supply].bulk_density;
    if (ready_l <= no_grain_l || (!of_bag && !density)) return 0;
    const double raw_l = ready_l / yield_of(taken);
    taken_l_[taken.supply] += raw_l;
    add(grain, {ground_.shelf[taken.supply], loose_l(raw_l), of_bag ? *of_bag : *density});
    return ready_l;
  }

  static void add(std::vector<RawGrain>& grain, const RawGrain& more) {
    const auto same = std::ranges::find(grain, more.holder, &RawGrain::holder);
    if (same == grain.end()) return grain.push_back(more);
    same->raw = loose_l(in_l(same->raw) + in_l(more.raw));
  }

  const DayGround& ground_;
  const DayAnswer& answer_;
  std::map<std::size_t, double> taken_l_;  // raw, by supply
};

/// The notes of a tree's layers begin so, and end with the layer's grain.
std::string layers_note(const Id<Tree>& tree) { return tree.text + ", layers"; }
std::string layer_note(const Id<Tree>& tree, const std::string& grain) { return layers_note(tree) + ": " + grain; }

constexpr double no_grain_g = 1e-6;
/// Less is what whole micrograms leave over where lines were shared.
constexpr double some_grain_g = 1e-3;

/// What a day writes, with the lines that it has in the ledger already. A line's note tells who took the grain: the number of a tree or a tub,
/// or a layer of a tree. It is a key by which lines are found again, so it is never translated.
class DayBooking {
 public:
  DayBooking(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, std::string today) : workbook_(workbook), day_(ref_to(day.id)), today_(std::move(today)) {
    for (auto& entry : workbook.all<StockEntry>()) {
      if (entry.record.other != day_) continue;
      const StockEntry now = entry.record;
      lines_.push_back({now, std::move(entry)});
    }
  }

  void entry(const RecordRef& holder, StockReason reason, Mass mass, const std::string& note, std::optional<LooseVolume> measured = {}, std::optional<BulkDensity> density = {}) {
    StockEntry entry;
    entry.holder = holder;
    entry.reason = reason;
    entry.change = mass;
    entry.measured = measured;
    entry.density_used = density;
    entry.other = day_;
    entry.day = today_;
    entry.note = note;
    lines_.push_back({std::move(entry), {}});
  }

  void use(const RawGrain& grain, const std::string& note) {
    take_in(grain.holder);
    entry(grain.holder, StockReason::used, grain.raw * grain.density * -1.0, note, grain.raw, grain.density);
  }

  /// What has left the bags under a note, by bag.
  [[nodiscard]] std::map<RecordRef, Mass> booked_under(const std::string& note) const {
    return booked_where([&](const StockEntry& line) { return line.note == note; });
  }
  /// By mix and layers of a tree; bags that got all of theirs back have nothing.
  [[nodiscard]] std::map<RecordRef, Mass> booked_for(const Id<Tree>& tree) const {
    return booked_where([&](const StockEntry& line) { return line.note == tree.text || line.note.starts_with(layers_note(tree)); });
  }
  [[nodiscard]] std::map<RecordRef, Mass> booked_in_all() const {
    return booked_where([](const StockEntry&) { return true; });
  }

  /// Gives a share of what is booked under a note back to its bags.
  void give_back(const std::string& note, double share) {
    for (const auto& [holder, mass] : booked_under(note)) {
      if (in_g(mass * share) > no_grain_g) entry(holder, StockReason::returned, mass * share, note);
    }
  }

  /// From here on a share of what is booked under `from` is another's; no bag gives or gets anything.
  void hand_over(const std::vector<std::string>& from, const std::string& to, double share) {
    for (std::size_t i = 0, count = lines_.size(); i < count; ++i) {
      if (std::ranges::find(from, lines_[i].now.note) == from.end()) continue;
      const Mass stays = lines_[i].now.change * (1 - share);
      if (std::abs(in_g(stays)) <= no_grain_g) {
        lines_[i].now.note = to;
        continue;
      }
      StockEntry part = part_of(lines_[i].now, share);
      part.note = to;
      lines_[i].now = part_of(lines_[i].now, 1 - share);
      if (std::abs(in_g(part.change)) > no_grain_g) lines_.push_back({std::move(part), {}});
    }
  }

  [[nodiscard]] Mass mass_under(const std::vector<std::string>& notes) const {
    Mass mass{};
    for (const Line& line : lines_) {
      if (std::ranges::find(notes, line.now.note) != notes.end()) mass -= line.now.change;
    }
    return mass;
  }

  /// Moves lines of a note to the one that is returned for their bag; lines of other bags stay.
  void sort_out(const std::string& note, const std::function<std::optional<std::string>(const RecordRef&)>& note_of) {
    for (Line& line : lines_) {
      if (line.now.note != note) continue;
      if (auto other = note_of(line.now.holder)) line.now.note = *std::move(other);
    }
  }

  /// All notes that begin so.
  [[nodiscard]] std::set<std::string> notes_with(const std::string& beginning) const {
    std::set<std::string> notes;
    for (const Line& line : lines_) {
      if (line.now.note.starts_with(beginning)) notes.insert(line.now.note);
    }
    return notes;
  }

  /// What was booked on a day was booked on another. False where nothing was.
  bool move_lines(const std::string& was, const std::string& now) {
    bool any = false;
    for (Line& line : lines_) {
      if (line.now.day != was) continue;
      line.now.day = now;
      any = true;
    }
    return any;
  }

  template <class R>
  void add(RecordKind kind, const std::string& id, R record) {
    change_.edits.push_back({RecordRef{kind, id}, 0, Record(std::move(record))});
  }
  template <class R>
  void replace(const Stored<R>& was, R now) {
    change_.edits.push_back({ref_to(was.id), was.revision, Record(std::move(now))});
  }
  void log(LogEntry entry) {
    if (!change_.log) change_.log = std::move(entry);
    else add(RecordKind::log_entry, {}, std::move(entry));
  }

  [[nodiscard]] Change finish(const QString& label) {
    for (Line& line : lines_) {
      if (!line.kept) add(RecordKind::stock_entry, {}, std::move(line.now));
      else if (!(line.now == line.kept->record)) replace(*line.kept, std::move(line.now));
    }
    change_.label = label.toStdString();
    return std::move(change_);
  }

 private:
  struct Line {
    StockEntry now;
    std::optional<Stored<StockEntry>> kept;  ///< absent: it is new
  };

  static StockEntry part_of(StockEntry line, double share) {
    line.change = line.change * share;
    if (line.measured) line.measured = loose_l(in_l(*line.measured) * share);
    return line;
  }

  [[nodiscard]] std::map<RecordRef, Mass> booked_where(const auto& counts) const {
    std::map<RecordRef, Mass> booked;
    for (const Line& line : lines_) {
      if (counts(line.now)) booked[line.now.holder] -= line.now.change;
    }
    return booked;
  }

  /// A bag that was never taken in gives nothing away before it is.
  void take_in(const RecordRef& holder) {
    if (holder.kind != RecordKind::bag || !taken_in_.insert(holder).second || workbook_.stock_of(holder)) return;
    const auto bag = workbook_.find(Id<Bag>{holder.id});
    if (!bag) return;
    if (auto received = arrival_of(holder, bag->record, today_)) add(RecordKind::stock_entry, {}, *std::move(received));
  }

  const OpenWorkbook& workbook_;
  RecordRef day_;
  std::string today_;
  std::vector<Line> lines_;
  std::set<RecordRef> taken_in_;
  Change change_;
};

/// The plan a tree is repotted by; empty where there is none or it can't be read.
std::optional<RootMassPlan> plan_carried_out(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayTree& ticked) {
  if (!ticked.plan) return std::nullopt;
  const auto stored = workbook.find(RecordRef{RecordKind::root_mass_plan, ticked.plan->text});
  if (!stored) return std::nullopt;
  const auto file = read_root_mass_plan(std::get<KeptRootMassPlan>(stored->record).plan, ticked.plan->text, {&catalogue, {}});
  return file ? std::optional(file->plan) : std::nullopt;
}

/// The plan a tree was repotted by, worked out; empty where it can't be read or has no plan of that name.
struct CarriedOut {
  RootMassPlan plan;
  WorkedPlan worked;
};
std::optional<CarriedOut> carried_out(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayTree& ticked) {
  const auto plan = plan_carried_out(workbook, catalogue, ticked);
  const auto answer = plan ? std::optional(work_out(*plan)) : std::nullopt;
  if (!answer || !*answer) return std::nullopt;
  const auto& plans = (*answer)->plans;
  const auto done = std::ranges::find(plans, ticked.done_plan, &WorkedPlan::name);
  if (done == plans.end()) return std::nullopt;
  return CarriedOut{*plan, *done};
}

/// Where the trunk base lay before `done`, a repotting that moved it: as the plan took it from the tree.
std::optional<TrunkBase> trunk_base_before(const std::optional<RootMassPlan>& plan, const Repotting& done) {
  if (plan) return plan->trunk_base ? std::optional(TrunkBase{plan->trunk_base->right, plan->trunk_base->back, plan->trunk_base->up}) : std::nullopt;
  // The plan is gone: where the untouched part hangs on it.
  if (const auto& part = done.untouched) return TrunkBase{part->base_right, part->base_back, part->base_up};
  return std::nullopt;
}

std::vector<Repotting>::iterator repotting_on(Tree& tree, const std::string& day, const std::optional<Id<MixVersion>>& mix) {
  return std::ranges::find_if(tree.repottings, [&](const Repotting& one) { return one.day == day && one.mix == mix; });
}

/// What was booked for a ticked tree: the litres typed, or else those its history has of that day.
MixedVolume litres_taken(const OpenWorkbook& workbook, const DayTree& tree, const std::string& day) {
  if (tree.used) return *tree.used;
  auto stored = workbook.find(tree.tree);
  if (!stored) return {};
  const auto done = repotting_on(stored->record, day, tree.mix);
  return done == stored->record.repottings.end() ? MixedVolume{} : done->filled.value_or(MixedVolume{});
}

constexpr double no_litres = 1e-9;

/// Litres of one mix of a day that have left the bags: what the trees took, or all that was made where that is more. In the ledger each tree has
/// its own litres, and the tubs have what was made beyond those of all trees.
class MixTaken {
 public:
  MixTaken(DayBooking& booking, const OpenWorkbook& workbook, const Stored<RepottingDay>& day, const std::optional<Id<MixVersion>>& mix) {
    std::vector<TreePart> trees;
    for (const DayTree& tree : day.record.trees) {
      if (!tree.done || tree.mix != mix) continue;
      trees.push_back({tree.tree.text, in_l(litres_taken(workbook, tree, day.record.day)), booking.mass_under({tree.tree.text})});
      used_l_ += trees.back().used_l;
    }
    for (const auto& batch : workbook.all<Batch>()) {
      if (batch.record.repotting_day != day.id || batch.record.mix != mix || !batch.record.made) continue;
      made_l_ += in_l(*batch.record.made);
      tubs_.push_back(batch.id.text);
      for (const BatchPart& part : batch.record.parts) sources_.push_back(part.source);
    }
    give_trees_their_own(booking, trees);
  }

  [[nodiscard]] double made_l() const { return made_l_; }
  /// Bags that the tubs were made of.
  [[nodiscard]] const std::vector<RecordRef>& sources() const { return sources_; }

  /// Lets a tree that took `before_l` have taken `now_l`. The ledger is settled, but for what has yet to leave the bags: its litres are returned.
  [[nodiscard]] double settle(DayBooking& booking, const std::string& tree, double before_l, double now_l) {
    const double more_l = now_l - before_l;
    const double in_tubs_l = std::max(0.0, made_l_ - used_l_);
    const double gone_before_l = gone_l();
    used_l_ += more_l;
    const double from_bags_l = gone_l() - gone_before_l;
    const double from_tubs_l = more_l - from_bags_l;
    if (from_tubs_l > no_litres) booking.hand_over(tubs_, tree, std::min(1.0, from_tubs_l / in_tubs_l));
    if (from_tubs_l < -no_litres) booking.hand_over({tree}, tubs_.back(), std::min(1.0, -from_tubs_l / before_l));
    if (from_bags_l < -no_litres) booking.give_back(tree, std::min(1.0, -from_bags_l / (before_l + std::min(0.0, from_tubs_l))));
    return std::max(0.0, from_bags_l);
  }
  /// Litres that have to leave the bags for a tub.
  [[nodiscard]] double make(double litres) {
    const double before = gone_l();
    made_l_ += litres;
    return gone_l() - before;
  }

 private:
  struct TreePart {
    std::string note;
    double used_l;
    Mass booked;
  };

  [[nodiscard]] double gone_l() const { return std::max(used_l_, made_l_); }

  /// Days of earlier versions left what a tub was made of under the tub when its trees were ticked off: they have it under their own notes before
  /// anything is shared out.
  void give_trees_their_own(DayBooking& booking, const std::vector<TreePart>& trees) const {
    const Mass in_tubs = booking.mass_under(tubs_);
    if (in_g(in_tubs) <= some_grain_g) return;
    const auto has_lines = [](const TreePart& tree) { return in_g(tree.booked) > some_grain_g; };
    Mass in_all = in_tubs;
    double of_trees_l = 0;
    for (const TreePart& tree : trees) {
      in_all += tree.booked;
      if (has_lines(tree)) of_trees_l += tree.used_l;
    }
    // Where the trees took all that was made nothing is left to be the tubs': what they hold is as large a part of the litres as of the grain.
    const bool is_all_used = used_l_ > made_l_ - no_litres;
    const double litres_by_mass = gone_l() / in_g(in_all);
    double tubs_l = is_all_used ? in_g(in_tubs) * litres_by_mass : made_l_ - of_trees_l;
    const auto give = [&](const TreePart& tree, double litres) {
      if (litres <= no_litres || tubs_l <= no_litres) return;
      booking.hand_over(tubs_, tree.note, std::min(1.0, litres / tubs_l));
      tubs_l -= litres;
    };
    for (const TreePart& tree : trees) {
      if (!has_lines(tree)) give(tree, tree.used_l);
    }
    if (!is_all_used) return;
    // The rest is of those that found too little in the tub.
    std::vector<double> lacking_l;
    double lacking_in_all_l = 0;
    for (const TreePart& tree : trees) {
      lacking_l.push_back(has_lines(tree) ? std::max(0.0, tree.used_l - in_g(tree.booked) * litres_by_mass) : 0);
      lacking_in_all_l += lacking_l.back();
    }
    const double rest_l = tubs_l;
    for (std::size_t i = 0; i < trees.size() && lacking_in_all_l > no_litres; ++i) give(trees[i], rest_l * lacking_l[i] / lacking_in_all_l);
  }

  double used_l_ = 0;
  double made_l_ = 0;
  std::vector<std::string> tubs_;
  std::vector<RecordRef> sources_;
};

LooseVolume litres_in(const std::vector<GrainLitres>& layers, const std::string& grain) {
  double litres = 0;
  for (const GrainLitres& layer : layers) {
    if (layer.name == grain) litres += in_l(layer.loose);
  }
  return loose_l(litres);
}

/// Trees of a day that are ticked off, corrected or opened again: what all of it changes is written as one step.
class Ticking {
 public:
  Ticking(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day, const std::string& today)
      : workbook_(workbook), catalogue_(catalogue), ground_(ground), answer_(answer), day_(day), now_(day.record), booking_(workbook, day, today), shelf_(ground, answer, booking_.booked_in_all()) {}

  /// False where the row can't be ticked.
  bool tick(std::size_t row) {
    const auto place = place_of(row);
    if (!place || now_.trees[row].done) return false;
    DayTree& ticked = now_.trees[row];
    const auto stored = workbook_.find(ticked.tree);
    if (!stored) return false;
    ticked.done = true;
    if (ticked.done_plan.empty()) ticked.done_plan = ticked.plan_name;
    const MixedVolume used = litres_of(ticked, place->index);
    std::vector<RecordRef> from_tubs;
    settle_mix(*place, ticked.tree, {}, used, from_tubs);
    settle_layers(ticked.tree, {}, tree_of_day(place->index).layers);
    Tree tree = stored->record;
    const auto by_plan = carried_out(workbook_, catalogue_, ticked);
    if (ticked.plan && !by_plan) without_cuts_.push_back(ticked.tree.text);
    Repotting repotting = write_history(tree, ticked, by_plan);
    repotting.filled = used;
    write_row(repotting, ticked, stands_in(*place, ticked.tree, std::move(from_tubs), used));
    // The day the grower had set has come.
    repotting.due = std::exchange(tree.due, std::nullopt);
    LogEntry entry = log_of(ticked, place->index, used, repotting.grain);
    booking_.log(std::move(entry));
    put(*stored, std::move(tree), std::move(repotting));
    return true;
  }

  /// The mix of the row stays. False where its history is gone, or the plan it is to have followed can't be worked out.
  bool correct(const TickCorrection& correction) {
    const std::size_t row = correction.row;
    DayTree wanted = correction.wanted;
    const auto place = place_of(row);
    const DayTree was = now_.trees[row];
    const auto stored = workbook_.find(was.tree);
    if (!place || !stored || !was.done) return false;
    Tree tree = stored->record;
    const auto done = repotting_on(tree, now_.day, was.mix);
    if (done == tree.repottings.end()) return false;
    wanted.done = true;
    if (wanted.done_plan.empty()) wanted.done_plan = wanted.plan_name;
    // What was cut stands in the history alone where the plan was changed or deleted since.
    const bool same_name = wanted.done_plan == was.done_plan;
    const bool same_work = wanted.plan == was.plan && (same_name || !wanted.plan);
    const auto by_plan = same_work ? std::nullopt : carried_out(workbook_, catalogue_, wanted);
    if (!same_work && wanted.plan && !by_plan) return false;
    const Repotting before = *done;
    // A later repotting moved the trunk base on.
    const bool newest = std::next(done) == tree.repottings.end();
    tree.repottings.erase(done);
    if (!same_work && newest && before.removed_share) tree.trunk_base = trunk_base_before(plan_carried_out(workbook_, catalogue_, was), before);
    now_.trees[row] = wanted;
    Repotting repotting = same_work ? before : write_history(tree, wanted, by_plan);
    repotting.due = before.due;
    std::vector<RecordRef> grain = before.grain;
    MixedVolume used = litres_taken(workbook_, was, now_.day);
    // Where nothing of it was changed, the litres that the day counts on today are not those of the day's work.
    if (wanted.plan != was.plan || !same_name || wanted.container != was.container || wanted.used != was.used) {
      const MixedVolume used_before = std::exchange(used, litres_of(wanted, place->index));
      settle_mix(*place, was.tree, used_before, used, grain);
      repotting.filled = used;
    }
    if (correction.layers_before) settle_layers(was.tree, *correction.layers_before, tree_of_day(place->index).layers);
    write_row(repotting, wanted, stands_in(*place, was.tree, std::move(grain), used));
    LogEntry entry = log_of(wanted, place->index, used, repotting.grain);
    entry.text = TickText::tr("Corrected: %1").arg(to_qt(entry.text)).toStdString();
    booking_.log(std::move(entry));
    put(*stored, std::move(tree), std::move(repotting));
    return true;
  }

  [[nodiscard]] const std::vector<std::string>& without_cuts() const { return without_cuts_; }

  Change finish(const QString& label) {
    booking_.replace(day_, std::move(now_));
    return booking_.finish(label);
  }

 private:
  struct Place {
    std::size_t index;  ///< of the tree in the plan
    std::size_t mix;
  };

  [[nodiscard]] std::optional<Place> place_of(std::size_t row) const {
    const auto at = std::ranges::find(ground_.rows, row);
    if (at == ground_.rows.end()) return std::nullopt;
    const auto index = static_cast<std::size_t>(at - ground_.rows.begin());
    const auto mix = std::ranges::find(ground_.plan.mixes, ground_.plan.trees[index].mix, &DayMix::name);
    return Place{index, static_cast<std::size_t>(mix - ground_.plan.mixes.begin())};
  }

  [[nodiscard]] const TreeOfDay& tree_of_day(std::size_t index) const { return *std::ranges::find(answer_.trees, index, &TreeOfDay::tree); }

  MixTaken& gone_of(std::size_t mix) {
    const Id<MixVersion>& id = ground_.mixes[mix].id;
    return gone_.try_emplace(id.text, booking_, workbook_, day_, id).first->second;
  }

  /// Those typed, else those of the plan that was carried out.
  [[nodiscard]] MixedVolume litres_of(const DayTree& tree, std::size_t index) const {
    if (tree.used) return *tree.used;
    const TreeOfDay& planned = tree_of_day(index);
    const auto fill = fill_done(tree);
    if (!fill || !(in_ml(planned.fill) > 0)) return planned.poured;
    return mixed_l(in_l(planned.poured) * in_l(*fill) * 1000 / in_ml(planned.fill));
  }

  static void stand_in(std::vector<RecordRef>& bags, const RecordRef& bag) {
    if (std::ranges::find(bags, bag) == bags.end()) bags.push_back(bag);
  }
  /// Bags whose grain is in a tree's pot: those that have lines left under its notes, and of those that were `known` the ones that its lines
  /// say nothing of, or that its tubs were made of.
  [[nodiscard]] std::vector<RecordRef> stands_in(const Place& place, const Id<Tree>& tree, std::vector<RecordRef> known, MixedVolume used) {
    const auto booked = booking_.booked_for(tree);
    const auto is_left = [](Mass mass) { return in_g(mass) > some_grain_g; };
    const std::vector<RecordRef>& of_tubs = gone_of(place.mix).sources();
    std::erase_if(known, [&](const RecordRef& bag) {
      const auto line = booked.find(bag);
      const bool of_tub = in_l(used) > no_litres && std::ranges::find(of_tubs, bag) != of_tubs.end();
      return line != booked.end() && !is_left(line->second) && !of_tub;
    });
    for (const auto& [bag, mass] : booked) {
      if (is_left(mass)) stand_in(known, bag);
    }
    return known;
  }
  void book(const std::vector<RawGrain>& grain, const std::string& note) {
    for (const RawGrain& each : grain) booking_.use(each, note);
  }

  /// Books what a tree took more or less of its mix, and adds the bags of a tub that stood in.
  void settle_mix(const Place& place, const Id<Tree>& tree, MixedVolume before, MixedVolume now, std::vector<RecordRef>& from_tubs) {
    MixTaken& gone = gone_of(place.mix);
    const double from_bags_l = gone.settle(booking_, tree.text, in_l(before), in_l(now));
    // A tub that was counted before its trees were ticked has its grain from the bags already.
    if (from_bags_l < in_l(now) - in_l(before) - no_litres) {
      for (const RecordRef& bag : gone.sources()) stand_in(from_tubs, bag);
    }
    if (from_bags_l > no_litres) book(shelf_.take(place.mix, mixed_l(from_bags_l)), tree.text);
  }

  [[nodiscard]] bool is_of_layer(const RecordRef& bag, const GrainLitres& layer) const {
    if (bag.id == layer.name) return true;
    const auto at = std::ranges::find(ground_.shelf, bag);
    if (at == ground_.shelf.end()) return false;
    const GrainSupply& supply = ground_.plan.shelf[static_cast<std::size_t>(at - ground_.shelf.begin())];
    return supply.bag == layer.name || supply.component == layer.name || (!supply.material.empty() && (supply.material == layer.name || supply.material == layer.material));
  }

  /// The same of its layers, each grain for itself.
  void settle_layers(const Id<Tree>& tree, const std::vector<GrainLitres>& before, const std::vector<GrainLitres>& now) {
    // Days of earlier versions have all layers of a tree under one note.
    booking_.sort_out(layers_note(tree), [&](const RecordRef& bag) -> std::optional<std::string> {
      const auto layer = std::ranges::find_if(before, [&](const GrainLitres& one) { return is_of_layer(bag, one); });
      return layer == before.end() ? std::nullopt : std::optional(layer_note(tree, layer->name));
    });
    std::set<std::string> grains;
    for (const auto& layers : {before, now}) {
      for (const GrainLitres& layer : layers) grains.insert(layer.name);
    }
    for (const std::string& grain : grains) {
      const double before_l = in_l(litres_in(before, grain));
      const double more_l = in_l(litres_in(now, grain)) - before_l;
      if (more_l > no_litres) book(shelf_.take_layer(grain, loose_l(more_l)), layer_note(tree, grain));
      if (more_l < -no_litres) booking_.give_back(layer_note(tree, grain), -more_l / before_l);
    }
  }

  /// The repotting as the plan says it was, and where the trunk base lies after it, unless the tree was repotted again since.
  Repotting write_history(Tree& tree, const DayTree& row, const std::optional<CarriedOut>& by_plan) const {
    Repotting repotting = by_plan ? repotting_by(by_plan->plan, by_plan->worked) : Repotting{};
    repotting.day = now_.day;
    repotting.mix = row.mix;
    repotting.plan = row.plan;
    if (row.plan) repotting.plan_name = row.done_plan;
    const bool newest = std::ranges::none_of(tree.repottings, [&](const Repotting& one) { return one.day > now_.day; });
    if (by_plan && newest) tree.trunk_base = trunk_base_after(by_plan->plan, by_plan->worked);
    return repotting;
  }

  /// What the row says of it beside its plan and litres.
  static void write_row(Repotting& repotting, const DayTree& row, std::vector<RecordRef> grain) {
    repotting.container = row.container;
    repotting.note = row.note;
    repotting.grain = std::move(grain);
  }

  [[nodiscard]] LogEntry log_of(const DayTree& row, std::size_t index, MixedVolume used, const std::vector<RecordRef>& grain) const {
    const PlannedTree& planned = ground_.plan.trees[index];
    LogEntry entry = event_about(ref_to(row.tree), {}, now_.day);
    const auto about = [&](const RecordRef& ref) {
      if (std::ranges::find(entry.about, ref) == entry.about.end()) entry.about.push_back(ref);
    };
    about(ref_to(*row.mix));
    if (row.container) about(ref_to(*row.container));
    for (const RecordRef& each : grain) about(each);
    about(ref_to(day_.id));
    entry.text = with_plain_spaces(TickText::tr("Repotted %1 with %2 of %3").arg(to_qt(planned.name), to_local(volume_text(in_l(used), UnitSystem::metric)), to_qt(planned.mix))).toStdString();
    if (row.container) {
      const auto pot = workbook_.find(*row.container);
      const QString name = !pot || pot->record.container.name.empty() || pot->record.container.name == row.container->text
                               ? to_qt(row.container->text)
                               : QStringLiteral("%1 %2").arg(to_qt(row.container->text), to_qt(pot->record.container.name));
      entry.text += TickText::tr(", into %1").arg(name).toStdString();
    }
    if (row.plan) entry.text += TickText::tr(", plan %1").arg(to_qt(row.done_plan)).toStdString();
    if (!row.note.empty()) entry.text += ": " + row.note;
    return entry;
  }

  void put(const Stored<Tree>& stored, Tree tree, Repotting repotting) {
    tree.repottings.push_back(std::move(repotting));
    std::ranges::stable_sort(tree.repottings, {}, &Repotting::day);
    booking_.replace(stored, std::move(tree));
  }

  const OpenWorkbook& workbook_;
  const Catalogue& catalogue_;
  const DayGround& ground_;
  const DayAnswer& answer_;
  const Stored<RepottingDay>& day_;
  RepottingDay now_;
  DayBooking booking_;
  DayGrain shelf_;
  std::map<std::string, MixTaken> gone_;  // by mix version
  std::vector<std::string> without_cuts_;
};

}  // namespace

std::optional<TickedOff> tick_off(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day,
                               const std::vector<std::size_t>& rows, const std::string& today) {
  // What is ticked off later was taken on its day.
  Ticking ticking(workbook, catalogue, ground, answer, day, std::min(today, day.record.day));
  QStringList names;
  for (const std::size_t row : rows) {
    if (ticking.tick(row)) names << to_qt(day.record.trees[row].tree.text);
  }
  if (names.isEmpty()) return std::nullopt;
  return TickedOff{ticking.finish(TickText::tr("ticked off %1").arg(comma_list(names))), ticking.without_cuts()};
}

std::optional<Change> correct_tick(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day,
                                   const TickCorrection& correction, const std::string& today) {
  if (correction.row >= day.record.trees.size() || correction.wanted == day.record.trees[correction.row]) return std::nullopt;
  Ticking ticking(workbook, catalogue, ground, answer, day, today);
  if (!ticking.correct(correction)) return std::nullopt;
  return ticking.finish(TickText::tr("tick of %1 corrected").arg(to_qt(correction.wanted.tree.text)));
}

std::optional<std::vector<GrainLitres>> layers_of(const DayGround& ground, const DayAnswer& answer, std::size_t row) {
  const auto at = std::ranges::find(ground.rows, row);
  if (at == ground.rows.end()) return std::nullopt;
  const auto tree = std::ranges::find(answer.trees, static_cast<std::size_t>(at - ground.rows.begin()), &TreeOfDay::tree);
  return tree == answer.trees.end() ? std::nullopt : std::optional(tree->layers);
}

namespace {

/// The log's lines of trees ticked off and tubs made on a day, which name the mix beside the day.
std::vector<Stored<LogEntry>> told_of_work(const OpenWorkbook& workbook, const RecordRef& day, const std::string& date) {
  ListFilter of_day;
  of_day.about = day;
  of_day.from_day = of_day.to_day = date;
  std::vector<Stored<LogEntry>> lines;
  for (const RecordLine& line : workbook.list(RecordKind::log_entry, of_day)) {
    auto entry = workbook.find(Id<LogEntry>{line.ref.id});
    if (!entry || entry->record.sort != LogSort::event) continue;
    const auto& about = entry->record.about;
    const bool of_work = about.front().kind == RecordKind::tree || about.front().kind == RecordKind::batch;
    if (of_work && std::ranges::find(about, RecordKind::mix, &RecordRef::kind) != about.end()) lines.push_back(*std::move(entry));
  }
  return lines;
}

}  // namespace

std::optional<Change> move_done_day(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, RepottingDay now, const std::string& today) {
  DayBooking booking(workbook, day, today);
  const std::string& was = day.record.day;
  bool any_moved = false;
  for (const DayTree& row : day.record.trees) {
    const auto stored = row.done ? workbook.find(row.tree) : std::nullopt;
    if (!stored) continue;
    Tree tree = stored->record;
    const auto done = repotting_on(tree, was, row.mix);
    if (done == tree.repottings.end()) continue;
    done->day = now.day;
    std::ranges::stable_sort(tree.repottings, {}, &Repotting::day);
    booking.replace(*stored, std::move(tree));
    any_moved = true;
  }
  for (const auto& batch : workbook.all<Batch>()) {
    if (batch.record.repotting_day != day.id || batch.record.day != was) continue;
    Batch moved = batch.record;
    moved.day = now.day;
    booking.replace(batch, std::move(moved));
    any_moved = true;
  }
  if (booking.move_lines(was, now.day)) any_moved = true;
  if (!any_moved) return std::nullopt;
  for (const auto& line : told_of_work(workbook, ref_to(day.id), was)) {
    LogEntry moved = line.record;
    moved.day = now.day;
    booking.replace(line, std::move(moved));
  }
  LogEntry entry = event_about(ref_to(day.id), TickText::tr("What was done on %1 was done on %2").arg(to_qt(was), to_qt(now.day)), now.day);
  entry.sort = LogSort::bookkeeping;
  booking.log(std::move(entry));
  booking.replace(day, std::move(now));
  return booking.finish(TickText::tr("day of repotting day %1").arg(to_qt(was)));
}

std::optional<Change> take_tick_back(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::size_t row, const std::string& today) {
  if (row >= day.record.trees.size() || !day.record.trees[row].done) return std::nullopt;
  DayBooking booking(workbook, day, today);
  RepottingDay now = day.record;
  DayTree& ticked = now.trees[row];
  // What a tub was counted with stays taken, and is the tub's from here on.
  (void)MixTaken(booking, workbook, day, ticked.mix).settle(booking, ticked.tree.text, in_l(litres_taken(workbook, ticked, now.day)), 0);
  // Where its litres are known no more, all that stands under its number goes back.
  booking.give_back(ticked.tree.text, 1);
  for (const std::string& note : booking.notes_with(layers_note(ticked.tree))) booking.give_back(note, 1);
  if (const auto stored = workbook.find(ticked.tree)) {
    Tree tree = stored->record;
    const auto done = repotting_on(tree, now.day, ticked.mix);
    if (done != tree.repottings.end()) {
      if (done->due && !tree.due) tree.due = done->due;
      // Only a plan that was carried out says what it removed, and only such a one moved the trunk base; a later repotting moved it on.
      if (done->removed_share && std::next(done) == tree.repottings.end()) tree.trunk_base = trunk_base_before(plan_carried_out(workbook, catalogue, ticked), *done);
      tree.repottings.erase(done);
      booking.replace(*stored, std::move(tree));
    }
  }
  ticked.done = false;
  ticked.done_plan.clear();
  const QString id = to_qt(ticked.tree.text);
  booking.log(event_about(ref_to(ticked.tree), TickText::tr("Took the tick of %1 back").arg(id), today));
  booking.replace(day, std::move(now));
  return booking.finish(TickText::tr("tick of %1 taken back").arg(id));
}

QString left_over_words(const QString& mix, MixedVolume made, MixedVolume left, const RecordRef& tub) {
  const auto litres = [](MixedVolume volume) { return to_local(volume_text(in_l(volume), UnitSystem::metric)); };
  return TickText::tr("Made %1 of %2, %3 left over, kept as %4").arg(litres(made), mix, litres(left), to_qt(tub.id));
}

std::optional<Change> return_left_over(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day, const TubLeft& tub,
                                       const std::string& today) {
  if (tub.mix >= ground.mixes.size()) return std::nullopt;
  DayBooking booking(workbook, day, std::min(today, day.record.day));
  const DayMix& mix = ground.plan.mixes[tub.mix];
  const Id<MixVersion>& version = ground.mixes[tub.mix].id;
  MixTaken gone(booking, workbook, day, version);
  const RecordRef ref{RecordKind::batch, workbook.suggest_id(RecordKind::batch)};
  Batch batch;
  batch.mix = version;
  batch.day = day.record.day;
  batch.repotting_day = day.id;
  batch.made = tub.made;
  batch.left = tub.left;
  DayGrain made_of(ground, answer);
  made_of.take(tub.mix, mixed_l(gone.made_l()));
  for (const RawGrain& grain : made_of.take(tub.mix, tub.made)) batch.parts.push_back({grain.holder, grain.raw, grain.raw * grain.density});
  booking.add(RecordKind::batch, ref.id, std::move(batch));
  // The trees have taken theirs from the bags already; what was made beyond that, in all tubs, is in the tub or was spilt.
  for (const RawGrain& grain : DayGrain(ground, answer, booking.booked_in_all()).take(tub.mix, mixed_l(gone.make(in_l(tub.made))))) {
    if (in_l(grain.raw) > 0) booking.use(grain, ref.id);
  }
  const auto state = mix_state(mix.mix);
  if (in_l(tub.left) > 0 && state && state->poured) {
    const LooseVolume left = loose_l(in_l(tub.left));
    booking.entry(ref, StockReason::returned, left * state->poured->bulk_density, {}, left, state->poured->bulk_density);
  }
  LogEntry entry = event_about(ref, left_over_words(to_qt(mix.name), tub.made, tub.left, ref), day.record.day);
  entry.about.push_back(ref_to(version));
  entry.about.push_back(ref_to(day.id));
  booking.log(std::move(entry));
  return booking.finish(TickText::tr("leftover of %1").arg(to_qt(mix.name)));
}

}  // namespace gritwright::desktop
