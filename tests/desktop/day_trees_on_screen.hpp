#pragma once
// Trees on a repotting day in the window: with a plan to follow, of one mix, of several bags, with layers.

#include <algorithm>
#include <map>
#include <vector>

#include "day_on_screen.hpp"
#include "gritwright/models/root_plan.hpp"

namespace gritwright::desktop {

/// Dry grams by bag, of everything on hand.
inline std::map<RecordRef, double> stock_g(const OpenWorkbook& book) {
  std::map<RecordRef, double> grams;
  for (const auto& entry : book.all<StockEntry>()) grams[entry.record.holder] += in_g(entry.record.change);
  return grams;
}

inline void check_same(const std::map<RecordRef, double>& now, const std::map<RecordRef, double>& before) {
  for (const auto& [holder, grams] : before) {
    INFO(holder.id);
    REQUIRE(now.contains(holder));
    CHECK_THAT(now.at(holder), Catch::Matchers::WithinAbs(grams, 1e-3));
  }
}

/// A box of that size in a tray of 30 x 20 x 8 cm, of which all may be cut; its trunk base lies `base_cm` above its ground.
inline RootMassPlan tray_plan(const char* name, Length length, Length width, Length height, double base_cm) {
  RootMassPlan plan;
  plan.name = name;
  plan.group = SpeciesGroup::deciduous_developing;
  plan.untouched_least = 0;
  plan.removed_most = 1;
  plan.block = BlockBox{BlockForm::box, length, width, height, {}};
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(base_cm)};
  plan.pot.name = name;
  plan.pot.rim = {length_cm(30), length_cm(20)};
  plan.pot.depth = depth_cm(8);
  plan.side_clearance = length_cm(1);
  plan.below_clearance = length_cm(1);
  return plan;
}

/// A block that is too high for its tray: its top is cut, or stays where that proves immovable, and a shoulder of sphagnum is built up.
inline RootMassPlan low_tray_plan() { return tray_plan("low tray", length_cm(20), length_cm(14), length_cm(8), 6); }

/// The day with a tree that follows a plan with fall-backs: its top may prove immovable.
class PlannedPineOnDay : public DayOnScreen {
 public:
  PlannedPineOnDay() {
    id = day().trees.front().tree.text;
    const auto stored = book().find(Id<Tree>{id});
    Tree pine = stored->record;
    pine.due = "2031-04-01";
    REQUIRE(record->replace(*stored, pine, QStringLiteral("tree")));
    RootMassPlan plan = tray_plan("tray of the plan", length_cm(28), length_cm(14), length_cm(9), 8);
    plan.pose.trunk_base = depth_cm(9);
    const auto answer = work_out(plan);
    REQUIRE(answer);
    REQUIRE(answer->plans.size() >= 2);
    a = answer->plans[0];
    b = answer->plans[1];
    RecordedContainer tray;
    tray.container = plan.pot;
    record->add(tray, QStringLiteral("pot"));
    follow(id, plan);
  }

  Repotting last() { return tree(id).repottings.back(); }

  void delete_plan() {
    const auto plan = book().find(RecordRef{RecordKind::root_mass_plan, day().trees.front().plan->text});
    REQUIRE(plan);
    Change change;
    change.label = "plan deleted";
    change.edits.push_back({plan->ref, plan->revision, std::nullopt});
    REQUIRE(record->apply(std::move(change)));
  }

  std::string id;
  WorkedPlan a, b;
};

/// Three trees of one mix, and what of it has left the bag that its first grain comes from.
class ThreePines : public DayOnScreen {
 public:
  ThreePines() {
    put(add_tree("second pine"));
    put(add_tree("third pine"));
    bag = *book().find(mix)->record.sources.front();
    before = stock_g(book());
    // A litre that is taken and given back tells what of this bag is in a litre of mix.
    write(0, DayTreesModel::used, QStringLiteral("1"));
    tick(0);
    litre_g = before.at(bag) - stock_g(book()).at(bag);
    REQUIRE(litre_g > 0);
    tick(0);
    check_same(stock_g(book()), before);
  }

  void fill(int row, double litres) { write(row, DayTreesModel::used, QLocale().toString(litres)); }
  void fill_and_tick(int row, double litres) {
    fill(row, litres);
    tick(row);
    REQUIRE(day().trees[static_cast<std::size_t>(row)].done);
  }
  double gone_l() { return (before.at(bag) - stock_g(book()).at(bag)) / litre_g; }
  /// Of it, what stands in the ledger under a tree.
  double under_l(int row) {
    const std::string id = day().trees[static_cast<std::size_t>(row)].tree.text;
    double grams = 0;
    for (const auto& entry : book().all<StockEntry>())
      if (entry.record.holder == bag && entry.record.note == id) grams -= in_g(entry.record.change);
    return grams / litre_g;
  }

  RecordRef bag;
  std::map<RecordRef, double> before;
  double litre_g = 0;
};

/// The tree in a mix of one grain that lies in two bags and in no other mix, named in the mix by its material alone: the first bag holds 1 L,
/// the second 20, of 100 g.
class SeveralBags : public DayOnScreen {
 public:
  SeveralBags() {
    for (const double litres : {1.0, 20.0}) {
      Bag bag;
      bag.material = "perlite";
      bag.lot = "several";
      bag.volume = loose_l(litres);
      bag.bulk_density = bulk_g_l(100);
      bag.particle_density = particle_g_l(200);
      const RecordRef ref{RecordKind::bag, record->add(bag, QStringLiteral("bag")).toStdString()};
      StockEntry received;
      received.holder = ref;
      received.change = loose_l(litres) * bulk_g_l(100);
      received.day = "2026-01-10";
      record->add(received, QStringLiteral("received"));
      bags.push_back(ref);
    }
    Component component;
    component.name = "perlite";
    component.material = "perlite";
    component.parts = Parts(1);
    component.grain.bulk_density = bulk_g_l(100);
    component.grain.particle_density = particle_g_l(200);
    component.sizes = SingleSize{aperture_mm(4)};
    MixVersion version;
    version.mix.name = "several bags";
    version.mix.components = {component};
    version.sources = {std::nullopt};
    perlite = Id<MixVersion>{record->add(version, QStringLiteral("mix")).toStdString()};
    choose_data(find<QComboBox>("day_tree_mix"), perlite.text);
    REQUIRE(day().trees.front().mix == perlite);
    type_into("day_tree_fill", QStringLiteral("4"));
    before = stock_g(book());
  }

  void check_gone_g(double of_first, double of_second) {
    const auto now = stock_g(book());
    CHECK_THAT(before.at(bags[0]) - now.at(bags[0]), Catch::Matchers::WithinAbs(of_first, 1e-3));
    CHECK_THAT(before.at(bags[1]) - now.at(bags[1]), Catch::Matchers::WithinAbs(of_second, 1e-3));
  }

  std::vector<RecordRef> bags;
  Id<MixVersion> perlite;
  std::map<RecordRef, double> before;
};

/// A tree in a pot that takes a top dressing, with a bag of moss for a shoulder and one of grit to dress with.
class DressedPine : public DayOnScreen {
 public:
  DressedPine() {
    id = day().trees.front().tree.text;
    RecordedContainer pot_with = book().find(pot)->record;
    pot_with.container.name = "dressed";
    pot_with.container.top_dressing = depth_cm(0.4);
    dressed = record->add(pot_with, QStringLiteral("pot")).toStdString();
    pot_with.container.name = "dressed twice as high";
    pot_with.container.top_dressing = depth_cm(0.8);
    dressed_higher = record->add(pot_with, QStringLiteral("pot")).toStdString();
    moss = add_bag("sphagnum", 25);
    grit = add_bag("grit", 1500);
    choose_data(find<QComboBox>("day_tree_pot"), dressed);
    type_into("day_tree_sphagnum", QStringLiteral("0.8"));
    type_into("day_tree_top_dressing", QString::fromStdString(grit.id));
    write(0, DayTreesModel::used, QStringLiteral("3"));
  }

  RecordRef add_bag(const char* material, double density_g_l) {
    Bag bag;
    bag.material = material;
    bag.lot = "layers";
    bag.volume = loose_l(10);
    bag.bulk_density = bulk_g_l(density_g_l);
    const RecordRef ref{RecordKind::bag, record->add(bag, QStringLiteral("bag")).toStdString()};
    StockEntry received;
    received.holder = ref;
    received.change = loose_l(10) * bulk_g_l(density_g_l);
    received.day = "2026-01-10";
    record->add(received, QStringLiteral("received"));
    return ref;
  }
  /// What has left a bag that held ten litres.
  double gone_l(const RecordRef& bag) { return 10 - in_l(loose_volume(*book().stock_of(bag), book().find(Id<Bag>{bag.id})->record.bulk_density.value())); }
  /// As the day counts it today.
  double layer_l(const std::string& name) {
    for (const GrainLitres& layer : page().answer()->value().trees.front().layers)
      if (layer.name == name) return in_l(layer.loose);
    return 0;
  }

  std::string id, dressed, dressed_higher;
  RecordRef moss, grit;
};

}  // namespace gritwright::desktop
