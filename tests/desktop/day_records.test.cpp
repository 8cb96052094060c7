// What a repotting day writes into the record: corrections after the tick, grain of several bags and tubs, layers.
#include <QLocale>
#include <QPushButton>
#include <QStatusBar>
#include <QTableWidget>
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "day_trees_on_screen.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "gritwright/workbook/trace.hpp"
#include "models/day_ticking.hpp"
#include "models/shelf.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Trees that a recall of this grain names.
std::set<std::string> trees_of(const OpenWorkbook& workbook, const RecordRef& grain) {
  const auto list = recall_list(workbook, grain);
  REQUIRE(list);
  std::set<std::string> trees;
  for (const RecallRow& row : list->trees) trees.insert(row.ref.id);
  return trees;
}

/// Every pair that a trace leads from and to, both ways, from every bag, tub, day and tree.
std::set<std::string> threads_of(const OpenWorkbook& workbook) {
  std::set<std::string> threads;
  for (const RecordKind kind : {RecordKind::bag, RecordKind::batch, RecordKind::repotting_day, RecordKind::tree}) {
    for (const auto& line : workbook.list(kind)) {
      for (const TraceDirection direction : {TraceDirection::forward, TraceDirection::back}) {
        const auto walked = trace(workbook, line.ref, direction);
        REQUIRE(walked);
        const char* way = direction == TraceDirection::forward ? " to " : " from ";
        for (const TraceStep& step : walked->steps) threads.insert(ref_text(line.ref) + way + ref_text(step.ref) + (step.certain ? "" : "?"));
      }
    }
  }
  return threads;
}

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
  // The history keeps seven digits of a share.
  CHECK_THAT(now.removed_share->value(), WithinAbs(open.b.removed_share, 1e-7));
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
  SeveralBags open;
  open.write(0, DayTreesModel::used, QStringLiteral("5"));
  open.tick(0);
  REQUIRE(open.day().trees.front().done);
  // One grain alone does not shrink: 5 L poured in are 5 L of the bags, 100 g each; the first gives its one litre.
  open.check_gone_g(100, 400);
  const Repotting done = open.tree(open.day().trees.front().tree.text).repottings.back();
  CHECK(done.grain == open.bags);
  // Less poured in, 3 of 5 L: each bag gets its share back.
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.check_gone_g(60, 240);
  open.tick(0);
  open.check_gone_g(0, 0);
}

TEST_CASE("A shoulder's sphagnum and a top dressing come onto the day with their litres and leave the stock", "[day_page]") {
  DressedPine open;
  CHECK(open.day().trees.front().top_dressing == open.grit.id);
  REQUIRE(open.page().answer());
  REQUIRE(open.page().answer()->ok());
  const DayAnswer& answer = open.page().answer()->value();
  const auto layers = answer.trees.front().layers;
  REQUIRE(layers.size() == 2);
  CHECK(layers[0].name == "sphagnum");
  CHECK(layers[1].name == open.grit.id);
  const auto total = std::ranges::find(answer.components, "sphagnum", &GrainLitres::name);
  REQUIRE(total != answer.components.end());
  CHECK_THAT(in_l(total->loose), WithinAbs(in_l(layers[0].loose), 1e-9));
  CHECK(std::ranges::any_of(answer.taken, [&](const GrainTaken& taken) { return open.ground().shelf[taken.supply] == open.moss; }));
  const auto before = stock_g(open.book());
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const Repotting done = open.tree(open.id).repottings.back();
  CHECK(std::ranges::find(done.grain, open.moss) != done.grain.end());
  CHECK(std::ranges::find(done.grain, open.grit) != done.grain.end());
  CHECK_THAT(open.gone_l(open.moss), WithinAbs(in_l(layers[0].loose), 1e-6));
  CHECK_THAT(open.gone_l(open.grit), WithinAbs(in_l(layers[1].loose), 1e-6));
  open.trigger("action_day_tick");
  check_same(stock_g(open.book()), before);
}

TEST_CASE("A bag that was never taken in is, with all it held, when a tick takes of it", "[day_page]") {
  DayOnScreen open;
  Bag moss;
  moss.material = "sphagnum";
  moss.lot = "moss";
  moss.volume = loose_l(10);
  moss.bulk_density = bulk_g_l(25);
  const RecordRef bag{RecordKind::bag, open.record->add(moss, QStringLiteral("bag")).toStdString()};
  open.type_into("day_tree_sphagnum", QStringLiteral("0.8"));
  const double layer_l = in_l(open.page().answer()->value().trees.front().layers.front().loose);
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  CHECK_THAT(in_g(*open.book().stock_of(bag)), WithinAbs(250 - layer_l * 25, 1e-3));
  open.trigger("action_day_tick");
  CHECK_THAT(in_g(*open.book().stock_of(bag)), WithinAbs(250, 1e-3));
}

TEST_CASE("The sphagnum that a plan asks for comes onto the day with it", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  RootMassPlan plan = low_tray_plan();
  plan.permission[static_cast<std::size_t>(Face::top)] = Length{};
  const auto answer = work_out(plan);
  REQUIRE(answer);
  REQUIRE(in_ml(answer->plans.front().sphagnum) > 0);
  open.follow(id, plan);
  REQUIRE(open.day().trees.front().sphagnum);
  CHECK_THAT(in_ml(*open.day().trees.front().sphagnum), WithinRel(in_ml(answer->plans.front().sphagnum), 1e-9));
}

TEST_CASE("A note corrected after the tick leaves cuts and trunk base as they were, though the plan is gone since", "[day_page][regression]") {
  PlannedPineOnDay open;
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.trigger("action_day_tick");
  REQUIRE(open.last().removed_share);
  open.delete_plan();
  Tree expected = open.tree(open.id);
  expected.repottings.back().note = "a root was torn";
  open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
  CHECK(open.tree(open.id) == expected);
  // Litres too are the row's own.
  expected.repottings.back().filled = mixed_l(4);
  open.write(0, DayTreesModel::used, QStringLiteral("4"));
  CHECK(open.tree(open.id) == expected);
}

TEST_CASE("A plan that is gone can't be taken for another after the tick, and the window says why", "[day_page][refuses][regression]") {
  PlannedPineOnDay open;
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.trigger("action_day_tick");
  open.delete_plan();
  const Tree ticked = open.tree(open.id);
  const RepottingDay day = open.day();
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  CHECK(open.tree(open.id) == ticked);
  CHECK(open.day() == day);
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("no root-mass plan that can be worked out")));
}

TEST_CASE("A tree that could not be added up any more is not corrected, and the window says what it lacks", "[day_page][refuses][regression]") {
  DayOnScreen open;
  open.trigger("action_day_tick");
  const RepottingDay day = open.day();
  choose_data(open.find<QComboBox>("day_tree_pot"), "");
  CHECK(open.day() == day);
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("has neither a pot nor planned litres")));
}

TEST_CASE("A repotting that is gone from the history is not corrected, and the window says so", "[day_page][refuses]") {
  DayOnScreen open;
  open.trigger("action_day_tick");
  const auto stored = open.book().find(open.day().trees.front().tree);
  Tree without = stored->record;
  without.repottings.pop_back();
  REQUIRE(open.record->replace(*stored, without, QStringLiteral("tree")));
  const RepottingDay day = open.day();
  open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
  CHECK(open.day() == day);
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("no longer in its history")));
}

TEST_CASE("A repotting that another followed is corrected and taken back without moving the trunk base", "[day_page][regression]") {
  PlannedPineOnDay open;
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.trigger("action_day_tick");
  const auto stored = open.book().find(Id<Tree>{open.id});
  Tree later = stored->record;
  Repotting next;
  next.day = "2099-03-14";
  later.repottings.push_back(next);
  later.trunk_base = TrunkBase{length_cm(1), length_cm(2), length_cm(3)};
  REQUIRE(open.record->replace(*stored, later, QStringLiteral("tree")));
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  CHECK(open.day().trees.front().done_plan == "B");
  CHECK(open.tree(open.id).trunk_base == later.trunk_base);
  open.trigger("action_day_tick");
  CHECK_FALSE(open.day().trees.front().done);
  CHECK(open.tree(open.id).trunk_base == later.trunk_base);
}

TEST_CASE("A note corrected after the tick moves no litres that were not typed, though the day counts on others today", "[day_page][regression]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  open.trigger("action_day_tick");
  const auto filled = open.tree(id).repottings.back().filled;
  REQUIRE(filled);
  const auto stock = stock_g(open.book());
  open.type_into("day_spill", QStringLiteral("30"));
  open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
  CHECK(open.tree(id).repottings.back().note == "a root was torn");
  CHECK(open.tree(id).repottings.back().filled == filled);
  check_same(stock_g(open.book()), stock);
}

TEST_CASE("Litres corrected where a tub stood in for a part of them move the bags by the difference alone", "[day_page][regression]") {
  ThreePines open;
  open.return_tub("5", "0");
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  open.fill_and_tick(0, 3);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  open.fill_and_tick(1, 4);
  // Worked by hand: the larger of what the two trees took and the tub's 5 L: 3 + 4, 3 + 5, 3 + 3, 1 + 3 (the tub's 5 L stay gone), 3 + 4 again.
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
  CHECK_THAT(open.under_l(0), WithinRel(3.0, 1e-6));
  CHECK_THAT(open.under_l(1), WithinRel(4.0, 1e-6));
  open.fill(1, 5);
  CHECK_THAT(open.gone_l(), WithinRel(8.0, 1e-6));
  open.fill(1, 3);
  CHECK_THAT(open.gone_l(), WithinRel(6.0, 1e-6));
  open.fill(0, 1);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  CHECK_THAT(open.under_l(0), WithinRel(1.0, 1e-6));
  CHECK_THAT(open.under_l(1), WithinRel(3.0, 1e-6));
  open.fill(0, 3);
  open.fill(1, 4);
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
}

TEST_CASE("Ticks taken back in any order leave gone what the tub was made of, and no more", "[day_page][regression]") {
  ThreePines open;
  const bool tub_first = GENERATE(true, false);
  const int first = GENERATE(0, 1);
  const int second = 1 - first;
  if (tub_first) open.return_tub("5", "0");
  open.fill_and_tick(0, 3);
  open.fill_and_tick(1, 4);
  if (!tub_first) open.return_tub("5", "0");
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
  // Without either tree the larger of 3 or 4 L and 5 L is gone; ticked again it is 7 once more.
  open.tick(first);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  CHECK_THAT(open.under_l(first), WithinAbs(0.0, 1e-6));
  open.tick(first);
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
  open.tick(second);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
  open.tick(first);
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
}

TEST_CASE("Trees ticked in one step share a tub as if they were ticked one by one", "[day_page][regression]") {
  ThreePines open;
  open.return_tub("5", "0");
  open.fill(0, 3);
  open.fill(1, 4);
  open.trigger("action_day_evening");
  REQUIRE(open.day().trees[1].done);
  CHECK_THAT(open.gone_l(), WithinRel(7.0, 1e-6));
  CHECK_THAT(open.under_l(0), WithinRel(3.0, 1e-6));
  CHECK_THAT(open.under_l(1), WithinRel(4.0, 1e-6));
  open.trigger("action_record_undo");
  CHECK_THAT(open.gone_l(), WithinRel(5.0, 1e-6));
}

TEST_CASE("Whatever is done to a day's trees and tubs, gone is the larger of what the trees took and what was made, and undo gives all back", "[day_page][law][rounds]") {
  ThreePines open;
  const auto seed = GENERATE(1U, 2U, 3U);
  std::mt19937 any(seed);
  const auto below = [&](int most) { return static_cast<int>(any() % static_cast<unsigned>(most)); };
  std::vector<double> used(3, 0.0);
  double made = 0;
  int steps = 0;
  const auto batches = open.book().count(RecordKind::batch);
  std::size_t tubs = 0;
  for (int turn = 0; turn < 24; ++turn) {
    const auto tree = static_cast<std::size_t>(below(3));
    const bool done = open.day().trees[tree].done;
    const double litres = 0.5 * (1 + below(10));
    std::string what;
    if (below(6) == 0) {
      what = "made";
      open.return_tub(std::to_string(static_cast<int>(std::ceil(litres))).c_str(), "0");
      made += std::ceil(litres);
      ++tubs;
      steps += 1;
    } else if (done && below(2) == 0) {
      what = "taken back";
      open.tick(static_cast<int>(tree));
      used[tree] = 0;
      steps += 1;
    } else if (done) {
      what = "corrected";
      if (used[tree] == litres) continue;
      open.fill(static_cast<int>(tree), litres);
      used[tree] = litres;
      steps += 1;
    } else {
      what = "ticked";
      const auto typed = open.day().trees[tree].used;
      open.fill(static_cast<int>(tree), litres);
      open.tick(static_cast<int>(tree));
      used[tree] = litres;
      steps += typed && in_l(*typed) == litres ? 1 : 2;
    }
    INFO("seed " << seed << ", turn " << turn << ": tree " << tree << ' ' << what << ", " << litres << " L");
    REQUIRE(open.day().trees[tree].done == (used[tree] > 0));
    REQUIRE_THAT(open.gone_l(), WithinAbs(std::max(used[0] + used[1] + used[2], made), 1e-6));
    for (int row = 0; row < 3; ++row) REQUIRE_THAT(open.under_l(row), WithinAbs(used[static_cast<std::size_t>(row)], 1e-6));
  }
  CHECK(open.book().count(RecordKind::batch) == batches + tubs);
  for (int step = 0; step < steps; ++step) open.trigger("action_record_undo");
  CHECK(open.book().count(RecordKind::batch) == batches);
  check_same(stock_g(open.book()), open.before);
}

TEST_CASE("What a tree gives back goes to the bags that it took from, though the mix's other trees took from others", "[day_page][regression]") {
  SeveralBags open;
  const std::string second = open.add_tree("second pine");
  open.put(second);
  choose_data(open.find<QComboBox>("day_tree_mix"), open.perlite.text);
  open.type_into("day_tree_fill", QStringLiteral("2"));
  open.write(0, DayTreesModel::used, QStringLiteral("5"));
  open.write(1, DayTreesModel::used, QStringLiteral("2"));
  open.tick(0);
  open.tick(1);
  // Worked by hand: 1 L of the first bag and 4 of the second for the first tree, 2 of the second bag for the other; 100 g each.
  open.check_gone_g(100, 600);
  SECTION("the second tree") {
    open.tick(1);
    open.check_gone_g(100, 400);
    open.tick(0);
  }
  SECTION("the first tree") {
    open.tick(0);
    open.check_gone_g(0, 200);
    open.tick(1);
  }
  SECTION("half of the second tree, then all of both") {
    open.write(1, DayTreesModel::used, QStringLiteral("1"));
    open.check_gone_g(100, 500);
    open.tick(0);
    open.check_gone_g(0, 100);
    open.tick(1);
  }
  open.check_gone_g(0, 0);
}

TEST_CASE("A tick taken back leaves every trace and recall as it was before", "[day_page][trace][law]") {
  SeveralBags open;
  const std::string second = open.add_tree("second pine");
  open.put(second);
  choose_data(open.find<QComboBox>("day_tree_mix"), open.perlite.text);
  open.type_into("day_tree_fill", QStringLiteral("2"));
  open.write(0, DayTreesModel::used, QStringLiteral("5"));
  open.write(1, DayTreesModel::used, QStringLiteral("2"));
  const auto before = threads_of(open.book());
  open.tick(0);
  // Worked by hand: 1 L of the first bag and 4 of the second for the first tree, then 2 of the second bag for the other.
  const std::string first = open.day().trees.front().tree.text;
  CHECK(trees_of(open.book(), open.bags[0]) == std::set<std::string>{first});
  CHECK(trees_of(open.book(), open.bags[1]) == std::set<std::string>{first});
  const auto one_ticked = threads_of(open.book());
  open.tick(1);
  CHECK(trees_of(open.book(), open.bags[1]) == std::set<std::string>{first, second});
  open.tick(1);
  CHECK(threads_of(open.book()) == one_ticked);
  open.tick(1);
  open.tick(0);
  CHECK(trees_of(open.book(), open.bags[0]).empty());
  CHECK(trees_of(open.book(), open.bags[1]) == std::set<std::string>{second});
  open.tick(1);
  CHECK(threads_of(open.book()) == before);
}

TEST_CASE("Litres corrected after the tick are traced to the same tree", "[day_page][trace]") {
  SeveralBags open;
  open.write(0, DayTreesModel::used, QStringLiteral("0.5"));
  open.tick(0);
  const std::string tree = open.day().trees.front().tree.text;
  CHECK(trees_of(open.book(), open.bags[0]) == std::set<std::string>{tree});
  CHECK(trees_of(open.book(), open.bags[1]).empty());
  const auto little = threads_of(open.book());
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  CHECK(trees_of(open.book(), open.bags[1]) == std::set<std::string>{tree});
  open.trigger("action_record_undo");
  CHECK(threads_of(open.book()) == little);
}

TEST_CASE("What a day leaves over in a tub is traced to the bags of its mix, though other mixes were used that day", "[day_page][trace]") {
  SeveralBags open;
  const std::string second = open.add_tree("second pine");
  open.put(second);
  REQUIRE(open.day().trees.back().mix == open.mix);
  open.write(0, DayTreesModel::used, QStringLiteral("5"));
  open.write(1, DayTreesModel::used, QStringLiteral("2"));
  open.tick(0);
  open.tick(1);
  const auto before = threads_of(open.book());
  const auto ground = open.ground();
  const auto answer = work_out(ground.plan);
  REQUIRE(answer);
  TubLeft tub;
  while (ground.mixes[tub.mix].id != open.perlite) ++tub.mix;
  tub.made = mixed_l(6);
  tub.left = mixed_l(1);
  const auto day = open.book().find(Id<RepottingDay>{open.page().current_day().toStdString()});
  auto change = return_left_over(open.book(), ground, *answer, *day, tub, "2026-03-14");
  REQUIRE(change);
  REQUIRE(open.record->apply(std::move(*change)));
  const RecordRef left = ref_to(open.book().all<Batch>().back().id);
  const auto back = trace(open.book(), left, TraceDirection::back);
  REQUIRE(back);
  std::set<RecordRef> bags;
  for (const TraceStep& step : back->steps)
    if (step.ref.kind == RecordKind::bag) bags.insert(step.ref);
  CHECK(bags == std::set<RecordRef>(open.bags.begin(), open.bags.end()));
  const auto list = recall_list(open.book(), open.bags[0]);
  REQUIRE(list);
  CHECK(std::ranges::find(list->holders, left, &RecallRow::ref) != list->holders.end());
  open.trigger("action_record_undo");
  CHECK(threads_of(open.book()) == before);
}

TEST_CASE("What a tub keeps of a tree that was opened again stands under the tub, not the tree", "[day_page][regression]") {
  ThreePines open;
  open.fill_and_tick(0, 3);
  open.return_tub("5", "0");
  const auto gone = stock_g(open.book());
  open.tick(0);
  REQUIRE_FALSE(open.day().trees.front().done);
  check_same(stock_g(open.book()), gone);
  CHECK_THAT(open.under_l(0), WithinAbs(0, 1e-6));
}

TEST_CASE("Layers follow a correction after the tick, and the tick taken back returns them all", "[day_page]") {
  DressedPine open;
  const auto before = stock_g(open.book());
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const auto ticked = stock_g(open.book());
  const double moss_l = open.layer_l("sphagnum");
  const double grit_l = open.layer_l(open.grit.id);
  REQUIRE(moss_l > 0);
  REQUIRE(grit_l > 0);
  SECTION("less sphagnum, more, and none") {
    open.type_into("day_tree_sphagnum", QStringLiteral("0.2"));
    // A quarter of it.
    CHECK_THAT(open.gone_l(open.moss), WithinRel(moss_l / 4, 1e-6));
    open.type_into("day_tree_sphagnum", QStringLiteral("1.2"));
    CHECK_THAT(open.gone_l(open.moss), WithinRel(moss_l * 1.5, 1e-6));
    CHECK_THAT(open.gone_l(open.grit), WithinRel(grit_l, 1e-6));
    open.type_into("day_tree_sphagnum", {});
    CHECK_THAT(open.gone_l(open.moss), WithinAbs(0, 1e-6));
  }
  SECTION("another top dressing") {
    const RecordRef other = open.add_bag("lava", 900);
    open.type_into("day_tree_top_dressing", QString::fromStdString(other.id));
    CHECK_THAT(open.gone_l(open.grit), WithinAbs(0, 1e-6));
    CHECK_THAT(open.gone_l(other), WithinRel(grit_l, 1e-6));
    const auto stands_in = [&](const RecordRef& bag) {
      const auto grain = open.tree(open.id).repottings.back().grain;
      return std::ranges::find(grain, bag) != grain.end();
    };
    const auto is_recalled = [&](const RecordRef& bag) {
      const auto went = trace(open.book(), bag, TraceDirection::forward);
      REQUIRE(went);
      return std::ranges::find(went->steps, RecordRef{RecordKind::tree, open.id}, &TraceStep::ref) != went->steps.end();
    };
    CHECK(stands_in(other));
    CHECK(stands_in(open.moss));
    CHECK_FALSE(stands_in(open.grit));
    CHECK(is_recalled(other));
    CHECK_FALSE(is_recalled(open.grit));
    // What has all of its grain back no longer stands in the tree.
    CHECK(trees_of(open.book(), open.grit).empty());
    CHECK(trees_of(open.book(), other) == std::set<std::string>{open.id});
    open.type_into("day_tree_top_dressing", QString::fromStdString(open.grit.id));
    CHECK(trees_of(open.book(), open.grit) == std::set<std::string>{open.id});
    CHECK(trees_of(open.book(), other).empty());
    CHECK_THAT(open.gone_l(other), WithinAbs(0, 1e-6));
    CHECK(stands_in(open.grit));
    CHECK_FALSE(stands_in(other));
  }
  SECTION("a pot that is dressed higher, and one that is not") {
    choose_data(open.find<QComboBox>("day_tree_pot"), open.dressed_higher);
    CHECK_THAT(open.gone_l(open.grit), WithinRel(open.layer_l(open.grit.id), 1e-6));
    CHECK(open.gone_l(open.grit) > 1.5 * grit_l);
    choose_data(open.find<QComboBox>("day_tree_pot"), open.pot.text);
    CHECK_THAT(open.gone_l(open.grit), WithinAbs(0, 1e-6));
    choose_data(open.find<QComboBox>("day_tree_pot"), open.dressed);
    check_same(stock_g(open.book()), ticked);
  }
  SECTION("a note alone") {
    // The day counts on other litres since.
    open.type_into("day_spill", QStringLiteral("30"));
    open.write(0, DayTreesModel::note, QStringLiteral("a root was torn"));
    check_same(stock_g(open.book()), ticked);
  }
  open.trigger("action_day_tick");
  CHECK_FALSE(open.day().trees.front().done);
  check_same(stock_g(open.book()), before);
}

TEST_CASE("Another plan followed after the tick has its own sphagnum, in the row and off the shelf", "[day_page]") {
  DressedPine open;
  open.follow(open.id, low_tray_plan());
  const auto planned = plan_of_tree(open.book(), test_catalogue(), Id<Tree>{open.id});
  REQUIRE(planned);
  REQUIRE(planned->fills.size() >= 2);
  REQUIRE(in_ml(planned->sphagnum[1]) > in_ml(planned->sphagnum[0]));
  open.write(0, DayTreesModel::used, QStringLiteral("2"));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const double a_l = open.gone_l(open.moss);
  open.write(0, DayTreesModel::plan, QStringLiteral("B"));
  REQUIRE(open.day().trees.front().done_plan == "B");
  REQUIRE(open.day().trees.front().sphagnum);
  CHECK_THAT(in_ml(*open.day().trees.front().sphagnum), WithinRel(in_ml(planned->sphagnum[1]), 1e-9));
  CHECK(open.gone_l(open.moss) > a_l);
  CHECK_THAT(open.gone_l(open.moss), WithinRel(open.layer_l("sphagnum"), 1e-6));
  open.write(0, DayTreesModel::plan, QStringLiteral("A"));
  CHECK_THAT(open.gone_l(open.moss), WithinAbs(a_l, 1e-6));
}

TEST_CASE("Enter on the mix or the pot of a line goes to where it is chosen", "[day_page][regression]") {
  DayOnScreen open;
  choose_data(open.find<QComboBox>("day_tree_mix"), "");
  REQUIRE_FALSE(open.day().trees.front().mix);
  auto* table = open.find<QTableView>("day_table");
  auto* tabs = open.find<QTabWidget>("day_tabs");
  for (const auto& [column, box] : {std::pair{DayTreesModel::mix, "day_tree_mix"}, {DayTreesModel::note, "day_tree_mix"}, {DayTreesModel::pot, "day_tree_pot"}}) {
    INFO(column);
    tabs->setCurrentIndex(0);
    table->setFocus();
    table->setCurrentIndex(open.lines().index(0, column));
    open.press(column == DayTreesModel::pot ? Qt::Key_F2 : Qt::Key_Return);
    CHECK(tabs->currentIndex() == 1);
    CHECK(open.find<QComboBox>(box)->hasFocus());
  }
}

TEST_CASE("What is likely left over is no longer offered once litres were poured in", "[day_page][regression]") {
  DayOnScreen open;
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(7);
  CHECK_FALSE(open.find<QLineEdit>("day_left")->placeholderText().isEmpty());
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  CHECK(open.find<QLineEdit>("day_left")->placeholderText().isEmpty());
  CHECK_FALSE(open.find<QLineEdit>("day_made")->placeholderText().isEmpty());
}

TEST_CASE("Enter in an empty line of what was made takes the planned litres, and what was returned stands below and among the tubs", "[day_page][regression]") {
  DayOnScreen open;
  open.trigger("action_day_tick");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(7);
  CHECK_FALSE(open.find<QLabel>("day_returned")->isVisible());
  auto* made = open.find<QLineEdit>("day_made");
  made->setFocus();
  open.press(Qt::Key_Return);
  const auto& batches = open.page().answer()->value().mixes.front().batches;
  REQUIRE(batches);
  CHECK_THAT(QLocale().toDouble(made->text()), WithinAbs(in_l(batches->made), 0.0051));
  open.find<QLineEdit>("day_left")->setFocus();
  open.type(QStringLiteral("1.5"));
  open.find<QWidget>("day_return")->setFocus();
  open.press(Qt::Key_Space);
  const auto tub = open.book().all<Batch>().back();
  REQUIRE(tub.record.left);
  const QString id = QString::fromStdString(tub.id.text);
  CHECK(open.find<QLabel>("day_returned")->isVisible());
  CHECK(open.find<QLabel>("day_returned")->text().contains(id));
  // Enter and Enter would return it twice.
  for (const char* field : {"day_made", "day_left"}) {
    INFO(field);
    CHECK(open.find<QLineEdit>(field)->text().isEmpty());
    CHECK(open.find<QLineEdit>(field)->placeholderText().isEmpty());
  }
  open.trigger("action_page_bags");
  open.find<QTabWidget>("bags_tabs")->setCurrentIndex(1);
  auto* tubs = open.find<QTableWidget>("leftover_tubs");
  REQUIRE(tubs->isVisible());
  const auto shown = tubs->findItems(id, Qt::MatchExactly);
  REQUIRE(shown.size() == 1);
  CHECK(tubs->item(shown.front()->row(), 3)->text() == to_local(volume_text(1.5, UnitSystem::metric)));
  // What is used of it by hand is booked there.
  tubs->setCurrentCell(shown.front()->row(), 0);
  auto* reason = open.find<QComboBox>("tub_stock_reason");
  reason->setCurrentIndex(reason->findData(static_cast<int>(StockReason::used)));
  open.find<QLineEdit>("tub_stock_amount")->setFocus();
  open.type(QStringLiteral("0.5 L"));
  open.press(Qt::Key_Return);
  REQUIRE(tubs->findItems(id, Qt::MatchExactly).size() == 1);
  CHECK(tubs->item(tubs->findItems(id, Qt::MatchExactly).front()->row(), 3)->text() == to_local(volume_text(1.0, UnitSystem::metric)));
}

TEST_CASE("A leftover tub goes into the next mix: it is offered, its litres come off it, and its grain is traced on", "[day_page][stock][law]") {
  DayOnScreen open;
  open.trigger("action_day_tick");
  open.return_tub("30", "20");
  const auto tub = open.book().all<Batch>().back();
  const RecordRef left = ref_to(tub.id);
  const QString id = QString::fromStdString(tub.id.text);
  REQUIRE_FALSE(tub.record.parts.empty());
  // Where bags are offered: for a search, on the bench, and among the bins.
  const auto on_shelf = [&]() -> std::optional<ShelfItem> {
    const Shelf shelf = shelf_of(open.book(), test_catalogue());
    const auto item = std::ranges::find(shelf.grain, std::optional(left), &ShelfItem::source);
    return item == shelf.grain.end() ? std::nullopt : std::optional(*item);
  };
  REQUIRE(on_shelf());
  CHECK_THAT(in_l(*on_shelf()->candidate.stock), WithinAbs(20, 1e-6));
  open.trigger("action_page_sieving");
  CHECK(open.find<QComboBox>("bag_chooser")->findData(id) >= 0);
  open.bench.open(BenchState{});
  open.trigger("action_page_bags");
  open.find<QTabWidget>("bags_tabs")->setCurrentIndex(1);
  auto* tubs = open.find<QTableWidget>("leftover_tubs");
  tubs->setCurrentCell(tubs->findItems(id, Qt::MatchExactly).front()->row(), 0);
  open.find<QPushButton>("tub_mix")->click();
  // It is the mix it was poured as.
  const auto poured = mix_state(open.book().find(*tub.record.mix)->record.mix).value();
  REQUIRE(open.bench.evaluation().mix);
  const auto again = mix_state(*open.bench.evaluation().mix).value();
  CHECK_THAT(in_g_l(again.poured->bulk_density), WithinRel(in_g_l(poured.poured->bulk_density), 1e-6));
  CHECK_THAT(again.poured->total_porosity.value(), WithinRel(poured.poured->total_porosity.value(), 1e-6));
  CHECK_THAT(again.poured->grain_water.value(), WithinRel(poured.poured->grain_water.value(), 1e-6));
  open.bench.edit(QStringLiteral("name"), {}, [](BenchState& state) { state.mix_name = QStringLiteral("from the tub"); });
  open.trigger("action_keep_mix");
  const auto kept = open.book().all<MixVersion>().back();
  REQUIRE(kept.record.sources == std::vector<std::optional<RecordRef>>{left});
  // The next day takes it out of the tub, and gives it back with the tick.
  open.mix = kept.id;
  const std::string tree = open.add_tree("young pine");
  open.trigger("action_new_day");
  open.put(tree);
  const auto before = stock_g(open.book());
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.tick(0);
  INFO(open.window.statusBar()->currentMessage().toStdString());
  REQUIRE(open.day().trees.front().done);
  const double taken_g = 3 * in_g_l(*bulk_density_of(open.book(), left));
  auto expected = before;
  expected[left] -= taken_g;
  check_same(stock_g(open.book()), expected);
  CHECK_THAT(in_l(*on_shelf()->candidate.stock), WithinAbs(17, 1e-6));
  const auto potted = open.tree(tree).repottings.back();
  CHECK(potted.grain == std::vector<RecordRef>{left});
  for (const BatchPart& part : tub.record.parts) {
    INFO(part.source.id);
    CHECK(trees_of(open.book(), part.source).contains(tree));
  }
  CHECK(trees_of(open.book(), left).contains(tree));
  open.tick(0);
  check_same(stock_g(open.book()), before);
}
