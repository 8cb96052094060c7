#pragma once
#include <QString>
#include <QWidget>
#include <cstddef>
#include <utility>

#include "models/bench.hpp"
#include "models/figures.hpp"
#include "models/screening_view.hpp"

class QLabel;
class QPushButton;
class QTableWidget;

namespace gritwright::desktop {

class FieldForm;
class HowButton;
class RangeKeeper;

/// "Screen this bag": openings, fractions as predicted with their ranges, and beside them what was weighed and measured.
class ScreeningPanel : public QWidget {
  Q_OBJECT
 public:
  ScreeningPanel(Bench& bench, RangeKeeper& ranges, QWidget* parent = nullptr);

  void take_focus();
  /// Closes the cell that is being typed into; what it says is on the bench already.
  void end_typing();

 signals:
  /// The measured fractions are to be kept in the record.
  void keep_wanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  /// For what is typed to be in sight beside what is predicted: in three columns, in one, or in one with its ranges in the tip.
  enum class Room { ample, little, least };

  void refresh();
  void fill();
  void fit();
  void fit_anew();
  [[nodiscard]] Figure how_so() const;
  [[nodiscard]] int name_width() const;
  /// That it needs in the room it is laid out for.
  [[nodiscard]] int table_width() const;
  /// That it needs at least.
  [[nodiscard]] int least_width() const;
  void take(int row, int column);

  Bench& bench_;
  RangeKeeper& ranges_;
  FieldForm* form_;
  QLabel* fault_;
  QLabel* reason_;
  QTableWidget* table_;
  QLabel* balance_;
  QPushButton* keep_;
  HowButton* how_;
  ScreeningView view_;
  bool filling_ = false;
  std::pair<std::size_t, QString> filled_for_;  ///< component and bag whose fractions the table shows
  Room room_ = Room::ample;
};

}  // namespace gritwright::desktop
