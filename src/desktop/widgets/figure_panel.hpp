#pragma once
#include <QFrame>
#include <QSize>
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
  /// As wide as with the figures below their words, wherever they stand now: what is around would else go from one width to the other and back.
  [[nodiscard]] QSize minimumSizeHint() const override;

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

  /// What the rows in sight need beside the edges and the "?".
  struct Widths {
    int words = 0;
    int longest_word = 0;
    int figures = 0;
  };

  void ensure_rows(std::size_t count);
  void place_row(std::size_t at);
  /// Beside its words, or below them where these would stand one under the other.
  void place_figures();
  [[nodiscard]] Widths widths() const;
  [[nodiscard]] int beside_rows() const;

  FigureGroup group_;
  QLabel* title_;
  QLabel* reason_;
  QGridLayout* grid_;
  std::vector<Row> rows_;
  bool below_ = false;
};

}  // namespace gritwright::desktop
