#pragma once
#include <QWidget>

#include "models/bench.hpp"

class QLabel;
class QTableWidget;

namespace gritwright::desktop {

class FigurePanel;
class RangeKeeper;

/// The bag on screen judged against the wanted band: the verdict, what screening gives, which openings to choose.
class VerdictPanel : public QWidget {
  Q_OBJECT
 public:
  VerdictPanel(Bench& bench, RangeKeeper& ranges, QWidget* parent = nullptr);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QTableWidget* table(const char* object_name, const QString& title, QLabel*& heading);
  void refresh();

  Bench& bench_;
  RangeKeeper& ranges_;
  QLabel* sentence_;
  QLabel* certainty_;
  QLabel* lots_;
  FigurePanel* figures_;
  FigurePanel* laboratory_;
  QLabel* fractions_heading_ = nullptr;
  QTableWidget* fractions_;
  QLabel* openings_heading_ = nullptr;
  QTableWidget* openings_;
  QLabel* notes_;
  bool fit_anew_ = true;  ///< width or font changed since the tables were laid out
};

}  // namespace gritwright::desktop
