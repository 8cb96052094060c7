#pragma once
// A repotting day in the window, for tests of its page and of what it writes into the record.

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTabWidget>
#include <QStatusBar>
#include <QTableView>
#include <algorithm>
#include <string>
#include <utility>

#include "gritwright/formats/root_mass_plan_file.hpp"
#include "models/day_trees_model.hpp"
#include "models/demonstration_record.hpp"
#include "pages/day_page.hpp"
#include "support.hpp"

namespace gritwright::desktop {

inline void choose_data(QComboBox* box, const std::string& id) {
  box->setCurrentIndex(box->findData(QString::fromStdString(id)));
  emit box->activated(box->currentIndex());
}

/// The invented nursery with a tree that stands in one of its mixes and pots, and a day.
class DayOnScreen : public OpenWindow {
 public:
  DayOnScreen() {
    REQUIRE(fill_with_demonstration(*record, test_catalogue()).empty());
    for (const auto& stored : book().all<MixVersion>()) {
      const bool from_bags = std::ranges::all_of(stored.record.sources, [](const auto& source) { return source && source->kind == RecordKind::bag; });
      if (from_bags && !stored.record.sources.empty()) mix = stored.id;
    }
    REQUIRE_FALSE(mix.text.empty());
    pot = book().all<RecordedContainer>().front().id;
    const std::string pine = add_tree("old pine");
    trigger("action_page_day");
    trigger("action_new_day");
    put(pine);
  }

  void put(const std::string& id) {
    choose_data(find<QComboBox>("day_tree_choice"), id);
    trigger("action_day_add_tree");
  }

  const OpenWorkbook& book() { return record->workbook(); }
  DayPage& page() { return *find<DayPage>("day_page"); }
  DayTreesModel& lines() { return *qobject_cast<DayTreesModel*>(find<QTableView>("day_table")->model()); }
  RepottingDay day() { return book().find(Id<RepottingDay>{page().current_day().toStdString()})->record; }
  Tree tree(const std::string& id) { return book().find(Id<Tree>{id})->record; }
  /// What stands first, and the rest.
  std::string summary() { return (find<QLabel>("day_first")->text() + u'\n' + find<QLabel>("day_summary")->text()).toStdString(); }
  void write(int row, int column, const QString& text) { lines().setData(lines().index(row, column), text, Qt::EditRole); }

  std::string add_tree(const std::string& name) {
    Tree tree;
    tree.name = name;
    tree.species = "pine, invented";
    tree.group = SpeciesGroup::conifer;
    Repotting before;
    before.day = "2020-03-14";
    before.mix = mix;
    before.container = pot;
    tree.repottings.push_back(before);
    return record->add(tree, QString::fromStdString(name)).toStdString();
  }

  void type_into(const char* name, const QString& text) {
    auto* field = find<QLineEdit>(name);
    field->setText(text);
    emit field->textEdited(field->text());
    emit field->editingFinished();
    record->end_typing();
  }

  /// Keeps a plan of a tree, and puts it onto the day.
  void follow(const std::string& id, const RootMassPlan& plan) {
    KeptRootMassPlan kept;
    kept.name = plan.name;
    kept.tree = Id<Tree>{id};
    kept.mix = mix;
    kept.plan = write_root_mass_plan(plan);
    record->add(kept, QStringLiteral("plan"));
    trigger("action_day_plan_again");
    INFO(window.statusBar()->currentMessage().toStdString());
    REQUIRE(day().trees.front().plan);
  }

  /// Ticks the tree of a line off, or takes its tick back.
  void tick(int row) {
    find<QTableView>("day_table")->setCurrentIndex(lines().index(row, DayTreesModel::tree));
    trigger("action_day_tick");
  }

  /// Returns what is left over of the mix in front, by the keys.
  void return_tub(const char* made, const char* left) {
    find<QTabWidget>("day_tabs")->setCurrentIndex(7);
    type_into("day_made", QString::fromLatin1(made));
    type_into("day_left", QString::fromLatin1(left));
    find<QWidget>("day_return")->setFocus();
    press(Qt::Key_Space);
  }

  DayGround ground() { return ground_of(book(), test_catalogue(), Id<RepottingDay>{page().current_day().toStdString()}); }

  Id<MixVersion> mix;
  Id<RecordedContainer> pot;
};

}  // namespace gritwright::desktop
