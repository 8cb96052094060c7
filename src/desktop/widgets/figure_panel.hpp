#pragma once
#include <QFrame>
#include <vector>

#include "models/figures.hpp"

class QGridLayout;
class QLabel;

namespace gritwright::desktop {

class HowButton;

/// A card of figures: label, value, and "how so?" with formula, inputs and source. A dash always comes with its reason.
class FigurePanel : public QFrame {
  Q_OBJECT
 public:
  explicit FigurePanel(QWidget* parent = nullptr);

  void show_group(const FigureGroup& group);

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Row {
    QLabel* label;
    QLabel* value;
    QLabel* range;
    HowButton* how;
  };

  void ensure_rows(std::size_t count);
  void place_row(std::size_t at);
  /// Beside its words, or below them where these would stand one under the other.
  void place_figures();

  FigureGroup group_;
  QLabel* title_;
  QLabel* reason_;
  QGridLayout* grid_;
  std::vector<Row> rows_;
  bool below_ = false;
};

}  // namespace gritwright::desktop
