#pragma once
#include <QWidget>

#include "gritwright/domain/material.hpp"
#include "gritwright/report/quantity_text.hpp"

class QTabWidget;

namespace gritwright::desktop {

class PotsTab;
class RecordBook;
class RootPlanTab;
class TreesTab;

/// Pots and trees: the trees, the pots, and the plan of a repotting.
class TreesPage : public QWidget {
  Q_OBJECT
 public:
  TreesPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void set_units(UnitSystem units);
  void find();
  void show_trees();
  void show_pots();
  void show_plans();
  [[nodiscard]] TreesTab& trees() { return *trees_; }
  [[nodiscard]] PotsTab& pots() { return *pots_; }
  [[nodiscard]] RootPlanTab& plans() { return *plans_; }

 private:
  QTabWidget* tabs_;
  TreesTab* trees_;
  PotsTab* pots_;
  RootPlanTab* plans_;
};

}  // namespace gritwright::desktop
