#pragma once
#include <QWidget>

#include "models/parts_finder.hpp"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace gritwright::desktop {

class FigurePanel;

/// What a search found: recipes in order, what holds the chosen one back, and the way to a kept mix. Grey while it answers an old question.
class RecipesPanel : public QWidget {
  Q_OBJECT
 public:
  RecipesPanel(Bench& bench, PartsFinder& finder, QWidget* parent = nullptr);

  /// Row of the recipe that is chosen; -1 where there is none.
  [[nodiscard]] int chosen() const;
  /// To the list, scrolled to where it is.
  void take_focus();

 signals:
  void keep_wanted(int recipe, bool reserve);

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* working_row();
  QWidget* keep_row();
  void refresh();
  void refresh_table(bool stale);
  void refresh_chosen();
  void fit();

  Bench& bench_;
  PartsFinder& finder_;
  QLabel* state_;
  QWidget* working_;
  QProgressBar* progress_;
  QPushButton* again_;
  QPushButton* keep_;
  QPushButton* reserve_;
  QTableWidget* table_;
  QLabel* sentences_;
  FigurePanel* figures_;
  QLabel* answer_;
  const FoundParts* shown_ = nullptr;
};

}  // namespace gritwright::desktop
