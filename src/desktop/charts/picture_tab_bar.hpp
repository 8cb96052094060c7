#pragma once
#include <QTabBar>

namespace gritwright::desktop {

/// A bar of many names. Where they would not all be in sight beside each other they stand closer together, then in two lines, then in two closer together;
/// at last the bar gives way to a list to choose from, where there is one.
class PictureTabBar : public QTabBar {
 public:
  explicit PictureTabBar(QWidget* parent, bool can_give_way = false) : QTabBar(parent), can_give_way_(can_give_way) {}

  /// Decides for so much room beside the button whose words stand in one line, or like the names in two.
  void fit_into(int beside_one_line, int beside_two_lines);
  [[nodiscard]] bool has_two_lines() const { return fit_ == Fit::two_lines || fit_ == Fit::close_lines; }
  [[nodiscard]] bool gives_way() const { return fit_ == Fit::none; }

 protected:
  QSize tabSizeHint(int index) const override;
  void initStyleOption(QStyleOptionTab* option, int index) const override;
  void paintEvent(QPaintEvent* event) override;

 private:
  enum class Fit { one_line, close_line, two_lines, close_lines, none };

  [[nodiscard]] int needed() const;

  bool can_give_way_;
  Fit fit_ = Fit::one_line;
};

}  // namespace gritwright::desktop
