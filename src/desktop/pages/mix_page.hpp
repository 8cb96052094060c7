#pragma once
#include <QWidget>
#include <vector>

#include "models/bench.hpp"

class QLabel;
class QTabWidget;
class QTableWidget;

namespace gritwright::desktop {

class CautionBar;
class FigurePanel;
class GradingChart;
class PartsPanel;
class PotSectionView;
class SheetEditor;
class VerdictPanel;

/// The main job on one page: sieve tests on the left, curves and answers on the right, all live.
class MixPage : public QWidget {
  Q_OBJECT
 public:
  explicit MixPage(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] PartsPanel& parts() { return *parts_; }
  [[nodiscard]] SheetEditor& sheet() { return *sheet_; }
  [[nodiscard]] GradingChart& chart() { return *chart_; }
  [[nodiscard]] CautionBar& caution() { return *caution_; }

  void show_sheet();
  void show_verdict();
  void show_grain();
  void show_pot();
  void show_band();
  void show_as_table(bool table);
  void show_section();
  void show_curves();

 private:
  QWidget* inputs();
  QWidget* answers();
  QWidget* band_row(QWidget* parent);
  void refresh();
  void refresh_table();
  void refresh_notes();

  Bench& bench_;
  PartsPanel* parts_;
  SheetEditor* sheet_;
  QTabWidget* tabs_;
  VerdictPanel* verdict_;
  CautionBar* caution_;
  GradingChart* chart_;
  QTableWidget* table_;
  PotSectionView* section_;
  QTableWidget* section_table_;
  QTabWidget* views_;
  QLabel* notes_;
  std::vector<FigurePanel*> cards_;
  int marked_row_ = -1;
};

}  // namespace gritwright::desktop
