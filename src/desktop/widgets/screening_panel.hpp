#pragma once
#include <QWidget>

#include "models/bench.hpp"

class QLabel;
class QPushButton;
class QTableWidget;

namespace gritwright::desktop {

class FieldForm;

/// "Screen this bag": openings, fractions as predicted, and beside them what was weighed and measured.
class ScreeningPanel : public QWidget {
  Q_OBJECT
 public:
  explicit ScreeningPanel(Bench& bench, QWidget* parent = nullptr);

  void take_focus();

 signals:
  /// The measured fractions are to be kept in the record.
  void keep_wanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void refresh();
  void fit();
  void take(int row, int column);

  Bench& bench_;
  FieldForm* form_;
  QLabel* fault_;
  QLabel* reason_;
  QTableWidget* table_;
  QLabel* balance_;
  QPushButton* keep_;
  bool filling_ = false;
};

}  // namespace gritwright::desktop
