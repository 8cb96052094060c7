#pragma once
#include <QFrame>
#include <vector>

#include "models/bench.hpp"

class QButtonGroup;
class QLabel;
class QSlider;
class QToolButton;
class QVBoxLayout;

namespace gritwright::desktop {

class TypedField;

/// The components: how each curve looks, which sheet is on screen, and how many parts of it go into the mix.
class PartsPanel : public QFrame {
  Q_OBJECT
 public:
  explicit PartsPanel(Bench& bench, QWidget* parent = nullptr);

  /// Adds an empty component, up to six; removes the one on screen, down to one.
  void add_component();
  void remove_component();
  /// Into the parts of the component on screen.
  void take_focus();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QWidget* widget;
    QToolButton* choose;
    QSlider* slider;
    TypedField* parts;
    QLabel* fault;
  };

  void build();
  void refresh();
  /// One column for the names, one for the sliders, over all rows.
  void line_up();
  Row make_row(int index);

  Bench& bench_;
  QVBoxLayout* list_;
  QButtonGroup* group_;
  std::vector<Row> rows_;
};

}  // namespace gritwright::desktop
