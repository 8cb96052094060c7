#pragma once
#include <QToolButton>
#include <functional>

#include "models/figures.hpp"

namespace gritwright::desktop {

/// "?" beside a figure: opens where it comes from.
class HowButton : public QToolButton {
  Q_OBJECT
 public:
  /// `asked` gives the figure as it is when the button is pressed.
  HowButton(std::function<Figure()> asked, QWidget* parent);

  /// Names it after the figure, and leaves it to be pressed only where there is something to tell.
  void set_figure(const Figure& figure);
};

}  // namespace gritwright::desktop
