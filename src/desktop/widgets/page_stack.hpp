#pragma once
#include <QStackedWidget>

namespace gritwright::desktop {

/// Pages of which one is in view. It is as large as that one needs: a plain stack asks every page how large it would be, and laying out
/// pages that nobody has looked at yet was a good part of the start.
class PageStack : public QStackedWidget {
  Q_OBJECT
 public:
  explicit PageStack(QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return false; }
};

}  // namespace gritwright::desktop
