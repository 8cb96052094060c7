#pragma once
#include <QCheckBox>

namespace gritwright::desktop {

/// A box to tick whose words stand in two lines where they have no room in one.
class TwoLineCheck : public QCheckBox {
 public:
  TwoLineCheck(const QString& words, QWidget* parent);

  /// In one line.
  [[nodiscard]] QSize sizeHint() const override;
  /// As wide as the longer of two lines.
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void break_words();
  [[nodiscard]] QSize size_with(const QString& words) const;

  QString words_;
};

}  // namespace gritwright::desktop
