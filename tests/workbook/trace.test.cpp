#include <algorithm>

#include "gritwright/workbook/trace.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

struct Nursery {
  Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());

  template <class R>
  void put(R record, const std::string& id) {
    const auto added = workbook.add(std::move(record), id, id);
    INFO(id << " " << code_of(added));
    REQUIRE(added);
  }
  void bag(const std::string& id) { put(akadama_bag(id), id); }
  void fraction(const std::string& id, RecordRef source, const std::string& day) {
    Fraction record;
    record.source = std::move(source);
    record.from = aperture_mm(2);
    record.to = aperture_mm(6);
    record.day = day;
    put(record, id);
  }
  void batch(const std::string& id, std::vector<RecordRef> sources, const std::string& day) {
    Batch record;
    record.day = day;
    for (RecordRef& source : sources) record.parts.push_back({std::move(source), loose_l(3), {}});
    put(record, id);
  }
  static Repotting repotting(const std::string& day, std::vector<RecordRef> grain) {
    Repotting record;
    record.day = day;
    record.grain = std::move(grain);
    return record;
  }
  void tree(const std::string& id, std::vector<Repotting> repottings) {
    Tree record;
    record.name = id;
    record.species = "Pinus thunbergii";
    record.repottings = std::move(repottings);
    put(record, id);
  }
  void repotting_day(const std::string& id) {
    RepottingDay record;
    record.day = "2026-03-14";
    put(record, id);
  }
  /// A line of the ledger between a holder and a day, in grams.
  void booked(const RecordRef& holder, double grams, const std::string& on_day) {
    StockEntry line;
    line.holder = holder;
    line.reason = grams < 0 ? StockReason::used : StockReason::returned;
    line.change = mass_g(grams);
    line.other = RecordRef{RecordKind::repotting_day, on_day};
    line.day = "2026-03-14";
    put(line, "");
  }
};

RecordRef bag_ref(const std::string& id) { return {RecordKind::bag, id}; }
RecordRef batch_ref(const std::string& id) { return {RecordKind::batch, id}; }
RecordRef bin_ref(const std::string& id) { return {RecordKind::bin, id}; }
RecordRef tree_ref(const std::string& id) { return {RecordKind::tree, id}; }

const TraceStep* step_of(const Trace& trace, const RecordRef& ref) {
  const auto found = std::ranges::find(trace.steps, ref, &TraceStep::ref);
  return found == trace.steps.end() ? nullptr : &*found;
}

bool reaches(const Nursery& nursery, const RecordRef& from, const RecordRef& to) {
  const auto forward = trace(nursery.workbook, from, TraceDirection::forward);
  REQUIRE(forward);
  return step_of(*forward, to) != nullptr;
}

}  // namespace

TEST_CASE("A bag is followed through fraction and batch to its trees and back from them", "[trace][law]") {
  Nursery nursery;
  nursery.bag("K-07");
  nursery.bag("P-03");
  nursery.fraction("FR-01", bag_ref("K-07"), "2026-02-10");
  nursery.batch("BT-01", {{RecordKind::fraction, "FR-01"}, bag_ref("P-03")}, "2026-03-01");
  nursery.tree("TR-01", {Nursery::repotting("2026-03-02", {batch_ref("BT-01")})});
  nursery.tree("TR-02", {Nursery::repotting("2026-03-03", {bag_ref("P-03")})});

  const auto list = recall_list(nursery.workbook, bag_ref("K-07"));
  REQUIRE(list);
  REQUIRE(list->trees.size() == 1);
  CHECK(list->trees.front().ref == tree_ref("TR-01"));
  CHECK(list->trees.front().standing == Standing::now);
  CHECK(list->trees.front().certain);
  CHECK(list->trees.front().way ==
        std::vector<RecordRef>{bag_ref("K-07"), {RecordKind::fraction, "FR-01"}, batch_ref("BT-01"), tree_ref("TR-01")});

  const auto back = trace(nursery.workbook, tree_ref("TR-01"), TraceDirection::back);
  REQUIRE(back);
  CHECK(step_of(*back, bag_ref("K-07")));
  CHECK(step_of(*back, bag_ref("P-03")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-07"), tree_ref("TR-02")));
}

TEST_CASE("What is tipped into a bin after a batch was taken out of it is not in the batch", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02", "K-03"}) nursery.bag(id);
  Bin bin;
  bin.name = "blue tub";
  bin.contents = {{bag_ref("K-01"), "2026-01-10", "2026-02-20", {}},
                  {bag_ref("K-02"), "2026-01-20", {}, {}},
                  {bag_ref("K-03"), "2026-03-20", {}, {}}};
  nursery.put(bin, "BIN-01");
  nursery.batch("BT-01", {bin_ref("BIN-01")}, "2026-02-01");
  nursery.batch("BT-02", {bin_ref("BIN-01")}, "2026-03-01");
  nursery.tree("TR-01", {Nursery::repotting("2026-02-02", {batch_ref("BT-01")})});
  nursery.tree("TR-02", {Nursery::repotting("2026-03-02", {batch_ref("BT-02")})});
  CHECK(reaches(nursery, bag_ref("K-01"), tree_ref("TR-01")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-01"), tree_ref("TR-02")));
  CHECK(reaches(nursery, bag_ref("K-02"), tree_ref("TR-01")));
  CHECK(reaches(nursery, bag_ref("K-02"), tree_ref("TR-02")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-03"), tree_ref("TR-02")));
  const auto back = trace(nursery.workbook, tree_ref("TR-02"), TraceDirection::back);
  REQUIRE(back);
  CHECK_FALSE(step_of(*back, bag_ref("K-01")));
  REQUIRE(step_of(*back, bag_ref("K-02")));
  CHECK_FALSE(step_of(*back, bag_ref("K-03")));
}

TEST_CASE("Grain out of a bin of several lots may be any of them, out of a bin of one lot it is that one", "[trace]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02", "K-03"}) nursery.bag(id);
  Bin several;
  several.name = "several";
  several.contents = {{bag_ref("K-01"), "2026-01-10", {}, {}}, {bag_ref("K-02"), "2026-01-20", {}, {}}};
  nursery.put(several, "BIN-01");
  Bin one_after_the_other;
  one_after_the_other.name = "one after the other";
  one_after_the_other.contents = {{bag_ref("K-01"), "2026-01-10", "2026-01-15", {}}, {bag_ref("K-03"), "2026-01-20", {}, {}}};
  nursery.put(one_after_the_other, "BIN-02");
  nursery.tree("TR-01", {Nursery::repotting("2026-03-01", {bin_ref("BIN-01")})});
  nursery.tree("TR-02", {Nursery::repotting("2026-03-01", {bin_ref("BIN-02")})});
  CHECK_FALSE(recall_list(nursery.workbook, bag_ref("K-02"))->trees.front().certain);
  const auto sure = recall_list(nursery.workbook, bag_ref("K-03"));
  REQUIRE(sure->trees.size() == 1);
  CHECK(sure->trees.front().certain);
}

TEST_CASE("The ledger makes nothing certain that a bin of several lots leaves open, and outlasts no emptying", "[trace][law]") {
  Nursery nursery;
  nursery.bag("A-01");
  nursery.bag("A-02");
  Bin bin;
  bin.name = "leftovers";
  bin.contents = {{bag_ref("A-01"), "2026-01-01", "2026-02-01", {}}, {bag_ref("A-02"), "2026-01-01", {}, {}}};
  nursery.put(bin, "BIN-01");
  StockEntry tipped;
  tipped.holder = bag_ref("A-01");
  tipped.reason = StockReason::used;
  tipped.change = mass_g(-500);
  tipped.other = bin_ref("BIN-01");
  tipped.day = "2026-01-01";
  nursery.put(tipped, "S-01");
  nursery.batch("BT-01", {bin_ref("BIN-01")}, "2026-01-15");
  nursery.batch("BT-02", {bin_ref("BIN-01")}, "2026-03-01");
  const auto forward = trace(nursery.workbook, bag_ref("A-01"), TraceDirection::forward);
  REQUIRE(forward);
  REQUIRE(step_of(*forward, batch_ref("BT-01")) != nullptr);
  CHECK_FALSE(step_of(*forward, batch_ref("BT-01"))->certain);
  CHECK(step_of(*forward, batch_ref("BT-02")) == nullptr);
  const auto back = trace(nursery.workbook, batch_ref("BT-02"), TraceDirection::back);
  REQUIRE(back);
  CHECK(step_of(*back, bag_ref("A-01")) == nullptr);
  CHECK(step_of(*back, bag_ref("A-02")) != nullptr);
}

TEST_CASE("A later repotting may leave some of the grain, unless all was washed off", "[trace]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02"}) nursery.bag(id);
  nursery.tree("TR-01", {Nursery::repotting("2024-03-01", {bag_ref("K-01")}), Nursery::repotting("2026-03-01", {bag_ref("K-02")})});
  Repotting washed = Nursery::repotting("2026-03-01", {bag_ref("K-02")});
  washed.bare_rooted = true;
  nursery.tree("TR-02", {Nursery::repotting("2024-03-01", {bag_ref("K-01")}), washed});
  const auto list = recall_list(nursery.workbook, bag_ref("K-01"));
  REQUIRE(list->trees.size() == 2);
  CHECK(list->trees[0].ref == tree_ref("TR-01"));
  CHECK(list->trees[0].standing == Standing::may_remain);
  CHECK_FALSE(list->trees[0].certain);
  CHECK(list->trees[1].standing == Standing::was);
  CHECK(list->trees[1].until == "2026-03-01");
  const auto back = trace(nursery.workbook, tree_ref("TR-02"), TraceDirection::back);
  CHECK_FALSE(step_of(*back, bag_ref("K-01")));
  CHECK(step_of(*back, bag_ref("K-02")));
}

TEST_CASE("Reclaimed grain carries on what the tree stood in on that day, and no more", "[trace]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02", "K-03"}) nursery.bag(id);
  nursery.tree("TR-01", {Nursery::repotting("2023-03-01", {bag_ref("K-01")}), Nursery::repotting("2025-03-01", {bag_ref("K-02")})});
  Bag reclaimed = akadama_bag("");
  reclaimed.reclaimed = Reclaimed{{"TR-01"}, {}, "2025-03-01"};
  reclaimed.received = "2025-03-01";
  nursery.put(reclaimed, "R-01");
  nursery.tree("TR-09", {Nursery::repotting("2026-03-01", {bag_ref("R-01")})});
  CHECK(reaches(nursery, bag_ref("K-01"), tree_ref("TR-09")));
  // The fresh grain went in on the same day and might have been caught up with the old.
  CHECK(reaches(nursery, bag_ref("K-02"), tree_ref("TR-09")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-03"), tree_ref("TR-09")));
  const auto back = trace(nursery.workbook, tree_ref("TR-09"), TraceDirection::back);
  REQUIRE(step_of(*back, tree_ref("TR-01")));
  CHECK(step_of(*back, bag_ref("K-01")));
}

TEST_CASE("Grain that goes round in circles is followed once", "[trace]") {
  Nursery nursery;
  nursery.bag("K-01");
  Bin first;
  first.name = "first";
  first.contents = {{bag_ref("K-01"), {}, {}, {}}, {bin_ref("BIN-02"), {}, {}, {}}};
  nursery.put(first, "BIN-01");
  Bin second;
  second.name = "second";
  second.contents = {{bin_ref("BIN-01"), {}, {}, {}}};
  nursery.put(second, "BIN-02");
  const auto forward = trace(nursery.workbook, bag_ref("K-01"), TraceDirection::forward);
  REQUIRE(forward);
  CHECK(forward->steps.size() == 3);
}

TEST_CASE("What was made of a deleted record can still be traced", "[trace]") {
  Nursery nursery;
  nursery.bag("K-01");
  nursery.batch("BT-01", {bag_ref("K-01")}, "2026-03-01");
  nursery.tree("TR-01", {Nursery::repotting("2026-03-02", {batch_ref("BT-01")})});
  REQUIRE(nursery.workbook.remove(*nursery.workbook.find(Id<Batch>{"BT-01"}), "batch BT-01"));
  const auto list = recall_list(nursery.workbook, bag_ref("K-01"));
  REQUIRE(list->trees.size() == 1);
  REQUIRE(list->holders.size() == 2);
  CHECK(list->holders[1].deleted);
}

TEST_CASE("What a repotting day gave back to its bag leads nowhere", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02"}) nursery.bag(id);
  nursery.repotting_day("D-01");
  nursery.booked(bag_ref("K-01"), -1200, "D-01");
  nursery.booked(bag_ref("K-02"), -800, "D-01");
  nursery.tree("TR-02", {Nursery::repotting("2026-03-14", {bag_ref("K-02")})});
  // The rest of what K-01 gave is in a tree of before.
  nursery.tree("TR-01", {Nursery::repotting("2026-03-01", {bag_ref("K-01")})});
  const RecordRef day{RecordKind::repotting_day, "D-01"};
  SECTION("all of it, in two parts") {
    nursery.booked(bag_ref("K-01"), 200.1234567, "D-01");
    nursery.booked(bag_ref("K-01"), 999.8765433, "d-01");
    CHECK_FALSE(reaches(nursery, bag_ref("K-01"), day));
    const auto back = trace(nursery.workbook, day, TraceDirection::back);
    REQUIRE(back);
    CHECK(step_of(*back, bag_ref("K-01")) == nullptr);
    CHECK(step_of(*back, bag_ref("K-02")) != nullptr);
  }
  SECTION("a part of it") {
    nursery.booked(bag_ref("K-01"), 1199.9, "D-01");
    CHECK(reaches(nursery, bag_ref("K-01"), day));
  }
  CHECK_FALSE(reaches(nursery, bag_ref("K-02"), bag_ref("K-01")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-02"), tree_ref("TR-01")));
  const auto back = trace(nursery.workbook, tree_ref("TR-01"), TraceDirection::back);
  REQUIRE(back);
  CHECK(step_of(*back, bag_ref("K-02")) == nullptr);
}

TEST_CASE("A holder that got more of a repotting day than it gave may hold what the day took from others", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02", "K-03"}) nursery.bag(id);
  nursery.repotting_day("D-01");
  nursery.booked(bag_ref("K-01"), -1000, "D-01");
  nursery.booked(bag_ref("K-02"), -1000, "D-01");
  nursery.booked(bag_ref("K-03"), -100, "D-01");
  nursery.booked(bag_ref("K-03"), 300, "D-01");
  const auto forward = trace(nursery.workbook, bag_ref("K-01"), TraceDirection::forward);
  REQUIRE(forward);
  REQUIRE(step_of(*forward, bag_ref("K-03")) != nullptr);
  CHECK_FALSE(step_of(*forward, bag_ref("K-03"))->certain);
  const auto back = trace(nursery.workbook, bag_ref("K-03"), TraceDirection::back);
  REQUIRE(back);
  CHECK(step_of(*back, bag_ref("K-02")) != nullptr);
  CHECK_FALSE(reaches(nursery, bag_ref("K-01"), bag_ref("K-02")));
}

TEST_CASE("A tub that a repotting day left over is traced by its parts, and by all of the day where it has none", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02"}) nursery.bag(id);
  nursery.repotting_day("D-01");
  nursery.booked(bag_ref("K-01"), -1000, "D-01");
  nursery.booked(bag_ref("K-02"), -1000, "D-01");
  nursery.batch("BT-01", {bag_ref("K-01")}, "2026-03-14");
  nursery.batch("BT-02", {}, "2026-03-14");
  nursery.booked(batch_ref("BT-01"), 500, "D-01");
  nursery.booked(batch_ref("BT-02"), 500, "D-01");
  nursery.tree("TR-01", {Nursery::repotting("2026-04-02", {batch_ref("BT-01")})});
  nursery.tree("TR-02", {Nursery::repotting("2026-04-02", {batch_ref("BT-02")})});
  for (const char* bag : {"K-01", "K-02"}) {
    for (const char* tree : {"TR-01", "TR-02"}) {
      INFO(bag << " " << tree);
      const bool is_in = bag != std::string("K-02") || tree != std::string("TR-01");
      CHECK(reaches(nursery, bag_ref(bag), tree_ref(tree)) == is_in);
      const auto back = trace(nursery.workbook, tree_ref(tree), TraceDirection::back);
      REQUIRE(back);
      CHECK((step_of(*back, bag_ref(bag)) != nullptr) == is_in);
    }
  }
  const auto list = recall_list(nursery.workbook, bag_ref("K-01"));
  REQUIRE(list);
  REQUIRE(list->trees.size() == 2);
  CHECK(list->trees[0].ref == tree_ref("TR-01"));
  CHECK(list->trees[0].certain);
  CHECK_FALSE(list->trees[1].certain);
}

TEST_CASE("What was screened, mixed or taken back is of its source whatever days were written down", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02"}) nursery.bag(id);
  nursery.fraction("FR-01", bag_ref("K-01"), "2026-03-10");
  nursery.batch("BT-01", {bag_ref("K-01")}, "2026-03-12");
  Bag reclaimed = akadama_bag("");
  reclaimed.reclaimed = Reclaimed{{"TR-09"}, {}, "2026-03-15"};
  nursery.tree("TR-09", {Nursery::repotting("2024-03-01", {bag_ref("K-01")}), Nursery::repotting("2026-03-20", {bag_ref("K-02")})});
  nursery.put(reclaimed, "R-01");
  const RecordRef fraction{RecordKind::fraction, "FR-01"};
  const auto potted = [&](const std::string& id, const RecordRef& grain) { nursery.tree(id, {Nursery::repotting("2026-03-01", {grain})}); };
  potted("TR-01", fraction);
  potted("TR-02", batch_ref("BT-01"));
  potted("TR-03", bag_ref("R-01"));
  nursery.batch("BT-02", {fraction}, "2026-03-02");
  potted("TR-04", batch_ref("BT-02"));
  const auto list = recall_list(nursery.workbook, bag_ref("K-01"));
  REQUIRE(list);
  for (const char* id : {"TR-01", "TR-02", "TR-03", "TR-04"}) {
    INFO(id);
    const auto row = std::ranges::find(list->trees, tree_ref(id), &RecallRow::ref);
    REQUIRE(row != list->trees.end());
    CHECK(row->standing == Standing::now);
    const auto back = trace(nursery.workbook, tree_ref(id), TraceDirection::back);
    REQUIRE(back);
    CHECK(step_of(*back, bag_ref("K-01")) != nullptr);
    // The days still tell what the tree stood in when its old ground was taken back.
    CHECK(step_of(*back, bag_ref("K-02")) == nullptr);
    CHECK_FALSE(reaches(nursery, bag_ref("K-02"), tree_ref(id)));
  }
}

TEST_CASE("Grain out of a bin that was empty by its days may be any that lay in it", "[trace][law]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02", "K-03"}) nursery.bag(id);
  Bin bin;
  bin.name = "tub";
  bin.contents = {{bag_ref("K-01"), "2026-01-10", "2026-01-20", {}}, {bag_ref("K-02"), "2026-03-20", {}, {}}};
  nursery.put(bin, "BIN-01");
  nursery.tree("TR-01", {Nursery::repotting("2026-02-01", {bin_ref("BIN-01")})});
  nursery.tree("TR-02", {Nursery::repotting("2026-01-15", {bin_ref("BIN-01")})});
  for (const char* id : {"K-01", "K-02"}) {
    INFO(id);
    const auto list = recall_list(nursery.workbook, bag_ref(id));
    REQUIRE(list);
    const auto row = std::ranges::find(list->trees, tree_ref("TR-01"), &RecallRow::ref);
    REQUIRE(row != list->trees.end());
    CHECK_FALSE(row->certain);
    const auto back = trace(nursery.workbook, tree_ref("TR-01"), TraceDirection::back);
    REQUIRE(back);
    REQUIRE(step_of(*back, bag_ref(id)) != nullptr);
    CHECK_FALSE(step_of(*back, bag_ref(id))->certain);
  }
  CHECK_FALSE(reaches(nursery, bag_ref("K-02"), tree_ref("TR-02")));
  CHECK_FALSE(reaches(nursery, bag_ref("K-03"), tree_ref("TR-01")));
}

TEST_CASE("Forward and back tell of the same pairs in random nurseries", "[trace][law]") {
  std::uint32_t state = 20260314;
  const auto random = [&](int below) {
    state = state * 1664525U + 1013904223U;
    return static_cast<int>((state >> 16U) % static_cast<std::uint32_t>(below));
  };
  const auto day = [&] { return "2026-0" + std::to_string(1 + random(6)) + "-1" + std::to_string(random(10)); };
  for (int round = 0; round < 6; ++round) {
    Nursery nursery;
    std::vector<RecordRef> grain;
    for (int i = 0; i < 4; ++i) {
      nursery.bag("K-0" + std::to_string(i));
      grain.push_back(bag_ref("K-0" + std::to_string(i)));
    }
    for (int i = 0; i < 5; ++i) {
      const std::string number = "0" + std::to_string(i);
      if (random(2) == 0) {
        Bin bin;
        bin.name = number;
        for (int k = 0; k < 1 + random(3); ++k) {
          BinContent content{grain[static_cast<std::size_t>(random(static_cast<int>(grain.size())))], day(), {}, {}};
          if (random(3) == 0) content.emptied = "2026-09-01";
          bin.contents.push_back(content);
        }
        nursery.put(bin, "BIN-" + number);
        grain.push_back(bin_ref("BIN-" + number));
      } else if (random(2) == 0) {
        nursery.batch("BT-" + number, {grain[static_cast<std::size_t>(random(static_cast<int>(grain.size())))]}, day());
        grain.push_back(batch_ref("BT-" + number));
      } else {
        nursery.fraction("FR-" + number, grain[static_cast<std::size_t>(random(static_cast<int>(grain.size())))], day());
        grain.push_back({RecordKind::fraction, "FR-" + number});
      }
    }
    for (const char* id : {"D-01", "D-02"}) {
      nursery.repotting_day(id);
      for (int line = 0; line < 12; ++line) {
        const RecordRef holder = grain[static_cast<std::size_t>(random(static_cast<int>(grain.size())))];
        nursery.booked(holder, 100 * (random(3) - 1 - (random(2) == 0 ? 1 : 0)) + 1e-5 * random(9) + 1e-4, id);
      }
    }
    std::vector<RecordRef> trees;
    for (int i = 0; i < 4; ++i) {
      nursery.tree("TR-0" + std::to_string(i), {Nursery::repotting(day(), {grain[static_cast<std::size_t>(random(static_cast<int>(grain.size())))]})});
      trees.push_back(tree_ref("TR-0" + std::to_string(i)));
    }
    for (const RecordRef& tree : trees) {
      const auto back = trace(nursery.workbook, tree, TraceDirection::back);
      for (int i = 0; i < 4; ++i) {
        const RecordRef bag = bag_ref("K-0" + std::to_string(i));
        INFO(round << " " << bag.id << " " << tree.id);
        CHECK((step_of(*back, bag) != nullptr) == reaches(nursery, bag, tree));
      }
    }
  }
}

TEST_CASE("Sick trees are compared with all others by lot, mix, depth, day, plan and removed share", "[trace]") {
  Nursery nursery;
  for (const char* id : {"K-01", "K-02"}) nursery.bag(id);
  for (int i = 1; i <= 5; ++i) {
    Tree tree;
    tree.name = "tree " + std::to_string(i);
    tree.conditions.push_back({"2026-05-01", i <= 2 ? Condition::sick : Condition::thriving, ""});
    Repotting repotting = Nursery::repotting(i == 3 ? "2026-03-09" : "2026-03-01", {bag_ref(i <= 3 ? "K-01" : "K-02")});
    repotting.filled_depth = depth_cm(i <= 2 ? 3.2 : 6);
    repotting.plan_name = i == 1 ? "A" : "B";
    if (i != 2) repotting.removed_share = RemovedShare(0.34);
    tree.repottings.push_back(repotting);
    nursery.put(tree, "TR-0" + std::to_string(i));
  }
  const auto shared = shared_traits(nursery.workbook);
  REQUIRE(shared);
  CHECK(shared->trees == std::vector<RecordRef>{tree_ref("TR-01"), tree_ref("TR-02")});
  const auto trait = [&](TraitSort sort, const std::string& value) {
    const auto found = std::ranges::find_if(shared->traits, [&](const SharedTrait& t) { return t.sort == sort && t.value == value; });
    REQUIRE(found != shared->traits.end());
    return *found;
  };
  const SharedTrait lot = trait(TraitSort::lot, "K-01");
  CHECK(lot.count == 2);
  CHECK(lot.among == 2);
  CHECK(lot.others == 1);
  CHECK(lot.others_among == 3);
  CHECK(trait(TraitSort::depth, "3 cm").others == 0);
  CHECK(trait(TraitSort::day, "2026-03-01").others == 2);
  CHECK(trait(TraitSort::plan, "B").count == 1);
  CHECK(trait(TraitSort::removed_share, "30-40 %").among == 1);
  // Of what both share, the depth is what no other tree has.
  CHECK(shared->traits.front().sort == TraitSort::depth);
  CHECK(code_of(shared_traits(nursery.workbook, std::vector<Id<Tree>>{{"TR-99"}})) == "workbook.not-there");
}
