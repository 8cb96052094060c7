// What a repotting day writes into the record: corrections after the tick, grain of several bags and tubs, layers, what spill is learnt from.
#include <catch2/catch.hpp>
#include <map>

#include "day_on_screen.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/root_plan.hpp"
#include "models/day_ticking.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Dry grams by bag, of everything on hand.
std::map<RecordRef, double> stock_g(const OpenWorkbook& book) {
  std::map<RecordRef, double> grams;
  for (const auto& entry : book.all<StockEntry>()) grams[entry.record.holder] += in_g(entry.record.change);
  return grams;
}

void check_same(const std::map<RecordRef, double>& now, const std::map<RecordRef, double>& before) {
  for (const auto& [holder, grams] : before) {
    INFO(holder.id);
    REQUIRE(now.contains(holder));
    CHECK_THAT(now.at(holder), WithinAbs(grams, 1e-3));
  }
}

/// The day with a tree that follows a plan with fall-backs: its top may prove immovable.
class PlannedPineOnDay : public DayOnScreen {
 public:
  PlannedPineOnDay() {
    id = day().trees.front().tree.text;
    const auto stored = book().find(Id<Tree>{id});
    Tree pine = stored->record;
    pine.due = "2031-04-01";
    REQUIRE(record->replace(*stored, pine, QStringLiteral("tree")));
    RootMassPlan plan;
    plan.name = "pine";
    plan.group = SpeciesGroup::deciduous_developing;
    plan.untouched_least = 0;
    plan.removed_most = 1;
    plan.block = BlockBox{BlockForm::box, length_cm(28), length_cm(14), length_cm(9), {}};
    plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
    plan.pose.trunk_base = depth_cm(9);
    plan.pot.name = "tray of the plan";
    plan.pot.rim = {length_cm(30), length_cm(20)};
    plan.pot.depth = depth_cm(8);
    plan.side_clearance = length_cm(1);
    plan.below_clearance = length_cm(1);
    const auto answer = work_out(plan);
    REQUIRE(answer);
    REQUIRE(answer->plans.size() >= 2);
    a = answer->plans[0];
    b = answer->plans[1];
    RecordedContainer tray;
    tray.container = plan.pot;
    record->add(tray, QStringLiteral("pot"));
    KeptRootMassPlan kept;
    kept.name = "pine";
    kept.tree = Id<Tree>{id};
    kept.mix = mix;
    kept.plan = write_root_mass_plan(plan);
    record->add(kept, QStringLiteral("plan"));
    trigger("action_day_plan_again");
    REQUIRE(this->day().trees.front().plan);
  }

  Repotting last() { return tree(id).repottings.back(); }

  std::string id;
  WorkedPlan a, b;
};

}  // namespace

TEST_CASE("A plan corrected after the tick stands in the history with its cuts, and one undo takes the correction back", "[day_page]") {
  PlannedPineOnDay open;
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.trigger("action_day_tick");
  REQUIRE(open.last().plan_name == "A");
  const Tree ticked = open.tree(open.id);
  const auto stock = stock_g(open.book());
  const auto lines = open.book().count(RecordKind::log_entry);
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  CHECK(open.day().trees.front().done);
  CHECK(open.day().trees.front().done_plan == "B");
  REQUIRE(open.tree(open.id).repottings.size() == ticked.repottings.size());
  const Repotting now = open.last();
  CHECK(now.plan_name == "B");
  REQUIRE(now.removed_share);
  CHECK_THAT(now.removed_share->value(), WithinAbs(open.b.removed_share, 1e-9));
  CHECK(now.cut != ticked.repottings.back().cut);
  CHECK(now.due == ticked.repottings.back().due);
  CHECK(open.tree(open.id).trunk_base->up == open.b.trunk_base.quantity());
  // No litre changed, so no grain moved; the log says what was corrected.
  check_same(stock_g(open.book()), stock);
  CHECK(open.book().count(RecordKind::log_entry) > lines);
  open.trigger("action_record_undo");
  CHECK(open.tree(open.id) == ticked);
  CHECK(open.day().trees.front().done_plan == "A");
}

TEST_CASE("A note corrected after the tick changes nothing else of the history, and no stock", "[day_page][regression]") {
  PlannedPineOnDay open;
  open.trigger("action_day_tick");
  Tree expected = open.tree(open.id);
  REQUIRE(expected.repottings.back().removed_share);
  const auto stock = stock_g(open.book());
  // The day counts on other litres since.
  open.type_into("day_spill", QStringLiteral("20"));
  expected.repottings.back().note = "a root was torn";
  open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
  CHECK(open.tree(open.id) == expected);
  check_same(stock_g(open.book()), stock);
}

TEST_CASE("Litres corrected after the tick change history and stock by the difference, in one step", "[day_page]") {
  PlannedPineOnDay open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.write(0, DayTreesModel::used, QStringLiteral("2"));
  open.trigger("action_day_tick");
  const Tree ticked = open.tree(open.id);
  const double two_litres_g = before_g - in_g(*open.book().stock_of(bag));
  REQUIRE(two_litres_g > 0);
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  CHECK_THAT(in_l(*open.last().filled), WithinAbs(3, 1e-9));
  CHECK(open.last().plan_name == "A");
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(1.5 * two_litres_g, 1e-6));
  open.trigger("action_record_undo");
  CHECK(open.tree(open.id) == ticked);
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(two_litres_g, 1e-6));
  // Down as well, and back to none where the tick is taken back.
  open.write(0, DayTreesModel::used, QStringLiteral("1"));
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(0.5 * two_litres_g, 1e-6));
  open.trigger("action_day_tick");
  CHECK_FALSE(open.day().trees.front().done);
  CHECK_THAT(in_g(*open.book().stock_of(bag)), WithinAbs(before_g, 1e-3));
  CHECK(open.tree(open.id).due == "2031-04-01");
}

TEST_CASE("A note and a pot corrected after the tick stand in the history", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  open.trigger("action_day_tick");
  open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
  CHECK(open.tree(id).repottings.back().note == "a root was torn");
  const auto other = open.book().all<RecordedContainer>().back().id;
  REQUIRE(other != open.pot);
  choose_data(open.find<QComboBox>("day_tree_pot"), other.text);
  CHECK(open.tree(id).repottings.back().container == other);
  open.trigger("action_record_undo");
  open.trigger("action_record_undo");
  CHECK(open.tree(id).repottings.back().note.empty());
  CHECK(open.tree(id).repottings.back().container == open.pot);
}

TEST_CASE("The mix of a tree that is done is not changed under its history", "[day_page][refuses]") {
  DayOnScreen open;
  open.trigger("action_day_tick");
  const RepottingDay before = open.day();
  for (const auto& other : open.book().all<MixVersion>()) {
    if (other.id == open.mix) continue;
    choose_data(open.find<QComboBox>("day_tree_mix"), other.id.text);
    break;
  }
  CHECK(open.day() == before);
}

TEST_CASE("A day that gets another date takes its histories with it", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  open.type_into("day_date", QStringLiteral("2031-03-14"));
  open.trigger("action_day_tick");
  open.return_tub("30", "20");
  open.type_into("day_date", QStringLiteral("2031-03-15"));
  CHECK(open.day().day == "2031-03-15");
  CHECK(open.tree(id).repottings.back().day == "2031-03-15");
  CHECK(open.book().all<Batch>().back().record.day == "2031-03-15");
  open.trigger("action_record_undo");
  CHECK(open.tree(id).repottings.back().day == "2031-03-14");
  // So the tick can still be taken back.
  open.trigger("action_day_tick");
  CHECK(open.tree(id).repottings.size() == 1);
}

TEST_CASE("A tree that is ticked off again after a tick was taken back follows the plan that is then chosen", "[day_page][regression]") {
  PlannedPineOnDay open;
  open.trigger("action_day_tick");
  open.trigger("action_day_tick");
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  open.trigger("action_day_tick");
  CHECK(open.last().plan_name == "B");
}

TEST_CASE("A fall-back's litres are booked where it was carried out and none were typed", "[day_page]") {
  PlannedPineOnDay open;
  open.trigger("action_day_tick");
  const double a_l = in_l(*open.last().filled);
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  CHECK_THAT(in_l(*open.last().filled) / a_l, WithinRel(in_ml(open.b.fill) / in_ml(open.a.fill), 1e-6));
}

TEST_CASE("Spill is learnt only where all of a mix's trees and tubs are known", "[day_page][regression]") {
  DayOnScreen open;
  open.put(open.add_tree("second pine"));
  open.put(open.add_tree("third pine"));
  const std::size_t known = open.ground().learnt.spills.size();
  // 10 L made, .7 left, 8.7 poured in: 1 - 8.7/9.3 = 6.45 %. Without the third tree's litres it would be 1 - 4.5/9.3 = 52 %.
  open.write(0, DayTreesModel::used, QStringLiteral("2"));
  open.write(1, DayTreesModel::used, QStringLiteral("2.5"));
  open.trigger("action_day_evening");
  open.return_tub("10", "0.7");
  CHECK(open.ground().learnt.spills.size() == known);
  open.find<QTableView>("day_table")->setCurrentIndex(open.lines().index(2, DayTreesModel::tree));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees[2].done);
  CHECK(open.ground().learnt.spills.size() == known);
  open.write(2, DayTreesModel::used, QStringLiteral("4.2"));
  REQUIRE(open.ground().learnt.spills.size() == known + 1);
  CHECK_THAT(open.ground().learnt.spills.back().value(), WithinAbs(1 - 8.7 / 9.3, 1e-9));
}

TEST_CASE("Two tubs of a mix teach its spill together, and its grain leaves the bags once", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.write(0, DayTreesModel::used, QStringLiteral("12"));
  open.trigger("action_day_tick");
  const double twelve_litres_g = before_g - in_g(*open.book().stock_of(bag));
  open.return_tub("8", "0");
  // Twelve of the eight litres made so far: the second tub is still to be entered.
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(twelve_litres_g, 1e-6));
  open.return_tub("8", "3.2");
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(twelve_litres_g * 16 / 12, 1e-6));
  // 16 made, 3.2 left, 12 poured in: 1 - 12/12.8.
  REQUIRE_FALSE(open.ground().learnt.spills.empty());
  CHECK_THAT(open.ground().learnt.spills.back().value(), WithinAbs(1 - 12 / 12.8, 1e-9));
}

TEST_CASE("A tub that was entered before its tree was ticked has the tree's grain already", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.return_tub("6", "2");
  const double six_litres_g = before_g - in_g(*open.book().stock_of(bag));
  REQUIRE(six_litres_g > 0);
  open.write(0, DayTreesModel::used, QStringLiteral("3.8"));
  open.trigger("action_day_tick");
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(six_litres_g, 1e-6));
  const std::string id = open.day().trees.front().tree.text;
  CHECK_FALSE(open.tree(id).repottings.back().grain.empty());
  open.trigger("action_day_tick");
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(six_litres_g, 1e-6));
}

TEST_CASE("Grain that lies in several bags of one material leaves them in their order, each as far as it goes", "[day_page]") {
  DayOnScreen open;
  // Two bags of one material that is in no other mix, named in the mix by the material alone: the first holds 1 L, the second 20.
  std::vector<RecordRef> bags;
  for (const double litres : {1.0, 20.0}) {
    Bag bag;
    bag.material = "perlite";
    bag.lot = "several";
    bag.volume = loose_l(litres);
    bag.bulk_density = bulk_g_l(100);
    bag.particle_density = particle_g_l(200);
    const RecordRef ref{RecordKind::bag, open.record->add(bag, QStringLiteral("bag")).toStdString()};
    StockEntry received;
    received.holder = ref;
    received.change = loose_l(litres) * bulk_g_l(100);
    received.day = "2026-01-10";
    open.record->add(received, QStringLiteral("received"));
    bags.push_back(ref);
  }
  MixVersion perlite;
  perlite.mix.name = "several bags";
  Component component;
  component.name = "perlite";
  component.material = "perlite";
  component.parts = Parts(1);
  component.grain.bulk_density = bulk_g_l(100);
  component.grain.particle_density = particle_g_l(200);
  component.sizes = SingleSize{aperture_mm(4)};
  perlite.mix.components = {component};
  perlite.sources = {std::nullopt};
  const auto mix = Id<MixVersion>{open.record->add(perlite, QStringLiteral("mix")).toStdString()};
  choose_data(open.find<QComboBox>("day_tree_mix"), mix.text);
  REQUIRE(open.day().trees.front().mix == mix);
  open.type_into("day_tree_fill", QStringLiteral("4"));
  const auto before = stock_g(open.book());
  open.write(0, DayTreesModel::used, QStringLiteral("5"));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const auto after = stock_g(open.book());
  // One grain alone does not shrink: 5 L poured in are 5 L of the bags, 100 g each; the first gives its one litre.
  CHECK_THAT(before.at(bags[0]) - after.at(bags[0]), WithinAbs(100, 1e-3));
  CHECK_THAT(before.at(bags[1]) - after.at(bags[1]), WithinAbs(400, 1e-3));
  const Repotting done = open.tree(open.day().trees.front().tree.text).repottings.back();
  CHECK(done.grain == bags);
  // Less poured in, 3 of 5 L: each bag gets its share back.
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  const auto corrected = stock_g(open.book());
  CHECK_THAT(before.at(bags[0]) - corrected.at(bags[0]), WithinAbs(60, 1e-3));
  CHECK_THAT(before.at(bags[1]) - corrected.at(bags[1]), WithinAbs(240, 1e-3));
  open.trigger("action_day_tick");
  check_same(stock_g(open.book()), before);
}

TEST_CASE("A shoulder's sphagnum and a top dressing come onto the day with their litres and leave the stock", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  RecordedContainer dressed = open.book().find(open.pot)->record;
  dressed.container.name = "dressed";
  dressed.container.top_dressing = depth_cm(0.4);
  const QString pot = open.record->add(dressed, QStringLiteral("pot"));
  choose_data(open.find<QComboBox>("day_tree_pot"), pot.toStdString());
  Bag moss;
  moss.material = "sphagnum";
  moss.lot = "moss";
  moss.volume = loose_l(10);
  moss.bulk_density = bulk_g_l(25);
  const RecordRef moss_bag{RecordKind::bag, open.record->add(moss, QStringLiteral("bag")).toStdString()};
  const std::string dressing = open.book().find(open.mix)->record.sources.front()->id;
  open.type_into("day_tree_sphagnum", QStringLiteral("0.8"));
  open.type_into("day_tree_top_dressing", QString::fromStdString(dressing));
  CHECK(open.day().trees.front().top_dressing == dressing);
  REQUIRE(open.page().answer());
  REQUIRE(open.page().answer()->ok());
  const DayAnswer& answer = open.page().answer()->value();
  const auto layers = answer.trees.front().layers;
  REQUIRE(layers.size() == 2);
  CHECK(layers[0].name == "sphagnum");
  CHECK(layers[1].name == dressing);
  const auto total = std::ranges::find(answer.components, "sphagnum", &GrainLitres::name);
  REQUIRE(total != answer.components.end());
  CHECK_THAT(in_l(total->loose), WithinAbs(in_l(layers[0].loose), 1e-9));
  CHECK(std::ranges::any_of(answer.taken, [&](const GrainTaken& taken) { return open.ground().shelf[taken.supply] == moss_bag; }));
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  const auto before = stock_g(open.book());
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const Repotting done = open.tree(id).repottings.back();
  CHECK(std::ranges::find(done.grain, moss_bag) != done.grain.end());
  // The bag was never taken in: it is now, with its 250 g, and the moss is off it.
  CHECK_THAT(in_g(*open.book().stock_of(moss_bag)), WithinAbs(250 - in_l(layers[0].loose) * 25, 1e-3));
  open.trigger("action_day_tick");
  CHECK_THAT(in_g(*open.book().stock_of(moss_bag)), WithinAbs(250, 1e-3));
  check_same(stock_g(open.book()), before);
}

TEST_CASE("The sphagnum that a plan asks for comes onto the day with it", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  RootMassPlan plan;
  plan.name = "raised";
  plan.group = SpeciesGroup::deciduous_developing;
  plan.untouched_least = 0;
  plan.removed_most = 1;
  plan.block = BlockBox{BlockForm::box, length_cm(20), length_cm(14), length_cm(8), {}};
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(6)};
  plan.permission[static_cast<std::size_t>(Face::top)] = Length{};
  plan.pot.name = "low tray";
  plan.pot.rim = {length_cm(30), length_cm(20)};
  plan.pot.depth = depth_cm(8);
  plan.side_clearance = length_cm(1);
  plan.below_clearance = length_cm(1);
  const auto answer = work_out(plan);
  REQUIRE(answer);
  REQUIRE(in_ml(answer->plans.front().sphagnum) > 0);
  KeptRootMassPlan kept;
  kept.name = "raised";
  kept.tree = Id<Tree>{id};
  kept.mix = open.mix;
  kept.plan = write_root_mass_plan(plan);
  open.record->add(kept, QStringLiteral("plan"));
  open.trigger("action_day_plan_again");
  REQUIRE(open.day().trees.front().sphagnum);
  CHECK_THAT(in_ml(*open.day().trees.front().sphagnum), WithinRel(in_ml(answer->plans.front().sphagnum), 1e-9));
}
