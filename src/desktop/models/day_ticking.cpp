#include "day_ticking.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
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
  DayGrain(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer, const Id<RepottingDay>& day) : DayGrain(ground, answer) {
    std::map<RecordRef, Mass> booked;
    for (const auto& entry : workbook.all<StockEntry>()) {
      if (entry.record.other == ref_to(day)) booked[entry.record.holder] -= entry.record.change;
    }
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

  /// Of the layers of a tree, as far as they stand on the shelf.
  std::vector<RawGrain> take_layers(const TreeOfDay& tree) {
    std::vector<RawGrain> grain;
    for (const GrainLitres& layer : tree.layers) take_component(layer.name, layer.loose, {}, grain);
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

class DayBooking {
 public:
  DayBooking(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, std::string today) : workbook_(workbook), day_(ref_to(day.id)), today_(std::move(today)) {}

  void entry(const RecordRef& holder, StockReason reason, Mass mass, const std::string& note, std::optional<LooseVolume> measured = {}, std::optional<BulkDensity> density = {}) {
    StockEntry entry;
    entry.holder = holder;
    entry.reason = reason;
    entry.change = mass;
    entry.measured = measured;
    entry.density_used = density;
    if (reason != StockReason::received) entry.other = day_;
    entry.day = today_;
    entry.note = note;
    add(RecordKind::stock_entry, {}, std::move(entry));
  }

  void use(const RawGrain& grain, const std::string& note) {
    take_in(grain.holder);
    entry(grain.holder, StockReason::used, grain.raw * grain.density * -1.0, note, grain.raw, grain.density);
  }

  template <class R>
  void add(RecordKind kind, const std::string& id, R record) {
    change.edits.push_back({RecordRef{kind, id}, 0, Record(std::move(record))});
  }
  template <class R>
  void replace(const Stored<R>& was, R now) {
    change.edits.push_back({ref_to(was.id), was.revision, Record(std::move(now))});
  }
  void log(LogEntry entry) {
    if (!change.log) change.log = std::move(entry);
    else add(RecordKind::log_entry, {}, std::move(entry));
  }

  Change change;

 private:
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
  std::set<RecordRef> taken_in_;
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

/// Litres of one mix of a day that have left the bags: what the trees took, or all that was made where that is more.
class MixTaken {
 public:
  MixTaken(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, const Id<MixVersion>& mix) {
    for (const DayTree& tree : day.record.trees) {
      if (tree.done && tree.mix == mix) used_l_ += in_l(litres_taken(workbook, tree, day.record.day));
    }
    for (const auto& batch : workbook.all<Batch>()) {
      if (batch.record.repotting_day != day.id || batch.record.mix != mix || !batch.record.made) continue;
      made_l_ += in_l(*batch.record.made);
      for (const BatchPart& part : batch.record.parts) sources_.push_back(part.source);
    }
  }

  [[nodiscard]] double made_l() const { return made_l_; }
  /// Bags that the tubs were made of.
  [[nodiscard]] const std::vector<RecordRef>& sources() const { return sources_; }

  /// Both change what has to leave the bags, by the litres they return; below 0 some goes back.
  double use(double litres) {
    const double before = gone_l();
    used_l_ += litres;
    return gone_l() - before;
  }
  double make(double litres) {
    const double before = gone_l();
    made_l_ += litres;
    return gone_l() - before;
  }

 private:
  [[nodiscard]] double gone_l() const { return std::max(used_l_, made_l_); }

  double used_l_ = 0;
  double made_l_ = 0;
  std::vector<RecordRef> sources_;
};

constexpr double no_litres = 1e-9;

/// What stands at the ledger's lines of a tree's layers; those of its mix bear its number alone.
std::string layer_note(const Id<Tree>& tree) { return tree.text + ", layers"; }

/// What was booked on a day under a note, by bag.
std::map<RecordRef, Mass> booked_under(const OpenWorkbook& workbook, const Id<RepottingDay>& day, const std::string& note) {
  std::map<RecordRef, Mass> booked;
  for (const auto& entry : workbook.all<StockEntry>()) {
    if (entry.record.other == ref_to(day) && entry.record.note == note) booked[entry.record.holder] -= entry.record.change;
  }
  return booked;
}

/// Trees of a day that are ticked off, corrected or opened again: what all of it changes is written as one step.
class Ticking {
 public:
  Ticking(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day, const std::string& today)
      : workbook_(workbook), catalogue_(catalogue), ground_(ground), answer_(answer), day_(day), now_(day.record), booking_(workbook, day, today), shelf_(workbook, ground, answer, day.id) {}

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
    std::vector<RecordRef> stands_in;
    MixTaken& gone = gone_of(place->mix);
    const double to_book_l = gone.use(in_l(used));
    // A tub that was counted before its trees were ticked has its grain from the bags already.
    if (to_book_l < in_l(used) - no_litres) stands_in = gone.sources();
    if (to_book_l > no_litres) book(shelf_.take(place->mix, mixed_l(to_book_l)), ticked.tree.text, stands_in);
    book(shelf_.take_layers(tree_of_day(place->index)), layer_note(ticked.tree), stands_in);
    Tree tree = stored->record;
    Repotting repotting = write_history(tree, ticked, used, std::move(stands_in));
    // The day the grower had set has come.
    repotting.due = std::exchange(tree.due, std::nullopt);
    LogEntry entry = log_of(ticked, place->index, used, repotting.grain);
    booking_.log(std::move(entry));
    put(*stored, std::move(tree), std::move(repotting));
    return true;
  }

  /// The row as it shall be; its mix stays. False where its history is gone, or the plan it is to have followed can't be worked out.
  bool correct(std::size_t row, DayTree wanted) {
    const auto place = place_of(row);
    const DayTree was = now_.trees[row];
    const auto stored = workbook_.find(was.tree);
    if (!place || !stored || !was.done) return false;
    Tree tree = stored->record;
    const auto done = repotting_on(tree, now_.day, was.mix);
    if (done == tree.repottings.end()) return false;
    const Repotting before = *done;
    const bool newest = std::next(done) == tree.repottings.end();
    wanted.done = true;
    if (wanted.done_plan.empty()) wanted.done_plan = wanted.plan_name;
    now_.trees[row] = wanted;
    const MixedVolume used_before = litres_taken(workbook_, was, now_.day);
    Repotting repotting = before;
    MixedVolume used = used_before;
    if (wanted.plan == was.plan && wanted.done_plan == was.done_plan && wanted.container == was.container && wanted.used == was.used) {
      // What was done stays as it was written down: the day's plan and litres may be others by now.
      repotting.note = wanted.note;
      tree.repottings.erase(done);
    } else {
      if (wanted.plan && !carried_out(workbook_, catalogue_, wanted)) return false;
      const auto trunk_base_now = tree.trunk_base;
      tree.repottings.erase(done);
      if (before.removed_share) tree.trunk_base = trunk_base_before(plan_carried_out(workbook_, catalogue_, was), before);
      used = litres_of(wanted, place->index);
      std::vector<RecordRef> grain = before.grain;
      const double more_l = gone_of(place->mix).use(in_l(used) - in_l(used_before));
      if (std::abs(more_l) > no_litres) book_difference(place->mix, was.tree.text, in_l(used_before), more_l, grain);
      repotting = write_history(tree, wanted, used, std::move(grain));
      repotting.due = before.due;
      // A later repotting moved it on.
      if (!newest) tree.trunk_base = trunk_base_now;
    }
    LogEntry entry = log_of(wanted, place->index, used, repotting.grain);
    entry.text = TickText::tr("Corrected: %1").arg(to_qt(entry.text)).toStdString();
    booking_.log(std::move(entry));
    put(*stored, std::move(tree), std::move(repotting));
    return true;
  }

  Change finish(const QString& label) {
    booking_.replace(day_, std::move(now_));
    booking_.change.label = label.toStdString();
    return std::move(booking_.change);
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
    return gone_.try_emplace(id.text, workbook_, day_, id).first->second;
  }

  /// Those typed, else those of the plan that was carried out.
  [[nodiscard]] MixedVolume litres_of(const DayTree& tree, std::size_t index) const {
    if (tree.used) return *tree.used;
    const TreeOfDay& planned = tree_of_day(index);
    const auto fill = fill_done(tree);
    if (!fill || !(in_ml(planned.fill) > 0)) return planned.poured;
    return mixed_l(in_l(planned.poured) * in_l(*fill) * 1000 / in_ml(planned.fill));
  }

  void book(const std::vector<RawGrain>& grain, const std::string& tree, std::vector<RecordRef>& stands_in) {
    for (const RawGrain& each : grain) {
      booking_.use(each, tree);
      if (std::ranges::find(stands_in, each.holder) == stands_in.end()) stands_in.push_back(each.holder);
    }
  }

  /// Books what a tree took more; what it took less goes back to its bags, to each its share. A tree that was filled from a tub alone has
  /// nothing booked of its own to give back.
  void book_difference(std::size_t mix, const std::string& tree, double before_l, double more_l, std::vector<RecordRef>& stands_in) {
    if (more_l > 0) return book(shelf_.take(mix, mixed_l(more_l)), tree, stands_in);
    constexpr double no_grain_g = 1e-6;
    const double share = std::min(1.0, -more_l / before_l);
    for (const auto& [holder, mass] : booked_under(workbook_, day_.id, tree)) {
      if (in_g(mass * share) > no_grain_g) booking_.entry(holder, StockReason::returned, mass * share, tree);
    }
  }

  /// The repotting as the row says it was, and where the trunk base lies after it.
  Repotting write_history(Tree& tree, const DayTree& row, MixedVolume used, std::vector<RecordRef> grain) const {
    const auto by_plan = carried_out(workbook_, catalogue_, row);
    Repotting repotting = by_plan ? repotting_by(by_plan->plan, by_plan->worked) : Repotting{};
    repotting.day = now_.day;
    repotting.container = row.container;
    repotting.mix = row.mix;
    repotting.filled = used;
    repotting.plan = row.plan;
    if (row.plan) repotting.plan_name = row.done_plan;
    repotting.note = row.note;
    repotting.grain = std::move(grain);
    if (by_plan) tree.trunk_base = trunk_base_after(by_plan->plan, by_plan->worked);
    return repotting;
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
    entry.text = TickText::tr("Repotted %1 with %2 of %3").arg(to_qt(planned.name), to_local(volume_text(in_l(used), UnitSystem::metric)), to_qt(planned.mix)).toStdString();
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
};

}  // namespace

std::optional<Change> tick_off(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day,
                               const std::vector<std::size_t>& rows, const std::string& today) {
  Ticking ticking(workbook, catalogue, ground, answer, day, today);
  QStringList names;
  for (const std::size_t row : rows) {
    if (ticking.tick(row)) names << to_qt(day.record.trees[row].tree.text);
  }
  if (names.isEmpty()) return std::nullopt;
  return ticking.finish(TickText::tr("ticked off %1").arg(names.join(QStringLiteral(", "))));
}

std::optional<Change> correct_tick(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day,
                                   std::size_t row, DayTree corrected, const std::string& today) {
  if (row >= day.record.trees.size() || corrected == day.record.trees[row]) return std::nullopt;
  Ticking ticking(workbook, catalogue, ground, answer, day, today);
  if (!ticking.correct(row, std::move(corrected))) return std::nullopt;
  return ticking.finish(TickText::tr("tick of %1 corrected").arg(to_qt(day.record.trees[row].tree.text)));
}

std::optional<Change> move_done_day(const OpenWorkbook& workbook, const Stored<RepottingDay>& day, RepottingDay now, const std::string& today) {
  DayBooking booking(workbook, day, today);
  const std::string& was = day.record.day;
  for (const DayTree& row : day.record.trees) {
    const auto stored = row.done ? workbook.find(row.tree) : std::nullopt;
    if (!stored) continue;
    Tree tree = stored->record;
    const auto done = repotting_on(tree, was, row.mix);
    if (done == tree.repottings.end()) continue;
    done->day = now.day;
    std::ranges::stable_sort(tree.repottings, {}, &Repotting::day);
    booking.replace(*stored, std::move(tree));
  }
  if (booking.change.edits.empty()) return std::nullopt;
  for (const auto& batch : workbook.all<Batch>()) {
    if (batch.record.repotting_day != day.id || batch.record.day != was) continue;
    Batch moved = batch.record;
    moved.day = now.day;
    booking.replace(batch, std::move(moved));
  }
  booking.change.label = TickText::tr("day of repotting day %1").arg(to_qt(was)).toStdString();
  booking.log(event_about(ref_to(day.id), TickText::tr("What was done on %1 was done on %2").arg(to_qt(was), to_qt(now.day)), now.day));
  booking.change.log->sort = LogSort::bookkeeping;
  booking.replace(day, std::move(now));
  return std::move(booking.change);
}

std::optional<Change> take_tick_back(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::size_t row, const std::string& today) {
  if (row >= day.record.trees.size() || !day.record.trees[row].done) return std::nullopt;
  DayBooking booking(workbook, day, today);
  RepottingDay now = day.record;
  DayTree& ticked = now.trees[row];
  // What a tub was counted with stays taken.
  const double used_l = in_l(litres_taken(workbook, ticked, now.day));
  const double back_l = ticked.mix ? -MixTaken(workbook, day, *ticked.mix).use(-used_l) : used_l;
  const double share = used_l > no_litres ? back_l / used_l : 1;
  for (const auto& [note, part] : {std::pair{ticked.tree.text, share}, std::pair{layer_note(ticked.tree), 1.0}}) {
    for (const auto& [holder, mass] : booked_under(workbook, day.id, note)) {
      if (mass * part > Mass{}) booking.entry(holder, StockReason::returned, mass * part, note);
    }
  }
  if (const auto stored = workbook.find(ticked.tree)) {
    Tree tree = stored->record;
    const auto done = repotting_on(tree, now.day, ticked.mix);
    if (done != tree.repottings.end()) {
      if (done->due && !tree.due) tree.due = done->due;
      // Only a plan that was carried out says what it removed, and only such a one moved the trunk base.
      if (done->removed_share) tree.trunk_base = trunk_base_before(plan_carried_out(workbook, catalogue, ticked), *done);
      tree.repottings.erase(done);
      booking.replace(*stored, std::move(tree));
    }
  }
  ticked.done = false;
  ticked.done_plan.clear();
  const QString id = to_qt(ticked.tree.text);
  booking.log(event_about(ref_to(ticked.tree), TickText::tr("Took the tick of %1 back").arg(id), today));
  booking.replace(day, std::move(now));
  booking.change.label = TickText::tr("tick of %1 taken back").arg(id).toStdString();
  return std::move(booking.change);
}

std::optional<Change> return_left_over(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day, const TubLeft& tub,
                                       const std::string& today) {
  if (tub.mix >= ground.mixes.size()) return std::nullopt;
  DayBooking booking(workbook, day, today);
  const DayMix& mix = ground.plan.mixes[tub.mix];
  const Id<MixVersion>& version = ground.mixes[tub.mix].id;
  MixTaken gone(workbook, day, version);
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
  for (const RawGrain& grain : DayGrain(workbook, ground, answer, day.id).take(tub.mix, mixed_l(gone.make(in_l(tub.made))))) {
    if (in_l(grain.raw) > 0) booking.use(grain, ref.id);
  }
  const auto state = mix_state(mix.mix);
  if (in_l(tub.left) > 0 && state && state->poured) {
    const LooseVolume left = loose_l(in_l(tub.left));
    booking.entry(ref, StockReason::returned, left * state->poured->bulk_density, {}, left, state->poured->bulk_density);
  }
  const auto litres = [](MixedVolume volume) { return to_local(volume_text(in_l(volume), UnitSystem::metric)); };
  LogEntry entry = event_about(ref, TickText::tr("Made %1 of %2, %3 left over, kept as %4").arg(litres(tub.made), to_qt(mix.name), litres(tub.left), to_qt(ref.id)), day.record.day);
  entry.about.push_back(ref_to(version));
  entry.about.push_back(ref_to(day.id));
  booking.log(std::move(entry));
  booking.change.label = TickText::tr("left-over of %1").arg(to_qt(mix.name)).toStdString();
  return std::move(booking.change);
}

}  // namespace gritwright::desktop
