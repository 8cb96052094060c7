#pragma once
#include <QWidget>

namespace gritwright::desktop {

/// What stands in one of several tabs. Out of sight it asks for no height, so that a column scrolls no farther than what is in sight of it.
class TabSide : public QWidget {
  Q_OBJECT
 public:
  explicit TabSide(QWidget* content, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;
};

}  // namespace gritwright::desktop
