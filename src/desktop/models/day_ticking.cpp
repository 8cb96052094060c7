#include "day_ticking.hpp"

#include <QCoreApplication>
#include <algorithm>
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
      double open_l = in_l((*litres)[k]);  // ready to use
      const GrainTaken* last = nullptr;
      for (const GrainTaken& taken : answer_.taken) {
        if (taken.component != recipe.components[k].name) continue;
        last = &taken;
        open_l -= take_from(taken, std::min(open_l, left_l(taken)), density, grain);
      }
      // What went beyond the day's count came out of the bag that was open.
      if (last != nullptr) take_from(*last, open_l, density, grain);
      else if (const auto& source = ground_.mixes[mix].sources[k]) add(grain, {*source, loose_l(open_l), density_of(*source).value_or(density)});
    }
    return grain;
  }

 private:
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

  double take_from(const GrainTaken& taken, double ready_l, BulkDensity density, std::vector<RawGrain>& grain) {
    constexpr double no_grain_l = 1e-9;
    if (ready_l <= no_grain_l) return 0;
    const double raw_l = ready_l / yield_of(taken);
    taken_l_[taken.supply] += raw_l;
    add(grain, {ground_.shelf[taken.supply], loose_l(raw_l), ground_.plan.shelf[taken.supply].bulk_density.value_or(density)});
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

}  // namespace

std::optional<Change> tick_off(const OpenWorkbook& workbook, const Catalogue& catalogue, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day,
                               const std::vector<std::size_t>& rows, const std::string& today) {
  DayBooking booking(workbook, day, today);
  DayGrain shelf(workbook, ground, answer, day.id);
  RepottingDay now = day.record;
  QStringList names;
  for (const std::size_t row : rows) {
    const auto at = std::ranges::find(ground.rows, row);
    if (at == ground.rows.end() || now.trees[row].done) continue;
    const auto index = static_cast<std::size_t>(at - ground.rows.begin());
    const PlannedTree& planned = ground.plan.trees[index];
    DayTree& ticked = now.trees[row];
    const auto stored = workbook.find(ticked.tree);
    if (!stored) continue;
    const auto mix = static_cast<std::size_t>(std::ranges::find(ground.plan.mixes, planned.mix, &DayMix::name) - ground.plan.mixes.begin());
    const MixedVolume used = ticked.used.value_or(std::ranges::find(answer.trees, index, &TreeOfDay::tree)->poured);
    ticked.done = true;
    if (ticked.done_plan.empty()) ticked.done_plan = ticked.plan_name;

    const auto by_plan = carried_out(workbook, catalogue, ticked);
    Repotting repotting = by_plan ? repotting_by(by_plan->plan, by_plan->worked) : Repotting{};
    repotting.day = now.day;
    repotting.container = ticked.container;
    repotting.mix = ticked.mix;
    repotting.filled = used;
    repotting.plan = ticked.plan;
    if (ticked.plan) repotting.plan_name = ticked.done_plan;
    repotting.note = ticked.note;
    LogEntry entry = event_about(ref_to(ticked.tree), {}, now.day);
    const auto about = [&](const RecordRef& ref) {
      if (std::ranges::find(entry.about, ref) == entry.about.end()) entry.about.push_back(ref);
    };
    about(ref_to(*ticked.mix));
    if (ticked.container) about(ref_to(*ticked.container));
    for (const RawGrain& grain : shelf.take(mix, used)) {
      booking.use(grain, ticked.tree.text);
      if (std::ranges::find(repotting.grain, grain.holder) == repotting.grain.end()) repotting.grain.push_back(grain.holder);
      about(grain.holder);
    }
    about(ref_to(day.id));
    const QString name = to_qt(planned.name);
    entry.text = TickText::tr("Repotted %1 with %2 of %3").arg(name, to_local(volume_text(in_l(used), UnitSystem::metric)), to_qt(planned.mix)).toStdString();
    if (!planned.pot.empty()) entry.text += TickText::tr(", into %1").arg(to_qt(planned.pot)).toStdString();
    if (!repotting.plan_name.empty()) entry.text += TickText::tr(", plan %1").arg(to_qt(repotting.plan_name)).toStdString();
    if (!ticked.note.empty()) entry.text += ": " + ticked.note;
    booking.log(std::move(entry));
    Tree tree = stored->record;
    if (by_plan) tree.trunk_base = trunk_base_after(by_plan->plan, by_plan->worked);
    // The day the grower had set has come.
    repotting.due = std::exchange(tree.due, std::nullopt);
    tree.repottings.push_back(std::move(repotting));
    std::ranges::stable_sort(tree.repottings, {}, &Repotting::day);
    booking.replace(*stored, std::move(tree));
    names << to_qt(ticked.tree.text);
  }
  if (names.isEmpty()) return std::nullopt;
  booking.replace(day, std::move(now));
  booking.change.label = TickText::tr("ticked off %1").arg(names.join(QStringLiteral(", "))).toStdString();
  return std::move(booking.change);
}

std::optional<Change> take_tick_back(const OpenWorkbook& workbook, const Catalogue& catalogue, const Stored<RepottingDay>& day, std::size_t row, const std::string& today) {
  if (row >= day.record.trees.size() || !day.record.trees[row].done) return std::nullopt;
  DayBooking booking(workbook, day, today);
  RepottingDay now = day.record;
  DayTree& ticked = now.trees[row];
  ticked.done = false;
  std::map<RecordRef, Mass> taken;
  for (const auto& entry : workbook.all<StockEntry>()) {
    if (entry.record.other == ref_to(day.id) && entry.record.note == ticked.tree.text) taken[entry.record.holder] -= entry.record.change;
  }
  for (const auto& [holder, mass] : taken) {
    if (mass > Mass{}) booking.entry(holder, StockReason::returned, mass, ticked.tree.text);
  }
  if (const auto stored = workbook.find(ticked.tree)) {
    Tree tree = stored->record;
    const auto done = std::ranges::find_if(tree.repottings, [&](const Repotting& one) { return one.day == now.day && one.mix == ticked.mix; });
    if (done != tree.repottings.end()) {
      if (done->due && !tree.due) tree.due = done->due;
      // Only a plan that was carried out says what it removed, and only such a one moved the trunk base.
      if (done->removed_share) tree.trunk_base = trunk_base_before(plan_carried_out(workbook, catalogue, ticked), *done);
      tree.repottings.erase(done);
      booking.replace(*stored, std::move(tree));
    }
  }
  const QString id = to_qt(ticked.tree.text);
  booking.log(event_about(ref_to(ticked.tree), TickText::tr("Took the tick of %1 back").arg(id), today));
  booking.replace(day, std::move(now));
  booking.change.label = TickText::tr("tick of %1 taken back").arg(id).toStdString();
  return std::move(booking.change);
}

namespace {

/// What was booked for a ticked tree: the litres typed, or else those its history has of that day.
MixedVolume litres_taken(const OpenWorkbook& workbook, const DayTree& tree, const std::string& day) {
  if (tree.used) return *tree.used;
  const auto stored = workbook.find(tree.tree);
  if (!stored) return {};
  const auto& repottings = stored->record.repottings;
  const auto done = std::ranges::find_if(repottings, [&](const Repotting& each) { return each.day == day && each.mix == tree.mix && each.filled; });
  return done == repottings.end() ? MixedVolume{} : *done->filled;
}

}  // namespace

std::optional<Change> return_left_over(const OpenWorkbook& workbook, const DayGround& ground, const DayAnswer& answer, const Stored<RepottingDay>& day, const TubLeft& tub,
                                       const std::string& today) {
  if (tub.mix >= ground.mixes.size()) return std::nullopt;
  DayBooking booking(workbook, day, today);
  const DayMix& mix = ground.plan.mixes[tub.mix];
  const Id<MixVersion>& version = ground.mixes[tub.mix].id;
  double used_l = 0;
  for (const DayTree& tree : day.record.trees) {
    if (tree.done && tree.mix == version) used_l += in_l(litres_taken(workbook, tree, day.record.day));
  }
  const RecordRef ref{RecordKind::batch, workbook.suggest_id(RecordKind::batch)};
  Batch batch;
  batch.mix = version;
  batch.day = day.record.day;
  batch.repotting_day = day.id;
  batch.made = tub.made;
  batch.left = tub.left;
  // The trees have taken theirs from the bags already; what was made beyond that is in the tub, or was spilt.
  for (const RawGrain& grain : DayGrain(ground, answer).take(tub.mix, tub.made)) batch.parts.push_back({grain.holder, grain.raw, grain.raw * grain.density});
  booking.add(RecordKind::batch, ref.id, std::move(batch));
  for (const RawGrain& grain : DayGrain(workbook, ground, answer, day.id).take(tub.mix, mixed_l(std::max(0.0, in_l(tub.made) - used_l)))) {
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
