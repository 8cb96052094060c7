#pragma once
#include <QWidget>

#include "gritwright/report/quantity_text.hpp"

class QTabWidget;

namespace gritwright::desktop {

class PotsTab;
class RecordBook;
class TreesTab;

/// Pots and trees: the trees, the pots, and the plan of a repotting.
class TreesPage : public QWidget {
  Q_OBJECT
 public:
  explicit TreesPage(RecordBook& book, QWidget* parent = nullptr);

  void set_units(UnitSystem units);
  void find();
  void show_trees();
  void show_pots();
  [[nodiscard]] TreesTab& trees() { return *trees_; }
  [[nodiscard]] PotsTab& pots() { return *pots_; }

 private:
  QTabWidget* tabs_;
  TreesTab* trees_;
  PotsTab* pots_;
};

}  // namespace gritwright::desktop
