#pragma once
#include <QFrame>
#include <vector>

#include "models/figures.hpp"

class QGridLayout;
class QLabel;
class QToolButton;

namespace gritwright::desktop {

/// A card of figures: label, value, and "how so?" with formula, inputs and source. A dash always comes with its reason.
class FigurePanel : public QFrame {
  Q_OBJECT
 public:
  explicit FigurePanel(QWidget* parent = nullptr);

  void show_group(const FigureGroup& group);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QLabel* label;
    QLabel* value;
    QLabel* range;
    QToolButton* how;
  };

  void ensure_rows(std::size_t count);
  void show_how(std::size_t row);

  FigureGroup group_;
  QLabel* title_;
  QLabel* reason_;
  QGridLayout* grid_;
  std::vector<Row> rows_;
};

}  // namespace gritwright::desktop
