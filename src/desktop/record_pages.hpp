#pragma once
#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <map>
#include <optional>

#include "gritwright/domain/species_profile.hpp"
#include "kept_steps.hpp"
#include "models/bench.hpp"
#include "models/record_book.hpp"

class QAction;
class QMenu;

namespace gritwright::desktop {

class BagsPage;
class GroupsPage;
class LogPage;
class MainWindow;
class MeasurePage;
enum class Protocol;
class TreesPage;

/// The pages over the workbook, and the actions between them and the bench.
class RecordPages : public QObject {
  Q_OBJECT
 public:
  /// Makes its pages and its menu before `before`; the window gives the pages their rooms.
  RecordPages(Bench& bench, RecordBook& book, MainWindow& window, QMenu& before);

  void show_bags();
  void show_log();
  /// The guided measurement, of a bag or a kept mix; an empty number leaves the newest.
  void measure(Protocol protocol, const QString& subject);
  void show_trees();
  void show_groups();

  /// Puts the bag's latest sieve test, or an empty stack with its material and densities, on the bench and shows it.
  void grade(const QString& bag);
  /// The same, but what is shown is the mix.
  void put_in_mix(const QString& bag);
  /// Keeps the finished samples on screen with their bag; a sheet without a bag makes one of its material.
  void save_sheet();
  /// Keeps the measured fractions of a screening, and books the grain from the bag to them.
  void keep_fractions();
  /// Keeps the mix on the bench; the same name makes a new version.
  void keep_mix();
  /// Keeps a recipe that was found as a mix and lays it on the bench; `reserve`: keeps its grain for it in later searches.
  void keep_recipe(int recipe, bool reserve);
  /// Keeps what a group of trees is asked for as the record's own, in place of what the record had.
  void keep_profile(const SpeciesProfile& profile);
  /// Puts a kept pot in the mix's place for one.
  void take_pot(const QString& id);
  /// Lays the bags of a kept mix on the bench again, with its parts.
  void open_mix(const QString& id);
  void choose_export();
  void save_copy();
  void set_laboratory_figures(bool wanted);
  /// Reads what the bench shows of the record, where the record changed since; done by itself while the bench is in sight.
  void catch_up();

  /// Grain of the record that lies on the bench outside the mix, to be looked at, with nothing on it that is kept nowhere else: its place
  /// can be another's.
  [[nodiscard]] bool only_looked_at(std::size_t index) const;

  [[nodiscard]] RecordBook& book() { return book_; }
  /// The menu of the record, for rooms that come later.
  [[nodiscard]] QMenu& menu() { return *menu_; }
  [[nodiscard]] BagsPage& bags() { return *bags_; }
  [[nodiscard]] LogPage& log() { return *log_; }
  [[nodiscard]] MeasurePage& measuring() { return *measuring_; }
  [[nodiscard]] TreesPage& trees() { return *trees_; }
  [[nodiscard]] GroupsPage& groups() { return *groups_; }
  /// Lays the openings of an owned set on the sheet on screen, as one step.
  void use_sieve_set(const QString& id);

 private:
  QAction* action(const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act);
  void make_menu(QMenu& before);
  void make_context_menus();
  void page_changed();
  void give_undo_keys();
  /// To be called when something was kept in the record from the bench, after what that does to the bench.
  void kept_from_bench();
  void undo_in_record();
  void redo_in_record();
  void refresh_undo();
  void record_changed();
  [[nodiscard]] bool bench_in_sight() const;
  void catch_up_in_sight();
  void refresh_surroundings();
  void refresh_choices();
  void refresh_known();
  /// Where the bench has the litre weight or the material that the record knew, and nothing else was typed there, it takes what the record knows now.
  void follow_grain();
  /// A bag that lies on the bench takes what was measured of it.
  void take_measured(const QString& bag);
  void measure_chosen();
  void test_mix();
  void refresh_profiles();
  void find();
  void trace_chosen();
  /// Puts it on the bench with these parts unless it lies there already; false if there is no room or no such bag.
  bool lay_on_bench(const QString& bag, const QString& parts);
  /// The bag of the component on screen; a new one is added for a sheet without. Empty if it could not be.
  QString bag_of_sheet(const ComponentSheet& component);
  /// Something was weighed on its sheet that no sieve test of the record has.
  [[nodiscard]] bool has_unkept_test(std::size_t index) const;
  /// A component of a mix whose sieve test lies on the bench and nowhere else.
  [[nodiscard]] std::optional<std::size_t> on_bench_only(const Component& component) const;
  /// Lays a kept mix on the bench, and says what could not be; `has_band`: the wanted grain there is this mix's.
  QStringList lay_mix(const QString& id, bool has_band);
  [[nodiscard]] std::optional<SpeciesProfile> profile_called(const QString& name) const;
  int save_tests(const QString& bag, const ComponentSheet& component, const ComponentEvaluation& evaluation);

  Bench& bench_;
  RecordBook& book_;
  MainWindow& window_;
  BagsPage* bags_;
  LogPage* log_;
  MeasurePage* measuring_;
  TreesPage* trees_;
  GroupsPage* groups_;
  QMenu* menu_;
  KeptSteps kept_steps_;
  QAction* undo_ = nullptr;
  QAction* redo_ = nullptr;
  bool laboratory_ = false;
  bool choices_are_stale_ = true;
  bool pots_are_stale_ = true;
  std::int64_t seen_revision_ = -1;
  QString seen_bag_;
  QString seen_material_;
  QStringList known_by_;
  struct KnownGrain {
    QString litre_weight;
    QString material;  ///< of a bag
  };
  std::map<QString, KnownGrain> known_grain_;  ///< on the bench, as the record last knew it
};

}  // namespace gritwright::desktop
