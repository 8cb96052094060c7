#pragma once
#include <QWidget>
#include <vector>

#include "models/bench.hpp"

class QLabel;
class QStackedWidget;
class QTabWidget;

namespace gritwright::desktop {

class AgeingView;
class BandRow;
class CautionBar;
class ComparisonView;
class FieldForm;
class FigurePanel;
class FindPanel;
class GradingChart;
class PartsBar;
class PartsFinder;
class PartsPanel;
class PictureTabs;
class PotForm;
class PotSectionView;
class RangeKeeper;
class RecipesPanel;
class ScoreView;
class TradeOffView;

/// A mix in its pot: parts and pot, or what to find parts for, on the left; pictures and answers on the right, all live.
class MixPage : public QWidget {
  Q_OBJECT
 public:
  MixPage(Bench& bench, RangeKeeper& ranges, QWidget* parent = nullptr);

  [[nodiscard]] PotForm& pot() { return *pot_; }
  [[nodiscard]] PartsPanel& parts() { return *parts_; }
  [[nodiscard]] GradingChart& chart() { return *chart_; }
  [[nodiscard]] CautionBar& caution() { return *caution_; }
  [[nodiscard]] PictureTabs& pictures() { return *pictures_; }
  [[nodiscard]] ComparisonView& comparison() { return *comparison_; }
  [[nodiscard]] AgeingView& ageing() { return *ageing_; }
  [[nodiscard]] ScoreView& scores() { return *scores_; }
  [[nodiscard]] PartsFinder& finder() { return *finder_; }
  [[nodiscard]] FindPanel& find_panel() { return *find_panel_; }
  [[nodiscard]] RecipesPanel& recipes() { return *recipes_; }

  /// The parts of the component on screen.
  void show_parts();
  /// The parts of the mix on the bench; the keys stay where they are.
  void show_by_hand();
  /// The line the mix is named in, with what is missing beside it until something is typed.
  void ask_for_name();
  void show_pot();
  void show_band();
  void show_section();
  void show_curves();
  void show_litres();
  void show_comparison();
  void show_find();
  void show_recipes();
  void show_trade_off();
  void show_scores();
  void show_ageing();

 signals:
  void keep_wanted();
  void pot_test_wanted();
  /// A bag was dropped onto the parts.
  void bag_dropped(const QString& id);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  QWidget* inputs();
  QWidget* by_hand();
  QWidget* name_row(QWidget* parent);
  QWidget* answers();
  QWidget* figures();
  void side_changed();
  void refresh();
  void refresh_figures();
  void refresh_notes();

  Bench& bench_;
  RangeKeeper& ranges_;
  PartsFinder* finder_;
  QTabWidget* sides_;
  FindPanel* find_panel_;
  RecipesPanel* recipes_;
  TradeOffView* trade_off_;
  QStackedWidget* below_;
  PartsPanel* parts_;
  PotForm* pot_;
  CautionBar* caution_;
  PictureTabs* pictures_;
  GradingChart* chart_;
  PotSectionView* section_;
  PartsBar* litres_;
  ComparisonView* comparison_;
  ScoreView* scores_;
  QWidget* scores_page_;  ///< it, scrolled like the years
  AgeingView* ageing_;
  QWidget* years_;  ///< it, scrolled where large text needs more room than there is
  BandRow* band_;
  QLabel* narrowing_heading_;
  QLabel* narrowing_;
  QLabel* notes_;
  std::vector<FigurePanel*> cards_;
  FieldForm* name_;
  Faults name_faults_;  ///< what is missing of the name, once the mix was to be kept
};

}  // namespace gritwright::desktop
