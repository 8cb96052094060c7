#include "tab_side.hpp"

#include <QVBoxLayout>

namespace gritwright::desktop {

TabSide::TabSide(QWidget* content, QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(content);
}

QSize TabSide::sizeHint() const {
  const QSize hint = QWidget::sizeHint();
  return isHidden() ? QSize(hint.width(), 0) : hint;
}

QSize TabSide::minimumSizeHint() const {
  const QSize hint = QWidget::minimumSizeHint();
  return isHidden() ? QSize(hint.width(), 0) : hint;
}

int TabSide::heightForWidth(int width) const { return isHidden() ? 0 : QWidget::heightForWidth(width); }

}  // namespace gritwright::desktop
