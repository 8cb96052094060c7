#pragma once
#include <QWidget>
#include <vector>

#include "models/bench.hpp"

class QLabel;

namespace gritwright::desktop {

class BandRow;
class CautionBar;
class ComparisonView;
class FigurePanel;
class GradingChart;
class PartsBar;
class PartsPanel;
class PictureTabs;
class PotForm;
class PotSectionView;

/// A mix in its pot: parts and pot on the left, pictures and answers on the right, all live.
class MixPage : public QWidget {
  Q_OBJECT
 public:
  explicit MixPage(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] PartsPanel& parts() { return *parts_; }
  [[nodiscard]] GradingChart& chart() { return *chart_; }
  [[nodiscard]] CautionBar& caution() { return *caution_; }
  [[nodiscard]] PictureTabs& pictures() { return *pictures_; }
  [[nodiscard]] ComparisonView& comparison() { return *comparison_; }

  void show_parts();
  void show_pot();
  void show_band();
  void show_section();
  void show_curves();
  void show_litres();
  void show_comparison();

 signals:
  void keep_wanted();
  /// A bag was dropped onto the parts.
  void bag_dropped(const QString& id);

 protected:
  void showEvent(QShowEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  QWidget* inputs();
  QWidget* name_row(QWidget* parent);
  QWidget* answers();
  void refresh();
  void refresh_notes();

  Bench& bench_;
  PartsPanel* parts_;
  PotForm* pot_;
  CautionBar* caution_;
  PictureTabs* pictures_;
  GradingChart* chart_;
  PotSectionView* section_;
  PartsBar* litres_;
  ComparisonView* comparison_;
  BandRow* band_;
  QLabel* notes_;
  std::vector<FigurePanel*> cards_;
};

}  // namespace gritwright::desktop
