#pragma once
#include <QTabBar>

namespace gritwright::desktop {

/// A name in two lines, broken at the space or hyphen nearest to its middle.
[[nodiscard]] QString in_two_lines(QString name);

/// The bar above the pictures. Names that would not all be in sight beside each other stand in two lines, and at last closer together.
class PictureTabBar : public QTabBar {
 public:
  using QTabBar::QTabBar;

  /// Decides for so much room beside the button whose words stand in one line, or like the names in two.
  void fit_into(int beside_one_line, int beside_two_lines);
  [[nodiscard]] bool has_two_lines() const { return fit_ != Fit::one_line; }

 protected:
  QSize tabSizeHint(int index) const override;
  void initStyleOption(QStyleOptionTab* option, int index) const override;

 private:
  enum class Fit { one_line, two_lines, close };

  [[nodiscard]] int needed() const;

  Fit fit_ = Fit::one_line;
};

}  // namespace gritwright::desktop
