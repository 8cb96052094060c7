#include "root_plan_desk.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "day_ground.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "known_mix.hpp"
#include "pot_library.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// "Crab apple into grey oval".
std::string usual_name(const RootMassPlan& plan, const QString& tree) {
  return RootPlanDesk::tr("%1 into %2").arg(plan.name.empty() ? tree : to_qt(plan.name), to_qt(plan.pot.name)).toStdString();
}

/// The mix that fills the rest, if one is chosen.
struct Filling {
  Mix mix;
  MixSpread spread;
  QString name;  ///< with the pot tests that its figures rest on
};

void add_section(RootPlanOutcome& outcome, const WorkedPlan& worked, const Filling& filling, const std::stop_token& stop) {
  outcome.mix_name = filling.name.toStdString();
  const auto state = mix_state(filling.mix);
  if (!state || !outcome.views) return;
  outcome.section = root_section(outcome.plan, worked, outcome.views->side, filling.mix, *state);
  // While the tree is dragged the middle of the range is enough.
  if (!outcome.section || outcome.coarse || stop.stop_requested()) return;
  outcome.section->ranges = uncertain_new_mix(outcome.plan, worked, filling.mix, filling.spread).ranges(SampleSize{}, on_all_cores());
}

std::shared_ptr<const RootPlanOutcome> worked_out(RootMassPlan plan, const std::optional<Filling>& filling, PlanDetail detail, std::size_t chosen,
                                                  const std::stop_token& stop) {
  auto outcome = std::make_shared<RootPlanOutcome>();
  outcome->coarse = detail == PlanDetail::live;
  auto answer = work_out(plan, detail, on_all_cores());
  if (answer) {
    outcome->worked = std::min(chosen, answer->plans.size() - 1);
    outcome->views = root_views(plan, answer->plans[outcome->worked]);
    if (!outcome->coarse && !answer->plans.front().fits && !stop.stop_requested()) outcome->growth = smallest_fitting_growth(plan);
    outcome->answer = std::move(answer).value();
  } else {
    outcome->problems = answer.problems();
  }
  outcome->plan = std::move(plan);
  if (filling && outcome->answer) add_section(*outcome, outcome->answer->plans[outcome->worked], *filling, stop);
  return outcome;
}

}  // namespace

RootPlanDesk::RootPlanDesk(RecordBook& book, const Catalogue& catalogue, QObject* parent) : QObject(parent), book_(book), catalogue_(catalogue), job_(this) {
  connect(&book_, &RecordBook::changed, this, &RootPlanDesk::record_changed);
}

std::optional<Stored<KeptRootMassPlan>> RootPlanDesk::kept() const {
  if (current_.isEmpty()) return std::nullopt;
  try {
    return book_.workbook().find(Id<KeptRootMassPlan>{current_.toStdString()});
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return std::nullopt;
  }
}

void RootPlanDesk::open(const QString& id) {
  if (id == current_) return;
  current_ = id;
  chosen_ = 0;
  text_.clear();
  mix_.reset();
  water_.reset();
  plan_.reset();
  dragged_.reset();
  outcome_.reset();
  job_.cancel();
  record_changed();
  emit changed();
}

// A pot test that is kept says something else about the mix of the plan.
std::optional<RetentionConstants> RootPlanDesk::water_of(const std::optional<Id<MixVersion>>& mix) const {
  try {
    const auto version = mix ? book_.workbook().find(*mix) : std::nullopt;
    return version ? std::optional(known_water(version->record.mix, book_.calibrations())) : std::nullopt;
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return std::nullopt;
  }
}

void RootPlanDesk::record_changed() {
  const auto stored = kept();
  const std::string text = stored ? stored->record.plan : std::string();
  const auto mix = stored ? stored->record.mix : std::nullopt;
  const auto water = water_of(mix);
  if (text == text_ && mix == mix_ && water == water_) return;
  mix_ = mix;
  water_ = water;
  text_ = text;
  plan_.reset();
  if (stored) {
    auto read = read_begun_root_mass_plan(text, current_.toStdString(), ComponentSources{&catalogue_, {}});
    if (read) plan_ = std::move(read).value().plan;
    else emit book_.told(sentence_text(read.problems().front()));
  }
  if (plan_) {
    work(PlanDetail::full);
  } else {
    outcome_.reset();
  }
  emit changed();
}

Problems RootPlanDesk::save(const QString& what, const std::function<void(RootMassPlan&)>& change) {
  const auto was = kept();
  if (!was || !plan_) return {};
  RootMassPlan now = *plan_;
  change(now);
  if (now == *plan_) return {};
  if (Problems problems = check(now); !problems.empty() && !lacks_lengths_alone(now)) return problems;
  KeptRootMassPlan record = was->record;
  record.plan = write_root_mass_plan(now);
  // A name that was given with the first pot goes with another; one that was typed stays.
  const QString tree = record.tree ? to_qt(record.tree->text) : QString();
  if (record.name == usual_name(*plan_, tree)) record.name = usual_name(now, tree);
  book_.replace(*was, std::move(record), tr("%1 of root-mass plan %2").arg(what, current_), QStringLiteral("root-plan/%1/%2").arg(current_, what));
  return {};
}

void RootPlanDesk::fill_with(const QString& mix) {
  const auto was = kept();
  if (!was) return;
  KeptRootMassPlan record = was->record;
  record.mix = mix.isEmpty() ? std::nullopt : std::optional(Id<MixVersion>{mix.toStdString()});
  if (!(record == was->record)) book_.replace(*was, std::move(record), tr("mix of root-mass plan %1").arg(current_));
}

RootMassPlan with_numbers(const OpenWorkbook& workbook, const Stored<KeptRootMassPlan>& kept, RootMassPlan plan) {
  const auto numbered = [](const std::string& id, const std::string& name) { return name.empty() || name == id ? id : id + " " + name; };
  plan.name = kept.record.tree ? numbered(kept.record.tree->text, plan.name) + ", " + kept.id.text : numbered(kept.id.text, plan.name);
  for (const auto& pot : workbook.all<RecordedContainer>()) {
    if (!(pot.record.container == plan.pot)) continue;
    plan.pot.name = numbered(pot.id.text, plan.pot.name);
    break;
  }
  return plan;
}

QString RootPlanDesk::plan_for(const QString& tree_id) {
  const auto tree = book_.workbook().find(Id<Tree>{tree_id.toStdString()});
  if (!tree || !tree->record.group) return {};
  RootMassPlan plan;
  plan.group = *tree->record.group;
  plan.name = tree->record.name;
  std::optional<Container> present;
  if (const Repotting* last = stands_in(tree->record)) {
    plan.bare_rooted_last_time = last->bare_rooted;
    plan.untouched_last_time = last->untouched;
    if (last->container) {
      if (const auto pot = book_.workbook().find(*last->container)) present = pot->record.container;
    }
  }
  // A root mass that nobody measured has no lengths until they are typed.
  if (present) plan.block = AsPresentPot{*present};
  else plan.block = BlockBox{};
  const auto library = free_pots(book_.workbook());
  if (!library.empty()) plan.pot = library.front().record.container;
  else if (present) plan.pot = *present;
  else return {};
  if (tree->record.trunk_base) {
    plan.trunk_base = TreePoint{tree->record.trunk_base->right, tree->record.trunk_base->back, tree->record.trunk_base->up};
    if (!check(plan).empty() && !lacks_lengths_alone(plan)) plan.trunk_base.reset();
  }
  KeptRootMassPlan record;
  record.name = usual_name(plan, tree_id);
  record.tree = tree->id;
  record.day = today();
  if (const Repotting* last = stands_in(tree->record); last != nullptr && last->mix) record.mix = newest_version(book_.workbook(), *last->mix);
  record.plan = write_root_mass_plan(plan);
  return book_.add(record, tr("root-mass plan of tree %1").arg(tree_id));
}

void RootPlanDesk::drag(const Pose& pose) {
  if (!plan_) return;
  dragged_ = pose;
  work(PlanDetail::live);
}

void RootPlanDesk::drop() {
  if (!dragged_) return;
  const Pose pose = *dragged_;
  dragged_.reset();
  const bool moved = plan_ && !(pose == plan_->pose);
  const Problems problems = save(tr("place of the tree"), [&](RootMassPlan& plan) { plan.pose = pose; });
  book_.end_typing();
  for (const Problem& problem : problems) emit book_.told(sentence_text(problem));
  // What was refused goes back to where it was; what was kept is worked out by the record's change.
  if (!problems.empty() || !moved || (outcome_ && outcome_->coarse)) work(PlanDetail::full);
}

void RootPlanDesk::choose(std::size_t worked) {
  if (chosen_ == worked) return;
  chosen_ = worked;
  work(PlanDetail::full);
}

const WorkedPlan* RootPlanDesk::worked() const {
  return outcome_ && outcome_->answer ? &outcome_->answer->plans[outcome_->worked] : nullptr;
}

bool RootPlanDesk::lacks_lengths() const { return plan_ && lacks_lengths_alone(*plan_); }

QString RootPlanDesk::wanted_first() const {
  if (lacks_lengths())
    return QCoreApplication::translate("gritwright::desktop::RootPlanTab",
                                       "Measure the root mass and type its length, width and height, or choose the pot it stands in. Nothing is worked out before.");
  return QCoreApplication::translate("gritwright::desktop::RootPlanView", "No plan yet: choose a tree and begin one.");
}

void RootPlanDesk::work(PlanDetail detail) {
  if (!plan_) return;
  if (lacks_lengths()) {
    job_.cancel();
    outcome_.reset();
    emit answered();
    return;
  }
  RootMassPlan plan = *plan_;
  if (dragged_) plan.pose = *dragged_;
  // The library as it is today, not as it was when the plan was begun.
  if (!plan.free_pots.empty()) {
    plan.free_pots.clear();
    for (const auto& pot : free_pots(book_.workbook())) plan.free_pots.push_back(pot.record.container);
  }
  std::optional<Filling> filling;
  if (const auto mix = mix_ ? book_.workbook().find(*mix_) : std::nullopt) {
    MixQuestion known = known_mix(book_.workbook(), catalogue_, mix->record, book_.calibrations());
    filling = Filling{known.mix, spread_of(known, catalogue_), to_qt(known.mix.name) + by_pot_tests(known)};
  }
  job_.start([this, plan = std::move(plan), filling = std::move(filling), detail, chosen = chosen_](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    auto outcome = worked_out(plan, filling, detail, chosen, stop);
    return [this, outcome = std::move(outcome)] {
      outcome_ = outcome;
      emit answered();
    };
  });
}

}  // namespace gritwright::desktop
