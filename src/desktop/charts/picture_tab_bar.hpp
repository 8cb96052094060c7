#pragma once
#include <QTabBar>

namespace gritwright::desktop {

/// The bar above the pictures. Names that would not all be in sight beside each other stand in two lines.
class PictureTabBar : public QTabBar {
 public:
  using QTabBar::QTabBar;

  /// Decides between one line and two for so much room.
  void fit_into(int width);

 protected:
  QSize tabSizeHint(int index) const override;
  void initStyleOption(QStyleOptionTab* option, int index) const override;

 private:
  [[nodiscard]] QString broken(int index) const;

  bool two_lines_ = false;
};

}  // namespace gritwright::desktop
