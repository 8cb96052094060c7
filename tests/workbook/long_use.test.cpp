// Eight seasons of a busy nursery, every figure invented. What the workbook answers is held against books kept beside it, the plain way.
#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <sstream>
#include <vector>

#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "gritwright/workbook/trace.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr int first_year = 2027;
constexpr int trees_a_season = 100;
constexpr int nursery_trees = 300;  // each is repotted every third season
constexpr int lots_a_season = 16;

/// Counts the steps of SQLite's machine over every connection opened while it lives: work, not time, so that it can be asserted. What other
/// threads do meanwhile, as the one that writes a day's backup, is not waited for and not counted.
class CountedWork {
 public:
  CountedWork() {
    steps = 0;
    sqlite3_auto_extension(reinterpret_cast<void (*)()>(&watch));
  }
  ~CountedWork() { sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(&watch)); }
  CountedWork(const CountedWork&) = delete;
  CountedWork& operator=(const CountedWork&) = delete;
  template <class Work>
  static double of(Work work) {
    const double before = steps;
    work();
    return steps - before;
  }

 private:
  static constexpr int at_once = 10;
  static int watch(sqlite3* database, char**, const sqlite3_api_routines*) {
    sqlite3_progress_handler(
        database, at_once,
        [](void*) {
          steps += at_once;
          return 0;
        },
        nullptr);
    return SQLITE_OK;
  }
  static inline thread_local double steps = 0;
};

std::string day_in(int season, int day_of_season) {
  const std::chrono::sys_days day = std::chrono::sys_days(std::chrono::year(first_year + season) / std::chrono::January / 5) + std::chrono::days(day_of_season);
  const std::chrono::year_month_day date(day);
  const auto two_digits = [](unsigned value) { return (value < 10 ? "-0" : "-") + std::to_string(value); };
  return std::to_string(static_cast<int>(date.year())) + two_digits(static_cast<unsigned>(date.month())) + two_digits(static_cast<unsigned>(date.day()));
}

/// What a tick and a condition written down cost in one season, in steps of SQLite's machine.
struct SeasonCost {
  double tick = 0;
  double condition = 0;
  double bytes = 0;  ///< by which the export of everything grew
};

class NurseryInUse {
 public:
  void season(int number) {
    season_ = number;
    grain_.clear();
    receive_and_test();
    screen();
    design();
    for (int day = 0; day < 5; ++day) repot(day);
    test_pots();
    look_at_trees();
    write_down();
    count_and_clear();
  }

  Folder folder;
  Hand hand;
  CountedWork work;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  SeasonCost cost;
  std::map<RecordRef, double> books_g;               ///< dry grain by holder
  std::map<RecordRef, std::set<RecordRef>> bags_of;  ///< the bags a tree stands in since its last repotting
  double received_g = 0;
  double gone_g = 0;
  std::vector<RecordRef> bags_this_season;

 private:
  template <class R>
  RecordRef put(R record, const std::string& label, const std::string& id = {}) {
    const auto added = workbook.add(std::move(record), label, id);
    INFO(label << " " << code_of(added));
    REQUIRE(added);
    return ref_to(*added);
  }
  void book(const RecordRef& holder, double grams) {
    books_g[holder] += grams;
    if (grams < 0) gone_g -= grams;
  }
  [[nodiscard]] std::string day(int of_season) {
    hand.now = std::chrono::sys_days(std::chrono::year(first_year + season_) / std::chrono::January / 5) + std::chrono::days(of_season) + std::chrono::hours(12);
    return day_in(season_, of_season);
  }

  void receive_and_test() {
    constexpr const char* materials[] = {"akadama", "pumice", "kanuma", "lava"};
    bags_this_season.clear();
    for (int lot = 0; lot < lots_a_season; ++lot) {
      Bag bag;
      bag.material = materials[lot % 4];
      bag.lot = "lot " + std::to_string(season_) + "/" + std::to_string(lot);
      bag.count = 4;
      bag.volume = loose_l(14);
      bag.bulk_density = bulk_g_l(600 + 10 * lot);
      bag.price = Price{19.5, "EUR"};
      bag.received = day(lot / 4);
      const auto in = receive(workbook, bag);
      REQUIRE(in);
      const RecordRef ref = in->revisions.front().first;
      bags_this_season.push_back(ref);
      const double grams = 4 * 14 * (600 + 10.0 * lot);
      books_g[ref] += grams;
      received_g += grams;
      grain_.push_back({ref, {ref}});
      for (int replicate = 1; replicate <= 2; ++replicate) {
        RecordedSieveTest sieved;
        sieved.of = ref;
        sieved.replicate = replicate;
        sieved.test.lot = bag.lot;
        sieved.test.date = day(4);
        sieved.test.dry_mass = mass_g(500);
        sieved.test.resolution = mass_g(0.1);
        const double off[] = {0, 30.5, 120, 180, 110.5, 45, 10};
        const double openings[] = {11.2, 8, 5.6, 4, 2.8, 2, 1};
        for (std::size_t i = 0; i < std::size(off); ++i) sieved.test.rows.push_back({aperture_mm(openings[i]), mass_g(off[i]), {}});
        sieved.test.pan = mass_g(4);
        put(sieved, "sieve test of bag " + ref.id);
        take_out(ref, StockReason::thrown_out, 500, day(4));
      }
    }
  }

  void take_out(const RecordRef& holder, StockReason reason, double grams, const std::string& when, std::optional<RecordRef> other = {}) {
    Measured amount;
    amount.weighed = mass_g(grams);
    const auto taken = enter_stock(workbook, holder, reason, amount, when, std::move(other));
    INFO(holder.id << " " << grams << " " << code_of(taken));
    REQUIRE(taken);
    book(holder, -grams);
  }

  void screen() {
    for (int i = 0; i < lots_a_season / 2; ++i) {
      const RecordRef bag = bags_this_season[static_cast<std::size_t>(i)];
      const double all = books_g[bag];
      std::vector<Fraction> fractions(2);
      fractions[0].from = aperture_mm(2.8);
      fractions[0].to = aperture_mm(8);
      fractions[0].dry_mass = mass_g(std::floor(all * 0.7));
      fractions[1].from = aperture_mm(8);
      fractions[1].dry_mass = mass_g(std::floor(all * 0.1));
      const double kept = in_g(*fractions[0].dry_mass);
      const double coarse = in_g(*fractions[1].dry_mass);
      const double spilt = std::floor(all * 0.02);
      const auto screened = screen_into(workbook, bag, std::move(fractions), mass_g(spilt), day(6));
      INFO(bag.id << " " << code_of(screened));
      REQUIRE(screened);
      books_g[bag] -= kept + coarse + spilt;
      gone_g += spilt;
      for (int k = 0; k < 2; ++k) {
        const RecordRef tub = screened->revisions[static_cast<std::size_t>(k)].first;
        books_g[tub] += k == 0 ? kept : coarse;
        if (k == 0) grain_[static_cast<std::size_t>(i)] = {tub, {bag}};
      }
    }
  }

  void design() {
    mixes_.clear();
    for (int i = 0; i < 5; ++i) {
      MixVersion version;
      version.mix.name = "mix " + std::to_string(i);
      version.day = day(8);
      for (int k = 0; k < 3; ++k) {
        Component component;
        component.name = "component " + std::to_string(k);
        component.parts = Parts(k + 1);
        component.grain.bulk_density = bulk_g_l(650);
        component.sizes = SingleSize{aperture_mm(3 + k)};
        version.mix.components.push_back(component);
        version.sources.emplace_back(grain_[static_cast<std::size_t>((3 * i + k) % lots_a_season)].holder);
      }
      // A version a season of the same five mixes.
      const std::string id = season_ == 0 ? "" : workbook.next_version(last_mixes_[static_cast<std::size_t>(i)]).text;
      mixes_.push_back({put(version, version.mix.name, id).id});
    }
    last_mixes_ = mixes_;
  }

  RecordRef tree_for(int number) {
    const std::string id = "TR-" + std::to_string(number);
    const RecordRef ref{RecordKind::tree, id};
    if (workbook.find(ref)) return ref;
    Tree tree;
    tree.name = "tree " + std::to_string(number);
    tree.species = "pine, invented";
    tree.since_year = 2015;
    return put(tree, "tree " + id, id);
  }

  // Twenty trees of one of the mixes, out of four tubs, ticked off one by one.
  void repot(int of_day) {
    const std::string when = day(30 + of_day);
    const Id<MixVersion> mix = mixes_[static_cast<std::size_t>(of_day)];
    RepottingDay planned;
    planned.day = when;
    planned.name = "day " + std::to_string(of_day + 1);
    std::vector<RecordRef> trees;
    for (int i = 0; i < trees_a_season / 5; ++i) {
      trees.push_back(tree_for((season_ * trees_a_season + of_day * trees_a_season / 5 + i) % nursery_trees));
      DayTree line;
      line.tree = Id<Tree>{trees.back().id};
      line.mix = mix;
      line.planned = mixed_l(2);
      planned.trees.push_back(line);
    }
    const RecordRef day_ref = put(planned, "repotting day " + when);
    std::vector<RecordRef> tubs;
    std::map<RecordRef, std::set<RecordRef>> bags_in;
    for (int tub = 0; tub < 4; ++tub) {
      Batch batch;
      batch.mix = mix;
      batch.day = when;
      batch.repotting_day = Id<RepottingDay>{day_ref.id};
      batch.made = mixed_l(12);
      std::set<RecordRef> bags;
      std::vector<RecordRef> sources;
      for (int k = 0; k < 3; ++k) {
        const Grain& grain = grain_[static_cast<std::size_t>((3 * of_day + k + tub) % lots_a_season)];
        batch.parts.push_back({grain.holder, loose_l(4), mass_g(2600)});
        bags.insert(grain.bags.begin(), grain.bags.end());
        sources.push_back(grain.holder);
      }
      tubs.push_back(put(batch, "tub of " + when));
      bags_in[tubs.back()] = bags;
      for (const RecordRef& source : sources) take_out(source, StockReason::used, 2600, when, tubs.back());
    }
    double steps = 0;
    for (std::size_t i = 0; i < trees.size(); ++i) {
      const RecordRef& tub = tubs[i / 5];
      steps += CountedWork::of([&] {
        const auto tree = workbook.find(Id<Tree>{trees[i].id});
        const auto now = workbook.find(Id<RepottingDay>{day_ref.id});
        REQUIRE((tree && now));
        Tree done = tree->record;
        Repotting repotting;
        repotting.day = when;
        repotting.mix = mix;
        repotting.grain = {tub};
        repotting.filled = mixed_l(2);
        repotting.bare_rooted = true;
        done.repottings.push_back(repotting);
        RepottingDay ticked = now->record;
        ticked.trees[i].done = true;
        LogEntry told;
        told.day = when;
        told.text = "Repotted " + done.name;
        told.about = {trees[i], day_ref, tub};
        Change change{"tree " + trees[i].id + " ticked off", {{trees[i], tree->revision, Record(done)}, {day_ref, now->revision, Record(ticked)}}, told, {}};
        const auto applied = workbook.apply(std::move(change));
        INFO(code_of(applied));
        REQUIRE(applied);
      });
      bags_of[trees[i]] = bags_in[tub];
    }
    cost.tick += steps / trees_a_season;
  }

  void test_pots() {
    for (int i = 0; i < 10; ++i) {
      PotTest test;
      test.mix = mixes_[static_cast<std::size_t>(i % 5)];
      test.day = day(60 + i);
      test.volume = pot_ml(2000);
      test.weighed = PotWeighings{mass_g(300), mass_g(1600), mass_g(2500), mass_g(2200)};
      put(test, "pot test");
    }
  }

  void look_at_trees() {
    double steps = 0;
    for (int i = 0; i < trees_a_season; ++i) {
      const Id<Tree> id{"TR-" + std::to_string((season_ * trees_a_season + i) % nursery_trees)};
      steps += CountedWork::of([&] {
        const auto tree = workbook.find(id);
        REQUIRE(tree);
        Tree seen = tree->record;
        seen.conditions.push_back({day(100 + i % 50), i % 20 == 0 ? Condition::watch : Condition::thriving, "as it looked in the season"});
        REQUIRE(workbook.replace(*tree, seen, "condition of " + id.text));
      });
    }
    cost.condition = steps / trees_a_season;
  }

  void write_down() {
    for (int i = 0; i < 100; ++i) {
      LogEntry entry;
      entry.day = day(60 + i);
      entry.sort = LogSort::observation;
      entry.text = "watered bench " + std::to_string(i % 12) + ", dry by noon";
      put(entry, "");
    }
  }

  // What is left is counted, half of it a little short, and thrown out.
  void count_and_clear() {
    for (auto& [holder, grams] : books_g) {
      if (grams < 1) continue;
      const double found = std::floor(grams * 0.99);
      Measured counted;
      counted.weighed = mass_g(found);
      REQUIRE(enter_count(workbook, holder, counted, day(200)));
      book(holder, found - grams);
      if (found > 0) take_out(holder, StockReason::thrown_out, found, day(201));
    }
  }

  struct Grain {
    RecordRef holder;
    std::set<RecordRef> bags;
  };
  int season_ = 0;
  std::vector<Grain> grain_;
  std::vector<Id<MixVersion>> mixes_;
  std::vector<Id<MixVersion>> last_mixes_;
};

void check_ledger(const NurseryInUse& nursery) {
  double on_hand = 0;
  for (const auto& [holder, grams] : nursery.books_g) {
    INFO(holder.id);
    const auto stock = nursery.workbook.stock_of(holder);
    REQUIRE(stock);
    // The ledger keeps whole micrograms.
    CHECK_THAT(in_g(*stock), WithinAbs(grams, 1e-4));
    on_hand += in_g(*stock);
  }
  CHECK_THAT(nursery.received_g - nursery.gone_g, WithinAbs(on_hand, 0.01));
}

void check_traces(const NurseryInUse& nursery) {
  std::map<RecordRef, std::set<RecordRef>> trees_of;
  for (const auto& [tree, bags] : nursery.bags_of) {
    for (const RecordRef& bag : bags) trees_of[bag].insert(tree);
    const auto back = trace(nursery.workbook, tree, TraceDirection::back);
    REQUIRE(back);
    std::set<RecordRef> found;
    for (const TraceStep& step : back->steps)
      if (step.ref.kind == RecordKind::bag && step.role != "designed") found.insert(step.ref);
    INFO(tree.id);
    // What it stood in before is still told, the bags of now are all there.
    CHECK(std::ranges::includes(found, bags));
  }
  for (const RecordRef& bag : nursery.bags_this_season) {
    const auto list = recall_list(nursery.workbook, bag);
    REQUIRE(list);
    std::set<RecordRef> now;
    for (const RecallRow& row : list->trees)
      if (row.standing == Standing::now && row.certain) now.insert(row.ref);
    INFO(bag.id);
    CHECK(now == trees_of[bag]);
  }
}

}  // namespace

namespace {

/// What each of `seasons` seasons cost; everything is checked at the end of each.
std::vector<SeasonCost> run_seasons(int seasons) {
  NurseryInUse nursery;
  std::vector<SeasonCost> costs;
  double before = 0;
  for (int season = 0; season < seasons; ++season) {
    nursery.cost = {};
    nursery.season(season);
    INFO("season " << season + 1);
    CHECK(check_content(nursery.workbook).empty());
    for (const Note& note : check_sense(nursery.workbook)) CHECK(note.code != "stock.below-zero");
    check_ledger(nursery);
    check_traces(nursery);
    std::ostringstream out;
    REQUIRE(export_workbook(nursery.workbook, out).empty());
    const double size = static_cast<double>(out.str().size());
    nursery.cost.bytes = size - before;
    before = size;
    // Predicted: a megabyte a season with all indexes, and the log of what was written last.
    CHECK(static_cast<double>(std::filesystem::file_size(nursery.folder.file())) < 1e6 * (season + 2));
    costs.push_back(nursery.cost);
  }
  return costs;
}

}  // namespace

TEST_CASE("Seasons of a busy nursery keep ledger and traces whole", "[workbook][law][long_use][rounds]") { run_seasons(2); }

TEST_CASE("After eight seasons of a busy nursery a tick costs no more than after three, and a season adds what one added before", "[.many][workbook][law][long_use]") {
  const std::vector<SeasonCost> costs = run_seasons(8);
  for (std::size_t season = 0; season < costs.size(); ++season) {
    UNSCOPED_INFO("season " << season + 1 << ": tick " << costs[season].tick << ", condition " << costs[season].condition << " steps, " << costs[season].bytes << " bytes more");
  }
  // From the fourth season on every tree was there before.
  for (std::size_t season = 4; season < costs.size(); ++season) {
    CHECK(costs[season].tick < 1.1 * costs[2].tick);
    CHECK(costs[season].condition < 1.1 * costs[2].condition);
    CHECK_THAT(costs[season].bytes, WithinRel(costs[3].bytes, 0.03));
  }
}
