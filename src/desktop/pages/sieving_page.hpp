#pragma once
#include <QWidget>
#include <vector>

#include "gritwright/units.hpp"
#include "models/bench.hpp"

class QComboBox;
class QTabWidget;

namespace gritwright::desktop {

class BandRow;
class CautionBar;
class GradingChart;
class HowButton;
class LotChart;
class PictureTabs;
class RangeKeeper;
class ScreeningPanel;
class SheetEditor;
class VerdictPanel;

/// One sieve test at a time: the stack on the left, its curve and what follows for the bag on the right, all while typing.
class SievingPage : public QWidget {
  Q_OBJECT
 public:
  SievingPage(Bench& bench, RangeKeeper& ranges, QWidget* parent = nullptr);

  [[nodiscard]] SheetEditor& sheet() { return *sheet_; }
  [[nodiscard]] GradingChart& chart() { return *chart_; }
  [[nodiscard]] CautionBar& caution() { return *caution_; }
  [[nodiscard]] PictureTabs& pictures() { return *pictures_; }
  [[nodiscard]] ScreeningPanel& screening() { return *screening_; }

  /// A thing of the record that can be chosen: its id and what stands in the list.
  struct Choice {
    QString id;
    QString text;
    std::vector<Aperture> openings{};  ///< of a set of sieves, coarse to fine
    friend bool operator==(const Choice&, const Choice&) = default;
  };
  void set_bags(const std::vector<Choice>& bags);
  void set_sieve_sets(const std::vector<Choice>& sets);

  void show_sheet();
  void show_grain();
  void show_verdict();
  void show_screening();
  void show_band();
  void show_curve();
  void show_lots();

 signals:
  void bag_chosen(const QString& id);
  void sieve_set_chosen(const QString& id);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* inputs();
  QWidget* choosers(QWidget* parent);
  QWidget* answers();
  void refresh();
  void refresh_choosers();

  Bench& bench_;
  RangeKeeper& ranges_;
  QComboBox* sheets_;
  QComboBox* bags_;
  std::vector<std::vector<Aperture>> sieve_sets_;  ///< openings of those offered
  QComboBox* sets_;
  QTabWidget* tabs_;
  SheetEditor* sheet_;
  HowButton* balance_how_;
  CautionBar* caution_;
  PictureTabs* pictures_;
  GradingChart* chart_;
  LotChart* lots_;
  BandRow* band_;
  QTabWidget* follows_;
  VerdictPanel* verdict_;
  ScreeningPanel* screening_;
  int marked_row_ = -1;
};

}  // namespace gritwright::desktop
