#pragma once
#include <QString>
#include <QWidget>
#include <vector>

#include "models/bench.hpp"
#include "models/figures.hpp"

class QLabel;
class QTableWidget;

namespace gritwright::desktop {

class FigurePanel;
class HowButton;
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
  /// A table below its heading, with "?" beside that.
  struct ToldTable {
    QLabel* heading = nullptr;
    HowButton* how = nullptr;
    QTableWidget* table = nullptr;
    Figure figure;  ///< where it comes from
  };
  void make(ToldTable& told, const char* object_name, const QString& title);
  void fill(ToldTable& told, const QStringList& columns, const std::vector<QStringList>& rows, std::vector<Explanation> explanations);
  void refresh();

  Bench& bench_;
  RangeKeeper& ranges_;
  QLabel* sentence_;
  QLabel* certainty_;
  QLabel* lots_;
  FigurePanel* figures_;
  FigurePanel* laboratory_;
  ToldTable fractions_;
  ToldTable openings_;
  QLabel* notes_;
  bool fit_anew_ = true;  ///< width or font changed since the tables were laid out
};

}  // namespace gritwright::desktop
